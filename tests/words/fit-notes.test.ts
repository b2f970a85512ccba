import { describe, expect, it } from "vitest";
import { aSize } from "../../src/words/fit-notes";

describe("aSize", () => {
  it("is said as the number or the letter sounds", () => {
    const an = ["8", "8P", "11", "18", "18W", "S", "M", "L", "XS", "xl", "XXL"];
    const a = ["6", "10", "12", "14", "1X", "2XL", "110", "116", "180", "Small"];
    expect(an.map(aSize)).toEqual(an.map((label) => `an ${label}`));
    expect(a.map(aSize)).toEqual(a.map((label) => `a ${label}`));
  });
});
