/** `range.copyFrom()` within one workbook: values, formulas that move with the cells, formats. */
import { fail } from "../../host/objects";
import type { Range } from "./range";

export type CopyWhat = "All" | "Formulas" | "Values" | "Formats";

const COPY = { All: undefined, Formulas: "formula", Values: "value", Formats: "format" } as const;

export function copyFrom(to: Range, from: Range, what: CopyWhat, skipBlanks: boolean, transpose: boolean): void {
  if (!(what in COPY)) fail("ApiNotFound", `copyFrom(${what})`);
  if (transpose) fail("ApiNotFound", "copyFrom(…, transpose)");
  // One cell fills the whole target; anything else keeps the source's own size.
  const rows = from.rows === 1 ? to.rows : from.rows;
  const columns = from.columns === 1 ? to.columns : from.columns;
  const target = to.GetAbsoluteResizedRange(rows, columns);
  if (what !== "Formats") copyContents(target, from, what === "Values", skipBlanks);
  if (what === "Formats" || what === "All") copyFormats(target, from);
}

function copyContents(target: Range, from: Range, valuesOnly: boolean, skipBlanks: boolean): void {
  const { book } = from.sheet;
  const values = from.Values;
  const formulas = from.map((_cell, formula) => formula);
  const grid = Array.from({ length: target.rows }, (_, r) =>
    Array.from({ length: target.columns }, (_, c) => {
      const fromRow = from.rows === 1 ? 0 : r;
      const fromColumn = from.columns === 1 ? 0 : c;
      const formula = valuesOnly ? "" : formulas[fromRow]?.[fromColumn];
      if (formula) {
        const down = target.row + r - from.row - fromRow;
        return book.moved(formula, target.column + c - from.column - fromColumn, down);
      }
      const value = values[fromRow]?.[fromColumn] ?? "";
      if (value === "") return skipBlanks ? null : "";
      return typeof value === "string" ? `'${value}` : value;
    }),
  );
  target.Formulas = grid;
}

/** By a mutation that says where it comes from: otherwise Univer takes the formula of a cell that gets only a style. */
function copyFormats(target: Range, from: Range): void {
  target.writable();
  const { book, Id } = target.sheet;
  const source = from.onSheet()?.getCellDatas() ?? [];
  const before = target.onSheet()?.getCellDatas() ?? [];
  const styles = (style: (row: number, column: number) => unknown) => ({
    id: "sheet.mutation.set-range-values",
    params: {
      unitId: book.fbook.getId(),
      subUnitId: Id,
      cellValue: stylesOf(target, style),
      trigger: "sheet.command.set-style",
    },
  });
  book.mutate(
    styles((r, c) => source[from.rows === 1 ? 0 : r]?.[from.columns === 1 ? 0 : c]?.s),
    styles((r, c) => before[r]?.[c]?.s),
  );
}

function stylesOf(target: Range, style: (row: number, column: number) => unknown) {
  const cells: Record<number, Record<number, { s: unknown }>> = {};
  for (let r = 0; r < target.rows; r++) {
    const line: Record<number, { s: unknown }> = (cells[target.row + r] = {});
    for (let c = 0; c < target.columns; c++) line[target.column + c] = { s: style(r, c) ?? null };
  }
  return cells;
}
