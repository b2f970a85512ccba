/** Values kept in a workbook that is worked on meanwhile, and the formulas' way back. */
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { isOurFormula, starterWorkbook } from "../../src/index";
import { takeBack } from "../../taskpane/excel";
import { comeBack, keep } from "../../taskpane/sheets/keep";
import type { OpenBook } from "../practice/office";
import { carryOutAll, shown, trackerBook } from "../sheet/tracker-book";
import { listeningApp } from "./listening-app";

const { app, said, written } = listeningApp();
const books: OpenBook[] = [];
afterAll(() => Promise.all(books.map((book) => book.dispose())));

const write = (address: string, formulas: unknown[][]) =>
  Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").getRange(address).formulas = formulas;
    await context.sync();
  });
const formulas = (address: string): Promise<unknown[]> =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange(address).load("formulas");
    await context.sync();
    return (range.formulas as unknown[][]).flat();
  });
const EASE = "=SEW.EASE([@Finished],[@Body])";
const WORDS = '=SEW.TAGS("Maker",[@Body])';

/** A table of three rows, D and E of which are ours. */
async function table(): Promise<void> {
  await write("A3:E6", [
    ["What", "Body", "Finished", "Ease", "Words"],
    ["Skirt", 36, 38, "", ""],
    ["Shirt", 34, 38, "", ""],
    ["Coat", 34, 40, "", ""],
  ]);
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").tables.add("A3:E6", true).name = "Hers";
    await context.sync();
  });
  await write("D4:E6", Array<string[]>(3).fill([EASE, WORDS]));
}

describe("keep, twice", () => {
  beforeEach(async () => {
    books.push(await trackerBook());
    said.length = written.length = 0;
    await table();
  }, 60_000);

  it("brings back exactly the original formulas when a row has come in between", async () => {
    await keep(app);
    expect(await formulas("D4:D6")).toEqual([2, 4, 6]);
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Hers").rows.add(1, [["Cape", 30, 40, "", ""]]);
      await context.sync();
    });
    await write("D5:E5", [[EASE, WORDS]]);
    const before = await shown("Sheet1", "A3:E7");
    expect(before.map(([what]) => what)).toEqual(["What", "Skirt", "Cape", "Shirt", "Coat"]);
    await keep(app);
    expect(said.at(-1)).toContain("2 formulas");
    expect(await formulas("D4:D7")).toEqual([2, 10, 4, 6]);
    expect(await comeBack(app)).toEqual([]);
    expect(said.at(-1)).toBe("The formulas are back.");
    expect(await formulas("D4:E7")).toEqual(Array<string[]>(4).fill([EASE, WORDS]).flat());
    expect(await shown("Sheet1", "A3:E7")).toEqual(before);
  }, 60_000);

  it("loses nothing when the second is taken back", async () => {
    await keep(app);
    await write("G1", [["=SEW.EASE(38,34)"]]);
    await keep(app);
    expect(await takeBack(written.at(-1)!)).toEqual({ ok: true });
    expect(await comeBack(app)).toEqual([]);
    expect(await formulas("D4:E6")).toEqual(Array<string[]>(3).fill([EASE, WORDS]).flat());
    expect(await formulas("G1")).toEqual(["=SEW.EASE(38,34)"]);
  }, 60_000);

  it("writes over nothing that she has typed meanwhile, a formula included", async () => {
    await keep(app);
    await write("D4", [[7]]);
    await write("D5", [["=2+2"]]);
    const lines = await comeBack(app);
    expect(lines).toHaveLength(2);
    expect(lines.join()).toContain("D4");
    expect(lines.join()).toContain("D5");
    expect(await formulas("D4:D6")).toEqual([7, "=2+2", EASE]);
  }, 60_000);

  it("says what shows something else, because a measurement has changed meanwhile", async () => {
    await keep(app);
    await write("C6", [[42]]);
    expect(await comeBack(app)).toEqual(["Sheet1, D6: was 6, is now 8"]);
    expect(said.at(-1)).toContain("1 cell shows something else");
  }, 60_000);

  it("brings back all but the formulas whose table has gone, and those when it is there again", async () => {
    await write("G1:G2", [["=SEW.EASE(38,34)"], ["=SEW.EASE(SUM(Hers[Finished]),SUM(Hers[Body]))"]]);
    await keep(app);
    const rename = (from: string, to: string) =>
      Excel.run(async (context) => {
        context.workbook.tables.getItem(from).name = to;
        await context.sync();
      });
    await rename("Hers", "Mine");
    expect(await comeBack(app)).toEqual([expect.stringContaining('There is no table "Hers" now')]);
    expect(said.at(-1)).toContain("but for 1 place");
    expect(await formulas("G1:G2")).toEqual(["=SEW.EASE(38,34)", 12]);
    await rename("Mine", "Hers");
    expect(await comeBack(app)).toEqual([]);
    expect(await formulas("G2")).toEqual(["=SEW.EASE(SUM(Hers[Finished]),SUM(Hers[Body]))"]);
  }, 60_000);

  it("remembers the formulas of a sheet that has another name, until it has its own again", async () => {
    await keep(app);
    const rename = (from: string, to: string) =>
      Excel.run(async (context) => {
        context.workbook.worksheets.getItem(from).name = to;
        await context.sync();
      });
    await rename("Sheet1", "Mine");
    expect((await comeBack(app))[0]).toContain('There is no sheet "Sheet1" now');
    await rename("Mine", "Sheet1");
    expect(await comeBack(app)).toEqual([]);
    expect(await formulas("D4:E6")).toEqual(Array<string[]>(3).fill([EASE, WORDS]).flat());
  }, 60_000);
});

describe("keep, on a whole year's workbook", () => {
  it("leaves no formula of ours, and every one comes back where it was", async () => {
    books.push(await trackerBook());
    await carryOutAll(starterWorkbook());
    const all = (): Promise<Record<string, unknown[][]>> =>
      Excel.run(async (context) => {
        const sheets = context.workbook.worksheets.load("items/name");
        await context.sync();
        const used = sheets.items.map(
          (sheet) => [sheet.name, sheet.getUsedRange(true).load("formulas,values")] as const,
        );
        await context.sync();
        return Object.fromEntries(used.map(([name, { formulas, values }]) => [name, [...formulas, ...values]]));
      });
    const before = await all();
    const ours = (cells: Record<string, unknown[][]>) =>
      Object.values(cells)
        .flat(2)
        .filter((cell) => isOurFormula(String(cell))).length;
    expect(ours(before)).toBeGreaterThan(60);
    await keep(app);
    const kept = await all();
    expect(ours(kept)).toBe(0);
    for (const [sheet, cells] of Object.entries(before))
      expect(kept[sheet]!.slice(cells.length / 2), sheet).toEqual(cells.slice(cells.length / 2));
    await keep(app);
    expect(said.at(-1)).toContain("no formula of ours");
    expect(await comeBack(app)).toEqual([]);
    expect(said.at(-1)).toBe("The formulas are back.");
    expect(await all()).toEqual(before);
  }, 180_000);
});
