import { convert } from "../length/length";
import { TOLERANCE } from "../length/round-up";
import { capital } from "../chart/cell";
import { placeName } from "../chart/places";
import { sizesText } from "../chart/size-label";
import { answer, type Result } from "../problem";
import type { Body, BodyUnit, Chart, Place } from "../chart/model";
import { fitting, type FitOptions } from "./fitting";
import { frameOf } from "./frame";
import { spoken } from "./lengths";
import { listed } from "./listed";
import { bodyFigure, hasPlace, measureOf } from "./measures";

/** Height and back waist length tell the figure type; girths then tell the size. */
const TELLING: readonly Place[] = ["backWaistLength", "height"];

/** One body table of a pattern under the name that it has there: "Misses", "Women's", "Petite". */
export interface NamedChart {
  readonly name: string;
  readonly chart: Chart;
}

/** How one body table suits. */
export interface FigureType {
  readonly name: string;
  /** The frame size on this table; null where the body is off it. */
  readonly size: string | null;
  /** Body less chart in that size, in the chart's unit. */
  readonly differences: readonly { readonly place: Place; readonly difference: number }[];
}

export interface FigureTypes {
  /** The table whose back waist and height come nearest; null where nothing tells. */
  readonly best: string | null;
  readonly types: readonly FigureType[];
  readonly note: string;
}

/**
 * Which of a pattern's body tables (misses and women's, petite) suits a body better: by back waist length, then height,
 * each in the frame size that the table gives. Tables are never crossed: a size of one is not a size of the other.
 * A tie goes to the table named first. Where a table or the body has neither measure, nothing is said for it.
 *
 * Source: figure type by height and back waist length, then size by girths: Guide C-205, New Mexico State University
 * (read).
 *
 * @example figureType([{ name: "Misses", chart: misses }, { name: "Petite", chart: petite }], body, "dress")
 */
export function figureType(
  charts: readonly NamedChart[],
  body: Body,
  garment: string,
  options: FitOptions = {},
): Result<FigureTypes> {
  const types: FigureType[] = [];
  let best: { name: string; distance: number } | undefined;
  for (const { name, chart: printed } of charts) {
    const ready = fitting(printed, garment, options);
    if (!ready.ok) return ready;
    const { chart } = ready.value;
    const frame = frameOf(ready.value, body);
    if (!frame.ok) {
      types.push({ name, size: null, differences: [] });
      continue;
    }
    const differences = differencesAt(chart, body, frame.value.index);
    if (!differences.ok) return differences;
    types.push({ name, size: chart.sizes[frame.value.index]!, differences: differences.value });
    const first = differences.value[0];
    if (!first) continue;
    const distance = Math.abs(convert(first.difference, chart.unit ?? "in", "in"));
    if (!best || distance < best.distance - TOLERANCE) best = { name, distance };
  }
  return answer({ best: best?.name ?? null, types, note: typesNote(charts, types, best?.name) });
}

function differencesAt(chart: Chart, body: Body, index: number): Result<FigureType["differences"]> {
  const found: { place: Place; difference: number }[] = [];
  for (const place of TELLING) {
    if (!hasPlace(chart, place)) continue;
    const measure = measureOf(body, place, chart.unit);
    if (!measure.ok) return measure;
    const figure = bodyFigure(chart, place, index);
    if (measure.value !== undefined && figure.ok) found.push({ place, difference: measure.value - figure.value });
  }
  return answer(found);
}

function typesNote(charts: readonly NamedChart[], types: readonly FigureType[], best: string | undefined): string {
  if (best === undefined)
    return "Nothing tells the figure types apart: back waist length or height is missing in the body or in the charts.";
  const words = types.map(({ name, size, differences }) => {
    if (size === null) return `${name} has no size for this body`;
    const unit = charts.find((chart) => chart.name === name)!.chart.unit;
    const each = differences.map(
      ({ place, difference }) => `${differenceWords(difference, unit)} at the ${placeName(place)}`,
    );
    return `${name}, size ${size}, is ${each.length === 0 ? "not compared" : listed(each)}`;
  });
  return `${capital(best)} suits better: ${listed(words)}.`;
}

function differenceWords(difference: number, unit: BodyUnit | null): string {
  if (Math.abs(difference) <= TOLERANCE) return "right";
  return `${spoken(Math.abs(difference), unit)} too ${difference > 0 ? "short" : "long"}`;
}

/**
 * A word about the figure type where the back waist length is an inch or more off the chart's own: petite tables have it
 * 1 in shorter. "" where there is nothing to say.
 *
 * Source: miss petite and women's petite have a 1 in shorter back waist: Choosing the Correct Pattern, sewing.org (read).
 */
export function figureTypeNote(chart: Chart, body: Body, index: number): string {
  if (!hasPlace(chart, "backWaistLength") || chart.unit === null) return "";
  const measure = measureOf(body, "backWaistLength", chart.unit);
  const figure = bodyFigure(chart, "backWaistLength", index);
  if (!measure.ok || measure.value === undefined || !figure.ok) return "";
  const difference = measure.value - figure.value;
  if (Math.abs(difference) < convert(1, "in", chart.unit) - TOLERANCE) return "";
  const way = difference > 0 ? "longer" : "shorter";
  const table = difference > 0 ? "tall" : "petite";
  return `The back waist length is ${spoken(Math.abs(difference), chart.unit)} ${way} than the chart's: if the pattern has a ${table} table, look there.`;
}

/**
 * Which of a pattern's body tables answered, and which one back waist length and height speak for. "" for one table.
 */
export function tablesNote(chart: Chart, body: Body, garment: string, options: FitOptions): string {
  const others = (options.tables ?? []).filter(({ sizes }) => sizes.join("\n") !== chart.sizes.join("\n"));
  if (others.length === 0) return "";
  const name = ({ sizes }: Chart) => `the table ${sizesText(sizes)}`;
  const types = figureType(
    [chart, ...others].map((one) => ({ name: name(one), chart: one })),
    body,
    garment,
    { settings: options.settings },
  );
  return `This pattern has ${others.length + 1} body tables; this is from ${name(chart)}.${types.ok ? ` ${types.value.note}` : ""}`;
}
