/** How the pane looks: each section in light, dark and forced colours, as narrow as a phone and at twice the size. */
import { mkdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ROOT } from "../../src/practice/root";
import { hasBrowser, type OpenBrowser, type OpenPage, startBrowser } from "./browser";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const SECTIONS = ["Chart", "Fit", "Fabric", "Sheets", "Help"] as const;
const LOOKS = [
  { name: "light", colorScheme: "light", forcedColors: "none" },
  { name: "dark", colorScheme: "dark", forcedColors: "none" },
  { name: "forced colours", colorScheme: "dark", forcedColors: "active" },
] as const;
const FOLDER = join(ROOT, "screenshots"); // git ignores it

describe.skipIf(!hasBrowser)("the pane's looks", () => {
  let browser: OpenBrowser;
  let open: OpenPage;
  beforeAll(async () => {
    mkdirSync(FOLDER, { recursive: true });
    browser = await startBrowser();
    open = await browser.open();
    const { page, pane } = open;
    await page.setViewportSize({ width: 1280, height: 1500 });
    // A waist that leaves the row's order, so that a flag is in the picture.
    const chart =
      "Body measurements (in)\nSize\t10\t12\t14\t16\nBust\t32 1/2\t34\t36\t38\nWaist\t25\t62 1/2\t28\t30\nHip\t34 1/2\t36\t38\t40";
    await pane.locator("textarea").focus();
    await page.keyboard.insertText(chart);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await pane.getByLabel("Name of the pattern").waitFor();
  });
  afterAll(() => browser?.close());

  const paneIs = (width: number, zoom = 1) =>
    Promise.all([
      open.page.evaluate((to) => {
        document.querySelector<HTMLElement>("#pane")!.style.width = `${to}px`;
      }, width),
      open.pane.evaluate((to) => {
        document.documentElement.style.setProperty("zoom", String(to));
      }, zoom),
    ]);
  const show = async (section: string) => {
    await open.pane.getByRole("tab", { name: section }).click();
    await open.pane.waitForLoadState("networkidle");
    await open.pane.locator("[role=tabpanel]:not([hidden]) :is(button, input, select):visible").first().waitFor();
  };
  const violations = async (): Promise<string[]> => {
    await open.pane.evaluate(AXE);
    return open.pane.evaluate(async () => {
      interface Finding {
        id: string;
        nodes: { target: string[] }[];
      }
      const { axe } = window as unknown as { axe: { run(): Promise<{ violations: Finding[] }> } };
      return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.target.join(" ")}`);
    });
  };
  const sideways = () => open.pane.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

  describe.each(LOOKS)("in $name", ({ name, colorScheme, forcedColors }) => {
    test.each(SECTIONS)("%s has no accessibility findings", async (section) => {
      await open.page.emulateMedia({ colorScheme, forcedColors });
      await paneIs(350);
      await show(section);
      const frame = await open.page.$("#pane iframe");
      await frame!.screenshot({ path: join(FOLDER, `${section.toLowerCase()}-${name.replace(" ", "-")}.png`) });
      expect(await violations()).toEqual([]);
    });
  });

  test.each(SECTIONS)("%s fits 320 px, and twice the size, without scrolling sideways", async (section) => {
    await open.page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
    await show(section);
    await paneIs(320);
    expect(await sideways()).toBeLessThanOrEqual(0);
    expect(await violations()).toEqual([]);
    await paneIs(640, 2);
    expect(await sideways()).toBeLessThanOrEqual(0);
    expect(await violations()).toEqual([]);
    await paneIs(350);
  });

  test("asks nobody outside for anything, and has no errors in its console", () => {
    expect(open.outside).toEqual([]);
    expect(open.problems).toEqual([]);
  });
});
