import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shareStash, type Want } from "../../src/project/share-stash";

/** Every way to give each want a piece or none, tried one by one. */
function mostSaved(wants: readonly Want[], lengths: readonly number[], at = 0, left = [...lengths]): number {
  const want = wants[at];
  if (!want) return 0;
  let best = mostSaved(wants, lengths, at + 1, left);
  for (const piece of want.pieces) {
    if (left[piece]! < want.needed) continue;
    left[piece] = left[piece]! - want.needed;
    best = Math.max(best, want.toBuy + mostSaved(wants, lengths, at + 1, left));
    left[piece] = left[piece]! + want.needed;
  }
  return best;
}

const cases = fc.integer({ min: 1, max: 4 }).chain((pieceCount) =>
  fc.record({
    // Eighths, so that sums are exact.
    lengths: fc.array(fc.integer({ min: 1, max: 40 }), { minLength: pieceCount, maxLength: pieceCount }),
    wants: fc.array(
      fc.record({
        needed: fc.integer({ min: 1, max: 30 }),
        extra: fc.integer({ min: 0, max: 3 }),
        pieces: fc.uniqueArray(fc.integer({ min: 0, max: pieceCount - 1 })),
      }),
      { maxLength: 6 },
    ),
  }),
);
const inEighths = ({
  lengths,
  wants,
}: {
  lengths: number[];
  wants: { needed: number; extra: number; pieces: number[] }[];
}) => ({
  lengths: lengths.map((length) => length / 8),
  wants: wants.map(({ needed, extra, pieces }): Want => ({ needed: needed / 8, toBuy: (needed + extra) / 8, pieces })),
});

describe("shareStash", () => {
  // Worked by hand. Pieces of 3 and 2 1/2; projects of 2 1/2, 1 1/2, 1 and 1/2, each to be bought as it is.
  // All four need 5 1/2 = 3 + 2 1/2, so all can be served only if both pieces are used up:
  // 2 1/2 fits the second piece whole (0 left), 1 1/2 + 1 + 1/2 = 3 fits the first whole.
  it("uses both pieces up where that leaves nothing to buy", () => {
    const wants = [2.5, 1.5, 1, 0.5].map((needed) => ({ needed, toBuy: needed, pieces: [0, 1] }));
    expect(shareStash(wants, [3, 2.5])).toEqual({ pieces: [1, 0, 0, 0], proved: true });
  });

  // Worked by hand. One piece of 3; projects of 2 (buys 2), 1 1/2 (buys 1 5/8) and 1 1/2 (buys 1 5/8).
  // Taking the largest first leaves 1 5/8 + 1 5/8 to buy; giving it to the two others leaves only 2.
  it("does not give a piece to the largest project when two smaller ones save more", () => {
    const wants = [
      { needed: 2, toBuy: 2, pieces: [0] },
      { needed: 1.5, toBuy: 1.625, pieces: [0] },
      { needed: 1.5, toBuy: 1.625, pieces: [0] },
    ];
    expect(shareStash(wants, [3]).pieces).toEqual([null, 0, 0]);
  });

  it("never adds pieces together", () => {
    expect(shareStash([{ needed: 2, toBuy: 2, pieces: [0, 1] }], [1.5, 1.5]).pieces).toEqual([null]);
  });

  it("takes a piece that is exactly long enough, binary dust or not", () => {
    const wants = [0.1, 0.2].map((needed) => ({ needed, toBuy: needed, pieces: [0] }));
    expect(shareStash(wants, [0.3]).pieces).toEqual([0, 0]);
  });

  it("keeps the long piece whole when a short one will do", () => {
    expect(shareStash([{ needed: 1, toBuy: 1, pieces: [0, 1] }], [5, 1.25]).pieces).toEqual([1]);
  });

  it("gives the first listed of two equal pieces, and the first listed of two equal projects", () => {
    expect(shareStash([{ needed: 1, toBuy: 1, pieces: [0, 1] }], [2, 2]).pieces).toEqual([0]);
    const twins = [1.5, 1.5].map((needed) => ({ needed, toBuy: needed, pieces: [0] }));
    expect(shareStash(twins, [2]).pieces).toEqual([0, null]);
  });

  it("has nothing to say of no projects", () => {
    expect(shareStash([], [2])).toEqual({ pieces: [], proved: true });
  });

  it("saves as much as trying every way does, within every piece", () => {
    fc.assert(
      fc.property(cases, (drawn) => {
        const { wants, lengths } = inEighths(drawn);
        const { pieces, proved } = shareStash(wants, lengths);
        const left = [...lengths];
        let saved = 0;
        pieces.forEach((piece, index) => {
          if (piece === null) return;
          expect(wants[index]!.pieces).toContain(piece);
          left[piece] = left[piece]! - wants[index]!.needed;
          saved += wants[index]!.toBuy;
        });
        expect(Math.min(0, ...left)).toBe(0);
        expect(saved).toBe(mostSaved(wants, lengths));
        expect(proved).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it("saves as much whatever the order of the projects", () => {
    fc.assert(
      fc.property(cases, (drawn) => {
        const { wants, lengths } = inEighths(drawn);
        const saving = (list: readonly Want[]): number =>
          shareStash(list, lengths).pieces.reduce<number>(
            (sum, piece, at) => sum + (piece === null ? 0 : list[at]!.toBuy),
            0,
          );
        expect(saving([...wants].reverse())).toBe(saving(wants));
      }),
    );
  });

  it("says so when there are too many ways to try, and still gives a valid sharing at once", () => {
    const wants = Array.from({ length: 60 }, (_, at) => ({
      needed: 1 + (at % 7) / 8,
      toBuy: 1 + (at % 5) / 4 + 1,
      pieces: Array.from({ length: 20 }, (_, piece) => piece).filter((piece) => (piece + at) % 3 !== 0),
    }));
    const lengths = Array.from({ length: 20 }, (_, piece) => 2 + (piece % 9) / 8);
    const before = performance.now();
    const { pieces, proved } = shareStash(wants, lengths);
    expect(performance.now() - before).toBeLessThan(2000);
    expect(proved).toBe(false);
    const left = [...lengths];
    pieces.forEach((piece, at) => piece !== null && (left[piece] = left[piece]! - wants[at]!.needed));
    expect(Math.min(...left)).toBeGreaterThanOrEqual(-1e-9);
  });

  it("throws on amounts of nothing and on pieces that aren't there", () => {
    expect(() => shareStash([{ needed: 0, toBuy: 1, pieces: [] }], [])).toThrow(RangeError);
    expect(() => shareStash([{ needed: 1, toBuy: 1, pieces: [3] }], [1])).toThrow(RangeError);
  });
});
