import { describe, expect, it } from "vitest";
import { outlineArea } from "../../../src/fabric/layout/outline-area";
import { crossesItself } from "../../../src/fabric/layout/outline-check";
import { seededRandom } from "../../../src/fabric/layout/random";
import { rememberedLayouts } from "../../../src/fabric/layout/remembered";
import { stepsDown, stepsUp } from "../../../src/fabric/layout/steps";

const line = (...points: readonly (readonly [number, number])[]) => points.map(([x, y]) => ({ x, y }));

describe("seededRandom", () => {
  it("gives the same row for a seed, another for its neighbour, always below the limit", () => {
    const row = (seed: number) => {
      const random = seededRandom(seed);
      return Array.from({ length: 50 }, () => random.next(10));
    };
    expect(row(1)).toEqual(row(1));
    expect(row(1)).not.toEqual(row(2));
    for (const seed of [0, 1, -5, 2 ** 31])
      expect(row(seed).every((n) => Number.isInteger(n) && n >= 0 && n < 10)).toBe(true);
    expect(new Set(row(3)).size).toBeGreaterThan(5);
  });
});

describe("stepsUp and stepsDown", () => {
  it("are exact for every 1/64 and every hundredth, and round apart otherwise", () => {
    for (let i = 1; i <= 640; i++) expect([stepsUp(i / 64), stepsDown(i / 64)]).toEqual([i * 25, i * 25]);
    for (let i = 1; i <= 1000; i++) expect([stepsUp(i / 100), stepsDown(i / 100)]).toEqual([i * 16, i * 16]);
    expect([stepsUp(1 / 3), stepsDown(1 / 3)]).toEqual([534, 533]);
  });
});

describe("crossesItself", () => {
  it("tells a plain line from one that crosses, touches or runs back", () => {
    expect(crossesItself(line([0, 0], [4, 0], [4, 4], [2, 1], [0, 4]))).toBe(false);
    expect(crossesItself(line([0, 0], [2, 0], [4, 0], [4, 4]))).toBe(false);
    expect(crossesItself(line([0, 0], [4, 0], [4, 0], [4, 4]))).toBe(false);
    expect(crossesItself(line([0, 0], [4, 4], [4, 0], [0, 4]))).toBe(true);
    expect(crossesItself(line([0, 0], [4, 0], [2, 0], [4, 4]))).toBe(true);
    expect(crossesItself(line([0, 0], [4, 0], [4, 4], [2, 0], [0, 4]))).toBe(true);
    expect(crossesItself(line([1, 1], [1, 1], [1, 1]))).toBe(true);
  });
});

describe("outlineArea", () => {
  it("is the area inside, whichever way round", () => {
    expect(outlineArea(line([0, 0], [2, 0], [0, 3]))).toBe(3);
    expect(outlineArea(line([0, 3], [2, 0], [0, 0]))).toBe(3);
    expect(outlineArea(line([0, 0], [4, 0], [4, 4], [2, 1], [0, 4]))).toBe(10);
  });
});

describe("rememberedLayouts", () => {
  const cuff = (name: string) => [{ name, width: 10, length: 20, count: 2 }];
  const cloth = { width: 45 };
  it("gives the same layout for the same question, and forgets the one not asked for longest", () => {
    const layoutOf = rememberedLayouts(2);
    const first = layoutOf(cuff("a"), cloth, { tries: 5 });
    expect(layoutOf(cuff("a"), { ...cloth }, { tries: 5 })).toBe(first);
    layoutOf(cuff("b"), cloth, { tries: 5 });
    expect(layoutOf(cuff("a"), cloth, { tries: 5 })).toBe(first);
    layoutOf(cuff("c"), cloth, { tries: 5 });
    const second = layoutOf(cuff("b"), cloth, { tries: 5 });
    expect(layoutOf(cuff("a"), cloth, { tries: 5 })).not.toBe(first);
    expect(layoutOf(cuff("b"), cloth, { tries: 5 })).toBe(second);
    expect(layoutOf(cuff("b"), { width: 46 }, { tries: 5 })).not.toBe(second);
  });
});
