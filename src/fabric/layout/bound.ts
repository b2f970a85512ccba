import { makeStrip, NEVER, type Box, type Strip, type StripCloth } from "./strip";

/**
 * No layout of the strip is shorter, in its own steps: the largest of
 * - the longest box;
 * - the area over the width, for every width k: boxes too wide to lie beside one of k count with the whole width, boxes
 *   narrower than k not at all;
 * - what lies on the fold, one above another.
 *
 * The last two are about advances; the layout really ends at most `slack` before them.
 *
 * Source for the second: dual feasible functions, as in S. Martello, M. Monaci, D. Vigo, "An exact approach to the strip
 * packing problem", INFORMS Journal on Computing 15 (2003).
 */
export function stripBound(strip: Strip, slack = stripSlack(strip)): number {
  const { n, width, across, advance, end, turns, onFold } = strip;
  let longest = 0;
  let fold = 0;
  for (let i = 0; i < n; i++) {
    const turned = turns[i] === 1 && across[n + i]! <= width ? end[n + i]! : NEVER;
    longest = Math.max(longest, Math.min(across[i]! <= width ? end[i]! : NEVER, turned));
    if (onFold[i] === 1) fold += advance[i]!;
  }
  let area = 0;
  const half = Math.floor(width / 2);
  const sides = [...new Set(across)].filter((side) => side <= half);
  for (const side of [0, ...sides, half + 1]) {
    const counted = (at: number): number => {
      const wide = across[at]!;
      if (wide > width) return Infinity;
      if (wide < side) return 0;
      return (side > half || wide > width - side ? width : wide) * advance[at]!;
    };
    let sum = 0;
    for (let i = 0; i < n; i++) sum += turns[i] === 1 ? Math.min(counted(i), counted(n + i)) : counted(i);
    area = Math.max(area, sum);
  }
  return Math.max(longest, Math.ceil(area / width - 1e-9) - slack, fold - slack);
}

/** The most that any box's advance goes beyond its end. */
function stripSlack({ n, advance, end, turns }: Strip): number {
  let slack = 0;
  for (let i = 0; i < n; i++) {
    slack = Math.max(slack, advance[i]! - end[i]!, turns[i] === 1 ? advance[n + i]! - end[n + i]! : 0);
  }
  return slack;
}

/**
 * The bound that a person is shown, in the caller's steps. It doesn't make use of the common grid, so that it never
 * rises with a wider cloth and never falls with one more piece.
 */
export function shownBound(boxes: readonly Box[], cloth: StripCloth): number {
  if (boxes.length === 0) return 0;
  const { gap, repeat } = cloth;
  const plain = stripBound(makeStrip(boxes, { ...cloth, repeat: 0 }, false), gap);
  if (repeat === 0) return plain;
  return Math.max(plain, stripBound(makeStrip(boxes, cloth, false), gap + repeat - 1));
}
