/** The figures of one row: under each size, in one unit or two. */
import { clean, convert, type LengthUnit } from "../../length";
import { doubts } from "../../words/reading";
import { LARGEST } from "../cell";
import type { Figure, Span } from "../model";
import type { Cell } from "./cell";
import { convertFigure, highOf, lowOf, middle, readFigure, type PrintedFigure } from "./figures";
import type { Header } from "./header";
import type { Doubts } from "./record";

/** One row's figures in one unit; null where none is known yet. */
export interface Stream {
  unit: LengthUnit | null;
  readonly figures: readonly Figure[];
  readonly cells: readonly Cell[];
}

export interface Above {
  readonly figures: readonly Figure[];
}

/**
 * The figures under each size. Two columns of one size, or two values in one cell, give two streams. What can't be read
 * is null and named.
 */
export function streamsOf(
  values: readonly Cell[],
  header: Header,
  above: Above | null,
  place: string | null,
  found: Doubts,
): Stream[] {
  const streams: Stream[] = [];
  const blocks = new Set(header.columns.map((column) => column.block));
  for (const block of blocks) {
    const columns = header.columns
      .map((column, index) => ({ column, cell: values[index]! }))
      .filter(({ column }) => column.block === block);
    const cells = columns.map(({ cell }) => cell);
    const sizes = columns.map(({ column }) => header.sizes[column.size]!);
    const read = cells.map((cell) => readFigure(cell.text));
    const printed = read.map((reading) => (reading.kind === "figure" ? reading : null));
    const unit = commonUnit(printed) ?? columns[0]!.column.unit;
    const isStartSame = read.find((reading) => reading.kind !== "blank")?.kind === "same";
    const figures: Figure[] = [];
    read.forEach((reading, index) => {
      const cell = cells[index]!;
      const more = { column: cell.column, ...(place === null ? {} : { place }), size: sizes[index]! };
      if (reading.kind === "figure") {
        // "1.68 m" beside a bare 172: nobody is as many metres tall.
        const isNoMetres = unit === "m" && place !== null && middle(reading.value) > 10;
        const from = reading.unit ?? (isNoMetres ? "cm" : unit);
        const value =
          isNoMetres && from === "m"
            ? null
            : from === unit
              ? reading.value
              : convertPrinted(reading.value, from!, unit!);
        if (value !== null && (highOf(value) ?? 0) > LARGEST) {
          found.error(cell.line, doubts.dateFigure(cell.text), more);
          figures.push(null);
          return;
        }
        if (value === null || (lowOf(value) ?? 0) < 0) {
          if (value === null) found.error(cell.line, doubts.unreadable(cell.text), more);
          else found.warn(cell.line, doubts.negative(cell.text), more);
        }
        // No cloth for a size may be printed as 0, but nobody measures nothing.
        if (value === 0 && place !== null) found.warn(cell.line, doubts.zero(cell.text), more);
        figures.push(value);
      } else if (reading.kind === "same") figures.push(repeated(figures, above, index, isStartSame, cell, more, found));
      else {
        if (reading.kind === "formula") found.error(cell.line, doubts.formulaFigure(cell.text), more);
        else if (reading.kind === "text") found.error(cell.line, doubts.unreadable(cell.text.slice(0, 60)), more);
        figures.push(null);
      }
    });
    streams.push({ unit, figures, cells });
    const others = printed.map((reading) => reading?.other ?? null);
    if (others.some((other) => other !== null))
      streams.push(otherStream(streams.at(-1)!, others, cells, sizes, place, found));
  }
  nameBlocks(streams, place === null);
  return streams;
}

type More = { readonly column: number; readonly place?: string; readonly size: string };

/** Ditto marks: the figure above when the row begins with them, else the one to the left; a blank there is named. */
function repeated(
  figures: readonly Figure[], above: Above | null, index: number, isStartSame: boolean, cell: Cell, more: More, found: Doubts,
): Figure {
  const left = [...figures].reverse().find((figure) => figure !== null) ?? null;
  const over = above?.figures[index] ?? null;
  if (left === null && over === null) {
    found.error(cell.line, doubts.dittoUnsure(), more);
    return null;
  }
  if (isStartSame) return over ?? left;
  const isOverLarger = left !== null && over !== null && middle(over) > middle(left);
  if (isOverLarger || figures.at(-1) === null) found.warn(cell.line, doubts.dittoUnsure(), more);
  return left ?? over;
} // prettier-ignore

/** The unit that the row's cells name; the more frequent one, when they don't agree. */
function commonUnit(printed: readonly (PrintedFigure | null)[]): LengthUnit | null {
  const counts = new Map<LengthUnit, number>();
  for (const reading of printed) if (reading?.unit) counts.set(reading.unit, (counts.get(reading.unit) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null;
}

/** A cell of another unit in a row: metres and centimetres can be turned, inches among centimetres are a slip. */
function convertPrinted(value: number | Span, from: LengthUnit, to: LengthUnit): number | Span | null {
  const isMetric = (from === "m" || from === "cm") && (to === "m" || to === "cm");
  if (!isMetric) return null;
  return tidy(convertFigure(value, from, to));
}

export const tidy = (value: number | Span): number | Span =>
  typeof value === "number" ? clean(value) : { low: clean(value.low), high: clean(value.high) };

/** The second values of the cells, and the units of both when only their sizes tell them. */
function otherStream(
  first: Stream, others: readonly (PrintedFigure["other"])[], cells: readonly Cell[], sizes: readonly string[], place: string | null, found: Doubts,
): Stream {
  const figures = others.map((other) => other?.value ?? null);
  const named = others.find((other) => other?.unit)?.unit ?? null;
  const second: Stream = { unit: named, figures, cells };
  nameBlocks([first, second], place === null);
  const [unit, otherUnit] = [first.unit, second.unit];
  if (!unit || !otherUnit) return second;
  figures.forEach((figure, index) => {
    const value = first.figures[index]!;
    if (!agrees(value, unit, figure, otherUnit))
      found.warn(cells[index]!.line, doubts.unitsApart(textOf(value, unit), textOf(figure, otherUnit)), {
        column: cells[index]!.column, ...(place === null ? {} : { place }), size: sizes[index]!,
      });
  });
  return second;
} // prettier-ignore

/** Two streams of the same lengths: which is in inches (or, of cloth, in yards), and which in centimetres (or metres). */
export function nameBlocks(streams: readonly Stream[], isCloth = true): void {
  const [a, b] = streams;
  if (!a || !b || (a.unit && b.unit)) return;
  const partner: Readonly<Record<LengthUnit, LengthUnit>> = { in: "cm", cm: "in", yd: "m", m: "yd" };
  const ratio = ratioOf(a.figures, b.figures) ?? 0;
  if (a.unit) b.unit = partner[a.unit];
  else if (b.unit) a.unit = partner[b.unit];
  else if (ratio > 2.3 && ratio < 2.8) [a.unit, b.unit] = ["in", "cm"];
  else if (ratio > 0.36 && ratio < 0.43) [a.unit, b.unit] = ["cm", "in"];
  else if (!isCloth) return;
  else if (ratio > 0.84 && ratio < 0.99) [a.unit, b.unit] = ["yd", "m"];
  else if (ratio > 1.01 && ratio < 1.19) [a.unit, b.unit] = ["m", "yd"];
}

/** How many times the second row's figures are the first's, in the middle; null when none stand side by side. */
export function ratioOf(first: readonly Figure[], second: readonly Figure[]): number | null {
  const ratios = first
    .map((figure, index) => {
      const other = second[index] ?? null;
      return figure === null || other === null || middle(figure) === 0 ? null : middle(other) / middle(figure);
    })
    .filter((ratio) => ratio !== null)
    .sort((a, b) => a - b);
  return ratios[Math.floor(ratios.length / 2)] ?? null;
}

/**
 * Whether two printed figures can be one length: charts round to whole centimetres and their own habits (30 1/2 in is
 * printed as 78 cm), amounts of fabric to the next 0.1 m. Common practice, no source.
 */
export function agrees(value: Figure, unit: LengthUnit, other: Figure, otherUnit: LengthUnit): boolean {
  return [lowOf, highOf].every((end) => {
    const [a, b] = [end(value), end(other)];
    if (a === null || b === null) return true;
    const isCloth = unit === "yd" || unit === "m";
    const [first, second] = [convert(a, unit, isCloth ? "m" : "cm"), convert(b, otherUnit, isCloth ? "m" : "cm")];
    const [imperialAsMetric, printed] = unit === "in" || unit === "yd" ? [first, second] : [second, first];
    if (isCloth)
      return printed - imperialAsMetric < 0.13 + 0.02 * printed && imperialAsMetric - printed < 0.08 + 0.02 * printed;
    return Math.abs(printed - imperialAsMetric) <= Math.max(1.05, 0.011 * printed);
  });
}

/** A figure as a sentence shows it. */
export function textOf(figure: Figure, unit: LengthUnit | null): string {
  const one = (value: number): string => String(clean(value));
  const text =
    figure === null ? "" : typeof figure === "number" ? one(figure) : `${one(figure.low)}-${one(figure.high)}`;
  return unit ? `${text} ${unit}` : text;
}
