import type { Measure } from "../chart/model";
import { formatLength } from "../length/format";
import { convert } from "../length/length";
import { clean } from "../length/round-up";
import { answer, refuse, type Result } from "../problem";

/**
 * Total ease: finished garment − body, in the garment's unit; below zero where the garment is smaller than the body.
 * A bare number has the unit of the other; two bare numbers are compared as they stand, unless one is two to three
 * times the other, as centimetres are of inches: then the units must be written.
 *
 * @example totalEase({ value: 38, unit: null }, { value: 34, unit: null }) //=> { ok: true, value: 4 }
 */
export function totalEase(finished: Measure, body: Measure): Result<number> {
  const unit = finished.unit ?? body.unit;
  const measure = body.unit !== null && unit !== null ? convert(body.value, body.unit, unit) : body.value;
  const times = Math.max(finished.value / measure, measure / finished.value);
  if ((finished.unit === null || body.unit === null) && times >= 2 && times <= 3)
    return refuse("cmAgainstInches", {
      found: `${formatLength(finished.value, finished.unit)} finished`,
      against: `${formatLength(body.value, body.unit)} of the body`,
    });
  return answer(clean(finished.value - measure));
}
