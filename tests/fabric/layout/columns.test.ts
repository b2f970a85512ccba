import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeColumns } from "../../../src/fabric/layout/columns";
import { profileOf } from "../../../src/fabric/layout/profile";

const none = { left: 0, right: 0, bottom: 0, top: 0 };
const line = (...points: readonly (readonly [number, number])[]) => points.map(([x, y]) => ({ x, y }));
const box = (width: number, length: number) =>
  profileOf([line([0, 0], [width, 0], [width, length], [0, length])], 1, { width, length }, none);

describe("profileOf", () => {
  // By hand: a right triangle 4 wide and 8 long with columns of 1: its slope falls by 2 a column.
  it("covers each column from its lowest to its highest point, rounded outward", () => {
    const triangle = profileOf([line([0, 0], [4, 0], [0, 8])], 1, { width: 4, length: 8 }, none);
    expect([...triangle.low]).toEqual([0, 0, 0, 0]);
    expect([...triangle.high]).toEqual([8, 6, 4, 2]);
    const half = profileOf([line([0, 0], [3, 0], [0, 8])], 2, { width: 3, length: 8 }, none);
    expect([...half.high]).toEqual([8, 3]);
  });
  it("keeps what is cut beyond the line on each side", () => {
    const square = profileOf(
      [line([2, 1], [3, 1], [3, 2], [2, 2])],
      1,
      { width: 4, length: 4 },
      { left: 2, right: 1, bottom: 1, top: 2 },
    );
    expect([...square.low]).toEqual([0, 0, 0, 0]);
    expect([...square.high]).toEqual([4, 4, 4, 4]);
  });
});

describe("makeColumns", () => {
  it("finds the lowest place, also below what lies above a hollow", () => {
    const columns = makeColumns(10, 9);
    columns.put(box(10, 2), 0, 8);
    expect(columns.lowest(box(3, 8), 0, 0, 100)).toBe(0);
    expect(columns.lowest(box(3, 9), 0, 0, 100)).toBe(10);
    expect(columns.lowest(box(3, 9), 0, 4, 100)).toBe(12);
    expect(columns.lowest(box(3, 9), 0, 0, 10)).toBe(10);
  });
  it("is as before when what was put is taken away", () => {
    const columns = makeColumns(10, 9);
    columns.put(box(4, 5), 2, 0);
    columns.put(box(4, 5), 2, 5);
    columns.take(box(4, 5), 2, 0);
    expect(columns.lowest(box(4, 5), 3, 0, 100)).toBe(0);
    columns.clear();
    expect(columns.lowest(box(10, 50), 0, 0, 100)).toBe(0);
  });
  it("never lets two boxes overlap, whatever the order", () => {
    const size = fc.integer({ min: 1, max: 6 });
    fc.assert(
      fc.property(fc.array(fc.tuple(size, size, fc.nat(14)), { minLength: 1, maxLength: 20 }), (list) => {
        const columns = makeColumns(20, list.length);
        const laid: (readonly [number, number, number, number])[] = [];
        for (const [width, length, at] of list) {
          const y = columns.lowest(box(width, length), at, 0, 10_000);
          for (const [x, from, wide, long] of laid)
            expect(at + width <= x || x + wide <= at || y + length <= from || from + long <= y).toBe(true);
          columns.put(box(width, length), at, y);
          laid.push([at, y, width, length]);
        }
      }),
    );
  });
});
