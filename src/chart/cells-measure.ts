import { convert, smallUnitOf, type LengthUnit } from "../length/length";
import type { PrintedUnit } from "../length/units";
import { answer, type Result } from "../problem";
import { cellText, isMissing, readUnitCell, type Cell } from "./cell";
import { figureIn, readFigureCell, scaled, type CellFigure } from "./cells-figure";
import type { Grid } from "./cells-grid";
import { unitInLabel } from "./cells-words";
import { isFault, isSpan, type BodyUnit, type Chart, type ChartRow, type Fault, type Figure } from "./model";
import { placeSpan, readPlace } from "./places";
import { labelKey } from "./size-label";

/** A measurement chart as it stands on the sheet: each row in its own unit, in the chart's order. */
export interface SheetChart {
  readonly kind: "body" | "finished";
  readonly sizes: readonly string[];
  readonly rows: readonly SheetRow[];
}
export interface SheetRow extends ChartRow {
  readonly unit: BodyUnit | null;
}

interface RawRow {
  readonly label: string;
  readonly place: string;
  readonly view: string | null;
  readonly figures: readonly CellFigure[];
  /** The unit that the row says, in a column, its label or its figures. */
  readonly said: PrintedUnit | undefined;
}

/**
 * A measurement chart from its grid. The unit of a row is what its Unit column, its label, its figures or the title say;
 * where nothing does, it comes from the size of the numbers: the unit in which more known places are possible.
 */
export function measureSheet(grid: Grid, kind: "body" | "finished"): Result<SheetChart> {
  const raw: RawRow[] = [];
  for (const row of grid.rows) {
    const read = rawRow(row, grid, kind);
    if (!read.ok) return read;
    if (read.value) raw.push(read.value);
  }
  const title = bodyUnit(unitInLabel(grid.title));
  const units = new Set(raw.map(({ said }) => bodyUnit(said) ?? title).filter((unit) => unit !== null));
  const [only] = units;
  const silent = raw.filter(({ said }) => bodyUnit(said) === null);
  const otherwise = title ?? (units.size === 1 ? only! : unitOfNumbers(silent));
  const sizes = grid.sizes.map(({ label }) => label);
  return answer({ kind, sizes, rows: raw.map((row) => sheetRow(row, bodyUnit(row.said) ?? otherwise)) });
}

function rawRow(row: readonly Cell[], grid: Grid, kind: "body" | "finished"): Result<RawRow | undefined> {
  const at = (column: number | undefined): Cell => (column === undefined ? null : (row[column] ?? null));
  const labelCell = at(grid.columns.label);
  const label = isMissing(labelCell) ? "" : cellText(labelCell).replace(/\s+/g, " ");
  const figures = grid.sizes.map(({ column }) => readFigureCell(at(column)));
  const place = readPlace(label, kind);
  // A line of words under the chart is a note, and a row without a label answers nothing.
  if (place === null && figures.every(({ figure }) => figure === null || isFault(figure))) return answer(undefined);
  const unit = readUnitCell(at(grid.columns.unit));
  if (!unit.ok) return unit;
  const view = at(grid.columns.view);
  const text = figures.find((figure) => figure.unit !== null)?.unit;
  const said = unit.value ?? unitInLabel(label) ?? (text ? { unit: text } : undefined);
  return answer({
    label,
    place: place ?? label,
    view: isMissing(view) ? null : cellText(view),
    figures,
    said,
  });
}

/** Bodies are measured in inches or centimetres: yards, feet count as inches, metres as centimetres. */
const bodyUnit = (printed: PrintedUnit | undefined): BodyUnit | null => (printed ? smallUnitOf(printed.unit) : null);

function sheetRow({ label, place, view, figures, said }: RawRow, unit: BodyUnit | null): SheetRow {
  const printed: LengthUnit | null = said?.unit ?? unit;
  const factor = said?.factor ?? 1;
  const values = figures.map(({ figure, unit: own }): Figure | Fault => {
    if (own !== null) return figureIn(figure, own, unit ?? own);
    const sized = factor === 1 ? figure : scaled(figure, (value) => value * factor);
    return figureIn(sized, printed, unit);
  });
  return { place, view, label, values, unit };
}

/** The unit in which more rows lie where their place can lie; null when neither wins. */
function unitOfNumbers(rows: readonly RawRow[]): BodyUnit | null {
  const votes = { in: 0, cm: 0 };
  for (const { place, figures } of rows) {
    const span = placeSpan(place);
    const numbers = figures.flatMap(({ figure }) => ends(figure));
    if (!span || numbers.length === 0) continue;
    for (const unit of ["in", "cm"] as const) {
      const [low, high] = span[unit];
      if (numbers.every((number) => number >= low && number <= high)) votes[unit]++;
    }
  }
  if (votes.in === votes.cm) return null;
  return votes.in > votes.cm ? "in" : "cm";
}

function ends(figure: Figure | Fault): number[] {
  if (figure === null || isFault(figure)) return [];
  return isSpan(figure) ? [figure.low, figure.high] : [figure];
}

/**
 * The charts that a sheet's rows make, one for each unit. Rows for the same place in both units are two charts; a row
 * that is alone in its unit (hip in cm, the rest in inches) is converted to the unit of the most rows.
 */
export function chartsOf(sheet: SheetChart): readonly Chart[] {
  const { kind, sizes, rows } = sheet;
  const units = [...new Set(rows.map(({ unit }) => unit))];
  if (units.length <= 1) return [{ kind, sizes, unit: units[0] ?? null, rows: rows.map(withoutUnit) }];
  const said = units.filter((unit) => unit !== null);
  const key = ({ place, view }: SheetRow) => `${view ?? ""}\n${labelKey(place)}`;
  const inInches = new Set(rows.filter(({ unit }) => unit === "in").map(key));
  const twice = rows.some((row) => row.unit === "cm" && inInches.has(key(row)));
  if (twice) return said.map((unit) => oneUnit({ ...sheet, rows: rows.filter((row) => row.unit === unit) }, unit));
  const inches = rows.filter(({ unit }) => unit === "in").length;
  const main = inches * 2 >= rows.filter(({ unit }) => unit !== null).length ? "in" : "cm";
  return [oneUnit(sheet, said.length === 1 ? said[0]! : main)];
}

function oneUnit({ kind, sizes, rows }: SheetChart, unit: BodyUnit): Chart {
  const converted = rows.map((row) => ({
    ...row,
    values: row.values.map((figure) => figureIn(figure, row.unit, unit)),
  }));
  return { kind, sizes, unit, rows: converted.map(withoutUnit) };
}

function withoutUnit({ place, view, label, values }: SheetRow): ChartRow {
  return { place, view: view ?? null, label, values };
}

/** A length of a chart row in a chart's unit. */
export const inChartUnit = (value: number, from: LengthUnit | null, to: BodyUnit | null): number =>
  from === null || to === null ? value : convert(value, from, to);
