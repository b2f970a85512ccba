import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import type { Chart, Figure } from "../../src/chart/model";
import { matchInRow, readMatchRule, sizeMatch } from "../../src/fit/size-match";
import { readPlaceCell, sizeMatchAmong } from "../../src/fit/size-match-tables";
import { sentence } from "../../src/words";

const figures = (file: string) => JSON.parse(readFileSync(join(import.meta.dirname, "../figures", file), "utf8"));
const chart = (sizes: string[], rows: Record<string, Figure[]>, unit: "in" | "cm" | null = "in"): Chart => ({
  kind: "body",
  unit,
  sizes,
  rows: Object.entries(rows).map(([place, values]) => ({ place, label: place, values })),
});
// Body measurements common to home-sewing patterns, misses: common practice, read.
const printed = figures("misses-body-in.json");
const misses = chart(printed.sizes, { bust: printed.bust, hip: printed.hip });
const size = (from: Chart, value: number, rule?: "closest" | "atleast" | "atmost") => {
  const match = sizeMatch(from, "bust", { value, unit: null }, rule);
  return match.ok ? match.value.size : match.problem.code;
};

describe("sizeMatch", () => {
  // ASTM D5585-11e1, Table 1 (excerpt), tests/figures: every printed bust gets its own size.
  test("finds every size of a printed table by its own figure", () => {
    const { sizes, bust } = figures("astm-d5585-misses-in.json") as { sizes: string[]; bust: number[] };
    const table = chart(sizes, { bust });
    for (const rule of ["closest", "atleast", "atmost"] as const)
      expect(bust.map((figure) => size(table, figure, rule))).toEqual(sizes);
  });
  // ANSUR II women, tests/figures (bust and buttock in inches): within the chart every body has a size.
  test("has a size for every measured body inside the chart, and never a smaller one for a bigger body", () => {
    const lines = readFileSync(join(import.meta.dirname, "../figures/ansur2-test-bodies.csv"), "utf8")
      .trim()
      .split("\n");
    const bodies = lines.filter((line) => line.startsWith("F,")).map((line) => line.split(",").map(Number));
    for (const [place, column] of [
      ["bust", 6],
      ["hip", 8],
    ] as const) {
      const found = bodies
        .map((body) => body[column]!)
        .filter((girth) => girth >= 32 && girth <= 46)
        .sort((a, b) => a - b)
        .map((girth) => sizeMatch(misses, place, { value: girth, unit: "in" }));
      expect(found.length).toBeGreaterThan(10);
      const indexes = found.map((match) => (match.ok ? match.value.index : NaN));
      expect(indexes).toEqual([...indexes].sort((a, b) => a - b));
      expect(indexes.some(Number.isNaN)).toBe(false);
    }
  });
  test("says how far the measure is from the figure, and whether it is beyond the chart", () => {
    const match = sizeMatch(misses, "bust", { value: 46.5, unit: "in" });
    expect(match).toMatchObject({ ok: true, value: { size: "24", figure: 46, difference: 0.5, beyond: "above" } });
    expect(sizeMatch(misses, "bust", { value: 33.9, unit: "in" })).toMatchObject({
      value: { size: "12", difference: -0.1, beyond: null },
    });
    expect(sizeMatch(misses, "bust", { value: 91.44, unit: "cm" })).toMatchObject({
      value: { size: "14", measure: 36 },
    });
  });
  test("reads a chart from large to small, but not one out of order", () => {
    expect(size(chart(["L", "M", "S"], { bust: [40, 36, 32] }), 35)).toBe("M");
    expect(size(chart(["14", "12"], { bust: [36, 34] }), 34)).toBe("12");
    expect(size(chart(["8", "10"], { bust: [36, 34] }), 34)).toBe("fallingRow");
    expect(size(chart(["8", "10", "12"], { bust: [32, 40, 36] }), 32)).toBe("fallingRow");
  });
  test("answers a chart of one size only at its figure", () => {
    expect(size(chart(["M"], { bust: [36] }), 36)).toBe("M");
    expect(size(chart(["M"], { bust: [36] }), 36.1)).toBe("aboveChart");
    expect(size(chart(["M"], { bust: [{ low: 34, high: 38 }] }), 38)).toBe("M");
  });
  test("stops at a figure that is missing or wrong only where the answer hangs on it", () => {
    const holes = chart(["8", "10", "12", "14", "16"], { bust: [32, null, 34, 36, null] });
    expect(size(holes, 33)).toBe("missingFigure");
    expect(size(holes, 34)).toBe("12");
    expect(size(holes, 37)).toBe("14");
    const faults: Chart = {
      ...holes,
      rows: [
        {
          place: "bust",
          label: "Bust",
          values: [32, 33, 34, 36, { fault: { code: "errorCell", details: { error: "#N/A" } } }],
        },
      ],
    };
    expect(size(faults, 36.5)).toBe("errorCell");
    expect(size(faults, 36)).toBe("14");
    expect(size(chart(["8"], { bust: [null] }), 33)).toBe("missingFigure");
  });
  // From 32 in size 8 to 36 in size 12 a size makes 2 in: closest goes half of it beyond, atleast and atmost all of it.
  test("reckons the step at the end of a chart by size, also over one without a figure", () => {
    const above = chart(["8", "10", "12"], { bust: [32, null, 36] });
    expect([size(above, 37), size(above, 37.1)]).toEqual(["12", "aboveChart"]);
    expect([size(above, 38, "atmost"), size(above, 38.1, "atmost")]).toEqual(["12", "aboveChart"]);
    expect([size(above, 31), size(above, 30.9)]).toEqual(["8", "belowChart"]);
    expect([size(above, 30, "atleast"), size(above, 29.9, "atleast")]).toEqual(["8", "belowChart"]);
    const turned = chart(["12", "10", "8"], { bust: [36, null, 32] });
    expect([size(turned, 37), size(turned, 37.1), size(turned, 31), size(turned, 30.9)]).toEqual(["12", "aboveChart", "8", "belowChart"]); // prettier-ignore
    // Sizes with the same figure are no step: 36 and 34 are the last two that differ.
    const equal = chart(["8", "10", "12"], { bust: [34, 36, 36] });
    expect([size(equal, 37), size(equal, 37.1)]).toEqual(["12", "aboveChart"]);
  });
  test("gives a tie to the larger size also where a row stands still, from large to small", () => {
    const level = (sizes: string[]) => chart(sizes, { bust: [15, 15] });
    expect([size(level(["12", "14"]), 15), size(level(["14", "12"]), 15)]).toEqual(["14", "14"]);
    expect([size(level(["12", "14"]), 15, "atleast"), size(level(["14", "12"]), 15, "atleast")]).toEqual(["12", "12"]);
  });
  test("refuses ranges of which one end falls", () => {
    const row = (low: number, high: number) =>
      chart(["S", "M"], {
        bust: [
          { low: 34, high: 38 },
          { low, high },
        ],
      });
    expect(size(row(36, 37), 35)).toBe("fallingRow");
    expect(size(row(33, 40), 35)).toBe("fallingRow");
    expect(size(row(34, 38), 35)).toBe("M");
    expect(size(row(34, 40), 35)).toBe("M");
  });
  test("answers beyond an end that can be read, whatever lies between other sizes", () => {
    const fault = { fault: { code: "unreadableFigure", details: { text: "3g" } } } as const;
    const row = chart(["8", "10", "12", "14"], { bust: [32, 33, fault, 36] } as Record<string, Figure[]>);
    expect([size(row, 31.5), size(row, 34), size(row, 36.5)]).toEqual(["8", "unreadableFigure", "14"]);
  });
  test("keeps to the bounds of touching ranges, and steps into gaps", () => {
    const touching = chart(
      ["S", "M"],
      {
        bust: [
          { low: 82, high: 90 },
          { low: 90, high: 98 },
        ],
      },
      "cm",
    );
    expect([82, 89.99, 90, 97.99].map((value) => size(touching, value))).toEqual(["S", "S", "M", "M"]);
    expect([81.9, 98].map((value) => size(touching, value))).toEqual(["belowChart", "aboveChart"]);
    expect(size(touching, 75, "atleast")).toBe("S");
    expect(size(touching, 73, "atleast")).toBe("belowChart");
  });
  // EN 13402-3: ranges that touch are half-open, so 90 belongs to the range that begins there.
  const range = (low: number, high: number) => ({ low, high });
  test("keeps ranges half-open where two sizes share one", () => {
    const inside = chart(["S", "M", "L"], { bust: [range(86, 90), range(86, 90), range(90, 94)] }, "cm");
    expect(size(inside, 90)).toBe("L");
    expect(size(inside, 90, "atleast")).toBe("L");
    expect([size(inside, 88, "atleast"), size(inside, 88)]).toEqual(["S", "M"]);
    const last = chart(["S", "M", "L"], { bust: [range(86, 90), range(90, 94), range(90, 94)] }, "cm");
    expect([size(last, 93.9), size(last, 94), size(last, 94, "atleast")]).toEqual(["L", "aboveChart", "aboveChart"]);
    expect(size(last, 90, "atleast")).toBe("M");
  });
  test("doesn't answer with the upper end of a touching range where the next one is missing", () => {
    const sizes = ["S", "M", "L", "XL"];
    const row = chart(sizes, { bust: [range(82, 86), range(86, 90), null, range(94, 98)] }, "cm");
    for (const rule of ["closest", "atleast", "atmost"] as const) {
      expect(size(row, 89.9, rule)).toBe("M");
      expect(size(row, 90, rule)).toBe("missingFigure");
      expect(size(row, 92, rule)).toBe("missingFigure");
    }
    expect(size(row, 94)).toBe("XL");
    // From large to small it is the same.
    const turned = chart([...sizes].reverse(), { bust: [range(94, 98), null, range(86, 90), range(82, 86)] }, "cm");
    expect([size(turned, 89.9), size(turned, 90), size(turned, 94)]).toEqual(["M", "missingFigure", "XL"]);
    // Ranges with gaps keep their printed ends.
    const gaps = chart(["S", "M", "L"], { bust: [range(82, 85), range(86, 89), null] }, "cm");
    expect([size(gaps, 85), size(gaps, 89)]).toEqual(["S", "M"]);
  });
  test("doesn't choose between two different rows for one place", () => {
    const twice: Chart = { ...misses, rows: [...misses.rows, { ...misses.rows[0]!, values: misses.rows[1]!.values }] };
    expect(size(twice, 34)).toBe("placeTwice");
  });
});

describe("sizeMatch, its refusals", () => {
  const refused = (from: Chart, value: number, unit: "in" | "cm" | null = null, rule?: "atleast" | "atmost") => {
    const match = sizeMatch(from, "bust", { value, unit }, rule);
    return match.ok ? match.value.size : sentence(match.problem);
  };
  const M = { low: 38, high: 40 };
  const ranges = (unit: "in" | "cm" | null) => chart(["S", "M"], { bust: [{ low: 34, high: 36 }, M] }, unit);

  test("says by how much a measure is off, and where the chart ends", () => {
    expect(refused(misses, 47.5)).toBe(
      "47 1/2 in at the bust is 1 1/2 in above this chart, which ends at size 24 (46 in).",
    );
    expect(refused(misses, 29.5)).toBe(
      "29 1/2 in at the bust is 1 in below this chart, which begins at size 6 (30 1/2 in).",
    );
    expect(refused(ranges("in"), 44)).toBe("44 in at the bust is 4 in above this chart, which ends at size M (38 to 40 in)."); // prettier-ignore
    expect(refused(ranges(null), 44)).toBe("44 at the bust is 4 above this chart, which ends at size M (38 to 40).");
    const touching = chart(["S", "M"], { bust: [{ low: 34, high: 38 }, M] });
    expect(refused(touching, 40)).toBe(
      "40 in at the bust is just above this chart: size M (38 to 40 in) stops short of its upper end.",
    );
  });
  test("asks about centimetres against inches where the number would do as the other", () => {
    const ask = (found: string, against: string) =>
      `${found} against ${against} on the chart: cm against inches? Write the unit beside the figure.`;
    expect(refused(ranges("in"), 92)).toBe(ask("92", "34 to 40 in"));
    expect(refused(ranges(null), 92)).toBe(ask("92", "34 to 40"));
    const metric = chart(["S", "M"], { bust: [86, 92] }, "cm");
    expect(refused(metric, 34)).toBe(ask("34", "86 to 92 cm"));
    // 5 × too large is no other unit; nor is a larger number on a metric chart, or a smaller one on an inch chart.
    expect(refused(ranges("in"), 200)).toMatch(/above this chart/);
    expect(refused(metric, 120)).toBe("120 cm at the bust is 28 cm above this chart, which ends at size M (92 cm).");
    expect(refused(ranges("in"), 20)).toBe("20 in at the bust is 14 in below this chart, which begins at size S (34 to 36 in)."); // prettier-ignore
    // 2 to 3 times: 40 in to 80 and 120; 86 cm to 43 and 28 2/3. The ends belong to it.
    for (const found of [80, 120]) expect(refused(ranges("in"), found)).toMatch(/cm against inches/);
    for (const found of [79.9, 120.1]) expect(refused(chart(["S"], { bust: [40] }), found)).toMatch(/above this chart/);
    const ninety = chart(["S", "M"], { bust: [90, 92] }, "cm");
    for (const found of [45, 30]) expect(refused(ninety, found)).toMatch(/cm against inches/);
    for (const found of [45.1, 29.9]) expect(refused(ninety, found)).toMatch(/below this chart/);
    // Less than twice off, but on the chart in the other unit, from a step below it to a step above: 29 1/2 in, a step
    // below the misses' 30 1/2, are 74.93 cm; 96 cm, a step above 92, are 37.8 in, of a chart from 60 cm.
    expect([refused(misses, 75), refused(misses, 84)]).toEqual([ask("75", "30 1/2 to 46 in"), ask("84", "30 1/2 to 46 in")]); // prettier-ignore
    expect(refused(misses, 74.9)).toMatch(/above this chart/);
    const wide = chart(["S", "M", "L"], { bust: [60, 88, 92] }, "cm");
    expect(refused(wide, 37.7)).toBe(ask("37.7", "60 to 92 cm"));
    expect(refused(wide, 37.9)).toMatch(/^37\.9 cm at the bust is 22\.1 cm below this chart/);
    // 44.5 in is 113 cm: neither 2 to 3 times off nor on this chart in the other unit.
    expect(refused(ranges("in"), 92, "in")).toMatch(/^92 in at the bust is 52 in above/);
  });
  test("names the size out of order, of ranges too", () => {
    expect(refused(chart(["8", "10", "12"], { bust: [32, 40, 36] }), 32)).toBe(
      "The row for bust goes out of order at size 12 (40 in, then 36 in): correct the chart.",
    );
    expect(refused(chart(["S", "M", "L"], { bust: [{ low: 32, high: 34 }, M, { low: 35, high: 37 }] }), 33)).toBe(
      "The row for bust goes out of order at size L (38 to 40, then 35 to 37): correct the chart.",
    );
    // From large to small: 40, 32, and then 36 where less is expected.
    expect(refused(chart(["L", "M", "S"], { bust: [40, 32, 36] }), 33)).toBe(
      "The row for bust goes out of order at size S (32 in, then 36 in): correct the chart.",
    );
  });
  test("names what a row of no figures lacks", () => {
    const empty = (...values: Chart["rows"][number]["values"]): Chart => ({
      ...misses,
      sizes: ["8", "10"],
      rows: [{ place: "bust", label: "Bust", values }],
    });
    const fault = { fault: { code: "unreadableFigure", details: { text: "3g" } } } as const;
    expect(refused(empty(null, null), 33)).toBe(
      "The chart has no figure for bust in size 8, and the answer hangs on it: fill it in.",
    );
    expect(refused(empty(null, fault), 33)).toBe(`"3g" on this chart can't be read as a figure: correct it there.`);
    expect(refused(empty(fault, 34), 33.5)).toBe(`"3g" on this chart can't be read as a figure: correct it there.`);
    expect(refused(empty(34, fault), 34.5)).toBe(`"3g" on this chart can't be read as a figure: correct it there.`);
    // From large to small the fault lies below.
    expect(refused({ ...empty(34, fault), sizes: ["10", "8"] }, 34)).toBe("10");
    const turned: Chart = { ...empty(38, 36, fault), sizes: ["L", "M", "S"] };
    expect(refused(turned, 35.5)).toBe(`"3g" on this chart can't be read as a figure: correct it there.`);
    expect(refused(turned, 38.5)).toBe("L");
    const hole: Chart = { ...empty(38, fault, 34), sizes: ["L", "M", "S"] };
    expect(refused(hole, 36)).toBe(`"3g" on this chart can't be read as a figure: correct it there.`);
    expect(refused(hole, 38)).toBe("L");
  });
  test("goes up to one step beyond for atleast and atmost, half a step for closest", () => {
    const of = (value: number, rule?: "atleast" | "atmost") => size(misses, value, rule);
    // The end steps are 1 in below 30 1/2 and 2 in above 46.
    expect([of(30), of(29.9)]).toEqual(["6", "belowChart"]);
    expect([of(47), of(47.1)]).toEqual(["24", "aboveChart"]);
    expect([of(29.5, "atleast"), of(29.4, "atleast"), of(46.1, "atleast")]).toEqual(["6", "belowChart", "aboveChart"]);
    expect([of(48, "atmost"), of(48.1, "atmost"), of(30.4, "atmost")]).toEqual(["24", "aboveChart", "belowChart"]);
    expect([of(35), of(34.9), of(35, "atleast"), of(35, "atmost")]).toEqual(["14", "12", "14", "12"]);
  });
  test("gives a measure between equal figures to the larger, for atleast to the first", () => {
    const equal = chart(["S", "M", "L"], { bust: [34, 34, 36] });
    expect([size(equal, 34), size(equal, 34, "atleast"), size(equal, 34, "atmost")]).toEqual(["M", "S", "M"]);
    expect([size(equal, 33.5), size(equal, 33.5, "atleast")]).toEqual(["M", "S"]);
  });
  test("reads a unit only where the chart says its own", () => {
    expect(refused(ranges(null), 88, "cm")).toBe(
      "This chart doesn't say inches or centimetres, so 88 cm can't be compared with it: add a Unit column.",
    );
    expect(refused(chart(["S"], { hip: [36] }), 34)).toBe("This chart has no row for bust. It has hip.");
    expect(refused({ ...misses, rows: [misses.rows[0]!, { ...misses.rows[1]!, place: "bust" }] }, 34)).toBe(
      "This chart has two different rows for bust: take one out.",
    );
    expect(refused({ ...misses, rows: [misses.rows[0]!, misses.rows[0]!] }, 34)).toBe("12");
  });
});

describe("matchInRow", () => {
  test("doesn't ask about units that are known", () => {
    const ask = (bare: boolean) => matchInRow(misses, misses.rows[0]!, 92, "closest", bare);
    expect(ask(true)).toMatchObject({ problem: { code: "cmAgainstInches" } });
    expect(ask(false)).toMatchObject({ problem: { code: "aboveChart" } });
  });
});

describe("readMatchRule", () => {
  test("reads the three rules, closest where none is given", () => {
    expect(["", "At least", "at-most", "CLOSEST"].map((text) => readMatchRule(text))).toMatchObject([
      { value: "closest" },
      { value: "atleast" },
      { value: "atmost" },
      { value: "closest" },
    ]);
    const unknown = readMatchRule("next");
    expect(unknown.ok || sentence(unknown.problem)).toMatch(/"next".*closest, atleast or atmost/);
  });
});

describe("sizeMatchAmong", () => {
  const women = chart(["18W", "20W"], { bust: [42, 44] });
  const metric = chart(["12", "14"], { bust: [87, 92] }, "cm");
  const ask = (charts: Chart[], value: number, unit: "in" | "cm" | null = null) => {
    const match = sizeMatchAmong(charts, "bust", { value, unit }, "closest", "Dress");
    return match.ok ? match.value.size : match.problem.code;
  };
  test("takes the table whose unit is named, or in which the number is plausible", () => {
    expect(ask([misses, metric], 92)).toBe("14");
    expect(ask([misses, metric], 36)).toBe("14");
    expect(ask([misses, metric], 92, "cm")).toBe("14");
    expect(ask([misses, women], 32.5)).toBe("10");
  });
  test("refuses a place that no table has, and what every table refuses", () => {
    expect(sizeMatchAmong([misses, women], "waist", { value: 28, unit: null }, "closest", "Dress")).toEqual({
      ok: false,
      problem: { code: "placeNotOnChart", details: { place: "waist", known: "bust, hip" } },
    });
    expect(ask([misses, women], 60)).toBe("aboveChart");
  });
  test("asks only the tables that have the place", () => {
    const hips = chart(["12", "14"], { hip: [92, 97] }, "cm");
    expect(ask([hips, misses], 92, "cm")).toBe("14");
  });
  // 45 in lies between the misses' 44 and 46, a tie; for the women's it is beyond 44, if only by half a step.
  test("takes the table in which the measure lies, not one that it is near to", () => {
    expect([ask([misses, women], 45), ask([women, misses], 45)]).toEqual(["24", "24"]);
  });
  test("names the table that answered", () => {
    const match = sizeMatchAmong([misses, women], "bust", { value: 32.5, unit: null }, "closest", "Dress");
    expect(match.ok && match.value.chart).toBe(misses);
  });
  test("doesn't take one table's answer where a figure of the other is missing or wrong", () => {
    const holes = chart(["38", "40", "42"], { bust: [40, null, 44] });
    expect(ask([holes, women], 42)).toBe("missingFigure");
    expect(ask([women, holes], 42)).toBe("missingFigure");
    const slip = chart(["38", "40", "42"], { bust: [40, 24, 44] });
    expect(ask([slip, women], 42)).toBe("fallingRow");
    // 32 1/2 isn't in the women's table; that tells them apart.
    expect(ask([misses, chart(["18W", "20W", "22W"], { bust: [42, null, 46] })], 32.5)).toBe("10");
  });
  test("never crosses two tables that answer differently", () => {
    expect(ask([misses, women], 42)).toBe("severalTables");
  });
});

describe("readPlaceCell", () => {
  test("reads known words and the chart's own labels", () => {
    const own: Chart = { ...misses, rows: [...misses.rows, { place: "Yoke depth", label: "Yoke depth", values: [] }] };
    expect(readPlaceCell("Hips", [own])).toEqual({ ok: true, value: "hip" });
    expect(readPlaceCell("yoke  Depth", [own])).toEqual({ ok: true, value: "Yoke depth" });
    expect(readPlaceCell("thigh", [own])).toMatchObject({ problem: { code: "placeNotOnChart" } });
    expect(readPlaceCell("elbowish", [own])).toMatchObject({ problem: { code: "unknownPlace" } });
    const labelled: Chart = { ...misses, rows: [{ place: "Yoke depth", label: "Depth of the yoke", values: [] }] };
    expect(readPlaceCell("depth of the Yoke", [labelled])).toEqual({ ok: true, value: "Yoke depth" });
    expect(readPlaceCell("Yoke depth", [labelled])).toEqual({ ok: true, value: "Yoke depth" });
    // Rückenlänge is the back waist length of a body and the back length of a garment.
    const back = (kind: "body" | "finished", place: string): Chart => ({ ...misses, kind, rows: [{ place, label: "Back", values: [] }] }); // prettier-ignore
    expect(readPlaceCell("Rückenlänge", [back("body", "backWaistLength")])).toMatchObject({ value: "backWaistLength" });
    expect(readPlaceCell("Rückenlänge", [back("finished", "backLength")])).toMatchObject({ value: "backLength" });
    const [blank, thigh] = [readPlaceCell(0, [own]), readPlaceCell("thigh", [own])];
    expect(blank.ok || sentence(blank.problem)).toBe("This is blank: a place, such as bust, is needed here.");
    expect(thigh.ok || sentence(thigh.problem)).toBe("This chart has no row for thigh. It has bust, hip, Yoke depth.");
    expect(readPlaceCell(0, [own])).toMatchObject({ problem: { code: "blank" } });
    expect(readPlaceCell("bust", [])).toMatchObject({ problem: { code: "placeNotOnChart" } });
    // A column of measures may name more places than are remembered: each is still read as itself.
    const charts = [own];
    for (let at = 0; at < 120; at++)
      expect(readPlaceCell(`place ${at}`, charts)).toMatchObject({ problem: { details: { text: `place ${at}` } } });
    expect(readPlaceCell("place 3", charts)).toMatchObject({ problem: { details: { text: "place 3" } } });
    expect(readPlaceCell("place 119", charts)).toMatchObject({ problem: { details: { text: "place 119" } } });
  });
});
