import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Chart, Figure } from "../../src/chart/model";
import { matchInRow, readMatchRule, sizeMatch } from "../../src/fit/size-match";
import { readPlaceCell, sizeMatchAmong } from "../../src/fit/size-match-tables";

const figures = (file: string) => JSON.parse(readFileSync(join(import.meta.dirname, "../figures", file), "utf8"));
const chart = (sizes: string[], rows: Record<string, Figure[]>, unit: "in" | "cm" | null = "in"): Chart => ({
  kind: "body",
  unit,
  sizes,
  rows: Object.entries(rows).map(([place, values]) => ({ place, label: place, values })),
});
// Body measurements common to home-sewing patterns, misses: common practice, read.
const printed = figures("misses-body-in.json");
const misses = chart(printed.sizes, { bust: printed.bust, hip: printed.hip });
const size = (from: Chart, value: number, rule?: "closest" | "atleast" | "atmost") => {
  const match = sizeMatch(from, "bust", { value, unit: null }, rule);
  return match.ok ? match.value.size : match.problem.code;
};

describe("sizeMatch", () => {
  // ASTM D5585-11e1, Table 1 (excerpt), tests/figures: every printed bust gets its own size.
  test("finds every size of a printed table by its own figure", () => {
    const { sizes, bust } = figures("astm-d5585-misses-in.json") as { sizes: string[]; bust: number[] };
    const table = chart(sizes, { bust });
    for (const rule of ["closest", "atleast", "atmost"] as const)
      expect(bust.map((figure) => size(table, figure, rule))).toEqual(sizes);
  });
  // ANSUR II women, tests/figures (bust and buttock in inches): within the chart every body has a size.
  test("has a size for every measured body inside the chart, and never a smaller one for a bigger body", () => {
    const lines = readFileSync(join(import.meta.dirname, "../figures/ansur2-test-bodies.csv"), "utf8")
      .trim()
      .split("\n");
    const bodies = lines.filter((line) => line.startsWith("F,")).map((line) => line.split(",").map(Number));
    for (const [place, column] of [
      ["bust", 6],
      ["hip", 8],
    ] as const) {
      const found = bodies
        .map((body) => body[column]!)
        .filter((girth) => girth >= 32 && girth <= 46)
        .sort((a, b) => a - b)
        .map((girth) => sizeMatch(misses, place, { value: girth, unit: "in" }));
      expect(found.length).toBeGreaterThan(10);
      const indexes = found.map((match) => (match.ok ? match.value.index : NaN));
      expect(indexes).toEqual([...indexes].sort((a, b) => a - b));
      expect(indexes.some(Number.isNaN)).toBe(false);
    }
  });
  test("says how far the measure is from the figure, and whether it is beyond the chart", () => {
    const match = sizeMatch(misses, "bust", { value: 46.5, unit: "in" });
    expect(match).toMatchObject({ ok: true, value: { size: "24", figure: 46, difference: 0.5, beyond: "above" } });
    expect(sizeMatch(misses, "bust", { value: 33.9, unit: "in" })).toMatchObject({
      value: { size: "12", difference: -0.1, beyond: null },
    });
    expect(sizeMatch(misses, "bust", { value: 91.44, unit: "cm" })).toMatchObject({
      value: { size: "14", measure: 36 },
    });
  });
  test("reads a chart from large to small, but not one out of order", () => {
    expect(size(chart(["L", "M", "S"], { bust: [40, 36, 32] }), 35)).toBe("M");
    expect(size(chart(["14", "12"], { bust: [36, 34] }), 34)).toBe("12");
    expect(size(chart(["8", "10"], { bust: [36, 34] }), 34)).toBe("fallingRow");
    expect(size(chart(["8", "10", "12"], { bust: [32, 40, 36] }), 32)).toBe("fallingRow");
  });
  test("answers a chart of one size only at its figure", () => {
    expect(size(chart(["M"], { bust: [36] }), 36)).toBe("M");
    expect(size(chart(["M"], { bust: [36] }), 36.1)).toBe("aboveChart");
    expect(size(chart(["M"], { bust: [{ low: 34, high: 38 }] }), 38)).toBe("M");
  });
  test("stops at a figure that is missing or wrong only where the answer hangs on it", () => {
    const holes = chart(["8", "10", "12", "14", "16"], { bust: [32, null, 34, 36, null] });
    expect(size(holes, 33)).toBe("missingFigure");
    expect(size(holes, 34)).toBe("12");
    expect(size(holes, 37)).toBe("14");
    const faults: Chart = {
      ...holes,
      rows: [
        {
          place: "bust",
          label: "Bust",
          values: [32, 33, 34, 36, { fault: { code: "errorCell", details: { error: "#N/A" } } }],
        },
      ],
    };
    expect(size(faults, 36.5)).toBe("errorCell");
    expect(size(faults, 36)).toBe("14");
    expect(size(chart(["8"], { bust: [null] }), 33)).toBe("missingFigure");
  });
  test("keeps to the bounds of touching ranges, and steps into gaps", () => {
    const touching = chart(
      ["S", "M"],
      {
        bust: [
          { low: 82, high: 90 },
          { low: 90, high: 98 },
        ],
      },
      "cm",
    );
    expect([82, 89.99, 90, 97.99].map((value) => size(touching, value))).toEqual(["S", "S", "M", "M"]);
    expect([81.9, 98].map((value) => size(touching, value))).toEqual(["belowChart", "aboveChart"]);
    expect(size(touching, 75, "atleast")).toBe("S");
    expect(size(touching, 73, "atleast")).toBe("belowChart");
  });
  test("doesn't choose between two different rows for one place", () => {
    const twice: Chart = { ...misses, rows: [...misses.rows, { ...misses.rows[0]!, values: misses.rows[1]!.values }] };
    expect(size(twice, 34)).toBe("placeTwice");
  });
});

describe("matchInRow", () => {
  test("doesn't ask about units that are known", () => {
    const ask = (bare: boolean) => matchInRow(misses, misses.rows[0]!, 92, "closest", bare);
    expect(ask(true)).toMatchObject({ problem: { code: "cmAgainstInches" } });
    expect(ask(false)).toMatchObject({ problem: { code: "aboveChart" } });
  });
});

describe("readMatchRule", () => {
  test("reads the three rules, closest where none is given", () => {
    expect(["", "At least", "at-most", "CLOSEST"].map((text) => readMatchRule(text))).toMatchObject([
      { value: "closest" },
      { value: "atleast" },
      { value: "atmost" },
      { value: "closest" },
    ]);
    expect(readMatchRule("next")).toMatchObject({ problem: { code: "unknownRule" } });
  });
});

describe("sizeMatchAmong", () => {
  const women = chart(["18W", "20W"], { bust: [42, 44] });
  const metric = chart(["12", "14"], { bust: [87, 92] }, "cm");
  const ask = (charts: Chart[], value: number, unit: "in" | "cm" | null = null) => {
    const match = sizeMatchAmong(charts, "bust", { value, unit }, "closest", "Dress");
    return match.ok ? match.value.size : match.problem.code;
  };
  test("takes the table whose unit is named, or in which the number is plausible", () => {
    expect(ask([misses, metric], 92)).toBe("14");
    expect(ask([misses, metric], 36)).toBe("14");
    expect(ask([misses, metric], 92, "cm")).toBe("14");
    expect(ask([misses, women], 32.5)).toBe("10");
  });
  test("never crosses two tables that answer differently", () => {
    expect(ask([misses, women], 42)).toBe("severalTables");
  });
});

describe("readPlaceCell", () => {
  test("reads known words and the chart's own labels", () => {
    const own: Chart = { ...misses, rows: [...misses.rows, { place: "Yoke depth", label: "Yoke depth", values: [] }] };
    expect(readPlaceCell("Hips", [own])).toEqual({ ok: true, value: "hip" });
    expect(readPlaceCell("yoke  Depth", [own])).toEqual({ ok: true, value: "Yoke depth" });
    expect(readPlaceCell("thigh", [own])).toMatchObject({ problem: { code: "placeNotOnChart" } });
    expect(readPlaceCell("elbowish", [own])).toMatchObject({ problem: { code: "unknownPlace" } });
    expect(readPlaceCell(0, [own])).toMatchObject({ problem: { code: "blank" } });
  });
});
