/** A real browser with the practice workbook open in it. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { type Browser, chromium, type Frame, type Page } from "playwright-core";
import { ROOT } from "../../src/practice/root";
import type { RunningServer } from "../../src/practice/server";
import { prepare, serveStarter } from "../../src/practice/workbook-server";
import { findBrowser } from "./find.mjs";

const CHROMIUM = findBrowser();
/** Without a browser the tests are skipped; this says so once. */
export const hasBrowser = CHROMIUM !== undefined;
if (!hasBrowser) console.log("No Chromium was found: what needs a browser is skipped. CHROMIUM names another one.");

/** Git ignores this folder. */
const SCREENSHOTS = join(ROOT, "screenshots");

export interface OpenPage {
  readonly page: Page;
  readonly pane: Frame;
  /** Milliseconds until the grid was there. */
  readonly loadTime: number;
  /** Requests that went, or wanted to go, anywhere but to the practice server. */
  readonly outside: readonly string[];
  /** Errors in the console, and ones that nobody caught. */
  readonly problems: readonly string[];
  /** Shows a sheet, goes to a cell and types there, by keyboard; Enter is still to be pressed. */
  begin(sheet: string, cell: string, text: string): Promise<void>;
  /** The same with Enter, until the cell has what was typed. */
  type(sheet: string, cell: string, text: string): Promise<void>;
  value(sheet: string, address: string): Promise<unknown>;
  /** Waits until the cell holds this. */
  becomes(sheet: string, cell: string, wanted: unknown): Promise<number>;
  shot(name: string): Promise<void>;
}

export interface OpenBrowser {
  readonly url: string;
  /** A new page with the workbook as it is at first: the starter's, or an empty one. */
  open(workbook?: "starter" | "empty"): Promise<OpenPage>;
  close(): Promise<void>;
}

export async function startBrowser(): Promise<OpenBrowser> {
  await prepare(() => undefined);
  const server: RunningServer = await serveStarter(0);
  const quiet = ["--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run"];
  const browser: Browser = await chromium.launch({
    ...(CHROMIUM && { executablePath: CHROMIUM }),
    args: ["--no-sandbox", "--disable-gpu", ...quiet],
  });
  return {
    url: server.url,
    open: (workbook = "starter") => openPage(browser, server.url, workbook === "empty" ? "?empty" : ""),
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

interface Practice {
  book: { Worksheets: { GetItem(name: string): Sheet }; calculation: { settled(): Promise<void> } };
  editing(): boolean;
}
interface Sheet {
  Activate(): void;
  GetRange(address: string): { Values: unknown[][]; Select(): void };
}
declare const practice: Practice;

async function openPage(browser: Browser, url: string, query: string): Promise<OpenPage> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 760 } });
  const outside: string[] = [];
  const problems: string[] = [];
  page.on("request", (request) => {
    if (!request.url().startsWith(url) && !/^(?:data|blob):/.test(request.url())) outside.push(request.url());
  });
  page.on("pageerror", (error) => problems.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") problems.push(message.text());
  });
  const began = Date.now();
  await page.goto(url + query);
  await page.waitForFunction(() => "practice" in window, undefined, { timeout: 60_000 });
  const loadTime = Date.now() - began;
  const frame = await page.waitForSelector("#pane iframe");
  const pane = (await frame.contentFrame())!;
  await pane.waitForSelector("[role=tab], nav button, main", { timeout: 30_000 });
  const settled = () => page.evaluate(() => practice.book.calculation.settled());
  const open: OpenPage = {
    page,
    pane,
    loadTime,
    outside,
    problems,
    async begin(sheet, cell, text) {
      // A click into the grid brings the keyboard back from the pane; only then does a selection stay.
      await page.evaluate((name) => practice.book.Worksheets.GetItem(name).Activate(), sheet);
      await page.mouse.click(600, 500);
      await page.evaluate(
        ([name, to]) => practice.book.Worksheets.GetItem(name!).GetRange(to!).Select(),
        [sheet, cell],
      );
      await settled();
      await page.keyboard.type(text, { delay: 30 });
      await page.waitForTimeout(250); // a person's pause: the list of suggestions goes
    },
    async type(sheet, cell, text) {
      await open.begin(sheet, cell, text);
      await page.keyboard.press("Enter");
      await page.waitForFunction(() => !practice.editing(), undefined, { timeout: 30_000, polling: 20 });
      await page.waitForTimeout(50); // the editor writes the cell after it has said that it ended
      await settled();
    },
    value: (sheet, address) =>
      page.evaluate(([name, of]) => practice.book.Worksheets.GetItem(name!).GetRange(of!).Values, [sheet, address]),
    async becomes(sheet, cell, wanted) {
      const start = Date.now();
      await page.waitForFunction(
        ([name, of, target]) =>
          practice.book.Worksheets.GetItem(name as string).GetRange(of as string).Values[0]![0] === target,
        [sheet, cell, wanted] as const,
        { timeout: 30_000, polling: 20 },
      );
      return Date.now() - start;
    },
    async shot(name) {
      mkdirSync(SCREENSHOTS, { recursive: true });
      await page.screenshot({ path: join(SCREENSHOTS, `${name}.png`) });
    },
  };
  return open;
}
