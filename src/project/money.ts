import { clean } from "../length";
import { answer, refuse, type Result } from "../problem";

/** Digits with at most one sign for thousands between groups of three, and at most two decimals. */
const PLAIN = /^\d+(?:[.,]\d{1,2})?$/;
const GROUPED = /^\d{1,3}(?:(?:,\d{3})+(?:\.\d{1,2})?|(?:\.\d{3})+(?:,\d{1,2})?|(?:[ '’]\d{3})+(?:[.,]\d{1,2})?)$/;

/** Longer than any price; also keeps hostile text short. */
const LONGEST = 30;
/** More than anything costs; above it, `cents` would lose some. */
export const DEAREST = 1e10;

/**
 * An amount of money as whole cents, to the nearest cent, half a cent upward: 12.345 is 1235 cents, 5.025 is 503.
 *
 * @param amount money in its main unit; at least 0, and exact up to `DEAREST`
 * @throws RangeError when the amount is not a finite number of at least 0
 * @example cents(7.77) //=> 777
 */
export function cents(amount: number): number {
  if (!Number.isFinite(amount) || amount < 0) throw new RangeError("an amount below 0");
  return Math.floor(clean(amount * 100) + 0.5);
}

/**
 * A price as it is typed: a number, or text such as "$12.95", "12,95 €", "1,250.00". Signs and codes of currencies are
 * left aside: a workbook has one currency. Text with three decimals and one sign ("1,250") can be read two ways and is
 * refused, never guessed.
 *
 * @example readMoney("12,95 €") //=> { ok: true, value: 12.95 }
 */
export function readMoney(price: string | number | boolean): Result<number> {
  if (typeof price === "number") {
    if (!(price <= DEAREST)) return refuse("unreadableMoney", { text: String(price) });
    return price < 0 ? refuse("negative", { text: String(price), what: "A price" }) : answer(price);
  }
  const text = String(price).normalize("NFKC").trim();
  const unreadable = refuse("unreadableMoney", { text: text.slice(0, LONGEST) });
  if (typeof price === "boolean" || text.length > LONGEST) return unreadable;
  const digits = text
    .replace(/^(?:[A-Z]{0,3}\p{Sc}|[A-Z]{3}|kr)/u, "")
    .replace(/(?:\p{Sc}|[A-Z]{3}|kr|zł)$/u, "")
    .trim();
  if (digits.startsWith("-") || text.startsWith("-")) return refuse("negative", { text, what: "A price" });
  const affordable = (read: number): Result<number> => (read <= DEAREST ? answer(read) : unreadable);
  if (PLAIN.test(digits)) return affordable(Number(digits.replace(",", ".")));
  if (!GROUPED.test(digits) || /^\d{1,3}[.,]\d{3}$/.test(digits)) return unreadable;
  const decimals = /[.,](\d{1,2})$/.exec(digits);
  const whole = digits.slice(0, decimals ? decimals.index : undefined).replace(/\D/g, "");
  return affordable(Number(`${whole}.${decimals?.[1] ?? "0"}`));
}
