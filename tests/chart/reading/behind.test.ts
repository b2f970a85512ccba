import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste } from "../paste";

// All figures are invented, in common-practice steps.
const FINISHED = "Finished garment measurements (in)";
const CLOTH = "Fabric required (yd)";

describe("readCharts with words behind the figures", () => {
  it("gives a finished row the view that stands behind it, and the next row none of it", () => {
    const lines = ["Back length 22 22 1/2 23 in View A", "Back length 32 32 1/2 33 in View B", "Hem 50 51 52 A, B"];
    expect(paste(page(FINISHED, "Size 8 10 12", ...lines, "Bust 36 37 38"))).toEqual({
      tables: [
        [
          "finished in | 8 10 12",
          "backLength A: Back length | 22 22.5 23",
          "backLength B: Back length | 32 32.5 33",
          "hemWidth A: Hem | 50 51 52",
          "hemWidth B: Hem | 50 51 52",
          "bust: Bust | 36 37 38",
        ],
      ],
      issues: [],
    });
  });
  it("keeps the words behind an inch mark at the end", () => {
    const lines = ['Bust 36 37 38 " full', 'Back length 22 22 1/2 23 " View A', 'Back length 32 32 1/2 33 " View B'];
    expect(paste(page("Finished garment measurements", "Size 8 10 12", ...lines))).toEqual({
      tables: [
        [
          "finished in | 8 10 12",
          "bust: Bust | 36 37 38",
          "backLength A: Back length | 22 22.5 23",
          "backLength B: Back length | 32 32.5 33",
        ],
      ],
      issues: [],
    });
  });
  it("finds the place behind figures and an inch mark", () => {
    expect(paste(page("Body measurements", "Size 8 10 12", '32 34 36 " Bust', '24 25 26" Waist'))).toEqual({
      tables: [["body in | 8 10 12", "bust: Bust | 32 34 36", "waist: Waist | 24 25 26"]],
      issues: [],
    });
  });
  it("gives cloth the view, the part and the nap that stand behind its amounts, and only these", () => {
    const lines = [
      '45" 2 2 1/4 2 1/2 View A',
      '45" 3 3 1/4 3 1/2 View B',
      'A 60" 1 1 1/8 1 1/4 lining',
      'B 60" 2 2 1/8 2 1/4 yd without nap',
      'C 60" 4 4 1/8 4 1/4 yd less for sleeves cut short in lining',
    ];
    expect(paste(page(CLOTH, "Size 8 10 12", ...lines)).tables).toEqual([
      [
        "fabric yd | 8 10 12",
        "A, main, 45 in, nap? | 2 2.25 2.5",
        "B, main, 45 in, nap? | 3 3.25 3.5",
        "A, lining, 60 in, nap? | 1 1.125 1.25",
        "B, main, 60 in, without | 2 2.125 2.25",
        "C, main, 60 in, nap? | 4 4.125 4.25",
      ],
    ]);
  });
  it.each([
    "in the fullest part of it",
    "taken in full",
    "(in) as you like",
    "a note of in all nine words more than any others",
  ])("loses no figures to a unit among the words behind them: %s", (words) => {
    const lines = page("Body measurements (in)", "Size 8 10 12", `Bust 31 32 34 ${words}`, "Waist 24 25 26");
    expect(paste(lines)).toEqual({
      tables: [["body in | 8 10 12", "bust: Bust | 31 32 34", "waist: Waist | 24 25 26"]],
      issues: [],
    });
  });
  it("takes no metres for a person's measure", () => {
    expect(paste(page("Body measurements", "Size 8 10 12", "Height 164 168 172 m"))).toEqual({
      tables: [["body cm | 8 10 12", "height: Height | 164 168 -"]],
      issues: [`3:16 error (height, 12) ${doubts.unreadable("172 m")}`],
    });
  });
  it("doesn't give the view behind one row to the row below", () => {
    const lines = ['45" 2 2 1/4 2 1/2 View A', '45" 3 3 1/4 3 1/2 View B', 'Lining 60" 1 1 1/8 1 1/4'];
    expect(paste(page(CLOTH, "Size 8 10 12", ...lines)).tables[0]!.slice(3)).not.toContain(
      "B, lining, 60 in, nap? | 1 1.125 1.25",
    );
  });
});

describe("readCharts with two cloths in one label", () => {
  it.each([
    ['45" 60"', 45, 60],
    ['45" or 60"', 60, 45],
    ['45", 60"', 45, 60],
    ['45/60"', 60, 45],
    ['45" (115 cm) 60" (150 cm)', 45, 60],
    ['45/46 … 58/60"', 60, 46],
    ["45/46 58/60", 46, 60],
  ])("takes the amounts of %s for each of them, and says so", (label, first, second) => {
    expect(paste(page(CLOTH, "Size\t8\t10\t12", `A ${label}\t3\t3 1/4\t3 1/2`))).toEqual({
      tables: [
        ["fabric yd | 8 10 12", `A, main, ${first} in, nap? | 3 3.25 3.5`, `A, main, ${second} in, nap? | 3 3.25 3.5`],
      ],
      issues: [`3 warning ${doubts.twoWidths([`${first} in`, `${second} in`])}`],
    });
  });
  it.each([
    ['44/45"', 45],
    ['45/46"', 46],
    ["45/46", 46],
    ['54/60"', 60],
    ['58"-60"', 60],
    ['45" (115 cm)', 45],
    ['45"/115 cm', 45],
    ['Interfacing 20" to 25"', 25],
    ['Sizes 36, 38: 45"', 45],
    ['36-42 45"', 45],
  ])("reads %s as one cloth", (label, width) => {
    const { tables, issues } = paste(page(CLOTH, "Size\t8\t10\t12", `A ${label}\t3\t3 1/4\t3 1/2`));
    expect(tables[0]).toHaveLength(2);
    expect(tables[0]![1]).toContain(`, ${width} in, `);
    expect(issues).toEqual([]);
  });
  it("does the same in centimetres", () => {
    const lines = [
      "A 115 cm 150 cm\t2\t2.25",
      "B 115/150 cm\t2\t2.25",
      "C 140/150 cm\t2\t2.25",
      "D 140-150 cm\t2\t2.25",
    ];
    expect(paste(page("Fabric required (m)", "Size\t8\t10", ...lines)).tables[0]!.slice(1)).toEqual([
      "A, main, 115 cm, nap? | 2 2.25",
      "A, main, 150 cm, nap? | 2 2.25",
      "B, main, 150 cm, nap? | 2 2.25",
      "B, main, 115 cm, nap? | 2 2.25",
      "C, main, 150 cm, nap? | 2 2.25",
      "D, main, 150 cm, nap? | 2 2.25",
    ]);
  });
  it("counts no trim beside a cloth", () => {
    const { tables, issues } = paste(page(CLOTH, "Size\t8\t10", 'Elastic 1/2" 45"\t1\t1'));
    expect(tables[0]!.slice(1)).toEqual(["no view, elastic, 0.5 in, nap? | 1 1"]);
    expect(issues).toEqual([]);
  });
});
