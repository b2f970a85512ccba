/** Which rows are rows of sizes, and which only look like one. */
import { doubts } from "../../words/reading";
import { LARGEST } from "../cell";
import { readPlace } from "../places";
import { plainWords } from "../vocabulary/words";
import type { Row } from "./cell";
import { readFabricLabel } from "./fabric-label";
import { isWidthFigure } from "./cloth-row";
import { readFit, fitHere } from "./figure-rows";
import { readFigure } from "./figures";
import { isAmbiguousHeader, makeHeader, readHeaderRow, roleOf, type Header, type HeaderRow } from "./header";
import { startKind, readTableHeading } from "./heading-rows";
import { kindOf, readHeading } from "./headings";
import { joinedRows } from "./joined";
import { fitRow, type Fit, type Misfit } from "./rows";
import type { Doubts } from "./record";
import { isAlsoPlace } from "./sizes";
import type { State } from "./state";

/** A row of sizes: the header of what follows, or a second system of the one above. */
export function readSizes(rows: readonly Row[], at: number, fit: Fit | Misfit | null, state: State): boolean {
  const row = rows[at]!;
  const head = readHeaderRow(row);
  if (!head) return false;
  const { header } = state;
  const isOpen = head.certainty === "open";
  if (isOpen && !mayHeadSizes(head, header)) return false;
  // "115 cm  2  2  3" below sizes is a width with its amounts, though 115 cm could be a height.
  if (state.kind === "fabric" && fit?.ok && readFabricLabel(fit.label).widths) return false;
  const isFresh = header !== null && !header.used;
  const isRow = head.cells.every((cell) => readFigure(cell.text).kind === "figure");
  if (isFresh && (!isOpen || isNamelessAlias(rows, at, head, header))) return addAlias(row, head, header, state);
  if (isFresh && isRow && isLabelLost(rows, at, head, header)) {
    state.found.error(row.line, doubts.noLabel());
    return true;
  }
  // Right below a row of figures, figures without a label have lost it: sizes stand apart from what is above them.
  if (head.label === "" && header?.used && state.previous !== null && isRow) return false;
  if (isOpen && header?.used && state.previous !== null && isSpoilt(head)) return false;
  if (isOpen && readPlace(head.label, state.measureKind) !== null)
    return header ? false : heightsAsSizes(row, head, state);
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
    if (fit?.ok && fit.label !== "" && head.certainty !== "system" && kindOf(head.label) === null) return false;
    if ((head.cells.length < 2 && isOpen) || !nextFits(rows, at, candidate, state)) return false;
  } else if (header && !nextFits(rows, at, candidate, state) && nextFits(rows, at, header, state)) return false;
  const heading = kindOf(head.label) === null ? null : readHeading(head.label);
  // Our own sheets write "Measurement" over the labels of both kinds.
  if (heading && (state.kind === null || roleOf(head.label) !== "measurement"))
    readTableHeading(heading, head.label, state);
  // A column of widths in front of the sizes is about cloth, whatever stands above it.
  if (isClothHead(head) && state.kind !== "fabric") startKind("fabric", null, state);
  // Behind a blank line they may be sizes, or a row whose label stayed on the page before.
  if (header?.used && isRow && head.cells.length === header.columns.length && isLabelLost(rows, at, head, header))
    state.found.warn(row.line, doubts.sizesWithoutLabel());
  takeHeader(candidate, state);
  return true;
}

/** "24 2S 26": figures, one of which a letter spoilt, and no sizes. */
const isSpoilt = ({ cells }: HeaderRow): boolean =>
  cells.some(({ text }) => /^\d+$/.test(text)) && cells.every(({ text }) => /^\d+[SBOIlZ]?$/.test(text));

/** A second row of sizes without a label stands right below the others, one for each column. */
const isNamelessAlias = (rows: readonly Row[], at: number, { label, cells }: HeaderRow, header: Header): boolean =>
  label === "" && cells.length === header.columns.length && rows[at - 1 - header.aliases.length]?.line === header.line;

/** Figures that lost their label can't take the place of sizes above them, unless a heading or some of those say so. */
function isLabelLost(rows: readonly Row[], at: number, { label, cells }: HeaderRow, header: Header): boolean {
  if (label !== "" || cells.some(({ text }) => header.sizes.includes(text))) return false;
  const between = rows.slice(Math.max(0, at - 12), at).filter(({ line }) => line > header.line);
  return !between.some(({ text }) => readHeading(text)?.kind);
}

function isClothHead({ roles }: HeaderRow): boolean {
  const named = new Set(roles.values());
  return named.has("width") && !named.has("measurement");
}

/** Whether a row that says nothing of sizes can still be one: no amounts of cloth, and no words but a heading's. */
function mayHeadSizes(head: HeaderRow, header: Header | null): boolean {
  const isAmount = head.cells.some(
    ({ text }) =>
      /[.,]\d|[½¼¾]|\d\/\d/.test(text) && !(header === null && Number.parseInt(text, 10) >= 13 && !/[.,]\d/.test(text)),
  );
  if (isAmount) return false;
  const { label } = head;
  if (kindOf(label) !== null || roleOf(label) !== null) return true;
  const { widths, nap, views, part, partKnown } = readFabricLabel(label);
  return !widths && !nap && !views && (part === null || !partKnown);
}

const DATE =
  /^(?:\d{1,2}\.?[-/ ]?(?:jan|feb|f[ée]v|m[aä]r|mrz|apr|avr|ma[iy]|jun|juin|jul|juil|aug|ao[uû]|sep|o[ck]t|nov|d[eé]c|dez)\p{L}{0,7}\.?(?:[-/ ]\d{2,4})?|(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\p{L}{0,6}[- ]\d{1,4}|\d{4}-\d\d-\d\d|\d{1,2}([/.])\d{1,2}\1\d{2,4})$/iu;

/**
 * Sizes such as 6-12 that a spreadsheet has turned into dates before they were copied. The doubt names line and
 * column and no size: every table below has that heading, and it is put right once, in its line.
 */
export function flagDates({ line, sizes, columns }: Header, found: Doubts): void {
  sizes.forEach((size, index) => {
    if (!DATE.test(size.trim()) && !(Number(size) > LARGEST)) return;
    const { column } = columns.find((other) => other.size === index)!.cell;
    found.error(line, doubts.dateSize(size), { column });
  });
}

function takeHeader(header: Header, state: State): void {
  const { found } = state;
  state.header = header;
  flagDates(header, found);
  state.columnUnits = new Map();
  const seen = new Set<string>();
  header.sizes.forEach((size, index) => {
    const key = size.toUpperCase().replace(/\s/g, "");
    if (seen.has(key)) {
      const { column } = header.columns.find((other) => other.size === index)!.cell;
      found.warn(header.line, doubts.equalSizes(size), { size, column });
    }
    seen.add(key);
  });
}

/** A second row of sizes for the columns above; when the first repeats itself (XS XS S S), this one is the pattern's. */
function addAlias(row: Row, head: HeaderRow, header: Header, state: State): boolean {
  const labels = head.cells.map((cell) => cell.text);
  if (labels.length !== header.columns.length && labels.length !== header.sizes.length) {
    if (labels.length === 1) return false;
    state.found.error(row.line, doubts.sizeRowCount(labels.length, header.sizes.length));
    return true;
  }
  const isRepeated = new Set(header.columns.map((column) => column.cell.text)).size < header.columns.length;
  if (isRepeated && labels.length === header.columns.length && new Set(labels).size === labels.length) {
    const first = header.columns.map((column) => column.cell.text);
    const better = makeHeader(head, row, state.columnUnits);
    better.aliases = [{ label: header.label || "Size", sizes: first }];
    state.found.withdraw(header.line, first.map(doubts.equalSizes));
    takeHeader({ ...better, label: head.label }, state);
    return true;
  }
  const sizes =
    labels.length === header.sizes.length
      ? labels
      : header.sizes.map((_, size) => labels[header.columns.findIndex((column) => column.size === size)]!);
  if (head.label === "" && sizes.every((size) => /^\d/.test(size))) state.found.warn(row.line, doubts.namelessSizes());
  header.aliases.push({ label: head.label, sizes });
  return true;
}

/** "Taille" and "Größe" head sizes when no sizes were named, or when the table starts anew. */
function isSizesHere(rows: readonly Row[], at: number, head: HeaderRow, state: State): boolean {
  const { header } = state;
  if (header) {
    if (head.cells.every((cell, index) => cell.text === header.sizes[index])) return true;
    return isAlsoPlace(header.label) && !rows[at - 1]!.text;
  }
  if (plainWords(head.label) !== "taille") return true;
  // German and Dutch measure the waist by this word; in French it is the sizes.
  const near = rows.slice(Math.max(0, at - 3), at + 12).map((row) => plainWords(row.text));
  return !near.some((text) => /\b(?:huft\w*|oberweite|brustumfang|heup\w*|bovenwijdte)\b/.test(text));
}

/** A children's chart without sizes, by height: the heights are the sizes. */
function heightsAsSizes(row: Row, head: HeaderRow, state: State): boolean {
  if (state.header || head.cells.length < 2 || readPlace(head.label, null) !== "height") return false;
  takeHeader(makeHeader(head, row, new Map()), state);
  state.found.warn(row.line, doubts.sizesFromHeights(), { place: "height" });
  const fit = fitHere(row, state);
  if (fit.ok) readFit(row, fit, state);
  return true;
}

/** Whether one of the next six rows with figures fits a header. */
function nextFits(rows: readonly Row[], at: number, header: Header, state: State): boolean {
  const isFabric = state.kind === "fabric";
  const fits = (row: Row): Fit | Misfit => fitRow(row, header, isFabric, isWidthFigure(isFabric));
  let tried = 0;
  for (let next = at + 1; next < Math.min(rows.length, at + 25) && tried < 6; next++) {
    const row = rows[next]!;
    if (!/[\d½¼¾⅛⅜⅝⅞]/.test(row.text)) continue;
    tried++;
    const fit = fits(row);
    if (fit.ok && !fit.single && (header.columns.length > 1 || fit.label !== "")) return true;
    if (joinedRows(rows, next, header, fits)) return true;
  }
  return false;
}

/** A row such as "EU 36 38 40" starts a table when rows of measurements follow it before any other. */
function startsTable(rows: readonly Row[], at: number, head: HeaderRow, state: State): boolean {
  return !rows[at - 1]!.text && nextFits(rows, at, makeHeader(head, rows[at]!, new Map()), state);
}
