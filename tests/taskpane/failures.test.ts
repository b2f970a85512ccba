/** What happens when Excel refuses: nothing of hers is lost and nothing half-written stays. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { chartSheet, indexPlan, refusalSentence, type ChartTable, type WorkbookPlan } from "../../src/index";
import { carryOut, takeBack } from "../../taskpane/excel";
import { loadClient, openBook, type OpenBook } from "../practice/office";
import type { SessionOptions } from "../../src/practice/session";

const books: OpenBook[] = [];
beforeAll(() => void loadClient());
afterAll(() => Promise.all(books.map((book) => book.dispose())));

const open = (options: SessionOptions = {}): OpenBook => {
  const book = openBook(options);
  books.push(book);
  return book;
};

/** Invented figures. */
const table: ChartTable = {
  kind: "body",
  unit: "in",
  sizes: ["12", "14"],
  rows: [{ place: "bust", label: "Bust", values: [34, 36] }],
};
const chart = chartSheet("Camp shirt", [table], []);
const index = indexPlan([{ pattern: "Camp shirt", table: "CampShirt_body" }], 2, false);
/** Two new sheets, cells of one that is there, a kept text and a name. */
const plan: WorkbookPlan = {
  ...index,
  sheets: [chart.plan, ...index.sheets!],
  cells: [{ sheet: "Sheet1", blocks: [{ row: 1, column: 1, cells: [["new", 2]], format: "fraction" }] }],
  kept: [{ key: "sewing.test", text: "kept" }],
  show: "Camp shirt",
};

const write = (address: string, formulas: unknown[][]) =>
  Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").getRange(address).formulas = formulas;
    await context.sync();
  });
const state = () =>
  Excel.run(async (context) => {
    const { workbook } = context;
    const sheets = workbook.worksheets.load("items/name");
    const names = workbook.names.load("items/name,items/formula");
    const tables = workbook.tables.load("items/name");
    const kept = workbook.settings.load("items/key,items/value");
    const cells = workbook.worksheets.getItem("Sheet1").getRange("A1:F9").load("formulas,values,numberFormat");
    await context.sync();
    return {
      sheets: sheets.items.map(({ name }) => name),
      names: names.items.map(({ name, formula }) => [name, formula]),
      tables: tables.items.map(({ name }) => name),
      kept: kept.items.map(({ key, value }) => [key, value]),
      cells: [cells.formulas, cells.values, cells.numberFormat],
    };
  });

describe("a write that Excel ends half-way", () => {
  it("leaves everything as it was, wherever it is ended", async () => {
    let interruptAt = -1;
    let batch = 0;
    let after = 0;
    const book: OpenBook = open({
      before: () => {
        if (batch++ === interruptAt) book.session.interrupt(after, "GeneralException");
      },
    });
    await write("A1:C2", [
      ["mine", 1, "=1+1"],
      ["", "", ""],
    ]);
    const before = await state();
    let ended = 0;
    for (interruptAt = 0; interruptAt < 12; interruptAt++) {
      for (after of [0, 2, 9]) {
        batch = 0;
        const carried = await carryOut(plan);
        const reached = batch > interruptAt;
        batch = 99;
        if (carried.ok) {
          // The batch that was to be ended does not exist, or all its actions fitted.
          expect(await takeBack(carried.receipt)).toEqual({ ok: true });
        } else {
          expect(reached).toBe(true);
          expect(["failed", "notRemembered"]).toContain(carried.refusal.code);
          ended++;
        }
        expect(await state()).toEqual(before);
      }
    }
    expect(ended).toBeGreaterThan(10);
  }, 120_000);
});

describe("a cell that is being typed in", () => {
  it("is a sentence, and nothing is written", async () => {
    let editing = false;
    open({ editing: () => editing });
    const before = await state();
    editing = true;
    const carried = await carryOut(plan);
    editing = false;
    expect(carried).toMatchObject({ ok: false, refusal: { code: "cellBeingEdited" } });
    expect(!carried.ok && refusalSentence(carried.refusal)).toContain("Press Enter or Esc");
    expect(await state()).toEqual(before);
  });
});

describe("a cell that is typed in while a write is under way", () => {
  it.each([2, 3, 4, 5, 6])("is waited for, so that no half-written sheet stays (from batch %i on)", async (from) => {
    let batch = -99;
    let until = 0;
    open({
      before: () => {
        if (batch++ === from) until = Date.now() + 700;
      },
      editing: () => Date.now() < until,
    });
    await write("A1:C1", [["mine", 1, "=1+1"]]);
    const before = await state();
    batch = 0;
    const carried = await carryOut(plan);
    until = 0;
    expect(carried).toMatchObject({ ok: false, refusal: { code: "cellBeingEdited" } });
    expect(await state()).toEqual(before);
  });
});

describe("a write that is cut off for good", () => {
  /** What "keep values" does: formulas become values, and the workbook remembers them. */
  const keeping: WorkbookPlan = {
    cells: [{ sheet: "Sheet1", blocks: [{ row: 0, column: 1, cells: [["four", "six"]] }] }],
    kept: [{ key: "sewing.test", text: "=2+2 and =3+3" }],
  };
  const remembered = [["sewing.test", "=2+2 and =3+3"]];
  const formulas = ["=2+2", "=3+3"];
  const stands = ({ cells }: Awaited<ReturnType<typeof state>>) => (cells[0] as unknown[][])[0]!.slice(1, 3);
  const forget = () =>
    Excel.run(async (context) => {
      context.workbook.settings.getItemOrNullObject("sewing.test").delete();
      await context.sync();
    });

  it("remembers the formulas that it has written over, and names their cells", async () => {
    let isWritten = false;
    let isCut = true;
    open({
      before: (batch) => {
        if (isWritten && isCut) throw new Error("gone");
        isWritten ||= JSON.stringify(batch).includes("four");
      },
    });
    await write("B1:C1", [formulas]);
    const carried = await carryOut(keeping, { overFilled: true });
    isCut = false;
    expect(isWritten).toBe(true);
    const now = await state();
    expect(stands(now)).toEqual(["four", "six"]);
    expect(now.kept).toEqual(remembered);
    const said = carried.ok ? "" : refusalSentence(carried.refusal);
    expect(said).toContain('B1:C1 on "Sheet1" may be written over');
    expect(said).not.toContain("deleted");
  });
  it("never loses a formula that is not remembered, wherever it is cut", async () => {
    let from = Infinity;
    let batch = 0;
    open({
      before: () => {
        if (batch++ >= from) throw new Error("gone");
      },
    });
    let refusals = 0;
    for (let at = 0, isDone = false; !isDone; at++) {
      await write("B1:C1", [formulas]);
      [batch, from] = [0, at];
      const carried = await carryOut(keeping, { overFilled: true });
      from = Infinity;
      isDone = carried.ok;
      if (!isDone) refusals++;
      const now = await state();
      if (JSON.stringify(stands(now)) !== JSON.stringify(formulas)) expect(now.kept).toEqual(remembered);
      await forget();
    }
    expect(refusals).toBeGreaterThan(3);
  }, 60_000);
});

describe("taking back", () => {
  it("touches nothing when a sheet has been protected since, and says so", async () => {
    open();
    const carried = await carryOut(plan);
    if (!carried.ok) throw new Error("the plan is not carried out");
    const protection = (on: boolean) =>
      Excel.run(async (context) => {
        const { protection: sheet } = context.workbook.worksheets.getItem("Sheet1");
        if (on) sheet.protect();
        else sheet.unprotect();
        await context.sync();
      });
    await protection(true);
    const before = await state();
    for (const evenIfChanged of [false, true])
      expect(await takeBack(carried.receipt, { evenIfChanged })).toMatchObject({ refusal: { code: "protected" } });
    expect(await state()).toEqual(before);
    await protection(false);
    expect(await takeBack(carried.receipt)).toEqual({ ok: true });
    expect((await state()).sheets).toEqual(["Sheet1"]);
  });
  it("says that it stopped half-way when it did, and goes on when it is asked again", async () => {
    let from = Infinity;
    let batch = 0;
    open({
      before: () => {
        if (batch++ === from) throw new Error("gone");
      },
    });
    const untouched = await state();
    let inPart = 0;
    for (let at = 0; at < 14; at++) {
      const carried = await carryOut(plan);
      if (!carried.ok) throw new Error("the plan is not carried out");
      const written = await state();
      [batch, from] = [0, at];
      const taken = await takeBack(carried.receipt);
      from = Infinity;
      if (!taken.ok) {
        const said = refusalSentence(taken.refusal);
        if (said.includes("Nothing was written")) expect(await state()).toEqual(written);
        else inPart++;
        expect(await takeBack(carried.receipt, { evenIfChanged: true })).toEqual({ ok: true });
      }
      expect(await state()).toEqual(untouched);
    }
    expect(inPart).toBeGreaterThan(2);
  }, 60_000);
});

describe("a request that is too large", () => {
  it("is a sentence, and nothing half-written stays", async () => {
    open({ limit: 6000 });
    const before = await state();
    const rows = Array.from({ length: 40 }, (_, row) => [`Row ${row} ${"x".repeat(200)}`]);
    const large: WorkbookPlan = {
      sheets: [{ sheet: "Large", blocks: [{ row: 0, column: 0, cells: rows }], tables: [] }],
    };
    expect(await carryOut(large)).toMatchObject({ ok: false, refusal: { code: "tooLarge" } });
    expect(await state()).toEqual(before);
  });
});

describe("a large write", () => {
  it("is taken back in requests as small as those it was written in", async () => {
    const line = (row: number, text: string) => Array.from({ length: 40 }, (_, column) => `${text} ${row}, ${column}`);
    const rows = (text: string) => Array.from({ length: 900 }, (_, row) => line(row, text.padEnd(60, ".")));
    const block = (text: string) => ({ row: 0, column: 0, cells: rows(text) });
    let largest = 0;
    // Larger than one of our requests, smaller than what all the cells take together.
    open({
      limit: 2_500_000,
      before: (batch) => {
        largest = Math.max(largest, JSON.stringify(batch).length);
      },
    });
    const first = await carryOut({ cells: [{ sheet: "Sheet1", blocks: [block("hers")] }] });
    expect(first).toMatchObject({ ok: true });
    const before = await state();
    const carried = await carryOut({ cells: [{ sheet: "Sheet1", blocks: [block("ours")] }] }, { overFilled: true });
    if (!carried.ok) throw new Error(carried.refusal.code);
    expect(JSON.stringify(carried.receipt.cells[0]!.formulas).length).toBeGreaterThan(2_500_000);
    largest = 0;
    expect(await takeBack(carried.receipt)).toEqual({ ok: true });
    expect(largest).toBeGreaterThan(500_000);
    expect(largest).toBeLessThan(1_500_000);
    expect(await state()).toEqual(before);
    const last = await Excel.run(async (context) => {
      const cell = context.workbook.worksheets.getItem("Sheet1").getRange("AN900").load("values");
      await context.sync();
      return cell.values[0]![0] as string;
    });
    expect(last).toBe(`${"hers".padEnd(60, ".")} 899, 39`);
  }, 120_000);
  it("of several blocks goes in several requests, too", async () => {
    const cells = Array.from({ length: 100 }, (_, row) => [`${row} ${"x".repeat(8000)}`]);
    const blocks = [0, 1, 2].map((column) => ({ row: 0, column, cells }));
    open({ limit: 2_000_000 });
    const carried = await carryOut({ cells: [{ sheet: "Sheet1", blocks }] });
    if (!carried.ok) throw new Error(carried.refusal.code);
    expect(await takeBack(carried.receipt)).toEqual({ ok: true });
  }, 60_000);
});

describe("a protected sheet", () => {
  it("is a sentence, and nothing is written", async () => {
    open();
    await write("A1", [["mine"]]);
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").protection.protect();
      await context.sync();
    });
    const before = await state();
    const carried = await carryOut(plan);
    expect(carried).toMatchObject({ ok: false, refusal: { code: "protected" } });
    expect(!carried.ok && refusalSentence(carried.refusal)).toContain("Unprotect");
    expect(await state()).toEqual(before);
  });
});
