import type { Result } from "../problem";
import type { Body, Chart, ChartRow, Place } from "../chart/model";
import { chartRow, columnInRow, type MatchRule } from "./size-match";
import type { BetweenSizes } from "./settings";

const RULES: Readonly<Record<BetweenSizes, MatchRule>> = { closest: "closest", larger: "atleast", smaller: "atmost" };

/**
 * Where a body's size at one place stands on the chart, counted from 0; the measure in the chart's unit. Ties, gaps and
 * the limits beyond the chart are those of `sizeMatch`. A measure that was given without a unit may turn out to be
 * centimetres against inches, and is refused then.
 */
export function sizeAt(
  chart: Chart,
  place: Place,
  measure: number,
  { between = "closest", bare = true }: { readonly between?: BetweenSizes; readonly bare?: boolean } = {},
): Result<number> {
  const row = rowOf(chart, place);
  return row.ok ? columnInRow(chart, row.value, measure, RULES[between], bare) : row;
}

/** Rows found before: one chart is asked for thousands of bodies. */
const rows = new WeakMap<Chart, Map<Place, Result<ChartRow>>>();

function rowOf(chart: Chart, place: Place): Result<ChartRow> {
  const known = rows.get(chart) ?? new Map<Place, Result<ChartRow>>();
  rows.set(chart, known);
  const row = known.get(place) ?? chartRow(chart, place);
  known.set(place, row);
  return row;
}

/** Whether a body's measure came without a unit. */
export function isBare(body: Body, place: Place): boolean {
  const measure = body.measures.get(place);
  return measure !== undefined && "unit" in measure && measure.unit === null;
}
