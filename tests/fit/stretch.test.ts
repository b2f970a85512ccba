import { describe, expect, it } from "vitest";
import { knitCheck, stretch } from "../../src/fit/stretch";
import type { Result } from "../../src/problem";
import { sentence } from "../../src/words";

const said = <T>(result: Result<T>) => (result.ok ? result.value : sentence(result.problem));

describe("stretch", () => {
  // Stretch percentage of knits, printed worked examples of sewing-education pages (read).
  it.each([
    [4, 5, 0.25],
    [4, 10, 1.5],
    [10, 15, 0.5],
    [10, 13, 0.3],
  ])("from %d to %d is %d", (rest, stretched, share) => {
    expect(said(stretch(rest, stretched))).toBeCloseTo(share, 12);
  });

  it("is nothing where the cloth doesn't give", () => {
    expect(said(stretch(10, 10))).toBe(0);
  });

  it("refuses a length at rest of zero or less, and a stretched length below it", () => {
    expect(said(stretch(0, 5))).toBe("The length at rest must be above zero, and this is 0.");
    expect(said(stretch(-1, 5))).toBe("The length at rest must be above zero, and this is -1.");
    expect(said(stretch(5, 4))).toBe(
      "The stretched length (4) is shorter than the length at rest (5). Give the length at rest first.",
    );
    expect(said(stretch(NaN, 4))).toBe(`"NaN" is not a length of cloth.`);
    expect(said(stretch(4, Infinity))).toBe(`"Infinity" is not a length of cloth.`);
  });
});

describe("knitCheck", () => {
  it("is true when there is enough, and exactly enough is enough", () => {
    expect(said(knitCheck(0.5, 0.25))).toBe(true);
    expect(said(knitCheck(0.25, 0.25))).toBe(true);
    expect(said(knitCheck(0.24, 0.25))).toBe(false);
    expect(said(knitCheck((13 - 10) / 10, 0.3))).toBe(true);
  });

  it("refuses a percentage without its sign, and a share below zero", () => {
    const refusal = (text: string) => `"${text}" can't be a stretch. Write a percentage such as 25%, or 0.25.`;
    expect(said(knitCheck(0.25, 25))).toBe(refusal("25"));
    expect(said(knitCheck(-0.1, 0.25))).toBe(refusal("-0.1"));
    expect(said(knitCheck(NaN, 0.25))).toBe(refusal("NaN"));
    expect(said(knitCheck(5, 0))).toBe(true);
    expect(said(knitCheck(5.1, 0))).toBe(refusal("5.1"));
  });
});
