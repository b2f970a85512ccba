import { describe, expect, test } from "vitest";
import { bodyOf, MISSES, ROSA, SIZES, wide } from "./charts";
import {
  BLANK,
  call,
  callWithZeros,
  column,
  errorCell,
  expectError,
  expectRefusal,
  formattedCell,
  type Grid,
  isError,
  rawCall,
  row,
} from "./functions";

/** For every function with look-up arguments: a call that works, and the argument that is varied. */
const lookups: readonly (readonly [string, readonly unknown[], number])[] = [
  ["LENGTH", ["2 in", "cm"], 0],
  ["TOYARDS", [2.1, 0.125], 0],
  ["TOMETRES", [2.375, 0.1], 0],
  ["FRACTION", [2.375], 0],
  ["BUYLENGTH", [2.1, 0.5], 0],
  ["SIZEMATCH", [MISSES, "bust", 34], 2],
  ["EASE", [40, 36], 0],
  ["FITTERM", [3, "dress", "bust"], 0],
  ["STRETCH", [4, 5], 1],
  ["FABRICWIDTH", [2, 60, 45, 0.125], 0],
  ["EXTRAYARDAGE", [2, "yd", 0.05], 0],
  ["SALEPRICE", [10, 0.25], 0],
];
const replaced = (args: readonly unknown[], at: number, value: unknown) =>
  args.map((old, n) => (n === at ? value : old));

describe("a look-up argument", () => {
  test.each(lookups)("of %s gives the answer its shape", async (id, args, at) => {
    const one = await call(id, ...args);
    expect(isError(one)).toBe(false);
    expect(await call(id, ...replaced(args, at, column(args[at], args[at], args[at])))).toEqual([[one], [one], [one]]);
    expect(await call(id, ...replaced(args, at, row(args[at], args[at])))).toEqual([[one, one]]);
    const square = [
      [args[at], args[at]],
      [args[at], args[at]],
    ];
    expect(await call(id, ...replaced(args, at, square))).toEqual([
      [one, one],
      [one, one],
    ]);
  });
  test.each(lookups)(
    "of %s keeps an error cell, bad text, a blank and an empty text in their own places",
    async (id, args, at) => {
      const one = await call(id, ...args);
      const cells = column(args[at], errorCell("#DIV/0!"), "rubbish", BLANK, "", args[at]);
      const answer = (await call(id, ...replaced(args, at, cells))) as unknown[][];
      expect(answer).toHaveLength(6);
      expect(answer[0]![0]).toEqual(one);
      expect(answer[1]![0]).toMatchObject({ error: "#DIV/0!" });
      expectError(answer[2]![0], "#VALUE!", /rubbish/);
      expect(answer[3]![0]).toBe("");
      expect(answer[4]![0]).toBe("");
      expect(answer[5]![0]).toEqual(one);
    },
  );
  test.each(lookups)("of %s that is one blank cell is the cell's error", async (id, args, at) => {
    expectError(await call(id, ...replaced(args, at, BLANK)), "#VALUE!");
    expectError(await call(id, ...replaced(args, at, "")), "#VALUE!");
  });
  test.each(lookups)("of %s that is one error cell is that error", async (id, args, at) => {
    expect(await call(id, ...replaced(args, at, errorCell("#DIV/0!")))).toMatchObject({ error: "#DIV/0!" });
  });
  test.each(lookups)("of %s may be a number kept as text, or one with a format", async (id, args, at) => {
    const one = await call(id, ...args);
    if (typeof args[at] !== "number") return;
    expect(await call(id, ...replaced(args, at, String(args[at])))).toEqual(one);
    expect(await call(id, ...replaced(args, at, formattedCell(args[at], "# ?/??")))).toEqual(one);
    expect(await call(id, ...replaced(args, at, column(formattedCell(args[at], "# ?/??"), args[at])))).toEqual([
      [one],
      [one],
    ]);
  });
  test.each(lookups.filter(([id]) => !["FRACTION", "FITTERM", "STRETCH", "SALEPRICE"].includes(id)))(
    "of %s above 20,000 is a date that Excel has made",
    async (id, args, at) => expectError(await call(id, ...replaced(args, at, 46182)), "#VALUE!", /date/i),
  );
  test.each(lookups)("of %s answers one cell with a scalar", async (id, args, at) => {
    const raw = await rawCall(id, ...args.map((value, n) => (n === at ? [[value]] : value)));
    expect(["string", "number", "boolean"]).toContain(typeof (Array.isArray(raw) ? raw[0]![0] : raw));
    if (Array.isArray(raw)) expect([raw.length, raw[0]!.length]).toEqual([1, 1]);
  });
  test("mixes with single cells and wants one shape of the ranges", async () => {
    expect(await call("FABRICWIDTH", column(2, 1.375), column(60, 54), column(45, 36), 0.125)).toEqual([[2.75], [2]]);
    expectError(await call("FABRICWIDTH", column(2, 1.375), row(60, 54), 45, 0.125), "#VALUE!");
    expectError(await call("SALEPRICE", column(10, 20, 30), column(0.1, 0.2)), "#VALUE!");
  });
});

describe("a whole set", () => {
  test("of chart cells may hold numbers with formats", async () => {
    const formatted = MISSES.map((cells, at) =>
      at ? cells.map((v) => (typeof v === "number" ? formattedCell(v, "# ?/??") : v)) : cells,
    );
    expect(await call("SIZEMATCH", formatted, "bust", 34)).toBe(12);
    expect(await call("CUTSIZE", formatted, ROSA, "fitted dress")).toBe(16);
  });
  test("with an error cell in it is never read as if the cell weren't there", async () => {
    const broken: Grid = [
      ["Measurement", "Unit", 10, 12, 14],
      ["Bust", "in", 32.5, errorCell("#REF!"), 36],
    ];
    const answer = await call("SIZEMATCH", broken, "bust", 34);
    // 12 can't be known; 32 1/2 or 36 would be a wrong size in silence.
    expect(isError(answer)).toBe(true);
  });
  test("with unreadable text in it is never read as if the cell weren't there", async () => {
    const broken: Grid = [
      ["Measurement", "Unit", 10, 12, 14],
      ["Bust", "in", 32.5, "thirty-four", 36],
    ];
    expect(isError(await call("SIZEMATCH", broken, "bust", 34))).toBe(true);
  });
});

describe("a size", () => {
  const odd = wide({ Bust: [31, 33, 35, 37, 39], Waist: [24, 26, 28, 30, 32] }, "in", ["00", "02", "2", 14, "18W"]);
  test("is the same as a number and as text", async () => {
    expect(await call("SIZECOLUMN", odd, 14)).toEqual([[37], [30]]);
    expect(await call("SIZECOLUMN", odd, "14")).toEqual([[37], [30]]);
    expect(await call("SIZECOLUMN", odd, 2)).toEqual([[35], [28]]);
    expect(await call("SIZECOLUMN", odd, "02")).toEqual([[33], [26]]);
    expect(await call("SIZECOLUMN", odd, "18w")).toEqual([[39], [32]]);
    expectError(await call("SIZECOLUMN", odd, 18), "#N/A", /18/);
    expectRefusal(await call("SIZECOLUMN", odd, 0));
  });
  test("comes back as a number only when it is written as one", async () => {
    expect(await call("SIZEMATCH", odd, "bust", column(31, 33, 35, 37, 39))).toEqual([
      ["00"],
      ["02"],
      [2],
      [14],
      ["18W"],
    ]);
  });
});

describe("a body", () => {
  const sizeOf = (body: unknown, person?: unknown) => call("CUTSIZE", MISSES, body, "fitted dress", undefined, person);
  test("may have headings or none, a unit or none, in any order of rows", async () => {
    expect(await sizeOf(ROSA)).toBe(16);
    expect(await sizeOf([...ROSA].reverse())).toBe(16);
    expect(await sizeOf([["Measurement", "Rosa"], ...ROSA])).toBe(16);
    expect(await sizeOf([["Measurement", "Unit", "Rosa"], ...ROSA.map(([label, value]) => [label, "in", value])])).toBe(
      16,
    );
  });
  test("may be a row under its places", async () => {
    expect(
      await sizeOf([
        ["Bust", "Waist", "Hip"],
        [34, 28, 40],
      ]),
    ).toBe(16);
    expect(
      await sizeOf([
        ["Hip", "Name", "Bust", "Waist"],
        [40, "Rosa", 34, 28],
      ]),
    ).toBe(16);
  });
  test("may have blank rows and places that the chart lacks", async () => {
    const body = [["Height", 64], [BLANK, BLANK], ...ROSA, ["Favourite colour", "green"]];
    expect(await sizeOf(body)).toBe(16);
    expect(await callWithZeros("CUTSIZE", MISSES, body, "fitted dress")).toBe(16);
  });
  test("is read by person, in any column", async () => {
    const people = [
      ["Measurement", "Unit", "Rosa", "Mina"],
      ["Bust", "in", 34, 36],
      ["Waist", "in", 28, 28],
      ["Hip", "in", 40, 38],
    ];
    expect(await sizeOf(people, "Rosa")).toBe(16);
    expect(await sizeOf(people, "Mina")).toBe(14);
    expectRefusal(await sizeOf(people, "Nora"), /Nora/);
  });
  test("with two of the same person is not decided in silence", async () => {
    const people = [
      ["Measurement", "Rosa", "Rosa"],
      ["Bust", 34, 44],
      ["Waist", 28, 37],
      ["Hip", 40, 46],
    ];
    expect(isError(await sizeOf(people, "Rosa"))).toBe(true);
  });
  test("blank, or without a place that anybody knows, is refused", async () => {
    expectRefusal(await sizeOf([[BLANK, BLANK]]));
    expectRefusal(await sizeOf([["colour", "green"]]));
    expectRefusal(await sizeOf(BLANK));
  });
  test("in text, each figure with its own unit, meets a metric chart", async () => {
    const metric = wide({ Bust: [84, 88, 92], Waist: [68, 72, 76], Hip: [92, 96, 100] }, "cm", [36, 38, 40]);
    // 34 in = 86.36 cm: 38; 28 in = 71.12 cm: 38; 97 cm: 38.
    expect(await call("CUTSIZE", metric, bodyOf({ Bust: "34 in", Waist: '28"', Hip: "97 cm" }), "fitted dress")).toBe(
      38,
    );
    expect(await call("CUTSIZE", metric, bodyOf({ Bust: 88, Waist: "71,5", Hip: "97" }), "fitted dress")).toBe(38);
  });
});

describe("every function", () => {
  test("says what an unknown pattern is where the chart is no index", async () => {
    // A pattern named beside a chart of one pattern can't be checked: it is refused or ignored, never a third thing.
    const answer = await call("SIZEMATCH", MISSES, "bust", 34, "closest", "Camp shirt");
    if (!isError(answer)) expect(answer).toBe(12);
  });
  test("answers the same whichever way blanks arrive", async () => {
    const chart = [
      ["Camp shirt", ...SIZES.map(() => BLANK), BLANK],
      ...MISSES,
      Array.from({ length: 12 }, () => BLANK),
    ];
    const body = [...ROSA, ["Neck", BLANK]];
    for (const ask of [call, callWithZeros]) {
      expect(await ask("CUTSIZE", chart, body, "fitted dress", BLANK, BLANK, BLANK, BLANK)).toBe(16);
      expect(await ask("SIZEMATCH", chart, "bust", 34, BLANK, BLANK)).toBe(12);
      expect(await ask("SALEPRICE", 10, BLANK, BLANK)).toBe(10);
      expect(await ask("TOYARDS", 0.9144, BLANK)).toBeCloseTo(1, 9);
      expect(await ask("FRACTION", 2.375, BLANK)).toBe("2 3/8");
    }
  });
});
