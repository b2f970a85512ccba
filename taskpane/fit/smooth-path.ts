/** A smooth line through points. */

type Point = readonly [x: number, y: number];

/**
 * The path of a curve that goes through every point: between two of them it leaves one towards the next but one
 * (a Catmull-Rom spline as cubic curves). Open, it ends in its last point; closed, it comes back to the first.
 *
 * @example smoothPath([[0, 0], [10, 0]], false) //=> "M0 0C1.67 0 8.33 0 10 0"
 */
export function smoothPath(points: readonly Point[], closed: boolean): string {
  const last = points.length - 1;
  const point = (index: number): Point =>
    closed ? points[(index + points.length) % points.length]! : points[Math.min(Math.max(index, 0), last)]!;
  const [startX, startY] = point(0);
  let path = `M${short(startX)} ${short(startY)}`;
  for (let index = 0; index < (closed ? points.length : last); index++) {
    const [before, from, to, after] = [point(index - 1), point(index), point(index + 1), point(index + 2)];
    const out = from.map((value, axis) => value + (to[axis]! - before[axis]!) / 6);
    const into = to.map((value, axis) => value - (after[axis]! - from[axis]!) / 6);
    path += `C${[...out, ...into, ...to].map(short).join(" ")}`;
  }
  return closed ? `${path}Z` : path;
}

const short = (value: number): string => String(Math.round(value * 100) / 100);
