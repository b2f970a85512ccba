import { answer, refuse, type Result } from "../problem";
import { clean } from "./round-up";
import type { LengthUnit } from "./length";

/**
 * A number as a tape is read: the nearest fraction, ties upward, in lowest terms.
 *
 * @param denominator a whole number from 1 to 1000; 8 unless given
 * @example formatFraction(2.375) //=> { ok: true, value: "2 3/8" }
 */
export function formatFraction(value: number, denominator = 8): Result<string> {
  if (!Number.isInteger(denominator) || denominator < 1 || denominator > 1000)
    return refuse("badDenominator", { text: String(denominator) });
  if (!Number.isFinite(value)) return refuse("notANumber", { text: String(value), wanted: "a number" });
  return answer(fractionText(value, denominator));
}

function fractionText(value: number, denominator: number): string {
  const parts = Math.floor(clean(value * denominator) + 0.5);
  const whole = Math.floor(Math.abs(parts) / denominator);
  const rest = Math.abs(parts) % denominator;
  const common = greatestCommonDivisor(rest, denominator);
  const fraction = rest ? `${rest / common}/${denominator / common}` : "";
  return (parts < 0 ? "-" : "") + ([whole || "", fraction].filter(Boolean).join(" ") || "0");
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}

/**
 * A length as a sentence shows it: inches and yards as fractions ("30 1/2 in") where a sixteenth says it exactly,
 * else as a decimal; centimetres and metres as decimals. Rounded to two places only when it has more.
 *
 * @example formatLength(30.5, "in") //=> "30 1/2 in"
 */
export function formatLength(value: number, unit: LengthUnit | null): string {
  const suffix = unit ? ` ${unit}` : "";
  if ((unit === "in" || unit === "yd") && Number.isInteger(clean(value * 16))) return fractionText(value, 16) + suffix;
  return `${Number(value.toFixed(2))}${suffix}`;
}
