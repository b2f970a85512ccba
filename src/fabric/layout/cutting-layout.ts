import { problem } from "./check";
import { layoutSearch } from "./layout-search";
import type { Cloth, CutPiece, Effort, Layout } from "./types";

/** From so many pieces on fewer layouts are tried, because each takes the square of their number. */
const MANY = 250;
/** Even then so many are tried. */
const LEAST_TRIES = 50;

/**
 * The shortest layout of the pieces on the cloth that is found within the effort: each piece inside the cloth, none on
 * another, the grain along the cloth unless a piece may turn, pieces on the fold at x = 0, every piece starting on a
 * repeat. The same seed gives the same layout on every machine; the order in which pieces are listed changes nothing.
 *
 * One unit throughout. Folded: half the width, a pair counts once, and what only fits opened lies single after the rest.
 * The length is not rounded to what a shop cuts. It is null when a piece can't be placed: the problems name it.
 *
 * @throws RangeError when the effort is not a whole number of tries, at least 1
 * @example
 * cuttingLayout([{ name: "Front", width: 30, length: 60, count: 2 }], { width: 60 }, { tries: 100 }).length //=> 60
 */
export function cuttingLayout(pieces: readonly CutPiece[], cloth: Cloth, effort: Effort): Layout {
  const { tries, seed } = checkedEffort(effort);
  const search = layoutSearch(pieces, cloth, seed);
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
  const allowed = allowedTries(tries, count);
  search.run(allowed);
  const layout = search.layout();
  if (layout.length === null || allowed === tries || layout.proved) return layout;
  const few = problem("fewerTries", { pieces: String(count), tries: String(layout.tries) });
  return { ...layout, problems: [...layout.problems, few] };
}

/** The tries for so many pieces: all of them, or fewer from 250 pieces on. */
export function allowedTries(tries: number, pieces: number): number {
  if (pieces <= MANY) return tries;
  const fewer = Math.floor(tries * (MANY / pieces) ** 2);
  return Math.min(tries, Math.max(LEAST_TRIES, fewer));
}

/** What a cell with 40 pieces tries: well under a tenth of a second. */
const CELL_TRIES = 2000;
const CELL_PIECES = 40;
/** The most a cell tries, however few its pieces are. */
const MOST_CELL_TRIES = 10_000;
/** Lying by outlines takes some twenty times as long. */
const OUTLINE_TRIES = 300;

/**
 * The tries for a cell, which may not keep the workbook waiting: 2,000, and more for short lists, which take less time.
 *
 * @example cellTries([{ name: "Cuff", width: 10, length: 20, count: 40 }]) //=> 2000
 */
export function cellTries(pieces: readonly CutPiece[]): number {
  if (pieces.some(({ outline }) => outline)) return OUTLINE_TRIES;
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
  const fewer = Math.max(1, CELL_PIECES / Math.max(1, count));
  return Math.min(MOST_CELL_TRIES, Math.floor(CELL_TRIES * fewer * Math.sqrt(fewer)));
}

/** An effort with its seed, 1 unless given. @throws RangeError when these are not whole numbers, or less than 1 try */
export function checkedEffort({ tries, seed = 1 }: Effort): Required<Effort> {
  if (!Number.isInteger(tries) || tries < 1 || !Number.isInteger(seed))
    throw new RangeError("tries and seed are whole, tries at least 1");
  return { tries, seed };
}
