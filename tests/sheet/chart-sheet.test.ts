import { describe, expect, it } from "vitest";
import type { ChartTable } from "../../src/chart/model";
import { chartSheet, rowLabel, tablePlan } from "../../src/sheet/chart-sheet";

/** Invented for a camp shirt in three sizes. */
const body: ChartTable = {
  kind: "body",
  unit: "in",
  sizes: ["12", "14", "6-12"],
  rows: [
    { place: "bust", label: "Bust", values: [34, 36, null] },
    { place: "backWaistLength", label: "Back", values: [16.25, { low: 16.5, high: 17 }, 17] },
  ],
};
const finished: ChartTable = {
  kind: "finished",
  unit: "cm",
  sizes: ["12", "14"],
  rows: [{ place: "backLength", view: "A", label: "Back length A", values: [66, 67.5] }],
};
const fabric: ChartTable = {
  kind: "fabric",
  unit: "yd",
  sizes: ["12", "14"],
  rows: [
    { view: "A", part: "main", label: "45", width: 45, widthUnit: "in", nap: "with", values: [2.125, null] },
    { view: "", part: "lining", label: "", width: null, widthUnit: "in", nap: null, values: [1, 1] },
  ],
};

describe("chartSheet", () => {
  const { plan, tableNames } = chartSheet("Camp shirt", [body, finished, fabric]);

  it("has a title, and a table for each chart table named after pattern and kind", () => {
    expect(plan.sheet).toBe("Camp shirt");
    expect(plan.blocks[0]).toMatchObject({ row: 0, cells: [["Camp shirt"]], format: "text", style: "title" });
    expect(tableNames).toEqual(["CampShirt_body", "CampShirt_finished", "CampShirt_fabric"]);
    expect(plan.tables.map(({ name }) => name)).toEqual(tableNames);
  });
  it("heads the columns as the functions read them", () => {
    const headings = plan.tables.map(({ columns }) => columns.map(({ heading }) => heading));
    expect(headings).toEqual([
      ["Measurement", "Unit", "12", "14", "6-12"],
      ["Measurement", "View", "Unit", "12", "14"],
      ["View", "Part", "Width", "Width unit", "Nap", "Unit", "12", "14"],
    ]);
  });
  it("makes labels text, inches and yards fractions, and leaves centimetres alone", () => {
    const formats = plan.tables.map(({ columns }) => columns.map(({ format }) => format));
    expect(formats[0]).toEqual(["text", "text", "fraction", "fraction", "fraction"]);
    expect(formats[1]).toEqual(["text", "text", "text", "general", "general"]);
    expect(formats[2]).toEqual(["text", "text", "fraction", "text", "text", "text", "fraction", "fraction"]);
  });
  it("writes figures as numbers, printed ranges as text, and leaves empty what is not printed", () => {
    expect(plan.tables.map(({ rows }) => rows)).toEqual([
      [
        ["Bust", "in", 34, 36, null],
        ["Back waist length", "in", 16.25, "16 1/2 to 17", 17],
      ],
      [["Back length", "A", "cm", 66, 67.5]],
      [
        ["A", "main", 45, "in", "with", "yd", 2.125, null],
        [null, "lining", null, "in", null, "yd", 1, 1],
      ],
    ]);
  });
  it("leaves an empty row between a table and what stands above and below it", () => {
    let free = 2;
    for (const table of plan.tables) {
      expect(table.row).toBeGreaterThanOrEqual(free);
      free = table.row + table.rows.length + 2;
    }
  });
  it("avoids taken names, also its own when a pattern has a table twice", () => {
    const metric: ChartTable = { ...body, unit: "cm" };
    expect(chartSheet("Camp shirt", [body, metric], ["CampShirt_body"]).tableNames).toEqual([
      "CampShirt_body_2",
      "CampShirt_body_3",
    ]);
  });
  it("keeps other systems' sizes as a line above the table", () => {
    const withAliases: ChartTable = { ...finished, aliases: [{ label: "EU", sizes: ["38", "40"] }] };
    const sheet = chartSheet("Skirt", [withAliases]).plan;
    expect(sheet.blocks[1]!.cells).toEqual([["Finished garment measurements (cm)"], ["EU: 38, 40"]]);
    expect(sheet.tables[0]!.row).toBe(4);
  });
});

describe("tablePlan", () => {
  it("throws on a row that has not one figure for each size", () => {
    const short: ChartTable = { ...body, rows: [{ place: "bust", label: "Bust", values: [1] }] };
    expect(() => tablePlan(short, "Short_body", 0)).toThrow(RangeError);
  });
});

describe("rowLabel", () => {
  const label = (words: string, place: string, view: string | null = null) =>
    rowLabel({ place, label: words, view, values: [] }, "body");

  it("keeps the pattern's own words where they name the place by themselves", () => {
    expect(label("Hüftweite", "hip")).toBe("Hüftweite");
    expect(label("Hip 9 below waist", "hip")).toBe("Hip 9 below waist");
  });
  it("writes the place's name for words that need their neighbours", () => {
    expect(label("Bust (cm)", "bust")).toBe("Bust");
    expect(label("Back", "backWaistLength")).toBe("Back waist length");
    expect(label("Brustumfang", "chest")).toBe("Chest");
    expect(label("Back length A", "backLength", "A")).toBe("Back length");
  });
  it("leaves a place outside the vocabulary its own words", () => {
    expect(label("Ruffle depth", "Ruffle depth")).toBe("Ruffle depth");
  });
});
