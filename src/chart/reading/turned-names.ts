/** Rows of places that head columns: "Size | Bust | Waist". */
import { readPlace } from "../places";
import { plainWords } from "../vocabulary/words";
import { cellOf, type Cell, type Row } from "./cell";
import { readFigure } from "./figures";
import { roleOf } from "./header";
import { areHeights, isSizeLabel, isSizeWord, isSystemWord } from "./sizes";
import { readWidths } from "./widths";

export const trimmed = (cells: readonly Cell[]): readonly Cell[] => {
  let end = cells.length;
  while (end > 0 && cells[end - 1]!.text === "") end--;
  return cells.slice(0, end);
};
/** Blank cells beyond the last heading are nothing; a figure there is one too many. */
export const trimmedTo = (cells: readonly Cell[], width: number): Cell[] =>
  trimmed(cells).length > width ? [...trimmed(cells)] : cells.slice(0, width);
export const padded = (cells: readonly Cell[], width: number): Cell[] =>
  Array.from({ length: width }, (_, index) => cells[index] ?? cellOf("", cells[0]!.line, index + 1));

export const isFigure = (text: string): boolean => readFigure(text).kind === "figure";
/** A heading of a column: a place, or a fabric width. */
const isName = (text: string): boolean =>
  text.length > 1 &&
  !isFigure(text) &&
  (readPlace(text, null) !== null || (readWidths(text) !== null && /[a-z]/i.test(text)));
export const isWidthName = (text: string): boolean => /\d ?(?:["″”]|cm|in\b)/i.test(text);

/** "View A": a column of cloth where the rows are sizes. */
const VIEW = /^(?:view|version|modell|modèle|modelo) \S/i;

/**
 * "Size | Bust | Waist": places across, and no place in front. Half of the headings may be other words; of a line that was
 * cut at its single spaces fewer, since "Sizes by waist" is no row of places.
 */
export function isNamesRow(cells: readonly Cell[], isCut = false): boolean {
  const [corner, ...others] = trimmed(cells);
  if (!corner) return false;
  const isSizes = isSizeWord(corner.text);
  if (!isSizes && (roleOf(corner.text) !== null || isName(corner.text))) return false;
  const names = others.filter(({ text }) => isName(text) || isWidthName(text) || (isSizes && VIEW.test(text))).length;
  const systems = others.filter((cell) => isSizeWord(cell.text) || isSystemWord(cell.text)).length;
  const isBare = others.some((cell) => /^[\d.,\s½¼¾/-]+$/.test(cell.text));
  const filled = others.filter((cell) => cell.text !== "").length;
  return names > 0 && !isBare && (names + systems) * 2 >= filled + (isCut ? 1 : 0);
}

/**
 * "Size | 140 | 115" under a heading of cloth: widths without a unit, when the rows below are sizes that are no widths. By
 * heights ("Size 116 122 128") they are a child's sizes.
 */
export function isBareWidths(cells: readonly Cell[], below: readonly Row[]): boolean {
  const [corner, ...others] = trimmed(cells);
  const isWidth = (text: string): boolean => /^\d{2,3}(?:[/-]\d{2,3})?$/.test(text) && readWidths(text) !== null;
  if (!corner || others.length === 0 || !isSizeWord(corner.text) || !others.every((cell) => isWidth(cell.text)))
    return false;
  if (areHeights(others.map((cell) => cell.text))) return false;
  const sizes = below.slice(0, 6).map((row) => row.cells[0]?.text.split(" ")[0] ?? "");
  const run = sizes.slice(0, sizes.includes("") ? sizes.indexOf("") : sizes.length).filter(isSizeLabel);
  return run.length > 1 && run.length * 2 > sizes.length && (!run.every(isWidth) || areHeights(run));
}

/** A heading line cut into known places: "Size Bust Back waist length Hip". */
export function cutNames(row: Row): Cell[] {
  const words = row.cells.flatMap((cell) =>
    [...cell.text.matchAll(/\S+/g)].map((match) => cellOf(match[0], cell.line, cell.column + match.index)),
  );
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
