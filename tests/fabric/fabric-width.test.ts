import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fabricWidth, widthChange } from "../../src/fabric/fabric-width";
import { cm, inches, lengthIn } from "../../src/length";
import { sentence } from "../../src/words";

// Source: the printed chart of yardage by fabric width, reprinted on two public pages (96 cells, eighths of a yard).
const chart = readFileSync(new URL("../figures/fabric-width-eighths.csv", import.meta.url), "utf8")
  .split("\n")
  .filter((line) => /^\d/.test(line))
  .map((line) => line.split(",").map(Number));
const WIDTHS = [[35, 36], [39], [41], [44, 45], [50], [52, 54], [58, 60], [66]];
const amount = (...given: Parameters<typeof fabricWidth>): number => {
  const result = fabricWidth(...given);
  if (!result.ok) throw new Error(sentence(result.problem));
  return result.value;
};
const refusal = (...given: Parameters<typeof fabricWidth>): string => {
  const result = fabricWidth(...given);
  return result.ok ? `answered ${result.value}` : sentence(result.problem);
};

describe("fabricWidth", () => {
  it("gives every row and pair of the printed chart exactly", () => {
    let pairs = 0;
    for (const row of chart)
      for (const [i, from] of WIDTHS.entries())
        for (const [j, to] of WIDTHS.entries())
          for (const a of from)
            for (const b of to) {
              expect(amount(row[i]! / 8, a, b, { step: 0.125 }), `${row[i]} eighths from ${a} to ${b}`).toBe(
                row[j]! / 8,
              );
              pairs++;
            }
    expect(chart).toHaveLength(12);
    expect(pairs).toBe(12 * 12 * 12);
  });

  // Source: worked examples printed with the chart: 1 3/8 yd of 52-54 in is 2 yd of 35-36 in; 2 yd of 60 in is 2 3/4 yd
  // of 45 in. A third says 2 1/4 yd for 2 7/8 yd of 54 in on 60 in, but the page's own chart says 2 3/4.
  it("gives the printed worked examples, and the chart where the prose slipped", () => {
    expect(amount(1.375, 54, 36, { step: 0.125 })).toBe(2);
    expect(amount(2, 60, 45, { step: 0.125 })).toBe(2.75);
    expect(amount(2.875, 54, 60, { step: 0.125 })).toBe(2.75);
  });

  // Common practice, no source: the same area. 1.9 yd × 60 / 45 = 2.533; 2.2 × 72 / 60 = 2.64.
  it("takes the area between rows and for widths the chart doesn't have, rounded up", () => {
    expect(amount(1.9, 60, 45)).toBe(2.625);
    expect(amount(2.2, 72, 60)).toBe(2.75);
    expect(amount(2.2, 72, 60, { step: 0.25 })).toBe(2.75);
    expect(amount(2.2, 72, 60, { step: 0.5 })).toBe(3);
  });

  // 20 eighths on 36 in are 17 on 45 in (row 4 of the chart); 2.51 × 36 / 45 = 2.008 would be less.
  it("never gives less than the chart's nearest row below", () => {
    expect(widthChange(2.51, 36, 45)).toEqual({ ok: true, value: { length: 2.125, unit: "yd", rule: "chart below" } });
  });

  it("rounds a chart figure up to the shop's step", () => {
    expect(amount(2, 60, 45, { step: 0.25 })).toBe(2.75);
    expect(amount(2, 60, 45, { step: 0.5 })).toBe(3);
  });

  it("counts 44 and 45 in, 58 and 60 in, 112 and 115 cm as one width", () => {
    expect(widthChange(1.9, 44, 45)).toEqual({ ok: true, value: { length: 2, unit: "yd", rule: "same" } });
    expect(amount(1.7, 112, 115)).toBe(1.7);
    expect(amount(2, 60, 60)).toBe(2);
  });

  // 2 yd = 1.8288 m on 60 in; the chart's 2 3/4 yd on 45 in are 2.5146 m.
  it("works in metres and centimetres, rounded up to 10 cm", () => {
    expect(amount(1.8288, 150, 115)).toBe(2.6);
    expect(amount(2, 150, 115)).toBe(2.7);
    expect(amount(1.8288, inches(60), cm(115), { unit: "m", step: 0.05 })).toBe(2.55);
    // Yards only where both widths are in inches. By area: 2 × 115 / 60 in (152.4 cm) = 1.509, 2 × 45 in (114.3) / 150 = 1.524.
    expect(widthChange(2, 115, 60)).toMatchObject({ value: { length: 1.6, unit: "m" } });
    expect(widthChange(2, 45, 150)).toMatchObject({ value: { length: 1.6, unit: "m" } });
    // 1.15 and 1.5 m are 115 and 150 cm, of the same columns: nothing changes from 45 to 1.15 m.
    expect(widthChange(2, inches(45), lengthIn(1.15, "m"))).toMatchObject({
      value: { length: 2, rule: "same" },
    });
    expect(widthChange(1.8288, lengthIn(1.5, "m"), lengthIn(1.15, "m"))).toMatchObject({
      value: { length: 2.6, rule: "chart" },
    });
  });

  it("names the rule it used", () => {
    const rule = (...given: Parameters<typeof widthChange>) => {
      const result = widthChange(...given);
      return result.ok && result.value.rule;
    };
    expect(rule(2, 60, 45)).toBe("chart");
    expect(rule(1.9, 60, 45)).toBe("area");
    expect(rule(0.5, 60, 45)).toBe("area");
    // The chart has no column for 72 in or 48 in.
    expect([rule(2, 60, 72), rule(2, 48, 60)]).toEqual(["area", "area"]);
  });

  it("refuses what can't be a width or a length", () => {
    expect(refusal(2, 0, 45)).toBe(`"0" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`);
    expect(refusal(2, 60, -45)).toBe(`"-45" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`);
    expect(refusal(2, NaN, 45)).toBe(`"NaN" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`);
    expect(refusal(2, cm(0), 45)).toBe(`"0 cm" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`);
    expect(refusal(2, 45, inches(-1))).toBe(`"-1 in" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`);
    expect(refusal(NaN, 60, 45)).toBe('"NaN" is not a length of fabric.');
    expect(refusal(-2, 60, 45)).toBe("A length of fabric can't be below zero, and this is -2.");
    const date = "Excel has made a date of this (45000): type 0 7/8, or 6 to 12.";
    expect(refusal(45000, 60, 45)).toBe(date);
    expect(refusal(2, 45000, 45)).toBe(date);
    expect(refusal(2, 45, 45000)).toBe(date);
    expect(amount(2, 80, 20000)).toBe(0.1);
    expect(refusal(2, 60, 45, { step: 0 })).toBe(
      `"0" can't be a step. Write what the shop cuts by, such as 1/8 or 0.1.`,
    );
  });

  it("never buys less than the area on wider cloth gives, nor a whole step more than it says", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 800 }), fc.integer({ min: 30, max: 66 }), (hundredths, from) => {
        const length = hundredths / 100;
        const change = widthChange(length, from, 72);
        if (!change.ok) throw new Error("no answer");
        const exact = (length * from) / 72;
        expect(change.value.length).toBeGreaterThanOrEqual(exact - 1e-9);
        expect(change.value.length).toBeLessThan(exact + 0.125 + 1e-9);
      }),
    );
  });

  it("uses an area rule that lies from 3/8 yd below the chart to 1/2 yd above it, within 1/8 yd in 548 of 672 cases", () => {
    // The spread of the rule, worked out here from the printed figures: the lower width of each column's pair is used.
    const nominal = [36, 39, 41, 45, 50, 54, 60, 66];
    const off: number[] = [];
    for (const row of chart)
      for (let i = 0; i < 8; i++)
        for (let j = 0; j < 8; j++)
          if (i !== j) off.push(Math.ceil((row[i]! * nominal[i]!) / nominal[j]! - 1e-9) - row[j]!);
    const within = off.filter((eighths) => Math.abs(eighths) <= 1).length / off.length;
    expect(off).toHaveLength(672);
    expect(Math.min(...off)).toBe(-3);
    expect(Math.max(...off)).toBe(4);
    expect(within).toBeCloseTo(548 / 672, 9);
  });
});
