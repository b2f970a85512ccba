import { describe, expect, it } from "vitest";
import { doubts } from "../../src/words/reading";

describe("doubts", () => {
  it("counts one figure and several for one size and several", () => {
    const left = "so it was left out. Compare it with the pattern and add the row.";
    expect(doubts.count("Bust", 1, 3)).toBe(`"Bust" has 1 figure for 3 sizes, ${left}`);
    expect(doubts.count("Bust", 2, 1)).toBe(`"Bust" has 2 figures for 1 size, ${left}`);
  });

  it("lists the sizes without a figure as one says them", () => {
    const said = (...sizes: string[]) => doubts.placed("Waist", sizes);
    const seen = "seen from where the others stand.";
    expect(said("12")).toBe(`"Waist" has no figure under 12: ${seen}`);
    expect(said("12", "14")).toBe(`"Waist" has no figure under 12 and 14: ${seen}`);
    expect(said("12", "14", "16")).toBe(`"Waist" has no figure under 12, 14 and 16: ${seen}`);
  });
});
