import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allCautions, cautionLine, childCautions, isChildsGarment, isSleepwear } from "../../src/project/cautions";

describe("isChildsGarment", () => {
  it("knows a child's garment by its name", () => {
    const childs = [
      "child's dress",
      "Child’s trousers",
      "children's nightwear",
      "childs top",
      "baby vest",
      "Girls' skirt",
    ];
    expect(childs.filter(isChildsGarment)).toEqual(childs);
    expect(["shirt", "childlike blouse", "men's shirt", "boyfriend jacket", "kidskin coat"].some(isChildsGarment)).toBe(
      false,
    );
  });
});

describe("isSleepwear", () => {
  it("knows what is worn in bed", () => {
    expect(["nightwear", "Child's Pyjamas", "dressing gown", "night dress"].map(isSleepwear)).toEqual([
      true,
      true,
      true,
      false,
    ]);
  });
});

describe("childCautions", () => {
  it("names every rule for a child's garment, nightwear first where it is nightwear", () => {
    // Source: 16 CFR 1615 and 1616 (sleepwear), 1120 with ASTM F1816 and EN 14682 (cords), 1501 (small parts).
    const rules = ["16 CFR 1615", "16 CFR 1616", "16 CFR 1120", "ASTM F1816", "EN 14682", "16 CFR 1501"];
    expect(childCautions("nightwear", true).flatMap((caution) => caution.rules)).toEqual(rules);
    expect(childCautions("nightwear", true)[0]!.topic).toBe("sleepwear");
    expect(childCautions("child's dress").map(({ topic }) => topic)).toEqual([
      "cords",
      "smallParts",
      "sleepwear",
      "sizes",
      "binding",
    ]);
    expect(
      childCautions("child's dress")
        .flatMap((caution) => caution.rules)
        .sort(),
    ).toEqual([...rules].sort());
  });
  it("gives no largest measures for tight-fitting nightwear, and points to the rule", () => {
    const { sentence } = childCautions("nightwear", true)[0]!;
    expect(sentence).not.toMatch(/\d/);
    expect(sentence).toContain("stands in the rule itself");
  });
  it("always says whom the rules bind, that local law comes first and that nothing has been checked", () => {
    const { sentence } = allCautions().at(-1)!;
    for (const words of ["sell", "law where you live comes first", "not been checked"])
      expect(sentence).toContain(words);
  });
  it("looks nothing up when she says that it is for no child", () => {
    expect(childCautions("child's dress", false)).toEqual([]);
    expect(childCautions("shirt")).toEqual([]);
  });
});

describe("cautionLine", () => {
  it("asks where nothing is known", () => {
    expect(cautionLine("shirt")).toBe("Is this for a child? Write yes or no: cautions may apply.");
  });
  it("has a line for a child's garment and another for nightwear", () => {
    expect(cautionLine("shirt", true)).toContain("cords and small parts");
    expect(cautionLine("child's nightwear")).toContain("flame resistant or tight-fitting");
  });
  it("always says something, never that a garment is safe, and fits into a formula", () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom(true, false, undefined), (garment, child) => {
        const line = cautionLine(garment, child);
        expect(line.length).toBeGreaterThan(10);
        // Excel takes no text longer than 255 characters inside a formula.
        expect(line.length).toBeLessThan(256);
        expect(line).not.toMatch(/\b(?:is|are) safe\b/i);
      }),
    );
  });
});
