import { answer, type Result } from "../problem";
import type { Body, Place } from "../chart/model";
import { bustAdjust, type BustAdjustment, type HighBustRow } from "./bust-adjust";
import { betweenSizes, sizeOf, type Fitting } from "./fitting";
import { measureOf, neededMeasure, noPlace } from "./measures";
import { chartLength, ruleFor } from "./settings";
import { isBare } from "./size-at";

/** The frame size, and what set it. */
export interface Frame {
  readonly index: number;
  /** The place that set it; of several the one with the larger size. */
  readonly place: Place;
  /** Every place that was asked. */
  readonly asked: readonly Place[];
  /** Where the high bust was asked. */
  readonly bust?: BustAdjustment;
}

/**
 * The size that fits neck, shoulders and armholes, or whatever else is hardest to alter. Nothing is guessed: a frame
 * place that the chart prints and the body lacks is refused.
 */
export function frameOf(fitting: Fitting, body: Body): Result<Frame> {
  const { chart, garment, settings } = fitting;
  const where = { garment: garment.key, person: body.name };
  const rule = ruleFor(settings.words, "frame", where);
  const byBust = garment.frame[0] === "bust" && fitting.printed.has("bust");
  const own = rule && (rule.garment !== null || byBust) ? (rule.value as Place) : undefined;
  if (own === "highBust" || (byBust && own === undefined)) {
    const threshold = chartLength(settings, "threshold", where, chart.unit);
    if (!threshold.ok) return threshold;
    if (own === "highBust" || threshold.value !== undefined) return frameByHighBust(fitting, body, threshold.value);
  }
  const places = own === undefined ? garment.frame : [own];
  const printed = places.filter((place) => fitting.printed.has(place));
  if (printed.length === 0) return noPlace(chart, places[0]!);
  if (garment.frameTakes === "larger" && own === undefined) return largerOf(fitting, body, printed);
  for (const place of printed) {
    const measure = measureOf(body, place, chart.unit);
    if (!measure.ok) return measure;
    if (measure.value !== undefined) return frameAt(fitting, body, place);
  }
  return neededMeasure(body, printed[0]!, chart.unit) as Result<never>;
}

function frameAt(fitting: Fitting, body: Body, place: Place): Result<Frame> {
  const measure = neededMeasure(body, place, fitting.chart.unit);
  if (!measure.ok) return measure;
  const index = sizeOf(fitting, body, place, measure.value);
  return index.ok ? answer({ index: index.value, place, asked: [place] }) : index;
}

function largerOf(fitting: Fitting, body: Body, places: readonly Place[]): Result<Frame> {
  let largest: Frame | undefined;
  for (const place of places) {
    const frame = frameAt(fitting, body, place);
    if (!frame.ok) return frame;
    if (!largest || frame.value.index > largest.index) largest = frame.value;
  }
  return answer({ ...largest!, asked: places });
}

function frameByHighBust(fitting: Fitting, body: Body, threshold: number | undefined): Result<Frame> {
  const { chart, garment, settings } = fitting;
  const where = { garment: garment.key, person: body.name };
  const bust = neededMeasure(body, "bust", chart.unit);
  if (!bust.ok) return bust;
  const highBust = neededMeasure(body, "highBust", chart.unit);
  if (!highBust.ok) return highBust;
  const row = ruleFor(settings.words, "high bust row", where)?.value;
  const chartRow: HighBustRow | undefined = row === undefined ? undefined : row === "bust" ? "bust" : "highbust";
  const drafted = chartLength(settings, "drafted difference", where, chart.unit);
  if (!drafted.ok) return drafted;
  const found = bustAdjust(chart, bust.value, highBust.value, {
    threshold,
    chartRow,
    draftedDifference: drafted.value,
    between: betweenSizes(fitting, "bust", body.name),
    bare: isBare(body, "bust") || isBare(body, "highBust"),
  });
  if (!found.ok) return found;
  const place = found.value.decidedBy;
  return answer({ index: found.value.index, place, asked: ["highBust", "bust"], bust: found.value });
}
