/** From understood tables to a sheet in the workbook: what has to be known first, and what was written. */
import {
  chartSheet,
  entriesWith,
  fitsIndex,
  freePatternName,
  INDEX_CELL,
  INDEX_SHEET,
  indexPlan,
  isNamed,
  paneWords,
  readIndexFormula,
  refusalSentence,
  type ChartTable,
  type IndexEntry,
  type WorkbookPlan,
} from "../src/index";
import { carryOut, readFacts, readRange, type Facts, type Receipt } from "./excel";

export type Inserted =
  | {
      readonly ok: true;
      readonly receipt: Receipt;
      readonly sheet: string;
      readonly tables: readonly string[];
      readonly said: string;
    }
  /** The name is taken; this one is free. Nothing was written. */
  | { readonly ok: false; readonly free: string; readonly said: string }
  | { readonly ok: false; readonly free: null; readonly said: string };

/**
 * Writes a pattern's sheet and puts it into the pattern index. A sheet of that name is never touched: then the answer is
 * the next free name, for a person to choose.
 */
export async function insertChart(pattern: string, tables: readonly ChartTable[]): Promise<Inserted> {
  const words = paneWords.chart;
  const facts = await readFacts();
  if (!facts.ok) return { ok: false, free: null, said: refusalSentence(facts.refusal) };
  const { sheets, names, tables: known } = facts.value;
  const free = freePatternName(pattern, sheets);
  if (free !== pattern.trim()) return { ok: false, free, said: words.sheetTaken(pattern.trim(), free) };
  const taken = [...names, ...known.map(({ name }) => name)];
  const chart = chartSheet(pattern, tables, taken);
  const index = await indexed(pattern.trim(), chart.tableNames, tables, facts.value);
  const plan: WorkbookPlan = {
    ...index.plan,
    sheets: [chart.plan, ...(index.plan.sheets ?? [])],
    show: chart.plan.sheet,
  };
  const carried = await carryOut(plan);
  if (!carried.ok) return { ok: false, free: null, said: refusalSentence(carried.refusal) };
  const said = words.inserted(chart.plan.sheet, chart.tableNames) + index.note;
  return { ok: true, receipt: carried.receipt, sheet: chart.plan.sheet, tables: chart.tableNames, said };
}

/** What has to be written for the index; a formula that a person has changed is left alone, and the note says so. */
async function indexed(
  pattern: string,
  added: readonly string[],
  tables: readonly ChartTable[],
  facts: Facts,
): Promise<{ readonly plan: WorkbookPlan; readonly note: string }> {
  const isThere = isNamed(INDEX_SHEET, facts.sheets);
  const before = isThere ? await entriesThere() : [];
  if (!before) return { plan: {}, note: paneWords.chart.indexNotOurs(INDEX_CELL.address) };
  const known = [...facts.tables.map(({ name }) => name), ...added];
  const entries = entriesWith(before, pattern, added, known);
  if (!fitsIndex(entries)) return { plan: {}, note: paneWords.chart.indexFull };
  return { plan: indexPlan(entries, rowsOf(tables) + rowsThere(facts, entries), isThere), note: "" };
}

async function entriesThere(): Promise<IndexEntry[] | undefined> {
  const cell = await readRange(INDEX_SHEET, INDEX_CELL.address);
  if (!cell.ok) return undefined;
  const formula = String(cell.value.formulas[0]![0]);
  return formula === "" ? [] : readIndexFormula(formula);
}

/** The index has a row for each figure. */
const rowsOf = (tables: readonly ChartTable[]): number =>
  tables.reduce((sum, { rows, sizes }) => sum + rows.length * sizes.length, 0);

/** A little more than the figures of the tables that are there: their label columns are counted too. */
function rowsThere({ tables }: Facts, entries: readonly IndexEntry[]): number {
  const listed = tables.filter(({ name }) => entries.some(({ table }) => table.toLowerCase() === name.toLowerCase()));
  return listed.reduce((sum, { headings, rows }) => sum + headings.length * rows, 0);
}
