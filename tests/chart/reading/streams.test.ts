import { describe, expect, it } from "vitest";
import { agrees, nameBlocks, ratioOf, textOf, tidy, type Stream } from "../../../src/chart/reading/streams";
import { doubts } from "../../../src/words/reading";
import { paste, sheet } from "../paste";

const stream = (unit: Stream["unit"], ...figures: Stream["figures"]): Stream => ({ unit, figures, cells: [] });
const named = (first: Stream, second: Stream) => {
  nameBlocks([first, second]);
  return [first.unit, second.unit];
};

describe("agrees", () => {
  // 1 in = 2.54 cm and 1 yd = 0.9144 m exactly: 30 1/2 in = 77.47 cm, 2 yd = 1.8288 m, 120 in = 304.8 cm.
  it.each([
    [30.5, 78, true],
    [30.5, 78.5, true],
    [30.5, 78.6, false],
    [30.5, 76.5, true],
    [30.5, 76.4, false],
    [120, 308, true],
    [120, 309, false],
    [120, 301.5, true],
    [120, 301.4, false],
  ])("lets a chart round %d in to %d cm: %s, whichever stands first", (inch, centi, is) => {
    expect(agrees(inch, "in", centi, "cm")).toBe(is);
    expect(agrees(centi, "cm", inch, "in")).toBe(is);
  });
  it.each([
    [2, 1.99, true],
    [2, 2, false],
    [2, 1.72, true],
    [2, 1.71, false],
    [2.125, 1.95, true],
  ])("lets a chart round %d yd to %d m: %s, whichever stands first", (yards, metres, is) => {
    expect(agrees(yards, "yd", metres, "m")).toBe(is);
    expect(agrees(metres, "m", yards, "yd")).toBe(is);
  });
  it("wants both ends of a range, and nothing of a blank", () => {
    expect(agrees({ low: 30, high: 32 }, "in", { low: 76, high: 81 }, "cm")).toBe(true);
    expect(agrees({ low: 30, high: 32 }, "in", { low: 76, high: 84 }, "cm")).toBe(false);
    expect(agrees({ low: 30, high: 32 }, "in", { low: 70, high: 81 }, "cm")).toBe(false);
    expect(agrees(null, "in", 76, "cm")).toBe(true);
    expect(agrees(30, "in", null, "cm")).toBe(true);
  });
});

describe("nameBlocks", () => {
  it("tells inches from centimetres and yards from metres by how far apart they are", () => {
    expect(named(stream(null, 34, 36), stream(null, 87, 92))).toEqual(["in", "cm"]);
    expect(named(stream(null, 87, 92), stream(null, 34, 36))).toEqual(["cm", "in"]);
    expect(named(stream(null, 2.125, 2.25), stream(null, 1.95, 2.1))).toEqual(["yd", "m"]);
    expect(named(stream(null, 1.95, 2.1), stream(null, 2.125, 2.25))).toEqual(["m", "yd"]);
  });
  it.each([
    [10, 23, null],
    [10, 23.1, "in"],
    [10, 27.9, "in"],
    [10, 28, null],
    [100, 36, null],
    [100, 36.1, "cm"],
    [100, 42.9, "cm"],
    [100, 43, null],
    [100, 84, null],
    [100, 84.1, "yd"],
    [100, 98.9, "yd"],
    [100, 99, null],
    [100, 101, null],
    [100, 101.1, "m"],
    [100, 118.9, "m"],
    [100, 119, null],
  ])("names nothing outside those distances: %d beside %d is %s", (first, second, unit) => {
    expect(named(stream(null, first), stream(null, second))[0]).toBe(unit);
  });
  it("gives the other unit of a known one, and leaves two known ones alone", () => {
    expect(named(stream("in", 1), stream(null, 9))).toEqual(["in", "cm"]);
    expect(named(stream(null, 1), stream("in", 9))).toEqual(["cm", "in"]);
    expect(named(stream("yd", 1), stream(null, 9))).toEqual(["yd", "m"]);
    expect(named(stream(null, 1), stream("m", 9))).toEqual(["yd", "m"]);
    expect(named(stream("cm", 1), stream("cm", 9))).toEqual(["cm", "cm"]);
    expect(named(stream(null), stream(null))).toEqual([null, null]);
  });
  it("wants two", () => {
    const only = stream(null, 34);
    nameBlocks([only]);
    nameBlocks([]);
    expect(only.unit).toBe(null);
  });
});

describe("ratioOf", () => {
  it("is the middle one of the figures side by side", () => {
    expect(ratioOf([10, 10, 10], [20, 50, 30])).toBe(3);
    expect(ratioOf([{ low: 8, high: 12 }], [{ low: 20, high: 40 }])).toBe(3);
  });
  it("leaves out blanks, zeros and what has nothing beside it", () => {
    expect(ratioOf([null, 0, 10, 10, 10], [5, 5, null, 25])).toBe(2.5);
    expect(ratioOf([10], [null])).toBe(null);
    expect(ratioOf([], [])).toBe(null);
  });
});

describe("textOf", () => {
  it("shows a figure, both ends of a range, and its unit", () => {
    expect(textOf(34.5, "in")).toBe("34.5 in");
    expect(textOf({ low: 30, high: 31.5 }, "cm")).toBe("30-31.5 cm");
    expect(textOf(34, null)).toBe("34");
    expect(textOf(null, null)).toBe("");
  });
});

describe("tidy", () => {
  it("takes the dust of a conversion off numbers and both ends of ranges", () => {
    expect(tidy(0.1 + 0.2)).toBe(0.3);
    expect(tidy({ low: 0.1 + 0.2, high: 1.1 * 3 })).toEqual({ low: 0.3, high: 3.3 });
  });
});

describe("streamsOf", () => {
  it("turns metres among centimetres and the other way, and leaves out inches among them", () => {
    const { tables, issues } = paste(
      sheet("Body measurements", "Size|34|36|38", "Height|164 cm|1m68|1.70-1.74 m", "Bust|80 cm|84 cm|35 in", "Hip|86 cm|90 cm|94 cm"),
    ); // prettier-ignore
    expect(tables).toEqual([
      ["body cm | 34 36 38", "height: Height | 164 168 170-174", "bust: Bust | 80 84 -", "hip: Hip | 86 90 94"],
    ]);
    expect(issues).toEqual([`4:4 error (bust, 38) ${doubts.unreadable("35 in")}`]);
  });
  it("turns a metre figure and a metre range in a row of centimetres", () => {
    const { tables, issues } = paste(
      sheet("Body measurements", "Size|34|36|38|40", "Height|160 cm|164 cm|1m68|172 cm", "Hip|86|90|94|98"),
    );
    expect(tables).toEqual([["body cm | 34 36 38 40", "height: Height | 160 164 168 172", "hip: Hip | 86 90 94 98"]]);
    expect(issues).toEqual([`4 warning ${doubts.unitFromNumbers("centimetres")}`]);
    const ranges = paste(
      sheet("Body measurements", "Size|34|36|38", "Height|158-162 cm|1.62-1.66 m|166-170 cm", "Hip|86 cm|90 cm|94 cm"),
    );
    expect(ranges.tables[0]?.[1]).toBe("height: Height | 158-162 162-166 166-170");
    expect(ranges.issues).toEqual([]);
  });
  it("takes a bare figure among metres for centimetres when nobody is so tall", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|34|36|38|40", "Height|1.64 m|168|1.72|1.76 m", "Bust|80|84|88|92"),
    );
    expect(tables).toEqual([["body cm | 34 36 38 40", "height: Height | 164 168 172 176", "bust: Bust | 80 84 88 92"]]);
    expect(issues).toEqual([]);
  });
  it("keeps a figure below zero and names it", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|34|36|38", "Bust|-80|84|88", "Hip|86|90|94"),
    );
    expect(tables).toEqual([["body cm | 34 36 38", "bust: Bust | -80 84 88", "hip: Hip | 86 90 94"]]);
    expect(issues).toEqual([`3:2 warning (bust, 34) ${doubts.negative("-80")}`]);
  });
  it("names a measurement of zero, but not cloth that a size doesn't need", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|34|36|38", "Bust|0|84|88", "", "Fabric (m)", "Size|34|36|38", "View A lining 140 cm|0|0|0.3"),
    ); // prettier-ignore
    expect(tables).toEqual([
      ["body cm | 34 36 38", "bust: Bust | 0 84 88"],
      ["fabric m | 34 36 38", "A, lining, 140 cm, nap? | 0 0 0.3"],
    ]);
    expect(issues).toEqual([`3:2 warning (bust, 34) ${doubts.zero("0")}`]);
  });
  it("leaves what it can't read blank and names the cell", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|34|36|38", "Bust|80|see note|88", "Hip|86|90|=A1+2"),
    );
    expect(tables).toEqual([["body cm | 34 36 38", "bust: Bust | 80 - 88", "hip: Hip | 86 90 -"]]);
    expect(issues).toEqual([
      `3:3 error (bust, 36) ${doubts.unreadable("see note")}`,
      `4:4 error (hip, 38) ${doubts.formulaFigure("=A1+2")}`,
    ]);
  });
  it("repeats by ditto marks what stands to the left, or above when the row begins with them", () => {
    const { tables, issues } = paste(
      sheet("Fabric (yd)", "Size|8|10|12", 'View A 45"|2|-|2 1/4', '60"|"|"|2 1/2', 'View B 45"|1|"|1 1/4'),
    );
    expect(tables).toEqual([
      [
        "fabric yd | 8 10 12",
        "A, main, 45 in, nap? | 2 - 2.25",
        // Nothing stands above the second: the first figure goes on.
        "A, main, 60 in, nap? | 2 2 2.5",
        "B, main, 45 in, nap? | 1 1 1.25",
      ],
    ]);
    // The figure above the last ditto mark, 2, is the larger one: which is meant?
    expect(issues).toEqual([`5:3 warning (10) ${doubts.dittoUnsure()}`]);
  });
  it("takes the figure above a ditto mark when the one to the left can't be read", () => {
    const { tables, issues } = paste(
      sheet("Fabric (yd)", "Size|8|10|12|14", 'View A 45"|2|2 1/8|2 1/4|2 1/4', '60"|two|"|2 1/4|2 1/2'),
    );
    expect(tables[0]?.[2]).toBe("A, main, 60 in, nap? | - 2.125 2.25 2.5");
    expect(issues).toEqual([
      `4:2 error (8) ${doubts.unreadable("two")}`,
      // It may repeat the cell that can't be read, too.
      `4:3 warning (10) ${doubts.dittoUnsure()}`,
    ]);
  });
  it("isn't sure of a ditto mark behind a cell without a figure", () => {
    const { tables, issues } = paste(
      sheet("Fabric (yd)", "Size|8|10|12|14", 'View A 45"|2|-|"|2 1/4', 'View B 45"|1|1?|"|1 1/4'),
    );
    expect(tables[0]?.slice(1)).toEqual(["A, main, 45 in, nap? | 2 - 2 2.25", "B, main, 45 in, nap? | 1 - 1 1.25"]);
    expect(issues.filter((issue) => !issue.includes("order"))).toEqual([
      `3:4 warning (12) ${doubts.dittoUnsure()}`,
      `4:3 error (10) ${doubts.unreadable("1?")}`,
      `4:4 warning (12) ${doubts.dittoUnsure()}`,
    ]);
  });
  it("repeats what stands above when ditto marks come first, behind a blank too", () => {
    const { tables, issues } = paste(
      sheet("Fabric (yd)", "Size|8|10|12|14", 'View A 45"|2|2 1/8|2 1/4|2 1/2', '60"|-|"|2 3/8|"'),
    );
    expect(tables[0]?.[2]).toBe("A, main, 60 in, nap? | - 2.125 2.375 2.5");
    expect(issues).toEqual([]);
  });
  it("is sure of a ditto mark when both readings give one figure", () => {
    const { tables, issues } = paste(sheet("Fabric (yd)", "Size|8|10|12", 'View A 45"|2|2|2 1/4', '60"|2|"|2 1/4'));
    expect(tables[0]?.[2]).toBe("A, main, 60 in, nap? | 2 2 2.25");
    expect(issues).toEqual([]);
  });
  it("goes by the unit that most cells of a row name", () => {
    const { tables, issues } = paste(
      sheet("Body measurements", "Size|8|10|12", "Bust|31 in|84 cm|88 cm", "Waist|60 cm|64 cm|27 in", "Hip|33 in|34 in|90 cm"),
    ); // prettier-ignore
    expect(tables).toEqual([
      ["body cm | 8 10 12", "bust: Bust | - 84 88", "waist: Waist | 60 64 -"],
      ["body in | 8 10 12", "hip: Hip | 33 34 -"],
    ]);
    expect(issues).toEqual([
      `3:2 error (bust, 8) ${doubts.unreadable("31 in")}`,
      `4:4 error (waist, 12) ${doubts.unreadable("27 in")}`,
      `5:4 error (hip, 12) ${doubts.unreadable("90 cm")}`,
    ]);
  });
  it("believes the unit that a cell prints, and names the two values that can't be one length", () => {
    // 36 in is 91 cm, 38 in 97 cm.
    const { tables, issues } = paste(sheet("Body measurements", "Size|8|10", "Hip|36 (71 cm)|38 (77 cm)"));
    expect(tables).toEqual([
      ["body in | 8 10", "hip: Hip | 36 38"],
      ["body cm | 8 10", "hip: Hip | 71 77"],
    ]);
    expect(issues).toEqual([
      `3:2 warning (hip, 8) ${doubts.unitsApart("36 in", "71 cm")}`,
      `3:3 warning (hip, 10) ${doubts.unitsApart("38 in", "77 cm")}`,
    ]);
  });
  it("shows no more than the beginning of a long text", () => {
    const long = "see the note at the foot of the page about the adjustment of the bust for this size";
    const { issues } = paste(sheet("Body measurements (cm)", "Size|34|36|38", `Bust|80|84|${long}`));
    expect(issues).toEqual([`3:4 error (bust, 38) ${doubts.unreadable(long.slice(0, 60))}`]);
  });
  it("has nothing for a ditto mark with nothing before it", () => {
    const { tables, issues } = paste(sheet("Fabric (yd)", "Size|8|10|12", 'View A 45"|"|2|2 1/4'));
    expect(tables).toEqual([["fabric yd | 8 10 12", "A, main, 45 in, nap? | - 2 2.25"]]);
    expect(issues).toEqual([`3:2 error (8) ${doubts.dittoUnsure()}`]);
  });
  it("reads two units in each cell, and a blank where one names only one", () => {
    const { tables, issues } = paste(
      sheet("Body measurements", "Size|8|10|12", "Bust|34 (87)|36|38 (97)", "Hip|36 (91 cm)|38 (97 cm)|40 (108 cm)"),
    );
    expect(tables).toEqual([
      ["body in | 8 10 12", "bust: Bust | 34 36 38", "hip: Hip | 36 38 40"],
      ["body cm | 8 10 12", "bust: Bust | 87 - 97", "hip: Hip | 91 97 108"],
    ]);
    expect(issues.filter((issue) => issue.includes("same length"))).toEqual([
      `4:4 warning (hip, 12) ${doubts.unitsApart("40 in", "108 cm")}`,
    ]);
  });
  it("compares yards and metres in one cell", () => {
    const { tables, issues } = paste(sheet("Fabric", "Size|8|10", 'View A 45"|2 yd (1.85 m)|2 1/4 yd (3.1 m)'));
    expect(tables).toEqual([
      ["fabric yd | 8 10", "A, main, 45 in, nap? | 2 2.25"],
      ["fabric m | 8 10", "A, main, 45 in, nap? | 1.85 3.1"],
    ]);
    expect(issues).toEqual([`3:3 warning (10) ${doubts.unitsApart("2.25 yd", "3.1 m")}`]);
  });
});
