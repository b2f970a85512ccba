import { makeColumns } from "./columns";
import { columnWidth, makeShapes, startOrders } from "./outline-shapes";
import type { Part } from "./parts";
import { seededRandom } from "./random";
import { NEVER, type StripCloth } from "./strip";
import type { Zone } from "./zone";

/** How many times its number of parts a walk goes on without becoming better, before a new one starts. */
const PATIENCE = 2;
/** Of 100 new walks, how many start from the best order, with at most so many exchanges. */
const NEAR = 70;
const KICKS = 6;
/** Of 100 tries, how many turn one part over instead of exchanging two. */
const TURN_OVER = 30;
/** Where the parts lie on average counts a twentieth of where the layout ends. */
const MIDDLE = 0.05;
/** A part goes where its middle lies lowest; in some walks its length counts as well, or against it. */
const LEANINGS = [1, 1, 0.5, 1.3] as const;

/**
 * The search by outlines: each part in turn lies, in the way and at the column where its middle is lowest, wherever there
 * is room. Exchanges of two parts in the order, and parts laid another way, are kept when the layout ends no later (and,
 * a little, when its parts lie lower).
 */
export function outlineZone(parts: readonly Part[], cloth: StripCloth, upsideDown: boolean, seed: number): Zone {
  const n = parts.length;
  const column = columnWidth(parts, cloth);
  const count = Math.floor((cloth.width + cloth.gap) / column);
  const columns = makeColumns(count, n);
  const shapes = makeShapes(parts, cloth, column, upsideDown);
  const random = seededRandom(seed);
  const starts = startOrders(shapes);
  const area = shapes.reduce((sum, shape) => sum + shape.area, 0);
  const alike = shapes.every(({ kind, ways }) => kind === shapes[0]!.kind && ways.length === 1);

  /** Of each part: its column, its lowest point, its way, whether it lies; and the one way it must lie in, or -1. */
  const at = new Int32Array(n);
  const from = new Int32Array(n);
  const way = new Int32Array(n);
  const lies = new Uint8Array(n);
  const only = new Int32Array(n).fill(-1);
  const shortestOnly = only.slice();
  const saved = { at: at.slice(), from: from.slice(), way: way.slice(), lies: lies.slice() };
  const best = { end: NEVER, at: at.slice(), from: from.slice(), way: way.slice() };
  let order = starts[0]!.slice();
  let shortest = order;
  let leaning: number = LEANINGS[0];
  let shortestLeaning: number = leaning;
  let cost = Infinity;
  let tries = 0;
  let started = 0;
  let patience = 0;

  const take = (part: number): void => {
    if (lies[part] === 1) columns.take(shapes[part]!.profiles[way[part]!]!, at[part]!, from[part]!);
    lies[part] = 0;
  };
  const put = (part: number): void => {
    columns.put(shapes[part]!.profiles[way[part]!]!, at[part]!, from[part]!);
    lies[part] = 1;
  };
  /** Lays one part; false when it would end above the limit. */
  const lay = (part: number, limit: number): boolean => {
    const { profiles, middles, onFold } = shapes[part]!;
    let lowest = Infinity;
    for (const [index, profile] of profiles.entries()) {
      if (only[part]! >= 0 && only[part] !== index) continue;
      const height = leaning * middles[index]! + (1 - leaning) * profile.length;
      const last = onFold ? 0 : count - profile.columns;
      for (let place = 0; place <= last; place++) {
        const below = Math.min(limit - profile.length + 1, lowest - height);
        if (below <= 0) break;
        const y = columns.lowest(profile, place, cloth.repeat, below);
        if (y >= below) continue;
        lowest = y + height;
        at[part] = place;
        from[part] = y;
        way[part] = index;
      }
    }
    if (lowest === Infinity) return false;
    put(part);
    return true;
  };
  /** One try: lays the order anew from a place on. What it costs, Infinity as soon as that is more than `most`. */
  const layFrom = (first: number, most: number): number => {
    tries++;
    for (let place = first; place < n; place++) take(order[place]!);
    let end = 0;
    let heights = 0;
    for (const [place, part] of order.entries()) {
      if (place >= first && !lay(part, most)) return Infinity;
      const { profiles, middles, area: weight } = shapes[part]!;
      end = Math.max(end, from[part]! + profiles[way[part]!]!.length);
      heights += weight * (from[part]! + middles[way[part]!]!);
    }
    if (end < best.end) {
      best.end = end;
      best.at.set(at);
      best.from.set(from);
      best.way.set(way);
      shortest = order.slice();
      shortestOnly.set(only);
      shortestLeaning = leaning;
    }
    return end + (MIDDLE * heights) / area;
  };
  const start = (): void => {
    order = starts[started++]!.slice();
    layFrom(0, NEVER);
    if (started < starts.length) return;
    order = shortest.slice();
    cost = layFrom(0, NEVER);
  };
  /** From the best order with a few exchanges, or from another start with many. */
  const restart = (): void => {
    const near = random.next(100) < NEAR;
    leaning = near ? shortestLeaning : LEANINGS[random.next(LEANINGS.length)]!;
    if (near) only.set(shortestOnly);
    else only.fill(-1);
    order = near ? shortest.slice() : starts[random.next(starts.length)]!.slice();
    for (let i = random.next(near ? KICKS : n) + 1; i > 0; i--) exchange(order, random.next(n), random.next(n));
    cost = layFrom(0, NEVER);
    patience = 0;
  };
  /** Changes something from a place of the order on, and takes it back when it costs more. */
  const attempt = (first: number, change: () => void, back: () => void): void => {
    saved.at.set(at);
    saved.from.set(from);
    saved.way.set(way);
    saved.lies.set(lies);
    for (let i = first; i < n; i++) take(order[i]!);
    change();
    const costs = layFrom(first, cost);
    patience = costs < cost ? 0 : patience + 1;
    if (costs <= cost) {
      cost = costs;
      return;
    }
    for (let i = first; i < n; i++) take(order[i]!);
    back();
    at.set(saved.at);
    from.set(saved.from);
    way.set(saved.way);
    for (let i = first; i < n; i++) if (saved.lies[order[i]!] === 1) put(order[i]!);
  };
  const step = (): void => {
    const one = random.next(n);
    const part = order[one]!;
    const { ways, kind } = shapes[part]!;
    if (ways.length > 1 && random.next(100) < TURN_OVER) {
      const before = only[part]!;
      const next =
        before >= 0 && random.next(3) === 0 ? -1 : (way[part]! + 1 + random.next(ways.length - 1)) % ways.length;
      return attempt(one, () => (only[part] = next), () => (only[part] = before)); // prettier-ignore
    }
    let other = random.next(n);
    for (let looked = 0; looked < n && shapes[order[other]!]!.kind === kind; looked++) other = (other + 1) % n;
    const swap = (): void => exchange(order, one, other);
    attempt(Math.min(one, other), swap, swap);
  };

  return {
    parts,
    byOutline: true,
    bound: 0,
    get end() {
      return best.end;
    },
    get tries() {
      return tries;
    },
    get finished() {
      return started >= starts.length && (alike || best.end === NEVER);
    },
    run(more) {
      for (const end = tries + more; tries < end && !this.finished;) {
        if (started < starts.length) start();
        else if (patience >= PATIENCE * n) restart();
        else step();
      }
    },
    spots: () =>
      parts.map((part, i) => {
        const lying = shapes[i]!.ways[best.way[i]!]!;
        return { part, x: best.at[i]! * column, y: best.from[i]!, turned: lying.turned, way: lying };
      }),
  };
}

function exchange(order: number[], one: number, other: number): void {
  [order[one], order[other]] = [order[other]!, order[one]!];
}
