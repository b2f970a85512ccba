import { describe, expect, it } from "vitest";
import { tapeFigures, type TapeLine } from "../../src/fit/measuring-figure";
import { measuringGuide } from "../../src/fit/measuring-guide";

const all = tapeFigures.flatMap(({ tapes }) => tapes);
const front = tapeFigures[0]!;
const back = tapeFigures[1]!;
const seated = tapeFigures[2]!;
const on = ({ tapes }: { readonly tapes: readonly TapeLine[] }, place: string) =>
  tapes.filter((tape) => tape.place === place);
const points = (tape: TapeLine) => tape.strokes.flat();
/** The level of a tape round the body: where it begins, at the side. */
const level = (figure: typeof front, place: string) => on(figure, place)[0]!.strokes[0]![0]![1];
const ends = (figure: typeof front, place: string) => {
  const levels = points(on(figure, place)[0]!).map(([, y]) => y);
  return [Math.min(...levels), Math.max(...levels)] as const;
};
const CROWN = 10;
const FLOOR = 350;

describe("tapeFigures", () => {
  it("shows every tape that the guide has words for, and no other", () => {
    expect(new Set(all.map(({ place }) => place))).toEqual(new Set(measuringGuide.map(({ place }) => place)));
    const beside = tapeFigures.flatMap(({ places }) => places);
    expect([...beside].sort()).toEqual(measuringGuide.map(({ place }) => place).sort());
  });

  it("numbers the words in their order from 1, the same number on every figure", () => {
    const numbers = tapeFigures.flatMap(({ places, tapes }) =>
      places.map((place) => tapes.find((tape) => tape.place === place)!.number),
    );
    expect(numbers).toEqual(measuringGuide.map((_, index) => index + 1));
    for (const { place, number } of all) expect(number).toBe(all.find((tape) => tape.place === place)!.number);
  });

  it("draws the three waists that the words tell apart: the second hangs, the navel's is the lowest", () => {
    const waists = on(front, "waist");
    const { number } = waists[0]!;
    expect(waists.map(({ mark }) => mark)).toEqual([`${number}a`, `${number}b`, `${number}c`]);
    const { otherWays } = measuringGuide.find(({ place }) => place === "waist")!;
    expect(otherWays.slice(1).map((way) => way.slice(0, 2))).toEqual(["a:", "b:", "c:"]);
    const sag = (tape: TapeLine) => tape.strokes[0]![2]![1] - tape.strokes[0]![0]![1];
    expect(sag(waists[1]!)).toBeGreaterThan(sag(waists[0]!));
    expect(level(front, "waist")).toBeLessThan(waists[1]!.strokes[0]![0]![1]);
    expect(waists[1]!.strokes[0]![0]![1]).toBeLessThan(waists[2]!.strokes[0]![0]![1]);
  });

  it("puts the tapes where the words say", () => {
    const down = ["head", "neck", "highBust", "bust", "underbust", "waist", "hip", "thigh", "knee", "calf"];
    const levels = down.map((place) => level(front, place));
    expect(levels).toEqual([...levels].sort((a, b) => a - b));
    const waist = level(front, "waist");
    // Waist to hip ends on the level of the hip, which is level.
    expect(Math.abs(ends(front, "waistToHip")[1] - level(front, "hip"))).toBeLessThan(2);
    expect(ends(front, "insideLeg")[1]).toBe(FLOOR);
    expect(Math.abs(ends(front, "insideLeg")[0] - ends(front, "crotchLength")[1])).toBeLessThan(2);
    expect(ends(back, "outsideLeg")[1]).toBe(FLOOR);
    expect(ends(back, "height")).toEqual([CROWN, FLOOR]);
    // Lengths from the neck end at the waist; the front one is the longer way on a body, not on a flat drawing.
    expect(ends(front, "frontWaistLength")[1]).toBeGreaterThanOrEqual(waist);
    expect(Math.abs(ends(back, "backWaistLength")[1] - waist)).toBeLessThan(10);
    expect(level(back, "crossBack")).toBeLessThan(level(back, "chest"));
    // The seat of the chair.
    expect(
      Math.abs(ends(seated, "crotchDepth")[1] - Math.min(...seated.body.ground[0]!.map(([, y]) => y))),
    ).toBeLessThan(2);
  });

  it("keeps marks apart and inside the drawing, at 12 px for text", () => {
    for (const { width, height, tapes } of tapeFigures) {
      const boxes = tapes.map(({ mark, label: [x, y] }) => {
        const half = mark.length * 4;
        return { mark, left: x - half, right: x + half, top: y - 5, bottom: y + 5 };
      });
      for (const [index, box] of boxes.entries()) {
        expect(box.left, box.mark).toBeGreaterThanOrEqual(0);
        expect(box.right, box.mark).toBeLessThanOrEqual(width);
        expect(box.top, box.mark).toBeGreaterThanOrEqual(0);
        expect(box.bottom, box.mark).toBeLessThanOrEqual(height);
        for (const other of boxes.slice(index + 1)) {
          const apart =
            box.right <= other.left || other.right <= box.left || box.bottom <= other.top || other.bottom <= box.top;
          expect(apart, `${box.mark} and ${other.mark}`).toBe(true);
        }
      }
    }
  });

  it("has every point inside the drawing", () => {
    for (const { width, height, body, tapes } of tapeFigures)
      for (const [x, y] of [...body.outlines, ...body.ground, ...tapes.map(points)].flat()) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(height);
      }
  });

  it("says in words what is drawn", () => {
    expect(front.description).toMatch(
      /^A plain body, from the front, with the tape lines 1 head, 2 neck, .*8a waist, /,
    );
    expect(seated.description).toBe("A plain body, sitting, from the side, with the tape lines 24 crotch depth.");
  });
});
