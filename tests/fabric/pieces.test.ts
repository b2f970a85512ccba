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

describe("readPieces, what it says", () => {
  const said = (row: readonly Cell[]) => refusal([row]);
  const length = (text: string) => `"${text}" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`;
  const wants = (what: string, text: string) =>
    `The ${what} of "Cuff" is ${text}: it must be above zero, such as 24 1/2 or 62 cm.`;
  const flag = (column: string, text: string) => `"${text}" in the column ${column} of "Cuff" is neither yes nor no.`;

  it("names the piece and what is wrong with it, column by column", () => {
    expect(said(["Cuff", 0, 10, null, 2])).toBe(wants("length", "0"));
    expect(said(["Cuff", null, 10, null, 2])).toBe(wants("length", "blank"));
    expect(said(["Cuff", 20, "", null, 2])).toBe(wants("width", "blank"));
    expect(said(["Cuff", 20, "0 cm", null, 2])).toBe(wants("width", "0"));
    expect(said(["Cuff", "long", 10, null, 2])).toBe(length("long"));
    expect(said(["Cuff", 20, 10, null, 2, null, null, null, "narrow"])).toBe(length("narrow"));
    expect(said(["Cuff", 20, 10, null, 2, null, null, null, 1, "deep"])).toBe(length("deep"));
    expect(said(["Cuff", 20, 10, null, 2, "perhaps"])).toBe(flag("On fold", "perhaps"));
    expect(said(["Cuff", 20, 10, null, 2, null, "askew"])).toBe(flag("May turn", "askew"));
    expect(said(["Cuff", 20, 10, null, 2, "bias"])).toBe(flag("On fold", "bias"));
    expect(said(["Cuff", 20, 10, null, 2, "yes", "Bias"])).toBe(flag("May turn", "bias (on the fold)"));
    expect(said(["Cuff", 20, 10, null, 1.5])).toBe(
      `"Cuff" is to be cut 1.5 times: write a whole number from 1, such as 2 for a pair.`,
    );
    expect(said(["Cuff", 20, 10, null, "two"])).toBe(
      `"Cuff" is to be cut two times: write a whole number from 1, such as 2 for a pair.`,
    );
    expect(said(["Cuff", 20, 10, null, -2])).toBe(
      `"Cuff" is to be cut -2 times: write a whole number from 1, such as 2 for a pair.`,
    );
    expect(said(["Cuff", 20, 10, null, " "])).toBe(`"Cuff" has no count: write 1, or 2 for a pair.`);
    expect(said(["Cuff", 20, 10, null, 46182])).toBe("Excel has made a date of this (46182): type 0 7/8, or 6 to 12.");
    // A row with a name, or one of the two sizes, is no blank row.
    expect(said(["Cuff"])).toBe(wants("width", "blank"));
    expect(said([null, 20])).toBe(`The width of "a piece without a name" is blank: it must be above zero, such as 24 1/2 or 62 cm.`); // prettier-ignore
    expect(said([null, null, 10])).toBe(`The length of "a piece without a name" is blank: it must be above zero, such as 24 1/2 or 62 cm.`); // prettier-ignore
    expect(said(["", 20, 10, null, "two"])).toBe(
      `"a piece without a name" is to be cut two times: write a whole number from 1, such as 2 for a pair.`,
    );
    expect(said(["Cuff", 20, 10, null, 2, null, null, null, null, null, "0 0; 5"])).toBe(
      `The outline of "Cuff" can't be read at "5". Write it like 0 0; 30 0; 24 60; 0 62.`,
    );
  });

  it("says which heading is missing, and that there are no pieces", () => {
    const heading = (name: string, found: string) =>
      `The pieces have no column "${name}". Found: ${found}. Include the row of headings; for a table add [#All].`;
    expect(refusal([["Cuff", 20, 10]], ["Piece", "Length", "Width"])).toBe(heading("Count", "piece, length, width"));
    expect(refusal([["Cuff", 20]], ["Cuff", 20])).toBe(heading("Piece", "cuff, 20"));
    expect(refusal([], ["Piece", "Length", "Count"])).toBe(heading("Width", "piece, length, count"));
    expect(refusal([], [null, ""])).toBe(heading("Piece", "nothing"));
    const none = readPieces([], "in");
    expect(none.ok ? "read" : sentence(none.problem)).toBe(heading("Piece", "nothing"));
    expect(refusal([["", null, 0]])).toBe("There are no pieces here. List at least one, with its length, width and count."); // prettier-ignore
  });

  it("hands on a spreadsheet error, in a column that it reads only", () => {
    const rows = (cell: Cell) =>
      readPieces(
        [
          ["Piece", "Length", "Width", "Count", "Note"],
          ["Cuff", 20, 10, 2, cell],
        ],
        "cm",
      );
    expect(rows({ error: "#REF!" })).toMatchObject({ ok: true });
    expect(readPieces([HEADINGS, ["Cuff", { error: "#DIV/0!" }, 10, null, 2]], "cm")).toMatchObject({
      problem: { code: "errorCell", details: { error: "#DIV/0!" } },
    });
  });

  it("hands on a spreadsheet error in any of its columns", () => {
    const whole = ["Cuff", 20, 10, "cm", 2, "no", "no", "Linen", 1, 2, "0 0; 10 0; 10 20; 0 20"];
    HEADINGS.forEach((_, column) => {
      const row = whole.map((cell, at): Cell => (at === column ? { error: "#REF!" } : cell));
      expect(readPieces([HEADINGS, row], "cm")).toMatchObject({ problem: { code: "errorCell", details: { error: "#REF!" } } }); // prettier-ignore
    });
  });

  it("knows a heading whatever the spaces in it, and a count of 20,000 from a date", () => {
    const headings = ["Piece", "Length", "Width", "Count", "On  fold", "Seam \n allowance"];
    expect(read([["Back", 20, 10, 20000, "yes", 1]], "cm", headings)[0]!.pieces).toEqual([
      { name: "Back", width: 11, length: 22, count: 20000, onFold: true, mayTurn: false },
    ]);
  });

  it("reads a count in text, an allowance in its own unit, and millimetres by the row's unit", () => {
    // 5/8 in = 1.5875 cm; 200 mm = 20 cm.
    expect(first([["Cuff", "200", 100, "mm", "2", null, null, null, "5/8 in", "30"]])).toEqual([
      {
        name: "Cuff",
        width: 10 + 2 * 1.5875,
        length: 20 + 3 + 1.5875,
        count: 2,
        onFold: false,
        mayTurn: false,
      },
    ]);
  });
});

describe("onTheBias", () => {
  // Geometry: a square of 10 is 10 √2 across its corners; an allowance of 1 beyond its edges adds √2 on each side.
  it("turns an outline with what is cut beyond it", () => {
    const [square] = first([["Patch", 10, 10, null, 1, null, "bias", null, 1, null, "0 0; 10 0; 10 10; 0 10"]]);
    expect(square!.width).toBeCloseTo(12 * Math.SQRT2, 9);
    expect(square!.length).toBeCloseTo(12 * Math.SQRT2, 9);
    expect(square!.mayTurn).toBe(true);
    for (const side of ["left", "right", "bottom", "top"] as const)
      expect(square!.allowance![side]).toBeCloseTo(Math.SQRT2, 9);
    const corners = [[6, 1], [11, 6], [6, 11], [1, 6]]; // prettier-ignore
    square!.outline!.forEach(({ x, y }, at) => {
      expect(x).toBeCloseTo(corners[at]![0]! * Math.SQRT2, 9);
      expect(y).toBeCloseTo(corners[at]![1]! * Math.SQRT2, 9);
    });
    expect(onTheBias({ name: "Patch", width: 10, length: 10, count: 1 })).not.toHaveProperty("allowance");
  });

  // Geometry: the deepest allowance, a hem of 3 over seams of 1, goes beyond the corners by 3 √2 on every side, whichever
  // way the edge lies; the box is 10 √2 + 2 × 3 √2 = 16 √2.
  it("leaves room for the deepest allowance all around", () => {
    const [patch] = first([["Patch", 10, 10, null, 1, null, "bias", null, 1, 3, "0 0; 10 0; 10 10; 0 10"]]);
    expect(patch!.width).toBeCloseTo(16 * Math.SQRT2, 9);
    expect(patch!.length).toBeCloseTo(16 * Math.SQRT2, 9);
    expect(patch!.allowance!.top).toBeCloseTo(3 * Math.SQRT2, 9);
    expect(Math.min(...patch!.outline!.map(({ x }) => x))).toBeCloseTo(3 * Math.SQRT2, 9);
    expect(Math.min(...patch!.outline!.map(({ y }) => y))).toBeCloseTo(3 * Math.SQRT2, 9);
  });

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
  it("reads fractions of two figures and more than one space, and passes over an empty point", () => {
    expect(points("0  0;  10 11/16   0 ; 24 15/16 12 3/16; ; ")).toEqual([[0, 0], [10.6875, 0], [24.9375, 12.1875]]); // prettier-ignore
    // 3/ and 1/2x are no fractions.
    for (const odd of ["5 3/ 2", "5 1/2x 2", "5 x1/2 2"])
      expect(points(`0 0; ${odd}; 1 1`)).toContain(`can't be read at "${odd}"`);
  });
  it("is nothing for a blank cell", () => {
    for (const blank of [null, "", " ", 0]) expect(points(blank)).toBeUndefined();
  });
  it("names the point it can't read", () => {
    const at = (text: string) =>
      `The outline of "Gore" can't be read at "${text}". Write it like 0 0; 30 0; 24 60; 0 62.`;
    expect(points("0 0; x 5; 1 1")).toBe(at("x 5"));
    expect(points("0 0; 5 x; 1 1")).toBe(at("5 x"));
    expect(points("1 2 3 4; 0 0; 1 1")).toBe(at("1 2 3 4"));
    expect(points("5")).toBe(at("5"));
    expect(points(5)).toBe(at("5"));
    expect(points("0 0 cm; 1 1; 2 2")).toBe(at("0 0 cm"));
    expect(points("0cm 0; 1 1; 2 2")).toBe(at("0cm 0"));
    expect(points("0 0cm; 1 1; 2 2")).toBe(at("0 0cm"));
    expect(points(`0 ${"9".repeat(80)}x`)).toBe(at(`0 ${"9".repeat(38)}`));
  });
  it("keeps a fraction with the whole number before it, and alone where two numbers stand", () => {
    expect(points("1/2 3/4; -1 1/2 4; 5 7⁄8 2; 0 1/2 1/4")).toEqual([[0.5, 0.75], [-1.5, 4], [5.875, 2], [0.5, 0.25]]); // prettier-ignore
    // Three points, of which the last repeats the first, are kept: without it there would be no area left to say so.
    expect(points("0 0; 1 1; 0 0")).toEqual([[0, 0], [1, 1], [0, 0]]); // prettier-ignore
    expect(points("0 0; 1 0; 1 1; 0 1")).toHaveLength(4);
    expect(points("0 0; 1 0; 1 1; 1 0")).toHaveLength(4);
  });
});
