import { spanText } from "../chart/cells-figure";
import { namesText } from "../chart/cells-names";
import type { Chart, ChartRow, Figure, Measure, Place } from "../chart/model";
import { isFault, isSpan } from "../chart/model";
import { placeName } from "../chart/places";
import { labelKey } from "../chart/size-label";
import { formatLength } from "../length/format";
import { convert } from "../length/length";
import { clean, TOLERANCE } from "../length/round-up";
import { answer, refuse, type Result } from "../problem";
import { scaleOf, type Scale, type Step } from "./size-match-row";

/** Which size answers a measure between two columns: the nearest, the smallest not below, the largest not above. */
export type MatchRule = "closest" | "atleast" | "atmost";
export const MATCH_RULES: readonly MatchRule[] = ["closest", "atleast", "atmost"];

/** The size for one place. */
export interface SizeMatch {
  /** The size's column, counted from 0. */
  readonly index: number;
  readonly size: string;
  readonly figure: NonNullable<Figure>;
  /** Both in the chart's unit; the difference is measure − figure, nought inside a printed range. */
  readonly measure: number;
  readonly difference: number;
  /** Where the measure lies beyond the chart's ends. */
  readonly beyond: "above" | "below" | null;
}

/**
 * The size for a measure at one place of a chart.
 *
 * - closest: the nearest column; a tie, and a gap between printed ranges, goes to the larger. Up to half the end step
 *   beyond the chart is still answered. Ranges that touch (86-90, 90-94) are half-open, the last one too, and their ends
 *   are the chart's own: nothing beyond them is answered.
 * - atleast: the smallest size not below the measure, up to one step below the chart.
 * - atmost: the largest size not above it, up to one step above the chart.
 *
 * A measure in another unit is converted; a bare one that is far off the chart as centimetres are against inches is
 * refused. A figure that is missing or unreadable is refused where the answer could hang on it.
 *
 * Source: the half-open ranges are those of EN 13402-3; the tie to the larger and the limits beyond the chart are common
 * practice, no source.
 *
 * @example sizeMatch(misses, "bust", { value: 35, unit: "in" }) //=> { ok: true, value: { size: "14", … } }
 */
export function sizeMatch(
  chart: Chart,
  place: Place,
  measure: Measure,
  rule: MatchRule = "closest",
): Result<SizeMatch> {
  const row = chartRow(chart, place);
  if (!row.ok) return row;
  const { value, unit } = measure;
  if (unit !== null && chart.unit === null) return refuse("chartUnitUnknown", { text: formatLength(value, unit) });
  return matchInRow(
    chart,
    row.value,
    unit && chart.unit ? convert(value, unit, chart.unit) : value,
    rule,
    unit === null,
  );
}

/** The row of a place. Two rows that differ are refused; finished charts have one for each view. */
export function chartRow(chart: Chart, place: Place): Result<ChartRow> {
  const [row, ...others] = chart.rows.filter((candidate) => candidate.place === place);
  if (!row) return refuse("placeNotOnChart", { place: placeName(place), known: placesText([chart]) });
  const differs = others.some(({ values }) => JSON.stringify(values) !== JSON.stringify(row.values));
  return differs ? refuse("placeTwice", { place: placeName(place) }) : answer(row);
}

/** The places of charts, as a sentence lists them. */
export const placesText = (charts: readonly Chart[]): string =>
  namesText([...new Set(charts.flatMap(({ rows }) => rows.map(({ place }) => placeName(place))))]);

/**
 * The same in a row that is known already, for a measure in the chart's unit.
 *
 * @param bare whether the measure's unit is only supposed, so that centimetres may stand against inches
 */
export function matchInRow(
  chart: Chart,
  row: ChartRow,
  measure: number,
  rule: MatchRule = "closest",
  bare = false,
): Result<SizeMatch> {
  const matched = stepInRow(chart, row, measure, rule, bare);
  if (!matched.ok) return matched;
  const { found, steps } = matched.value;
  const figure = row.values[found.index];
  if (figure === null || figure === undefined || isFault(figure)) throw new RangeError("a step without a figure");
  const nearest = Math.min(Math.max(measure, found.low), found.high);
  const beyond = measure < steps[0]!.low - TOLERANCE ? "below" : isAbove(steps.at(-1)!, measure) ? "above" : null;
  const difference = clean(measure - nearest) + 0;
  return answer({ index: found.index, size: chart.sizes[found.index]!, figure, measure, difference, beyond });
}

/** Only the size's column, for answers about thousands of bodies. */
export function columnInRow(
  chart: Chart,
  row: ChartRow,
  measure: number,
  rule: MatchRule,
  bare: boolean,
): Result<number> {
  const matched = stepInRow(chart, row, measure, rule, bare);
  return matched.ok ? answer(matched.value.found.index) : matched;
}

function stepInRow(
  chart: Chart,
  row: ChartRow,
  measure: number,
  rule: MatchRule,
  bare: boolean,
): Result<{ readonly found: Step; readonly steps: readonly Step[] }> {
  const scale = scaleOf(chart, row);
  if (!scale.ok) return scale;
  const { steps } = scale.value;
  const next = steps.findIndex(({ low }) => low > measure + TOLERANCE);
  const upper = next < 0 ? steps.length : next;
  const found = step(scale.value, measure, upper, rule);
  if (found === "hole") return { ok: false, problem: steps[upper]!.hole! };
  if (found === undefined) return offChart(chart, row, scale.value, measure, bare);
  return answer({ found, steps });
}

const holds = ({ low, high, halfOpen }: Step, measure: number): boolean =>
  measure >= low - TOLERANCE && (halfOpen ? measure < high - TOLERANCE : measure <= high + TOLERANCE);
const isAbove = ({ high, halfOpen }: Step, measure: number): boolean =>
  halfOpen ? measure >= high - TOLERANCE : measure > high + TOLERANCE;

/** The step that answers; `upper` is the first one that begins above the measure. */
function step(scale: Scale, measure: number, upper: number, rule: MatchRule): Step | "hole" | undefined {
  const { steps, endStep, unreadable } = scale;
  const [before, after] = [steps[upper - 1], steps[upper]];
  if (before && holds(before, measure)) return rule === "atleast" ? firstHolding(steps, measure) : before;
  if (before && after) {
    if (after.hole) return "hole";
    if (rule !== "closest") return rule === "atleast" ? after : before;
    const ranges = before.high > before.low || after.high > after.low;
    return ranges || after.low - measure <= measure - before.high + TOLERANCE ? after : before;
  }
  if (after) {
    const away = after.low - measure;
    if (rule === "atmost" || unreadable.below) return undefined;
    if (rule === "atleast") return away <= endStep.below + TOLERANCE ? firstHolding(steps, after.low) : undefined;
    return !after.halfOpen && away <= endStep.below / 2 + TOLERANCE ? lastBeginning(steps, after.low) : undefined;
  }
  if (!before || rule === "atleast" || unreadable.above) return undefined;
  const away = measure - before.high;
  if (rule === "atmost") return away <= endStep.above + TOLERANCE ? before : undefined;
  return !before.halfOpen && away <= endStep.above / 2 + TOLERANCE ? before : undefined;
}

/** The smallest size that reaches the measure: of equal figures the first. */
function firstHolding(steps: readonly Step[], measure: number): Step | undefined {
  return steps.find((step) => holds(step, measure));
}
/** Of equal figures the larger size: a tie. */
function lastBeginning(steps: readonly Step[], low: number): Step | undefined {
  return steps.filter((step) => step.low <= low + TOLERANCE).at(-1);
}

function offChart(
  chart: Chart,
  row: ChartRow,
  { steps, unreadable, endStep }: Scale,
  measure: number,
  bare: boolean,
): Result<never> {
  const [first, last] = [steps[0]!, steps.at(-1)!];
  const below = measure < first.low;
  const problem = below ? unreadable.below : unreadable.above;
  if (problem) return { ok: false, problem };
  const ends = { low: first.low, high: last.high };
  if (bare && looksConverted(measure, ends, endStep, chart.unit))
    return refuse("cmAgainstInches", {
      found: formatLength(measure, null),
      against: `${spanText(ends, chart.unit)}${chart.unit ? ` ${chart.unit}` : ""} on the chart`,
    });
  const end = below ? first : last;
  const figure = row.values[end.index]!;
  const text = isSpan(figure)
    ? `${spanText(end, chart.unit)} ${chart.unit ?? ""}`.trim()
    : formatLength(end.low, chart.unit);
  const by = clean(below ? first.low - measure : measure - last.high);
  return refuse(below ? "belowChart" : "aboveChart", {
    measure: formatLength(measure, chart.unit),
    place: placeName(row.place),
    by: by === 0 ? "just" : formatLength(by, chart.unit),
    end: `size ${chart.sizes[end.index]} (${text})`,
  });
}

/** Two to three times off the chart, or on it when read in the other unit. */
function looksConverted(
  measure: number,
  { low, high }: { readonly low: number; readonly high: number },
  step: Scale["endStep"],
  unit: Chart["unit"],
): boolean {
  const times = measure > high ? measure / high : low / measure;
  if (times >= 2 && times <= 3) return true;
  const other = measure > high ? (unit === "cm" ? null : measure / 2.54) : unit === "in" ? null : measure * 2.54;
  return other !== null && other >= low - step.below && other <= high + step.above;
}

/**
 * The rule that a word names; a blank is closest.
 *
 * @example readMatchRule("At least") //=> { ok: true, value: "atleast" }
 */
export function readMatchRule(text: string): Result<MatchRule> {
  if (text === "") return answer("closest");
  const key = labelKey(text).replaceAll("-", "");
  const rule = MATCH_RULES.find((known) => known === key);
  return rule ? answer(rule) : refuse("unknownRule", { text, known: "closest, atleast or atmost" });
}
