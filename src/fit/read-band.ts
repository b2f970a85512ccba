import { readLength } from "../length/read";
import { answer, refuse, type Result } from "../problem";
import type { Band } from "./settings";

/**
 * A band of ease as one writes it: "3 to 4", "3-4" with the ends included, "over 8" without an upper end. The ends are
 * in the unit of the row.
 *
 * Refuses anything else, and a band that ends below its beginning.
 *
 * @example readBand("3 to 4") //=> { ok: true, value: { low: 3, high: 4 } }
 */
export function readBand(text: string): Result<Band> {
  const plain = text.trim().toLowerCase();
  const over = /^(?:over|above|more than)\s/.exec(plain)?.[0];
  const [first = "", second] = over ? [plain.slice(over.length)] : ends(plain);
  const low = readLength(first);
  const high = second === undefined ? undefined : readLength(second);
  if (!low.ok || (!over && !high?.ok)) return refuse("unreadableBand", { text: text.trim() });
  if (high?.ok && high.value.value < low.value.value) return refuse("unreadableBand", { text: text.trim() });
  return answer({ low: low.value.value, high: high?.ok ? high.value.value : null });
}

function ends(text: string): string[] {
  const parts = text.split(/ to |[–—]/);
  return parts.length === 1 ? text.split("-") : parts;
}
