/** Thousands of calls in one message, as Excel sends them when a long sheet is calculated. */
import { describe, expect, test } from "vitest";
import { MISSES, ROSA, SIZES } from "./charts";
import { BLANK, callTogether, column, errorCell, expectError, isError } from "./functions";

describe("ten thousand calls in one message", () => {
  test("each get their own answer", async () => {
    // The chart's busts are 30 1/2 to 46: a measure that stands in it is that size, whatever calls lie around it.
    const busts = MISSES[1]!.slice(2) as number[];
    const calls = Array.from(
      { length: 10_000 },
      (_, n) => ["SIZEMATCH", MISSES, "bust", busts[n % busts.length]] as const,
    );
    const answers = await callTogether(calls);
    expect(answers).toEqual(calls.map((_, n) => SIZES[n % SIZES.length]));
  });
  test("keep refusals, errors and blanks in their own places among good ones", async () => {
    const kinds = [
      { measure: 34, seen: (answer: unknown) => expect(answer).toBe(12) },
      { measure: "rubbish", seen: (answer: unknown) => expectError(answer, "#VALUE!", /rubbish/) },
      { measure: 70, seen: (answer: unknown) => expectError(answer, "#N/A") },
      { measure: BLANK, seen: (answer: unknown) => expectError(answer, "#VALUE!") },
      { measure: errorCell("#DIV/0!"), seen: (answer: unknown) => expect(answer).toMatchObject({ error: "#DIV/0!" }) },
    ];
    const calls = Array.from(
      { length: 10_000 },
      (_, n) => ["SIZEMATCH", MISSES, "bust", kinds[n % kinds.length]!.measure] as const,
    );
    const answers = await callTogether(calls);
    expect(answers).toHaveLength(10_000);
    answers.forEach((answer, n) => kinds[n % kinds.length]!.seen(answer));
  });
  test("of different functions do not mix", async () => {
    const some = [
      ["LENGTH", "30 1/2", "in"],
      ["CUTSIZE", MISSES, ROSA, "shirt"],
      ["SIZECOLUMN", MISSES, 14],
      ["TOMETRES", column(1, 2, 3), 0.1],
      ["BUYLENGTH", 0.3, 0.1],
    ] as const;
    const calls = Array.from({ length: 10_000 }, (_, n) => some[n % some.length]!);
    const answers = await callTogether(calls);
    // 1, 2 and 3 yd are 0.9144, 1.8288 and 2.7432 m.
    const wanted = [30.5, 12, column(36, 28, 38, 34, 16.5), column(1, 1.9, 2.8), 0.3];
    answers.forEach((answer, n) => {
      expect(isError(answer)).toBe(false);
      expect(answer).toEqual(wanted[n % wanted.length]);
    });
  });
});
