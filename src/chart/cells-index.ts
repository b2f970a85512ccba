import { answer, type Result } from "../problem";
import { cellText, isErrorCell, isMissing, type Cell, type Cells } from "./cell";
import { readFigureCell } from "./cells-figure";
import { readNapCell, readWidthCell, widthUnitOf, type SheetFabric, type SheetFabricRow } from "./cells-fabric";
import type { SheetChart, SheetRow } from "./cells-measure";
import { isFault, isSpan, type BodyUnit, type FabricUnit, type Fault, type Figure } from "./model";
import { readPlace } from "./places";
import { labelKey } from "./size-label";
import { clothUnitOf } from "../length/length";
import { readUnit } from "../length/units";

/** The headings of the pattern index, in the order in which CHARTINDEX gives its columns. */
export const INDEX_COLUMNS = [
  "Pattern", "Kind", "Unit", "View", "Part", "Width", "Width unit", "Nap", "Measurement", "Size", "Low", "High",
] as const; // prettier-ignore
type IndexColumn = (typeof INDEX_COLUMNS)[number];
type Columns = Readonly<Record<IndexColumn, number>>;

/** The charts of one pattern in the index, a list for each kind in the index's order. */
export interface PatternCharts {
  readonly name: string;
  readonly body: SheetChart[];
  readonly finished: SheetChart[];
  readonly fabric: SheetFabric[];
  /** The error that stands in place of a table that couldn't be read. */
  readonly error?: string;
}
/** The pattern index: by pattern, in its order. */
export type PatternIndex = ReadonlyMap<string, PatternCharts>;

/**
 * The pattern index, when a range is one: its headings, in any order, are Pattern, Kind, Measurement, Size, Low …
 * Undefined for any other range. A new table begins where a row's place comes again, or where the sizes change.
 */
export function readIndex(cells: Cells): Result<PatternIndex> | undefined {
  const head = cells.slice(0, 20).findIndex((row) => columnsIn(row) !== undefined);
  if (head < 0) return undefined;
  const columns = columnsIn(cells[head]!)!;
  const patterns = new Map<string, RawPattern>();
  for (const row of cells.slice(head + 1)) addRow(patterns, row, columns);
  const read = new Map<string, PatternCharts>();
  for (const [key, raw] of patterns) read.set(key, chartsOfPattern(raw));
  return answer(read);
}

function columnsIn(row: readonly Cell[]): Columns | undefined {
  const keys = row.map((cell) => (typeof cell === "string" ? labelKey(cell) : ""));
  const found = INDEX_COLUMNS.map((heading) => [heading, keys.indexOf(labelKey(heading))] as const);
  const columns = Object.fromEntries(found) as Columns;
  const needed = ["Pattern", "Kind", "Size", "Low"] as const;
  return needed.every((heading) => columns[heading] >= 0) ? columns : undefined;
}

/** A chart row before its sizes are known to be complete. */
interface RawRow {
  readonly key: string;
  readonly kind: string;
  readonly at: (column: IndexColumn) => Cell;
  readonly sizes: string[];
  readonly figures: (Figure | Fault)[];
}
interface RawPattern {
  readonly name: string;
  readonly rows: RawRow[];
  error?: string;
}

function addRow(patterns: Map<string, RawPattern>, row: readonly Cell[], columns: Columns): void {
  const at = (column: IndexColumn): Cell => (columns[column] < 0 ? null : (row[columns[column]] ?? null));
  if (isMissing(at("Pattern")) || isErrorCell(at("Pattern"))) return;
  const name = cellText(at("Pattern"));
  const pattern = patterns.get(labelKey(name)) ?? { name, rows: [] };
  patterns.set(labelKey(name), pattern);
  const kindCell = at("Kind");
  if (isErrorCell(kindCell)) {
    pattern.error ??= kindCell.error;
    return;
  }
  const kind = labelKey(cellText(kindCell));
  const parts = (["Unit", "View", "Part", "Width", "Width unit", "Nap", "Measurement"] as const).map((column) =>
    isMissing(at(column)) ? "" : labelKey(cellText(at(column))),
  );
  const key = [kind, ...parts].join("\n");
  const size = cellText(at("Size"));
  const last = pattern.rows.at(-1);
  const figure = figureOf(at("Low"), at("High"));
  if (last?.key === key && !last.sizes.includes(size)) {
    last.sizes.push(size);
    last.figures.push(figure);
  } else pattern.rows.push({ key, kind, at, sizes: [size], figures: [figure] });
}

function figureOf(lowCell: Cell, highCell: Cell): Figure | Fault {
  const { figure: low } = readFigureCell(lowCell);
  const { figure: high } = readFigureCell(highCell);
  if (isFault(low) || low === null || isSpan(low)) return low ?? (isFault(high) ? high : null);
  if (isFault(high)) return high;
  return typeof high === "number" && high > low ? { low, high } : low;
}

/**
 * Where one table ends with the place with which the next one begins, their rows have run together: 8, 10, 16W, 18W after
 * rows of 8, 10 or before rows of 16W, 18W. They are taken apart again.
 */
function takenApart(rows: readonly RawRow[]): RawRow[] {
  const apart: RawRow[] = [];
  rows.forEach((row, at) => {
    const cut = cutOf(row, apart.at(-1), rows[at + 1]);
    if (cut === 0) apart.push(row);
    else apart.push(slice(row, 0, cut), slice(row, cut, row.sizes.length));
  });
  return apart;
}

function cutOf(row: RawRow, before: RawRow | undefined, after: RawRow | undefined): number {
  const { length } = row.sizes;
  const sameTable = (other: RawRow | undefined): other is RawRow =>
    other?.kind === row.kind && cellText(other.at("Unit")) === cellText(row.at("Unit")) && other.sizes.length < length;
  if (sameTable(before) && before.sizes.every((size, index) => size === row.sizes[index])) return before.sizes.length;
  const start = after ? length - after.sizes.length : 0;
  if (sameTable(after) && after.sizes.every((size, index) => size === row.sizes[start + index])) return start;
  return 0;
}

const slice = (row: RawRow, from: number, to: number): RawRow => ({
  ...row,
  sizes: row.sizes.slice(from, to),
  figures: row.figures.slice(from, to),
});

/** Rows of one table: the same kind, unit and sizes, and no row twice. */
function chartsOfPattern({ name, rows, error }: RawPattern): PatternCharts {
  const charts: PatternCharts = { name, body: [], finished: [], fabric: [], ...(error === undefined ? {} : { error }) };
  let table: RawRow[] = [];
  const close = (): void => {
    const [first] = table;
    if (!first) return;
    const sizes = first.sizes;
    if (first.kind === "fabric") charts.fabric.push({ sizes, rows: table.flatMap(fabricRow) });
    else if (first.kind === "body" || first.kind === "finished")
      charts[first.kind].push({ kind: first.kind, sizes, rows: table.map(measureRow) });
    table = [];
  };
  for (const row of takenApart(rows)) {
    const [first] = table;
    const same =
      first?.kind === row.kind &&
      cellText(first.at("Unit")) === cellText(row.at("Unit")) &&
      first.sizes.join("\n") === row.sizes.join("\n") &&
      (row.kind === "fabric" || !table.some(({ key }) => key === row.key));
    if (!same) close();
    table.push(row);
  }
  close();
  return charts;
}

const textAt = (row: RawRow, column: IndexColumn): string =>
  isMissing(row.at(column)) ? "" : cellText(row.at(column));

function measureRow(row: RawRow): SheetRow {
  const label = textAt(row, "Measurement");
  const kind = row.kind === "finished" ? "finished" : "body";
  const unit = readUnit(textAt(row, "Unit"))?.unit;
  const place = readPlace(label, kind) ?? label;
  return { place, view: textAt(row, "View") || null, label, values: row.figures, unit: bodyUnit(unit) };
}

const bodyUnit = (unit: string | undefined): BodyUnit | null => (unit === "in" || unit === "cm" ? unit : null);
const fabricUnit = (unit: string | undefined): FabricUnit | null => (unit === "yd" || unit === "m" ? unit : null);

function fabricRow(row: RawRow): SheetFabricRow[] {
  const width = readWidthCell(row.at("Width"));
  const nap = readNapCell(row.at("Nap"));
  const value = width.ok ? width.value.value : null;
  const widthUnit = bodyUnit(readUnit(textAt(row, "Width unit"))?.unit) ?? (value === null ? "in" : widthUnitOf(value));
  const values = row.figures.map((figure) => (isSpan(figure) ? figure.high : figure));
  return [
    {
      view: textAt(row, "View"),
      part: textAt(row, "Part") || "main",
      label: textAt(row, "Measurement"),
      width: value,
      widthUnit,
      nap: nap.ok ? nap.value : null,
      values,
      unit: fabricUnit(readUnit(textAt(row, "Unit"))?.unit) ?? clothUnitOf(widthUnit),
    },
  ];
}
