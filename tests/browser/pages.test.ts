/**
 * What a person reads who opens an address of the add-in in a browser: the pages beside the pane, and the pane without
 * Excel, with office.js and, as on a machine without a connection, without it.
 */
import { createReadStream, existsSync, mkdirSync, readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { buildAddin } from "../../src/practice/build-addin";
import { officeFolder } from "../../src/practice/host/node-client";
import { DIST, ROOT } from "../../src/practice/root";
import { contentType, fileIn, pathOf } from "../../src/practice/served-file";
import { findBrowser } from "./find.mjs";

const CHROMIUM = findBrowser();
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const FOLDER = join(ROOT, "screenshots"); // git ignores it
const MICROSOFT = "https://appsforoffice.microsoft.com/lib/1/hosted/";
const LOOKS = [
  { name: "light", colorScheme: "light", forcedColors: "none" },
  { name: "dark", colorScheme: "dark", forcedColors: "none" },
  { name: "forced colours", colorScheme: "dark", forcedColors: "active" },
] as const;

interface Opened {
  readonly name: string;
  readonly path: string;
  /** Whether Microsoft's address answers. */
  readonly online: boolean;
  /** In the order of the page. */
  readonly says: readonly string[];
}
const PAGES: readonly Opened[] = [
  {
    name: "about",
    path: "index.html",
    online: true,
    says: ["It works inside Excel, not in a browser tab", "Sewing pane", "=SEW."],
  },
  { name: "privacy", path: "privacy.html", online: true, says: ["Nothing leaves your machine"] },
  {
    name: "support",
    path: "support.html",
    online: true,
    says: ["A function shows an error", "#NAME?", "please report it", "before you cut"],
  },
];
const PANES: readonly Opened[] = [
  {
    name: "pane without Excel",
    path: "taskpane.html",
    online: true,
    says: ["This pane works inside Excel. Open a workbook"],
  },
  {
    name: "pane offline",
    path: "taskpane.html",
    online: false,
    says: ["Excel's part of this pane has not loaded. Check the internet connection"],
  },
];
const ALL = [...PAGES, ...PANES];

describe.skipIf(CHROMIUM === undefined)("an address of the add-in in a browser", () => {
  let server: Server;
  let browser: Browser;
  let url: string;
  let page: Page;
  let problems: string[];

  beforeAll(async () => {
    mkdirSync(FOLDER, { recursive: true });
    await buildAddin();
    // The files as they are, without the practice server's own words: what a plain host does.
    server = createServer((request, response) => {
      const file = fileIn(DIST, pathOf(request.url ?? "/") ?? "");
      if (!file) return void response.writeHead(404).end();
      response.setHeader("content-type", contentType(file));
      createReadStream(file).pipe(response);
    });
    await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
    url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
    browser = await chromium.launch({
      ...(CHROMIUM && { executablePath: CHROMIUM }),
      args: ["--no-sandbox", "--disable-gpu"],
    });
  });
  afterAll(async () => {
    await browser?.close();
    server?.close();
  });
  beforeEach(async () => {
    page = await browser.newPage({ viewport: { width: 900, height: 900 } });
    problems = [];
    page.on("pageerror", (error) => problems.push(error.message));
    page.on("console", (message) => {
      if (message.type() !== "error") return;
      // That Microsoft's file can't be had is the browser's line, and so is that the page lets no frame for its maker's
      // statistics in.
      const [line, from] = [message.text(), message.location().url];
      if (!from.startsWith(MICROSOFT) && !/^Framing 'https:\/\/telemetryservice\./.test(line)) problems.push(line);
    });
  });
  afterEach(() => page.close());

  const show = async ({ path, online, says }: Opened) => {
    await page.route(/^https?:\/\/(?!127\.0\.0\.1)/, (route) => {
      const asked = route.request().url();
      const file = join(officeFolder(import.meta.url), asked.slice(MICROSOFT.length).split("?", 1)[0]!);
      return online && asked.startsWith(MICROSOFT) && existsSync(file) ? route.fulfill({ path: file }) : route.abort();
    });
    await page.goto(url + path);
    await page.getByText(says[0]!).waitFor({ timeout: 30_000 });
  };
  const violations = async (): Promise<string[]> => {
    await page.evaluate(AXE);
    return page.evaluate(async () => {
      interface Finding {
        id: string;
        nodes: { target: string[] }[];
      }
      const { axe } = window as unknown as { axe: { run(): Promise<{ violations: Finding[] }> } };
      return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.target.join(" ")}`);
    });
  };

  describe.each(ALL)("$name", (opened) => {
    test.each(LOOKS)("has no accessibility findings and no errors in its console, in $name", async (look) => {
      await page.emulateMedia(look);
      await show(opened);
      await page.screenshot({
        path: join(FOLDER, `${opened.name} ${look.name}.png`.replace(/ /g, "-")),
        fullPage: true,
      });
      expect(await violations()).toEqual([]);
      expect(problems).toEqual([]);
      const [red = 0, green = 0, blue = 0] = await page.evaluate(() =>
        getComputedStyle(document.body).backgroundColor.match(/\d+/g)!.map(Number),
      );
      expect(red + green + blue > 380).toBe(look.name === "light");
    });

    test("says what is the matter, and nothing that isn't", async () => {
      await show(opened);
      const text = await page.locator("main").innerText();
      let from = 0;
      for (const sentence of opened.says) {
        const at = text.indexOf(sentence, from);
        expect(at, sentence).toBeGreaterThanOrEqual(0);
        from = at;
      }
      expect(text).not.toMatch(/\{\{|undefined|Opening the sewing pane/);
      expect(await page.locator("button, input, [role=tab]").count()).toBe(0);
    });

    test("fits 320 px, and twice the size, without scrolling sideways", async () => {
      await page.setViewportSize({ width: 320, height: 800 });
      await show(opened);
      const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(await sideways()).toBeLessThanOrEqual(0);
      await page.screenshot({ path: join(FOLDER, `${opened.name} 320.png`.replace(/ /g, "-")), fullPage: true });
      await page.setViewportSize({ width: 640, height: 800 });
      await page.evaluate(() => document.documentElement.style.setProperty("zoom", "2"));
      expect(await sideways()).toBeLessThanOrEqual(0);
    });
  });

  test("leads from page to page, to the manifest and to the licences", async () => {
    for (const opened of PAGES) {
      await show(opened);
      const links = await page
        .locator("a")
        .evaluateAll((anchors) => anchors.map((anchor) => (anchor as HTMLAnchorElement).href));
      expect(links.length).toBeGreaterThanOrEqual(4);
      for (const link of links.filter((address) => address.startsWith(url)))
        expect((await page.request.get(link)).status(), link).toBe(200);
    }
  });

  test("is where the manifest sends people: support, and learning more", async () => {
    const manifest = readFileSync(join(DIST, "manifest.xml"), "utf8");
    const base = /<SourceLocation DefaultValue="(.*)taskpane\.html"/.exec(manifest)![1]!;
    for (const [name, pattern] of [
      ["support", /<SupportUrl DefaultValue="([^"]*)"/],
      ["about", /id="LearnMore\.Url" DefaultValue="([^"]*)"/],
    ] as const) {
      const address = pattern.exec(manifest)![1]!;
      expect(address.startsWith(base)).toBe(true);
      await show({ ...PAGES.find((known) => known.name === name)!, path: address.slice(base.length) });
    }
  });
});
