import { formatLength } from "../length/format";
import { TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import { answer, refuse, type Problem, type Result } from "../problem";
import type { Body, Place } from "../chart/model";
import { leastAt, sizeOf, type Fitting } from "./fitting";
import { frameOf, type Frame } from "./frame";
import type { LeastEase } from "./least-ease";
import { measureOf, neededMeasure } from "./measures";

/** A governing place of one body. */
export interface JudgedPlace {
  readonly place: Place;
  readonly measure: number;
  /** The size by the body chart alone; a problem where it lies off the chart. */
  readonly byBody: number | Problem;
  /** What the place was judged by: finished measurements, the body chart, the bust adjustment, or not at all. */
  readonly by: "finished" | "body" | "adjustment" | "nothing";
  readonly least: LeastEase | undefined;
}

/** One body on one chart: the frame size, the size to cut, and what was looked at. */
export interface Judgement {
  readonly frame: Frame;
  /** The size to cut in one piece, or why no size will do; a blend may still. */
  readonly cut: Result<number>;
  readonly places: readonly JudgedPlace[];
  /** Governing places that the chart doesn't print. */
  readonly unprinted: readonly Place[];
  /** Whether the finished measurements say anything about a governing place. */
  readonly byFinished: boolean;
}

/** The choice that `cutSize` gives and `cutNote` explains; see there for the rule. */
export function judge(fitting: Fitting, body: Body): Result<Judgement> {
  const frame = frameOf(fitting, body);
  if (!frame.ok) return frame;
  const measured = governing(fitting, body);
  if (!measured.ok) return measured;
  const { found, unprinted } = measured.value;
  const adjusted = (place: Place) => place === "bust" && frame.value.bust?.decidedBy === "highBust";
  const byFinished = found.some(({ place }) => fitting.finished?.has(place));
  const places: JudgedPlace[] = [];
  let largest: Result<number> = answer(frame.value.index);
  for (const { place, measure } of found) {
    const byBody = sizeOf(fitting, body, place, measure);
    if (!byBody.ok && !offChart(byBody.problem)) return byBody;
    let by: JudgedPlace["by"] = "nothing";
    let least: LeastEase | undefined;
    if (adjusted(place)) {
      by = "adjustment";
    } else if (!byFinished) {
      by = "body";
      if (!byBody.ok) largest = byBody;
      else if (largest.ok && byBody.value > largest.value) largest = byBody;
    } else if (fitting.finished!.has(place)) {
      const known = leastAt(fitting, place, measure, body.name);
      if (!known.ok) return known;
      least = known.value;
      if (least) by = "finished";
    }
    places.push({ place, measure, byBody: byBody.ok ? byBody.value : byBody.problem, by, least });
  }
  const cut = byFinished ? stepUp(fitting, places, frame.value.index) : largest;
  return answer({ frame: frame.value, cut, places, unprinted, byFinished });
}

export const offChart = ({ code }: Problem): boolean => code === "aboveChart" || code === "belowChart";

interface Measured {
  readonly place: Place;
  readonly measure: number;
}

/** The governing places that the chart prints, each with the body's measure; of places that stand for one another, the one there is. */
function governing(
  { chart, printed, garment, finished }: Fitting,
  body: Body,
): Result<{ readonly found: readonly Measured[]; readonly unprinted: readonly Place[] }> {
  const found: Measured[] = [];
  const unprinted: Place[] = [];
  for (const group of garment.governs) {
    let first: Place | undefined;
    let chosen: Measured | undefined;
    for (const place of group) {
      if (!printed.has(place)) continue;
      first ??= place;
      const measure = measureOf(body, place, chart.unit);
      if (!measure.ok) return measure;
      if (measure.value === undefined) continue;
      if (!chosen || (finished?.has(place) && !finished.has(chosen.place))) chosen = { place, measure: measure.value };
    }
    if (first === undefined) unprinted.push(group[0]!);
    else if (!chosen) return neededMeasure(body, first, chart.unit) as Result<never>;
    else found.push(chosen);
  }
  return answer({ found, unprinted });
}

/** From the frame size upward, the first size with enough ease wherever it is judged. */
function stepUp(fitting: Fitting, places: readonly JudgedPlace[], from: number): Result<number> {
  const { chart, finished, unit } = fitting;
  for (let index = from; ; index++) {
    let tight: { place: Place; ease: number; least: number } | undefined;
    for (const { place, measure, least } of places) {
      if (!least) continue;
      const figure = finished!.at(place, index);
      if (!figure.ok) return figure;
      const ease = figure.value - measure;
      if (ease < least.value - TOLERANCE) tight ??= { place, ease, least: least.value };
    }
    if (!tight) return answer(index);
    if (index >= chart.sizes.length - 1)
      return refuse("tightEverywhere", {
        size: chart.sizes[index]!,
        place: placeName(tight.place),
        ease: formatLength(tight.ease, unit),
        wanted: formatLength(tight.least, unit),
        lacking: formatLength(tight.least - tight.ease, unit),
      });
  }
}
