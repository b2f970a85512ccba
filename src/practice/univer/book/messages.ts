/** The sentence behind an error that a cell shows. */
import { messageAt, type Messages } from "../answers";
import type { Range } from "./range";
import { spillParent } from "./spill";

/** Undefined when the cell shows no error, or one that has nothing to say. */
export function messageOf(messages: Messages, cell: Range): string | undefined {
  if (cell.ValueTypes[0]?.[0] !== "Error") return undefined;
  const formula = spillParent(cell) ?? cell;
  const place = { sheet: String(cell.sheet.Id), row: formula.row, column: formula.column };
  return messageAt(messages, place, cell.row, cell.column);
}
