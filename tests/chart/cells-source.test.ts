import { describe, expect, test } from "vitest";
import type { Cell, Cells } from "../../src/chart/cell";
import { chartSource, kindOf, once, readChartCells } from "../../src/chart/cells";
import { chooseChart, nearestCharts } from "../../src/chart/cells-choose";
import { fabricChartsOf, fabricSheet, readNapCell, readWidthCell } from "../../src/chart/cells-fabric";
import { readFigureCell } from "../../src/chart/cells-figure";
import { readGrid } from "../../src/chart/cells-grid";
import type { Chart, Figure } from "../../src/chart/model";

const refusal = (code: string, details: object) => ({ ok: false, problem: { code, details } });
const error = { error: "#N/A" };

describe("chartSource", () => {
  test.each<[string, Cells, string, object]>([
    ["nothing", [], "emptyChart", { wanted: "a chart" }],
    ["a blank row", [[]], "emptyChart", { wanted: "a chart" }],
    ["an error alone", [[error]], "errorCell", { error: "#N/A" }],
    ["a word alone", [["Bust"]], "chartHeadings", { found: "Bust" }],
    ["a number alone", [[8]], "chartHeadings", { found: "8" }],
    ["a row that begins with an error", [[error, 8, 10]], "chartHeadings", { found: "#N/A" }],
    ["a column that begins with an error", [[error], [8]], "chartHeadings", { found: "#N/A" }],
  ])("refuses %s", (_, cells, code, details) => expect(chartSource(cells)).toEqual(refusal(code, details)));

  const skirt: Cells = [["Size", "Unit", 8], ["Waist", "in", 24]]; // prettier-ignore
  test("makes the charts of a range once", () => {
    const source = chartSource(skirt);
    if (!source.ok) throw new Error("no chart");
    expect(source.value.kind).toBe("body");
    expect(source.value.charts("body", null)).toBe(source.value.charts("body", null));
    expect(source.value.sheets("body", null)).toBe(source.value.sheets("body", null));
    expect(source.value.charts("fabric", null)).toEqual(
      refusal("wrongTable", { found: "body measurements", wanted: "fabric amounts" }),
    );
  });

  const heads = ["Pattern", "Kind", "Unit", "Measurement", "Size", "Low"];
  const line = (pattern: string, size: Cell, low: Cell, place = "Waist") => [pattern, "body", "in", place, size, low];
  const asked = (cells: Cells, pattern: Cell) => {
    const source = chartSource(cells);
    if (!source.ok) throw new Error("no index");
    const read = source.value.sheets("body", pattern);
    return read.ok ? read.value.map(({ sizes }) => sizes) : read;
  };
  test("finds a pattern in the index by its name, and the only one without", () => {
    const two = [heads, line("Wrap skirt", 8, 24), line("Shirt", 10, 25)];
    expect(asked(two, " wrap  SKIRT")).toEqual([["8"]]);
    expect(asked(two, "Shirt")).toEqual([["10"]]);
    const known = "Wrap skirt, Shirt";
    expect(asked(two, null)).toEqual(refusal("blank", { wanted: `the pattern's name (${known})` }));
    expect(asked(two, "Apron")).toEqual(refusal("unknownPattern", { text: "Apron", known }));
    expect(asked(two, error)).toEqual(refusal("errorCell", error));
    const one = [heads, line("Shirt", 10, 25)];
    expect(asked(one, null)).toEqual([["10"]]);
    expect(asked(one, "Apron")).toEqual(refusal("unknownPattern", { text: "Apron", known: "Shirt" }));
    expect(asked([heads], null)).toEqual(refusal("blank", { wanted: "the pattern's name (none)" }));
  });
  test("doesn't choose between two tables of a pattern, and names them", () => {
    const cells = [heads, line("Shirt", 8, 24), line("Shirt", "16W", 32, "Hip")];
    const tables = "8, in; 16W, in";
    const read = (pattern: Cell) => readChartCells(cells, { role: "body", pattern });
    expect(read("Shirt")).toEqual(refusal("severalTables", { pattern: "Shirt", tables }));
    expect(read(null)).toEqual(refusal("severalTables", { pattern: "This range", tables }));
  });
});

describe("once", () => {
  test("makes what a key stands for a single time", () => {
    let made = 0;
    const known = new Map<string, number>();
    expect(["a", "b", "a"].map((key) => once(known, key, () => ++made))).toEqual([1, 2, 1]);
  });
});

describe("kindOf", () => {
  const kind = (columns: object, rows: Cells, title = "") => kindOf({ title, columns, sizes: [], rows });
  const places: Cells = [["Bust", 31], ["Yoke", 3]]; // prettier-ignore
  test.each([
    ["body for places", kind({ label: 0 }, places), "body"],
    ["body for labels that aren't known", kind({ label: 0 }, [["Yoke", 3]]), "body"],
    ["body where a title speaks of something else", kind({ label: 0 }, places, "Unfinished edges"), "body"],
    ["finished by its title", kind({ label: 0 }, places, "FINISHED garment"), "finished"],
    ["finished by its views", kind({ label: 0, view: 2 }, places), "finished"],
    ["fabric by its widths", kind({ width: 0 }, [[45, 2]]), "fabric"],
    ["fabric by its widths, whatever stands elsewhere", kind({ width: 0 }, [[45, "Bust"]]), "fabric"],
    ["body where a width stands beside places", kind({ label: 0, width: 1 }, places), "body"],
    ["fabric by its nap", kind({ label: 0, nap: 1 }, [["A", "with"]]), "fabric"],
    ["fabric by its parts", kind({ label: 0, part: 1 }, [["A", "lining"]]), "fabric"],
    ["body where parts stand beside places", kind({ label: 0, part: 1 }, places), "body"],
  ])("is %s", (_, found, wanted) => expect(found).toBe(wanted));
});

describe("what a cell of a fabric table names when it is refused", () => {
  test.each<[Cell, string, object]>([
    [null, "blank", { wanted: "a fabric width" }],
    [-5, "badClothWidth", { text: "-5" }],
    ["0 in", "badClothWidth", { text: "0 in" }],
    ["about 44/45", "badClothWidth", { text: "about 44/45" }],
    ["60/58", "badClothWidth", { text: "60/58" }],
    ["150/140 cm", "badClothWidth", { text: "150/140 cm" }],
    [46_000, "excelDate", { text: "46000" }],
    ["25000 cm", "excelDate", { text: "25000 cm" }],
  ])("width %j", (cell, code, details) => expect(readWidthCell(cell)).toEqual(refusal(code, details)));
  test("two figures that are the same are one width", () => {
    expect(readWidthCell("45/45 in")).toEqual({ ok: true, value: { value: 45, unit: "in" } });
  });
  test("a nap written in one word", () => {
    expect(readNapCell("withnap")).toEqual({ ok: true, value: "with" });
  });
});

describe("fabricSheet", () => {
  const sheet = (cells: Cells) => {
    const grid = readGrid(cells);
    const read = grid.ok ? fabricSheet(grid.value) : grid;
    if (!read.ok) throw new Error(read.problem.code);
    return read.value;
  };
  test("gives a row without a unit that of the others only where they agree", () => {
    const head = ["View", "Width", 8, 10];
    const mixed = sheet([head, ["A", 45, 2, 2], ["B", 150, 2, 2], ["C", null, 3, null]]);
    expect(mixed.rows.map(({ unit, values }) => [unit, values])).toEqual([
      ["yd", [2, 2]],
      ["m", [2, 2]],
      [null, [3, null]],
    ]);
    expect(fabricChartsOf(mixed).map(({ unit, rows }) => [unit, rows.length])).toEqual([
      ["yd", 1],
      ["m", 1],
      [null, 1],
    ]);
    expect(sheet([head, ["A", 45, 2, 2], ["C", null, 3, null]]).rows[1]).toMatchObject({
      unit: "yd",
      values: [3, null],
    });
    expect(sheet([head, ["A", null, 2, "2 m"]]).rows[0]).toMatchObject({ unit: "m", widthUnit: "cm", values: [2, 2] });
  });
});

describe("readFigureCell at an edge", () => {
  const fault = (code: string, text: string) => ({ figure: { fault: { code, details: { text } } }, unit: null });
  test.each<[Cell, object]>([
    [20_000, { figure: 20_000, unit: null }],
    ["20000", { figure: 20_000, unit: null }],
    ["19000-20000", { figure: { low: 19_000, high: 20_000 }, unit: null }],
    [46_174, fault("excelDate", "46174")],
    [-3, fault("unreadableFigure", "-3")],
    [true, fault("unreadableFigure", "true")],
    ["wide-30", fault("unreadableFigure", "wide-30")],
    ["30-wide", fault("unreadableFigure", "30-wide")],
    ["31-30", fault("unreadableFigure", "31-30")],
    ["30 in-90 cm", fault("unreadableFigure", "30 in-90 cm")],
  ])("of %j", (cell, figure) => expect(readFigureCell(cell)).toEqual(figure));
});

describe("nearestCharts", () => {
  const chart = (unit: Chart["unit"], place: string, ...values: readonly Figure[]): Chart => ({
    kind: "body", unit, sizes: values.map((_, at) => String(at)), rows: [{ place, view: null, label: place, values }],
  }); // prettier-ignore
  const bust = (value: number, unit: "in" | "cm" | null = null) => [{ place: "bust", value, unit }];
  test("measures in the chart's own unit", () => {
    // 30 in = 76.2 cm exactly.
    const [large, small] = [chart("cm", "bust", 70, 80), chart("cm", "bust", 29, 34)];
    expect(nearestCharts([small, large], bust(30, "in"))).toEqual([large]);
  });
  test("counts a unit only where the measure and the chart both name one", () => {
    const [inches, bare] = [chart("in", "bust", 30, 34), chart(null, "bust", 70, 80)];
    expect(nearestCharts([bare, inches], bust(32))).toEqual([inches]);
  });
  test("passes over blank figures, and takes a place with none for one that is missing", () => {
    const [misses, girls] = [chart("in", "bust", null, 30, 34), chart("in", "bust", 20, 24)];
    expect(nearestCharts([misses, girls], bust(22))).toEqual([girls]);
    const [blank, other] = [chart("in", "bust", null, null), chart("in", "hip", 34, 36)];
    expect(nearestCharts([blank, other], bust(32))).toEqual([blank, other]);
  });
  test("wants a chart to choose from", () => {
    expect(() => chooseChart([], [], "Shirt")).toThrow(new RangeError("no chart"));
  });
});
