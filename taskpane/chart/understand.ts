/** The reader and all that shows what it read: loaded when the first chart is pasted. */
import { readCharts } from "../../src/index";
import type { App } from "../app";
import { draftOf, lineOf, type Draft } from "./draft";
import { draftView, type DraftView } from "./draft-view";

/** Reads a paste; a draft that holds nothing to show or to put right has only sentences. */
export function understand(pasted: string): { readonly draft: Draft; readonly isEmpty: boolean } {
  const draft = draftOf(pasted, readCharts);
  const isEmpty = draft.tables.length === 0 && draft.loose.every((issue) => lineOf(draft, issue) === undefined);
  return { draft, isEmpty };
}

export function viewOf(app: App, draft: Draft, again: (pasted: string) => void, startAgain: () => void): DraftView {
  return draftView(app, draft, readCharts, again, startAgain);
}
