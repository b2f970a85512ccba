import { describe, expect, it } from "vitest";
import type { Chart, ChartRow } from "../../src/chart/model";
import { fitting, type FinishedFigures } from "../../src/fit/fitting";
import { chartOf, got, missesChart, said } from "./bodies";

const finishedOf = (...args: Parameters<typeof fitting>): FinishedFigures => got(fitting(...args)).finished!;

describe("fitting", () => {
  const sizes = ["S", "M"];
  const chart = chartOf("body", "in", sizes, { bust: [34, 36], waist: [26, 28] });
  const bust = (finished: Chart, body = chart) => {
    const figures = finishedOf(body, "shirt", { finished });
    return sizes.map((_, index) => said(figures.at("bust", index)));
  };

  it("takes finished measurements without a unit in the body chart's, and the other way round", () => {
    expect(bust(chartOf("finished", null, sizes, { bust: [37, 39] }))).toEqual([37, 39]);
    expect(bust(chartOf("finished", "in", sizes, { bust: [37, 39] }), { ...chart, unit: null })).toEqual([37, 39]);
    // 1 in = 2.54 cm.
    expect(bust(chartOf("finished", "cm", sizes, { bust: [94, 99.06] }))).toEqual([37.0078740157, 39]);
  });

  it("asks for units where one is missing and the figures are two to three times the body's", () => {
    const against = (finished: string, body: string) =>
      `${finished} finished against ${body} in the body chart: cm against inches? Write the unit beside the figure.`;
    expect(bust(chartOf("finished", null, sizes, { bust: [68, 108] }))).toEqual([
      against("68", "34 in"),
      against("108", "36 in"),
    ]);
    expect(bust(chartOf("finished", "cm", sizes, { bust: [94, 99] }), { ...chart, unit: null })).toEqual([
      against("94 cm", "34"),
      against("99 cm", "36"),
    ]);
    // A wide tent of a garment, or just under the double: no centimetres.
    expect(bust(chartOf("finished", null, sizes, { bust: [67.5, 110] }))).toEqual([67.5, 110]);
    // Where the body chart has no figure there is nothing to doubt it by.
    const gap = chartOf("body", "in", sizes, { bust: [34, null] });
    expect(bust(chartOf("finished", null, sizes, { bust: [37, 39] }), gap)).toEqual([37, 39]);
  });

  it("counts a printed range by its lower end: nothing may be tighter than was promised", () => {
    const ranges = [{ low: 36, high: 42 }, { low: 38, high: 39 }]; // prettier-ignore
    expect(bust(chartOf("finished", "in", sizes, { bust: ranges }))).toEqual([36, 38]);
  });

  it("takes two sizes with the same figure, but no row that falls, whichever view's it is", () => {
    expect(bust(chartOf("finished", "in", sizes, { bust: [38, 38] }))).toEqual([38, 38]);
    const row = (view: string | undefined, values: ChartRow["values"]): ChartRow => ({
      place: "bust",
      ...(view === undefined ? {} : { view }),
      label: "Bust",
      values,
    });
    const views = (...rows: ChartRow[]) => ({ ...chart, kind: "finished" as const, rows });
    const falling = "The row for bust goes out of order at size M (40 in, then 37 in): correct the chart.";
    expect(bust(views(row("A", [38, 40]), row("B", [40, 37])))).toEqual([falling, falling]);
    const named = (...rows: ChartRow[]) => finishedOf(chart, "shirt", { finished: views(...rows) }).views("bust");
    expect(named(row("A", [38, 40]), row("B", [39, 41]))).toEqual(["A", "B"]);
    expect(named(row("A", [38, 40]))).toEqual([]);
    expect(named(row("A", [38, 40]), row(undefined, [39, 41]))).toEqual([]);
  });

  it("refuses a garment it doesn't know", () => {
    expect(said(fitting(missesChart, "tent"))).toMatch(/^"tent" is not a garment known here\./);
  });
});
