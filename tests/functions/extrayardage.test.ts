import { describe, expect, it } from "vitest";
import { extraYardage } from "../../functions/cloth";
import { BLANK, caller, column, value } from "./call";

const call = caller("EXTRAYARDAGE", extraYardage, 7);

describe("EXTRAYARDAGE", () => {
  // Arithmetic: 2 7/8 yd = 103.5 in; + 3 × 4.25 = 116.25 in; / 0.95 = 122.368 in = 3.399 yd.
  it("adds repeats and shrinkage", async () => {
    expect(await call([2.875, "yd", 0.05, 4.25, "in", 3])).toBeCloseTo(3.399123, 6);
    expect(await call(["2 7/8 yd", "yd", "5%", "4 1/4", BLANK, 3])).toBeCloseTo(3.399123, 6);
    expect(await call([2.875, "yd", 0.05, "10.795 cm", "in", 3])).toBeCloseTo(3.399123, 6);
  });
  it("leaves out what is left out, as null and as 0", async () => {
    for (const blanks of [null, 0] as const)
      expect(await call([2, "m", BLANK, BLANK, BLANK, BLANK, BLANK], blanks)).toBe(2);
  });
  it("answers a column", async () => {
    expect(await call([column(1.9, 3.8), "m", 0.05])).toEqual(column(2, 4));
  });
  it("refuses a percentage without its sign, and a unit it doesn't know", async () => {
    expect(await call([2, "yd", 5])).toEqual(
      value("Shrinkage goes from 0 to 30%, and this is 5: write 5% for five percent."),
    );
    expect(await call([2, "ells"])).toMatchObject({ error: "#VALUE!", message: expect.stringMatching(/"ells"/) });
    expect(await call([2, BLANK])).toMatchObject({ error: "#VALUE!" });
  });
});
