import { plainText } from "../length/read";
import { answer, refuse, type Result } from "../problem";
import { cellText, errorCellProblem, isBlank, isErrorCell, LARGEST, type Cell } from "./cell";

/** A label without case and spaces: what two labels are compared by. */
export const labelKey = (label: string): string => plainText(label).replaceAll(" ", "").toLowerCase();

/**
 * Whether two labels of a size, a view or a pattern are the same: case and spaces don't count.
 *
 * @example sameLabel("18 w", "18W") //=> true
 */
export const sameLabel = (one: string, other: string): boolean => one === other || labelKey(one) === labelKey(other);

/**
 * A size as a cell holds it: 14 and "14" are the same label. A nought is size 0 only on a chart that has one, else it
 * is a blank cell; a date that Excel made of 6-12 is refused.
 *
 * @param sizes the chart's own labels
 * @example readSizeCell(14, ["12", "14"]) //=> { ok: true, value: "14" }
 */
export function readSizeCell(cell: Cell, sizes: readonly string[]): Result<string> {
  const wanted = "a size";
  if (isBlank(cell)) return refuse("blank", { wanted });
  if (isErrorCell(cell)) return errorCellProblem(cell);
  if (cell === 0 && !sizes.includes("0")) return refuse("blank", { wanted });
  if (typeof cell === "number" && cell > LARGEST) return refuse("excelDate", { text: cellText(cell) });
  return answer(String(cell).trim());
}

/**
 * A size label as an answer: a number only when that loses nothing, so that "00", "02" and "18W" stay text.
 *
 * @example sizeCell("14") //=> 14
 */
export function sizeCell(label: string): string | number {
  const number = Number(label);
  return Number.isFinite(number) && String(number) === label ? number : label;
}

/**
 * Where a size stands in a list of sizes, counted from 0; -1 when it isn't there.
 *
 * @example sizeIndex(["XS", "S"], "s") //=> 1
 */
export function sizeIndex(sizes: readonly string[], size: string): number {
  const exact = sizes.indexOf(size);
  if (exact >= 0) return exact;
  const key = labelKey(size);
  return sizes.findIndex((label) => labelKey(label) === key);
}

/** The sizes of a chart as a sentence names them: "8 to 22", or all of a few. */
export function sizesText(sizes: readonly string[]): string {
  return sizes.length <= 3 ? sizes.join(", ") : `${sizes[0]} to ${sizes.at(-1)}`;
}

/** The column of a size, or #N/A naming the sizes there are. */
export function columnOfSize(sizes: readonly string[], size: string): Result<number> {
  const index = sizeIndex(sizes, size);
  return index >= 0 ? answer(index) : refuse("sizeNotOnChart", { size, known: sizesText(sizes) });
}
