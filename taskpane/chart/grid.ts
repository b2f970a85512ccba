/** A chart table as a grid of texts that a person can correct, and back. */
import {
  formatLength,
  inUnit,
  isSpan,
  lengthIn,
  paneWords as words,
  placeName,
  readLength,
  readPlace,
  sentence,
  type ChartTable,
  type FabricRow,
  type FabricTable,
  type Figure,
  type LengthUnit,
  type MeasureRow,
  type MeasureTable,
  type Nap,
} from "../../src/index";
import { replaced, without } from "./lists";

/** A column that is not a size. */
export type LabelColumn = "place" | "view" | "part" | "width" | "nap";

/** The label columns of a table, in the order of its sheet. A finished table has views only where a row names one. */
export function labelColumns(table: ChartTable): readonly LabelColumn[] {
  if (table.kind === "fabric") return ["view", "part", "width", "nap"];
  return table.rows.some((row) => row.view) ? ["place", "view"] : ["place"];
}

/** A figure as a tape is read: 30 1/2; a printed range as 30 - 31. */
export function figureText(figure: Figure, unit: LengthUnit): string {
  if (figure === null) return "";
  const text = (value: number) => formatLength(value, unit).slice(0, -unit.length - 1);
  return isSpan(figure) ? `${text(figure.low)} - ${text(figure.high)}` : text(figure);
}

export function labelText(table: ChartTable, row: number, column: LabelColumn): string {
  if (table.kind === "fabric") {
    const { view, part, width, widthUnit, nap } = table.rows[row]!;
    return { place: "", view, part, width: width === null ? "" : formatLength(width, widthUnit), nap: nap ?? "" }[
      column
    ];
  }
  const { place, label, view } = table.rows[row]!;
  return column === "view" ? (view ?? "") : readPlace(label, table.kind) === place ? label : placeName(place);
}

export type Corrected<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly message: string };

const fine = <T>(value: T): Corrected<T> => ({ ok: true, value });
const wrong = (message: string) => ({ ok: false, message }) as const;

/**
 * A figure that a person typed, in the table's unit: 30 1/2, 77,5 cm (converted where the table is in inches),
 * 30 - 31, or nothing. A range's figures are put in order.
 */
export function readFigure(text: string, unit: LengthUnit, ranges: boolean): Corrected<Figure> {
  if (text.trim() === "" || /^[-–—]$/.test(text.trim())) return fine(null);
  const single = readIn(text, unit);
  if (single.ok) return single;
  // "30-31" and "30 1/2 to 31"; a single figure such as 30-1/2 has been read above.
  const parts = ranges ? text.split(/ to |[-–—]/) : [];
  if (parts.length !== 2) return single;
  const [low, high] = parts.map((part) => readIn(part, unit));
  if (!low!.ok || !high!.ok) return single;
  return fine({ low: Math.min(low!.value, high!.value), high: Math.max(low!.value, high!.value) });
}

function readIn(text: string, unit: LengthUnit): Corrected<number> {
  const read = readLength(text);
  if (!read.ok) return wrong(sentence(read.problem));
  const { value, unit: named } = read.value;
  if (value < 0) return wrong(words.chart.negative(text.trim()));
  return fine(named === null ? value : inUnit(lengthIn(value, named), unit));
}

/** Where a correction goes: a figure by its size, a label by its column. Row -1 is the sizes themselves. */
export interface Place {
  readonly row: number;
  readonly column: number | LabelColumn;
}

/** The table with one cell corrected, or why the text can't stand there. */
export function corrected(table: ChartTable, { row, column }: Place, text: string): Corrected<ChartTable> {
  if (row < 0) return typeof column === "number" ? renamedSize(table, column, text.trim()) : wrong("");
  return table.kind === "fabric" ? correctFabric(table, row, column, text) : correctMeasure(table, row, column, text);
}

function renamedSize(table: ChartTable, column: number, text: string): Corrected<ChartTable> {
  if (text === "") return wrong(words.chart.sizeBlank);
  const same = table.sizes.some((size, index) => index !== column && size.toLowerCase() === text.toLowerCase());
  if (same) return wrong(words.chart.sizeTwice(text));
  return fine({ ...table, sizes: replaced(table.sizes, column, text) });
}

function correctMeasure(
  table: MeasureTable,
  at: number,
  column: number | LabelColumn,
  text: string,
): Corrected<ChartTable> {
  const row = table.rows[at]!;
  const put = (change: Partial<MeasureRow>) =>
    fine({ ...table, rows: replaced(table.rows, at, { ...row, ...change }) });
  const label = text.trim();
  if (column === "view") return put({ view: label === "" ? null : label });
  if (typeof column !== "number") {
    if (label === "") return wrong(words.chart.labelBlank);
    return put({ label, place: readPlace(label, table.kind) ?? label });
  }
  const figure = readFigure(text, table.unit, true);
  return figure.ok ? put({ values: replaced(row.values, column, figure.value) }) : figure;
}

function correctFabric(
  table: FabricTable,
  at: number,
  column: number | LabelColumn,
  text: string,
): Corrected<ChartTable> {
  const row = table.rows[at]!;
  const put = (change: Partial<FabricRow>) => fine({ ...table, rows: replaced(table.rows, at, { ...row, ...change }) });
  const label = text.trim();
  switch (column) {
    case "place":
    case "view":
      return put({ view: label });
    case "part":
      return put({ part: label === "" ? "main" : label.toLowerCase() });
    case "width": {
      if (label === "") return put({ width: null });
      const read = readLength(label);
      if (!read.ok) return wrong(sentence(read.problem));
      const { value, unit } = read.value;
      return put(unit === "in" || unit === "cm" ? { width: value, widthUnit: unit } : { width: value });
    }
    case "nap":
      return NAPS.has(label)
        ? put({ nap: label === "" ? null : (label as Nap) })
        : wrong(words.chart.napUnknown(label));
    default: {
      const figure = readFigure(text, table.unit, false);
      return figure.ok ? put({ values: replaced(row.values, column, figure.value as number | null) }) : figure;
    }
  }
}
const NAPS = new Set(["", "with", "without", "either"]);

/** The table without a row. */
export function withoutRow(table: ChartTable, at: number): ChartTable {
  return table.kind === "fabric"
    ? { ...table, rows: without(table.rows, at) }
    : { ...table, rows: without(table.rows, at) };
}
