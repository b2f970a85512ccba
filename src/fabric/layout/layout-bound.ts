import { shownBound } from "./bound";
import { outlineArea } from "./outline-area";
import { fitsFolded, singlePart } from "./parts";
import { fromSteps, stepsUp } from "./steps";
import type { StripCloth } from "./strip";
import type { Cloth, CutPiece } from "./types";

/**
 * No layout by boxes is shorter, in the caller's unit. Folded cloth opened out is single cloth, so the bound of the single
 * layout holds for it (but for the gap, which isn't kept across the fold); and what lies on the fold and what only fits
 * opened can't lie beside each other: their lengths add up.
 *
 * With outlines only their areas and the longest piece count.
 *
 * @param single the opened cloth in steps
 */
export function layoutBound(pieces: readonly CutPiece[], cloth: Cloth, halfWidth: number, single: StripCloth): number {
  const folded = cloth.layout === "folded";
  if (pieces.some(({ outline }) => outline)) return outlineBound(pieces, cloth);
  const boxes = pieces.flatMap((piece) => {
    const { box } = singlePart(piece, false);
    // On folded cloth a piece on the fold is never turned, and one that may turn may do so in each layer.
    const flat = folded && piece.onFold ? { ...box, mayTurn: false } : box;
    return Array.from({ length: piece.count }, () => flat);
  });
  const opened = shownBound(boxes, folded ? { ...single, width: single.width + single.gap } : single);
  return fromSteps(folded ? Math.max(opened, stackBound(pieces, halfWidth, single)) : opened);
}

/** What lies on the fold, and what is too wide to lie folded, one above another. */
function stackBound(pieces: readonly CutPiece[], halfWidth: number, { gap, repeat }: StripCloth): number {
  let stack = 0;
  let whole = 0;
  for (const piece of pieces) {
    if (!piece.onFold && fitsFolded(piece, halfWidth)) continue;
    const length = stepsUp(piece.mayTurn && !piece.onFold ? Math.min(piece.length, piece.width) : piece.length);
    stack += (length + gap) * piece.count;
    if (repeat > 0) whole += Math.ceil((length + gap) / repeat) * repeat * piece.count;
  }
  return Math.max(stack - gap, whole - gap - repeat + 1, 0);
}

function outlineBound(pieces: readonly CutPiece[], cloth: Cloth): number {
  let area = 0;
  let longest = 0;
  for (const piece of pieces) {
    const { width, length, outline, count, onFold, mayTurn } = piece;
    area += (outline ? outlineArea(outline) : width * length) * count * (onFold ? 2 : 1);
    const turned = mayTurn && !(onFold && cloth.layout === "folded");
    longest = Math.max(longest, turned ? Math.min(length, onFold ? 2 * width : width) : length);
  }
  // A little below, for the binary dust of many small sums.
  return Math.max(longest, (area / cloth.width) * (1 - 1e-9));
}
