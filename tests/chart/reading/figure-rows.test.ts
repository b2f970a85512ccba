import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

// All figures are invented, in common-practice steps; 1 in is 2.54 cm.
describe("readFit", () => {
  it("leaves out a row whose label a sheet could run", () => {
    expect(paste(sheet("Body measurements (in)", "Size|8|10", "=Bust|31|32", "@Waist|24|25", "Hip|33|34"))).toEqual({
      tables: [["body in | 8 10", "hip: Hip | 33 34"]],
      issues: [`3 error ${doubts.formulaLabel("=Bust")}`, `4 error ${doubts.formulaLabel("@Waist")}`],
    });
  });
  it("says so too when the row holds nothing but formulas", () => {
    expect(paste(sheet("Body measurements (in)", "Size|8|10", "=A1|=B1|=C1", "Hip|33|34"))).toEqual({
      tables: [["body in | 8 10", "hip: Hip | 33 34"]],
      issues: [`3 error ${doubts.formulaLabel("=A1")}`],
    });
  });
  it("reads a place under a heading of cloth as finished or body, and lining as cloth", () => {
    const { tables } = paste(sheet("Fabric required (yd)", "Size|8|10", 'Lining 45"|1|1 1/8', "Bust (in)|31|32"));
    expect(tables).toEqual([
      ["fabric yd | 8 10", "no view, lining, 45 in, nap? | 1 1.125"],
      ["body in | 8 10", "bust: Bust (in) | 31 32"],
    ]);
  });
  it("reads a row that begins with a width as cloth without a heading of cloth", () => {
    const { tables } = paste(sheet("Body measurements (in)", "Size|8|10", "Bust|31|32", '45" with nap|2 yd|2 1/8 yd'));
    expect(tables[1]).toEqual(["fabric yd | 8 10", "no view, main, 45 in, with | 2 2.125"]);
  });
});

describe("readTwoRuns", () => {
  const rows = (line: string) => paste(page("Body measurements", "Size 8 10 12", line));
  const bust = ["body in | 8 10 12", "bust: BUST | 32 34 36"];
  it.each([
    "BUST 32 34 36 ins POITRINE 81 86 91 cm",
    "BUST 32 34 36 in POITRINE 81 86 91 cm",
    "BUST 32 34 36 inches POITRINE 81 86 91 cm",
    'BUST 32 34 36" POITRINE 81 86 91 cm',
    "BUST 32 34 36 in / POITRINE 81 86 91 cm",
    "BUST 32 34 36 ins. POITRINE 81 86 91 cms",
  ])("reads two languages in two units in one line: %s", (line) => {
    expect(rows(line)).toEqual({
      tables: [bust, ["body cm | 8 10 12", "bust: POITRINE | 81 86 91"]],
      issues: [],
    });
  });
  it("reads two places in one line", () => {
    expect(paste(page("Body measurements (in)", "Size 8 10 12", "Bust 32 34 36 Waist 24 25 26"))).toEqual({
      tables: [["body in | 8 10 12", "bust: Bust | 32 34 36", "waist: Waist | 24 25 26"]],
      issues: [],
    });
  });
  it("names the first when it has a figure too few, and reads the second", () => {
    expect(paste(page("Body measurements (in)", "Size 8 10 12", "Bust 32 34 Waist 24 25 26"))).toEqual({
      tables: [["body in | 8 10 12", "waist: Waist | 24 25 26"]],
      issues: [`3 error (bust) ${doubts.count("Bust", 2, 3)}`],
    });
  });
  it("takes a label with a number in it for one row", () => {
    expect(
      paste(page("Body measurements (in)", "Size 8 10 12", 'Hip 9" below waist 34 36 38')).tables[0]!.slice(1),
    ).toEqual(['hip: Hip 9" below waist | 34 36 38']);
  });
  it("reads yards and metres of one cloth in one line", () => {
    expect(
      paste(page("Fabric required", "Size 8 10 12", 'A 45" 2 2 1/8 2 1/4 yd A 115 cm 1.90 2.00 2.10 m')).tables,
    ).toEqual([
      ["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2 2.125 2.25"],
      ["fabric m | 8 10 12", "A, main, 115 cm, nap? | 1.9 2 2.1"],
    ]);
  });
});
