import fc from "fast-check";
import { describe, expect, it } from "vitest";
import examples from "../figures/size-choice-examples.json";
import { bustAdjust } from "../../src/fit/bust-adjust";
import { chartOf, got, missesChart, said } from "./bodies";

describe("bustAdjust", () => {
  // Common practice on the misses chart; the second is worked example E4 of a teaching page (read).
  it("gives the size by the high bust and the adjustment", () => {
    expect(got(bustAdjust(missesChart, 40, 36))).toMatchObject({
      size: "16",
      patternBust: 38,
      adjustment: 2,
      half: 1,
      patternCup: "D",
    });
    expect(got(bustAdjust(missesChart, 38, 34))).toMatchObject({
      size: "14",
      patternBust: 36,
      adjustment: 2,
      half: 1,
      patternCup: "D",
    });
  });

  it("agrees with the printed example of a full-bust adjustment", () => {
    const { in: given, out } = examples.examples.find(({ id }) => id === "E4") as unknown as {
      in: { high_bust: number; bust: number; chart_high_bust: number; chart_bust: number };
      out: { fba_in: number; cup: string };
    };
    const chart = chartOf("body", "in", ["M"], { highBust: [given.chart_high_bust], bust: [given.chart_bust] });
    expect(got(bustAdjust(chart, given.bust, given.high_bust))).toMatchObject({
      adjustment: out.fba_in,
      patternCup: out.cup,
    });
  });

  // Both ways of using the high bust are in print (read); with high bust 32 they give size 10 and size 12: our own working.
  it("reads the high bust in its own row or in the bust's", () => {
    expect(got(bustAdjust(missesChart, 36, 32)).size).toBe("12");
    expect(got(bustAdjust(missesChart, 36, 32, { chartRow: "highbust" })).size).toBe("12");
    expect(got(bustAdjust(missesChart, 36, 32, { chartRow: "bust", draftedDifference: 0 }))).toMatchObject({
      size: "10",
      adjustment: 3.5,
    });
    expect(got(bustAdjust(missesChart, 36, 32, { chartRow: "bust" })).size).toBe("12");
    expect(got(bustAdjust(missesChart, 36, 33, { chartRow: "bust", draftedDifference: 3 })).size).toBe("14");
  });

  it("reads it in the bust row where the chart has no other", () => {
    const chart = chartOf("body", "in", missesChart.sizes, { bust: missesChart.rows[1]!.values });
    expect(got(bustAdjust(chart, 40, 36))).toMatchObject({ size: "16", adjustment: 2 });
    expect(said(bustAdjust(chart, 40, 36, { chartRow: "highbust" }))).toMatch(/high bust/);
  });

  // E-372 Principles of Pattern Alteration, a US Cooperative Extension service, 2006 (read): from 2 in by the high bust.
  it("lets the bust decide below a threshold, the high bust at it", () => {
    expect(got(bustAdjust(missesChart, 37.9, 36, { threshold: 2 }))).toMatchObject({
      decidedBy: "bust",
      size: "16",
      adjustment: 0,
    });
    expect(got(bustAdjust(missesChart, 38, 36, { threshold: 2 }))).toMatchObject({ decidedBy: "highBust", size: "16" });
    expect(got(bustAdjust(missesChart, 37.9, 36)).decidedBy).toBe("highBust");
    expect(got(bustAdjust(missesChart, 37.9, 36, { threshold: 2 })).note).toMatch(
      /^By the bust: 1.9 in .* below the threshold of 2 in/,
    );
  });

  it("is negative for a small bust", () => {
    expect(got(bustAdjust(missesChart, 37, 36))).toMatchObject({ adjustment: -1, half: -0.5, patternCup: "A" });
    expect(got(bustAdjust(missesChart, 37, 36)).note).toMatch(
      /Small-bust adjustment: take out 1\/2 inch on the half front/,
    );
  });

  // Pattern cup by the difference in inches: 1 A, 2 B, 3 C, 4 D, 5 DD, 6 DDD: a cup-size reference (read).
  it.each([
    [0.4, "below A"],
    [1, "A"],
    [2, "B"],
    [2.5, "C"],
    [3, "C"],
    [4, "D"],
    [5, "DD"],
    [6, "DDD"],
    [7, "above DDD"],
  ])("calls %d in of difference %s", (difference, cup) => {
    expect(got(bustAdjust(missesChart, 36 + difference, 36)).patternCup).toBe(cup);
  });

  it("works in centimetres", () => {
    const rows = Object.fromEntries(
      missesChart.rows.map(({ place, values }) => [place, values.map((value) => (value as number) * 2.54)]),
    );
    const chart = chartOf("body", "cm", missesChart.sizes, rows);
    const found = got(bustAdjust(chart, 101.6, 91.44));
    expect(found).toMatchObject({ size: "16", patternCup: "D" });
    expect(found.adjustment).toBeCloseTo(5.08, 9);
    expect(got(bustAdjust(chartOf("body", "cm", missesChart.sizes, { bust: rows.bust! }), 101.6, 91.44)).size).toBe(
      "16",
    );
  });

  it("asks whether the two were swapped", () => {
    expect(got(bustAdjust(missesChart, 36, 38)).note).toMatch(/were the two swapped\?/);
  });

  it("says what decided, in which row it read, and what to do on the half front piece", () => {
    const note = (...args: [number, number, Parameters<typeof bustAdjust>[3]?]) =>
      got(bustAdjust(missesChart, ...args)).note;
    const row = "Read in the chart's high bust row, closest size.";
    expect(note(40, 36)).toBe(
      `The high bust decides. ${row} Full-bust adjustment: add 1 inch on the half front piece.`,
    );
    expect(note(40, 36, { threshold: 2 })).toBe(
      `The high bust decides, from 2 in difference. ${row} Full-bust adjustment: add 1 inch on the half front piece.`,
    );
    expect(note(40, 36, { chartRow: "bust" })).toBe(
      "The high bust decides. Read in the bust row with 2 in added for the drafted difference, closest size. Full-bust adjustment: add 1 inch on the half front piece.",
    );
    expect(note(38, 36)).toBe(`The high bust decides. ${row} The bust needs no adjustment.`);
    // As large above as over the bust: a flat chest, no swapped figures.
    expect(note(36, 36)).toBe(
      `The high bust decides. ${row} Small-bust adjustment: take out 1 inch on the half front piece.`,
    );
  });

  it("adds to a chart without a unit only what is said, and refuses a bust that isn't printed", () => {
    const chart = chartOf("body", null, missesChart.sizes, { bust: missesChart.rows[1]!.values });
    expect(said(bustAdjust(chart, 40, 36))).toBe(
      "This chart doesn't say inches or centimetres, so 2 in can't be compared with it: add a Unit column.",
    );
    expect(got(bustAdjust(chart, 40, 36, { draftedDifference: 2 }))).toMatchObject({ size: "16", adjustment: 2 });
    const gap = chartOf("body", "in", ["14", "16"], { highBust: [34, 36], bust: [36, null] });
    expect(said(bustAdjust(gap, 40, 36))).toBe(
      "The chart has no figure for bust in size 16, and the answer hangs on it: fill it in.",
    );
  });

  it("names no cup where the chart doesn't say inches or centimetres, and adds no inches to it", () => {
    expect(got(bustAdjust({ ...missesChart, unit: null }, 40, 36))).toMatchObject({ size: "16", patternCup: "" });
    expect(said(bustAdjust({ ...missesChart, unit: null }, 40, 36, { chartRow: "bust" }))).toMatch(
      /doesn't say inches/,
    );
  });

  it("refuses a high bust off the chart and centimetres against inches", () => {
    expect(said(bustAdjust(missesChart, 60, 56))).toMatch(/12 in above this chart/);
    expect(said(bustAdjust(missesChart, 102, 91))).toMatch(/cm against inches/);
  });

  it("makes the pattern's bust her own, half on each half of the front", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 29, max: 44, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (high, difference) => {
          const { adjustment, half, patternBust } = got(bustAdjust(missesChart, high + difference, high));
          expect(patternBust + adjustment).toBeCloseTo(high + difference, 8);
          expect(half * 2).toBe(adjustment);
        },
      ),
    );
  });
});
