/** Nothing pasted is ever rendered: a chart from a web page that brings pictures, scripts and links with it. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hasBrowser, type OpenBrowser, type OpenPage, startBrowser } from "./browser";

/** Invented figures. Each cell brings something else along. */
const PASTED = `<meta charset="utf-8"><script>window.pwned = 1</script><base href="https://example.invalid/">
<link rel="stylesheet" href="https://example.invalid/a.css"><style>@import "https://example.invalid/b.css";</style>
<table><caption>Body measurements (in)</caption>
<tr><td>Size</td><td>10</td><td>12<iframe srcdoc="<script>parent.pwned = 1</script>"></iframe></td></tr>
<tr><td><img src=x onerror="window.pwned=1">Bust</td><td>32 1/2</td><td>34</td></tr>
<tr><td><svg onload="window.pwned=1"><circle r="9"/></svg>Waist</td><td>25</td><td>26 1/2<script>window.pwned=1</script></td></tr>
<tr><td><a href="javascript:window.pwned=1" onmouseover="window.pwned=1">Hip</a></td><td>34 1/2</td><td>36</td></tr>
<tr><td>&lt;img src=y onerror="window.pwned=1"&gt;</td><td>1</td><td>2</td></tr>
</table><img src="https://example.invalid/c.png" onerror="window.pwned=1">`;

describe.skipIf(!hasBrowser)("a chart pasted from a page that brings more than a chart", () => {
  let browser: OpenBrowser;
  let open: OpenPage;
  beforeAll(async () => {
    browser = await startBrowser();
    open = await browser.open("empty");
  });
  afterAll(() => browser?.close());

  test("is read, and nothing of it runs, is shown or is asked for", async () => {
    const { page, pane, problems, outside } = open;
    // What the pane has of its own, so that only what the paste brought counts.
    const parts = () =>
      pane.evaluate(() =>
        ["img", "script", "iframe", "link", "style", "base", "meta", "a"].map(
          (tag) => [tag, document.querySelectorAll(tag).length] as const,
        ),
      );
    const before = await parts();
    await pane.locator("textarea").focus();
    await pane.locator("textarea").evaluate((box, html) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData("text/html", html);
      clipboardData.setData("text/plain", 'Size\t10\t12\n<img src=z onerror="window.pwned=1">Bust\t32 1/2\t34');
      box.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
    }, PASTED);
    const name = pane.getByLabel("Name of the pattern");
    await name.waitFor();
    // The words that look like a tag are read as words, and shown as such where the reader asks about them.
    await expect.poll(() => pane.evaluate(() => document.body.innerText), { timeout: 10_000 }).toContain("Body");
    await page.waitForTimeout(1000);
    const pwned = (frame: { evaluate(read: () => unknown): Promise<unknown> }) =>
      frame.evaluate(() => (window as unknown as { pwned?: unknown }).pwned);
    expect(await pwned(pane)).toBeUndefined();
    expect(await pwned(page)).toBeUndefined();
    expect(await parts()).toEqual(before);
    // Drawings of our own are made without listeners in their marks.
    const marks = await pane.evaluate(() =>
      [...document.querySelectorAll("*")].flatMap((one) =>
        [...one.attributes]
          .filter(({ name: of, value }) => /^on/i.test(of) || /^\s*javascript:/i.test(value) || of === "srcdoc")
          .map(({ name: of }) => `${one.tagName} ${of}`),
      ),
    );
    expect(marks).toEqual([]);
    expect(await pane.evaluate(() => document.querySelectorAll("svg circle[r='9'], svg[onload]").length)).toBe(0);

    await name.fill("Camp shirt");
    await pane.getByRole("button", { name: "Insert", exact: false }).first().click();
    // The row that is named like a picture is asked about first.
    const answer = pane.getByRole("button", { name: "Insert it", exact: true });
    await answer.waitFor();
    // It is her turn, so nothing says that the pane works.
    await page.waitForTimeout(700);
    expect(await pane.evaluate(() => [document.body.ariaBusy, document.body.innerText.includes("Working")])).toEqual([
      null,
      false,
    ]);
    await answer.click();
    await pane.getByText('Inserted: sheet "Camp shirt"').first().waitFor({ timeout: 30_000 });
    const cells = (await open.value("Camp shirt", "A1:D8")) as unknown[][];
    const row = (label: string) => cells.find(([first]) => first === label)?.slice(2);
    expect(cells.find(([first]) => first === "Measurement")).toEqual(["Measurement", "Unit", "10", "12"]);
    expect([row("Bust"), row("Waist"), row("Hip")]).toEqual([
      [32.5, 34],
      [25, 26.5],
      [34.5, 36],
    ]);
    expect(await pwned(pane)).toBeUndefined();
    expect(await pwned(page)).toBeUndefined();
    expect(problems).toEqual([]);
    expect(outside).toEqual([]);
  });
});
