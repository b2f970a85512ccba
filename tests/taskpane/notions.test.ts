import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { formatNotion } from "../../src/index";
import { takeBack } from "../../taskpane/excel";
import { readNotionsOf, totalsOf } from "../../taskpane/sheets/notions";
import { setUp, shopCopy } from "../../taskpane/sheets/set-up";
import type { OpenBook } from "../practice/office";
import { shown, trackerBook } from "../sheet/tracker-book";
import { facts, listeningApp } from "./listening-app";

const { app, written } = listeningApp();
const books: OpenBook[] = [];
beforeEach(async () => {
  books.push(await trackerBook());
  written.length = 0;
});
afterAll(() => Promise.all(books.map((book) => book.dispose())));

const table = (name: string, address: string, cells: unknown[][]) =>
  Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem("Sheet1");
    sheet.getRange(address).values = cells;
    sheet.tables.add(address, true).name = name;
    await context.sync();
  });

describe("readNotionsOf", () => {
  it("is empty without a table that has the column, and finds it in a table of her own", async () => {
    expect(await readNotionsOf(await facts())).toEqual([]);
    await table("Mine", "A1:B3", [
      ["Project", "Notions"],
      ["Camp shirt", "six 1/2 in buttons, thread"],
      ["Gown", "4 x 1/2 in buttons, zip 20 cm"],
    ]);
    const read = await readNotionsOf(await facts());
    if ("said" in read) throw new Error(read.said);
    const { totals, unread } = totalsOf(read);
    // By hand: 6 + 4 buttons of one size; the zip's size stands behind it, which is not read.
    expect(totals.map(formatNotion)).toEqual(["10 × 1/2 in buttons", "thread"]);
    expect(unread).toEqual([{ project: "Gown", text: "zip 20 cm" }]);
  }, 60_000);
});

describe("shopCopy", () => {
  it("ends with the notions of the chosen projects, and is taken back whole", async () => {
    await setUp(app, ["projects"], await facts(), "in");
    const totals = totalsOf([
      { project: "Camp shirt", texts: ["six 1/2 in buttons"], status: "", wanted: true, repeated: false },
    ]);
    await shopCopy(app, await facts(), "in", new Date(2026, 2, 14), totals);
    const cells = await shown("Shop copy 14 March 2026");
    const line = cells.find((row) => row.includes("6 × 1/2 in buttons"))!;
    expect([line[0], line[5]]).toEqual(["☐", "Camp shirt"]);
    expect(await takeBack(written.at(-1)!)).toEqual({ ok: true });
    expect((await facts()).sheets).not.toContain("Shop copy 14 March 2026");
  }, 60_000);
});
