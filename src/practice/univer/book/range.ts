import type { ICellData } from "@univerjs/core";
import type { FRange } from "@univerjs/sheets/facade";
import type {} from "@univerjs/sheets-numfmt/facade";
import { fail } from "../../host/objects";
import { type Area, intersect, MAX_COLUMNS, MAX_ROWS } from "../address";
import { type ClearWhat, clear } from "./clear";
import { ConditionalFormatCollection } from "./conditional";
import { type CopyWhat, copyFrom } from "./copy";
import { RangeFormat } from "./format";
import { Place } from "./place";
import { deleteCells, insertCells } from "./shift";
import { shortened } from "./structured";
import type { CellValue } from "./typed";
import { DataValidation } from "./validation";
import { isTruth, typeOf, valueOf } from "./values";
import { asGrid, writeCells } from "./write";

/** A rectangle of cells. Values and formulas live in Univer; this object only knows where to look. */
export class Range extends Place {
  override readonly tracked = true;
  readonly scalars = [
    "Address",
    "AddressLocal",
    "CellCount",
    "ColumnCount",
    "ColumnHidden",
    "ColumnIndex",
    "Formulas",
    "FormulasLocal",
    "HasSpill",
    "NumberFormat",
    "RowCount",
    "RowHidden",
    "RowIndex",
    "Text",
    "ValueTypes",
    "Values",
  ];

  at({ row, column, rows, columns }: Area): Range {
    return new Range(this.sheet, row, column, rows, columns);
  }

  // What

  get Values(): CellValue[][] {
    return this.map((cell) => valueOf(cell));
  }
  set Values(input: unknown) {
    writeCells(this, input);
  }
  get Formulas(): CellValue[][] {
    return this.map((cell, formula, r, c) => (formula ? this.shown(formula, r, c) : valueOf(cell)));
  }
  set Formulas(input: unknown) {
    writeCells(this, input);
  }
  get FormulasLocal(): CellValue[][] {
    return this.Formulas;
  }
  set FormulasLocal(input: unknown) {
    writeCells(this, input);
  }
  get ValueTypes() {
    return this.map((cell) => typeOf(valueOf(cell)));
  }
  get Text() {
    const shown = this.onSheet()?.getDisplayValues() ?? [];
    return this.map((cell, _formula, r, c) =>
      isTruth(cell) ? String(valueOf(cell)).toUpperCase() : (shown[r]?.[c] ?? ""),
    );
  }
  get NumberFormat(): string[][] {
    const formats = this.onSheet()?.getNumberFormats() ?? [];
    return this.map((_cell, _formula, r, c) => formats[r]?.[c] || "General");
  }
  set NumberFormat(input: unknown) {
    const grid = asGrid<string>(this, input);
    const first = grid[0]?.[0] ?? null;
    if (first !== null && grid.every((row) => row.every((format) => format === first))) {
      this.writable().setNumberFormat(first);
      return;
    }
    grid.forEach((row, r) =>
      row.forEach((format, c) => {
        if (format !== null) this.GetCell(r, c).writable().setNumberFormat(format);
      }),
    );
  }
  get Format() {
    return new RangeFormat(this);
  }
  get DataValidation() {
    return new DataValidation(this);
  }
  get ConditionalFormats() {
    return new ConditionalFormatCollection(this);
  }
  get RowHidden() {
    return this.sheet.fsheet.getSheet().getRowVisible(this.row) === false;
  }
  set RowHidden(hidden: boolean) {
    this.writable();
    if (hidden) this.sheet.fsheet.hideRows(this.row, this.rows);
    else this.sheet.fsheet.showRows(this.row, this.rows);
  }
  get ColumnHidden() {
    return this.sheet.fsheet.getSheet().getColVisible(this.column) === false;
  }
  set ColumnHidden(hidden: boolean) {
    this.writable();
    if (hidden) this.sheet.fsheet.hideColumns(this.column, this.columns);
    else this.sheet.fsheet.showColumns(this.column, this.columns);
  }

  // Doing

  Select() {
    this.sheet.Activate();
    this.facade().activate();
  }
  Clear(what: ClearWhat = "All") {
    clear(this, what);
  }
  Insert(shift: "Down" | "Right") {
    return insertCells(this, shift);
  }
  Delete(shift: "Up" | "Left") {
    deleteCells(this, shift);
  }
  CopyFrom(source: Range | string, what: CopyWhat = "All", skipBlanks = false, transpose = false) {
    copyFrom(this, this.other(source), what, skipBlanks, transpose);
  }
  Calculate() {
    this.sheet.book.api.getFormula().executeCalculation();
  }
  Merge(across = false) {
    const cells = this.writable();
    if (across) cells.mergeAcross();
    else cells.merge();
  }
  Unmerge() {
    this.writable().breakApart();
  }

  // For the other host objects

  /** The cells in Univer, whose sheets start small and are enlarged when someone needs cells beyond their edge. */
  facade(): FRange {
    const { fsheet } = this.sheet;
    const rows = this.rows === MAX_ROWS ? fsheet.getMaxRows() : this.rows;
    const columns = this.columns === MAX_COLUMNS ? fsheet.getMaxColumns() : this.columns;
    if (this.row + rows > fsheet.getMaxRows()) fsheet.setRowCount(this.row + rows);
    if (this.column + columns > fsheet.getMaxColumns()) fsheet.setColumnCount(this.column + columns);
    return fsheet.getRange(this.row, this.column, rows, columns);
  }
  /** The same cells, for changing them. */
  writable(): FRange {
    this.sheet.Protection.check(this);
    return this.facade();
  }
  /** The part that Univer has cells for; reading must not enlarge a sheet. */
  onSheet(): FRange | undefined {
    const { fsheet } = this.sheet;
    const edge = { row: 0, column: 0, rows: fsheet.getMaxRows(), columns: fsheet.getMaxColumns() };
    const area = intersect(this, edge);
    return area && fsheet.getRange(area.row, area.column, area.rows, area.columns);
  }

  map<T>(each: (cell: ICellData | null, formula: string, row: number, column: number) => T): T[][] {
    if (this.rows === MAX_ROWS || this.columns === MAX_COLUMNS) {
      fail("InvalidOperation", " (a whole row or column cannot be read; use its used range)");
    }
    const cells = this.onSheet()?.getCellDatas() ?? [];
    const formulas = this.onSheet()?.getFormulas() ?? [];
    const spilled = this.sheet.spilled();
    return Array.from({ length: this.rows }, (_, r) =>
      Array.from({ length: this.columns }, (_, c) => {
        const own = cells[r]?.[c];
        const cell = own ?? null;
        const spill = spilled?.[this.row + r]?.[this.column + c];
        return each(spill && (own?.v ?? null) === null ? spill : cell, formulas[r]?.[c] ?? "", r, c);
      }),
    );
  }

  private shown(formula: string, row: number, column: number): string {
    if (!formula.includes("[#This Row]")) return formula;
    return shortened(formula, this.sheet.tableAt(this.row + row, this.column + column)?.Name);
  }
}
