/** Two windows on one workbook: what the other writes between two of our requests stays, wherever it comes in between. */
import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { INDEX_CELL, INDEX_NAME, INDEX_SHEET, readCharts, readIndexFormula } from "../../src/index";
import { carryOut, takeBack } from "../../taskpane/excel";
import { insertChart } from "../../taskpane/insert-chart";
import { openBook, type OpenBook } from "../practice/office";
import { shown, sourceFunctions, trackerBook } from "../sheet/tracker-book";

/** Invented figures. */
const SHIRT = readCharts("Body measurements (in)\nSize\t12\t14\nBust\t34\t36").tables;
const BLOUSE = readCharts("Body measurements (in)\nSize\t12\t14\nBust\t35\t37").tables;

const books: OpenBook[] = [];
let functions: Awaited<ReturnType<typeof sourceFunctions>>;
afterAll(() => Promise.all(books.map((book) => book.dispose())));

let book: OpenBook;
/** What the other window does before the request of this number. */
let other: { readonly at: number; readonly work: () => void } | undefined;
let batch = 0;
beforeEach(async () => {
  if (!functions) books.push(await trackerBook());
  functions ??= await sourceFunctions();
  other = undefined;
  const before = () => {
    if (batch++ === other?.at) other.work();
  };
  books.push((book = openBook({ functions, before })));
}, 60_000);

const indexCell = () => book.book.Worksheets.GetItem(INDEX_SHEET).GetRange(INDEX_CELL.address);
const listed = () =>
  readIndexFormula(String(indexCell().Formulas[0]![0]))!.map(({ pattern, table }) => `${pattern}: ${table}`);

/** The other window's insert, as one thing: its sheet, its table, its entry in the index. */
function skirt(): void {
  const { Worksheets, Tables, Names } = book.book;
  const sheet = Worksheets.Add("Wrap skirt");
  sheet.GetRange("A1").Values = [["Wrap skirt"]];
  sheet.GetRange("A3:C4").Values = [
    ["Size", "S", "M"],
    ["Waist (cm)", 68, 76],
  ];
  sheet.Tables.Add("A3:C4", true).Name = "WrapSkirt_body";
  expect(Tables.find("WrapSkirt_body")).toBeDefined();
  const entry = '"Wrap skirt",WrapSkirt_body[#All]';
  if (Worksheets.find(INDEX_SHEET)) {
    const formula = String(indexCell().Formulas[0]![0]);
    indexCell().Formulas = [[formula === "" ? `=SEW.CHARTINDEX(${entry})` : formula.replace(/\)$/, `,${entry})`)]];
  } else {
    Worksheets.Add(INDEX_SHEET);
    indexCell().Formulas = [[`=SEW.CHARTINDEX(${entry})`]];
    Names.Add(INDEX_NAME, `='${INDEX_SHEET}'!$A$3:$L$503`);
  }
}
const sheets = () => book.book.Worksheets.all().map(({ Name }) => Name);
const settings = () => book.book.Settings.all().map(({ Key }) => Key);
const BOTH = ["Camp shirt: CampShirt_body", "Wrap skirt: WrapSkirt_body"];

describe("a chart that another window inserts at the same time", () => {
  it("stays in the index, and so does ours, wherever it comes in between", async () => {
    await insertChart("Blouse", BLOUSE);
    const blouse = "Blouse: Blouse_body";
    let cameIn = 0;
    for (let at = 0, isDone = false; !isDone; at++) {
      let came = false;
      other = { at, work: () => ((came = true), skirt()) };
      batch = 0;
      const inserted = await insertChart("Camp shirt", SHIRT);
      other = undefined;
      expect(inserted).toMatchObject({ ok: true, sheet: "Camp shirt" });
      if (!inserted.ok) return;
      isDone = !came;
      expect([...listed()].sort()).toEqual([blouse, ...(came ? BOTH : BOTH.slice(0, 1))].sort());
      expect(sheets()).toEqual(expect.arrayContaining(["Blouse", "Camp shirt", ...(came ? ["Wrap skirt"] : [])]));
      expect(sheets()).toHaveLength(came ? 5 : 4);
      expect(settings()).toEqual([]);
      // Ours is taken back and nothing of the other's with it.
      expect(await takeBack(inserted.receipt)).toEqual({ ok: true });
      expect([...listed()].sort()).toEqual([blouse, ...(came ? BOTH.slice(1) : [])]);
      if (came) {
        cameIn++;
        book.book.Worksheets.GetItem("Wrap skirt").Delete();
        indexCell().Formulas = [['=SEW.CHARTINDEX("Blouse",Blouse_body[#All])']];
      }
    }
    expect(cameIn).toBeGreaterThan(15);
  }, 240_000);

  it("keeps its index when ours is the first of all and is taken back", async () => {
    const inserted = await insertChart("Camp shirt", SHIRT);
    if (!inserted.ok) throw new Error(inserted.said);
    skirt();
    expect(await takeBack(inserted.receipt)).toEqual({ ok: true });
    expect(listed()).toEqual(BOTH.slice(1));
    expect(sheets()).toEqual(["Sheet1", INDEX_SHEET, "Wrap skirt"]);
    await Excel.run(async (context) => {
      const formula = `=SEW.SIZEMATCH(${INDEX_NAME},"waist","75 cm",,"Wrap skirt")`;
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").formulas = [[formula]];
      await context.sync();
    });
    expect(await shown("Sheet1", "A1")).toEqual([["M"]]);
  }, 60_000);

  it("that makes the index first is joined there", async () => {
    for (const at of [4, 8, 9, 10, 12]) {
      other = { at, work: skirt };
      batch = 0;
      const inserted = await insertChart("Camp shirt", SHIRT);
      other = undefined;
      expect(inserted).toMatchObject({ ok: true });
      expect([...listed()].sort()).toEqual(BOTH);
      for (const name of ["Camp shirt", "Wrap skirt", INDEX_SHEET]) book.book.Worksheets.GetItem(name).Delete();
    }
  }, 120_000);
});

describe("a sheet of our name that another window makes at the same time", () => {
  it("stays as it is, and the next free name is offered", async () => {
    const hers = () => {
      const sheet = book.book.Worksheets.Add("Camp shirt");
      sheet.GetRange("A1").Values = [["hers"]];
    };
    let met = 0;
    for (let at = 0; at < 8; at++) {
      let came = false;
      other = {
        at,
        work: () => {
          // Once ours is there, Excel gives the other window no second one of that name.
          if (book.book.Worksheets.find("Camp shirt")) return;
          came = true;
          hers();
        },
      };
      batch = 0;
      const inserted = await insertChart("Camp shirt", SHIRT);
      other = undefined;
      if (came) {
        met++;
        expect(inserted).toMatchObject({ ok: false, free: "Camp shirt 2" });
        expect(sheets()).toEqual(["Sheet1", "Camp shirt"]);
        expect(await shown("Camp shirt")).toEqual([["hers"]]);
        book.book.Worksheets.GetItem("Camp shirt").Delete();
      } else if (inserted.ok) expect(await takeBack(inserted.receipt)).toEqual({ ok: true });
      expect(settings()).toEqual([]);
      expect(sheets()).toEqual(["Sheet1"]);
    }
    expect(met).toBeGreaterThan(3);
  }, 120_000);
});

describe("a cell that is not as it was when its write was planned", () => {
  it("is not written over, and the sentence says whose it is", async () => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").formulas = [["=1+1"]];
      await context.sync();
    });
    const blocks = [{ row: 0, column: 0, cells: [["ours"]] }];
    const carried = await carryOut(
      { cells: [{ sheet: "Sheet1", blocks, expected: "=2+2" }], sheets: [{ sheet: "New", blocks, tables: [] }] },
      { overFilled: true },
    );
    expect(carried).toEqual({ ok: false, refusal: { code: "changedMeanwhile", details: { sheet: "Sheet1" } } });
    expect(await shown("Sheet1", "A1")).toEqual([[2]]);
    expect(sheets()).toEqual(["Sheet1"]);
  });
});
