import { formatLength } from "../length/format";
import { convert } from "../length/length";
import { clean, TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import { answer, refuse, type Result } from "../problem";
import type { BodyUnit, Place } from "../chart/model";
import { bandPlace, printedBand } from "./bands";
import type { Garment } from "./garments";
import { leastEase } from "./least-ease";
import { readGarment } from "./read-garment";
import { noSettings, ruleFor, TERMS, type Band, type Settings, type Term } from "./settings";

export const SMALLER_THAN_BODY = "smaller than the body: stretch knits only";

/** What a fit word needs besides the ease. */
export interface TermOptions {
  /** What the ease is in; inches unless given. */
  readonly unit?: BodyUnit | undefined;
  readonly settings?: Settings | undefined;
  readonly person?: string | null | undefined;
}

/**
 * How loose a garment is, in the catalogue's words: close-fitting, fitted, semi-fitted, loose-fitting or very
 * loose-fitting, by the ease at the bust (skirts, trousers and shorts: at the hip). Where no bands are printed the word
 * is "enough" or "tight" by the least ease. Ease below zero is "smaller than the body: stretch knits only".
 *
 * The ease is rounded to the nearest 1/8 in first, ties upward, centimetres too. A bound belongs to the lower band.
 * Refuses an ease in no band (a jacket with 2 in), and a place where neither bands nor a least ease are known.
 *
 * Source: see `bands` (from memory) and `leastEase`.
 *
 * @example fitTerm(2.9, "blouse", "bust") //=> { ok: true, value: "close-fitting" }
 */
export function fitTerm(ease: number, garment: string, place: Place, options: TermOptions = {}): Result<string> {
  if (!Number.isFinite(ease)) return refuse("notANumber", { text: String(ease), wanted: "an ease" });
  const known = readGarment(garment, options.settings);
  return known.ok ? termOf(ease, known.value, place, options) : known;
}

/** `fitTerm` for a garment that is known already. */
export function termOf(ease: number, garment: Garment, place: Place, options: TermOptions = {}): Result<string> {
  const { unit = "in", settings = noSettings, person } = options;
  if (rounded(ease, unit, "in") < 0) return answer(SMALLER_THAN_BODY);
  const found = TERMS.map((term) => [term, bandOf(garment, place, term, { settings, person })] as const);
  if (found.every(([, band]) => band === null)) {
    const least = leastEase(garment, place, unit, settings);
    if (!least) return refuse("noLeastEase", { place: placeName(place), garment: garment.name });
    return answer(ease >= least.value - TOLERANCE ? "enough" : "tight");
  }
  const term = found.find(([, band]) => band && within(rounded(ease, unit, band.unit), band))?.[0];
  if (term !== undefined) return answer(term);
  return refuse("noBand", { ease: formatLength(ease, unit), garment: garment.name, place: placeName(place) });
}

interface OwnBand extends Band {
  readonly unit: BodyUnit;
}

/** Her band, or ours. */
function bandOf(garment: Garment, place: Place, term: Term, { settings, person }: TermOptions): OwnBand | null {
  const rule = settings && ruleFor(settings.bands, term, { garment: garment.key, place, person });
  if (rule) return { ...rule.value, unit: rule.unit };
  if (garment.bands === null || place !== bandPlace(garment.bands)) return null;
  const band = printedBand(garment.bands, term);
  return band && { ...band, unit: "in" };
}

const within = (ease: number, { low, high }: Band): boolean =>
  high === null ? ease > low : ease >= low && ease <= high;

/** Eighths of an inch, or millimetres for bands in centimetres: what ease is printed in. Ties upward. */
function rounded(ease: number, from: BodyUnit, to: BodyUnit): number {
  const parts = to === "in" ? 8 : 10;
  return Math.floor(clean(convert(ease, from, to) * parts) + 0.5) / parts;
}

/**
 * The band of ease that a fit word stands for, in words: "3 to 4 in", "over 8 in"; in centimetres rounded to the
 * millimetre. Refuses a word that is no fit word, and one that has no band for this garment and place.
 *
 * @example easeBand("blouse", "bust", "fitted") //=> { ok: true, value: "3 to 4 in" }
 */
export function easeBand(garment: string, place: Place, term: string, options: TermOptions = {}): Result<string> {
  const { unit = "in" } = options;
  const known = readGarment(garment, options.settings);
  if (!known.ok) return known;
  const word = TERMS.find((one) => letters(one) === letters(term));
  if (term.trim() === "") return refuse("blank", { wanted: "a fit word, such as fitted" });
  if (word === undefined) return refuse("unknownTerm", { text: term.trim(), known: TERMS.join(", ") });
  const band = bandOf(known.value, place, word, options);
  if (!band) return refuse("noBandForTerm", { term: word, garment: known.value.name, place: placeName(place) });
  const end = (value: number) => formatLength(band.unit === unit ? value : rounded(value, band.unit, unit), unit);
  if (band.high === null) return answer(`over ${end(band.low)}`);
  return answer(`${end(band.low).replace(/ \w+$/, "")} to ${end(band.high)}`);
}

const letters = (text: string): string => text.toLowerCase().replace(/[\s-]/g, "").replace(/fit$/, "fitting");
