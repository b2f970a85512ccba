import { describe, expect, it } from "vitest";
import { isSameCloth, readWidths } from "../../../src/chart/reading/widths";

describe("readWidths", () => {
  // Widths as envelopes print them: a pair is one cloth and reads as its larger number. Common practice, no source.
  it.each([
    ['45"', 45, null],
    ['44/45"', 45, null],
    ['35/36"', 36, null],
    ['58"/60"', 60, null],
    ["58-60 in", 60, null],
    ["115 cm", null, 115],
    ['45" (115 cm)', 45, 115],
    ['150 cm (60")', 60, 150],
    ["1,40 m", null, 140],
    ["140 cm breit", null, 140],
    ["45", 45, null],
    ["150", null, 150],
    ['1/2" ribbon', 0.5, null],
    ['20" to 25"', 25, null],
    ["115 cms", null, 115],
    ["115 cm.", null, 115],
    ['44 1/2"', 44.5, null],
    ['2-1/4" elastic', 2.25, null],
    ['7/8" ribbon', 0.875, null],
    ["45 nap", 45, null],
    ["44 / 45", 45, null],
    ["44 - 45 wide", 45, null],
    ["140-150", null, 150],
    // The narrowest and the widest bare centimetres, and metres.
    ["70", null, 70],
    ["320", null, 320],
    ["0,6 m", null, 60],
    ["3,5 m", null, 350],
  ])("reads %s", (text, inch, cm) => {
    expect(readWidths(text)).toMatchObject({ in: inch, cm });
  });
  // The two widths of one cloth, in either order, with a unit at each or only at the end.
  it.each([
    ['45"/115 cm', 45, 115],
    ['115 cm/45"', 45, 115],
    ["140cm/54in", 54, 140],
    ['45" - 115cm', 45, 115],
    ['54" or 140 cm', 54, 140],
    ['44"/120 cm', 44, 120],
    ['1" or 2.5 cm', 1, 2.5],
    ['54"/1,40 m', 54, 140],
    ["45/115 cm", 45, 115],
    ['115/45"', 45, 115],
    ["30/76 cm", 30, 76],
    // Ribbon: both are inches.
    ['1/2" to 1"', 1, null],
    ["29/72 cm", null, 72],
  ])("never takes the inches of %s for centimetres, or the other way round", (text, inch, cm) => {
    expect(readWidths(text)).toEqual({ in: inch, cm, rest: "" });
  });
  it.each(["View A", "2 1/8", "with nap", "12", "", "69", "321", "45.5", "45,5", "1234", "3,6 m", "0,5 m"])(
    "finds none in %j",
    (text) => {
      expect(readWidths(text)).toBeNull();
    },
  );
  it.each([
    ['A 45" with nap', "A   with nap"],
    ['A45"with nap', "A with nap"],
    ['45" (115 cm) with nap', "with nap"],
    ['A 45" ( 115 cm )', "A"],
    ['A [45"] B', "A   B"],
    ['A [ 45" ] B', "A   B"],
    ['nap (45", 115 cm)', "nap ( ,  )"],
    ['(45" ) / (115 cm)', "/"],
    ["(150 cm / 60 inches)", ""],
    ["(45/115 cm / 54 inches)", ""],
    ["45 nap", "nap"],
    ["A 150", "A"],
    ["A 150 nap", "A   nap"],
  ])("takes the width of %j out of the rest", (text, rest) => {
    expect(readWidths(text)?.rest).toBe(rest);
  });
  it("reads a label, not a page", () => {
    const page = (length: number): string => '45" '.padEnd(length, "x");
    expect(readWidths(page(300))?.in).toBe(45);
    expect(readWidths(page(301))).toBeNull();
  });
});

describe("isSameCloth", () => {
  it("pairs the widths that envelopes print side by side", () => {
    for (const [inch, cm] of [[36, 90], [45, 115], [54, 140], [60, 150]] as const) expect(isSameCloth(inch, cm)).toBe(true);
    expect(isSameCloth(45, 150)).toBe(false);
  });
  it("lets them be six centimetres apart", () => {
    expect(isSameCloth(50, 133)).toBe(true);
    expect(isSameCloth(50, 121)).toBe(true);
    expect(isSameCloth(50, 134)).toBe(false);
    expect(isSameCloth(50, 120)).toBe(false);
  });
}); // prettier-ignore
