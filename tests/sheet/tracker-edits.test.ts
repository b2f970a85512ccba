import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { trackerColumns, trackers, type HerTable } from "../../src/index";
import { carryOut, readFacts, takeBack } from "../../taskpane/excel";
import type { OpenBook } from "../practice/office";
import { trackerBook, type Shown } from "./tracker-book";

/** What a person does to a tracker of hers. */
type Edit =
  | { readonly kind: "add"; readonly row: readonly Shown[] }
  | { readonly kind: "remove"; readonly at: number }
  | { readonly kind: "blank"; readonly at: number }
  | { readonly kind: "move"; readonly from: number; readonly to: number }
  | { readonly kind: "aside"; readonly row: number; readonly value: Shown };

const HEADINGS = ["Pattern", "price", "Details", "Colour", "Percent off", "Where seen"];
const cell = fc.oneof(fc.integer({ min: 1, max: 60 }), fc.constantFrom("", "blue", "=no formula", "6-12", "12.95"));
const row = (width: number): fc.Arbitrary<Shown[]> => fc.array(cell, { minLength: width, maxLength: width });
const scene = fc.uniqueArray(fc.constantFrom(...HEADINGS), { minLength: 1 }).chain((headings) =>
  fc.record({
    headings: fc.constant(headings),
    rows: fc.array(row(headings.length), { minLength: 3, maxLength: 6 }),
    edits: fc.array(
      fc.oneof(
        fc.record({ kind: fc.constant("add" as const), row: row(headings.length) }),
        fc.record({ kind: fc.constant("remove" as const), at: fc.nat(2) }),
        fc.record({ kind: fc.constant("blank" as const), at: fc.nat(2) }),
        fc.record({ kind: fc.constant("move" as const), from: fc.nat(2), to: fc.nat(2) }),
        fc.record({ kind: fc.constant("aside" as const), row: fc.nat(30), value: cell }),
      ),
      { maxLength: 5 },
    ),
    wanted: fc.subarray(["Price today", "Search words", "Owned", "Sale price"], { minLength: 1 }),
  }),
);

/** Text is typed with an apostrophe, as the pane writes it. */
const typed = (value: Shown): Shown => (typeof value === "string" && value !== "" ? `'${value}` : value);
const TOP = 3;
const LEFT = 1;
/** A column of her own, far enough to the right of the table for new columns. */
const ASIDE = 24;

async function makeTable(sheetName: string, table: string, headings: readonly string[], rows: readonly Shown[][]) {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add(sheetName);
    sheet.getRange("A1").values = [["My patterns"]];
    const range = sheet.getRangeByIndexes(TOP, LEFT, rows.length + 1, headings.length);
    range.values = [headings, ...rows].map((line) => line.map(typed));
    sheet.tables.add(range, true).name = table;
    sheet.getRangeByIndexes(0, ASIDE, 1, 1).formulas = [[`=COUNTA(${table}[${headings[0]}])`]];
    await context.sync();
  });
}

async function edit(sheetName: string, table: string, one: Edit): Promise<void> {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetName);
    const { rows } = context.workbook.tables.getItem(table);
    const body = context.workbook.tables.getItem(table).getDataBodyRange().load("values,rowCount,columnCount");
    await context.sync();
    const values = body.values as Shown[][];
    const line = (at: number) => body.getRow(at % body.rowCount);
    if (one.kind === "add") rows.add(undefined, [one.row.map(typed)]);
    else if (one.kind === "remove" && body.rowCount > 1) rows.getItemAt(one.at % body.rowCount).delete();
    else if (one.kind === "blank") line(one.at).values = [values[0]!.map(() => "")];
    else if (one.kind === "move") {
      const [from, to] = [one.from % body.rowCount, one.to % body.rowCount];
      line(from).values = [values[to]!.map(typed)];
      line(to).values = [values[from]!.map(typed)];
    } else if (one.kind === "aside") sheet.getRangeByIndexes(one.row, ASIDE + 1, 1, 1).values = [[typed(one.value)]];
    await context.sync();
  });
}

/** Everything on the sheet, by address: formulas, values, formats. */
async function state(sheetName: string): Promise<Map<string, string>> {
  return Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetName);
    const range = sheet.getRangeByIndexes(0, 0, 40, ASIDE + 16).load("formulas,values,numberFormat");
    await context.sync();
    const cells = new Map<string, string>();
    range.formulas.forEach((line, r) =>
      line.forEach((formula, c) => {
        const shown = JSON.stringify([formula, range.values[r]![c], range.numberFormat[r]![c]]);
        if (formula !== "" || range.numberFormat[r]![c] !== "General") cells.set(`${r},${c}`, shown);
      }),
    );
    return cells;
  });
}

async function herTable(name: string): Promise<HerTable> {
  const facts = await readFacts();
  if (!facts.ok) throw new Error("no facts");
  const table = facts.value.tables.find((one) => one.name === name)!;
  return { name, row: TOP, column: LEFT, headings: table.headings };
}

describe("columns for her own tracker, whatever she has done to it", () => {
  let book: OpenBook;
  beforeAll(async () => void (book = await trackerBook()), 60_000);
  afterAll(() => book.dispose());

  it("never touch a cell that isn't ours, and taking them back gives the sheet back exactly", async () => {
    const scenes = fc.sample(scene, { numRuns: 12, seed: 12 });
    for (const [number, { headings, rows, edits, wanted }] of scenes.entries()) {
      const [sheet, table] = [`Mine ${number}`, `Hers${number}x`];
      await makeTable(sheet, table, headings, rows);
      for (const one of edits) await edit(sheet, table, one);
      const before = await state(sheet);
      const plan = trackerColumns(trackers.wishList, await herTable(table), "in", { wanted });
      const carried = await carryOut({ columns: [plan] });
      expect(carried.ok, JSON.stringify([number, carried])).toBe(true);
      if (!carried.ok) return;
      const after = await state(sheet);
      // A new column may push aside what stands far to the right of the table: that is moved, not lost.
      const pushed = (at: string): string => {
        const [r, c] = at.split(",").map(Number);
        return `${r},${c! + plan.columns.length}`;
      };
      const kept = new Set<string>();
      for (const [at, shown] of before) {
        const found = [at, ...(Number(at.split(",")[1]) >= ASIDE ? [pushed(at)] : [])].find(
          (place) => after.get(place) === shown && !kept.has(place),
        );
        expect(found, `${sheet} ${at} ${shown}`).toBeDefined();
        kept.add(found!);
      }
      for (const at of [...after.keys()].filter((place) => !kept.has(place))) {
        const column = Number(at.split(",")[1]) - LEFT;
        expect(column).toBeGreaterThanOrEqual(headings.length);
        expect(column).toBeLessThan(headings.length + plan.columns.length);
      }
      expect(await takeBack(carried.receipt)).toEqual({ ok: true });
      expect(await state(sheet)).toEqual(before);
    }
  }, 240_000);
});
