import {
  cellText,
  cellTries,
  clothUnitOf,
  convert,
  isBlank,
  isMissing,
  layoutPlanRows,
  lengthInto,
  readLengthCell,
  readPieces,
  readUnitCell,
  readWidthCell,
  refuse,
  rememberedLayouts,
  smallUnitOf,
  type BodyUnit,
  type Cell,
  type Cloth,
  type FabricUnit,
  type Layout,
  type PiecesOfFabric,
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
    const { laid, into } = layouts(pieces, width, unit, layout, repeat, gap);
    const lengths = laid.map(({ layout: { length }, body }) => convert(length!, body, into));
    if (laid.length === 1) return single(() => lengths[0]!);
    return plan(() => laid.map(({ fabric }, i) => [fabric.name || "(no fabric named)", lengths[i]!]));
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
    const { laid } = layouts(pieces, width, unit, layout, repeat, gap);
    return laid.flatMap(({ layout, fabric, body }) =>
      layoutPlanRows(layout, fabric.pieces, body, laid.length > 1 ? fabric.name : ""),
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
): { readonly laid: readonly Laid[]; readonly into: FabricUnit } {
  const known = need(readUnitCell(oneCell(unit, "The unit")))?.unit;
  if (known === undefined) return need(refuse("blank", { wanted: "the unit, yd or m," }));
  const body = smallUnitOf(known);
  const cloth = readCloth(
    oneCell(width, "The width"),
    oneCell(layout, "The layout"),
    oneCell(repeat, "The repeat"),
    oneCell(gap, "The gap"),
    body,
  );
  const laid = need(readPieces(cellsOf(pieces), body)).map((fabric): Laid => {
    const found = layoutOf(fabric.pieces, cloth, { tries: cellTries(fabric.pieces) });
    return found.length === null ? need({ ok: false, problem: found.problems[0]! }) : { fabric, layout: found, body };
  });
  return { laid, into: clothUnitOf(known) };
}

function readCloth(width: Cell, layout: Cell, repeat: Cell, gap: Cell, body: BodyUnit): Cloth {
  const wide = lengthInto(need(readWidthCell(width)), body);
  const word = isBlank(layout) ? "single" : cellText(layout).toLowerCase();
  if (word !== "single" && word !== "folded") return need(refuse("unknownLayout", { text: cellText(layout) }));
  const by = smallLength(repeat, "a repeat", body);
  const room = smallLength(gap, "a gap", body);
  return { width: wide, layout: word, unit: body, ...(by && { repeat: by }), ...(room && { gap: room }) };
}

const smallLength = (cell: Cell, wanted: string, body: BodyUnit): number =>
  isMissing(cell) ? 0 : lengthInto(need(readLengthCell(cell, wanted)), body);
