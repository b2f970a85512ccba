/** Rows of sizes: what heads the columns. */
import type { LengthUnit } from "../../length";
import type { Alias } from "../model";
import { readPlace } from "../places";
import { plainWords, trimMarks, wordSet } from "../vocabulary/words";
import { cellOf, isFormulaLike, type Cell, type Row } from "./cell";
import { readFigure } from "./figures";
import { kindOf, unitAlone, unitsIn } from "./headings";
import {
  isAgeWord,
  isAlsoPlace,
  isAnyLabel,
  isSizeLabel,
  isSizeWord,
  isSystemWord,
  scanSizes,
  withoutWord,
  type SizeToken,
} from "./sizes";

/** What a column in front of the sizes holds, known by its heading. */
export type Role = "measurement" | "view" | "part" | "width" | "widthUnit" | "nap" | "unit";

export interface Column {
  readonly size: number;
  /** 0, or 1 for the second of two columns (or blocks) of one size: the other unit. */
  readonly block: number;
  unit: LengthUnit | null;
  readonly cell: Cell;
  /** Its index in a grid row. */
  readonly index: number;
}
export interface Header {
  readonly line: number;
  readonly label: string;
  readonly layout: Row["layout"];
  sizes: readonly string[];
  columns: readonly Column[];
  readonly roles: ReadonlyMap<number, Role>;
  readonly unit: LengthUnit | null;
  aliases: Alias[];
  /** Rows have been read under it. */
  used: boolean;
}

/** "certain": a size word heads it. "system": EU, age … "open": only what follows can tell. */
export type Certainty = "certain" | "system" | "open";
export interface HeaderRow {
  readonly label: string;
  readonly certainty: Certainty;
  readonly cells: readonly Cell[];
  readonly indexes: readonly number[];
  readonly roles: ReadonlyMap<number, Role>;
}

const ROLE_WORDS: readonly (readonly [Role, ReadonlySet<string>])[] = [
  ["widthUnit", new Set(["width unit"])],
  ["width", wordSet("width widths breite stoffbreite largeur laize ancho altezza larghezza breedte stofbreedte szerokość largura")],
  ["view", wordSet("view views version style model modell modelle modele modèle modelo modello vista ansicht wersja versie versione")],
  ["part", wordSet("part fabric material stoff tissu tela tessuto stof tkanina tecido teil piece parte")],
  ["nap", wordSet("nap strich sens pelo verso vleug")],
  ["unit", wordSet("unit units einheit unité unidad unità eenheid jednostka unidade")],
  ["measurement", wordSet("measurement measurements measure place maß maße körpermaß körpermaße mesure mesures medida medidas misura misure maat wymiar wymiary")],
]; // prettier-ignore

/** The role that a heading names; "Fabric width" is a width. */
export function roleOf(text: string): Role | null {
  const words = plainWords(text);
  if (words === "fabric width" || words === "width of fabric") return "width";
  return ROLE_WORDS.find(([, known]) => known.has(words))?.[0] ?? null;
}

/** A row as a row of sizes, if it can be one. Whether it is one may hang on the rows below: see `certainty`. */
export function readHeaderRow(row: Row): HeaderRow | null {
  const found = row.layout === "grid" ? gridHeader(row) : spacedHeader(row);
  if (!found || found.cells.length === 0 || found.cells.some((cell) => isFormulaLike(cell.text))) return null;
  const labels = withoutWord(found.cells.map((cell) => cell.text));
  return { ...found, cells: found.cells.map((cell, index) => ({ ...cell, text: labels[index]! })) };
}

function gridHeader(row: Row): HeaderRow | null {
  const filled = row.cells.map((cell, index) => ({ cell, index })).filter(({ cell }) => cell.text !== "");
  if (filled.length === 0) return null;
  if (filled.length === 1) return spacedHeader({ ...row, cells: [filled[0]!.cell], text: filled[0]!.cell.text });
  const roles = new Map<number, Role>();
  let front = 0;
  let label = "";
  let hasSizeWord = false;
  for (const { cell, index } of filled) {
    const role = roleOf(cell.text);
    const word = isSizeWord(cell.text) || (isSystemWord(cell.text) && front === 0);
    if (!role && !word && (front > 0 || isSizeCell(cell.text))) break;
    if (role) roles.set(index, role);
    if (word) {
      hasSizeWord ||= isSizeWord(cell.text);
      label = cell.text.replace(/\n/g, " ");
    } else if (!label) label = cell.text.replace(/\n/g, " ");
    front++;
  }
  // Other headed columns in front, such as "How to measure".
  if (!hasSizeWord && front > 0)
    while (
      front < 4 &&
      filled.length - front > 2 &&
      !isSizeCell(filled[front]!.cell.text) &&
      /\p{L}{3}/u.test(filled[front]!.cell.text)
    )
      front++;
  let rest = filled.slice(front);
  for (const { cell, index } of rest) if (roleOf(cell.text)) roles.set(index, roleOf(cell.text)!);
  rest = rest.filter(({ cell, index }) => !roles.has(index) && unitAlone(cell.text) === null);
  if (rest.length === 0) {
    // "Sizes 8 10 12" in one cell, or a list in the cell beside its word.
    const one = filled.length === 2 && hasSizeWord ? scanSizes(filled[1]!.cell.text) : null;
    return one ? spacedHeader({ ...row, cells: filled.map(({ cell }) => cell) }) : null;
  }
  if (rest.length === 1 && (scanSizes(rest[0]!.cell.text)?.length ?? 0) > 1 && !isSizeLabel(rest[0]!.cell.text)) {
    const cell = rest[0]!.cell;
    const cells = scanSizes(cell.text)!.map((size) => cellOf(size.text, cell.line, cell.column + size.start));
    return { label, certainty: certaintyOf(label, hasSizeWord), cells, indexes: [], roles };
  }
  const isNamed = hasSizeWord || roles.size > 1;
  const fits = rest.every(({ cell }) => isSizeCell(cell.text) || (isNamed && isNamedSize(cell.text)));
  if (!fits) return null;
  const certainty = hasSizeWord || roles.size > 1 ? "certain" : certaintyOf(label, false);
  return {
    label,
    certainty,
    cells: rest.map(({ cell }) => ({ ...cell, text: cell.text.replace(/\n/g, " ") })),
    indexes: rest.map(({ index }) => index),
    roles,
  };
}

const isSizeCell = (text: string): boolean => isSizeLabel(sizeOf(text).label) && sizeOf(text).label !== "";
/** Whether a cell under or beside a size word can be a size of any name: not a place, and not a heading. */
export const isNamedSize = (text: string): boolean =>
  isAnyLabel(text) && readPlace(text, null) === null && kindOf(text) === null;

const certaintyOf = (label: string, hasSizeWord: boolean): Certainty =>
  hasSizeWord || isSizeWord(label) ? "certain" : isSystemWord(label) ? "system" : "open";

/** "8 in", "8 (cm)": a size with the unit of its column. */
export function sizeOf(text: string): { readonly label: string; readonly unit: LengthUnit | null } {
  const plain = text.replace(/\n/g, " ").replace(/^(?:sizes?|gr\.|größe|taille|t\.|talla|taglia|maat)\s+(?=\S)/iu, "");
  const match = /^(\S.*?) ?[([ ](in|ins|inches|inch|cm|"|″)\.?[)\]]?$/i.exec(plain);
  const unit = match ? unitAlone(match[2]!) : null;
  return unit && match ? { label: trimMarks(match[1]!, " ,"), unit } : { label: plain, unit: null };
}

function spacedHeader(row: Row): HeaderRow | null {
  const roles = new Map<number, Role>();
  const text = row.cells.map((cell) => cell.text).join("  ");
  if (text.length > 400 || !/[\dSMLPG]/i.test(text)) return null;
  // Cells that stand apart under a size word may be called anything.
  const [first, ...others] = row.cells;
  if (
    first &&
    others.length > 1 &&
    isSizeWord(first.text) &&
    !others.every((cell) => scanSizes(cell.text)?.length === 1)
  ) {
    const named = others.filter((cell) => unitAlone(cell.text) === null);
    if (named.every((cell) => isNamedSize(cell.text) && (scanSizes(cell.text)?.length ?? 1) === 1))
      return { label: first.text, certainty: "certain", cells: named, indexes: [], roles };
  }
  const whole = text.replace(/\(?\b(?:in inches|inches|inch|ins\.?|cms?\.?|en cm|in cm)\)?$/i, "");
  const last = whole.slice(whole.lastIndexOf(" ") + 1);
  // "8 10 12 sizes", but "S M L one size".
  const isWordBehind = isSizeWord(last) && whole.includes(" ") && !isSizeLabel(whole.split(" ").slice(-2).join(" "));
  const body = isWordBehind ? whole.slice(0, -last.length).trimEnd() : whole;
  const starts = [0, ...[...body.matchAll(/\s+/g)].map((gap) => gap.index + gap[0].length)].slice(0, 9);
  for (const start of starts) {
    const sizes = scanSizes(body.slice(start), isAgeWord(body.slice(0, start)));
    if (!sizes || sizes.length === 0) continue;
    // "Group 2 S M L": the number belongs to the words in front of it.
    if (isNumbered(body.slice(0, start), sizes)) continue;
    const label = trimMarks(body.slice(0, start), ":-–=(|, ");
    const certainty = certaintyOf(label, false);
    const cells = sizes.map((size) => placed(row, start + size.start, size.text));
    return { label, certainty, cells, indexes: [], roles };
  }
  return oddSizes(row, body);
}

/** Whether the first of these sizes is the number of a group: the words with it head sizes, or the others are letters. */
function isNumbered(front: string, sizes: readonly SizeToken[]): boolean {
  const [first, ...others] = sizes;
  if (!first || others.length === 0 || !/^\d$/.test(first.text) || !/\p{L}{3}/u.test(front)) return false;
  const words = trimMarks(front, ":-–=(|, ");
  if (isSizeWord(words) && !isSizeWord(`${words} ${first.text}`)) return false;
  return isSizeWord(`${words} ${first.text}`) || others.every(({ text }) => /^[A-Z]+$/.test(text));
}

/** "Size S M L O/S": behind a size word a short name in capitals among sizes is one too. */
function oddSizes(row: Row, body: string): HeaderRow | null {
  const words = [...body.matchAll(/[^\s,;|]+/g)];
  const front = words.findIndex(({ 0: word }) => !isSizeWord(word.replace(/:$/, "")));
  const rest = words.slice(front);
  if (front < 1 || rest.length < 2 || !rest.every(({ 0: word }) => isSizeLabel(word) || /^[A-Z\d/]{1,4}$/.test(word)))
    return null;
  if (rest.filter(({ 0: word }) => isSizeLabel(word)).length * 2 < rest.length) return null;
  const label = trimMarks(body.slice(0, rest[0]!.index), ":-–=(|, ");
  const cells = rest.map(({ 0: word, index }) => placed(row, index, word));
  return { label, certainty: "certain", cells, indexes: [], roles: new Map() };
}

/** A cell for a text at an offset of the row's cells joined by two spaces. */
function placed(row: Row, offset: number, text: string): Cell {
  let at = 0;
  for (const cell of row.cells) {
    if (offset < at + cell.text.length + 2) return cellOf(text, cell.line, cell.column + offset - at);
    at += cell.text.length + 2;
  }
  return cellOf(text, row.line, 1);
}

/**
 * The columns of a header. Sizes printed twice side by side (8 8 10 10) or as two blocks (8 10 8 10) are one size in two
 * units; any other repetition stays, and is for a person to look at.
 */
export function makeHeader(found: HeaderRow, row: Row, units: ReadonlyMap<number, LengthUnit>): Header {
  const parsed = found.cells.map((cell) => sizeOf(cell.text));
  const labels = parsed.map(({ label }) => label);
  const half = labels.length / 2;
  const isEven = labels.length >= 2 && labels.length % 2 === 0;
  const isSide = isEven && labels.every((label, index) => label === labels[index - (index % 2)]);
  const isBlocks =
    isEven && !isSide && half > 1 && labels.slice(0, half).every((label, index) => label === labels[index + half]);
  const sizes = isSide ? labels.filter((_, index) => index % 2 === 0) : isBlocks ? labels.slice(0, half) : labels;
  const columns = found.cells.map((cell, index): Column => ({
    size: isSide ? Math.floor(index / 2) : isBlocks ? index % half : index,
    block: isSide ? index % 2 : isBlocks ? Math.floor(index / half) : 0,
    unit: parsed[index]!.unit ?? units.get(found.indexes[index] ?? -1) ?? null,
    cell,
    index: found.indexes[index] ?? -1,
  }));
  const label = found.label;
  return {
    line: row.line, label, layout: found.indexes.length ? row.layout : "spaced", sizes, columns, roles: found.roles,
    unit: unitsIn(label).unit ?? unitsIn(row.text.slice(-14)).unit, aliases: [], used: false,
  }; // prettier-ignore
}

/** "Taille 36 38 40" is a size row in French, "Taille 66 70 74" a waist in German: values that can't be sizes decide. */
export function isAmbiguousHeader(found: HeaderRow): boolean {
  return isAlsoPlace(found.label) && found.cells.every((cell) => readFigure(cell.text).kind === "figure");
}
