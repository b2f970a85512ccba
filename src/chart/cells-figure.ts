import { plainText, readLength, type LengthText } from "../length/read";
import { convert, type LengthUnit } from "../length/length";
import { formatLength } from "../length/format";
import { refuse } from "../problem";
import { cellText, errorCellProblem, isErrorCell, isMissing, LARGEST, type Cell } from "./cell";
import { isFault, type Fault, type Figure, type Span } from "./model";

/** A figure as its cell has it: the unit is the one that its own text names. */
export interface CellFigure {
  readonly figure: Figure | Fault;
  readonly unit: LengthUnit | null;
}

const NOTHING: CellFigure = { figure: null, unit: null };
/** What charts print where a size is not made. */
const DASHES: ReadonlySet<string> = new Set(["-", "--", "n/a", "na", "n.a.", "none", "/", "x", "."]);

/**
 * One cell of a chart: a number, text that is a length ("30 1/2", "77,5 cm"), a printed range ("86-90", "30 1/2 to 31"),
 * nothing (blank, a dash, n/a), or a fault that keeps why it can't be read.
 *
 * @example readFigureCell("86-90") //=> { figure: { low: 86, high: 90 }, unit: null }
 */
export function readFigureCell(cell: Cell): CellFigure {
  if (isMissing(cell)) return NOTHING;
  if (cell === null) return NOTHING;
  if (isErrorCell(cell)) return { figure: { fault: errorCellProblem(cell).problem, error: cell.error }, unit: null };
  if (typeof cell === "number") {
    if (cell > LARGEST) return fault(refuse("excelDate", { text: cellText(cell) }).problem);
    return cell > 0 ? { figure: cell, unit: null } : unreadable(cell);
  }
  if (typeof cell === "boolean") return unreadable(cell);
  const text = plainText(cell);
  if (DASHES.has(text.toLowerCase())) return NOTHING;
  const read = readLength(text);
  if (read.ok && read.value.value === 0) return NOTHING;
  if (read.ok) return usable(read.value) ? { figure: read.value.value, unit: read.value.unit } : unreadable(cell);
  return readSpan(text) ?? unreadable(cell);
}

/**
 * A printed range: two lengths with a hyphen, a dash or "to" between them, the smaller first. A unit may stand after the
 * second one or after both.
 *
 * @example readSpan("30 1/2 to 31 in") //=> { figure: { low: 30.5, high: 31 }, unit: "in" }
 */
export function readSpan(text: string): CellFigure | undefined {
  const plain = plainText(text).toLowerCase();
  if (plain.length > 60) return undefined;
  const cuts = [...plain.matchAll(/-| (?:to|bis|à|a|al|tot|do) /g)];
  for (const { index, 0: mark } of cuts) {
    const low = readLength(plain.slice(0, index));
    const high = readLength(plain.slice(index + mark.length));
    if (!low.ok || !high.ok || !usable(low.value) || !usable(high.value)) continue;
    const unit = high.value.unit ?? low.value.unit;
    if (low.value.unit && high.value.unit && low.value.unit !== high.value.unit) continue;
    if (low.value.value < high.value.value) return { figure: { low: low.value.value, high: high.value.value }, unit };
  }
  return undefined;
}

const usable = ({ value }: LengthText): boolean => value > 0 && value <= LARGEST;
const fault = (problem: Fault["fault"]): CellFigure => ({ figure: { fault: problem }, unit: null });
const unreadable = (cell: Cell): CellFigure => fault(refuse("unreadableFigure", { text: cellText(cell) }).problem);

/** A figure in another unit. Faults and blanks stay what they are; so does a figure whose unit isn't known. */
export function figureIn(figure: Figure | Fault, from: LengthUnit | null, to: LengthUnit | null): Figure | Fault {
  if (from === null || to === null || from === to) return figure;
  return scaled(figure, (value) => convert(value, from, to));
}

/** A figure with its number, or both ends of its range, changed. */
export function scaled(figure: Figure | Fault, change: (value: number) => number): Figure | Fault {
  if (figure === null || isFault(figure)) return figure;
  return typeof figure === "number" ? change(figure) : { low: change(figure.low), high: change(figure.high) };
}

/**
 * A printed range as a cell or a sentence shows it.
 *
 * @example spanText({ low: 30.5, high: 31 }, "in") //=> "30 1/2 to 31"
 */
export function spanText({ low, high }: Span, unit: LengthUnit | null): string {
  const [from, to] = [low, high].map((value) => formatLength(value, unit).replace(/ [a-z]+$/, ""));
  return `${from} to ${to}`;
}
