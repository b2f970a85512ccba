import { afterAll, beforeEach, describe, expect, it } from "vitest";
import type { App } from "../../taskpane/app";
import { readFacts, takeBack, type Facts, type Receipt } from "../../taskpane/excel";
import { comeBack, keep } from "../../taskpane/sheets/keep";
import { addColumns, addPerson, setUp, shopCopy } from "../../taskpane/sheets/set-up";
import type { OpenBook } from "../practice/office";
import { shown, trackerBook } from "../sheet/tracker-book";

/** Remembers what the pane would say, and what could be taken back. */
const said: string[] = [];
const written: Receipt[] = [];
const app: App = {
  say: (sentence) => void said.push(sentence),
  ask: () => Promise.resolve(null),
  wrote: (receipt) => void written.push(receipt),
  run: (work) => work(),
};

const books: OpenBook[] = [];
beforeEach(async () => {
  books.push(await trackerBook());
  said.length = written.length = 0;
});
afterAll(() => Promise.all(books.map((book) => book.dispose())));

async function facts(): Promise<Facts> {
  const read = await readFacts();
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  return read.value;
}
const write = (sheet: string, address: string, formulas: unknown[][]) =>
  Excel.run(async (context) => {
    context.workbook.worksheets.getItem(sheet).getRange(address).formulas = formulas;
    await context.sync();
  });

describe("setUp", () => {
  it("makes the chosen sheets with what they look at, once, and is taken back as one", async () => {
    await setUp(app, ["shoppingList"], await facts(), "in");
    const { sheets } = await facts();
    expect(sheets).toEqual(expect.arrayContaining(["Measurements", "Settings", "Projects", "Stash", "Shopping list"]));
    expect(written).toHaveLength(1);
    expect(await takeBack(written[0]!)).toEqual({ ok: true });
    expect((await facts()).sheets).toEqual(["Sheet1"]);
  }, 60_000);
  it("asks for a choice first", async () => {
    await setUp(app, [], await facts(), "in");
    expect(said.at(-1)).toContain("Choose");
  });
});

describe("addPerson", () => {
  it("puts a column at the right end of the measurements, and says when there are none", async () => {
    expect(await addPerson(app, "Ada", await facts(), "in")).toBe(false);
    expect(said.at(-1)).toContain("set up the Measurements sheet first");
    await setUp(app, ["measurements"], await facts(), "in");
    expect(await addPerson(app, " Ada  B ", await facts(), "in")).toBe(true);
    const table = (await facts()).tables.find(({ name }) => name === "Measurements")!;
    expect(table.headings.at(-1)).toBe("Ada B");
    expect(await addPerson(app, "ada b", await facts(), "in")).toBe(false);
    expect(await addPerson(app, "  ", await facts(), "in")).toBe(false);
  }, 60_000);
});

describe("addColumns", () => {
  it("adds only what her own table lacks", async () => {
    await write("Sheet1", "A1:B2", [
      ["Piece", "Length"],
      ["Blue linen", 3],
    ]);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").tables.add("A1:B2", true).name = "MyCloth";
      await context.sync();
    });
    await addColumns(app, "MyCloth", "stash", await facts(), "in");
    const table = (await facts()).tables.find(({ name }) => name === "MyCloth")!;
    expect(table.headings.slice(0, 2)).toEqual(["Piece", "Length"]);
    expect(table.headings.length).toBeGreaterThan(3);
    await addColumns(app, "MyCloth", "stash", await facts(), "in");
    expect(said.at(-1)).toContain("has all the columns");
    expect((await shown("Sheet1", "A2:B2"))[0]).toEqual(["Blue linen", 3]);
  }, 60_000);
});

describe("keep and comeBack", () => {
  it("turn our formulas into values and back, a spill included, and leave others alone", async () => {
    await write("Sheet1", "A1:A5", [
      ["=SEW.EASE(38,34)"],
      ["=1+1"],
      ['=SEW.TAGS("Maker",4821)'],
      [7],
      ['="SEW.EASE("'],
    ]);
    await write("Sheet1", "C1:D3", [
      ["Bust", 34],
      ["Hip", 38],
      ["", ""],
    ]);
    await write("Sheet1", "F1:H3", [
      ["Measurement", 12, 14],
      ["Bust", 34, 36],
      ["Hip", 36, 38],
    ]);
    await write("Sheet1", "J1", [["=SEW.SIZEBYPLACE(F1:H3,C1:D2)"]]);
    const before = await shown("Sheet1", "A1:P6");
    await keep(app);
    expect(said.at(-1)).toContain("3 formulas");
    expect(await shown("Sheet1", "A1:P6")).toEqual(before);
    await write("Sheet1", "D2", [[36]]);
    const frozen = await shown("Sheet1", "J1:P6");
    expect(frozen).toEqual(before.map((line) => line.slice(9)));
    await write("Sheet1", "D2", [[38]]);
    expect(await comeBack(app)).toEqual([]);
    expect(said.at(-1)).toBe("The formulas are back.");
    expect(await shown("Sheet1", "A1:P6")).toEqual(before);
    await write("Sheet1", "D2", [[36]]);
    expect(await shown("Sheet1", "J1:P6")).not.toEqual(frozen);
    expect(await comeBack(app)).toEqual([]);
    expect(said.at(-1)).toContain("nothing to bring back");
  }, 60_000);
  it("give the formulas back when keeping is taken back", async () => {
    await write("Sheet1", "A1:A2", [["=SEW.EASE(38,B1)"], ["=A1*2"]]);
    await write("Sheet1", "B1", [[34]]);
    await keep(app);
    expect(await takeBack(written.at(-1)!)).toEqual({ ok: true });
    await write("Sheet1", "B1", [[35]]);
    expect(await shown("Sheet1", "A1:A2")).toEqual([[3], [6]]);
  }, 60_000);
  it("name what somebody has changed meanwhile, and leave it", async () => {
    await write("Sheet1", "A1", [["=SEW.EASE(38,34)"]]);
    await keep(app);
    await write("Sheet1", "A1", [[99]]);
    const left = await comeBack(app);
    expect(left).toHaveLength(1);
    expect(left[0]).toContain("=SEW.EASE(38,34)");
    expect(await shown("Sheet1", "A1")).toEqual([[99]]);
  }, 60_000);
});

describe("shopCopy", () => {
  it("writes today's list as values on a sheet of its own, and a second one beside it", async () => {
    const today = new Date(2026, 2, 14);
    await shopCopy(app, await facts(), "in", today);
    expect(said.at(-1)).toContain("no Projects table");
    await setUp(app, ["projects", "stash"], await facts(), "in");
    await shopCopy(app, await facts(), "in", today);
    await shopCopy(app, await facts(), "in", today);
    const { sheets } = await facts();
    expect(sheets.filter((sheet) => sheet.startsWith("Shop copy 14 March 2026"))).toHaveLength(2);
  }, 60_000);
});
