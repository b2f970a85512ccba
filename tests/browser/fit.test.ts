/** The fit section of the pane in a real browser: which garment it begins with, and the measuring guide's drawing. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hasBrowser, type OpenBrowser, type OpenPage, startBrowser } from "./browser";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

describe.skipIf(!hasBrowser)("the fit section in a browser", () => {
  let browser: OpenBrowser;
  let open: OpenPage;
  beforeAll(async () => {
    browser = await startBrowser();
    open = await browser.open();
    await open.pane.getByRole("tab", { name: "Fit" }).click();
    await open.pane.locator(".fit-picture").waitFor({ timeout: 30_000 });
  });
  afterAll(() => browser?.close());

  const choose = async (pattern: string) => {
    await open.pane.getByLabel("Pattern", { exact: true }).selectOption(pattern);
  };
  const garment = () => open.pane.getByLabel("Garment", { exact: true }).inputValue();

  test("begins with the garment that the pattern is, and keeps her own choice for it", async () => {
    for (const [pattern, wanted] of [
      ["Wrap skirt", "straight skirt"],
      ["Camp shirt", "shirt"],
      ["Child's pinafore", "child's dress"],
      ["Choir trousers", "trousers"],
    ] as const) {
      await choose(pattern);
      await expect.poll(garment).toBe(wanted);
    }
    await choose("Camp shirt");
    await expect.poll(garment).toBe("shirt");
    await open.pane.getByLabel("Garment", { exact: true }).selectOption("loose dress");
    await choose("Wrap skirt");
    await expect.poll(garment).toBe("straight skirt");
    await choose("Camp shirt");
    await expect.poll(garment).toBe("loose dress");
  });

  test("lights a tape from its name by keyboard, from its words and from its line by pointer", async () => {
    const { pane, page } = open;
    await pane.getByText("Where the tape goes", { exact: true }).focus();
    await page.keyboard.press("Enter");
    const lit = () =>
      pane.locator(".tape.is-lit .tape-mark").evaluateAll((marks) => marks.map(({ textContent }) => textContent));
    await page.keyboard.press("Tab");
    expect(await lit()).toEqual(["1"]);
    const waist = pane.getByRole("button", { name: / waist$/ });
    await waist.focus();
    expect(await lit()).toEqual(["8a", "8b", "8c"]);
    await page.keyboard.press("Tab");
    expect(await lit()).toEqual(["9"]);
    // Pressed, it stays lit; the crotch length is on two figures.
    const crotch = pane.getByRole("button", { name: / crotch length$/ });
    await crotch.focus();
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    expect(await lit()).toEqual(["12", "13", "12"]);
    await crotch.focus();
    await page.keyboard.press("Enter");
    expect(await crotch.getAttribute("aria-pressed")).toBe("false");
    await pane.locator(".tape-mark", { hasText: /^10$/ }).hover();
    expect(await pane.locator(".tape-entry.is-lit button").allTextContents()).toEqual(["10 hip", "12 crotch length"]);
  });

  test("keeps the marks apart and the pane as wide as the screen at 320 px, in forced colours too", async () => {
    const { page, pane } = open;
    await page.emulateMedia({ forcedColors: "active" });
    await page.evaluate(() => document.querySelector<HTMLElement>("#pane")!.style.setProperty("width", "320px"));
    const found = await pane.evaluate(() => {
      const overlaps: string[] = [];
      for (const svg of document.querySelectorAll(".tape-picture")) {
        const marks = [...svg.querySelectorAll<SVGTextElement>(".tape-mark")];
        const frame = svg.getBoundingClientRect();
        const boxes = marks.map((mark) => ({ text: mark.textContent, box: mark.getBoundingClientRect() }));
        boxes.forEach(({ text, box: a }, index) => {
          if (a.left < frame.left - 1 || a.right > frame.right + 1) overlaps.push(`${text} out of the drawing`);
          for (const { text: other, box: b } of boxes.slice(index + 1))
            // A line box is taller than its figures: two of its nine pixels may overlap.
            if (a.right > b.left && b.right > a.left && a.bottom - 3 > b.top && b.bottom - 3 > a.top)
              overlaps.push(`${text} over ${other}`);
        });
      }
      return { overlaps, wide: document.documentElement.scrollWidth - innerWidth, inner: innerWidth };
    });
    expect(found.overlaps).toEqual([]);
    expect(found.wide).toBeLessThanOrEqual(0);
    await pane.evaluate(AXE);
    const violations = await pane.evaluate(async () => {
      const { axe } = window as unknown as { axe: { run(): Promise<{ violations: { id: string }[] }> } };
      return (await axe.run()).violations.map(({ id }) => id);
    });
    expect(violations).toEqual([]);
    expect(open.problems).toEqual([]);
  });
});
