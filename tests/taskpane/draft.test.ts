import { describe, expect, it } from "vitest";
import { readCharts } from "../../src/index";
import {
  correct,
  draftOf,
  leftOut,
  lineOf,
  nextFlag,
  retitled,
  withLine,
  type Draft,
} from "../../taskpane/chart/draft";
import type { Place } from "../../taskpane/chart/grid";

/** Invented figures; 63 in for 36 is the usual slip, and the waist lacks a figure. */
const PASTE = `Body measurements (in)
Size	12	14	16	18
Bust	34	63	38	40
Waist	26½	28	30
Hip	36	38	40	42`;
const draft = (): Draft => draftOf(PASTE, readCharts);
const fixed = (from: Draft, place: Place, text: string): Draft => {
  const result = correct(from, 0, place, text, readCharts);
  if (!result.ok) throw new Error(result.message);
  return result.value;
};

describe("draftOf", () => {
  it("puts each doubt at its cell", () => {
    const { tables, flags } = draft();
    expect(tables).toHaveLength(1);
    expect(flags.map(({ at }) => at)).toEqual([{ table: 0, row: 0, column: 1 }]);
    expect(flags[0]!.issue.message).toContain("63");
  });
  it("keeps apart what was left out, with the line it stands in", () => {
    const from = draft();
    const error = from.loose.find(({ severity }) => severity === "error")!;
    expect(error.place).toBe("waist");
    expect(lineOf(from, error)).toBe("Waist\t26½\t28\t30");
  });
});

describe("withLine", () => {
  it("puts a size right that a spreadsheet has made a date of, once for all tables below it", () => {
    const both = `Body measurements (in)
Size	6-Dec	14-20
Bust	34	38
Fabric required
View A 45 in	2	2 1/8 yd`;
    const from = draftOf(both, readCharts);
    expect(from.flags).toEqual([]);
    const doubt = from.loose.find(({ message }) => message.includes("is a date"))!;
    expect(lineOf(from, doubt)).toBe("Size	6-Dec	14-20");
    const again = draftOf(withLine(both, doubt.line, "Size	6-12	14-20"), readCharts);
    expect(again.tables.map(({ sizes }) => sizes)).toEqual([
      ["6-12", "14-20"],
      ["6-12", "14-20"],
    ]);
    expect([...again.loose, ...again.flags].filter((doubt) => JSON.stringify(doubt).includes("is a date"))).toEqual([]);
  });
  it("puts a left-out line right, so that it is read", () => {
    const again = draftOf(withLine(PASTE, 4, "Waist\t26½\t28\t30\t32"), readCharts);
    expect(again.tables[0]!.rows.map((row) => "place" in row && row.place)).toEqual(["bust", "waist", "hip"]);
    expect(again.loose.filter(({ severity }) => severity === "error")).toEqual([]);
  });
});

describe("correct", () => {
  it("takes the figure and the doubt is gone", () => {
    const after = fixed(draft(), { row: 0, column: 1 }, "36");
    expect(after.tables[0]!.rows[0]!.values).toEqual([34, 36, 38, 40]);
    expect(after.flags).toEqual([]);
  });
  it("looks at the corrected figure again", () => {
    const after = fixed(draft(), { row: 2 - 1, column: 3 }, "24");
    expect(after.flags.map(({ at }) => [at.row, at.column])).toContainEqual([1, 3]);
  });
  it("reads fractions, other units and ranges", () => {
    const place = { row: 0, column: 1 };
    expect(fixed(draft(), place, "36 1/2").tables[0]!.rows[0]!.values[1]).toBe(36.5);
    expect(fixed(draft(), place, "91,44 cm").tables[0]!.rows[0]!.values[1]).toBeCloseTo(36, 9);
    expect(fixed(draft(), place, "36 - 37").tables[0]!.rows[0]!.values[1]).toEqual({ low: 36, high: 37 });
    expect(fixed(draft(), place, "").tables[0]!.rows[0]!.values[1]).toBeNull();
  });
  it("refuses what is no figure, and says so", () => {
    const result = correct(draft(), 0, { row: 0, column: 1 }, "=1+1", readCharts);
    expect(result).toMatchObject({ ok: false });
    expect(correct(draft(), 0, { row: 0, column: 1 }, "-3", readCharts)).toMatchObject({ ok: false });
  });
  it("renames a row and finds its place again", () => {
    const after = fixed(draft(), { row: 1, column: "place" }, "Taillenumfang");
    expect(after.tables[0]!.rows[1]).toMatchObject({ label: "Taillenumfang", place: "waist" });
  });
  it("renames a size, but not to one that is there or to nothing", () => {
    expect(fixed(draft(), { row: -1, column: 0 }, "12P").tables[0]!.sizes[0]).toBe("12P");
    expect(correct(draft(), 0, { row: -1, column: 0 }, "14", readCharts)).toMatchObject({ ok: false });
    expect(correct(draft(), 0, { row: -1, column: 0 }, " ", readCharts)).toMatchObject({ ok: false });
  });
});

describe("leftOut", () => {
  it("takes a row out, with its doubts, and moves those below it", () => {
    const after = leftOut(draft(), 0, 0, readCharts);
    expect(after.tables[0]!.rows).toHaveLength(1);
    expect(after.flags).toEqual([]);
  });
  it("takes the table out with its last row", () => {
    const once = leftOut(draft(), 0, 0, readCharts);
    expect(leftOut(once, 0, 0, readCharts).tables).toEqual([]);
  });
});

describe("retitled", () => {
  it("sets what a table is and its unit", () => {
    const after = retitled(retitled(draft(), 0, { kind: "finished" }, readCharts), 0, { unit: "cm" }, readCharts);
    expect(after.tables[0]).toMatchObject({ kind: "finished", unit: "cm" });
  });
});

describe("nextFlag", () => {
  it("goes round from the last to the first", () => {
    const [flag] = draft().flags;
    const two = { ...draft(), flags: [flag!, { ...flag!, at: { table: 0, row: 1, column: 0 } }] };
    expect(nextFlag(two, null)).toEqual({ table: 0, row: 0, column: 1 });
    expect(nextFlag(two, { table: 0, row: 0, column: 1 })).toEqual({ table: 0, row: 1, column: 0 });
    expect(nextFlag(two, { table: 0, row: 1, column: 0 })).toEqual({ table: 0, row: 0, column: 1 });
    expect(nextFlag({ ...two, flags: [] }, null)).toBeUndefined();
  });
});
