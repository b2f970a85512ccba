import type { KeptFormulas, ShownNow, ShownValue } from "./keep-values";

/** One kept formula with all that it filled, and where its values stand now. Rows are counted from 0. */
export interface KeptPlace {
  readonly run: KeptFormulas;
  /** As many lines as the formula filled. */
  readonly values: readonly (readonly ShownValue[])[];
  /** Where it stood, and where it would stand now. */
  readonly was: number;
  readonly row: number;
  /** Every cell there shows what was left in it, and no formula has come into one of them. */
  readonly stands: boolean;
}

/** Rows further than this were moved on purpose. */
const FURTHEST = 200;
const SHIFTS = 2 * FURTHEST + 1;
/**
 * What must speak for a row's having moved, in cells that show their value: more than two numbers or short words,
 * because 14 stands in many places, or one sentence.
 */
const MOVED = 2;
const SENTENCE = 12;

/**
 * Where kept values stand after rows were inserted, removed or sorted: the cells of one row go together, and most of them
 * must agree. Where too little speaks for a move, a row is looked for in its old place; the nearest place wins, of two
 * equally near the lower one. Never two rows in one place.
 *
 * @returns in the order of `kept`; cells of a run one by one, a spill as a whole
 */
export function keptPlaces(kept: readonly KeptFormulas[], now: ShownNow): KeptPlace[] {
  const moved = new Map<string, Shifts>();
  for (const sheet of new Set(kept.map((run) => run.sheet)))
    moved.set(
      sheet,
      rowShifts(
        kept.filter((run) => run.sheet === sheet),
        now,
      ),
    );
  return kept.flatMap((run) => {
    const places = placesIn(run, moved.get(run.sheet)!, now);
    if (places.some(({ stands }) => stands)) return places;
    // Rows put into a table move its own columns only: what stands beside them is looked for by itself.
    const alone = placesIn(run, rowShifts([run], now), now);
    return alone.some(({ stands }) => stands) ? alone : places;
  });
}

/** By how many rows each row has moved; `gone` where another row has a better claim to the place. */
type Shifts = ReadonlyMap<number, { readonly by: number; readonly gone: boolean }>;

function placesIn(run: KeptFormulas, shifts: Shifts, now: ShownNow): KeptPlace[] {
  const place = (from: number, values: KeptFormulas["values"]): KeptPlace => {
    const was = run.row + from;
    const { by } = shifts.get(was)!;
    const stands = values.every((line, r) => {
      const shift = shifts.get(was + r)!;
      return (
        shift.by === by &&
        !shift.gone &&
        line.every((value, c) => sameShown(now(run.sheet, was + r + by, run.column + c), value))
      );
    });
    return { run, values, was, row: was + by, stands };
  };
  return run.spilled ? [place(0, run.values)] : run.values.map((line, r) => place(r, [line]));
}

/** The most telling way through the rows: as many cells as can be show their value, with as few moves as can be. */
function rowShifts(runs: readonly KeptFormulas[], now: ShownNow): Shifts {
  const cells = new Map<
    number,
    { readonly run: KeptFormulas; readonly column: number; readonly value: ShownValue }[]
  >();
  for (const run of runs)
    run.values.forEach((line, r) =>
      line.forEach((value, c) => {
        const list = cells.get(run.row + r) ?? [];
        cells.set(run.row + r, list);
        list.push({ run, column: run.column + c, value });
      }),
    );
  const rows = [...cells.keys()].sort((a, b) => a - b);
  const scoreAt = (row: number, by: number): number =>
    row + by < 0
      ? 0
      : cells
          .get(row)!
          .reduce((sum, { run, column, value }) => sum + telling(value, now(run.sheet, row + by, column)), 0);
  const from: Int16Array[] = [];
  const scores: Float64Array[] = [];
  let best = Float64Array.from({ length: SHIFTS }, (_, at) => (at === FURTHEST ? 0 : -MOVED));
  for (const row of rows) {
    const top = highest(best);
    const scored = Float64Array.from({ length: SHIFTS }, (_, at) => scoreAt(row, at - FURTHEST));
    const came = new Int16Array(SHIFTS);
    best = Float64Array.from({ length: SHIFTS }, (_, at) => {
      const stays = best[at]! >= best[top]! - MOVED;
      came[at] = stays ? at : top;
      return (stays ? best[at]! : best[top]! - MOVED) + scored[at]! - far(at - FURTHEST);
    });
    from.push(came);
    scores.push(scored);
  }
  const shifts = new Map<number, { by: number; gone: boolean }>();
  const claims = new Map<number, { row: number; score: number }>();
  let at = highest(best);
  for (let index = rows.length - 1; index >= 0; index--) {
    const row = rows[index]!;
    const by = at - FURTHEST;
    const score = scores[index]![at]!;
    const other = claims.get(row + by);
    const gone = other !== undefined && other.score > score;
    if (other && !gone) shifts.get(other.row)!.gone = true;
    if (!gone) claims.set(row + by, { row, score });
    shifts.set(row, { by, gone });
    at = from[index]![at]!;
  }
  return shifts;
}

/** So little that it only parts two ways that are equally good. */
const far = (by: number): number => (Math.abs(by) + (by < 0 ? 0.5 : 0)) * 1e-9;

function highest(list: Float64Array): number {
  let top = FURTHEST;
  list.forEach((value, at) => {
    if (value > list[top]!) top = at;
  });
  return top;
}

/** Blank answers stand together anywhere: they say nothing about where the rows went. */
function telling(value: ShownValue, shown: ReturnType<ShownNow>): number {
  if (value === "" || !sameShown(shown, value)) return 0;
  return typeof value === "string" && value.length > SENTENCE ? MOVED + 1 : 1;
}

/** Fifteen digits are what a workbook keeps of a number. */
export function sameShown(now: ReturnType<ShownNow>, was: ShownValue): boolean {
  if (typeof now === "number" && typeof was === "number") return Math.abs(now - was) <= 1e-12 * Math.abs(was);
  return now === was;
}
