/** Every formula on its way into a cell, typed or written by the add-in, is put into the form that Univer reads. */
import { intersect } from "../address";
import { type FindTable, resolved } from "./structured";
import type { UniverBook } from "./workbook";

interface CellLike {
  f?: string | null;
}
interface Written {
  readonly unitId?: string;
  readonly subUnitId?: string;
  readonly cellValue?: Record<string, Record<string, CellLike | null>>;
}

export const finder =
  (book: UniverBook): FindTable =>
  (name) =>
    book.Tables.find(name);

export function watchFormulas(book: UniverBook): void {
  book.api.onBeforeCommandExecute((command) => {
    // What is taken back or done again has been put right before.
    if (book.undoing.now || command.id !== "sheet.mutation.set-range-values") return;
    const { unitId, subUnitId, cellValue } = command.params as Written;
    if (unitId !== book.fbook.getId() || subUnitId === undefined) return;
    for (const [row, line] of Object.entries(cellValue ?? {})) {
      for (const [column, cell] of Object.entries(line)) {
        if (cell?.f?.includes("[")) cell.f = putRight(book, subUnitId, Number(row), Number(column), cell.f);
      }
    }
  });
}

function putRight(book: UniverBook, sheet: string, row: number, column: number, formula: string): string {
  const cell = { row, column, rows: 1, columns: 1 };
  const own = book.Tables.all().find((table) => table.info.subUnitId === sheet && intersect(table.whole, cell));
  return resolved(formula, finder(book), own).formula;
}
