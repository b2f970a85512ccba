/** That the declared sets are the lowest that work: one set lower, and the client itself refuses what the pane needs. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hasSet } from "../../src/practice/host/office-client";
import { DECLARED_SETS } from "../../src/practice/settings";
import { carryOut } from "../../taskpane/excel";
import { loadClient, openBook, type OpenBook } from "./office";

const OLDER = { ...DECLARED_SETS, ExcelApi: "1.11" };
let open: OpenBook;
beforeAll(() => {
  loadClient(OLDER);
  open = openBook();
});
afterAll(() => open.dispose());

describe("an Excel with ExcelApi 1.11", () => {
  test("does not have what the manifest asks for", () => {
    expect(hasSet(OLDER, "ExcelApi", DECLARED_SETS["ExcelApi"])).toBe(false);
    expect(hasSet(OLDER, "ExcelApi", "1.11")).toBe(true);
  });
  test("can't say which cells an answer spills into", async () => {
    const asked = Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.getRange("A1").getSpillingToRangeOrNullObject().load("address");
      await context.sync();
    });
    await expect(asked).rejects.toMatchObject({ code: "ApiNotFound" });
  });
  test("is told so by the pane, before anything is written over", async () => {
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1").formulas = [["=1+1"]];
      await context.sync();
    });
    const plan = { cells: [{ sheet: "Sheet1", blocks: [{ row: 0, column: 0, cells: [["new"]] }] }] };
    const carried = await carryOut(plan, { overFilled: true });
    expect(carried).toMatchObject({ ok: false, refusal: { code: "tooOld" } });
    expect(await open.values("A1")).toEqual([[2]]);
  });
});
