/** A pane without a screen: it remembers what it would say and what could be taken back, and answers no question. */
import type { App } from "../../taskpane/app";
import { readFacts, type Facts, type Receipt } from "../../taskpane/excel";

export function listeningApp(): { readonly app: App; readonly said: string[]; readonly written: Receipt[] } {
  const said: string[] = [];
  const written: Receipt[] = [];
  const app: App = {
    say: (sentence) => void said.push(sentence),
    ask: () => Promise.resolve(null),
    wrote: (receipt) => void written.push(receipt),
    run: (work) => work(),
  };
  return { app, said, written };
}

export async function facts(): Promise<Facts> {
  const read = await readFacts();
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  return read.value;
}
