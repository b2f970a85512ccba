import { describe, expect, it } from "vitest";
import { layoutPlan } from "../../functions/layout";
import { BLANK, caller, value } from "./call";

const call = caller("LAYOUTPLAN", layoutPlan, 6);
const HEADINGS = ["Piece", "Length", "Width", "Unit", "Count", "On fold"];

describe("LAYOUTPLAN", () => {
  // By hand: the back's fold edge at 0, the front beside it, both from the beginning of the cloth.
  it("lists where each piece lies, with notes", async () => {
    const list = [HEADINGS, ["Back", 40, 11, "in", 1, "yes"], ["Front", 40, 11, "in", 2, BLANK]];
    expect(await call([list, 45, "yd", "folded"])).toEqual([
      [
        "Back",
        "folded",
        0,
        0,
        11,
        40,
        "",
        expect.stringMatching(/^By boxes: 1\.11 yd of fabric, the least that is possible by boxes\. On the fold\.$/),
      ],
      ["Front", "folded", 11, 0, 11, 40, "", "Through both layers."],
    ]);
  });

  it("says when a second layer is left over, and what lies on the opened cloth", async () => {
    const list = [HEADINGS, ["Pocket", 20, 20, "in", 1, BLANK], ["Skirt", 30, 40, "in", 1, BLANK]];
    const rows = (await call([list, 45, "yd", "folded"])) as string[][];
    expect(rows.map((row) => [row[0], row[1]]).sort()).toEqual([
      ["Pocket", expect.any(String)],
      ["Skirt", "single"],
    ]);
    expect(rows.map((row) => row[7]).join(" ")).toMatch(/On the opened fabric/);
  });

  it("names the fabric in every note when there are several", async () => {
    const list = [
      [...HEADINGS, "Fabric"],
      ["Front", 36, 20, "in", 1, BLANK, "linen"],
      ["Yoke", 18, 20, "in", 1, BLANK, "print"],
    ];
    const rows = (await call([list, 45, "yd"])) as string[][];
    expect(rows.map((row) => row[7]!.split(":")[0])).toEqual(["linen", "print"]);
  });

  it("lies in centimetres with metres, whatever the pieces are in", async () => {
    const rows = (await call([[HEADINGS, ["Cuff", 20, 10, "in", 1, BLANK]], 115, "m"])) as unknown[][];
    expect(rows[0]!.slice(0, 6)).toEqual(["Cuff", "single", 0, 0, 25.4, 50.8]);
  });

  it("refuses what LAYOUTLENGTH refuses", async () => {
    expect(await call([[HEADINGS, ["Cape", 30, 50, "in", 1, BLANK]], 45, "yd"])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/"Cape" is 50 in wide/),
    });
    expect(await call([[HEADINGS], 45, "yd"])).toEqual(
      value("There are no pieces here. List at least one, with its length, width and count."),
    );
  });
});
