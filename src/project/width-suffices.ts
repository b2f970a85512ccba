import { convert, TOLERANCE } from "../length";
import type { ClothWidth } from "./cloth";

/**
 * Widths that count as one: cloth sold as 44 in serves a pattern printed for 45. In inches, and as they are sold in
 * centimetres; the centimetre spans begin and end with the inches in whole centimetres (44 in is 112 cm).
 *
 * Source: 35/36 in = 90 cm, 44/45 in = 115 cm, 54 in = 140 cm, 58/60 in = 150 cm are common practice, no source.
 */
const EQUAL: readonly { readonly in: readonly [number, number]; readonly cm: readonly [number, number] }[] = [
  { in: [35, 36], cm: [89, 91.44] },
  { in: [44, 45], cm: [111.76, 115] },
  { in: [54, 54], cm: [137, 140] },
  { in: [58, 60], cm: [147, 152.4] },
];

/**
 * Whether a piece is wide enough: as wide as wanted, or one of the widths that count as equal.
 *
 * @example widthSuffices({ value: 44, unit: "in" }, { value: 115, unit: "cm" }) //=> true
 */
export function widthSuffices(piece: ClothWidth, wanted: ClothWidth): boolean {
  if (convert(piece.value, piece.unit, wanted.unit) >= wanted.value - TOLERANCE) return true;
  const within = ({ value, unit }: ClothWidth, column: (typeof EQUAL)[number]): boolean =>
    value >= column[unit][0] - TOLERANCE && value <= column[unit][1] + TOLERANCE;
  return EQUAL.some((column) => within(piece, column) && within(wanted, column));
}
