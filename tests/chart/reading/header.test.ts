import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

// All figures are invented, in common-practice steps.
const INCHES = "Body measurements (in)";
const FINISHED = "Finished garment measurements (in)";

describe("readHeaderRow", () => {
  it.each(["XX", "O/S", "OS", "one size", "Q", "XXXX", "ONE"])("keeps a column called %s in every layout", (name) => {
    const wanted = {
      tables: [[`body in | S M L ${name}`, "bust: Bust | 31 32 34 36", "waist: Waist | 24 25 26 28"]],
      issues: [],
    };
    expect(paste(sheet(INCHES, `Size|S|M|L|${name}`, "Bust|31|32|34|36", "Waist|24|25|26|28"))).toEqual(wanted);
    expect(paste(page(INCHES, `Size S M L ${name}`, "Bust 31 32 34 36", "Waist 24 25 26 28"))).toEqual(wanted);
    expect(paste(page(INCHES, `Size   S   M   L   ${name}`, "Bust   31  32  34  36", "Waist  24  25  26  28"))).toEqual(
      wanted,
    );
    expect(paste(page(INCHES, `Sizes: S, M, L, ${name}`, "Bust: 31, 32, 34, 36", "Waist: 24, 25, 26, 28"))).toEqual(
      wanted,
    );
  });
  it("still knows a size word behind the sizes", () => {
    expect(paste(page(INCHES, "8 10 12 size", "Bust 31 32 34", "Waist 24 25 26")).tables).toEqual([
      ["body in | 8 10 12", "bust: Bust | 31 32 34", "waist: Waist | 24 25 26"],
    ]);
  });
  it.each([
    ["letters in words", "Group 2 S M L", "S M L"],
    ["letters in cells", "Group 2\tS\tM\tL", "S M L"],
    ["numbers in words", "Group 2 14 16 18", "14 16 18"],
    ["numbers in cells", "Group 2\t14\t16\t18", "14 16 18"],
    ["a letter and numbers", "Gruppe B\t14\t16\t18", "14 16 18"],
    ["letters behind another numbered word", "Set 2 S M L", "S M L"],
  ])("starts another list of sizes at a group in the middle of a table: %s", (_, group, sizes) => {
    const part = group.includes("\t") ? "|" : " ";
    const rows = [INCHES, "Size 8 10 12", "Bust 31 32 34", "Waist 24 25 26"].map((row) =>
      row.replace(/ (?=\d)/g, part),
    );
    const below = ["Bust 36 38 40", "Waist 28 30 32"].map((row) => row.replace(/ /g, part));
    expect(paste(sheet(...rows, group, ...below))).toEqual({
      tables: [
        ["body in | 8 10 12", "bust: Bust | 31 32 34", "waist: Waist | 24 25 26"],
        [`body in | ${sizes}`, "bust: Bust | 36 38 40", "waist: Waist | 28 30 32"],
      ],
      issues: [],
    });
  });
});

describe("readCharts below a row of sizes that can't be read", () => {
  const above = [INCHES, "Size S M L XL", "Bust 31 32 34 36", "", FINISHED];
  it.each(["Size 18 20 22 long", "Size 18 20 22 Extra tall", "US 18 20 22 Q", "Size\t18\t20\t22\t@x"])(
    "leaves the rows under %j out, rather than put them under other sizes",
    (sizes) => {
      expect(paste(page(...above, sizes, "Bust 41 42 44 48", "Waist 31 32 34 38"))).toEqual({
        tables: [["body in | S M L XL", "bust: Bust | 31 32 34 36"]],
        issues: [
          `6 error ${doubts.sizesUnread()}`,
          `7 error (bust) ${doubts.noSizes("Bust")}`,
          `8 error (waist) ${doubts.noSizes("Waist")}`,
        ],
      });
    },
  );
  it("reads an odd name among them", () => {
    expect(paste(page(...above, "Size 18 20 22 Q", "Bust 41 42 44 48")).tables[1]).toEqual([
      "finished in | 18 20 22 Q",
      "bust: Bust | 41 42 44 48",
    ]);
  });
  it("keeps the sizes above when a second row of them right below can't be read", () => {
    const { tables, issues } = paste(page(INCHES, "Size S M L XL", "Size 18 20 22 long", "Bust 31 32 34 36"));
    expect(tables).toEqual([["body in | S M L XL", "bust: Bust | 31 32 34 36"]]);
    expect(issues).toEqual([`3 error ${doubts.sizeRowCount(3, 4)}`]);
  });
});
