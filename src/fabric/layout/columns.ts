import type { Profile } from "./profile";

/**
 * The cloth in columns, each with the lengths that are taken, so that a piece also finds room in what earlier ones have
 * left open below.
 */
export interface Columns {
  readonly count: number;
  /** The lowest place for the profile with its left edge on a column, or `limit` when there is none below it. */
  lowest(profile: Profile, column: number, repeat: number, limit: number): number;
  put(profile: Profile, column: number, y: number): void;
  /** Takes the profile that was put there away again. */
  take(profile: Profile, column: number, y: number): void;
  clear(): void;
}

/** @param most how many profiles may lie in one column */
export function makeColumns(count: number, most: number): Columns {
  /** Of each column, in order: where taken lengths begin and end. */
  const starts = Array.from({ length: count }, () => new Int32Array(most));
  const ends = Array.from({ length: count }, () => new Int32Array(most));
  const taken = new Int32Array(count);
  return {
    count,
    lowest({ columns, low, high }, column, repeat, limit) {
      let y = 0;
      // Every column may push the profile up; it rests when a whole round has not.
      for (let quiet = 0, at = 0; quiet < columns; at = at + 1 === columns ? 0 : at + 1) {
        const begins = starts[column + at]!;
        const ends_ = ends[column + at]!;
        const here = taken[column + at]!;
        const before = y;
        for (let i = 0; i < here; i++) {
          if (begins[i]! >= y + high[at]!) break;
          if (ends_[i]! > y + low[at]!) y = ends_[i]! - low[at]!;
        }
        if (repeat > 0 && y % repeat !== 0) y += repeat - (y % repeat);
        if (y >= limit) return limit;
        // A push without snapping leaves this very column free.
        quiet = y === before ? quiet + 1 : repeat > 0 ? 0 : 1;
      }
      return y;
    },
    put({ columns, low, high }, column, y) {
      for (let at = 0; at < columns; at++) {
        const begins = starts[column + at]!;
        const ends_ = ends[column + at]!;
        let i = taken[column + at]!++;
        const begin = y + low[at]!;
        for (; i > 0 && begins[i - 1]! > begin; i--) {
          begins[i] = begins[i - 1]!;
          ends_[i] = ends_[i - 1]!;
        }
        begins[i] = begin;
        ends_[i] = y + high[at]!;
      }
    },
    take({ columns, low, high }, column, y) {
      for (let at = 0; at < columns; at++) {
        const begins = starts[column + at]!;
        const ends_ = ends[column + at]!;
        const last = --taken[column + at]!;
        let i = 0;
        while (begins[i] !== y + low[at]! || ends_[i] !== y + high[at]!) i++;
        for (; i < last; i++) {
          begins[i] = begins[i + 1]!;
          ends_[i] = ends_[i + 1]!;
        }
      }
    },
    clear: () => void taken.fill(0),
  };
}
