import { convert } from "../length/length";
import { TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import type { Body } from "../chart/model";
import type { BlendGirth } from "./blend-girths";
import { FRAME_PLACES, LENGTHS } from "./body-order";
import { betweenSizes, type Fitting } from "./fitting";
import type { Judgement } from "./judge";
import { bare, easeOf, spoken } from "./lengths";
import * as say from "../words/cut-notes";
import { inARow } from "../words/sentences";

/** A judgement with a size to cut. */
export type Decided = Omit<Judgement, "cut"> & { readonly cut: number };

/** What the answer doesn't know. */
export function uncheckedWords(fitting: Fitting, judgement: Decided, girths: readonly BlendGirth[]): string {
  const { garment, finished, unit, chart } = fitting;
  const nothing = judgement.places.filter(({ by, place }) => by === "nothing" && !finished?.has(place));
  const noLeast = judgement.places.filter(({ by, place }) => by === "nothing" && finished?.has(place));
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
  const unknown = seen.filter(({ ease }) => ease === undefined).map(({ place }) => placeName(place));
  const views = finished ? judgement.places.flatMap(({ place }) => finished.views(place)) : [];
  return inARow(
    say.notChecked(judgement.unprinted.map(placeName), false),
    judgement.byFinished ? "" : finished ? say.noDecidingFinished : say.noFinished,
    ...nothing.map(({ place, byBody }) =>
      say.notFinished(placeName(place), typeof byBody === "number" ? chart.sizes[byBody] : undefined),
    ),
    noLeast.length === 0
      ? ""
      : garment.cloth === "knit"
        ? say.nothingAskedOfKnit
        : say.noLeastEase(noLeast.map(({ place }) => placeName(place))),
    say.notChecked(unknown, true),
    ...seen.map(({ place, ease, least }) => {
      if (ease === undefined) return "";
      const tight = least && ease < least.value - TOLERANCE;
      return say.placeHas(placeName(place), easeOf(ease, unit), tight ? spoken(least.value, unit) : "");
    }),
    views.length > 0 ? say.closestView([...new Set(views)]) : "",
  );
}

/** The rules that others would have otherwise. */
export function ruleWords(fitting: Fitting, body: Body, { places, frame }: Decided): string {
  const { garment, unit } = fitting;
  const isOurs = places.some(
    ({ by, least, place }) => place === "bust" && by === "finished" && least!.from === "default",
  );
  const [own, from, to] = [2.5, 1.5, 4].map((value) => convert(value, "in", unit ?? "in"));
  return inARow(
    isOurs ? say.leastIsOurs(spoken(own!, unit), bare(from!, unit), spoken(to!, unit)) : "",
    !garment.ownEase && places.some(({ least }) => least?.from === "default") ? say.noEaseInPrint(garment.name) : "",
    garment.bands === "skirt" && garment.frame[0] === "hip" && frame.place === "hip" ? say.byHip : "",
    say.betweenSizes[betweenSizes(fitting, frame.place, body.name)],
  );
}
