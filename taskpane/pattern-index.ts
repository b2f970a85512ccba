/** What has to be written so that the pattern index lists every chart, another window's included. */
import {
  entriesWith,
  fitsIndex,
  INDEX_CELL,
  INDEX_SHEET,
  indexPlan,
  isNamed,
  paneWords,
  readIndexFormula,
  type ChartTable,
  type IndexEntry,
  type WorkbookPlan,
  type WriteRefusal,
} from "../src/index";
import { carryOut, readFacts, readRange, type Facts } from "./excel";

export type IndexPart = { readonly ok: true; readonly plan: WorkbookPlan; readonly note: string };

/** What has to be written for the index; a formula that a person has changed is left alone, and the note says so. */
export async function indexed(
  pattern: string,
  added: readonly string[],
  tables: readonly ChartTable[],
  first: Facts,
): Promise<IndexPart | { readonly ok: false; readonly refusal: WriteRefusal }> {
  const isThere = isNamed(INDEX_SHEET, first.sheets);
  const cell = isThere ? await readRange(INDEX_SHEET, INDEX_CELL.address) : undefined;
  if (cell && !cell.ok) return cell;
  const formula = cell ? String(cell.value.formulas[0]![0]) : "";
  const before: IndexEntry[] | undefined = formula === "" ? [] : readIndexFormula(formula);
  if (!before) return { ok: true, plan: {}, note: paneWords.chart.indexNotOurs(INDEX_CELL.address) };
  // Read after the formula: a table that another window has just put into it must not be taken for one that is gone.
  const facts = isThere ? await readFacts() : ({ ok: true, value: first } as const);
  if (!facts.ok) return facts;
  const known = [...facts.value.tables.map(({ name }) => name), ...added];
  const entries = entriesWith(before, pattern, added, known);
  if (!fitsIndex(entries)) return { ok: true, plan: {}, note: paneWords.chart.indexFull };
  const plan = indexPlan(entries, rowsOf(tables) + rowsThere(facts.value, entries), isThere);
  if (!isThere) return { ok: true, plan, note: "" };
  const cells = plan.cells!.map((one) => ({ ...one, expected: formula }));
  return { ok: true, plan: { ...plan, cells }, note: "" };
}

/** The index has a row for each figure. */
const rowsOf = (tables: readonly ChartTable[]): number =>
  tables.reduce((sum, { rows, sizes }) => sum + rows.length * sizes.length, 0);

/** A little more than the figures of the tables that are there: their label columns are counted too. */
function rowsThere({ tables }: Facts, entries: readonly IndexEntry[]): number {
  const names = entries.map(({ table }) => table);
  const listed = tables.filter(({ name }) => isNamed(name, names));
  return listed.reduce((sum, { headings, rows }) => sum + headings.length * rows, 0);
}

/**
 * Puts into the index what two windows have made each other lose when they wrote it in the same moment: charts that have
 * come since and stand in no entry. Their pattern's name is the title of their sheet.
 *
 * @param before the tables that were there before this window wrote
 */
export async function listMissing(before: readonly string[]): Promise<void> {
  const cell = await readRange(INDEX_SHEET, INDEX_CELL.address);
  const facts = await readFacts();
  if (!cell.ok || !facts.ok) return;
  const formula = String(cell.value.formulas[0]![0]);
  const listed = readIndexFormula(formula);
  const missing = facts.value.tables.filter(
    ({ name }) =>
      CHART.test(name) &&
      !isNamed(name, before) &&
      !isNamed(
        name,
        (listed ?? []).map(({ table }) => table),
      ),
  );
  if (!listed || missing.length === 0) return;
  const known = facts.value.tables.map(({ name }) => name);
  let entries: readonly IndexEntry[] = listed;
  for (const { name, sheet } of missing) {
    const title = await readRange(sheet, "A1");
    const pattern = (title.ok && String(title.value.values[0]![0]).trim()) || sheet;
    entries = entriesWith(entries, pattern, [name], known);
  }
  if (!fitsIndex(entries)) return;
  const { cells = [], names = [] } = indexPlan(entries, rowsThere(facts.value, entries), true);
  // Refused when yet another window is at it: that one looks afterwards, too.
  await carryOut({ cells: cells.map((one) => ({ ...one, expected: formula })), names });
}

/** What the pane calls a chart's table. */
const CHART = /_(?:body|finished|fabric)(?:_\d+)?$/;
