import { formatLength } from "../length/format";
import { convert } from "../length/length";
import { placeName } from "../chart/places";
import { answer, refuse, type Result } from "../problem";
import {
  isFault,
  isSpan,
  type Body,
  type BodyUnit,
  type Chart,
  type ChartRow,
  type Fault,
  type Figure,
  type Place,
} from "../chart/model";

/**
 * One of a body's measures in the chart's unit; undefined when it isn't there. A bare number is in the chart's unit.
 * Refuses what the cell held when that is no measure, a measure of zero or less, and a unit where the chart has none.
 */
export function measureOf(body: Body, place: Place, unit: BodyUnit | null): Result<number | undefined> {
  const measure = body.measures.get(place);
  if (measure === undefined) return answer(undefined);
  if ("fault" in measure) return { ok: false, problem: measure.fault };
  const { value } = measure;
  if (value < 0)
    return refuse("negative", { text: formatLength(value, measure.unit), what: `The ${placeName(place)}` });
  if (value === 0) return answer(undefined);
  if (measure.unit === null || measure.unit === unit) return answer(value);
  if (unit === null) return refuse("chartUnitUnknown", { text: formatLength(value, measure.unit) });
  return answer(convert(value, measure.unit, unit));
}

/** A measure that cannot be done without. */
export function neededMeasure(body: Body, place: Place, unit: BodyUnit | null): Result<number> {
  const measure = measureOf(body, place, unit);
  if (!measure.ok || measure.value !== undefined) return measure as Result<number>;
  return refuse("notMeasured", { place: placeName(place), person: body.name ?? "" });
}

/** The row of a place; a finished chart may have one for each view. */
export const rowsOf = (chart: Chart, place: Place): readonly ChartRow[] =>
  chart.rows.filter((row) => row.place === place);
export const hasPlace = (chart: Chart, place: Place): boolean => chart.rows.some((row) => row.place === place);

/** No such row: what there is. */
export function noPlace(chart: Chart, place: Place) {
  const known = [...new Set(chart.rows.map((row) => placeName(row.place)))].join(", ");
  return refuse("placeNotOnChart", { place: placeName(place), known });
}

/** The body figure of a size: the middle of a printed range, which is what the pattern is drafted for. */
export function bodyFigure(chart: Chart, place: Place, index: number): Result<number> {
  const row = rowsOf(chart, place)[0];
  return row ? figureIn(chart, row, index, "middle") : noPlace(chart, place);
}

/** A figure in a row: of a range its lower end or its middle. Refuses what isn't printed. */
export function figureIn(chart: Chart, row: ChartRow, index: number, of: "low" | "middle"): Result<number> {
  const figure = row.values[index] ?? null;
  if (isFault(figure)) return { ok: false, problem: figure.fault };
  if (figure === null) return refuse("missingFigure", { place: placeName(row.place), size: chart.sizes[index]! });
  return answer(figureNumber(figure, of));
}

export function figureNumber(figure: NonNullable<Figure>, of: "low" | "middle"): number {
  if (!isSpan(figure)) return figure;
  return of === "low" ? figure.low : (figure.low + figure.high) / 2;
}

export const isPrinted = (figure: Figure | Fault | undefined): figure is NonNullable<Figure> =>
  figure !== null && figure !== undefined && !isFault(figure);
