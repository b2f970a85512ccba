import { describe, expect, test } from "vitest";
import { cutNote } from "../../functions/fit";
import { BLANK, caller, column, errorCell, indexHeadings, misses, notAvailable, value } from "./call";

const CUTNOTE = caller("CUTNOTE", cutNote, 7);
const BETWEEN = "Between two sizes the closest is taken, and of two as close the larger.";

describe("CUTNOTE", () => {
  // Common practice: 34-28-40 is 12, 14 and 16 on the misses chart.
  test("says why that size, what isn't known, and that a blend fits better", async () => {
    const body = [["Bust", 34], ["Waist", 28], ["Hip", 40]]; // prettier-ignore
    expect(await CUTNOTE([misses(), body, "shirt"])).toBe(
      `Cut size 12, by the bust. Without finished measurements the ease isn't checked. The waist and the hip are not checked. ${BETWEEN}`,
    );
    expect(await CUTNOTE([misses(), body, "dress"])).toMatch(
      /^A blend fits better: 12 at the bust, 14 at the waist and 16 at the hip\. In one piece cut size 16: /,
    );
  });

  test("answers a column for many bodies, blank rows blank and errors in their place", async () => {
    const people = [
      ["Bust", "Waist", "Hip"],
      [34, 28, 36],
      [BLANK, BLANK, BLANK],
      [errorCell("#N/A"), 28, 36],
      [60, 50, 60],
    ];
    for (const blanks of [null, 0] as const)
      expect(await CUTNOTE([misses(), people, "top"], blanks)).toEqual([
        [expect.stringMatching(/^Cut size 12, by the bust\./)],
        [""],
        [{ error: "#N/A" }],
        [notAvailable("60 in at the bust is 14 in above this chart, which ends at size 24 (46 in).")],
      ]);
  });

  test("answers for a column of garments", async () => {
    const notes = await CUTNOTE([misses(), [["Bust", 34], ["Hip", 40]], column("top", "skirt")]); // prettier-ignore
    expect(notes).toEqual([
      [expect.stringMatching(/^Cut size 12/)],
      [expect.stringMatching(/^Cut size 16, by the hip/)],
    ]);
  });

  test("says which of two body tables of a pattern answered", async () => {
    const table = (sizes: readonly string[], bust: readonly number[]) =>
      ["bust", "hip"].flatMap((place) =>
        sizes.map((size, at) => ["Camp shirt", "body", "in", "", "", "", "", "", place, size, bust[at]!, bust[at]!]),
      );
    const index = [
      indexHeadings,
      ...table(["10", "12", "14"], [32.5, 34, 36]),
      ...table(["18W", "20W", "22W"], [40, 42, 44]),
    ];
    expect(await CUTNOTE([index, [["Bust", 42]], "shirt", BLANK, BLANK, "Camp shirt"])).toMatch(
      /^Cut size 20W, by the bust\..* This pattern has 2 body tables; this is from the table 18W, 20W, 22W\. Nothing tells the figure types apart/,
    );
  });

  test("is an error with the sentence when there is no size", async () => {
    expect(await CUTNOTE([misses(), [["Bust", 34]], "dress"])).toEqual(
      value("The waist isn't measured, and this garment is cut by it: fill it in."),
    );
    expect(await CUTNOTE([misses(), [["Bust", 34]], BLANK], 0)).toMatchObject({ error: "#VALUE!" });
  });
});
