import { clean, formatLength, type LengthUnit } from "../length";
import { answer, refuse, type FabricProblems, type Result } from "../problem";
import { outlineProblem } from "./layout/outline-check";
import type { Point } from "./layout/types";

/** How wide a piece is at one height. */
export interface WidthAt {
  readonly height: number;
  readonly width: number;
}
/** A paper piece whose edge is wanted: its box, without what is added around it. */
export interface PieceToShape {
  readonly name: string;
  readonly width: number;
  readonly length: number;
  readonly onFold?: boolean;
  /** Only for the sentences; every figure is in one unit throughout. */
  readonly unit?: LengthUnit | null;
}
export interface HowShaped {
  /** "middle": the same on both sides of a line down the middle. "straight": the left edge is straight, a fold say. */
  readonly edge: "middle" | "straight";
  /** Where the heights are measured from. */
  readonly from: "top" | "bottom";
}

/** What rounding to sixty-fourths or millimetres makes of two figures that are meant to be one. */
const SAME = 0.01;

/**
 * The edge of a piece from its widths at a few heights, such as a sleeve that is 4 in wide at the top of its cap, 14 in at
 * 5 in down and 9 in at 22. Between two heights the edge is straight: where the real one curves outward it is wider than
 * that, and wants a width of its own there. Points go around from the lower left corner, in the piece's own unit; a
 * width of zero, at an end only, is a point.
 *
 * Refuses fewer than two heights, heights that don't go on from one to the next, that don't reach from one end of the
 * piece to the other or go beyond it, widths below zero or of zero between the ends, and a widest width that isn't the piece's own: an edge
 * that is too small would be cut short.
 *
 * Geometry, no source.
 *
 * @example
 * outlineFromWidths({ name: "Gore", width: 30, length: 62 }, [{ height: 0, width: 12 }, { height: 62, width: 30 }],
 *   { edge: "straight", from: "top" })
 * //=> { ok: true, value: [{ x: 0, y: 0 }, { x: 30, y: 0 }, { x: 12, y: 62 }, { x: 0, y: 62 }] }
 */
export function outlineFromWidths(
  piece: PieceToShape,
  rows: readonly WidthAt[],
  { edge, from }: HowShaped,
): Result<readonly Point[]> {
  const wrong = widthsProblem(piece, rows);
  if (wrong) return refuse("badWidths", wrong);
  const { width: whole, length } = piece;
  const snapped = (height: number): number => (height < SAME ? 0 : height > length - SAME ? length : height);
  const up = rows
    .map(({ height, width }) => ({ y: from === "top" ? clean(length - snapped(height)) : snapped(height), width }))
    .sort((one, other) => one.y - other.y);
  const left = (width: number): number => (edge === "straight" ? 0 : Math.max(0, clean((whole - width) / 2)));
  const right = (width: number): number => Math.min(whole, clean(left(width) + width));
  // Of a straight edge its two ends say everything.
  const leftOnes = edge === "straight" ? [up[0]!, up.at(-1)!] : up;
  const around: Point[] = [
    ...up.map(({ y, width }) => ({ x: right(width), y })),
    ...leftOnes.map(({ y, width }) => ({ x: left(width), y })).reverse(),
  ];
  const corner = up[0]!.width > 0 ? [around.pop()!] : [];
  const points = [...corner, ...around].filter(
    (point, i, all) => i === 0 || point.x !== all[i - 1]!.x || point.y !== all[i - 1]!.y,
  );
  if (points.length > 3 && same(points[0]!, points.at(-1)!)) points.pop();
  const { name, onFold = false } = piece;
  const problem = outlineProblem({ name, width: whole, length, count: 1, onFold, outline: points });
  return problem ? { ok: false, problem } : answer(points);
}

const same = (one: Point, other: Point): boolean => one.x === other.x && one.y === other.y;

function widthsProblem(piece: PieceToShape, rows: readonly WidthAt[]): FabricProblems["badWidths"] | undefined {
  const { name, width, length, unit = null } = piece;
  const say = (value: number): string => formatLength(value, unit);
  const found = (what: FabricProblems["badWidths"]["what"], figure = "", wanted = "") =>
    ({ piece: name, what, figure, wanted }) as const;
  if (rows.length < 2) return found("few");
  const negative = rows.flatMap((row) => [row.height, row.width]).find((figure) => !(figure >= 0));
  if (negative !== undefined) return found("negative", say(negative));
  const back = rows.find(({ height }, i) => i > 0 && height <= rows[i - 1]!.height + SAME);
  if (back) return found("order", say(back.height));
  const [first, last] = [rows[0]!, rows.at(-1)!];
  if (last.height > length + SAME) return found("beyond", say(last.height), say(length));
  if (first.height >= SAME) return found("begins", say(first.height), say(length));
  if (last.height <= length - SAME) return found("ends", say(last.height), say(length));
  const pinched = rows.slice(1, -1).find((row) => row.width === 0);
  if (pinched) return found("pinched", say(pinched.height));
  const widest = Math.max(...rows.map((row) => row.width));
  if (widest === 0) return found("flat");
  if (widest > width + SAME) return found("wide", say(widest), say(width));
  if (widest < width - SAME) return found("narrow", say(widest), say(width));
  return undefined;
}

/**
 * The widths that an outline was made from, top or bottom first as asked; undefined for one that isn't of that kind.
 * What `outlineFromWidths` makes comes back.
 *
 * @example widthsFromOutline([{ x: 0, y: 0 }, { x: 30, y: 0 }, { x: 0, y: 62 }], { width: 30, length: 62 }, "bottom")
 * //=> { edge: "straight", rows: [{ height: 0, width: 30 }, { height: 62, width: 0 }] }
 */
export function widthsFromOutline(
  outline: readonly Point[],
  { width, length }: { readonly width: number; readonly length: number },
  from: HowShaped["from"],
): { readonly edge: HowShaped["edge"]; readonly rows: readonly WidthAt[] } | undefined {
  const heights = [...new Set(outline.map(({ y }) => y))].sort((a, b) => a - b);
  if (from === "top") heights.reverse();
  const acrossAt = heights.map((y) => outline.filter((point) => point.y === y).map(({ x }) => x));
  for (const edge of ["straight", "middle"] as const) {
    const rows = heights.map((y, i) => {
      const across = acrossAt[i]!;
      const [least, most] = [edge === "straight" ? 0 : Math.min(...across), Math.max(...across)];
      return { height: from === "bottom" ? y : clean(length - y), width: clean(most - least) };
    });
    const again = outlineFromWidths({ name: "", width, length }, rows, { edge, from });
    if (again.ok && sameCorners(again.value, outline)) return { edge, rows };
  }
  return undefined;
}

/** The same corners one after the other, wherever the list begins and whichever way it goes. */
function sameCorners(one: readonly Point[], other: readonly Point[]): boolean {
  const near = (a: Point, b: Point): boolean => Math.abs(a.x - b.x) < SAME && Math.abs(a.y - b.y) < SAME;
  const n = one.length;
  if (n !== other.length) return false;
  const from = other.findIndex((corner) => near(corner, one[0]!));
  if (from < 0) return false;
  return [1, -1].some((way) => one.every((corner, i) => near(corner, other[(((from + way * i) % n) + n) % n]!)));
}
