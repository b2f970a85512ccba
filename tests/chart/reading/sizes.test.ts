import { describe, expect, it } from "vitest";
import {
  areHeights,
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
  ])("finds every size of %j", (text, wanted) => {
    expect(labels(text)).toEqual(wanted);
  });
  it.each(["Bust 34 36", "8 to fit", "s m", "8 M shirts", "=1 2"])("gives null for %j", (text) => {
    expect(scanSizes(text)).toBeNull();
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
  ])("know %s", (word) => {
    expect(isSizeWord(word)).toBe(true);
  });
  it("tell systems and ages from sizes", () => {
    for (const word of ["EU", "UK", "Age", "Alter", "European"]) {
      expect(isSizeWord(word)).toBe(false);
      expect(isSystemWord(word)).toBe(true);
    }
    for (const word of ["Bust", "", "View"]) expect(isSystemWord(word)).toBe(false);
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
  });
});
