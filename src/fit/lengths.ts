import { formatLength } from "../length/format";
import { clean } from "../length/round-up";
import type { BodyUnit } from "../chart/model";

const WORDS: Readonly<Record<BodyUnit, readonly [one: string, many: string]>> = {
  in: ["inch", "inches"],
  cm: ["centimetre", "centimetres"],
};

/** What an adjustment of the bust is called: one below zero takes out. */
export const adjustmentKind = (adjustment: number): string => `${adjustment > 0 ? "full" : "small"}-bust adjustment`;

/**
 * A length as one says it: "2 1/2 inches", "1 inch", "6.5 centimetres"; without a unit the bare number.
 *
 * @example spoken(2.5, "in") //=> "2 1/2 inches"
 */
export function spoken(value: number, unit: BodyUnit | null): string {
  const number = formatLength(clean(value), unit).replace(/ (?:in|cm)$/, "");
  if (unit === null) return number;
  const [one, many] = WORDS[unit];
  const single = number === "1" || (number.includes("/") && !number.includes(" "));
  return `${number} ${single ? one : many}`;
}

/** Ease as one says it: "2 inches of ease", "no ease", "1 inch less than the body". */
export function easeOf(ease: number, unit: BodyUnit | null): string {
  const plain = clean(ease);
  if (plain < 0) return `${spoken(-plain, unit)} less than the body`;
  return plain === 0 ? "no ease" : `${spoken(plain, unit)} of ease`;
}

/**
 * A size as one says it after "is": "a 12", "an 18", "an XL"; a letter is said by its name.
 *
 * @example aSize("8") //=> "an 8"
 */
export const aSize = (label: string): string => `${/^(?:8|1[18](?!\d)|x*[sml]$)/i.test(label) ? "an" : "a"} ${label}`;
