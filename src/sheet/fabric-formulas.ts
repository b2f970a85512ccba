import { addressOfCell } from "./references";
import { call } from "./fit-formulas";
import type { CellBlock, CellFormat, CellsPlan, PlannedCell } from "./plan";

/** What is bought for one view of a pattern; null and undefined are left blank and mean what the functions say. */
export interface FabricFormulas {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly table: string;
  readonly unit: "yd" | "m";
  readonly view: string;
  readonly part: string;
  /** As it is written: "45 in". */
  readonly width: string;
  readonly size: string;
  readonly nap: string | null;
  readonly estimate: boolean;
  /** A share: 0.05. */
  readonly shrinkage: number;
  readonly repeat: number;
  readonly repeatUnit: "in" | "cm";
  readonly lengths: number;
  readonly step: number;
}

/**
 * The amount to buy as formulas beside the chart: what was chosen stands in cells of its own, to be changed there, with
 * the printed amount, the amount with everything extra, and what the shop cuts, below.
 */
export function fabricFormulas(options: FabricFormulas): CellsPlan {
  const { sheet, row, column, unit } = options;
  const cloth: CellFormat = unit === "yd" ? "fraction" : "thousandths";
  const given: readonly (readonly [label: string, cell: PlannedCell, format: CellFormat])[] = [
    ["View", options.view, "text"],
    ["Part", options.part, "text"],
    ["Fabric width", options.width, "text"],
    ["Size", options.size, "text"],
    ["Nap", options.nap, "text"],
    ["Estimate another width", options.estimate, "general"],
    ["Shrinkage", options.shrinkage, "percent"],
    [`Repeat (${options.repeatUnit})`, options.repeat, "general"],
    ["Lengths to match", options.lengths, "general"],
    ["The shop cuts by", options.step, cloth],
  ];
  const at = (index: number): string => addressOfCell(row + 1 + index, column + 1);
  const [view, part, width, size, nap, estimate, shrinkage, repeat, lengths, step] = given.map((_, index) => at(index));
  const inUnit = `"${unit}"`;
  const answers: readonly (readonly [label: string, formula: string])[] = [
    ["Printed", call("SEW.YARDAGE", [`${options.table}[#All]`, view, width, size, part, nap, estimate])],
    [
      "With everything extra",
      call("SEW.EXTRAYARDAGE", [at(given.length), inUnit, shrinkage, repeat, `"${options.repeatUnit}"`, lengths]),
    ],
    ["To buy", call("SEW.BUYLENGTH", [at(given.length + 1), step])],
  ];
  const first = row + 1;
  const label = (text: string, index: number): CellBlock => ({
    row: first + index,
    column,
    cells: [[text]],
    format: "text",
  });
  return {
    sheet,
    blocks: [
      { row, column, cells: [[`Fabric to buy (${unit})`]], format: "text", style: "heading" },
      ...given.flatMap(([text, cell, format], index): CellBlock[] => [
        label(text, index),
        { row: first + index, column: column + 1, cells: [[cell]], format },
      ]),
      ...answers.flatMap(([text, formula], index): CellBlock[] => [
        label(text, given.length + index),
        { row: first + given.length + index, column: column + 1, cells: [[{ formula }]], format: cloth },
      ]),
    ],
  };
}
