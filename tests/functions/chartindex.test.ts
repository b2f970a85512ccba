import { describe, expect, test } from "vitest";
import fc from "fast-check";
import { yardage } from "../../functions/fabric";
import { chartIndex } from "../../functions/project";
import { sizeColumn, sizeMatch } from "../../functions/size";
import { startFunctions } from "../practice/custom-functions";
import { BLANK, campShirtFabric, errorCell, indexHeadings, misses, value } from "./call";

const runtime = startFunctions();
runtime.associate("CHARTINDEX", chartIndex);
/** Excel hands the first name over by itself and everything after it as one list. */
const CHARTINDEX = (name: unknown, ...more: unknown[]) =>
  runtime.call(
    "CHARTINDEX",
    [name, more].map((arg) => (Array.isArray(arg) ? arg : [[arg]])),
  );

const body = [
  ["Measurement", "Unit", "8", "10"],
  ["Bust", "in", 31.5, 32.5],
  ["Waist", "in", "24-25", BLANK],
];
const finished = [
  ["Measurement", "View", "Unit", "8"],
  ["Back length", "A", "in", 26],
];
const fabric = [
  ["View", "Part", "Width", "Width unit", "Nap", "Unit", "8"],
  ["A", "main", 45, "in", "with", "yd", 2.125],
];

describe("CHARTINDEX", () => {
  test("gives a row for each figure of each table", async () => {
    const rows = await CHARTINDEX([["Camp shirt"]], body, [["Camp shirt"]], finished, [["Camp shirt"]], fabric);
    expect(rows).toEqual([
      ["Camp shirt", "body", "in", "", "", "", "", "", "Bust", 8, 31.5, 31.5],
      ["Camp shirt", "body", "in", "", "", "", "", "", "Bust", 10, 32.5, 32.5],
      ["Camp shirt", "body", "in", "", "", "", "", "", "Waist", 8, 24, 25],
      ["Camp shirt", "body", "in", "", "", "", "", "", "Waist", 10, "", ""],
      ["Camp shirt", "finished", "in", "A", "", "", "", "", "Back length", 8, 26, 26],
      ["Camp shirt", "fabric", "yd", "A", "main", 45, "in", "with", "", 8, 2.125, 2.125],
    ]);
  });
  test("keeps its columns in the order of the index's headings", () => {
    expect(indexHeadings).toHaveLength(12);
  });
  test("splits a chart in two units into two tables, and keeps 00 as text", async () => {
    const both = [
      ["Measurement", "Unit", "00"],
      ["Bust", "in", 31],
      ["Bust", "cm", 79],
      ["Hip", "in", 33],
      ["Hip", "cm", 84],
    ];
    const rows = (await CHARTINDEX([["Skirt"]], both)) as unknown[][];
    expect(rows.map((row) => [row[2], row[8], row[9], row[10]])).toEqual([
      ["in", "Bust", "00", 31],
      ["in", "Hip", "00", 33],
      ["cm", "Bust", "00", 79],
      ["cm", "Hip", "00", 84],
    ]);
  });
  test("names a table that can't be read, and goes on", async () => {
    const rows = await CHARTINDEX([["Lost"]], [[errorCell("#REF!")]], [["Bare"]], body.slice(1), [["Shirt"]], fabric);
    const empty = Array.from({ length: 10 }, () => "");
    expect(rows).toEqual([
      ["Lost", { error: "#REF!" }, ...empty],
      [
        "Bare",
        value(
          `No headings stand above "Bust", so the sizes aren't known: choose the chart with its headings, and if this is a table's name, add [#All] to it.`,
        ),
        ...empty,
      ],
      ["Shirt", "fabric", "yd", "A", "main", 45, "in", "with", "", 8, 2.125, 2.125],
    ]);
  });
  test("skips a blank pair, asks for a missing name, is one empty cell without charts", async () => {
    expect(await CHARTINDEX([[BLANK]], [[BLANK]])).toEqual([[""]]);
    const rows = (await CHARTINDEX([[BLANK]], body)) as unknown[][];
    expect(rows[0]!.slice(0, 2)).toEqual(["", value("This is blank: a pattern's name is needed here.")]);
  });
  test("keeps an unreadable figure in its place", async () => {
    const chart = [
      ["Size", "8", "10"],
      ["Bust", errorCell("#DIV/0!"), "wide"],
    ];
    const wrong = value('"wide" on this chart can\'t be read as a figure: correct it there.');
    expect(((await CHARTINDEX([["S"]], chart)) as unknown[][]).map((row) => row.slice(10))).toEqual([
      [{ error: "#DIV/0!" }, { error: "#DIV/0!" }],
      [wrong, wrong],
    ]);
  });

  const rowsOf = (...pairs: unknown[]): any[][] => [
    indexHeadings,
    ...chartIndex(pairs[0] as any[][], pairs.slice(1) as any[][][]),
  ];
  test("is read by the functions like the table itself", () => {
    const index = rowsOf([["Camp shirt"]], misses(), [["Camp shirt"]], campShirtFabric, [["Wrap skirt"]], body);
    const pattern = [["Camp shirt"]];
    for (const size of [6, 12, 24])
      expect(sizeColumn(index, [[size]], pattern)).toEqual(sizeColumn(misses() as any[][], [[size]]));
    fc.assert(
      fc.property(fc.double({ min: 30, max: 47, noNaN: true }), (bust) => {
        const ask = (...args: any[]) => (sizeMatch as any)(...args);
        expect(ask(index, [["bust"]], [[bust]], [[null]], pattern)).toBe(ask(misses(), [["bust"]], [[bust]]));
      }),
    );
    const ask = (table: any[][], name?: any[][]) =>
      (yardage as any)(table, [["A"], ["B"]], [[45]], [["12-16"]], [[null]], [[null]], [[null]], name);
    expect(ask(index, pattern)).toEqual(ask(campShirtFabric as any[][]));
  });
  test("doesn't cross two body tables of one pattern", () => {
    const women = [
      ["Measurement", "Unit", "16W", "18W"],
      ["Bust", "in", 40, 42],
      ["Hip", "in", 42, 44],
    ];
    const index = rowsOf([["Dress"]], body.slice(0, 2), [["Dress"]], women);
    expect(sizeColumn(index, [["18W"]], [["Dress"]])).toEqual([[42], [44]]);
  });
});
