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
    expect(unitFromNumbers([row("bust", 42.25, 44)], ["1", "2"], "Size").unit).toBe("in");
    expect(unitFromNumbers([row("bust", 52.3, 54)], ["1", "2"], "Size").unit).toBe("cm");
    expect(unitFromNumbers([row("bust", 52, 54)], ["1", "2"], "Größe").unit).toBe("cm");
    expect(unitFromNumbers([row("bust", 44, 46)], ["22W", "24W"], "Size").unit).toBe("in");
  });
  it("says when it is not sure", () => {
    expect(unitFromNumbers([row("bust", 44, 46)], ["A1", "A2"], "Size").sure).toBe(false);
  });
});
