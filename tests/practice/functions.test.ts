import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { readBundle } from "../../src/practice/node-bundle";
import { customFunctionsGlobal } from "../../src/practice/univer/bundle";
import { sheetFunctions } from "../../src/practice/univer/functions";
import { engine } from "../../src/practice/univer/node";
import { loadClient, openBook, type OpenBook } from "./office";

loadClient();
let opened: OpenBook;
const books: OpenBook[] = [];
const open = (options = {}) => books.push((opened = openBook(options)));
beforeAll(() => void open());
afterAll(() => Promise.all(books.map((book) => book.dispose())));

const write = (address: string, rows: unknown[][]) =>
  Excel.run(async (context) => {
    context.workbook.worksheets.getActiveWorksheet().getRange(address).formulas = rows as string[][];
    await context.sync();
  });

describe("custom functions in the workbook", () => {
  test("are called in any case, with numbers, text and ranges", async () => {
    await write("A1:B3", [
      [8, 80],
      [10, 84],
      [12, 88],
    ]);
    await write("D1:D3", [["=SEW.FIT.EASE(92,84)"], ["=sew.fit.ease(B1,70)"], ["=SEW.FIT.PICK(A1:B3,83)"]]);
    expect(await opened.values("D1:E3")).toEqual([
      [8, ""],
      [10, ""],
      [10, 84],
    ]);
  });

  test("get null for what was left out, and blanks as null", async () => {
    await write("F1:F3", [["=SEW.FIT.KIND(1)"], ["=SEW.FIT.KIND(Z1,Z2)"], ['=SEW.FIT.KIND("",TRUE)']]);
    expect(await opened.values("F1:F3")).toEqual([["[1,null]"], ["[null,null]"], ['["",true]']]);
  });

  test("get a cell of a range that is one cell as a grid of one", async () => {
    await write("F5:F6", [["=SEW.FIT.COUNT(B1)"], ["=SEW.FIT.COUNT(B1:B3)"]]);
    expect(await opened.values("F5:F6")).toEqual([[1], [3]]);
  });

  test("say why they fail, wherever the error lands", async () => {
    await write("H1:H3", [[1], ["x"], [3]]);
    await write("I1", [["=SEW.FIT.DOUBLE(H1:H3)"]]);
    await write("J1:J3", [["=SEW.FIT.EASE(90,0)"], ["=SEW.FIT.PICK(A1:B3,200)"], ["=SEW.FIT.BREAK()"]]);
    expect(await opened.values("I1:J3")).toEqual([
      [2, "#VALUE!"],
      ["#VALUE!", "#N/A"],
      [6, "#VALUE!"],
    ]);
    expect(opened.messageAt("I1")).toBeUndefined();
    expect(opened.messageAt("I2")).toBe("x is not a number.");
    expect(opened.messageAt("J1")).toBe("A body measurement is above zero.");
    expect(opened.messageAt("J2")).toBe("No size in this chart is large enough.");
    expect(opened.messageAt("J3")).toBeUndefined(); // an unforeseen error keeps its text to itself
    await opened.type("H2", "2");
    expect(await opened.values("I1:I3")).toEqual([[2], [4], [6]]);
    expect(opened.messageAt("I2")).toBeUndefined();
  });

  test('leave "" as "", and zero as zero', async () => {
    await write("L1:L3", [[1], [""], [0]]);
    await write("M1", [["=SEW.FIT.DOUBLE(L1:L3)"]]);
    await write("N1:N3", [["=COUNT(M1:M3)"], ['=M2=""'], ["=ISNUMBER(M3)"]]);
    expect(await opened.values("M1:N3")).toEqual([
      [2, 2],
      ["", true],
      [0, true],
    ]);
  });

  test("get error cells in their place when functions.json allows it, and fail with them otherwise", async () => {
    await write("P1:P3", [[1], ["=1/0"], ["=NA()"]]);
    await write("Q1:R1", [["=SEW.FIT.DOUBLE(P1:P3)", "=SEW.FIT.COUNT(P1:P3)"]]);
    expect(await opened.values("Q1:R3")).toEqual([
      [2, "#DIV/0!"],
      ["#DIV/0!", ""],
      ["#N/A", ""],
    ]);
  });

  test("refuse text where a number belongs, and too few arguments", async () => {
    await write("S1", [['=SEW.FIT.EASE("wide",84)']]);
    expect(await opened.values("S1")).toEqual([["#VALUE!"]]);
    expect(opened.messageAt("S1")).toBeUndefined();
  });

  test("get blanks as 0 in a workbook that is set so", async () => {
    open({ blanks: 0 });
    await write("F1", [["=SEW.FIT.KIND(Z1,Z2)"]]);
    expect(await opened.values("F1")).toEqual([["[0,0]"]]);
  });
});

describe("#SPILL!", () => {
  beforeAll(async () => {
    open();
    await write("A1:B4", [
      ["Size", "Bust"],
      [8, 80],
      [10, 84],
      [12, 88],
    ]);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().tables.add("A1:B4", true).name = "Chart";
      await context.sync();
    });
  });

  test("is the answer when a spill would run into a table", async () => {
    await write("A6:A8", [[1], [2], [3]]);
    await write("A10:B10", [["=SEW.FIT.DOUBLE(A6:A8)", "=SEW.FIT.COUNT(A6:A8)"]]);
    expect(await opened.values("A10:A12")).toEqual([[2], [4], [6]]);
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.getRange("D12:D13").values = [["Other"], [""]];
      sheet.tables.add("D12:D13", true);
      sheet.getRange("D10").formulas = [["=SEW.FIT.DOUBLE(A6:A8)"]];
      await context.sync();
    });
    expect(await opened.values("D10:D13")).toEqual([["#SPILL!"], [""], ["Other"], [""]]);
  });

  test("is the answer when a formula in a table would spill", async () => {
    await write("B2:B4", [["=SEW.FIT.DOUBLE(A6:A8)"], ["=SEW.FIT.DOUBLE(A6)"], ["=SEW.FIT.DOUBLE([@Size])"]]);
    expect(await opened.values("B2:B4")).toEqual([["#SPILL!"], [2], [24]]);
  });

  test("is the answer when cells in the way are filled, and goes when they are emptied", async () => {
    await write("G2", [["in the way"]]);
    await write("G1", [["=SEW.FIT.DOUBLE(A6:A8)"]]);
    expect(await opened.values("G1:G3")).toEqual([["#SPILL!"], ["in the way"], [""]]);
    await opened.type("G2", "");
    expect(await opened.values("G1:G3")).toEqual([[2], [4], [6]]);
  });

  test("leaves no cells that seem to be filled by the formula", async () => {
    const found = await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      const spill = sheet.getRange("G1").getSpillingToRangeOrNullObject().load("address");
      const parent = sheet.getRange("G3").getSpillParentOrNullObject().load("address");
      const none = sheet.getRange("B2").getSpillingToRangeOrNullObject().load("address");
      const alone = sheet.getRange("A1").getSpillingToRangeOrNullObject().load("address");
      await context.sync();
      return [spill.address, parent.address, none.isNullObject, alone.isNullObject];
    });
    expect(found).toEqual(["Sheet1!G1:G3", "Sheet1!G1", true, true]);
  });
});

describe("sheetFunctions", () => {
  test("refuses a functions.json that lists a function which the bundle lacks", () => {
    const metadata = { functions: [{ id: "LOST", name: "LOST", parameters: [] }] };
    const bundle = customFunctionsGlobal().found;
    expect(() => sheetFunctions({ engine, namespace: "SEW", metadata, bundle })).toThrow("LOST");
  });

  test("describes functions and their arguments for the help under a formula", () => {
    const folder = `${import.meta.dirname}/fixture`;
    const { descriptions } = sheetFunctions({ engine, namespace: "SEW", ...readBundle(folder) });
    const ease = descriptions.find(({ functionName }) => functionName === "SEW.FIT.EASE");
    expect(ease).toMatchObject({ functionName: "SEW.FIT.EASE", description: "Finished garment minus body." });
    expect(ease!.functionParameter.map(({ name, require }) => [name, require])).toEqual([
      ["finished", 1],
      ["body", 1],
      ["fit", 0],
    ]);
  });
});
