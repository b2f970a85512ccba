/** Inches or centimetres, told from the size of the numbers. */
import { placeSpan } from "../places";
import type { BodyUnit, Figure } from "../model";
import { middle } from "./figures";

export interface UnitVerdict {
  readonly unit: BodyUnit;
  /** False when the numbers would do in either unit. */
  readonly sure: boolean;
}

/** Row by row: the unit whose span holds all figures of the place; the unit that fits more rows wins. Null on a tie. */
export function unitOfRows(
  rows: readonly { readonly place: string; readonly values: readonly Figure[] }[],
): BodyUnit | null {
  let [inch, centi] = [0, 0];
  for (const { place, values } of rows) {
    const span = placeSpan(place);
    const numbers = values.filter((value) => value !== null).map(middle);
    if (!span) continue;
    const fits = ([low, high]: readonly [number, number]): boolean =>
      numbers.filter((value) => value >= low && value <= high).length * 3 > numbers.length * 2;
    if (fits(span.in)) inch++;
    if (fits(span.cm)) centi++;
  }
  return inch === centi ? null : inch > centi ? "in" : "cm";
}

/**
 * The unit of a table that prints none. Where both would do: eighths and quarters are inches, tenths are centimetres,
 * sizes of children by age or height are centimetres, then the labels' language decides.
 */
export function unitFromNumbers(
  rows: readonly { readonly place: string; readonly label: string; readonly values: readonly Figure[] }[],
  sizes: readonly string[],
  sizeWord: string,
): UnitVerdict {
  const byRows = unitOfRows(rows);
  if (byRows) return { unit: byRows, sure: true };
  const numbers = rows.flatMap(({ values }) => values.filter((value) => value !== null).map(middle));
  const isEighth = (value: number): boolean => value % 0.5 !== 0 && value % 0.125 === 0;
  if (numbers.some(isEighth)) return { unit: "in", sure: true };
  if (numbers.some((value) => value % 0.5 !== 0)) return { unit: "cm", sure: true };
  const isForeign =
    /größ|taille|talla|taglia|maat|rozmiar|tamanho/i.test(sizeWord) ||
    rows.some(({ label }) => /[äöüßéèçñãłśż]|tour|weite|umfang|omvang|wijdte|contorno|fianchi|vita/i.test(label));
  if (isForeign) return { unit: "cm", sure: true };
  if (sizes.some((size) => /^\d{1,2}W|^[1-6]X/i.test(size))) return { unit: "in", sure: true };
  const steps = sizes.every((size) => Number(size) >= 44 && Number(size) <= 188);
  return { unit: steps ? "cm" : "in", sure: false };
}
