import { describe, expect, test } from "vitest";
import { hasDetails } from "../../functions/tracker";
import { BLANK, errorCell, startFunctions, type Answer } from "../practice/custom-functions";

const runtime = startFunctions();
runtime.associate("HASDETAILS", hasDetails);
const call = (args: readonly unknown[], blanks: null | 0 = null): Promise<Answer> =>
  runtime.call("HASDETAILS", args, { blanks, parameters: 3 });

describe("HASDETAILS", () => {
  test("says TRUE or FALSE in one cell", async () => {
    expect(await call([[["Fitted, patch pockets"]], [["pockets"]]])).toBe(true);
    expect(await call([[["Fitted, patch pockets"]], [["collar"]]])).toBe(false);
    expect(await call([[["semi-fitted"]], [["fitted"]]])).toBe(false);
  });

  test("wants one of several, or all of them when told so", async () => {
    expect(await call([[["fitted\ncollar"]], [["collar; pockets"]]])).toBe(true);
    for (const all of [true, 1, "yes"])
      expect(await call([[["fitted\ncollar"]], [["collar; pockets"]], [[all]]])).toBe(false);
    for (const all of [false, 0, BLANK, "no"])
      expect(await call([[["fitted\ncollar"]], [["collar; pockets"]], [[all]]])).toBe(true);
  });

  test("answers a column, with nothing where no details are written and errors in their own place", async () => {
    const details = [["fitted, collar"], [BLANK], [errorCell("#REF!")], ["loose"]];
    for (const blanks of [null, 0] as const)
      expect(await call([details, [["collar"]]], blanks)).toEqual([[true], [""], [{ error: "#REF!" }], [false]]);
  });

  test("is an error when a cell alone is blank, and when TRUE or FALSE can't be read", async () => {
    expect(await call([[[BLANK]], [["collar"]]])).toEqual({
      error: "#VALUE!",
      message: "This is blank: a list of design details is needed here.",
    });
    expect(await call([[["collar"]], [[BLANK]]], 0)).toMatchObject({ error: "#VALUE!" });
    expect(await call([[["collar"]], [["collar"]], [["perhaps"]]])).toMatchObject({ error: "#VALUE!" });
  });

  test("reads a number as a detail", async () => {
    expect(await call([[[1940]], [["1940"]]])).toBe(true);
  });
});
