import { describe, expect, test } from "vitest";
import { aligned } from "../../src/practice/aligned";
import {
  columnLetters,
  formatArea,
  intersect,
  parseArea,
  quoteSheet,
  splitSheet,
} from "../../src/practice/univer/address";
import { renamed, resolved, shortened } from "../../src/practice/univer/book/structured";
import { readTyped } from "../../src/practice/univer/book/typed";

describe("addresses", () => {
  test("are read and written the same", () => {
    for (const text of ["A1", "B2:D9", "A:C", "3:7", "XFD1048576"]) expect(formatArea(parseArea(text)!)).toBe(text);
    expect(parseArea("$D$9:B2")).toEqual({ row: 1, column: 1, rows: 8, columns: 3 });
    expect(["A", "A1:B", "Total", "A1:B2:C3", "", "12"].map(parseArea)).toEqual(Array(6).fill(undefined));
    expect([columnLetters(0), columnLetters(25), columnLetters(26), columnLetters(16_383)]).toEqual([
      "A",
      "Z",
      "AA",
      "XFD",
    ]);
  });

  test("keep the sheet apart, quoted where it must be", () => {
    expect(splitSheet("'Ada''s sheet'!A1")).toEqual({ sheet: "Ada's sheet", local: "A1" });
    expect(splitSheet("A1")).toEqual({ local: "A1" });
    expect([quoteSheet("Sheet1"), quoteSheet("My sheet"), quoteSheet("A1")]).toEqual(
      ["'Sheet1'", "'My sheet'", "'A1'"].map((name, at) => (at ? name : "Sheet1")),
    );
    expect(intersect(parseArea("A1:B2")!, parseArea("C3")!)).toBeUndefined();
  });
});

describe("readTyped", () => {
  const value = (text: string) => {
    const typed = readTyped(text, 2026);
    return typed.kind === "value" ? typed.value : typed.kind;
  };
  test("reads numbers, shares, money and fractions", () => {
    expect(["8", "-8.5", "1e3", "1,234.5", "12%", "$4.50", "37 1/2", "-2 3/8", "0 7/8"].map(value)).toEqual([
      8, -8.5, 1000, 1234.5, 0.12, 4.5, 37.5, -2.375, 0.875,
    ]);
  });

  // Day numbers worked out from 1900-01-01 = 1: 46185 is 2026-06-12, as Excel counts.
  test("makes dates of sewing's size groups and fractions, as Excel does", () => {
    expect(value("6-12")).toBe(46_185);
    expect(value("7/8")).toBe(46_211);
    expect(value("12-18")).toBe(46_374);
    expect(value("14-20")).toBe("text");
    expect(readTyped("7/8", 2026)).toMatchObject({ format: "d-mmm" });
    expect(value("12 Jun")).toBe(46_185);
  });

  test("leaves the rest as text", () => {
    for (const text of ["37½", "30 1/0", "02W", "", "A-C", "- words", "1 2 3", "2/30/2026"])
      expect(value(text)).toBe("text");
    expect(readTyped("'=1+1")).toEqual({ kind: "text", text: "=1+1" });
  });

  test("takes signs and @ for the start of a formula", () => {
    expect(["=A1", "+A1", "-A1", "@SUM(1)"].map((text) => readTyped(text))).toMatchObject([
      { formula: "=A1" },
      { formula: "=+A1" },
      { formula: "=-A1" },
      { formula: "=SUM(1)" },
    ]);
  });
});

describe("references to tables", () => {
  const table = { Name: "Projects", columnNames: ["Cost", "Sale price"] };
  const find = (name: string) => (name.toLowerCase() === "projects" ? table : undefined);

  test("are lengthened and spelt as the table spells them", () => {
    expect(resolved("=[@cost]*[@[sale price]]", find, table).formula).toBe(
      "=Projects[[#This Row],[Cost]]*Projects[[#This Row],[Sale price]]",
    );
    expect(resolved("=SUM(projects[COST])", find, undefined).formula).toBe("=SUM(Projects[Cost])");
    expect(resolved('="Nobody[x]"&Projects[#All]', find, undefined)).toEqual({
      formula: '="Nobody[x]"&Projects[#All]',
      missing: [],
    });
    expect(resolved("=Nobody[x]+Projects[y]+[@Cost]", find, undefined)).toEqual({
      formula: "=#REF!+#REF!+#REF!",
      missing: ["Nobody[x]", "Projects[y]", "[@Cost]"],
    });
  });

  test("are shortened again in their own table", () => {
    const long = "=Projects[[#This Row],[Cost]]*Projects[[#This Row],[Sale price]]+SUM(Projects[Cost])";
    expect(shortened(long, "Projects")).toBe("=[@Cost]*[@[Sale price]]+SUM(Projects[Cost])");
    expect(shortened(long, undefined)).toBe("=Projects[@Cost]*Projects[@[Sale price]]+SUM(Projects[Cost])");
  });

  test("follow a renamed column, and become #REF! with a lost one", () => {
    const formula = '=SUM(Projects[[Cost]:[Sale price]])&"Projects[Cost]"&Other[Cost]';
    expect(renamed(formula, "projects", "cost", "Price")).toBe(
      '=SUM(Projects[[Price]:[Sale price]])&"Projects[Cost]"&Other[Cost]',
    );
    expect(renamed("=Projects[Cost]+1", "Projects", "Cost", undefined)).toBe("=#REF!+1");
  });
});

describe("aligned", () => {
  test("sets words to the left, figures to the right, titles by themselves", () => {
    expect(
      aligned([
        ["A very long title", ""],
        ["Place", "Size"],
        ["Bust", "8"],
      ]),
    ).toBe("A very long title\nPlace  Size\nBust      8");
  });
});
