/** A workbook that has no room for what it is to remember: no formula is lost, and the sentence says what to do. */
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { chartSheet } from "../../src/index";
import { carryOut } from "../../taskpane/excel";
import { comeBack, keep } from "../../taskpane/sheets/keep";
import type { Batch } from "../../src/practice/host/executor";
import { openBook, type OpenBook } from "../practice/office";
import { sourceFunctions, trackerBook } from "../sheet/tracker-book";
import { listeningApp } from "./listening-app";

const { app, said, written } = listeningApp();
const books: OpenBook[] = [];
let book: OpenBook;
let before: (batch: Batch) => void;
let functions: Awaited<ReturnType<typeof sourceFunctions>>;
afterAll(() => Promise.all(books.map((one) => one.dispose())));

const EASE = ["=SEW.EASE(38,34)", "=SEW.EASE(40,34)"];
const formulas = () =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1:A2").load("formulas");
    await context.sync();
    return (range.formulas as string[][]).flat();
  });
const settings = () =>
  Excel.run(async (context) => {
    const all = context.workbook.settings.load("items/key,items/value");
    await context.sync();
    return all.items.map(({ key, value }) => [key, String(value)] as const);
  });

beforeEach(async () => {
  if (!functions) books.push(await trackerBook());
  functions ??= await sourceFunctions();
  before = () => undefined;
  books.push((book = openBook({ functions, before: (batch) => before(batch) })));
  said.length = written.length = 0;
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").getRange("A1:A2").formulas = EASE.map((one) => [one]);
    await context.sync();
  });
}, 60_000);

describe("keep values, in a workbook whose storage is full", () => {
  it("leaves every formula, says so, and says what to do", async () => {
    book.book.storage = 100;
    await keep(app);
    expect(await formulas()).toEqual(EASE);
    expect(await settings()).toEqual([]);
    expect(written).toEqual([]);
    expect(said.at(-1)).toMatch(
      /can't remember the formulas .*Nothing was written\. Save a copy .*Paste Special, Values/,
    );
  });
  it("leaves every formula when the workbook takes the text and does not give it back", async () => {
    // Saved and cut off: what is read back is not what was to be remembered.
    before = (batch) => {
      if (!JSON.stringify(batch).includes('"QueryInfo"')) return;
      const kept = book.book.Settings.all().find(({ Key }) => Key === "sewing.keptFormulas");
      if (kept && String(kept.Value).length > 20) kept.Value = String(kept.Value).slice(0, 20);
    };
    await keep(app);
    before = () => undefined;
    expect(await formulas()).toEqual(EASE);
    expect(said.at(-1)).toContain("can't remember the formulas");
  });
  it("goes on once there is room", async () => {
    book.book.storage = 100;
    await keep(app);
    book.book.storage = 10_000;
    await keep(app);
    expect(await formulas()).toEqual([4, 6]);
    await comeBack(app);
    expect(await formulas()).toEqual(EASE);
  });
});

describe("a new sheet, in a workbook whose storage is full", () => {
  it("is written all the same: only the mark that it is being written is left out", async () => {
    book.book.storage = 10;
    const { plan } = chartSheet("Camp shirt", [], []);
    expect(await carryOut({ sheets: [plan] })).toMatchObject({ ok: true });
    expect(await settings()).toEqual([]);
  });
});

describe("bring back formulas, cut off for good wherever it is", () => {
  it("has every formula in its cell or still remembered, when a sheet's formulas have to wait", async () => {
    const other = (formula: string | null) =>
      Excel.run(async (context) => {
        const { worksheets } = context.workbook;
        if (formula === null) worksheets.getItem("Other").name = "Away";
        else worksheets.add("Other").getRange("A1").formulas = [[formula]];
        await context.sync();
      });
    await other("=SEW.EASE(36,34)");
    await keep(app);
    await other(null);
    const kept = (await settings())[0]![1];
    let cuts = 0;
    for (let at = 1, isDone = false; !isDone; at++) {
      let batch = 0;
      let isCut = false;
      before = () => {
        if (batch++ < at) return;
        isCut = true;
        throw new Error("gone");
      };
      await comeBack(app);
      before = () => undefined;
      isDone = !isCut;
      const now = await formulas();
      const remembered = (await settings())[0]![1];
      EASE.forEach((formula, index) => {
        expect([now[index] === formula, remembered.includes(formula)]).toContain(true);
      });
      expect(remembered).toContain("=SEW.EASE(36,34)");
      if (isDone) break;
      cuts++;
      await Excel.run(async (context) => {
        context.workbook.worksheets.getItem("Sheet1").getRange("A1:A2").values = [[4], [6]];
        context.workbook.settings.add("sewing.keptFormulas", kept);
        await context.sync();
      });
    }
    expect(cuts).toBeGreaterThan(5);
  }, 60_000);
});
