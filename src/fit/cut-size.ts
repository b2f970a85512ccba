import { answer, type Result } from "../problem";
import type { Body, Chart } from "../chart/model";
import { fitting, type FitOptions } from "./fitting";
import { judge } from "./judge";

export interface CutSize {
  /** The one size to cut. */
  readonly size: string;
  /** The size of neck and shoulders (skirts and trousers: hip or waist); the size to cut is never below it. */
  readonly frame: string;
}

/**
 * The one size to cut for a body.
 *
 * First the frame size, the closest one: bust, or the high bust when the settings say so (tops, dresses, jackets, coats);
 * hip (skirts, trousers), waist (full skirts); chest or neck, the larger (men's shirts); chest, then height (children).
 * Without finished measurements then the largest of the sizes at the garment's governing places. With them, the frame
 * size, stepping up only while a governing place that both tables have has less than its least ease; a place that the
 * finished measurements don't print isn't judged (`cutNote` says so), and if they print none of them it is as without.
 * Never below the frame size. Ties and gaps between printed ranges go upward.
 *
 * With a bust adjustment the bust has the pattern's own ease, whatever the body: it is not judged again.
 *
 * Refuses what can't be known: a governing place that the chart prints and the body lacks, a measure off the chart (by
 * how much and which way), a chart without the frame place, ease too small even in the largest size.
 *
 * Source: governing places, see `garments`; own measure plus ease is the wanted pattern measure: Guides C-228 and C-220,
 * New Mexico State University (read). Stepping up from the frame size: common practice, no source.
 *
 * @example cutSize(misses, body34_28_40, "fitted dress") //=> { ok: true, value: { size: "16", frame: "12" } }
 */
export function cutSize(chart: Chart, body: Body, garment: string, options: FitOptions = {}): Result<CutSize> {
  const cutter = sizeCutter(chart, garment, options);
  return cutter.ok ? cutter.value(body) : cutter;
}

/** `cutSize` made ready for many bodies: chart, garment and settings are looked at once. */
export function sizeCutter(
  chart: Chart,
  garment: string,
  options: FitOptions = {},
): Result<(body: Body) => Result<CutSize>> {
  const ready = fitting(chart, garment, options);
  if (!ready.ok) return ready;
  const { sizes } = ready.value.chart;
  return answer((body) => {
    const judged = judge(ready.value, body);
    if (!judged.ok) return judged;
    const { cut, frame } = judged.value;
    return cut.ok ? answer({ size: sizes[cut.value]!, frame: sizes[frame.index]! }) : cut;
  });
}
