/** Writing values and formulas into a range, as Excel takes them. */
import type { ICellData } from "@univerjs/core";
import { fail } from "../../host/objects";
import type { Range } from "./range";
import { finder } from "./formulas-in";
import { resolved } from "./structured";
import type { Table } from "./table";
import type { CellValue } from "./typed";
import { written } from "./values";

type Grid<T> = (T | null)[][];

/** One value for all cells, or a grid of the same shape; anything else is the caller's mistake. */
export function asGrid<T>(range: Range, input: unknown): Grid<T> {
  const fits = (grid: Grid<T>) =>
    grid.length === range.rows && grid.every((row) => Array.isArray(row) && row.length === range.columns);
  if (!Array.isArray(input)) {
    if (range.CellCount > 5_000_000) fail("InvalidArgument", " (one value for whole rows or columns)");
    return Array.from({ length: range.rows }, () => Array<T | null>(range.columns).fill(input as T));
  }
  return fits(input as Grid<T>)
    ? (input as Grid<T>)
    : fail("InvalidArgument", " (the array does not have the shape of the range)");
}

/** null leaves a cell as it is, "" empties it. */
export function writeCells(range: Range, input: unknown): void {
  const grid = asGrid<CellValue>(range, input);
  const cells = range.writable();
  const formats = cells.getNumberFormats();
  const tables = range.GetTables().all();
  const sparse: Record<number, Record<number, ICellData>> = {};
  const given: { readonly row: number; readonly column: number; readonly format: string }[] = [];
  grid.forEach((line, r) =>
    line.forEach((value, c) => {
      if (value === null) return;
      const row = range.row + r;
      const column = range.column + c;
      const table = tables.find((one) => one.covers(row, column));
      const heading = table !== undefined && row === table.core.row;
      const { cell, format } = written(
        heading ? headingText(value, column, table) : value,
        heading ? "@" : formats[r]?.[c] || "General",
      );
      (sparse[row] ??= {})[column] = cell.f ? { ...cell, f: checkedFormula(range, cell.f, table) } : cell;
      if (format !== undefined) given.push({ row, column, format });
    }),
  );
  cells.setValues(sparse);
  for (const { row, column, format } of given) range.sheet.GetCell(row, column).facade().setNumberFormat(format);
}

/** A table's headings are text, and none of them is empty. */
function headingText(value: CellValue, column: number, table: Table): CellValue {
  return value === "" ? `Column${column - table.core.column + 1}` : value;
}

/** Excel refuses a formula that it cannot read, or one that mentions a table or a column that does not exist. */
function checkedFormula(range: Range, formula: string, own: Table | undefined): string {
  const { book } = range.sheet;
  const { formula: long, missing } = resolved(formula, finder(book), own);
  if (missing.length > 0) fail("InvalidArgument", ` (${missing.join(", ")} in ${formula} is not there)`);
  return book.readable(long) ? long : fail("InvalidArgument", ` (the formula ${formula} cannot be read)`);
}
