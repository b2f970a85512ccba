import { describe, expect, test } from "vitest";
import { sizeByPlace } from "../../functions/size";
import { BLANK, caller, errorCell, misses, notAvailable, value } from "./call";

const SIZEBYPLACE = caller("SIZEBYPLACE", sizeByPlace, 4);
const CLOSEST = "The closest size; a tie goes to the larger.";

describe("SIZEBYPLACE", () => {
  const ada = [
    ["Bust", 34],
    ["Waist", 28],
    ["Hip", 40],
  ];
  // 34-28-40 on the misses chart (tests/figures) is 12 at the bust, 14 at the waist, 16 at the hip.
  test("compares a body place by place, in the chart's order", async () => {
    expect(await SIZEBYPLACE([misses(), ada])).toEqual([
      ["High bust", "", "", "", "", "Not measured."],
      ["Bust", 34, 12, 34, 0, CLOSEST],
      ["Waist", 28, 14, 28, 0, CLOSEST],
      ["Hip", 40, 16, 40, 0, CLOSEST],
      ["Back waist length", "", "", "", "", "Not measured."],
    ]);
  });
  test("gives differences signed, text with units in the chart's unit, what the chart lacks at the end", async () => {
    const body = [
      ["Measurement", "Unit", "Ada"],
      ["Thigh", "in", 22],
      ["Hip", "in", 39.5],
      ["Bust", "in", "86.36 cm"],
    ];
    expect(await SIZEBYPLACE([misses(), body])).toEqual([
      ["High bust", "", "", "", "", "Not measured."],
      ["Bust", 34, 12, 34, 0, CLOSEST],
      ["Waist", "", "", "", "", "Not measured."],
      ["Hip", 39.5, 16, 40, -0.5, CLOSEST],
      ["Back waist length", "", "", "", "", "Not measured."],
      ["Thigh", 22, "", "", "", "Not on this chart."],
    ]);
  });
  test("reads places across and a person a row, and picks by heading", async () => {
    const people = [
      ["Name", "Bust", "Waist", "Hip"],
      ["Ada", 34, 28, 40],
      ["Cleo", 38, BLANK, 42],
    ];
    for (const blanks of [null, 0] as const)
      expect(await SIZEBYPLACE([misses(), people, "cleo"], blanks)).toEqual([
        ["High bust", "", "", "", "", "Not measured."],
        ["Bust", 38, 16, 38, 0, CLOSEST],
        ["Waist", "", "", "", "", "Not measured."],
        ["Hip", 42, 18, 42, 0, CLOSEST],
        ["Back waist length", "", "", "", "", "Not measured."],
      ]);
  });
  test("says why a place has no size, and goes on", async () => {
    const body = [
      ["Bust", 60],
      ["Waist", errorCell("#REF!")],
      ["Hip", "wide"],
    ];
    const rows = (await SIZEBYPLACE([misses(), body])) as unknown[][];
    expect(rows[1]).toEqual([
      "Bust", 60, "", "", "", "60 in at the bust is 14 in above this chart, which ends at size 24 (46 in).",
    ]); // prettier-ignore
    expect(rows[2]).toEqual([
      "Waist", { error: "#REF!" }, "", "", "", "A cell that is needed here holds #REF!: put that right first.",
    ]); // prettier-ignore
    const unreadable = '"wide" can\'t be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.';
    expect(rows[3]).toEqual(["Hip", value(unreadable), "", "", "", unreadable]);
  });
  test("names the rule beyond the chart and for printed ranges", async () => {
    expect(((await SIZEBYPLACE([misses(), [["Bust", 46.5]]])) as unknown[][])[1]).toEqual([
      "Bust", 46.5, 24, 46, 0.5, "The closest size; the measure is 1/2 in above the largest size.",
    ]); // prettier-ignore
    const ranges = [
      ["Size", "S", "M"],
      ["Chest", "34-36", "38-40"],
    ];
    expect(await SIZEBYPLACE([ranges, [["Chest", 35]]])).toEqual([
      ["Chest", 35, "S", "34 to 36", 0, "The size whose printed range holds the measure."],
    ]);
    expect(await SIZEBYPLACE([ranges, [["Chest", 37]]])).toEqual([
      ["Chest", 37, "M", "38 to 40", -1, "Between two printed ranges: the larger size."],
    ]);
  });
  test("wants one person, and names those there are", async () => {
    const people = [
      ["Measurement", "Ada", "Ben", "Where"],
      ["Bust", 34, 40, "full"],
      ["Hip", 40, 42, "fullest part"],
    ];
    expect(await SIZEBYPLACE([misses(), people])).toEqual(
      value("This range holds more than one person (Ada, Ben): say which, as the person."),
    );
    expect(await SIZEBYPLACE([misses(), people, "Dora"])).toEqual(
      notAvailable('"Dora" is not among the people measured here (Ada, Ben).'),
    );
    expect(await SIZEBYPLACE([misses(), people, [["Ada", "Ben"]]])).toEqual(
      value("The person must be one cell here, and this is a range: choose one cell."),
    );
  });
  test("says what it found where no place stands", async () => {
    expect(await SIZEBYPLACE([misses(), [["Shoes", 39]]])).toEqual(
      value(
        'No place that is measured stands in this range (it begins with "Shoes"): choose measurements with their labels, such as Bust, Waist, Hip.',
      ),
    );
    for (const blanks of [null, 0] as const)
      expect(await SIZEBYPLACE([misses(), [[BLANK]]], blanks)).toEqual(
        value("There is nothing in this range: choose measurements together with the headings."),
      );
  });
});
