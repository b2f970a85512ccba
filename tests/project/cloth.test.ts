import { describe, expect, it } from "vitest";
import { readClothLength, readClothWidth, type ClothWidth } from "../../src/project/cloth";
import { widthSuffices } from "../../src/project/width-suffices";

const width = (cell: string | number, unit?: string): unknown => {
  const read = readClothWidth(cell, unit ?? null);
  return read.ok ? read.value && `${read.value.value} ${read.value.unit}` : read.problem.code;
};
const length = (cell: string | number, unit?: string): unknown => {
  const read = readClothLength(cell, unit ?? null);
  return read.ok ? read.value && `${read.value.value} ${read.value.unit}` : read.problem.code;
};

describe("readClothWidth", () => {
  it("takes bare numbers up to 80 for inches, larger ones for centimetres, unless a unit is named", () => {
    expect([width(45), width(80), width(81), width(115)]).toEqual(["45 in", "80 in", "81 cm", "115 cm"]);
    expect([width(45, "cm"), width(90, "in"), width("115 cm", "in")]).toEqual(["45 cm", "90 in", "115 cm"]);
  });
  it("reads the larger of a printed pair", () => {
    expect([width("44/45"), width("58-60"), width('44/45"'), width("112/115 cm")]).toEqual([
      "45 in",
      "60 in",
      "45 in",
      "115 cm",
    ]);
  });
  it("reads metres and yards as centimetres and inches", () => {
    expect([width("1.4 m"), width("1,5 m"), width("1 yd")]).toEqual(["140 cm", "150 cm", "36 in"]);
  });
  it("is nothing when blank, and refuses dates, negatives and prose", () => {
    expect([width(""), width(0)]).toEqual([undefined, undefined]);
    expect([width(45000), width(-5), width("wide")]).toEqual(["excelDate", "badClothWidth", "badClothWidth"]);
  });
});

describe("readClothLength", () => {
  it("is in yards or metres", () => {
    expect([length("2 3/8 yd"), length(2.375, "yd"), length("2,2 m"), length(2.2, "m")]).toEqual([
      "2.375 yd", "2.375 yd", "2.2 m", "2.2 m",
    ]); // prettier-ignore
    expect([length("27 in"), length("90 cm"), length(90, "cm")]).toEqual(["0.75 yd", "0.9 m", "0.9 m"]);
  });
  it("keeps a bare number bare, and is nothing when blank", () => {
    expect([length(2), length(""), length(0, "yd")]).toEqual(["2 null", undefined, undefined]);
  });
  it("refuses unknown units, dates and negatives", () => {
    expect([length(2, "ells"), length(45000, "yd"), length(-1, "yd")]).toEqual([
      "unknownUnit",
      "excelDate",
      "negative",
    ]);
  });
});

describe("widthSuffices", () => {
  const inches = (value: number): ClothWidth => ({ value, unit: "in" });
  const cm = (value: number): ClothWidth => ({ value, unit: "cm" });
  // Common practice, no source: 35/36 in = 90 cm, 44/45 in = 115 cm, 54 in = 140 cm, 58/60 in = 150 cm.
  it("counts the equal widths as one", () => {
    const classes = [
      [inches(35), inches(36), cm(90)],
      [inches(44), inches(45), cm(115)],
      [inches(54), cm(140)],
      [inches(58), inches(60), cm(150)],
    ];
    for (const equal of classes) for (const a of equal) for (const b of equal) expect(widthSuffices(a, b)).toBe(true);
    classes.forEach((narrow, at) => {
      for (const wide of classes.slice(at + 1).flat())
        for (const a of narrow) expect(widthSuffices(a, wide)).toBe(false);
      for (const wide of classes.slice(at + 1).flat())
        for (const a of narrow) expect(widthSuffices(wide, a)).toBe(true);
    });
  });
  it("wants at least the width elsewhere", () => {
    expect(widthSuffices(inches(50), inches(52))).toBe(false);
    expect(widthSuffices(inches(52), inches(50))).toBe(true);
    expect(widthSuffices(cm(127), inches(50))).toBe(true);
    expect(widthSuffices(inches(56), inches(58))).toBe(false);
  });
});
