/** Whoever writes into a table's heading renames its column; Univer's tables do not notice. */
import type { UniverBook } from "./workbook";

interface Written {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly cellValue?: Record<number, unknown>;
}

export function watchHeadings(book: UniverBook): void {
  book.undoing.whenEnded(() => {
    for (const table of book.Tables.all()) table.syncHeadings();
  });
  book.api.onCommandExecuted((command, options) => {
    if (book.undoing.now || command.id !== "sheet.mutation.set-range-values" || options?.onlyLocal) return;
    const { unitId, subUnitId, cellValue } = command.params as Written;
    if (unitId !== book.fbook.getId()) return;
    for (const table of book.Tables.all()) {
      if (table.info.subUnitId === subUnitId && cellValue?.[table.info.range.startRow]) table.syncHeadings();
    }
  });
}
