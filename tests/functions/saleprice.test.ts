import { describe, expect, test } from "vitest";
import { salePrice } from "../../functions/tracker";
import { BLANK, errorCell, startFunctions, type Answer } from "../practice/custom-functions";

const runtime = startFunctions();
runtime.associate("SALEPRICE", salePrice);
const call = (args: readonly unknown[], blanks: null | 0 = null): Promise<Answer> =>
  runtime.call("SALEPRICE", args, { blanks, parameters: 3 });
const column = (...cells: readonly unknown[]): unknown[][] => cells.map((cell) => [cell]);

describe("SALEPRICE", () => {
  // By hand: 12.95 less 40 % is 7.77.
  test("gives the lower of the two, in one cell", async () => {
    expect(await call([[[12.95]], [[0.4]], [[8]]])).toBe(7.77);
    expect(await call([[[12.95]], [[0.4]], [[7.5]]])).toBe(7.5);
    expect(await call([[[12.95]]])).toBe(12.95);
    expect(await call([[["12,95 €"]], [["40%"]]])).toBe(7.77);
  });

  test("takes empty cells for no offer, whatever they arrive as", async () => {
    for (const blanks of [null, 0] as const) expect(await call([[[12.95]], [[BLANK]], [[BLANK]]], blanks)).toBe(12.95);
    expect(await call([[[12.95]], [[""]], [[""]]])).toBe(12.95);
  });

  test("says to write 40% for 40", async () => {
    expect(await call([[[12.95]], [[40]]])).toEqual({
      error: "#VALUE!",
      message: "40 would be more than the whole price off: write 40%.",
    });
  });

  test("is an error when the price is blank, alone", async () => {
    expect(await call([[[BLANK]]])).toEqual({ error: "#VALUE!", message: "This is blank: a price is needed here." });
    expect(await call([[[""]]])).toMatchObject({ error: "#VALUE!" });
  });

  test("answers a column, each element for itself", async () => {
    const prices = column(10, BLANK, "dear", errorCell("#DIV/0!"), 19.99);
    expect(await call([prices, [[0.5]]])).toEqual([
      [5],
      [""],
      [{ error: "#VALUE!", message: `"dear" can't be read as a price. Write it like 12.95.` }],
      [{ error: "#DIV/0!" }],
      [10],
    ]);
    expect(await call([column(10, 20), column(0.1, 25), column(BLANK, 3)])).toEqual([
      [9],
      [{ error: "#VALUE!", message: "25 would be more than the whole price off: write 25%." }],
    ]);
  });

  test("wants ranges of one shape", async () => {
    expect(await call([column(1, 2), column(0.1, 0.2, 0.3)])).toMatchObject({ error: "#VALUE!" });
  });
});
