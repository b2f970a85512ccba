import { makeColumns } from "./columns";
import { outlineArea } from "./outline-area";
import type { Part } from "./parts";
import { profileOf, type Profile } from "./profile";
import { seededRandom } from "./random";
import { commonStep, NEVER, type StripCloth } from "./strip";
import { STEPS } from "./steps";
import { beyondOf, inSteps, linesOf, waysOf, type Way } from "./ways";
import type { Zone } from "./zone";

/** About how many columns the cloth is divided into. */
const COLUMNS = 256;
/** How many times its number of parts a walk goes on without becoming better, before a new one starts. */
const PATIENCE = 3;
/** The target is this share of the length below the best. */
const AIM = 400;

interface Shape {
  readonly ways: readonly Way[];
  readonly profiles: readonly Profile[];
  readonly area: number;
  readonly kind: string;
  readonly onFold: boolean;
}

/**
 * The search by outlines: each part in turn lies as far down as it finds room, in the way and at the column where it ends
 * first. Exchanges of two parts in the order are kept when no more area is left over above a target.
 */
export function outlineZone(parts: readonly Part[], cloth: StripCloth, upsideDown: boolean, seed: number): Zone {
  const n = parts.length;
  const column = columnWidth(parts, cloth);
  const count = Math.floor((cloth.width + cloth.gap) / column);
  const columns = makeColumns(count, n);
  const shapes = makeShapes(parts, cloth, column, upsideDown);
  const random = seededRandom(seed);
  const starts = startOrders(shapes);

  const at = new Int32Array(n);
  const from = new Int32Array(n);
  const way = new Int32Array(n);
  const lies = new Uint8Array(n);
  const saved = { at: at.slice(), from: from.slice(), way: way.slice(), lies: lies.slice() };
  const best = { end: NEVER, at: at.slice(), from: from.slice(), way: way.slice() };
  let order = starts[0]!.slice();
  let shortest = order;
  let missing = Infinity;
  let target = NEVER;
  let tries = 0;
  let started = 0;
  let patience = 0;
  let alike = true;
  for (const { kind } of shapes) alike &&= kind === shapes[0]!.kind;

  const ends = (part: number): number => from[part]! + shapes[part]!.profiles[way[part]!]!.length;
  const put = (part: number): void => {
    columns.put(shapes[part]!.profiles[way[part]!]!, at[part]!, from[part]!);
    lies[part] = 1;
  };
  const take = (part: number): void => {
    if (lies[part] === 1) columns.take(shapes[part]!.profiles[way[part]!]!, at[part]!, from[part]!);
    lies[part] = 0;
  };
  /** Lays one part where it ends first; false when it would end above the target. */
  const lay = (part: number): boolean => {
    const { profiles, onFold } = shapes[part]!;
    let end = target + 1;
    for (const [index, profile] of profiles.entries()) {
      const last = onFold ? 0 : count - profile.columns;
      for (let place = 0; place <= last; place++) {
        const limit = end - profile.length;
        if (limit <= 0) break;
        const y = columns.lowest(profile, place, cloth.repeat, limit);
        if (y >= limit) continue;
        end = y + profile.length;
        at[part] = place;
        from[part] = y;
        way[part] = index;
      }
    }
    if (end > target) return false;
    put(part);
    return true;
  };
  /** One try: lays the order anew from a place on. */
  const layFrom = (first: number): number => {
    tries++;
    for (let place = first; place < n; place++) take(order[place]!);
    let left = 0;
    let end = 0;
    for (const [place, part] of order.entries()) {
      if (place < first ? lies[part] === 1 : lay(part)) end = Math.max(end, ends(part));
      else left += shapes[part]!.area;
    }
    if (left > 0 || end >= best.end) return left;
    best.end = end;
    best.at.set(at);
    best.from.set(from);
    best.way.set(way);
    target = end - Math.max(1, Math.floor(end / AIM));
    return 0;
  };
  const start = (): void => {
    order = starts[started++]!.slice();
    target = NEVER - 1;
    const before = best.end;
    layFrom(0);
    if (best.end < before) shortest = order;
    if (started < starts.length) return;
    order = shortest.slice();
    target = best.end - Math.max(1, Math.floor(best.end / AIM));
    missing = 0;
  };
  const restart = (): void => {
    order = starts[random.next(starts.length)]!.slice();
    for (let i = random.next(n) + 1; i > 0; i--) exchange(order, random.next(n), random.next(n));
    missing = layFrom(0);
    patience = 0;
  };
  const step = (): void => {
    let one = random.next(n);
    let other = random.next(n);
    while (shapes[order[one]!]!.kind === shapes[order[other]!]!.kind) other = other + 1 === n ? 0 : other + 1;
    if (one > other) [one, other] = [other, one];
    saved.at.set(at);
    saved.from.set(from);
    saved.way.set(way);
    saved.lies.set(lies);
    for (let i = one; i < n; i++) take(order[i]!);
    exchange(order, one, other);
    const left = layFrom(one);
    patience = left < missing ? 0 : patience + 1;
    if (left <= missing) {
      missing = left;
      return;
    }
    for (let i = one; i < n; i++) take(order[i]!);
    exchange(order, one, other);
    at.set(saved.at);
    from.set(saved.from);
    way.set(saved.way);
    for (let i = one; i < n; i++) if (saved.lies[order[i]!] === 1) put(order[i]!);
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
      return alike && started >= starts.length;
    },
    run(more) {
      for (const end = tries + more; tries < end && !this.finished;) {
        if (started < starts.length) start();
        else if (missing === 0) missing = layFrom(0);
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

/** A common step of the widths where one is coarse enough, so that pieces aren't rounded up needlessly. */
function columnWidth(parts: readonly Part[], { width, gap }: StripCloth): number {
  let step = commonStep(width, gap);
  for (const { box } of parts) step = commonStep(step, box.width);
  return step * Math.max(1, Math.ceil((width + gap) / step / COLUMNS));
}

function makeShapes(parts: readonly Part[], cloth: StripCloth, column: number, upsideDown: boolean): Shape[] {
  const known = new Map<string, Shape>();
  const { gap, width } = cloth;
  const count = Math.floor((width + gap) / column);
  return parts.map((part) => {
    const { piece, layer, box, mirrored } = part;
    const { outline } = piece;
    const kind = JSON.stringify([piece.width, piece.length, outline ?? null, layer, box.onFold, box.mayTurn, mirrored]);
    const found = known.get(kind);
    if (found) return found;
    const ways = waysOf(part, upsideDown);
    const lying = ways.map((way) => {
      const beyond = beyondOf(part, way);
      const size = way.turned ? { width: box.length, length: box.width } : box;
      const profile = profileOf(inSteps(linesOf(part, way)), column, size, {
        left: beyond.left * STEPS,
        right: beyond.right * STEPS + gap,
        bottom: beyond.bottom * STEPS,
        top: beyond.top * STEPS + gap,
      });
      return { way, profile };
    });
    const fits = lying.filter(({ profile }) => profile.columns <= count);
    const shape: Shape = {
      ways: fits.map(({ way }) => way),
      profiles: fits.map(({ profile }) => profile),
      area: outline ? outlineArea(outline) : piece.width * piece.length,
      kind,
      onFold: box.onFold,
    };
    known.set(kind, shape);
    return shape;
  });
}

/** The parts by falling length, width, area and box. */
function startOrders(shapes: readonly Shape[]): number[][] {
  const sizes: ((shape: Shape) => number)[] = [
    ({ profiles }) => profiles[0]?.length ?? 0,
    ({ profiles }) => profiles[0]?.columns ?? 0,
    ({ area }) => area,
    ({ profiles }) => (profiles[0] ? profiles[0].length * profiles[0].columns : 0),
  ];
  return sizes.map((size) => shapes.map((_, i) => i).sort((a, b) => size(shapes[b]!) - size(shapes[a]!) || a - b));
}
