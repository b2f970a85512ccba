let last: Promise<unknown> = Promise.resolve();

/** One write after the other: what a second press checks must be what the first has left. */
export function inTurn<T>(work: () => Promise<T>): Promise<T> {
  const next = last.then(work);
  last = next.catch(() => undefined);
  return next;
}
