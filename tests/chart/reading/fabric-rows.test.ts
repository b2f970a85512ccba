import { describe, expect, it } from "vitest";
import { cellOf, type Row } from "../../../src/chart/reading/cell";
import { fabricReadings, type FabricState } from "../../../src/chart/reading/fabric-rows";
import type { Role } from "../../../src/chart/reading/header";
import { Doubts, type FabricRecord } from "../../../src/chart/reading/record";
import type { Fit } from "../../../src/chart/reading/rows";
import { doubts } from "../../../src/words/reading";
import { clothOf, headerOf, measureOf } from "./records";

const header = headerOf(["6", "8"]);
const stateOf = (more: Partial<FabricState> = {}): FabricState => ({
  kind: "fabric", unit: null, header, views: null, part: null, nap: null, widths: null, stars: new Map(), previous: null,
  viewsNamed: new Set(), readings: [], found: new Doubts(), ...more,
}); // prettier-ignore
const fitOf = (values: readonly string[], more: Partial<Fit> = {}): Fit => ({
  ok: true, label: "", values: values.map((text, index) => cellOf(text, 7, index + 2)), trailing: "", roles: new Map(),
  doubt: null, single: false, ...more,
}); // prettier-ignore
const rowOf = (text: string): Row => ({ line: 7, text, layout: "grid", cells: [cellOf(text, 7, 1)] });

/** What a row says, one list of words for each unit; and the doubts. */
function read(label: string, values: readonly string[], state: FabricState, fit: Partial<Fit> = {}) {
  const readings = fabricReadings(rowOf(label), fitOf(values, fit), label, state) as FabricRecord[] | null;
  return {
    rows: readings && readings.map(({ views, part, widths, nap, unit, figures }) => {
      const width = widths && `${widths.in ?? ""}in ${widths.cm ?? ""}cm`;
      return [views === "all" ? views : views.join(), part, width, nap, unit, figures];
    }),
    said: state.found.issues.map(({ message }) => message),
  };
} // prettier-ignore
const main = (unit: string | null, width: string | null, figures: readonly (number | null)[]) => [
  ["", "main", width, null, unit, figures],
];
const above = (more: Partial<FabricRecord> = {}, unit: "yd" | "m" = "yd"): FabricRecord =>
  clothOf([2, 2.25], unit, { header, views: ["A"], part: "lining", nap: "with", ...more });

describe("fabricReadings", () => {
  it("keeps the views a row names for the rows below, but for all of them no letters", () => {
    const state = stateOf();
    expect(read('A, B 45" with nap', ["2", "2 1/4"], state).rows).toEqual([["A,B", "main", "45in cm", "with", "yd", [2, 2.25]]]);
    expect([state.views, [...state.viewsNamed]]).toEqual([["A", "B"], ["A", "B"]]);
    expect(read('60"', ["1 1/2", "1 3/4"], state).rows).toEqual([["A,B", "main", "60in cm", null, "yd", [1.5, 1.75]]]);
    expect(read('All views 60"', ["1", "1"], state).rows).toEqual([["all", "main", "60in cm", null, "yd", [1, 1]]]);
    expect([state.views, [...state.viewsNamed]]).toEqual(["all", ["A", "B"]]);
  }); // prettier-ignore

  it.each<[string, readonly string[], Partial<FabricState>, Partial<Fit>, unknown]>([
    ["words behind it", ["2", "2"], {}, { trailing: "yds" }, main("yd", null, [2, 2])],
    ["a note behind it", ["2", "2"], {}, { trailing: "(m) needed" }, main("m", null, [2, 2])],
    ["a column of units", ["2", "2"], {}, { roles: new Map<Role, string>([["unit", "m"]]), trailing: "yd" }, main("m", null, [2, 2])],
    ["the line above, of yards", ["2", "2"], { unit: "yd" }, {}, main("yd", null, [2, 2])],
    ["the line above, of metres, before the sizes'", ["2", "2"], { unit: "m", header: { ...header, unit: "yd" } }, {}, main("m", null, [2, 2])],
    ["the sizes'", ["2", "2"], { unit: "in", header: { ...header, unit: "m" } }, {}, main("m", null, [2, 2])],
    ["centimetres above amounts such as 190", ["190", "210"], { unit: "cm" }, {}, main("m", null, [1.9, 2.1])],
    ["centimetres above amounts such as 1.9", ["1.9", "2.1"], { unit: "cm" }, {}, main(null, null, [1.9, 2.1])],
    ["a metric width", ["1.9", "2.1"], { widths: { in: null, cm: 115 } }, {}, main("m", "in 115cm", [1.9, 2.1])],
    ["a metric width of 190 cm", ["190", "210"], { widths: { in: null, cm: 115 } }, {}, main("m", "in 115cm", [1.9, 2.1])],
    ["a metric width of a little ribbing", ["20", "25"], { widths: { in: null, cm: 115 } }, {}, main("m", "in 115cm", [0.2, 0.25])],
    ["a metric width of one small amount", ["15", "25"], { widths: { in: null, cm: 115 } }, {}, main("m", "in 115cm", [15, 25])],
    ["a metric width of nothing", ["-", "-"], { widths: { in: null, cm: 115 } }, {}, main("m", "in 115cm", [null, null])],
    ["a width in inches", ["2", "2 1/4"], { widths: { in: 45, cm: null } }, {}, main("yd", "45in cm", [2, 2.25])],
    ["widths in both", ["2", "2 1/4"], { widths: { in: 45, cm: 115 } }, {}, main(null, "45in 115cm", [2, 2.25])],
    ["nothing", ["2", "2-2 1/4"], {}, {}, main(null, null, [2, 2.25])],
    ["its own inches", ['36"', '45"'], {}, {}, main("yd", null, [1, 1.25])],
  ])("takes the unit of amounts from %s", (_, values, state, fit, rows) => {
    expect(read("Main", values, stateOf(state), fit).rows).toEqual(rows);
  }); // prettier-ignore
  it("says once that amounts in inches or centimetres were turned, and of others nothing", () => {
    expect(read("Main", ["190 cm", "210 cm"], stateOf()).said).toEqual([doubts.converted("cm", "m")]);
    expect(read("Main", ['36"', '45"'], stateOf()).said).toEqual([doubts.converted("in", "yd")]);
    expect(read("Main", ["2", "2"], stateOf()).said).toEqual([]);
    expect(read("Main", ["2 m", "2 m"], stateOf()).said).toEqual([]);
  });

  it("leaves out a row that lost its label, but not the other unit of the row above", () => {
    const second = [["A", "lining", "45in cm", "with", "m", [1.9, 2.1]]];
    const state = () => stateOf({ previous: above() });
    expect(read("", ["1.9 m", "2.1 m"], stateOf()).rows).toEqual(main("m", null, [1.9, 2.1]));
    expect(read("", ["1.9", "2.1"], stateOf()).rows).toBeNull();
    expect(read("", ["1.9", "2.1"], state()).rows).toBeNull();
    expect(read("", ["2 yd", "2 yd"], state()).rows).toBeNull();
    expect(read("", ["1.9 m", "2.1 m"], state()).rows).toEqual(second);
    expect(read("", ["wool", "1.9 m"], state()).rows).toEqual([["A", "lining", "45in cm", "with", "m", [null, 1.9]]]);
    expect(read("", ["1.9", "2.1"], state(), { trailing: "m" }).rows).toEqual(second);
    expect(read("", ["1.9", "2.1"], state(), { roles: new Map<Role, string>([["unit", "m"]]) }).rows).toEqual(second);
    expect(read("", ["1.9", "2.1"], stateOf({ widths: { in: 45, cm: null } })).rows).toEqual(main("yd", "45in cm", [1.9, 2.1]));
    expect(read("", ["1.9 m", "2.1 m"], stateOf({ previous: measureOf("bust", [34, 36], "in", { header }) })).rows).toEqual(main("m", null, [1.9, 2.1]));
    expect(read("", ["1.9 m", "2.1 m"], stateOf({ previous: above({ header: headerOf(["6", "8"]) }) })).rows).toEqual(main("m", null, [1.9, 2.1]));
  }); // prettier-ignore

  // 45 in is 114.3 cm, printed as 115; 2 yd is 1.83 m, printed as 1.9.
  it.each<[string, FabricRecord, string, readonly string[], string]>([
    ["the metric width", above(), "115 cm", ["1.9", "2.1"], "m"],
    ["the width in inches", above({ widths: { in: null, cm: 115 } }, "m"), '45"', ["2.1", "2.4"], "yd"],
    ["the same width in the other unit", above(), '45"', ["1.9 m", "2.1 m"], "m"],
  ])("takes views, part and nap from the row above when a row gives %s of the same cloth", (_, previous, label, values, unit) => {
    const { rows, said } = read(label, values, stateOf({ previous, views: ["C"] }));
    expect(rows![0]!.filter((_, index) => index !== 2)).toEqual(["A", "lining", "with", unit, values.map(Number.parseFloat)]);
    expect(said).toEqual([]);
  }); // prettier-ignore
  it.each<[string, FabricRecord, string, readonly string[]]>([
    ["another width", above(), "150 cm", ["1.9", "2.1"]],
    ["another width in inches", above({ widths: { in: null, cm: 115 } }, "m"), '60"', ["2.1", "2.4"]],
    ["amounts far below", above(), "115 cm", ["1.6", "1.8"]],
    ["amounts far above", above({}, "m"), "115 cm", ["2.5", "2.9"]],
    ["the same width without a unit", above(), '45"', ["1.9", "2.1"]],
    ["the same width in the same unit", above(), '45"', ["2 yd", "2 yd"]],
    ["both widths where one stood", above(), '45" (115 cm)', ["1.9 m", "2.1 m"]],
    ["the metric width where both stood", above({ widths: { in: null, cm: 150 } }), "115 cm", ["1.9", "2.1"]],
    ["a width where none stood", above({ widths: null }), "115 cm", ["1.9", "2.1"]],
  ])("takes a row of its own from %s", (_, previous, label, values) => {
    const { rows, said } = read(label, values, stateOf({ previous, views: ["C"] }));
    expect([rows![0]![0], rows![0]![1], rows![0]![3]]).toEqual(["C", "main", null]);
    expect(said).toEqual([doubts.partCarried("lining")]);
  });
  it("lets a second unit name its own view or part", () => {
    expect(read("B 115 cm", ["1.9", "2.1"], stateOf({ previous: above() })).rows).toEqual([["B", "main", "in 115cm", null, "m", [1.9, 2.1]]]);
    expect(read("Trim 115 cm", ["1.9", "2.1"], stateOf({ previous: above() })).rows).toEqual([["", "trim", "in 115cm", null, "m", [1.9, 2.1]]]);
  }); // prettier-ignore
  it("says where the two units of a row can't be one length", () => {
    const state = stateOf({ previous: above() });
    read("115 cm", ["1.9", "2.6"], state);
    expect(state.found.issues).toEqual([
      { line: 7, column: 3, size: "8", severity: "warning", message: doubts.unitsApart("2.25 yd", "2.6 m") },
    ]);
    expect(read("115 cm", ["1.9", "-"], stateOf({ previous: above() })).said).toEqual([]);
    expect(read("115 cm", ["1.9", "9"], stateOf({ previous: above({ figures: [2, null] }) })).said).toEqual([]);
  });

  it("reads one figure for all sizes only where it is one of cloth", () => {
    const single = { single: true };
    expect(read("Buttons", ["2", "2"], stateOf(), single).rows).toBeNull();
    expect(read("Elastic", ['25"', '25"'], stateOf(), single).rows).toBeNull();
    expect(read("Elastic", ["25 cm", "25 cm"], stateOf(), single).rows).toBeNull();
    expect(read("Lining sizes 6", ["2", "2"], stateOf(), single).rows).toBeNull();
    expect(read("Elastic", ["2 yd", "2 yd"], stateOf(), single).rows).toEqual([["", "elastic", null, null, "yd", [2, 2]]]);
    expect(read("Lining", ["2", "2"], stateOf(), single).said).toEqual([doubts.single("8")]);
    for (const words of ["all sizes", "alle Größen", "toutes tailles", "todas", "todos", "tutte"])
      expect(read(`Lining ${words}`, ["2", "2"], stateOf(), single).said).not.toContain(doubts.single("8"));
    expect(read("Lining", ["2", "2"], stateOf()).said).toEqual([]);
    expect(read("Lining", ["2", "2", "2"], stateOf({ header: headerOf(["6", "8", "10"]) }), single).said).toEqual([]);
  }); // prettier-ignore
  it("says what it doubts of where the figures stand", () => {
    expect(read("Lining", ["2", ""], stateOf(), { doubt: "placed" }).said).toEqual([doubts.placed("Lining", ["8"])]);
    expect(read("Lining", ["2", "2"], stateOf(), { doubt: "ditto" }).said).toEqual([doubts.dittoUnsure()]);
    expect(read("Yoke", ["2", "2"], stateOf()).said).toEqual([doubts.unknownPart("yoke")]);
  });
  it("takes the nap from the row, its stars' note, or the line above", () => {
    const state = (): FabricState => stateOf({ nap: "either", stars: new Map([["*", "without" as const]]) });
    const nap = (label: string) => read(label, ["2", "2"], state());
    expect(nap("Lining* with nap")).toMatchObject({ rows: [["", "lining", null, "with", null, [2, 2]]], said: [] });
    expect(nap("Lining*")).toMatchObject({ rows: [["", "lining", null, "without", null, [2, 2]]], said: [] });
    expect(nap("Lining")).toMatchObject({ rows: [["", "lining", null, "either", null, [2, 2]]], said: [] });
    expect(nap("Lining**")).toMatchObject({ rows: [["", "lining", null, "either", null, [2, 2]]], said: [doubts.starUnknown("**")] });
  }); // prettier-ignore

  it("takes a row without a part for main, unless main has that cloth already", () => {
    const previous = above({ widths: { in: 45, cm: null } });
    const has = (more: Partial<FabricRecord>): FabricRecord =>
      clothOf([2, 2], "yd", { header, views: ["A"], widths: { in: 60, cm: null }, ...more });
    const part = (readings: FabricState["readings"]): unknown => {
      const { rows, said } = read('60"', ["2", "2"], stateOf({ previous, views: ["A"], readings }));
      return [rows![0]![1], ...said];
    };
    const carried = ["main", doubts.partCarried("lining")];
    expect(part([has({})])).toEqual(["lining"]);
    expect(part([])).toEqual(carried);
    for (const more of [{ widths: { in: 45, cm: null } }, { widths: { in: 60, cm: 150 } }, { widths: null }, { nap: "with" as const }, { views: ["B"] }, { part: "trim" }, { header: headerOf(["6", "8"]) }])
      expect(part([has(more)])).toEqual(carried);
    expect(part([measureOf("bust", [34, 36], "in", { header })])).toEqual(carried);
  }); // prettier-ignore
  it("has no doubt about main behind main, behind a view, in a table with headed columns, or under a part", () => {
    const roles = new Map<Role, string>([["nap", ""]]);
    expect(read('60"', ["2", "2"], stateOf({ previous: above({ part: "main" }) })).said).toEqual([]);
    expect(read('B 60"', ["2", "2"], stateOf({ previous: above() })).said).toEqual([]);
    expect(read('60"', ["2", "2"], stateOf({ previous: above() }), { roles }).said).toEqual([]);
    expect(read('60"', ["2", "2"], stateOf({ previous: above(), part: "trim" }))).toMatchObject({ rows: [["", "trim", "60in cm", null, "yd", [2, 2]]], said: [] });
  }); // prettier-ignore

  it.each<[string, readonly (readonly [Role, string])[], string, unknown[]]>([
    ["view, part, width, unit and nap", [["view", " B "], ["part", " Lining "], ["width", "115"], ["widthUnit", "cm"], ["nap", "without"]], "B Lining", ["B", "lining", "in 115cm", "without"]],
    ["a view of its own name", [["view", "Dress"], ["width", '45"']], 'Dress 45"', ["Dress", "main", "45in cm", null]],
    ["a blank view", [["view", " "], ["part", "Lining"]], "B Lining", ["D", "lining", null, null]],
    ["a view alone", [["view", "B"]], 'B Trim 45" with nap', ["B", "trim", "45in cm", "with"]],
    ["a part and a width", [["part", "Lining"], ["width", '60"']], "C Trim", ["D", "lining", "60in cm", null]],
    ["a part alone", [["part", "Trim"]], 'B Trim 45"', ["B", "trim", "45in cm", null]],
    ["a width alone", [["width", "150 cm"]], "B Lining", ["B", "lining", "in 150cm", null]],
    ["a width that its label says too", [["width", "150 cm"]], 'Lining 60"', ["D", "lining", "60in cm", null]],
    ["the nap alone", [["nap", "With"]], 'Lining 45"', ["D", "lining", "45in cm", "with"]],
    ["the nap in words, with part and width", [["part", "Lining"], ["width", '45"'], ["nap", "w/o nap"]], "Lining", ["D", "lining", "45in cm", "without"]],
    ["a unit alone", [["unit", "yd"]], 'C Trim 45"', ["C", "trim", "45in cm", null]],
  ])("reads columns for %s", (_, roles, label, wanted) => {
    const { rows } = read(label, ["2", "2"], stateOf({ views: ["D"] }), { roles: new Map(roles) });
    expect(rows![0]!.slice(0, 4)).toEqual(wanted);
  }); // prettier-ignore
});
