import { formatLength } from "../length/format";
import { clean } from "../length/round-up";
import type { BodyUnit } from "../chart/model";

const WORDS: Readonly<Record<BodyUnit, readonly [one: string, many: string]>> = {
  in: ["inch", "inches"],
  cm: ["centimetre", "centimetres"],
};

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
