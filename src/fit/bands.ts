import type { BandName } from "./garments";
import { TERMS, type Band, type Term } from "./settings";

type Bands = readonly (Band | null)[];

/**
 * How loose a garment of woven cloth is called, by its ease in inches: at the bust for what hangs from the shoulder, at
 * the hip for skirts, trousers and shorts. In the order of `TERMS`; jackets and coats have no close-fitting one.
 *
 * The printed bands leave gaps of 1/8 in (2 7/8, then 3), because ease is printed in eighths.
 *
 * Source: ease-allowance chart used across US home-sewing catalogues and reprinted in extension leaflets: from memory.
 * The terms: Ease (sewing), Wikipedia (read).
 */
const BANDS: Readonly<Record<BandName, Bands>> = {
  dress: bands([0, 2.875], [3, 4], [4.125, 5], [5.125, 8], [8, null]),
  jacket: bands(null, [3.75, 4.25], [4.375, 5.75], [5.875, 10], [10, null]),
  coat: bands(null, [5.25, 6.75], [6.875, 8], [8.125, 12], [12, null]),
  skirt: bands([0, 1.875], [2, 3], [3.125, 4], [4.125, 6], [6, null]),
};

function bands(...ends: readonly (readonly [number, number | null] | null)[]): Bands {
  return ends.map((pair) => pair && { low: pair[0], high: pair[1] });
}

/** The place whose ease the bands of a garment go by. */
export const bandPlace = (name: BandName): "bust" | "hip" => (name === "skirt" ? "hip" : "bust");

/** A band of ours in inches; null where none is printed. */
export function printedBand(name: BandName, term: Term): Band | null {
  return BANDS[name][TERMS.indexOf(term)] ?? null;
}
