import type { Point } from "./types";

/**
 * The area inside a closed line.
 *
 * @example outlineArea([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 0, y: 3 }]) //=> 3
 */
export function outlineArea(outline: readonly Point[]): number {
  let twice = 0;
  outline.forEach(({ x, y }, i) => {
    const next = outline[(i + 1) % outline.length]!;
    twice += x * next.y - next.x * y;
  });
  return Math.abs(twice) / 2;
}
