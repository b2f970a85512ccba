import { describe, expect, test } from "vitest";
import type { Cell, Cells } from "../../src/chart/cell";
import { readChartCells } from "../../src/chart/cells";
import { INDEX_COLUMNS, readIndex } from "../../src/chart/cells-index";

const row = (fields: Partial<Record<(typeof INDEX_COLUMNS)[number], Cell>>): Cell[] =>
  INDEX_COLUMNS.map((heading) => fields[heading] ?? null);
const index = (...rows: Parameters<typeof row>[0][]): Cells => [
  [...INDEX_COLUMNS],
  ...rows.map((fields) => row({ Pattern: "Camp shirt", ...fields })),
];
const bust = (Size: Cell, Low: Cell, more: Parameters<typeof row>[0] = {}) => ({
  Kind: "body", Unit: "in", Measurement: "Bust", Size, Low, ...more,
}); // prettier-ignore
const charts = (cells: Cells) => {
  const read = readIndex(cells);
  if (!read?.ok) throw new Error("no index");
  return [...read.value.values()];
};

describe("readIndex", () => {
  test("is undefined for a range without its headings", () => {
    expect(readIndex([["Size", 8], ["Bust", 31]])).toBe(undefined);
    expect(readIndex([["Pattern", "Kind", "Size"]])).toBe(undefined);
    expect(readIndex([["Pattern", "Kind", "Size", "Low"]])).toEqual({ ok: true, value: new Map() });
  }); // prettier-ignore
  test("reads rows with the least headings, in any order", () => {
    expect(
      charts([
        ["Low", "Size", "Kind", "Pattern"],
        [31, 8, "body", "Skirt"],
        [32, 10, "Body", "skirt"],
      ]),
    ).toEqual([
      {
        name: "Skirt",
        body: [{ kind: "body", sizes: ["8", "10"], rows: [{ place: "", view: null, label: "", values: [31, 32], unit: null }] }],
        finished: [],
        fabric: [],
      },
    ]); // prettier-ignore
  });
  test("leaves out rows without a pattern, and rows of a kind that isn't known", () => {
    const [only, ...others] = charts(
      index(bust(8, 31), bust(10, 32, { Pattern: null }), bust(10, 33, { Pattern: { error: "#N/A" } }), { Kind: "notions", Size: 8, Low: 2 }),
    ); // prettier-ignore
    expect(others).toEqual([]);
    expect(only).toEqual({
      name: "Camp shirt",
      body: [{ kind: "body", sizes: ["8"], rows: [{ place: "bust", view: null, label: "Bust", values: [31], unit: "in" }] }],
      finished: [],
      fabric: [],
    }); // prettier-ignore
  });
  test("keeps the first error that stands for a table", () => {
    const [only] = charts(index({ Kind: { error: "#REF!" } }, { Kind: { error: "#NAME?" } }, bust(8, 31)));
    expect(only?.error).toBe("#REF!");
    expect(only?.body.length).toBe(1);
    expect(readChartCells(index({ Kind: { error: "#REF!" } }, bust(8, 31)), { role: "finished" })).toEqual({
      ok: false,
      problem: { code: "errorCell", details: { error: "#REF!" } },
    });
    expect(readChartCells(index(bust(8, 31)), { role: "finished" })).toEqual({
      ok: false,
      problem: { code: "noTable", details: { pattern: "Camp shirt", kind: "finished measurements" } },
    });
  });
  test("reads a range from Low and High, and what is wrong with either", () => {
    const values = (...figures: readonly (readonly [Cell, Cell])[]) =>
      charts(index(...figures.map(([Low, High], at) => bust(`S${at}`, Low, { High }))))[0]?.body[0]?.rows[0]?.values;
    expect(values([30, 31], [30, 30], [30, null], [30, 29], [null, null], [null, 31], ["30-32", 40])).toEqual([
      { low: 30, high: 31 },
      30,
      30,
      30,
      null,
      null,
      { low: 30, high: 32 },
    ]);
    const unreadable = { fault: { code: "unreadableFigure", details: { text: "wide" } } };
    expect(values(["wide", 31], [30, "wide"], [null, "wide"])).toEqual([unreadable, unreadable, unreadable]);
  });
  test("begins a new table where a place comes again, the unit or the sizes change", () => {
    const [only] = charts(
      index(
        bust(8, 31),
        bust(10, 32),
        bust(8, 79, { Unit: "cm" }),
        bust(10, 81, { Unit: "cm" }),
        { ...bust(8, 36), Kind: "finished", View: "A" },
        { ...bust(8, 38), Kind: "finished", View: "B" },
        { ...bust(8, 40), Kind: "finished", View: "B" },
      ),
    );
    expect(only?.body.map(({ sizes, rows }) => [sizes, rows.map(({ unit, values }) => [unit, values])])).toEqual([
      [["8", "10"], [["in", [31, 32]]]],
      [["8", "10"], [["cm", [79, 81]]]],
    ]);
    expect(only?.finished.map(({ rows }) => rows.map(({ view, values }) => [view, values]))).toEqual([
      [["A", [36]], ["B", [38]]],
      [["B", [40]]],
    ]); // prettier-ignore
  });
  test("takes apart two tables that ran together at the same place", () => {
    const hip = (Size: Cell, Low: Cell) => ({ ...bust(Size, Low), Measurement: "Hip" });
    // Misses end with the hip, women's begin with it.
    const [after] = charts(
      index(bust(8, 31), bust(10, 32), hip(8, 33), hip(10, 34), hip("16W", 42), hip("18W", 44), bust("16W", 40), bust("18W", 42)),
    ); // prettier-ignore
    expect(after?.body.map(({ sizes, rows }) => [sizes, rows.map(({ place, values }) => [place, values])])).toEqual([
      [["8", "10"], [["bust", [31, 32]], ["hip", [33, 34]]]],
      [["16W", "18W"], [["hip", [42, 44]], ["bust", [40, 42]]]],
    ]); // prettier-ignore
    // One row before: only the rows after it tell where the second table begins.
    const [before] = charts(
      index(hip(8, 33), hip(10, 34), hip("16W", 42), hip("18W", 44), bust("16W", 40), bust("18W", 42)),
    );
    expect(before?.body.map(({ sizes, rows }) => [sizes, rows.map(({ place, values }) => [place, values])])).toEqual([
      [["8", "10"], [["hip", [33, 34]]]],
      [["16W", "18W"], [["hip", [42, 44]], ["bust", [40, 42]]]],
    ]); // prettier-ignore
    // Sizes that are no run of the longer row's are another table, and nothing is taken apart.
    const [apart] = charts(index(bust(10, 32), hip(8, 33), hip(10, 34), hip(12, 35), bust(14, 36)));
    expect(apart?.body.map(({ sizes }) => sizes)).toEqual([["10"], ["8", "10", "12"], ["14"]]);
  });
  test("reads fabric: the width's unit, the larger of a range, and what isn't said", () => {
    const cloth = (fields: Parameters<typeof row>[0]) => ({ Kind: "fabric", Size: 8, ...fields });
    const [only] = charts(
      index(
        cloth({
          Unit: "yd",
          View: "A",
          Part: "lining",
          Width: 45,
          "Width unit": "in",
          Nap: "with",
          Low: 2,
          High: 2.25,
        }),
        cloth({ View: "A", Width: 150, Low: 1.9 }),
        cloth({ View: "A", Width: 45, Low: 2 }),
        cloth({ View: "B", Low: 3, Nap: "sideways" }),
        cloth({ View: "C", Width: "wide", "Width unit": "cm", Low: 1 }),
      ),
    );
    const rows = only?.fabric.flatMap((table) => table.rows);
    expect(rows).toEqual([
      { view: "A", part: "lining", label: "", width: 45, widthUnit: "in", nap: "with", values: [2.25], unit: "yd" },
      { view: "A", part: "main", label: "", width: 150, widthUnit: "cm", nap: null, values: [1.9], unit: "m" },
      { view: "A", part: "main", label: "", width: 45, widthUnit: "in", nap: null, values: [2], unit: "yd" },
      { view: "B", part: "main", label: "", width: null, widthUnit: "in", nap: null, values: [3], unit: "yd" },
      { view: "C", part: "main", label: "", width: null, widthUnit: "cm", nap: null, values: [1], unit: "m" },
    ]);
  });
  test("keeps a label that is no place, and a unit that is none of a body", () => {
    const [only] = charts(index(bust(8, 3, { Measurement: "Yoke", Unit: "yd" })));
    expect(only?.body[0]?.rows).toEqual([{ place: "Yoke", view: null, label: "Yoke", values: [3], unit: null }]);
  });
});
