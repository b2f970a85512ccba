/** Whether steps are being taken back or done again at the moment: cells and tables do not fit each other then. */
import type { UniverBook } from "./workbook";

const TRAVEL = new Set(["univer.command.undo", "univer.command.redo"]);

export class Undoing {
  #now = false;
  readonly #ended: (() => void)[] = [];

  constructor({ api }: Pick<UniverBook, "api">) {
    api.onBeforeCommandExecute(({ id }) => {
      if (TRAVEL.has(id)) this.#now = true;
    });
    api.onCommandExecuted(({ id }) => {
      if (!TRAVEL.has(id)) return;
      this.#now = false;
      for (const work of this.#ended) work();
    });
  }
  get now(): boolean {
    return this.#now;
  }
  /** Carries out something during which cells and tables do not fit each other either. */
  pause(work: () => void): void {
    const before = this.#now;
    this.#now = true;
    try {
      work();
    } finally {
      this.#now = before;
    }
  }
  whenEnded(work: () => void): void {
    this.#ended.push(work);
  }
}
