import { describe, expect, it } from "vitest";
import { layoutLength } from "../../functions/layout";
import { BLANK, caller, errorCell, value } from "./call";

const call = caller("LAYOUTLENGTH", layoutLength, 6);
const HEADINGS = ["Piece", "Length", "Width", "Unit", "Count"];
const cuffs = [HEADINGS, ["Cuff", 20, 10, "in", 2]];

describe("LAYOUTLENGTH", () => {
  // By hand: 10 + 10 in side by side on 45 in take 20 in = 5/9 yd; the same cuffs take 50.8 cm.
  it("gives the length of a list in yards or metres", async () => {
    expect(await call([cuffs, 45, "yd"])).toBeCloseTo(20 / 36, 9);
    expect(await call([cuffs, 115, "m"])).toBeCloseTo(0.508, 9);
    expect(await call([cuffs, "45 in", "m", "single"])).toBeCloseTo(0.508, 9);
  });

  // By hand: on folded 112 cm cloth 26 + 31 cm don't fit side by side: 68 + 70 cm.
  it("needs two lengths where front and back don't fit side by side", async () => {
    const trousers = [HEADINGS, ["Front", 68, 26, "cm", 2], ["Back", 70, 31, "cm", 2]];
    expect(await call([trousers, 112, "m", "folded"])).toBeCloseTo(1.38, 9);
    expect(await call([trousers, 112, "m", "Folded", BLANK, BLANK])).toBeCloseTo(1.38, 9);
  });

  it("gives a row for each fabric, its name first", async () => {
    const list = [
      [...HEADINGS, "Fabric"],
      ["Front", 36, 20, "in", 2, "linen"],
      ["Yoke", 18, 20, "in", 1, "print"],
      ["Pocket", 9, 8, "in", 1, ""],
    ];
    expect(await call([list, 45, "yd"])).toEqual([
      ["linen", 1],
      ["print", 0.5],
      ["(no fabric named)", 0.25],
    ]);
  });

  it("starts pieces on the repeat and keeps the gap", async () => {
    const list = [HEADINGS, ["Front", 30, 40, "in", 2]];
    expect(await call([list, 45, "yd", "single", 16])).toBeCloseTo(62 / 36, 9);
    expect(await call([list, 45, "yd", "single", BLANK, 1])).toBeCloseTo(61 / 36, 9);
    expect(await call([list, 45, "yd", "single", "40.64 cm"])).toBeCloseTo(62 / 36, 3);
  });

  it("takes blank cells as blank, as null and as 0", async () => {
    const list = [
      [...HEADINGS, "On fold"],
      ["Cuff", 20, 10, "in", 2, BLANK],
      [BLANK, BLANK, BLANK, BLANK, BLANK, BLANK],
    ];
    for (const blanks of [null, 0] as const) expect(await call([list, 45, "yd"], blanks)).toBeCloseTo(20 / 36, 9);
  });

  it("says what is wrong, and with which piece", async () => {
    const cape = [HEADINGS, ["Cape", 30, 50, "in", 1]];
    expect(await call([cape, 45, "yd"])).toEqual(
      value(
        `"Cape" is 50 in wide and the fabric 45 in: 5 in too wide. Use a wider fabric, or cut the piece in two with a seam.`,
      ),
    );
    expect(await call([cuffs, 45, "yd", "double"])).toEqual(
      value(`"double" is not a layout known here. Write single or folded.`),
    );
    expect(await call([cuffs, 45, BLANK])).toEqual(value("This is blank: the unit, yd or m, is needed here."));
    expect(await call([cuffs, 0, "yd"])).toMatchObject({ error: "#VALUE!" });
    expect(await call([[["Cuff", 20, 10]], 45, "yd"])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/no column/),
    });
    expect(await call([[HEADINGS, ["Cuff", errorCell("#DIV/0!"), 10, "in", 2]], 45, "yd"])).toMatchObject({
      error: "#DIV/0!",
    });
    expect(await call([cuffs, 45, "yd", "single", -3])).toMatchObject({ error: "#VALUE!" });
  });

  it("answers the same layout again at once", async () => {
    const list = [
      HEADINGS,
      ...Array.from({ length: 40 }, (_, i) => [`Piece ${i}`, 11 + (i % 9), 7 + (i % 8), "in", 1]),
    ];
    const begin = performance.now();
    const first = await call([list, 45, "yd"]);
    const from = performance.now();
    for (let i = 0; i < 10; i++) expect(await call([list, 45, "yd"])).toBe(first);
    // A remembered layout takes about a thirtieth of a search; looked for anew each time, ten would take ten times as long.
    expect(performance.now() - from).toBeLessThan(5 * (from - begin));
  });
});
