import { describe, expect, test } from "vitest";
import { BLANK, call, callWithZeros, column, errorCell, expectError, expectRefusal, row } from "./functions";

/** One inch is 2.54 cm and one yard 0.9144 m exactly. Source: NBS, Addendum to Circular 572, 1960. */
const near = (answer: unknown, expected: number) => expect(answer).toBeCloseTo(expected, 9);

describe("LENGTH", () => {
  test("reads a printed length into the unit asked for", async () => {
    near(await call("LENGTH", "2 3/8 yd", "m"), 2.1717); // 2.375 x 0.9144
    near(await call("LENGTH", "77,5 cm", "in"), 77.5 / 2.54);
    near(await call("LENGTH", "1.5 m", "cm"), 150);
    near(await call("LENGTH", "1 yd", "in"), 36);
    near(await call("LENGTH", "2 yds", "in"), 72);
    near(await call("LENGTH", "90 in", "yd"), 2.5);
  });
  test("answers in the unit that the text names when none is asked for", async () => {
    near(await call("LENGTH", "77,5 cm"), 77.5);
    near(await call("LENGTH", "2 3/8 yd"), 2.375);
    near(await call("LENGTH", '30½"'), 30.5);
  });
  test.each([
    ["30 1/2", 30.5],
    ["30½", 30.5],
    ["30 ½", 30.5],
    ['30-1/2"', 30.5],
    ["30 1⁄2 in", 30.5],
    ["30\u00a01/2 in", 30.5],
    ["30.5 in", 30.5],
    ["30,5 in", 30.5],
    ["30.5″", 30.5],
    ["1⁄2", 0.5],
    ["7/8", 0.875],
    ["5⅝ in", 5.625],
    ["  34  ", 34],
    ["34 IN", 34],
  ])("reads %j", async (text, inches) => near(await call("LENGTH", text, "in"), inches));
  test("takes a bare number as already in the unit, unless it is said what it is in", async () => {
    near(await call("LENGTH", 30.5, "cm"), 30.5);
    near(await call("LENGTH", "30 1/2"), 30.5);
    near(await call("LENGTH", 30.5, "cm", "in"), 77.47); // 30.5 x 2.54
    near(await call("LENGTH", "12", "cm", "in"), 30.48);
  });
  test("lets the unit in the text win over the unit for bare numbers", async () => {
    near(await call("LENGTH", "10 cm", "cm", "in"), 10);
  });
  test("answers a column, a bad cell in its own place and a blank one with nothing", async () => {
    const answer = (await call("LENGTH", column("30 1/2", "soon", BLANK, "1 yd", ""), "in")) as unknown[][];
    expect(answer).toHaveLength(5);
    near(answer[0]![0], 30.5);
    expectError(answer[1]![0], "#VALUE!", /soon/);
    expect(answer[2]![0]).toBe("");
    near(answer[3]![0], 36);
    expect(answer[4]![0]).toBe("");
  });
  test("answers a row with a row", async () => {
    expect(await call("LENGTH", row("1 in", "2 in", "3 in"), "in")).toEqual([[1, 2, 3]]);
  });
  test("repeats a single cell over a range, and wants ranges of one shape", async () => {
    expect(await call("LENGTH", column(1, 2), column("in", "in"), "yd")).toEqual([[36], [72]]);
    expectError(await call("LENGTH", column(1, 2), column("in", "in", "in")), "#VALUE!");
  });
  test("hands an error cell on in its own place", async () => {
    const answer = (await call("LENGTH", column("1 in", errorCell("#DIV/0!")), "in")) as unknown[][];
    expect(answer[0]![0]).toBe(1);
    expect(answer[1]![0]).toMatchObject({ error: "#DIV/0!" });
  });
  test("refuses text that is no length, an unknown unit, a blank and a negative", async () => {
    expectError(await call("LENGTH", "about right", "in"), "#VALUE!", /about right/);
    expectError(await call("LENGTH", "3 ells", "in"), "#VALUE!");
    expectError(await call("LENGTH", 3, "furlong"), "#VALUE!", /furlong/);
    expectError(await call("LENGTH", BLANK, "in"), "#VALUE!");
    expectError(await call("LENGTH", "", "in"), "#VALUE!");
    expectError(await call("LENGTH", -3, "in"), "#VALUE!");
    expectError(await call("LENGTH", "-3 in", "in"), "#VALUE!");
    expectError(await call("LENGTH", "3/0", "in"), "#VALUE!");
    expectError(await call("LENGTH", "1 2 3", "in"), "#VALUE!");
    expectError(await call("LENGTH", "34x", "in"), "#VALUE!");
    expectError(await call("LENGTH", true, "in"), "#VALUE!");
  });
  test("says that Excel has made a date of a fraction", async () => {
    expectError(await call("LENGTH", 46241, "in"), "#VALUE!", /date/i, /7\/8/);
    near(await call("LENGTH", 20000, "cm"), 20000);
  });
});

describe("TOYARDS", () => {
  test("is exact without a step", async () => {
    near(await call("TOYARDS", 2.1), 2.1 / 0.9144);
    near(await call("TOYARDS", 0.9144), 1);
  });
  test("rounds up to the step, never a step too many", async () => {
    near(await call("TOYARDS", 2.1, 0.125), 2.375); // 2.2966 yd
    near(await call("TOYARDS", 0.9144, 0.125), 1);
    near(await call("TOYARDS", 2.7432, 0.125), 3); // 3 x 0.9144
    near(await call("TOYARDS", 2.7433, 0.125), 3.125);
    near(await call("TOYARDS", 2.1, "1/8"), 2.375);
  });
  test("reads text, and a unit in the text wins", async () => {
    near(await call("TOYARDS", "2,1 m"), 2.1 / 0.9144);
    near(await call("TOYARDS", "2 yd", 0.125), 2);
    near(await call("TOYARDS", "2.1"), 2.1 / 0.9144);
  });
  test("answers a column with errors in their own cells", async () => {
    const answer = (await call("TOYARDS", column(0.9144, "x", BLANK), 0.125)) as unknown[][];
    near(answer[0]![0], 1);
    expectError(answer[1]![0], "#VALUE!");
    expect(answer[2]![0]).toBe("");
  });
  test("refuses a negative length or step, a blank and a date", async () => {
    expectError(await call("TOYARDS", -1), "#VALUE!");
    expectError(await call("TOYARDS", 1, -0.125), "#VALUE!");
    expectError(await call("TOYARDS", BLANK), "#VALUE!");
    expectError(await call("TOYARDS", 46241), "#VALUE!", /date/i);
  });
});

describe("TOMETRES", () => {
  test("is exact without a step", async () => {
    near(await call("TOMETRES", 1), 0.9144);
    near(await call("TOMETRES", "2 3/8"), 2.1717);
  });
  // Yard and metre pairs as printed on envelopes, rounded up to 0.1 m.
  test.each([
    [2.375, 2.2],
    [1.25, 1.2],
    [0.5, 0.5],
    [1, 1.0],
    [9.5, 8.7],
    [2, 1.9],
  ])("gives for %d yd the %d m that envelopes print", async (yards, metres) =>
    near(await call("TOMETRES", yards, 0.1), metres),
  );
  test("rounds up where one envelope rounded down", async () => {
    near(await call("TOMETRES", 11, 0.1), 10.1); // 10.0584 m; 10.0 would be too little
  });
  test("lets a unit in the text win", async () => near(await call("TOMETRES", "2.1 m"), 2.1));
});

describe("FRACTION", () => {
  test.each([
    [2.375, "2 3/8"],
    [2.4, "2 3/8"], // 19.2 eighths
    [2.5, "2 1/2"],
    [0.5, "1/2"],
    [0.875, "7/8"],
    [3, "3"],
    [2.99, "3"], // 23.92 eighths
  ])("writes %d as %s", async (number, text) => expect(String(await call("FRACTION", number))).toBe(text));
  test("rounds a tie up", async () => {
    expect(await call("FRACTION", 2.0625)).toBe("2 1/8"); // 16 1/2 eighths
    expect(await call("FRACTION", 0.1875)).toBe("1/4"); // 1 1/2 eighths
  });
  test("takes another denominator", async () => {
    expect(await call("FRACTION", 2.03125, 16)).toBe("2 1/16"); // 32 1/2 sixteenths, a tie
    expect(await call("FRACTION", 2.3, 4)).toBe("2 1/4"); // 9.2 quarters
    expect(await call("FRACTION", 0.3125, 16)).toBe("5/16");
  });
  test("answers a column", async () => {
    const answer = (await call("FRACTION", column(2.375, "x", BLANK))) as unknown[][];
    expect(answer[0]![0]).toBe("2 3/8");
    expectError(answer[1]![0], "#VALUE!");
    expect(answer[2]![0]).toBe("");
  });
});

describe("BUYLENGTH", () => {
  test.each([
    [0.3, 0.1, 0.3],
    [0.1 + 0.2, 0.1, 0.3],
    [3.4, 0.5, 3.5],
    [3.5, 0.5, 3.5],
    [2, 0.125, 2],
    [2.126, 0.125, 2.25],
    [2.0000000005, 0.125, 2],
    [1.1, 0.1, 1.1],
    [2.2, 0.2, 2.2],
    [116 / 36, 0.125, 3.25], // 3.2222 yd
    [116 / 36, 0.5, 3.5],
    [1.01, 0.25, 1.25],
  ])("makes %d of steps of %d: %d", async (length, step, bought) =>
    near(await call("BUYLENGTH", length, step), bought),
  );
  test("never buys a step too many, however the tenths were added up", async () => {
    let sum = 0;
    for (let tenths = 1; tenths <= 60; tenths += 1) {
      sum += 0.1;
      near(await call("BUYLENGTH", sum, 0.1), tenths / 10);
    }
  });
  test("reads text", async () => {
    near(await call("BUYLENGTH", "2 5/16", "1/8"), 2.375); // 18.5 eighths
  });
  test("answers a column", async () => {
    const answer = (await call("BUYLENGTH", column(1.01, "x", BLANK), 0.5)) as unknown[][];
    near(answer[0]![0], 1.5);
    expectError(answer[1]![0], "#VALUE!");
    expect(answer[2]![0]).toBe("");
  });
  test("refuses a negative, a blank step, and a date", async () => {
    expectError(await call("BUYLENGTH", -2, 0.125), "#VALUE!");
    expectError(await call("BUYLENGTH", 2, -0.125), "#VALUE!");
    expectError(await call("BUYLENGTH", 2, BLANK), "#VALUE!");
    expectRefusal(await callWithZeros("BUYLENGTH", 2, BLANK));
    expectError(await call("BUYLENGTH", 46241, 0.125), "#VALUE!", /date/i);
  });
});
