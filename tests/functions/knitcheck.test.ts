import { describe, expect, test } from "vitest";
import { knitCheck } from "../../functions/ease-words";
import { BLANK, caller, column, errorCell, value } from "./call";

const KNITCHECK = caller("KNITCHECK", knitCheck, 2);

describe("KNITCHECK", () => {
  // Common practice, no source: what the pattern asks is enough.
  test("is TRUE when the cloth stretches enough, and exactly enough is enough", async () => {
    expect(await KNITCHECK([0.5, 0.25])).toBe(true);
    expect(await KNITCHECK([0.25, "25%"])).toBe(true);
    expect(await KNITCHECK(["24,5 %", 0.25])).toBe(false);
  });

  test("answers a column", async () => {
    expect(await KNITCHECK([column(0.3, "", errorCell("#DIV/0!"), 30), 0.25])).toEqual([
      [true],
      [""],
      [{ error: "#DIV/0!" }],
      [value(`"30" can't be a stretch. Write a percentage such as 25%, or 0.25.`)],
    ]);
  });

  test("wants both, and a woven cloth may stretch nothing at all", async () => {
    expect(await KNITCHECK([BLANK, 0.25])).toEqual(value("This is blank: the stretch of the cloth is needed here."));
    expect(await KNITCHECK([0, 0.25])).toBe(false);
    expect(await KNITCHECK([0, 0])).toBe(true);
  });
});
