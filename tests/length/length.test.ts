import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  clean,
  clothUnitOf,
  cm,
  convert,
  formatFraction,
  formatLength,
  inches,
  inUnit,
  lengthInto,
  metres,
  readLength,
  roundUp,
  sameFigure,
  smallUnitOf,
  yards,
} from "../../src/length";

/** Source: Addendum (Jan 1960) to NBS Circular 572, US National Bureau of Standards, 1960: 1 yd = 0.9144 m, 1 in = 25.4 mm. */
describe("inUnit", () => {
  test("converts by the 1959 yard and inch", () => {
    expect(inUnit(yards(1), "m")).toBe(0.9144);
    expect(inUnit(inches(1), "cm")).toBe(2.54);
    expect(inUnit(yards(2.375), "m")).toBeCloseTo(2.1717, 12);
    expect(inUnit(metres(1), "cm")).toBe(100);
    expect(inUnit(yards(1), "in")).toBe(36);
  });
  test("leaves a length in its own unit untouched", () => {
    fc.assert(fc.property(fc.double({ noNaN: true }), (value) => Object.is(inUnit(cm(value), "cm"), value)));
  });
  test("comes back within 1e-12 from a round trip", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        (value) => Math.abs(convert(convert(value, "in", "m"), "m", "in") / value - 1) < 1e-12,
      ),
    );
  });
});

describe("roundUp", () => {
  /** Pairs printed on envelopes (read): metres are yards converted and rounded up to 0.1 m. */
  test.each([
    [1.25, 1.2],
    [0.5, 0.5],
    [1, 1],
    [9.5, 8.7],
    [2, 1.9],
  ])("turns %d yd into %d m", (yd, m) => {
    expect(roundUp(convert(yd, "yd", "m"), 0.1)).toEqual({ ok: true, value: m });
  });
  test("does not buy a step for binary dust", () => {
    expect(roundUp(0.1 + 0.2, 0.1)).toEqual({ ok: true, value: 0.3 });
    expect(roundUp(0.3, 0.1)).toEqual({ ok: true, value: 0.3 });
    expect(roundUp(1.1, 0.1)).toEqual({ ok: true, value: 1.1 });
  });
  test("never buys less, nor a whole step more", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 200, noNaN: true }),
        fc.constantFrom(0.125, 0.1, 0.25, 0.05, 1 / 3, 1),
        (length, step) => {
          const bought = roundUp(length, step);
          return bought.ok && bought.value >= length - 1e-6 && bought.value < length + step;
        },
      ),
    );
  });
  test.each([0, -0.1, NaN, Infinity])("refuses the step %d", (step) =>
    expect(roundUp(1, step)).toMatchObject({ ok: false, problem: { code: "badStep" } }),
  );
});

describe("roundUp, its bounds", () => {
  test("throws for a length that is no number: a caller's mistake", () => {
    expect(() => roundUp(NaN, 0.1)).toThrow(new RangeError("roundUp wants a finite length"));
    expect(() => roundUp(Infinity, 0.1)).toThrow(RangeError);
  });
  test("refuses a step so small that the steps can't be counted", () => {
    expect(roundUp(1e300, 1e-300)).toEqual({ ok: false, problem: { code: "badStep", details: { text: "1e-300" } } });
  });
  test("goes toward zero below it, and never to -0", () => {
    expect(roundUp(-0.3, 0.25)).toEqual({ ok: true, value: -0.25 });
    expect(roundUp(-0.2, 0.25)).toEqual({ ok: true, value: 0 });
    expect(roundUp(0, 0.25)).toEqual({ ok: true, value: 0 });
  });
  test("rounds long lengths of fine steps by their own dust, and a real overhang up", () => {
    // 123456.7 is 1,234,567 tenths but for dust.
    expect(roundUp(123456.7, 0.1)).toEqual({ ok: true, value: 123456.7 });
    expect(roundUp(2.0001, 0.125)).toEqual({ ok: true, value: 2.125 });
  });
});

describe("sameFigure and clean", () => {
  test("count figures within 1e-9 as one, that much apart too", () => {
    expect(sameFigure(0.1 + 0.2, 0.3)).toBe(true);
    expect(sameFigure(0, 1e-9)).toBe(true);
    expect(sameFigure(0, 1.1e-9)).toBe(false);
    expect(sameFigure(2, 1)).toBe(false);
    expect(clean(3 * 0.1)).toBe(0.3);
    expect(clean(1.234567890123)).toBe(1.23456789012);
  });
});

describe("formatFraction", () => {
  test("refuses what is no number", () => {
    expect(formatFraction(Infinity)).toEqual({
      ok: false,
      problem: { code: "notANumber", details: { text: "Infinity", wanted: "a number" } },
    });
    expect(formatFraction(1, 2.5)).toEqual({
      ok: false,
      problem: { code: "badDenominator", details: { text: "2.5" } },
    });
    expect(formatFraction(2.5)).toEqual({ ok: true, value: "2 1/2" });
    expect(formatFraction(0.001, 1000)).toEqual({ ok: true, value: "1/1000" });
    expect(formatFraction(2.6, 1)).toEqual({ ok: true, value: "3" });
  });
  test.each([
    [2.375, 8, "2 3/8"],
    [0, 8, "0"],
    [0.0625, 8, "1/8"],
    [2.99, 8, "3"],
    [-0.5, 8, "-1/2"],
    [-1.5, 8, "-1 1/2"],
    [0.3, 16, "5/16"],
    [5, 8, "5"],
    [1 / 3, 3, "1/3"],
  ])("writes %d in %dths as %s", (value, denominator, text) => {
    expect(formatFraction(value, denominator)).toEqual({ ok: true, value: text });
  });
  test("sends a tie upward", () => {
    expect(formatFraction(0.5625, 8)).toEqual({ ok: true, value: "5/8" });
    expect(formatFraction(-0.0625, 8)).toEqual({ ok: true, value: "0" });
  });
  test.each([0, -8, 2.5, 1001, NaN])("refuses the denominator %d", (denominator) =>
    expect(formatFraction(1, denominator)).toMatchObject({ ok: false }),
  );
  test("is read back as the same figure", () => {
    fc.assert(
      fc.property(fc.integer({ min: -4000, max: 4000 }), fc.constantFrom(2, 4, 8, 16, 32), (parts, denominator) => {
        const text = formatFraction(parts / denominator, denominator);
        const back = text.ok && readLength(text.value);
        return back && back.ok && Math.abs(back.value.value - parts / denominator) < 1e-12;
      }),
    );
  });
});

describe("formatLength", () => {
  test.each([
    [30.5, "in", "30 1/2 in"],
    [2.3, "in", "2.3 in"],
    [77.5, "cm", "77.5 cm"],
    [2.1717, "m", "2.17 m"],
    [92, null, "92"],
    [2.375, "yd", "2 3/8 yd"],
    [0.0625, "in", "1/16 in"],
    [2.3333, "yd", "2.33 yd"],
    [-1.5, "in", "-1 1/2 in"],
    [0, "in", "0 in"],
    [2.5, "m", "2.5 m"],
    [30.5, null, "30.5"],
    [Infinity, "in", "Infinity in"],
  ] as const)("shows %d %s as %s", (value, unit, text) => expect(formatLength(value, unit)).toBe(text));
});

describe("lengthInto", () => {
  test("converts what names its unit", () => {
    expect(lengthInto({ value: 2.54, unit: "cm" }, "in")).toBe(1);
  });
  test("leaves a bare number, and one for an unknown unit, as it is", () => {
    expect(lengthInto({ value: 7, unit: null }, "in")).toBe(7);
    expect(lengthInto({ value: 7, unit: "cm" }, null)).toBe(7);
    expect(lengthInto({ value: 7, unit: "cm" }, undefined)).toBe(7);
  });
});

describe("smallUnitOf and clothUnitOf", () => {
  test("pair inches with yards and centimetres with metres", () => {
    expect((["in", "yd", "cm", "m"] as const).map(smallUnitOf)).toEqual(["in", "in", "cm", "cm"]);
    expect((["in", "yd", "cm", "m"] as const).map(clothUnitOf)).toEqual(["yd", "yd", "m", "m"]);
  });
});
