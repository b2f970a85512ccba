import { describe, expect, it } from "vitest";
import { easePlan } from "../../src/fit/ease-plan";
import { bodyOf, chartOf, finishedFrom, got, missesChart, said, settingsOf, withFault } from "./bodies";

describe("easePlan", () => {
  const body = bodyOf({ bust: 34, waist: 28, hip: 40 });
  const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });

  it("goes from two sizes below to two above the frame size, place by place", () => {
    const plan = got(easePlan(missesChart, body, "dress", finished));
    expect(plan.map(({ size, place, ease }) => [size, place, ease])).toEqual([
      ["8", "bust", 0.5], ["8", "waist", -2], ["8", "hip", -2.5],
      ["10", "bust", 1.5], ["10", "waist", -1], ["10", "hip", -1.5],
      ["12", "bust", 3], ["12", "waist", 0.5], ["12", "hip", 0],
      ["14", "bust", 5], ["14", "waist", 2], ["14", "hip", 2],
      ["16", "bust", 7], ["16", "waist", 4], ["16", "hip", 4],
    ]); // prettier-ignore
  });

  it("names the ease, says enough or tight, and tells wearing from design ease", () => {
    const plan = got(easePlan(missesChart, body, "dress", finished));
    const row = (size: string, place: string) => plan.find((one) => one.size === size && one.place === place);
    expect(row("12", "bust")).toMatchObject({
      term: "fitted",
      enough: "enough",
      note: "Frame size. 2 1/2 inches to move, 1/2 inch by design; least ease 2 1/2 inches, ours.",
    });
    expect(row("12", "waist")).toMatchObject({ term: "", enough: "tight" });
    expect(row("14", "hip")).toMatchObject({ term: "", enough: "enough" });
    expect(row("8", "waist")).toMatchObject({ term: "smaller than the body: stretch knits only", enough: "tight" });
    expect(row("8", "bust")?.note).toMatch(/^2 sizes below the frame: neck and shoulders are smaller too\./);
  });

  it("stops at the ends of the chart", () => {
    const sizes = got(easePlan(missesChart, bodyOf({ bust: 30.5 }), "top", finishedFrom(missesChart, { bust: 3 }))).map(
      ({ size }) => size,
    );
    expect(sizes).toEqual(["6", "8", "10"]);
  });

  it("gives the bust its ease after the adjustment", () => {
    const settings = settingsOf(["Frame", "", "high bust", "", ""]);
    const plan = got(
      easePlan(missesChart, bodyOf({ highBust: 36, bust: 40 }), "top", finishedFrom(missesChart, { bust: 3 }), {
        settings,
      }),
    );
    expect(plan.map(({ ease }) => ease)).toEqual([3, 3, 3, 3, 3]);
    expect(plan[2]!.note).toMatch(/After the bust adjustment\./);
  });

  it("leaves the word out where no fit word covers the ease, and says so", () => {
    const plan = got(easePlan(missesChart, bodyOf({ bust: 34 }), "jacket", finishedFrom(missesChart, { bust: 3 })));
    expect(plan.find(({ size }) => size === "12")).toMatchObject({ term: "", enough: "enough" });
    expect(plan.find(({ size }) => size === "12")?.note).toMatch(/No fit word covers this ease\./);
    expect(plan.find(({ size }) => size === "14")).toMatchObject({ term: "semi-fitted" });
  });

  it("judges nothing where no least ease is known", () => {
    const chart = chartOf("body", "in", ["S", "M"], { bust: [34, 36], neck: [13, 14] });
    const own = chartOf("finished", "in", ["S", "M"], { neck: [14, 15] });
    expect(got(easePlan(chart, bodyOf({ bust: 34, neck: 13 }), "top", own))[0]).toMatchObject({
      place: "neck",
      ease: 1,
      term: "",
      enough: "",
      note: "Frame size.",
    });
  });

  it("says where her own least ease comes from", () => {
    const settings = settingsOf(["My garment", "top", "bust", 38, "in"]);
    const plan = got(
      easePlan(missesChart, bodyOf({ bust: 34 }), "top", finishedFrom(missesChart, { bust: 3 }), { settings }),
    );
    expect(plan.find(({ size }) => size === "12")).toMatchObject({ enough: "tight" });
    expect(plan[0]!.note).toMatch(/least ease 4 inches, of a garment that fits\.$/);
  });

  it("gives its ease in the chart's unit", () => {
    const chart = chartOf("body", "cm", ["38", "40"], { bust: [88, 92] });
    const inches = chartOf("finished", "in", ["38", "40"], { bust: [38, 40] });
    const plan = got(easePlan(chart, bodyOf({ bust: 88 }), "top", inches));
    expect(plan[0]!.ease).toBeCloseTo(38 * 2.54 - 88, 9);
    expect(plan[0]!.term).toBe("fitted");
  });

  // By hand, size by size: total = finished - body; design = finished - pattern body - 2 1/2; the rest is to move in.
  it("says at each size what is to move in and what is design", () => {
    const rows = got(easePlan(missesChart, bodyOf({ bust: 34 }), "top", finishedFrom(missesChart, { bust: 4 })));
    const note = (words: string) => `${words} to move, 1 1/2 inches by design; least ease 2 1/2 inches, ours.`;
    const below = "below the frame: neck and shoulders are smaller too.";
    expect(rows).toEqual([
      { size: "8", place: "bust", ease: 1.5, term: "close-fitting", enough: "tight", note: note(`2 sizes ${below} 0 inches`) },
      { size: "10", place: "bust", ease: 2.5, term: "close-fitting", enough: "enough", note: note(`1 size ${below} 1 inch`) },
      { size: "12", place: "bust", ease: 4, term: "fitted", enough: "enough", note: note("Frame size. 2 1/2 inches") },
      { size: "14", place: "bust", ease: 6, term: "loose-fitting", enough: "enough", note: note("1 size above the frame. 4 1/2 inches") },
      { size: "16", place: "bust", ease: 8, term: "loose-fitting", enough: "enough", note: note("2 sizes above the frame. 6 1/2 inches") },
    ]); // prettier-ignore
  });

  it("says what is short of room to move, and what is less by design", () => {
    const hip = got(easePlan(missesChart, body, "dress", finished)).find(
      ({ size, place }) => size === "12" && place === "hip",
    );
    // 40 in of skirt on 40 in of hip: the design's 2 in over the least are there, the least isn't.
    expect(hip?.note).toBe(
      "Frame size. 2 inches short of room to move, 2 inches by design; least ease 2 inches, ours.",
    );
    const close = got(easePlan(missesChart, bodyOf({ bust: 34 }), "top", finishedFrom(missesChart, { bust: 1 })));
    expect(close[2]).toEqual({
      size: "12",
      place: "bust",
      ease: 1,
      term: "close-fitting",
      enough: "tight",
      note: "Frame size. 2 1/2 inches to move, 1 1/2 inches less by design; least ease 2 1/2 inches, ours.",
    });
    // Below the body no room is told apart.
    expect(close[0]).toEqual({
      size: "8",
      place: "bust",
      ease: -1.5,
      term: "smaller than the body: stretch knits only",
      enough: "tight",
      note: "2 sizes below the frame: neck and shoulders are smaller too.",
    });
  });

  it("leaves out what the chart doesn't print, the body lacks, the sizes don't have or lies along the body", () => {
    const own = chartOf("finished", "in", ["12", "14"], {
      hemWidth: [60, 62],
      backLength: [24, 24.5],
      backWaistLength: [16, 16.25],
      waist: [30, 32],
      bust: [38, 40],
    });
    expect(
      got(easePlan(missesChart, bodyOf({ bust: 34, backWaistLength: 16 }), "top", own)).map(({ size, place, ease }) => [
        size,
        place,
        ease,
      ]),
    ).toEqual([["12", "bust", 4], ["14", "bust", 6]]); // prettier-ignore
  });

  it("gives only the bust its ease after the adjustment", () => {
    const settings = settingsOf(["Frame", "", "high bust", "", ""]);
    const curvy = bodyOf({ highBust: 36, bust: 40, waist: 29 });
    const plan = got(
      easePlan(missesChart, curvy, "top", finishedFrom(missesChart, { bust: 3, waist: 2 }), { settings }),
    );
    // Size 16: waist 32 in finished on her own 29, not on the pattern's 30.
    expect(plan.filter(({ size }) => size === "16").map(({ place, ease }) => [place, ease])).toEqual([
      ["bust", 3],
      ["waist", 3],
    ]);
  });

  it("leaves out a girth that the body chart doesn't print, though body and garment have it", () => {
    const own = chartOf("finished", "in", missesChart.sizes, {
      hip: missesChart.rows[3]!.values.map((value) => (value as number) + 3),
      thigh: missesChart.sizes.map((_, at) => 22 + at),
    });
    const plan = got(easePlan(missesChart, bodyOf({ hip: 40, thigh: 23 }), "trousers", own));
    expect([...new Set(plan.map(({ place }) => place))]).toEqual(["hip"]);
  });

  it("says that nothing is by design where the pattern has just the least ease", () => {
    const [first] = got(easePlan(missesChart, bodyOf({ bust: 30.5 }), "top", finishedFrom(missesChart, { bust: 2.5 })));
    expect(first!.note).toBe("Frame size. 2 1/2 inches to move, 0 inches by design; least ease 2 1/2 inches, ours.");
  });

  it("refuses a garment it doesn't know, a cell that is no measure, a figure that isn't printed, a unit that isn't said", () => {
    expect(said(easePlan(missesChart, body, "tent", finished))).toMatch(/^"tent" is not a garment known here\. Known/);
    const fault = { fault: { code: "unreadableLength", details: { text: "40?" } } } as const;
    expect(said(easePlan(missesChart, withFault(bodyOf({ bust: 34 }), "hip", fault), "shirt", finished))).toBe(
      `"40?" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`,
    );
    const chart = chartOf("body", "in", ["S", "M"], { bust: [34, 36], hip: [36, null] });
    const own = chartOf("finished", "in", ["S", "M"], { bust: [38, 40], hip: [40, 42] });
    expect(said(easePlan(chart, bodyOf({ bust: 34, hip: 36 }), "shirt", own))).toBe(
      "The chart has no figure for hip in size M, and the answer hangs on it: fill it in.",
    );
    expect(said(easePlan({ ...chart, unit: null }, bodyOf({ bust: 34 }), "shirt", { ...own, unit: null }))).toBe(
      "This chart doesn't say inches or centimetres, so 2.5 in can't be compared with it: add a Unit column.",
    );
  });

  it("asks nothing of a knit, in whatever unit its chart is", () => {
    const chart = chartOf("body", null, ["S", "M"], { hip: [36, 38] });
    const own = chartOf("finished", null, ["S", "M"], { hip: [34, 38] });
    expect(got(easePlan(chart, bodyOf({ hip: 36 }), "leggings", own))).toEqual([
      { size: "S", place: "hip", ease: -2, term: "smaller than the body: stretch knits only", enough: "", note: "Frame size." },
      { size: "M", place: "hip", ease: 2, term: "", enough: "", note: "1 size above the frame." },
    ]); // prettier-ignore
  });

  it("refuses a body off the chart and a falling row", () => {
    expect(said(easePlan(missesChart, bodyOf({ bust: 60 }), "top", finished))).toMatch(/above this chart/);
    const falling = chartOf("finished", "in", ["12", "14"], { bust: [40, 37] });
    expect(said(easePlan(missesChart, bodyOf({ bust: 34 }), "top", falling))).toMatch(/out of order/);
  });
});
