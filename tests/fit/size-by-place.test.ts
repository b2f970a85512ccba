import { describe, expect, it } from "vitest";
import type { Body } from "../../src/chart/model";
import { sizeByPlace } from "../../src/fit/size-by-place";
import { bodyOf, chartOf, missesChart } from "./bodies";

const CLOSEST = "The closest size; a tie goes to the larger.";
const blank = { measure: null, size: null, figure: null, difference: null };

describe("sizeByPlace", () => {
  // Common practice: 34-28-40 is 12, 14 and 16 on the misses chart (tests/figures).
  it("goes through the chart's places in its order, the unmeasured ones too", () => {
    expect(sizeByPlace(missesChart, bodyOf({ hip: 40, bust: 34, waist: 28 }))).toEqual([
      { place: "high bust", ...blank, note: "Not measured." },
      { place: "bust", measure: 34, size: "12", figure: 34, difference: 0, note: CLOSEST },
      { place: "waist", measure: 28, size: "14", figure: 28, difference: 0, note: CLOSEST },
      { place: "hip", measure: 40, size: "16", figure: 40, difference: 0, note: CLOSEST },
      { place: "back waist length", ...blank, note: "Not measured." },
    ]);
  });

  const ranges = chartOf("body", "in", ["S", "M"], { bust: [{ low: 32, high: 34 }, { low: 35, high: 38 }] }); // prettier-ignore
  it("says whether a printed range holds the measure, or it lies between two", () => {
    expect(sizeByPlace(ranges, bodyOf({ bust: 33 }))).toEqual([
      {
        place: "bust",
        measure: 33,
        size: "S",
        figure: "32 to 34",
        difference: 0,
        note: "The size whose printed range holds the measure.",
      },
    ]);
    expect(sizeByPlace(ranges, bodyOf({ bust: 34.5 }))).toEqual([
      {
        place: "bust",
        measure: 34.5,
        size: "M",
        figure: "35 to 38",
        difference: -0.5,
        note: "Between two printed ranges: the larger size.",
      },
    ]);
  });

  // Half the end step is still answered: 46 + 1 above and 30 1/2 - 1/2 below (common practice, no source).
  it("says how far beyond the chart's ends a measure is, and which way", () => {
    const bust = (value: number) => sizeByPlace(missesChart, bodyOf({ bust: value }))[1];
    expect(bust(46.5)).toEqual({
      place: "bust",
      measure: 46.5,
      size: "24",
      figure: 46,
      difference: 0.5,
      note: "The closest size; the measure is 1/2 in above the largest size.",
    });
    expect(bust(30.25)).toMatchObject({
      size: "6",
      difference: -0.25,
      note: "The closest size; the measure is 1/4 in below the smallest size.",
    });
    expect(bust(60)).toEqual({
      place: "bust",
      ...blank,
      measure: 60,
      note: "60 in at the bust is 14 in above this chart, which ends at size 24 (46 in).",
    });
  });

  it("shows a measure in the chart's unit, on the chart or not", () => {
    // 86.36 cm = 34 in, 55.88 cm = 22 in.
    const rows = sizeByPlace(missesChart, bodyOf({ bust: 86.36, thigh: 55.88 }, null, "cm"));
    expect(rows[1]).toMatchObject({ place: "bust", measure: 34, size: "12", difference: 0 });
    expect(rows.at(-1)).toEqual({ place: "thigh", ...blank, measure: 22, note: "Not on this chart." });
    expect(sizeByPlace(missesChart, bodyOf({ thigh: 22 }, null, "in")).at(-1)).toMatchObject({ measure: 22 });
  });

  it("leaves a measure as it is where the chart doesn't say its unit", () => {
    const bare = chartOf("body", null, ["S", "M"], { bust: [84, 92] });
    const [bust, thigh] = sizeByPlace(bare, bodyOf({ bust: 84, thigh: 55 }, null, "cm"));
    expect(bust).toEqual({
      place: "bust",
      ...blank,
      measure: 84,
      note: "This chart doesn't say inches or centimetres, so 84 cm can't be compared with it: add a Unit column.",
    });
    expect(thigh).toMatchObject({ measure: 55 });
  });

  it("hands on what a cell holds that is no measure, on the chart or not", () => {
    const fault = { fault: { code: "unreadableLength", details: { text: "abt 34" } } } as const;
    const body: Body = { name: null, measures: new Map([["bust", fault], ["thigh", fault]]) }; // prettier-ignore
    const rows = sizeByPlace(ranges, body);
    expect(rows).toEqual([
      {
        place: "bust",
        ...blank,
        measure: fault,
        note: `"abt 34" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`,
      },
      { place: "thigh", ...blank, measure: fault, note: "Not on this chart." },
    ]);
  });

  it("leaves out what is no place, and names a place once", () => {
    const views = { ...ranges, rows: [...ranges.rows, ...ranges.rows] };
    expect(sizeByPlace(views, bodyOf({ bust: 33, "shoe size": 39 })).map(({ place }) => place)).toEqual(["bust"]);
  });
});
