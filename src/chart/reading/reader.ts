/** From rows to readings: which line is a heading, a row of sizes, a row of figures, or prose. */
import { doubts } from "../../words/reading";
import { readPlace } from "../places";
import { trimMarks } from "../vocabulary/words";
import { isBlankRow, isFormulaLike, type Row } from "./cell";
import { isNotion, readFabricLabel, readViews, starNotes } from "./fabric-label";
import { fabricSentence } from "./fabric-sentence";
import { readFit, readTwoRuns, fitHere } from "./figure-rows";
import { makeHeader, readHeaderRow } from "./header";
import { readUnits, readLineHeading } from "./heading-rows";
import { breaksOff, joinedRows, onePerLine } from "./joined";
import { looseCount } from "./loose";
import type { Doubts, Reading } from "./record";
import { joinLabel, type Fit, type Misfit } from "./rows";
import { flagDates, readSizes } from "./size-rows";
import { isAlsoPlace, isSizeLabel, isSizeWord, isSystemWord } from "./sizes";
import type { State } from "./state";
import { turnedChart } from "./turned";

export function readRows(
  raw: readonly Row[],
  found: Doubts,
): { readonly readings: readonly Reading[]; readonly viewsNamed: ReadonlySet<string> } {
  const rows = onePerLine(raw);
  const state: State = {
    kind: null, measureKind: null, unit: null, header: null, view: null, views: null, part: null, nap: null,
    widths: null, chest: false, stars: starNotes(rows.map((row) => row.text)), columnUnits: new Map(), readings: [], found,
    noHeadingSaid: false, previous: null, viewsNamed: new Set(),
  }; // prettier-ignore
  for (let at = 0; at < rows.length; at++) at += readAt(rows, at, state) - 1;
  return { readings: state.readings, viewsNamed: state.viewsNamed };
}

/** Reads what begins at a row; how many rows it took. */
function readAt(rows: readonly Row[], at: number, state: State): number {
  const row = rows[at]!;
  if (isBlankRow(row)) {
    state.previous = null;
    return 1;
  }
  const turned = turnedChart(rows, at, state.found, state.kind === "fabric");
  if (turned) {
    state.header = null;
    readTurned(turned.rows, state);
    return turned.next - at;
  }
  const fit = state.header ? fitHere(row, state) : null;
  if (readSizes(rows, at, fit, state)) return 1;
  if (fit?.ok && (readTwoRuns(row, fit, state) || readFit(row, fit, state))) return 1;
  if (readUnits(row, state)) return 1;
  if (isHeadingFirst(row, state) && readLineHeading(row, state)) return 1;
  const joined = state.header ? joinedRows(rows, at, state.header, (other) => fitHere(other, state)) : null;
  if (joined) {
    readFit(joined.row, joined.fit, state);
    return joined.taken;
  }
  if (readLineHeading(row, state)) return 1;
  readRest(row, fit, state);
  return 1;
}

/** A view or part on a line of its own is not the first half of the row below it; "Back length A" and "A, B," may be. */
function isHeadingFirst(row: Row, state: State): boolean {
  if (state.kind === "fabric") return !breaksOff(row.text);
  const { views, rest } = readViews(row.text);
  return views !== null && readPlace(rest, "finished") === null;
}

function readTurned(rows: readonly Row[], state: State): void {
  for (let at = 0; at < rows.length; at++) at += readAtPlain(rows, at, state) - 1;
}

/** The same for rows that were turned already. */
function readAtPlain(rows: readonly Row[], at: number, state: State): number {
  const row = rows[at]!;
  const fit = state.header ? fitHere(row, state) : null;
  if (at === 0) {
    const head = readHeaderRow({ ...row, cells: [{ ...row.cells[0]!, text: "Size" }, ...row.cells.slice(1)] });
    if (head) {
      state.header = makeHeader(head, row, new Map());
      flagDates(state.header, state.found);
    }
    return 1;
  }
  if (readSizes(rows, at, fit, state)) return 1;
  if (fit?.ok && readFit(row, fit, state)) return 1;
  if (!readLineHeading(row, state)) readRest(row, fit, state);
  return 1;
}

/** What is left: a sentence about fabric, a row with too few or too many figures, or prose. */
function readRest(row: Row, fit: Fit | Misfit | null, state: State): void {
  const { found } = state;
  const text = joinLabel(row.cells);
  const loose = fit && !fit.ok ? fit : looseCount(row);
  const whole = trimMarks(loose.label, ":.…·_=|,; ");
  const behind = "count" in loose ? loose.count : 0;
  const sentence = state.header ? fabricSentence(row, text, state) : null;
  if (sentence) {
    state.readings.push(...sentence);
    state.header!.used = true;
    return;
  }
  if (behind === 0) return;
  const kind = state.measureKind ?? "body";
  const placeOf = (words: string) => readPlace(readViews(words).rest || words, kind);
  // "B 45\"": views and widths are no figures of a row, and "B" is no bust.
  const isCloth = state.kind === "fabric" && isFabricLabel(whole);
  // "Bust O1.5 33": a figure that a letter spoilt stands at the end of the label, and the figures before it too.
  const spoilt = withoutFigures(whole);
  const isWhole = spoilt.count > 0 && spoilt.count + behind === state.header?.columns.length;
  const isSpoilt = !isCloth && (isWhole || placeOf(spoilt.label) !== null);
  const label = isSpoilt ? spoilt.label : whole;
  const count = behind + (isSpoilt ? spoilt.figures : 0);
  const place = isCloth ? null : placeOf(label);
  if (count > 1 && state.header && isLostSizes(row, label, state.header.sizes, state.previous === null)) {
    const { used, sizes } = state.header;
    found.error(row.line, used ? doubts.sizesUnread() : doubts.sizeRowCount(count, sizes.length));
    // The rows below are not for the sizes above them.
    if (used) state.header = null;
    return;
  }
  if (isFormulaLike(text)) {
    found.error(row.line, doubts.formulaLabel(text));
    return;
  }
  // Cells are certain: figures in them are no prose, however long the label is.
  const isInCells = row.layout === "grid" && row.cells.filter((cell) => cell.text !== "").length > 2;
  const isShort = isInCells || label.split(/\s+/).length <= 8;
  const wanted = state.header?.sizes.length ?? 0;
  if (!state.header) {
    if (place !== null && isShort && count > 1) found.error(row.line, doubts.noSizes(label), { place });
    return;
  }
  // Amounts for some of the sizes, in a sentence: "sizes 10 12 14 need 3/4 yd interfacing".
  const isForSome =
    state.kind === "fabric" && !isNotion(text.replace(/interfacing/gi, "")) && /\bsizes? ?\d/i.test(label);
  if (!isShort && isForSome && row.text.length <= 160 && fabricAmount(row.text)) {
    found.error(row.line, doubts.count(label.slice(0, 60), count, wanted));
    return;
  }
  if (!isShort || (/\.$/.test(row.text) && label.split(/\s+/).length > 4)) return;
  const isRowLike =
    place !== null ||
    (isCloth && !isNotion(text)) ||
    (count >= Math.max(2, wanted - 1) && state.header.used) ||
    (label === "" && count >= 2 && count >= wanted - 1);
  if (!isRowLike) return;
  found.error(
    row.line,
    label ? doubts.count(label, count, state.header.columns.length) : doubts.noLabel(),
    place ? { place } : {},
  );
}

/** A row of sizes that could not be read; a list of some of the sizes above is nothing new. */
function isLostSizes(row: Row, label: string, sizes: readonly string[], isApart: boolean): boolean {
  // "Taille" and "Größe" may be a waist and a height that lost a figure.
  if (!isApart && isAlsoPlace(label)) return false;
  if (!isSizeWord(label) && !(isApart && isSystemWord(label))) return false;
  return row.text.split(/[\s,;|]+/).some((word) => isSizeLabel(word) && !sizes.includes(word));
}

const fabricAmount = (text: string): boolean => /\d ?(?:yds?|m)\b/i.test(text) && readFabricLabel(text).part !== null;

/** A label without the figures at its end, how many these are, and how many of them can be read. */
function withoutFigures(label: string): { readonly label: string; readonly count: number; readonly figures: number } {
  const words = label.split(" ");
  let end = words.length;
  while (end > 0 && /\d/.test(words[end - 1]!)) end--;
  // "30 1/2" is one: a fraction behind a space isn't counted again.
  const figures = words.slice(end).filter((word) => /^\d[\d.,¼½¾⅛⅜⅝⅞]*["″]?$/.test(word)).length;
  return { label: words.slice(0, end).join(" "), count: words.length - end, figures };
}

const isFabricLabel = (label: string): boolean => {
  const { views, widths, part, partKnown } = readFabricLabel(label);
  return views !== null || widths !== null || (part !== null && partKnown);
};
