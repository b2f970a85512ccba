import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { easeParts } from "../../src/fit/ease-parts";

describe("easeParts", () => {
  it("tells what she needs from what the designer added", () => {
    expect(easeParts({ finished: 39, body: 36, patternBody: 36, least: 2.5 })).toEqual({
      total: 3,
      wearing: 2.5,
      design: 0.5,
    });
    expect(easeParts({ finished: 39, body: 35, patternBody: 36, least: 2.5 })).toEqual({
      total: 4,
      wearing: 3.5,
      design: 0.5,
    });
  });

  it("has a negative design ease where the pattern is closer than the least ease", () => {
    expect(easeParts({ finished: 37, body: 36, patternBody: 36, least: 2.5 }).design).toBe(-1.5);
  });

  it("adds up to the total", () => {
    const length = fc.double({ min: 0, max: 80, noNaN: true });
    fc.assert(
      fc.property(length, length, length, length, (finished, body, patternBody, least) => {
        const { total, wearing, design } = easeParts({ finished, body, patternBody, least });
        expect(wearing + design).toBeCloseTo(total, 9);
        expect(total).toBe(finished - body);
      }),
    );
  });
});
