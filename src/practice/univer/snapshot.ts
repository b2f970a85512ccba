/** A new workbook with one empty sheet. */
import type { IWorkbookData } from "@univerjs/core";

export const EMPTY_BOOK: Partial<IWorkbookData> = {
  id: "practice",
  name: "Practice.xlsx",
  sheetOrder: ["sheet-1"],
  sheets: { "sheet-1": { id: "sheet-1", name: "Sheet1", rowCount: 200, columnCount: 26 } },
};
