/** A small generator of whole numbers: the same seed gives the same row on every machine. */
export interface Random {
  /** The next whole number from 0 up to but not including `below`. */
  next(below: number): number;
}

/**
 * Shifts and additions of 32-bit whole numbers only.
 *
 * Source: xorshift with the shifts 13, 17 and 5: G. Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8 (2003).
 *
 * @example seededRandom(1).next(10) === seededRandom(1).next(10) //=> true
 */
export function seededRandom(seed: number): Random {
  // Neighbouring seeds are spread apart; the state must never be 0.
  let state = Math.imul(seed | 0, 0x9e3779b1) ^ 0x5f356495 || 1;
  const next = (below: number): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
  for (let i = 0; i < 8; i++) next(1);
  return { next };
}
