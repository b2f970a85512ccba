/** Charts with a size in each row, turned so that the sizes stand side by side. */
import { readPlace } from "../places";
import { plainWords } from "../vocabulary/words";
import { cellOf, type Cell, type Row } from "./cell";
import { readFigure } from "./figures";
import { isSizeLabel, isSizeWord } from "./sizes";
import { kindOf, readHeading, unitAlone } from "./headings";
import { sizeOf } from "./header";
import { looseCount, looseRow } from "./loose";
import { isFigure, isNamesRow, isWidthName, padded, trimmed, trimmedTo } from "./turned-names";
import { readWidths } from "./widths";
import type { Doubts } from "./record";
import { sizeSentences } from "./size-sentences";
import { doubts } from "../../words/reading";

export interface Turned {
  readonly rows: Row[];
  /** The first row behind the chart. */
  readonly next: number;
}

/** The turned chart that begins at a row, or null. Rows of sizes with too few or too many cells are named and left out. */
export function turnedChart(rows: readonly Row[], at: number, found: Doubts): Turned | null {
  const spread = spreadRows(rows, at);
  if (!spread) return null;
  const { head, body, next } = spread;
  const width = head.at(-1)!.length;
  const isFull = (row: readonly Cell[]): boolean =>
    row.filter((_, index) => index < width).length === width && row.length === width;
  const good = body.filter((row) => isFull(row) && row[0]!.text !== "");
  for (const row of body.filter((other) => !good.includes(other))) {
    const size = row[0]?.text ?? "";
    found.error(row[0]!.line, doubts.shortSize(size, row.length - 1, width - 1), { size });
  }
  if (good.length === 0) return null;
  return { rows: columnsAsRows(head, good), next };
}

function columnsAsRows(head: readonly (readonly Cell[])[], body: readonly (readonly Cell[])[]): Row[] {
  const names = head.at(-1)!;
  const line = names[0]?.line ?? 1;
  const rows: Row[] = [];
  let heading = "";
  const make = (cells: Cell[]): Row => ({
    line: cells[0]!.line,
    text: cells.map((cell) => cell.text).join(" "),
    layout: "grid",
    cells,
  });
  for (let column = 0; column < names.length; column++) {
    const above = head
      .map((row) => row[column]!)
      .filter((cell, index, all) => cell.text !== "" && cell.text !== all[index - 1]?.text);
    const kind = above.find(
      (cell) =>
        kindOf(cell.text) !== null && readPlace(cell.text, null) === null && column > 0 && !readWidths(cell.text),
    );
    if (kind && kind.text !== heading) {
      heading = kind.text;
      rows.push(make([cellOf(kind.text, kind.line, kind.column)]));
    }
    const unit = above.find((cell) => unitAlone(cell.text) !== null);
    const label = above.filter((cell) => cell !== kind && cell !== unit);
    const text = label.map((cell) => cell.text).join(" ");
    const first = cellOf(column === 0 && !text ? "Size" : text, label[0]?.line ?? line, label[0]?.column ?? column + 1);
    const values = body.map((row) => (column === 0 ? { ...row[0]!, text: sizeOf(row[0]!.text).label } : row[column]!));
    if (column > 0 && values.every((cell) => cell.text === "") && !text) continue;
    rows.push(make([first, ...values, ...(unit ? [unit] : [])]));
  }
  return rows;
}

interface Spread {
  readonly head: readonly (readonly Cell[])[];
  readonly body: readonly (readonly Cell[])[];
  readonly next: number;
}

/** Head rows (at most four) and the rows of sizes below them, as cells of one width. */
function spreadRows(rows: readonly Row[], at: number): Spread | null {
  const first = rows[at]!;
  if (first.cells.length === 0) return null;
  const sentences = sizeSentences(rows, at);
  if (sentences) return { head: [sentences.head], body: sentences.body, next: sentences.next };
  if (first.layout === "spaced") return spacedSpread(rows, at);
  let names = at;
  while (names < at + 3 && rows[names]?.layout === "grid" && isTopRow(rows[names]!) && !isNamesRow(rows[names]!.cells))
    names++;
  const row = rows[names];
  if (!row || row.layout !== "grid" || !isNamesRow(row.cells)) return null;
  let start = names + 1;
  while (start < names + 3 && rows[start] && isSubRow(rows[start]!)) start++;
  const width = Math.max(...rows.slice(names, start).map((head) => trimmed(head.cells).length));
  const units = rows.slice(names + 1, start);
  const head = rows.slice(at, start).map((top, index) => {
    const cells = padded(top.cells, width);
    // "Bust | | Waist" over "in | cm | in": a place stands over both its columns.
    const isNames = index === names - at;
    for (let column = 2; isNames && column < width; column++)
      if (cells[column]!.text === "" && units.some((sub) => sub.cells[column]?.text))
        cells[column] = cells[column - 1]!;
    return cells;
  });
  // The row of places must be last but for units; a row of units joins it.
  const order = [...head.slice(0, names - at), ...head.slice(names - at + 1), head[names - at]!];
  const body: Cell[][] = [];
  let next = start;
  for (; next < rows.length && isSizeRow(rows[next]!); next++) body.push(trimmedTo(rows[next]!.cells, width));
  return body.length > 0 ? { head: order, body, next } : null;
}

/** A row above the places: headings that span columns. */
function isTopRow(row: Row): boolean {
  const filled = row.cells.filter((cell) => cell.text !== "");
  return (
    row.cells.length > 2 && filled.length > 0 && filled.every((cell) => !isFigure(cell.text)) &&
    filled.some((cell) => cell.repeated || readHeading(cell.text) !== null || /^(?:view|version|modell|modèle|modelo)\b/i.test(cell.text)) &&
    row.cells.some((cell, index) => index > 0 && cell.text !== "")
  ); // prettier-ignore
}

/** A row of units under the places. */
function isSubRow(row: Row): boolean {
  const filled = row.cells.filter((cell) => cell.text !== "" && !cell.repeated);
  return (
    filled.length > 0 &&
    filled
      .slice(isSizeWord(filled[0]!.text) ? 1 : 0)
      .every((cell) => unitAlone(cell.text) !== null || isWidthName(cell.text))
  );
}

function isSizeRow(row: Row): boolean {
  const [first, ...others] = row.cells;
  if (!first || first.text === "" || row.layout !== "grid") return false;
  const isLabel =
    isSizeLabel(sizeOf(first.text).label) ||
    (first.text.length <= 20 && readPlace(first.text, null) === null && kindOf(first.text) === null);
  return (
    isLabel &&
    !/^[=+@]/.test(first.text) &&
    others.some((cell) => isFigure(cell.text)) &&
    others.filter((cell) => isFigure(cell.text) || isSizeLabel(cell.text) || readFigure(cell.text).kind !== "text")
      .length *
      2 >=
      others.length
  );
}

/** The same for text whose cells spaces part: its headings are cut into as many names as the rows have figures. */
function spacedSpread(rows: readonly Row[], at: number): Spread | null {
  const row = rows[at]!;
  if (/\d/.test(row.text.replace(/\d{1,3} ?(?:["″”]|cm|in\b)/g, "")) || row.text.length > 200) return null;
  const below = rows[at + 1];
  if (!below || below.cells.length === 0) return null;
  for (const names of [row.cells, cutNames(row)]) {
    if (!names || !isNamesRow(names)) continue;
    const body: Cell[][] = [];
    let next = at + 1;
    for (; next < rows.length; next++) {
      const cells = sizeAndFigures(rows[next]!, names.length - 1);
      if (!cells) break;
      body.push(cells);
    }
    if (body.some((cells) => cells.length === names.length)) return { head: [names], body, next };
  }
  return null;
}

/** "8 31 1/2 24 33 1/2" as a size and its figures; a row with another number of figures comes back as it is. */
function sizeAndFigures(row: Row, count: number): Cell[] | null {
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
  if (first && isSizeLabel(first.text.split(" ")[0] ?? "") && /\d/.test(row.text) && !/[a-z]{4}/i.test(row.text)) {
    // The wrong number of figures: as many cells as were found, for the sentence that names the size.
    const found = looseCount(row);
    const figures = found.label === "" ? found.count - 1 : found.count;
    return Array.from({ length: figures + 1 }, () => cellOf(row.text.split(" ")[0]!, row.line, first.column));
  }
  return null;
}

/** A heading line cut into known places: "Size Bust Back waist length Hip". */
function cutNames(row: Row): Cell[] | null {
  const words = row.cells.flatMap((cell) =>
    [...cell.text.matchAll(/\S+/g)].map((match) => cellOf(match[0], cell.line, cell.column + match.index)),
  );
  if (words.length < 2 || words.length > 40) return null;
  const cells: Cell[] = [];
  let at = 0;
  if (isSizeWord(words[0]!.text)) {
    cells.push(words[0]!);
    at = 1;
  }
  while (at < words.length) {
    let length = Math.min(6, words.length - at);
    const text = (count: number): string =>
      words
        .slice(at, at + count)
        .map((word) => word.text)
        .join(" ");
    while (length > 1 && (readPlace(text(length), null) === null || isTwoPlaces(text(length)))) length--;
    cells.push(cellOf(text(length), words[at]!.line, words[at]!.column));
    at += length;
  }
  return cells;
}

const isTwoPlaces = (text: string): boolean => {
  const words = plainWords(text).split(" ");
  return words.length === 2 && words.every((word) => readPlace(word, null) !== null);
};
