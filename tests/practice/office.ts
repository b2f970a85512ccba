/**
 * The practice workbook without a screen, behind the real Excel client: `openBook()` gives a fresh one, and `Excel.run`
 * talks to the one that was opened last. Anything outside the declared API sets is refused by the client itself.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import type { IWorkbookData } from "@univerjs/core";
import { loadNodeClient } from "../../src/practice/host/node-client";
import type { ApiSets, Bridge } from "../../src/practice/host/office-client";
import { readBundle } from "../../src/practice/node-bundle";
import { openSession, type Session, type SessionOptions } from "../../src/practice/session";
import { DECLARED_SETS, NAMESPACE } from "../../src/practice/settings";
import type { BlankCells } from "../../src/practice/univer/arguments";
import type { Bundle } from "../../src/practice/univer/bundle";
import { type Metadata, sheetFunctions, type SheetFunctions } from "../../src/practice/univer/functions";
import { engine, type HeadlessBook, startHeadless } from "../../src/practice/univer/node";
import { messageOf } from "../../src/practice/univer/book/messages";
import { typeInto } from "../../src/practice/univer/book/typing";
import type { CellValue } from "../../src/practice/univer/book/typed";

const FIXTURE = join(import.meta.dirname, "fixture");
/** The built add-in. */
export const DIST = join(import.meta.dirname, "../../dist");
/** Whether there is one: tests that need it say so and are skipped. */
export const isBuilt = existsSync(join(DIST, "functions.js"));

export interface OpenOptions extends SessionOptions {
  /** A folder with functions.js and functions.json, or the functions themselves; a small set of our own if absent. */
  readonly functions?: string | { readonly metadata: Metadata; readonly bundle: Bundle };
  /** What blank cells arrive as: null (the default) as on the web, or 0 as on Windows. */
  readonly blanks?: BlankCells;
  readonly snapshot?: Partial<IWorkbookData>;
}

export interface OpenBook extends HeadlessBook {
  readonly session: Session;
  readonly functions: SheetFunctions;
  /** The text that a person would see when the pointer rests on an error. */
  messageAt(address: string): string | undefined;
  /** Types into cells as a person does, not through the client. */
  type(address: string, text: string): Promise<void>;
  /** What the cells show once everything is calculated. */
  values(address: string): Promise<CellValue[][]>;
}

let current: Session | undefined;
let bridge: Bridge | undefined;

/** Loads the real client into this process, once, for an Excel that has these sets. */
export function loadClient(sets: ApiSets = DECLARED_SETS): Bridge {
  const runner = { run: (batch: never) => current!.run(batch) };
  bridge ??= loadNodeClient(import.meta.url, runner, sets).bridge;
  return bridge;
}

/** A fresh workbook with one empty sheet, "Sheet1"; dispose of it when the file's tests are over. */
export function openBook(options: OpenOptions = {}): OpenBook {
  const { functions: source = FIXTURE, blanks = null, snapshot } = options;
  const sources = typeof source === "string" ? readBundle(source) : source;
  const functions = sheetFunctions({ engine, namespace: NAMESPACE, blanks, ...sources });
  const opened = startHeadless(functions, snapshot);
  const session = openSession(opened.book, loadClient(), options);
  current = session;
  const { book } = opened;
  const home = () => book.Worksheets.GetActiveWorksheet();
  return {
    ...opened,
    session,
    functions,
    messageAt: (address) => messageOf(functions.messages, home().GetRange(address)),
    async type(address, text) {
      typeInto(home().GetRange(address), text);
      await book.calculation.settled();
    },
    async values(address) {
      await book.calculation.settled();
      return home().GetRange(address).Values;
    },
  };
}
