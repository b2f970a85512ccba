import {
  answer,
  cellText,
  cellTries,
  convert,
  isBlank,
  isMissing,
  layoutPlanRows,
  readLengthCell,
  readPieces,
  readUnitCell,
  readWidthCell,
  refuse,
  rememberedLayouts,
  type BodyUnit,
  type Cell,
  type Cloth,
  type FabricUnit,
  type Layout,
  type PiecesOfFabric,
  type Result,
} from "../src/index";
import { cellsOf, oneCell, plan, single } from "./cells";
import { guarded, need } from "./errors";

/** The last layouts stay: whatever changes in the workbook, most lists are asked for again as they were. */
const layoutOf = rememberedLayouts(200);

/**
 * Gives the length to buy, in yards or metres, that a list of paper pieces needs by our cutting layout; not yet rounded to what the shop cuts by.
 * @customfunction LAYOUTLENGTH LAYOUTLENGTH
 * @param pieces The pieces with their headings: Piece, Length, Width, Count, and if wanted Unit, On fold, May turn, Fabric, Seam allowance, Hem, Outline.
 * @param width The usable width of the cloth, such as 45 or 140 cm.
 * @param unit The unit of the answer, yd or m; numbers without a unit are in inches with yd and in centimetres with m.
 * @param [layout] How the cloth lies: single or folded; left out, single.
 * @param [repeat] One repeat of the print along the cloth, which every piece starts on; left out, none.
 * @param [gap] Room kept between pieces; left out, none.
 * @returns The length; with several fabrics a row for each, its name first.
 */
export function layoutLength(
  pieces: any[][],
  width: any[][],
  unit: any[][],
  layout?: any[][],
  repeat?: any[][],
  gap?: any[][],
): any[][] {
  return guarded(() => {
    const { laid, into } = need(layouts(pieces, width, unit, layout, repeat, gap));
    const lengths = laid.map(({ layout: { length }, body }) => convert(length!, body, into));
    if (laid.length === 1) return single(() => answer(lengths[0]!));
    return plan(() => answer(laid.map(({ fabric }, i) => [fabric.name || "(no fabric named)", lengths[i]!])));
  });
}

/**
 * Lists where each paper piece lies by our cutting layout: piece, layer, across, along, width, length, turned and a note, in inches or centimetres.
 * @customfunction LAYOUTPLAN LAYOUTPLAN
 * @param pieces The pieces with their headings: Piece, Length, Width, Count, and if wanted Unit, On fold, May turn, Fabric, Seam allowance, Hem, Outline.
 * @param width The usable width of the cloth, such as 45 or 140 cm.
 * @param unit The unit of the length to buy, yd or m; the placements are in inches with yd and in centimetres with m.
 * @param [layout] How the cloth lies: single or folded; left out, single.
 * @param [repeat] One repeat of the print along the cloth, which every piece starts on; left out, none.
 * @param [gap] Room kept between pieces; left out, none.
 * @returns A row for each piece as it is laid, from the beginning of the cloth.
 */
export function layoutPlan(
  pieces: any[][],
  width: any[][],
  unit: any[][],
  layout?: any[][],
  repeat?: any[][],
  gap?: any[][],
): any[][] {
  return plan(() => {
    const { laid } = need(layouts(pieces, width, unit, layout, repeat, gap));
    const several = laid.length > 1;
    return answer(
      laid.flatMap(({ layout, fabric, body }) =>
        layoutPlanRows(layout, fabric.pieces, body, several ? fabric.name : ""),
      ),
    );
  });
}

interface Laid {
  readonly fabric: PiecesOfFabric;
  readonly layout: Layout;
  readonly body: BodyUnit;
}

function layouts(
  pieces: unknown,
  width: unknown,
  unit: unknown,
  layout: unknown,
  repeat: unknown,
  gap: unknown,
): Result<{ readonly laid: readonly Laid[]; readonly into: FabricUnit }> {
  const into = readUnitCell(oneCell(unit, "The unit"));
  if (!into.ok) return into;
  const known = into.value?.unit ?? null;
  if (known === null) return refuse("blank", { wanted: "the unit, yd or m," });
  const body: BodyUnit = known === "yd" || known === "in" ? "in" : "cm";
  const cloth = readCloth(
    oneCell(width, "The width"),
    oneCell(layout, "The layout"),
    oneCell(repeat, "The repeat"),
    oneCell(gap, "The gap"),
    body,
  );
  if (!cloth.ok) return cloth;
  const fabrics = readPieces(cellsOf(pieces), body);
  if (!fabrics.ok) return fabrics;
  const laid: Laid[] = [];
  for (const fabric of fabrics.value) {
    const found = layoutOf(fabric.pieces, cloth.value, { tries: cellTries(fabric.pieces) });
    if (found.length === null) return { ok: false, problem: found.problems[0]! };
    laid.push({ fabric, layout: found, body });
  }
  return answer({ laid, into: body === "in" ? "yd" : "m" });
}

function readCloth(width: Cell, layout: Cell, repeat: Cell, gap: Cell, body: BodyUnit): Result<Cloth> {
  const wide = readWidthCell(width);
  if (!wide.ok) return wide;
  const word = isBlank(layout) ? "single" : cellText(layout).toLowerCase();
  if (word !== "single" && word !== "folded") return refuse("unknownLayout", { text: cellText(layout) });
  const between = [smallLength(repeat, "a repeat", body), smallLength(gap, "a gap", body)] as const;
  for (const read of between) if (!read.ok) return read;
  const [by, room] = between.map((read) => (read.ok ? read.value : 0));
  return answer({
    width: wide.value.unit ? convert(wide.value.value, wide.value.unit, body) : wide.value.value,
    layout: word,
    unit: body,
    ...(by && { repeat: by }),
    ...(room && { gap: room }),
  });
}

function smallLength(cell: Cell, wanted: string, body: BodyUnit): Result<number> {
  if (isMissing(cell)) return answer(0);
  const read = readLengthCell(cell, wanted);
  if (!read.ok) return read;
  return answer(read.value.unit ? convert(read.value.value, read.value.unit, body) : read.value.value);
}
