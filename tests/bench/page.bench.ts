/** The practice workbook in a browser, where there is one. */
import { hasBrowser, type OpenBrowser, startBrowser } from "../browser/browser";
import type { BenchRow } from "./row";

const SHEET = "Fit notes"; // has room below its table
const PAGE = "practice page usable, median of three after the first";
const KEY = "practice page: from Enter to a SIZEMATCH that follows";

export async function bench(): Promise<BenchRow[]> {
  if (!hasBrowser) return [PAGE, KEY].map((name) => ({ name, value: "no browser here" }));
  const browser = await startBrowser();
  try {
    return await timed(browser);
  } finally {
    await browser.close();
  }
}

async function timed(browser: OpenBrowser): Promise<BenchRow[]> {
  const open = await browser.open();
  const loads: number[] = [];
  for (let n = 0; n < 3; n++) {
    const again = await browser.open();
    loads.push(again.loadTime);
    await again.page.close();
  }
  await open.type(SHEET, "C11", '=SEW.SIZEMATCH(CampShirt_body[#All],"bust",C10)');
  const answers: number[] = [];
  for (const [bust, size] of [
    ["38", 16],
    ["36", 14],
    ["38", 16],
  ] as const) {
    await open.begin(SHEET, "C10", bust);
    const start = Date.now();
    await open.page.keyboard.press("Enter");
    await open.becomes(SHEET, "C11", size);
    answers.push(Date.now() - start);
  }
  return [
    { name: PAGE, value: median(loads) / 1000, unit: "s", wanted: "≤ 8" },
    { name: KEY, value: median(answers) / 1000, unit: "s", wanted: "≤ 1" },
  ];
}

const median = (times: readonly number[]) => [...times].sort((a, b) => a - b)[1]!;
