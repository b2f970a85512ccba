/** Total ease and what it is made of, all in one unit, signed. */
export interface EaseParts {
  /** Finished garment less body. */
  readonly total: number;
  /** What she needs to move: what is left of the total when the design ease is taken off. */
  readonly wearing: number;
  /** What the designer added for the look: finished less the pattern's own body figure less the least ease. */
  readonly design: number;
}

/**
 * Wearing and design ease told apart; total = wearing + design. Below zero, the design ease says that the pattern is
 * drafted closer than the least ease; the wearing ease then is what she would have at the pattern's own body figure, less
 * or more by what she is larger or smaller.
 *
 * Common practice, no source.
 *
 * @param patternBody the body figure that the pattern prints for the size
 * @example easeParts({ finished: 39, body: 35, patternBody: 36, least: 2.5 }) //=> { total: 4, wearing: 3.5, design: 0.5 }
 */
export function easeParts(figures: {
  readonly finished: number;
  readonly body: number;
  readonly patternBody: number;
  readonly least: number;
}): EaseParts {
  const total = figures.finished - figures.body;
  const design = figures.finished - figures.patternBody - figures.least;
  return { total, wearing: total - design, design };
}
