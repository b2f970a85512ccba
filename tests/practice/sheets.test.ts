import { afterAll, beforeEach, describe, expect, test } from "vitest";
import { loadClient, openBook, type OpenBook } from "./office";

loadClient();
let opened: OpenBook;
const books: OpenBook[] = [];
beforeEach(() => void books.push((opened = openBook())));
afterAll(() => Promise.all(books.map((book) => book.dispose())));

const run = <T>(work: (sheet: Excel.Worksheet, context: Excel.RequestContext) => T) =>
  Excel.run(async (context) => {
    const result = work(context.workbook.worksheets.getActiveWorksheet(), context);
    await context.sync();
    return result;
  });

describe("a range", () => {
  test("reads what is written as Excel reads it", async () => {
    const cells = await run((sheet) => {
      sheet.getRange("A1:G1").values = [["80", "6-12", "TRUE", "'05", "37 1/2", "12%", "words"]];
      return sheet.getRange("A1:G1").load("values,valueTypes,numberFormat,text");
    });
    const [values] = cells.values as unknown[][];
    expect(values![0]).toBe(80);
    expect(typeof values![1]).toBe("number"); // a date, which is why the pane writes labels as text
    expect(values!.slice(2)).toEqual([true, "05", 37.5, 0.12, "words"]);
    expect(cells.text[0]![4]!.trim()).toBe("37 1/2");
    expect(cells.valueTypes[0]!.slice(2, 4)).toEqual(["Boolean", "String"]);
  });

  test("keeps everything as text in cells of the text format, formulas too", async () => {
    const cells = await run((sheet) => {
      const range = sheet.getRange("A1:E1");
      range.numberFormat = [["@", "@", "@", "@", "@"]];
      range.values = [["6-12", "=1+1", "+A1", 8, "@SUM(1)"]];
      return range.load("values,formulas");
    });
    expect(cells.values).toEqual([["6-12", "=1+1", "+A1", "8", "@SUM(1)"]]);
  });

  test("takes a leading sign for a formula elsewhere", async () => {
    await run((sheet) => {
      sheet.getRange("A1").values = [[4]];
      sheet.getRange("B1:E1").values = [["+A1*2", "-A1", "@SUM(A1,1)", "- words"]];
    });
    expect(await opened.values("B1:E1")).toEqual([[8, -4, 5, "- words"]]);
  });

  test("leaves a cell alone for null, and empties it for an empty text", async () => {
    await run((sheet) => {
      sheet.getRange("A1:C1").values = [[1, 2, 3]];
      sheet.getRange("A1:C1").values = [[null as unknown as number, "", 4]];
    });
    expect(await opened.values("A1:C1")).toEqual([[1, "", 4]]);
  });

  test("refuses an array of another shape, and a formula that can't be read", async () => {
    const wide = run((sheet) => (sheet.getRange("A1:B1").values = [[1, 2, 3]]));
    await expect(wide).rejects.toMatchObject({ code: "InvalidArgument" });
    const broken = run((sheet) => (sheet.getRange("A1").formulas = [["=SUM(1,2"]]));
    await expect(broken).rejects.toMatchObject({ code: "InvalidArgument" });
  });

  test("finds the used cells, the block around a cell, and nothing where there is nothing", async () => {
    const found = await run((sheet, context) => {
      sheet.getRange("B2:C3").values = [
        [1, 2],
        [3, 4],
      ];
      sheet.getRange("E9").values = [["far"]];
      const empty = context.workbook.worksheets.add("Empty");
      return [
        sheet.getUsedRange(true).load("address"),
        sheet.getRange("B2").getSurroundingRegion().load("address"),
        empty.getUsedRangeOrNullObject(true).load("address"),
      ] as const;
    });
    expect(found[0].address).toBe("Sheet1!B2:E9");
    expect(found[1].address).toBe("Sheet1!B2:C3");
    expect(found[2].isNullObject).toBe(true);
  });

  test("copies formulas that move with the cells, values, and formats", async () => {
    const cells = await run((sheet) => {
      sheet.getRange("A1:A2").values = [[1], [2]];
      sheet.getRange("B1").formulas = [["=A1*10"]];
      sheet.getRange("B1").format.fill.color = "#FFEEDD";
      sheet.getRange("B2").copyFrom("B1");
      sheet.getRange("C1:C2").copyFrom("B1:B2", "Values");
      return [sheet.getRange("B2:C2").load("values,formulas"), sheet.getRange("B2").load("format/fill/color")] as const;
    });
    expect(cells[0].values).toEqual([[20, 20]]);
    expect(cells[0].formulas).toEqual([["=A2*10", 20]]);
    expect(cells[1].format.fill.color).toBe("#FFEEDD");
  });

  test("pushes cells aside and closes up, formulas following", async () => {
    await run((sheet) => {
      sheet.getRange("A1:A3").values = [[1], [2], [3]];
      sheet.getRange("C1").formulas = [["=A3"]];
      sheet.getRange("A2").insert("Down");
    });
    expect(await opened.values("A1:C4")).toEqual([
      [1, "", 3],
      ["", "", ""],
      [2, "", ""],
      [3, "", ""],
    ]);
    await run((sheet) => sheet.getRange("A2").delete("Up"));
    expect(await opened.values("A1:A3")).toEqual([[1], [2], [3]]);
    await run((sheet) => sheet.getRange("1:1").insert("Down"));
    expect(await opened.values("A1:A4")).toEqual([[""], [1], [2], [3]]);
  });

  test("is cleared as a whole, or only of its contents", async () => {
    const cells = await run((sheet) => {
      sheet.getRange("A1:B1").values = [[1, 2]];
      sheet.getRange("A1:B1").format.font.bold = true;
      sheet.getRange("A1").clear("Contents");
      sheet.getRange("B1").clear();
      return [
        sheet.getRange("A1").load("values,format/font/bold"),
        sheet.getRange("B1").load("values,format/font/bold"),
      ];
    });
    expect(cells.map((cell) => [cell.values[0]![0], cell.format.font.bold])).toEqual([
      ["", true],
      ["", false],
    ]);
  });

  test("keeps formats, widths, heights and alignment", async () => {
    const cells = await run((sheet) => {
      const range = sheet.getRange("B2:C3");
      range.numberFormat = [
        ["0.0", "@"],
        ["# ?/?", "0%"],
      ];
      range.format.columnWidth = 90;
      range.format.rowHeight = 30;
      range.format.horizontalAlignment = "Center";
      range.format.wrapText = true;
      range.format.font.color = "#123456";
      range.format.borders.getItem("EdgeBottom").style = "Continuous";
      return range.load("numberFormat,format/columnWidth,format/rowHeight,format/horizontalAlignment,format/wrapText");
    });
    expect(cells.numberFormat).toEqual([
      ["0.0", "@"],
      ["# ?/?", "0%"],
    ]);
    const { columnWidth, rowHeight, horizontalAlignment, wrapText } = cells.format;
    expect([columnWidth, rowHeight, horizontalAlignment, wrapText]).toEqual([90, 30, "Center", true]);
  });

  test("is hidden by row or by column, and merged", async () => {
    const cells = await run((sheet) => {
      sheet.getRange("A2").getEntireRow().rowHidden = true;
      sheet.getRange("C1").getEntireColumn().columnHidden = true;
      sheet.getRange("E1:F2").merge();
      return [sheet.getRange("A2").load("rowHidden"), sheet.getRange("C1").load("columnHidden")] as const;
    });
    expect([cells[0].rowHidden, cells[1].columnHidden]).toEqual([true, true]);
  });
});

describe("a worksheet", () => {
  test("is added without being shown, renamed, moved and deleted", async () => {
    const names = await run((_sheet, context) => {
      const { worksheets } = context.workbook;
      worksheets.add("Second").position = 0;
      worksheets.add("Third").name = "Last";
      worksheets.getItem("Second").delete();
      worksheets.load("items/name");
      return worksheets;
    });
    expect(names.items.map(({ name }) => name)).toEqual(["Sheet1", "Last"]);
    const only = run((_sheet, context) => {
      context.workbook.worksheets.getItem("Last").delete();
      context.workbook.worksheets.getItem("Sheet1").delete();
    });
    await expect(only).rejects.toMatchObject({ code: "InvalidOperation" });
  });

  test("refuses names that Excel refuses", async () => {
    for (const name of ["a/b", "x".repeat(32), "'quoted'", "Sheet1"]) {
      const add = run((_sheet, context) => context.workbook.worksheets.add(name));
      await expect(add).rejects.toMatchObject({ code: expect.stringMatching(/InvalidArgument|ItemAlreadyExists/) });
    }
  });

  test("answers AccessDenied while it is protected, but not for unlocked cells", async () => {
    await run((sheet) => {
      sheet.getRange("B1").format.protection.locked = false;
      sheet.protection.protect({}, "word");
    });
    const writes: ((sheet: Excel.Worksheet) => unknown)[] = [
      (sheet) => (sheet.getRange("A1").values = [[1]]),
      (sheet) => (sheet.getRange("A1").format.fill.color = "#FFFFFF"),
      (sheet) => sheet.tables.add("A1:B2", true),
      (sheet) => sheet.getRange("A1").clear(),
      (sheet) => sheet.getRange("A1").insert("Down"),
      (sheet) => (sheet.getRange("A1").dataValidation.rule = { list: { inCellDropDown: true, source: "a,b" } }),
    ];
    for (const write of writes) await expect(run(write)).rejects.toMatchObject({ code: "AccessDenied" });
    await run((sheet) => (sheet.getRange("B1").values = [[2]]));
    await expect(run((sheet) => sheet.protection.unprotect("wrong"))).rejects.toThrow();
    await run((sheet) => {
      sheet.protection.unprotect("word");
      sheet.getRange("A1").values = [[1]];
    });
    expect(await opened.values("A1:B1")).toEqual([[1, 2]]);
  });

  test("remembers its page layout, frozen rows and comments", async () => {
    const { layout, comment } = await run((sheet, context) => {
      sheet.pageLayout.orientation = "Landscape";
      sheet.pageLayout.zoom = { horizontalFitToPages: 1 };
      sheet.pageLayout.paperSize = "A4" as Excel.PaperType;
      sheet.freezePanes.freezeRows(2);
      context.workbook.comments.add("Sheet1!B2", "How it should fit");
      return {
        layout: sheet.pageLayout.load("orientation,zoom,paperSize"),
        comment: context.workbook.comments.getItemByCell("Sheet1!B2").load("content"),
      };
    });
    expect([layout.orientation, layout.zoom, layout.paperSize]).toEqual([
      "Landscape",
      { horizontalFitToPages: 1 },
      "A4",
    ]);
    expect(comment.content).toBe("How it should fit");
    expect(opened.book.Worksheets.GetItem("Sheet1").fsheet.getFrozenRows()).toBe(2);
  });

  test("takes lists, limits and formulas as validation", async () => {
    const types = await run((sheet, context) => {
      sheet.getRange("H1:H2").values = [["a"], ["b"]];
      sheet.tables.add("J1:J3", true).name = "Words";
      context.workbook.names.add("Word_list", "=Words[Column1]");
      const rules: Excel.DataValidationRule[] = [
        { list: { inCellDropDown: true, source: "close,loose" } },
        { list: { inCellDropDown: true, source: "=$H$1:$H$2" } },
        { list: { inCellDropDown: true, source: "=Word_list" } },
        { decimal: { formula1: 1, formula2: 400, operator: "Between" } },
        { wholeNumber: { formula1: 0, operator: "GreaterThan" } },
        { custom: { formula: "=LEN(A6)<5" } },
      ];
      return rules.map((rule, at) => {
        const { dataValidation } = sheet.getRange(`A${at + 1}`);
        dataValidation.rule = rule;
        dataValidation.errorAlert = { message: "No.", showAlert: true, style: "Stop", title: "" };
        return dataValidation.load("type");
      });
    });
    expect(types.map(({ type }) => type)).toEqual(["List", "List", "List", "Decimal", "WholeNumber", "Custom"]);
    const column = run((sheet) => {
      sheet.getRange("B1").dataValidation.rule = { list: { inCellDropDown: true, source: "=Words[Column1]" } };
    });
    await expect(column).rejects.toMatchObject({ code: "InvalidArgument" }); // as in Excel: a name or INDIRECT is needed
  });

  test("takes conditional colours with a formula of their own", async () => {
    const formats = await run((sheet) => {
      const custom = sheet.getRange("B2:B9").conditionalFormats.add("Custom").custom;
      custom.rule.formula = "=B2>80";
      custom.format.fill.color = "#FCE4D6";
      return sheet.getRange("B3").conditionalFormats.load("items/type,items/custom/rule/formula");
    });
    expect(formats.items.map(({ type, custom }) => [type, custom.rule.formula])).toEqual([["Custom", "=B2>80"]]);
    const [rule] = opened.book.Worksheets.GetItem("Sheet1").fsheet.getConditionalFormattingRules();
    expect(rule!.rule).toMatchObject({ value: "=B2>80", style: { bg: { rgb: "#FCE4D6" } } });
    await run((sheet) => sheet.getRange("A1:Z99").conditionalFormats.clearAll());
    expect(opened.book.Worksheets.GetItem("Sheet1").fsheet.getConditionalFormattingRules()).toEqual([]);
  });
});

describe("a workbook", () => {
  test("knows the selected cells, and keeps settings", async () => {
    const found = await run((sheet, context) => {
      sheet.getRange("B2:C3").select();
      context.workbook.settings.add("unit", { length: "cm" });
      return [
        context.workbook.getSelectedRange().load("address"),
        context.workbook.settings.getItem("unit").load("value"),
      ] as const;
    });
    expect([found[0].address, found[1].value]).toEqual(["Sheet1!B2:C3", { length: "cm" }]);
  });

  test("can be saved and opened again with all it holds", async () => {
    await run((sheet, context) => {
      sheet.getRange("A1:B3").values = [
        ["Size", "Bust"],
        [8, 80],
        [10, 84],
      ];
      sheet.tables.add("A1:B3", true).name = "Chart";
      sheet.tables.getItem("Chart").showTotals = true;
      context.workbook.names.add("Bust", "=Sheet1!$B$2");
      sheet.getRange("D1:D2").formulas = [["=SUM(Chart[Bust])"], ["=Bust*2"]];
    });
    await opened.values("D1");
    const saved = JSON.parse(JSON.stringify(opened.book.fbook.save()));
    books.push((opened = openBook({ snapshot: saved })));
    await opened.type("B2", "81");
    expect(await opened.values("D1:D2")).toEqual([[165], [162]]);
    expect(opened.book.Tables.GetItem("Chart").ShowTotals).toBe(true);
  });
});
