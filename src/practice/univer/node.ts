/** Univer without a screen. Everything is `require`d: Univer's ES build does not load in Node. */
import { createRequire } from "node:module";
import type { IWorkbookData, Univer } from "@univerjs/core";
import { UniverBook } from "./book/workbook";
import type { FormulaEngine, UniverHandles } from "./engine";
import type { SheetFunctions } from "./functions";
import { EMPTY_BOOK } from "./snapshot";

const require = createRequire(import.meta.url);
polyfillIteratorSome();

export const engine: FormulaEngine = require("@univerjs/engine-formula");

export interface HeadlessBook extends UniverHandles {
  readonly book: UniverBook;
  dispose(): Promise<void>;
}

const FACADES = [
  "sheets",
  "engine-formula",
  "sheets-formula",
  "sheets-numfmt",
  "sheets-table",
  "sheets-note",
  "sheets-data-validation",
  "sheets-conditional-formatting",
];
/** Univer throws when it is disposed while an edit is still on its way; the longest of its timers takes a second. */
const LAST_TIMER = 1100;

let booksOpened = 0;

export function startHeadless(functions?: SheetFunctions, snapshot: Partial<IWorkbookData> = EMPTY_BOOK): HeadlessBook {
  const core = require("@univerjs/core");
  const locales = { [core.LocaleType.EN_US]: {} };
  const univer: Univer = new core.Univer({ logLevel: core.LogLevel.WARN, locale: core.LocaleType.EN_US, locales });
  const plugin = (name: string, exported: string, options?: object) =>
    univer.registerPlugin(require(`@univerjs/${name}`)[exported], options);
  plugin("engine-formula", "UniverFormulaEnginePlugin", { function: functions?.classes });
  plugin("docs", "UniverDocsPlugin");
  plugin("sheets", "UniverSheetsPlugin");
  plugin("sheets-formula", "UniverSheetsFormulaPlugin", { description: functions?.descriptions });
  plugin("sheets-numfmt", "UniverSheetsNumfmtPlugin");
  plugin("sheets-table", "UniverSheetsTablePlugin");
  plugin("sheets-note", "UniverSheetsNotePlugin");
  plugin("data-validation", "UniverDataValidationPlugin");
  plugin("sheets-data-validation", "UniverSheetsDataValidationPlugin");
  plugin("sheets-conditional-formatting", "UniverSheetsConditionalFormattingPlugin");
  for (const name of FACADES) require(`@univerjs/${name}/lib/facade`);
  const api = require("@univerjs/core/lib/facade").FUniver.newAPI(univer);
  const handles: UniverHandles = { univer, api, engine, core };
  // Univer changes the snapshot it is given, and keeps parsed formulas, with the functions they call, by the
  // workbook's id and for the whole process: each book gets a copy and an id of its own.
  const copy = { ...structuredClone(snapshot), id: `book-${++booksOpened}` };
  const book = new UniverBook(handles, api.createWorkbook(copy));
  return {
    ...handles,
    book,
    async dispose() {
      await book.calculation.settled();
      await new Promise((resolve) => setTimeout(resolve, LAST_TIMER));
      univer.dispose();
    },
  };
}

/** Node 20 lacks the iterator helper that Univer's table lookup uses (Node 22 has it). */
function polyfillIteratorSome(): void {
  const prototype = Object.getPrototypeOf(Object.getPrototypeOf([][Symbol.iterator]()));
  if (prototype.some) return;
  const value = function (this: Iterable<unknown>, test: (item: unknown) => boolean) {
    for (const item of this) if (test(item)) return true;
    return false;
  };
  Object.defineProperty(prototype, "some", { configurable: true, writable: true, value });
}
