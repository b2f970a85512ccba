/** What Excel does when a person types into a cell, beyond writing it. */
import { intersect } from "../address";
import type { Range } from "./range";
import { moveTable } from "./table-shape";
import type { Table } from "./table";

/** Types a text into a cell as a person would. */
export function typeInto(cell: Range, text: string): void {
  cell.Values = text;
  growTables(cell);
}

/** A row typed right below a table, or a heading right beside it, becomes part of the table. */
export function growTables(cell: Range): void {
  if (cell.Values[0]?.[0] === "" || cell.sheet.tableAt(cell.row, cell.column)) return;
  for (const table of cell.sheet.Tables.all()) {
    const { core } = table;
    if (table.ShowTotals) continue;
    const below = core.GetRowsBelow(1);
    if (intersect(below, cell)) return growDown(table, below);
    const beside = core.GetColumnsAfter(1);
    if (intersect(beside, cell)) return growRight(table, beside);
  }
}

function growDown(table: Table, row: Range): void {
  if (row.GetTables().Count > 0) return;
  const formulas = table.columnFormulas();
  moveTable(table, table.core.GetResizedRange(1, 0));
  row.Formulas = [row.Values[0]!.map((value, c) => (value === "" ? (formulas[c] ?? null) : null))];
}

function growRight(table: Table, column: Range): void {
  const filled = column.Values.filter(([value]) => value !== "").length;
  if (filled > 1 || column.GetTables().Count > 0) return;
  table.Resize(table.whole.GetResizedRange(0, 1));
}
