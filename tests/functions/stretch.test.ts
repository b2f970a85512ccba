import { describe, expect, test } from "vitest";
import { stretch } from "../../functions/ease-words";
import { BLANK, caller, column, errorCell, value } from "./call";

const STRETCH = caller("STRETCH", stretch, 2);

describe("STRETCH", () => {
  // Worked examples of sewing-education pages (read).
  test("gives the stretch as a fraction", async () => {
    expect(await STRETCH([4, 5])).toBe(0.25);
    expect(await STRETCH([4, 10])).toBe(1.5);
    expect(await STRETCH(["10 cm", "15 cm"])).toBe(0.5);
    expect(await STRETCH(["4 in", "12,7 cm"])).toBeCloseTo(0.25, 12);
  });

  test("answers a column", async () => {
    const stretched = column(13, BLANK, 9, errorCell("#N/A"), "wide");
    for (const blanks of [null, 0] as const)
      expect(await STRETCH([10, stretched], blanks)).toEqual([
        [0.3],
        [""],
        [value("The stretched length (9) is shorter than the length at rest (10). Give the length at rest first.")],
        [{ error: "#N/A" }],
        [expect.objectContaining({ error: "#VALUE!" })],
      ]);
  });

  test("wants both lengths", async () => {
    for (const blanks of [null, 0] as const) {
      expect(await STRETCH([BLANK, 5], blanks)).toEqual(value("This is blank: the length at rest is needed here."));
      expect(await STRETCH([4, BLANK], blanks)).toEqual(value("This is blank: the stretched length is needed here."));
    }
    expect(await STRETCH([-4, 5])).toMatchObject({ error: "#VALUE!" });
  });
});
