import { describe, expect, it } from "vitest";
import { offGrade, outOfOrder } from "../../../src/chart/reading/checks";

describe("outOfOrder", () => {
  it("names the figure whose removal puts the row in order", () => {
    expect(outOfOrder([32.5, 34, 63, 38, 40])).toEqual([2]);
    expect(outOfOrder([34, 63, 38, 40])).toEqual([1]);
  });
  it("names all of them when several would", () => {
    expect(outOfOrder([32, 34, 63, 38])).toEqual([2, 3]);
    expect(outOfOrder([34, 32])).toEqual([0, 1]);
  });
  it("names those outside the longest orderly run when none does", () => {
    expect(outOfOrder([10, 30, 12, 40, 14, 16])).toEqual([1, 3]);
  });
  it("finds nothing in rows that rise, stand still or fall throughout, nor in blanks", () => {
    for (const row of [[1, 2, 3], [2, 2, 2], [5, 4, 3], [1, null, 3], [], [null]]) expect(outOfOrder(row)).toEqual([]);
  }); // prettier-ignore
  it("looks at both ends of a range", () => {
    expect(outOfOrder([{ low: 30, high: 31 }, { low: 32, high: 53 }, { low: 34, high: 35 }])).toEqual([1, 2]);
  }); // prettier-ignore
});

describe("offGrade", () => {
  it("sees one step too long beside one too short", () => {
    expect(offGrade([32, 34, 37, 38, 40], 0.45)).toEqual([2]);
  });
  it("sees a last figure far from all others", () => {
    expect(offGrade([33.5, 34.5, 36, 38, 48], 0.45)).toEqual([4]);
  });
  it("takes a chart's own change of step for none", () => {
    // Misses figure type, bust and waist 6 to 24: common practice with no single publisher.
    expect(offGrade([30.5, 31.5, 32.5, 34, 36, 38, 40, 42, 44, 46], 0.45)).toEqual([]);
    expect(offGrade([23, 24, 25, 26.5, 28, 30, 32, 34, 37, 39], 0.45)).toEqual([]);
    // EN 13402-3:2004, women's bust and hip.
    expect(offGrade([76, 80, 84, 88, 92, 96, 100, 104, 110, 116, 122, 128], 1.1)).toEqual([]);
    expect(offGrade([84, 88, 92, 96, 100, 104, 108, 112, 117, 122, 127, 132], 1.1)).toEqual([]);
  });
});
