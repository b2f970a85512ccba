import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { extraYardage } from "../../src/fabric/extra-yardage";
import { roundUp } from "../../src/length";
import { sentence } from "../../src/words";

const amount = (...given: Parameters<typeof extraYardage>): number => {
  const result = extraYardage(...given);
  if (!result.ok) throw new Error(sentence(result.problem));
  return result.value;
};
const refusal = (...given: Parameters<typeof extraYardage>): string => {
  const result = extraYardage(...given);
  return result.ok ? `answered ${result.value}` : sentence(result.problem);
};
const bought = (length: number, step: number): number => {
  const result = roundUp(length, step);
  return result.ok ? result.value : NaN;
};

describe("extraYardage", () => {
  // Arithmetic, by hand: 2 7/8 yd = 103.5 in; + 3 × 4.25 = 116.25 in; / 0.95 = 122.368 in = 3.399 yd.
  it("adds a repeat for each length, then what the wash takes", () => {
    const yards = amount(2.875, "yd", { shrinkage: 0.05, repeat: 4.25, lengths: 3 });
    expect(yards).toBeCloseTo(3.399123, 6);
    expect(bought(yards, 0.125)).toBe(3.5);
  });

  // Source: plaid examples read on a public sewing page: repeat, pieces stacked, extra inches.
  it.each([
    [1.25, 2, 2.5],
    [4.25, 2, 8.5],
    [6, 3, 18],
  ])("adds %d in × %d stacked pieces = %d in", (repeat, lengths, extra) => {
    expect(amount(0, "yd", { repeat, lengths })).toBeCloseTo(extra / 36, 9);
    expect(amount(1, "yd", { repeat, lengths }) - 1).toBeCloseTo(extra / 36, 9);
  });

  // Source: length estimate read on a public page: 52 + 52 + 12 in = 116 in = 3.22 yd. Its author buys by the half yard.
  it("leaves rounding to the shop's step: 116 in is 3 1/4 yd by eighths, 3 1/2 by halves", () => {
    const yards = amount(104 / 36, "yd", { added: 12 });
    expect(yards).toBeCloseTo(3.22, 2);
    expect(bought(yards, 0.125)).toBe(3.25);
    expect(bought(yards, 0.5)).toBe(3.5);
  });

  // Arithmetic: need / (1 − s): 3 / 0.95, 4 / 0.9, 2 / 0.95.
  it.each([
    [3, "yd", 0.05, 3.157895, 0.125, 3.25],
    [4, "yd", 0.1, 4.444444, 0.125, 4.5],
    [2, "m", 0.05, 2.105263, 0.1, 2.2],
  ] as const)("divides %d %s by what a shrinkage of %d leaves", (need, unit, shrinkage, exact, step, buy) => {
    expect(amount(need, unit, { shrinkage })).toBeCloseTo(exact, 6);
    expect(bought(amount(need, unit, { shrinkage }), step)).toBe(buy);
  });

  it("never lets inches of repeat meet metres unconverted", () => {
    expect(amount(2, "m", { repeat: 10, repeatUnit: "in", lengths: 2 })).toBeCloseTo(2.508, 9);
    expect(amount(2, "m", { repeat: 10, lengths: 2 })).toBeCloseTo(2.2, 9);
    expect(amount(2, "yd", { repeat: 9.144, repeatUnit: "cm" })).toBeCloseTo(2.1, 9);
  });

  it("counts a lengthened pattern for each length, a shortened one too", () => {
    expect(amount(2, "yd", { added: 1.5, lengths: 2 })).toBeCloseTo(2 + 3 / 36, 9);
    expect(amount(2, "yd", { added: -1.5, lengths: 2 })).toBeCloseTo(2 - 3 / 36, 9);
  });

  it("leaves the length alone when nothing is extra", () => {
    expect(amount(2.375, "yd")).toBe(2.375);
    expect(amount(0, "m")).toBe(0);
  });

  it("refuses a percentage without its sign, and what is below zero", () => {
    const said = "Shrinkage goes from 0 to 30%, and this is 5: write 5% for five percent.";
    expect(refusal(2, "yd", { shrinkage: 5 })).toBe(said);
    expect(refusal(2, "yd", { shrinkage: 0.31 })).toBe(
      "Shrinkage goes from 0 to 30%, and this is 0.31: write 5% for five percent.",
    );
    expect(amount(2.1, "yd", { shrinkage: 0.3 })).toBeCloseTo(3, 9);
    expect(refusal(2, "yd", { shrinkage: -0.05 })).toBe("Shrinkage can't be below zero, and this is -0.05.");
    expect(refusal(-2, "yd")).toBe("A length of fabric can't be below zero, and this is -2.");
    expect(refusal(2, "yd", { repeat: -4 })).toBe("A repeat can't be below zero, and this is -4.");
    expect(refusal(1, "yd", { added: -40 })).toBe("The length left can't be below zero, and this is -0.111111111111.");
    expect(refusal(45000, "yd")).toBe("Excel has made a date of this (45000): type 0 7/8, or 6 to 12.");
    expect(refusal(2, "yd", { lengths: -1 })).toBe("The number of lengths can't be below zero, and this is -1.");
    expect(refusal(2, "yd", { repeat: NaN })).toBe('"NaN" is not a number.');
    expect(refusal(2, "yd", { added: Infinity })).toBe('"Infinity" is not a number.');
    expect(amount(1, "yd", { added: -36 })).toBe(0);
  });

  it("never answers less than the length, and grows with each of its parts", () => {
    const tenths = (max: number) => fc.integer({ min: 0, max }).map((n) => n / 10);
    fc.assert(
      fc.property(
        tenths(100),
        tenths(3),
        tenths(200),
        fc.integer({ min: 0, max: 6 }),
        (length, wash, repeat, lengths) => {
          const shrinkage = Math.min(wash, 0.3);
          const extra = amount(length, "yd", { shrinkage, repeat, lengths });
          expect(extra).toBeGreaterThanOrEqual(length - 1e-9);
          expect(amount(length, "yd", { shrinkage, repeat, lengths: lengths + 1 })).toBeGreaterThanOrEqual(
            extra - 1e-9,
          );
        },
      ),
    );
  });
});
