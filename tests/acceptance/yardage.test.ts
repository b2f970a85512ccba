import { describe, expect, test } from "vitest";
import { BLANK, call, callWithZeros, column, errorCell, expectError, expectRefusal, type Grid, row } from "./functions";
import { INDEX_HEADINGS } from "./charts";

/** A camp shirt's fabric requirements. Our own figures: only the look-up is tested with them. */
const SHIRT: Grid = [
  ["View", "Part", "Width", "Width unit", "Nap", "Unit", 12, 14, 16, 18],
  ["A", "main", 45, "in", "without", "yd", 2, 2.125, 2.25, 2.375],
  ["A", "main", 45, "in", "with", "yd", 2.25, 2.375, 2.5, 2.625],
  ["A", "main", 60, "in", "either", "yd", 1.375, 1.5, 1.5, 1.625],
  ["A", "interfacing", 20, "in", "either", "yd", 0.75, 0.75, 0.875, 0.875],
  ["B", "main", 45, "in", "either", "yd", 3, 3, 3.25, BLANK],
];
const near = (answer: unknown, expected: number) => expect(answer).toBeCloseTo(expected, 9);

describe("YARDAGE", () => {
  test("is the printed amount", async () => {
    near(await call("YARDAGE", SHIRT, "A", 60, 14), 1.5);
    near(await call("YARDAGE", SHIRT, "B", 45, 16), 3.25);
    near(await call("YARDAGE", SHIRT, "a", 60, "14"), 1.5);
  });
  test("goes by nap where it is named, and takes the larger where it isn't", async () => {
    near(await call("YARDAGE", SHIRT, "A", 45, 14, "main", "without"), 2.125);
    near(await call("YARDAGE", SHIRT, "A", 45, 14, "main", "with"), 2.375);
    near(await call("YARDAGE", SHIRT, "A", 45, 14), 2.375);
    near(await call("YARDAGE", SHIRT, "A", 60, 14, undefined, "with"), 1.5); // printed for either
    near(await call("YARDAGE", SHIRT, "A", 60, 14, undefined, "without"), 1.5);
  });
  test("takes the main part unless another is named", async () => {
    near(await call("YARDAGE", SHIRT, "A", 20, 16, "interfacing"), 0.875);
    near(await call("YARDAGE", SHIRT, "A", 20, 16, "Interfacing"), 0.875);
    expectRefusal(await call("YARDAGE", SHIRT, "A", 20, 16));
    expectError(await call("YARDAGE", SHIRT, "A", 45, 14, "yoke"), "#N/A", /yoke/i);
  });
  // Equal widths as envelopes print them side by side: 35/36 in = 90 cm, 44/45 in = 115 cm, 54 in = 140 cm, 58/60 in = 150 cm.
  test.each([
    [44, 45],
    [45, 44],
    ["44/45", 45],
    ["44/45 in", 45],
    ["115 cm", 45],
    ["115 cm", 44],
    [45, "44/45"],
    [58, 60],
    [60, 58],
    ["58/60", 60],
    ["150 cm", 60],
    [35, 36],
    ["90 cm", 36],
    ["140 cm", 54],
  ])("finds width %s where %s is printed", async (asked, printed) => {
    const table: Grid = [SHIRT[0]!, ["A", "main", printed, "in", "either", "yd", 2, 2.125, 2.25, 2.375]];
    near(await call("YARDAGE", table, "A", asked, 14), 2.125);
  });
  test("reads a metric table", async () => {
    const metric: Grid = [
      ["View", "Width", "Width unit", "Unit", 38, 40],
      ["A", 115, "cm", "m", 1.9, 2],
      ["A", 150, "cm", "m", 1.3, 1.4],
    ];
    near(await call("YARDAGE", metric, "A", 115, 40), 2);
    near(await call("YARDAGE", metric, "A", "45 in", 40), 2);
    near(await call("YARDAGE", metric, "A", '44/45"', 38), 1.9);
    near(await call("YARDAGE", metric, "A", "58/60 in", 40), 1.4);
  });
  test("takes the largest amount of a blend", async () => {
    near(await call("YARDAGE", SHIRT, "A", 45, "12-16", undefined, "without"), 2.25);
    near(await call("YARDAGE", SHIRT, "A", 45, "12+16", undefined, "without"), 2.25);
    near(await call("YARDAGE", SHIRT, "A", 45, "16-12", undefined, "without"), 2.25);
    near(await call("YARDAGE", SHIRT, "A", 45, "12 + 14 + 16"), 2.5);
    const odd: Grid = [SHIRT[0]!, ["A", "main", 45, "in", "either", "yd", 2, 2.5, 2.25, 2.375]];
    near(await call("YARDAGE", odd, "A", 45, "14-16"), 2.5);
    expectError(await call("YARDAGE", SHIRT, "A", 45, "12-30"), "#N/A", /30/);
  });
  test("reads a printed double size as its label before it reads a blend", async () => {
    const doubled: Grid = [
      ["View", "Width", "Width unit", "Unit", "8-10", "12-14"],
      ["A", 45, "in", "yd", 2, 2.25],
    ];
    near(await call("YARDAGE", doubled, "A", 45, "8-10"), 2);
    near(await call("YARDAGE", doubled, "A", 45, "12-14"), 2.25);
  });
  test("names the narrower printed width where a width isn't printed", async () => {
    expectError(await call("YARDAGE", SHIRT, "A", 54, 14), "#N/A", /54/, /\b45\b/);
    expectError(await call("YARDAGE", SHIRT, "A", 70, 14), "#N/A", /\b60\b/);
    expectError(await call("YARDAGE", SHIRT, "A", 54, 14, undefined, undefined, false), "#N/A", /\b45\b/);
    expectError(await call("YARDAGE", SHIRT, "A", "140 cm", 14), "#N/A", /45|115/);
  });
  test("estimates from that width only when it is asked to", async () => {
    // 2 1/4 yd of 45 in is the row that needs 1 7/8 yd of 54 in (printed conversion chart).
    near(await call("YARDAGE", SHIRT, "A", 54, 16, undefined, "without", true), 1.875);
    // 2 1/8 yd is 17 eighths of 45 in: 14 eighths of 54 in.
    near(await call("YARDAGE", SHIRT, "A", 54, 14, undefined, "without", true), 1.75);
    // A printed width needs no estimate.
    near(await call("YARDAGE", SHIRT, "A", 60, 14, undefined, undefined, true), 1.5);
  });
  test("has no narrower width to name below the narrowest", async () => {
    expectError(await call("YARDAGE", SHIRT, "A", 36, 14), "#N/A", /36/);
  });
  test("refuses views, sizes and widths that the table lacks, naming them", async () => {
    expectError(await call("YARDAGE", SHIRT, "Z", 45, 14), "#N/A", /Z/);
    expectError(await call("YARDAGE", SHIRT, "A", 45, 22), "#N/A", /22/);
    expectError(await call("YARDAGE", SHIRT, "A", 45, 14, "main", "sideways"), "#VALUE!", /sideways/);
    expectError(await call("YARDAGE", SHIRT, "A", BLANK, 14), "#VALUE!");
    expectError(await call("YARDAGE", SHIRT, "A", 45, BLANK), "#VALUE!");
    expectError(await call("YARDAGE", SHIRT, "A", "wide", 14), "#VALUE!", /wide/);
    expectError(await call("YARDAGE", SHIRT, "A", -45, 14), "#VALUE!");
    expectError(await call("YARDAGE", SHIRT, "A", 45, 46182), "#VALUE!", /date/i);
  });
  test("never gives a missing amount as nothing to buy", async () => {
    expectRefusal(await call("YARDAGE", SHIRT, "B", 45, 18));
    expectRefusal(await callWithZeros("YARDAGE", SHIRT, "B", 45, 18));
  });
  test("answers columns, each bad cell in its own place", async () => {
    expect(await call("YARDAGE", SHIRT, "A", 60, column(12, 14, 18))).toEqual([[1.375], [1.5], [1.625]]);
    expect(await call("YARDAGE", SHIRT, row("A", "B"), 45, 12)).toEqual([[2.25, 3]]);
    const answer = (await call("YARDAGE", SHIRT, "A", column(45, 54, BLANK, errorCell("#N/A"), 60), 14)) as unknown[][];
    expect(answer[0]![0]).toBe(2.375);
    expectError(answer[1]![0], "#N/A", /45/);
    expect(answer[2]![0]).toBe("");
    expect(answer[3]![0]).toMatchObject({ error: "#N/A" });
    expect(answer[4]![0]).toBe(1.5);
    expectError(await call("YARDAGE", SHIRT, column("A", "B"), row(45, 60), 14), "#VALUE!");
  });
  test("reads tables with headings in any order, and without part, nap and unit", async () => {
    const order = [6, 5, 4, 3, 2, 1, 0, 7, 8, 9];
    const shuffled = SHIRT.map((cells) => order.map((at) => cells[at]));
    near(await call("YARDAGE", shuffled, "A", 45, 14), 2.375);
    near(await call("YARDAGE", shuffled, "A", 20, 16, "interfacing"), 0.875);
    const short: Grid = [
      ["View", "Width", 12, 14],
      ["A", 45, 2, 2.125],
      ["A", 60, 1.375, 1.5],
    ];
    near(await call("YARDAGE", short, "A", 45, 14), 2.125);
    near(await call("YARDAGE", short, "A", "115 cm", 14), 2.125); // widths up to 80 are inches
    const metric: Grid = [
      ["View", "Width", 12, 14],
      ["A", 115, 1.9, 2],
      ["A", 150, 1.3, 1.4],
    ];
    near(await call("YARDAGE", metric, "A", "45 in", 14), 2);
  });
  test("reads amounts as text", async () => {
    const text: Grid = [
      ["View", "Width", "Unit", 12, 14],
      ["A", "44/45", "yd", "2", "2 1/8"],
      ["A", '60"', "yd", "1⅜", "1,5"],
    ];
    near(await call("YARDAGE", text, "A", 45, 14), 2.125);
    near(await call("YARDAGE", text, "A", 60, 12), 1.375);
    near(await call("YARDAGE", text, "A", 60, 14), 1.5);
  });
  test("finds a pattern in the index", async () => {
    const index = [
      INDEX_HEADINGS,
      ["Camp shirt", "fabric", "yd", "A", "main", 45, "in", "either", "", "14", 2.125, 2.125],
      ["Camp shirt", "fabric", "yd", "A", "main", 60, "in", "either", "", "14", 1.5, 1.5],
      ["Pinafore", "fabric", "yd", "A", "main", 45, "in", "either", "", "4", 1, 1],
    ];
    near(await call("YARDAGE", index, "A", 45, 14, undefined, undefined, undefined, "Camp shirt"), 2.125);
    near(await call("YARDAGE", index, "A", 45, 4, undefined, undefined, undefined, "pinafore"), 1);
    expectError(await call("YARDAGE", index, "A", 45, 4, undefined, undefined, undefined, "Parka"), "#N/A", /Parka/);
    const both = await call(
      "YARDAGE",
      index,
      "A",
      45,
      column(14, 4),
      undefined,
      undefined,
      undefined,
      column("Camp shirt", "Pinafore"),
    );
    expect(both).toEqual([[2.125], [1]]);
  });
  test("says what a table's bare name lacks", async () => {
    expectError(await call("YARDAGE", SHIRT.slice(1), "A", 45, 14), "#VALUE!", /\[#All\]/i);
  });
});
