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

function copyFormats(target: Range, from: Range): void {
  const source = from.onSheet()?.getCellDatas() ?? [];
  const styles: Record<number, Record<number, { s: never }>> = {};
  for (let r = 0; r < target.rows; r++) {
    for (let c = 0; c < target.columns; c++) {
      const style = source[from.rows === 1 ? 0 : r]?.[from.columns === 1 ? 0 : c]?.s ?? null;
      (styles[target.row + r] ??= {})[target.column + c] = { s: style as never };
    }
  }
  target.writable().setValues(styles);
}
