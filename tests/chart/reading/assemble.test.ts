import { describe, expect, it } from "vitest";
import type { LengthUnit } from "../../../src/length";
import { assemble, tableOf } from "../../../src/chart/reading/assemble";
import { Doubts, type FabricRecord, type Reading } from "../../../src/chart/reading/record";
import { doubts } from "../../../src/words/reading";
import { clothOf, headerOf, measureOf } from "./records";

const said = (readings: readonly Reading[]): string[] => {
  const found = new Doubts();
  assemble(readings, new Set(), found);
  return found.issues.map(({ line, message }) => `${line} ${message}`);
};
const units = (readings: readonly Reading[]): (LengthUnit | null)[] => {
  assemble(readings, new Set(), new Doubts());
  return readings.map(({ unit }) => unit);
};

describe("assemble", () => {
  it("makes a table of each kind, unit and list of sizes, in the order of the paste, without rows of blanks", () => {
    const bust = measureOf("bust", [34, 36], "in");
    const bustCm = measureOf("bust", [86, 92], "cm");
    const made = measureOf("bust", [38, 40], "in", { kind: "finished" });
    const hip = measureOf("hip", [36, 38], "in");
    const other = measureOf("bust", [38, 40], "in", { header: headerOf(["10", "12"]) });
    const cloth = clothOf([2, 2.25], "yd", { views: ["B"] });
    const blank = measureOf("waist", [null, null], "in");
    const tables = assemble([bust, bustCm, made, hip, blank, cloth, other], new Set(["A"]), new Doubts());
    expect(tables).toEqual([
      { kind: "body", unit: "in", sizes: ["6", "8"], records: [bust, hip] },
      { kind: "body", unit: "cm", sizes: ["6", "8"], records: [bustCm] },
      { kind: "finished", unit: "in", sizes: ["6", "8"], records: [made] },
      { kind: "fabric", unit: "yd", sizes: ["6", "8"], records: [cloth], views: ["A", "B"] },
      { kind: "body", unit: "in", sizes: ["10", "12"], records: [other] },
    ]);
  });
  it("knows the views that headings and rows name, each once, and no blank one", () => {
    const rows = [["B", "A"], ["C"], [""]].map((views) => clothOf([2, 2], "yd", { views }));
    const tables = assemble([...rows, clothOf([2, 2], "yd", { views: "all" })], new Set(["A"]), new Doubts());
    expect(tables).toMatchObject([{ views: ["A", "B", "C"] }]);
  });

  it("tells the unit of each table that prints none from its own numbers", () => {
    const inches = measureOf("bust", [34, 36], null, { line: 2 });
    const hip = measureOf("hip", [36, 38], null, { line: 3 });
    const metric = measureOf("bust", [96, 102], null, { kind: "finished", line: 4 });
    const others = measureOf("bust", [86, 92], null, { header: headerOf(["36", "38"]), line: 5 });
    expect(said([inches, hip, metric, others])).toEqual([
      `2 ${doubts.unitFromNumbers("inches")}`,
      `4 ${doubts.unitFromNumbers("centimetres")}`,
      `5 ${doubts.unitFromNumbers("centimetres")}`,
    ]);
    expect([inches, hip, metric, others].map(({ unit }) => unit)).toEqual(["in", "in", "cm", "cm"]);
  });
  it("follows the other tables' unit where the numbers would do in either, when they have one", () => {
    const unsure = () => measureOf("hand", [12, 13], null, { line: 4 });
    expect(said([measureOf("bust", [86, 92], "cm"), unsure()])).toEqual([`4 ${doubts.unitFromNumbers("centimetres")}`]);
    expect(said([measureOf("bust", [34, 36], "in"), unsure()])).toEqual([`4 ${doubts.unitFromNumbers("inches")}`]);
    expect(said([unsure()])).toEqual([`4 ${doubts.unitUnsure("inches")}`]);
    const both = [measureOf("bust", [86, 92], "cm"), measureOf("bust", [34, 36], "in")];
    expect(said([...both, unsure()])).toEqual([`4 ${doubts.unitUnsure("inches")}`]);
  });

  it("takes amounts without a unit in that of their table's other rows", () => {
    const header = headerOf(["6", "8"]);
    const bare = (): FabricRecord => clothOf([2, 2.5], null, { header, line: 7 });
    expect(units([bare(), clothOf([2, 2], "yd", { header })])[0]).toBe("yd");
    expect(said([bare(), clothOf([2, 2], "yd", { header })])).toEqual([]);
    const far = clothOf([2, 2], "yd");
    expect(units([far, bare()])[1]).toBe("m");
    expect(units([clothOf([3, 3], null), far, bare(), clothOf([2, 2], "m", { header })])).toEqual(["m", "yd", "m", "m"]);
  }); // prettier-ignore
  it.each<[string, readonly (number | null)[], LengthUnit | null, string]>([
    ["eighths are yards", [2, 2.125], null, "yd"],
    ["eighths are yards beside a blank", [null, 1.875], null, "yd"],
    ["quarters are yards", [2.25, 1.75], null, "yd"],
    ["halves are either", [2.5, 1.5], null, "m"],
    ["tenths are metres", [1.9, 2.1], null, "m"],
    ["wholes follow the measurements in inches", [2, 3], "in", "yd"],
    ["wholes follow the measurements in centimetres", [2, 3], "cm", "m"],
  ])("tells from the numbers that %s, and says so once", (_, figures, body, unit) => {
    const bodies = body ? [measureOf("bust", body === "in" ? [34, 36] : [86, 92], body)] : [];
    const rows = () => [...bodies, clothOf(figures, null, { line: 7 }), clothOf(figures, null, { line: 8 })];
    expect(units(rows()).slice(bodies.length)).toEqual([unit, unit]);
    const sentence = doubts.unitFromNumbers(unit === "yd" ? "yards" : "metres");
    expect(said([...bodies, clothOf([2, 2], unit as LengthUnit), ...rows().slice(bodies.length)])).toEqual([`7 ${sentence}`]);
  }); // prettier-ignore
});

describe("tableOf", () => {
  it("gives measurements with their view where one is named, and each other name of a size once", () => {
    const header = headerOf(["6", "8"], { aliases: [{ label: "EU", sizes: ["34", "36"] }] as never });
    const again = headerOf(["6", "8"], { aliases: [{ label: "EU", sizes: ["9", "9"] }, { label: "UK", sizes: ["8", "10"] }] as never });
    const records = [measureOf("bust", [34, null], "in", { header }), measureOf("hip", [36, 38], "in", { header: again, view: "A" })];
    expect(tableOf({ kind: "body", unit: "in", sizes: ["6", "8"], records })).toEqual({
      kind: "body", unit: "in", sizes: ["6", "8"],
      aliases: [{ label: "EU", sizes: ["34", "36"] }, { label: "UK", sizes: ["8", "10"] }],
      rows: [
        { place: "bust", label: "The bust", values: [34, null] },
        { place: "hip", view: "A", label: "The hip", values: [36, 38] },
      ],
    });
    expect(tableOf({ kind: "body", unit: "in", sizes: ["6"], records: [measureOf("bust", [34], "in")] })).not.toHaveProperty("aliases");
  }); // prettier-ignore
  it.each<["yd" | "m", FabricRecord["widths"], number | null, string]>([
    ["yd", { in: 45, cm: 115 }, 45, "in"],
    ["m", { in: 45, cm: 115 }, 115, "cm"],
    ["yd", { in: null, cm: 115 }, 115, "cm"],
    ["m", { in: 45, cm: null }, 45, "in"],
    ["yd", null, null, "in"],
    ["m", null, null, "cm"],
  ])("gives cloth in %s and %j its width as %s %s", (unit, widths, width, widthUnit) => {
    const record = clothOf([{ low: 2, high: 2.5 }, null], unit, { widths, views: ["A"], nap: "with" });
    const table = tableOf({ kind: "fabric", unit, sizes: ["6", "8"], records: [record], views: ["A"] });
    expect(table).toEqual({
      kind: "fabric", unit, sizes: ["6", "8"],
      rows: [{ view: "A", part: "main", label: "Cloth", width, widthUnit, nap: "with", values: [2.25, null] }],
    });
  }); // prettier-ignore
  it("gives a row to each view, to all that are known, or to none", () => {
    const rows = (views: FabricRecord["views"], known: readonly string[]): unknown =>
      tableOf({ kind: "fabric", unit: "yd", sizes: ["6"], records: [clothOf([2], "yd", { views })], views: known })
        .rows.map((row) => ("view" in row ? row.view : undefined)); // prettier-ignore
    expect(rows(["A", "C"], ["A", "B", "C"])).toEqual(["A", "C"]);
    expect(rows("all", ["A", "B"])).toEqual(["A", "B"]);
    expect(rows("all", [])).toEqual([""]);
  });
});
