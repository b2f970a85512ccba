import { readLength } from "../length/read";
import { answer, refuse, type Result } from "../problem";
import type { BodyUnit } from "../chart/model";
import type { Band } from "./settings";

/**
 * A band of ease as one writes it: "3 to 4", "3-4" with the ends included, "over 8" without an upper end. A unit beside
 * either end holds for both; without one (null) they are in the unit of the row.
 *
 * Refuses anything else, a band that ends below its beginning, and two units.
 *
 * @example readBand("3 to 4 cm") //=> { ok: true, value: { low: 3, high: 4, unit: "cm" } }
 */
export function readBand(text: string): Result<Band & { readonly unit: BodyUnit | null }> {
  const plain = text.trim().toLowerCase();
  const over = /^(?:over|above|more than)\s/.exec(plain)?.[0];
  const [first = "", second, more] = over ? [plain.slice(over.length)] : ends(plain);
  const low = readLength(first);
  const high = second === undefined ? undefined : readLength(second);
  const unreadable = refuse("unreadableBand", { text: text.trim() });
  if (!low.ok || more !== undefined || (!over && !high?.ok)) return unreadable;
  const end = high?.ok ? high.value : undefined;
  const unit = end?.unit ?? low.value.unit;
  if (unit === "yd" || unit === "m" || (low.value.unit ?? unit) !== unit) return unreadable;
  if (end && end.value < low.value.value) return unreadable;
  return answer({ low: low.value.value, high: end?.value ?? null, unit });
}

function ends(text: string): string[] {
  const parts = text.split(/ to |[–—]/);
  return parts.length === 1 ? text.split("-") : parts;
}
