/** Rows of sizes under a row of places: "34 | 80 | 62". */
import { readPlace } from "../places";
import { cellOf, isBlankRow, isFormulaLike, type Cell, type Row } from "./cell";
import { readFigure } from "./figures";
import { isNamedSize, sizeOf } from "./header";
import { readHeading } from "./headings";
import { looseCount, looseRow } from "./loose";
import { isSizeLabel, isSizeWord } from "./sizes";
import { cutNames, isFigure, isNamesRow, trimmedTo } from "./turned-names";

export interface SizeRun {
  /** A row for each size; one without a name, or with too few or too many cells, is for its reader to name. */
  readonly body: readonly (readonly Cell[])[];
  /** The first row behind them. */
  readonly next: number;
}

/**
 * The rows of sizes from a row on. Blank lines, a heading over some of the sizes ("Plus sizes") and a spoilt row don't end
 * them when a whole row of a new size follows: its figures would stand under the wrong sizes.
 */
export function sizeRun(
  rows: readonly Row[],
  start: number,
  width: number,
  read: (row: Row) => readonly Cell[] | null,
): SizeRun {
  const body: (readonly Cell[])[] = [];
  const isNewSize = (row: Row | undefined): boolean => {
    const cells = row ? read(row) : null;
    const size = cells?.length === width ? cells[0]!.text : "";
    return isSizeLabel(sizeOf(size).label) && body.every((other) => other[0]!.text !== size);
  };
  let next = start;
  while (next < rows.length) {
    const row = rows[next]!;
    const cells = read(row);
    if (cells) {
      body.push(cells);
      next++;
      continue;
    }
    if (isSpoilt(row) && isNewSize(rows[next + 1])) {
      body.push(trimmedTo(row.cells, width));
      next++;
      continue;
    }
    if (body.length === 0) break;
    let behind = afterBlanks(rows, next);
    if (behind < rows.length && isGroupHeading(rows[behind]!)) behind = afterBlanks(rows, behind + 1);
    if (!isNewSize(rows[behind])) break;
    next = behind;
  }
  return { body, next };
}

export function afterBlanks(rows: readonly Row[], at: number): number {
  while (at < rows.length && isBlankRow(rows[at]!)) at++;
  return at;
}

/** A row whose size, or whose figures, can't be read. */
function isSpoilt(row: Row): boolean {
  const [first, ...others] = row.cells;
  if (!first || row.layout !== "grid" || others.length === 0) return false;
  // A size without any figure stands there all the same.
  if (others.every((cell) => cell.text === "")) return isSizeLabel(sizeOf(first.text).label);
  return first.text === "" || isFormulaLike(first.text) || isSizeLabel(sizeOf(first.text).label);
}

/** "Plus sizes", alone in its row. */
function isGroupHeading(row: Row): boolean {
  const [only, ...others] = row.cells.filter((cell) => cell.text !== "" && !cell.repeated);
  if (!only || others.length > 0 || /\d/.test(only.text) || only.text.length > 40) return false;
  return readHeading(only.text) === null && readPlace(only.text, null) === null && !isNamesRow(cutNames(row));
}

/** A size and a figure behind it; a size of another name wants figures or blanks in half of its cells. */
export function isSizeRow(row: Row): boolean {
  const [first, ...others] = row.cells;
  if (!first || row.layout !== "grid" || !others.some((cell) => isFigure(cell.text))) return false;
  if (isSizeLabel(sizeOf(first.text).label)) return true;
  const figures = others.filter((cell) => readFigure(cell.text).kind !== "text").length;
  return isNamedSize(first.text) && !isSizeWord(first.text) && figures * 2 >= others.length;
}

/** "8 31 1/2 24 33 1/2" as a size and its figures; a row with another number of figures comes back as it is. */
export function sizeAndFigures(row: Row, count: number): Cell[] | null {
  if (
    row.cells.length === count + 1 &&
    row.cells.slice(1).every((cell) => readFigure(cell.text).kind !== "text") &&
    isSizeLabel(row.cells[0]!.text)
  )
    return [...row.cells];
  const labelled = looseRow(row, count, () => false);
  const label = labelled ? sizeOf(labelled.label).label : "";
  if (labelled && isSizeLabel(label)) return [cellOf(label, row.line, row.cells[0]!.column), ...labelled.values];
  const all = looseRow(row, count + 1, () => false);
  if (all && all.label === "" && isSizeLabel(all.values[0]!.text)) return [...all.values];
  const [first] = row.cells;
  if (first && isSizeLabel(first.text.split(" ")[0]!) && /\d/.test(row.text) && !/[a-z]{4}/i.test(row.text)) {
    // The wrong number of figures: as many cells as were found, for the sentence that names the size.
    const found = looseCount(row);
    const figures = found.label === "" ? found.count - 1 : found.count;
    return Array.from({ length: figures + 1 }, () => cellOf(row.text.split(" ")[0]!, row.line, first.column));
  }
  return null;
}
