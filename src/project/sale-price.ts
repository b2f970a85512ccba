import { answer, refuse, type Result } from "../problem";
import { cents, readMoney } from "./money";

export type PriceCell = string | number | boolean | null | undefined;

const missing = (cell: PriceCell): cell is null | undefined | "" =>
  cell === null || cell === undefined || (typeof cell === "string" && cell.trim() === "");

/**
 * What a pattern or a cloth costs today: the lower of the price less its percentage and the sale price, in whole cents
 * (half a cent goes up). With neither it is the price itself. A sale price or a percentage of 0 is one that isn't there:
 * an empty cell may arrive as 0. A sale price above the price changes nothing.
 *
 * @param percentOff the share taken off, from 0 to 1: 0.4, or the text "40%". Above 1 it is refused, because 40 typed
 *   for 40% would be a guess.
 * @example salePrice(12.95, 0.4, 8) //=> { ok: true, value: 7.77 }
 */
export function salePrice(price: PriceCell, percentOff?: PriceCell, sale?: PriceCell): Result<number> {
  if (missing(price)) return refuse("blank", { wanted: "a price" });
  const full = readMoney(price);
  if (!full.ok) return full;
  const share = readShare(percentOff);
  if (!share.ok) return share;
  const offered = missing(sale) ? answer(0) : readMoney(sale);
  if (!offered.ok) return offered;
  const reduced = cents(full.value * (1 - share.value));
  return answer((offered.value > 0 ? Math.min(reduced, cents(offered.value)) : reduced) / 100);
}

/** A share from 0 to 1; nothing is 0. */
function readShare(cell: PriceCell): Result<number> {
  if (missing(cell)) return answer(0);
  const text = String(cell).trim();
  const percent = typeof cell === "string" && /^(\d{1,3}(?:[.,]\d{1,4})?) ?%$/.exec(text);
  const plain = typeof cell === "string" && /^-?\d{1,6}(?:[.,]\d{1,6})?$/.test(text);
  const number = (digits: string): number => Number(digits.replace(",", "."));
  const share = percent ? number(percent[1]!) / 100 : plain ? number(text) : typeof cell === "number" ? cell : NaN;
  if (!Number.isFinite(share)) return refuse("notANumber", { text, wanted: "a percentage such as 40%" });
  if (share < 0) return refuse("negative", { text, what: "A percentage off" });
  return share > 1 ? refuse("percentAboveOne", { text: text.replace(/ ?%$/, "") }) : answer(share);
}
