import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { outlineArea } from "../../src/fabric/layout/outline-area";
import { formatOutline, readOutline } from "../../src/fabric/outline-text";
import { outlineFromWidths, widthsFromOutline, type HowShaped, type WidthAt } from "../../src/fabric/widths-outline";
import { sentence } from "../../src/words";

const sleeve = { name: "Sleeve", width: 14, length: 22, unit: "in" } as const;
const at = (...rows: readonly (readonly [height: number, width: number])[]): WidthAt[] =>
  rows.map(([height, width]) => ({ height, width }));
const middleDown: HowShaped = { edge: "middle", from: "top" };

describe("outlineFromWidths", () => {
  // By hand: the middle of a piece 14 wide is at 7; 4 in wide goes from 5 to 9, 9 in from 2 1/2 to 11 1/2. The cap's end
  // is 22 above the hem, the widest place 17.
  it("makes a sleeve the same on both sides of its middle, measured down from the cap", () => {
    const made = outlineFromWidths(sleeve, at([0, 4], [5, 14], [22, 9]), middleDown);
    expect(made.ok && formatOutline(made.value)).toBe("2.5 0; 11.5 0; 14 17; 9 22; 5 22; 0 17");
  });
  // By hand: a gore 62 cm long, 12 at the waist, 20 at 20 down, 30 at the hem, its left edge straight.
  it("keeps one edge straight, measured from either end", () => {
    const gore = { name: "Gore", width: 30, length: 62 };
    const wanted = "0 0; 30 0; 20 42; 12 62; 0 62";
    const down = outlineFromWidths(gore, at([0, 12], [20, 20], [62, 30]), { edge: "straight", from: "top" });
    const up = outlineFromWidths(gore, at([0, 30], [42, 20], [62, 12]), { edge: "straight", from: "bottom" });
    for (const made of [down, up]) expect(made.ok && formatOutline(made.value)).toBe(wanted);
  });
  it("makes a point of a width of zero at an end, and a gusset of two", () => {
    const godet = outlineFromWidths({ name: "Godet", width: 20, length: 30 }, at([0, 0], [30, 20]), middleDown);
    expect(godet.ok && formatOutline(godet.value)).toBe("0 0; 20 0; 10 30");
    const gusset = outlineFromWidths({ name: "Gusset", width: 6, length: 10 }, at([0, 0], [5, 6], [10, 0]), middleDown);
    expect(gusset.ok && formatOutline(gusset.value)).toBe("3 0; 6 5; 3 10; 0 5");
  });
  it("can lie on the fold by its straight edge only", () => {
    const skirt = { name: "Skirt", width: 14, length: 22, onFold: true };
    const rows = at([0, 4], [22, 14]);
    expect(outlineFromWidths(skirt, rows, { edge: "straight", from: "top" }).ok).toBe(true);
    const made = outlineFromWidths(skirt, rows, middleDown);
    expect(made.ok ? "" : sentence(made.problem)).toContain("no edge on the fold");
  });
  it("takes figures that rounding has moved by a hair for the ends of the piece", () => {
    const made = outlineFromWidths(
      { name: "Cuff", width: 9.8425, length: 24.4094 },
      at([0, 9.84], [24.41, 9.84]),
      middleDown,
    );
    // 24.4094 is 62 cm in inches; the corners lie on the piece's own ends, and none beyond its sides.
    expect(made).toEqual({
      ok: true,
      value: [
        { x: 0.00125, y: 0 },
        { x: 9.84125, y: 0 },
        { x: 9.84125, y: 24.4094 },
        { x: 0.00125, y: 24.4094 },
      ],
    });
    const shifted = outlineFromWidths({ name: "Cuff", width: 9.84, length: 24.41 }, at([0.004, 9.845], [24.404, 9.845]), middleDown); // prettier-ignore
    expect(shifted.ok && shifted.value).toEqual([
      { x: 0, y: 0 },
      { x: 9.84, y: 0 },
      { x: 9.84, y: 24.41 },
      { x: 0, y: 24.41 },
    ]);
  });
  it.each<[string, readonly WidthAt[], string]>([
    ["too few rows", at([0, 4]), "at least two heights"],
    ["a height that goes back", at([0, 4], [9, 14], [5, 9], [22, 9]), "the height 5 in doesn't go on"],
    ["a height twice", at([0, 4], [5, 14], [5, 9], [22, 9]), "the height 5 in doesn't go on"],
    ["a beginning that leaves an end out", at([2, 4], [5, 14], [22, 9]), "begin at 2 in"],
    ["an end that leaves an end out", at([0, 4], [5, 14], [20, 9]), "end at 20 in and the piece is 22 in long"],
    ["more than the piece's length", at([0, 4], [5, 14], [23, 9]), "23 in is beyond the piece, which is 22 in long"],
    ["a width below zero", at([0, -4], [22, 14]), "-4 in is below zero"],
    ["zero at both ends and nothing between", at([0, 0], [22, 0]), "all the widths are 0"],
    ["zero between the ends", at([0, 14], [5, 0], [22, 9]), "the width at 5 in is 0"],
    ["a width over the piece's", at([0, 4], [5, 15], [22, 9]), "15 in is more than the piece's own, 14 in"],
    ["a widest below the piece's", at([0, 4], [5, 13], [22, 9]), "widest is 13 in and the piece is 14 in wide"],
  ])("refuses %s in a sentence", (_, rows, says) => {
    const made = outlineFromWidths(sleeve, rows, middleDown);
    expect(made.ok ? "" : sentence(made.problem)).toMatch(/^"Sleeve"/);
    expect(made.ok ? "" : sentence(made.problem)).toContain(says);
  });

  const shapes = fc
    .record({
      steps: fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 7 }),
      widths: fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 8, maxLength: 8 }),
      edge: fc.constantFrom("middle" as const, "straight" as const),
      from: fc.constantFrom("top" as const, "bottom" as const),
    })
    .map(({ steps, widths, edge, from }) => {
      const heights = [0, ...steps].map((_, i) => steps.slice(0, i).reduce((sum, step) => sum + step, 0) / 8);
      const rows = heights.map((height, i) => ({ height, width: widths[i]! / 8 }));
      const width = Math.max(...rows.map((row) => row.width));
      return { rows, edge, from, piece: { name: "Piece", width, length: heights.at(-1)! } };
    });
  it("covers as much as its trapezes do, whatever the shape", () => {
    fc.assert(
      fc.property(shapes, ({ rows, edge, from, piece }) => {
        const made = outlineFromWidths(piece, rows, { edge, from });
        const area = rows
          .slice(1)
          .reduce((sum, { height, width }, i) => sum + ((width + rows[i]!.width) / 2) * (height - rows[i]!.height), 0);
        expect(made.ok && outlineArea(made.value)).toBeCloseTo(area, 6);
      }),
    );
  });
  it("comes back from the cell it is written into, and its widths from it", () => {
    fc.assert(
      fc.property(shapes, ({ rows, edge, from, piece }) => {
        const made = outlineFromWidths(piece, rows, { edge, from });
        if (!made.ok) throw new Error(sentence(made.problem));
        const read = readOutline(formatOutline(made.value), "Piece", (value) => value);
        expect(read).toEqual(made);
        const back = widthsFromOutline(made.value, piece, from);
        expect(back?.rows).toEqual(rows);
        // A rectangle is both.
        if (rows.some(({ width }) => width < piece.width)) expect(back?.edge).toBe(edge);
      }),
    );
  });
});

describe("widthsFromOutline", () => {
  it("is undefined for an edge of another kind", () => {
    const box = { width: 10, length: 10 };
    for (const text of ["0 0; 10 0; 10 10; 4 10", "0 0; 5 3; 10 0; 10 10; 0 10", "0 2; 10 0; 10 10; 0 10"]) {
      const read = readOutline(text, "Piece", (value) => value);
      expect(read.ok && widthsFromOutline(read.value!, box, "top")).toBeUndefined();
    }
  });
  // The gore of above, its corners listed the other way round.
  it("knows an edge whichever way its points go around", () => {
    const read = readOutline("0 62; 12 62; 20 42; 30 0; 0 0", "Gore", (value) => value);
    expect(read.ok && widthsFromOutline(read.value!, { width: 30, length: 62 }, "bottom")).toEqual({
      edge: "straight",
      rows: at([0, 30], [42, 20], [62, 12]),
    });
  });
  it("knows an edge wherever its list of points begins", () => {
    const read = readOutline("20 42; 12 62; 0 62; 0 0; 30 0", "Gore", (value) => value);
    expect(read.ok && widthsFromOutline(read.value!, { width: 30, length: 62 }, "top")).toEqual({
      edge: "straight",
      rows: at([0, 12], [20, 20], [62, 30]),
    });
  });
});
