import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { WorkbookPlan } from "../../src/index";
import { carryOut, readFacts, readRange, readTable, takeBack, type Receipt } from "../../taskpane/excel";
import { loadClient, openBook, type OpenBook } from "../practice/office";

let open: OpenBook;
const books: OpenBook[] = [];
beforeAll(() => void loadClient());
beforeEach(() => {
  open = openBook();
  books.push(open);
});
afterAll(async () => {
  await Promise.all(books.map((book) => book.dispose()));
});

const sheetOf = (cells: readonly (readonly (string | number | null)[])[]): WorkbookPlan => ({
  sheets: [
    {
      sheet: "Camp shirt",
      blocks: [{ row: 0, column: 0, cells: [["Camp shirt"]], format: "text", style: "title" }],
      tables: [
        {
          name: "CampShirt_body",
          row: 2,
          column: 0,
          columns: [
            { heading: "Measurement", format: "text", note: "Where the tape goes" },
            { heading: "6-12", format: "fraction" },
            { heading: "05", format: "general", validation: { from: 0 } },
          ],
          rows: cells,
        },
      ],
      frozenRows: 1,
      print: "lying",
    },
  ],
  show: "Camp shirt",
});
const plain = sheetOf([
  ["Bust", 30.5, null],
  ["Hip", 32.25, 33],
]);

async function done(plan: WorkbookPlan): Promise<Receipt> {
  const carried = await carryOut(plan);
  if (!carried.ok) throw new Error(JSON.stringify(carried.refusal));
  return carried.receipt;
}
async function cells(sheet: string, address: string) {
  const read = await readRange(sheet, address);
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  return read.value.values;
}
const write = (address: string, values: unknown[][], format?: string) =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange(address);
    if (format) range.numberFormat = values.map((line) => line.map(() => format));
    range.formulas = values;
    await context.sync();
  });
const state = () =>
  Excel.run(async (context) => {
    const sheets = context.workbook.worksheets.load("items/name");
    const names = context.workbook.names.load("items/name,items/formula");
    const tables = context.workbook.tables.load("items/name");
    const shown = context.workbook.worksheets.getActiveWorksheet().load("name");
    const first = context.workbook.worksheets.getItem("Sheet1").getRange("A1:F12");
    first.load("formulas,values,numberFormat");
    await context.sync();
    return {
      sheets: sheets.items.map(({ name }) => name),
      names: names.items.map(({ name, formula }) => [name, formula]),
      tables: tables.items.map(({ name }) => name),
      shown: shown.name,
      first: [first.formulas, first.values, first.numberFormat],
    };
  });

describe("carryOut", () => {
  it("makes a sheet with its title and table, and shows it", async () => {
    await done(plain);
    expect(await cells("Camp shirt", "A1:C5")).toEqual([
      ["Camp shirt", "", ""],
      ["", "", ""],
      ["Measurement", "6-12", "05"],
      ["Bust", 30.5, ""],
      ["Hip", 32.25, 33],
    ]);
    const facts = await readFacts();
    expect(facts).toMatchObject({
      ok: true,
      value: { tables: [{ name: "CampShirt_body", sheet: "Camp shirt", address: "A3:C5", rows: 2 }] },
    });
    expect((await state()).shown).toBe("Camp shirt");
  });

  // Each of these is a date, a number, a truth value or a formula to Excel when it is typed.
  const hostile = [
    "=1+1", "+1", "-1", "@SUM(A1)", "\t=1+1", "\n=1+1", "\r=1+1", " =1+1", "'=1+1", "''", "6-12", "7/8", "05", "1e5", "TRUE",
    "=HYPERLINK(\"x\")", "#N/A", "12:30", "1,5", "50%", "$5", "Jan 5", "30 1/2",
  ]; // prettier-ignore
  it.each(hostile)("writes %j as text, whatever the column's format is", async (text) => {
    await done(
      sheetOf([
        [text, null, null],
        ["b", null, null],
      ]),
    );
    const read = await readTable("CampShirt_body");
    expect(read.ok && read.value.values[1]![0]).toBe(text);
    expect(read.ok && read.value.formulas[1]![0]).toBe(text);
  });
  it("writes them as text in cells of other formats, and in headings", async () => {
    const block = { row: 0, column: 0, cells: hostile.map((text) => [text]) };
    await done({ sheets: [{ sheet: "Odd", blocks: [block], tables: [] }] });
    expect(await cells("Odd", `A1:A${hostile.length}`)).toEqual(hostile.map((text) => [text]));
  });

  it("refuses a taken sheet or table name and writes nothing", async () => {
    await done(plain);
    const before = await state();
    expect(await carryOut(plain)).toEqual({
      ok: false,
      refusal: { code: "sheetTaken", details: { sheet: "Camp shirt" } },
    });
    const other = { sheets: [{ ...plain.sheets![0]!, sheet: "Another" }] };
    expect(await carryOut(other)).toMatchObject({
      refusal: { code: "tableTaken", details: { table: "CampShirt_body" } },
    });
    expect(await state()).toEqual(before);
  });
  it("refuses filled cells, also where an answer would spill, and says which", async () => {
    await write("B3", [["mine"]]);
    const before = await state();
    const plan = (cell: { formula: string; spill?: readonly [number, number] }): WorkbookPlan => ({
      cells: [{ sheet: "Sheet1", blocks: [{ row: 1, column: 1, cells: [[cell]] }] }],
    });
    expect(await carryOut(plan({ formula: "=1+1", spill: [2, 1] }))).toMatchObject({
      refusal: { code: "cellsFilled", details: { sheet: "Sheet1", address: "B3" } },
    });
    expect(await state()).toEqual(before);
    expect((await carryOut(plan({ formula: "=1+1" }))).ok).toBe(true);
  });
  it("writes over filled cells only when a person has agreed, and gives them back exactly", async () => {
    await write("A1:C1", [["=SUM(B2:B3)", "6-12", "=not a formula"]], "@");
    await write("A2:B3", [
      ["=1+1", "'05"],
      [7.25, true],
    ]);
    const before = await state();
    const blocks = [
      {
        row: 0,
        column: 0,
        cells: [
          ["x", 1, { formula: "=2+2" }],
          [null, 2, 3],
        ],
        format: "fraction",
      },
    ] as const;
    const plan: WorkbookPlan = { cells: [{ sheet: "Sheet1", blocks }] };
    expect(await carryOut(plan)).toMatchObject({ ok: false, refusal: { code: "cellsFilled" } });
    expect(await state()).toEqual(before);
    const carried = await carryOut(plan, { overFilled: true });
    expect(await cells("Sheet1", "A1:C2")).toEqual([
      ["x", 1, 4],
      [2, 2, 3],
    ]);
    expect(carried.ok && (await takeBack(carried.receipt))).toEqual({ ok: true });
    expect(await state()).toEqual(before);
  });
  it("keeps its own formula up without asking, but not another in its place", async () => {
    await write("A1:A2", [["=CONCATENATE(1)"], ["=SUM(1)"]]);
    const plan = (row: number): WorkbookPlan => ({
      cells: [
        {
          sheet: "Sheet1",
          blocks: [{ row, column: 0, cells: [[{ formula: "=CONCATENATE(2)" }]] }],
          kept: "=CONCATENATE(",
        },
      ],
    });
    expect((await carryOut(plan(0))).ok).toBe(true);
    expect(await carryOut(plan(1))).toMatchObject({ refusal: { code: "cellsFilled" } });
  });
  it("adds columns to a table that is there, and takes them back", async () => {
    await done(plain);
    const before = await readTable("CampShirt_body");
    const column = { heading: "Note", format: "text", cell: "=x" } as const;
    const sum = { heading: "Sum", format: "text", cell: { formula: "=1+1" } } as const;
    const receipt = await done({ columns: [{ table: "CampShirt_body", columns: [column, sum] }] });
    const read = await readTable("CampShirt_body");
    expect(read.ok && read.value.values.map((line) => line.slice(3))).toEqual([
      ["Note", "Sum"],
      ["=x", 2],
      ["=x", 2],
    ]);
    expect(await carryOut({ columns: [{ table: "CampShirt_body", columns: [column] }] })).toMatchObject({
      refusal: { code: "columnTaken" },
    });
    expect(await takeBack(receipt)).toEqual({ ok: true });
    expect(await readTable("CampShirt_body")).toEqual(before);
  });
  it.each(["=1+1", "+1", "-1", "@here"])("adds a column headed %j as text, and takes it back", async (heading) => {
    await done(plain);
    const before = await readTable("CampShirt_body");
    const receipt = await done({
      columns: [{ table: "CampShirt_body", columns: [{ heading, format: "text", cell: heading }] }],
    });
    const read = await readTable("CampShirt_body");
    expect(read.ok && read.value.values.map((line) => line[3])).toEqual([heading, heading, heading]);
    expect(await takeBack(receipt)).toEqual({ ok: true });
    expect(await readTable("CampShirt_body")).toEqual(before);
  });
  it("points a name, and points it back", async () => {
    const first = await done({ names: [{ name: "Charts", formula: "=Sheet1!$A$1:$B$9" }] });
    const second = await done({ names: [{ name: "Charts", formula: "=Sheet1!$A$1:$B$20" }] });
    expect((await state()).names).toEqual([["Charts", "=Sheet1!$A$1:$B$20"]]);
    await takeBack(second);
    expect((await state()).names).toEqual([["Charts", "=Sheet1!$A$1:$B$9"]]);
    await takeBack(first);
    expect((await state()).names).toEqual([]);
  });
  it("leaves nothing behind when a later step fails", async () => {
    const before = await state();
    const bad: WorkbookPlan = { ...plain, names: [{ name: "not a name", formula: "=Sheet1!$A$1" }] };
    expect(await carryOut(bad)).toMatchObject({ ok: false, refusal: { code: "failed" } });
    expect(await state()).toEqual(before);
  });
  it("says what is missing", async () => {
    const block = { row: 0, column: 0, cells: [[1]] };
    expect(await carryOut({ cells: [{ sheet: "Gone", blocks: [block] }] })).toMatchObject({
      refusal: { code: "sheetMissing", details: { sheet: "Gone" } },
    });
    expect(await carryOut({ columns: [{ table: "Gone", columns: [] }] })).toMatchObject({
      refusal: { code: "tableMissing" },
    });
  });
  it("lets two presses follow each other, so that the second sees what the first has written", async () => {
    const [first, second] = await Promise.all([carryOut(plain), carryOut(plain)]);
    expect(first.ok).toBe(true);
    expect(second).toMatchObject({ ok: false, refusal: { code: "sheetTaken" } });
  });
  it("writes a large table in several requests", async () => {
    const rows = Array.from({ length: 3000 }, (_, row) => [`Row ${row} ${"x".repeat(400)}`, row, null]);
    await done(sheetOf(rows));
    const read = await readTable("CampShirt_body");
    expect(read.ok && [read.value.values.length, read.value.values.at(-1)![1]]).toEqual([3001, 2999]);
  });
});

describe("takeBack", () => {
  it("puts everything back as it was", async () => {
    const before = await state();
    const receipt = await done({ ...plain, names: [{ name: "Charts", formula: "='Camp shirt'!$A$3:$C$5" }] });
    expect(await takeBack(receipt)).toEqual({ ok: true });
    expect(await state()).toEqual(before);
  });
  it("leaves a sheet alone that has been changed since, until a person wants it gone", async () => {
    const receipt = await done(plain);
    await open.type("B4", "31");
    expect(await takeBack(receipt)).toEqual({
      ok: false,
      refusal: { code: "changedSince", details: { sheet: "Camp shirt" } },
    });
    expect((await state()).sheets).toContain("Camp shirt");
    expect(await takeBack(receipt, { evenIfChanged: true })).toEqual({ ok: true });
    expect((await state()).sheets).toEqual(["Sheet1"]);
  });
  it("says so when everything is gone already", async () => {
    const receipt = await done(plain);
    await takeBack(receipt);
    expect(await takeBack(receipt)).toMatchObject({ ok: false, refusal: { code: "nothingToTakeBack" } });
  });
});
