import { describe, expect, it } from "vitest";
import { clothProblems, pieceProblems } from "../../../src/fabric/layout/check";
import type { Cloth, CutPiece } from "../../../src/fabric/layout/types";
import { sentence } from "../../../src/words";

const cloth = (given: Cloth) => clothProblems(given).map(sentence);
const piece = (more: Partial<CutPiece>) =>
  pieceProblems([{ name: "Gore", width: 30, length: 60, count: 1, ...more }]).map(sentence);

describe("clothProblems", () => {
  it("says what can't be a width, a repeat, a gap or a layout, all of it at once", () => {
    const date = "Excel has made a date of this (45000): type 0 7/8, or 6 to 12.";
    const width = (text: string) => `"${text}" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`;
    expect(cloth({ width: 140, repeat: 0, gap: 20000, layout: "folded" })).toEqual([]);
    expect(cloth({ width: 0 })).toEqual([width("0")]);
    expect(cloth({ width: Infinity })).toEqual([width("Infinity")]);
    expect(cloth({ width: NaN })).toEqual([width("NaN")]);
    expect(cloth({ width: 45000 })).toEqual([date]);
    expect(cloth({ width: 140, repeat: -1, gap: NaN })).toEqual([
      "A repeat can't be below zero, and this is -1.",
      '"NaN" is not a number.',
    ]);
    expect(cloth({ width: 140, repeat: 45000, gap: -2, layout: "bias" as "folded" })).toEqual([
      date,
      "The room between pieces can't be below zero, and this is -2.",
      '"bias" is not a layout known here. Write single or folded.',
    ]);
  });
});

describe("pieceProblems", () => {
  it("says what can't be cut, by the piece's name", () => {
    const size = (what: string, text: string) =>
      `The ${what} of "Gore" is ${text}: it must be above zero, such as 24 1/2 or 62 cm.`;
    expect(piece({})).toEqual([]);
    expect(piece({ width: 0 })).toEqual([size("width", "0")]);
    expect(piece({ length: NaN })).toEqual([size("length", "NaN")]);
    expect(piece({ count: 1.5 })).toEqual([
      `"Gore" is to be cut 1.5 times: write a whole number from 1, such as 2 for a pair.`,
    ]);
    expect(piece({ count: 2000 })).toEqual([]);
    expect(piece({ count: 2001 })).toEqual(["2001 pieces are too many for one layout: 2000 at most."]);
    expect(pieceProblems([]).map(sentence)).toEqual([
      "There are no pieces here. List at least one, with its length, width and count.",
    ]);
  });

  it("says what is wrong with an outline", () => {
    const of = (...points: [number, number][]) => piece({ outline: points.map(([x, y]) => ({ x, y })) });
    expect(of([0, 0], [30, 0], [30, 60], [0, 60])).toEqual([]);
    expect(of([0, 0], [30, 0])).toEqual([`The outline of "Gore" has 2 points: at least 3 are needed.`]);
    expect(of([0, 0], [31, 0], [0, 60])).toEqual([`The outline of "Gore" goes outside its length and width at 31 0.`]);
    expect(of([0, 0], [30, 60], [30, 0], [0, 60])).toEqual([
      `The outline of "Gore" crosses itself. List its points in order around the edge.`,
    ]);
    // A scalloped edge of 1001 points.
    const scallops = Array.from({ length: 999 }, (_, at): [number, number] => [30 - at * 0.03, 59 + (at % 2)]);
    expect(of([0, 0], [30, 0], ...scallops)).toEqual([`The outline of "Gore" has 1001 points: 1000 at most.`]);
    expect(piece({ onFold: true, outline: [{ x: 1, y: 0 }, { x: 30, y: 0 }, { x: 1, y: 60 }] })).toEqual([
      `The outline of "Gore" has no edge on the fold: two points next to each other must have x = 0.`,
    ]); // prettier-ignore
  });
});
