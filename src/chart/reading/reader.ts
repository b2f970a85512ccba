/** From rows to readings: which line is a heading, a row of sizes, a row of figures, or prose. */
import type { LengthUnit } from "../../length";
import { doubts } from "../../words/reading";
import type { Nap } from "../model";
import { readPlace } from "../places";
import { plainWords, trimMarks } from "../vocabulary/words";
import { cellOf, isBlankRow, isFormulaLike, type Row } from "./cell";
import { isNotion, readFabricLabel, readViews, starNotes } from "./fabric-label";
import { fabricReadings, fabricSentence, isFabricRow, isWidthFigure, type FabricState } from "./fabric-rows";
import { isChestChart, kindOf, readHeading, unitAlone, unitsIn, type Kind } from "./headings";
import { isAmbiguousHeader, makeHeader, readHeaderRow, roleOf, type Header, type HeaderRow } from "./header";
import { joinedRows, onePerLine } from "./joined";
import { looseCount, looseRow } from "./loose";
import { measureReadings, type MeasureState } from "./measure-rows";
import type { Doubts, Reading } from "./record";
import { fitRow, joinLabel, type Fit, type Misfit } from "./rows";
import { readFigure } from "./figures";
import { isAlsoPlace } from "./sizes";
import { turnedChart } from "./turned";
import { readWidths, type PrintedWidths } from "./widths";

/** What the lines above have said. */
export interface State extends FabricState, MeasureState {
  kind: Kind | null;
  /** Whether a heading said so, or the form of the rows did. */
  kindSaid: boolean;
  measureKind: "body" | "finished" | null;
  unit: LengthUnit | null;
  header: Header | null;
  view: string | null;
  views: readonly string[] | "all" | null;
  part: string | null;
  nap: Nap | null;
  widths: PrintedWidths | null;
  chest: boolean;
  stars: ReadonlyMap<string, Nap>;
  columnUnits: ReadonlyMap<number, LengthUnit>;
  readings: Reading[];
  found: Doubts;
}

export function readRows(
  raw: readonly Row[],
  found: Doubts,
): { readonly readings: readonly Reading[]; readonly viewsNamed: ReadonlySet<string> } {
  const rows = onePerLine(raw);
  const state: State = {
    kind: null, kindSaid: false, measureKind: null, unit: null, header: null, view: null, views: null, part: null, nap: null,
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
  const turned = turnedChart(rows, at, state.found);
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

/** A view or part on a line of its own is not the first half of the row below it; "Back length A" may be. */
function isHeadingFirst(row: Row, state: State): boolean {
  const { views, rest } = readViews(row.text);
  return state.kind === "fabric" || (views !== null && readPlace(rest, "finished") === null);
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
    if (head) state.header = makeHeader(head, row, new Map());
    return 1;
  }
  if (readSizes(rows, at, fit, state)) return 1;
  if (fit?.ok && readFit(row, fit, state)) return 1;
  if (!readLineHeading(row, state)) readRest(row, fit, state);
  return 1;
}

const fitHere = (row: Row, state: State): Fit | Misfit => {
  const isFabric = state.kind === "fabric" || isFabricRow(row, state.kind);
  return fitRow(row, state.header!, isFabric, isWidthFigure(isFabric));
};

/** A row of sizes: the header of what follows, or a second system of the one above. */
function readSizes(rows: readonly Row[], at: number, fit: Fit | Misfit | null, state: State): boolean {
  const row = rows[at]!;
  const head = readHeaderRow(row);
  if (!head) return false;
  const { header } = state;
  if (head.certainty === "open" && !mayHeadSizes(head, header)) return false;
  const isFresh = header !== null && !header.used;
  if (fit?.ok && head.certainty === "open" && readPlace(fit.label, null) !== null)
    return heightsAsSizes(row, head, state);
  if (isFresh && head.certainty !== "open" && at > 0) return addAlias(row, head, header, state);
  if (
    isFresh &&
    head.certainty === "open" &&
    head.label === "" &&
    head.cells.length === header.columns.length &&
    isAdjacent(rows, at, header)
  )
    return addAlias(row, head, header, state);
  // Right below a row of figures, figures without a label have lost it: sizes stand apart from what is above them.
  const isRow = head.cells.every((cell) => readFigure(cell.text).kind === "figure");
  if (head.label === "" && header?.used && state.previous !== null && isRow) return false;
  if (isPlaceLabel(head, state)) return state.header ? false : heightsAsSizes(row, head, state);
  if (isAmbiguousHeader(head) && !isSizesHere(rows, at, head, state)) return false;
  if (
    head.certainty === "system" &&
    header &&
    head.cells.length === header.columns.length &&
    !startsTable(rows, at, head, state)
  )
    return addAlias(row, head, header, state);
  const candidate = makeHeader(head, row, state.columnUnits);
  if (head.certainty !== "certain" || head.cells.length === 1) {
    if (header && fit?.ok && fit.label !== "" && kindOf(head.label) === null) return false;
    if (head.cells.length < 2 && head.certainty === "open") return false;
    if (!nextFits(rows, at, candidate, state)) return false;
  } else if (header && !nextFits(rows, at, candidate, state) && nextFits(rows, at, header, state)) return false;
  if (head.certainty === "open" || kindOf(head.label) !== null) {
    const heading = readHeading(head.label);
    // Our own sheets write "Measurement" over the labels of both kinds.
    const saysNothing = state.kind !== null && roleOf(head.label) === "measurement";
    if (heading && !saysNothing) {
      startKind(heading.kind, heading.unit, state);
      if (heading.kind === "fabric") readViewHeading(head.label, state);
    }
  }
  takeHeader(candidate, state);
  return true;
}

/** Whether a row that says nothing of sizes can still be one: no amounts of cloth, and no words but a heading's. */
function mayHeadSizes(head: HeaderRow, header: Header | null): boolean {
  const isAmount = head.cells.some(
    ({ text }) =>
      /[.,]\d|[½¼¾]|\d\/\d/.test(text) && !(header === null && Number.parseInt(text, 10) >= 13 && !/[.,]\d/.test(text)),
  );
  if (isAmount) return false;
  const { label } = head;
  if (label === "" || kindOf(label) !== null || unitAlone(label) !== null || roleOf(label) !== null) return true;
  const { widths, nap, views, part, partKnown } = readFabricLabel(label);
  if (widths || nap || views || (part !== null && partKnown)) return false;
  return header === null || !/\d/.test(label);
}

function takeHeader(header: Header, state: State): void {
  const { found } = state;
  state.header = header;
  state.columnUnits = new Map();
  const seen = new Set<string>();
  header.sizes.forEach((size, index) => {
    const key = size.toUpperCase().replace(/\s+/g, "");
    if (seen.has(key)) {
      const column = header.columns[index]?.cell.column;
      found.warn(header.line, doubts.equalSizes(size), { size, ...(column === undefined ? {} : { column }) });
    }
    seen.add(key);
  });
}

const isAdjacent = (rows: readonly Row[], at: number, header: Header): boolean => rows[at - 1]?.line === header.line;

/** A second row of sizes for the columns above; when the first repeats itself (XS XS S S), this one is the pattern's. */
function addAlias(row: Row, head: HeaderRow, header: Header, state: State): boolean {
  const labels = head.cells.map((cell) => cell.text);
  if (labels.length !== header.columns.length && labels.length !== header.sizes.length) {
    if (head.certainty === "open") return false;
    if (head.cells.length > 1) state.found.error(row.line, doubts.sizeRowCount(labels.length, header.sizes.length));
    return head.cells.length > 1;
  }
  const isRepeated = new Set(header.columns.map((column) => column.cell.text)).size < header.columns.length;
  if (isRepeated && labels.length === header.columns.length && new Set(labels).size === labels.length) {
    const first = header.columns.map((column) => column.cell.text);
    const better = makeHeader(head, row, state.columnUnits);
    better.aliases = [{ label: header.label || "Size", sizes: first }];
    takeHeader({ ...better, label: head.label }, state);
    return true;
  }
  if (header.aliases.length >= 6) return true;
  const sizes =
    labels.length === header.sizes.length
      ? labels
      : header.sizes.map((_, size) => labels[header.columns.findIndex((column) => column.size === size)]!);
  if (head.label === "" && sizes.every((size) => /^\d/.test(size))) state.found.warn(row.line, doubts.namelessSizes());
  header.aliases = [...header.aliases, { label: head.label || "", sizes }];
  return true;
}

/** Whether a row with a place's name is no row of sizes: "Bust 34 36" is not, "Taille" and "Größe" may be. */
function isPlaceLabel(head: HeaderRow, state: State): boolean {
  if (head.certainty !== "open" && !isAlsoPlace(head.label)) return false;
  return !isAlsoPlace(head.label) && readPlace(head.label, state.measureKind) !== null;
}

/** "Taille" and "Größe" head sizes when no sizes were named, or when the table starts anew. */
function isSizesHere(rows: readonly Row[], at: number, head: HeaderRow, state: State): boolean {
  const { header } = state;
  if (header) {
    if (head.cells.every((cell, index) => cell.text === header.sizes[index])) return true;
    const isSame = isAlsoPlace(header.label) && header.used && !rows[at - 1]?.text;
    return isSame && head.cells.some((cell) => !header.sizes.includes(cell.text));
  }
  if (!/^taille$/i.test(head.label.trim())) return true;
  // German and Dutch measure the waist by this word; in French it is the sizes.
  const near = [...rows.slice(Math.max(0, at - 3), at), ...rows.slice(at + 1, at + 12)].map((row) =>
    plainWords(row.text),
  );
  return !near.some((text) => /\b(?:huft\w*|oberweite|brustumfang|heup\w*|bovenwijdte)\b/.test(text));
}

/** A children's chart without sizes, by height: the heights are the sizes. */
function heightsAsSizes(row: Row, head: HeaderRow, state: State): boolean {
  if (state.header || head.cells.length < 2 || readPlace(head.label, null) !== "height") return false;
  const header = { ...makeHeader(head, row, new Map()), fromHeights: true };
  takeHeader(header, state);
  state.found.warn(row.line, doubts.sizesFromHeights(), { place: "height" });
  const fit = fitHere(row, state);
  if (fit.ok) readFit(row, fit, state);
  return true;
}

/** Whether the next row with figures fits a header. */
function nextFits(rows: readonly Row[], at: number, header: Header, state: State): boolean {
  let tried = 0;
  for (let next = at + 1; next < Math.min(rows.length, at + 25) && tried < 6; next++) {
    const row = rows[next]!;
    if (isBlankRow(row) || !/[\d½¼¾⅛⅜⅝⅞]/.test(row.text)) continue;
    tried++;
    const fit = fitRow(row, header, state.kind === "fabric", isWidthFigure(state.kind === "fabric"));
    if (fit.ok && !fit.single && (header.columns.length > 1 || fit.label !== "")) return true;
    const head = readHeaderRow(row);
    if (head && head.cells.length === header.columns.length) continue;
    const joined = joinedRows(rows, next, header, (other) => fitRow(other, header, false, isWidthFigure(false)));
    if (joined) return true;
    if (!fit.ok && fit.count > 0 && tried >= 3) return false;
  }
  return false;
}

/** A row such as "EU 36 38 40" starts a table when rows of measurements follow it before any other. */
function startsTable(rows: readonly Row[], at: number, head: HeaderRow, state: State): boolean {
  return !rows[at - 1]?.text && nextFits(rows, at, makeHeader(head, rows[at]!, new Map()), state);
}

/** A row that fits its header. False when it is no row of figures after all. */
function readFit(row: Row, fit: Fit, state: State): boolean {
  const header = state.header!;
  const label = trimMarks(fit.label, ":.…·_=|,; ");
  if (isFormulaLike(fit.label) && !/^[-–—] ?\p{L}/u.test(fit.label)) {
    state.found.error(row.line, doubts.formulaLabel(fit.label));
    header.used = true;
    return true;
  }
  if (isFormulaLike(label)) {
    state.found.error(row.line, doubts.formulaLabel(label));
    return true;
  }
  const isFabric = (state.kind === "fabric" || isFabricRow(row, state.kind)) && !isMeasureIn(label, state);
  if (!isFabric && fit.single) return false;
  const readings = isFabric ? fabricReadings(row, fit, label, state) : measureReadings(row, fit, label, state);
  if (readings === null) return false;
  header.used = true;
  state.readings.push(...readings);
  state.previous = readings[0] ?? state.previous;
  return true;
}

/**
 * "BUST 32 34 36 ins  POITRINE 81 86 91 cm": one line with two rows of figures. When the first has too many or too few,
 * it is named and the second is read.
 */
function readTwoRuns(row: Row, fit: Fit, state: State): boolean {
  const count = state.header!.columns.length;
  if (row.layout !== "spaced" || count < 2 || !/\d\D+\d/.test(fit.label)) return false;
  const isWidth = isWidthFigure(state.kind === "fabric");
  const words = fit.label.split(" ").slice(0, 60);
  for (let cut = words.length; cut > 2; cut--) {
    if (!/[\d½¼¾⅛⅜⅝⅞"″”.]$|^(?:ins?|cm|yds?|m)$/i.test(words[cut - 1]!)) continue;
    const front = words.slice(0, cut).join(" ");
    const part: Row = { ...row, text: front, cells: [cellOf(front, row.line, row.cells[0]!.column)] };
    const first = looseRow(part, count, isWidth);
    const found = looseCount(part, isWidth);
    if (!first && (found.count < Math.max(2, count - 1) || readViews(front).rest.split(/\d/).length <= 2)) continue;
    const label = first?.label ?? found.label;
    if (trimMarks(label, " -:") === "") continue;
    const behind = `${first?.trailing ?? found.trailing} ${words.slice(cut).join(" ")}`;
    const second = trimMarks(behind, ":.…·_=|/ ").replace(
      /^(?:ins?|inch(?:es)?|cms?|yds?|[m"″”])(?!\p{L})[.\s/|]*/iu,
      "",
    );
    if (first) readFit(row, { ...fit, label, values: first.values, trailing: unitOfRun(behind.trim()) }, state);
    else state.found.error(row.line, doubts.count(label, found.count, count), placeOf(label, state));
    readFit(row, { ...fit, label: first ? second : second || label }, state);
    return true;
  }
  return false;
}

const unitOfRun = (trailing: string): string => trailing.split(/[\s/|]/)[0] ?? "";
const placeOf = (label: string, state: State): { place?: string } => {
  const place = readPlace(label, state.measureKind);
  return place ? { place } : {};
};

/** A row of measurements under a fabric heading: a known place, and no width, part or view word of cloth. */
function isMeasureIn(label: string, state: State): boolean {
  if (state.kind !== "fabric") return false;
  const place = readPlace(readViews(label).rest, "finished");
  const { widths, part } = readFabricLabel(label);
  return (
    place !== null &&
    widths === null &&
    (part === null || !/^(?:main|lining|contrast|interfacing|trim|elastic)/.test(part))
  );
}

/** A row of units: under the sizes ("in cm in cm"), or above them, spanning columns. */
function readUnits(row: Row, state: State): boolean {
  const filled = row.cells
    .map((cell, index) => ({ unit: unitAlone(cell.text), cell, index }))
    .filter(({ cell }) => cell.text !== "");
  const units = filled.filter(({ unit }) => unit !== null);
  if (units.length < 2 || units.length < filled.length - 1) return false;
  const { header } = state;
  if (header && !header.used && units.length === header.columns.length) {
    header.columns.forEach((column, index) => (column.unit = units[index]!.unit));
    return true;
  }
  const byColumn = new Map<number, LengthUnit>();
  let unit: LengthUnit | null = null;
  for (let index = units[0]!.index; index < Math.max(row.cells.length, 60); index++) {
    unit = unitAlone(row.cells[index]?.text ?? "") ?? unit;
    if (unit) byColumn.set(index, unit);
  }
  state.columnUnits = byColumn;
  return true;
}

/** A line that names the kind, the unit, a view or a part of what follows. */
function readLineHeading(row: Row, state: State): boolean {
  const text = joinLabel(row.cells);
  if (isChestChart(text) && text.length < 100) state.chest = true;
  const heading = readHeading(text);
  if (heading && looseCount(row).count <= 2) {
    if (heading.kind === null && unitAlone(text) === null && state.kind === "fabric" && readFabricLabel(text).widths)
      return readViewHeading(text, state);
    startKind(heading.kind, heading.unit, state);
    if (heading.kind === "fabric") readViewHeading(text, state);
    else if (heading.kind === "finished") {
      const { views } = readViews(text);
      state.view = views && views !== "all" && views.length === 1 ? views[0]! : null;
    }
    return true;
  }
  const global = /\b(?:all|these)? ?(?:measurements|sizes|figures|dimensions) (?:are |given )*(?:in|as) /i.test(text)
    ? unitsIn(text)
    : null;
  if (global?.unit && state.unit === null) {
    state.unit = global.unit;
    return true;
  }
  return readViewHeading(text, state);
}

function startKind(kind: Kind | null, unit: LengthUnit | null, state: State): void {
  if (kind !== null) {
    state.kind = kind;
    state.kindSaid = true;
    if (kind !== "fabric") state.measureKind = kind;
    state.view = null;
    state.views = null;
    state.part = null;
    state.nap = null;
    state.widths = null;
    state.unit = unit;
    state.previous = null;
  } else if (unit !== null) state.unit = unit;
}

/** "View A", "Dress A, B", "Lining", "60\" wide": what the next rows are for. */
function readViewHeading(text: string, state: State): boolean {
  const words = text.split(/\s+/).length;
  if (/\d\D+\d|[½¼¾⅛⅜⅝⅞]|(?:^|[^A-Za-zé] )\d/.test(readWidths(text)?.rest ?? text)) return false;
  if (words > 9 || text.length > 90 || /[.;]$/.test(text) || isFormulaLike(text)) return false;
  const label = readFabricLabel(text);
  if (state.kind !== "fabric") {
    const { views, rest } = readViews(text);
    if (!views || rest.split(/\s+/).length > 4 || /\d/.test(rest)) return false;
    state.views = views;
    if (views !== "all") views.forEach((view) => state.viewsNamed.add(view));
    state.view = views !== "all" && views.length === 1 ? views[0]! : null;
    state.part = null;
    return true;
  }
  if (isNotion(text)) return false;
  const isOnlyPart = label.partKnown && label.part !== null;
  if (!label.views && !isOnlyPart && !label.widths && !label.nap) return false;
  if (label.views) {
    state.views = label.views;
    if (label.views !== "all") label.views.forEach((view) => state.viewsNamed.add(view));
    state.part = null;
    state.nap = null;
    state.widths = null;
  }
  if (isOnlyPart && label.part !== "main") state.part = label.part;
  else if (isOnlyPart && !label.widths && kindOf(text) === null) state.part = "main";
  if (label.widths) state.widths = label.widths;
  if (label.nap) state.nap = label.nap;
  state.previous = null;
  return true;
}

/** What is left: a sentence about fabric, a row with too few or too many figures, or prose. */
function readRest(row: Row, fit: Fit | Misfit | null, state: State): void {
  const { found } = state;
  const text = joinLabel(row.cells);
  const loose = fit && !fit.ok ? fit : looseCount(row);
  const label = trimMarks(loose.label, ":.…·_=|,; ");
  const count = "count" in loose ? loose.count : 0;
  const sentence = state.header ? fabricSentence(row, text, state) : null;
  if (sentence) {
    state.readings.push(...sentence);
    state.header!.used = true;
    return;
  }
  if (count === 0) return;
  if (isFormulaLike(text)) {
    found.error(row.line, doubts.formulaLabel(text));
    return;
  }
  const place = readPlace(readViews(label).rest || label, state.measureKind ?? "body");
  const isFabricLike =
    state.kind === "fabric" && !isNotion(text) && label.split(/\s+/).length <= 8 && isFabricLabel(label);
  const isShort = label.split(/\s+/).filter(Boolean).length <= 8;
  const wanted = state.header?.sizes.length ?? 0;
  if (!state.header) {
    if (place !== null && isShort && count > 1) found.error(row.line, doubts.noSizes(label), { place });
    return;
  }
  if (!isShort || (/\.$/.test(row.text) && label.split(/\s+/).length > 4)) return;
  const isRowLike =
    place !== null ||
    isFabricLike ||
    (count >= Math.max(2, wanted - 1) && state.header.used) ||
    (label === "" && count >= 2 && count >= wanted - 1);
  if (!isRowLike) return;
  found.error(
    row.line,
    label ? doubts.count(label, count, state.header.columns.length) : doubts.noLabel(),
    place ? { place } : {},
  );
}

const isFabricLabel = (label: string): boolean => {
  const { views, widths, part, partKnown } = readFabricLabel(label);
  return views !== null || widths !== null || (part !== null && partKnown);
};
