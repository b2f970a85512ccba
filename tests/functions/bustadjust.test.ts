import { describe, expect, test } from "vitest";
import { bustAdjust } from "../../functions/bust";
import { BLANK, caller, errorCell, misses, notAvailable, value } from "./call";

const BUSTADJUST = caller("BUSTADJUST", bustAdjust, 7);

describe("BUSTADJUST", () => {
  // Common practice on the misses chart; a worked example of a teaching page has high bust 34, bust 38: 2 in, cup D (read).
  test("spills size, the pattern's bust, the adjustment, its half, the pattern cup and a note", async () => {
    const note =
      "The high bust decides. Read in the chart's high bust row, closest size. Full-bust adjustment: add 1 inch on the half front piece.";
    expect(await BUSTADJUST([misses(), 40, 36])).toEqual([[16, 38, 2, 1, "D", note]]);
    expect(await BUSTADJUST([misses(), 38, 34])).toEqual([[14, 36, 2, 1, "D", note]]);
  });

  test("is negative for a small bust", async () => {
    expect(await BUSTADJUST([misses(), 37, 36])).toEqual([
      [16, 38, -1, -0.5, "A", expect.stringMatching(/Small-bust/)],
    ]);
  });

  // Both ways of reading the high bust are in print (read); the sizes they give here are our own working.
  test("reads the high bust in the row that is asked for", async () => {
    const size = async (...args: unknown[]) => ((await BUSTADJUST([misses(), 36, 32, ...args])) as unknown[][])[0]![0];
    expect(await size()).toBe(12);
    expect(await size(0, "bust")).toBe(10);
    expect(await size(BLANK, "High bust")).toBe(12);
    expect(await BUSTADJUST([misses(), 36, 32, BLANK, "hip"])).toEqual(
      value(`"hip" is not a row for the high bust. Write highbust or bust.`),
    );
  });

  test("lets the high bust decide from the threshold upward", async () => {
    const row = async (bust: number, threshold: unknown) =>
      ((await BUSTADJUST([misses(), bust, 36, BLANK, BLANK, threshold])) as unknown[][])[0]!;
    expect(await row(39, 3)).toEqual([
      16,
      38,
      1,
      0.5,
      "C",
      expect.stringMatching(/^The high bust decides, from 3 in difference\./),
    ]);
    expect((await row(38.9, "3 in")).slice(0, 4)).toEqual([16, 38, 0, 0]);
    expect((await row(38.9, "7.62 cm")).slice(0, 4)).toEqual([16, 38, 0, 0]);
  });

  test("reads measures with their own unit and as text", async () => {
    expect(((await BUSTADJUST([misses(), "101,6 cm", "91.44 cm"])) as unknown[][])[0]!.slice(0, 4)).toEqual([
      16,
      38,
      expect.closeTo(2, 9),
      expect.closeTo(1, 9),
    ]);
    expect(await BUSTADJUST([misses(), 102, 91])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringContaining("cm against inches?"),
    });
  });

  test("guesses nothing when a measure is missing", async () => {
    for (const blanks of [null, 0] as const)
      expect(await BUSTADJUST([misses(), 40, BLANK], blanks)).toEqual(
        value("This is blank: the high bust is needed here."),
      );
    expect(await BUSTADJUST([misses(), BLANK, 36])).toEqual(value("This is blank: the bust is needed here."));
    expect(await BUSTADJUST([misses(), errorCell("#N/A"), 36])).toEqual({ error: "#N/A" });
  });

  test("says how far the high bust is off the chart", async () => {
    expect(await BUSTADJUST([misses(), 52, 50])).toEqual(
      notAvailable("50 in at the high bust is 6 in above this chart, which ends at size 24 (44 in)."),
    );
  });

  test("is for one body", async () => {
    expect(await BUSTADJUST([misses(), [[40], [38]], [[36], [34]]])).toMatchObject({ error: "#VALUE!" });
  });
});
