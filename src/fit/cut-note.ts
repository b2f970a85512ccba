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
import { adjustmentKind, aSize, easeOf, spoken } from "./lengths";
import { bodyFigure } from "./measures";
import { inARow, listed } from "../words/sentences";

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
    `${first === "" ? "Cut" : "In one piece cut"} ${cutWords(fitting, judgement)}`,
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
  const groups: string[] = [];
  for (const { index, place, beyond } of counted) {
    const size = `${chart.sizes[index!]!}${beyond === 0 ? "" : beyond > 0 ? " and a little more" : " and a little less"}`;
    const at = groups.findIndex((group) => group.startsWith(`${size} at the `));
    if (at >= 0) groups[at] += ` and the ${placeName(place)}`;
    else groups.push(`${size} at the ${placeName(place)}`);
  }
  return `A blend fits better: ${listed(groups)}.`;
}

function cutWords(fitting: Fitting, { frame, cut, places, byFinished }: Decided): string {
  const { chart, unit } = fitting;
  const size = (index: number) => chart.sizes[index]!;
  const by = placeName(frame.place);
  if (!byFinished) {
    const judged = places.filter((place) => place.by === "body");
    if (judged.every(({ byBody }) => byBody === cut) && frame.index === cut)
      return `size ${size(cut)}, by the ${listed([...new Set([by, ...judged.map(({ place }) => placeName(place))])])}.`;
    const each = judged.map(({ place, byBody }) => `the ${placeName(place)} is ${aSize(size(byBody as number))}`);
    const frames = judged.some(({ place }) => place === frame.place)
      ? []
      : [`the ${by} is ${aSize(size(frame.index))}`];
    return `size ${size(cut)}: by the body chart ${listed([...frames, ...each])}, and the largest decides.`;
  }
  const eases = places.filter(({ by: how }) => how === "finished").map((place) => easeWords(fitting, place, cut));
  if (eases.length === 0) return `size ${size(cut)}, the frame size by the ${by}.`;
  if (cut === frame.index)
    return `size ${size(cut)}, the frame size by the ${by}. It has enough ease: ${listed(eases)}.`;
  return `size ${size(cut)}. The frame size by the ${by} is ${size(frame.index)}; ${size(cut)} is the first with enough ease: ${listed(eases)}.`;

  function easeWords({ finished }: Fitting, { place, measure }: JudgedPlace, index: number): string {
    const figure = finished!.at(place, index);
    // The size was chosen by these very figures, so they are there.
    const ease = figure.ok ? figure.value - measure : 0;
    return `${easeOf(ease, unit).replace(/ of ease$/, "")} at the ${placeName(place)}`;
  }
}

/** The adjustment in the frame size, in the size to cut where that is another, and the ease the bust then has. */
function bustWords(fitting: Fitting, body: Body, { frame, cut }: Decided): string {
  const { chart, unit, finished } = fitting;
  const { bust } = frame;
  if (!bust) return "";
  if (bust.decidedBy === "bust") return bust.note;
  const sentences = [`In size ${bust.size} ${adjustmentWords(bust.adjustment, unit)}.`];
  const measure = bust.patternBust + bust.adjustment;
  const patternBust = bodyFigure(chart, "bust", cut);
  if (!patternBust.ok) return sentences[0]!;
  if (cut !== frame.index)
    sentences.push(`In size ${chart.sizes[cut]!} ${adjustmentWords(measure - patternBust.value, unit)}.`);
  const figure = finished?.has("bust") ? finished.at("bust", cut) : undefined;
  if (!figure?.ok) return sentences.join(" ");
  const ease = figure.value - patternBust.value;
  const least = leastAt(fitting, "bust", measure, body.name);
  const lacking = least.ok && least.value ? least.value.value - ease : 0;
  sentences.push(
    lacking > TOLERANCE
      ? `So the bust has the pattern's own ${easeOf(ease, unit)}, ${spoken(lacking, unit)} below the least: make the adjustment so much larger.`
      : `So the bust has the pattern's own ${easeOf(ease, unit)}.`,
  );
  return sentences.join(" ");
}

function adjustmentWords(adjustment: number, unit: Fitting["unit"]): string {
  if (sameFigure(adjustment, 0)) return "the bust needs no adjustment";
  const whole = Math.abs(adjustment);
  return `it wants a ${adjustmentKind(adjustment)} of ${spoken(whole, unit)}, ${spoken(whole / 2, unit)} on the half front piece`;
}
