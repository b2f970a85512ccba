import { describe, expect, it } from "vitest";
import { shownBound, stripBound } from "../../../src/fabric/layout/bound";
import { commonStep, makeStrip, type Box } from "../../../src/fabric/layout/strip";

const box = (width: number, length: number, more: Partial<Box> = {}): Box => ({ width, length, onFold: false, mayTurn: false, ...more }); // prettier-ignore
const cloth = { width: 100, gap: 0, repeat: 0 };
const bound = (boxes: readonly Box[], on = cloth) => shownBound(boxes, on);

describe("stripBound", () => {
  // Each by hand.
  it("is the longest box, the area, what is too wide to lie beside each other, or the stack on the fold", () => {
    expect(bound([box(10, 70), box(10, 20)])).toBe(70);
    expect(bound(Array.from({ length: 7 }, () => box(30, 20)))).toBe(42);
    expect(bound([box(51, 20), box(60, 30)])).toBe(50);
    expect(bound([box(20, 30, { onFold: true }), box(10, 40, { onFold: true })])).toBe(70);
  });
  it("counts a wide box with the whole width beside boxes that don't fit there", () => {
    // 70 + 40 > 100, so the 70s take 100: (100 × 20 + 40 × 10 × 2) / 100.
    expect(bound([box(70, 20), box(40, 10), box(40, 10)])).toBe(28);
  });
  it("takes the kinder way of what may turn", () => {
    expect(bound([box(20, 90, { mayTurn: true })])).toBe(20);
    expect(bound([box(20, 120, { mayTurn: true })])).toBe(120);
  });
  it("counts gaps between boxes and whole repeats", () => {
    expect(bound([box(51, 20), box(60, 30)], { ...cloth, gap: 2 })).toBe(52);
    // 20 takes a repeat of 32 before the 30 may start: at least 32 + 30 less what may be missing of the last repeat.
    expect(bound([box(51, 20), box(60, 30)], { ...cloth, repeat: 32 })).toBeLessThanOrEqual(62);
    expect(bound([box(51, 20), box(60, 30)], { ...cloth, repeat: 32 })).toBeGreaterThanOrEqual(50);
  });
  it("is nothing for nothing", () => {
    expect(bound([])).toBe(0);
  });
});

describe("makeStrip", () => {
  it("divides everything by the greatest common step", () => {
    const strip = makeStrip([box(20, 30), box(50, 75)], { width: 104, gap: 0, repeat: 0 });
    expect([strip.stepX, strip.stepY, strip.width]).toEqual([10, 15, 10]);
    expect([...strip.across.slice(0, 2), ...strip.advance.slice(0, 2)]).toEqual([2, 5, 2, 5]);
    expect(stripBound(strip)).toBe(5);
  });
  it("puts gaps and whole repeats into the boxes, not into where they end", () => {
    const strip = makeStrip([box(20, 30)], { width: 100, gap: 2, repeat: 16 });
    expect(strip.across[0]! * strip.stepX).toBe(22);
    expect(strip.advance[0]! * strip.stepY).toBe(32);
    expect(strip.end[0]! * strip.stepY).toBe(30);
  });
});

describe("commonStep", () => {
  it("is the greatest common divisor, and takes 0 as nothing yet", () => {
    expect([commonStep(12, 18), commonStep(0, 7), commonStep(7, 0)]).toEqual([6, 7, 7]);
  });
});
