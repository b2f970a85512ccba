/** Tables that grow, shrink and move, each change with its inverse for undo. */
import { fail } from "../../host/objects";
import { type Area, formatArea, intersect } from "../address";
import type { Range } from "./range";
import { SHIFT } from "./shift";
import { renamed } from "./structured";
import type { Table } from "./table";

const SET_TABLE = "sheet.mutation.set-sheet-table";

function mutate(table: Table, change: object, inverse: object): void {
  const { book } = table;
  const params = { unitId: book.fbook.getId(), subUnitId: table.sheet.Id, tableId: table.Id };
  book.mutate(
    { id: SET_TABLE, params: { ...params, config: change } },
    { id: SET_TABLE, params: { ...params, config: inverse } },
  );
}

/** Gives the table other cells; what stands in them stays where it is. */
export function moveTable(table: Table, to: Range): void {
  const range = (area: Range) => ({ updateRange: { newRange: { ...area.facade().getRange() } } });
  mutate(table, range(to), range(table.core));
}

/** Room for new data rows before row `at`; whatever stands below in the table's columns moves down. */
export function openRows(table: Table, at: number, count: number): void {
  const { core, sheet } = table;
  const place = core.part(at + 1, 0, 1, core.columns).GetResizedRange(count - 1, 0);
  const below = { ...toArea(place), rows: sheet.lastRow - place.row + 1 };
  const tables = below.rows > 0 ? tablesIn(table, below) : [];
  if (below.rows > 0 && sheet.used(below)) table.book.shift(SHIFT.down, place, sheet);
  moveTable(table, core.GetResizedRange(count, 0));
  for (const other of tables) moveTable(other, other.core.GetOffsetRange(count, 0));
}

/** Takes data rows out; what stands below moves up. A table keeps one row, an empty one if need be. */
export function closeRows(table: Table, at: number, count: number): void {
  const { core, sheet } = table;
  const place = core.part(at + 1, 0, count, core.columns);
  if (count === core.rows - 1) {
    place.GetRow(0).Clear("Contents");
    if (count > 1) closeRows(table, 1, count - 1);
    return;
  }
  const below = { ...toArea(place), rows: Math.max(1, sheet.lastRow - place.row + 1) };
  const tables = tablesIn(table, below);
  table.book.shift(SHIFT.up, place, sheet);
  moveTable(table, core.GetResizedRange(-count, 0));
  for (const other of tables) moveTable(other, other.core.GetOffsetRange(-count, 0));
}

/** A new column at `at`; `shift` pushes what stands there to the right, otherwise its cells become the column. */
export function openColumn(table: Table, at: number, shift: boolean): void {
  const { whole, sheet } = table;
  const place = whole.part(0, at, whole.rows, 1);
  const right = { ...toArea(place), columns: sheet.lastColumn - place.column + 1 };
  const tables = shift && right.columns > 0 ? tablesIn(table, right) : [];
  // Half-way the headings stand under other columns: nobody is to take that for a renaming.
  if (shift && right.columns > 0 && sheet.used(right))
    table.book.undoing.pause(() => table.book.shift(SHIFT.right, place, sheet));
  // The engine knows a column by this name until a heading is written.
  const heading = shift ? freeHeading(table, at) : place.GetCell(0, 0).Text[0]?.[0] || freeHeading(table, at);
  mutate(table, columnChange(table, "insert", at, heading), columnChange(table, "delete", at));
  for (const other of tables) moveTable(other, other.core.GetOffsetRange(0, 1));
}

export function closeColumn(table: Table, at: number, shift: boolean): void {
  const { whole, sheet } = table;
  const place = whole.part(0, at, whole.rows, 1);
  const heading = table.columnNames[at] ?? "";
  const right = { ...toArea(place), columns: Math.max(1, sheet.lastColumn - place.column + 1) };
  const tables = shift ? tablesIn(table, right) : [];
  mutate(table, columnChange(table, "delete", at), columnChange(table, "insert", at, heading));
  table.book.rewriteFormulas((formula) => renamed(formula, table.Name, heading, undefined));
  if (shift) table.book.undoing.pause(() => table.book.shift(SHIFT.left, place, sheet));
  for (const other of tables) moveTable(other, other.core.GetOffsetRange(0, -1));
}

/**
 * Univer's formula engine knows columns by the names they had when the table was made: the column is taken out and put
 * back with its new name. Done without a step on the undo stack, because undoing the heading brings us here again.
 */
export function renameColumnInPlace(table: Table, at: number, heading: string): void {
  const { book, sheet } = table;
  const before = table.columnNames[at] ?? "";
  const params = { unitId: book.fbook.getId(), subUnitId: sheet.Id, tableId: table.Id };
  for (const config of [columnChange(table, "delete", at), columnChange(table, "insert", at, heading)]) {
    book.run(SET_TABLE, { ...params, config });
  }
  book.rewriteFormulas((formula) => renamed(formula, table.Name, before, heading));
}

/** Headings are text, none is empty, and no two are alike; Excel puts a number behind the second. */
export function headingsAsText(table: Table): void {
  const row = table.GetHeaderRowRange();
  const taken = new Set<string>();
  const shown = row.Text[0] ?? [];
  const headings = (row.Values[0] ?? []).map((value, c) => {
    // For an empty heading Univer shows one of its own.
    const wanted = value === "" ? `Column${c + 1}` : (shown[c] ?? "");
    let heading = wanted;
    for (let n = 2; taken.has(heading.toLowerCase()); n++) heading = `${wanted}${n}`;
    taken.add(heading.toLowerCase());
    return heading;
  });
  const isText = row.map((cell, formula) => formula === "" && typeof cell?.v === "string")[0] ?? [];
  const wrong = headings.some((heading, c) => !isText[c] || heading !== row.Values[0]?.[c]);
  if (!wrong) return;
  const { book } = table;
  const cells = Object.fromEntries(headings.map((v, c) => [row.column + c, { v, t: 4, f: null, si: null, p: null }]));
  book.run("sheet.mutation.set-range-values", {
    unitId: book.fbook.getId(),
    subUnitId: table.sheet.Id,
    cellValue: { [row.row]: cells },
  });
}

/** `set-table-range` would put a new column before the last one and call it "Column 5". */
function columnChange(table: Table, operationType: "insert" | "delete", at: number, displayName = "") {
  const id = `${table.Id}-${Math.random().toString(36).slice(2)}`;
  const columnsJson = [{ id, displayName, dataType: "string", formula: "", meta: {}, style: {} }];
  const index = table.core.column + at;
  return { rowColOperation: { operationType, rowColType: "column", index, count: 1, columnsJson } };
}

function freeHeading(table: Table, at: number): string {
  const names = new Set(table.columnNames.map((name) => name.toLowerCase()));
  let n = at + 1;
  while (names.has(`column${n}`)) n++;
  return `Column${n}`;
}

/** Other tables in the cells that are to move: they must be in them whole. */
function tablesIn(table: Table, moved: Area): Table[] {
  const others = table.sheet.Tables.all().filter(({ Id }) => Id !== table.Id);
  return others.filter((other) => {
    const common = intersect(other.whole, moved);
    if (common && (common.rows !== other.whole.rows || common.columns !== other.whole.columns)) {
      fail("InvalidOperation", ` (part of the table ${other.Name} at ${formatArea(other.whole)} would move)`);
    }
    return common !== undefined;
  });
}

const toArea = ({ row, column, rows, columns }: Area): Area => ({ row, column, rows, columns });
