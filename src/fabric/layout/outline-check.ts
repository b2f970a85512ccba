import { refuse, type Problem } from "../../problem";
import type { CutPiece, Point } from "./types";

/** How far a point may stand outside the piece's box: what the rounding of a typed figure makes. */
const OUTSIDE = 0.01;
/** More points than any traced edge needs; each pair of edges is compared. */
const MOST_POINTS = 1000;

/** What is wrong with a piece's outline: too few points, outside its box, crossing itself. */
export function outlineProblem(piece: CutPiece): Problem | undefined {
  const outline = piece.outline ?? [];
  const say = (what: "points" | "many" | "outside" | "crosses" | "fold", text = ""): Problem =>
    refuse("badOutline", { piece: piece.name, what, text }).problem;
  if (outline.length < 3) return say("points", String(outline.length));
  if (outline.length > MOST_POINTS) return say("many", String(outline.length));
  const outside = outline.find(
    ({ x, y }) => !(x >= -OUTSIDE && x <= piece.width + OUTSIDE && y >= -OUTSIDE && y <= piece.length + OUTSIDE),
  );
  if (outside) return say("outside", `${outside.x} ${outside.y}`);
  const onFold = outline.some(({ x }, i) => x <= OUTSIDE && outline[(i + 1) % outline.length]!.x <= OUTSIDE);
  if (piece.onFold && !onFold) return say("fold");
  return crossesItself(outline) ? say("crosses") : undefined;
}

/** Whether two edges that aren't neighbours meet, or two neighbours lie on each other. */
export function crossesItself(outline: readonly Point[]): boolean {
  const points = outline.filter(({ x, y }, i) => {
    const last = outline.at(i - 1)!;
    return x !== last.x || y !== last.y;
  });
  const n = points.length;
  if (n < 3) return true;
  const at = (i: number): Point => points[i % n]!;
  for (let i = 0; i < n; i++) {
    if (side(at(i), at(i + 1), at(i + 2)) === 0 && backwards(at(i), at(i + 1), at(i + 2))) return true;
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      if (meet(at(i), at(i + 1), at(j), at(j + 1))) return true;
    }
  }
  return false;
}

/** On which side of the line from a to b the point c lies: 1, -1, or 0 on it. */
function side(a: Point, b: Point, c: Point): number {
  return Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
}

const backwards = (a: Point, b: Point, c: Point): boolean => (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y) <= 0;

const between = (a: Point, b: Point, c: Point): boolean =>
  Math.min(a.x, b.x) <= c.x && c.x <= Math.max(a.x, b.x) && Math.min(a.y, b.y) <= c.y && c.y <= Math.max(a.y, b.y);

function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const [abc, abd, cda, cdb] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (abc * abd < 0 && cda * cdb < 0) return true;
  return (
    (abc === 0 && between(a, b, c)) ||
    (abd === 0 && between(a, b, d)) ||
    (cda === 0 && between(c, d, a)) ||
    (cdb === 0 && between(c, d, b))
  );
}
