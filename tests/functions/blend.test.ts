import { describe, expect, test } from "vitest";
import { blend } from "../../functions/fit";
import { BLANK, caller, column, errorCell, misses, notAvailable, value } from "./call";

const BLEND = caller("BLEND", blend, 7);
const body = [["Bust", 34], ["Waist", 28], ["Hip", 40], ["Back waist length", 15.75]]; // prettier-ignore

describe("BLEND", () => {
  // Common practice: 34-28-40 is 12, 14 and 16 on the misses chart; four edges share the change (from memory).
  test("spills place, size, girth, edge, length and note, without headings", async () => {
    expect(await BLEND([misses(), body, "dress"])).toEqual([
      ["bust", 12, 0, 0, "", "Sets the frame size: the closest size."],
      [
        "waist",
        14,
        1.5,
        0.375,
        "",
        "Draw the line from 12 at the bust to 14 at the waist. The closest size by the body chart.",
      ],
      ["hip", 16, 4, 1, "", "Draw the line from 14 at the waist to 16 at the hip. The closest size by the body chart."],
      ["back waist length", "", "", "", -0.5, "Shorten size 12 by 1/2 inch, where the pattern has this length."],
    ]);
  });

  test("goes by the finished measurements where they are given", async () => {
    const finished = [
      misses()[0],
      [
        "Bust",
        "in",
        ...misses()[2]!
          .slice(2)
          .map((cell) => Number(cell) + 3),
      ],
      [
        "Waist",
        "in",
        ...misses()[3]!
          .slice(2)
          .map((cell) => Number(cell) + 2),
      ],
      [
        "Hip",
        "in",
        ...misses()[4]!
          .slice(2)
          .map((cell) => Number(cell) + 4),
      ],
    ];
    const rows = (await BLEND([misses(), body, "dress", finished])) as unknown[][];
    expect(rows.map((row) => row[1])).toEqual([12, 14, 14, ""]);
  });

  test("is for one person: several are an error that names them", async () => {
    const sheet = [["Measurement", "Unit", "Ada", "Berta"], ["Bust", "in", 34, 36], ["Waist", "in", 28, 28], ["Hip", "in", 40, 38]]; // prettier-ignore
    expect(await BLEND([misses(), sheet, "dress"])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/Ada.*Berta/),
    });
    const rows = (await BLEND([misses(), sheet, "dress", BLANK, "Berta"])) as unknown[][];
    expect(rows.map((row) => row[1])).toEqual([14, 14, 14]);
    expect(await BLEND([misses(), body, column("dress", "shirt")])).toMatchObject({ error: "#VALUE!" });
  });

  test("reads centimetres on a chart in inches, and converts the changes to the chart's", async () => {
    const rows = (await BLEND([misses(), [["Bust", "86.36 cm"], ["Waist", "71.12 cm"], ["Hip", "101.6 cm"]], "dress"])) as unknown[][]; // prettier-ignore
    expect(rows.map((row) => row.slice(0, 4))).toEqual([["bust", 12, 0, 0], ["waist", 14, 1.5, 0.375], ["hip", 16, 4, 1]]); // prettier-ignore
  });

  test("is an error with a sentence when the frame can't be known", async () => {
    for (const blanks of [null, 0] as const)
      expect(await BLEND([misses(), [["Bust", BLANK], ["Hip", 40]], "shirt"], blanks)).toEqual(
        value("The bust isn't measured, and this garment is cut by it: fill it in."),
      ); // prettier-ignore
    expect(await BLEND([misses(), [["Bust", 60]], "shirt"])).toEqual(
      notAvailable("60 in at the bust is 14 in above this chart, which ends at size 24 (46 in)."),
    );
    expect(await BLEND([misses(), [["Bust", errorCell("#REF!")]], "shirt"])).toEqual({ error: "#REF!" });
    expect(await BLEND([misses(), body, "tent"])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/^"tent" is not a garment/),
    });
  });
});
