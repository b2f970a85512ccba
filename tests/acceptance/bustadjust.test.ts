import { describe, expect, test } from "vitest";
import { FIGURES, INDEX_HEADINGS, indexRows, MISSES, wide } from "./charts";
import { BLANK, call, callWithZeros, expectError, expectRefusal, rows } from "./functions";

/** size, the pattern's bust, whole adjustment, half, pattern cup, note */
const adjust = async (...args: unknown[]) => rows(await call("BUSTADJUST", ...args))[0]!;

describe("BUSTADJUST", () => {
  test("sizes by the high bust and gives the whole adjustment and half of it", async () => {
    // Size 16 has high bust 36 and bust 38; 40 - 38 = 2; 40 - 36 = 4 is pattern cup D.
    expect((await adjust(MISSES, 40, 36)).slice(0, 5)).toEqual([16, 38, 2, 1, "D"]);
    // Size 14 has high bust 34 and bust 36. Source: a worked example of a teaching page (adjustment 2, cup D).
    expect((await adjust(MISSES, 38, 34)).slice(0, 5)).toEqual([14, 36, 2, 1, "D"]);
    expect((await adjust(MISSES, 40, 36))[5]).toBeTypeOf("string");
  });
  test("reads the high bust in its own row, or in the bust row, as it is told", async () => {
    // High bust 32 is size 12 in the high-bust row (bust 34: adjustment 2).
    expect((await adjust(MISSES, 36, 32)).slice(0, 4)).toEqual([12, 34, 2, 1]);
    expect((await adjust(MISSES, 36, 32, undefined, "highbust")).slice(0, 4)).toEqual([12, 34, 2, 1]);
    // In the bust row 32 + 2 = 34 is 12.
    expect((await adjust(MISSES, 36, 32, undefined, "bust")).slice(0, 4)).toEqual([12, 34, 2, 1]);
    // In the bust row as it stands 32 lies between 31 1/2 and 32 1/2: a tie, size 10. Adjustment 36 - 32 1/2.
    expect((await adjust(MISSES, 36, 32, 0, "bust")).slice(0, 4)).toEqual([10, 32.5, 3.5, 1.75]);
    // 34 + 1 = 35 lies between 34 and 36: a tie, size 14.
    expect((await adjust(MISSES, 38, 34, 1, "bust")).slice(0, 4)).toEqual([14, 36, 2, 1]);
    // 34 + 3 = 37, between 36 and 38: size 16.
    expect((await adjust(MISSES, 38, 34, 3, "bust")).slice(0, 4)).toEqual([16, 38, 0, 0]);
  });
  test("uses the bust row where the chart has no high bust", async () => {
    const plain = wide({ Bust: FIGURES["Bust"]! }, "in");
    expect((await adjust(plain, 38, 34)).slice(0, 4)).toEqual([14, 36, 2, 1]);
    expectError(await call("BUSTADJUST", plain, 38, 34, undefined, "highbust"), "#N/A", /high ?bust/i);
  });
  test("is negative for a small bust", async () => {
    expect((await adjust(MISSES, 35, 34)).slice(0, 5)).toEqual([14, 36, -1, -0.5, "A"]);
  });
  test("is nothing where the pattern's bust is hers", async () => {
    expect((await adjust(MISSES, 36, 34)).slice(0, 5)).toEqual([14, 36, 0, 0, "B"]);
  });
  // Full bust minus high bust in inches: 1 A, 2 B, 3 C, 4 D, 5 DD, 6 DDD. Source: a cup-size reference.
  test.each([
    [35, "A"],
    [36, "B"],
    [37, "C"],
    [38, "D"],
    [39, "DD"],
    [40, "DDD"],
  ])("names the pattern cup of bust %d over high bust 34: %s", async (bust, cup) =>
    expect((await adjust(MISSES, bust, 34))[4]).toBe(cup),
  );
  test("lets the high bust decide only from the threshold on, which counts itself", async () => {
    // Bust 40 over high bust 36 is a difference of 4.
    expect((await adjust(MISSES, 40, 36, undefined, undefined, 4)).slice(0, 3)).toEqual([16, 38, 2]);
    expect((await adjust(MISSES, 40, 36, undefined, undefined, 3)).slice(0, 3)).toEqual([16, 38, 2]);
    // Below it the bust decides: 40 is size 18, nothing to adjust.
    expect((await adjust(MISSES, 40, 36, undefined, undefined, 4.5)).slice(0, 3)).toEqual([18, 40, 0]);
    // A difference of 2 against a threshold of 2, in tenths that don't add up exactly in binary.
    expect((await adjust(MISSES, 36.3, 34.3, undefined, undefined, 2)).slice(0, 2)).toEqual([14, 36]);
  });
  test("works in centimetres, and drafts for 2 in there too", async () => {
    const cm = wide({ Bust: FIGURES["Bust"]!.map((v) => v * 2.54) }, "cm");
    // 86.36 + 5.08 = 91.44 is size 14; 96.52 - 91.44 = 5.08; the difference of 4 in is D.
    const cells = await adjust(cm, 96.52, 86.36);
    expect(cells[0]).toBe(14);
    expect(cells[2]).toBeCloseTo(5.08, 6);
    expect(cells[3]).toBeCloseTo(2.54, 6);
    expect(cells[4]).toBe("D");
  });
  test("reads text in its own unit", async () => {
    const cells = await adjust(MISSES, "101.6 cm", "36 in"); // 40 in
    expect(cells[0]).toBe(16);
    expect(cells[2]).toBeCloseTo(2, 6);
  });
  test("finds a pattern in the index", async () => {
    const index = [INDEX_HEADINGS, ...indexRows("Sunday dress", "body", { Bust: 0, "High bust": 0 })];
    const cells = await adjust(index, 40, 36, undefined, undefined, undefined, "Sunday dress");
    expect(cells.slice(0, 4)).toEqual([16, 38, 2, 1]);
  });
  test("guesses nothing where the high bust is missing", async () => {
    expectError(await call("BUSTADJUST", MISSES, 40, BLANK), "#VALUE!", /high ?bust/i);
    expectError(await callWithZeros("BUSTADJUST", MISSES, 40, BLANK), "#VALUE!", /high ?bust/i);
    expectError(await call("BUSTADJUST", MISSES, BLANK, 36), "#VALUE!", /bust/i);
  });
  test("refuses a high bust off the chart, a word it doesn't know, and centimetres against inches", async () => {
    expectError(await call("BUSTADJUST", MISSES, 56, 50), "#N/A", /\b6\b/); // 50 - 44
    expectError(await call("BUSTADJUST", MISSES, 40, 36, 2, "waist"), "#VALUE!", /waist/);
    expectRefusal(await call("BUSTADJUST", MISSES, 102, 96), /cm|cent/i);
    expectError(await call("BUSTADJUST", MISSES, -40, 36), "#VALUE!");
    expectError(await call("BUSTADJUST", MISSES, 40, "wide"), "#VALUE!", /wide/);
  });
});
