/** The first minutes of somebody who has no Excel, in a real browser and by keyboard. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hasBrowser, type OpenBrowser, type OpenPage, startBrowser } from "./browser";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const SHEET = "Fit notes"; // has room below its table

describe.skipIf(!hasBrowser)("the practice workbook in a browser", () => {
  let browser: OpenBrowser;
  let open: OpenPage;
  beforeAll(async () => {
    browser = await startBrowser();
    open = await browser.open();
  });
  afterAll(() => browser?.close());

  test("opens as it was however often, and says how long that took", async () => {
    const times: number[] = [];
    for (let n = 0; n < 3; n++) {
      const again = await browser.open();
      times.push(again.loadTime);
      expect(await again.value("Start here", "A1")).toEqual(await open.value("Start here", "A1"));
      expect(await again.value(SHEET, "C10")).toEqual([[""]]);
      await again.type(SHEET, "C10", String(n));
      await again.becomes(SHEET, "C10", n);
      await again.page.close();
    }
    console.log(`The practice page was usable after ${times.join(", ")} ms`);
  });

  test("takes a formula by keyboard and follows an edited cell", async () => {
    await open.type(SHEET, "C10", "96");
    await open.becomes(SHEET, "C10", 96);
    await open.type(SHEET, "C11", "=SEW.EASE(C10,90)");
    await open.becomes(SHEET, "C11", 6);
    await open.type(SHEET, "C10", "98.5");
    await open.becomes(SHEET, "C11", 8.5);
  });

  test("reads a typed fraction as a number and shows it as one", async () => {
    await open.type(SHEET, "C12", "37 1/2");
    await open.becomes(SHEET, "C12", 37.5);
    await open.type(SHEET, "C13", "2 3/8");
    await open.becomes(SHEET, "C13", 2.375);
    await open.type(SHEET, "C14", "=C12*2");
    await open.becomes(SHEET, "C14", 75);
  });

  test("is not upset by structured references, whose unfinished steps are read while they are typed", async () => {
    await open.type(SHEET, "D10", "=ROWS(Measurements[#All])");
    await open.page.waitForTimeout(500);
    await open.type(SHEET, "D11", "=COUNTA(Measurements[measurement])");
    await open.type(SHEET, "D12", "=SEW.EASE(96,90)");
    await open.becomes(SHEET, "D12", 6);
    const [rows, count] = ((await open.value(SHEET, "D10:D11")) as number[][]).flat();
    expect(rows).toBe(count! + 1);
  });

  test("answers #SPILL! when a formula would spill in a table", async () => {
    await open.pane.evaluate(() =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.getItem("Fit notes");
        sheet.getRange("B20:B22").values = [["Column"], [""], [""]];
        sheet.tables.add("B20:B22", true).name = "SpillTest";
        await context.sync();
      }),
    );
    await open.type(SHEET, "B21", "=SEW.SIZECOLUMN(CampShirt_body[#All],12)");
    await open.becomes(SHEET, "B21", "#SPILL!");
    await open.type(SHEET, "D20", "=SEW.SIZECOLUMN(CampShirt_body[#All],12)");
    await open.becomes(SHEET, "D20", 34);
    const [, [second]] = (await open.value(SHEET, "D20:D21")) as [unknown[], unknown[]];
    expect(second).toBe(26.5);
  });

  test("says why a cell shows an error when the pointer rests on it, in a spilled cell too", async () => {
    await open.type(SHEET, "C16", "=SEW.EASE(96,0)");
    await open.becomes(SHEET, "C16", "#VALUE!");
    const sentence = (cell: string) =>
      open.page.evaluate(
        (of) => (window as unknown as { practice: { messageAt(cell: string): string } }).practice.messageAt(of),
        cell,
      );
    const said = await sentence("C16");
    expect(said.length).toBeGreaterThan(10);
    expect(await hover(open, SHEET, "C16")).toContain(said.slice(0, 40));
    await open.type(SHEET, "E14", "=SEW.FRACTION(D14:D16)");
    await open.type(SHEET, "D15", "no number");
    await open.becomes(SHEET, "E15", "#VALUE!");
    const spilled = await sentence("E15");
    expect(spilled).toContain("no number");
    expect(await hover(open, SHEET, "E15")).toContain(spilled.slice(0, 40));
  });

  test("keeps the table's next row in the table when somebody types below it", async () => {
    const rows = () =>
      open.page.evaluate(
        () =>
          (
            window as unknown as {
              practice: { book: { Tables: { GetItem(name: string): { core: { rows: number } } } } };
            }
          ).practice.book.Tables.GetItem("Stash").core.rows,
      );
    const before = await rows();
    await open.type("Stash", `A${before + 6}`, "Found in a box");
    await expect.poll(rows, { timeout: 5000 }).toBe(before + 1);
  });

  test("takes a pasted chart to a size by keyboard alone: paste, look, name, insert, type, edit", async () => {
    const { page, pane } = open;
    // Misses' figures as in README: common practice, no single publisher.
    const chart =
      "Body measurements (in)\nSize\t10\t12\t14\t16\nBust\t32 1/2\t34\t36\t38\nWaist\t25\t26 1/2\t28\t30\nHip\t34 1/2\t36\t38\t40";
    await pane.locator("textarea").focus();
    await page.keyboard.insertText(chart);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    const name = pane.getByLabel("Name of the pattern");
    await name.waitFor();
    for (let press = 0; press < 40 && !(await name.evaluate((input) => input === document.activeElement)); press++)
      await page.keyboard.press("Tab");
    await page.keyboard.press("Control+a");
    await page.keyboard.insertText("Tenor shirt");
    const insert = pane.getByRole("button", { name: "Insert", exact: false }).first();
    for (let press = 0; press < 5 && !(await insert.evaluate((button) => button === document.activeElement)); press++)
      await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await pane.getByText('Inserted: sheet "Tenor shirt"').first().waitFor({ timeout: 30_000 });
    expect(await open.value("Tenor shirt", "A1")).toEqual([["Tenor shirt"]]);
    await open.type(SHEET, "F10", "34");
    await open.type(SHEET, "F11", '=SEW.SIZEMATCH(TenorShirt_body[#All],"bust",F10)');
    await open.becomes(SHEET, "F11", 12);
    await open.type(SHEET, "F10", "36 1/2");
    await open.becomes(SHEET, "F11", 14);
    await open.shot("inserted-by-keyboard");
  });

  test("hands what was typed to the pane's client", async () => {
    const read = await open.pane.evaluate(() =>
      Excel.run(async (context) => {
        const cells = context.workbook.worksheets.getItem("Fit notes").getRange("C10:C11").load("values,formulas");
        await context.sync();
        return [cells.values, cells.formulas];
      }),
    );
    expect(read).toEqual([
      [[98.5], [8.5]],
      [[98.5], ["=SEW.EASE(C10,90)"]],
    ]);
  });

  test("says what it can't do with what is dropped on the chart section", async () => {
    await open.pane.getByRole("tab", { name: "Chart" }).click();
    const again = open.pane.getByRole("button", { name: "Start again" });
    if (await again.isVisible()) await again.click();
    const drop = (files: number, text = "") =>
      open.pane.locator(".intake").evaluate(
        (intake, [count, plain]) => {
          const dataTransfer = new DataTransfer();
          for (let n = 0; n < count; n++) dataTransfer.items.add(new File(["Size 8 10"], `${n}.txt`));
          if (plain !== "") dataTransfer.setData("text/html", plain);
          intake.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
        },
        [files, text] as const,
      );
    const said = open.pane.getByRole("status");
    await drop(0);
    await said.filter({ hasText: "What was dropped here holds no text." }).waitFor();
    await drop(2);
    await said.filter({ hasText: "Several files at once" }).waitFor();
    await drop(0, '<img src="chart.png">');
    await said.filter({ hasText: "That is a picture" }).waitFor();
  });

  test("has no accessibility findings in its own parts", async () => {
    // The grid, its toolbar and its sheet tabs are the embedded spreadsheet's own and can't be changed from here; the
    // pane has tests of its own.
    await open.page.locator("details summary").click();
    await open.page.evaluate(AXE);
    const found = await open.page.evaluate(async () => {
      const { axe } = window as unknown as { axe: { run(context: object): Promise<{ violations: { id: string }[] }> } };
      const { violations } = await axe.run({ exclude: [["#sheet > *"], ["iframe"], ["body > div"]] });
      return violations.map(({ id }) => id);
    });
    expect(found).toEqual([]);
    await open.page.locator("details summary").click();
  });

  test("asks nobody outside for anything, and has no errors in its console", async () => {
    await open.shot("practice");
    expect(open.outside).toEqual([]);
    expect(open.problems).toEqual([]);
  });
});

/** Rests the pointer on a cell and reads what appears. */
async function hover({ page }: OpenPage, sheet: string, cell: string): Promise<string> {
  const [x = 0, y = 0] = await page.evaluate(
    ([name, of]) => {
      interface HoverSheet {
        GetRange(address: string): { facade(): { getCellRect(): DOMRect } };
      }
      const { practice } = window as unknown as {
        practice: { book: { Worksheets: { GetItem(n: string): HoverSheet } } };
      };
      const rect = practice.book.Worksheets.GetItem(name!).GetRange(of!).facade().getCellRect();
      // The grid is the largest of the canvases; the cell's place counts from its corner.
      const boxes = [...document.querySelectorAll("#sheet canvas")].map((canvas) => canvas.getBoundingClientRect());
      const grid = boxes.sort((a, b) => b.width * b.height - a.width * a.height)[0]!;
      return [grid.x + rect.x + rect.width / 2, grid.y + rect.y + rect.height / 2];
    },
    [sheet, cell],
  );
  await page.mouse.move(x - 40, y + 60);
  await page.mouse.move(x, y, { steps: 6 });
  await page.waitForTimeout(1500);
  return page.evaluate(() => document.body.innerText);
}
