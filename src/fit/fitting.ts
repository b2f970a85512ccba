import { formatLength } from "../length/format";
import { convert } from "../length/length";
import { clean, TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import { sizeIndex, sizesText } from "../chart/size-label";
import { answer, refuse, type Problem, type Result } from "../problem";
import { bodyFigure, figureIn, figureNumber, isPrinted, rowsOf } from "./measures";
import type { Body, BodyUnit, Chart, ChartRow, Place } from "../chart/model";
import type { Garment } from "./garments";
import { leastEase, type LeastEase } from "./least-ease";
import { readGarment } from "./read-garment";
import { isBare, sizeAt } from "./size-at";
import { upward } from "./upward";
import { noSettings, ruleFor, type BetweenSizes, type Settings } from "./settings";

/** What a choice of size may know besides chart, body and garment. */
export interface FitOptions {
  /** Finished garment measurements, as the pattern prints them. */
  readonly finished?: Chart | undefined;
  readonly settings?: Settings | undefined;
  /** Every body table of the pattern, where it has several (misses and women's): the note says which one answered. */
  readonly tables?: readonly Chart[] | undefined;
}

/** A chart and a garment made ready for many bodies. */
export interface Fitting {
  /** Its sizes from small to large. */
  readonly chart: Chart;
  readonly garment: Garment;
  readonly settings: Settings;
  /** The places that the chart prints. */
  readonly printed: ReadonlySet<Place>;
  /** The finished measurement of a size of the chart, in the chart's unit; undefined without finished measurements. */
  readonly finished: FinishedFigures | undefined;
  /** The least ease by place, remembered where it is the same for everybody. */
  readonly leasts: Map<Place, Result<LeastEase | undefined>>;
  /** What the chart is in; where it doesn't say, what the finished measurements are in. */
  readonly unit: BodyUnit | null;
}

export interface FinishedFigures {
  readonly has: (place: Place) => boolean;
  /** Only for a place that it has. */
  readonly at: (place: Place, index: number) => Result<number>;
  /** The views among which the closest one counts, where the place is printed for several. */
  readonly views: (place: Place) => readonly string[];
}

/** Reads the garment and lines the finished measurements up with the chart's sizes. */
export function fitting(printed: Chart, garment: string, options: FitOptions = {}): Result<Fitting> {
  const settings = options.settings ?? noSettings;
  const known = readGarment(garment, settings);
  if (!known.ok) return known;
  const chart = upward(printed);
  const finished = options.finished && finishedFigures(chart, options.finished);
  return answer({
    chart,
    printed: new Set(chart.rows.map(({ place }) => place)),
    garment: known.value,
    settings,
    finished,
    leasts: new Map(),
    unit: chart.unit ?? options.finished?.unit ?? null,
  });
}

/** Rows of a place for several views count by the closest of them: nothing may be tighter than was promised. */
function finishedFigures(chart: Chart, finished: Chart): FinishedFigures {
  const columns = chart.sizes.map((size) => sizeIndex(finished.sizes, size));
  const known = new Map<Place, Result<number>[]>();
  const printed = new Set(finished.rows.map(({ place }) => place));
  const inChartUnit = (value: number) =>
    finished.unit === null || chart.unit === null ? value : clean(convert(value, finished.unit, chart.unit));
  const figures = (place: Place): Result<number>[] => {
    const rows = rowsOf(finished, place);
    const falling = rows.map((row) => fallIn(finished, row, columns)).find((problem) => problem !== undefined);
    return columns.map((column, index) => {
      if (falling) return { ok: false, problem: falling };
      if (column < 0) return refuse("sizeNotOnChart", { size: chart.sizes[index]!, known: sizesText(finished.sizes) });
      let least: number | undefined;
      for (const row of rows) {
        const figure = figureIn(finished, row, column, "low");
        if (!figure.ok) return figure;
        least = Math.min(least ?? figure.value, figure.value);
      }
      return cmAgainstInches(chart, finished, place, index, least!) ?? answer(inChartUnit(least!));
    });
  };
  return {
    has: (place) => printed.has(place),
    at: (place, index) => {
      let found = known.get(place);
      if (!found) known.set(place, (found = figures(place)));
      return found[index]!;
    },
    views: (place) => {
      const views = rowsOf(finished, place).flatMap(({ view }) => (view ? [view] : []));
      return views.length > 1 ? views : [];
    },
  };
}

/** Where a table doesn't say its unit, figures two to three times the body's are centimetres against inches. */
function cmAgainstInches(chart: Chart, finished: Chart, place: Place, index: number, figure: number) {
  if (chart.unit !== null && finished.unit !== null) return undefined;
  const body = bodyFigure(chart, place, index);
  if (!body.ok) return undefined;
  const times = Math.max(figure / body.value, body.value / figure);
  if (times < 2 || times > 3) return undefined;
  return refuse("cmAgainstInches", {
    found: `${formatLength(figure, finished.unit)} finished`,
    against: `${formatLength(body.value, chart.unit)} in the body chart`,
  });
}

/**
 * A row that falls from one size to a larger one, in the order of the body chart's sizes, is a slip of the pen, and a
 * garment would be cut by it.
 */
function fallIn(finished: Chart, row: ChartRow, columns: readonly number[]): Problem | undefined {
  let before: number | undefined;
  for (const column of columns) {
    const value = row.values[column];
    if (!isPrinted(value)) continue;
    const figure = figureNumber(value, "low");
    if (before !== undefined && figure < before - TOLERANCE)
      return refuse("fallingRow", {
        place: placeName(row.place),
        size: finished.sizes[column]!,
        figures: `${formatLength(before, finished.unit)}, then ${formatLength(figure, finished.unit)}`,
      }).problem;
    before = figure;
  }
  return undefined;
}

/** Her rule between sizes, or the closest one. */
export function betweenSizes({ garment, settings }: Fitting, place: Place, person: string | null): BetweenSizes {
  const rule = ruleFor(settings.words, "between sizes", { garment: garment.key, place, person });
  return rule ? (rule.value as BetweenSizes) : "closest";
}

/** Where a body's size at one place stands on the chart, by her rule between sizes. */
export function sizeOf(fitting: Fitting, body: Body, place: Place, measure: number): Result<number> {
  const between = betweenSizes(fitting, place, body.name);
  return sizeAt(fitting.chart, place, measure, { between, bare: isBare(body, place) });
}

/** The least ease at a place, or undefined where none is known. Refuses where neither table says inches or centimetres. */
export function leastAt(
  { garment, settings, unit, leasts }: Fitting,
  place: Place,
  measure: number,
  person: string | null,
): Result<LeastEase | undefined> {
  const before = leasts.get(place);
  if (before) return before;
  const least = leastEase(garment, place, unit ?? "in", settings, { measure, person });
  const found = least && unit === null ? refuse("chartUnitUnknown", { text: `${least.value} in` }) : answer(least);
  if (settings.lengths.length === 0) leasts.set(place, found);
  return found;
}
