/** Formulas that become values for a workbook that travels, and come back. */
import {
  addressOf,
  bringBack,
  isNamed,
  isOurFormula,
  keepAgain,
  keptText,
  paneWords,
  readKept,
  refusalSentence,
  sameShown,
  tablesOf,
  type CellsPlan,
  type KeptFormulas,
  type ShownNow,
  type WriteRefusal,
} from "../../src/index";
import type { App } from "../app";
import { carryOut, readFacts, readFormulas, readShown, recall, type Reading } from "../excel";

const words = paneWords.sheets;
/** Under which the workbook remembers the formulas. */
const KEY = "sewing.keptFormulas";
/** Lines in a list that is still read. */
const LISTED = 20;
/** What a cell shows while it is being calculated. */
const BUSY = /^#(?:BUSY!|GETTING_DATA)$/;

/** What the workbook remembers; empty when it remembers nothing that can be read. */
async function remembered(): Promise<Reading<readonly KeptFormulas[]>> {
  const kept = await recall(KEY);
  return kept.ok ? { ok: true, value: kept.value === null ? [] : (readKept(kept.value) ?? []) } : kept;
}

/** What the cells show, and null for those that a formula fills. */
async function shownNow(): Promise<Reading<ShownNow>> {
  const shown = await readShown();
  if (!shown.ok) return shown;
  const found = await readFormulas(() => true);
  if (!found.ok) return found;
  const cellOf = (sheet: string, row: number, column: number) => `${row},${column},${sheet}`;
  const filled = new Set(
    found.value.flatMap(({ sheet, row, column, values }) =>
      values.flatMap((line, r) => line.map((_, c) => cellOf(sheet, row + r, column + c))),
    ),
  );
  const value: ShownNow = (sheet, row, column) =>
    filled.has(cellOf(sheet, row, column)) ? null : shown.value(sheet, row, column);
  return { ok: true, value };
}

/** Turns every formula of ours into what it shows. What was kept before stays remembered. */
export async function keep(app: App): Promise<void> {
  const found = await readFormulas(isOurFormula);
  if (!found.ok) return app.say(refusalSentence(found.refusal), "warning");
  if (found.value.length === 0) return app.say(words.nothingToKeep);
  if (found.value.some(({ values }) => values.flat().some((value) => BUSY.test(String(value)))))
    return app.say(words.stillBusy, "warning");
  const before = await remembered();
  if (!before.ok) return app.say(refusalSentence(before.refusal), "warning");
  const now = await shownNow();
  if (!now.ok) return app.say(refusalSentence(now.refusal), "warning");
  const { kept, cells } = keepAgain(before.value, found.value, now.value);
  const carried = await carryOut({ cells, kept: [{ key: KEY, text: keptText(kept) }] }, { overFilled: true });
  if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
  app.wrote(carried.receipt, words.whatKept);
  app.say(words.kept(found.value.length));
}

/**
 * Puts the formulas back where their values still stand. The answer is to be read below: what could not come back, and
 * what shows something else than the value that was kept.
 */
export async function comeBack(app: App): Promise<readonly string[]> {
  const kept = await remembered();
  if (!kept.ok) return refused(app, kept.refusal);
  if (kept.value.length === 0) {
    app.say(words.nothingKept);
    return [];
  }
  const now = await shownNow();
  if (!now.ok) return refused(app, now.refusal);
  const facts = await readFacts();
  if (!facts.ok) return refused(app, facts.refusal);
  const { value: shown } = now;
  const tables = facts.value.tables.map(({ name }) => name);
  // Excel takes no formula that names a table that is not there, and none of those written with it.
  const gone = ({ sheet, formula }: KeptFormulas) =>
    shown(sheet, 0, 0) === undefined ? undefined : tablesOf(formula).find((table) => !isNamed(table, tables));
  const { cells, left } = bringBack(
    kept.value.filter((one) => gone(one) === undefined),
    shown,
  );
  const lost = kept.value.filter((one) => gone(one) !== undefined);
  // A sheet or a table that has been renamed may get its name back: its formulas stay remembered.
  const waiting = [...kept.value.filter(({ sheet }) => shown(sheet, 0, 0) === undefined), ...lost];
  const text = waiting.length > 0 ? keptText(waiting) : null;
  const carried = await carryOut({ cells, kept: [{ key: KEY, text, lessThanBefore: true }] }, { overFilled: true });
  if (!carried.ok) return refused(app, carried.refusal);
  app.wrote(carried.receipt, words.whatBroughtBack);
  const others = await changedBy(cells, shown);
  const said = words.broughtBack(left.length + lost.length);
  app.say(
    others.length > 0 ? `${said} ${words.showOther(others.length)}` : said,
    left.length + lost.length > 0 ? "warning" : "said",
  );
  return [
    ...[...new Set(waiting.filter((one) => !lost.includes(one)).map(({ sheet }) => sheet))].map(words.sheetGone),
    ...[...new Set(lost.map((one) => gone(one)!))].map(words.tableGone),
    ...left.map(({ sheet, address, formula }) => words.leftAlone(sheet, address, formula)),
    ...others.slice(0, LISTED),
    ...(others.length > LISTED ? [words.more(others.length - LISTED)] : []),
  ];
}

function refused(app: App, refusal: WriteRefusal): readonly string[] {
  app.say(refusalSentence(refusal), "warning");
  return [];
}

/** The cells that show something else since the formulas are back, in words. */
async function changedBy(cells: readonly CellsPlan[], was: ShownNow): Promise<string[]> {
  const now = await readShown();
  if (!now.ok) return [];
  const { value: is } = now;
  return cells.flatMap(({ sheet, blocks }) =>
    blocks.flatMap(({ row, column, cells: grid }) =>
      grid.flatMap((line, r) =>
        line.flatMap((_, c) => {
          const [before, after] = [was(sheet, row + r, column + c), is(sheet, row + r, column + c)] as const;
          if (before === undefined || before === null || after === undefined || after === null) return [];
          if (sameShown(after, before) || BUSY.test(String(after))) return [];
          return [words.showsOther(sheet, addressOf(row + r, column + c), String(before), String(after))];
        }),
      ),
    ),
  );
}
