import type { Taste } from "./decode";

/** Level edges first, tall boxes before flat ones. */
const LEVEL: Taste = {
  fills: 10, fillsLevel: 1, fillsEnd: -1, level: 7, atEnd: 7, waste: 7, partner: 3, tower: 1, pit: 2, fold: 0,
}; // prettier-ignore
/** Full widths first. */
const FULL: Taste = {
  fills: 14, fillsLevel: 4, fillsEnd: 0, level: 8, atEnd: 4, waste: 2, partner: 0, tower: 0, pit: 0, fold: 0,
}; // prettier-ignore

/** Without the fold and with it: on folded cloth half of the tastes lay the fold pieces before all others. */
export const TASTES: readonly Taste[] = [LEVEL, FULL];
export const FOLD_TASTES: readonly Taste[] = [LEVEL, FULL, { ...LEVEL, fold: 30 }, { ...FULL, fold: 30 }];
