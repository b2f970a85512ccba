import { isSpan, type Chart, type ChartRow } from "../chart/model";
import { isPrinted } from "./measures";

const known = new WeakMap<Chart, Chart>();

/**
 * A chart with its sizes from small to large. Some charts list them the other way; stepping to a larger size must go up
 * on those too. A row that goes both ways says nothing here: looking a size up in it is refused anyway.
 */
export function upward(chart: Chart): Chart {
  const before = known.get(chart);
  if (before) return before;
  const directions = chart.rows.map(direction);
  const falls = directions.some((one) => one < 0) && !directions.some((one) => one > 0) && !numbered(chart.sizes);
  const turned = falls
    ? {
        ...chart,
        sizes: [...chart.sizes].reverse(),
        rows: chart.rows.map((row) => ({
          ...row,
          values: chart.sizes.map((_, at) => row.values[chart.sizes.length - 1 - at] ?? null),
        })),
      }
    : chart;
  known.set(chart, turned);
  known.set(turned, turned);
  return turned;
}

/** Sizes whose numbers rise: a chart that falls beneath them is a slip, and stays as it is to be refused. */
const numbered = (sizes: readonly string[]): boolean => Number(sizes[0]) < Number(sizes.at(-1));

/** 1 for a row that ends above its beginning, -1 below, 0 for a row of one figure. */
function direction({ values }: ChartRow): number {
  const figures = values.filter(isPrinted).map((figure) => (isSpan(figure) ? figure.low : figure));
  return figures.length === 0 ? 0 : Math.sign(figures.at(-1)! - figures[0]!);
}
