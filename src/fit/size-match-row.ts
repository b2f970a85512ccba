import { placeName } from "../chart/places";
import { isFault, isSpan, type Chart, type ChartRow, type Fault, type Span } from "../chart/model";
import { spanText } from "../chart/cells-figure";
import { formatLength } from "../length/format";
import { TOLERANCE } from "../length/round-up";
import { answer, refuse, type Problem, type Result } from "../problem";

/** One printed figure of a row, in rising order; a single figure is a range of no width. */
export interface Step extends Span {
  /** The size's column, counted from 0. */
  readonly index: number;
  /** Whether the range stops just below its upper end, because the next one begins there. */
  readonly halfOpen: boolean;
  /** What is wrong or missing between this figure and the one before. */
  readonly hole: Problem | null;
}

/** A row made ready for looking up: its figures in rising order. */
export interface Scale {
  readonly steps: readonly Step[];
  /** What one size makes at each end, by the last two figures that differ. Nought for a single figure. */
  readonly endStep: { readonly above: number; readonly below: number };
  /** Faults beyond the last and before the first figure. */
  readonly unreadable: { readonly above: Problem | null; readonly below: Problem | null };
}

const scales = new WeakMap<ChartRow, Result<Scale>>();

/**
 * The figures of a row in rising order. A chart may list its sizes from large to small; a row that goes up and down again
 * is refused, because a slip such as 63 for 36 would give a wrong size in silence.
 */
export function scaleOf(chart: Chart, row: ChartRow): Result<Scale> {
  const before = scales.get(row);
  if (before) return before;
  const scale = makeScale(chart, row);
  scales.set(row, scale);
  return scale;
}

function makeScale(chart: Chart, row: ChartRow): Result<Scale> {
  const place = placeName(row.place);
  const found: { index: number; low: number; high: number; hole: Problem | null }[] = [];
  let hole: Problem | null = null;
  let fault: Problem | null = null;
  let below: Problem | null = null;
  row.values.forEach((figure, index) => {
    const size = chart.sizes[index]!;
    if (figure === null || isFault(figure)) {
      const problem = figure === null ? refuse("missingFigure", { place, size }).problem : (figure as Fault).fault;
      hole ??= problem;
      if (figure !== null) fault ??= problem;
      return;
    }
    if (found.length === 0) below = fault;
    const { low, high } = isSpan(figure) ? figure : { low: figure, high: figure };
    found.push({ index, low, high, hole: found.length === 0 ? null : hole });
    [hole, fault] = [null, null];
  });
  const [first] = found;
  const last = found.at(-1);
  if (!first || !last) {
    if (fault) return { ok: false, problem: fault };
    return refuse("missingFigure", { place, size: chart.sizes[0] ?? "" });
  }
  let above: Problem | null = fault;
  // Of a row that stands still the size numbers say which is the larger.
  if (last.low < first.low || (last.low === first.low && numbersFall(chart.sizes, first, last))) {
    const holes = found.map((step) => step.hole);
    found.reverse();
    found.forEach((step, index) => (step.hole = index === 0 ? null : holes[found.length - index]!));
    [above, below] = [below, above];
  }
  const out = found.findIndex((step, index) => index > 0 && falls(found[index - 1]!, step));
  const slip = found.at(-1)!.low > found[0]!.low && numbersFall(chart.sizes, found[0]!, found.at(-1)!);
  if (out > 0 || slip) return falling(chart, row, found, Math.max(out, 1));
  // Two sizes may share a range: what counts is the range beside it.
  const beside = (index: number, way: 1 | -1) => {
    let at = index + way;
    while (found[at] && !falls(found[at]!, found[index]!) && !falls(found[index]!, found[at]!)) at += way;
    return found[at];
  };
  const touch = (one: Span | undefined, next: Span | undefined): boolean =>
    !!one && !!next && one.high > one.low && Math.abs(one.high - next.low) <= TOLERANCE;
  const steps = found.map((step, index): Step => {
    const next = beside(index, 1);
    // The last range, and one before a size without a figure, end as those before them do.
    const goesOn = step.high > step.low && !(next && next.hole === null) && touch(beside(index, -1), step);
    return { ...step, halfOpen: goesOn || touch(step, next) };
  });
  return answer({
    steps,
    endStep: { below: endStep(steps, "low"), above: endStep([...steps].reverse(), "high") },
    unreadable: { above, below },
  });
}

const falls = (before: Span, after: Span): boolean =>
  after.low < before.low - TOLERANCE || after.high < before.high - TOLERANCE;

/** Numbered sizes rise with their figures: 8, 10 with 36, 34 is a slip, not a chart from large to small. */
const numbersFall = (sizes: readonly string[], first: { index: number }, last: { index: number }): boolean =>
  Number(sizes[first.index]) > Number(sizes[last.index]);

function falling(chart: Chart, row: ChartRow, found: readonly (Span & { index: number })[], out: number) {
  const [before, after] = [found[out - 1]!, found[out]!];
  const [left, right] = before.index < after.index ? [before, after] : [after, before];
  const text = (span: Span) =>
    span.low === span.high ? formatLength(span.low, chart.unit) : spanText(span, chart.unit);
  return refuse("fallingRow", {
    place: placeName(row.place),
    size: chart.sizes[right.index]!,
    figures: `${text(left)}, then ${text(right)}`,
  });
}

function endStep(steps: readonly Step[], side: "low" | "high"): number {
  const end = steps[0]!;
  const at = steps.findIndex((step) => Math.abs(step[side] - end[side]) > TOLERANCE);
  if (at < 0) return 0;
  // Sizes without a figure between the two have their share of it.
  const missing = Math.abs(steps[at]!.index - end.index) - at;
  return Math.abs(steps[at]![side] - end[side]) / (missing + 1);
}
