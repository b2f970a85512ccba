import type { Problem } from "../../problem";
import { clothProblems, fitProblems, pieceProblems } from "./check";
import { outlineZone } from "./outline-zone";
import { fitsFolded, singlePart, sortPieces, zonesOf, type Part, type Zones } from "./parts";
import { layoutBound } from "./layout-bound";
import { placementsOf } from "./placements";
import { fromSteps, stepsDown, stepsUp } from "./steps";
import type { StripCloth } from "./strip";
import type { Cloth, CutPiece, Layout } from "./types";
import { boxZone, type Zone } from "./zone";

/** A search for the shortest layout that can be stopped, looked at and taken up again. */
export interface LayoutSearch {
  readonly tries: number;
  /** Nothing better is to be found. */
  readonly finished: boolean;
  /** Tries up to so many more layouts. Running it in parts gives the same as running it at once. */
  run(tries: number): void;
  /** The best so far. */
  layout(): Layout;
}

/** Tries that each way of sharing the pieces out gets before the best way is chosen. */
const QUICK = 100;
/** Tries for the question whether one more pair has room beside what lies single. */
const ROOM = 20;
/** Tries in a row on one zone. */
const TURN = 50;
/** A layout by outlines takes as long as many by boxes. */
const OUTLINE_SHARE = 5;

/** One zone with its two searches; the shorter counts. */
interface Lay {
  readonly parts: readonly Part[];
  readonly zones: readonly Zone[];
}
interface Way {
  readonly folded: Lay;
  readonly single: Lay;
}
interface Task {
  readonly zone: Zone;
  readonly tries: number;
}

/**
 * A search for the shortest layout of the pieces on the cloth. On folded cloth it lays the folded and the single end by
 * themselves, and looks whether odd pieces are better opened, and whether pairs have room beside what lies single.
 */
export function layoutSearch(pieces: readonly CutPiece[], cloth: Cloth, seed = 1): LayoutSearch {
  const problems = layoutProblems(pieces, cloth);
  if (problems.length > 0) {
    const layout: Layout = {
      length: null,
      lowerBound: 0,
      proved: false,
      by: "boxes",
      placements: [],
      tries: 0,
      problems,
    };
    return { tries: 0, finished: true, run: () => undefined, layout: () => layout };
  }
  const sorted = sortPieces(pieces);
  const single = stripCloth(cloth, 1);
  const folded = stripCloth(cloth, 2);
  const bound = layoutBound(sorted, cloth, folded.width, single);
  const all: Zone[] = [];
  const lay = (parts: readonly Part[], on: StripCloth): Lay => {
    const zones: Zone[] = [];
    if (parts.length > 0) zones.push(boxZone(parts, on, seed));
    if (parts.some(({ piece }) => piece.outline)) zones.push(outlineZone(parts, on, cloth.nap === "without", seed));
    all.push(...zones);
    return { parts, zones };
  };
  const makeWay = (zones: Zones): Way => ({ folded: lay(zones.folded, folded), single: lay(zones.single, single) });
  const start = (from: Way): number => singleStart(from, single);
  const total = (way: Way): number =>
    way.single.zones.length > 0 ? start(way) + shorter(way.single)!.end : (shorter(way.folded)?.end ?? 0);

  let way = makeWay(zonesOf(sorted, cloth, folded.width, false));
  const better = (other: Way): void => {
    if (total(other) < total(way)) way = other;
  };
  function* work(): Generator<Task, void> {
    yield* tasks(way, 1);
    yield* tasks(way, QUICK);
    if (cloth.layout === "folded") {
      if (sorted.some((piece) => piece.count % 2 === 1 && !piece.onFold && fitsFolded(piece, folded.width))) {
        const odd = makeWay(zonesOf(sorted, cloth, folded.width, true));
        yield* tasks(odd, QUICK);
        better(odd);
      }
      if (way.single.parts.length > 0) {
        const filled = yield* fill(way);
        if (filled) {
          yield* tasks(filled, QUICK);
          better(filled);
        }
      }
    }
    for (;;) {
      // Boxes hardly ever catch up with outlines: only the better of the two goes on.
      const open = [shorter(way.folded), shorter(way.single)].filter((zone) => zone !== undefined && !zone.finished);
      if (open.length === 0) return;
      for (const zone of open) yield { zone: zone!, tries: turnOf(zone!) };
    }
  }
  /** Pairs, the largest first, that have room on the opened cloth without making its end longer. */
  function* fill(from: Way): Generator<Task, Way | undefined> {
    let within = from.single;
    let rest = [...from.folded.parts];
    for (const part of from.folded.parts) {
      if (part.piece.onFold) continue;
      const with2 = lay([...within.parts, singlePart(part.piece, false), singlePart(part.piece, true)], single);
      for (const zone of with2.zones) yield { zone, tries: ROOM };
      if (shorter(with2)!.end > shorter(within)!.end) continue;
      within = with2;
      rest = rest.filter((other) => other !== part);
    }
    if (within === from.single) return undefined;
    return { folded: lay(rest, folded), single: within };
  }

  const schedule = work();
  let task: Task | undefined;
  let left = 0;
  let finished = false;
  const advance = (): void => {
    const next = schedule.next();
    finished = next.done === true || fromSteps(total(way)) <= bound;
    task = next.done ? undefined : next.value;
    left = task?.tries ?? 0;
  };
  const search: LayoutSearch = {
    get tries() {
      return all.reduce((sum, zone) => sum + zone.tries, 0);
    },
    get finished() {
      return finished;
    },
    run(tries) {
      for (let more = tries; more > 0 && !finished;) {
        if (!task || left <= 0 || task.zone.finished) {
          advance();
          continue;
        }
        const before = task.zone.tries;
        task.zone.run(Math.min(more, left));
        left -= task.zone.tries - before;
        more -= task.zone.tries - before;
      }
    },
    layout() {
      // The first layout of every zone is always there, however few tries were allowed.
      for (const { zones } of [way.folded, way.single]) for (const zone of zones) if (zone.tries === 0) zone.run(1);
      const length = fromSteps(total(way));
      const zones = [shorter(way.folded), shorter(way.single)];
      return {
        length,
        lowerBound: bound,
        proved:
          length <= bound || (cloth.layout !== "folded" && way.single.zones[0]!.end <= way.single.zones[0]!.bound),
        by: sorted.some(({ outline }) => outline) ? "outlines" : "boxes",
        placements: placementsOf(zones[0]?.spots() ?? [], zones[1]?.spots() ?? [], start(way)),
        tries: search.tries,
        problems: [],
      };
    },
  };
  return search;
}

function layoutProblems(pieces: readonly CutPiece[], cloth: Cloth): readonly Problem[] {
  const problems = [...clothProblems(cloth), ...pieceProblems(pieces)];
  return problems.length > 0 ? problems : fitProblems(pieces, cloth, cloth.unit ?? null);
}

function stripCloth(cloth: Cloth, layers: 1 | 2): StripCloth {
  return {
    width: Math.floor(stepsDown(cloth.width) / layers),
    gap: stepsUp(cloth.gap ?? 0),
    repeat: stepsUp(cloth.repeat ?? 0),
  };
}

function shorter({ zones }: Lay): Zone | undefined {
  return zones.reduce((best, zone) => (zone.end < best.end ? zone : best), zones[0]!) as Zone | undefined;
}

/** Where the single end begins: after the folded one, a gap apart, on a repeat. */
function singleStart(way: Way, { gap, repeat }: StripCloth): number {
  const folded = shorter(way.folded);
  if (!folded) return 0;
  const after = folded.end + gap;
  return repeat > 0 ? Math.ceil(after / repeat) * repeat : after;
}

const turnOf = (zone: Zone): number => (zone.byOutline ? TURN / OUTLINE_SHARE : TURN);

function* tasks(way: Way, tries: number): Generator<Task, void> {
  for (const { zones } of [way.folded, way.single])
    for (const zone of zones) yield { zone, tries: zone.byOutline ? Math.ceil(tries / OUTLINE_SHARE) : tries };
}
