import { describe, expect, it } from "vitest";
import { paperPieces } from "../../src/fabric/paper-pieces";
import { sentence } from "../../src/words";

const HEADINGS = ["Piece", "Length", "Width", "Unit", "Count", "On fold", "Seam allowance", "Outline"];

describe("paperPieces", () => {
  it("gives each piece as it stands, without what is added around it, in the unit of its row", () => {
    const read = paperPieces(
      [
        ["Camp shirt"],
        HEADINGS,
        ["Sleeve", "22 1/2", 14, "in", 2, "", 0.625, ""],
        [],
        ["Skirt", 62, "30 cm", "", 1, "yes", "", "0 0; 30 0; 12 62; 0 62"],
        ["Yoke", "10 cm", 6, "in", 1, "", "", "oval"],
      ],
      "cm",
    );
    if (!read.ok) throw new Error(sentence(read.problem));
    const { pieces, column } = read.value;
    expect(column).toBe(7);
    expect(pieces[0]).toEqual({
      ...{ at: 2, name: "Sleeve", width: 14, length: 22.5, unit: "in", onFold: false },
      ...{ outline: undefined, outlined: false },
    });
    expect(pieces[1]).toMatchObject({ at: 4, width: 30, length: 62, unit: "cm", onFold: true, outlined: true });
    expect(pieces[1]!.outline).toHaveLength(4);
    expect(pieces[2]).toMatchObject({ name: "Yoke", outline: undefined, outlined: true });
    // 10 cm are 3.937… in.
    expect(pieces[2]!.length).toBeCloseTo(10 / 2.54, 9);
  });
  it("leaves out what has no size, and knows a list without the column", () => {
    const rows = [["Piece", "Length", "Width", "Count"], ["Cuff", "", 10, 2], ["Band", "long", 10, 2], ["Tab", 0, 3, 1]]; // prettier-ignore
    expect(paperPieces(rows, "in")).toEqual({ ok: true, value: { pieces: [], column: -1 } });
  });
  it("leaves out rows in a unit or with a fold that can't be read, in millimetres or feet, or without a size above zero", () => {
    const rows = [
      HEADINGS,
      ["Ells", 20, 10, "ells", 1, "", "", ""],
      ["Fold", 20, 10, "cm", 1, "perhaps", "", ""],
      ["Mm", 200, 100, "mm", 1, "", "", ""],
      ["Ft", 2, 1, "ft", 1, "", "", ""],
      ["Below", -20, 10, "cm", 1, "", "", ""],
      ["Nought", 20, "0 cm", "cm", 1, "", "", ""],
      ["Narrow", 20, "", "cm", 1, "", "", ""],
      ["", 20, 10, "cm", 1, "", "", { error: "#REF!" }],
    ];
    const read = paperPieces(rows, "cm");
    expect(read.ok && read.value.pieces).toEqual([
      {
        ...{ at: 8, name: "a piece without a name", width: 10, length: 20, unit: "cm", onFold: false },
        ...{ outline: undefined, outlined: true },
      },
    ]);
  });
  it("refuses a list without its headings", () => {
    const read = paperPieces([["Cuff", 20, 10, 2]], "in");
    expect(read.ok ? "" : sentence(read.problem)).toContain('no column "Piece"');
  });
});
