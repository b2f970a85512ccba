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
  ])("reads %s", (text, inch, cm) => {
    expect(readWidths(text)).toMatchObject({ in: inch, cm });
  });
  it.each(["View A", "2 1/8", "with nap", "12", ""])("finds none in %j", (text) => {
    expect(readWidths(text)).toBeNull();
  });
  it("takes the width out of the rest", () => {
    expect(readWidths('A 45" with nap')?.rest.replace(/\s+/g, " ")).toBe("A with nap");
  });
});

describe("isSameCloth", () => {
  it("pairs the widths that envelopes print side by side", () => {
    for (const [inch, cm] of [[36, 90], [45, 115], [54, 140], [60, 150]] as const) expect(isSameCloth(inch, cm)).toBe(true);
    expect(isSameCloth(45, 150)).toBe(false);
  });
}); // prettier-ignore
