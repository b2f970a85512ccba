import type { CellFormat, PlannedCell, PlannedColumn, TablePlan } from "../../src/index";

/** What Excel's cells hold and are given. */
export type CellValue = string | number | boolean;
/** A rectangle of cells, counted from 0. */
export interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

const NUMBER_FORMATS: Readonly<Record<CellFormat, string>> = {
  general: "General",
  text: "@",
  fraction: "# ?/??",
  tenths: "0.0#",
  thousandths: "0.0##",
  whole: "0",
  money: "#,##0.00",
  percent: "0%",
  date: "yyyy-mm-dd",
};

/** The number format of a cell. A formula in a cell of the text format would stay its own text, so it gets none. */
export function numberFormat(format: CellFormat, cell: PlannedCell): string {
  const formula = cell !== null && typeof cell === "object";
  return NUMBER_FORMATS[formula && format === "text" ? "general" : format];
}

/**
 * What is handed to Excel for a planned cell; null leaves the cell alone, "" empties it. A string is always to stay text: in a cell of
 * the text format Excel takes it as it is, but for a leading apostrophe, and a leading sign of a formula gets an
 * apostrophe in front on top; in any other cell every string gets one, or 6-12 becomes a date and TRUE a truth value.
 */
export function written(cell: PlannedCell, format: CellFormat): CellValue | null {
  if (cell === null) return null;
  if (typeof cell === "object") return cell.formula;
  return typeof cell === "string" ? asText(cell, NUMBER_FORMATS[format]) : cell;
}

/** A text as it must be written so that the cell holds exactly it. */
export function asText(text: string, numberFormatOfCell: string): string {
  if (text === "") return "";
  return numberFormatOfCell !== "@" || /^[=+\-@'\s]/.test(text) ? `'${text}` : text;
}

/** Whether a cell holds what was planned for it; formulas are Excel's own affair. */
export function holds(cell: PlannedCell, value: CellValue): boolean {
  if (cell === null) return value === "";
  if (typeof cell === "object") return true;
  // Excel keeps fifteen digits.
  if (typeof cell === "number" && typeof value === "number") return Math.abs(cell - value) <= 1e-12 * Math.abs(cell);
  return value === cell;
}

/** A formula is told from a text that looks like one by its value, which is not the formula's own text. */
export function isFormulaCell(formula: CellValue, value: CellValue): boolean {
  return typeof formula === "string" && formula.startsWith("=") && formula !== value;
}

/** What puts a cell back as it was. */
export function restored(formula: CellValue, value: CellValue, format: string): CellValue {
  return typeof formula === "string" && !isFormulaCell(formula, value) ? asText(formula, format) : formula;
}

/** Everything a table holds, its headings first. */
export function tableCells(table: TablePlan): readonly (readonly PlannedCell[])[] {
  return [table.columns.map(({ heading }) => heading), ...table.rows];
}

/** The smallest rectangle that holds all of these, undefined for none. */
export function around(areas: readonly Area[]): Area | undefined {
  if (areas.length === 0) return undefined;
  const row = Math.min(...areas.map((area) => area.row));
  const column = Math.min(...areas.map((area) => area.column));
  return {
    row,
    column,
    rows: Math.max(...areas.map((area) => area.row + area.rows)) - row,
    columns: Math.max(...areas.map((area) => area.column + area.columns)) - column,
  };
}

/** Where a block of cells and the answers of its formulas will stand. */
export function areaOf(
  cells: readonly (readonly PlannedCell[])[],
  row: number,
  column: number,
): { readonly block: Area; readonly spills: readonly Area[] } {
  const block = { row, column, rows: cells.length, columns: Math.max(0, ...cells.map((line) => line.length)) };
  const spills = cells.flatMap((line, r) =>
    line.flatMap((cell, c): Area[] => {
      const spill = cell !== null && typeof cell === "object" ? cell.spill : undefined;
      return spill ? [{ row: row + r, column: column + c, rows: spill[0], columns: spill[1] }] : [];
    }),
  );
  return { block, spills };
}

/** Characters a request may hold; Excel on the web refuses 5 MB, and the client adds its own. */
export const REQUEST_SIZE = 1_000_000;

/** Characters that naming a range adds to a request. */
export const PLACE_SIZE = 1000;

export const sizeOf = (cells: unknown): number => JSON.stringify(cells).length;

/** Rows cut into runs that are small enough for one request. A single row is never cut. */
export function slices<T>(rows: readonly T[], limit = REQUEST_SIZE, size: (row: T) => number = sizeOf): T[][] {
  const parts: T[][] = [];
  let sum = Infinity;
  for (const row of rows) {
    const length = size(row) + 1;
    if (sum + length > limit) {
      parts.push([]);
      sum = 0;
    }
    parts.at(-1)!.push(row);
    sum += length;
  }
  return parts;
}

const WIDEST = 42;
/** An answer of unknown length. */
const FORMULA_WIDTH = 11;

/** How wide the columns of a sheet's tables must be, in characters. */
export function columnWidths(tables: readonly TablePlan[]): Map<number, number> {
  const widths = new Map<number, number>();
  for (const table of tables) {
    table.columns.forEach((column, index) => {
      const at = table.column + index;
      widths.set(at, Math.max(widths.get(at) ?? 0, widthOf(column, table.rows, index)));
    });
  }
  return widths;
}

function widthOf(column: PlannedColumn, rows: TablePlan["rows"], index: number): number {
  if (column.width) return column.width;
  // The heading has a filter button beside it.
  let widest = column.heading.length + 4;
  for (const row of rows) {
    const cell = row[index] ?? "";
    widest = Math.max(widest, typeof cell === "object" ? FORMULA_WIDTH : cell.toString().length + 2);
  }
  return Math.min(WIDEST, widest);
}

/** Excel measures in points; a character of its usual font is about 5.4 of them wide, with some air at the sides. */
export const points = (characters: number): number => Math.round(characters * 5.4 + 6);

/** Short and the same for the same cells: tells whether a sheet has been changed since it was written. */
export function fingerprint(cells: readonly (readonly CellValue[])[]): string {
  let hash = 0x811c9dc5;
  for (const unit of JSON.stringify(cells)) hash = Math.imul(hash ^ unit.codePointAt(0)!, 0x01000193) >>> 0;
  return hash.toString(16);
}

/**
 * A rectangle's address as a person reads it.
 *
 * @example addressOf({ row: 0, column: 27, rows: 2, columns: 1 }) //=> "AB1:AB2"
 */
export function addressOf({ row, column, rows, columns }: Area): string {
  const first = `${columnLetters(column)}${row + 1}`;
  return rows * columns === 1 ? first : `${first}:${columnLetters(column + columns - 1)}${row + rows}`;
}

export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnLetters(Math.floor(column / 26) - 1) + letter;
}
