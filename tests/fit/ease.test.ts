import { describe, expect, it } from "vitest";
import { totalEase } from "../../src/fit/ease";
import { said } from "./bodies";

type Unit = "in" | "cm" | null;
const ease = (finished: number, one: Unit, body: number, other: Unit) =>
  said(totalEase({ value: finished, unit: one }, { value: body, unit: other }));

describe("totalEase", () => {
  // Arithmetic: finished less body; 1 in = 2.54 cm.
  it("is finished less body, signed, in the garment's unit", () => {
    expect(ease(38, null, 34, null)).toBe(4);
    expect(ease(34, "in", 36, "in")).toBe(-2);
    expect(ease(40, "in", 91.44, "cm")).toBe(4);
    expect(ease(101.6, "cm", 36, "in")).toBe(10.16);
    expect(ease(3.3, null, 3, null)).toBe(0.3);
  });

  it("gives a bare number the unit of the other", () => {
    expect(ease(40, "in", 36, null)).toBe(4);
    expect(ease(40, null, 36, "in")).toBe(4);
  });

  it("asks for units where one number is two to three times the other, and only where a unit is missing", () => {
    const against = (finished: string, body: string) =>
      `${finished} finished against ${body} of the body: cm against inches? Write the unit beside the figure.`;
    expect(ease(96, null, 34, null)).toBe(against("96", "34"));
    expect(ease(38, null, 86, "cm")).toBe(against("38", "86 cm"));
    expect(ease(96, "cm", 34, null)).toBe(against("96 cm", "34"));
    expect(ease(68, null, 34, null)).toBe(against("68", "34"));
    expect(ease(102, null, 34, null)).toBe(against("102", "34"));
    expect(ease(67.9, null, 34, null)).toBe(33.9);
    expect(ease(102.5, null, 34, null)).toBe(68.5);
    // A hem of 72 in on a waist of 30 in is a full skirt.
    expect(ease(72, "in", 30, "in")).toBe(42);
  });
});
