/** Asks about a sheet over which the pane was closed: nothing is removed before she has said so. */
import { paneWords, refusalSentence } from "../src/index";
import type { App } from "./app";
import { button, element } from "./dom";
import { readUnfinished, settleUnfinished, type Unfinished } from "./excel";

const words = paneWords.frame.unfinished;
/** A younger mark, in milliseconds, may be that of another window which is writing at this moment. */
const SETTLED = 180_000;

/** What the tests put in the place of the clock. */
export interface Clock {
  now(): number;
  later(work: () => void, milliseconds: number): void;
}
const CLOCK: Clock = { now: () => Date.now(), later: (work, milliseconds) => void setTimeout(work, milliseconds) };

/**
 * Puts a sentence with two buttons into `place` for every write that was never finished. A mark that may still be another
 * window's is looked at again after a while. `seen`: the marks that were there then already.
 */
export async function offerToRemove(
  app: App,
  place: HTMLElement,
  clock: Clock = CLOCK,
  seen: ReadonlySet<string> = new Set(),
): Promise<void> {
  const read = await readUnfinished();
  // A workbook that can't be read now says so at the first press of a button.
  if (!read.ok) return;
  const isOld = ({ key, since }: Unfinished) => seen.has(key) || clock.now() - since >= SETTLED;
  for (const one of read.value.filter(isOld)) {
    if (one.sheets.length > 0) place.append(notice(app, one));
    // She has removed them herself.
    else await settleUnfinished(one, false);
  }
  const young = read.value.filter((one) => !isOld(one)).map(({ key }) => key);
  if (young.length === 0) return;
  clock.later(() => void offerToRemove(app, place, clock, new Set(young)), SETTLED);
}

function notice(app: App, unfinished: Unfinished): HTMLElement {
  const names = unfinished.sheets.map(({ name }) => name);
  const settle = (remove: boolean) => async () => {
    const settled = await settleUnfinished(unfinished, remove);
    if (!settled.ok) return app.say(refusalSentence(settled.refusal), "warning");
    box.remove();
    app.say(remove ? words.removed(names) : words.left(names));
    // The pressed button is gone: the keyboard goes on from the sections.
    document.querySelector<HTMLElement>('[role="tab"][aria-selected="true"]')?.focus();
  };
  const press = (remove: boolean) => () => void app.run(settle(remove));
  const box = element(
    "div",
    { class: "warning-box" },
    element("p", { role: "alert" }, words.found(names)),
    element(
      "div",
      { class: "buttons" },
      button(words.leave, press(false), { class: "main" }),
      button(words.remove(names.length), press(true)),
    ),
  );
  return box;
}
