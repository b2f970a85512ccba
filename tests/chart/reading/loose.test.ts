import { describe, expect, test } from "vitest";
import { readCharts } from "../../../src/chart/read-charts";

const values = (row: string) => readCharts(`Body measurements (in)\nSize 8 10\n${row}`).tables[0]?.rows[0]?.values;

// By hand: a whole number and the fraction behind it are one figure, however the fraction is printed.
describe("a row whose columns only a space parts", () => {
  test.each(["Waist 24 1/3 25 2/3", "Waist 24 ⅓ 25 ⅔"])("joins a number and its fraction: %s", (row) => {
    expect(values(row)).toEqual([expect.closeTo(24 + 1 / 3, 9), expect.closeTo(25 + 2 / 3, 9)]);
  });
  test("never takes a fraction for the next size's figure", () => {
    const { tables } = readCharts("Body measurements (in)\nSize 8 10 12 14\nWaist 1 ⅓ 1 ⅔\nHip 34 35 36 38");
    expect(tables.map(({ rows }) => rows.map(({ label }) => label))).toEqual([["Hip"]]);
  });
});
