import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import astm from "../figures/astm-d5585-misses-in.json";
import en from "../figures/en13402-3-women-cm.json";
import examples from "../figures/size-choice-examples.json";
import type { Body, Chart, Figure } from "../../src/chart/model";
import { cutSize, sizeCutter } from "../../src/fit/cut-size";
import { sizeMatch } from "../../src/fit/size-match";
import { refuse } from "../../src/problem";
import { bodyOf, chartOf, finishedFrom, got, missesChart, said, settingsOf, withFault } from "./bodies";

const LEAST = { bust: 2.5, waist: 1, hip: 2 };
const size = (...args: Parameters<typeof cutSize>) => {
  const found = said(cutSize(...args));
  return typeof found === "string" ? found : found.size;
};

describe("cutSize", () => {
  // Common practice: 34-28-40 is 12 at the bust, 14 at the waist, 16 at the hip of the misses chart.
  const body = bodyOf({ bust: 34, waist: 28, hip: 40 });

  it("cuts a shirt by the bust", () => {
    expect(got(cutSize(missesChart, body, "shirt"))).toEqual({ size: "12", frame: "12" });
  });

  it("takes the largest of the governing places without finished measurements", () => {
    expect(got(cutSize(missesChart, body, "fitted dress"))).toEqual({ size: "16", frame: "12" });
    expect(size(missesChart, body, "full skirt")).toBe("14");
    expect(size(missesChart, body, "skirt")).toBe("16");
    expect(size(missesChart, body, "nightwear")).toBe("16");
  });

  it("steps up from the frame size only while the ease is too small", () => {
    const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
    expect(size(missesChart, body, "fitted dress", { finished })).toBe("14");
    expect(size(missesChart, body, "shirt", { finished })).toBe("12");
  });

  it("never goes below the frame size, however roomy the design", () => {
    const finished = finishedFrom(missesChart, { bust: 8, waist: 8, hip: 8 });
    expect(size(missesChart, bodyOf({ bust: 36, waist: 28, hip: 38 }), "dress", { finished })).toBe("14");
  });

  it("doesn't judge a governing place that the finished measurements don't print", () => {
    expect(size(missesChart, body, "dress", { finished: finishedFrom(missesChart, { bust: 3, waist: 2 }) })).toBe("14");
    expect(size(missesChart, body, "dress", { finished: finishedFrom(missesChart, { bust: 3 }) })).toBe("12");
  });

  it("answers as without finished measurements when they print none of the governing places", () => {
    const finished = finishedFrom(missesChart, { backWaistLength: 0 });
    expect(size(missesChart, body, "dress", { finished })).toBe("16");
  });

  it("takes the closest of several views by place", () => {
    const row = (view: string, more: number) => ({
      place: "bust",
      view,
      label: "Bust",
      values: missesChart.rows[1]!.values.map((value) => (value as number) + more),
    });
    const finished: Chart = { ...missesChart, kind: "finished", rows: [row("A", 5), row("B", 1)] };
    expect(size(missesChart, body, "shirt", { finished })).toBe("14");
  });

  it("finds the finished column by its label and converts it", () => {
    const inCm = missesChart.rows[1]!.values.map((value) => ((value as number) + 3) * 2.54);
    const finished = chartOf("finished", "cm", [...missesChart.sizes].reverse(), { bust: [...inCm].reverse() });
    expect(size(missesChart, bodyOf({ bust: 34.5 }), "shirt", { finished })).toBe("12");
    expect(size(missesChart, bodyOf({ bust: 34.6 }), "shirt", { finished })).toBe("14");
  });

  it("reads a chart that lists its sizes from large to small, and still steps to the larger", () => {
    const turned = (chart: Chart): Chart => ({
      ...chart,
      sizes: [...chart.sizes].reverse(),
      rows: chart.rows.map((row) => ({ ...row, values: [...row.values].reverse() })),
    });
    const finished = turned(finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 }));
    expect(size(turned(missesChart), body, "dress", { finished })).toBe("14");
    expect(size(turned(missesChart), body, "dress")).toBe("16");
  });

  it("goes by the high bust when the settings say so, and doesn't judge the adjusted bust", () => {
    const full = bodyOf({ highBust: 36, bust: 40, waist: 30, hip: 40 });
    const settings = settingsOf(["Frame", "", "high bust", "", ""]);
    const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
    expect(size(missesChart, full, "dress")).toBe("18");
    expect(got(cutSize(missesChart, full, "dress", { settings }))).toEqual({ size: "16", frame: "16" });
    expect(size(missesChart, full, "dress", { settings, finished })).toBe("16");
    expect(size(missesChart, full, "shirt", { settings: settingsOf(["Frame", "dress", "high bust", "", ""]) })).toBe(
      "18",
    );
  });

  // E-372 Principles of Pattern Alteration, a US Cooperative Extension service, 2006 (read): from 2 in by the high bust.
  it("lets the high bust decide from the threshold upward, exactly at it too", () => {
    const settings = settingsOf(["Threshold", "", "", 2, "in"]);
    const of = (bust: number) => size(missesChart, bodyOf({ highBust: 36, bust }), "shirt", { settings });
    expect(of(38)).toBe("16");
    expect(of(41)).toBe("16");
    expect(size(missesChart, bodyOf({ highBust: 35.5, bust: 37 }), "shirt", { settings })).toBe("16");
    expect(size(missesChart, bodyOf({ highBust: 34.5, bust: 36.4 }), "shirt", { settings })).toBe("14");
    expect(size(missesChart, bodyOf({ highBust: 34.6, bust: 36.6 }), "shirt", { settings })).toBe("14");
  });

  it("goes by the high bust for one person only where the row names her", () => {
    const settings = settingsOf(["Frame", "", "high bust", "", "", "Ada"]);
    const measures = { highBust: 36, bust: 40 };
    expect(size(missesChart, bodyOf(measures, "Ada"), "shirt", { settings })).toBe("16");
    expect(size(missesChart, bodyOf(measures, "Berta"), "shirt", { settings })).toBe("18");
  });

  it("guesses nothing when the high bust is missing", () => {
    const settings = settingsOf(["Frame", "", "high bust", "", ""]);
    expect(size(missesChart, bodyOf({ bust: 40 }, "Ada"), "shirt", { settings })).toBe(
      "The high bust of Ada isn't measured, and this garment is cut by it: fill it in.",
    );
  });

  it("goes by her own least ease, and by a garment of hers that fits", () => {
    const finished = finishedFrom(missesChart, { bust: 3 });
    const least = settingsOf(["Least ease", "shirt", "bust", 4, "in"]);
    expect(size(missesChart, bodyOf({ bust: 34 }), "shirt", { finished, settings: least })).toBe("14");
    // Her shirt that fits measures 38 in: 4 in of ease on a bust of 34.
    const worn = settingsOf(["My garment", "shirt", "bust", 38, "in"]);
    expect(size(missesChart, bodyOf({ bust: 34 }), "shirt", { finished, settings: worn })).toBe("14");
    const snug = settingsOf(["My garment", "shirt", "bust", 35, "in"]);
    const close = finishedFrom(missesChart, { bust: 1 });
    expect(size(missesChart, bodyOf({ bust: 34 }), "shirt", { finished: close, settings: snug })).toBe("12");
  });

  it("goes by her rule between sizes and her governing places", () => {
    const between = (word: string) => settingsOf(["Between sizes", "", "", word, ""]);
    const of = (word: string) => size(missesChart, bodyOf({ bust: 34.5 }), "top", { settings: between(word) });
    expect([of("closest"), of("larger"), of("smaller")]).toEqual(["12", "14", "12"]);
    const byWaist = settingsOf(["Governs", "trousers", "waist", "", ""]);
    expect(size(missesChart, body, "trousers")).toBe("16");
    expect(size(missesChart, body, "trousers", { settings: byWaist })).toBe("14");
  });

  it("asks no ease of a knit", () => {
    const finished = finishedFrom(missesChart, { hip: -3 });
    expect(size(missesChart, bodyOf({ hip: 38 }), "leggings", { finished })).toBe("14");
  });

  // Common practice, no source: invented charts of a child's and a man's pattern.
  it("takes the larger of chest and neck for a man's shirt", () => {
    const men = chartOf("body", "in", ["S", "M", "L"], { chest: [36, 40, 44], neck: [14.5, 15.5, 16.5] });
    expect(size(men, bodyOf({ chest: 40, neck: 16.5 }), "men's shirt")).toBe("L");
    expect(size(men, bodyOf({ chest: 44, neck: 15 }), "men's shirt")).toBe("L");
    expect(size(men, bodyOf({ chest: 40 }), "men's shirt")).toMatch(/The neck isn't measured/);
    expect(got(cutSize(men, bodyOf({ chest: 40, neck: 16.5 }), "mens shirts")).frame).toBe("L");
  });

  it("takes chest, then height, for a child, and hip or waist for a child's trousers", () => {
    const child = chartOf("body", "cm", ["104", "110", "116"], {
      chest: [57, 59, 61],
      waist: [53, 54, 55],
      height: [104, 110, 116],
    });
    expect(got(cutSize(child, bodyOf({ chest: 57, height: 112 }), "child's top"))).toEqual({
      size: "110",
      frame: "104",
    });
    expect(size(child, bodyOf({ waist: 55, height: 105 }), "child's trousers")).toBe("116");
    const byHeight = chartOf("body", "cm", ["104", "110"], { height: [104, 110] });
    expect(size(byHeight, bodyOf({ height: 108 }), "child's dress")).toBe("110");
  });

  it("gives the largest size where the measure still lies within half a step beyond the chart", () => {
    expect(size(missesChart, bodyOf({ hip: 49 }), "skirt")).toBe("24");
  });

  describe("refuses", () => {
    it("a body off the chart, by how much and which way", () => {
      expect(size(missesChart, bodyOf({ hip: 52 }), "skirt")).toBe(
        "52 in at the hip is 4 in above this chart, which ends at size 24 (48 in).",
      );
      expect(size(missesChart, bodyOf({ bust: 28 }), "top")).toBe(
        "28 in at the bust is 2 1/2 in below this chart, which begins at size 6 (30 1/2 in).",
      );
    });

    it("a governing place that isn't measured", () => {
      expect(size(missesChart, bodyOf({ bust: 34, hip: 36 }), "dress")).toBe(
        "The waist isn't measured, and this garment is cut by it: fill it in.",
      );
    });

    it("a chart without the governing place", () => {
      expect(
        size(chartOf("body", "in", ["S", "M"], { bust: [34, 38] }), bodyOf({ bust: 34, hip: 38 }), "skirt"),
      ).toMatch(/hip/);
    });

    it("a falling row, in the chart and in the finished measurements", () => {
      const chart = chartOf("body", "in", ["S", "M", "L"], { bust: [34, 63, 38] });
      expect(size(chart, bodyOf({ bust: 34 }), "top")).toMatch(/bust.*out of order/);
      const good = chartOf("body", "in", ["S", "M", "L"], { bust: [34, 36, 38] });
      const finished = chartOf("finished", "in", ["S", "M", "L"], { bust: [38, 93, 42] });
      expect(size(good, bodyOf({ bust: 34 }), "top", { finished })).toMatch(/bust.*out of order/);
    });

    it("a fault in a row that is used, and not one in another row", () => {
      const fault = refuse("unreadableFigure", { text: "3b" });
      const rows = missesChart.rows.map((row) =>
        row.place === "hip"
          ? { ...row, values: row.values.map((value, at) => (at === 3 ? { fault: fault.problem } : value)) }
          : row,
      );
      expect(size({ ...missesChart, rows }, body, "shirt")).toBe("12");
      expect(size({ ...missesChart, rows }, bodyOf({ hip: 36 }), "skirt")).toMatch(/3b/);
      expect(size(missesChart, { name: null, measures: new Map([["bust", fault_()]]) }, "shirt")).toMatch(/3b/);
      function fault_() {
        return { fault: fault.problem };
      }
    });

    it("centimetres against inches at any governing place", () => {
      expect(size(missesChart, bodyOf({ bust: 86 }), "shirt")).toMatch(/cm against inches/);
      expect(size(missesChart, bodyOf({ bust: 34, waist: 28, hip: 102 }), "dress")).toMatch(/cm against inches/);
      const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
      expect(size(missesChart, bodyOf({ bust: 34, waist: 28, hip: 102 }), "dress", { finished })).toMatch(
        /cm against inches/,
      );
    });

    it("finished measurements in centimetres that don't say so, against inches", () => {
      const finished = chartOf("finished", null, ["12", "14"], { bust: [94, 99] });
      expect(size(missesChart, body, "shirt", { finished })).toBe(
        "94 finished against 34 in in the body chart: cm against inches? Write the unit beside the figure.",
      );
    });

    it("a negative measure, and a unit where the chart has none", () => {
      expect(size(missesChart, bodyOf({ bust: -34 }), "shirt")).toMatch(/below zero/);
      const bare = { ...missesChart, unit: null };
      expect(size(bare, bodyOf({ bust: 34 }), "shirt")).toBe("12");
      expect(size(bare, bodyOf({ bust: 34 }, null, "in"), "shirt")).toMatch(/doesn't say inches or centimetres/);
    });

    it("ease that is too small even in the largest size, by how much", () => {
      const finished = finishedFrom(missesChart, { bust: 1 });
      expect(size(missesChart, bodyOf({ bust: 45 }), "shirt", { finished })).toBe(
        "Even the largest size, 24, has only 2 in of ease at the bust: 1/2 in less than the 2 1/2 in wanted.",
      );
    });

    it("a size that the finished measurements don't have", () => {
      const finished = chartOf("finished", "in", ["6", "8"], { bust: [34, 35] });
      expect(size(missesChart, body, "shirt", { finished })).toMatch(/"?12"? .*6, 8/);
    });

    it("a high bust off the chart, a bust that isn't measured, centimetres for one of the two", () => {
      const settings = settingsOf(["Frame", "", "high bust", "", ""]);
      const said_ = (measures: Record<string, number>, unit: "in" | null = null) =>
        said(cutSize(missesChart, bodyOf(measures, null, unit), "top", { settings }));
      expect(said_({ highBust: 50, bust: 52 }, "in")).toBe(
        "50 in at the high bust is 6 in above this chart, which ends at size 24 (44 in).",
      );
      expect(said_({ highBust: 34 })).toBe("The bust isn't measured, and this garment is cut by it: fill it in.");
      expect(said_({ highBust: 91, bust: 101 })).toBe(
        "91 against 28 1/2 to 44 in on the chart: cm against inches? Write the unit beside the figure.",
      );
      // A bare high bust beside a bust that says its unit.
      const mixed = { ...bodyOf({ bust: 40 }, null, "in") };
      const body: Body = { ...mixed, measures: new Map([...mixed.measures, ["highBust", { value: 91, unit: null }]]) };
      expect(said(cutSize(missesChart, body, "top", { settings }))).toBe(
        "91 against 28 1/2 to 44 in on the chart: cm against inches? Write the unit beside the figure.",
      );
    });

    it("a cell that holds no measure at a governing place, and a least ease where no table says its unit", () => {
      const fault = { fault: { code: "unreadableLength", details: { text: "40?" } } } as const;
      expect(said(cutSize(missesChart, withFault(bodyOf({ bust: 34, waist: 28 }), "hip", fault), "dress"))).toBe(
        `"40?" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`,
      );
      const chart = chartOf("body", null, ["S", "M"], { bust: [34, 36] });
      const finished = chartOf("finished", null, ["S", "M"], { bust: [38, 40] });
      expect(said(cutSize(chart, bodyOf({ bust: 34 }), "top", { finished }))).toBe(
        "This chart doesn't say inches or centimetres, so 2.5 in can't be compared with it: add a Unit column.",
      );
      // With a figure missing in the body chart the finished one stands as it is.
      const half = chartOf("body", null, ["S", "M"], { bust: [34, 36], hip: [36, null] });
      const inches = chartOf("finished", "in", ["S", "M"], { bust: [38, 40], hip: [40, 42] });
      expect(got(cutSize(half, bodyOf({ bust: 34, hip: 36 }), "top", { finished: inches }))).toEqual({ size: "S", frame: "S" }); // prettier-ignore
    });

    it("an unknown garment", () => {
      expect(size(missesChart, body, "ball gown")).toMatch(/not a garment known here/);
    });
  });

  it("takes a body in two units", () => {
    const mixed = {
      name: null,
      measures: new Map([
        ["bust", { value: 34, unit: "in" as const }],
        ["waist", { value: 71.12, unit: "cm" as const }],
        ["hip", { value: 40, unit: null }],
      ]),
    };
    expect(size(missesChart, mixed, "dress")).toBe("16");
  });

  // Worked examples of teaching pages (read): E3, E3b; the clash of both ways of reading the high bust is our own working.
  it("agrees with the printed examples", () => {
    const example = (id: string) => examples.examples.find((one) => one.id === id)!;
    const { bust, high_bust } = example("E3").in as { bust: number; high_bust: number };
    const read = (row: string) =>
      settingsOf(
        ["Frame", "", "high bust", "", ""],
        ["High bust row", "", "", row, ""],
        ["Drafted difference", "", "", 0, "in"],
      );
    const high = bodyOf({ bust, highBust: high_bust });
    expect(
      size(missesChart, high, "dress", {
        settings: settingsOf(
          ["Governs", "dress", "bust", "", ""],
          ["Frame", "dress", "high bust", "", ""],
          ["High bust row", "", "", "bust", ""],
          ["Drafted difference", "", "", 0, "in"],
        ),
      }),
    ).toBe("10");
    expect(size(missesChart, high, "top", { settings: read("bust") })).toBe(
      (example("E3").out as { size: string }).size,
    );
    expect(size(missesChart, high, "top", { settings: read("high bust") })).toBe("12");
    expect(size(missesChart, bodyOf({ bust: 36 }), "top")).toBe((example("E3b").out as { size: string }).size);
  });

  // EN 13402-3:2004, class bounds as coded in a public statistics package (read): half-open, the last one too.
  it("keeps the half-open classes of EN 13402-3", () => {
    const bounds = en.bust_class_bounds;
    const spans: Figure[] = en.bust.map((_, at) => ({ low: bounds[at]!, high: bounds[at + 1]! }));
    const chart = chartOf("body", "cm", en.bust.map(String), { bust: spans });
    for (const { bust, class: wanted } of examples.examples.find(({ id }) => id === "E11")!.cases as {
      bust: number;
      class: number | null;
    }[])
      if (wanted === null) expect(size(chart, bodyOf({ bust }), "top")).toMatch(/above this chart/);
      else expect(size(chart, bodyOf({ bust }), "top")).toBe(String(wanted));
  });

  // ASTM D5585-11e1, Table 1, girths (read): each column is its own size; half way between two goes to the larger.
  it("gives each column of the ASTM table its own size", () => {
    const chart = chartOf("body", "in", astm.sizes, { bust: astm.bust, waist: astm.waist_curvy });
    astm.sizes.forEach((label, at) => {
      const own = bodyOf({ bust: astm.bust[at]!, waist: astm.waist_curvy[at]! });
      expect(size(chart, own, "fitted dress")).toBe(label);
      if (at > 0) expect(size(chart, bodyOf({ bust: (astm.bust[at - 1]! + astm.bust[at]!) / 2 }), "top")).toBe(label);
    });
  });
});

describe("cutSize on measured bodies", () => {
  // ANSUR II, US Army Natick Soldier RD&E Center, 2012 (read): chest is the full bust for women, buttock the hip.
  const bodies = readFileSync(join(import.meta.dirname, "../figures/ansur2-test-bodies.csv"), "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split(","))
    .filter(([sex]) => sex === "F")
    .map((cells) => ({ bust: Number(cells[6]), hip: Number(cells[8]) }));
  const inside = bodies.filter(({ bust, hip }) => bust >= 30 && bust <= 47 && hip >= 32 && hip <= 49);

  it("finds a size for every body on the chart", () => {
    expect(inside.length).toBeGreaterThan(30);
    for (const body of inside) expect(missesChart.sizes).toContain(size(missesChart, bodyOf(body), "nightwear"));
  });

  it("says which way the others are off it", () => {
    for (const body of bodies.filter((one) => !inside.includes(one)))
      expect(size(missesChart, bodyOf(body), "nightwear")).toMatch(/(above|below) this chart/);
  });

  it("never gives a bigger body a smaller size", () => {
    const finished = finishedFrom(missesChart, { bust: 3, hip: 3 });
    for (const options of [{}, { finished }])
      for (const one of inside)
        for (const other of inside)
          if (one.bust <= other.bust && one.hip <= other.hip) {
            const [small, large] = [one, other].map((body) =>
              missesChart.sizes.indexOf(size(missesChart, bodyOf(body), "nightwear", options)),
            );
            if (large! >= 0) expect(small).toBeLessThanOrEqual(large!);
          }
  });
});

describe("cutSize, as laws", () => {
  const index = fc.integer({ min: 0, max: missesChart.sizes.length - 1 });
  const column = (at: number) => {
    const figure = (place: string) => missesChart.rows.find((row) => row.place === place)!.values[at] as number;
    return { bust: figure("bust"), waist: figure("waist"), hip: figure("hip") };
  };
  const inside = {
    bust: fc.double({ min: 30.5, max: 46, noNaN: true }),
    waist: fc.double({ min: 23, max: 39, noNaN: true }),
    hip: fc.double({ min: 32.5, max: 48, noNaN: true }),
  };

  it("a body equal to a column gets that column, with at least the least ease everywhere", () => {
    fc.assert(
      fc.property(index, fc.double({ min: 2.5, max: 12, noNaN: true }), (at, ease) => {
        const finished = finishedFrom(missesChart, { bust: ease, waist: ease, hip: ease });
        expect(size(missesChart, bodyOf(column(at)), "dress", { finished })).toBe(missesChart.sizes[at]);
        expect(size(missesChart, bodyOf(column(at)), "dress")).toBe(missesChart.sizes[at]);
      }),
    );
  });

  it("chart plus least ease gives the largest atleast size, never below the frame", () => {
    const finished = finishedFrom(missesChart, LEAST);
    fc.assert(
      fc.property(fc.record(inside), (measures) => {
        const cut = got(cutSize(missesChart, bodyOf(measures), "dress", { finished }));
        const atleast = Object.entries(measures).map(
          ([place, value]) => got(sizeMatch(missesChart, place, { value, unit: null }, "atleast")).index,
        );
        const frame = missesChart.sizes.indexOf(cut.frame);
        expect(missesChart.sizes.indexOf(cut.size)).toBe(Math.max(frame, ...atleast));
      }),
    );
  });

  it("a bigger body never gets a smaller size, with finished measurements or without", () => {
    const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
    const more = fc.double({ min: 0, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.record(inside), more, more, more, fc.boolean(), (one, bust, waist, hip, judged) => {
        const options = judged ? { finished } : {};
        const [small, large] = [one, { bust: one.bust + bust, waist: one.waist + waist, hip: one.hip + hip }].map(
          (measures) => cutSize(missesChart, bodyOf(measures), "dress", options),
        );
        if (large!.ok)
          expect(missesChart.sizes.indexOf(got(small!).size)).toBeLessThanOrEqual(
            missesChart.sizes.indexOf(large!.value.size),
          );
      }),
    );
  });

  it("an exactly converted chart gives the same sizes", () => {
    // Quarters of an inch: times 2.54 and back they stay apart by far more than the tolerance.
    const quarters = (low: number, high: number) =>
      fc.integer({ min: low * 4, max: high * 4 }).map((value) => value / 4);
    const inCm: Chart = {
      ...missesChart,
      unit: "cm",
      rows: missesChart.rows.map((row) => ({ ...row, values: row.values.map((value) => (value as number) * 2.54) })),
    };
    fc.assert(
      fc.property(quarters(31, 45), quarters(23, 39), quarters(33, 48), (bust, waist, hip) => {
        const body = bodyOf({ bust, waist, hip }, null, "in");
        expect(size(inCm, body, "dress")).toBe(size(missesChart, body, "dress"));
      }),
    );
  });

  it("more ease in the pattern never gives a larger size", () => {
    fc.assert(
      fc.property(
        fc.record(inside),
        fc.double({ min: 3, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        (measures, ease, more) => {
          const of = (extra: number) =>
            cutSize(missesChart, bodyOf(measures), "dress", {
              finished: finishedFrom(missesChart, { bust: extra, waist: extra, hip: extra }),
            });
          const [close, roomy] = [of(ease), of(ease + more)];
          if (close.ok)
            expect(missesChart.sizes.indexOf(got(roomy).size)).toBeLessThanOrEqual(
              missesChart.sizes.indexOf(close.value.size),
            );
        },
      ),
    );
  });
});

describe("sizeCutter", () => {
  it("answers for many bodies as cutSize does for one", () => {
    const cut = got(sizeCutter(missesChart, "dress"));
    for (const hip of [33, 38, 45]) {
      const body = bodyOf({ bust: 36, waist: 28, hip });
      expect(cut(body)).toEqual(cutSize(missesChart, body, "dress"));
    }
  });

  it("refuses an unknown garment before any body", () => {
    expect(said(sizeCutter(missesChart, "tent"))).toMatch(/not a garment/);
  });
});
