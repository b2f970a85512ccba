/** Runs a search in small slices, so that the pane stays awake, until it is finished, stopped, or its time is up. */
import type { LayoutSearch } from "../../src/index";

/** Shorter than a frame of the screen. */
const SLICE = 10;

export interface Improving {
  readonly done: Promise<void>;
  stop(): void;
}

/**
 * @param milliseconds how long it may go on
 * @param shown called after each slice with the share of the time that is over, from 0 to 1
 */
export function improve(search: LayoutSearch, milliseconds: number, shown: (share: number) => void): Improving {
  let stopped = false;
  const done = (async () => {
    const start = performance.now();
    // The time of a try is learnt from the first ones: pieces and outlines make it vary a hundredfold.
    let tries = 1;
    for (let over = 0; !stopped && !search.finished && over < milliseconds; over = performance.now() - start) {
      const begin = performance.now();
      search.run(tries);
      const took = performance.now() - begin;
      tries = took < SLICE / 2 ? tries * 2 : took > SLICE * 2 ? Math.max(1, Math.floor(tries / 2)) : tries;
      shown(Math.min(1, over / milliseconds));
      await new Promise((resolve) => setTimeout(resolve, 0));
    }
    shown(1);
  })();
  return { done, stop: () => (stopped = true) };
}
