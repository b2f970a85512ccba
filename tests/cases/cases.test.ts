import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readCharts } from "../../src/chart/read-charts";
import type { ChartReading, ChartTable, Issue } from "../../src/chart/model";

// One folder for each pasted chart: input.txt or input.html, and expected.json with all tables and the least issues.
// All figures are invented or common practice.
const folders = readdirSync(import.meta.dirname, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

const inputOf = (folder: string): string => {
  const path = ["input.txt", "input.html"].map((name) => join(import.meta.dirname, folder, name)).find(existsSync);
  return readFileSync(path!, "utf8");
};

/** A row for every view has no view; null and absent are the same. */
const plain = (tables: readonly ChartTable[]): unknown =>
  tables.map((table) => ({ ...table, rows: table.rows.map((row) => ({ ...row, view: row.view ?? null })) }));

const matches = (issue: Issue, wanted: Partial<Issue>): boolean =>
  Object.entries(wanted).every(([field, value]) => issue[field as keyof Issue] === value);

describe("readCharts on pasted charts", () => {
  it.each(folders)("reads %s", (folder) => {
    const expected = JSON.parse(readFileSync(join(import.meta.dirname, folder, "expected.json"), "utf8")) as ChartReading;
    const reading = readCharts(inputOf(folder));
    expect(plain(reading.tables)).toEqual(plain(expected.tables));
    for (const wanted of expected.issues)
      expect(
        reading.issues.some((issue) => matches(issue, wanted)),
        `${JSON.stringify(wanted)} among ${JSON.stringify(reading.issues, null, 1)}`,
      ).toBe(true);
    const hasError = expected.issues.some((issue) => issue.severity !== "warning");
    if (!hasError) expect(reading.issues.filter((issue) => issue.severity === "error")).toEqual([]);
  });
});
