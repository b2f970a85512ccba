import { describe, expect, test } from "vitest";
import { bodyMeasures, chooseChart, nearestCharts, severalTables } from "../../src/chart/cells-choose";
import type { Chart, Figure } from "../../src/chart/model";

const chart = (
  unit: Chart["unit"],
  sizes: string[],
  places: Record<string, Chart["rows"][number]["values"]>,
): Chart => ({
  kind: "body",
  unit,
  sizes,
  rows: Object.entries(places).map(([place, values]) => ({ place, label: place, values })),
});
const misses = chart("in", ["8", "10"], { bust: [31, 33], hip: [34, 36] });
const womens = chart("in", ["16W", "18W"], { bust: [40, 42], hip: [42, 44] });
const metric = chart("cm", ["8", "10"], { bust: [79, 84], hip: [86, 91] });

describe("nearestCharts", () => {
  test("takes the chart in which a measure lies, else the nearer one", () => {
    const charts = [misses, womens];
    expect(nearestCharts(charts, [{ place: "bust", value: 32, unit: null }])).toEqual([misses]);
    expect(nearestCharts(charts, [{ place: "Bust", value: 45, unit: "in" }])).toEqual([womens]);
    // 36 is 1.091 times 33, and 40 is 1.111 times 36; 37 is 1.121 times 33, and 40 is 1.081 times 37.
    expect(nearestCharts(charts, [{ place: "bust", value: 36, unit: null }])).toEqual([misses]);
    expect(nearestCharts(charts, [{ place: "bust", value: 37, unit: null }])).toEqual([womens]);
  });
  test("turns a measure into the chart's unit", () => {
    // 107 cm is 42.1 in.
    expect(nearestCharts([misses, womens], [{ place: "bust", value: 107, unit: "cm" }])).toEqual([womens]);
  });
  test("lets the unit of a measure choose first", () => {
    expect(nearestCharts([misses, metric], [{ place: "bust", value: 100, unit: "cm" }])).toEqual([metric]);
    expect(nearestCharts([metric, misses], [{ place: "bust", value: 100, unit: "in" }])).toEqual([misses]);
  });
  test("is against a chart without the place, or with nothing in it", () => {
    const none: Figure[] = [null, null];
    const bare = chart("in", ["2"], { waist: [24], bust: none });
    const far = chart("in", ["2"], { bust: [{ low: 10, high: 12 }] });
    expect(nearestCharts([bare, far], [{ place: "bust", value: 32, unit: null }])).toEqual([far]);
    const faulty = chart("in", ["2"], { bust: [{ fault: { code: "errorCell", details: { error: "#N/A" } } }] });
    expect(nearestCharts([faulty, far], [{ place: "bust", value: 32, unit: null }])).toEqual([far]);
  });
  test("looks at both ends of ranges", () => {
    const one = chart("in", ["2"], { bust: [{ low: 30, high: 34 }] });
    const other = chart("in", ["2"], { bust: [{ low: 35, high: 38 }] });
    expect(nearestCharts([one, other], [{ place: "bust", value: 34, unit: null }])).toEqual([one]);
    expect(nearestCharts([one, other], [{ place: "bust", value: 35, unit: null }])).toEqual([other]);
  });
  test("keeps all that nothing tells apart", () => {
    expect(nearestCharts([misses, womens], [])).toEqual([misses, womens]);
    expect(nearestCharts([misses], [{ place: "knee", value: 1, unit: "m" as never }])).toEqual([misses]);
    expect(nearestCharts([], [])).toEqual([]);
  });
});

describe("chooseChart", () => {
  test("takes the first of charts that say the same in two units", () => {
    expect(chooseChart([misses, metric], [], "Skirt")).toEqual({ ok: true, value: misses });
  });
  test("refuses two that could both answer, naming their sizes and units", () => {
    const several = (tables: string) => ({
      ok: false,
      problem: { code: "severalTables", details: { pattern: "Skirt", tables } },
    });
    expect(chooseChart([misses, womens], [], "Skirt")).toEqual(several("8, 10, in; 16W, 18W, in"));
    expect(chooseChart([misses, { ...misses }], [], "Skirt")).toEqual(several("8, 10, in; 8, 10, in"));
    expect(chooseChart([misses, { ...womens, unit: "cm" }], [], "Skirt")).toEqual(several("8, 10, in; 16W, 18W, cm"));
    expect(severalTables([{ ...misses, unit: null }], "Skirt")).toEqual(several("8, 10"));
  });
  test("is our own mistake without a chart", () => expect(() => chooseChart([], [], "Skirt")).toThrow(RangeError));
});

describe("bodyMeasures", () => {
  test("leaves out what can't be read", () => {
    const measures = new Map([
      ["bust", { value: 34, unit: "in" as const }],
      ["hip", { fault: { code: "errorCell" as const, details: { error: "#N/A" } } }],
    ]);
    expect(bodyMeasures({ name: null, measures })).toEqual([{ place: "bust", value: 34, unit: "in" }]);
  });
});
