import { describe, expect, it } from "vitest";
import { unitFromNumbers } from "../../../src/chart/reading/unit";

const row = (place: string, ...values: number[]) => ({ place, label: place, values });

describe("unitFromNumbers", () => {
  it("takes the unit that fits more rows", () => {
    expect(unitFromNumbers([row("bust", 32, 34, 36), row("waist", 24, 26, 28)], ["8", "10", "12"], "Size")).toEqual({
      unit: "in",
      sure: true,
    });
    expect(unitFromNumbers([row("bust", 84, 88), row("hip", 90, 94)], ["36", "38"], "Size")).toEqual({
      unit: "cm",
      sure: true,
    });
    expect(unitFromNumbers([row("chest", 54, 56), row("height", 92, 98)], ["2", "3"], "Age")).toEqual({
      unit: "cm",
      sure: true,
    });
  });
  it("goes by eighths, tenths, language and women's sizes where both would do", () => {
    const inches = { unit: "in", sure: true };
    const centimetres = { unit: "cm", sure: true };
    expect(unitFromNumbers([row("bust", 42.25, 44)], ["1", "2"], "Size")).toEqual(inches);
    expect(unitFromNumbers([row("bust", 52.3, 54)], ["1", "2"], "Size")).toEqual(centimetres);
    expect(unitFromNumbers([row("bust", 52, 54)], ["1", "2"], "Größe")).toEqual(centimetres);
    expect(unitFromNumbers([row("bust", 44, 46)], ["22W", "24W"], "Size")).toEqual(inches);
  });
  it.each([["22W", "24W"], ["20", "22W"], ["8W"], ["16WP", "18WP"], ["1X", "2X"], ["XL", "1X"]])(
    "knows inches by sizes that only women's charts in inches have: %s",
    (...sizes) => {
      expect(unitFromNumbers([row("bust", 44, 46)], sizes, "Size")).toEqual({ unit: "in", sure: true });
    },
  );
  it("knows centimetres by one label in a language of the metre", () => {
    const rows = [row("bust", 52, 54), { ...row("waist", 50, 52), label: "Taillenweite" }];
    expect(unitFromNumbers(rows, ["1", "2"], "")).toEqual({ unit: "cm", sure: true });
  });
  it("tells nothing from a row of which a third fits neither unit", () => {
    // The waist's spans: 14 to 62 in, 35 to 158 cm. 20 and 30 fit inches, 5 fits nothing; 14 and 158 just fit.
    expect(unitFromNumbers([row("waist", 5, 20, 30)], ["A1", "A2", "A3"], "Size").sure).toBe(false);
    expect(unitFromNumbers([row("waist", 14)], ["A1"], "Size")).toEqual({ unit: "in", sure: true });
    expect(unitFromNumbers([row("waist", 158)], ["A1"], "Size")).toEqual({ unit: "cm", sure: true });
    expect(unitFromNumbers([row("waist")], [], "Size").sure).toBe(false);
  });
  it.each([
    [["44", "50"], "cm"],
    [["182", "188"], "cm"],
    [["182", "194"], "in"],
    [["38", "44"], "in"],
    [["92", "S"], "in"],
  ] as const)(
    "takes sizes that are all heights of children, %j, for a chart in %s, without being sure",
    (sizes, unit) => {
      expect(unitFromNumbers([row("waist", 50, 52)], sizes, "Size")).toEqual({ unit, sure: false });
    },
  );
  it("says when it is not sure", () => {
    expect(unitFromNumbers([row("bust", 44, 46)], ["A1", "A2"], "Size").sure).toBe(false);
  });
});
