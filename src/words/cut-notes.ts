/** What the note beside the size to cut says, and that of a bust adjustment. Figures come as text with their unit. */
import { adjustmentKind, aSize } from "./fit-notes";
import { capital, inARow, listed } from "./sentences";

const thePlaces = (names: readonly string[]): string => listed(names.map((name) => `the ${name}`));

/** A size of a blend that reaches beyond its figure, or stays inside. */
export const sizeReached = (label: string, reach: number): string =>
  `${label}${reach === 0 ? "" : reach > 0 ? " and a little more" : " and a little less"}`;
export const blendFitsBetter = (placesOfSizes: ReadonlyMap<string, readonly string[]>): string =>
  `A blend fits better: ${listed([...placesOfSizes].map(([label, names]) => `${label} at the ${names.join(" and the ")}`))}.`;

/** What to cut, behind the blend or alone; the sentence goes on with one of the next. */
export const cutThis = (behindBlend: boolean, what: string): string =>
  `${behindBlend ? "In one piece cut" : "Cut"} ${what}`;
export const sizeByPlaces = (label: string, names: readonly string[]): string =>
  `size ${label}, by the ${listed(names)}.`;
export const sizeByLargest = (label: string, sizeAtPlaces: readonly (readonly [name: string, own: string])[]): string =>
  `size ${label}: by the body chart ${listed(sizeAtPlaces.map(([name, own]) => `the ${name} is ${aSize(own)}`))}, and the largest decides.`;
export const sizeOfFrame = (label: string, frameBy: string): string =>
  `size ${label}, the frame size by the ${frameBy}.`;
export const frameHasEnough = (label: string, frameBy: string, held: readonly string[]): string =>
  inARow(sizeOfFrame(label, frameBy), `It has enough ease: ${listed(held)}.`);
export const firstHasEnough = (label: string, frameBy: string, frameLabel: string, held: readonly string[]): string =>
  `size ${label}. The frame size by the ${frameBy} is ${frameLabel}; ${label} is the first with enough ease: ${listed(held)}.`;
export const easeAtPlace = (held: string, name: string): string => `${held} at the ${name}`;

/** The bust adjustment, and the ease that the bust then has. */
export const needsNothingIn = (label: string): string => `In size ${label} the bust needs no adjustment.`;
export const adjustIn = (label: string, full: boolean, whole: string, oneHalf: string): string =>
  `In size ${label} it wants a ${adjustmentKind(full)} of ${whole}, ${oneHalf} on the half front piece.`;
/** `short` is what lacks of the least ease; "" for nothing. */
export const bustThenHas = (held: string, short: string): string =>
  `So the bust has the pattern's own ${held}${short === "" ? "" : `, ${short} below the least: make the adjustment so much larger`}.`;

/** What isn't checked. */
export function notChecked(names: readonly string[], onChart: boolean): string {
  if (names.length === 0) return "";
  const several = names.length > 1;
  return `${capital(thePlaces(names))} ${several ? "are" : "is"} not checked${onChart ? "" : `: the chart doesn't print ${several ? "them" : "it"}`}.`;
}
export const noDecidingFinished =
  "The finished measurements print none of the places that decide, so the ease isn't checked.";
export const noFinished = "Without finished measurements the ease isn't checked.";
/** `own` is the size by the body chart; undefined off the chart. */
export const notFinished = (name: string, own: string | undefined): string =>
  `The ${name} is not checked: the finished measurements don't print it; ${own === undefined ? "it is off the body chart" : `by the body chart it is ${aSize(own)}`}.`;
export const nothingAskedOfKnit =
  "Nothing is asked of a knit: the size is the pattern's own, so measure how far the cloth stretches.";
export const noLeastEase = (names: readonly string[]): string =>
  `No least ease is known at ${thePlaces(names)}, so it isn't checked.`;
/** `atLeast` is the least ease where this is less; "" otherwise. */
export const placeHas = (name: string, held: string, atLeast: string): string =>
  `The ${name} has ${held}${atLeast === "" ? "" : `, and the least is ${atLeast}: blend there`}.`;
export const closestView = (letters: readonly string[]): string => `The closest of views ${listed(letters)} counts.`;

/** The rules that others would have otherwise. */
export const leastIsOurs = (our: string, lowest: string, highest: string): string =>
  `The least ease at the bust is ours, ${our}; published ones run from ${lowest} to ${highest}.`;
export const noEaseInPrint = (called: string): string =>
  `A ${called} has no least ease of its own in print; that of a dress is used.`;
export const byHip = "By the hip, as most books say; some go by the waist.";
export const betweenSizes = {
  closest: "Between two sizes the closest is taken, and of two as close the larger.",
  larger: "Between two sizes the larger is taken, as your settings say.",
  smaller: "Between two sizes the smaller is taken, as your settings say.",
} as const;

/** How a size came from the bust and the high bust. */
export const byBust = (over: string, limit: string): string =>
  `By the bust: ${over} over the high bust is below the threshold of ${limit}.`;
export const byHighBust = "The high bust decides.";
export const byHighBustFrom = (limit: string): string => `The high bust decides, from ${limit} difference.`;
export const readInHighBust = "Read in the chart's high bust row, closest size.";
export const readInBust = (added: string): string =>
  `Read in the bust row with ${added} added for the drafted difference, closest size.`;
export const needsNothing = "The bust needs no adjustment.";
export const adjustHalfFront = (full: boolean, oneHalf: string): string =>
  `${capital(adjustmentKind(full))}: ${full ? "add" : "take out"} ${oneHalf} on the half front piece.`;
export const swapped = "The high bust is larger than the bust: were the two swapped?";
