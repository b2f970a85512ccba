import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

// All figures are invented, in common-practice steps.
const CM = "Body measurements (cm)";

describe("readRows", () => {
  it("names a line that a sheet could run, and lets nothing of it into a table", () => {
    const { tables, issues } = paste(
      sheet(CM, "Size|34|36", "Bust|80|84", '=HYPERLINK("x")||', "@all|||", "Hip|86|90"),
    );
    expect(tables).toEqual([["body cm | 34 36", "bust: Bust | 80 84", "hip: Hip | 86 90"]]);
    expect(issues).toEqual([`4 error ${doubts.formulaLabel("=")}`, `5 error ${doubts.formulaLabel("@")}`]);
  });
  it("names figures without a row of sizes, but not a single one", () => {
    expect(paste(page(CM, "Bust 80 84 88")).issues).toEqual([`2 error (bust) ${doubts.noSizes("Bust")}`]);
    expect(paste(page(CM, "Bust 80")).issues).toEqual([`1 error ${doubts.noChart()}`]);
  });
  it("finds the place of a row with a spoilt figure", () => {
    expect(paste(page(CM, "Size 34 36 38", "Bust 80 84 8B", "Hip 86 90 94")).issues).toEqual([
      expect.stringMatching(/^3 error \(bust\)/),
    ]);
  });
  it("takes no sentence inside a chart for a row of it", () => {
    const lines = [
      CM,
      "Size 34 36 38",
      "Bust 80 84 88",
      "Allow 4 cm ease, or 6 where you like it wide.",
      "Hip 86 90 94",
    ];
    expect(paste(page(...lines))).toEqual({
      tables: [["body cm | 34 36 38", "bust: Bust | 80 84 88", "hip: Hip | 86 90 94"]],
      issues: [],
    });
  });
});

describe("readRows on a sentence about some of the sizes", () => {
  it("names it, for its amounts are not for all of them", () => {
    const lines = ['A 45" 2 2 1/8 2 1/4', "Size 8 needs 1/2 yd, sizes 10 12 14 need 3/4 yd interfacing"];
    const { tables, issues } = paste(page("Fabric required (yd)", "Size 8 10 12", ...lines));
    expect(tables).toEqual([["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2 2.125 2.25"]]);
    expect(issues).toEqual([expect.stringMatching(/^4 error /)]);
  });
});
