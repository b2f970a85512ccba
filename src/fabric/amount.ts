import { LARGEST } from "../chart/cell";
import { refuse } from "../problem";

/**
 * What is wrong with an amount: it is no number, below zero, or as large as a date that Excel made. Undefined when nothing
 * is.
 *
 * @param what names it at the beginning of a sentence
 * @example amountFault(-1, "A repeat") //=> { ok: false, problem: { code: "negative", … } }
 */
export function amountFault(value: number, what: string, wanted = "a number") {
  const text = String(value);
  if (!Number.isFinite(value)) return refuse("notANumber", { text, wanted });
  if (value < 0) return refuse("negative", { text, what });
  return value > LARGEST ? refuse("excelDate", { text }) : undefined;
}
