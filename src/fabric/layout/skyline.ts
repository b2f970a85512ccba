/**
 * The upper edge of what lies on the strip, as level stretches from left to right. A box is always put into the lowest
 * stretch (the leftmost of several); room below the skyline is given up.
 *
 *     |        +-----+  |
 *     |  +--+  |     |  |      stretches: 0-2 high, 2-5 lowest, 5-10 highest, ...
 *     |__|  |__|     |__|
 */
export interface Skyline {
  readonly x: Int32Array;
  readonly y: Int32Array;
  readonly width: Int32Array;
  count: number;
}

export function emptySkyline(boxes: number): Skyline {
  // Each box adds at most one stretch.
  const size = boxes + 2;
  return { x: new Int32Array(size), y: new Int32Array(size), width: new Int32Array(size), count: 0 };
}

export function clearSkyline(sky: Skyline, width: number): void {
  sky.count = 1;
  sky.x[0] = 0;
  sky.y[0] = 0;
  sky.width[0] = width;
}

/** The index of the lowest stretch, the leftmost of several. */
export function lowestStretch(sky: Skyline): number {
  const { y, count } = sky;
  let lowest = 0;
  let level = y[0]!;
  for (let i = 1; i < count; i++) {
    const here = y[i]!;
    if (here < level) {
      level = here;
      lowest = i;
    }
  }
  return lowest;
}

/** Takes `cut` stretches out, from `at` on. */
function remove(sky: Skyline, at: number, cut: number): void {
  const { x, y, width } = sky;
  const count = (sky.count -= cut);
  for (let i = at; i < count; i++) {
    x[i] = x[i + cut]!;
    y[i] = y[i + cut]!;
    width[i] = width[i + cut]!;
  }
}

/** Makes room for one stretch at `at`: what stood there stands behind it as well. */
function insert(sky: Skyline, at: number): void {
  const { x, y, width } = sky;
  for (let i = sky.count; i > at; i--) {
    x[i] = x[i - 1]!;
    y[i] = y[i - 1]!;
    width[i] = width[i - 1]!;
  }
  sky.count++;
}

/** Gives the room above a stretch up to the lower of its neighbours; it must have one. */
export function raiseStretch(sky: Skyline, at: number): void {
  const { x, y, width } = sky;
  const last = sky.count - 1;
  const right = at < last ? y[at + 1]! : Infinity;
  if (at > 0 && y[at - 1]! <= right) {
    width[at - 1]! += width[at]!;
    if (y[at - 1] === right) {
      width[at - 1]! += width[at + 1]!;
      remove(sky, at, 2);
    } else remove(sky, at, 1);
  } else {
    width[at + 1]! += width[at]!;
    x[at + 1] = x[at]!;
    remove(sky, at, 1);
  }
}

/** Puts a box of the stretch's whole width on it. */
export function coverStretch(sky: Skyline, at: number, level: number): void {
  const { y, width } = sky;
  y[at] = level;
  if (at < sky.count - 1 && y[at + 1] === level) {
    width[at]! += width[at + 1]!;
    remove(sky, at + 1, 1);
  }
  if (at > 0 && y[at - 1] === level) {
    width[at - 1]! += width[at]!;
    remove(sky, at, 1);
  }
}

/** Puts a narrower box at the left end of a stretch. */
export function putLeft(sky: Skyline, at: number, boxWidth: number, level: number): void {
  const { x, y, width } = sky;
  if (at > 0 && y[at - 1] === level) width[at - 1]! += boxWidth;
  else {
    insert(sky, at);
    y[at] = level;
    width[at] = boxWidth;
    at++;
  }
  x[at]! += boxWidth;
  width[at]! -= boxWidth;
}

/** Puts a narrower box at the right end of a stretch. */
export function putRight(sky: Skyline, at: number, boxWidth: number, level: number): void {
  const { x, y, width } = sky;
  width[at]! -= boxWidth;
  if (at < sky.count - 1 && y[at + 1] === level) {
    x[at + 1]! -= boxWidth;
    width[at + 1]! += boxWidth;
    return;
  }
  insert(sky, at + 1);
  x[at + 1] = x[at]! + width[at]!;
  y[at + 1] = level;
  width[at + 1] = boxWidth;
}
