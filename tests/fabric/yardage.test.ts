import { describe, expect, test } from "vitest";
import type { FabricChart, FabricChartRow } from "../../src/chart/model";
import { columnsOfSize, printedYardage, type YardageQuestion } from "../../src/fabric/yardage";
import { isNarrower, knownWidth, sameWidth } from "../../src/fabric/yardage-width";

const row = (width: number | null, values: (number | null)[], more: Partial<FabricChartRow> = {}): FabricChartRow => ({
  view: "A", part: "main", label: "", width, widthUnit: "in", nap: null, values, ...more,
}); // prettier-ignore
const table = (...rows: FabricChartRow[]): FabricChart => ({
  kind: "fabric",
  unit: "yd",
  sizes: ["10", "12", "14"],
  rows,
});
const ask = (charts: FabricChart[], question: Partial<YardageQuestion>) => {
  const found = printedYardage(charts, { view: "A", width: { value: 45, unit: null }, size: "12", ...question });
  return found.ok ? found.value.amount : found.problem.code;
};

describe("sameWidth", () => {
  // Common practice, no source.
  test("counts a bolt's two names, and inches and centimetres, as one", () => {
    const inches = (value: number) => ({ value, unit: "in" as const });
    const cm = (value: number) => ({ value, unit: "cm" as const });
    for (const [one, other] of [
      [35, 36],
      [44, 45],
      [58, 60],
    ] as const)
      expect(sameWidth(inches(one), inches(other))).toBe(true);
    for (const [one, other] of [
      [36, 90],
      [45, 115],
      [54, 140],
      [60, 150],
    ] as const) {
      expect(sameWidth(inches(one), cm(other))).toBe(true);
      expect(sameWidth(cm(other), inches(one))).toBe(true);
    }
    expect(sameWidth(inches(45), inches(54))).toBe(false);
    expect(sameWidth(inches(54), cm(150))).toBe(false);
    expect(isNarrower(cm(140), inches(60))).toBe(true);
  });
  test("takes a bare width up to 80 for inches", () => {
    expect(knownWidth({ value: 80, unit: null }).unit).toBe("in");
    expect(knownWidth({ value: 90, unit: null }).unit).toBe("cm");
  });
});

describe("columnsOfSize", () => {
  test("takes every column of a blend from one end to the other, or the two that are named", () => {
    const sizes = ["10", "12", "14", "16"];
    expect(columnsOfSize(sizes, "10-14")).toEqual({ ok: true, value: [0, 1, 2] });
    expect(columnsOfSize(sizes, "14 to 10")).toEqual({ ok: true, value: [0, 1, 2] });
    expect(columnsOfSize(sizes, "10+14")).toEqual({ ok: true, value: [0, 2] });
    expect(columnsOfSize(["8-10", "12-14"], "12-14")).toEqual({ ok: true, value: [1] });
    expect(columnsOfSize(sizes, "10-15")).toMatchObject({ ok: false });
    expect(columnsOfSize(sizes, "-")).toMatchObject({ ok: false });
  });
});

describe("printedYardage", () => {
  test("prefers the table in the width's own unit", () => {
    const metric: FabricChart = { ...table(row(115, [2, 2.1, 2.2], { widthUnit: "cm" })), unit: "m" };
    expect(ask([table(row(45, [2.1, 2.2, 2.3])), metric], {})).toBe(2.2);
    expect(ask([table(row(45, [2.1, 2.2, 2.3])), metric], { width: { value: 115, unit: null } })).toBe(2.1);
    expect(ask([metric], {})).toBe(2.1);
  });
  test("takes an amount without a width for every width", () => {
    expect(
      ask([table(row(null, [1, 1.5, 2], { part: "ribbing" }))], { part: "Ribbing", width: { value: 70, unit: null } }),
    ).toBe(1.5);
  });
  test("asks only the tables that have the size", () => {
    const women: FabricChart = { ...table(row(45, [3, 3.1])), sizes: ["18W", "20W"] };
    expect(ask([table(row(45, [2, 2.1, 2.2])), women], { size: "20w" })).toBe(3.1);
    expect(ask([women], { size: "12" })).toBe("sizeNotOnChart");
  });
  test("needs no view where the table names at most one", () => {
    expect(ask([table(row(45, [2, 2.1, 2.2], { view: "" }))], { view: "" })).toBe(2.1);
    expect(ask([table(row(45, [2, 2.1, 2.2]))], { view: "" })).toBe(2.1);
    expect(ask([table(row(45, [2, 2.1, 2.2]), row(45, [3, 3, 3], { view: "B" }))], { view: "" })).toBe("blank");
  });
  test("refuses an amount that isn't printed, for any size of a blend", () => {
    expect(ask([table(row(45, [2, null, 2.2]))], { size: "10-14" })).toBe("noAmount");
    expect(ask([table(row(45, [2, null, 2.2]))], { size: "10+14" })).toBe(2.2);
  });
});
