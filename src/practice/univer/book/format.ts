import { fail, HostObject } from "../../host/objects";
import { RangeBorderCollection } from "./borders";
import type { Range } from "./range";

const PIXELS_PER_POINT = 96 / 72;
/** Univer's facade says "normal" for right. */
const ALIGNMENTS: Readonly<Record<string, "left" | "center" | "normal">> = {
  Left: "left",
  Center: "center",
  Right: "normal",
};
const UPRIGHT: Readonly<Record<string, "top" | "middle" | "bottom">> = {
  Top: "top",
  Center: "middle",
  Bottom: "bottom",
};
const nameOf = <T>(names: Readonly<Record<string, T>>, value: unknown) =>
  Object.keys(names).find((name) => names[name] === value);

/** `range.format` */
export class RangeFormat extends HostObject {
  readonly scalars = ["ColumnWidth", "HorizontalAlignment", "RowHeight", "VerticalAlignment", "WrapText"];
  constructor(private readonly range: Range) {
    super();
  }
  get Fill() {
    return new RangeFill(this.range);
  }
  get Font() {
    return new RangeFont(this.range);
  }
  get Borders() {
    return new RangeBorderCollection(this.range);
  }
  get Protection() {
    return new FormatProtection(this.range);
  }
  /** Points, as in Excel; Univer counts pixels. */
  get ColumnWidth() {
    return this.range.sheet.fsheet.getColumnWidth(this.range.column) / PIXELS_PER_POINT;
  }
  set ColumnWidth(points: number) {
    this.range.writable();
    const { column, columns, sheet } = this.range;
    sheet.fsheet.setColumnWidths(column, Math.min(columns, sheet.fsheet.getMaxColumns()), points * PIXELS_PER_POINT);
  }
  get RowHeight() {
    return this.range.sheet.fsheet.getRowHeight(this.range.row) / PIXELS_PER_POINT;
  }
  set RowHeight(points: number) {
    this.range.writable();
    const { row, rows, sheet } = this.range;
    sheet.fsheet.setRowHeightsForced(row, Math.min(rows, sheet.fsheet.getMaxRows()), points * PIXELS_PER_POINT);
  }
  get HorizontalAlignment() {
    return nameOf(ALIGNMENTS, this.range.facade().getHorizontalAlignment()) ?? "General";
  }
  set HorizontalAlignment(value: string) {
    this.range.writable().setHorizontalAlignment(ALIGNMENTS[value] ?? fail("ApiNotFound", `alignment ${value}`));
  }
  get VerticalAlignment() {
    return nameOf(UPRIGHT, this.range.facade().getVerticalAlignment()) ?? "Bottom";
  }
  set VerticalAlignment(value: string) {
    this.range.writable().setVerticalAlignment(UPRIGHT[value] ?? fail("ApiNotFound", `alignment ${value}`));
  }
  get WrapText() {
    return this.range.facade().getWrap();
  }
  set WrapText(on: boolean) {
    this.range.writable().setWrap(on);
  }
  /** Measured by counting characters: the headless book has no font. */
  AutofitColumns() {
    this.range.writable();
    const used = this.range.sheet.used(this.range);
    if (!used) return;
    for (let c = 0; c < used.columns; c++) {
      const column = this.range.at({ ...used, column: used.column + c, columns: 1 });
      const longest = Math.max(4, ...column.Text.map(([text = ""]) => text.length));
      const button = column.GetTables().Count > 0 ? 20 : 0; // beside the heading of a table
      this.range.sheet.fsheet.setColumnWidth(column.column, Math.min(400, longest * 8 + 16 + button));
    }
  }
  /** Counted too, for cells whose text wraps: the longest of a row decides. */
  AutofitRows() {
    this.range.writable();
    const { fsheet } = this.range.sheet;
    const used = this.range.sheet.used(this.range);
    if (!used) return;
    fsheet.setRowAutoHeight(used.row, used.rows);
    for (let row = used.row; row < used.row + used.rows; row++) {
      let lines = 1;
      for (let column = used.column; column < used.column + used.columns; column++) {
        const cell = this.range.at({ ...used, row, rows: 1, column, columns: 1 });
        if (!cell.facade().getWrap()) continue;
        const [[text = ""] = []] = cell.Text;
        lines = Math.max(lines, Math.ceil((text.length * 6.8) / (fsheet.getColumnWidth(column) - 8)));
      }
      if (lines > 1) fsheet.setRowHeightsForced(row, 1, lines * 18 + 6);
    }
  }
}

class RangeFill extends HostObject {
  readonly scalars = ["Color"];
  constructor(private readonly range: Range) {
    super();
  }
  get Color() {
    return this.range.facade().getBackground().toUpperCase();
  }
  set Color(color: string) {
    this.range.writable().setBackground(color);
  }
  Clear() {
    this.range.writable().setBackground(null as unknown as string);
  }
}

class RangeFont extends HostObject {
  readonly scalars = ["Bold", "Color", "Italic", "Name", "Size", "Underline"];
  constructor(private readonly range: Range) {
    super();
  }
  private get style() {
    const first = this.range.GetCell(0, 0).facade();
    return first.getCellStyleData("row" as never) ?? first.getCellStyleData();
  }
  get Bold() {
    return this.style?.bl === 1;
  }
  set Bold(on: boolean) {
    this.range.writable().setFontWeight(on ? "bold" : "normal");
  }
  get Italic() {
    return this.style?.it === 1;
  }
  set Italic(on: boolean) {
    this.range.writable().setFontStyle(on ? "italic" : "normal");
  }
  get Underline() {
    return this.style?.ul?.s === 1 ? "Single" : "None";
  }
  set Underline(kind: string) {
    this.range.writable().setFontLine(kind === "None" ? "none" : "underline");
  }
  get Color() {
    return (this.style?.cl?.rgb ?? "#000000").toUpperCase();
  }
  set Color(color: string) {
    this.range.writable().setFontColor(color);
  }
  get Size() {
    return this.range.facade().getFontSize() ?? 11;
  }
  set Size(points: number) {
    this.range.writable().setFontSize(points);
  }
  get Name() {
    return this.range.facade().getFontFamily() ?? "Arial";
  }
  set Name(family: string) {
    this.range.writable().setFontFamily(family);
  }
}

/** `range.format.protection`: unlocked cells can still be typed into when the sheet is protected. */
class FormatProtection extends HostObject {
  readonly scalars = ["FormulaHidden", "Locked"];
  readonly FormulaHidden = false;
  constructor(private readonly range: Range) {
    super();
  }
  get Locked() {
    return !this.range.sheet.Protection.isOpen(this.range);
  }
  set Locked(on: boolean) {
    this.range.sheet.Protection.setLocked(this.range, on);
  }
}
