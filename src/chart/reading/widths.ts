/** Fabric widths as they are printed: 44/45", 115 cm, 58-60 in (150 cm). */
import { plainText } from "../../length";

export interface PrintedWidths {
  readonly in: number | null;
  readonly cm: number | null;
}

/** Widths that cloth is sold in, for a bare number. Common practice, no source. */
const BARE = new Set([35, 36, 39, 42, 43, 44, 45, 48, 50, 52, 54, 55, 56, 58, 59, 60, 62, 66, 72]);
const isBareCm = (value: number): boolean => value >= 70 && value <= 320;

const NUMBER = String.raw`([1-7]\/[248]|\d{1,3}(?:[.,]\d{1,2}|(?: |-)\d{1,2}\/(?:[248]|16))?)`;
const PAIRED = String.raw`(?: ?("|''|in\.?|inches|cm\.?)? ?(?:\/|-|\bto\b|\bor\b|\bbis\b|\bà\b) ?${NUMBER})?`;
/** A number or a pair ("44/45") with its unit. */
const WIDTH = new RegExp(
  String.raw`(?<![\d/.,])${NUMBER}${PAIRED} ?("|''|inches\b|inch\b|ins?\b\.?|zoll\b|pouces\b|pulgadas\b|pollici\b|cali\b|cms?\b\.?|m\b)`,
  "giu",
);

export interface WidthRead extends PrintedWidths {
  /** The text with the widths taken out. */
  readonly rest: string;
}

type Sort = "in" | "cm" | "m";
const sortOf = (unit: string): Sort => {
  const plain = unit.toLowerCase();
  return plain === "m" ? "m" : plain.startsWith("cm") ? "cm" : "in";
};

/**
 * The widths that a label names. A pair is one cloth and reads as its larger number: 44/45 is 45, 35/36 is 36; but
 * 45"/115 cm, and 45/115 cm too, is one width in both units. Under 10 in or 25 cm it is the width of a trim, and counts
 * too. Null when none is named.
 *
 * @example readWidths('44/45" (115 cm) with nap') //=> { in: 45, cm: 115, rest: "with nap" }
 */
export function readWidths(label: string): WidthRead | null {
  if (label.length > 300) return null;
  const text = plainText(label);
  let [inch, centi]: [number | null, number | null] = [null, null];
  const take = (value: number, sort: Sort): void => {
    if (sort === "in") inch ??= value;
    else centi ??= sort === "m" ? Math.round(value * 100) : value;
  };
  const rest = text.replace(WIDTH, (whole, first: string, mark: string | undefined, second = first, unit: string) => {
    const [start, end, sort] = [widthNumber(first), widthNumber(second), sortOf(unit)];
    const [least, most] = [Math.min(start, end), Math.max(start, end)];
    if (sort === "m" && (end > 3.5 || end < 0.6)) return whole;
    if (mark !== undefined && sortOf(mark) !== sort) {
      take(start, sortOf(mark));
      take(end, sort);
    } else if (least >= 30 && isSameCloth(least, most)) {
      take(least, "in");
      take(most, "cm");
    } else take(most, sort);
    return " ";
  });
  if (inch !== null || centi !== null)
    return { in: inch, cm: centi, rest: rest.replace(/\([ /]*\)|\[ *\]/g, " ").trim() };
  const bare = /(?<![\d/.,])(\d{2,3})(?: ?[/-] ?(\d{2,3}))?(?![\d/.,])/.exec(text);
  const value = bare ? Math.max(Number(bare[1]), Number(bare[2] ?? 0)) : 0;
  const without = (): string => text.replace(bare![0], " ").trim();
  // "45/46": one of them is enough.
  if (BARE.has(value) || (bare?.[2] !== undefined && BARE.has(Math.min(Number(bare[1]), Number(bare[2])))))
    return { in: value, cm: null, rest: without() };
  if (isBareCm(value)) return { in: null, cm: value, rest: without() };
  return null;
}

/**
 * The cloths that a label names beside the one that `readWidths` gives: `45", 60"` is an amount for both. Trims don't count.
 *
 * @example otherWidths('45/46" or 58/60"') //=> [{ in: 60, cm: null }]
 */
export function otherWidths(label: string): PrintedWidths[] {
  const first = readWidths(label);
  const isTrim = first !== null && ((first.in ?? 18) < 18 || (first.cm ?? 45) < 45);
  if (!first || isTrim || NAMES_SIZES.test(label)) return [];
  const found: { in: number | null; cm: number | null }[] = [];
  const add = (value: number, sort: Sort): void => {
    const own = sort === "in" ? "in" : "cm";
    const width = sort === "m" ? Math.round(value * 100) : value;
    const last = found.at(-1);
    if (last && own === "cm" && last.cm === null && isSameCloth(last.in!, width)) last.cm = width;
    else if (last && own === "in" && last.in === null && isSameCloth(width, last.cm!)) last.in = width;
    else found.push({ in: null, cm: null, [own]: width });
  };
  for (const [, one, pair, unit] of plainText(label).matchAll(SOME_WIDTH)) {
    const [start, end] = [Number(one), Number(pair ?? one)];
    const sort = unit ? sortOf(unit) : first.in !== null ? "in" : "cm";
    const [least, most] = [Math.min(start, end), Math.max(start, end)];
    if (!unit && !(sort === "in" ? BARE.has(least) || BARE.has(most) : isBareCm(most))) continue;
    if (least >= 30 && isSameCloth(least, most)) {
      add(least, "in");
      add(most, "cm");
      continue;
    }
    // 36/45 are two cloths, 54/60 is one.
    if (most - least >= (sort === "in" ? 9 : 23)) add(least, sort);
    add(most, sort);
  }
  // A range such as 20" to 25" is one cloth, read as its larger end.
  const isRange = /\d[^\d,;]*(?:\bto\b|[-–])/.test(label);
  const isOther = (width: number | null, own: number | null, least: number, gap: number): boolean =>
    width === null || (width >= least && (own === null || Math.abs(width - own) >= (isRange ? gap : 1)));
  return found.filter(({ in: inch, cm }) => isOther(inch, first.in, 18, 9) && isOther(cm, first.cm, 45, 23));
}

/** Numbers of sizes beside the width: "Gr. 36", "36-42". */
const NAMES_SIZES = /\b(?:sizes?|gr\.|taille|tallas?|taglie?|maat|maten)|\d ?[-–] ?\d{2,3}(?!\d| ?(?:["″”/]|cm|in\b))/i;
const SOME_WIDTH =
  /(?<![\d/.,])(\d{2,3})(?: ?\/ ?(\d{2,3}))?(?![\d/]|[.,]\d) ?("|''|inches\b|inch\b|ins?\b\.?|cms?\b\.?)?/gi;

/** "45", "1,40", "1/2", "44 1/2". */
function widthNumber(text: string): number {
  const [whole = 0, top = 1, bottom] = text.replace(",", ".").split(/[ /-]/).map(Number);
  return bottom === undefined ? whole / top : whole + top / bottom;
}

/** Pairs of widths that are one cloth: a cm row under an inch row repeats it. Common practice, no source. */
export function isSameCloth(inch: number, centi: number): boolean {
  return Math.abs(inch * 2.54 - centi) <= 6;
}
