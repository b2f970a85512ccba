/** What every section has at hand: saying something, asking something, and the last write to take back. */
import { paneWords, refusalSentence } from "../src/index";
import { button, element } from "./dom";
import { takeBack, type Receipt } from "./excel";

export type Tone = "said" | "warning";
export interface Answer {
  readonly value: string;
  readonly label: string;
  /** Comes first and answers Enter. */
  readonly main?: boolean;
}
export interface App {
  /** Shows a sentence and has it read out. */
  say(sentence: string, tone?: Tone): void;
  /** Asks in the pane; null when the question was put away. */
  ask(question: string, answers: readonly Answer[]): Promise<string | null>;
  /** Remembers a write, so that it can be taken back. */
  wrote(receipt: Receipt, what: string): void;
  /** Runs what a button does: shows that something is going on, and says so when our own code fails. */
  run(task: () => Promise<void>): Promise<void>;
}

interface Written {
  readonly receipt: Receipt;
  readonly what: string;
}
/** More steps than anyone wants back; each keeps the cells it wrote over. */
const REMEMBERED = 20;

/** The pane's foot: the last sentence and the button that takes the last write back. */
export function createApp(): { readonly app: App; readonly foot: HTMLElement } {
  const words = paneWords.frame;
  const status = element("p", { role: "status", class: "status" });
  const back = button("", () => void app.run(takeLastBack), { class: "quiet back", hidden: true });
  const foot = element("footer", {}, status, back);
  const written: Written[] = [];
  let isForgetful = false;

  const showBack = () => {
    const last = written.at(-1);
    back.hidden = !last;
    back.textContent = last ? words.takeBack(last.what) : "";
  };
  const takeLastBack = async () => {
    const last = written.at(-1);
    if (!last) return;
    let taken = await takeBack(last.receipt);
    if (!taken.ok && taken.refusal.code === "changedSince") {
      const answer = await app.ask(words.evenIfChanged(refusalSentence(taken.refusal)), [
        { value: "keep", label: words.keep, main: true },
        { value: "take", label: words.takeBackAnyway },
      ]);
      if (answer !== "take") return;
      taken = await takeBack(last.receipt, { evenIfChanged: true });
    }
    if (taken.ok || taken.refusal.code === "nothingToTakeBack") written.pop();
    showBack();
    const said = taken.ok ? words.takenBack(last.what) : refusalSentence(taken.refusal);
    // The button goes now, and she could think that everything has been taken back.
    const isEnd = isForgetful && written.length === 0;
    app.say(isEnd ? `${said} ${words.noMoreSteps}` : said, taken.ok ? "said" : "warning");
  };

  let slow: ReturnType<typeof setTimeout> | undefined;
  let isBusy = false;
  const work = () => {
    clearTimeout(slow);
    isBusy = true;
    document.body.setAttribute("aria-busy", "true");
    // Quick work says nothing in between.
    slow = setTimeout(() => app.say(words.working), 500);
  };
  /** Whether there was work. */
  const rest = (): boolean => {
    clearTimeout(slow);
    if (status.textContent === words.working) app.say("");
    document.body.removeAttribute("aria-busy");
    const wasBusy = isBusy;
    isBusy = false;
    return wasBusy;
  };

  const app: App = {
    say(sentence, tone = "said") {
      status.textContent = sentence;
      status.classList.toggle("warning", tone === "warning");
    },
    async ask(question, answers) {
      // It is her turn: nothing works meanwhile.
      const isWorking = rest();
      const answer = await askIn(foot, question, answers);
      if (isWorking) work();
      return answer;
    },
    wrote(receipt, what) {
      written.push({ receipt, what });
      if (written.length > REMEMBERED) {
        written.shift();
        isForgetful = true;
      }
      showBack();
    },
    async run(task) {
      work();
      try {
        await task();
      } catch (error) {
        console.error(error);
        app.say(words.failure(error instanceof Error ? error.message : String(error)), "warning");
      } finally {
        rest();
      }
    },
  };
  return { app, foot };
}

/** A question in a dialog of our own: alert and confirm don't exist inside Excel. */
function askIn(host: HTMLElement, question: string, answers: readonly Answer[]): Promise<string | null> {
  const id = "question";
  return new Promise((resolve) => {
    const dialog = element("dialog", { "aria-labelledby": id }, element("p", { id }, question));
    const row = element("div", { class: "buttons" });
    for (const answer of [...answers].sort((a, b) => Number(b.main ?? false) - Number(a.main ?? false))) {
      row.append(
        button(answer.label, () => dialog.close(answer.value), {
          class: answer.main ? "main" : undefined,
          autofocus: answer.main,
        }),
      );
    }
    dialog.append(row);
    dialog.addEventListener("close", () => {
      dialog.remove();
      resolve(dialog.returnValue || null);
    });
    host.append(dialog);
    dialog.showModal();
  });
}
