/**
 * What she decides for herself, over our defaults: a plain table on a sheet, `Setting | Garment | Place | Value | Unit`.
 * A row replaces our default. The most particular row wins (person, then garment, then place), then the lower one.
 */
import { formatLength } from "../length/format";
import { convert } from "../length/length";
import { answer, refuse, type Result } from "../problem";
import type { BodyUnit, Place } from "../chart/model";
import type { Garment } from "./garments";

/** How a size is chosen between two: the nearer, the larger or the smaller one. */
export type BetweenSizes = "closest" | "larger" | "smaller";
/** Words for how loose a garment is, from the closest to the widest. Source: Ease (sewing), Wikipedia (read). */
export const TERMS = ["close-fitting", "fitted", "semi-fitted", "loose-fitting", "very loose-fitting"] as const;
export type Term = (typeof TERMS)[number];
/** From low to high, both within; a band with no upper end has high null and begins above low. */
export interface Band {
  readonly low: number;
  readonly high: number | null;
}

/** The rows that hold a length. */
export type LengthSetting =
  "least ease" | "threshold" | "drafted difference" | "edge limit" | "growth" | "step" | "my garment";
/** The rows that hold a word or a count. */
export type WordSetting = "frame" | "between sizes" | "high bust row" | "edges";

interface Where {
  /** The key of a garment; null: every garment. */
  readonly garment: string | null;
  readonly place: Place | null;
  /** In small letters; null: everybody. */
  readonly person: string | null;
}
export interface LengthRule extends Where {
  readonly setting: LengthSetting;
  readonly value: number;
  readonly unit: BodyUnit;
}
export interface WordRule extends Where {
  readonly setting: WordSetting;
  readonly value: string | number;
}
export interface BandRule extends Where {
  readonly setting: Term;
  readonly value: Band;
  readonly unit: BodyUnit;
}

export interface Settings {
  /** Garments that she added or changed, by key. */
  readonly garments: ReadonlyMap<string, Garment>;
  readonly lengths: readonly LengthRule[];
  readonly words: readonly WordRule[];
  readonly bands: readonly BandRule[];
}

export const noSettings: Settings = { garments: new Map(), lengths: [], words: [], bands: [] };

/** Whom and what a look-up is for. */
export interface For {
  /** The garment's key. */
  readonly garment?: string | undefined;
  readonly place?: Place | undefined;
  readonly person?: string | null | undefined;
}

/**
 * The row that holds here, or undefined: our default stands.
 *
 * @example ruleFor(settings.lengths, "least ease", { garment: "shirt", place: "bust" })
 */
export function ruleFor<Rule extends Where & { readonly setting: string }>(
  rules: readonly Rule[],
  setting: Rule["setting"],
  { garment, place, person }: For,
): Rule | undefined {
  if (rules.length === 0) return undefined;
  const who = person?.trim().toLowerCase() ?? null;
  let best: Rule | undefined;
  let bestWeight = -1;
  for (const rule of rules) {
    if (rule.setting !== setting) continue;
    if (rule.garment !== null && rule.garment !== garment) continue;
    if (rule.place !== null && rule.place !== place) continue;
    if (rule.person !== null && rule.person !== who) continue;
    const weight = (rule.person ? 4 : 0) + (rule.garment ? 2 : 0) + (rule.place ? 1 : 0);
    if (weight >= bestWeight) [best, bestWeight] = [rule, weight];
  }
  return best;
}

/**
 * A length of the settings that is set against a chart's own figures; undefined where no row holds. A row's length has a
 * unit, so on a chart that names none (unit null) it is refused.
 *
 * @example chartLength(settings, "threshold", { garment: "shirt" }, "cm") //=> { ok: true, value: 5.08 }
 */
export function chartLength(
  settings: Settings,
  setting: LengthSetting,
  where: For,
  unit: BodyUnit | null,
): Result<number | undefined> {
  const rule = ruleFor(settings.lengths, setting, where);
  if (rule && unit === null) return refuse("chartUnitUnknown", { text: formatLength(rule.value, rule.unit) });
  return answer(settingLength(settings, setting, where, unit));
}

/** A length of the settings in the unit that is wanted, inches where none is known; undefined where no row holds. */
export function settingLength(
  settings: Settings,
  setting: LengthSetting,
  where: For,
  unit: BodyUnit | null,
): number | undefined {
  const rule = ruleFor(settings.lengths, setting, where);
  return rule && convert(rule.value, rule.unit, unit ?? "in");
}
