import { describe, expect, it } from "vitest";
import { upward } from "../../src/fit/upward";
import { chartOf, missesChart } from "./bodies";

describe("upward", () => {
  it("leaves a rising chart as it is", () => {
    expect(upward(missesChart)).toBe(missesChart);
  });

  it("turns a chart from large to small, blanks in their places", () => {
    const turned = upward(chartOf("body", "in", ["L", "M", "S"], { bust: [38, null, 34], hip: [40, 38, 36] }));
    expect(turned.sizes).toEqual(["S", "M", "L"]);
    expect(turned.rows.map(({ values }) => values)).toEqual([[34, null, 38], [36, 38, 40]]); // prettier-ignore
    expect(upward(turned)).toBe(turned);
    const ranges = chartOf("body", "in", ["L", "S"], { bust: [{ low: 36, high: 38 }, { low: 34, high: 36 }], hip: [null, null] }); // prettier-ignore
    expect(upward(ranges).sizes).toEqual(["S", "L"]);
    expect(upward(ranges)).toBe(upward(ranges));
    // A row that stands still says nothing; a cell that is missing at its end is a blank.
    const level = chartOf("body", "in", ["L", "S"], { cuff: [8, 8], bust: [38, 34], hip: [40] });
    expect(upward(level).rows.map(({ values }) => values)).toEqual([[8, 8], [34, 38], [null, 40]]); // prettier-ignore
    const still = chartOf("body", "in", ["L", "S"], { cuff: [8, 8] });
    expect(upward(still)).toBe(still);
  });

  it("leaves a slip to be refused: figures that fall under rising numbers, rows that go both ways", () => {
    const slip = chartOf("body", "in", ["8", "10"], { bust: [36, 34] });
    expect(upward(slip)).toBe(slip);
    const mixed = chartOf("body", "in", ["A", "B"], { bust: [34, 36], hip: [38, 36] });
    expect(upward(mixed)).toBe(mixed);
  });
});
