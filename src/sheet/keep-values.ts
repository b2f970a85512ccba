import { keptPlaces } from "./kept-rows";
import { columnLetters, hasAddress } from "./references";
import type { CellBlock, CellsPlan, PlannedCell } from "./plan";

/** What a cell shows; an error is its own text, "#N/A". */
export type ShownValue = string | number | boolean;

/** A cell with a formula as it was found, and what it shows: one value, or all that it spills. Counted from 0. */
export interface FoundFormula {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly values: readonly (readonly ShownValue[])[];
}

/** Formulas that were turned into values: the same one in `values.length` cells down a column, or one that spilled. */
export interface KeptFormulas {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  /** One formula that filled all of `values`; otherwise each row had the formula. */
  readonly spilled: boolean;
  readonly values: readonly (readonly ShownValue[])[];
}

/** A quoted text, or a call of one of our functions, also as Excel saves it where the add-in is missing. */
const PARTS = /"(?:[^"]|"")*"|(?<![\w.])(?:SEW\.|_xldudf_SEW_)[A-Z]+\(/gi;

/**
 * Whether a formula calls one of our functions; a text that only mentions one doesn't.
 *
 * @example isOurFormula('="SEW.EASE(1,2)"') //=> false
 */
export function isOurFormula(formula: string): boolean {
  return formula.startsWith("=") && [...formula.matchAll(PARTS)].some(([part]) => !part.startsWith('"'));
}

/**
 * Which formulas become values, and what is remembered of them: only ours; the same formula in cells below one another
 * is remembered once. The plan writes each value over its formula: texts stay texts, so that a size 6-12 does not become
 * a date.
 */
export function keepValues(found: readonly FoundFormula[]): {
  readonly kept: readonly KeptFormulas[];
  readonly cells: readonly CellsPlan[];
} {
  const kept = runs(found.filter(({ formula }) => isOurFormula(formula)));
  const blocks = kept.map(({ sheet, row, column, values }) => ({ sheet, block: { row, column, cells: values } }));
  return { kept, cells: bySheet(blocks) };
}

/**
 * Values kept a second time: what was remembered before stays remembered where its values stand now, each cell once. A
 * formula that has been typed over a kept value takes its place.
 *
 * @param now what the sheets show before the new values are written; null for a cell with a formula
 */
export function keepAgain(
  remembered: readonly KeptFormulas[],
  found: readonly FoundFormula[],
  now: ShownNow,
): ReturnType<typeof keepValues> {
  const fresh = keepValues(found);
  const cellOf = (sheet: string, row: number, column: number): string => `${row},${column},${sheet}`;
  const replaced = new Set(
    fresh.kept.flatMap(({ sheet, row, column, values }) =>
      values.flatMap((line, r) => line.map((_, c) => cellOf(sheet, row + r, column + c))),
    ),
  );
  const older = keptPlaces(remembered, now)
    .filter(({ run, row, stands }) => stands || !replaced.has(cellOf(run.sheet, row, run.column)))
    .map(({ run: { sheet, column, formula }, values, was, row }): FoundFormula => {
      // Its addresses tell from where it stood: that has to be known when it comes back.
      return { sheet, row: hasAddress(formula) ? was : row, column, formula, values };
    });
  return { kept: [...fresh.kept, ...runs(older)], cells: fresh.cells };
}

function runs(found: readonly FoundFormula[]): KeptFormulas[] {
  const sorted = [...found].sort(
    (a, b) => (a.sheet < b.sheet ? -1 : a.sheet > b.sheet ? 1 : 0) || a.column - b.column || a.row - b.row,
  );
  const kept: { -readonly [Key in keyof KeptFormulas]: KeptFormulas[Key] }[] = [];
  for (const { sheet, row, column, formula, values } of sorted) {
    const last = kept.at(-1);
    const single = values.length === 1 && values[0]!.length === 1;
    const below = last && last.sheet === sheet && last.column === column && last.row + last.values.length === row;
    if (below && single && !last.spilled && last.formula === formula) last.values = [...last.values, values[0]!];
    else kept.push({ sheet, row, column, formula, spilled: !single, values });
  }
  return kept;
}

function bySheet(blocks: readonly { readonly sheet: string; readonly block: CellBlock }[]): CellsPlan[] {
  const sheets = [...new Set(blocks.map(({ sheet }) => sheet))];
  return sheets.map((sheet) => ({
    sheet,
    blocks: blocks.filter((one) => one.sheet === sheet).map(({ block }) => block),
  }));
}

const VERSION = 1;

/** What is remembered, as a text that the workbook keeps. */
export const keptText = (kept: readonly KeptFormulas[]): string => JSON.stringify({ version: VERSION, kept });

/** What a workbook remembers; undefined when the text is not ours, or only half of it is there. */
export function readKept(text: string): readonly KeptFormulas[] | undefined {
  try {
    const read = JSON.parse(text) as { version?: unknown; kept?: unknown };
    if (read.version !== VERSION || !Array.isArray(read.kept)) return undefined;
    return read.kept.every(isKept) ? (read.kept as KeptFormulas[]) : undefined;
  } catch {
    return undefined;
  }
}

function isKept(one: unknown): boolean {
  if (typeof one !== "object" || one === null) return false;
  const { sheet, row, column, formula, spilled, values } = one as Record<string, unknown>;
  const count = (value: unknown): boolean => Number.isInteger(value) && (value as number) >= 0;
  const grid =
    Array.isArray(values) && values.length > 0 && values.every((line) => Array.isArray(line) && line.length > 0);
  const names = typeof sheet === "string" && typeof formula === "string" && isOurFormula(formula);
  return names && count(row) && count(column) && typeof spilled === "boolean" && grid;
}

/**
 * What stands in the sheets now: the value of a cell, "" for an empty one; null for a cell that a formula fills, which is
 * none of the kept values; undefined when there is no such sheet.
 */
export type ShownNow = (sheet: string, row: number, column: number) => ShownValue | null | undefined;

/** A cell that was not touched, because it no longer shows what was left in it. */
export interface LeftAlone {
  readonly sheet: string;
  /** "B7", or "A7:G18" for a formula that spilled. */
  readonly address: string;
  readonly formula: string;
}

/**
 * Puts the formulas back where their values still stand; a cell that somebody has changed meanwhile is left alone and
 * named. Rows that were inserted, removed or sorted meanwhile are followed where enough of their values say so. A formula
 * with addresses in it comes back only where it stood: a row further down the same addresses would be wrong.
 */
export function bringBack(
  kept: readonly KeptFormulas[],
  now: ShownNow,
): { readonly cells: readonly CellsPlan[]; readonly left: readonly LeftAlone[] } {
  const blocks: { sheet: string; block: CellBlock }[] = [];
  const left: LeftAlone[] = [];
  const taken = new Set<string>();
  for (const { run, values, was, row, stands } of keptPlaces(kept, now)) {
    const { sheet, column, formula } = run;
    const address = addressOf(row, column, values.length, values[0]!.length);
    const key = `${sheet}!${address}`;
    const misled = row !== was && hasAddress(formula);
    if (!stands || misled || taken.has(key)) left.push({ sheet, address, formula });
    else blocks.push({ sheet, block: { row, column, cells: again(formula, values) } });
    if (stands) taken.add(key);
  }
  return { cells: bySheet(joined(blocks)), left };
}

/** The formula, and empty cells where its answer will spill. */
function again(formula: string, values: KeptFormulas["values"]): PlannedCell[][] {
  return values.map((line, r) => line.map((_, c) => ({ formula: r === 0 && c === 0 ? formula : "" })));
}

/** Blocks of one cell below one another, in one block: a column of a table is one write. */
function joined(blocks: readonly { readonly sheet: string; readonly block: CellBlock }[]): typeof blocks {
  const list: { sheet: string; block: CellBlock }[] = [];
  for (const { sheet, block } of blocks) {
    const last = list.at(-1);
    const single = (one: CellBlock): boolean => one.cells.every((line) => line.length === 1);
    const below =
      last?.sheet === sheet &&
      last.block.column === block.column &&
      last.block.row + last.block.cells.length === block.row &&
      single(last.block) &&
      single(block);
    if (below) last.block = { ...last.block, cells: [...last.block.cells, ...block.cells] };
    else list.push({ sheet, block });
  }
  return list;
}

/**
 * An address as a person reads it, rows and columns counted from 0.
 *
 * @example addressOf(6, 0, 12, 7) //=> "A7:G18"
 */
export function addressOf(row: number, column: number, rows = 1, columns = 1): string {
  const first = `${columnLetters(column)}${row + 1}`;
  return rows * columns === 1 ? first : `${first}:${columnLetters(column + columns - 1)}${row + rows}`;
}
