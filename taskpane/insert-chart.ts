/** From understood tables to a sheet in the workbook: what has to be known first, and what was written. */
import {
  chartSheet,
  freePatternName,
  paneWords,
  refusalSentence,
  type ChartTable,
  type WorkbookPlan,
  type WriteRefusal,
} from "../src/index";
import { carryOut, readFacts, type Receipt } from "./excel";
import { indexed, listMissing } from "./pattern-index";

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

/** Times that a chart is planned anew when another window has written into the workbook meanwhile. */
const TRIES = 3;
/** What another window does to a plan: looking again is all that is needed. */
const MEANWHILE: ReadonlySet<WriteRefusal["code"]> = new Set([
  "sheetTaken",
  "sheetMissing",
  "tableTaken",
  "takenMeanwhile",
  "changedMeanwhile",
]);

/**
 * Writes a pattern's sheet and puts it into the pattern index. A sheet of that name is never touched: then the answer is
 * the next free name, for a person to choose.
 */
export async function insertChart(pattern: string, tables: readonly ChartTable[]): Promise<Inserted> {
  for (let tries = 1; ; tries++) {
    const inserted = await insertOnce(pattern, tables);
    if (!("refusal" in inserted)) return inserted;
    if (tries < TRIES && MEANWHILE.has(inserted.refusal.code)) continue;
    return { ok: false, free: null, said: refusalSentence(inserted.refusal) };
  }
}

async function insertOnce(
  pattern: string,
  tables: readonly ChartTable[],
): Promise<Inserted | { readonly refusal: WriteRefusal }> {
  const words = paneWords.chart;
  const facts = await readFacts();
  if (!facts.ok) return facts;
  const { sheets, names, tables: known } = facts.value;
  const free = freePatternName(pattern, sheets);
  if (free !== pattern.trim()) return { ok: false, free, said: words.sheetTaken(pattern.trim(), free) };
  const taken = [...names, ...known.map(({ name }) => name)];
  const chart = chartSheet(pattern, tables, taken);
  const index = await indexed(pattern.trim(), chart.tableNames, tables, facts.value);
  if (!index.ok) return index;
  const plan: WorkbookPlan = {
    ...index.plan,
    sheets: [chart.plan, ...(index.plan.sheets ?? [])],
    show: chart.plan.sheet,
  };
  const carried = await carryOut(plan);
  if (!carried.ok) return carried;
  if (index.plan.names) await listMissing(known.map(({ name }) => name));
  const said = words.inserted(chart.plan.sheet, chart.tableNames) + index.note;
  return { ok: true, receipt: carried.receipt, sheet: chart.plan.sheet, tables: chart.tableNames, said };
}
