/** Formulas that become values for a workbook that travels, and come back. */
import {
  bringBack,
  isOurFormula,
  keepValues,
  keptText,
  paneWords,
  readKept,
  refusalSentence,
  type KeptFormulas,
} from "../../src/index";
import type { App } from "../app";
import { carryOut, readFormulas, readShown, recall } from "../excel";

const words = paneWords.sheets;
/** Under which the workbook remembers the formulas. */
const KEY = "sewing.keptFormulas";

/** What the workbook remembers; empty when it remembers nothing that can be read. */
export async function remembered(): Promise<readonly KeptFormulas[]> {
  const kept = await recall(KEY);
  return kept.ok && kept.value !== null ? (readKept(kept.value) ?? []) : [];
}

/** Turns every formula of ours into what it shows. */
export async function keep(app: App): Promise<void> {
  const found = await readFormulas(isOurFormula);
  if (!found.ok) return app.say(refusalSentence(found.refusal), "warning");
  const { kept, cells } = keepValues(found.value);
  if (kept.length === 0) return app.say(words.nothingToKeep);
  const text = keptText([...(await remembered()), ...kept]);
  const carried = await carryOut({ cells, kept: [{ key: KEY, text }] }, { overFilled: true });
  if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
  app.wrote(carried.receipt, words.whatKept);
  app.say(words.kept(found.value.length));
}

/** Puts the formulas back where their values still stand; the answer lists those that could not come back. */
export async function comeBack(app: App): Promise<readonly string[]> {
  const kept = await remembered();
  if (kept.length === 0) {
    app.say(words.nothingKept);
    return [];
  }
  const now = await readShown();
  if (!now.ok) {
    app.say(refusalSentence(now.refusal), "warning");
    return [];
  }
  const { cells, left } = bringBack(kept, now.value);
  const carried = await carryOut({ cells, kept: [{ key: KEY, text: null }] }, { overFilled: true });
  if (!carried.ok) {
    app.say(refusalSentence(carried.refusal), "warning");
    return [];
  }
  app.wrote(carried.receipt, words.whatBroughtBack);
  app.say(words.broughtBack(left.length), left.length > 0 ? "warning" : "said");
  return left.map(({ sheet, address, formula }) => words.leftAlone(sheet, address, formula));
}
