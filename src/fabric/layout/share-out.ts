import type { Random } from "./random";
import type { CutPiece, NamedCloth } from "./types";

/** Of each piece the cloth it is cut from, counted from 0; -1 where none has room. */
export type Share = readonly number[];

export interface ShareOptions {
  /** How long these pieces lie on a cloth. */
  lengthOf(cloth: number, pieces: readonly number[]): number;
  readonly random: Random;
  /** Whether there is effort left. */
  goOn(): boolean;
}

/** What a share costs: area left over, area to buy, area of her own; compared in this order. */
type Cost = readonly [number, number, number];

/** Walks without a change of cost before it is given up. */
const PATIENCE = 200;
/** A tenth of a thousandth of the whole is no difference. */
const SAME = 1e-9;

/**
 * Shares pieces out over cloths: each in turn, large ones first, to the cloth where it costs least; then single pieces
 * are moved and pairs exchanged as long as it costs no more.
 *
 * @param choices of each piece, the cloths wide enough for it that it may be cut from
 */
export function shareOut(
  pieces: readonly CutPiece[],
  cloths: readonly NamedCloth[],
  choices: readonly (readonly number[])[],
  { lengthOf, random, goOn }: ShareOptions,
): Share {
  const areas = pieces.map(({ width, length, count, onFold }) => width * length * count * (onFold ? 2 : 1));
  const cost = (share: Share): Cost => {
    let [over, bought, own] = [0, 0, 0];
    share.forEach((cloth, i) => (over += cloth < 0 ? areas[i]! : 0));
    for (const [at, { width, length: most }] of cloths.entries()) {
      const mine = share.flatMap((cloth, i) => (cloth === at ? [i] : []));
      if (mine.length === 0) continue;
      const length = lengthOf(at, mine);
      if (most !== undefined && length > most + SAME) return [Infinity, Infinity, Infinity];
      if (most === undefined) bought += length * width;
      else own += length * width;
    }
    return [over, bought, own];
  };

  let share: number[] = pieces.map(() => -1);
  pieces.forEach((_, i) => {
    let best = cost(share);
    for (const cloth of choices[i]!) {
      const other = share.map((from, at) => (at === i ? cloth : from));
      const costs = cost(other);
      if (cheaper(costs, best) || (share[i]! < 0 && costs[0] < best[0])) {
        best = costs;
        share = other;
      }
    }
  });

  const free = choices.flatMap((clothsOf, i) => (clothsOf.length > 1 || share[i]! < 0 ? [i] : []));
  let costs = cost(share);
  for (let quiet = 0; free.length > 0 && quiet < PATIENCE && goOn(); quiet++) {
    const one = free[random.next(free.length)]!;
    const other = free[random.next(free.length)]!;
    const next = [...share];
    if (random.next(2) === 0) {
      const clothsOf = choices[one]!;
      next[one] = clothsOf[random.next(clothsOf.length)]!;
    } else {
      if (!choices[one]!.includes(share[other]!) && share[other]! >= 0) continue;
      if (!choices[other]!.includes(share[one]!) && share[one]! >= 0) continue;
      [next[one], next[other]] = [share[other]!, share[one]!];
    }
    const nextCosts = cost(next);
    if (cheaper(costs, nextCosts)) continue;
    if (cheaper(nextCosts, costs)) quiet = -1;
    share = next;
    costs = nextCosts;
  }
  return share;
}

function cheaper(one: Cost, other: Cost): boolean {
  for (const [i, mine] of one.entries()) {
    const theirs = other[i]!;
    if (mine !== theirs && Math.abs(mine - theirs) > SAME * Math.max(1, Math.min(mine, theirs))) return mine < theirs;
  }
  return false;
}
