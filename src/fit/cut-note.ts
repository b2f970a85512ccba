import { convert } from "../length/length";
import { TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import { answer, type Result } from "../problem";
import type { Body, Chart, Place } from "../chart/model";
import { blendGirths, type BlendGirth } from "./blend-girths";
import { FRAME_PLACES, LENGTHS } from "./body-order";
import { figureTypeNote } from "./figure-type";
import { fitting, type Fitting, type FitOptions } from "./fitting";
import { judge, type Judgement, type JudgedPlace } from "./judge";
import { spoken } from "./lengths";
import { listed } from "./listed";

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
    const girths = blendGirths(ready.value, body, judged.value);
    return girths.ok ? answer(noteOf(ready.value, body, judged.value, girths.value)) : girths;
  });
}

function noteOf(fitting: Fitting, body: Body, judgement: Judgement, girths: readonly BlendGirth[]): string {
  const first = blendWords(fitting, girths);
  const parts = [
    first,
    `${first === "" ? "Cut" : "In one piece cut"} ${cutWords(fitting, judgement)}`,
    bustWords(fitting, judgement),
    uncheckedWords(fitting, judgement, girths),
    ruleWords(fitting, judgement),
    figureTypeNote(fitting.chart, body, judgement.frame.index),
  ];
  return parts.filter((part) => part !== "").join(" ");
}

/** The blend, where the places that this garment is judged by want different sizes. */
function blendWords({ chart }: Fitting, girths: readonly BlendGirth[]): string {
  const counted = girths.filter(
    (girth) => girth.index !== null && (girth.governs || girth.least) && !FRAME_PLACES.includes(girth.place),
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

function cutWords(fitting: Fitting, { frame, cut, places, byFinished }: Judgement): string {
  const { chart, unit } = fitting;
  const size = (index: number) => chart.sizes[index]!;
  const by = frame.place === "highBust" ? "high bust" : placeName(frame.place);
  if (!byFinished) {
    const judged = places.filter((place) => place.by === "body");
    if (judged.every(({ byBody }) => byBody === cut) && frame.index === cut)
      return `size ${size(cut)}, by the ${listed([...new Set([by, ...judged.map(({ place }) => placeName(place))])])}.`;
    const each = judged.map(({ place, byBody }) => `the ${placeName(place)} is a ${size(byBody as number)}`);
    const frames = judged.some(({ place }) => place === frame.place) ? [] : [`the ${by} is a ${size(frame.index)}`];
    return `size ${size(cut)}: by the body chart ${listed([...frames, ...each])}, and the largest decides.`;
  }
  const eases = places.filter(({ by: how }) => how === "finished").map((place) => easeWords(fitting, place, cut));
  if (eases.length === 0) return `size ${size(cut)}, the frame size by the ${by}.`;
  if (cut === frame.index)
    return `size ${size(cut)}, the frame size by the ${by}. It has enough ease: ${listed(eases)}.`;
  return `size ${size(cut)}. The frame size by the ${by} is ${size(frame.index)}; ${size(cut)} is the first with enough ease: ${listed(eases)}.`;

  function easeWords({ finished }: Fitting, { place, measure }: JudgedPlace, index: number): string {
    const figure = finished!.at(place, index);
    const ease = figure.ok ? spoken(figure.value - measure, unit) : "some";
    return `${ease} at the ${placeName(place)}`;
  }
}

function bustWords({ unit }: Fitting, { frame: { bust } }: Judgement): string {
  if (!bust) return "";
  if (bust.decidedBy === "bust") return bust.note;
  if (bust.adjustment === 0) return "The bust needs no adjustment.";
  const kind = bust.adjustment > 0 ? "full-bust" : "small-bust";
  return `It wants a ${kind} adjustment of ${spoken(Math.abs(bust.adjustment), unit)}, ${spoken(Math.abs(bust.half), unit)} on the half front piece; the bust then has the pattern's own ease.`;
}

/** What the answer doesn't know. */
function uncheckedWords(fitting: Fitting, judgement: Judgement, girths: readonly BlendGirth[]): string {
  const { garment, finished, unit, chart } = fitting;
  const sentences: string[] = [];
  const names = (places: readonly Place[]) => listed(places.map((place) => `the ${placeName(place)}`));
  const begin = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
  if (judgement.unprinted.length > 0)
    sentences.push(
      `${begin(names(judgement.unprinted))} ${judgement.unprinted.length > 1 ? "are" : "is"} not checked: the chart doesn't print ${judgement.unprinted.length > 1 ? "them" : "it"}.`,
    );
  if (!judgement.byFinished)
    sentences.push(
      finished
        ? "The finished measurements print none of the places that decide, so the ease isn't checked."
        : "Without finished measurements the ease isn't checked.",
    );
  const nothing = judgement.places.filter(({ by, place }) => by === "nothing" && !finished?.has(place));
  for (const { place, byBody } of nothing) {
    const own =
      typeof byBody === "number" ? `; by the body chart it is a ${chart.sizes[byBody]!}` : "; it is off the body chart";
    sentences.push(`The ${placeName(place)} is not checked: the finished measurements don't print it${own}.`);
  }
  const noLeast = judgement.places.filter(({ by, place }) => by === "nothing" && finished?.has(place));
  if (noLeast.length > 0)
    sentences.push(
      garment.cloth === "knit"
        ? "Nothing is asked of a knit: the size is the pattern's own, so measure how far the cloth stretches."
        : `No least ease is known at ${names(noLeast.map(({ place }) => place))}, so it isn't checked.`,
    );
  const others = girths.filter(
    ({ governs, place, reason }) =>
      !governs && !FRAME_PLACES.includes(place) && !LENGTHS.includes(place) && reason !== "frame",
  );
  const unknown = others.filter(({ ease }) => ease === undefined).map(({ place }) => place);
  if (unknown.length > 0) sentences.push(`${begin(names(unknown))} ${unknown.length > 1 ? "are" : "is"} not checked.`);
  for (const { place, measure, least } of others) {
    if (!finished?.has(place) || measure === null) continue;
    const figure = finished.at(place, judgement.cut);
    if (!figure.ok) continue;
    const ease = figure.value - measure;
    const tight = least && ease < least.value - TOLERANCE;
    sentences.push(
      `The ${placeName(place)} has ${ease < 0 ? `${spoken(-ease, unit)} less than the body` : `${spoken(ease, unit)} of ease`}${tight ? `, where ${spoken(least.value, unit)} are wanted: blend there` : ""}.`,
    );
  }
  const views = finished && judgement.places.flatMap(({ place }) => finished.views(place));
  if (views && views.length > 0) sentences.push(`The closest of views ${listed([...new Set(views)])} counts.`);
  return sentences.join(" ");
}

/** The rules that others would have otherwise. */
function ruleWords({ garment, unit }: Fitting, { places, frame }: Judgement): string {
  const sentences: string[] = [];
  if (
    frame.bust === undefined &&
    places.some(({ by, least, place }) => place === "bust" && by === "finished" && least!.from === "default")
  ) {
    const [own, from, to] = [2.5, 1.5, 4].map((value) => convert(value, "in", unit ?? "in"));
    sentences.push(
      `The least ease at the bust is ours, ${spoken(own!, unit)}; published ones run from ${spoken(from!, null)} to ${spoken(to!, unit)}.`,
    );
  }
  if (!garment.ownEase && places.some(({ least }) => least?.from === "default"))
    sentences.push(`A ${garment.name} has no least ease of its own in print; that of a dress is used.`);
  if (garment.bands === "skirt" && garment.frame[0] === "hip" && frame.place === "hip")
    sentences.push("By the hip, as most books say; some go by the waist.");
  sentences.push("Between two sizes the closest is taken, and of two as close the larger.");
  return sentences.join(" ");
}
