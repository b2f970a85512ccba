import { describe, expect, it } from "vitest";
import type { BodyUnit } from "../../../src/chart/model";
import type { Assembled } from "../../../src/chart/reading/assemble";
import { checkTables, offGrade, outOfOrder } from "../../../src/chart/reading/checks";
import { Doubts, type FabricRecord, type MeasureRecord } from "../../../src/chart/reading/record";
import { doubts } from "../../../src/words/reading";
import { clothOf, measureOf } from "./records";

describe("outOfOrder", () => {
  it("names the figure whose removal puts the row in order", () => {
    expect(outOfOrder([32.5, 34, 63, 38, 40])).toEqual([2]);
    expect(outOfOrder([34, 63, 38, 40])).toEqual([1]);
  });
  it("names all of them when several would", () => {
    expect(outOfOrder([32, 34, 63, 38])).toEqual([2, 3]);
    expect(outOfOrder([34, 32])).toEqual([0, 1]);
  });
  it("names those outside the longest orderly run when none does", () => {
    expect(outOfOrder([10, 30, 12, 40, 14, 16])).toEqual([1, 3]);
  });
  it("finds nothing in rows that rise, stand still or fall throughout, nor in blanks", () => {
    for (const row of [[1, 2, 3], [2, 2, 2], [5, 4, 3], [1, null, 3], [], [null]]) expect(outOfOrder(row)).toEqual([]);
  }); // prettier-ignore
  it("looks at both ends of a range", () => {
    expect(outOfOrder([{ low: 30, high: 31 }, { low: 32, high: 53 }, { low: 34, high: 35 }])).toEqual([1, 2]);
  }); // prettier-ignore
  it.each([
    ["a falling row's one rising figure", [40, 38, 63, 34, 32], [2]],
    ["a row that ends above its beginning as a rising one", [32, 36, 34], [1, 2]],
    ["a row whose second figure alone is lower as a rising one", [30, 28, 34], [0, 1]],
    ["a row that rises as badly as it falls as a rising one", [34, 36, 30, 32], [2, 3]],
    ["equal figures as a run in order", [20, 20, 20, 10, 12], [3, 4]],
    ["the longest run through the figures, not the latest", [10, 20, 5, 30, 4], [2, 4]],
    ["a low and a high end, in the order of the sizes", [{ low: 30, high: 31 }, { low: 32, high: 53 }, { low: 34, high: 35 }, { low: 20, high: 37 }, { low: 38, high: 39 }], [1, 3]],
    ["the place of a figure behind blanks", [null, 34, null, 63, 38, 40], [3]],
  ])("takes %s", (_, row, odd) => {
    expect(outOfOrder(row)).toEqual(odd);
  }); // prettier-ignore
  it("looks for the one figure in rows up to 200, and above that only at each figure against the one before", () => {
    const row = (count: number): number[] => Array.from({ length: count }, (_, at) => (at === 100 ? 500 : Math.min(at, count - 3)));
    expect(outOfOrder(row(200))).toEqual([100]);
    expect(outOfOrder(row(201))).toEqual([101]);
  }); // prettier-ignore
});

describe("offGrade", () => {
  it("sees one step too long beside one too short", () => {
    expect(offGrade([32, 34, 37, 38, 40], 0.45)).toEqual([2]);
  });
  it("sees a last figure far from all others", () => {
    expect(offGrade([33.5, 34.5, 36, 38, 48], 0.45)).toEqual([4]);
  });
  // The slip is put into an even grade by hand; `least` is 0.45, the smallest slip in inches worth a word.
  it.each([
    ["in a row of four", [32, 34, 37, 38], [2]],
    ["short before and long behind", [32, 34, 35, 38, 40], [2]],
    ["of the second figure", [32, 35, 36, 38, 40], [1]],
    ["of the last but one", [32, 34, 36, 39, 40], [3]],
    ["before the grade widens", [32, 34, 37, 38, 40, 44], [2]],
    ["among steps of which one is half the other", [30, 31, 34, 34.5, 36.5], [2]],
    ["of the first figure", [20, 33, 34, 35, 36], [0]],
    ["of the last figure by three", [33, 34, 35, 39], [3]],
    ["of the first figure, not of its neighbour", [30, 36, 37, 39, 41], [0]],
    ["of the last figure, not of its neighbour", [30, 32, 34, 35, 41], [4]],
    ["of the first figure or its equal", [30, 36, 36, 38, 40], [0, 1]],
    ["at two figures that are no neighbours", [30, 39, 41, 44, 45, 47, 49], [0, 3]],
  ])("sees a slip %s", (_, row, odd) => {
    expect(offGrade(row, 0.45)).toEqual(odd);
  });
  it.each([
    ["three figures, which show no grade", [32, 35, 36]],
    ["a blank in the row", [32, 34, null, 37, 38, 40]],
    ["a short step that is no shorter than those further out", [30, 33, 37, 39.5, 41.5]],
    ["a long step that is no longer than those further out", [30, 33, 35.5, 36.5, 38.5]],
    ["steps further out that don't agree", [30, 31, 36, 36.5, 40.5]],
    ["a slip of a fifth", [32, 34, 36.2, 38, 40]],
    ["a first step after which nothing changes", [30, 30, 30, 34]],
    ["a last step twice the others, as large sizes have", [32, 34, 36, 40]],
    ["a last step of three quarters among quarters", [10, 10.25, 10.5, 11.25]],
  ])("has nothing against %s", (_, row) => {
    expect(offGrade(row, 0.45)).toEqual([]);
  });
  it("speaks of a slip as large as the smallest worth a word", () => {
    expect(offGrade([32, 34, 36.5, 38, 40], 0.5)).toEqual([2]);
    expect(offGrade([32, 34, 36.5, 38, 40], 0.51)).toEqual([]);
  });
  it("takes a chart's own change of step for none", () => {
    // Misses figure type, bust and waist 6 to 24: common practice with no single publisher.
    expect(offGrade([30.5, 31.5, 32.5, 34, 36, 38, 40, 42, 44, 46], 0.45)).toEqual([]);
    expect(offGrade([23, 24, 25, 26.5, 28, 30, 32, 34, 37, 39], 0.45)).toEqual([]);
    // EN 13402-3:2004, women's bust and hip.
    expect(offGrade([76, 80, 84, 88, 92, 96, 100, 104, 110, 116, 122, 128], 1.1)).toEqual([]);
    expect(offGrade([84, 88, 92, 96, 100, 104, 108, 112, 117, 122, 127, 132], 1.1)).toEqual([]);
  });
});

const measures = (kind: "body" | "finished", unit: BodyUnit, records: readonly MeasureRecord[]): Assembled => ({
  kind, unit, sizes: records[0]!.header.sizes, records,
}); // prettier-ignore
const cloths = (...records: readonly FabricRecord[]): Assembled => ({
  kind: "fabric", unit: "yd", sizes: records[0]!.header.sizes, records, views: ["A", "B"],
}); // prettier-ignore
const said = (...tables: readonly Assembled[]): Doubts["issues"] => {
  const found = new Doubts();
  checkTables(tables, found);
  return found.issues;
};
const warning = "warning";

describe("checkTables", () => {
  it("names the cell, the place and the size of a figure out of order, and says nothing of its steps too", () => {
    expect(said(measures("body", "in", [measureOf("bust", [32, 34, 63, 38, 40], "in")]))).toEqual([
      { line: 2, column: 4, place: "bust", size: "10", severity: warning, message: doubts.outOfOrder("63 in", "The bust") },
    ]);
    // Without 20, which is out of order, 30 would be a long step away.
    expect(said(measures("body", "in", [measureOf("bust", [40, 33, 34, 35, 50], "in")])).map(({ size }) => size)).toEqual(["6"]);
  }); // prettier-ignore
  it.each([
    ["half an inch", "in", [32, 34, 36.5, 38, 40], ["10"]],
    ["half a centimetre, which is rounding", "cm", [82, 86, 90.5, 94, 98], []],
    ["a centimetre, which is rounding", "cm", [82, 86, 91, 94, 98], []],
    ["two centimetres", "cm", [82, 86, 92, 94, 98], ["10"]],
  ] as const)("weighs a slip of %s", (_, unit, row, sizes) => {
    const issues = said(measures("body", unit, [measureOf("bust", row, unit)]));
    expect(issues.map(({ size }) => size)).toEqual(sizes);
    for (const { message } of issues) expect(message).toBe(doubts.offGrade(`${row[2]} ${unit}`, "The bust"));
  });
  it("names the view of an amount out of order, when there is one", () => {
    const row = [2, 2.25, 6, 2.5, 2.75];
    const issue = { line: 5, column: 4, size: "10", severity: warning, message: doubts.outOfOrder("6 yd", "Cloth") };
    expect(said(cloths(clothOf(row, "yd", { views: ["B", "C"] })))).toEqual([{ ...issue, view: "B" }]);
    expect(said(cloths(clothOf(row, "yd", { views: "all" })))).toEqual([issue]);
    expect(said(cloths(clothOf(row, "yd", { views: [""] })))).toEqual([issue]);
  });
  it("leaves the steps of amounts alone, which follow the layout and not a grade", () => {
    expect(said(cloths(clothOf([2, 2, 2.125, 3.5, 3.5, 9], "yd")))).toEqual([]);
    expect(said(cloths(clothOf([32, 34, 37, 38, 40], "yd")))).toEqual([]);
  });

  it("says once for each row that its place stood above already, view by view", () => {
    const bust = (line: number, view: string | null): MeasureRecord => measureOf("bust", [34, 36], "in", { line, view });
    const rows = [bust(2, null), bust(3, "A"), bust(4, null), bust(5, "A"), measureOf("hip", [36, 38], "in")];
    const message = doubts.repeatedPlace("bust");
    expect(said(measures("body", "in", rows))).toEqual([
      { line: 4, place: "bust", severity: warning, message },
      { line: 5, place: "bust", view: "A", severity: warning, message },
    ]);
  }); // prettier-ignore
  it("says which row of cloth nothing tells apart from one above", () => {
    const row = (more: Partial<FabricRecord>): FabricRecord => clothOf([2, 2.5], "yd", more);
    const message = doubts.repeatedCloth("Cloth");
    const first = row({ views: ["A", "B"] });
    for (const more of [{ part: "lining" }, { widths: { in: 60, cm: null } }, { widths: { in: 45, cm: 115 } }, { nap: "with" as const }, { views: ["C"] }, { views: "all" as const }])
      expect(said(cloths(first, row({ views: ["A"], ...more })))).toEqual([]);
    expect(said(cloths(first, row({ views: ["B"], line: 6 })))).toEqual([{ line: 6, view: "B", severity: warning, message }]);
    expect(said(cloths(row({}), row({ line: 6 })))).toEqual([{ line: 6, severity: warning, message }]);
    expect(said(cloths(row({ widths: null }), row({ widths: null, line: 6 })))).toEqual([{ line: 6, severity: warning, message }]);
  }); // prettier-ignore

  // A waist is 14 to 62 in, that is 35 to 158 cm (the vocabulary's own span, from babies to the largest sizes).
  it.each([
    ["cm", [24, 26, 28], "in"],
    ["cm", [14, 16], "in"],
    ["in", [66, 71, 76], "cm"],
    ["in", [150, 158], "cm"],
  ] as const)("doubts a waist headed %s of %s", (unit, row, other) => {
    const name = { in: "inches", cm: "centimetres" };
    expect(said(measures("body", unit, [measureOf("waist", row, unit)]))).toEqual([
      { line: 2, place: "waist", severity: warning, message: doubts.unitDisagrees("The waist", name[unit], name[other]) },
    ]);
  }); // prettier-ignore
  it.each([
    ["waist", "cm", [35, 35]],
    ["waist", "in", [62, 62]],
    ["waist", "in", [24, 26]],
    ["waist", "cm", [34, 36, 38]],
    ["waist", "cm", [10, 20]],
    ["waist", "in", [60, 64, 66]],
    ["waist", "in", [150, 160]],
    ["waist", "in", [null, null]],
    ["depth of the dart", "cm", [1, 2]],
    ["waist", "yd", [66, 71]],
    ["waist", "m", [0.6, 0.7]],
    ["waist", "m", [24, 26]],
  ] as const)("doesn't doubt the unit of a %s in %s of %s", (place, unit, row) => {
    expect(said(measures("body", unit as BodyUnit, [measureOf(place, row, unit)]))).toEqual([]);
  });

  it("doubts a finished girth below the body's, size for size", () => {
    const body = measures("body", "in", [measureOf("bust", [34, { low: 36, high: 36.5 }, 38, 40], "in")]);
    const finished = measures("finished", "in", [
      measureOf("bust", [34, { low: 34, high: 35.5 }, null, 44], "in", { kind: "finished", line: 9 }),
    ]);
    const wanted = { line: 9, column: 3, place: "bust", size: "8", severity: warning };
    for (const issues of [said(body, finished), said(finished, body)]) {
      expect(issues).toHaveLength(1);
      expect(issues[0]).toMatchObject(wanted);
      expect(issues[0]!.message).toContain("(36 in) is larger than the finished garment's (35.5 in)");
    }
  });
  it("compares only girths, only body with finished, only in one unit, only sizes of both", () => {
    const row = (place: string, figure: number, unit: BodyUnit): MeasureRecord => measureOf(place, [figure], unit);
    const pair = (place: string, worn: number, made: number): Doubts["issues"] =>
      said(measures("body", "in", [row(place, worn, "in")]), measures("finished", "in", [row(place, made, "in")]));
    expect(pair("hip", 40, 38)).toHaveLength(1);
    expect(pair("hip", 40, 40)).toEqual([]);
    expect(pair("backWaistLength", 17, 16)).toEqual([]);
    expect(pair("waistToHip", 9, 8)).toEqual([]);
    expect(said(measures("body", "in", [row("hip", 40, "in")]), measures("body", "in", [row("hip", 38, "in")]))).toEqual([]);
    expect(said(measures("finished", "in", [row("hip", 40, "in")]), measures("finished", "in", [row("hip", 38, "in")]))).toEqual([]);
    expect(said(measures("body", "cm", [row("hip", 90, "cm")]), measures("finished", "in", [row("hip", 38, "in")]))).toEqual([]);
    expect(said(measures("body", "in", [row("hip", 40, "in")]), { ...measures("finished", "in", [row("hip", 38, "in")]), sizes: ["30"] })).toEqual([]);
  }); // prettier-ignore
});
