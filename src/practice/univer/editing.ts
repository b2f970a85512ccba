/** What a person types into the grid, put right where Excel would read it otherwise. */
import type { FUniver } from "@univerjs/core/facade";
import type {} from "@univerjs/sheets-ui/facade";
import { readTyped } from "./book/typed";
import { growTables } from "./book/typing";
import type { UniverBook } from "./book/workbook";

/** Answers whether a cell is being edited at the moment. */
export function followTyping(api: FUniver, book: UniverBook): () => boolean {
  let editing = false;
  api.addEvent(api.Event.BeforeSheetEditStart, (event) => {
    const sheet = book.Worksheets.find(event.worksheet.getSheetId());
    const cell = sheet?.GetCell(event.row, event.column);
    if (cell && sheet?.Protection.Protected && !sheet.Protection.isOpen(cell)) event.cancel = true;
  });
  api.addEvent(api.Event.SheetEditStarted, () => {
    editing = true;
  });
  api.addEvent(api.Event.SheetEditEnded, (event) => {
    editing = false;
    if (!event.isConfirm) return;
    const cell = book.Worksheets.find(event.worksheet.getSheetId())?.GetCell(event.row, event.column);
    // The editor writes the cell after it has said that it ended.
    if (cell) setTimeout(() => void book.asOneStep(async () => afterwards(cell)), 0);
  });
  return () => editing;
}

type Cell = Parameters<typeof growTables>[0];

function afterwards(cell: Cell): void {
  const [value] = cell.Values[0] ?? [];
  const isText = cell.NumberFormat[0]?.[0] === "@";
  // "37 1/2" stays text in Univer; in Excel it is a number that is shown as a fraction.
  if (typeof value === "string" && !isText && readTyped(value).kind === "value") cell.Values = value;
  growTables(cell);
}
