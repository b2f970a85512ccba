import { afterAll, beforeEach, describe, expect, it } from "vitest";
import { readCharts, type ChartTable } from "../../src/index";
import { carryOut, readFacts, readRange, takeBack } from "../../taskpane/excel";
import { insertChart } from "../../taskpane/insert-chart";
import { readInventory } from "../../taskpane/patterns";
import type { OpenBook } from "../practice/office";
import { shown, trackerBook } from "../sheet/tracker-book";

/** Invented figures of a camp shirt. */
const SHIRT = `Body measurements (in)
Size	12	14	16
Bust	34	36	38
Hip	36	38	40

Fabric, yards
Size	12	14	16
View A
45" with nap	2 1/8	2 1/4	2 3/8`;
const SKIRT = "Size\tS\tM\nWaist (cm)\t68\t76\nHip (cm)\t92\t100";
const charts = (text: string): readonly ChartTable[] => readCharts(text).tables;

let open: OpenBook;
const books: OpenBook[] = [];
beforeEach(async () => {
  open = await trackerBook();
  books.push(open);
});
afterAll(() => Promise.all(books.map((book) => book.dispose())));

async function inserted(name: string, text: string) {
  const answer = await insertChart(name, charts(text));
  if (!answer.ok) throw new Error(answer.said);
  return answer;
}
const write = (address: string, formula: string) =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange(address);
    range.formulas = [[formula]];
    await context.sync();
  });

describe("insertChart", () => {
  it("makes a sheet with a table for each chart, and formulas find them", async () => {
    const answer = await inserted("Camp shirt", SHIRT);
    expect(answer.tables).toEqual(["CampShirt_body", "CampShirt_fabric"]);
    expect(answer.said).toContain("CampShirt_body[#All]");
    await write("A1", '=SEW.SIZEMATCH(CampShirt_body[#All],"bust",36)');
    await write("A2", '=SEW.YARDAGE(CampShirt_fabric[#All],"A",45,12)');
    expect(await shown("Sheet1", "A1:A2")).toEqual([[14], [2.125]]);
  });
  it("keeps the pattern index up, so that a formula finds a chart by the pattern's name", async () => {
    await inserted("Camp shirt", SHIRT);
    await inserted("Wrap skirt", SKIRT);
    await write("A1", '=SEW.SIZEMATCH(PatternIndex,"hip",38,,"Camp shirt")');
    await write("A2", '=SEW.SIZEMATCH(PatternIndex,"hip",99,,"Wrap skirt")');
    expect(await shown("Sheet1", "A1:A2")).toEqual([[14], ["M"]]);
    const names = new Set((await shown("Pattern index")).slice(3).map(([name]) => name));
    expect([...names]).toEqual(["Camp shirt", "Wrap skirt"]);
  });
  it("offers the next free name for a taken one, and writes nothing", async () => {
    await inserted("Camp shirt", SHIRT);
    const before = await readFacts();
    const again = await insertChart("camp SHIRT", charts(SKIRT));
    expect(again).toMatchObject({ ok: false, free: "camp SHIRT 2" });
    expect(await readFacts()).toEqual(before);
    expect(await insertChart("camp SHIRT 2", charts(SKIRT))).toMatchObject({ ok: true, tables: ["CampSHIRT2_body"] });
  });
  it("is taken back with the index as it was before", async () => {
    await inserted("Camp shirt", SHIRT);
    const before = await readFacts();
    const index = await readRange("Pattern index", "A4");
    const second = await inserted("Wrap skirt", SKIRT);
    expect(await takeBack(second.receipt)).toEqual({ ok: true });
    expect(await readFacts()).toEqual(before);
    expect(await readRange("Pattern index", "A4")).toEqual(index);
  });
  it("leaves an index formula alone that a person has changed, and says so", async () => {
    await inserted("Camp shirt", SHIRT);
    const mine = { formula: "=SUM(1,2)" };
    await carryOut(
      { cells: [{ sheet: "Pattern index", blocks: [{ row: 3, column: 0, cells: [[mine]] }] }] },
      { overFilled: true },
    );
    const answer = await inserted("Wrap skirt", SKIRT);
    expect(answer.said).toContain("changed by hand");
    expect(await shown("Pattern index", "A4")).toEqual([[3]]);
  });
});

describe("readInventory", () => {
  it("knows each pattern's tables by kind", async () => {
    await inserted("Camp shirt", SHIRT);
    const read = await readInventory();
    if (!read.ok) throw new Error("no inventory");
    const [pattern] = read.value.patterns;
    expect(pattern).toMatchObject({ name: "Camp shirt", sheet: "Camp shirt" });
    expect(pattern!.tables.body.map(({ name }) => name)).toEqual(["CampShirt_body"]);
    expect(pattern!.tables.fabric.map(({ name }) => name)).toEqual(["CampShirt_fabric"]);
    expect(read.value.people).toBeUndefined();
  });
});
