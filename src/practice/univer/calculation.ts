/**
 * Says when Univer's formulas have caught up.
 *
 * Univer collects changes for about 100 ms before it starts to calculate, and calculates asynchronously. Its own
 * `onCalculationResultApplied()` waits for the calculation that is running *now*, which may be an older one, or 500 ms
 * for one that never comes. So we note for ourselves, by Univer's own rule, whether a change is still waiting.
 */
import type { ICommandInfo } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type {} from "@univerjs/sheets-formula/facade";
import type { UniverHandles } from "./engine";

const START = "formula.mutation.set-formula-calculation-start";
const SET_VALUES = "sheet.mutation.set-range-values";
const STYLE_ONLY = new Set([
  "sheet.command.set-style",
  "sheet.command.set-border",
  "sheet.command.clear-selection-format",
]);
/** Univer starts 100 ms after the last change; if nothing has come by then, nothing will. */
const START_LIMIT = 1000;
const CALCULATION_LIMIT = 60_000;

type Command = Readonly<ICommandInfo>;
interface CommandOptions {
  readonly onlyLocal?: boolean;
}

export class Calculation {
  #waiting = false;
  readonly #started: (() => void)[] = [];
  #applied: Promise<void> = Promise.resolve();
  readonly #api: FUniver;

  constructor({ univer, api, engine }: UniverHandles) {
    this.#api = api;
    const rules = univer.__getInjector().get(engine.IActiveDirtyManagerService);
    api.onCommandExecuted((command: Command, options?: CommandOptions) => {
      if (command.id === START) this.#start();
      else if (rules.get(command.id) && !isIgnored(command, options)) this.#waiting = true;
    });
  }

  get idle(): boolean {
    return !this.#waiting;
  }

  /** Resolves when nothing is waiting and the last calculation has been written into the cells. */
  async settled(): Promise<void> {
    for (let seen: Promise<void> | undefined; this.#waiting || seen !== this.#applied;) {
      if (this.#waiting) await this.#nextStart();
      seen = this.#applied;
      await seen;
    }
  }

  #start() {
    this.#waiting = false;
    this.#applied = this.#api.getFormula().onCalculationResultApplied(CALCULATION_LIMIT);
    this.#applied.catch(() => undefined); // settled() tells whoever asks
    for (const resolve of this.#started.splice(0)) resolve();
  }

  #nextStart(): Promise<void> {
    return new Promise((resolve) => {
      const timer = setTimeout(() => {
        this.#waiting = false;
        resolve();
      }, START_LIMIT);
      this.#started.push(() => {
        clearTimeout(timer);
        resolve();
      });
    });
  }
}

/** Univer starts no calculation for results of a calculation and for mere formatting. */
function isIgnored(command: Command, options?: CommandOptions): boolean {
  if (command.id !== SET_VALUES) return false;
  return options?.onlyLocal === true || STYLE_ONLY.has((command.params as { trigger?: string }).trigger ?? "");
}
