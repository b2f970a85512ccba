import { describe, expect, it } from "vitest";
import { blend } from "../../src/fit/blend";
import { cutSize } from "../../src/fit/cut-size";
import { readSettings } from "../../src/fit/read-settings";
import { bodyOf, got, missesChart, said } from "./bodies";

// The misses chart of US home-sewing patterns; the settings are invented.
const bare = { ...missesChart, unit: null };
const of = (setting: string, value: string | number, unit = "", garment = "") =>
  got(
    readSettings([
      ["Setting", "Garment", "Place", "Value", "Unit"],
      [setting, garment, "", value, unit],
    ]),
  );
const body = bodyOf({ bust: 38, highBust: 34, waist: 28, hip: 38 });

describe("chartLength on a chart that names no unit", () => {
  it.each([
    ["threshold", "5 cm", "", "5 cm"],
    ["threshold", 2, "", "2 in"],
    ["threshold", 2, "in", "2 in"],
  ] as const)("refuses %s %s %s, for it can't be set against the chart's figures", (setting, value, unit, text) => {
    expect(said(cutSize(bare, body, "shirt", { settings: of(setting, value, unit) }))).toContain(
      `doesn't say inches or centimetres, so ${text} can't be compared`,
    );
  });
  it("refuses her drafted difference where the high bust decides", () => {
    const rows = [
      ["Setting", "Garment", "Place", "Value", "Unit"],
      ["Frame", "shirt", "high bust", "", ""],
      ["Drafted difference", "", "", 5, "cm"],
    ];
    expect(said(cutSize(bare, body, "shirt", { settings: got(readSettings(rows)) }))).toContain(
      "so 5 cm can't be compared",
    );
  });
  it("refuses a step to round a blend to", () => {
    expect(said(blend(bare, body, "fitted dress", { settings: of("step", "1/8") }))).toContain("can't be compared");
  });
  it("answers as before where no such row holds", () => {
    const hers = { settings: of("threshold", "5 cm", "", "skirt") };
    expect(got(cutSize(bare, body, "shirt", hers))).toEqual(got(cutSize(bare, body, "shirt")));
    expect(got(cutSize(bare, body, "skirt", hers))).toEqual(got(cutSize(bare, body, "skirt")));
  });
  it("takes a threshold in centimetres against a chart in inches", () => {
    // 38 less 34 is 4 in: over 5 cm the high bust decides, under 11 cm the bust.
    const size = (value: string) =>
      got(cutSize(missesChart, body, "fitted dress", { settings: of("threshold", value) })).size;
    expect(size("5 cm")).not.toBe(size("11 cm"));
  });
});
