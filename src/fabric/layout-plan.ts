import type { BodyUnit } from "../chart/model";
import { convert, formatLength } from "../length";
import { sentence } from "../words";
import { layoutNotes } from "../words/fabric";
import type { CutPiece, Layout, Placement } from "./layout/types";

/** Piece, layer, across, along, width, length, turned, note. */
export type LayoutPlanRow = readonly [string, string, number, number, number, number, string, string];

/**
 * A layout as rows of a table, in its own unit. The first note says what the whole takes and how near that is to what no
 * layout can be shorter than; the others how each piece lies.
 *
 * @param fabric names the cloth in every note; "" where there is only one
 */
export function layoutPlanRows(
  layout: Layout,
  pieces: readonly CutPiece[],
  unit: BodyUnit,
  fabric = "",
): readonly LayoutPlanRow[] {
  const odd = oddOnes(layout.placements, pieces);
  return layout.placements.map((placement, i) => {
    const notes = [i === 0 ? wholeNote(layout, unit) : "", layerNote(placement, layout, odd.has(placement))];
    const words = notes.filter(Boolean).join(" ");
    const note = words === "" ? fabric : layoutNotes.of(fabric) + words;
    const { piece, layer, x, y, width, length, turned } = placement;
    return [piece, layer, x, y, width, length, turned ? "yes" : "", note];
  });
}

function wholeNote({ length, lowerBound, proved, by, tries, problems }: Layout, unit: BodyUnit): string {
  const whole = bought(length ?? 0, unit);
  const notes = problems.map(sentence);
  notes.unshift(
    proved ? layoutNotes.proved(by, whole) : layoutNotes.whole(by, whole, bought(lowerBound, unit), String(tries)),
  );
  return notes.join(" ");
}

/** Inches as the yards of a shop, centimetres as its metres. */
function bought(length: number, unit: BodyUnit): string {
  const to = unit === "in" ? "yd" : "m";
  return formatLength(convert(length, unit, to), to);
}

function layerNote(placement: Placement, layout: Layout, odd: boolean): string {
  if (placement.onFold) return layoutNotes.onFold;
  if (placement.layer === "folded") return odd ? layoutNotes.odd : layoutNotes.pair;
  return layout.placements.some(({ layer }) => layer === "folded") ? layoutNotes.opened : "";
}

/** The last placement of a piece of which an odd number is cut through both layers. */
function oddOnes(placements: readonly Placement[], pieces: readonly CutPiece[]): ReadonlySet<Placement> {
  const found = new Set<Placement>();
  for (const { name } of pieces) {
    const mine = placements.filter(({ piece, layer, onFold }) => piece === name && layer === "folded" && !onFold);
    const single = placements.filter(({ piece, layer }) => piece === name && layer === "single").length;
    const wanted = pieces.filter((piece) => piece.name === name).reduce((sum, { count }) => sum + count, 0);
    if (mine.length > 0 && mine.length * 2 + single > wanted) found.add(mine.at(-1)!);
  }
  return found;
}
