import { convert } from "../length/length";
import type { BodyUnit, Place } from "../chart/model";
import type { Garment } from "./garments";
import { ruleFor, settingLength, type Settings } from "./settings";

/**
 * The least ease that a garment of woven cloth wants, in inches.
 *
 * Common practice; published values at the bust run from 1 1/2 (Central Washington University, Ease in Clothing, read)
 * over 2 to 2 1/2 (Ease (sewing), Wikipedia, read) to 3 to 4 (New Mexico State University, Guide C-228, read); at the
 * waist 1/2 to 1, at the hip 2 to 3 (the same). A chest is judged as a bust.
 */
const LEAST_EASE: Readonly<Record<Place, number>> = { bust: 2.5, chest: 2.5, waist: 1, hip: 2 };

/** The least ease at a place and whose word it is. */
export interface LeastEase {
  readonly value: number;
  /** Ours, a row of the settings, or a garment of hers that fits. */
  readonly from: "default" | "settings" | "my garment";
}

/**
 * The least ease asked of a garment at a place, in `unit`; undefined where none is known: then nothing is judged there.
 * A row of the settings comes first, then a garment of hers that fits (its measurement less her body), then our figure
 * for wovens. Of a knit nothing is asked unless the settings do.
 *
 * @param body her measure there in `unit`; without it her garments say nothing
 * @example leastEase(shirt, "bust", "in", noSettings) //=> { value: 2.5, from: "default" }
 */
export function leastEase(
  garment: Garment,
  place: Place,
  unit: BodyUnit,
  settings: Settings,
  body?: { readonly measure: number; readonly person: string | null },
): LeastEase | undefined {
  const where = { garment: garment.key, place, person: body?.person };
  const own = settingLength(settings, "least ease", where, unit);
  if (own !== undefined) return { value: own, from: "settings" };
  const worn = body && ruleFor(settings.lengths, "my garment", where);
  if (worn) return { value: convert(worn.value, worn.unit, unit) - body.measure, from: "my garment" };
  const ours = garment.cloth === "knit" ? undefined : LEAST_EASE[place];
  return ours === undefined ? undefined : { value: convert(ours, "in", unit), from: "default" };
}
