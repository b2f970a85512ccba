import { describe, expect, it } from "vitest";
import { fitPicture } from "../../src/fit/fit-picture";
import { bodyOf, chartOf, finishedFrom, got, missesChart, said } from "./bodies";

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

  it("refuses a body whose frame is off the chart", () => {
    expect(said(fitPicture(missesChart, bodyOf({ bust: 60, waist: 28, hip: 40 }), "dress"))).toMatch(
      /above this chart/,
    );
  });
});
