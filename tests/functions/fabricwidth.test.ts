import { describe, expect, it } from "vitest";
import { fabricWidth } from "../../functions/cloth";
import { BLANK, caller, column, errorCell, value } from "./call";

const call = caller("FABRICWIDTH", fabricWidth, 5);

describe("FABRICWIDTH", () => {
  // Source: worked examples printed with the conversion chart.
  it("gives the printed chart's figure", async () => {
    expect(await call([2, 60, 45, 0.125])).toBe(2.75);
    expect(await call([1.375, 54, 36, 0.125])).toBe(2);
    expect(await call([2.875, 54, 60, 0.125])).toBe(2.75);
  });
  it("reads widths and lengths as they are written", async () => {
    expect(await call(["2 yd", '58/60"', "45 in", "1/8"])).toBe(2.75);
    expect(await call([2, "150 cm", "115 cm", 0.1, "m"])).toBe(2.7);
  });
  it("answers a column, with errors in their own cells", async () => {
    expect(await call([column(2, BLANK, "wide", errorCell("#N/A"), 1.375), 54, 36])).toEqual(
      column(expect.any(Number), "", expect.objectContaining({ error: "#VALUE!" }), { error: "#N/A" }, 2),
    );
  });
  it("takes a blank width as missing, as null and as 0, and refuses a negative length", async () => {
    for (const blanks of [null, 0] as const)
      expect(await call([2, BLANK, 45], blanks)).toMatchObject({ error: "#VALUE!" });
    expect(await call([-2, 60, 45])).toMatchObject(value("A length of fabric can't be below zero, and this is -2."));
  });
});
