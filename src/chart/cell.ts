import { plainText, readLength, type LengthText } from "../length/read";
import { readUnit, type PrintedUnit } from "../length/units";
import { formatLength } from "../length/format";
import { TOLERANCE } from "../length/round-up";
import { answer, refuse, type Result } from "../problem";
import { capital } from "../words/sentences";

/** A spreadsheet error that a cell holds: "#DIV/0!". */
export interface ErrorCell {
  readonly error: string;
}
/** What one cell of a worksheet holds. A blank cell arrives as null, "" or, from some programs, 0. */
export type Cell = string | number | boolean | null | ErrorCell;
/** A range: rows of cells. */
export type Cells = readonly (readonly Cell[])[];

/** A number above this is a date that Excel made of a typed 7/8 or 6-12: no length, size or size group is as large. */
export const LARGEST = 20_000;

export const isErrorCell = (cell: Cell): cell is ErrorCell => cell !== null && typeof cell === "object";

/** Whether a cell is blank where a nought has a meaning. */
export const isBlank = (cell: Cell): boolean =>
  cell === null || (typeof cell === "string" && !/[\p{L}\p{N}]/u.test(cell) && plainText(cell) === "");

/** Whether a cell is blank where a nought has none: a label, a measurement. */
export const isMissing = (cell: Cell): boolean => cell === 0 || isBlank(cell);

/** A cell as a sentence shows it. */
export function cellText(cell: Cell): string {
  if (cell === null) return "";
  return isErrorCell(cell) ? cell.error : String(cell).trim().slice(0, 60);
}

/** A problem for a cell that holds a spreadsheet error: the answer is that same error. */
export const errorCellProblem = ({ error }: ErrorCell) => refuse("errorCell", { error });

/**
 * A length as a cell holds it: a bare number (`unit` null), or text with or without a unit ("30 1/2", "77,5 cm").
 * A blank is refused as `blank`; a nought is a length of nought.
 *
 * Refuses a length below zero, a date that Excel made of a fraction, TRUE and FALSE, and text that is no length.
 *
 * @param wanted what is missing when the cell is blank: "a measurement"
 * @example readLengthCell("77,5 cm", "a measurement") //=> { ok: true, value: { value: 77.5, unit: "cm" } }
 */
export function readLengthCell(cell: Cell, wanted: string): Result<LengthText> {
  const found = readSignedLengthCell(cell, wanted);
  if (!found.ok || found.value.value >= 0) return found;
  return refuse("negative", { text: formatLength(found.value.value, found.value.unit), what: capital(wanted) });
}

/** The same for a number that may be below zero, such as ease. */
export function readSignedLengthCell(cell: Cell, wanted: string): Result<LengthText> {
  if (isBlank(cell)) return refuse("blank", { wanted });
  if (isErrorCell(cell)) return errorCellProblem(cell);
  if (typeof cell === "boolean") return refuse("notANumber", { text: cellText(cell), wanted });
  const read: Result<LengthText> =
    typeof cell === "string" ? readLength(cell) : answer({ value: cell as number, unit: null });
  if (!read.ok) return read;
  if (!(read.value.value >= -LARGEST)) return refuse("notANumber", { text: cellText(cell), wanted });
  if (read.value.value > LARGEST) return refuse("excelDate", { text: cellText(cell) });
  return Math.abs(read.value.value) > TOLERANCE ? read : answer({ value: 0, unit: read.value.unit });
}

/**
 * A length where nought is impossible, such as a body measurement: a nought is a blank cell.
 *
 * @example readMeasureCell(0, "a measurement") //=> { ok: false, problem: { code: "blank", … } }
 */
export function readMeasureCell(cell: Cell, wanted: string): Result<LengthText> {
  if (isMissing(cell)) return refuse("blank", { wanted });
  const read = readLengthCell(cell, wanted);
  if (!read.ok || read.value.value > 0) return read;
  return refuse("notAboveZero", { text: cellText(cell), what: capital(wanted) });
}

/** A plain number: 8, "8", "0,125" or "1/8". A blank is refused as `blank`. */
export function readNumberCell(cell: Cell, wanted: string): Result<number> {
  const read = readSignedLengthCell(cell, wanted);
  if (!read.ok) {
    return read.problem.code === "unreadableLength" ? refuse("notANumber", { text: cellText(cell), wanted }) : read;
  }
  return read.value.unit === null ? answer(read.value.value) : refuse("notANumber", { text: cellText(cell), wanted });
}

/**
 * A share: a plain number, or a percentage with its sign.
 *
 * @example readShareCell("5%", "a shrinkage") //=> { ok: true, value: 0.05 }
 */
export function readShareCell(cell: Cell, wanted: string): Result<number> {
  const percent = typeof cell === "string" ? /^([^%]+)%$/.exec(cell.trim())?.[1] : undefined;
  const read = readNumberCell(percent ?? cell, wanted);
  return read.ok && percent !== undefined ? answer(read.value / 100) : read;
}

/**
 * A word or a name: text without the spaces around it; a number is its own text (a pattern called 4821).
 *
 * @example readWordCell(" Bust ", "a place") //=> { ok: true, value: "Bust" }
 */
export function readWordCell(cell: Cell, wanted: string): Result<string> {
  if (isMissing(cell)) return refuse("blank", { wanted });
  if (isErrorCell(cell)) return errorCellProblem(cell);
  return answer(String(cell).replace(/\s+/g, " ").trim());
}

/** TRUE or FALSE; also 1, 0, yes, no and their like. A blank is `ifBlank`. */
export function readFlagCell(cell: Cell, ifBlank: boolean): Result<boolean> {
  if (isBlank(cell)) return answer(ifBlank);
  if (isErrorCell(cell)) return errorCellProblem(cell);
  const word = String(cell).trim().toLowerCase();
  if (["true", "yes", "y", "1"].includes(word)) return answer(true);
  if (["false", "no", "n", "0"].includes(word)) return answer(false);
  return refuse("notTrueOrFalse", { text: cellText(cell) });
}

/** The units that the functions know, as a sentence lists them. */
export const KNOWN_UNITS = "in, cm, yd or m";

/** A unit: "in", "cm", "yards" … A blank is undefined: the caller says what that means. */
export function readUnitCell(cell: Cell): Result<PrintedUnit | undefined> {
  if (isMissing(cell)) return answer(undefined);
  if (isErrorCell(cell)) return errorCellProblem(cell);
  const unit = typeof cell === "string" ? readUnit(cell) : undefined;
  return unit ? answer(unit) : refuse("unknownUnit", { text: cellText(cell), known: KNOWN_UNITS });
}
