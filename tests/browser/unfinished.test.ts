/** The pane closed over a sheet that is being written, and opened again. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hasBrowser, type OpenBrowser, type OpenPage, startBrowser } from "./browser";

interface Practice {
  book: {
    Worksheets: { Add(name: string): { Id: string }; find(name: string): object | undefined };
    Settings: { Add(key: string, value: string): void };
  };
}
declare const practice: Practice;

describe.skipIf(!hasBrowser)("a sheet that is not finished", () => {
  let browser: OpenBrowser;
  let open: OpenPage;
  beforeAll(async () => {
    browser = await startBrowser();
    open = await browser.open("empty");
  });
  afterAll(() => browser?.close());

  test("is asked about when the pane starts again, by keyboard too", async () => {
    const { page, pane } = open;
    await pane.getByRole("tab", { name: "Chart" }).waitFor();
    await page.evaluate(() => {
      const { Id: id } = practice.book.Worksheets.Add("Camp shirt");
      practice.book.Settings.Add(
        "sewing.unfinished.1",
        JSON.stringify({ since: 0, sheets: [{ name: "Camp shirt", id }] }),
      );
    });
    await pane.evaluate(() => location.reload());
    await pane.getByRole("alert").filter({ hasText: '"Camp shirt" is not finished' }).waitFor();
    const remove = pane.getByRole("button", { name: "Remove the sheet" });
    expect(await page.evaluate(() => practice.book.Worksheets.find("Camp shirt") !== undefined)).toBe(true);
    await open.shot("unfinished");
    await remove.focus();
    await page.keyboard.press("Enter");
    await pane.getByRole("status").filter({ hasText: "Removed: Camp shirt." }).waitFor();
    expect(await page.evaluate(() => practice.book.Worksheets.find("Camp shirt") === undefined)).toBe(true);
    expect(await pane.getByRole("tab", { selected: true }).evaluate((tab) => tab === document.activeElement)).toBe(
      true,
    );
    expect(await pane.getByRole("alert").count()).toBe(0);
    expect(open.problems).toEqual([]);
  }, 120_000);
});
