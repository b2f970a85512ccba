import { describe, expect, test } from "vitest";
import { FIGURES, INDEX_HEADINGS, indexRows, MISSES, SIZES, wide } from "./charts";
import {
  BLANK,
  errorCell,
  call,
  callWithZeros,
  column,
  expectError,
  expectRefusal,
  type Grid,
  isError,
} from "./functions";

const FOUR = [10, 12, 14, 16];
const SMALL: Grid = [
  ["Size", ...FOUR],
  ["Bust", 32.5, 34, 36, 38],
  ["Waist", 25, 26.5, 28, 30],
  ["Hip", 34.5, 36, 38, 40],
];
const turned = (grid: Grid): Grid => grid[0]!.map((_, at) => grid.map((cells) => cells[at]));
const withoutColumn = (grid: Grid, heading: string): Grid => {
  const at = grid[0]!.indexOf(heading);
  return grid.map((cells) => cells.filter((_, n) => n !== at));
};
const inOrder = (grid: Grid, order: readonly number[]): Grid => grid.map((cells) => order.map((at) => cells[at]));

/** Every layout below is the same chart: 34 in is size 12 at the bust, 38 in size 14 at the hip. */
const layouts: readonly (readonly [string, Grid])[] = [
  ["as the pane writes it", MISSES],
  ["without a unit", withoutColumn(MISSES, "Unit")],
  ["headed Size in the corner", SMALL],
  ["with the unit first", inOrder(MISSES, [1, 0, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11])],
  ["with the unit last", inOrder(MISSES, [0, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 1])],
  ["with the label after the sizes", inOrder(MISSES, [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 1, 0])],
  ["with the unit between the sizes", inOrder(MISSES, [0, 2, 3, 4, 5, 1, 6, 7, 8, 9, 10, 11])],
  ["with headings in capitals", [["MEASUREMENT", "UNIT", ...SIZES], ...MISSES.slice(1)]],
  ["with sizes as text", [["Measurement", "Unit", ...SIZES.map(String)], ...MISSES.slice(1)]],
  ["with a title above", [["Camp shirt, body measurements", ...SIZES.map(() => BLANK), BLANK], ...MISSES]],
  [
    "with a title and blank rows",
    [
      ["Camp shirt", BLANK, BLANK, BLANK, BLANK],
      [BLANK, BLANK, BLANK, BLANK, BLANK],
      SMALL[0]!,
      SMALL[1]!,
      [BLANK, BLANK, BLANK, BLANK, BLANK],
      SMALL[2]!,
      SMALL[3]!,
      [BLANK, BLANK, BLANK, BLANK, BLANK],
    ],
  ],
  ["turned", turned(SMALL)],
  ["turned, under a title", [["Camp shirt", BLANK, BLANK, BLANK], ...turned(SMALL)]],
  ["turned, sizes as text", turned([["Size", "10", "12", "14", "16"], ...SMALL.slice(1)])],
  [
    "with figures as text",
    [
      ["Measurement", "Unit", 10, 12, 14, 16],
      ["Bust", "in", "32 1/2", "34", '36"', "38 in"],
      ["Waist", "in", "25", "26½", "28", "30"],
      ["Hip", "in", "34-1/2", "36", "38", "40"],
    ],
  ],
  [
    "with the unit at each figure, in another unit than the column's",
    [
      ["Measurement", "Unit", 10, 12, 14, 16],
      ["Bust", "in", "82.55 cm", "86,36 cm", "91.44 cm", "96.52 cm"],
      ["Hip", "in", 34.5, 36, 38, 40],
    ],
  ],
  [
    "with a unit of its own for each row",
    [
      ["Measurement", "Unit", 10, 12, 14, 16],
      ["Bust", "in", 32.5, 34, 36, 38],
      ["Hip", "cm", 87.63, 91.44, 96.52, 101.6], // 34 1/2, 36, 38, 40 in
    ],
  ],
];

describe("a chart's range", () => {
  test.each(layouts)("is read %s", async (_, chart) => {
    expect(await call("SIZEMATCH", chart, "bust", 34)).toBe(12);
    expect(await call("SIZEMATCH", chart, "Bust", "36 in")).toBe(14);
    expect(await call("SIZEMATCH", chart, "hip", "38 in")).toBe(14);
  });
  test.each(layouts)("is read %s where blank cells arrive as 0", async (_, chart) => {
    expect(await callWithZeros("SIZEMATCH", chart, "bust", 34)).toBe(12);
    expect(await callWithZeros("SIZEMATCH", chart, "hip", "38 in")).toBe(14);
  });
  test("may be the pattern index with the pattern's name", async () => {
    const index = [
      INDEX_HEADINGS,
      ...indexRows("Wrap skirt", "body", { Waist: 0, Hip: 0 }),
      ...indexRows("Camp shirt", "body", { Bust: 0, Waist: 0, Hip: 0 }),
      ...indexRows("Camp shirt", "finished", { Bust: 5, Hip: 6 }),
    ];
    expect(await call("SIZEMATCH", index, "bust", 34, undefined, "Camp shirt")).toBe(12);
    expect(await call("SIZEMATCH", index, "bust", 34, undefined, "camp SHIRT")).toBe(12);
    expect(await call("SIZEMATCH", index, "waist", 28, "closest", "Wrap skirt")).toBe(14);
    expectError(await call("SIZEMATCH", index, "bust", 34, undefined, "Wrap skirt"), "#N/A", /bust/i);
    expectError(await call("SIZEMATCH", index, "bust", 34, undefined, "Parka"), "#N/A", /Parka/);
    expect(await call("SIZEMATCH", index, "hip", 38, "closest", column("Wrap skirt", "Camp shirt"))).toEqual([
      [14],
      [14],
    ]);
    const mixed = (await call("SIZEMATCH", index, "hip", 38, "closest", column("Parka", BLANK))) as unknown[][];
    expectError(mixed[0]![0], "#N/A", /Parka/);
    expect(mixed[1]![0]).toBe("");
  });
  test("may be the index with its columns in another order", async () => {
    const order = [11, 10, 9, 8, 2, 1, 0, 3, 4, 5, 6, 7];
    const index = [INDEX_HEADINGS, ...indexRows("Camp shirt", "body", { Bust: 0 })];
    expect(await call("SIZEMATCH", inOrder(index, order), "bust", 34, undefined, "Camp shirt")).toBe(12);
  });
  test("without headings is a table's bare name, and says what to add", async () => {
    expectError(await call("SIZEMATCH", MISSES.slice(1), "bust", 34), "#VALUE!", /\[#All\]/i);
    expectError(await call("SIZECOLUMN", MISSES.slice(1), 14), "#VALUE!", /\[#All\]/i);
  });
  test("without readable figures is refused", async () => {
    expectRefusal(await call("SIZEMATCH", [["hello", "there"]], "bust", 34));
    expectRefusal(await call("SIZEMATCH", [[BLANK]], "bust", 34));
    expectRefusal(await call("SIZEMATCH", 7, "bust", 34));
    expectRefusal(await callWithZeros("SIZEMATCH", [[BLANK, BLANK]], "bust", 34));
  });
  test("with a corner left blank is never read wrongly in silence", async () => {
    const answer = await call("SIZEMATCH", [[BLANK, ...FOUR], ...SMALL.slice(1)], "bust", 34);
    if (!isError(answer)) expect(answer).toBe(12);
  });
});

describe("a chart's unit", () => {
  // 84, 88, 92, 96 cm: EN 13402-3:2004, women's bust.
  const metric: Grid = [
    ["Measurement", 84, 88, 92, 96],
    ["Bust", 84, 88, 92, 96],
    ["Waist", 68, 72, 76, 80],
    ["Hip", 92, 96, 100, 104],
  ];
  test("comes from the numbers when it isn't printed", async () => {
    expect(await call("SIZEMATCH", metric, "bust", 88)).toBe(88);
    expect(await call("SIZEMATCH", metric, "bust", "34 in")).toBe(88); // 86.36 cm: 2.36 from 84, 1.64 from 88
    expect(await call("SIZEMATCH", metric, "bust", "0.9 m")).toBe(92); // 90 cm, a tie
    expect(await call("SIZEMATCH", SMALL, "bust", "88 cm")).toBe(12); // 34.65 in: 0.65 from 34, 1.35 from 36
    expect(await call("SIZEMATCH", SMALL, "bust", "90 cm")).toBe(14); // 35.43 in: 1.43 from 34, 0.57 from 36
  });
  test("is the one that fits more rows", async () => {
    const odd = [...SMALL.slice(0, 3), ["Hip", 87.6, 91.4, 96.5, 101.6]];
    expect(await call("SIZEMATCH", odd, "bust", "86.36 cm")).toBe(12);
  });
  test("that can't be decided leaves bare numbers as they stand and refuses text with a unit", async () => {
    const unknown: Grid = [
      ["Measurement", "S", "M", "L"],
      ["Strap drop", 5, 6, 7],
    ];
    expect(await call("SIZEMATCH", unknown, "strap drop", 6)).toBe("M");
    expectError(await call("SIZEMATCH", unknown, "strap drop", "6 in"), "#VALUE!", /inch/i, /cent|cm/i);
    const split: Grid = [
      ["Measurement", "S", "M", "L"],
      ["Bust", 32, 34, 36],
      ["Hip", 92, 96, 100],
    ];
    expect(await call("SIZEMATCH", split, "bust", 34)).toBe("M");
    expect(await call("SIZEMATCH", split, "hip", 96)).toBe("M");
    expectError(await call("SIZEMATCH", split, "bust", "34 in"), "#VALUE!", /inch/i, /cent|cm/i);
  });
  test("that doesn't match the measure is noticed", async () => {
    // 100 / 46 = 2.2 times off the inch chart's end, 76 / 34 = 2.2 times off the centimetre chart's.
    expectError(await call("SIZEMATCH", MISSES, "bust", 100), "#VALUE!", /cm|cent/i, /inch/i);
    const cm = wide({ Bust: [76, 80, 84, 88], Waist: [60, 64, 68, 72] }, "cm", [76, 80, 84, 88]);
    expectError(await call("SIZEMATCH", cm, "bust", 34), "#VALUE!", /cm|cent/i, /inch/i);
  });
});

describe("a chart's cells", () => {
  test("that are blank are missing figures, not noughts", async () => {
    const gaps: Grid = [
      ["Measurement", "Unit", 10, 12, 14],
      ["Bust", "in", BLANK, 34, 36],
      ["Waist", "in", 25, 26.5, 28],
    ];
    expect(await call("SIZEMATCH", gaps, "bust", 34)).toBe(12);
    expect(await callWithZeros("SIZEMATCH", gaps, "bust", 34)).toBe(12);
    // Half the end step below 34 is 33: size 10 has no figure and can't be the answer.
    expectError(await callWithZeros("SIZEMATCH", gaps, "bust", 32.4), "#N/A");
    expect(await call("SIZECOLUMN", gaps, 10)).toEqual([[""], [25]]);
    expect(await callWithZeros("SIZECOLUMN", gaps, 10)).toEqual([[""], [25]]);
  });
  test("may be printed ranges", async () => {
    const ranges = wide({ Bust: ["86-89", "90 – 93", "94 to 97"] }, "cm", ["S", "M", "L"]);
    expect(await call("SIZEMATCH", ranges, "bust", 87)).toBe("S");
    expect(await call("SIZEMATCH", ranges, "bust", 93)).toBe("M");
    expect(await call("SIZEMATCH", ranges, "bust", 95)).toBe("L");
  });
  test("that hold an error above the figures are that error, never a size of that name", async () => {
    const broken = [
      ["Size", 10, 12, errorCell("#N/A")],
      ["Bust", 32, 34, 36],
    ];
    expect(await call("SIZEMATCH", broken, "bust", 36)).toMatchObject({ error: "#N/A" });
    expect(await call("SIZEMATCH", turned(broken), "bust", 36)).toHaveProperty("error");
  });
  test("that Excel made a date of are named as dates", async () => {
    const dates = [["Measurement", "Unit", 46182, 46363], ...MISSES.slice(1).map((cells) => cells.slice(0, 4))];
    expectError(await call("SIZEMATCH", dates, "bust", 31), "#VALUE!", /date/i);
  });
});

describe("SIZECOLUMN", () => {
  test("is the whole column in chart order, without the size", async () => {
    expect(await call("SIZECOLUMN", MISSES, 14)).toEqual([[36], [28], [38], [34], [16.5]]);
    expect(await call("SIZECOLUMN", MISSES, "14")).toEqual([[36], [28], [38], [34], [16.5]]);
    expect(await call("SIZECOLUMN", MISSES, " 14 ")).toEqual([[36], [28], [38], [34], [16.5]]);
    expect(await call("SIZECOLUMN", SMALL, 16)).toEqual([[38], [30], [40]]);
  });
  test("is read from a turned chart in the order of its places", async () => {
    expect(await call("SIZECOLUMN", turned(SMALL), 12)).toEqual([[34], [26.5], [36]]);
  });
  test("is found in the index by pattern", async () => {
    const index = [INDEX_HEADINGS, ...indexRows("Camp shirt", "body", { Bust: 0, Waist: 0, Hip: 0 })];
    expect(await call("SIZECOLUMN", index, 14, "Camp shirt")).toEqual([[36], [28], [38]]);
  });
  test("matches labels without case or spaces", async () => {
    const letters = wide({ Bust: [36, 40], Waist: [28, 32] }, "in", ["18 W", "xl"]);
    expect(await call("SIZECOLUMN", letters, "18w")).toEqual([[36], [28]]);
    expect(await call("SIZECOLUMN", letters, "XL")).toEqual([[40], [32]]);
  });
  test("tells 0 from 00 and 2 from 02", async () => {
    // Sizes 00 and 0, bust and under bust: ASTM D5585-11e1, Table 1.
    const astm = wide({ Bust: [31.125, 31.75], Underbust: [25.75, 26.5] }, "in", ["00", "0"]);
    expect(await call("SIZECOLUMN", astm, "00")).toEqual([[31.125], [25.75]]);
    expect(await call("SIZECOLUMN", astm, "0")).toEqual([[31.75], [26.5]]);
  });
  test("refuses a size that isn't on the chart, naming it and what there is", async () => {
    expectError(await call("SIZECOLUMN", MISSES, "3x"), "#N/A", /3x/i, /24/);
    expectError(await call("SIZECOLUMN", MISSES, 13), "#N/A", /13/);
    expectError(await call("SIZECOLUMN", MISSES, BLANK), "#VALUE!");
    expectError(await call("SIZECOLUMN", MISSES, 46182), "#VALUE!", /date/i);
  });
  test("has the figures of the table it is given", async () => {
    const finished = [
      ["Measurement", "View", "Unit", ...SIZES],
      ["Bust", "A", "in", ...FIGURES["Bust"]!.map((figure) => figure + 5)],
    ];
    expect(await call("SIZECOLUMN", finished, 14)).toBe(41);
  });
});
