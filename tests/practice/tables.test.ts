import { afterAll, beforeEach, describe, expect, test } from "vitest";
import { loadClient, openBook, type OpenBook } from "./office";

loadClient();
let opened: OpenBook;
const books: OpenBook[] = [];
beforeEach(async () => {
  books.push((opened = openBook()));
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    sheet.getRange("B2:D4").values = [
      ["Place", 8, "Bust girth"],
      ["bust", 80, 84],
      ["waist", 62, 66],
    ];
    sheet.tables.add("B2:D4", true).name = "Chart";
    await context.sync();
  });
});
afterAll(() => Promise.all(books.map((book) => book.dispose())));

const run = <T>(work: (sheet: Excel.Worksheet, table: Excel.Table) => T) =>
  Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    const result = work(sheet, sheet.tables.getItem("Chart"));
    await context.sync();
    return result;
  });
const tableAddress = async () => (await run((_sheet, table) => table.getRange().load("address"))).address;

/** null leaves a cell alone; the declarations do not say so. */
const KEEP = null as unknown as string;

describe("a table", () => {
  test("makes text of its headings", async () => {
    const headings = await run((_sheet, table) => table.getHeaderRowRange().load("values,valueTypes"));
    expect(headings.values).toEqual([["Place", "8", "Bust girth"]]);
    expect(headings.valueTypes).toEqual([["String", "String", "String"]]);
    await opened.type("C2", "10");
    expect(await opened.values("B2:D2")).toEqual([["Place", "10", "Bust girth"]]);
  });

  test("gives empty and repeated headings names of their own", async () => {
    const headings = await run((sheet) => {
      sheet.getRange("H2:J3").values = [
        ["Size", "Size", ""],
        [1, 2, 3],
      ];
      return sheet.tables.add("H2:J3", true).getHeaderRowRange().load("values");
    });
    expect(headings.values).toEqual([["Size", "Size2", "Column3"]]);
  });

  test("is read by its name, its columns and its sections, whatever the case", async () => {
    await run((sheet) => {
      sheet.getRange("G1:G5").formulas = [
        ["=ROWS(Chart)"],
        ["=ROWS(Chart[#All])"],
        ["=SUM(chart[bust GIRTH])"],
        ["=SUM(Chart[[8]:[Bust girth]])"],
        ["=INDEX(Chart[#Headers],2)"],
      ];
    });
    expect(await opened.values("G1:G5")).toEqual([[2], [3], [150], [292], ["8"]]);
  });

  test("is refused in a formula when it, or its column, is not there", async () => {
    for (const formula of ["=SUM(Chart[hip])", "=SUM(Nobody[8])", "=[@8]"]) {
      const written = run((sheet) => (sheet.getRange("G1").formulas = [[formula]]));
      await expect(written).rejects.toMatchObject({ code: "InvalidArgument" });
    }
    await opened.type("D3", "=SUM(Chart[hip])").catch(() => undefined);
    expect(await opened.values("D3")).toEqual([[84]]);
  });

  test("answers #REF! for a column that is not there when the formula was typed into the grid", async () => {
    const cell = opened.book.Worksheets.GetActiveWorksheet().GetRange("G1");
    cell.facade().setValue({ f: "=SUM(Chart[hip])" });
    expect(await opened.values("G1")).toEqual([["#REF!"]]);
  });

  test("knows this row by [@…]", async () => {
    const column = await run((_sheet, table) => {
      table.columns.add(undefined, [["Diff"], ["=[@[Bust girth]]-[@8]"], ["=Chart[@[Bust girth]]-[@8]"]]);
      return table.columns.getItem("Diff").getRange().load("formulas,values");
    });
    expect(column.values).toEqual([["Diff"], [4], [4]]);
    expect(column.formulas).toEqual([["Diff"], ["=[@[Bust girth]]-[@8]"], ["=[@[Bust girth]]-[@8]"]]);
    await opened.type("C3", "70");
    expect(await opened.values("E2:E4")).toEqual([["Diff"], [14], [4]]);
  });

  test("takes new rows at its end and in the middle, and fills calculated columns", async () => {
    await run((sheet, table) => {
      sheet.getRange("B7").values = [["below"]];
      sheet.getRange("G2").formulas = [["=SUM(Chart[8])"]];
      sheet.getRange("G3").formulas = [["=C4"]];
      table.columns.add(undefined, [["Twice"], ["=[@8]*2"], ["=[@8]*2"]]);
      table.rows.add(undefined, [["hip", 90, 94, KEEP]]);
      table.rows.add(1, [["high hip", 85, 88, KEEP]]);
    });
    expect(await tableAddress()).toBe("Sheet1!B2:E6");
    expect(await opened.values("B3:E9")).toEqual([
      ["bust", 80, 84, 160],
      ["high hip", 85, 88, 170],
      ["waist", 62, 66, 124],
      ["hip", 90, 94, 180],
      ["", "", "", ""],
      ["", "", "", ""],
      ["below", "", "", ""],
    ]);
    // The new column has pushed what stood beside the table to the right.
    expect(await opened.values("H2:H3")).toEqual([[317], [62]]);
  });

  test("loses rows and columns; what mentioned a lost column is #REF!", async () => {
    await run((sheet, table) => {
      sheet.getRange("G2:G3").formulas = [["=SUM(Chart[Bust girth])"], ["=SUM(Chart[8])"]];
      table.rows.getItemAt(0).delete();
      table.columns.getItem("Bust girth").delete();
    });
    expect(await tableAddress()).toBe("Sheet1!B2:C3");
    expect(await opened.values("B2:D4")).toEqual([
      ["Place", "8", ""],
      ["waist", 62, ""],
      ["", "", ""],
    ]);
    // The column has gone from the middle of the row, so the formulas beside the table have moved up to it.
    expect(await opened.values("F2:F3")).toEqual([["#REF!"], [62]]);
  });

  test("keeps every other column's name and formulas when one in the middle goes or comes", async () => {
    await run((sheet) => {
      sheet.getRange("B10:G11").values = [
        ["A", "B", "C", "D", "E", "F"],
        [1, 2, 3, 4, 5, 6],
      ];
      sheet.tables.add("B10:G11", true).name = "Six";
      sheet.getRange("B14:G14").formulas = [["A", "B", "C", "D", "E", "F"].map((name) => `=SUM(Six[${name}])`)];
    });
    const six = <T>(work: (columns: Excel.TableColumnCollection) => T) =>
      run((sheet) => work(sheet.tables.getItem("Six").columns));
    const names = async () => (await six((columns) => columns.load("items/name"))).items.map(({ name }) => name);
    await six((columns) => columns.add(1, [["X"], [9]]));
    expect(await names()).toEqual(["A", "X", "B", "C", "D", "E", "F"]);
    expect(await opened.values("B14:G14")).toEqual([[1, 2, 3, 4, 5, 6]]);
    await six((columns) => columns.getItem("B").delete());
    await six((columns) => columns.getItem("C").delete());
    expect(await names()).toEqual(["A", "X", "D", "E", "F"]);
    expect(await opened.values("B10:F11")).toEqual([
      ["A", "X", "D", "E", "F"],
      [1, 9, 4, 5, 6],
    ]);
    expect(await opened.values("B14:G14")).toEqual([[1, "#REF!", "#REF!", 4, 5, 6]]);
  });

  test("keeps one empty row when its last row goes", async () => {
    await run((_sheet, table) => {
      table.rows.getItemAt(1).delete();
      table.rows.getItemAt(0).delete();
    });
    expect(await tableAddress()).toBe("Sheet1!B2:D3");
    expect(await opened.values("B3:D3")).toEqual([["", "", ""]]);
  });

  test("has a totals row that follows when rows are added", async () => {
    const totals = await run((sheet, table) => {
      sheet.getRange("G2").formulas = [["=SUM(Chart[8])"]];
      table.showTotals = true;
      table.columns.getItem("8").getTotalRowRange().formulas = [["=SUBTOTAL(109,Chart[8])"]];
      table.rows.add(undefined, [["hip", 90, 94]]);
      return table.getTotalRowRange().load("address,values");
    });
    expect(totals.address).toBe("Sheet1!B6:D6");
    expect(totals.values).toEqual([["Total", 232, 244]]);
    expect(await opened.values("G2")).toEqual([[232]]);
    await run((_sheet, table) => (table.showTotals = false));
    expect(await opened.values("B6:D6")).toEqual([["", "", ""]]);
  });

  test("takes new columns at its end and in the middle", async () => {
    const headings = await run((sheet, table) => {
      sheet.getRange("F3").values = [["beside"]];
      table.columns.add(1, [["6"], [76], [58]]);
      table.columns.add(undefined, [["10"], [88], [70]]);
      return table.getHeaderRowRange().load("values,address");
    });
    expect(headings.values).toEqual([["Place", "6", "8", "Bust girth", "10"]]);
    expect(await opened.values("B3:H3")).toEqual([["bust", 76, 80, 84, 88, "", "beside"]]);
  });

  test("is resized, its headings staying where they are", async () => {
    // Not through the client: resize came with a later API set than the declared one.
    const table = opened.book.Tables.GetItem("Chart");
    await run((sheet) => (sheet.getRange("E2:E4").values = [["10"], [88], [70]]));
    table.Resize("B2:E5");
    await run((sheet) => (sheet.getRange("G2").formulas = [["=SUM(Chart[10])"]]));
    expect(await opened.values("G2")).toEqual([[158]]);
    table.Resize("B2:C4");
    expect(await tableAddress()).toBe("Sheet1!B2:C4");
    expect(() => table.Resize("B3:C4")).toThrow("headings");
  });

  test("gives its cells back when it is converted, and takes them along when it is deleted", async () => {
    await run((_sheet, table) => table.convertToRange());
    expect(await opened.values("B2:C3")).toEqual([
      ["Place", "8"],
      ["bust", 80],
    ]);
    const missing = await Excel.run(async (context) => {
      const { tables } = context.workbook;
      context.workbook.worksheets.getActiveWorksheet().tables.add("B2:D4", true).name = "Again";
      tables.getItem("Again").delete();
      const found = tables.getItemOrNullObject("Again").load("name");
      await context.sync();
      return found.isNullObject;
    });
    expect(missing).toBe(true);
    expect(await opened.values("B2:D4")).toEqual(Array(3).fill(["", "", ""]));
  });

  test("does not overlap another and has a name of its own", async () => {
    await expect(run((sheet) => sheet.tables.add("D4:E6", true))).rejects.toMatchObject({ code: "InvalidArgument" });
    const second = run((sheet) => (sheet.tables.add("H2:I4", true).name = "chart"));
    await expect(second).rejects.toMatchObject({ code: "ItemAlreadyExists" });
    const address = run((sheet) => (sheet.tables.getItem("Chart").name = "HIP2"));
    await expect(address).rejects.toMatchObject({ code: "InvalidArgument" });
  });

  test("grows when a person types right below or beside it", async () => {
    await run((_sheet, table) => {
      table.columns.add(undefined, [["Twice"], ["=[@8]*2"], ["=[@8]*2"]]);
    });
    await opened.type("B5", "hip");
    await opened.type("C5", "90");
    expect(await tableAddress()).toBe("Sheet1!B2:E5");
    expect(await opened.values("E5")).toEqual([[180]]);
    await opened.type("F2", "10");
    expect(await tableAddress()).toBe("Sheet1!B2:F5");
    expect(await opened.values("F2")).toEqual([["10"]]);
  });

  test("pushes a table below it down, and refuses when only a part of it would move", async () => {
    const below = await run((sheet, table) => {
      sheet.getRange("B8:D9").values = [
        ["a", "b", "c"],
        [1, 2, 3],
      ];
      sheet.tables.add("B8:D9", true).name = "Below";
      table.rows.add(undefined, [["hip", 90, 94]]);
      sheet.getRange("H1").formulas = [["=SUM(Below[b])"]];
      return sheet.tables.getItem("Below").getRange().load("address");
    });
    expect(below.address).toBe("Sheet1!B9:D10");
    expect(await opened.values("H1")).toEqual([[2]]);
    const wide = run((sheet, table) => {
      sheet.tables.add("B14:F15", true);
      table.rows.add(undefined, [["knee", 1, 2]]);
    });
    await expect(wide).rejects.toMatchObject({ code: "InvalidOperation" });
  });

  test("renames its columns in the formulas that mention them", async () => {
    const formulas = await run((sheet, table) => {
      sheet.getRange("G2:G3").formulas = [["=SUM(Chart[8])"], ['=COUNTIF(Chart[[#All],[8]],"Chart[8]")']];
      table.columns.getItem("8").name = "10";
      return sheet.getRange("G2:G3").load("formulas,values");
    });
    expect(formulas.formulas).toEqual([["=SUM(Chart[10])"], ['=COUNTIF(Chart[[#All],[10]],"Chart[8]")']]);
    expect(formulas.values).toEqual([[142], [0]]);
    await run((_sheet, table) => (table.name = "Sizes"));
    expect(await opened.values("G2")).toEqual([[142]]);
    expect(opened.book.Worksheets.GetActiveWorksheet().GetRange("G2").Formulas).toEqual([["=SUM(Sizes[10])"]]);
  });
});
