/** Slips that happen when a chart is copied, and what the reader makes of them. */
import type { ChartReading, ChartTable } from "../../src/chart/model";
import { readCharts } from "../../src/chart/read-charts";
import { cellsOf, headingOf, turned, type Cells, type Join, type Numbers, type Table } from "./layouts";

export type Slip = "dropped" | "doubled" | "swapped" | "misspelt";

/** A table's cells with one slip in a row of figures; null when the slip would change nothing. */
export function slipped(cells: Cells, slip: Slip, row: number, column: number): Cells | null {
  const line = [...cells[row]!];
  if (slip === "dropped") line.splice(column, 1);
  if (slip === "doubled") line.splice(column, 0, line[column]!);
  if (slip === "swapped") {
    const other = column + 1 < line.length ? column + 1 : column - 1;
    if (other < 1 || line[other] === line[column]) return null;
    [line[column], line[other]] = [line[other]!, line[column]!];
  }
  if (slip === "misspelt") {
    const text = line[column]!;
    const digits = [...text].findIndex(
      (char, at) => /\d/.test(char) && /\d/.test(text[at + 1] ?? "") && char !== text[at + 1],
    );
    if (digits < 0) return null;
    line[column] = text.slice(0, digits) + text[digits + 1]! + text[digits]! + text.slice(digits + 2);
  }
  return cells.map((other, index) => (index === row ? line : other));
}

export type WholeSlip = "label lost" | "size lost" | "size twice" | "two rows in one line";

/** A table's text with a slip that isn't in a figure; null when the table is too small for it. */
export function slippedWhole(table: Table, join: Join, numbers: Numbers, slip: WholeSlip, row: number): string | null {
  const cells = cellsOf(table, numbers).map((line) => [...line]);
  const [sizes, line, above] = [cells[0]!, cells[row]!, cells[row - 1]!];
  if (slip === "label lost") line.shift();
  if (slip === "size lost") sizes.splice(1, 1);
  if (slip === "size twice") sizes.splice(1, 0, sizes[1]!);
  if (slip === "two rows in one line") {
    if (row < 2) return null;
    above.push(...line);
    cells.splice(row, 1);
  }
  return `${headingOf(table)}\n${join(cells)}`;
}

const sameRows = (table: ChartTable | undefined, wanted: Table): boolean =>
  table !== undefined && table.kind === wanted.kind && table.unit === wanted.unit && JSON.stringify(table.sizes) === JSON.stringify(wanted.sizes) &&
  JSON.stringify(table.rows.map((row) => row.values)) === JSON.stringify(wanted.rows.map((row) => row.values)); // prettier-ignore

/** Whether a slip went unseen: the figures differ from the table's, and no issue speaks of anything but unit or heading. */
export function isSilent(reading: ChartReading, wanted: Table): boolean {
  if (reading.tables.length === 1 && sameRows(reading.tables[0], wanted)) return false;
  return !reading.issues.some((issue) => !/^No unit is printed|^No heading says/.test(issue.message));
}

export function slip(
  table: Table,
  join: Join,
  numbers: Numbers,
  kind: Slip,
  row: number,
  column: number,
  isTurned: boolean,
): { text: string; reading: ChartReading } | null {
  const all = cellsOf(table, numbers);
  const cells = slipped(isTurned ? turned(all) : all, kind, row, column);
  if (!cells) return null;
  const wide = Math.max(...cells.map((line) => line.length));
  const body = join(cells.map((line) => line));
  const text = `${headingOf(table)}\n${body}`;
  return wide ? { text, reading: readCharts(text) } : null;
}
