import { describe, expect, test } from "vitest";
import fc from "fast-check";
import { sizeMatch } from "../../functions/size";
import { BLANK, caller, classes, column, errorCell, indexHeadings, misses, notAvailable, value } from "./call";

const SIZEMATCH = caller("SIZEMATCH", sizeMatch, 5);

describe("SIZEMATCH", () => {
  // The misses chart of tests/figures; common practice, read.
  test("gives the closest size, as a number where that loses nothing", async () => {
    expect(await SIZEMATCH([misses(), "bust", 34])).toBe(12);
    expect(await SIZEMATCH([misses(), "waist", 28])).toBe(14);
    expect(await SIZEMATCH([misses(), "hip", 40])).toBe(16);
    expect(await SIZEMATCH([misses(), "High bust", "36"])).toBe(16);
  });
  // Worked example E3b of a sewing teacher's page, read: bust 36 is size 14.
  test("agrees with the worked example", async () => {
    expect(await SIZEMATCH([misses(), "bust", 36])).toBe(14);
  });
  test("gives a tie to the larger size", async () => {
    expect(await SIZEMATCH([misses(), "bust", 35])).toBe(14);
    expect(await SIZEMATCH([misses(), "bust", 34.99])).toBe(12);
  });
  test("follows atleast and atmost", async () => {
    expect(await SIZEMATCH([misses(), "bust", 34.1, "atleast"])).toBe(14);
    expect(await SIZEMATCH([misses(), "bust", 34, "At least"])).toBe(12);
    expect(await SIZEMATCH([misses(), "bust", 35.9, "atmost"])).toBe(12);
    expect(await SIZEMATCH([misses(), "bust", 36, "ATMOST"])).toBe(14);
  });
  // The chart begins at 30 1/2 and ends at 46; its end steps are 1 and 2 in.
  test("answers half a step beyond the chart for closest, and no further", async () => {
    expect(await SIZEMATCH([misses(), "bust", 47])).toBe(24);
    expect(await SIZEMATCH([misses(), "bust", 30])).toBe(6);
    expect(await SIZEMATCH([misses(), "bust", 47.5])).toEqual(
      notAvailable("47 1/2 in at the bust is 1 1/2 in above this chart, which ends at size 24 (46 in)."),
    );
    expect(await SIZEMATCH([misses(), "bust", 29])).toEqual(
      notAvailable("29 in at the bust is 1 1/2 in below this chart, which begins at size 6 (30 1/2 in)."),
    );
  });
  test("answers a step below the chart for atleast, a step above it for atmost", async () => {
    expect(await SIZEMATCH([misses(), "bust", 29.5, "atleast"])).toBe(6);
    expect(await SIZEMATCH([misses(), "bust", 29.4, "atleast"])).toMatchObject({ error: "#N/A" });
    expect(await SIZEMATCH([misses(), "bust", 46.1, "atleast"])).toMatchObject({ error: "#N/A" });
    expect(await SIZEMATCH([misses(), "bust", 48, "atmost"])).toBe(24);
    expect(await SIZEMATCH([misses(), "bust", 48.1, "atmost"])).toMatchObject({ error: "#N/A" });
    expect(await SIZEMATCH([misses(), "bust", 30.4, "atmost"])).toMatchObject({ error: "#N/A" });
  });
  // EN 13402-3, women's bust classes, bounds half-open: examples computed from the bounds as read.
  test("takes touching ranges as half-open, the last one too", async () => {
    const expected: [number, number | object][] = [
      [88, 88],
      [89.9, 88],
      [90, 92],
      [106.9, 104],
      [107, 110],
      [74, 76],
      [130.9, 128],
    ];
    for (const [bust, size] of expected) expect(await SIZEMATCH([classes(), "bust", bust]), String(bust)).toBe(size);
    expect(await SIZEMATCH([classes(), "bust", 131])).toEqual(
      notAvailable(
        "131 cm at the bust is just above this chart: size 128 (125 to 131 cm) stops short of its upper end.",
      ),
    );
    expect(await SIZEMATCH([classes(), "bust", 131, "atmost"])).toBe(128);
  });
  test("gives a gap between printed ranges to the larger size", async () => {
    const gaps = [
      ["Size", "S", "M", "L"],
      ["Chest", "34-36", "38-40", "42-44"],
    ];
    expect(await SIZEMATCH([gaps, "chest", 36.1])).toBe("M");
    expect(await SIZEMATCH([gaps, "chest", 36])).toBe("S");
    expect(await SIZEMATCH([gaps, "chest", 37, "atmost"])).toBe("S");
    expect(await SIZEMATCH([gaps, "chest", 37, "atleast"])).toBe("M");
    expect(await SIZEMATCH([gaps, "chest", 46])).toBe("L");
    expect(await SIZEMATCH([gaps, "chest", 46.1])).toMatchObject({ error: "#N/A" });
  });
  // ASTM D5585-11e1 (excerpt): head girth is 21.25 in for 00 and 0, 21.5 for 2 and 4.
  test("keeps labels such as 00 as text, and gives equal figures to the larger size", async () => {
    const head = [
      ["Measurement", "Unit", "00", "0", "2", "4"],
      ["Head", "in", 21.25, 21.25, 21.5, 21.5],
      ["Bust", "in", 31.125, 31.75, 33, 34.125],
    ];
    expect(await SIZEMATCH([head, "bust", 31])).toBe("00");
    expect(await SIZEMATCH([head, "head", 21.25])).toBe(0);
    expect(await SIZEMATCH([head, "head", 21.25, "atleast"])).toBe("00");
  });
  test("reads units in the text, and compares a bare number as it stands", async () => {
    expect(await SIZEMATCH([misses(), "bust", "86.36 cm"])).toBe(12);
    expect(await SIZEMATCH([misses(), "bust", '34"'])).toBe(12);
    expect(await SIZEMATCH([classes(), "bust", "34 5/8 in"])).toBe(88);
  });
  test("asks about centimetres against inches", async () => {
    expect(await SIZEMATCH([misses(), "bust", 92])).toEqual(
      value("92 against 30 1/2 to 46 in on the chart: cm against inches? Write the unit beside the figure."),
    );
    expect(await SIZEMATCH([misses(), "bust", 86])).toMatchObject({ error: "#VALUE!" });
    expect(await SIZEMATCH([classes(), "bust", 36])).toMatchObject({ error: "#VALUE!" });
    expect(await SIZEMATCH([misses(), "bust", "92 cm"])).toBe(14);
  });
  test("refuses a unit where the chart's is unknown", async () => {
    const unknown = [
      ["Size", "S", "M"],
      ["Yoke", 30, 40],
    ];
    expect(await SIZEMATCH([unknown, "yoke", 31])).toBe("S");
    expect(await SIZEMATCH([unknown, "yoke", "31 cm"])).toEqual(
      value("This chart doesn't say inches or centimetres, so 31 cm can't be compared with it: add a Unit column."),
    );
  });
  test("says which places there are", async () => {
    expect(await SIZEMATCH([misses(), "thigh", 20])).toEqual(
      notAvailable("This chart has no row for thigh. It has high bust, bust, waist, hip, back waist length."),
    );
    expect(await SIZEMATCH([misses(), "bsut", 20])).toEqual(
      value('"bsut" is not a place that is measured. This chart has high bust, bust, waist, hip, back waist length.'),
    );
    expect(await SIZEMATCH([misses(), "bust", 34, "nearest"])).toEqual(
      value('"nearest" is not a rule known here. Write closest, atleast or atmost.'),
    );
  });
  test("refuses what is no measure", async () => {
    expect(await SIZEMATCH([misses(), "bust", "large"])).toMatchObject({ error: "#VALUE!" });
    expect(await SIZEMATCH([misses(), "bust", -34])).toEqual(
      value("A measurement can't be below zero, and this is -34."),
    );
    expect(await SIZEMATCH([misses(), "bust", 45000])).toEqual(
      value("Excel has made a date of this (45000): type 0 7/8, or 6 to 12."),
    );
    for (const blanks of [null, 0] as const) {
      expect(await SIZEMATCH([misses(), "bust", BLANK], blanks)).toEqual(
        value("This is blank: a measurement is needed here."),
      );
      expect(await SIZEMATCH([misses(), BLANK, 34], blanks)).toEqual(
        value("This is blank: a place, such as bust, is needed here."),
      );
    }
  });
  test("wants headings, and says to add [#All] to a table's bare name", async () => {
    expect(await SIZEMATCH([misses().slice(1), "bust", 34])).toEqual(
      value(
        `No headings stand above "High bust", so the sizes aren't known: choose the chart with its headings, and if this is a table's name, add [#All] to it.`,
      ),
    );
  });
  test("hands on an error cell on which the answer hangs, and no other", async () => {
    const chart = misses();
    chart[2]![6] = errorCell("#REF!");
    expect(chart[0]![6]).toBe("14");
    expect(await SIZEMATCH([chart, "bust", 35])).toEqual({ error: "#REF!" });
    expect(await SIZEMATCH([chart, "bust", 34])).toBe(12);
    expect(await SIZEMATCH([chart, "waist", 28])).toBe(14);
    expect(await SIZEMATCH([errorCell("#NAME?"), "bust", 34])).toEqual({ error: "#NAME?" });
    expect(await SIZEMATCH([misses(), "bust", errorCell("#DIV/0!")])).toEqual({ error: "#DIV/0!" });
  });
  test("doesn't answer across a missing or a falling figure", async () => {
    const hole = misses();
    hole[2]![6] = BLANK;
    for (const blanks of [null, 0] as const)
      expect(await SIZEMATCH([hole, "bust", 36], blanks)).toEqual(
        notAvailable("The chart has no figure for bust in size 14, and the answer hangs on it: fill it in."),
      );
    const slip = misses();
    slip[2]![6] = 63;
    expect(await SIZEMATCH([slip, "bust", 36])).toEqual(
      value("The row for bust goes out of order at size 16 (63 in, then 38 in): correct the chart."),
    );
  });
  test("answers a column, each element for itself", async () => {
    const measures = column(34, BLANK, "wide", 60, errorCell("#N/A"), 38);
    for (const blanks of [null, 0] as const)
      expect(await SIZEMATCH([misses(), "bust", measures], blanks)).toEqual([
        [12],
        [""],
        [value('"wide" can\'t be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.')],
        [notAvailable("60 in at the bust is 14 in above this chart, which ends at size 24 (46 in).")],
        [{ error: "#N/A" }],
        [16],
      ]);
    expect(await SIZEMATCH([misses(), [["bust", "waist", "hip"]], [[34, 28, 40]]])).toEqual([[12, 14, 16]]);
    expect(await SIZEMATCH([misses(), column("bust", "waist"), [[34, 28]]])).toMatchObject({ error: "#VALUE!" });
  });

  function rows(pattern: string, unit: string, sizes: string[], figures: Record<string, number[]>): unknown[][] {
    return Object.entries(figures).flatMap(([place, row]) =>
      sizes.map((size, at) => [pattern, "body", unit, "", "", "", "", "", place, size, row[at], row[at]]),
    );
  }
  // Figures invented.
  const index = [
    indexHeadings,
    ...rows("Camp shirt", "in", ["S", "M", "L"], { Bust: [32, 36, 40], Hip: [34, 38, 42] }),
    ...rows("Camp shirt", "cm", ["S", "M", "L"], { Bust: [81, 91, 102], Hip: [86, 97, 107] }),
    ...rows("Wrap skirt", "in", ["8", "10", "12", "14"], { Bust: [32, 33, 34, 38], Hip: [34, 35, 36, 40] }),
    ...rows("Wrap skirt", "in", ["14W", "16W", "18W"], { Bust: [36.5, 40, 42], Hip: [38.5, 42, 44] }),
    ...Array.from({ length: 20 }, () => indexHeadings.map(() => BLANK)),
  ];
  test("looks in the pattern index, a pattern for each element", async () => {
    const patterns = column("Camp shirt", "wrap  skirt", BLANK, "Pinafore");
    expect(await SIZEMATCH([index, "bust", column(36, 33, 34, 34), undefined, patterns])).toEqual([
      ["M"],
      [10],
      [""],
      [notAvailable('"Pinafore" is not in the pattern index. It has Camp shirt, Wrap skirt.')],
    ]);
    expect(await SIZEMATCH([index, "bust", 36])).toEqual(
      value("This is blank: the pattern's name (Camp shirt, Wrap skirt) is needed here."),
    );
  });
  test("chooses among a pattern's tables by the unit, else by where the number is plausible", async () => {
    expect(await SIZEMATCH([index, "bust", 91, undefined, "Camp shirt"])).toBe("M");
    expect(await SIZEMATCH([index, "bust", "91 cm", undefined, "Camp shirt"])).toBe("M");
    expect(await SIZEMATCH([index, "bust", 41, undefined, "Wrap skirt"])).toBe("18W");
    expect(await SIZEMATCH([index, "bust", 33, undefined, "Wrap skirt"])).toBe(10);
    expect(await SIZEMATCH([index, "bust", 37.5, undefined, "Wrap skirt"])).toEqual(
      value(
        "Wrap skirt has more than one table that could answer (8 to 14, in; 14W, 16W, 18W, in): choose the range of one of them.",
      ),
    );
  });

  test("never gives a bigger body a smaller size", () => {
    const chart = misses();
    const sizes = chart[0]!.slice(2).map(Number);
    fc.assert(
      fc.property(
        fc.double({ min: 30, max: 47, noNaN: true }),
        fc.double({ min: 30, max: 47, noNaN: true }),
        fc.constantFrom("closest", "atleast", "atmost"),
        (one, other, rule) => {
          const size = (bust: number): number => {
            try {
              return Number(sizeMatch(chart as any[][], [["bust"]], [[bust]], [[rule]]));
            } catch {
              return rule === "atleast" ? Infinity : -Infinity;
            }
          };
          expect(size(Math.min(one, other))).toBeLessThanOrEqual(size(Math.max(one, other)));
          expect([...sizes, Infinity, -Infinity]).toContain(size(one));
        },
      ),
    );
  });
});
