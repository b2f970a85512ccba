import { stripBound } from "./bound";
import { makeDecoder } from "./decode";
import { seededRandom } from "./random";
import { NEVER, type Strip } from "./strip";
import { FOLD_TASTES, TASTES } from "./tastes";

/** The best layout of a strip so far, in the strip's steps; by box. */
export interface StripLayout {
  readonly end: number;
  readonly x: Int32Array;
  readonly y: Int32Array;
  readonly turned: Uint8Array;
}

/** A search that can be stopped and taken up again; running it in parts gives the same as running it at once. */
export interface StripSearch {
  readonly strip: Strip;
  /** No layout is shorter, in the strip's steps. */
  readonly bound: number;
  readonly best: StripLayout;
  /** How many layouts were tried. */
  readonly tries: number;
  /** The best cannot be bettered, or nothing new is left to try. */
  readonly finished: boolean;
  /** Tries up to so many more layouts. */
  run(tries: number): void;
}

/** How many times its number of boxes a walk goes on without becoming better, before a new one starts. */
const PATIENCE = 6;
/** Of 100 tries that keep the beginning, how many give a stretch up. */
const GIVEN_UP = 10;
/** Of 100 tries, how many change the taste as well. */
const OTHER_TASTE = 8;

/**
 * Looks for a short layout of one strip. First each order (by length, width, area, girth) with each taste. Then walks: a
 * layout that must end below a target (one step better than the best, now and then shorter) is changed at random, and
 * the change is kept when no more area is left over than before. One kind of walk exchanges two boxes in the order, the
 * other keeps the beginning of the layout as it lies and goes on with another box.
 */
export function searchStrip(strip: Strip, seed: number): StripSearch {
  const { n } = strip;
  const random = seededRandom(seed);
  const tastes = strip.onFold.includes(1) ? FOLD_TASTES : TASTES;
  const bound = n === 0 ? 0 : stripBound(strip);
  const decoder = makeDecoder(strip);
  const starts = startOrders(strip);
  const best = { end: n === 0 ? 0 : NEVER, x: new Int32Array(n), y: new Int32Array(n), turned: new Uint8Array(n) };
  const alike = strip.kind.every((kind) => kind === strip.kind[0]);

  const order = starts[0]!.slice();
  const laying = new Uint8Array(n);
  let tries = 0;
  let missing = Infinity;
  let taste = 0;
  let laid = 0;
  let target = NEVER;
  /** How many of the starts are done; each is laid without a target and then with one. */
  let started = 0;
  let walking = false;
  let byOrder = false;
  let patience = 0;

  /** One try; whether it is a better layout than all before. */
  const lay = (from: Int32Array, keep: number, forced: number, withTaste: number): number => {
    tries++;
    const left = decoder.decode(from, laying, keep, forced, target, tastes[withTaste]!, best.end);
    if (left < 0 || decoder.end >= best.end) return left;
    best.end = decoder.end;
    best.x.set(decoder.x);
    best.y.set(decoder.y);
    for (let i = 0; i < n; i++) best.turned[decoder.order[i]!] = decoder.laying[i]! & 1;
    return -2;
  };
  const keepLaid = (): void => {
    laid = decoder.laid;
    if (byOrder) return;
    order.set(decoder.order);
    laying.set(decoder.laying);
  };
  /** A new target, so the layout at hand is laid anew. */
  const aim = (): void => {
    target = best.end - 1;
    if (best.end > bound) patience = 0;
    walking = false;
  };
  /** Lays the order at hand for the target and walks from there. */
  const settle = (): void => {
    const left = lay(order, 0, -1, taste);
    if (left === -2) return aim();
    missing = left;
    walking = true;
    patience = 0;
    keepLaid();
  };
  const start = (): void => {
    const each = starts.length * tastes.length;
    const from = starts[Math.floor((started % each) / tastes.length)]!;
    const withTaste = started % tastes.length;
    if (started === each) target = best.end - 1;
    const left = lay(from, 0, -1, withTaste);
    if (left === -2 && started >= each) target = best.end - 1;
    if (started >= each && left >= 0 && left < missing) {
      missing = left;
      taste = withTaste;
      order.set(from);
    }
    started++;
    if (started === each * 2) byOrder = random.next(2) === 0;
  };
  const restart = (): void => {
    order.set(starts[random.next(starts.length)]!);
    for (let i = random.next(n) + 1; i > 0; i--) exchange(order, random.next(n), random.next(n));
    taste = random.next(tastes.length);
    byOrder = random.next(2) === 0;
    settle();
  };
  const step = (): void => {
    const withTaste = random.next(100) < OTHER_TASTE ? random.next(tastes.length) : taste;
    patience++;
    if (byOrder) {
      const one = random.next(n);
      let other = random.next(n);
      while (strip.kind[order[one]!] === strip.kind[order[other]!]) other = other + 1 === n ? 0 : other + 1;
      exchange(order, one, other);
      const left = lay(order, 0, -1, withTaste);
      if (left === -2 || left <= missing) accept(left, withTaste);
      else exchange(order, one, other);
      return;
    }
    const keep = Math.min(n - 2, random.next(laid + 1));
    const forced = random.next(100) < GIVEN_UP ? n : keep + 1 + random.next(n - keep - 1);
    const left = lay(order, keep, forced, withTaste);
    if (left === -2 || (left >= 0 && left <= missing)) accept(left, withTaste);
  };
  const accept = (left: number, withTaste: number): void => {
    taste = withTaste;
    if (left === -2) {
      keepLaid();
      return aim();
    }
    if (left < missing) patience = 0;
    missing = left;
    keepLaid();
  };

  return {
    strip,
    bound,
    best,
    get tries() {
      return tries;
    },
    get finished() {
      return best.end <= bound || (alike && started > 0);
    },
    run(more) {
      const end = tries + more;
      const each = starts.length * tastes.length;
      while (tries < end && !this.finished) {
        if (started < each * 2) start();
        else if (walking && patience < PATIENCE * n) step();
        else if (walking) restart();
        else settle();
      }
    },
  };
}

function exchange(order: Int32Array, one: number, other: number): void {
  const box = order[one]!;
  order[one] = order[other]!;
  order[other] = box;
}

/** The boxes by falling length, width, area and girth. */
function startOrders({ n, across, advance }: Strip): Int32Array[] {
  const sizes: ((box: number) => number)[] = [
    (box) => advance[box]!,
    (box) => across[box]!,
    (box) => across[box]! * advance[box]!,
    (box) => across[box]! + advance[box]!,
  ];
  return sizes.map((size) =>
    Int32Array.from({ length: n }, (_, i) => i).sort(
      (a, b) => size(b) - size(a) || across[b]! - across[a]! || advance[b]! - advance[a]! || a - b,
    ),
  );
}
