import { convert } from "../length/length";
import { answer, refuse, type Result } from "../problem";
import { isFault, isSpan, type Body, type Chart, type Measure, type Place } from "./model";
import { labelKey, sizesText } from "./size-label";

/** A measure and where it was taken. */
export interface PlaceMeasure extends Measure {
  readonly place: Place;
}

/** What a body says about which table is hers. */
export function bodyMeasures({ measures }: Body): readonly PlaceMeasure[] {
  return [...measures].flatMap(([place, measure]) => ("fault" in measure ? [] : [{ place, ...measure }]));
}

/**
 * The charts that suit the measures best, in their order: all of them when nothing tells them apart. A unit that a
 * measure names chooses first; then a measure suits a chart in which it lies within the printed figures, else the nearer.
 */
export function nearestCharts(charts: readonly Chart[], near: readonly PlaceMeasure[]): readonly Chart[] {
  if (charts.length <= 1) return charts;
  const scores = charts.map((chart) => ({ chart, ...score(chart, near) }));
  const most = Math.max(...scores.map(({ units }) => units));
  const named = scores.filter(({ units }) => units === most);
  const least = Math.min(...named.map(({ distance }) => distance));
  return named.filter(({ distance }) => distance <= least + 1e-9).map(({ chart }) => chart);
}

function score(chart: Chart, near: readonly PlaceMeasure[]): { distance: number; units: number } {
  let distance = 0;
  let units = 0;
  for (const { place, value, unit } of near) {
    const ends = endsOf(chart, place);
    // A place that the chart lacks speaks against it more than any distance.
    if (!ends) distance += 10;
    else {
      const measure = unit && chart.unit ? convert(value, unit, chart.unit) : value;
      distance += Math.max(0, Math.log(ends.low / measure), Math.log(measure / ends.high));
    }
    if (unit !== null && unit === chart.unit) units++;
  }
  return { distance, units };
}

/** The smallest and the largest figure of a place. */
function endsOf(chart: Chart, place: Place): { low: number; high: number } | undefined {
  const figures = chart.rows
    .filter((row) => labelKey(row.place) === labelKey(place))
    .flatMap(({ values }) => values)
    .flatMap((figure) =>
      figure === null || isFault(figure) ? [] : isSpan(figure) ? [figure.low, figure.high] : [figure],
    );
  return figures.length === 0 ? undefined : { low: Math.min(...figures), high: Math.max(...figures) };
}

/** The one chart that suits the measures; charts of the same sizes in two units say the same, and the first is taken. */
export function chooseChart(charts: readonly Chart[], near: readonly PlaceMeasure[], pattern: string): Result<Chart> {
  const [first, ...others] = nearestCharts(charts, near);
  if (!first) throw new RangeError("no chart");
  const rival = others.find((other) => other.unit === first.unit || other.sizes.join("\n") !== first.sizes.join("\n"));
  return rival ? severalTables([first, ...others], pattern) : answer(first);
}

/** Two tables that could both answer, named by their sizes. */
export const severalTables = (charts: readonly Chart[], pattern: string) =>
  refuse("severalTables", {
    pattern,
    tables: charts.map(({ sizes, unit }) => sizesText(sizes) + (unit ? `, ${unit}` : "")).join("; "),
  });
