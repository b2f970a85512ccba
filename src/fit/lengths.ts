import { formatLength } from "../length/format";
import { clean } from "../length/round-up";
import type { BodyUnit } from "../chart/model";
import { ease as easeWords, lessThanBody, noEase, withUnit } from "../words/fit-notes";

/**
 * A length as one says it: "2 1/2 inches", "1 inch", "6.5 centimetres"; without a unit the bare number.
 *
 * @example spoken(2.5, "in") //=> "2 1/2 inches"
 */
export function spoken(value: number, unit: BodyUnit | null): string {
  const number = bare(value, unit);
  if (unit === null) return number;
  return withUnit(number, unit, number === "1" || (number.includes("/") && !number.includes(" ")));
}

/** The same without its unit. */
export const bare = (value: number, unit: BodyUnit | null): string =>
  formatLength(clean(value), unit).replace(/ (?:in|cm)$/, "");

/** Ease as one says it: "2 inches of ease", "no ease", "1 inch less than the body". As `plainly` "2 inches". */
export function easeOf(ease: number, unit: BodyUnit | null, plainly = false): string {
  const plain = clean(ease);
  if (plain < 0) return lessThanBody(spoken(-plain, unit));
  if (plain === 0) return noEase;
  return plainly ? spoken(plain, unit) : easeWords(spoken(plain, unit));
}
