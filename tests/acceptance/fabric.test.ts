import { describe, expect, test } from "vitest";
import { EIGHTHS } from "./charts";
import { BLANK, call, callWithZeros, column, errorCell, expectError } from "./functions";

const near = (answer: unknown, expected: number, digits = 9) => expect(answer).toBeCloseTo(expected, digits);
/** The widths that stand over each of the chart's columns. */
const WIDTHS = [[35, 36], [39], [41], [44, 45], [50], [52, 54], [58, 60], [66]];

describe("FABRICWIDTH by the printed chart", () => {
  test("has twelve rows of eight widths", () => {
    expect(EIGHTHS).toHaveLength(12);
    for (const cells of EIGHTHS) expect(cells).toHaveLength(8);
  });
  const pairs = WIDTHS.flatMap((from, a) => WIDTHS.map((to, b) => [from.join("/"), to.join("/"), a, b] as const));
  test.each(pairs)("changes every row from %s to %s in exactly", async (_from, _to, a, b) => {
    for (const from of WIDTHS[a]!)
      for (const to of WIDTHS[b]!) {
        const lengths = column(...EIGHTHS.map((cells) => cells[a]! / 8));
        expect(await call("FABRICWIDTH", lengths, from, to, 0.125)).toEqual(EIGHTHS.map((cells) => [cells[b]! / 8]));
      }
  });
  test("gives the examples that are printed with it", async () => {
    near(await call("FABRICWIDTH", 1.375, 54, 36, 0.125), 2);
    near(await call("FABRICWIDTH", 2, 60, 45, 0.125), 2.75);
    near(await call("FABRICWIDTH", 2.875, 54, 60, 0.125), 2.75); // its prose slips a column and says 2 1/4
  });
  test("needs no step, reads text, and knows double widths and centimetres", async () => {
    near(await call("FABRICWIDTH", 2, 60, 45), 2.75);
    near(await call("FABRICWIDTH", "1 3/8", "52/54", "35/36", "1/8"), 2);
    near(await call("FABRICWIDTH", "2 yd", "150 cm", "115 cm", 0.125), 2.75);
  });
});

describe("FABRICWIDTH between the rows", () => {
  test("goes by area, rounded up", async () => {
    near(await call("FABRICWIDTH", 3, 45, 60, 0.125), 2.25); // 24 eighths x 45 / 60 = 18
    near(await call("FABRICWIDTH", 5, 45, 60, 0.125), 3.75); // 40 x 3/4 = 30
    near(await call("FABRICWIDTH", 1, 45, 36, 0.125), 1.25); // 8 x 45 / 36 = 10, below the chart's first row
    near(await call("FABRICWIDTH", 2.125, 60, 45, 0.125), 2.875); // 17 x 60 / 45 = 22 2/3: 23
  });
  test("is never less than the chart's nearest row below", async () => {
    // 31.2 eighths of 45 in: by area 39 of 36 in, but 31 of 45 in already need 40.
    near(await call("FABRICWIDTH", 3.9, 45, 36, 0.125), 5);
    // 34.4 eighths of 39 in: by area 37.3 of 36 in, but 34 of 39 in already need 40.
    near(await call("FABRICWIDTH", 4.3, 39, 36, 0.125), 5);
  });
  test("rounds up to the step that is asked for", async () => {
    near(await call("FABRICWIDTH", 5, 45, 60, 0.5), 4); // 3 3/4
    near(await call("FABRICWIDTH", 2, 60, 45, 0.5), 3); // 2 3/4
  });
  test("stays on the same width", async () => {
    near(await call("FABRICWIDTH", 2, 45, 45, 0.125), 2);
    near(await call("FABRICWIDTH", 2.25, 45, 44, 0.125), 2.25);
    near(await call("FABRICWIDTH", 2, 58, 60, 0.125), 2);
  });
  test("works in metres", async () => {
    // 2 m x 150 / 115 = 2.61; by the equal widths 60 and 45 in 2.67. 16 eighths of a yard of 60 in need 2 3/4 yd, 2.51 m.
    near(await call("FABRICWIDTH", 2, 150, 115, 0.1, "m"), 2.7);
  });
});

describe("FABRICWIDTH", () => {
  test("never asks for less on a narrower cloth, nor for more on a wider one", async () => {
    for (const length of [0.5, 1, 1.9, 2.3, 3.7, 6]) {
      const narrower = Number(await call("FABRICWIDTH", length, 60, 45, 0.125));
      const wider = Number(await call("FABRICWIDTH", length, 45, 60, 0.125));
      expect(narrower).toBeGreaterThanOrEqual(length);
      expect(wider).toBeLessThanOrEqual(Math.ceil(length * 8) / 8);
    }
  });
  test("answers a column", async () => {
    const answer = (await call("FABRICWIDTH", column(2, "x", BLANK, errorCell("#REF!")), 60, 45, 0.125)) as unknown[][];
    expect(answer[0]![0]).toBe(2.75);
    expectError(answer[1]![0], "#VALUE!", /x/);
    expect(answer[2]![0]).toBe("");
    expect(answer[3]![0]).toMatchObject({ error: "#REF!" });
  });
  test("refuses a missing, negative or unreadable width, and a date", async () => {
    expectError(await call("FABRICWIDTH", 2, BLANK, 45), "#VALUE!");
    expectError(await callWithZeros("FABRICWIDTH", 2, 60, BLANK), "#VALUE!");
    expectError(await call("FABRICWIDTH", 2, -60, 45), "#VALUE!");
    expectError(await call("FABRICWIDTH", -2, 60, 45), "#VALUE!");
    expectError(await call("FABRICWIDTH", 2, "wide", 45), "#VALUE!", /wide/);
    expectError(await call("FABRICWIDTH", 46182, 60, 45), "#VALUE!", /date/i);
    expectError(await call("FABRICWIDTH", 2, 60, 45, 0.125, "ells"), "#VALUE!", /ells/);
  });
});

describe("EXTRAYARDAGE", () => {
  test("adds a repeat for each length and then the shrinkage", async () => {
    // (2 7/8 yd + 4 1/4 in x 3) / 0.95 = (2.875 + 12.75 / 36) / 0.95 = 3.2291667 / 0.95
    near(await call("EXTRAYARDAGE", 2.875, "yd", 0.05, 4.25, "in", 3), (2.875 + 12.75 / 36) / 0.95);
    near(await call("EXTRAYARDAGE", 2.875, "yd", 0.05, 4.25, "in", 3), 3.399, 3);
    near(await call("BUYLENGTH", await call("EXTRAYARDAGE", 2.875, "yd", 0.05, 4.25, "in", 3), 0.5), 3.5);
  });
  // Extra for a plaid: repeat times the pieces stacked one above another. Source: worked examples in print.
  test.each([
    [1.25, 2, 2.5],
    [4.25, 2, 8.5],
    [6, 3, 18],
  ])("adds for a repeat of %d in and %d lengths %d in", async (repeat, lengths, inches) =>
    near(await call("EXTRAYARDAGE", 1, "yd", 0, repeat, "in", lengths), 1 + inches / 36),
  );
  test.each([
    [3, "yd", 0.05, 3.157895],
    [4, "yd", 0.1, 4.444444],
    [2, "m", 0.05, 2.105263],
  ])("divides %d %s by what is left after %d of shrinkage", async (length, unit, shrinkage, needed) =>
    near(await call("EXTRAYARDAGE", length, unit, shrinkage), needed, 6),
  );
  test("is the length itself where nothing is added", async () => {
    near(await call("EXTRAYARDAGE", 2.5, "yd"), 2.5);
    near(await call("EXTRAYARDAGE", 2.5, "yd", 0), 2.5);
  });
  test("works in metres and centimetres", async () => {
    near(await call("EXTRAYARDAGE", 2, "m", 0, 12, "cm", 2), 2.24);
  });
  test("reads text, and a unit in the text wins", async () => {
    near(await call("EXTRAYARDAGE", "2 7/8", "yd", 0.05, "4 1/4 in", "in", 3), (2.875 + 12.75 / 36) / 0.95);
    near(await call("EXTRAYARDAGE", 1, "yd", 0, "1/4 yd", "in", 2), 1.5);
    near(await call("EXTRAYARDAGE", "1 m", "yd"), 1 / 0.9144);
  });
  test("adds a lengthening to every length", async () => {
    // 2 in more in each of 3 lengths is 6 in, besides 3 repeats of 4 in: 18 in = 1/2 yd.
    near(await call("EXTRAYARDAGE", 1, "yd", 0, 4, "in", 3, "2 in"), 1.5);
  });
  test("takes shrinkage from 0 to 0.3 and says how to write it", async () => {
    near(await call("EXTRAYARDAGE", 2.1, "yd", 0.3), 3);
    expectError(await call("EXTRAYARDAGE", 2, "yd", 5), "#VALUE!", /5 ?%/);
    expectError(await call("EXTRAYARDAGE", 2, "yd", 0.31), "#VALUE!");
    expectError(await call("EXTRAYARDAGE", 2, "yd", -0.05), "#VALUE!");
  });
  test("answers a column", async () => {
    const answer = (await call("EXTRAYARDAGE", column(3, "x", BLANK), "yd", 0.05)) as unknown[][];
    near(answer[0]![0], 3 / 0.95);
    expectError(answer[1]![0], "#VALUE!", /x/);
    expect(answer[2]![0]).toBe("");
  });
  test("refuses an unknown or missing unit, negatives and dates", async () => {
    expectError(await call("EXTRAYARDAGE", 2, "ells"), "#VALUE!", /ells/);
    expectError(await call("EXTRAYARDAGE", 2, BLANK), "#VALUE!");
    expectError(await call("EXTRAYARDAGE", -2, "yd"), "#VALUE!");
    expectError(await call("EXTRAYARDAGE", 2, "yd", 0, -4, "in", 3), "#VALUE!");
    expectError(await call("EXTRAYARDAGE", 2, "yd", 0, 4, "in", -3), "#VALUE!");
    expectError(await call("EXTRAYARDAGE", 46182, "yd"), "#VALUE!", /date/i);
  });
});
