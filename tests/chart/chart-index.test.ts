import { describe, expect, test } from "vitest";
import type { Cell, Cells } from "../../src/chart/cell";
import { chartIndex } from "../../src/chart/chart-index";

const rows = (name: Cell, table: Cells) => chartIndex([{ name: [[name]], table }]);
/** The columns before Measurement that a body or finished chart leaves blank: Part, Width, Width unit, Nap. */
const noCloth = [null, null, null, null];
const unreadable = (fault: object, pattern = "Wrap skirt") => [
  [pattern, fault, null, null, null, null, null, null, null, null, null, null],
];

// Made-up charts of a wrap skirt and a camp shirt; the columns are those that the doc comment of `chartIndex` names.
describe("chartIndex", () => {
  test("gives a row for each figure of a body chart, low and high, a size that isn't made with neither", () => {
    expect(rows(" Wrap  skirt ", [["Size", "Unit", 8, "10W"], ["Waist", "in", 24, "25-26"], ["Hip", "in", 34, null]])).toEqual([
      ["Wrap skirt", "body", "in", null, ...noCloth, "Waist", 8, 24, 24],
      ["Wrap skirt", "body", "in", null, ...noCloth, "Waist", "10W", 25, 26],
      ["Wrap skirt", "body", "in", null, ...noCloth, "Hip", 8, 34, 34],
      ["Wrap skirt", "body", "in", null, ...noCloth, "Hip", "10W", null, null],
    ]);
  }); // prettier-ignore
  test("names the view of a finished chart, and all that a fabric table says", () => {
    expect(rows("Camp shirt", [["Size", "View", "Unit", 8], ["Bust", "A", "cm", 100], ["Hip", null, "cm", 110]])).toEqual([
      ["Camp shirt", "finished", "cm", "A", ...noCloth, "Bust", 8, 100, 100],
      ["Camp shirt", "finished", "cm", null, ...noCloth, "Hip", 8, 110, 110],
    ]);
    expect(rows("Camp shirt", [["View", "Part", "Width", "Nap", "S"], ["A", "lining", "45 in", "with", 2.25]])).toEqual([
      ["Camp shirt", "fabric", "yd", "A", "lining", 45, "in", "with", null, "S", 2.25, 2.25],
    ]);
  }); // prettier-ignore
  test("gives the rows of each unit that a chart has, and the fault of a figure as low and high", () => {
    const wide = { fault: { code: "unreadableFigure", details: { text: "wide" } } };
    const missing = { fault: { code: "errorCell", details: { error: "#N/A" } }, error: "#N/A" };
    expect(
      rows("Wrap skirt", [["Size", "Unit", 8, 10], ["Waist", "in", 24, "wide"], ["Waist", "cm", 61, { error: "#N/A" }]]),
    ).toEqual([
      ["Wrap skirt", "body", "in", null, ...noCloth, "Waist", 8, 24, 24],
      ["Wrap skirt", "body", "in", null, ...noCloth, "Waist", 10, wide, wide],
      ["Wrap skirt", "body", "cm", null, ...noCloth, "Waist", 8, 61, 61],
      ["Wrap skirt", "body", "cm", null, ...noCloth, "Waist", 10, missing, missing],
    ]);
  }); // prettier-ignore
  test("puts the reason in the kind of a table that can't be read, and goes on with the next", () => {
    expect(rows("Wrap skirt", [[{ error: "#REF!" }]])).toEqual(
      unreadable({ fault: { code: "errorCell", details: { error: "#REF!" } }, error: "#REF!" }),
    );
    expect(rows("Wrap skirt", [["Waist", 24, 25], ["Hip", 34, 35]])).toEqual(
      unreadable({ fault: { code: "chartHeadings", details: { found: "Waist" } } }),
    );
    expect(rows("Wrap skirt", [["Size", "Unit", 8], ["Waist", "ells", 24]])).toEqual(
      unreadable({ fault: { code: "unknownUnit", details: { text: "ells", known: "in, cm, yd or m" } } }),
    );
    expect(rows("Wrap skirt", [[null, ""]])).toEqual(
      unreadable({ fault: { code: "emptyChart", details: { wanted: "a chart" } } }),
    );
    const table = [["Size", "Unit", 8], ["Waist", "in", 24]];
    expect(chartIndex([{ name: [["Wrap skirt"]], table: [[null]] }, { name: [["Pinafore"]], table }])[1]).toEqual([
      "Pinafore", "body", "in", null, ...noCloth, "Waist", 8, 24, 24,
    ]);
  }); // prettier-ignore
  test("skips a pair that is blank, and wants a name for a table", () => {
    expect(chartIndex([])).toEqual([]);
    expect(rows(null, [[null, 0], ["", null]])).toEqual([]);
    expect(chartIndex([{ name: [], table: [] }])).toEqual([]);
    const noName = unreadable({ fault: { code: "blank", details: { wanted: "a pattern's name" } } }, "");
    expect(rows("", [["Size", "Unit", 8], [null, null, null], ["Waist", "in", 24]])).toEqual(noName);
    expect(rows(null, [[null, "in"], ["Waist", null]])).toEqual(noName);
    expect(rows({ error: "#N/A" }, [["Size", 8], ["Waist", 24]])).toEqual(
      unreadable({ fault: { code: "errorCell", details: { error: "#N/A" } } }, ""),
    );
  }); // prettier-ignore
  test("takes the body charts of a range that is an index of one pattern", () => {
    const index = (kind: string) => [["Pattern", "Kind", "Unit", "Measurement", "Size", "Low"], ["Apron", kind, "in", "Waist", 8, 24]];
    expect(rows("Apron", index("body"))).toEqual([["Apron", "body", "in", null, ...noCloth, "Waist", 8, 24, 24]]);
    expect(rows("Apron", index("finished"))).toEqual(
      unreadable({ fault: { code: "noTable", details: { pattern: "Apron", kind: "body measurements" } } }, "Apron"),
    );
  }); // prettier-ignore
});
