/** Cells pushed aside and closed up. */
import { fail } from "../../host/objects";
import { formatArea, intersect, MAX_COLUMNS, MAX_ROWS } from "../address";
import type { Range } from "./range";

/** Univer's commands. */
export const SHIFT = {
  down: "sheet.command.insert-range-move-down",
  right: "sheet.command.insert-range-move-right",
  up: "sheet.command.delete-range-move-up",
  left: "sheet.command.delete-range-move-left",
} as const;

/** The new, empty cells stand where the range stood. */
export function insertCells(range: Range, shift: "Down" | "Right"): Range {
  const { sheet } = range;
  sheet.Protection.check(range);
  if (range.columns === MAX_COLUMNS) sheet.fsheet.insertRowsBefore(range.row, range.rows);
  else if (range.rows === MAX_ROWS) sheet.fsheet.insertColumnsBefore(range.column, range.columns);
  else {
    checkTables(range, shift === "Down");
    sheet.book.shift(shift === "Down" ? SHIFT.down : SHIFT.right, range, sheet);
  }
  return range;
}

export function deleteCells(range: Range, shift: "Up" | "Left"): void {
  const { sheet } = range;
  sheet.Protection.check(range);
  if (range.columns === MAX_COLUMNS) sheet.fsheet.deleteRows(range.row, range.rows);
  else if (range.rows === MAX_ROWS) sheet.fsheet.deleteColumns(range.column, range.columns);
  else {
    checkTables(range, shift === "Up");
    sheet.book.shift(shift === "Up" ? SHIFT.up : SHIFT.left, range, sheet);
  }
}

/** Excel moves no part of a table. */
function checkTables(range: Range, vertical: boolean): void {
  const moved = vertical
    ? { row: range.row, column: range.column, columns: range.columns, rows: MAX_ROWS - range.row }
    : { row: range.row, column: range.column, rows: range.rows, columns: MAX_COLUMNS - range.column };
  for (const table of range.sheet.Tables.all()) {
    const common = intersect(table.whole, moved);
    if (common)
      fail("InvalidOperation", ` (cells of the table ${table.Name} at ${formatArea(table.whole)} would move)`);
  }
}
