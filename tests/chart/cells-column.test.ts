import { describe, expect, test } from "vitest";
import type { Cell, Cells } from "../../src/chart/cell";
import { chartSource } from "../../src/chart/cells";
import { sizeColumn } from "../../src/chart/cells-column";

const column = (cells: Cells, size: Cell, pattern: Cell = null) => {
  const source = chartSource(cells);
  return source.ok ? sizeColumn(source.value, size, pattern) : source;
};
const problem = (code: string, details: object) => ({ ok: false, problem: { code, details } });

// A made-up chart of a wrap skirt.
const skirt: Cells = [
  ["Size", "Unit", 8, "10", "12W"],
  ["Waist", "in", 24, "25 1/2-26", null],
  ["Hip", "cm", 86, "88-90", { error: "#N/A" }],
];

describe("sizeColumn", () => {
  test("is a cell for each row in its own unit: a number, a range as text, a blank, a fault", () => {
    expect(column(skirt, 8)).toEqual({ ok: true, value: [24, 86] });
    expect(column(skirt, "10")).toEqual({ ok: true, value: ["25 1/2 to 26", "88 to 90"] });
    expect(column(skirt, "12 w")).toEqual({
      ok: true,
      value: [null, { fault: { code: "errorCell", details: { error: "#N/A" } }, error: "#N/A" }],
    });
  });
  test("reads a finished chart and a fabric table too", () => {
    expect(column([["Size", "View", "Unit", 8], ["Hip", "A", "in", 40]], 8)).toEqual({ ok: true, value: [40] });
    expect(column([["View", "Width", "S", "M"], ["A", 45, 2, 2.25], ["B", 60, 1.5, 1.75]], "m")).toEqual({
      ok: true,
      value: [2.25, 1.75],
    });
  }); // prettier-ignore
  test("refuses a size that the chart lacks, a blank and an error", () => {
    expect(column(skirt, 14)).toEqual(problem("sizeNotOnChart", { size: "14", known: "8, 10, 12W" }));
    expect(column(skirt, null)).toEqual(problem("blank", { wanted: "a size" }));
    expect(column(skirt, 0)).toEqual(problem("blank", { wanted: "a size" }));
    expect(column(skirt, { error: "#N/A" })).toEqual(problem("errorCell", { error: "#N/A" }));
  });
  test("takes the first body table of a pattern in the index that has the size", () => {
    const index: Cells = [
      ["Pattern", "Kind", "Unit", "Measurement", "Size", "Low"],
      ...[["in", 8, 24], ["in", 10, 25], ["in", "16W", 32], ["cm", 8, 61], ["cm", "18W", 86]].map(([unit, size, low]) => [
        "Wrap skirt", "body", unit!, size === "16W" ? "Hip" : "Waist", size!, low!,
      ]),
      ["Shirt", "finished", "in", "Bust", 8, 40],
    ]; // prettier-ignore
    expect(column(index, 8, "wrap skirt")).toEqual({ ok: true, value: [24] });
    expect(column(index, 10, "Wrap skirt")).toEqual({ ok: true, value: [25] });
    expect(column(index, "16W", "Wrap skirt")).toEqual({ ok: true, value: [32] });
    expect(column(index, "18W", "Wrap skirt")).toEqual({ ok: true, value: [86] });
    expect(column(index, 24, "Wrap skirt")).toEqual(problem("sizeNotOnChart", { size: "24", known: "8 to 18W" }));
    expect(column(index, 8, "Shirt")).toEqual(
      problem("noTable", { pattern: "Shirt", kind: "body measurements" }),
    );
  }); // prettier-ignore
});
