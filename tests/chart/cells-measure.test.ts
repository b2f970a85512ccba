import { describe, expect, test } from "vitest";
import type { Cells } from "../../src/chart/cell";
import { chartSource } from "../../src/chart/cells";
import { inChartUnit } from "../../src/chart/cells-measure";

const charts = (cells: Cells) => {
  const source = chartSource(cells);
  if (!source.ok) return source.problem.code;
  const read = source.value.charts("body", null);
  return read.ok
    ? read.value.map(({ unit, rows }) => [unit, ...rows.map(({ place, values }) => [place, values])])
    : read.problem.code;
};

// 1 in = 2.54 cm, 1 ft = 12 in, 1 yd = 36 in exactly.
describe("measureSheet", () => {
  test("turns a figure's own unit, and a row's, into the chart's", () => {
    expect(charts([["Size", "Unit", 8, 10], ["Bust", "in", 31, "81.28 cm"], ["Height", "m", 1.7, 1.75]])).toEqual([
      ["in", ["bust", [31, 32]], ["height", [170 / 2.54, 175 / 2.54]]],
    ]); // prettier-ignore
    expect(charts([["Size", "Unit", 8], ["Height", "ft", 5], ["Bust", "in", 31]])).toEqual([
      ["in", ["height", [60]], ["bust", [31]]],
    ]); // prettier-ignore
  });
  test("turns a row that is alone in its unit into the unit of the most rows", () => {
    expect(charts([["Size", "Unit", 8], ["Bust", "cm", 80], ["Hip", "cm", 86], ["Waist", "in", 25]])).toEqual([
      ["cm", ["bust", [80]], ["hip", [86]], ["waist", [63.5]]],
    ]); // prettier-ignore
    // As many of each: inches.
    expect(charts([["Size", "Unit", 8], ["Bust", "cm", 76.2], ["Waist", "in", 25]])).toEqual([
      ["in", ["bust", [30]], ["waist", [25]]],
    ]); // prettier-ignore
  });
  test("makes two charts of rows for one place in two units", () => {
    expect(charts([["Size", "Unit", 8], ["Bust", "in", 31], ["Bust", "cm", 79]])).toEqual([
      ["in", ["bust", [31]]],
      ["cm", ["bust", [79]]],
    ]); // prettier-ignore
  });
  test("takes the unit in which more places are possible, from both ends of ranges", () => {
    expect(charts([["Size", 8], ["Bust", "76-80"], ["Hip", 90]])).toEqual([
      ["cm", ["bust", [{ low: 76, high: 80 }]], ["hip", [90]]],
    ]); // prettier-ignore
    expect(charts([["Size", 8], ["Bust", { error: "#N/A" }], ["Hip", 90]])).toEqual([
      ["cm", ["bust", [{ fault: { code: "errorCell", details: { error: "#N/A" } }, error: "#N/A" }]], ["hip", [90]]],
    ]); // prettier-ignore
  });
  test("leaves out notes and rows without a label and figures, and refuses a unit it doesn't know", () => {
    expect(charts([["Size", 8], ["Bust", 31], ["measured over the fullest part", null], [null, "x"]])).toEqual([
      ["in", ["bust", [31]]],
    ]); // prettier-ignore
    expect(charts([["Size", "Unit", 8], ["Bust", "ells", 31], ["Hip", "in", 34]])).toBe("unknownUnit"); // prettier-ignore
  });
});

describe("inChartUnit", () => {
  test("turns a length, and leaves it where a unit isn't known", () => {
    expect(inChartUnit(10, "in", "cm")).toBe(25.4);
    expect(inChartUnit(10, "in", "in")).toBe(10);
    expect(inChartUnit(10, null, "cm")).toBe(10);
    expect(inChartUnit(10, "in", null)).toBe(10);
  });
});

describe("measureSheet where rows say two units", () => {
  test("takes the unit of a row that says none from its own numbers", () => {
    // 80 cm and 86 cm in inches; a waist of 24 can only be inches. As many of each: inches.
    expect(
      charts([["Size", "Unit", 8], ["Bust", "cm", 80], ["Hip", "cm", 86], ["Knee", "in", 14], ["Waist", null, 24]]),
    ).toEqual([["in", ["bust", [80 / 2.54]], ["hip", [86 / 2.54]], ["knee", [14]], ["waist", [24]]]]);
  }); // prettier-ignore
  test("reads a label over two lines as one", () => {
    const source = chartSource([["Size", "Unit", 8], ["Back  waist\nlength", "in", 16]]); // prettier-ignore
    const read = source.ok ? source.value.charts("body", null) : source;
    expect(read).toEqual({
      ok: true,
      value: [
        {
          kind: "body",
          unit: "in",
          sizes: ["8"],
          rows: [{ place: "backWaistLength", view: null, label: "Back waist length", values: [16] }],
        },
      ],
    });
  });
});
