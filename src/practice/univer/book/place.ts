import { fail, HostObject, type MaybeNull, NULL_OBJECT } from "../../host/objects";
import { type Area, formatArea, intersect, MAX_COLUMNS, MAX_ROWS, quoteSheet, union } from "../address";
import type { Range } from "./range";
import { spillArea, spillParent } from "./spill";
import { TableCollection } from "./tables";
import type { Worksheet } from "./worksheet";

/** Where a range is, and the ranges around and in it. What the cells hold is the other half, in range.ts. */
export abstract class Place extends HostObject implements Area {
  constructor(
    readonly sheet: Worksheet,
    readonly row: number,
    readonly column: number,
    readonly rows: number,
    readonly columns: number,
  ) {
    super();
    const inside = row >= 0 && column >= 0 && row + rows <= MAX_ROWS && column + columns <= MAX_COLUMNS;
    if (!inside || !(rows >= 1) || !(columns >= 1)) fail("InvalidArgument");
  }

  /** Other cells of the same sheet. */
  abstract at(area: Area): Range;

  get RowIndex() {
    return this.row;
  }
  get ColumnIndex() {
    return this.column;
  }
  get RowCount() {
    return this.rows;
  }
  get ColumnCount() {
    return this.columns;
  }
  get CellCount() {
    return this.rows * this.columns;
  }
  get Address() {
    return `${quoteSheet(this.sheet.Name)}!${formatArea(this)}`;
  }
  get AddressLocal() {
    return this.Address;
  }
  get Worksheet() {
    return this.sheet;
  }

  GetCell(row: number, column: number) {
    return this.part(row, column, 1, 1);
  }
  GetRow(index: number) {
    return this.part(index, 0, 1, this.columns);
  }
  GetColumn(index: number) {
    return this.part(0, index, this.rows, 1);
  }
  GetLastRow() {
    return this.GetRow(this.rows - 1);
  }
  GetLastColumn() {
    return this.GetColumn(this.columns - 1);
  }
  GetLastCell() {
    return this.GetCell(this.rows - 1, this.columns - 1);
  }
  GetRowsAbove(count = 1) {
    return this.part(-count, 0, count, this.columns);
  }
  GetRowsBelow(count = 1) {
    return this.part(this.rows, 0, count, this.columns);
  }
  GetColumnsBefore(count = 1) {
    return this.part(0, -count, this.rows, count);
  }
  GetColumnsAfter(count = 1) {
    return this.part(0, this.columns, this.rows, count);
  }
  GetOffsetRange(rows: number, columns: number) {
    return this.part(rows, columns, this.rows, this.columns);
  }
  GetResizedRange(rows: number, columns: number) {
    return this.part(0, 0, this.rows + rows, this.columns + columns);
  }
  GetAbsoluteResizedRange(rows: number, columns: number) {
    return this.part(0, 0, rows, columns);
  }
  GetEntireRow() {
    return this.at({ row: this.row, column: 0, rows: this.rows, columns: MAX_COLUMNS });
  }
  GetEntireColumn() {
    return this.at({ row: 0, column: this.column, rows: MAX_ROWS, columns: this.columns });
  }
  GetBoundingRect(other: Range | string) {
    return this.at(union(this, this.other(other)));
  }
  GetIntersectionOrNullObject(other: Range | string): MaybeNull<Range> {
    const b = this.other(other);
    const common = b.sheet.Id === this.sheet.Id ? intersect(this, b) : undefined;
    return common ? this.at(common) : NULL_OBJECT;
  }
  GetIntersection(other: Range | string): Range {
    const common = this.GetIntersectionOrNullObject(other);
    return common === NULL_OBJECT ? fail("ItemNotFound") : common;
  }
  GetUsedRangeOrNullObject(valuesOnly?: boolean): MaybeNull<Range> {
    const used = this.sheet.used(this, valuesOnly);
    return used ? this.at(used) : NULL_OBJECT;
  }
  GetUsedRange(valuesOnly?: boolean): Range {
    const used = this.GetUsedRangeOrNullObject(valuesOnly);
    return used === NULL_OBJECT ? this.GetCell(0, 0) : used;
  }
  GetSurroundingRegion(): Range {
    return this.at(this.sheet.region(this));
  }
  GetTables(fullyContained = false) {
    const mine = (area: Area) => {
      const common = intersect(area, this);
      return fullyContained ? common?.rows === area.rows && common.columns === area.columns : common !== undefined;
    };
    return new TableCollection(this.sheet.book, (table) => table.sheet.Id === this.sheet.Id && mine(table.whole));
  }
  get HasSpill() {
    return spillArea(this.at(this)) !== undefined || spillParent(this.at(this)) !== undefined;
  }
  GetSpillingToRangeOrNullObject(): MaybeNull<Range> {
    const area = spillArea(this.at(this));
    return area ? this.at(area) : NULL_OBJECT;
  }
  GetSpillingToRange(): Range {
    return this.at(spillArea(this.at(this)) ?? fail("ItemNotFound"));
  }
  GetSpillParentOrNullObject(): MaybeNull<Range> {
    const area = spillParent(this.at(this));
    return area ? this.at(area) : NULL_OBJECT;
  }
  GetSpillParent(): Range {
    return this.at(spillParent(this.at(this)) ?? fail("ItemNotFound"));
  }

  part(row: number, column: number, rows: number, columns: number): Range {
    return this.at({ row: this.row + row, column: this.column + column, rows, columns });
  }
  other(place: Range | string): Range {
    return typeof place === "string" ? this.sheet.GetRange(place) : place;
  }
}
