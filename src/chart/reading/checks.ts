/** What is doubtful about a table that was read: order, steps, repetitions, units, body against finished. */
import { doubts } from "../../words/reading";
import type { Figure } from "../model";
import { placeName, placeSpan } from "../places";
import type { Assembled } from "./assemble";
import { highOf, lowOf, middle } from "./figures";
import type { Doubts, FabricRecord, MeasureRecord } from "./record";
import { textOf } from "./streams";

export function checkTables(tables: readonly Assembled[], found: Doubts): void {
  for (const table of tables) {
    for (const record of table.records) checkRow(record, table.sizes, found);
    if (table.kind !== "fabric") {
      checkRepeated(table.records, found);
      checkUnit(table.records, found);
    } else checkRepeatedCloth(table.records, found);
  }
  checkEase(tables, found);
}

function checkRow(record: MeasureRecord | FabricRecord, sizes: readonly string[], found: Doubts): void {
  const flag = (index: number, sentence: (figure: string, label: string) => string): void => {
    const cell = record.cells[index]!;
    found.warn(cell.line, sentence(textOf(record.figures[index]!, record.unit), record.label), {
      column: cell.column,
      ...(record.sort === "measure" ? { place: record.place } : {}),
      ...(record.sort === "fabric" && record.views !== "all" && record.views[0] ? { view: record.views[0] } : {}),
      size: sizes[index]!,
    });
  };
  const odd = outOfOrder(record.figures);
  for (const index of odd) flag(index, doubts.outOfOrder);
  if (odd.length > 0 || record.sort === "fabric") return;
  for (const index of offGrade(record.figures, record.unit === "in" ? 0.45 : 1.1)) flag(index, doubts.offGrade);
}

/**
 * The figures that break the order of their row: the one whose removal puts the rest in order, all of them when several
 * would; when none does, those outside the longest orderly run. Rows may rise or fall, whichever needs less.
 *
 * @example outOfOrder([34, 63, 38, 40]) //=> [1]
 */
export function outOfOrder(figures: readonly Figure[]): number[] {
  const known = figures
    .map((figure, index) => ({ index, low: lowOf(figure), high: highOf(figure) }))
    .filter(({ low }) => low !== null);
  const rising = unordered(known.map(({ low }) => low!));
  const risingHigh = unordered(known.map(({ high }) => high!));
  const up = [...new Set([...rising, ...risingHigh])];
  const down = [
    ...new Set([...unordered(known.map(({ low }) => -low!)), ...unordered(known.map(({ high }) => -high!))]),
  ];
  const isFalling = known.length > 2 && down.length < up.length && known.at(-1)!.high! < known[0]!.low!;
  return (isFalling ? down : up).map((at) => known[at]!.index).sort((a, b) => a - b);
}

function unordered(values: readonly number[]): number[] {
  const isRising = (skip: number): boolean => {
    let last = -Infinity;
    return values.every((value, index) => {
      if (index === skip) return true;
      const fits = value >= last;
      last = value;
      return fits;
    });
  };
  if (isRising(-1)) return [];
  if (values.length > 200)
    return values.flatMap((value, index) => (index > 0 && value < values[index - 1]! ? [index] : []));
  const single = values.map((_, index) => index).filter(isRising);
  return single.length > 0 ? single : outsideLongest(values);
}

/** The indexes that the longest rising run leaves out. */
function outsideLongest(values: readonly number[]): number[] {
  const length = values.map(() => 1);
  const before = values.map(() => -1);
  for (let at = 0; at < values.length; at++)
    for (let from = 0; from < at; from++)
      if (values[from]! <= values[at]! && length[from]! + 1 > length[at]!) {
        length[at] = length[from]! + 1;
        before[at] = from;
      }
  const kept = new Set<number>();
  for (let at = length.indexOf(Math.max(...length)); at >= 0; at = before[at]!) kept.add(at);
  return values.map((_, index) => index).filter((index) => !kept.has(index));
}

/**
 * Figures off the steps around them: one step too long and the next too short, while the steps further out agree. A
 * chart's own changes of step (1, 1 1/2, 2) and its rounding to whole centimetres are no doubt. `least` is the smallest
 * slip worth a word.
 *
 * From memory: no standard says how even a grade must be.
 *
 * @example offGrade([32, 34, 37, 38, 40], 0.45) //=> [2]
 */
export function offGrade(figures: readonly Figure[], least: number): number[] {
  const values = figures.map((figure) => (figure === null ? null : middle(figure)));
  if (values.length < 4 || values.some((value) => value === null)) return [];
  const numbers = values as number[];
  const steps = numbers.slice(1).map((value, index) => value - numbers[index]!);
  const odd = numbers
    .map((_, index) => index)
    .filter((index) => {
      const [before, after] = [steps[index - 1], steps[index]];
      if (before === undefined || after === undefined) return isOddEnd(index, steps, least);
      const outer = [steps[index - 2], steps[index + 1]].filter((step) => step !== undefined);
      const [low, high] = [Math.min(...outer), Math.max(...outer)];
      const isAcross = (before > high + 1e-9 && after < low - 1e-9) || (before < low - 1e-9 && after > high + 1e-9);
      const isEven = high - low <= Math.max(0.5 * high, least);
      return isAcross && isEven && Math.abs(before - after) / 2 >= least;
    });
  // A slip shows at its neighbours too: the largest one is the slip.
  const slip = (index: number): number => Math.abs((steps[index - 1] ?? 0) - (steps[index] ?? 0));
  return odd.filter((index) => !odd.some((other) => Math.abs(other - index) === 1 && slip(other) > slip(index)));
}

/** The first or last figure, a far longer step away than any other. */
function isOddEnd(index: number, steps: readonly number[], least: number): boolean {
  const own = index === 0 ? steps[0]! : steps.at(-1)!;
  const others = index === 0 ? steps.slice(1) : steps.slice(0, -1);
  const longest = Math.max(...others);
  return longest > 0 && own > 2 * longest && own - longest > 2 * least;
}

function checkRepeated(records: readonly MeasureRecord[], found: Doubts): void {
  const seen = new Map<string, MeasureRecord>();
  for (const record of records) {
    const key = `${record.place}|${record.view ?? ""}`;
    if (seen.has(key))
      found.warn(record.line, doubts.repeatedPlace(placeName(record.place)), {
        place: record.place,
        ...(record.view ? { view: record.view } : {}),
      });
    else seen.set(key, record);
  }
}

/** Two rows of amounts that nothing tells apart. */
function checkRepeatedCloth(records: readonly FabricRecord[], found: Doubts): void {
  const seen = new Set<string>();
  for (const record of records) {
    for (const view of record.views === "all" ? ["all"] : record.views) {
      const key = JSON.stringify([view, record.part, record.widths?.in, record.widths?.cm, record.nap]);
      if (seen.has(key)) found.warn(record.line, doubts.repeatedCloth(record.label), view ? { view } : {});
      seen.add(key);
    }
  }
}

/** A unit that is printed and can't be: "Bust (cm) 34 36 38". */
function checkUnit(records: readonly MeasureRecord[], found: Doubts): void {
  for (const record of records) {
    const span = placeSpan(record.place);
    const numbers = record.figures.filter((figure) => figure !== null).map(middle);
    if (!span || numbers.length === 0 || (record.unit !== "in" && record.unit !== "cm")) continue;
    const other = record.unit === "in" ? "cm" : "in";
    const within = ([low, high]: readonly [number, number]): boolean =>
      numbers.every((value) => value >= low && value <= high);
    const beyond = ([low, high]: readonly [number, number]): boolean =>
      numbers.every((value) => value < low || value > high);
    if (beyond(span[record.unit]) && within(span[other])) {
      const name = { in: "inches", cm: "centimetres" };
      found.warn(record.line, doubts.unitDisagrees(record.label, name[record.unit], name[other]), {
        place: record.place,
      });
    }
  }
}

const GIRTHS = new Set(
  "bust highBust underbust upperChest chest waist highHip hip neck upperArm wrist thigh knee calf ankle".split(" "),
);

/** Finished garments smaller than the body they are made for. */
function checkEase(tables: readonly Assembled[], found: Doubts): void {
  for (const finished of tables) {
    if (finished.kind !== "finished") continue;
    for (const body of tables) {
      if (body.kind !== "body" || body.unit !== finished.unit) continue;
      for (const record of finished.records.filter(({ place }) => GIRTHS.has(place))) {
        const own = body.records.find(({ place }) => place === record.place);
        if (own) compareEase(own, record, body.sizes, finished.sizes, found);
      }
    }
  }
}

function compareEase(
  body: MeasureRecord,
  finished: MeasureRecord,
  sizes: readonly string[],
  finishedSizes: readonly string[],
  found: Doubts,
): void {
  for (const [index, size] of finishedSizes.entries()) {
    const [worn, made] = [lowOf(body.figures[sizes.indexOf(size)] ?? null), highOf(finished.figures[index] ?? null)];
    if (worn === null || made === null || worn <= made) continue;
    found.warn(
      finished.line,
      doubts.bodyLarger(placeName(finished.place), textOf(worn, body.unit), textOf(made, finished.unit)),
      { column: finished.cells[index]!.column, place: finished.place, size },
    );
  }
}
