/** Makes the starter workbook: its plans carried out by the built add-in, through the real client, without a screen. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import vm from "node:vm";
import type { IWorkbookData } from "@univerjs/core";
import { starterWorkbook, type WorkbookPlan } from "../index";
import { loadNodeClient } from "./host/node-client";
import { readBundle } from "./node-bundle";
import { DIST } from "./root";
import { openSession, type Session } from "./session";
import { DECLARED_SETS, NAMESPACE } from "./settings";
import { sheetFunctions } from "./univer/functions";
import { engine, type HeadlessBook, startHeadless } from "./univer/node";

interface SewExcel {
  carryOut(plan: WorkbookPlan): Promise<{ readonly ok: true } | { readonly ok: false; readonly refusal: object }>;
}

/** An open workbook, and the client that is connected to it. */
export interface OpenStarter extends HeadlessBook {
  readonly session: Session;
}

/** @throws Error when a plan is refused */
export async function openStarter(): Promise<OpenStarter> {
  const functions = sheetFunctions({ engine, namespace: NAMESPACE, ...readBundle(DIST) });
  const opened = startHeadless(functions);
  const runner = { run: (batch: never) => session.run(batch) };
  const { bridge } = loadNodeClient(import.meta.url, runner, DECLARED_SETS);
  const session = openSession(opened.book, bridge);
  const { carryOut } = loadAddin();
  for (const plan of starterWorkbook()) {
    const carried = await carryOut(plan);
    if (!carried.ok) throw new Error(`The starter workbook was refused: ${JSON.stringify(carried.refusal)}`);
  }
  const { book } = opened;
  book.Worksheets.find("Sheet1")?.Delete(); // the empty sheet that every new workbook has
  await book.calculation.settled();
  return { ...opened, session };
}

/** The part of the add-in that carries out plans, from the same build that the pane uses. */
function loadAddin(): SewExcel {
  const file = join(DIST, "excel.js");
  // Bundled code asks where its page is, to find what is loaded on demand. Nothing of that is needed here.
  Object.assign(globalThis, { location: new URL("https://localhost/taskpane.html") });
  vm.runInThisContext(readFileSync(file, "utf8"), { filename: file });
  const { SewExcel } = globalThis as { SewExcel?: SewExcel };
  if (!SewExcel) throw new Error("dist/excel.js has not set SewExcel");
  return SewExcel;
}

/** Writes the workbook to a file that the practice page opens. */
export async function saveStarter(file: string): Promise<void> {
  const { book, dispose } = await openStarter();
  const saved: IWorkbookData = book.fbook.save();
  writeFileSync(file, JSON.stringify(saved));
  await dispose();
}
