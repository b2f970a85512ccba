import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  entriesWith,
  fitsIndex,
  indexFormula,
  indexPlan,
  indexRows,
  readIndexFormula,
  type IndexEntry,
} from "../../src/sheet/chart-index";

const shirt: IndexEntry = { pattern: "Camp shirt", table: "CampShirt_body" };
const skirt: IndexEntry = { pattern: 'Skirt "wrap", long', table: "SkirtWrapLong_body_2" };

describe("indexFormula", () => {
  it("names each pattern and the whole of its table", () => {
    expect(indexFormula([shirt])).toBe('=SEW.CHARTINDEX("Camp shirt",CampShirt_body[#All])');
  });
});

describe("readIndexFormula", () => {
  it("reads back what was written, whatever the pattern is called", () => {
    expect(readIndexFormula(indexFormula([shirt, skirt]))).toEqual([shirt, skirt]);
    fc.assert(
      fc.property(
        fc.array(fc.record({ pattern: fc.string(), table: fc.constantFrom("A_b", "Ä_1", "_x") })),
        (entries) => {
          expect(readIndexFormula(indexFormula(entries))).toEqual(entries);
        },
      ),
    );
  });
  it("reads through spaces and leaves out a table that is gone", () => {
    expect(readIndexFormula('= sew.chartindex( "Camp shirt" , CampShirt_body[#All] , "Old",#REF! )')).toEqual([shirt]);
  });
  it("does not take another formula, or one that a person has changed, for its own", () => {
    expect(readIndexFormula("=SUM(A1:A3)")).toBeUndefined();
    expect(readIndexFormula("=SEW.CHARTINDEX(B2,CampShirt_body[#All])")).toBeUndefined();
    expect(readIndexFormula("")).toBeUndefined();
  });
});

describe("entriesWith", () => {
  it("adds a pattern's tables, drops what is gone and never lists a table twice", () => {
    const known = ["campshirt_body", "New_body"];
    expect(entriesWith([shirt, skirt], "New", ["New_body"], known)).toEqual([
      shirt,
      { pattern: "New", table: "New_body" },
    ]);
    expect(entriesWith([shirt], "Shirt again", ["CampShirt_body"], known)).toEqual([
      { pattern: "Shirt again", table: "CampShirt_body" },
    ]);
  });
});

describe("fitsIndex", () => {
  it("knows Excel's limits of 255 arguments and 8,192 characters", () => {
    expect(fitsIndex(Array.from({ length: 127 }, () => shirt))).toBe(true);
    expect(fitsIndex(Array.from({ length: 128 }, () => shirt))).toBe(false);
    expect(fitsIndex(Array.from({ length: 100 }, () => ({ ...shirt, pattern: "x".repeat(80) })))).toBe(false);
  });
});

describe("indexRows", () => {
  it("leaves room to grow", () => {
    expect(indexRows(10)).toBe(500);
    expect(indexRows(600)).toBe(1500);
  });
});

describe("indexPlan", () => {
  it("makes the sheet once", () => {
    const plan = indexPlan([shirt], 10, false);
    expect(plan.sheets).toHaveLength(1);
    expect(plan.names![0]).toMatchObject({ name: "PatternIndex", formula: "='Pattern index'!$A$3:$L$503" });
  });
  it("afterwards changes only the cell that holds its formula", () => {
    const plan = indexPlan([shirt, skirt], 10, true);
    expect(plan.sheets).toBeUndefined();
    expect(plan.cells).toHaveLength(1);
    expect(plan.cells![0]!.blocks).toEqual([
      { row: 3, column: 0, cells: [[{ formula: indexFormula([shirt, skirt]) }]] },
    ]);
  });
});
