import { describe, expect, test } from "vitest";
import { ease } from "../../functions/size";
import { BLANK, caller, column, errorCell, value } from "./call";

const EASE = caller("EASE", ease, 2);

describe("EASE", () => {
  // Arithmetic: total ease = finished − body.
  test("is the finished garment less the body", async () => {
    expect(await EASE([38, 34])).toBe(4);
    expect(await EASE(["38 1/2", 34.25])).toBe(4.25);
  });
  test("is below zero where the garment is smaller, and free of binary dust", async () => {
    expect(await EASE([32, 34])).toBe(-2);
    expect(await EASE([96.4, 92.1])).toBe(4.3);
    expect(await EASE([34, 34])).toBe(0);
  });
  test("compares units, and takes a bare number in the other's", async () => {
    expect(await EASE(["38 in", "86.36 cm"])).toBe(4);
    expect(await EASE(["96 cm", 92])).toBe(4);
    expect(await EASE([96, "92 cm"])).toBe(4);
  });
  test("asks about centimetres against inches, unless the units are written", async () => {
    expect(await EASE([96, 34])).toEqual(
      value("96 finished against 34 of the body: cm against inches? Write the unit beside the figure."),
    );
    expect(await EASE([38, 92])).toMatchObject({ error: "#VALUE!" });
    expect(await EASE(["96 in", "38 in"])).toBe(58);
  });
  test("needs both", async () => {
    for (const blanks of [null, 0] as const) {
      expect(await EASE([BLANK, 34], blanks)).toEqual(value("This is blank: a finished measurement is needed here."));
      expect(await EASE([38, BLANK], blanks)).toEqual(value("This is blank: a body measurement is needed here."));
    }
    expect(await EASE([38, -34])).toEqual(value("A body measurement can't be below zero, and this is -34."));
    expect(await EASE([38, "wide"])).toMatchObject({ error: "#VALUE!" });
  });
  test("answers two columns, each element for itself", async () => {
    expect(await EASE([column(38, BLANK, 40, errorCell("#N/A")), column(34, 36, "x", 1)])).toEqual([
      [4],
      [""],
      [value('"x" can\'t be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.')],
      [{ error: "#N/A" }],
    ]);
    expect(await EASE([column(38, 40), 34])).toEqual([[4], [6]]);
  });
});
