/** The help in a real browser and by keyboard alone: look for a function, read it, try its example in a cell. */
import { mkdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Locator } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ROOT } from "../../src/practice/root";
import { hasBrowser, type OpenBrowser, type OpenPage, startBrowser } from "./browser";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const FOLDER = join(ROOT, "screenshots"); // git ignores it
const SHEET = "Fit notes";

describe.skipIf(!hasBrowser)("the help in a browser", () => {
  let browser: OpenBrowser;
  let open: OpenPage;
  beforeAll(async () => {
    mkdirSync(FOLDER, { recursive: true });
    browser = await startBrowser();
    open = await browser.open();
  });
  afterAll(() => browser?.close());

  const has = (place: Locator) => place.evaluate((element) => element === document.activeElement);
  /** Presses Tab until the keyboard is there. */
  const tabTo = async (place: Locator) => {
    for (let press = 0; press < 45; press++) {
      if (await has(place)) return;
      await open.page.keyboard.press("Tab");
    }
    throw new Error("the keyboard never gets there");
  };
  /** The keyboard goes from the cell to the pane's section heads, as F6 brings it there in Excel. */
  const fromCell = async (cell: string) => {
    await open.begin(SHEET, cell, "");
    await open.pane.locator("[role=tab][aria-selected=true]").focus();
  };
  const entry = (id: string) => open.pane.locator(`details#help-${id}`);
  const search = () => open.pane.getByLabel("Look for");
  const insert = (id: string) => entry(id).getByRole("button", { name: "Write it into the selected cell" });
  const shownNames = () => open.pane.locator("details.function summary > code").allTextContents();
  const saidIs = (text: string) => open.pane.locator("footer [role=status]", { hasText: text }).waitFor();

  test("opens with End, lists every function and finds those about a word", async () => {
    const { page, pane } = open;
    await pane.getByRole("tab", { name: "Chart" }).focus();
    await page.keyboard.press("End");
    await search().waitFor();
    const published = JSON.parse(readFileSync(join(ROOT, "dist/functions.json"), "utf8")) as {
      functions: { id: string; description: string }[];
    };
    await expect.poll(shownNames).toHaveLength(published.functions.length);
    await page.keyboard.press("Tab"); // into the section
    await tabTo(search());
    await page.keyboard.type("size");
    const names = await shownNames();
    expect(names.slice(0, 3).sort()).toEqual(["SEW.SIZEBYPLACE", "SEW.SIZECOLUMN", "SEW.SIZEMATCH"]);
    expect(names).toContain("SEW.CUTSIZE");
    expect(names).not.toContain("SEW.TOYARDS");
    expect(await pane.locator("#help [role=status]").textContent()).toBe(`${names.length} functions`);
  });

  test("shows a function argument by argument, and says which may be left out", async () => {
    await tabTo(entry("SIZEMATCH").locator("summary"));
    await open.page.keyboard.press("Enter");
    expect(await entry("SIZEMATCH").locator("dt").allInnerTexts()).toEqual([
      "chart",
      "place",
      "measure",
      "rule (may be left out)",
      "pattern (may be left out)",
    ]);
    const about = await entry("SIZEMATCH").locator("dd").allInnerTexts();
    expect(about.map((sentence) => /^[A-Z].{15,}\.$/.test(sentence))).toEqual([true, true, true, true, true]);
    expect(await entry("SIZEMATCH").innerText()).toContain("=SEW.SIZEMATCH(chart, place, measure, [rule], [pattern])");
  });

  test("writes the example into the selected cell, answers there, and takes it back", async () => {
    const { page, pane } = open;
    await fromCell("C10");
    await tabTo(insert("SIZEMATCH"));
    await page.keyboard.press("Enter");
    // The largest size of the camp shirt, by the bust that its chart prints for it.
    await open.becomes(SHEET, "C10", 18);
    await saidIs(`The example stands in the selected cell of "${SHEET}".`);
    expect(await has(insert("SIZEMATCH"))).toBe(true);
    await tabTo(pane.getByRole("button", { name: "Take back: example" }));
    await page.keyboard.press("Enter");
    await open.becomes(SHEET, "C10", "");
    await saidIs("Taken back: example.");
  });

  test("asks before it writes over a cell, and Escape leaves the cell as it is", async () => {
    const { page, pane } = open;
    await open.type(SHEET, "C11", "hers");
    await fromCell("C11");
    await tabTo(insert("SIZEMATCH"));
    await page.keyboard.press("Enter");
    const dialog = pane.getByRole("dialog");
    await dialog.waitFor();
    expect(await has(dialog.getByRole("button").first())).toBe(true);
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    expect(await open.value(SHEET, "C11")).toEqual([["hers"]]);
    expect(await has(insert("SIZEMATCH"))).toBe(true);
  });

  test("gives a person with centimetres examples in centimetres, on a pattern in centimetres", async () => {
    const { page, pane } = open;
    await fromCell("C12");
    const units = pane.getByLabel("Examples in");
    await tabTo(units);
    expect(await units.inputValue()).toBe("in");
    await page.keyboard.press("ArrowDown");
    const example = () => entry("SIZEMATCH").locator("code").last().innerText();
    await expect.poll(example).toBe('=SEW.SIZEMATCH(ChoirGown_body[#All],"Bust","104 cm")');
    expect(await units.inputValue()).toBe("cm");
    await tabTo(insert("SIZEMATCH"));
    await page.keyboard.press("Enter");
    await open.becomes(SHEET, "C12", 46);
  });

  test("writes semicolons and decimal commas where the workbook has them, and what it inserts still calculates", async () => {
    const { page, pane } = open;
    await page.evaluate(() => {
      const { book } = (window as unknown as { practice: { book: { Application: object } } }).practice;
      const { Application } = book;
      Object.assign(Application, { DecimalSeparator: ",", ThousandsSeparator: "." });
      Object.defineProperty(book, "Application", { value: Application });
    });
    await fromCell("C13");
    // To the section before and back, as after a change of Excel's settings.
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowRight");
    await tabTo(search());
    await page.keyboard.press("Control+a");
    await page.keyboard.type("buylength");
    await expect.poll(shownNames).toEqual(["SEW.BUYLENGTH"]);
    await tabTo(entry("BUYLENGTH").locator("summary"));
    await page.keyboard.press("Enter");
    const codes = () => entry("BUYLENGTH").locator("p > code").allInnerTexts();
    await expect.poll(codes).toEqual(["=SEW.BUYLENGTH(length; step)", "=SEW.BUYLENGTH(2,34;0,1)"]);
    await tabTo(insert("BUYLENGTH"));
    await page.keyboard.press("Enter");
    await open.becomes(SHEET, "C13", 2.4);
    expect(await pane.locator("#help [role=status]").textContent()).toBe("1 function");
  });

  test.each([
    { name: "light", colorScheme: "light", forcedColors: "none" },
    { name: "dark", colorScheme: "dark", forcedColors: "none" },
    { name: "forced colours", colorScheme: "dark", forcedColors: "active" },
  ] as const)("has no accessibility findings with a function open, in $name", async (look) => {
    const { page, pane } = open;
    await page.emulateMedia(look);
    await pane.getByRole("tab", { name: "Help" }).focus();
    await tabTo(search());
    await page.keyboard.press("Control+a");
    await page.keyboard.type("yardage");
    await entry("YARDAGE").evaluate((details: HTMLDetailsElement) => (details.open = true));
    const frame = await page.$("#pane iframe");
    await frame!.screenshot({ path: join(FOLDER, `help-open-${look.name.replace(" ", "-")}.png`) });
    await pane.evaluate(AXE);
    const found = await pane.evaluate(async () => {
      interface Finding {
        id: string;
        nodes: { target: string[] }[];
      }
      const { axe } = window as unknown as { axe: { run(): Promise<{ violations: Finding[] }> } };
      return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.target.join(" ")}`);
    });
    expect(found).toEqual([]);
    const [red = 0, green = 0, blue = 0] = await pane.evaluate(() =>
      getComputedStyle(document.body).backgroundColor.match(/\d+/g)!.map(Number),
    );
    expect(red + green + blue > 380).toBe(look.name === "light");
  });

  test("asks nobody outside for anything, and has no errors in its console", () => {
    expect(open.outside).toEqual([]);
    expect(open.problems).toEqual([]);
  });
});
