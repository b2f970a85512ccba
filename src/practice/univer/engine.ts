/**
 * Univer is an ES module in the page and a CommonJS one in Node (its ES build does not load there), so the code that is
 * shared by both gets the formula engine handed in and imports only its types.
 */
import type * as Core from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type * as Formula from "@univerjs/engine-formula";

export type FormulaEngine = typeof Formula;
export type UniverCore = Pick<typeof Core, "ICommandService" | "IUndoRedoService" | "LocalUndoRedoService">;

/** One running Univer, with a screen or without. */
export interface UniverHandles {
  readonly univer: Core.Univer;
  readonly api: FUniver;
  readonly engine: FormulaEngine;
  readonly core: UniverCore;
}
