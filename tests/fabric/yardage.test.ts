import { describe, expect, test } from "vitest";
import type { FabricChart, FabricChartRow } from "../../src/chart/model";
import { columnsOfSize, printedYardage, type YardageQuestion } from "../../src/fabric/yardage";
import { sentence } from "../../src/words";
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
    expect(columnsOfSize(sizes, "12-14")).toEqual({ ok: true, value: [1, 2] });
    expect(columnsOfSize(sizes, " 16 - 12 ")).toEqual({ ok: true, value: [1, 2, 3] });
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
  // The same 1 yd, or 0.95 m, of interfacing whatever its width: inches are asked in yards, centimetres in metres.
  test("takes an amount without a width from the table of the width's own unit", () => {
    const yards = table(row(null, [1, 1, 1], { part: "interfacing" }));
    const metres: FabricChart = { ...table(row(null, [0.95, 0.95, 0.95], { part: "interfacing" })), unit: "m" };
    const of = (charts: FabricChart[], value: number, unit: "in" | "cm") => {
      const found = printedYardage(charts, { view: "A", width: { value, unit }, size: "12", part: "interfacing" });
      return found.ok && [found.value.amount, found.value.unit];
    };
    for (const charts of [
      [yards, metres],
      [metres, yards],
    ]) {
      expect(of(charts, 36, "in")).toEqual([1, "yd"]);
      expect(of(charts, 90, "cm")).toEqual([0.95, "m"]);
    }
    expect(of([metres], 36, "in")).toEqual([0.95, "m"]);
    expect(of([yards], 90, "cm")).toEqual([1, "yd"]);
    expect(of([{ ...yards, unit: null }], 90, "cm")).toEqual([1, null]);
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

describe("printedYardage, as an envelope prints it", () => {
  type Asked = Omit<Partial<YardageQuestion>, "width"> & { readonly width?: number | [number, "in" | "cm"] };
  const said = (charts: FabricChart[], { width = 45, ...question }: Asked = {}) => {
    const [value, unit] = typeof width === "number" ? [width, null] : width;
    const found = printedYardage(charts, { view: "A", size: "12", ...question, width: { value, unit } });
    return found.ok ? found.value : sentence(found.problem);
  };
  const printed = (amount: number, width: number, more = {}) => ({
    amount, unit: "yd", width: { value: width, unit: "in" }, estimated: false, ...more,
  }); // prettier-ignore

  test("gives the amount, its unit and the width that was asked", () => {
    const chart = table(row(45, [2, 2.125, 2.25]), row(60, [1.5, 1.625, 1.75]));
    expect(said([chart])).toEqual(printed(2.125, 45));
    expect(said([chart], { width: 60 })).toEqual(printed(1.625, 60));
    expect(said([chart], { width: [115, "cm"], size: "14" })).toEqual({ ...printed(2.25, 115), width: { value: 115, unit: "cm" } }); // prettier-ignore
    expect(said([{ ...chart, unit: null }])).toEqual(printed(2.125, 45, { unit: null }));
  });

  test("takes the largest of a blend's sizes and those between, whatever their order", () => {
    const chart = table(row(45, [2, 2.5, 2.25]));
    expect(said([chart], { size: "10-14" })).toMatchObject({ amount: 2.5 });
    expect(said([chart], { size: "14/10" })).toMatchObject({ amount: 2.5 });
    expect(said([chart], { size: "10+14" })).toMatchObject({ amount: 2.25 });
    expect(said([chart], { size: "10 - 16" })).toBe('"16" is not a size on this chart (10, 12, 14).');
  });

  test("finds a view by its letter, in lists and under all views", () => {
    const chart = table(
      row(45, [2, 2, 2], { view: "A, B" }),
      row(45, [3, 3, 3], { view: "View C" }),
      row(45, [1, 1, 1], { view: "All views", part: "interfacing" }),
    );
    const amount = (view: string, part = "main") => {
      const found = said([chart], { view, part });
      return typeof found === "string" ? found : found.amount;
    };
    expect([amount("A"), amount("view b"), amount("C"), amount("c", "Interfacing")]).toEqual([2, 2, 3, 1]);
    expect(amount("D")).toBe('"D" is not a view of this table (A, B, View C).');
    expect(amount("A", "lining")).toBe("This table has no lining for view A. It has main, interfacing.");
    expect(amount("")).toBe("This is blank: a view (A, B, View C) is needed here.");
    const nameless = table(row(45, [2, 2, 2], { view: "" }));
    expect(said([nameless], { view: "A" })).toBe(
      '"A" is not a view of this table (it names none: leave the view blank).',
    );
    expect(said([nameless], { view: "", part: "lining" })).toBe("This table has no lining. It has main.");
    expect(said([table(row(45, [2, 2, 2], { view: "Each view" }))], { view: "" })).toMatchObject({ amount: 2 });
  });

  // Common practice, no source: with nap needs as much or more, so its amount is enough without nap, never the reverse.
  test("answers for the nap that is asked, and for neither with the larger", () => {
    const both = table(row(45, [2, 2.5, 3], { nap: "with" }), row(45, [1.5, 2, 2.5], { nap: "without" }));
    const of = (chart: FabricChart, nap: YardageQuestion["nap"]) => {
      const found = said([chart], nap === undefined ? {} : { nap });
      return typeof found === "string" ? found : found.amount;
    };
    expect([of(both, "with"), of(both, "without"), of(both, null), of(both, "either"), of(both, undefined)]).toEqual([
      2.5, 2, 2.5, 2.5, 2.5,
    ]);
    const onlyWith = table(row(45, [2, 2.5, 3], { nap: "with" }));
    expect([of(onlyWith, "with"), of(onlyWith, "without")]).toEqual([2.5, 2.5]);
    const onlyWithout = table(row(45, [1.5, 2, 2.5], { nap: "without" }));
    expect(of(onlyWithout, "with")).toBe(
      "Only an amount without nap is printed for view A on 45 in: with nap it needs more, and how much isn't said.",
    );
    const either = table(row(45, [2, 2.25, 3], { nap: "either" }), row(45, [9, 9, 9]));
    expect([of(either, "with"), of(either, "without"), of(either, null)]).toEqual([2.25, 2.25, 9]);
    const unsaid = table(row(45, [2, 2.75, 3]), row(45, [1, 1, 1], { nap: "without" }));
    expect([of(unsaid, "with"), of(unsaid, "without")]).toEqual([2.75, 1]);
    const mixed = table(row(45, [2, 2.75, 3]), row(45, [4, 4, 4], { nap: "with" }));
    expect(of(mixed, "without")).toBe(2.75);
    // No nap asked, or either: the larger of all rows, whichever it is.
    const odd = table(row(45, [1, 1, 1]), row(45, [2, 2, 2], { nap: "with" }), row(45, [3, 3, 3], { nap: "without" }));
    expect([of(odd, null), of(odd, "either"), of(odd, undefined), of(odd, "with")]).toEqual([3, 3, 3, 2]);
  });

  test("takes the larger of two printed rows, one of which may be empty", () => {
    expect(said([table(row(44, [2, 2.1, 2]), row(45, [2, 2.3, 2]), row(45, [2, 2.2, 2]))])).toMatchObject({ amount: 2.3 }); // prettier-ignore
    expect(said([table(row(45, [2, null, 2]), row(45, [2, 2.2, 2]))])).toMatchObject({ amount: 2.2 });
    expect(said([table(row(45, [2, null, 2]), row(45, [1, null, 2]))])).toBe(
      "No amount is printed for view A on 45 in in size 12: choose another width or size.",
    );
    expect(said([table(row(45, [2]))])).toBe(
      "No amount is printed for view A on 45 in in size 12: choose another width or size.",
    );
  });

  test("hands on a cell that can't be read", () => {
    const fault = { fault: { code: "unreadableFigure", details: { text: "2 ?" } } } as const;
    const chart = table(row(45, [2, 2, 2]));
    const broken: FabricChart = { ...chart, rows: [{ ...chart.rows[0]!, values: [2, fault, 2] }, ...chart.rows] };
    expect(said([broken])).toBe('"2 ?" on this chart can\'t be read as a figure: correct it there.');
    expect(said([broken], { size: "10" })).toMatchObject({ amount: 2 });
    expect(said([{ ...broken, rows: broken.rows.slice(0, 1) }], { width: 60, estimate: true })).toBe(
      '"2 ?" on this chart can\'t be read as a figure: correct it there.',
    );
    // Without an estimate the sentence names no amount that it can't read.
    expect(said([{ ...broken, rows: broken.rows.slice(0, 1) }], { width: 60 })).toBe(
      "60 in is not printed here (45 in). No narrower width is printed whose amount would be enough.",
    );
  });

  const widths = table(
    row(36, [3, 3.125, 3.25]),
    row(45, [2.25, 2.375, 2.5]),
    row(60, [1.75, 1.875, 2]),
    row(60, [1.5, 1.5, 1.5]),
  );
  test("names the nearest narrower width, whose amount is always enough", () => {
    expect(said([widths], { width: 54 })).toBe(
      "54 in is not printed here (36 in, 45 in, 60 in). The 2 3/8 yd printed for 45 in is always enough; for an estimate write TRUE as the estimate.",
    );
    expect(said([widths], { width: 72 })).toBe(
      "72 in is not printed here (36 in, 45 in, 60 in). The 1 7/8 yd printed for 60 in is always enough; for an estimate write TRUE as the estimate.",
    );
    expect(said([widths], { width: 30 })).toBe(
      "30 in is not printed here (36 in, 45 in, 60 in). No narrower width is printed whose amount would be enough; TRUE as the estimate works one out from the 3 1/8 yd printed for 36 in.",
    );
  });

  // By the printed conversion chart (tests/figures): 18 eighths on 44-45 in are 15 on 52-54 in.
  test("estimates from the nearest narrower width, else from the nearest wider one", () => {
    expect(said([widths], { width: 54, estimate: true, size: "10" })).toEqual({
      amount: 1.875,
      unit: "yd",
      width: { value: 45, unit: "in" },
      estimated: true,
    });
    // 36 in wide has 3 1/8 yd: by area on 30 in 3.75 yd.
    expect(said([widths], { width: 30, estimate: true })).toEqual({
      amount: 3.75,
      unit: "yd",
      width: { value: 36, unit: "in" },
      estimated: true,
    });
    // 72 in: 1.875 × 60 / 72 = 1.5625, rounded up to the eighth.
    expect(said([widths], { width: 72, estimate: true })).toMatchObject({ amount: 1.625, width: { value: 60 } });
    expect(said([widths], { width: 54, estimate: true, nap: "with", size: "99" })).toBe(
      '"99" is not a size on this chart (10, 12, 14).',
    );
    // A table that doesn't say its unit: yards beside inches.
    expect(said([{ ...widths, unit: null }], { width: 72, estimate: true })).toEqual({
      amount: 1.625,
      unit: null,
      width: { value: 60, unit: "in" },
      estimated: true,
    });
  });

  // The amount is in the table's unit whatever the widths are in. 2 yd on 45 in (114.3 cm) are by area 1.681 yd on 136
  // cm; the chart's row below, 14 eighths on 45 in, gives 12 eighths on 132 to 140 cm, less.
  // 2.2 m of 45 in are 1.65 m of 60 in by area; 2.406 yd are 19.25 eighths, the row of 18 gives 14: 1.6002 m, less.
  test("estimates in the unit of the table, also where the widths are in the other", () => {
    const yards = table(row(45, [2, 2, 2]));
    expect(said([yards], { width: [136, "cm"], estimate: true })).toMatchObject({ amount: 1.75, unit: "yd" });
    const metres: FabricChart = { ...table(row(45, [2.2, 2.2, 2.2])), unit: "m" };
    expect(said([metres], { width: 60, estimate: true })).toMatchObject({ amount: 1.7, unit: "m" });
  });

  test("goes from the narrowest of the wider widths where none is narrower, whatever their order", () => {
    const turned = table(row(60, [1.5, 1.5, 1.5]), row(45, [2, 2, 2]), row(54, [1.75, 1.75, 1.75]));
    // 2 yd × 45 / 40 = 2.25 yd.
    expect(said([turned], { width: 40, estimate: true })).toMatchObject({ amount: 2.25, width: { value: 45 } });
  });

  test("prefers widths in the unit of the question, and takes the others where there are none", () => {
    const metric: FabricChart = { ...table(row(115, [2, 2.2, 2.4], { widthUnit: "cm" })), unit: "m" };
    // 2.2 m × 115 / 180 = 1.406 m.
    expect(said([widths, metric], { width: 180, estimate: true })).toEqual({
      amount: 1.5,
      unit: "m",
      width: { value: 115, unit: "cm" },
      estimated: true,
    });
    expect(said([widths], { width: 180 })).toBe(
      "180 cm is not printed here (36 in, 45 in, 60 in). The 1 7/8 yd printed for 60 in is always enough; for an estimate write TRUE as the estimate.",
    );
  });
});
