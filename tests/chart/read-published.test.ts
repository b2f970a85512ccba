import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { MeasureTable } from "../../src/chart/model";
import { readCharts } from "../../src/chart/read-charts";
import { joins, written } from "./layouts";

const figures = (name: string): any => JSON.parse(readFileSync(join(import.meta.dirname, "../figures", name), "utf8"));

// EN 13402-3:2004, women: bust, waist and hip in cm. The columns have no size labels there: numbered here.
const en = figures("en13402-3-women-cm.json");
// ASTM D5585-11e1, Table 1 (excerpt: girths), in inches. For tests only.
const astm = figures("astm-d5585-misses-in.json");
// Misses figure type of US home-sewing patterns: common practice with no single publisher.
const misses = figures("misses-body-in.json");

const table = (unit: "in" | "cm", sizes: string[], rows: [string, string, number[]][]): MeasureTable => ({
  kind: "body", unit, sizes, rows: rows.map(([place, label, values]) => ({ place, label, values })),
}); // prettier-ignore

const published: [string, MeasureTable][] = [
  ["EN 13402-3 women", table("cm", en.bust.map((_: number, index: number) => String(32 + 2 * index)), [["bust", "Bust", en.bust], ["waist", "Waist", en.waist], ["hip", "Hip", en.hip]])],
  ["the ASTM D5585 excerpt", table("in", astm.sizes, [["head", "Head", astm.head], ["bust", "Bust", astm.bust], ["underbust", "Under bust", astm.under_bust], ["upperChest", "Upper chest", astm.upper_chest], ["waist", "Waist (curvy)", astm.waist_curvy]])],
  ["the misses chart", table("in", misses.sizes, [["highBust", "High bust", misses.highBust], ["bust", "Bust", misses.bust], ["waist", "Waist", misses.waist], ["hip", "Hip", misses.hip], ["backWaistLength", "Back waist length", misses.backWaistLength]])],
]; // prettier-ignore

describe.each(published)("readCharts on %s", (_, chart) => {
  it.each(["tabs", "spaces", "right", "html", "pipes"])("reads it back from %s without a doubt", (layout) => {
    const reading = readCharts(written(chart, joins[layout]!, chart.unit === "in" ? "spaced" : "decimal"));
    expect(reading.tables).toEqual([chart]);
    expect(reading.issues).toEqual([]);
  });
  it("reads it back turned", () => {
    expect(readCharts(written(chart, joins["tabs"]!, "decimal", true)).tables).toEqual([chart]);
  });
});
