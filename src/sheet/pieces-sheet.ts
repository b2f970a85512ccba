import { call } from "./fit-formulas";
import { addressOfCell } from "./references";
import type { CellBlock, CellsPlan, PlannedColumn, SheetPlan } from "./plan";

export const PIECES_SHEET = "Pieces";
export const PIECES_TABLE = "Pieces";
export const LAYOUT_HEADINGS = ["Piece", "Layer", "Across", "Along", "Width", "Length", "Turned", "Note"] as const;

const yesNo = { list: ["yes", "no"] } as const;

/**
 * An empty list of pieces as the layout functions read it: lengths and widths as the PAPER piece lies, half of it when it
 * lies on the fold.
 */
export function piecesSheet(unit: "in" | "cm"): SheetPlan {
  const length = unit === "in" ? "fraction" : "general";
  const columns: readonly PlannedColumn[] = [
    { heading: "Piece", format: "text", width: 18 },
    { heading: "Length", format: length, note: "Along the grain, as the paper piece lies.", width: 9 },
    { heading: "Width", format: length, note: "Across the grain; half of it when it lies on the fold.", width: 9 },
    { heading: "Unit", format: "text", validation: { list: ["in", "cm"] }, width: 7 },
    { heading: "Count", format: "whole", note: "How many are cut: 2 for a pair, 1 on the fold.", width: 8 },
    { heading: "On fold", format: "text", validation: yesNo, width: 9 },
    {
      heading: "May turn",
      format: "text",
      note: "Whether the grain doesn't matter; bias for a piece that lies askew.",
      validation: { list: ["yes", "no", "bias"] },
      width: 10,
    },
    { heading: "Fabric", format: "text", note: "Which cloth, when there are several.", width: 12 },
    { heading: "Seam allowance", format: length, note: "Added on every edge but the fold.", width: 16 },
    { heading: "Hem", format: length, note: "Added at the bottom, instead of the seam allowance.", width: 8 },
    {
      heading: "Outline",
      format: "text",
      note: "Corner by corner: 0 0; 30 0; 24 60; 0 62. Across and along, from the piece's own corner.",
      width: 26,
    },
  ];
  const blank = columns.map(({ heading }) => (heading === "Unit" ? unit : null));
  return {
    sheet: PIECES_SHEET,
    blocks: [
      { row: 0, column: 0, cells: [[PIECES_SHEET]], format: "text", style: "title" },
      {
        row: 1,
        column: 0,
        cells: [["One paper piece a row. The Fabric section of the pane draws how they lie on the cloth."]],
        format: "text",
        style: "note",
      },
    ],
    tables: [{ name: PIECES_TABLE, row: 3, column: 0, columns, rows: [blank] }],
    frozenRows: 4,
    print: "lying",
  };
}

export interface LayoutFormulas {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** The pieces as a formula says them: Pieces[#All], or an address. */
  readonly pieces: string;
  readonly width: number;
  readonly unit: "in" | "cm";
  readonly layout: "single" | "folded";
  readonly repeat: number;
  readonly gap: number;
  /** How many fabrics the list names: a length for each. */
  readonly fabrics: number;
  readonly placements: number;
  /** Whether the table of placements is wanted too. */
  readonly plan: boolean;
}

/** The length to buy, and if wanted where each piece lies, as formulas beside the list. */
export function layoutFormulas(options: LayoutFormulas): CellsPlan {
  const { sheet, row, column, repeat, gap } = options;
  const given = (value: number): string | undefined => (value === 0 ? undefined : String(value));
  const asked = [
    options.pieces,
    String(options.width),
    options.unit === "in" ? '"yd"' : '"m"',
    `"${options.layout}"`,
    given(repeat) ?? (gap === 0 ? undefined : "0"),
    given(gap),
  ];
  const [unit, step, format] =
    options.unit === "in" ? (["yd", 0.125, "fraction"] as const) : (["m", 0.1, "thousandths"] as const);
  const { fabrics } = options;
  const spill = [fabrics, fabrics > 1 ? 2 : 1] as const;
  const blocks: CellBlock[] = [
    { row, column, cells: [[`Length needed (${unit})`]], format: "text" },
    { row, column: column + 1, cells: [[{ formula: call("SEW.LAYOUTLENGTH", asked), spill }]], format },
  ];
  if (fabrics === 1) {
    const formula = call("SEW.BUYLENGTH", [addressOfCell(row, column + 1), String(step)]);
    blocks.push({ row: row + 1, column, cells: [["To buy"]], format: "text" });
    blocks.push({ row: row + 1, column: column + 1, cells: [[{ formula }]], format });
  }
  if (options.plan) {
    blocks.push({
      row: row + options.fabrics + 1,
      column,
      cells: [[...LAYOUT_HEADINGS]],
      format: "text",
      style: "heading",
    });
    const all = [options.placements, LAYOUT_HEADINGS.length] as const;
    blocks.push({
      row: row + options.fabrics + 2,
      column,
      cells: [[{ formula: call("SEW.LAYOUTPLAN", asked), spill: all }]],
    });
  }
  return { sheet, blocks };
}
