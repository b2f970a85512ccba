import { describe, expect, it } from "vitest";
import type { Body } from "../../src/chart/model";
import { bodyFigure, figureIn, measureOf, neededMeasure } from "../../src/fit/measures";
import { bodyOf, chartOf, said } from "./bodies";

describe("measureOf", () => {
  it("gives a measure in the chart's unit, a bare one as it stands", () => {
    expect(said(measureOf(bodyOf({ bust: 34 }), "bust", "cm"))).toBe(34);
    expect(said(measureOf(bodyOf({ bust: 34 }, null, "in"), "bust", "in"))).toBe(34);
    expect(said(measureOf(bodyOf({ bust: 101.6 }, null, "cm"), "bust", "in"))).toBe(40);
  });

  it("is nothing where nothing, or a nought, stands", () => {
    expect(said(measureOf(bodyOf({}), "bust", "in"))).toBeUndefined();
    expect(said(measureOf(bodyOf({ bust: 0 }), "bust", "in"))).toBeUndefined();
  });

  it("refuses a measure below zero, one that can't be read, and a unit where the chart has none", () => {
    expect(said(measureOf(bodyOf({ highBust: -34 }, null, "in"), "highBust", "in"))).toBe(
      "The high bust can't be below zero, and this is -34 in.",
    );
    const body: Body = {
      name: null,
      measures: new Map([["bust", { fault: { code: "unreadableLength", details: { text: "?" } } }]]),
    };
    expect(measureOf(body, "bust", "in")).toEqual({
      ok: false,
      problem: { code: "unreadableLength", details: { text: "?" } },
    });
    expect(said(measureOf(bodyOf({ bust: 86 }, null, "cm"), "bust", null))).toBe(
      "This chart doesn't say inches or centimetres, so 86 cm can't be compared with it: add a Unit column.",
    );
  });
});

describe("neededMeasure", () => {
  it("names the place, and the person where there is one", () => {
    expect(said(neededMeasure(bodyOf({ bust: 34 }), "bust", "in"))).toBe(34);
    expect(said(neededMeasure(bodyOf({ waist: 28 }), "hip", "in"))).toBe(
      "The hip isn't measured, and this garment is cut by it: fill it in.",
    );
    expect(said(neededMeasure(bodyOf({ hip: 0 }, "Ada"), "hip", "in"))).toBe(
      "The hip of Ada isn't measured, and this garment is cut by it: fill it in.",
    );
    expect(said(neededMeasure(bodyOf({ hip: -1 }), "hip", "in"))).toMatch(/below zero/);
  });
});

describe("bodyFigure", () => {
  const fault = { fault: { code: "unreadableFigure", details: { text: "3g" } } } as const;
  const chart = chartOf("body", "in", ["S", "M", "L"], { bust: [{ low: 32, high: 34 }, null, fault], waist: [24, 26, 28] }); // prettier-ignore

  it("is the printed figure, of a range the middle", () => {
    expect(said(bodyFigure(chart, "waist", 1))).toBe(26);
    expect(said(bodyFigure(chart, "bust", 0))).toBe(33);
    expect(said(figureIn(chart, chart.rows[0]!, 0, "low"))).toBe(32);
  });

  it("refuses what isn't printed or can't be read", () => {
    expect(said(bodyFigure(chart, "bust", 1))).toBe(
      "The chart has no figure for bust in size M, and the answer hangs on it: fill it in.",
    );
    expect(said(bodyFigure(chart, "bust", 2))).toBe(`"3g" on this chart can't be read as a figure: correct it there.`);
    expect(said(bodyFigure(chart, "hip", 0))).toBe("This chart has no row for hip. It has bust, waist.");
  });
});
