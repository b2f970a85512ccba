import type { Part } from "./parts";
import { searchStrip, type StripSearch } from "./search";
import { makeStrip, type StripCloth } from "./strip";
import type { Way } from "./ways";

/** Where a part lies within its zone, in steps. */
export interface Spot {
  readonly part: Part;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
  /** How the outline lies, where it lies by its outline. */
  readonly way?: Way;
}

/** A length of cloth that is all folded or all single, and the search for its shortest layout. */
export interface Zone {
  readonly parts: readonly Part[];
  readonly byOutline: boolean;
  /** Of the best layout so far, in steps. */
  readonly end: number;
  readonly bound: number;
  readonly tries: number;
  readonly finished: boolean;
  run(tries: number): void;
  spots(): Spot[];
}

export function boxZone(parts: readonly Part[], cloth: StripCloth, seed: number): Zone {
  const strip = makeStrip(
    parts.map(({ box }) => box),
    cloth,
  );
  const search: StripSearch = searchStrip(strip, seed);
  return {
    parts,
    byOutline: false,
    bound: search.bound * strip.stepY,
    get end() {
      return search.best.end * strip.stepY;
    },
    get tries() {
      return search.tries;
    },
    get finished() {
      return search.finished;
    },
    run: (tries) => search.run(tries),
    spots: () =>
      parts.map((part, i) => ({
        part,
        x: search.best.x[i]! * strip.stepX,
        y: search.best.y[i]! * strip.stepY,
        turned: search.best.turned[i] === 1,
      })),
  };
}
