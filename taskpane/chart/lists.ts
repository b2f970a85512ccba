/** A list with one item put in another's place. */
export const replaced = <T>(list: readonly T[], at: number, item: T): T[] =>
  list.map((old, index) => (index === at ? item : old));

/** A list without one item. */
export const without = <T>(list: readonly T[], at: number): T[] => list.filter((_, index) => index !== at);
