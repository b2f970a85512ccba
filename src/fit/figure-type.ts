import { convert } from "../length/length";
import { TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import { labelKey, sizesText } from "../chart/size-label";
import { answer, type Result } from "../problem";
import type { Body, BodyUnit, Chart, Place } from "../chart/model";
import { fitting, type FitOptions } from "./fitting";
import { frameOf } from "./frame";
import { spoken } from "./lengths";
import { bodyFigure, hasPlace, measureOf } from "./measures";
import * as say from "../words/figure-notes";
import { inARow } from "../words/sentences";

/** Height and back waist length tell the figure type; girths then tell the size. */
export const TELLING: readonly Place[] = ["backWaistLength", "height"];

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
  /** The table whose back waist or height comes nearest; null where nothing tells, or both are as near. */
  readonly best: string | null;
  readonly types: readonly FigureType[];
  readonly note: string;
}

/**
 * Which of a pattern's body tables (misses and women's, petite) suits a body better: by back waist length, and where that
 * is missing or leaves a tie by height, each in the frame size that the table gives. Tables are never crossed: a size of
 * one is not a size of the other, and a back waist length is not weighed against a height. A tie that is left, within
 * 1e-9, goes to none.
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
  }
  const nearest = nearestTypes(charts, types);
  const best = nearest.length === 1 ? types[nearest[0]!]!.name : undefined;
  return answer({ best: best ?? null, types, note: typesNote(charts, types, nearest) });
}

/** The tables that come nearest, by their positions; none where nothing tells. */
function nearestTypes(charts: readonly NamedChart[], types: readonly FigureType[]): readonly number[] {
  let left = types.flatMap(({ size }, index) => (size === null ? [] : [index]));
  let isTold = false;
  for (const place of TELLING) {
    const distances = left.map((index) => {
      const found = types[index]!.differences.find((difference) => difference.place === place);
      return found && Math.abs(convert(found.difference, charts[index]!.chart.unit ?? "in", "in"));
    });
    if (distances.length === 0 || distances.includes(undefined)) continue;
    isTold = true;
    const least = Math.min(...(distances as number[]));
    left = left.filter((_, index) => distances[index]! <= least + TOLERANCE);
  }
  return isTold ? left : [];
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

function typesNote(charts: readonly NamedChart[], types: readonly FigureType[], nearest: readonly number[]): string {
  if (nearest.length === 0) return say.typesNotTold;
  const words = types.map(({ name, size, differences }, index) => {
    if (size === null) return say.noSizeForBody(name);
    const { unit } = charts[index]!.chart;
    return say.tableIs(
      name,
      size,
      differences.map(({ place, difference }) => differenceWords(difference, unit, placeName(place))),
    );
  });
  return say.suitsBetter(
    nearest.map((index) => types[index]!.name),
    words,
  );
}

function differenceWords(difference: number, unit: BodyUnit | null, name: string): string {
  if (Math.abs(difference) <= TOLERANCE) return say.rightAt(name);
  return say.offAt(spoken(Math.abs(difference), unit), difference > 0, name);
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
  return say.backWaistOff(spoken(Math.abs(difference), chart.unit), difference > 0);
}

/**
 * A pattern's tables that are not each other in the other unit: of two with the same sizes in inches and centimetres the
 * one in the unit of `first` stays, else the first.
 */
export function tablesApart(charts: readonly Chart[], first: Chart): readonly Chart[] {
  const ordered = [
    ...charts.filter(({ unit }) => unit === first.unit),
    ...charts.filter(({ unit }) => unit !== first.unit),
  ];
  const kept = ordered.filter(
    (chart, index) =>
      !ordered.slice(0, index).some((other) => other.unit !== chart.unit && sizesKey(other) === sizesKey(chart)),
  );
  return charts.filter((chart) => kept.includes(chart));
}

const sizesKey = ({ sizes }: Chart): string => sizes.map(labelKey).join("\n");

/** The tables by their sizes, "the table 6 to 24"; those with the same sizes by their order too. */
export function namedTables(charts: readonly Chart[]): readonly NamedChart[] {
  return charts.map((chart, index) => {
    const sizes = sizesText(chart.sizes);
    const isAlone = charts.every((other) => other === chart || sizesText(other.sizes) !== sizes);
    return { name: isAlone ? say.tableAlone(sizes) : say.tableInOrder(index, sizes), chart };
  });
}

/**
 * Which of a pattern's body tables answered, and which one back waist length and height speak for. "" for one table.
 */
export function tablesNote(chart: Chart, body: Body, garment: string, options: FitOptions): string {
  const named = namedTables(tablesApart(options.tables ?? [], chart));
  const own = named.find((one) => one.chart === chart);
  if (!own || named.length === 1) return "";
  const types = figureType(named, body, garment, { settings: options.settings });
  return inARow(say.oneOfTables(named.length, own.name), types.ok ? types.value.note : "");
}
