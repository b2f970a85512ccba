/** A row against its header: the label, and one cell under each size, or how many there are instead. */
import { cellOf, endOf, type Cell, type Row } from "./cell";
import { readFigure } from "./figures";
import { readPlace } from "../places";
import type { Header, Role } from "./header";
import { looseCount, looseRow } from "./loose";

export interface Fit {
  readonly ok: true;
  readonly label: string;
  /** One for each of the header's columns; a blank one has no text. */
  readonly values: readonly Cell[];
  /** Words behind the figures: a unit, a translation, a note. */
  readonly trailing: string;
  readonly roles: ReadonlyMap<Role, string>;
  /** Its last figure may be an inch mark; or it was read by where its figures stand. */
  readonly doubt: "ditto" | "placed" | null;
  /** One figure stands for all sizes. */
  readonly single: boolean;
}
export interface Misfit {
  readonly ok: false;
  readonly label: string;
  readonly count: number;
  readonly trailing: string;
}

export type IsWidth = (text: string, next: string) => boolean;

const isFigureText = (text: string): boolean => {
  const { kind } = readFigure(text);
  return kind === "figure" || kind === "same";
};
/** A figure, or a mark or formula where one belongs. */
const isValueText = (text: string): boolean => readFigure(text).kind !== "text";

/** `isFabric` rows may have one figure for all sizes, fractions that stand alone, and a width in front. */
export function fitRow(row: Row, header: Header, isFabric: boolean, isWidth: IsWidth): Fit | Misfit {
  if (row.layout === "grid" && row.cells.filter((cell) => cell.text !== "").length > 1)
    return fitGrid(row, header, isFabric, isWidth);
  return fitSpaced(row, header, isFabric, isWidth);
}

function fitGrid(row: Row, header: Header, isFabric: boolean, isWidth: IsWidth): Fit | Misfit {
  const { cells } = row;
  const count = header.columns.length;
  const strict = fitAt(row, header);
  if (strict) return strict;
  // The header has no corner cell, or cells of its label stand differently: the figures must be all together and
  // exactly as many as the sizes.
  const figures = cells.map((cell, index) => ({ cell, index })).filter(({ cell }) => isFigureText(cell.text));
  const label = (until: number): string => joinLabel(cells.slice(0, until));
  let found = figures;
  while (isFabric && found.length > 1 && isWidth(found[0]!.cell.text, found[1]!.cell.text)) found = found.slice(1);
  // A row of one cell with a list in it, as long as the sizes or not.
  if (found.length === 0) return fitSpaced(row, header, isFabric, isWidth);
  const first = found[0]!.index;
  const last = found.at(-1)!.index;
  const run = cells.slice(first, last + 1);
  const trailing = joinLabel(cells.slice(last + 1));
  const roles = rolesOf(row, header);
  if (hasCorner(header, first)) return { ok: false, label: label(first), count: found.length, trailing };
  if (run.length === count)
    return { ok: true, label: label(first), values: run, trailing, roles, doubt: null, single: false };
  if (found.length === 1 && count > 1 && isFabric)
    return {
      ok: true,
      label: label(first),
      values: repeat(found[0]!.cell, count),
      trailing,
      roles,
      doubt: null,
      single: true,
    };
  return { ok: false, label: label(first), count: found.length, trailing };
}

/** Whether headed columns stand before the sizes, and this row's figures begin among them. */
function hasCorner(header: Header, first: number): boolean {
  return header.roles.size > 0 && first < header.columns[0]!.index;
}

/** Each figure under its size: the cells of both rows stand in the same columns. */
function fitAt(row: Row, header: Header): Fit | null {
  const { cells } = row;
  // Below 0 where the sizes have no columns of their own.
  const indexes = header.columns.map((column) => column.index);
  const start = indexes[0]!;
  if (start < 1 || indexes.at(-1)! >= cells.length) return null;
  const values = indexes.map((index) => cells[index]!);
  const others = cells.map((_, index) => index).filter((index) => index > start && !indexes.includes(index));
  const extra = others.filter((index) => !header.roles.has(index));
  if (extra.some((index) => isFigureText(cells[index]!.text))) return null;
  const filled = values.filter((cell) => cell.text !== "");
  if (!values.some((cell) => isFigureText(cell.text) || readFigure(cell.text).kind === "formula")) return null;
  if (filled.length === 1 && values.length > 1) return null;
  if (filled.filter((cell) => !isValueText(cell.text)).length * 2 > filled.length) return null;
  return {
    ok: true, label: joinLabel(cells.slice(0, start).filter((_, index) => header.roles.get(index) !== "unit")), values, roles: rolesOf(row, header),
    trailing: extra.map((index) => cells[index]!.text).filter(Boolean).join(" "), doubt: null, single: false,
  }; // prettier-ignore
}

function rolesOf(row: Row, header: Header): ReadonlyMap<Role, string> {
  const roles = new Map<Role, string>();
  if (header.layout !== "grid") return roles;
  for (const [index, role] of header.roles) if (row.cells[index]) roles.set(role, row.cells[index].text);
  return roles;
}

const repeat = (cell: Cell, count: number): Cell[] => Array.from({ length: count }, () => cell);

export const joinLabel = (cells: readonly Cell[]): string =>
  cells
    .filter((cell, index) => cell.text !== "" && !(cell.repeated && cell.text === cells[index - 1]?.text))
    .map((cell) => cell.text.replace(/\n/g, " "))
    .join(" ");

function fitSpaced(whole: Row, header: Header, isFabric: boolean, isWidth: IsWidth): Fit | Misfit {
  const count = header.columns.length;
  // Blank cells behind a list are no figures of it.
  const filled = whole.cells.filter((cell) => cell.text !== "");
  const row = filled.some((cell) => /\d/.test(cell.text)) ? { ...whole, cells: filled } : whole;
  const roles: ReadonlyMap<Role, string> = new Map();
  const apart = fitApart(row, count, isFabric, isWidth);
  if (apart) return { ...apart, roles };
  const loose = looseRow(row, count, isFabric ? isWidth : () => false);
  if (loose) {
    const { label, values, trailing, isUnsure } = loose;
    return { ok: true, label, values, trailing, roles, doubt: isUnsure ? "ditto" : null, single: false };
  }
  const placed = fitByPosition(row, header, isFabric, isWidth);
  if (placed) return { ...placed, roles };
  const one = isFabric ? looseRow(row, 1, isWidth) : null;
  if (one?.values[0]) {
    const { label, trailing } = one;
    return { ok: true, label, values: repeat(one.values[0], count), trailing, roles, doubt: null, single: true };
  }
  return { ok: false, ...looseCount(row, isFabric ? isWidth : undefined) };
}

type Plain = Omit<Fit, "roles">;

/** Cells two or more spaces apart: the last `count` of them, when each holds one figure and the label none. */
function fitApart(row: Row, count: number, isFabric: boolean, isWidth: IsWidth): Plain | null {
  const { cells } = row;
  let end = cells.length;
  while (end > 0 && !isValueText(cells[end - 1]!.text)) end--;
  const first = end - count;
  if (first < 0 || cells.length - end > 2) return null;
  const values = cells.slice(first, end);
  const front = cells.slice(0, first);
  if (!values.every((cell) => isValueText(cell.text))) return null;
  const before = front.at(-1);
  const isOther = before && isValueText(before.text) && !(isFabric && isWidth(before.text, values[0]!.text));
  if (isOther || (isFabric && count > 1 && isWidth(values[0]!.text, values[1]!.text))) return null;
  const trailing = joinLabel(cells.slice(end));
  // A column of prose beside the chart: only the cell next to the figures is the label.
  const isBeside = before !== undefined && front.length > 1 && !isFabric && readPlace(before.text, null) !== null;
  const label = isBeside && readPlace(joinLabel(front), null) === null ? before.text : joinLabel(front);
  return { ok: true, label, values, trailing, doubt: null, single: false };
}

/**
 * Fewer figures than sizes, in columns that line up: each figure belongs to the size it stands under. Only where all
 * line up the same way and the last size has its figure, because a figure lost from the text pulls the rest to the left.
 */
function fitByPosition(row: Row, header: Header, isFabric: boolean, isWidth: IsWidth): Plain | null {
  const columns = header.columns;
  if (row.layout !== "spaced" || header.layout !== "spaced" || columns.some(({ cell }) => cell.line !== header.line))
    return null;
  const { cells } = row;
  let first = cells.length;
  while (first > 0 && isFigureText(cells[first - 1]!.text)) first--;
  while (isFabric && first < cells.length - 1 && isWidth(cells[first]!.text, cells[first + 1]!.text)) first++;
  const figures = cells.slice(first);
  if (figures.length < 2 || figures.length >= columns.length || first === 0) return null;
  const edges: readonly (readonly [(cell: Cell) => number, number])[] = [
    [(cell) => cell.column, 0],
    [endOf, 0],
    [(cell) => (cell.column + endOf(cell)) / 2, 1],
  ];
  for (const [edge, play] of edges) {
    const found = figures.map((cell) =>
      columns.findIndex((column) => Math.abs(edge(column.cell) - edge(cell)) <= play),
    );
    if (found.includes(-1) || found.at(-1) !== columns.length - 1) continue;
    const values = columns.map(
      (column, index) => figures[found.indexOf(index)] ?? cellOf("", row.line, column.cell.column),
    );
    return { ok: true, label: joinLabel(cells.slice(0, first)), values, trailing: "", doubt: "placed", single: false };
  }
  return null;
}
