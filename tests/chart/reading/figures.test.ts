import { describe, expect, it } from "vitest";
import { readFigure } from "../../../src/chart/reading/figures";

const figure = (value: unknown, unit: unknown = null, other: unknown = null): unknown => ({
  kind: "figure",
  value,
  unit,
  other,
});

describe("readFigure", () => {
  // How patterns write figures. Common practice, no source.
  it.each([
    ["34", figure(34)],
    ["32 1/2", figure(32.5)],
    ["32½", figure(32.5)],
    ['32-1/2"', figure(32.5, "in")],
    ["77,5", figure(77.5)],
    ["87 cm", figure(87, "cm")],
    ["34*", figure(34)],
    ["ca. 60 cm", figure(60, "cm")],
    ["+34", figure(34)],
    ["-2", figure(-2)],
    ["1m90", figure(1.9, "m")],
    ["30-31", figure({ low: 30, high: 31 })],
    ["30½–31½", figure({ low: 30.5, high: 31.5 })],
    ["30 1/2 - 31 1/2", figure({ low: 30.5, high: 31.5 })],
    ["86 bis 90 cm", figure({ low: 86, high: 90 }, "cm")],
    ["76/80", figure({ low: 76, high: 80 })],
    ["34 (87)", figure(34, null, { value: 87, unit: null })],
    ["34/87", figure(34, null, { value: 87, unit: null })],
    ["34 in / 87 cm", figure(34, "in", { value: 87, unit: "cm" })],
    ['33"\n84 cm', figure(33, "in", { value: 84, unit: "cm" })],
    ["2 1/8 (1.95)", figure(2.125, null, { value: 1.95, unit: null })],
    ["31-32 (79-81)", figure({ low: 31, high: 32 }, null, { value: { low: 79, high: 81 }, unit: null })],
  ])("reads %j", (text, wanted) => {
    expect(readFigure(text)).toEqual(wanted);
  });

  it.each(["", " ", "-", "–", "—", "n/a", "N.A.", "x", "..."])("takes %j for a blank", (text) => {
    expect(readFigure(text).kind).toBe("blank");
  });
  it.each(['"', "″", "''", "do.", "ditto", "〃"])("takes %j for ditto marks", (text) => {
    expect(readFigure(text).kind).toBe("same");
  });
  it.each(["=34", "=SUM(A1)", "+SUM(A1)", "-2+3", "@A1", "＝1+1"])("never takes %j for a figure", (text) => {
    expect(readFigure(text).kind).toBe("formula");
  });
  it.each(["thirty", "34 36", "34/0", "1/7/9", "34 (", "8".repeat(80)])("leaves %j as text", (text) => {
    expect(readFigure(text).kind).toBe("text");
  });
});
