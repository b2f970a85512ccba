import { describe, expect, test } from "vitest";
import type { FitPicture } from "../../src/index";
import { across, easeStart } from "../../taskpane/fit/picture";

/** Two rows whose lines run from one measure to the other; the drawing is 320 wide, its figures go from 20 to 50. */
const picture = (waist: number, hip: number, name = "hip"): FitPicture => {
  const place = (title: string, at: number) => ({ name: title, body: at, blendAt: at, ease: 5, word: "loose-fitting" });
  return { unit: "in", low: 20, high: 50, places: [place("waist", waist), place(name, hip)] } as unknown as FitPicture;
};

describe("across", () => {
  test("leaves a margin at both ends", () => {
    expect(across(picture(30, 40), 20)).toBe(10);
    expect(across(picture(30, 40), 50)).toBe(310);
    expect(across(picture(30, 40), 35)).toBe(160);
  });
});

describe("easeStart", () => {
  test("is the right end in the first row, which no line comes down to", () =>
    expect(easeStart(picture(45, 48), 0)).toBeNull());
  test("is the right end where the lines come down at the left", () =>
    expect(easeStart(picture(24, 26), 1)).toBeNull());
  test("is behind the name where they come down at the right", () => {
    const start = easeStart(picture(44, 48), 1)!;
    expect(start).toBeGreaterThan(10);
    expect(start).toBeLessThan(60);
  });
  test("is the right end where the lines leave no room for a long name and the ease either", () =>
    expect(easeStart(picture(44, 36, "front waist length to the hem"), 1)).toBeNull());
});
