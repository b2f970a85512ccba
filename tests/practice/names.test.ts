import { afterAll, beforeEach, describe, expect, test } from "vitest";
import { loadClient, openBook, type OpenBook } from "./office";

loadClient();
let opened: OpenBook;
const books: OpenBook[] = [];
beforeEach(() => void books.push((opened = openBook())));
afterAll(() => Promise.all(books.map((book) => book.dispose())));

const inBook = <T>(work: (context: Excel.RequestContext, sheet: Excel.Worksheet) => T) =>
  Excel.run(async (context) => {
    const result = work(context, context.workbook.worksheets.getActiveWorksheet());
    await context.sync();
    return result;
  });

describe("a name", () => {
  test("stands for cells, in formulas written before and after it", async () => {
    await inBook((context, sheet) => {
      sheet.getRange("A1:A3").values = [[80], [84], [88]];
      sheet.getRange("C1").formulas = [["=SUM(Her_bust)"]];
      context.workbook.names.add("Her_bust", sheet.getRange("A1:A3"), "over the fullest part");
    });
    await inBook((_context, sheet) => (sheet.getRange("C2").formulas = [["=MAX(her_bust)"]]));
    await inBook((_context, sheet) => (sheet.getRange("C3").formulas = [["=ROWS(Her_bust)"]]));
    expect(await opened.values("C1:C3")).toEqual([[252], [88], [3]]);
  });

  test("is not what it was in another workbook", async () => {
    await inBook((context, sheet) => {
      sheet.getRange("B1:B2").values = [[1], [2]];
      context.workbook.names.add("Her_bust", sheet.getRange("B1:B2"));
    });
    await opened.values("A1");
    await inBook((_context, sheet) => (sheet.getRange("C1").formulas = [["=SUM(Her_bust)"]]));
    expect(await opened.values("C1")).toEqual([[3]]);
  });

  test("can be pointed elsewhere and taken away", async () => {
    const item = await inBook((context, sheet) => {
      sheet.getRange("A1:B1").values = [[1, 2]];
      const name = context.workbook.names.add("Here", "=Sheet1!$A$1");
      sheet.getRange("C1").formulas = [["=Here*10"]];
      return name.load("formula,type,value,scope");
    });
    expect([item.formula, item.type, item.value, item.scope]).toEqual([
      "=Sheet1!$A$1",
      "Range",
      "Sheet1!A1",
      "Workbook",
    ]);
    expect(await opened.values("C1")).toEqual([[10]]);
    await inBook((context) => context.workbook.names.getItem("Here").delete());
    await inBook((context) => context.workbook.names.add("Here", "=Sheet1!$B$1"));
    expect(await opened.values("C1")).toEqual([[20]]);
    const gone = await inBook((context) => {
      context.workbook.names.getItem("Here").delete();
      return context.workbook.names.getItemOrNullObject("Here").load("name");
    });
    expect(gone.isNullObject).toBe(true);
    expect(await opened.values("C1")).toEqual([["#NAME?"]]);
  });

  test("reaches beyond the cells that a sheet starts with", async () => {
    await inBook((context, sheet) => {
      context.workbook.names.add("Far", "=Sheet1!$A$1:$A$3000");
      sheet.getRange("C1").formulas = [["=ROWS(Far)"]];
    });
    expect(await opened.values("C1")).toEqual([[3000]]);
  });

  test("is refused when it looks like a cell or is taken", async () => {
    for (const name of ["HIP2", "R1C1", "two words", "Here"]) {
      const add = inBook((context) => {
        context.workbook.names.add("Here", "=Sheet1!$A$1");
        context.workbook.names.add(name, "=Sheet1!$A$2");
      });
      await expect(add).rejects.toMatchObject({ code: expect.stringMatching(/InvalidArgument|ItemAlreadyExists/) });
      await inBook((context) => context.workbook.names.getItem("Here").delete());
    }
  });
});
