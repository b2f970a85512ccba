import { describe, expect, test } from "vitest";
import fc from "fast-check";
import { buyLength, fraction, length, toMetres, toYards } from "../../functions/length";
import { BLANK, caller, column, errorCell, formattedCell, value } from "./call";

const LENGTH = caller("LENGTH", length, 3);
const TOYARDS = caller("TOYARDS", toYards, 2);
const TOMETRES = caller("TOMETRES", toMetres, 2);
const FRACTION = caller("FRACTION", fraction, 2);
const BUYLENGTH = caller("BUYLENGTH", buyLength, 2);
const DATE = "Excel has made a date of this (46577): type 0 7/8, or 6 to 12.";

describe("LENGTH", () => {
  // 1 yd = 0.9144 m, 1 in = 25.4 mm: Addendum to NBS Circular 572, US National Bureau of Standards, 1960.
  test("gives the number in the unit that is wanted", async () => {
    expect(await LENGTH(["2 3/8 yd", "m"])).toBe(2.1717);
    expect(await LENGTH(['30½"', "cm"])).toBe(77.47);
    expect(await LENGTH(["77,5 cm", "in"])).toBeCloseTo(30.511811, 6);
  });
  test("keeps the unit of the text when none is wanted", async () => {
    expect(await LENGTH(['30½"'])).toBe(30.5);
    expect(await LENGTH(["2 3/8 yd"])).toBe(2.375);
  });
  test("takes a bare number to be in the wanted unit, or in unitIfNone", async () => {
    expect(await LENGTH([30.5, "cm"])).toBe(30.5);
    expect(await LENGTH(["30 1/2", "cm", "in"])).toBe(77.47);
    expect(await LENGTH([30.5, undefined, "in"])).toBe(30.5);
    expect(await LENGTH(["12 cm", "cm", "in"])).toBe(12);
    expect(await LENGTH([2, "mm", "cm"])).toBe(20);
  });
  test("reads a cell with a number format, and a nought", async () => {
    expect(await LENGTH([formattedCell(30.5, "# ?/?"), "in"])).toBe(30.5);
    expect(await LENGTH([0, "in"])).toBe(0);
  });
  test("says what it can't read", async () => {
    expect(await LENGTH(["about 30"])).toEqual(
      value('"about 30" can\'t be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.'),
    );
    expect(await LENGTH([30, "ells"])).toEqual(value('"ells" is not a unit known here. Write in, cm, yd or m.'));
    expect(await LENGTH([-3, "in"])).toEqual(value("A length can't be below zero, and this is -3."));
    expect(await LENGTH([46577, "in"])).toEqual(value(DATE));
    expect(await LENGTH([true])).toEqual(value('"true" is not a length.'));
    for (const text of ["=1+1", "+3", "@bust", "-cm"]) expect(await LENGTH([text])).not.toBe(0);
  });
  test("is an error for a blank cell alone", async () => {
    for (const blank of [BLANK, ""])
      expect(await LENGTH([blank])).toEqual(value("This is blank: a length is needed here."));
  });
  test("answers a column in its shape, each element for itself", async () => {
    const cells = column("1 yd", BLANK, "much", errorCell("#DIV/0!"), 2);
    expect(await LENGTH([cells, "m", "m"])).toEqual([
      [0.9144],
      [""],
      [value('"much" can\'t be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.')],
      [{ error: "#DIV/0!" }],
      [2],
    ]);
    expect(await LENGTH([[["1 in", "2 in"]], "in"])).toEqual([[1, 2]]);
    expect(await LENGTH([column("1 yd", "1 m"), column("in", "cm")])).toEqual([[36], [100]]);
  });
  test("wants ranges of one shape", async () => {
    expect(await LENGTH([column(1, 2), column("in", "cm", "m")])).toEqual(
      value(
        "These ranges don't go together: one is 2 × 1 cells and one is 3 × 1. Give ranges of the same shape, or single cells.",
      ),
    );
  });
});

describe("TOYARDS", () => {
  test("is exact without a step and rounds up with one", async () => {
    expect(await TOYARDS([0.9144])).toBe(1);
    expect(await TOYARDS([2.1, 0.125])).toBe(2.375);
    expect(await TOYARDS([2.1, "1/8"])).toBe(2.375);
  });
  test("leaves a nought and whole steps alone", async () => {
    expect(await TOYARDS([0, 0.125])).toBe(0);
    expect(await TOYARDS(["2 yd", 0.125])).toBe(2);
    expect(await TOYARDS([2.1, BLANK], 0)).toBeCloseTo(2.296588, 6);
  });
  test("refuses steps and lengths that can't be", async () => {
    expect(await TOYARDS([2.1, -1])).toEqual(value("A step can't be below zero, and this is -1."));
    expect(await TOYARDS([-2.1])).toEqual(value("A length in metres can't be below zero, and this is -2.1."));
    expect(await TOYARDS(["x"])).toMatchObject({ error: "#VALUE!" });
    expect(await TOYARDS([2, 46577])).toEqual(value(DATE));
    expect(await TOYARDS([BLANK])).toEqual(value("This is blank: a length in metres is needed here."));
  });
  test("answers a column", async () => {
    expect(await TOYARDS([column(0.9144, "", "1.8288 m")])).toEqual([[1], [""], [2]]);
  });
});

describe("TOMETRES", () => {
  // The pairs that envelopes print, rounded up to 0.1 m (tests/figures has none of its own: 1 1/4 yd 1.2 m, 1/2 yd 0.5 m, 9 1/2 yd 8.7 m, read).
  test("gives the metres that envelopes print", async () => {
    expect(await TOMETRES([2.375, 0.1])).toBe(2.2);
    expect(await TOMETRES([1.25, 0.1])).toBe(1.2);
    expect(await TOMETRES([0.5, 0.1])).toBe(0.5);
    expect(await TOMETRES([9.5, 0.1])).toBe(8.7);
    expect(await TOMETRES([2, 0.1])).toBe(1.9);
    expect(await TOMETRES([1])).toBe(0.9144);
  });
  test("reads text, refuses a blank", async () => {
    expect(await TOMETRES(["2 3/8"])).toBe(2.1717);
    expect(await TOMETRES([""])).toEqual(value("This is blank: a length in yards is needed here."));
  });
});

describe("FRACTION", () => {
  test("gives the nearest eighth, ties upward", async () => {
    expect(await FRACTION([2.375])).toBe("2 3/8");
    expect(await FRACTION([2.3125])).toBe("2 3/8");
    expect(await FRACTION([2.3125, 16])).toBe("2 5/16");
    expect(await FRACTION([0.999])).toBe("1");
  });
  test("keeps a sign and a nought, as differences have them", async () => {
    expect(await FRACTION([-0.5])).toBe("-1/2");
    expect(await FRACTION([0])).toBe("0");
    expect(await FRACTION([2.25, BLANK], 0)).toBe("2 1/4");
  });
  test("refuses what is no number or no denominator", async () => {
    expect(await FRACTION(["two"])).toMatchObject({ error: "#VALUE!" });
    expect(await FRACTION([1, 2.5])).toEqual(
      value('"2.5" can\'t be a denominator. Write a whole number from 1 to 1000, such as 8 or 16.'),
    );
    expect(await FRACTION([""])).toEqual(value("This is blank: a number is needed here."));
  });
  test("answers a column", async () => {
    expect(await FRACTION([column(1.5, "2,25", "")])).toEqual([["1 1/2"], ["2 1/4"], [""]]);
  });
});

describe("BUYLENGTH", () => {
  test("rounds up, never a step too many", async () => {
    expect(await BUYLENGTH([0.3, 0.1])).toBe(0.3);
    expect(await BUYLENGTH([0.1 + 0.2, 0.1])).toBe(0.3);
    expect(await BUYLENGTH([2.01, 0.125])).toBe(2.125);
    expect(await BUYLENGTH([3.22, 0.5])).toBe(3.5);
  });
  test("answers in the unit that the step names", async () => {
    expect(await BUYLENGTH(["2 yd", "0.1 m"])).toBe(1.9);
  });
  test("needs both", async () => {
    expect(await BUYLENGTH([2, BLANK])).toEqual(value("This is blank: a step, such as 0.125, is needed here."));
    expect(await BUYLENGTH([BLANK, 0.1])).toEqual(value("This is blank: a length is needed here."));
    expect(await BUYLENGTH([2, BLANK], 0)).toMatchObject({ error: "#VALUE!" });
    expect(await BUYLENGTH([2, "0 m"])).toMatchObject({ error: "#VALUE!" });
  });
  test("answers a column, but says when the one step is blank", async () => {
    expect(await BUYLENGTH([column(1.01, BLANK, 2), 0.1])).toEqual([[1.1], [""], [2]]);
    expect(await BUYLENGTH([column(1.01, 2), BLANK])).toEqual([
      [value("This is blank: a step, such as 0.125, is needed here.")],
      [value("This is blank: a step, such as 0.125, is needed here.")],
    ]);
  });
  test("never buys less, nor a whole step more", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4000 }), fc.constantFrom(0.125, 0.1, 0.25, 0.5, 1), (hundredths, step) => {
        const bought = buyLength([[hundredths / 100]], [[step]]) as unknown as number;
        expect(bought).toBeGreaterThanOrEqual(hundredths / 100 - 1e-9);
        expect(bought - hundredths / 100).toBeLessThan(step);
      }),
    );
  });
});
