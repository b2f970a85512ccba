/**
 * One strip of cloth and the boxes that are laid on it, in whole steps of a grid. A box has an advance (what the next
 * piece above it starts after: its length with the gap, in whole repeats) and an end (where it really ends).
 */
export interface Box {
  readonly width: number;
  readonly length: number;
  readonly onFold: boolean;
  readonly mayTurn: boolean;
}

export interface StripCloth {
  readonly width: number;
  readonly gap: number;
  readonly repeat: number;
}

/**
 * Boxes as arrays, two entries a box: i as it is, i + n turned. What can't be turned is wider than any cloth there.
 */
export interface Strip {
  readonly n: number;
  readonly width: number;
  readonly across: Int32Array;
  readonly advance: Int32Array;
  readonly end: Int32Array;
  readonly turns: Uint8Array;
  readonly onFold: Uint8Array;
  /** Boxes of one kind are the same number: exchanging them changes nothing. */
  readonly kind: Int32Array;
  /** The grid: a position of 1 is this many of the caller's steps. */
  readonly stepX: number;
  readonly stepY: number;
}

/** Wider and longer than any cloth, and small enough that sums of two stay whole 32-bit numbers. */
export const NEVER = 0x3fffffff;

/**
 * Makes the strip: the gap is put to the right of and above each box, and the cloth is that much wider, so that it lies
 * between boxes only. A box that starts on a repeat takes whole repeats. Everything is divided by the greatest common
 * step, because a layout can only be shorter by whole steps of it; without `grid` the steps stay the caller's.
 *
 *     +------+   +--+      +------+--+--+--+
 *     | box  |g  |  |g     | box  |g |  |g |   the same layout: cloth and boxes g wider
 *     +------+   +--+      +------+--+--+--+
 */
export function makeStrip(boxes: readonly Box[], cloth: StripCloth, grid = true): Strip {
  const n = boxes.length;
  const { gap, repeat } = cloth;
  const whole = (length: number): number => (repeat > 0 ? Math.ceil((length + gap) / repeat) * repeat : length + gap);
  const turns = boxes.map((box) => box.mayTurn && !box.onFold && box.width !== box.length);
  let stepX = grid ? 0 : 1;
  let stepY = grid ? 0 : 1;
  boxes.forEach((box, i) => {
    stepX = commonStep(stepX, box.width + gap);
    stepY = commonStep(commonStep(stepY, whole(box.length)), box.length);
    if (!turns[i]) return;
    stepX = commonStep(stepX, box.length + gap);
    stepY = commonStep(commonStep(stepY, whole(box.width)), box.width);
  });
  stepX = Math.max(stepX, 1);
  stepY = Math.max(stepY, 1);
  const strip: Strip = {
    n,
    width: Math.floor((cloth.width + gap) / stepX),
    across: new Int32Array(2 * n).fill(NEVER),
    advance: new Int32Array(2 * n).fill(NEVER),
    end: new Int32Array(2 * n).fill(NEVER),
    turns: Uint8Array.from(turns, Number),
    onFold: Uint8Array.from(boxes, (box) => Number(box.onFold)),
    kind: new Int32Array(n),
    stepX,
    stepY,
  };
  const kinds = new Map<string, number>();
  boxes.forEach((box, i) => {
    const set = (at: number, across: number, along: number): void => {
      strip.across[at] = (across + gap) / stepX;
      strip.advance[at] = whole(along) / stepY;
      strip.end[at] = along / stepY;
    };
    set(i, box.width, box.length);
    if (turns[i]) set(n + i, box.length, box.width);
    const key = `${box.width} ${box.length} ${box.onFold} ${turns[i]}`;
    if (!kinds.has(key)) kinds.set(key, kinds.size);
    strip.kind[i] = kinds.get(key)!;
  });
  return strip;
}

/** The greatest common divisor; 0 counts as nothing yet. */
export function commonStep(a: number, b: number): number {
  while (b > 0) [a, b] = [b, a % b];
  return a;
}
