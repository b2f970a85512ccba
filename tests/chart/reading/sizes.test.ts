import { describe, expect, it } from "vitest";
import {
  areHeights,
  isAgeWord,
  isAlsoPlace,
  isAnyLabel,
  isSizeLabel,
  isSizeWord,
  isSystemWord,
  scanSizes,
  withoutWord,
} from "../../../src/chart/reading/sizes";

const labels = (text: string): string[] | undefined => scanSizes(text)?.map((size) => size.text);

describe("scanSizes", () => {
  it.each([
    ["8 10 12", ["8", "10", "12"]],
    ["00 0 2", ["00", "0", "2"]],
    ["18W 20W", ["18W", "20W"]],
    ["10P 12P", ["10P", "12P"]],
    ["XS, S, M und L", ["XS", "S", "M", "L"]],
    ["XS (6-8) S (10-12)", ["XS (6-8)", "S (10-12)"]],
    ["2T 3T 4T", ["2T", "3T", "4T"]],
    ["6 months 12 months 2 3T", ["6 months", "12 months", "2", "3T"]],
    ["6-8 10-12", ["6-8", "10-12"]],
    ["8-10-12", ["8", "10", "12"]],
    ["X-Small Small 2XL", ["X-Small", "Small", "2XL"]],
    ["36 / 38 / 40", ["36", "38", "40"]],
    ["14½ 15 15½", ["14½", "15", "15½"]],
    ["10-12-14", ["10", "12", "14"]],
    [" (8-10-12) ", ["8", "10", "12"]],
    ["36 / 38 / 40 -", ["36", "38", "40"]],
    ["8 M 10", ["8", "M", "10"]],
    ["6 Months 12 Months", ["6 Months", "12 Months"]],
    ["6 m 12 m", ["6 m", "12 m"]],
  ])("finds every size of %j", (text, wanted) => {
    expect(labels(text)).toEqual(wanted);
  });
  it.each(["Bust 34 36", "8 to fit", "s m", "8 M shirts", "=1 2", "x8-10-12", "8-10-12 left", "and 8 10", "Small -10"])(
    "gives null for %j",
    (text) => {
      expect(scanSizes(text)).toBeNull();
    },
  );
  it("reads a letter behind a number as months where ages are headed", () => {
    expect(scanSizes("6 M 12 M", true)?.map((size) => size.text)).toEqual(["6 M", "12 M"]);
  });
  it("reads a row of sizes, not a page", () => {
    expect(scanSizes("8 10".padEnd(600, " "))).toHaveLength(2);
    expect(scanSizes("8 10".padEnd(601, " "))).toBeNull();
  });
});

describe("isSizeLabel", () => {
  it("knows one size from two and from none", () => {
    expect(isSizeLabel("12")).toBe(true);
    expect(isSizeLabel("12 14")).toBe(false);
    expect(isSizeLabel("Bust")).toBe(false);
  });
});

describe("isSizeWord and isSystemWord", () => {
  it.each([
    "Size",
    "SIZES:",
    "Größe",
    "Tailles",
    "Talla",
    "Taglia",
    "Maat",
    "Rozmiar",
    "Tamanho",
    "US size",
    "Size / Taille",
    "Women's sizes US and UK in inches",
  ])("know %s", (word) => {
    expect(isSizeWord(word)).toBe(true);
  });
  it("tell systems and ages from sizes", () => {
    for (const word of ["EU", "UK", "Age", "Alter", "European", "EU No."]) {
      expect(isSizeWord(word)).toBe(false);
      expect(isSystemWord(word)).toBe(true);
    }
    for (const word of ["", "Bust size", "and"]) expect(isSizeWord(word)).toBe(false);
    for (const word of ["Bust", "", "View", "and"]) expect(isSystemWord(word)).toBe(false);
  });
});

describe("withoutWord", () => {
  it("takes the word off only when every column has it", () => {
    expect(withoutWord(["Size 8", "Size 10"])).toEqual(["8", "10"]);
    expect(withoutWord(["Size 8", "10"])).toEqual(["Size 8", "10"]);
  });
});

describe("areHeights", () => {
  it("knows sizes by a child's height, and women's sizes from them", () => {
    expect(areHeights(["92", "98", "104"])).toBe(true);
    expect(areHeights(["44", "46", "48"])).toBe(false);
    expect(areHeights(["S", "M"])).toBe(false);
    // From a newborn's to a tall youth's; one alone may be anything.
    expect(areHeights(["44", "50"])).toBe(true);
    expect(areHeights(["38", "44"])).toBe(false);
    expect(areHeights(["182", "188"])).toBe(true);
    expect(areHeights(["188", "194"])).toBe(false);
    expect(areHeights(["92"])).toBe(false);
  });
});

describe("isAgeWord", () => {
  it.each([
    "Age",
    "Ages",
    "Alter",
    "Edad",
    "Età",
    "Idade",
    "Leeftijd",
    "Wiek",
    "Year",
    "Years",
    "Month",
    "Months",
    "Monate",
    "Jahre",
    "Mois",
    "Ans",
  ])("knows %s", (word) => {
    expect(isAgeWord(word)).toBe(true);
  });
  it("takes no other word for it", () => {
    for (const word of ["Size", "Pages", "Anse", "EU"]) expect(isAgeWord(word)).toBe(false);
  });
});

describe("isAlsoPlace", () => {
  it("knows the words that are a place too, when they stand alone", () => {
    for (const word of ["Taille", "Größe:", "Groesse"]) expect(isAlsoPlace(word)).toBe(true);
    for (const word of ["Tour de taille", "Taille EU", "Konfektionsgröße", "Size"])
      expect(isAlsoPlace(word)).toBe(false);
  });
});

describe("isAnyLabel", () => {
  it("is anything short that a sheet won't run", () => {
    expect(isAnyLabel("Robin")).toBe(true);
    expect(isAnyLabel("R".repeat(30))).toBe(true);
    expect(isAnyLabel("R".repeat(31))).toBe(false);
    expect(isAnyLabel("")).toBe(false);
    expect(isAnyLabel("=A1")).toBe(false);
  });
});
