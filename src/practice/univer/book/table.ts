import type { ITableInfoWithUnitId } from "@univerjs/sheets-table";
import type {} from "@univerjs/sheets-table/facade";
import { fail, HostObject } from "../../host/objects";
import { fromUniver, intersect } from "../address";
import { without } from "./metadata";
import { checkDefinedName } from "./names";
import type { Range } from "./range";
import { insertCells } from "./shift";
import {
  closeColumn,
  closeRows,
  headingsAsText,
  moveTable,
  openColumn,
  openRows,
  renameColumnInPlace,
} from "./table-shape";
import { TableColumnCollection, TableRowCollection } from "./table-parts";
import type { UniverBook } from "./workbook";
import type { Worksheet } from "./worksheet";

/** What Excel keeps with a table and Univer does not; stored in the workbook's own metadata. */
interface Extras {
  readonly style: string;
  readonly totals: boolean;
  readonly bandedRows?: boolean;
  readonly bandedColumns?: boolean;
  readonly filterButton?: boolean;
}
const NEW: Extras = { style: "TableStyleMedium2", totals: false };

export class Table extends HostObject {
  readonly scalars = [
    "HighlightFirstColumn",
    "HighlightLastColumn",
    "LegacyId",
    "Name",
    "ShowBandedColumns",
    "ShowBandedRows",
    "ShowFilterButton",
    "ShowHeaders",
    "ShowTotals",
    "Style",
  ];
  readonly ShowHeaders = true;
  readonly HighlightFirstColumn = false;
  readonly HighlightLastColumn = false;

  constructor(
    readonly book: UniverBook,
    override readonly Id: string,
  ) {
    super();
  }

  get info(): ITableInfoWithUnitId {
    return this.book.fbook.getTableInfo(this.Id) ?? fail("ItemNotFound");
  }
  private get extras(): Extras {
    return this.book.metadata<Record<string, Extras>>("tables")[this.Id] ?? NEW;
  }
  private set extras(value: Extras) {
    this.sheet.Protection.check();
    this.book.setMetadata("tables", { ...this.book.metadata("tables"), [this.Id]: value });
  }
  get sheet(): Worksheet {
    return this.book.Worksheets.GetItem(this.info.subUnitId);
  }
  /** Headings and data: this is what Univer calls the table, so that totals stay out of `Chart[bust]`. */
  get core(): Range {
    const { row, column, rows, columns } = fromUniver(this.info.range);
    return this.sheet.GetRangeByIndexes(row, column, rows, columns);
  }
  get whole(): Range {
    return this.extras.totals ? this.core.GetResizedRange(1, 0) : this.core;
  }
  get columnNames(): readonly string[] {
    return this.info.columns.map(({ displayName }) => displayName);
  }
  covers(row: number, column: number): boolean {
    return intersect(this.whole, { row, column, rows: 1, columns: 1 }) !== undefined;
  }

  get LegacyId() {
    return this.Id;
  }
  get Name(): string {
    return this.info.name;
  }
  set Name(name: string) {
    if (name === this.Name) return;
    this.sheet.Protection.check();
    checkDefinedName(name);
    const taken = this.book.Tables.find(name);
    if ((taken && taken.Id !== this.Id) || this.book.Names.find(name)) fail("ItemAlreadyExists");
    const place = { unitId: this.book.fbook.getId(), tableId: this.Id };
    // Univer refuses a table the name of a sheet, which Excel allows; only its command looks, not the change itself.
    if (!this.book.Worksheets.find(name)) this.book.run("sheet.command.set-table-config", { ...place, name });
    else this.book.run("sheet.mutation.set-sheet-table", { ...place, subUnitId: this.sheet.Id, config: { name } });
  }
  get Style() {
    return this.extras.style;
  }
  set Style(style: string) {
    this.extras = { ...this.extras, style };
  }
  get ShowBandedRows() {
    return this.extras.bandedRows ?? true;
  }
  set ShowBandedRows(bandedRows: boolean) {
    this.extras = { ...this.extras, bandedRows };
  }
  get ShowBandedColumns() {
    return this.extras.bandedColumns ?? false;
  }
  set ShowBandedColumns(bandedColumns: boolean) {
    this.extras = { ...this.extras, bandedColumns };
  }
  get ShowFilterButton() {
    return this.extras.filterButton ?? true;
  }
  set ShowFilterButton(filterButton: boolean) {
    this.extras = { ...this.extras, filterButton };
  }
  get ShowTotals() {
    return this.extras.totals;
  }
  set ShowTotals(show: boolean) {
    if (show === this.extras.totals) return;
    const row = this.core.GetLastRow().GetOffsetRange(1, 0);
    if (!show) row.Clear();
    else if (row.sheet.used(row, true)) insertCells(row, "Down");
    this.extras = { ...this.extras, totals: show };
    if (!show) return;
    const last = this.columnNames.length - 1;
    row.GetCell(0, 0).Values = "Total";
    if (last > 0) row.GetCell(0, last).Formulas = `=SUBTOTAL(109,${this.Name}[${this.columnNames[last]}])`;
  }

  get Worksheet() {
    return this.sheet;
  }
  get Columns() {
    return new TableColumnCollection(this);
  }
  get Rows() {
    return new TableRowCollection(this);
  }
  GetRange() {
    return this.whole;
  }
  GetHeaderRowRange() {
    return this.core.GetRow(0);
  }
  GetDataBodyRange() {
    return this.core.part(1, 0, this.core.rows - 1, this.core.columns);
  }
  GetTotalRowRange() {
    return this.extras.totals ? this.whole.GetLastRow() : fail("InvalidOperation", " (the table has no totals row)");
  }
  Resize(to: Range | string) {
    const wanted = this.core.other(to);
    const rows = wanted.rows - (this.extras.totals ? 1 : 0);
    if (wanted.row !== this.core.row || !intersect(wanted, this.core)) {
      fail("InvalidArgument", " (the headings must stay in their row)");
    }
    if (wanted.column !== this.core.column) fail("ApiNotFound", "tables that grow to the left");
    if (rows < 2) fail("InvalidArgument", " (a table has headings and at least one row)");
    this.sheet.Protection.check();
    for (let c = this.core.columns; c < wanted.columns; c++) openColumn(this, c, false);
    for (let c = this.core.columns; c > wanted.columns; c--) closeColumn(this, c - 1, false);
    if (rows !== this.core.rows) moveTable(this, this.core.GetAbsoluteResizedRange(rows, wanted.columns));
    headingsAsText(this);
  }
  Delete() {
    const { whole } = this;
    this.ConvertToRange();
    whole.Clear();
  }
  ConvertToRange(): Range {
    const { whole, sheet } = this;
    sheet.Protection.check();
    this.book.setMetadata("tables", without(this.book.metadata("tables"), this.Id));
    const params = { unitId: this.book.fbook.getId(), subUnitId: sheet.Id, tableId: this.Id };
    this.book.run("sheet.command.delete-table", params);
    return whole;
  }

  addRows(at: number, values: readonly (readonly unknown[])[]): void {
    if (values.some((row) => !Array.isArray(row) || row.length !== this.core.columns)) fail("InvalidArgument");
    this.sheet.Protection.check();
    const fill = this.columnFormulas();
    openRows(this, at, values.length);
    const body = this.GetDataBodyRange();
    values.forEach((row, r) => {
      body.GetRow(at + r).Formulas = [row.map((value, c) => value ?? fill[c] ?? null)];
    });
  }
  deleteRows(at: number, count: number): void {
    if (at < 0 || at + count > this.core.rows - 1) fail("InvalidArgument");
    this.sheet.Protection.check();
    closeRows(this, at, count);
  }
  addColumn(at: number, values: unknown[][] | string | number | undefined, name: string | undefined): void {
    this.sheet.Protection.check();
    const { rows } = this.whole;
    const cells = Array.isArray(values) ? values : undefined;
    if (cells && cells.length !== rows) fail("InvalidArgument", " (the column does not have the height of the table)");
    openColumn(this, at, true);
    if (cells) this.whole.GetColumn(at).Formulas = cells;
    else if (values !== undefined) this.GetDataBodyRange().GetColumn(at).Formulas = values;
    if (name !== undefined) this.core.GetCell(0, at).Values = name;
    headingsAsText(this);
  }
  deleteColumn(at: number): void {
    if (this.core.columns === 1) fail("InvalidOperation", " (a table keeps at least one column)");
    this.sheet.Protection.check();
    closeColumn(this, at, true);
  }
  /** Whoever writes into a heading renames the column; Univer's tables do not notice. */
  syncHeadings(): void {
    const { columnNames } = this;
    headingsAsText(this);
    this.GetHeaderRowRange().Text[0]?.forEach((heading, index) => {
      if (heading !== "" && heading !== columnNames[index]) renameColumnInPlace(this, index, heading);
    });
  }
  /** A column whose rows all hold the same formula is a calculated one: new rows get that formula. */
  columnFormulas(): readonly (string | undefined)[] {
    const rows = this.GetDataBodyRange().Formulas;
    return this.columnNames.map((_, c) => {
      const first = rows[0]?.[c];
      if (typeof first !== "string" || !first.startsWith("=")) return undefined;
      return rows.every((row) => row[c] === first) ? first : undefined;
    });
  }
}
