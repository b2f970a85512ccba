/**
 * What a sheet looks like, as data. The engine only describes; the pane's one file that talks to Excel carries a plan
 * out and can take it back. Rows and columns are counted from 0.
 *
 * A string is always text, whatever it starts with: only `{ formula }` becomes a formula, so a pasted "=1+1" cannot.
 */
export interface PlannedFormula {
  /** English function names, commas, "=" in front; one formula fills its spill by itself. */
  readonly formula: string;
  /** Rows and columns that the answer is expected to fill: they must be empty before the formula is written. */
  readonly spill?: readonly [rows: number, columns: number];
}
/** null leaves the cell empty. */
export type PlannedCell = string | number | boolean | null | PlannedFormula;

export const isFormula = (cell: PlannedCell): cell is PlannedFormula => cell !== null && typeof cell === "object";

/** What a number looks like; "text" is set before anything is written, because Excel makes dates of 6-12 and 7/8. */
export type CellFormat =
  | "general" // centimetres and metres stand as they are
  | "text"
  | "fraction" // inches and yards: # ?/??
  | "tenths" // 0.0#
  | "thousandths" // yards and metres in one column: 0.0##, because a rounded 2.38 would hide 2 3/8
  | "whole"
  | "money"
  | "percent"
  | "date";

export type CellStyle = "title" | "heading" | "input" | "note" | "total" | "caution";

export interface CellBlock {
  readonly row: number;
  readonly column: number;
  readonly cells: readonly (readonly PlannedCell[])[];
  readonly format?: CellFormat;
  readonly style?: CellStyle;
  /** Height of its rows in points; as Excel likes when absent. */
  readonly height?: number;
}

/** What may be typed into a column. A list from a range is a formula such as "=INDIRECT("Patterns[Pattern]")". */
export type Validation =
  /** `open`: other words may be typed too, such as a garment that she has added herself. */
  | { readonly list: readonly string[]; readonly open?: true }
  | { readonly listFrom: string }
  | { readonly from: number; readonly to?: number };

/** A conditional colour; it never carries meaning alone, the words beside it do. `formula` is for the first data row. */
export interface Emphasis {
  readonly formula: string;
  readonly tone: "attention" | "quiet" | "good";
}

export interface PlannedColumn {
  readonly heading: string;
  readonly format: CellFormat;
  /** Shown as a comment on the heading. */
  readonly note?: string;
  readonly validation?: Validation;
  readonly emphasis?: Emphasis;
  /** In characters of the sheet's font; measured from the cells when absent. */
  readonly width?: number;
  /** Longer texts go on in a second line of their cell instead of running on over the next one. */
  readonly wraps?: true;
}

export interface TablePlan {
  readonly name: string;
  readonly row: number;
  readonly column: number;
  readonly columns: readonly PlannedColumn[];
  readonly rows: readonly (readonly PlannedCell[])[];
}

export interface SheetPlan {
  /** The name wanted for the sheet, at most 31 characters. */
  readonly sheet: string;
  readonly blocks: readonly CellBlock[];
  readonly tables: readonly TablePlan[];
  /** Widths of the first columns in characters; null leaves one to its table. */
  readonly widths?: readonly (number | null)[];
  readonly frozenRows?: number;
  /**
   * Printed one page wide, upright or lying. No paper is chosen: whichever lies in her printer, A4 or Letter, the sheet is
   * made narrower until it fits, and as many pages long as it needs.
   */
  readonly print?: "upright" | "lying";
}

/** Cells of a sheet that is already there. Filled ones are not written over unless a person has said so. */
export interface CellsPlan {
  readonly sheet: string;
  readonly blocks: readonly CellBlock[];
  /** A formula that starts so is one that the pane keeps itself: it may be replaced without asking. */
  readonly kept?: string;
  /** The formula that its first cell held when this was planned: another one meanwhile is not written over. */
  readonly expected?: string;
}

/** Columns put at the right end of a table that is already there; `cell` stands in each of its rows. */
export interface ColumnsPlan {
  readonly table: string;
  readonly columns: readonly (PlannedColumn & { readonly cell: PlannedCell })[];
}

/** A name for a range, so that a formula can say `Charts` instead of an address. */
export interface PlannedName {
  readonly name: string;
  /** A reference with "=" in front. */
  readonly formula: string;
  readonly note?: string;
}

/** Everything one press of a button writes. It is written whole or not at all, in this order. */
export interface WorkbookPlan {
  readonly sheets?: readonly SheetPlan[];
  readonly cells?: readonly CellsPlan[];
  readonly columns?: readonly ColumnsPlan[];
  /** A name that is already there is pointed anew. */
  readonly names?: readonly PlannedName[];
  /**
   * Texts that the workbook keeps for the pane; null forgets one. What is forgotten goes last, and so does a text that is
   * `lessThanBefore`: until the cells are written, all that was remembered is still needed.
   */
  readonly kept?: readonly { readonly key: string; readonly text: string | null; readonly lessThanBefore?: true }[];
  /** The sheet to show afterwards. */
  readonly show?: string;
}
