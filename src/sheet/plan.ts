/**
 * What a sheet looks like, as data. The engine only describes; the pane's one file that talks to Excel carries a plan
 * out and can take it back. Rows and columns are counted from 0.
 *
 * A string is always text, whatever it starts with: only `{ formula }` becomes a formula, so a pasted "=1+1" cannot.
 */
export interface PlannedFormula {
  /** English function names, commas, "=" in front; one formula fills its spill by itself. */
  readonly formula: string;
}
/** null leaves the cell empty. */
export type PlannedCell = string | number | boolean | null | PlannedFormula;

/** What a number looks like; "text" is set before anything is written, because Excel makes dates of 6-12 and 7/8. */
export type CellFormat =
  | "general"
  | "text"
  | "fraction" // inches and yards: # ?/??
  | "tenths" // centimetres and metres: 0.0#
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
}

/** What may be typed into a column. A list from a range is a formula such as "=Patterns[Pattern]". */
export type Validation =
  | { readonly list: readonly string[] }
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
  readonly frozenRows?: number;
  /** Printed one page wide, upright or lying. */
  readonly print?: "upright" | "lying";
}
