import { sameFigure, TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import { answer, type Result } from "../problem";
import type { Body, Chart } from "../chart/model";
import { blendGirths, type BlendGirth } from "./blend-girths";
import { FRAME_PLACES } from "./body-order";
import { ruleWords, uncheckedWords, type Decided } from "./cut-note-limits";
import { figureTypeNote, tablesNote } from "./figure-type";
import { fitting, leastAt, type Fitting, type FitOptions } from "./fitting";
import { judge, type JudgedPlace } from "./judge";
import { easeOf, spoken } from "./lengths";
import { bodyFigure } from "./measures";
import * as say from "../words/cut-notes";
import { inARow } from "../words/sentences";

/**
 * The sentences that go with `cutSize`: the blend first where the places differ, then the one size and why, what was
 * checked, what isn't known (the hip of a hip-length top), and the rule. Refuses what `cutSize` refuses.
 *
 * @example cutNote(misses, body34_28_40, "shirt") //=> { ok: true, value: "Cut size 12, by the bust. …" }
 */
export function cutNote(chart: Chart, body: Body, garment: string, options: FitOptions = {}): Result<string> {
  const noter = noteCutter(chart, garment, options);
  return noter.ok ? noter.value(body) : noter;
}

/** `cutNote` made ready for many bodies. */
export function noteCutter(
  chart: Chart,
  garment: string,
  options: FitOptions = {},
): Result<(body: Body) => Result<string>> {
  const ready = fitting(chart, garment, options);
  if (!ready.ok) return ready;
  return answer((body) => {
    const judged = judge(ready.value, body);
    if (!judged.ok) return judged;
    if (!judged.value.cut.ok) return judged.value.cut;
    const cut = judged.value.cut.value;
    const girths = blendGirths(ready.value, body, judged.value);
    if (!girths.ok) return girths;
    const note = noteOf(ready.value, body, { ...judged.value, cut }, girths.value);
    const tables = tablesNote(chart, body, garment, options);
    return answer(inARow(note, tables));
  });
}

function noteOf(fitting: Fitting, body: Body, judgement: Decided, girths: readonly BlendGirth[]): string {
  const first = blendWords(fitting, girths);
  return inARow(
    first,
    say.cutThis(first !== "", cutWords(fitting, judgement)),
    bustWords(fitting, body, judgement),
    uncheckedWords(fitting, judgement, girths),
    ruleWords(fitting, body, judgement),
    fitting.garment.girths.includes("bust") ? figureTypeNote(fitting.chart, body, judgement.frame.index) : "",
  );
}

/** The blend, where the places that this garment is judged by want different sizes. */
function blendWords({ chart }: Fitting, girths: readonly BlendGirth[]): string {
  const counted = girths.filter(
    (girth) => girth.index !== null && (girth.close || girth.least) && !FRAME_PLACES.includes(girth.place),
  );
  const used = [...new Set(counted.map(({ index }) => index!))];
  if (used.length < 2 && !counted.some(({ beyond }) => beyond !== 0)) return "";
  const groups = new Map<string, string[]>();
  for (const { index, place, beyond } of counted) {
    const size = say.sizeReached(chart.sizes[index!]!, beyond);
    groups.set(size, [...(groups.get(size) ?? []), placeName(place)]);
  }
  return say.blendFitsBetter(groups);
}

function cutWords(fitting: Fitting, { frame, cut, places, byFinished }: Decided): string {
  const { chart, unit } = fitting;
  const size = (index: number) => chart.sizes[index]!;
  const by = placeName(frame.place);
  if (!byFinished) {
    const judged = places.filter((place) => place.by === "body");
    if (judged.every(({ byBody }) => byBody === cut) && frame.index === cut)
      return say.sizeByPlaces(size(cut), [...new Set([by, ...judged.map(({ place }) => placeName(place))])]);
    const each = judged.map(({ place, byBody }) => [placeName(place), size(byBody as number)] as const);
    const isJudged = judged.some(({ place }) => place === frame.place);
    return say.sizeByLargest(size(cut), isJudged ? each : [[by, size(frame.index)], ...each]);
  }
  const eases = places.filter(({ by: how }) => how === "finished").map((place) => easeWords(fitting, place, cut));
  if (eases.length === 0) return say.sizeOfFrame(size(cut), by);
  return cut === frame.index
    ? say.frameHasEnough(size(cut), by, eases)
    : say.firstHasEnough(size(cut), by, size(frame.index), eases);

  function easeWords({ finished }: Fitting, { place, measure }: JudgedPlace, index: number): string {
    const figure = finished!.at(place, index);
    // The size was chosen by these very figures, so they are there.
    const ease = figure.ok ? figure.value - measure : 0;
    return say.easeAtPlace(easeOf(ease, unit, true), placeName(place));
  }
}

/** The adjustment in the frame size, in the size to cut where that is another, and the ease the bust then has. */
function bustWords(fitting: Fitting, body: Body, { frame, cut }: Decided): string {
  const { chart, unit, finished } = fitting;
  const { bust } = frame;
  if (!bust) return "";
  if (bust.decidedBy === "bust") return bust.note;
  const inFrame = adjustmentWords(bust.size, bust.adjustment, unit);
  const measure = bust.patternBust + bust.adjustment;
  const patternBust = bodyFigure(chart, "bust", cut);
  if (!patternBust.ok) return inFrame;
  const inCut = cut === frame.index ? "" : adjustmentWords(chart.sizes[cut]!, measure - patternBust.value, unit);
  const figure = finished?.has("bust") ? finished.at("bust", cut) : undefined;
  if (!figure?.ok) return inARow(inFrame, inCut);
  const ease = figure.value - patternBust.value;
  const least = leastAt(fitting, "bust", measure, body.name);
  const lacking = least.ok && least.value ? least.value.value - ease : 0;
  return inARow(inFrame, inCut, say.bustThenHas(easeOf(ease, unit), lacking > TOLERANCE ? spoken(lacking, unit) : ""));
}

function adjustmentWords(size: string, adjustment: number, unit: Fitting["unit"]): string {
  if (sameFigure(adjustment, 0)) return say.needsNothingIn(size);
  const amount = Math.abs(adjustment);
  return say.adjustIn(size, adjustment > 0, spoken(amount, unit), spoken(amount / 2, unit));
}
