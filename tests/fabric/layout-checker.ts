import type { Cloth, CutPiece, Layout, Placement, Point } from "../../src/fabric/layout/types";

const NEAR = 1e-6;

/**
 * Every rule that a layout must keep, checked from its placements alone: all pieces there, sizes as given, inside the
 * cloth, none on another with the gap kept, the grain kept, fold pieces on the fold, starts on the repeat, the length
 * right, and not under the bound. Throws with what is broken.
 */
export function checkLayout(layout: Layout, pieces: readonly CutPiece[], cloth: Cloth): void {
  const { length, placements, lowerBound } = layout;
  if (length === null) throw new Error(`no layout: ${JSON.stringify(layout.problems)}`);
  const folded = cloth.layout === "folded";
  const gap = cloth.gap ?? 0;
  for (const piece of pieces) checkPiece(piece, placements, folded);
  must(
    placements.every(({ piece }) => pieces.some(({ name }) => name === piece)),
    "lays only what was asked for",
  );
  const foldedEnd = Math.max(
    0,
    ...placements.filter(({ layer }) => layer === "folded").map((one) => one.y + one.length),
  );
  for (const one of placements) {
    const width = one.layer === "folded" ? cloth.width / 2 : cloth.width;
    must(one.x >= -NEAR && one.x + one.width <= width + NEAR, `${one.piece} lies inside the width`);
    must(one.y >= -NEAR && one.y + one.length <= length + NEAR, `${one.piece} lies inside the length`);
    must(!one.onFold || one.x === 0, `${one.piece} lies on the fold`);
    const repeats = cloth.repeat ? one.y / cloth.repeat : 0;
    must(Math.abs(repeats - Math.round(repeats)) * (cloth.repeat ?? 0) <= 1e-3, `${one.piece} starts on a repeat`);
    must(folded || one.layer === "single", `${one.piece} lies on one layer`);
    must(!folded || one.layer === "folded" || one.y >= foldedEnd - NEAR, `${one.piece} lies after the folded end`);
  }
  for (const [i, one] of placements.entries())
    for (const other of placements.slice(i + 1))
      must(one.layer !== other.layer || !overlap(one, other, gap), `${one.piece} lies clear of ${other.piece}`);
  const end = Math.max(0, ...placements.map((one) => one.y + one.length));
  must(Math.abs(length - end) <= 5e-3, `the length ${length} is where the last piece ends, ${end}`);
  must(length >= lowerBound - NEAR, `the length ${length} is not under the bound ${lowerBound}`);
}

function must(holds: boolean, what: string): void {
  if (!holds) throw new Error(`Not so: ${what}`);
}

function checkPiece(piece: CutPiece, placements: readonly Placement[], folded: boolean): void {
  const mine = placements.filter((one) => one.piece === piece.name);
  const layers = mine.reduce((sum, { layer, onFold }) => sum + (layer === "folded" && !onFold ? 2 : 1), 0);
  // An odd one may lie folded, its second layer left over.
  const all = piece.onFold || layers === piece.count ? piece.count : piece.count + (piece.count % 2);
  must(layers === all, `${piece.name} is cut ${piece.count} times, not ${layers}`);
  for (const one of mine) {
    const across = piece.onFold && one.layer === "single" ? 2 * piece.width : piece.width;
    const [width, length] = one.turned ? [piece.length, across] : [across, piece.length];
    must(one.width === width && one.length === length, `${piece.name} keeps its size`);
    must(!one.turned || (piece.mayTurn === true && !one.onFold), `${piece.name} keeps its grain`);
    must(one.onFold === (piece.onFold === true && folded), `${piece.name} lies on the fold or not, as it should`);
  }
}

function overlap(one: Placement, other: Placement, gap: number): boolean {
  const apart =
    one.x + one.width + gap <= other.x + NEAR ||
    other.x + other.width + gap <= one.x + NEAR ||
    one.y + one.length + gap <= other.y + NEAR ||
    other.y + other.length + gap <= one.y + NEAR;
  if (apart) return false;
  if (!one.outline && !other.outline) return true;
  return linesOverlap(one.outline ?? corners(one), other.outline ?? corners(other), gap);
}

function corners({ x, y, width, length }: Placement): Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + length },
    { x, y: y + length },
  ];
}

/** Whether two closed lines share more than their edges, or come nearer than the gap. */
export function linesOverlap(a: readonly Point[], b: readonly Point[], gap = 0): boolean {
  const edges = (line: readonly Point[]) => line.map((point, i) => [point, line[(i + 1) % line.length]!] as const);
  for (const [p, q] of edges(a)) for (const [r, s] of edges(b)) if (properlyCross(p, q, r, s)) return true;
  if (gap > 0 && nearest(a, b) < gap - 1e-3) return true;
  return samples(a).some((point) => inside(point, b)) || samples(b).some((point) => inside(point, a));
}

const side = (a: Point, b: Point, c: Point): number => {
  const area = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  const scale = Math.hypot(b.x - a.x, b.y - a.y);
  // A point within a thousandth of the line lies on it.
  return Math.abs(area) <= 1e-3 * scale ? 0 : Math.sign(area);
};

function properlyCross(p: Point, q: Point, r: Point, s: Point): boolean {
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
}

/** Points just inside a closed line: by each edge's middle, and their neighbours' middles. */
function samples(line: readonly Point[]): Point[] {
  const found: Point[] = [];
  line.forEach((p, i) => {
    const q = line[(i + 1) % line.length]!;
    const size = Math.hypot(q.x - p.x, q.y - p.y);
    if (size === 0) return;
    const [nx, ny] = [(-(q.y - p.y) / size) * 0.02, ((q.x - p.x) / size) * 0.02];
    for (const way of [1, -1]) {
      const point = { x: (p.x + q.x) / 2 + nx * way, y: (p.y + q.y) / 2 + ny * way };
      if (inside(point, line)) found.push(point);
    }
  });
  return found;
}

function inside({ x, y }: Point, line: readonly Point[]): boolean {
  let odd = false;
  let edge = Infinity;
  line.forEach((p, i) => {
    const q = line[(i + 1) % line.length]!;
    if (p.y > y !== q.y > y && x < ((q.x - p.x) * (y - p.y)) / (q.y - p.y) + p.x) odd = !odd;
    edge = Math.min(edge, toEdge({ x, y }, p, q));
  });
  return odd && edge > 5e-3;
}

function toEdge(c: Point, a: Point, b: Point): number {
  const size = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
  const t = size === 0 ? 0 : Math.max(0, Math.min(1, ((c.x - a.x) * (b.x - a.x) + (c.y - a.y) * (b.y - a.y)) / size));
  return Math.hypot(c.x - a.x - t * (b.x - a.x), c.y - a.y - t * (b.y - a.y));
}

function nearest(a: readonly Point[], b: readonly Point[]): number {
  let least = Infinity;
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const)
    for (const point of one)
      other.forEach((p, i) => (least = Math.min(least, toEdge(point, p, other[(i + 1) % other.length]!))));
  return least;
}
