import { describe, expect, test } from "vitest";
import type { Cells } from "../../src/chart/cell";
import { readChartCells } from "../../src/chart/cells";
import { fabricChartsOf, readNapCell, readWidthCell } from "../../src/chart/cells-fabric";

const fabric = (cells: Cells) => {
  const read = readChartCells(cells, { role: "fabric" });
  return read.ok ? read.value : read.problem.code;
};
const rows = (cells: Cells) => {
  const chart = fabric(cells);
  return typeof chart === "string" ? chart : chart.rows;
};

describe("readWidthCell", () => {
  test.each([
    [45, { value: 45, unit: null }],
    ["45", { value: 45, unit: null }],
    ["45 in", { value: 45, unit: "in" }],
    ["115 cm", { value: 115, unit: "cm" }],
    ["1.5 m", { value: 150, unit: "cm" }],
    ['44/45"', { value: 45, unit: "in" }],
    ["58-60 in", { value: 60, unit: "in" }],
    ['44"/45"', { value: 45, unit: "in" }],
    ["140/150 cm", { value: 150, unit: "cm" }],
  ])("reads %j", (cell, value) => expect(readWidthCell(cell)).toEqual({ ok: true, value }));
  test.each([
    [null, "blank"],
    [0, "blank"],
    ["", "blank"],
    [-45, "badClothWidth"],
    ["-45", "badClothWidth"],
    ["wide", "badClothWidth"],
    [46_000, "excelDate"],
    ["46000", "excelDate"],
    [{ error: "#N/A" }, "errorCell"],
  ])("refuses %j", (cell, code) => expect(readWidthCell(cell)).toMatchObject({ ok: false, problem: { code } }));
  test("takes 20,000 for no date", () => {
    expect(readWidthCell(20_000)).toEqual({ ok: true, value: { value: 20_000, unit: null } });
    expect(readWidthCell("20000")).toEqual({ ok: true, value: { value: 20_000, unit: null } });
  });
});

describe("readNapCell", () => {
  test.each([
    [null, null], ["With nap", "with"], ["w/", "with"], ["yes", "with"], [true, "with"], ["one-way", "with"],
    ["one way", "with"], ["without nap", "without"], ["W/O", "without"], ["no", "without"], [false, "without"],
    ["either", "either"], ["with or without nap", "either"], ["with/without", "either"], ["both", "either"],
    ["any", "either"], ["with and without", "either"],
  ])("reads %j as %j", (cell, value) => expect(readNapCell(cell)).toEqual({ ok: true, value })); // prettier-ignore
  test("refuses another word, and an error", () => {
    expect(readNapCell("sideways")).toEqual({
      ok: false,
      problem: { code: "unknownNap", details: { text: "sideways" } },
    });
    expect(readNapCell({ error: "#N/A" })).toMatchObject({ ok: false, problem: { code: "errorCell" } });
  });
});

describe("fabricSheet", () => {
  test("takes a row's unit from its column, its figures, its width's unit, or the other rows", () => {
    const view = (cells: Cells) => {
      const read = rows(cells);
      return typeof read === "string" ? read : read.map(({ width, widthUnit, values }) => [width, widthUnit, values]);
    };
    // 1 yd = 0.9144 m exactly.
    expect(view([["View", "Width", "Unit", 8], ["A", 45, "m", 2], ["A", 60, "m", "1 yd"]])).toEqual([
      [45, "in", [2]],
      [60, "in", [0.9144]],
    ]); // prettier-ignore
    expect(fabric([["View", "Width", 8, 10], ["A", null, "2 m", "2.2 m"]])).toEqual({
      kind: "fabric",
      unit: "m",
      sizes: ["8", "10"],
      rows: [{ view: "A", part: "main", label: "", width: null, widthUnit: "cm", nap: null, values: [2, 2.2], unit: "m" }],
    }); // prettier-ignore
    expect(
      view([
        ["View", "Width", "Width unit", 8],
        ["A", 72, "cm", 2],
      ]),
    ).toEqual([[72, "cm", [2]]]);
    expect(
      fabric([
        ["View", "Width", "Width unit", 8],
        ["A", 72, "cm", 2],
      ]),
    ).toMatchObject({ unit: "m" });
    expect(view([["View", "Width", 8], ["A", 80, 2], ["B", null, 3]])).toEqual([[80, "in", [2]], [null, "in", [3]]]); // prettier-ignore
    expect(
      fabric([
        ["View", "Width", 8],
        ["A", null, 3],
      ]),
    ).toMatchObject({ unit: null });
    expect(
      fabric([
        ["View", "Width", 8],
        ["A", 81, 2],
      ]),
    ).toMatchObject({ unit: "m", rows: [{ widthUnit: "cm" }] });
  });
  test("takes the larger of a range, and leaves out a row with nothing in it", () => {
    expect(
      rows([
        ["View", "Width", 8, 10],
        ["A", 45, "2-2 1/4", null],
        ["note", null, "see below", null],
        ["B", 60, null, null],
      ]),
    ).toEqual([
      { view: "A", part: "main", label: "45", width: 45, widthUnit: "in", nap: null, values: [2.25, null], unit: "yd" },
      { view: "B", part: "main", label: "60", width: 60, widthUnit: "in", nap: null, values: [null, null], unit: "yd" },
    ]);
  });
  test.each([
    [["View", "Width", 8], ["A", "wide", 2], "badClothWidth"],
    [["View", "Width", "Width unit", 8], ["A", 45, "ells", 2], "unknownUnit"],
    [["View", "Width", "Unit", 8], ["A", 45, "ells", 2], "unknownUnit"],
    [["View", "Width", "Nap", 8], ["A", 45, "sideways", 2], "unknownNap"],
  ])("refuses a row of %j: %j", (head, row, code) => expect(fabric([head, row])).toBe(code));
});

describe("fabricChartsOf", () => {
  test("makes a chart for each unit, and an empty one of no rows", () => {
    expect(fabricChartsOf({ sizes: ["8"], rows: [] })).toEqual([
      { kind: "fabric", unit: null, sizes: ["8"], rows: [] },
    ]);
    const row = { view: "A", part: "main", label: "", width: 45, nap: null, values: [2] } as const;
    const [yards, metres] = [
      { ...row, widthUnit: "in", unit: "yd" },
      { ...row, widthUnit: "cm", unit: "m" },
    ] as const;
    expect(fabricChartsOf({ sizes: ["8"], rows: [yards, metres, yards] })).toEqual([
      { kind: "fabric", unit: "yd", sizes: ["8"], rows: [yards, yards] },
      { kind: "fabric", unit: "m", sizes: ["8"], rows: [metres] },
    ]);
  });
});
