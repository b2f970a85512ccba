import type { ICellData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { fail, HostObject, type MaybeNull, NULL_OBJECT } from "../../host/objects";
import { type Area, intersect, MAX_COLUMNS, MAX_ROWS, parseArea, splitSheet, union } from "../address";
import { CommentCollection } from "./comments";
import { listening } from "./events";
import { FreezePanes } from "./freeze-panes";
import { NamedItemCollection } from "./names";
import { PageLayout } from "./page-layout";
import { WorksheetProtection } from "./protection";
import { Range } from "./range";
import type { Table } from "./table";
import { TableCollection } from "./tables";
import type { UniverBook } from "./workbook";

export class Worksheet extends HostObject {
  readonly scalars = ["Name", "Position", "ShowGridlines", "ShowHeadings", "StandardWidth", "TabColor", "Visibility"];
  readonly ShowHeadings = true;
  readonly StandardWidth = 8.43;

  constructor(
    readonly book: UniverBook,
    readonly fsheet: FWorksheet,
  ) {
    super();
    this.Id = fsheet.getSheetId();
  }

  get Name(): string {
    return this.fsheet.getSheetName();
  }
  set Name(name: string) {
    this.book.Worksheets.checkName(name, this);
    this.fsheet.setName(name);
  }
  get Position(): number {
    return this.fsheet.getIndex();
  }
  set Position(index: number) {
    this.book.fbook.moveSheet(this.fsheet, index);
  }
  get Visibility() {
    return this.fsheet.isSheetHidden() ? "Hidden" : "Visible";
  }
  set Visibility(value: string) {
    if (value === "Visible") this.fsheet.showSheet();
    else this.fsheet.hideSheet();
  }
  get TabColor() {
    return this.fsheet.getTabColor() ?? "";
  }
  set TabColor(color: string) {
    this.fsheet.setTabColor(color);
  }
  get ShowGridlines() {
    return !this.fsheet.hasHiddenGridLines();
  }
  set ShowGridlines(show: boolean) {
    this.fsheet.setHiddenGridlines(!show);
  }
  get Tables() {
    return new TableCollection(this.book, (table) => table.sheet.Id === this.Id, this);
  }
  get Names() {
    return new NamedItemCollection(this.book, this);
  }
  get Comments() {
    return new CommentCollection(this.book, this);
  }
  get FreezePanes() {
    return new FreezePanes(this);
  }
  get PageLayout() {
    return new PageLayout(this);
  }
  get Protection() {
    return new WorksheetProtection(this);
  }

  /** "A1:B2", "A:C", "Other!A1", the name of a range or table; without an address the whole sheet. */
  GetRange(address?: string): Range {
    if (!address) return new Range(this, 0, 0, MAX_ROWS, MAX_COLUMNS);
    const { sheet, local } = splitSheet(address);
    if (sheet !== undefined && sheet !== this.Name) return this.book.Worksheets.GetItem(sheet).GetRange(local);
    const area = parseArea(local);
    if (area) return this.area(area);
    const name = this.Names.find(local) ?? this.book.Names.find(local);
    return name?.GetRange() ?? this.book.Tables.find(local)?.GetDataBodyRange() ?? fail("InvalidArgument");
  }
  GetRangeByIndexes(row: number, column: number, rows: number, columns: number) {
    return new Range(this, row, column, rows, columns);
  }
  GetCell(row: number, column: number) {
    return new Range(this, row, column, 1, 1);
  }
  GetUsedRange(valuesOnly?: boolean) {
    return this.GetRange().GetUsedRange(valuesOnly);
  }
  GetUsedRangeOrNullObject(valuesOnly?: boolean) {
    return this.GetRange().GetUsedRangeOrNullObject(valuesOnly);
  }
  GetNextOrNullObject(visibleOnly = false): MaybeNull<Worksheet> {
    return this.beside(1, visibleOnly) ?? NULL_OBJECT;
  }
  GetNext(visibleOnly = false): Worksheet {
    return this.beside(1, visibleOnly) ?? fail("ItemNotFound");
  }
  GetPreviousOrNullObject(visibleOnly = false): MaybeNull<Worksheet> {
    return this.beside(-1, visibleOnly) ?? NULL_OBJECT;
  }
  GetPrevious(visibleOnly = false): Worksheet {
    return this.beside(-1, visibleOnly) ?? fail("ItemNotFound");
  }
  Activate() {
    this.book.fbook.setActiveSheet(this.fsheet);
  }
  Delete() {
    const others = this.book.Worksheets.all().filter(
      ({ Id, Visibility }) => Id !== this.Id && Visibility === "Visible",
    );
    if (others.length === 0) fail("InvalidOperation", " (a workbook keeps at least one sheet)");
    for (const table of this.Tables.all()) table.ConvertToRange();
    this.book.fbook.deleteSheet(this.fsheet);
  }
  Calculate(_all?: boolean) {
    this.book.api.getFormula().executeCalculation();
  }
  _RegisterDataChangedEvent() {
    return listening();
  }
  _UnregisterDataChangedEvent() {
    return listening();
  }
  _RegisterSelectionChangedEvent() {
    return listening();
  }
  _UnregisterSelectionChangedEvent() {
    return listening();
  }

  // For the other host objects

  area({ row, column, rows, columns }: Area): Range {
    return new Range(this, row, column, rows, columns);
  }
  tableAt(row: number, column: number): Table | undefined {
    return this.Tables.all().find((table) => table.covers(row, column));
  }
  get lastRow(): number {
    return this.fsheet.getDataRange().getLastRow();
  }
  get lastColumn(): number {
    return this.fsheet.getDataRange().getLastColumn();
  }

  /** The smallest rectangle with content inside `within`; Univer's own data range also counts cells that hold "". */
  used(within: Area, valuesOnly = false): Area | undefined {
    const edge = { row: 0, column: 0, rows: this.lastRow + 1, columns: this.lastColumn + 1 };
    const area = intersect(within, edge);
    let found: Area | undefined;
    const visit = (row: number, column: number) => {
      const cell = { row, column, rows: 1, columns: 1 };
      if (intersect(within, cell)) found = found ? union(found, cell) : cell;
    };
    const cells = area ? this.fsheet.getRange(area.row, area.column, area.rows, area.columns).getCellDatas() : [];
    cells.forEach((line, r) =>
      line.forEach((cell, c) => {
        const filled = cell && ((cell.v ?? "") !== "" || cell.f || cell.si || cell.p || (!valuesOnly && cell.s));
        if (filled) visit((area?.row ?? 0) + r, (area?.column ?? 0) + c);
      }),
    );
    for (const [row, line] of Object.entries(this.spilled() ?? {})) {
      for (const column of Object.keys(line)) visit(Number(row), Number(column));
    }
    return found;
  }

  /** The block of filled cells around an area, up to empty rows and columns. */
  region(start: Area): Area {
    for (let area: Area = start; ;) {
      const around = {
        row: Math.max(0, area.row - 1),
        column: Math.max(0, area.column - 1),
        rows: area.rows + (area.row > 0 ? 2 : 1),
        columns: area.columns + (area.column > 0 ? 2 : 1),
      };
      const used = this.used(around, true);
      const grown = used ? union(area, used) : area;
      if (grown.rows === area.rows && grown.columns === area.columns) return area;
      area = grown;
    }
  }

  /** Cells filled by a spilling formula; Univer keeps them apart from the cells themselves. */
  spilled(): Record<number, Record<number, ICellData>> | undefined {
    return this.book.formulaData.getArrayFormulaCellData()?.[this.book.fbook.getId()]?.[this.Id as string] as never;
  }

  /** What Excel keeps with a sheet and Univer does not. */
  kept<T extends object>(part: string): T {
    const all = this.book.metadata<Record<string, Record<string, T> | undefined>>("sheets");
    return all[String(this.Id)]?.[part] ?? ({} as T);
  }
  keep(part: string, value: object): void {
    const all = this.book.metadata<Record<string, object>>("sheets");
    this.book.setMetadata("sheets", { ...all, [String(this.Id)]: { ...all[String(this.Id)], [part]: value } });
  }
  private beside(step: number, visibleOnly: boolean): Worksheet | undefined {
    const all = this.book.Worksheets.all().filter(
      ({ Id, Visibility }) => Id === this.Id || !visibleOnly || Visibility === "Visible",
    );
    return all[all.findIndex(({ Id }) => Id === this.Id) + step];
  }
}
