import type { BodyUnit, FabricUnit } from "../chart/model";
import { clean, convert, smallUnitOf } from "../length";
import { answer, refuse, type Result } from "../problem";
import { amountFault } from "./amount";

export interface ExtraYardage {
  /** The share that the cloth loses in the wash: 0.05 for 5 %. From 0 to 0.3; 0 unless given. */
  readonly shrinkage?: number;
  /** One repeat of the print or plaid, in `repeatUnit`; 0 unless given. */
  readonly repeat?: number;
  /** The unit of `repeat` and `added`; inches with yards, centimetres with metres unless given. */
  readonly repeatUnit?: BodyUnit;
  /** How many lengths of the cloth are matched or lengthened: pieces that lie one above another. 1 unless given. */
  readonly lengths?: number;
  /** What each of these lengths is made longer by, in `repeatUnit`; 0 unless given. */
  readonly added?: number;
}

/** More than this is no shrinkage but a percentage typed without its sign. */
const MOST_SHRINKAGE = 0.3;

/**
 * The length with everything that the envelope leaves out: a repeat to match and lengthened pieces for each length, then
 * what the wash takes. Not rounded: the shop's step comes last.
 *
 * (length + repeat × lengths + added × lengths) / (1 − shrinkage), in `unit`. Published rules for plaids disagree (a
 * repeat for each piece stacked, for each large piece, or a flat 25 %): this is the first, and `lengths` is the person's.
 *
 * Source: repeat × number of pieces stacked one above another, plaid chart read on a public sewing page. Dividing by what
 * is left after the wash, not multiplying by what is lost: arithmetic.
 *
 * @example extraYardage(2.875, "yd", { shrinkage: 0.05, repeat: 4.25, lengths: 3 }) //=> { ok: true, value: 3.39912280702 }
 */
export function extraYardage(length: number, unit: FabricUnit, extra: ExtraYardage = {}): Result<number> {
  const { shrinkage = 0, repeat = 0, added = 0, lengths = 1 } = extra;
  const repeatUnit = extra.repeatUnit ?? smallUnitOf(unit);
  for (const [value, what] of [
    [length, "A length of fabric"],
    [repeat, "A repeat"],
    [lengths, "The number of lengths"],
    [shrinkage, "Shrinkage"],
  ] as const) {
    const fault = amountFault(value, what);
    if (fault) return fault;
  }
  if (!Number.isFinite(added)) return refuse("notANumber", { text: String(added), wanted: "a number" });
  if (shrinkage > MOST_SHRINKAGE) return refuse("shrinkage", { text: String(shrinkage) });
  const each = convert(clean(repeat + added), repeatUnit, unit);
  const whole = length + each * lengths;
  if (whole < 0) return refuse("negative", { text: String(clean(whole)), what: "The length left" });
  return answer(clean(whole / (1 - shrinkage)));
}
