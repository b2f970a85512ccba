import { clean } from "../../length";
import { fromSteps } from "./steps";
import type { Placement } from "./types";
import { linesOf } from "./ways";
import type { Spot } from "./zone";

/** The placements in the caller's unit, from the beginning of the cloth and from left to right. */
export function placementsOf(folded: readonly Spot[], single: readonly Spot[], singleStart: number): Placement[] {
  return [...folded.map((spot) => placement(spot, 0)), ...single.map((spot) => placement(spot, singleStart))].sort(
    (a, b) => a.y - b.y || a.x - b.x || (a.piece < b.piece ? -1 : a.piece > b.piece ? 1 : 0),
  );
}

function placement({ part, x, y, turned, way }: Spot, start: number): Placement {
  const { piece, layer, box } = part;
  const across = layer === "single" && piece.onFold ? 2 * piece.width : piece.width;
  const left = fromSteps(x);
  const from = fromSteps(y + start);
  const placed = {
    piece: piece.name,
    layer,
    x: left,
    y: from,
    width: turned ? piece.length : across,
    length: turned ? across : piece.length,
    turned,
    onFold: box.onFold,
  };
  if (!piece.outline) return placed;
  const lines = linesOf(part, way ?? { turned, flipX: part.mirrored, flipY: false });
  return {
    ...placed,
    outline: joined(lines).map((point) => ({ x: clean(left + point.x), y: clean(from + point.y) })),
  };
}

/** An opened fold piece has two halves, which meet on the edge that lay on the fold: one line around both. */
function joined(lines: readonly (readonly { readonly x: number; readonly y: number }[])[]) {
  const [half, mirror] = lines;
  if (!half) return [];
  if (!mirror) return half;
  return [...half, half[0]!, ...mirror, mirror[0]!];
}
