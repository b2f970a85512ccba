import { describe, expect, test } from "vitest";
import { bodyOf, MISSES, ROSA, wide } from "./charts";
import {
  BLANK,
  call,
  callWithZeros,
  column,
  errorCell,
  expectError,
  expectRefusal,
  numbers,
  row,
  rowOf,
  rows,
} from "./functions";

const bust = (measure: unknown, rule?: string) => call("SIZEMATCH", MISSES, "bust", measure, rule);

describe("SIZEMATCH by the closest figure", () => {
  test.each([
    [34, 12],
    [30.5, 6],
    [46, 24],
    [33.2, 10], // 0.7 from 32.5, 0.8 from 34
    [35.1, 14],
    [34.9, 12],
  ])("gives for bust %d size %d", async (measure, size) => expect(await bust(measure)).toBe(size));
  test.each([
    [35, 14], // between 34 and 36
    [31, 8], // between 30.5 and 31.5
    [33.25, 12], // between 32.5 and 34
    [45, 24],
  ])("gives a tie to the larger size: %d is %d", async (measure, size) => expect(await bust(measure)).toBe(size));
  test("counts figures as equal within a billionth", async () => {
    expect(await bust(35 - 4e-10)).toBe(14);
  });
  test("is the rule unless another is named", async () => {
    expect(await bust(33.2, "closest")).toBe(10);
  });
  test("answers up to half the end step beyond the chart, and not beyond it", async () => {
    expect(await bust(30)).toBe(6); // the first step is 1 in
    expectError(await bust(29.9), "#N/A");
    expect(await bust(47)).toBe(24); // the last step is 2 in
    expectError(await bust(47.1), "#N/A");
  });
  test("says by how much a measure is off the chart", async () => {
    expectError(await bust(27.5), "#N/A", /\b3\b/); // 30 1/2 - 27 1/2
    expectError(await bust(51), "#N/A", /\b5\b/); // 51 - 46
    expectError(await call("SIZEMATCH", MISSES, "hip", 55), "#N/A", /\b7\b/); // 55 - 48
  });
});

describe("SIZEMATCH with atleast", () => {
  test.each([
    [34, 12],
    [34.01, 14],
    [33, 12],
    [30.5, 6],
    [46, 24],
    [34 + 4e-10, 12],
    [46 + 4e-10, 24],
  ])("gives for bust %d the smallest size not below it: %d", async (measure, size) =>
    expect(await bust(measure, "atleast")).toBe(size),
  );
  test("answers up to one step below the chart and nothing above it", async () => {
    expect(await bust(29.5, "atleast")).toBe(6);
    expectError(await bust(29.4, "atleast"), "#N/A");
    expectError(await bust(46.1, "atleast"), "#N/A");
    expectError(await bust(49, "atleast"), "#N/A", /\b3\b/);
  });
});

describe("SIZEMATCH with atmost", () => {
  test.each([
    [34, 12],
    [35.99, 12],
    [36, 14],
    [30.5, 6],
    [36 - 4e-10, 14],
  ])("gives for bust %d the largest size not above it: %d", async (measure, size) =>
    expect(await bust(measure, "atmost")).toBe(size),
  );
  test("answers up to one step above the chart and nothing below it", async () => {
    expect(await bust(48, "atmost")).toBe(24);
    expectError(await bust(48.1, "atmost"), "#N/A");
    expectError(await bust(30.4, "atmost"), "#N/A");
    expectError(await bust(28.5, "atmost"), "#N/A", /\b2\b/);
  });
});

describe("SIZEMATCH in printed ranges", () => {
  // EN 13402-3:2004, women's bust: 13 bounds of 12 half-open classes, as coded in the R package Anthropometry 1.20.
  const bounds = [74, 78, 82, 86, 90, 94, 98, 102, 107, 113, 119, 125, 131];
  const classes = [76, 80, 84, 88, 92, 96, 100, 104, 110, 116, 122, 128];
  const touching = wide({ Bust: classes.map((_, at) => `${bounds[at]}-${bounds[at + 1]}`) }, "cm", classes);
  test.each([
    [74, 76],
    [88, 88],
    [89.9, 88],
    [90, 92],
    [106.9, 104],
    [107, 110],
    [130.9, 128],
  ])("that touch, %d cm is in class %d", async (measure, size) =>
    expect(await call("SIZEMATCH", touching, "bust", measure)).toBe(size),
  );
  test("that touch, the last one is half-open too", async () => {
    expectError(await call("SIZEMATCH", touching, "bust", 131), "#N/A");
  });
  test.each(classes.map((size, at) => [bounds[at]!, size]))(
    "that touch, the lower bound %d belongs to %d",
    async (m, s) => expect(await call("SIZEMATCH", touching, "bust", m)).toBe(s),
  );
  const apart = wide({ Chest: ["86-89", "92-95", "98-101"] }, "cm", ["S", "M", "L"]);
  test.each([
    [86, "S"],
    [89, "S"],
    [89.5, "M"],
    [90.5, "M"],
    [91.9, "M"],
    [95, "M"],
    [95.1, "L"],
    [97, "L"],
    [101, "L"],
  ])("with gaps, %d cm is %s: a gap belongs to the larger size", async (measure, size) =>
    expect(await call("SIZEMATCH", apart, "chest", measure)).toBe(size),
  );
});

describe("SIZEMATCH", () => {
  test("knows the places in any case and spacing", async () => {
    expect(await call("SIZEMATCH", MISSES, "HIP", 38)).toBe(14);
    expect(await call("SIZEMATCH", MISSES, "high bust", 34)).toBe(14);
    expect(await call("SIZEMATCH", MISSES, "highBust", 34)).toBe(14);
    expect(await call("SIZEMATCH", MISSES, "Back waist length", 16.5)).toBe(14);
    expect(await call("SIZEMATCH", MISSES, "backWaistLength", 16.5)).toBe(14);
  });
  test("gives a size back as a number only where it is one", async () => {
    const odd = wide({ Bust: [31, 33, 35, 37, 39, 41] }, "in", ["00", "0", "02", "18W", "XL", 14]);
    expect(await call("SIZEMATCH", odd, "bust", 31)).toBe("00");
    expect(await call("SIZEMATCH", odd, "bust", 33)).toBe(0);
    expect(await call("SIZEMATCH", odd, "bust", 35)).toBe("02");
    expect(await call("SIZEMATCH", odd, "bust", 37)).toBe("18W");
    expect(await call("SIZEMATCH", odd, "bust", 39)).toBe("XL");
    expect(await call("SIZEMATCH", odd, "bust", 41)).toBe(14);
    const text = wide({ Bust: [34, 36] }, "in", ["12", "14"]);
    expect(await call("SIZEMATCH", text, "bust", 36)).toBe(14);
    const ranges = wide({ Bust: [34, 37] }, "in", ["6-8", "10-12"]);
    expect(await call("SIZEMATCH", ranges, "bust", 34)).toBe("6-8");
  });
  test("reads measures as text, in their own unit", async () => {
    expect(await bust("34")).toBe(12);
    expect(await bust("33 3/4")).toBe(12);
    expect(await bust('34"')).toBe(12);
    expect(await bust("86,4 cm")).toBe(12); // 34.02 in
  });
  test("answers places and measures side by side, one place for a column, one measure for a row", async () => {
    expect(await call("SIZEMATCH", MISSES, column("bust", "waist", "hip"), column(34, 28, 40))).toEqual([
      [12],
      [14],
      [16],
    ]);
    expect(await call("SIZEMATCH", MISSES, row("bust", "waist", "hip"), row(34, 28, 40))).toEqual([[12, 14, 16]]);
    expect(await call("SIZEMATCH", MISSES, "bust", column(34, 36))).toEqual([[12], [14]]);
    expect(await call("SIZEMATCH", MISSES, row("bust", "hip"), 36)).toEqual([[14, 12]]);
    const square = [
      [34, 36],
      [38, 40],
    ];
    expect(await call("SIZEMATCH", MISSES, "bust", square)).toEqual([
      [12, 14],
      [16, 18],
    ]);
  });
  test("wants ranges of one shape", async () => {
    expectError(await call("SIZEMATCH", MISSES, column("bust", "hip"), column(34, 36, 38)), "#VALUE!");
    expectError(await call("SIZEMATCH", MISSES, column("bust", "hip"), row(34, 36)), "#VALUE!");
  });
  test("keeps each bad cell in its own place", async () => {
    const measures = column(34, "x", BLANK, "", 60, errorCell("#REF!"), -34, 46182, 100, 36);
    const answer = (await call("SIZEMATCH", MISSES, "bust", measures)) as unknown[][];
    const cells = answer.map(([cell]) => cell);
    expect(cells[0]).toBe(12);
    expectError(cells[1], "#VALUE!", /x/);
    expect(cells[2]).toBe("");
    expect(cells[3]).toBe("");
    expectError(cells[4], "#N/A", /14/); // 60 - 46
    expect(cells[5]).toMatchObject({ error: "#REF!" });
    expectError(cells[6], "#VALUE!");
    expectError(cells[7], "#VALUE!", /date/i);
    expectError(cells[8], "#VALUE!", /cm|cent/i);
    expect(cells[9]).toBe(14);
  });
  test("takes 0 as a blank measure", async () => {
    expect(await call("SIZEMATCH", MISSES, "bust", column(34, 0))).toEqual([[12], [""]]);
    expect(await callWithZeros("SIZEMATCH", MISSES, "bust", column(34, BLANK))).toEqual([[12], [""]]);
    expectError(await callWithZeros("SIZEMATCH", MISSES, "bust", BLANK), "#VALUE!");
  });
  test("refuses a blank, an unknown rule and a place that the chart lacks", async () => {
    expectError(await bust(BLANK), "#VALUE!");
    expectError(await bust(""), "#VALUE!");
    expectError(await bust(34, "roughly"), "#VALUE!", /roughly/, /closest/i);
    expectError(await call("SIZEMATCH", MISSES, "neck", 14), "#N/A", /neck/i);
    expectError(await call("SIZEMATCH", MISSES, BLANK, 14), "#VALUE!");
  });
  test("hands on an error cell where the single measure is one", async () => {
    expect(await bust(errorCell("#DIV/0!"))).toMatchObject({ error: "#DIV/0!" });
  });
  test("never gives a bigger body a smaller size", async () => {
    const measures = Array.from({ length: 165 }, (_, n) => 30 + n / 10);
    for (const rule of ["closest", "atleast", "atmost"]) {
      const answer = (await call("SIZEMATCH", MISSES, "bust", column(...measures), rule)) as unknown[][];
      const sizes = answer.map(([size]) => size).filter((size): size is number => typeof size === "number");
      expect(sizes.length).toBeGreaterThan(140);
      expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    }
  });
});

describe("SIZEBYPLACE", () => {
  test("lists place, measure, size, chart figure, difference and a note", async () => {
    const answer = rows(await call("SIZEBYPLACE", MISSES, ROSA));
    expect(answer[0]).toHaveLength(6);
    expect(rowOf(answer, "bust").slice(1, 5)).toEqual([34, 12, 34, 0]);
    expect(rowOf(answer, "waist").slice(1, 5)).toEqual([28, 14, 28, 0]);
    expect(rowOf(answer, "hip").slice(1, 5)).toEqual([40, 16, 40, 0]);
  });
  test("shows the difference from the figure", async () => {
    const answer = await call("SIZEBYPLACE", MISSES, bodyOf({ Bust: 34.5, Waist: 28 }));
    const cells = rowOf(answer, "bust");
    expect(cells.slice(1, 4)).toEqual([34.5, 12, 34]);
    expect(Math.abs(cells[4] as number)).toBeCloseTo(0.5, 9);
  });
  test("reads a person's column by its heading", async () => {
    const body = [
      ["Measurement", "Unit", "Rosa", "Mina"],
      ["Bust", "in", 34, 38],
      ["Waist", "in", 28, 30],
      ["Hip", "cm", 101.6, 96.52], // 40 and 38 in
    ];
    const answer = await call("SIZEBYPLACE", MISSES, body, "mina");
    expect(rowOf(answer, "bust")[2]).toBe(16);
    expect(rowOf(answer, "hip")[2]).toBe(14);
    expectRefusal(await call("SIZEBYPLACE", MISSES, body, "Nora"), /Nora/);
    expectError(await call("SIZEBYPLACE", MISSES, body), "#VALUE!");
  });
  test("keeps a measure that is off the chart in its own row, saying by how much", async () => {
    const answer = await call("SIZEBYPLACE", MISSES, bodyOf({ Bust: 34, Hip: 53 }));
    expect(rowOf(answer, "bust")[2]).toBe(12);
    const cells = rowOf(answer, "hip");
    expect(numbers(cells.slice(2, 3))).toEqual([]);
    expect(JSON.stringify(cells)).toMatch(/\b5\b/); // 53 - 48
  });
  test("takes bodies with places in the first row", async () => {
    const body = [
      ["Name", "Bust", "Waist", "Hip"],
      ["Rosa", 34, 28, 40],
    ];
    expect(rowOf(await call("SIZEBYPLACE", MISSES, body), "hip")[2]).toBe(16);
  });
});
