import { describe, expect, test } from "vitest";
import { sizeColumn } from "../../functions/size";
import {
  BLANK,
  caller,
  campShirtFabric,
  classes,
  column,
  errorCell,
  indexHeadings,
  misses,
  notAvailable,
  value,
} from "./call";

const SIZECOLUMN = caller("SIZECOLUMN", sizeColumn, 3);

describe("SIZECOLUMN", () => {
  // The misses chart of tests/figures: common practice, read.
  test("gives a size's figures in the chart's order, without the size", async () => {
    expect(await SIZECOLUMN([misses(), 6])).toEqual(column(28.5, 30.5, 23, 32.5, 15.5));
    expect(await SIZECOLUMN([misses(), "24"])).toEqual(column(44, 46, 39, 48, 17.75));
  });
  test("reads headings in any order, a title and blank rows above, and a turned chart", async () => {
    const chart = [
      ["Camp shirt", BLANK, BLANK, BLANK],
      [BLANK, BLANK, BLANK, BLANK],
      ["12", "Unit", "Size", "14"],
      [34, "in", "Bust", 36],
      [BLANK, BLANK, BLANK, BLANK],
      ["26 1/2", "in", "Waist", 28],
    ];
    for (const blanks of [null, 0] as const) expect(await SIZECOLUMN([chart, 12], blanks)).toEqual(column(34, 26.5));
    const turned = [
      ["Size", "Bust", "Waist", "Hip"],
      ["S", 84, 66, 90],
      ["M", 90, 72, 96],
    ];
    expect(await SIZECOLUMN([turned, "m"])).toEqual(column(90, 72, 96));
  });
  test("gives printed ranges as text, what isn't made as an empty cell", async () => {
    expect(await SIZECOLUMN([classes(), "76"])).toEqual(column("74 to 78"));
    const holes = [
      ["Size", "8", "10"],
      ["Bust", 31.5, 32.5],
      ["Waist", BLANK, 25],
      ["Hip", "–", 34.5],
    ];
    for (const blanks of [null, 0] as const) expect(await SIZECOLUMN([holes, 8], blanks)).toEqual(column(31.5, "", ""));
  });
  test("reads fabric and finished tables too", async () => {
    expect(await SIZECOLUMN([campShirtFabric, 16])).toEqual(column(2.375, 2.25, 1.625, 1, 2.875));
    const finished = [
      ["Measurement", "View", "Unit", "12", "14"],
      ["Bust", "", "in", 38, 40],
      ["Back length", "A", "in", 26, 26.25],
      ["Back length", "B", "in", 28, 28.25],
    ];
    expect(await SIZECOLUMN([finished, 14])).toEqual(column(40, 26.25, 28.25));
  });
  test("tells size 0 from a blank cell by the chart", async () => {
    const small = [
      ["Size", "00", "0", "2"],
      ["Bust", 31.125, 31.75, 33],
    ];
    expect(await SIZECOLUMN([small, 0])).toEqual(column(31.75));
    expect(await SIZECOLUMN([small, "00"])).toEqual(column(31.125));
    for (const blank of [0, BLANK, ""])
      expect(await SIZECOLUMN([misses(), blank])).toEqual(value("This is blank: a size is needed here."));
  });
  test("says which sizes there are", async () => {
    expect(await SIZECOLUMN([misses(), "3x"])).toEqual(notAvailable('"3x" is not a size on this chart (6 to 24).'));
    expect(await SIZECOLUMN([misses(), 45000])).toEqual(
      value("Excel has made a date of this (45000): type 0 7/8, or 6 to 12."),
    );
  });
  test("refuses two columns of one name, a column without a heading, two charts in one range", async () => {
    const twice = [
      ["Size", "8", 8],
      ["Bust", 31.5, 32.5],
    ];
    expect(await SIZECOLUMN([twice, 8])).toEqual(value("Two columns of this chart are called 8: rename one."));
    const bare = [
      ["Size", "8", ""],
      ["Bust", 31.5, 32.5],
    ];
    expect(await SIZECOLUMN([bare, 8])).toEqual(
      value("Column 3 of this chart has figures (32.5) and no heading: write the size above it."),
    );
    expect(await SIZECOLUMN([[...misses(), ...misses()], 8])).toEqual(
      value('This range holds two charts (headings again at "Measurement"): choose one of them.'),
    );
    expect(await SIZECOLUMN([[[BLANK]], 8])).toEqual(
      value("There is nothing in this range: choose a chart together with the headings."),
    );
    const date = [
      ["Size", 46577],
      ["Bust", 31.5],
    ];
    expect(await SIZECOLUMN([date, 8])).toEqual(
      value("Excel has made a date of this (46577): type 0 7/8, or 6 to 12."),
    );
  });
  test("keeps an unreadable figure and an error cell in their places", async () => {
    const chart = [
      ["Size", "8", "10"],
      ["Bust", "see note", 32.5],
      ["Waist", errorCell("#DIV/0!"), 25],
      ["Hip", 33.5, 34.5],
      ["* with nap", BLANK, BLANK],
    ];
    expect(await SIZECOLUMN([chart, 8])).toEqual([
      [value(`"see note" on this chart can't be read as a figure: correct it there.`)],
      [{ error: "#DIV/0!" }],
      [33.5],
    ]);
  });
  test("gives a column for each of several sizes", async () => {
    expect(await SIZECOLUMN([misses(), [[6, BLANK, "5", 8]]])).toEqual([
      [28.5, "", notAvailable('"5" is not a size on this chart (6 to 24).'), 29.5],
      [30.5, "", "", 31.5],
      [23, "", "", 24],
      [32.5, "", "", 33.5],
      [15.5, "", "", 15.75],
    ]);
  });
  test("looks in the pattern index", async () => {
    const row = (kind: string, place: string, size: string, figure: number) => [
      "Camp shirt", kind, "in", "", "", "", "", "", place, size, figure, figure,
    ]; // prettier-ignore
    const index = [
      indexHeadings,
      row("finished", "Bust", "12", 38),
      row("body", "Bust", "12", 34),
      row("body", "Bust", "14", 36),
      row("body", "Waist", "12", 26.5),
      row("body", "Waist", "14", 28),
    ];
    expect(await SIZECOLUMN([index, 14, "camp shirt"])).toEqual(column(36, 28));
    expect(await SIZECOLUMN([index, 14, BLANK])).toEqual(column(36, 28));
    expect(await SIZECOLUMN([index, 14, "Pinafore"])).toEqual(
      notAvailable('"Pinafore" is not in the pattern index. It has Camp shirt.'),
    );
  });
});
