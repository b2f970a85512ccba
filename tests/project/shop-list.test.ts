import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/chart/cell";
import { shopList, shopListCells, type ShopRow } from "../../src/project/shop-list";
import { sentence } from "../../src/words";

const rows = (projects: Cell[][], stash?: Cell[][]): readonly ShopRow[] => {
  const list = shopList(projects, stash);
  if (!list.ok) throw new Error(sentence(list.problem));
  return list.value;
};
const refusal = (projects: Cell[][], stash?: Cell[][]): string => {
  const list = shopList(projects, stash);
  return list.ok ? "no refusal" : sentence(list.problem);
};

const PROJECTS = ["Project", "Person", "Fabric", "Width", "Needed", "Unit", "To buy", "Price"];
const STASH = ["Piece", "Fabric", "Width", "Length", "Unit"];

/**
 * Worked by hand. The blue linen: pieces of 3 yd (54 in), 2 1/4 yd (45 in) and 4 yd (36 in, too narrow for all).
 *
 * - The gown needs 2 1/4 yd of 54 in: only the first piece is wide enough, and 3/4 yd stays.
 * - The skirt needs 3/4 yd: that rest, to the last inch; beside the shirt the second piece has only 1/4 yd left.
 * - The shirt needs 2 yd: the second piece serves it.
 * - The trousers need 2 7/8 yd, which only the first piece has. Bought they are 3 yd; gown and skirt, which would then be
 *   bought, are 2 3/8 + 3/4 = 3 1/8 yd. So the trousers are bought, although they are the largest.
 *
 * The checked cotton: 1 1/8 yd is wanted, the one piece has 1 yd.
 */
const example: Cell[][] = [
  PROJECTS,
  ["Choir gown", "Ada", "Blue linen", 54, 2.25, "yd", 2.375, 12.4],
  ["Camp shirt", "Bea", "blue  linen", 45, 2, "yd", 2, 12.4],
  ["Trousers", "Tom", "Blue linen", 45, 2.875, "yd", 3, 12.4],
  ["Wrap skirt", "Bea", "Blue linen", "44/45", 0.75, "yd", 0.75, 12.4],
  ["Pinafore", "Mia", "Checked cotton", 45, "1 1/8", "yd", 1.125, 7.99],
];
const stash: Cell[][] = [
  STASH,
  ["Wide blue", "Blue linen", 54, 3, "yd"],
  ["Short blue", "Blue linen", 45, 2.25, "yd"],
  ["Narrow blue", "Blue linen", 36, 4, "yd"],
  ["Checks left over", "Checked cotton", 45, 1, "yd"],
];

describe("shopList", () => {
  it("gives the stash as the example worked by hand does", () => {
    const list = rows(example, stash);
    expect(list.map(({ from }) => from)).toEqual(["Wide blue", "Short blue", "", "Wide blue", ""]);
    expect(list.map(({ toBuy }) => toBuy)).toEqual([0, 0, 3, 0, 1.125]);
    // 3 × 12.40 and 1.125 × 7.99 = 8.98875.
    expect(list.map(({ cost }) => cost)).toEqual([0, 0, 37.2, 0, 8.99]);
    expect(list[0]!.note).toBe(
      "Choir gown (Ada): cut 2 1/4 yd from this one piece, which also serves Wrap skirt (Bea); nothing of it is left.",
    );
    expect(list[1]!.note).toBe("Camp shirt (Bea): cut 2 yd from this one piece; 1/4 yd of it is left.");
    expect(list[2]!.note).toBe(
      "Trousers (Tom): buy 3 yd. The stash that fits is given to other projects, which leaves least to buy.",
    );
    expect(list[4]!.note).toBe(
      "Pinafore (Mia): buy 1 1/8 yd. No single stash piece of this fabric is long and wide enough, and pieces are not added together.",
    );
  });

  it("never says too little to cut, nor too much that is left", () => {
    // 2.35 m / 0.97 is 2.42268 m; 2.6 m less that is 0.17732 m.
    const [row] = rows(
      [PROJECTS, ["Blouse", "", "batiste", 115, 2.35 / 0.97, "m", 2.5, 8]],
      [STASH, ["Batiste", "batiste", 115, 2.6, "m"]],
    );
    expect(row!.note).toBe("Blouse: cut 2.43 m from this one piece; 0.17 m of it is left.");
  });

  it("keeps the projects' order, fabric, width and need as they were written", () => {
    expect(shopListCells(rows(example, stash))[3]!.slice(0, 3)).toEqual(["Blue linen", "44/45", 0.75]);
    expect(shopListCells(rows(example)).map((row) => row.length)).toEqual([7, 7, 7, 7, 7]);
  });

  it("buys everything without a stash, in whole cents", () => {
    expect(rows(example).map(({ cost }) => cost)).toEqual([29.45, 24.8, 37.2, 9.3, 8.99]);
    expect(rows(example)[0]!.note).toBe("Choir gown (Ada): buy 2 3/8 yd.");
    expect(rows(example, [["", null]])).toEqual(rows(example));
  });

  it("buys what is needed where no amount to buy is written, and gives no cost without a price", () => {
    const [row] = rows([
      ["Pattern", "Fabric", "Needed"],
      ["Skirt", "wool", "2 3/8 yd"],
    ]);
    expect(row).toEqual({
      fabric: "wool", width: "", needed: 2.375, from: "", toBuy: 2.375, cost: "", note: "Skirt: buy 2 3/8 yd. No price, so no cost.",
    }); // prettier-ignore
  });

  it("finds columns in any order, below a title, under other words for them", () => {
    const [row] = rows(
      [["My projects"], ["Price", "Length", "Cloth", "Name"], [10, "2 yd", "Linen", "Skirt"]],
      [
        ["Cloth", "Name", "Amount"],
        ["linen", "Bit", "3 yd"],
      ],
    );
    expect(row!.toBuy).toBe(2);
    expect(row!.note).toBe("Skirt: buy 2 yd. No width is written, so no stash piece was matched.");
  });

  it("compares yards with metres, and widths in inches with centimetres", () => {
    const projects = [PROJECTS, ["Shirt", "", "linen", 115, 2, "m", 2, 10]] as Cell[][];
    // 2 m is 2.187 yd.
    expect(rows(projects, [STASH, ["A", "linen", 44, 2.125, "yd"]])[0]!.from).toBe("");
    expect(rows(projects, [STASH, ["A", "linen", 44, 2.25, "yd"]])[0]!.from).toBe("A");
    expect(rows(projects, [STASH, ["A", "linen", 36, 5, "yd"]])[0]!.note).toContain("too narrow");
  });

  it("takes a bare amount for yards beside inches and for metres beside centimetres", () => {
    const bare: Cell[][] = [
      ["Project", "Fabric", "Width", "Needed"],
      ["Skirt", "linen", 45, 2],
      ["Gown", "linen", 140, 2],
    ];
    expect(rows(bare).map(({ note }) => note.slice(0, 20))).toEqual(["Skirt: buy 2 yd. No ", "Gown: buy 2 m. No pr"]);
  });

  it("puts rows that can't be counted last, each with its own error and the reason", () => {
    const list = rows(
      [
        PROJECTS,
        ["Gown", "Ada", "linen", 45, { error: "#N/A" }, "yd", "", 10],
        ["Shirt", "", "linen", 45, 2, "yd", 2, 10],
        ["Skirt", "", "linen", 45, "", "yd", "", 10],
        ["Vest", "", "linen", 45, "some", "yd", "", 10],
        ["Cape", "", "linen", 45, 45000, "yd", "", 10],
        ["", "", "", "", "", "yd", "", ""],
      ],
      [STASH, ["Odd bit", "linen", 45, "", "yd"], ["Torn", "linen", 45, -1, "yd"], ["", "", "", "", ""]],
    );
    expect(list.map(({ needed }) => needed)).toEqual([2, { error: "#N/A" }, "", "some", 45000, "", ""]);
    expect(list.map(({ toBuy }) => toBuy)).toEqual([2, "", "", "", "", "", ""]);
    expect(list.map(({ from }) => from).slice(5)).toEqual(["Odd bit", "Torn"]);
    expect(list.slice(1).map(({ note }) => note)).toEqual([
      "Gown (Ada): not counted. Needed is #N/A: put that right first.",
      "Skirt: not counted. No amount is needed yet: choose the view, the width and the size.",
      `Vest: not counted. "some" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`,
      "Cape: not counted. Excel has made a date of this (45000): type 0 7/8, or 6 to 12.",
      "Stash piece Odd bit: not counted. Its length is missing: measure the piece.",
      "Stash piece Torn: not counted. A length of fabric can't be below zero, and this is -1.",
    ]);
  });

  it("leaves out projects whose fabric is bought or cut, and pieces that are used up", () => {
    const projects: Cell[][] = [["Project", "Fabric", "Needed", "Status", "Width"]];
    for (const status of ["planned", "Cut", "finished", "", "fabric bought", "someday"])
      projects.push([status, "linen", 1, status, 45]);
    expect(rows(projects).map(({ note }) => note.split(":")[0])).toEqual(["planned", "Row 4", "someday"]);
    const gone: Cell[][] = [
      ["Piece", "Fabric", "Width", "Length", "Status"],
      ["A", "linen", 45, 9, "Used up"],
    ];
    expect(rows(projects, gone).every(({ from }) => from === "")).toBe(true);
  });

  it("says so when nothing wants fabric", () => {
    expect(rows([PROJECTS, ["", "", "", "", "", "", "", ""]])).toEqual([
      {
        fabric: "",
        width: "",
        needed: "",
        from: "",
        toBuy: "",
        cost: "",
        note: "Nothing to buy: no project wants fabric yet.",
      },
    ]);
  });

  it("tells two pieces of one name apart", () => {
    const list = rows(
      [PROJECTS, ["A", "", "linen", 45, 2, "yd"], ["B", "", "linen", 45, 2, "yd"]],
      [STASH, ["Bit", "linen", 45, 2, "yd"], ["Bit", "linen", 45, 2, "yd"]],
    );
    expect(list.map(({ from }) => from)).toEqual(["Bit", "Bit no. 2"]);
  });

  it("doesn't take a price that can't be read for none", () => {
    const list = rows([
      PROJECTS,
      ["A", "", "linen", 45, 2, "yd", 2, "dear"],
      ["B", "", "linen", 45, 2, "yd", 2, { error: "#REF!" }],
    ]);
    expect(list.map(({ cost }) => cost)).toEqual(["", ""]);
    expect(list[0]!.note).toContain(`"dear" can't be read as a price`);
    expect(list[1]!.note).toContain("#REF!");
  });

  it("gives no cost that cents can't hold, and says why", () => {
    const list = rows([
      PROJECTS,
      ["A", "", "linen", 45, 20_000, "yd", 20_000, 1e9],
      ["B", "", "linen", 45, 2, "yd", 2, "9999999999999"],
      ["C", "", "linen", 45, 1, "yd", 1, 9_999_999_999.99],
    ]);
    expect(list.map(({ cost }) => cost)).toEqual(["", "", 9_999_999_999.99]);
    expect(list[0]!.note).toBe("A: buy 20000 yd. Length times price is more than anything costs: look at both.");
    expect(list[1]!.note).toContain("can't be read as a price");
  });

  it("counts no row whose status is an error: it may be bought, or used up", () => {
    const status = { error: "#N/A" };
    const list = rows(
      [
        ["Project", "Fabric", "Needed", "Width", "Status"],
        ["A", "linen", 1, 45, status],
        ["B", "linen", 1, 45, "planned"],
      ],
      [
        ["Piece", "Fabric", "Width", "Length", "Status"],
        ["P", "linen", 45, 9, status],
      ],
    );
    expect(list.map(({ from, toBuy }) => [from, toBuy])).toEqual([["", 1], ["", ""], ["P", ""]]); // prettier-ignore
    expect(list.slice(1).map(({ note }) => note)).toEqual([
      "A: not counted. Status is #N/A: put that right first.",
      "Stash piece P: not counted. Status is #N/A: put that right first.",
    ]);
  });

  it("wants to know yards from metres where both are used", () => {
    const list = rows(
      [
        ["Project", "Fabric", "Needed", "Unit"],
        ["A", "linen", 2, "yd"],
        ["B", "linen", 2, "m"],
        ["C", "linen", 2, ""],
      ],
      [
        ["Piece", "Fabric", "Length"],
        ["P", "linen", 2],
      ],
    );
    expect(list.map(({ toBuy }) => toBuy)).toEqual([2, 2, "", ""]);
    expect(list[2]!.note).toContain("doesn't say yards or metres");
    expect(list[3]!.from).toBe("P");
  });

  it("refuses a range without headings, and one without a column it needs", () => {
    expect(refusal([["linen", 2]])).toBe(
      "No headings such as Needed, Fabric stand above the list of projects. If this is a table's name, add [#All] to it.",
    );
    expect(
      refusal([
        ["Project", "Fabric"],
        ["A", "linen"],
      ]),
    ).toBe(
      "The list of projects has no column Needed. Its headings are Project, Fabric. Give the column that heading.",
    );
    expect(
      refusal(example, [
        ["Piece", "Fabric"],
        ["A", "linen"],
      ]),
    ).toContain("The stash has no column Length");
  });

  it("says why no stash piece was matched", () => {
    const why = (project: Cell[], ...pieces: Cell[][]) =>
      rows([["Project", "Fabric", "Width", "Needed"], project], [["Piece", "Fabric", "Width", "Length"], ...pieces])[0]!
        .note;
    const wide = ["A", "linen", 54, 5];
    expect(why(["Skirt", "", 45, 2], wide)).toBe(
      "Skirt: buy 2 yd. No fabric is named, so no stash piece was matched. No price, so no cost.",
    );
    expect(why(["Skirt", "linen", "", 2], wide)).toBe(
      "Skirt: buy 2. No width is written, so no stash piece was matched. No price, so no cost.",
    );
    expect(why(["Skirt", "linen", 45, 2], ["A", "linen", "", 5])).toBe(
      "Skirt: buy 2 yd. The stash of this fabric has no width written, so it was not matched. No price, so no cost.",
    );
    expect(why(["Skirt", "linen", 54, 2], ["A", "linen", 45, 5])).toBe(
      "Skirt: buy 2 yd. The stash of this fabric is too narrow. No price, so no cost.",
    );
    expect(why(["Skirt", "linen", 54, 2], ["A", "linen", 45, 5], ["B", "linen", "", 5])).toBe(
      "Skirt: buy 2 yd. The stash of this fabric is too narrow, or has no width written. No price, so no cost.",
    );
    expect(why(["Skirt", "wool", 54, 2], wide)).toBe("Skirt: buy 2 yd. No price, so no cost.");
  });

  it("wants the amount to buy in the unit of the amount needed, and takes a bare one for that", () => {
    const list = (needed: Cell, toBuy: Cell) =>
      rows([
        ["Project", "Fabric", "Needed", "To buy", "Price"],
        ["Skirt", "linen", needed, toBuy, 10],
      ])[0]!;
    expect(list("2 yd", 2.25)).toMatchObject({ needed: 2, toBuy: 2.25, cost: 22.5, note: "Skirt: buy 2 1/4 yd." });
    expect(list("2 yd", "2.5 m").note).toBe(
      "Skirt: not counted. To buy (2.5 m) and Needed (2 yd) are not in one unit: write both in yards, or both in metres.",
    );
    expect(list(2, "2.5 m").note).toBe(
      "Skirt: not counted. To buy (2.5 m) and Needed (2) are not in one unit: write both in yards, or both in metres.",
    );
    expect(list("2 yd", "lots").note).toBe(
      `Skirt: not counted. "lots" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`,
    );
    expect(list(2, "").note).toBe("Skirt: buy 2.");
  });

  it("takes nought of cloth, with its unit or without, for an amount that is missing", () => {
    for (const nought of [0, "0 yd", "0 m"])
      expect(
        rows([PROJECTS, ["Skirt", "", "linen", 45, nought, "", "", 10]], [STASH, ["A", "linen", 45, 3, "yd"]])[0]!.note,
      ).toBe("Skirt: not counted. No amount is needed yet: choose the view, the width and the size.");
  });

  it("shows a row with a width or an error that can't be used, of projects and of the stash", () => {
    const list = rows(
      [PROJECTS, ["Skirt", "", "linen", "wide", 2, "yd", "", 10], ["Vest", "", "linen", 0, 2, "yd", "", 10]],
      [
        STASH,
        ["", "linen", "narrow", 2, "yd"],
        ["Bit", "linen", { error: "#REF!" }, 2, "yd"],
        ["", { error: "#N/A" }, 45, 2, "yd"],
      ],
    );
    expect(list.map(({ width, from, note }) => [width, from, note])).toEqual([
      ["", "", "Vest: buy 2 yd."],
      ["wide", "", `Skirt: not counted. "wide" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`],
      ["narrow", "stash row 1", `Stash piece stash row 1: not counted. "narrow" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`],
      [{ error: "#REF!" }, "Bit", "Stash piece Bit: not counted. Width is #REF!: put that right first."],
      [45, "stash row 3", "Stash piece stash row 3: not counted. Fabric is #N/A: put that right first."],
    ]); // prettier-ignore
  });

  it("takes the one unit that other rows name where neither row nor width says", () => {
    const list = rows([
      ["Project", "Fabric", "Needed", "Unit"],
      ["A", "linen", 2, "m"],
      ["B", "linen", 3, ""],
    ]);
    expect(list.map(({ note }) => note)).toEqual([
      "A: buy 2 m. No price, so no cost.",
      "B: buy 3 m. No price, so no cost.",
    ]);
  });

  it("never takes more from a piece than it has, and never buys less than the rest", () => {
    const amount = fc.integer({ min: 1, max: 40 }).map((eighths) => eighths / 8);
    const fabric = fc.constantFrom("linen", "wool");
    const width = fc.constantFrom(36, 45, 54);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fabric, width, amount), { maxLength: 7 }),
        fc.array(fc.tuple(fabric, width, amount), { maxLength: 4 }),
        (wanted, kept) => {
          const list = rows(
            [
              PROJECTS,
              ...wanted.map(([cloth, wide, needed], at): Cell[] => [`P${at}`, "", cloth, wide, needed, "yd", "", 1.01]),
            ],
            [STASH, ...kept.map(([cloth, wide, length], at): Cell[] => [`S${at}`, cloth, wide, length, "yd"])],
          );
          if (wanted.length === 0) return;
          expect(list).toHaveLength(wanted.length);
          kept.forEach(([cloth, wide, length], at) => {
            const served = list.flatMap((row, index) => (row.from === `S${at}` ? [wanted[index]!] : []));
            expect(served.every(([wish, need]) => wish === cloth && need <= wide)).toBe(true);
            expect(served.reduce((sum, [, , needed]) => sum + needed, 0)).toBeLessThanOrEqual(length);
          });
          list.forEach((row, at) => expect(row.toBuy).toBe(row.from === "" ? wanted[at]![2] : 0));
        },
      ),
    );
  });

  it("answers 300 projects and 60 pieces at once", () => {
    const projects: Cell[][] = [PROJECTS];
    for (let at = 0; at < 300; at++)
      projects.push([`P${at}`, "", `cloth ${at % 25}`, 45, 1 + (at % 13) / 8, "yd", "", 9.95]);
    const pieces: Cell[][] = [STASH];
    for (let at = 0; at < 60; at++) pieces.push([`S${at}`, `cloth ${at % 25}`, 54, 2 + (at % 17) / 8, "yd"]);
    const before = performance.now();
    expect(rows(projects, pieces)).toHaveLength(300);
    expect(performance.now() - before).toBeLessThan(1500);
  });
});
