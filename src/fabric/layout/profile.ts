import type { Allowance, Point } from "./types";

/**
 * A shape as the cloth's columns see it: in each column it covers, from its lowest to its highest point. Hollows that
 * open sideways count as filled, those that open along the grain don't.
 *
 *        __
 *      _|  |_        | |█| |      columns of the sketch: 0..1, 0..2, 0..1
 *     |______|       |█|█|█|
 */
export interface Profile {
  /** How many columns it covers. */
  readonly columns: number;
  readonly low: Int32Array;
  readonly high: Int32Array;
  /** From its lowest to its highest point. */
  readonly length: number;
}

/**
 * The profile of closed lines whose points lie from 0 on in both directions, made larger by `beyond` on each side. A gap
 * is put to the right and on top, which keeps two shapes that are made so a gap apart. Whatever touches a column counts
 * for it, rounded outward: shapes whose profiles don't overlap don't overlap.
 *
 * @param size the box with everything but the gap
 */
export function profileOf(
  lines: readonly (readonly Point[])[],
  column: number,
  size: { readonly width: number; readonly length: number },
  beyond: Allowance,
): Profile {
  const { width, length } = size;
  const right = Math.max(width, ...lines.flat().map(({ x }) => x + beyond.right));
  const columns = Math.max(1, Math.ceil(right / column - 1e-9));
  const low = new Int32Array(columns).fill(length + 1);
  const high = new Int32Array(columns).fill(-1);
  const mark = (at: number, y: number): void => {
    low[at] = Math.min(low[at]!, Math.floor(y + 1e-6));
    high[at] = Math.max(high[at]!, Math.ceil(y - 1e-6));
  };
  for (const line of lines)
    for (let i = 0; i < line.length; i++) markEdge(line[i]!, line[(i + 1) % line.length]!, column, columns, mark);
  return widened({ columns, low, high, length }, column, beyond);
}

/** Marks the columns whose inside an edge passes through. */
function markEdge(a: Point, b: Point, column: number, columns: number, mark: (at: number, y: number) => void): void {
  const [from, to] = a.x <= b.x ? [a, b] : [b, a];
  const first = Math.max(0, Math.floor(from.x / column));
  if (from.x === to.x) {
    if (from.x % column === 0) return;
    mark(first, from.y);
    mark(first, to.y);
    return;
  }
  const slope = (to.y - from.y) / (to.x - from.x);
  for (let at = first; at < columns && at * column < to.x; at++) {
    const left = Math.max(from.x, at * column);
    const right = Math.min(to.x, (at + 1) * column);
    mark(at, left === from.x ? from.y : from.y + slope * (left - from.x));
    mark(at, right === to.x ? to.y : from.y + slope * (right - from.x));
  }
}

/** Each column also takes what lies within reach to its left and right; what nothing reaches takes nothing. */
function widened({ columns, low, high, length }: Profile, column: number, beyond: Allowance): Profile {
  const reachLeft = Math.ceil(beyond.right / column - 1e-9);
  const reachRight = Math.ceil(beyond.left / column - 1e-9);
  const wideLow = new Int32Array(columns);
  const wideHigh = new Int32Array(columns);
  for (let at = 0; at < columns; at++) {
    let [lowest, highest] = [NOTHING, -NOTHING];
    for (let from = Math.max(0, at - reachLeft); from <= Math.min(columns - 1, at + reachRight); from++) {
      if (high[from]! < 0) continue;
      lowest = Math.min(lowest, low[from]!);
      highest = Math.max(highest, high[from]!);
    }
    const empty = highest < 0;
    wideLow[at] = empty ? 0 : Math.floor(lowest - beyond.bottom);
    wideHigh[at] = empty ? 0 : Math.ceil(highest + beyond.top);
  }
  return { columns, low: wideLow, high: wideHigh, length };
}

const NOTHING = 0x3fffffff;
