import { describe, expect, test } from "vitest";
import { shopList } from "../../functions/tracker";
import { BLANK, errorCell, startFunctions, type Answer } from "../practice/custom-functions";

const runtime = startFunctions();
runtime.associate("SHOPLIST", shopList);
const call = (args: readonly unknown[], blanks: null | 0 = null): Promise<Answer> =>
  runtime.call("SHOPLIST", args, { blanks, parameters: 2 });

const PROJECTS = [
  ["Project", "Fabric", "Width", "Needed", "Unit", "To buy", "Price"],
  ["Skirt", "Navy twill", 60, 2.25, "yd", 2.25, 11.4],
  ["Gown", "Wine crepe", 150, errorCell("#N/A"), "m", errorCell("#N/A"), 9.8],
  ["Shirt", "Linen", 45, 2.4, "yd", 2.5, 16.9],
  [BLANK, BLANK, BLANK, BLANK, BLANK, BLANK, BLANK],
];
const STASH = [
  ["Piece", "Fabric", "Width", "Length", "Unit"],
  ["Navy piece", "navy twill", 60, 2.5, "yd"],
  [BLANK, BLANK, BLANK, BLANK, BLANK],
];

describe("SHOPLIST", () => {
  // By hand: 2.5 yd at 16.90 is 42.25; 2 1/2 yd less 2 1/4 yd leaves 1/4 yd.
  test("spills a line for each project, faulty rows last with the error in its own cell", async () => {
    for (const blanks of [null, 0] as const)
      expect(await call([PROJECTS, STASH], blanks)).toEqual([
        ["Navy twill", 60, 2.25, "Navy piece", 0, 0, "Skirt: cut 2 1/4 yd from this one piece; 1/4 yd of it is left."],
        ["Linen", 45, 2.4, "", 2.5, 42.25, "Shirt: buy 2 1/2 yd."],
        ["Wine crepe", 150, { error: "#N/A" }, "", "", "", "Gown: not counted. Needed is #N/A: put that right first."],
      ]);
  });

  test("does without a stash", async () => {
    const list = (await call([PROJECTS])) as unknown[][];
    expect(list.map((row) => row[4])).toEqual([2.25, 2.5, ""]);
    expect(await call([PROJECTS, [[BLANK]]], 0)).toEqual(list);
  });

  test("says what to do about a table's bare name and a missing column", async () => {
    expect(await call([PROJECTS.slice(1, 3)])).toEqual({
      error: "#VALUE!",
      message:
        "No headings such as Needed, Fabric stand above the list of projects. If this is a table's name, add [#All] to it.",
    });
    expect(
      await call([
        PROJECTS,
        [
          ["Piece", "Fabric"],
          ["a", "b"],
        ],
      ]),
    ).toMatchObject({ error: "#VALUE!" });
  });

  test("says so when there is nothing to buy", async () => {
    expect(await call([[PROJECTS[0], PROJECTS[4]]])).toEqual([
      ["", "", "", "", "", "", "Nothing to buy: no project wants fabric yet."],
    ]);
  });
});
