import { describe, expect, it } from "vitest";
import { smoothPath } from "../../taskpane/fit/smooth-path";

const numbers = (path: string) => path.match(/-?\d+(?:\.\d+)?/g)!.map(Number);

describe("smoothPath", () => {
  it("goes through every point, and ends in the last one", () => {
    const path = smoothPath([[0, 0], [10, 0], [10, 20]], false); // prettier-ignore
    expect(path).toMatch(/^M0 0C[^C]+C[^CZ]+$/);
    expect(numbers(path).slice(6, 8)).toEqual([10, 0]);
    expect(numbers(path).slice(-2)).toEqual([10, 20]);
  });
  it("stays straight where the points lie in a line", () => {
    const heights = numbers(smoothPath([[0, 5], [10, 5], [30, 5]], false)).filter((_, index) => index % 2 === 1); // prettier-ignore
    expect(new Set(heights)).toEqual(new Set([5]));
  });
  it("comes back to the first point when it is closed", () => {
    const path = smoothPath([[0, 0], [10, 0], [10, 10]], true); // prettier-ignore
    expect(path.match(/C/g)).toHaveLength(3);
    expect(path.endsWith(" 0 0Z")).toBe(true);
  });
});
