/** A practice workbook whose functions are those of the source, so that the trackers are tested with what is there now. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import type { WorkbookPlan } from "../../src/index";
import { customFunctionsGlobal, type Implementation } from "../../src/practice/univer/bundle";
import type { Metadata } from "../../src/practice/univer/functions";
import { carryOut } from "../../taskpane/excel";
import { loadClient, openBook, type OpenBook } from "../practice/office";

const FOLDER = join(import.meta.dirname, "../../functions");

/** Every published function with its description. */
export async function sourceFunctions(): Promise<{ metadata: Metadata; bundle: Map<string, Implementation> }> {
  const files = readdirSync(FOLDER)
    .filter((file) => file.endsWith(".ts"))
    .map((file) => join(FOLDER, file))
    .filter((file) => readFileSync(file, "utf8").includes("@customfunction"));
  const { metadataJson } = await generateCustomFunctionsMetadata(files, true);
  const { functions } = JSON.parse(metadataJson) as Metadata;
  const metadata = { functions: functions.map((info) => ({ ...info, allowErrorForDataTypeAny: true })) };
  const bundle = new Map<string, Implementation>();
  for (const file of files) {
    const module = (await import(/* @vite-ignore */ file)) as Record<string, unknown>;
    for (const [name, value] of Object.entries(module))
      if (typeof value === "function") bundle.set(name.toUpperCase(), value as Implementation);
  }
  return { metadata, bundle };
}

/** Opens a workbook with them. */
export async function trackerBook(): Promise<OpenBook> {
  loadClient();
  // The functions make their errors with the runtime that the spreadsheet has.
  Object.assign(globalThis, { CustomFunctions: customFunctionsGlobal().CustomFunctions });
  return openBook({ functions: await sourceFunctions() });
}

/** Carries plans out, one after another. @throws Error with the refusal */
export async function carryOutAll(plans: readonly WorkbookPlan[]): Promise<void> {
  for (const plan of plans) {
    const carried = await carryOut(plan);
    if (!carried.ok) throw new Error(JSON.stringify(carried.refusal));
  }
}

export type Shown = string | number | boolean;

/** What the cells of a range show; the whole used range without an address. */
export async function shown(sheet: string, address?: string): Promise<Shown[][]> {
  return Excel.run(async (context) => {
    const found = context.workbook.worksheets.getItem(sheet);
    const range = (address === undefined ? found.getUsedRange(true) : found.getRange(address)).load("values");
    await context.sync();
    return range.values as Shown[][];
  });
}

/** A table's rows by heading. */
export async function tableRows(name: string): Promise<Record<string, Shown>[]> {
  return Excel.run(async (context) => {
    const range = context.workbook.tables.getItem(name).getRange().load("values");
    await context.sync();
    const [headings = [], ...rows] = range.values as Shown[][];
    return rows.map((row) => Object.fromEntries(row.map((cell, at) => [String(headings[at]), cell])));
  });
}

/** Types a value into a cell. */
export async function put(sheet: string, address: string, value: Shown): Promise<void> {
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem(sheet).getRange(address).values = [[value]];
    await context.sync();
  });
}
