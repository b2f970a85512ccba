import type { BodyUnit } from "../chart/model";
import type { ClothWidth } from "../chart/cells-fabric";
import { widthUnitOf } from "../chart/cells-fabric";
import { sameFigure } from "../length/round-up";
import { convert } from "../length/length";

/** Widths that one bolt is called by. Common practice, no source. */
const EQUAL: readonly { readonly in: readonly number[]; readonly cm: readonly number[] }[] = [
  { in: [35, 36], cm: [90] },
  { in: [44, 45], cm: [115] },
  { in: [54], cm: [140] },
  { in: [58, 60], cm: [150] },
];

/** A fabric width whose unit is known. */
export interface KnownWidth {
  readonly value: number;
  readonly unit: BodyUnit;
}

/** A bare width up to 80 is in inches, above it in centimetres. */
export const knownWidth = ({ value, unit }: ClothWidth): KnownWidth => ({ value, unit: unit ?? widthUnitOf(value) });

/**
 * Whether two widths count as one: 35/36 in = 90 cm, 44/45 in = 115 cm, 54 in = 140 cm, 58/60 in = 150 cm.
 *
 * @example sameWidth({ value: 44, unit: "in" }, { value: 115, unit: "cm" }) //=> true
 */
export function sameWidth(one: KnownWidth, other: KnownWidth): boolean {
  if (one.unit === other.unit && sameFigure(one.value, other.value)) return true;
  return EQUAL.some((widths) => widths[one.unit].includes(one.value) && widths[other.unit].includes(other.value));
}

/** Whether a width is narrower than another that is not the same. */
export const isNarrower = (one: KnownWidth, other: KnownWidth): boolean => inCm(one) < inCm(other);

export const inCm = ({ value, unit }: KnownWidth): number => convert(value, unit, "cm");
