import { describe, expect, it } from "vitest";
import { isFabricRow, isWidthFigure } from "../../../src/chart/reading/cloth-row";
import { cellOf, type Row } from "../../../src/chart/reading/cell";

describe("isWidthFigure", () => {
  // Widths cloth is sold in, and widths of trims: common practice, no source.
  it.each([
    ['45"', "2 1/2"],
    ['45"*', "2 1/2"],
    ['45" (115 cm)', "2"],
    ['(45" / 115 cm)', "2"],
    ['18"', "2"],
    ["45 cm", "2"],
    ['45"', "115 cm"],
    ['45"', '36" (1 yd)'],
    ["45", "2 1/2"],
    ["45", "20"],
    ["45", '"'],
    ["150", "1.8"],
    ["1.5 m", "2.1"],
    ["140", "2 m"],
  ])("takes %s in front of %s for a width", (text, next) => {
    expect(isWidthFigure(true)(text, next)).toBe(true);
    expect(isWidthFigure(false)(text, next)).toBe(false);
  });
  it.each([
    ['lining 45"', "2"],
    ['17"', "2"],
    ['5/8"', "2"],
    ["44 cm", "2"],
    ['10" (25 cm)', "2"],
    ['10" (45 cm)', "2"],
    ['20" (25 cm)', "2"],
    ['45"', '60"'],
    ["45", "44"],
    ["45", "21"],
    ["150", "150"],
    ["45", "-"],
    ["45", "wool"],
    ["1.5 m", "2.1 m"],
    ["2 1/2", "2 1/2"],
  ])("takes %s in front of %s for none", (text, next) => {
    expect(isWidthFigure(true)(text, next)).toBe(false);
  });
});

describe("isFabricRow", () => {
  const row = (text: string): Row => ({ line: 1, text, layout: "spaced", cells: [cellOf(text, 1, 1)] });
  it.each([
    'Fabric 45" 2 2 1/4 2 1/2',
    '45" 2 2 1/4 2 1/2',
    "115 cm 1.9 2 2.1",
    'A, B 45" 2 1/4 2 1/2 (115 cm)',
    'Lining 45" 2 2 1/4',
    'View B 44/45" 3 3 1/4',
  ])("knows %s under no heading", (text) => {
    expect(isFabricRow(row(text), null)).toBe(true);
    expect(isFabricRow(row(text), "body")).toBe(true);
  });
  it.each([
    "Bust 34 36 38",
    "Fabric requirements",
    "80cm 83cm 87cm",
    "80cm - 83cm - 87cm",
    "80cm 83.5cm 87cm",
    '32" 33 1/2" 35"',
    "32 in 33 in 35 in",
    `Fabric ${"and more ".repeat(10)} 45" 2 2 1/4`,
  ])("knows that %s is none, but under a heading for cloth", (text) => {
    expect(isFabricRow(row(text), null)).toBe(false);
    expect(isFabricRow(row(text), "fabric")).toBe(true);
  });
});
