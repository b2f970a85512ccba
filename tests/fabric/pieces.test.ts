import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/chart/cell";
import { onTheBias } from "../../src/fabric/bias";
import { cuttingLayout } from "../../src/fabric/layout/cutting-layout";
import { readOutline } from "../../src/fabric/outline-text";
import { readPieces } from "../../src/fabric/pieces";
import { sentence } from "../../src/words";

const HEADINGS = ["Piece", "Length", "Width", "Unit", "Count", "On fold", "May turn", "Fabric", "Seam allowance", "Hem", "Outline"]; // prettier-ignore
const read = (rows: readonly (readonly Cell[])[], unit: "in" | "cm" = "cm", headings: readonly Cell[] = HEADINGS) => {
  const found = readPieces([headings, ...rows], unit);
  if (!found.ok) throw new Error(sentence(found.problem));
  return found.value;
};
const first = (rows: readonly (readonly Cell[])[]) => read(rows)[0]!.pieces;
const refusal = (rows: readonly (readonly Cell[])[], headings: readonly Cell[] = HEADINGS): string => {
  const found = readPieces([headings, ...rows], "cm");
  return found.ok ? "read" : sentence(found.problem);
};

describe("readPieces", () => {
  it("reads a list, with a title above and its columns in any order", () => {
    const rows = [["Camp shirt"], ["Count", "WIDTH", "Piece", "length"], [2, 30, "Front", 70]];
    expect(readPieces(rows, "cm")).toMatchObject({
      ok: true,
      value: [
        { name: "", pieces: [{ name: "Front", width: 30, length: 70, count: 2, onFold: false, mayTurn: false }] },
      ],
    });
  });

  it("adds the seam allowance on every edge but the fold, and the hem at the bottom instead of it", () => {
    const pieces = first([
      ["Front", 70, 30, null, 2, null, null, null, 1.5, 4, null],
      ["Back", 70, 30, null, 1, "yes", null, null, 1.5, null, null],
    ]);
    expect(pieces).toMatchObject([
      { name: "Front", width: 33, length: 75.5 },
      { name: "Back", width: 31.5, length: 73, onFold: true },
    ]);
  });

  it("reads lengths as they are written: the unit in the cell, then the row's, then the caller's", () => {
    const pieces = first([
      ["A", "20 in", 10, "cm", 1],
      ["B", 10, "10 1/2", "in", 1],
      ["C", 5, "5,5", null, 1],
    ]);
    expect(pieces.map(({ width, length }) => [width, length])).toEqual([
      [10, 50.8],
      [26.67, 25.4],
      [5.5, 5],
    ]);
  });

  it("keeps fabrics apart, in the list's order and whatever their case, and leaves blank rows out", () => {
    const list = read([
      ["Front", 70, 30, null, 2, null, null, "Linen"],
      [null, null, null, null, null, null, null, null],
      ["Yoke", 10, 30, null, 1, null, null, "print"],
      ["", 0, 0, null, 0, null, null, ""],
      ["Back", 70, 30, null, 1, null, null, "linen "],
    ]);
    expect(list.map(({ name, pieces }) => [name, pieces.map((piece) => piece.name)])).toEqual([
      ["Linen", ["Front", "Back"]],
      ["print", ["Yoke"]],
    ]);
  });

  it("reads flags as they are typed", () => {
    const flags = ["yes", "Y", "TRUE", true, 1, "x", "no", false, 0, null, ""];
    const pieces = first(flags.map((flag, i) => [`p${i}`, 5, 5, null, 1, null, flag]));
    expect(pieces.map(({ mayTurn }) => mayTurn)).toEqual([
      true,
      true,
      true,
      true,
      true,
      true,
      false,
      false,
      false,
      false,
      false,
    ]);
  });

  it("moves an outline inside its allowances", () => {
    const pieces = first([["Gore", 60, 30, null, 1, null, null, null, 1, 3, "0 0; 30 0; 20 60; 0 60"]]);
    expect(pieces[0]).toMatchObject({
      width: 32,
      length: 64,
      outline: [{ x: 1, y: 3 }, { x: 31, y: 3 }, { x: 21, y: 63 }, { x: 1, y: 63 }],
      allowance: { left: 1, right: 1, bottom: 3, top: 1 },
    }); // prettier-ignore
  });

  it("keeps the allowances of two outlines apart on the cloth", () => {
    const pieces = first([["Square", 10, 10, null, 2, null, null, null, 1, null, "0 0; 10 0; 10 10; 0 10"]]);
    expect(cuttingLayout(pieces, { width: 24 }, { tries: 20 }).length).toBe(12);
    expect(cuttingLayout(pieces, { width: 23 }, { tries: 20 }).length).toBe(24);
  });

  it("refuses what can't be cut, by the piece's name", () => {
    expect(refusal([["Cuff", 0, 10, null, 2]])).toMatch(/^The length of "Cuff" is 0: it must be above zero/);
    expect(refusal([["Cuff", 20, null, null, 2]])).toMatch(/^The width of "Cuff" is blank/);
    expect(refusal([["Cuff", 20, -1, null, 2]])).toMatch(/"Cuff".*below zero/);
    expect(refusal([["Cuff", "long", 10, null, 2]])).toMatch(/"long" can't be read as a length/);
    expect(refusal([["Cuff", 46182, 10, null, 2]])).toMatch(/^Excel has made a date/);
    expect(refusal([["Cuff", 20, 10, null, 1.5]])).toMatch(/^"Cuff" is to be cut 1.5 times/);
    expect(refusal([["Cuff", 20, 10, null, null]])).toBe(`"Cuff" has no count: write 1, or 2 for a pair.`);
    expect(refusal([["Cuff", 20, 10, null, "two"]])).toMatch(/^"Cuff" is to be cut two times/);
    expect(refusal([["Cuff", 20, 10, "ells", 2]])).toMatch(/"ells" is not a unit/);
    expect(refusal([["Cuff", 20, 10, null, 2, "perhaps"]])).toBe(
      `"perhaps" in the column On fold of "Cuff" is neither yes nor no.`,
    );
    expect(refusal([["Cuff", 20, 10, null, 2, "bias"]])).toMatch(/"bias" in the column On fold/);
    expect(refusal([["Cuff", 20, 10, null, 2, "yes", "bias"]])).toMatch(/May turn of "Cuff"/);
    expect(refusal([["Cuff", 20, 10, null, 2, null, null, null, null, null, "0 0; 5"]])).toMatch(
      /^The outline of "Cuff" can't be read at "5"/,
    );
    expect(refusal([])).toMatch(/^There are no pieces/);
    expect(refusal([["Cuff", 20, 10]], ["Piece", "Length", "Width"])).toMatch(
      /^The pieces have no column "Count"\. Found: piece, length, width/,
    );
    expect(refusal([["Cuff", 20]], ["Cuff", 20])).toMatch(/no column "Piece"/);
    expect(refusal([["Cuff", { error: "#DIV/0!" }, 10, null, 2]])).not.toBe("read");
  });
});

describe("onTheBias", () => {
  // Geometry: a strip of 4 × 60 at 45° takes a square of 64 / √2 = 45.2548.
  it("lays a strip askew in the square around it", () => {
    const strip = onTheBias({ name: "Binding", width: 4, length: 60, count: 1 });
    expect(strip.width).toBeCloseTo(45.2548, 4);
    expect(strip.length).toBeCloseTo(45.2548, 4);
    expect(strip.outline).toHaveLength(4);
    expect(strip.mayTurn).toBe(true);
  });

  it("lets several strips lie side by side by their outlines", () => {
    const pieces = first([["Binding", 60, 4, null, 4, null, "bias"]]);
    const layout = cuttingLayout(pieces, { width: 70 }, { tries: 200 });
    expect(layout.by).toBe("outlines");
    expect(layout.length!).toBeLessThan(80);
    expect(layout.length!).toBeGreaterThan(45.25);
  });
});

describe("readOutline", () => {
  const points = (text: Cell) => {
    const found = readOutline(text, "Gore", (value) => value);
    return found.ok ? found.value?.map(({ x, y }) => [x, y]) : sentence(found.problem);
  };
  it("reads points, fractions and decimal commas, and drops a repeated first point", () => {
    expect(points("0 0; 30 1/2 0; 24,5 60\n0 62;")).toEqual([[0, 0], [30.5, 0], [24.5, 60], [0, 62]]); // prettier-ignore
    expect(points("0 0; 30 0; 24 60; 0 0")).toEqual([[0, 0], [30, 0], [24, 60]]); // prettier-ignore
    expect(points("0 1/2; 30 0 1/2; 5 5")).toEqual([[0, 0.5], [30, 0.5], [5, 5]]); // prettier-ignore
  });
  it("is nothing for a blank cell", () => {
    for (const blank of [null, "", " ", 0]) expect(points(blank)).toBeUndefined();
  });
  it("names the point it can't read", () => {
    for (const text of ["0 0; x 5; 1 1", "1 2 3 4; 0 0; 1 1", "5", "0 0 cm; 1 1; 2 2"])
      expect(points(text)).toMatch(/can't be read at/);
  });
});
