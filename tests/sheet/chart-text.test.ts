import { describe, expect, it } from "vitest";
import { readCharts, readChartCells, type ChartTable } from "../../src/index";
import { chartText } from "../../src/sheet/chart-text";
import { chartSheet } from "../../src/sheet/chart-sheet";

/** Invented, with every kind of cell: ranges, gaps, views, odd labels, equal sizes in two systems. */
const TABLES: readonly ChartTable[] = [
  {
    kind: "body",
    unit: "in",
    sizes: ["6", "8", "10"],
    rows: [
      { place: "bust", label: "Bust", values: [30.5, 31.5, 32.5] },
      {
        place: "waist",
        label: "Taille",
        values: [
          { low: 22.5, high: 23 },
          { low: 23.5, high: 24 },
          { low: 24.5, high: 25 },
        ],
      },
      { place: "backWaistLength", label: "Back waist length", values: [15.5, null, 16] },
    ],
  },
  {
    kind: "finished",
    unit: "cm",
    sizes: ["6", "8", "10"],
    rows: [
      { place: "bust", view: null, label: "Bust", values: [86, 89, 92] },
      { place: "backLength", view: "A", label: "Back length", values: [60, 61.5, 62] },
    ],
  },
  {
    kind: "fabric",
    unit: "yd",
    sizes: ["6", "8", "10"],
    rows: [
      { view: "A", part: "main", label: "", width: 45, widthUnit: "in", nap: "with", values: [2.125, 2.25, 2.375] },
      { view: "A", part: "lining", label: "", width: 60, widthUnit: "in", nap: null, values: [1, 1, 1.125] },
    ],
  },
];
const bare = (tables: readonly ChartTable[]) =>
  tables.map((table) => ({
    kind: table.kind,
    unit: table.unit,
    sizes: table.sizes,
    rows: table.rows.map((whole) => {
      // The functions keep a fabric row's own unit beside it.
      const row: Record<string, unknown> = { ...whole };
      delete row["label"];
      delete row["unit"];
      return "place" in whole ? { ...row, view: whole.view ?? null } : row;
    }),
  }));

describe("chartText", () => {
  it("is read back as the same charts, in all but the rows' own words", () => {
    const { tables, issues } = readCharts(chartText(TABLES));
    expect(issues.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(bare(tables)).toEqual(bare(TABLES));
  });
});

describe("chartSheet", () => {
  it("is read by the functions as the charts it was made of", () => {
    const { plan } = chartSheet("Camp shirt", TABLES);
    plan.tables.forEach(({ columns, rows }, index) => {
      const cells = [columns.map(({ heading }) => heading), ...(rows as (string | number | null)[][])];
      const table = TABLES[index]!;
      if (table.kind === "fabric") {
        const read = readChartCells(cells, { role: "fabric" });
        expect(read.ok && bare([read.value as ChartTable])).toEqual(bare([table]));
      } else {
        const read = readChartCells(cells, { role: table.kind });
        expect(read.ok && bare([read.value as ChartTable])).toEqual(bare([table]));
      }
    });
  });
});
