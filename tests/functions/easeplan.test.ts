import { describe, expect, test } from "vitest";
import { easePlan } from "../../functions/fit";
import { BLANK, caller, errorCell, misses, value } from "./call";

const EASEPLAN = caller("EASEPLAN", easePlan, 7);
const finished = [
  misses()[0],
  [
    "Bust",
    "in",
    ...misses()[2]!
      .slice(2)
      .map((cell) => Number(cell) + 3),
  ],
];

describe("EASEPLAN", () => {
  // By hand: bust 34 is size 12; finished is the chart's bust and 3 in.
  test("spills size, place, ease, word, enough or tight, and a note", async () => {
    const rows = (await EASEPLAN([misses(), [["Bust", 34]], "shirt", finished])) as unknown[][];
    expect(rows.map((row) => row.slice(0, 5))).toEqual([
      [8, "bust", 0.5, "close-fitting", "tight"],
      [10, "bust", 1.5, "close-fitting", "tight"],
      [12, "bust", 3, "fitted", "enough"],
      [14, "bust", 5, "semi-fitted", "enough"],
      [16, "bust", 7, "loose-fitting", "enough"],
    ]);
    expect(rows[2]![5]).toBe("Frame size. 2 1/2 inches to move, 1/2 inch by design; least ease 2 1/2 inches, ours.");
  });

  test("wants finished measurements, and some that can be compared", async () => {
    for (const blanks of [null, 0] as const)
      expect(await EASEPLAN([misses(), [["Bust", 34]], "shirt", BLANK], blanks)).toEqual(
        value("This is blank: a table of finished garment measurements is needed here."),
      );
    const sleeves = [misses()[0], ["Sleeve length", "in", ...misses()[2]!.slice(2)]];
    expect(await EASEPLAN([misses(), [["Bust", 34]], "shirt", sleeves])).toMatchObject({
      error: "#N/A",
      message: expect.stringMatching(/no place in common/),
    });
  });

  test("hands on an error cell and refuses several people", async () => {
    expect(await EASEPLAN([misses(), [["Bust", errorCell("#DIV/0!")]], "shirt", finished])).toEqual({
      error: "#DIV/0!",
    });
    expect(await EASEPLAN([misses(), [["Measurement", "Ada", "Berta"], ["Bust", 34, 36]], "shirt", finished])).toMatchObject({ error: "#VALUE!" }); // prettier-ignore
  });
});
