import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { takeBack } from "../../taskpane/excel";
import { comeBack, keep } from "../../taskpane/sheets/keep";
import { addColumns, addPerson, setUp, shopCopy } from "../../taskpane/sheets/set-up";
import type { OpenBook } from "../practice/office";
import { shown, trackerBook } from "../sheet/tracker-book";
import { facts, listeningApp } from "./listening-app";

const { app, said, written } = listeningApp();

const books: OpenBook[] = [];
beforeEach(async () => {
  books.push(await trackerBook());
  said.length = written.length = 0;
});
afterAll(() => Promise.all(books.map((book) => book.dispose())));

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
  it("lets the words on where the tape goes take a second line", async () => {
    await setUp(app, ["measurements"], await facts(), "in");
    const wraps = await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Measurements");
      const formats = ["A5", "C5", "D5", "C7"].map((cell) => sheet.getRange(cell).format.load("wrapText,rowHeight"));
      await context.sync();
      return formats.map(({ wrapText, rowHeight }) => [wrapText, rowHeight]);
    });
    const [, [, long], , [, short]] = wraps as [
      [boolean, number],
      [boolean, number],
      [boolean, number],
      [boolean, number],
    ];
    expect(wraps.map(([wrap]) => wrap)).toEqual([false, true, true, true]);
    expect(long).toBeGreaterThan(1.5 * short);
  }, 60_000);
  it("writes nothing where all of it is there, on a sheet she has given another name", async () => {
    await setUp(app, ["stash"], await facts(), "in");
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Stash").name = "Cupboard";
      await context.sync();
    });
    await setUp(app, ["stash"], await facts(), "in");
    expect(said.at(-1)).toContain("there already");
    expect(written).toHaveLength(1);
    expect((await facts()).sheets).toEqual(["Sheet1", "Cupboard"]);
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
    const [receipt] = written.slice(-1);
    const at = "EFGH"[table.headings.length - 5]!;
    await write("Measurements", `${at}${table.row + 2}`, [[38]]);
    // What she has typed since is not lost without a question.
    expect(await takeBack(receipt!)).toMatchObject({ ok: false, refusal: { code: "changedSince" } });
    expect((await shown("Measurements", `${at}${table.row + 2}`))[0]).toEqual([38]);
    expect(await takeBack(receipt!, { evenIfChanged: true })).toEqual({ ok: true });
    expect((await facts()).tables.find(({ name }) => name === "Measurements")!.headings).not.toContain("Ada B");
    expect(await takeBack(receipt!)).toEqual({ ok: true });
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

describe("addColumns, whose formulas look at other sheets", () => {
  const hers = (address: string, cells: unknown[][]) =>
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Sheet1");
      sheet.getRange(address).values = cells;
      sheet.tables.add(address, true).name = "MyPatterns";
      await context.sync();
    });
  it("brings those sheets, works, and is taken back as one", async () => {
    await hers("B2:D3", [
      ["Pattern", "Price", "percent off"],
      ["Camp shirt", 20, 0.4],
    ]);
    await addColumns(app, "MyPatterns", "wishList", await facts(), "in");
    expect((await facts()).sheets).toEqual(expect.arrayContaining(["Pattern index", "Measurements", "Settings"]));
    expect(said.at(-1)).toMatch(/^Added to "MyPatterns": Maker, .*Set up: .*Measurements/);
    const table = (await facts()).tables.find(({ name }) => name === "MyPatterns")!;
    const row = (await shown("Sheet1", "B3:Z3"))[0]!;
    // 20 less 40 %.
    expect(row[table.headings.indexOf("Price today")]).toBe(12);
    expect(row.filter((cell) => String(cell).startsWith("#"))).toEqual([]);
    expect(written).toHaveLength(1);
    expect(await takeBack(written[0]!)).toEqual({ ok: true });
    expect((await facts()).sheets).toEqual(["Sheet1"]);
    expect((await shown("Sheet1", "A1:F4"))[2]).toEqual(["", "Camp shirt", 20, 0.4, "", ""]);
  }, 60_000);
  it("says so when the sheet has no room to the right, and writes nothing", async () => {
    await hers("XFC1:XFD2", [
      ["Piece", "Length"],
      ["Blue linen", 3],
    ]);
    await addColumns(app, "MyPatterns", "stash", await facts(), "in");
    expect(said.at(-1)).toContain('"Sheet1" is full');
    expect((await facts()).tables[0]!.headings).toEqual(["Piece", "Length"]);
    expect(written).toEqual([]);
  }, 60_000);
  it("says so when the table has gone meanwhile, and when a sheet of that name stands in the way", async () => {
    await hers("A1:A2", [["Pattern"], ["Camp shirt"]]);
    const before = await facts();
    await Excel.run(async (context) => {
      context.workbook.worksheets.add("Measurements").getRange("A1").values = [["mine"]];
      await context.sync();
    });
    await addColumns(app, "MyPatterns", "wishList", await facts(), "in");
    expect(said.at(-1)).toContain('There is a sheet called "Measurements" already');
    expect(await shown("Measurements", "A1")).toEqual([["mine"]]);
    expect((await facts()).sheets).toEqual(["Sheet1", "Measurements"]);
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("MyPatterns").delete();
      await context.sync();
    });
    await addColumns(app, "MyPatterns", "stash", before, "in");
    expect(said.at(-1)).toContain('The table "MyPatterns" is no longer in this workbook');
  }, 60_000);
});

describe("addPerson, the day of measuring", () => {
  it("is a text for the new person as for the first, and is taken back with the column", async () => {
    await setUp(app, ["measurements"], await facts(), "in");
    const table = (await facts()).tables.find(({ name }) => name === "Measurements")!;
    const labels = await shown("Measurements", table.address.replace(/:[A-Z]+/, ":A"));
    const row = table.row + labels.findIndex(([label]) => label === "Measured on");
    const formats = (): Promise<string[]> =>
      Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem("Measurements").getRangeByIndexes(row - 1, 4, 2, 2);
        range.load("numberFormat");
        await context.sync();
        return (range.numberFormat as string[][]).flat();
      });
    const before = await formats();
    expect(before).toEqual(["# ?/??", "General", "@", "General"]);
    expect(await addPerson(app, "Ada", await facts(), "in")).toBe(true);
    expect(await formats()).toEqual(["# ?/??", "# ?/??", "@", "@"]);
    expect(await takeBack(written.at(-1)!)).toEqual({ ok: true });
    expect(await formats()).toEqual(before);
    expect((await facts()).tables.find(({ name }) => name === "Measurements")!.headings).toEqual(table.headings);
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
    const layout = await Excel.run(async (context) => {
      const copy = context.workbook.worksheets.getItem("Shop copy 14 March 2026").pageLayout;
      copy.load("orientation,zoom,paperSize");
      const other = context.workbook.worksheets.getItem("Sheet1").pageLayout.load("paperSize");
      await context.sync();
      return [copy.orientation, copy.zoom, copy.paperSize === other.paperSize];
    });
    // One page wide on whatever paper there is: none is chosen.
    expect(layout).toEqual(["Portrait", expect.objectContaining({ horizontalFitToPages: 1 }), true]);
  }, 60_000);
  it("says so when a column it needs has another heading", async () => {
    await setUp(app, ["projects"], await facts(), "in");
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Projects").columns.getItem("Needed").getHeaderRowRange().values = [["Wants"]];
      await context.sync();
    });
    await shopCopy(app, await facts(), "in", new Date(2026, 2, 14));
    expect(said.at(-1)).toMatch(/has no column Needed/);
    expect((await facts()).sheets.some((sheet) => sheet.startsWith("Shop copy"))).toBe(false);
  }, 60_000);
});
