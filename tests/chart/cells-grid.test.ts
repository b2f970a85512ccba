import { describe, expect, test } from "vitest";
import { isPlaceCell, liesTurned, readGrid, withoutBlanks } from "../../src/chart/cells-grid";

describe("withoutBlanks", () => {
  test("leaves out rows and columns of blanks and noughts, and keeps the rest in its place", () => {
    expect(withoutBlanks([["a", null, 0], [null, "", 0], ["b", null, 3]])).toEqual([["a", 0], ["b", 3]]);
    expect(withoutBlanks([["a", 1], ["b"]])).toEqual([["a", 1], ["b"]]);
    expect(withoutBlanks([["a", null, 1], ["b"]])).toEqual([["a", 1], ["b", null]]);
    expect(withoutBlanks([])).toEqual([]);
  }); // prettier-ignore
});

describe("isPlaceCell", () => {
  test("is a known place, and no heading, letter or number", () => {
    expect(["Bust", "Back waist length", "Hip (cm)"].map(isPlaceCell)).toEqual([true, true, true]);
    expect(["Width", "B", "36", "Yoke", 34, null, undefined, true].map(isPlaceCell)).toEqual(Array(8).fill(false));
  });
});

describe("liesTurned", () => {
  test("is the way with more places, else with more headings", () => {
    expect(liesTurned([["Size", "Bust", "Hip"], [8, 31, 34], [10, 32, 35]])).toBe(true);
    expect(liesTurned([["Size", 8, 10], ["Bust", 31, 32], ["Hip", 34, 35]])).toBe(false);
    expect(liesTurned([["View", "A"], ["Width", 45], ["8", 2]])).toBe(true);
    expect(liesTurned([["View", "Width", 8], ["A", 45, 2]])).toBe(false);
    expect(liesTurned([["Size", "Bust"], ["Hip", 34]])).toBe(false);
  }); // prettier-ignore
});

describe("readGrid", () => {
  test("finds title, headings, sizes and rows", () => {
    expect(readGrid([["Wrap skirt", null, null, null], [null, null, null, null], ["Size", "Unit", 8, "10"], ["Waist", "in", 24, 25]])).toEqual({
      ok: true,
      value: {
        title: "Wrap skirt",
        columns: { label: 0, unit: 1 },
        sizes: [{ label: "8", column: 2 }, { label: "10", column: 3 }],
        rows: [["Waist", "in", 24, 25]],
      },
    });
  }); // prettier-ignore
  test("finds the labels under a blank corner, or in whatever column they stand", () => {
    expect(readGrid([[null, 8, 10], ["Waist", 24, 25]])).toMatchObject({
      value: { columns: { label: 0 }, sizes: [{ label: "8", column: 1 }, { label: "10", column: 2 }] },
    });
    expect(readGrid([["Unit", null, 8], ["in", "Waist", 24]])).toMatchObject({
      value: { columns: { unit: 0, label: 1 }, sizes: [{ label: "8", column: 2 }] },
    });
    expect(readGrid([[null, "8", "10"], ["Yoke", 5, 6]])).toMatchObject({
      value: { columns: { label: 0 }, sizes: [{ label: "8", column: 1 }, { label: "10", column: 2 }] },
    });
    expect(readGrid([["View", "Unit", "8"], ["A", "yd", 2]])).toEqual({
      ok: false, problem: { code: "chartHeadings", details: { found: "View" } },
    });
  }); // prettier-ignore
  const refused = (cells: Parameters<typeof readGrid>[0]) => {
    const read = readGrid(cells);
    return read.ok ? "read" : [read.problem.code, read.problem.details];
  };
  test("refuses nothing, no headings, and no sizes", () => {
    expect(refused([[null, ""]])).toEqual(["emptyChart", { wanted: "a chart" }]);
    expect(refused([["Waist", 24, 25], ["Hip", 34, 35]])).toEqual(["chartHeadings", { found: "Waist" }]);
    expect(refused([["Size", "Unit"], ["Waist", "in"], ["Hip", "in"]])).toEqual(["chartHeadings", { found: "Size" }]);
  }); // prettier-ignore
  test("passes on an error where a size should stand, instead of answering with its text as a size", () => {
    expect(refused([["Size", 8, { error: "#REF!" }], ["Waist", 24, 25]])).toEqual(["errorCell", { error: "#REF!" }]);
  }); // prettier-ignore
  test("refuses figures without a heading, a size twice, a date for a size, and two charts", () => {
    expect(refused([["Size", 8, null], ["Waist", 24, 25]])).toEqual([
      "columnWithoutHeading", { column: "3", figure: "25" },
    ]);
    expect(refused([["Size", 8, "8 "], ["Waist", 24, 25]])).toEqual(["sizeTwice", { size: "8" }]);
    expect(refused([["Size", 8, 46_000], ["Waist", 24, 25]])).toEqual(["excelDate", { text: "46000" }]);
    expect(refused([["Size", 8], ["Waist", 24], ["Size", 10], ["Hip", 34]])).toEqual(["twoCharts", { found: "Size" }]);
    expect(refused([["Size", "Unit", 8], ["Waist", "in", 24], ["Measurement", "Unit", 8], ["Hip", "in", 34]])).toEqual([
      "twoCharts", { found: "Measurement" },
    ]);
  }); // prettier-ignore
  test("keeps nought as a size, and leaves out a column of words without a heading", () => {
    expect(readGrid([["Size", 0, 2, null], ["Waist", 23, 24, "see note"]])).toMatchObject({
      value: { sizes: [{ label: "0", column: 1 }, { label: "2", column: 2 }] },
    });
  }); // prettier-ignore
});

describe("readGrid where more stands in the range", () => {
  const problem = (code: string, details: object) => ({ ok: false, problem: { code, details } });
  test("joins the lines of a title", () => {
    expect(readGrid([["Wrap skirt", null], ["Body measurements", null], ["Size", 8], ["Waist", 24]])).toEqual({
      ok: true,
      value: {
        title: "Wrap skirt Body measurements",
        columns: { label: 0 },
        sizes: [{ label: "8", column: 1 }],
        rows: [["Waist", 24]],
      },
    });
  }); // prettier-ignore
  test("takes 20,000, and a larger number as text, for a size", () => {
    expect(readGrid([["Size", 20_000, "46174"], ["Waist", 24, 25]])).toMatchObject({
      value: { sizes: [{ label: "20000", column: 1 }, { label: "46174", column: 2 }] },
    });
  }); // prettier-ignore
  test("takes a row called as a heading for a row, unless it holds more headings", () => {
    expect(readGrid([["Size", 8, 10], ["Waist", 24, 25], ["Part", 1, 2]])).toMatchObject({
      ok: true, value: { rows: [["Waist", 24, 25], ["Part", 1, 2]] },
    });
    expect(readGrid([["Unit", "Size", 8], ["in", "Waist", 24], ["in", "Size", 10]])).toEqual(
      problem("twoCharts", { found: "Size" }),
    );
    expect(readGrid([["Unit", "Size", 8], ["in", "Waist", 24], ["Unit", "Measurement", 10]])).toEqual(
      problem("twoCharts", { found: "Measurement" }),
    );
  }); // prettier-ignore
  test("leaves out a column that holds one note", () => {
    expect(readGrid([["Size", 8, null], ["Waist", 24, null], ["Hip", 34, "low"]])).toMatchObject({
      ok: true, value: { sizes: [{ label: "8", column: 1 }] },
    });
  }); // prettier-ignore
});
