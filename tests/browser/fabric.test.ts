/** A shape given by a few widths, the layout that follows from it, and its print. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { DIST } from "../../src/practice/root";
import { hasBrowser, type OpenBrowser, type OpenPage, startBrowser } from "./browser";

describe.skipIf(!hasBrowser)("the fabric section in a browser", () => {
  let browser: OpenBrowser;
  let open: OpenPage;
  beforeAll(async () => {
    browser = await startBrowser();
    open = await browser.open("empty");
  });
  afterAll(() => browser?.close());

  const layOut = async (wanted: string) => {
    await open.pane.getByRole("button", { name: "Lay out", exact: true }).press("Enter");
    await open.pane.getByText(wanted, { exact: true }).first().waitFor({ timeout: 30_000 });
  };

  // By hand. Two gores 40 long, 20 wide at the hem and 4 at the top, on cloth 33 wide: their boxes, together 40 wide, lie
  // behind each other, 80 in, which is 2 1/4 yd in eighths. Head to foot the slanted edges meet: 8 + 4 + 20 = 32 wide and
  // 40 in long, 1 1/8 yd.
  test("lays two gores head to foot once their widths are known", async () => {
    await open.pane.getByRole("tab", { name: "Fabric" }).click();
    await open.pane.getByRole("button", { name: "Set up a Pieces sheet" }).press("Enter");
    await open.pane.getByText("The Pieces sheet is set up", { exact: false }).first().waitFor({ timeout: 30_000 });
    for (const [cell, text] of [
      ["A5", "Gore"],
      ["B5", "40"],
      ["C5", "20"],
      ["E5", "2"],
      ["G5", "yes"],
    ] as const)
      await open.type("Pieces", cell, text);
    await open.pane.getByLabel("Usable width").fill("33");
    await open.pane.getByLabel("How the cloth lies").selectOption("single");
    await layOut("Length to buy: 2 1/4 yd");
    expect(await open.pane.getByText("Laid by boxes", { exact: false }).count()).toBe(1);

    await open.pane.getByText("Shape of a piece").press("Enter");
    await open.pane.getByLabel("Width in line 1").waitFor();
    await open.pane.getByLabel("Width in line 1").press("4");
    const last = await open.pane.getByLabel(/^Height in line/).count();
    expect(await open.pane.getByLabel(`Height in line ${last}`).inputValue()).toBe("40");
    await open.pane.getByLabel(`Width in line ${last}`).pressSequentially("20");
    await open.pane.getByRole("img", { name: /"Gore" as its widths draw it, 4 corners/ }).waitFor();
    await open.pane.getByRole("button", { name: "Write the outline" }).press("Enter");
    await open.pane.getByText('The outline of "Gore" stands in the list', { exact: false }).first().waitFor();
    await layOut("Length to buy: 1 1/8 yd");
    expect(await open.pane.getByText("Laid by outlines", { exact: false }).count()).toBe(1);
  });

  // The lining is four times as long as it is wide: its drawing has to be made smaller to stay on one page.
  test("prints a page for each cloth, on A4 and on Letter", async () => {
    const cells = [
      ["A6", "Lining"],
      ["B6", "90"],
      ["C6", "20"],
      ["E6", "1"],
      ["H6", "lining"],
      ["H5", "linen"],
    ] as const;
    for (const [cell, text] of cells) await open.type("Pieces", cell, text);
    await layOut("linen: Length to buy: 1 1/8 yd");
    await open.pane.getByText("lining: Length to buy: 2 1/2 yd", { exact: true }).first().waitFor();
    await open.pane.evaluate(() => {
      window.print = () => document.body.setAttribute("data-printed", "yes");
    });
    await open.pane.getByRole("button", { name: "Print", exact: true }).press("Enter");
    const body = open.pane.locator("body");
    expect(await body.getAttribute("data-printed")).toBe("yes");
    const page = await open.page.context().browser()!.newPage();
    const styles = readFileSync(join(DIST, "taskpane.css"), "utf8");
    const shown = await body.evaluate((element) => element.outerHTML.replace(/<script[^>]*><\/script>/g, ""));
    await page.setContent(`<style>${styles}</style>${shown}`);
    for (const format of ["A4", "Letter"] as const) {
      const pdf = await page.pdf({ format, margin: { top: "1cm", bottom: "1cm", left: "1cm", right: "1cm" } });
      expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g), format).toHaveLength(2);
    }
    await page.close();
  });

  test("asks nobody outside for anything, and has no errors in its console", () => {
    expect(open.outside).toEqual([]);
    expect(open.problems).toEqual([]);
  });
});
