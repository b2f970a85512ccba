import { columnLetters } from "./references";
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

/** What stands in the sheets now: the value of a cell, "" for an empty one; undefined when there is no such sheet. */
export type ShownNow = (sheet: string, row: number, column: number) => ShownValue | undefined;

/** A cell that was not touched, because it no longer shows what was left in it. */
export interface LeftAlone {
  readonly sheet: string;
  /** "B7", or "A7:G18" for a formula that spilled. */
  readonly address: string;
  readonly formula: string;
}

/**
 * Puts the formulas back where their values still stand; a cell that somebody has changed meanwhile is left alone and
 * named. Where rows were inserted or removed above, the values are looked for up and down their column, and taken only
 * where all of them stand together; the nearest place wins, of two equally near the lower one.
 */
export function bringBack(
  kept: readonly KeptFormulas[],
  now: ShownNow,
): { readonly cells: readonly CellsPlan[]; readonly left: readonly LeftAlone[] } {
  const blocks: { sheet: string; block: CellBlock }[] = [];
  const left: LeftAlone[] = [];
  const taken = new Set<string>();
  for (const run of kept) {
    const row = run.row + shift(run, now);
    const stands = run.values.map((line, r) =>
      line.every((value, c) => same(now(run.sheet, row + r, run.column + c), value)),
    );
    const whole = run.spilled ? [stands.every(Boolean)] : stands;
    whole.forEach((good, r) => {
      const at = { row: row + r, rows: run.spilled ? run.values.length : 1, columns: run.values[r]!.length };
      const address = addressOf(at.row, run.column, at.rows, at.columns);
      const key = `${run.sheet}!${address}`;
      if (!good || taken.has(key)) left.push({ sheet: run.sheet, address, formula: run.formula });
      else blocks.push({ sheet: run.sheet, block: { row: at.row, column: run.column, cells: again(run, at) } });
      if (good) taken.add(key);
    });
  }
  return { cells: bySheet(joined(blocks)), left };
}

/** The formula, and empty cells where its answer will spill. */
function again(run: KeptFormulas, { rows, columns }: { rows: number; columns: number }): PlannedCell[][] {
  return Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (_, c) => ({ formula: r === 0 && c === 0 ? run.formula : "" })),
  );
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

/** Rows further than this were moved on purpose. */
const FURTHEST = 200;

function shift(run: KeptFormulas, now: ShownNow): number {
  const matches = (by: number): number =>
    run.values.filter((line, r) =>
      line.every((value, c) => same(now(run.sheet, run.row + by + r, run.column + c), value)),
    ).length;
  // Blank answers stand together anywhere: they say nothing about where the rows went.
  const telling = run.values.some((line) => line.some((value) => value !== ""));
  if (!telling || matches(0) * 2 >= run.values.length) return 0;
  for (let by = 1; by <= FURTHEST; by++) {
    if (matches(by) === run.values.length) return by;
    if (run.row >= by && matches(-by) === run.values.length) return -by;
  }
  return 0;
}

/** Fifteen digits are what a workbook keeps of a number. */
function same(now: ShownValue | undefined, was: ShownValue): boolean {
  if (typeof now === "number" && typeof was === "number") return Math.abs(now - was) <= 1e-12 * Math.abs(was);
  return now === was;
}

function addressOf(row: number, column: number, rows: number, columns: number): string {
  const first = `${columnLetters(column)}${row + 1}`;
  return rows * columns === 1 ? first : `${first}:${columnLetters(column + columns - 1)}${row + rows}`;
}
