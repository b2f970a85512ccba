/** Cells of Univer and values of Excel, one from the other. */
import type { ICellData } from "@univerjs/core";
import { readTyped, type CellValue } from "./typed";

/** Univer's numbers for the kinds of a cell; the last is text that would otherwise be read as a number. */
const KIND = { text: 1, number: 2, truth: 3, forcedText: 4 } as const;
const ERROR = /^#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!)$/;

export interface WrittenCell {
  readonly cell: ICellData;
  /** The number format that Excel gives to a cell that had none, for instance to a date. */
  readonly format?: string;
}

/** In a cell of the text format everything is text as it stands, formulas too. */
export function written(value: CellValue, format: string): WrittenCell {
  if (format === "@") return { cell: value === "" ? EMPTY : text(asText(value).replace(/^'/, "")) };
  if (typeof value === "number") return { cell: { v: value, t: KIND.number, f: null, si: null, p: null } };
  if (typeof value === "boolean") return { cell: { v: value ? 1 : 0, t: KIND.truth, f: null, si: null, p: null } };
  if (value === "") return { cell: EMPTY };
  const typed = readTyped(value);
  if (typed.kind === "formula") return { cell: { f: typed.formula, v: null, si: null, p: null, t: null } };
  if (typed.kind === "text") return { cell: text(typed.text) };
  const { cell } = written(typed.value, "General");
  return typed.format !== undefined && format === "General" ? { cell, format: typed.format } : { cell };
}

const EMPTY: ICellData = { v: null, f: null, si: null, p: null, t: null };
const asText = (value: CellValue) => (typeof value === "boolean" ? String(value).toUpperCase() : String(value));
const text = (v: string): ICellData => ({ v, t: KIND.forcedText, f: null, si: null, p: null });

export function valueOf(cell: ICellData | null | undefined): CellValue {
  if (!cell) return "";
  const value = cell.v ?? cell.p?.body?.dataStream?.replace(/\r\n$/, "") ?? "";
  return isTruth(cell) ? value === 1 || value === true || value === "TRUE" : value;
}

export function isTruth(cell: ICellData | null | undefined): boolean {
  return cell?.t === KIND.truth;
}

export function isText(cell: ICellData | null | undefined): boolean {
  return cell?.t === KIND.text || cell?.t === KIND.forcedText;
}

/** Excel.RangeValueType */
export function typeOf(value: CellValue): string {
  if (value === "") return "Empty";
  if (typeof value === "string") return ERROR.test(value) ? "Error" : "String";
  return typeof value === "number" ? "Double" : "Boolean";
}
