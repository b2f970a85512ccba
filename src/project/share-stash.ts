import { TOLERANCE } from "../length";

/** A project that wants cloth. Lengths of one call are all in one unit. */
export interface Want {
  /** What must be cut from one piece. */
  readonly needed: number;
  /** What would have to be bought otherwise: never below `needed` when the shop rounds up. */
  readonly toBuy: number;
  /** The numbers of the pieces that are the right cloth and wide enough, whatever their length. */
  readonly pieces: readonly number[];
}

export interface Sharing {
  /** For each project the number of its piece, or null: buy. */
  readonly pieces: readonly (number | null)[];
  /** False when there were too many ways to try them all; the sharing is a good one all the same. */
  readonly proved: boolean;
}

/** Ways looked at before the best one so far is taken: some tens of milliseconds. */
const MOST_STEPS = 50_000;

/**
 * Gives each project one whole stash piece, or none, so that least is left to buy. A piece serves several projects only
 * if it is long enough for all of them together; pieces are never added up. Between ways that leave the same to buy, the
 * one that cuts into the least length of stash is taken, so that long pieces stay whole; then the one in which larger
 * projects, and among equals those listed first, get the shorter and then the first listed piece. The same projects and
 * pieces always give the same answer.
 *
 * Depth first, larger projects first, with a bound on what can still be saved: by what is left to serve, and by the
 * cloth that is left.
 *
 * @param lengths the length of each piece
 * @throws RangeError when a want names a piece that isn't there or an amount is not a positive number
 * @example shareStash([{ needed: 2, toBuy: 2, pieces: [0] }, { needed: 1, toBuy: 1, pieces: [0] }], [2.5])
 *   //=> { pieces: [0, null], proved: true }
 */
export function shareStash(wants: readonly Want[], lengths: readonly number[]): Sharing {
  for (const { needed, toBuy, pieces } of wants) {
    if (!(needed > 0 && toBuy > 0 && Number.isFinite(needed + toBuy)) || pieces.some((p) => lengths[p] === undefined))
      throw new RangeError("an amount of 0, or no such piece");
  }
  const order = wants.map((_, index) => index).filter((index) => wants[index]!.pieces.length > 0);
  order.sort((a, b) => wants[b]!.toBuy - wants[a]!.toBuy || a - b);
  const choices = wants.map(({ pieces }) => [...pieces].sort((a, b) => lengths[a]! - lengths[b]! || a - b));
  const groups = groupKeys(wants, lengths);
  /** What the projects from here on could save at most, and the most that a length of cloth can save. */
  const ahead = order.map((_, at) => order.slice(at).reduce((sum, index) => sum + wants[index]!.toBuy, 0));
  const worth = order.map((_, at) => Math.max(...order.slice(at).map((i) => wants[i]!.toBuy / wants[i]!.needed)));

  const left = [...lengths];
  const given: (number | null)[] = wants.map(() => null);
  let best: readonly (number | null)[] = [...given];
  let [mostSaved, leastCut, steps] = [0, 0, 0];

  const visit = (at: number, saved: number, cut: number): void => {
    if (++steps > MOST_STEPS) return;
    if (saved > mostSaved + TOLERANCE || (saved >= mostSaved - TOLERANCE && cut < leastCut - TOLERANCE))
      [best, mostSaved, leastCut] = [[...given], saved, cut];
    if (at === order.length) return;
    const cloth = left.reduce((sum, length) => sum + length, 0);
    const hope = saved + Math.min(ahead[at]!, cloth * worth[at]!);
    if (hope < mostSaved - TOLERANCE || (hope <= mostSaved + TOLERANCE && cut >= leastCut - TOLERANCE)) return;
    const index = order[at]!;
    const { needed, toBuy } = wants[index]!;
    const tried = new Set<string>();
    for (const piece of choices[index]!) {
      if (left[piece]! < needed - TOLERANCE) continue;
      // Two whole pieces that differ in nothing but their number need not both be tried.
      const twin = left[piece] === lengths[piece] ? groups[piece]! : `#${piece}`;
      if (tried.has(twin)) continue;
      tried.add(twin);
      const before = left[piece]!;
      left[piece] = before - needed;
      given[index] = piece;
      visit(at + 1, saved + toBuy, cut + (before === lengths[piece] ? before : 0));
      left[piece] = before;
      given[index] = null;
    }
    visit(at + 1, saved, cut);
  };
  visit(0, 0, 0);
  return { pieces: best, proved: steps <= MOST_STEPS };
}

/** Pieces of one length that serve the same projects have one key. */
function groupKeys(wants: readonly Want[], lengths: readonly number[]): string[] {
  return lengths.map((length, piece) => {
    const serves = wants.map(({ pieces }) => (pieces.includes(piece) ? "1" : "0")).join("");
    return `${length}/${serves}`;
  });
}
