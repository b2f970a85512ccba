/** `npm start`: builds what is missing or old, makes the starter workbook, and serves both to this machine. */
import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { buildAddin } from "./build-addin";
import { buildPage, PAGE } from "./build-page";
import { makeOnce, stampOf } from "./fresh";
import { CACHE, DIST, ROOT } from "./root";
import { type RunningServer, serve } from "./server";

/** The starter workbook, as the page opens it. */
export const WORKBOOK = join(CACHE, "workbook.json");

const WHAT_TO_TRY = `What to try first:
  1. Measurements: change Ada's hip from 41 to 39, and look at her skirt on the Projects sheet: size, yards and cost.
  2. Type =SEW.SIZEMATCH( in an empty cell: the help under it says what belongs there.
  3. In the pane on the right, paste the chart from the back of a pattern and insert it as a sheet.
  4. Rest the pointer on a cell with an error: it says why.
Stop with Ctrl+C. Nothing is saved: a reload brings the workbook back as it was.`;

export async function start(port: number): Promise<void> {
  await prepare((line) => console.log(line));
  const { url } = await serve(served(), port);
  console.log(`\nThe practice workbook is open at ${url}\n\n${WHAT_TO_TRY}`);
}

/** Serves what `prepare` has made. */
export function serveStarter(port: number): Promise<RunningServer> {
  return serve(served(), port);
}

const served = () => ({ page: PAGE, addin: DIST, workbook: WORKBOOK });

/** Makes everything that is served; quick when nothing has changed. */
export async function prepare(say: (line: string) => void): Promise<void> {
  if (await buildAddin()) say("The add-in has been built (dist/).");
  if (await buildPage()) say("The practice page has been bundled.");
  const stamp = stampOf([DIST, join(ROOT, "src"), join(ROOT, "package-lock.json")]);
  const there = () => existsSync(WORKBOOK);
  if (await makeOnce("workbook", stamp, there, makeWorkbook)) say("The starter workbook has been made.");
}

/** In a process of its own: the client of Excel makes the whole process look like a window. */
async function makeWorkbook(): Promise<void> {
  const program = join(ROOT, "src", "practice", "make-workbook.mjs");
  execFileSync(process.execPath, [program, WORKBOOK], { cwd: ROOT, stdio: ["ignore", "ignore", "inherit"] });
}
