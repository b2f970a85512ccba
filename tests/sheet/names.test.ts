import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distinctHeadings, freePatternName, nameStem, quotedSheet, sheetName, tableName } from "../../src/sheet/names";

describe("nameStem", () => {
  it("joins words with capitals and leaves out signs", () => {
    expect(nameStem("Camp shirt, view B")).toBe("CampShirtViewB");
    expect(nameStem("wrap-skirt 2.0")).toBe("WrapSkirt20");
    expect(nameStem("Kinderschürze für Ärmel")).toBe("KinderschürzeFürÄrmel");
  });
  it("gives what starts with a digit, or is nothing, something to stand on", () => {
    expect(nameStem("1950 pinafore")).toBe("Pattern1950Pinafore");
    expect(nameStem("!!!")).toBe("Pattern");
  });
});

describe("tableName", () => {
  it("names the part, and counts on from a taken name without regard to case", () => {
    expect(tableName("Camp shirt", "body", [])).toBe("CampShirt_body");
    expect(tableName("Camp shirt", "body", ["campshirt_BODY", "CampShirt_body_2"])).toBe("CampShirt_body_3");
  });
  it("is never like a cell's address and holds only what Excel allows, whatever the pattern is called", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (pattern) => {
        const name = tableName(pattern, "fabric", []);
        // Rules for names: Microsoft's help page "Names in formulas": letter or _ first; no cell reference; 255 characters.
        expect(name).toMatch(/^[\p{L}_][\p{L}\p{Nd}_]*$/u);
        expect(name).not.toMatch(/^(?:[A-Z]{1,3}\d+|R\d*C\d*)$/i);
        expect(name.length).toBeLessThan(255);
      }),
    );
  });
});

describe("sheetName", () => {
  it("replaces the signs that Excel refuses", () => {
    expect(sheetName("Skirt [wrap] 1/2")).toBe("Skirt (wrap) 1-2");
    expect(sheetName("'quoted'")).toBe("quoted");
    expect(sheetName("what?*")).toBe("what");
  });
  it("has a name for nothing, and not the one that Excel keeps for itself", () => {
    expect(sheetName("  ")).toBe("Pattern");
    expect(sheetName("History")).toBe("History chart");
  });
  it("is legal whatever the pattern is called", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), (pattern) => {
        const name = sheetName(pattern);
        expect(name.length).toBeGreaterThan(0);
        expect(name.length).toBeLessThanOrEqual(31);
        expect(name).not.toMatch(/[\\/?*:[\]]|^'|'$/);
      }),
    );
  });
});

describe("freePatternName", () => {
  it("keeps a free name as it was typed", () => expect(freePatternName(" Camp shirt ", ["Fabric"])).toBe("Camp shirt"));
  it("counts on from a taken sheet, also when the name is as long as a sheet's may be", () => {
    expect(freePatternName("Camp shirt", ["CAMP SHIRT", "Camp shirt 2"])).toBe("Camp shirt 3");
    const long = "x".repeat(40);
    expect(freePatternName(long, ["x".repeat(31)])).toBe(`${"x".repeat(29)} 2`);
  });
});

describe("distinctHeadings", () => {
  it("keeps sizes apart that Excel would rename in silence", () => {
    expect(distinctHeadings(["12", "12", "", "m", "M"])).toEqual(["12", "12 (2)", "?", "m", "M (2)"]);
  });
});

describe("quotedSheet", () => {
  it("doubles an apostrophe", () => expect(quotedSheet("Anna's skirt")).toBe("'Anna''s skirt'"));
});
