import { describe, expect, test } from "vitest";
import { figureIn, readFigureCell, readSpan, scaled, spanText } from "../../src/chart/cells-figure";

describe("readFigureCell", () => {
  test.each([
    [31.5, { figure: 31.5, unit: null }],
    ["30 1/2 in", { figure: 30.5, unit: "in" }],
    ["77,5 cm", { figure: 77.5, unit: "cm" }],
    ["86-90", { figure: { low: 86, high: 90 }, unit: null }],
    [20_000, { figure: 20_000, unit: null }],
  ])("reads %j", (cell, figure) => expect(readFigureCell(cell)).toEqual(figure));
  test.each([null, "", " ", 0, "0", "-", "--", "N/A", "x", ".", "none"])("takes %j for nothing", (cell) =>
    expect(readFigureCell(cell)).toEqual({ figure: null, unit: null }),
  );
  test.each([
    [-3, "unreadableFigure"],
    ["-3", "unreadableFigure"],
    ["wide", "unreadableFigure"],
    ["90-86", "unreadableFigure"],
    ["20001", "unreadableFigure"],
    [true, "unreadableFigure"],
    [20_001, "excelDate"],
  ])("keeps why %j is none", (cell, code) => {
    expect(readFigureCell(cell)).toMatchObject({ figure: { fault: { code } }, unit: null });
  });
  test("keeps a sheet's error", () => {
    expect(readFigureCell({ error: "#DIV/0!" })).toEqual({
      figure: { fault: { code: "errorCell", details: { error: "#DIV/0!" } }, error: "#DIV/0!" },
      unit: null,
    });
  });
});

describe("readSpan", () => {
  test.each([
    ["30 1/2 to 31 in", { figure: { low: 30.5, high: 31 }, unit: "in" }],
    ["30 in to 31", { figure: { low: 30, high: 31 }, unit: "in" }],
    ["76 cm - 80 cm", { figure: { low: 76, high: 80 }, unit: "cm" }],
    ["76 bis 80", { figure: { low: 76, high: 80 }, unit: null }],
  ])("reads %s", (text, figure) => expect(readSpan(text)).toEqual(figure));
  test.each(["30 in to 80 cm", "31-30", "31-31", "0-5", "30", "5-20001", `${"1".repeat(30)}-${"2".repeat(30)}`])(
    "doesn't read %s",
    (text) => expect(readSpan(text)).toBe(undefined),
  );
});

describe("figureIn", () => {
  // 1 in = 2.54 cm exactly.
  test("turns numbers and both ends of a range", () => {
    expect(figureIn(10, "in", "cm")).toBe(25.4);
    expect(figureIn({ low: 10, high: 100 }, "in", "cm")).toEqual({ low: 25.4, high: 254 });
  });
  test("leaves alone what has no unit, has that unit, is blank or faulty", () => {
    const fault = { fault: { code: "errorCell", details: { error: "#N/A" } } } as const;
    expect(figureIn(10, null, "cm")).toBe(10);
    expect(figureIn(10, "in", null)).toBe(10);
    expect(figureIn(10, "cm", "cm")).toBe(10);
    expect(figureIn(null, "in", "cm")).toBe(null);
    expect(figureIn(fault, "in", "cm")).toBe(fault);
  });
});

describe("scaled", () => {
  test("changes a number and both ends of a range", () => {
    expect(scaled(3, (value) => value * 12)).toBe(36);
    expect(scaled({ low: 3, high: 4 }, (value) => value * 12)).toEqual({ low: 36, high: 48 });
    expect(scaled(null, (value) => value * 12)).toBe(null);
  });
});

describe("spanText", () => {
  test("shows both ends without their unit", () => {
    expect(spanText({ low: 30.5, high: 31 }, "in")).toBe("30 1/2 to 31");
    expect(spanText({ low: 76.5, high: 80 }, "cm")).toBe("76.5 to 80");
  });
});
