import { describe, expect, it } from "vitest";
import { cellOf, endOf, type Row } from "../../../src/chart/reading/cell";
import type { FabricState } from "../../../src/chart/reading/fabric-rows";
import { fabricSentence, isPartly } from "../../../src/chart/reading/fabric-sentence";
import { Doubts, type FabricRecord } from "../../../src/chart/reading/record";
import { clothOf, headerOf, measureOf } from "./records";

const header = headerOf(["6", "8"]);
const stateOf = (more: Partial<FabricState> = {}): FabricState => ({
  kind: "fabric", unit: null, header, views: null, part: null, nap: null, widths: null, stars: new Map(), previous: null,
  viewsNamed: new Set(), readings: [], found: new Doubts(), ...more,
}); // prettier-ignore
const rowOf = (text: string): Row => ({ line: 3, text, layout: "spaced", cells: [cellOf(text, 3, 1)] });
const read = (text: string, state = stateOf()) => {
  const found = fabricSentence(rowOf(text), text, state) as FabricRecord[] | null;
  return found && found.map(({ views, part, widths, nap, unit, figures }) => [
    views === "all" ? views : views.join(), part, widths && [widths.in, widths.cm], nap, unit, figures,
  ]);
}; // prettier-ignore

describe("isPartly", () => {
  it.each(["sizes 6-8", "Gr. 36", "taille 36", "Lining sizes 36-42", "2 yd of lining and", "lining 1/2 m and"])(
    "sees a part in %s",
    (text) => {
      expect(isPartly(text)).toBe(true);
    },
  );
  it.each(["Lining", 'Lining 45"', "all sizes", ""])("sees none in %j", (text) => {
    expect(isPartly(text)).toBe(false);
  });
});

describe("fabricSentence", () => {
  it("gives every size the amount, with the words it was said in", () => {
    const text = 'Interfacing A, B - 7/8 yd of 20" to 25" fusible';
    const state = stateOf();
    const [record] = fabricSentence(rowOf(text), text, state) as FabricRecord[];
    expect(record).toMatchObject({
      sort: "fabric", label: text, line: 3, views: ["A", "B"], part: "interfacing", nap: null, unit: "yd", figures: [0.875, 0.875],
      widths: { in: 25, cm: null },
    }); // prettier-ignore
    expect(record!.header).toBe(header);
    expect(record!.cells).toEqual([cellOf(text, 3, 1), cellOf(text, 3, 1)]);
    expect([state.views, [...state.viewsNamed]]).toEqual([["A", "B"], ["A", "B"]]); // prettier-ignore
  });
  it.each<[string, Partial<FabricState>, unknown[] | null]>([
    ["Lining 1 1/2 yd", {}, [["", "lining", null, null, "yd", [1.5, 1.5]]]],
    ["1 1/2 yd lining", {}, [["", "lining", null, null, "yd", [1.5, 1.5]]]],
    ["Lining: 1.5 m (1 5/8 yd)", {}, [["", "lining", null, null, "m", [1.5, 1.5]], ["", "lining", null, null, "yd", [1.625, 1.625]]]],
    ["Lining 2 yd and 1 yd", {}, null],
    ["Lining 2 yd, 1.9 m, 2 yd", {}, null],
    ["Lining", {}, null],
    ["Lining sizes 6: 2 yd", {}, null],
    ["Lining 2 yd with nap", {}, [["", "lining", null, "with", "yd", [2, 2]]]],
    ["All views lining 2 yd", {}, [["all", "lining", null, null, "yd", [2, 2]]]],
    ["Thread 2 yd", {}, null],
    ["Lining 2 metres", { kind: "body" }, [["", "lining", null, null, "m", [2, 2]]]],
    ['45" 2 yd', {}, [["", "main", [45, null], null, "yd", [2, 2]]]],
    ['45" 2 yd', { part: "trim" }, [["", "trim", [45, null], null, "yd", [2, 2]]]],
    ['45" 2 yd', { kind: "body" }, null],
    ['Godet 45" 2 yd', { kind: "body" }, null],
    ["Godet 2 yd", {}, null],
    ["Lining 2 yd", { widths: { in: null, cm: 140 } }, [["", "lining", [null, 140], null, "yd", [2, 2]]]],
    ["Lining 2 yd", { views: ["C"], previous: clothOf([2, 2], "yd", { views: ["B"] }) }, [["C", "lining", null, null, "yd", [2, 2]]]],
    ["Lining 2 yd", { previous: clothOf([2, 2], "yd", { views: ["B"] }) }, [["B", "lining", null, null, "yd", [2, 2]]]],
    ["Lining 2 yd", { previous: measureOf("bust", [34, 36], "in", { view: "B" }) }, [["", "lining", null, null, "yd", [2, 2]]]],
  ])("reads %s", (text, state, wanted) => {
    expect(read(text, stateOf(state))).toEqual(wanted);
  }); // prettier-ignore
  it("keeps no letters of all views, and reads a line of 160 characters but none longer", () => {
    const state = stateOf();
    read("All views lining 2 yd", state);
    expect([state.views, state.viewsNamed.size]).toEqual(["all", 0]);
    const line = (length: number): string => "Lining 2 yd ".padEnd(length, ".");
    expect(read(line(160))).toEqual([["", "lining", null, null, "yd", [2, 2]]]);
    expect(read(line(161))).toBeNull();
    expect((fabricSentence(rowOf(""), line(160), stateOf()) as FabricRecord[])[0]!.label).toHaveLength(120);
  });
});

describe("endOf", () => {
  it("stands behind the last character", () => {
    expect(endOf(cellOf("34", 1, 5))).toBe(7);
  });
});
