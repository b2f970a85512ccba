import { convert } from "../length/length";
import { TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import type { Body, Place } from "../chart/model";
import type { BlendGirth } from "./blend-girths";
import { FRAME_PLACES, LENGTHS } from "./body-order";
import { betweenSizes, type Fitting } from "./fitting";
import type { Judgement } from "./judge";
import { aSize, easeOf, spoken } from "./lengths";
import { listed } from "../words/sentences";
import type { BetweenSizes } from "./settings";

/** A judgement with a size to cut. */
export type Decided = Omit<Judgement, "cut"> & { readonly cut: number };

/** What the answer doesn't know. */
export function uncheckedWords(fitting: Fitting, judgement: Decided, girths: readonly BlendGirth[]): string {
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
      typeof byBody === "number"
        ? `; by the body chart it is ${aSize(chart.sizes[byBody]!)}`
        : "; it is off the body chart";
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
      !governs &&
      !FRAME_PLACES.includes(place) &&
      !LENGTHS.includes(place) &&
      reason !== "frame" &&
      reason !== "bust adjustment",
  );
  const seen = others.map(({ place, measure, least }) => {
    const figure = measure !== null && finished?.has(place) ? finished.at(place, judgement.cut) : undefined;
    return { place, least, ease: figure?.ok ? figure.value - measure! : undefined };
  });
  const unknown = seen.filter(({ ease }) => ease === undefined).map(({ place }) => place);
  if (unknown.length > 0) sentences.push(`${begin(names(unknown))} ${unknown.length > 1 ? "are" : "is"} not checked.`);
  for (const { place, ease, least } of seen) {
    if (ease === undefined) continue;
    const tight = least && ease < least.value - TOLERANCE;
    sentences.push(
      `The ${placeName(place)} has ${easeOf(ease, unit)}${tight ? `, and the least is ${spoken(least.value, unit)}: blend there` : ""}.`,
    );
  }
  const views = finished && judgement.places.flatMap(({ place }) => finished.views(place));
  if (views && views.length > 0) sentences.push(`The closest of views ${listed([...new Set(views)])} counts.`);
  return sentences.join(" ");
}

const BETWEEN: Readonly<Record<BetweenSizes, string>> = {
  closest: "Between two sizes the closest is taken, and of two as close the larger.",
  larger: "Between two sizes the larger is taken, as your settings say.",
  smaller: "Between two sizes the smaller is taken, as your settings say.",
};

/** The rules that others would have otherwise. */
export function ruleWords(fitting: Fitting, body: Body, { places, frame }: Decided): string {
  const { garment, unit } = fitting;
  const sentences: string[] = [];
  if (places.some(({ by, least, place }) => place === "bust" && by === "finished" && least!.from === "default")) {
    const [own, from, to] = [2.5, 1.5, 4].map((value) => convert(value, "in", unit ?? "in"));
    sentences.push(
      `The least ease at the bust is ours, ${spoken(own!, unit)}; published ones run from ${spoken(from!, unit).replace(/ \w+$/, "")} to ${spoken(to!, unit)}.`,
    );
  }
  if (!garment.ownEase && places.some(({ least }) => least?.from === "default"))
    sentences.push(`A ${garment.name} has no least ease of its own in print; that of a dress is used.`);
  if (garment.bands === "skirt" && garment.frame[0] === "hip" && frame.place === "hip")
    sentences.push("By the hip, as most books say; some go by the waist.");
  sentences.push(BETWEEN[betweenSizes(fitting, frame.place, body.name)]);
  return sentences.join(" ");
}
