/** Each bug of the embedded spreadsheet that the practice workbook works around, shown to be gone. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { loadClient, openBook, type OpenBook } from "./office";

loadClient();
let opened: OpenBook;
beforeAll(() => void (opened = openBook()));
afterAll(() => opened.dispose());

const write = (address: string, rows: unknown[][]) =>
  Excel.run(async (context) => {
    context.workbook.worksheets.getActiveWorksheet().getRange(address).formulas = rows as string[][];
    await context.sync();
  });

describe("the embedded spreadsheet, put right", () => {
  test("forgets an unfinished structured reference", async () => {
    for (const step of ["=SUM(Chart[", "=SUM(Chart[B", "=SUM(Chart[[#All],[B"]) {
      opened.api.getFormula().sequenceNodesBuilder(step);
    }
    await write("A1:B1", [["=SUM(1,2)", "=SEW.FIT.EASE(90,84)"]]);
    expect(await opened.values("A1:B1")).toEqual([[3, 6]]);
  });

  test("knows a table whose name has an underscore or a full stop in it, and one named after its sheet", async () => {
    const sheet = opened.book.Worksheets.GetItem("Sheet1");
    await write("X1:X3", [["Bust"], [80], [84]]);
    sheet.Tables.Add("X1:X3", true).Name = "Camp.shirt_body";
    await write("Z1:Z2", [["=SUM(Camp.shirt_body[Bust])"], ["=ROWS(Camp.shirt_body[#All])"]]);
    expect(await opened.values("Z1:Z2")).toEqual([[164], [3]]);
    opened.book.Tables.GetItem("Camp.shirt_body").Name = "Sheet1";
    await write("Z3", [["=SUM(Sheet1[Bust])"]]);
    expect(await opened.values("Z3")).toEqual([[164]]);
    opened.book.Tables.GetItem("Sheet1").Name = "Shirts";
  });

  test("knows a name that was made before, and one that reaches beyond the sheet's edge", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      context.workbook.names.add("Wide", "=Sheet1!$T$1:$T$2000");
      await context.sync();
      sheet.getRange("T1").values = [[4]];
      await context.sync();
    });
    await write("R1:R2", [["=SUM(Wide)"], ["=ROWS(Wide)"]]);
    expect(await opened.values("R1:R2")).toEqual([[4], [2000]]);
  });

  test("counts no cell that a formula has ceased to fill", async () => {
    await write("M1:P1", [[3, "=SEQUENCE(M1)", '=SUMPRODUCT((N1:N10<>"")*1)', "=SUM(N1:N10)"]]);
    expect(await opened.values("O1:P1")).toEqual([[3, 6]]);
    for (const [length, sum] of [
      [2, 3],
      [1, 1],
      [4, 10],
    ] as const) {
      await write("M1", [[length]]);
      expect(await opened.values("O1:P1")).toEqual([[length, sum]]);
    }
  });

  test("reads all of a table that has grown, in every calculation that follows", async () => {
    const sheet = opened.book.Worksheets.GetItem("Sheet1");
    await write("AC1:AD2", [
      ["Place", "Ada"],
      ["Bust", 36],
    ]);
    sheet.Tables.Add("AC1:AD2", true).Name = "Tape";
    // Long formulas are remembered in another way than short ones.
    const columns = '=IF(AD5="no person at all has a column there yet",0,COLUMNS(Tape[#All]))+AD5';
    await write("AC5:AC6", [[columns], ["=COLUMNS(Tape[#All])+AD6"]]);
    expect(await opened.values("AC5:AC6")).toEqual([[2], [2]]);
    await opened.type("AD5", "5");
    expect(await opened.values("AC5:AC6")).toEqual([[7], [2]]);
    await opened.type("AE1", "Ben");
    expect(await opened.values("AC5:AC6")).toEqual([[8], [3]]);
    await opened.type("AD5", "10");
    expect(await opened.values("AC5:AC6")).toEqual([[13], [3]]);
    await opened.type("AD6", "20");
    expect(await opened.values("AC5:AC6")).toEqual([[13], [23]]);
  });

  test("leaves a range in its order when SORT and SORTBY read it", async () => {
    await write("D1:D3", [[8], [10], [12]]);
    await write("F1:J1", [
      [
        "=SORT(D1:D3,1,-1)",
        "=UNIQUE(D1:D3)",
        "=SEW.FIT.DOUBLE(D1:D3)",
        "=SORTBY(D1:D3,D1:D3,-1)",
        "=SEW.FIT.DOUBLE(D1:D3)",
      ],
    ]);
    expect(await opened.values("F1:J3")).toEqual([
      [12, 8, 16, 12, 16],
      [10, 10, 20, 10, 20],
      [8, 12, 24, 8, 24],
    ]);
  });

  test("notices a heading that was typed into the grid, also through undo and redo", async () => {
    const sheet = opened.book.Worksheets.GetItem("Sheet1");
    await write("A5:B7", [
      ["Size", "Bust"],
      [8, 80],
      [10, 84],
    ]);
    sheet.Tables.Add("A5:B7", true).Name = "Chart";
    await write("D5", [["=SUM(Chart[Bust])"]]);
    await opened.values("D5");
    sheet.GetRange("B5").facade().setValue("Chest"); // as the cell editor does it
    await write("D6", [["=SUM(Chart[Chest])"]]);
    const names = () => opened.book.Tables.GetItem("Chart").columnNames;
    expect(names()).toEqual(["Size", "Chest"]);
    expect(await opened.values("D5:D6")).toEqual([[164], [164]]);
    expect(sheet.GetRange("D5").Formulas).toEqual([["=SUM(Chart[Chest])"]]);

    opened.book.fbook.undo(); // D6
    opened.book.fbook.undo(); // the heading
    expect(await opened.values("D5")).toEqual([[164]]);
    expect([names(), sheet.GetRange("D5").Formulas]).toEqual([["Size", "Bust"], [["=SUM(Chart[Bust])"]]]);
    opened.book.fbook.redo();
    opened.book.fbook.redo();
    expect(await opened.values("D5:D6")).toEqual([[164], [164]]);
    expect([names(), sheet.GetRange("D5").Formulas]).toEqual([["Size", "Chest"], [["=SUM(Chart[Chest])"]]]);
  });

  // In Excel text in quotes stays text, and is a number only where a sum or a date function makes one of it.
  test("takes text in quotes for text", async () => {
    const formulas = [
      '=ISTEXT("7/8")',
      '="6-12"',
      '="50%"&"1,000"',
      '="a ""b"""',
      '="2"+1',
      '=YEAR("2026-01-05")',
      '=LEN("")',
    ];
    await write(
      "N1:N7",
      formulas.map((formula) => [formula]),
    );
    const values = [[true], ["6-12"], ["50%1,000"], ['a "b"'], [3], [2026], [0]];
    expect(await opened.values("N1:N7")).toEqual(values);
  });

  test("gives back shown text and calculated values apart", async () => {
    await write("L1:L2", [[0.5], ["=L1*2"]]);
    const range = await Excel.run(async (context) => {
      const cells = context.workbook.worksheets.getActiveWorksheet().getRange("L1:L2");
      cells.numberFormat = [["# ?/?"], ["0.00"]];
      cells.load("values,text");
      await context.sync();
      return cells;
    });
    expect(range.values).toEqual([[0.5], [1]]);
    expect(range.text[1]).toEqual(["1.00"]);
    expect(range.text[0]![0]!.trim()).toBe("1/2");
  });

  test("keeps two sheets and two tables of one name apart by refusing the second", async () => {
    const again = Excel.run(async (context) => {
      context.workbook.worksheets.add("Sheet1");
      await context.sync();
    });
    await expect(again).rejects.toMatchObject({ code: "ItemAlreadyExists" });
  });

  test("takes cells beyond the edge that its sheets start with", async () => {
    await write("AZ2000", [["far"]]);
    expect(await opened.values("AZ2000")).toEqual([["far"]]);
    const beyond = await Excel.run(async (context) => {
      const cell = context.workbook.worksheets.getActiveWorksheet().getRange("ZZ90000").load("values");
      await context.sync();
      return cell.values;
    });
    expect(beyond).toEqual([[""]]);
  });
});
