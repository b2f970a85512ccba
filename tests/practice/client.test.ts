/** What the client itself does, and what goes wrong between it and the workbook. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeEach, describe, expect, test } from "vitest";
import { hasSet } from "../../src/practice/host/office-client";
import { readBundle } from "../../src/practice/node-bundle";
import { DECLARED_SETS } from "../../src/practice/settings";
import { DIST, isBuilt, loadClient, openBook, type OpenBook, type OpenOptions } from "./office";

loadClient();
let opened: OpenBook;
const books: OpenBook[] = [];
const open = (options: OpenOptions = {}) => books.push((opened = openBook(options)));
beforeEach(() => void open());
afterAll(() => Promise.all(books.map((book) => book.dispose())));

const write = (rows: number[][]) =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets
      .getActiveWorksheet()
      .getRangeByIndexes(0, 0, rows.length, rows[0]!.length);
    range.values = rows;
    await context.sync();
  });

describe("the declared API sets", () => {
  test("are those of the manifest", () => {
    const manifest = readFileSync(join(DIST, "../manifest.xml"), "utf8");
    const sets = [...manifest.matchAll(/<Set Name="(\w+)" MinVersion="([\d.]+)"/g)];
    expect(sets.length).toBeGreaterThan(0);
    for (const [, name = "", version] of sets) expect([name, DECLARED_SETS[name]]).toEqual([name, version]);
  });

  test("are kept by the client itself: anything newer throws before it is sent", async () => {
    const newer = Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().tables.add("A1:B2", true).resize("A1:B3");
      await context.sync();
    });
    await expect(newer).rejects.toMatchObject({ code: "ApiNotFound" });
  });

  test("are compared part by part", () => {
    expect(hasSet({ ExcelApi: "1.10" }, "ExcelApi", "1.9")).toBe(true);
    expect(hasSet({ ExcelApi: "1.9" }, "excelapi", "1.10")).toBe(false);
    expect(hasSet({ ExcelApi: "1.9" }, "DialogApi")).toBe(false);
    expect(hasSet({ ExcelApi: "1.9" }, "ExcelApi", 1.2)).toBe(true);
  });
});

describe("the workbook", () => {
  test("answers ApiNotFound for what it does not have", async () => {
    const unknown = Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().charts.load("count");
      await context.sync();
    });
    await expect(unknown).rejects.toMatchObject({ code: "ApiNotFound" });
  });

  test("gives ranges back when the client is done with them", async () => {
    await write([[1]]);
    await Excel.run(async (context) => {
      const range = context.workbook.worksheets.getActiveWorksheet().getRange("A1");
      context.trackedObjects.add(range);
      await context.sync();
      context.trackedObjects.remove(range);
      await context.sync();
    });
    expect(opened.session.executor.referenceCount).toBeLessThan(5);
  });

  test("carries out nothing while a cell is being edited", async () => {
    open({ editing: () => true });
    await expect(write([[1]])).rejects.toMatchObject({ code: "InvalidOperationInCellEditMode" });
  });

  test("takes no more than its limit in one batch", async () => {
    open({ limit: 20_000 });
    const rows = Array.from({ length: 5000 }, (_, n) => [n, n]);
    await expect(write(rows)).rejects.toMatchObject({ code: "RequestPayloadSizeLimitExceeded" });
    expect(await opened.values("A1")).toEqual([[""]]);
  });

  test("can be cut off half-way, what was done before staying done", async () => {
    opened.session.interrupt(3, "GeneralException");
    const cut = Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add("New");
      sheet.getRange("A1").values = [[1]];
      sheet.getRange("A2").values = [[2]];
      await context.sync();
    });
    await expect(cut).rejects.toMatchObject({ code: "GeneralException" });
    expect(opened.book.Worksheets.find("New")).toBeDefined();
    expect(opened.book.Worksheets.GetItem("New").GetRange("A2").Values).toEqual([[""]]);
  });

  test("takes one Excel.run back as one step, tables, names and settings too", async () => {
    const state = () => ({
      sheets: opened.book.Worksheets.all().map(({ Name }) => Name),
      tables: opened.book.Tables.all().map((table) => [table.Name, table.GetRange().Address, table.ShowTotals]),
      cells: opened.book.Worksheets.GetItem("Sheet1").GetRange("A1:D6").Formulas,
    });
    await write([
      [1, 80],
      [2, 84],
    ]);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getActiveWorksheet().tables.add("A1:B2", true).name = "Chart";
      await context.sync();
    });
    await opened.values("A1");
    const before = state();
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add("New");
      sheet.getRange("A1").values = [["x"]];
      const chart = context.workbook.tables.getItem("Chart");
      chart.rows.add(undefined, [[3, 88]]);
      chart.columns.add(undefined, [["Hip"], [1], [2]]);
      chart.showTotals = true;
      await context.sync();
    });
    await opened.values("A1");
    const after = state();
    expect(after).not.toEqual(before);
    opened.book.fbook.undo();
    await opened.book.calculation.settled();
    expect(state()).toEqual(before);
    opened.book.fbook.redo();
    await opened.book.calculation.settled();
    expect(state()).toEqual(after);
  });

  test("tells who listens which cells have changed, and what is selected", async () => {
    const heard: string[] = [];
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.onChanged.add(async (event) => void heard.push(`changed ${event.address} ${event.source}`));
      sheet.onSelectionChanged.add(async (event) => void heard.push(`selected ${event.address}`));
      context.workbook.worksheets.onChanged.add(async (event) => void heard.push(`any ${event.address}`));
      await context.sync();
    });
    await opened.type("B2", "5");
    opened.book.Worksheets.GetItem("Sheet1").GetRange("C3:D4").Select();
    await expect.poll(() => heard, { timeout: 3000 }).toEqual(["changed B2 Local", "any B2", "selected C3:D4"]);
  });
});

describe("a read after a write", () => {
  test("never sees an old result, however the two fall on the spreadsheet's timer", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      const chain = Array.from({ length: 200 }, (_, i) => [i ? `=SEW.FIT.EASE(B${i}+1,1)` : "=SEW.FIT.EASE(A1,1)"]);
      sheet.getRange("B1:B200").formulas = chain;
      await context.sync();
    });
    const wrong: unknown[] = [];
    for (let n = 0; n < 24; n++) {
      const value = 100 + n;
      await new Promise((resolve) => setTimeout(resolve, (n * 37) % 160));
      if (n % 3 === 2) opened.book.Worksheets.GetItem("Sheet1").GetRange("A1").facade().setValue(-value);
      await Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getActiveWorksheet();
        sheet.getRange("A1").values = [[value]];
        const last = sheet.getRange("B200").load("values");
        await context.sync();
        if (last.values[0]![0] !== value - 1) wrong.push([n, last.values[0]![0]]);
      });
    }
    expect(wrong).toEqual([]);
  });

  test("takes turns with another batch", async () => {
    const read = (value: number) =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getActiveWorksheet();
        sheet.getRange("A1").values = [[value]];
        sheet.getRange("B1").formulas = [["=A1*2"]];
        const result = sheet.getRange("B1").load("values");
        await context.sync();
        return result.values[0]![0];
      });
    expect(await Promise.all([read(11), read(21), read(31)])).toEqual([22, 42, 62]);
  });
});

describe.skipIf(!isBuilt)("the built functions", () => {
  test("need nothing but the global CustomFunctions, and are those that functions.json lists", async () => {
    const { metadata, bundle } = readBundle(DIST);
    expect([...bundle.keys()].sort()).toEqual(metadata.functions.map(({ id }) => id).sort());
    open({ functions: DIST });
    await opened.type("A1", '=SEW.LENGTH("30 1/2")');
    expect(await opened.values("A1")).toEqual([[30.5]]);
  });
});
