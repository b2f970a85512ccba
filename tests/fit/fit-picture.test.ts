import { describe, expect, it } from "vitest";
import { fitPicture } from "../../src/fit/fit-picture";
import { readSettings } from "../../src/fit/read-settings";
import { bodyOf, chartOf, finishedFrom, got, missesChart, said, settingsOf, withFault } from "./bodies";

describe("fitPicture", () => {
  const body = bodyOf({ bust: 34, waist: 28, hip: 40 });
  const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });

  it("has a row for each girth from the top down, with the body, the blend and the frame", () => {
    const picture = got(fitPicture(missesChart, body, "dress"));
    expect(picture).toMatchObject({ unit: "in", frame: "12", cut: "16", whyNot: null });
    expect(
      picture.places.map(({ place, body, size, blendAt, frameAt, ease }) => [
        place,
        body,
        size,
        blendAt,
        frameAt,
        ease,
      ]),
    ).toEqual([
      ["bust", 34, "12", 34, 34, null],
      ["waist", 28, "14", 28, 26.5, null],
      ["hip", 40, "16", 40, 36, null],
    ]);
  });

  it("makes each size a band that reaches half way to its neighbours, side by side", () => {
    const [bust] = got(fitPicture(missesChart, body, "dress")).places;
    expect(bust!.bands.map(({ size, low, high }) => [size, low, high]).slice(0, 4)).toEqual([
      ["6", 30, 31],
      ["8", 31, 32],
      ["10", 32, 33.25],
      ["12", 33.25, 35],
    ]);
    for (const { bands } of got(fitPicture(missesChart, body, "dress")).places)
      bands.slice(1).forEach((band, at) => expect(band.low).toBe(bands[at]!.high));
  });

  it("keeps printed ranges as they are", () => {
    const chart = chartOf("body", "in", ["S", "M"], { bust: [{ low: 32, high: 34 }, { low: 35, high: 38 }] }); // prettier-ignore
    expect(got(fitPicture(chart, bodyOf({ bust: 33 }), "top")).places[0]!.bands).toEqual([
      { size: "S", at: 33, low: 32, high: 34 },
      { size: "M", at: 36.5, low: 35, high: 38 },
    ]);
  });

  it("holds everything that is drawn between its low and high", () => {
    const picture = got(fitPicture(missesChart, bodyOf({ bust: 30.2, waist: 39, hip: 50 }), "dress"));
    for (const { body: measure, blendAt, bands } of picture.places)
      for (const figure of [measure, blendAt, ...bands.flatMap(({ low, high }) => [low, high])]) {
        expect(figure).toBeGreaterThanOrEqual(picture.low);
        expect(figure).toBeLessThanOrEqual(picture.high);
      }
  });

  it("says the ease in the size to cut in figures and in words, tight marked by more than a colour", () => {
    const picture = got(fitPicture(missesChart, body, "shirt", { finished }));
    expect(picture.cut).toBe("12");
    expect(picture.places.map(({ place, ease, word, tight }) => [place, ease, word, tight])).toEqual([
      ["bust", 3, "fitted", false],
      ["waist", 0.5, "tight", true],
      ["hip", 0, "tight", true],
    ]);
    expect(picture.description).toBe(
      "Frame size 12, size to cut in one piece 12. Bust 34 inches: size 12; in size 12 3 inches of ease, which is fitted. Waist 28 inches: size 14; in size 12 1/2 inch of ease, which is tight. Hip 40 inches: size 14; in size 12 no ease, which is tight.",
    );
  });

  it("shows the blend and why there is no one size", () => {
    const picture = got(fitPicture(missesChart, bodyOf({ bust: 46, waist: 39, hip: 51 }), "dress"));
    expect(picture).toMatchObject({ cut: null, whyNot: { code: "aboveChart" } });
    expect(picture.places.find(({ place }) => place === "hip")).toMatchObject({ size: "24", blendAt: 51 });
    expect(picture.description).toMatch(/^Frame size 24, no size will do in one piece\./);
  });

  it("has each row whole", () => {
    const chart = chartOf("body", "in", ["S", "M"], { bust: [34, 36] });
    const own = chartOf("finished", "in", ["S", "M"], { bust: [38, 40] });
    expect(got(fitPicture(chart, bodyOf({ bust: 34 }), "top", { finished: own }))).toEqual({
      unit: "in",
      sizes: ["S", "M"],
      low: 33,
      high: 37,
      frame: "S",
      cut: "S",
      whyNot: null,
      places: [
        {
          place: "bust",
          name: "bust",
          bands: [
            { size: "S", at: 34, low: 33, high: 35 },
            { size: "M", at: 36, low: 35, high: 37 },
          ],
          body: 34,
          size: "S",
          blendAt: 34,
          frameAt: 34,
          ease: 4,
          word: "fitted",
          tight: false,
          words: "Bust 34 inches: size S; in size S 4 inches of ease, which is fitted.",
        },
      ],
      description:
        "Frame size S, size to cut in one piece S. Bust 34 inches: size S; in size S 4 inches of ease, which is fitted.",
    });
  });

  it("draws a chart of one size as a line, and leaves out what isn't measured or has no figure in its size", () => {
    const one = got(fitPicture(chartOf("body", "in", ["M"], { bust: [36] }), bodyOf({ bust: 36 }), "top"));
    expect(one.places.map(({ bands }) => bands)).toEqual([[{ size: "M", at: 36, low: 36, high: 36 }]]);
    expect(got(fitPicture(missesChart, bodyOf({ bust: 34 }), "shirt")).places.map(({ place }) => place)).toEqual([
      "bust",
    ]);
    // 36 in of hip: 1/2 in of ease in size 12, 2 in in 14, of which the body chart prints no hip.
    const chart = chartOf("body", "in", ["12", "14", "16"], { bust: [34, 36, 38], hip: [36, null, 40] });
    const own = chartOf("finished", "in", ["12", "14", "16"], { hip: [36.5, 38, 40.5] });
    const picture = got(fitPicture(chart, bodyOf({ bust: 34, hip: 36 }), "shirt", { finished: own }));
    expect(picture.places.map(({ place, bands }) => [place, bands.length])).toEqual([["bust", 3]]);
  });

  it("leaves a size without a figure out of the bands, its neighbours meet half way", () => {
    const chart = chartOf("body", "in", ["S", "M", "L"], { bust: [34, null, 38] });
    expect(got(fitPicture(chart, bodyOf({ bust: 34 }), "top")).places[0]!.bands).toEqual([
      { size: "S", at: 34, low: 32, high: 36 },
      { size: "L", at: 38, low: 36, high: 40 },
    ]);
  });

  it("gives the bust the ease that it has after the adjustment", () => {
    const settings = settingsOf(["Frame", "", "high bust", "", ""]);
    const curvy = bodyOf({ highBust: 36, bust: 40 });
    const bust = (options: Parameters<typeof fitPicture>[3]) =>
      got(fitPicture(missesChart, curvy, "top", { settings, ...options })).places.find(({ place }) => place === "bust");
    expect(bust({ finished: finishedFrom(missesChart, { bust: 3 }) })).toMatchObject({
      body: 40,
      size: "16",
      ease: 3,
      word: "fitted",
      words: "Bust 40 inches: size 16; in size 16 3 inches of ease, which is fitted.",
    });
    expect(bust({})).toMatchObject({ ease: null, word: "", words: "Bust 40 inches: size 16." });
  });

  // A waist of 34 in in a shirt of 35 1/2: 1 1/2 in of ease. Ours asks 1 in, Ada 2, and Ben's own shirt of 36 has 2.
  it("says enough or tight by the least ease that is hers, or that of a garment she wears", () => {
    const men = chartOf("body", "in", ["38", "40"], { chest: [38, 40], neck: [15, 15.5], waist: [32, 34] });
    const made = chartOf("finished", "in", ["38", "40"], { chest: [41, 43], waist: [33.5, 35.5] });
    const row = (waist: number, ...rows: (string | number)[][]) => {
      const settings = got(readSettings([["Setting", "Garment", "Place", "Value", "Unit", "Person"], ...rows]));
      const body = bodyOf({ neck: 15.5, chest: 40, waist }, "Ada");
      const picture = got(fitPicture(men, body, "men's shirt", { finished: made, settings }));
      const found = picture.places.find(({ place }) => place === "waist")!;
      return [found.ease, found.word, found.tight];
    };
    expect(row(34)).toEqual([1.5, "enough", false]);
    expect(row(34, ["Least ease", "", "waist", 2, "in", "Ada"])).toEqual([1.5, "tight", true]);
    expect(row(34, ["Least ease", "", "waist", 2, "in", "Ben"])).toEqual([1.5, "enough", false]);
    expect(row(34, ["My garment", "men's shirt", "waist", 36, "in", ""])).toEqual([1.5, "tight", true]);
    // 35 in: 1/2 in of ease, less than our 1 in and more than her own 1/4.
    expect(row(35)).toEqual([0.5, "tight", true]);
    expect(row(35, ["Least ease", "", "waist", 0.25, "in", "Ada"])).toEqual([0.5, "enough", false]);
  });

  it("adds that it is tight to her own fit word, or says that alone where her words don't reach", () => {
    const settings = settingsOf(["Fitted", "shirt", "hip", "1 to 3", "in"]);
    const hip = (measure: number) =>
      got(fitPicture(missesChart, bodyOf({ bust: 34, hip: measure }), "shirt", { finished, settings })).places.find(
        ({ place }) => place === "hip",
      );
    // 40 in finished at the hip of size 12, 2 in wanted.
    expect(hip(37)).toMatchObject({ ease: 3, word: "fitted", tight: false });
    expect(hip(39)).toMatchObject({ ease: 1, word: "fitted, tight", tight: true });
    expect(hip(39.5)).toMatchObject({ ease: 0.5, word: "tight", tight: true });
    expect(hip(41)).toMatchObject({ ease: -1, word: "smaller than the body: stretch knits only", tight: true });
  });

  it("calls just the least ease enough, and none at all tight beside her own word", () => {
    const settings = settingsOf(["Close-fitting", "shirt", "hip", "0 to 1", "in"]);
    const hip = (measure: number, options: object) =>
      got(fitPicture(missesChart, bodyOf({ bust: 34, hip: measure }), "shirt", { finished, ...options })).places.at(-1);
    expect(hip(38, {})).toMatchObject({ ease: 2, word: "enough", tight: false });
    expect(hip(40, { settings })).toMatchObject({ ease: 0, word: "close-fitting, tight", tight: true });
  });

  it("calls nothing tight where there is no size to cut", () => {
    const picture = got(fitPicture(missesChart, bodyOf({ bust: 46, waist: 39, hip: 51 }), "dress", { finished }));
    expect(picture.cut).toBeNull();
    expect(picture.places.map(({ ease, word, tight }) => [ease, word, tight])).toEqual(Array(3).fill([null, "", false])); // prettier-ignore
  });

  it("says the ease without a word where none is known", () => {
    const chart = chartOf("body", "in", ["S", "M"], { hip: [36, 38], thigh: [20, 21] });
    const own = chartOf("finished", "in", ["S", "M"], { hip: [39, 41], thigh: [24, 25] });
    const thigh = got(fitPicture(chart, bodyOf({ hip: 36, thigh: 20 }), "trousers", { finished: own })).places.at(-1);
    expect(thigh).toMatchObject({ word: "", words: "Thigh 20 inches: size S; in size S 4 inches of ease." });
  });

  it("draws no frame where its size has no figure", () => {
    const sizes = ["12", "14", "16"];
    const chart = chartOf("body", "in", sizes, { bust: [34, 36, 38], hip: [36, null, 40] });
    const own = chartOf("finished", "in", sizes, { hip: [40, 42, 44] });
    // Hip 41: 1 in of ease in 14, 3 in 16.
    const picture = got(fitPicture(chart, bodyOf({ bust: 36, hip: 41 }), "shirt", { finished: own }));
    expect(picture.places.at(-1)).toMatchObject({ place: "hip", size: "16", frameAt: null });
  });

  it("doesn't say the ease after an adjustment by a pattern bust that isn't printed", () => {
    const sizes = ["12", "14", "16"];
    const chart = chartOf("body", "in", sizes, { highBust: [32, 34, 36], bust: [34, 36, null], waist: [26.5, 28, 30] });
    const own = chartOf("finished", "in", sizes, { bust: [37, 39, 41], waist: [28.5, 30, 32] });
    const settings = settingsOf(["Frame", "dress", "high bust", "", ""]);
    const curvy = bodyOf({ highBust: 34, bust: 37, waist: 30 });
    const picture = got(fitPicture(chart, curvy, "dress", { finished: own, settings }));
    expect(picture.cut).toBe("16");
    expect(picture.places.find(({ place }) => place === "bust")).toMatchObject({
      ease: null,
      word: "",
      words: "Bust 37 inches: size 14.",
    });
  });

  it("says nothing of inches where the chart doesn't", () => {
    const chart = chartOf("body", null, ["S", "M"], { hip: [36, 38] });
    const own = chartOf("finished", null, ["S", "M"], { hip: [34, 36] });
    expect(got(fitPicture(chart, bodyOf({ hip: 38 }), "leggings", { finished: own }))).toMatchObject({
      unit: null,
      description:
        "Frame size M, size to cut in one piece M. Hip 38: size M; in size M 2 less than the body, which is smaller than the body: stretch knits only.",
    });
  });

  it("refuses a garment it doesn't know, and a cell that holds no measure", () => {
    expect(said(fitPicture(missesChart, body, "tent"))).toMatch(/^"tent" is not a garment known here\. Known/);
    const fault = { fault: { code: "unreadableLength", details: { text: "28?" } } } as const;
    expect(said(fitPicture(missesChart, withFault(bodyOf({ bust: 34 }), "waist", fault), "shirt"))).toBe(
      `"28?" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`,
    );
  });

  it("refuses a body whose frame is off the chart", () => {
    expect(said(fitPicture(missesChart, bodyOf({ bust: 60, waist: 28, hip: 40 }), "dress"))).toMatch(
      /above this chart/,
    );
  });
});
