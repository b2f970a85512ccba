import { describe, expect, it } from "vitest";
import type { Body, Chart } from "../../src/chart/model";
import { fitting, type FitOptions } from "../../src/fit/fitting";
import { frameOf } from "../../src/fit/frame";
import { readSettings } from "../../src/fit/read-settings";
import { bodyOf, chartOf, got, missesChart, said, withFault } from "./bodies";

const rules = (...rows: (string | number)[][]): FitOptions => ({
  settings: got(readSettings([["Setting", "Garment", "Place", "Value", "Unit", "Person"], ...rows])),
});
const frame = (body: Body, garment: string, options: FitOptions = {}, chart: Chart = missesChart) => {
  const found = said(frameOf(got(fitting(chart, garment, options)), body));
  return typeof found === "string" ? found : `${chart.sizes[found.index]} by ${found.place}`;
};

// The misses chart (tests/figures): high bust 36 is its 16, bust 40 its 18, hip 38 its 14.
const full = bodyOf({ highBust: 36, bust: 40, hip: 38, waist: 28 });

describe("frameOf", () => {
  it("asks the high bust of what hangs from the shoulders only, unless a row names the garment", () => {
    for (const all of [
      ["Threshold", "", "", 2, "in"],
      ["Frame", "", "high bust", "", ""],
    ]) {
      expect(frame(full, "top", rules(all))).toBe("16 by highBust");
      expect(frame(full, "skirt", rules(all))).toBe("14 by hip");
    }
    expect(frame(full, "nightwear", rules(["Frame", "nightwear", "hip", "", ""]))).toBe("14 by hip");
  });
  it("keeps to the bust for a garment whose frame she has set to it, whatever the threshold", () => {
    const threshold = ["Threshold", "", "", 2, "in"];
    expect(frame(full, "top", rules(threshold, ["Frame", "top", "bust", "", ""]))).toBe("18 by bust");
    expect(frame(full, "vest", rules(threshold, ["Frame", "top", "bust", "", ""]))).toBe("16 by highBust");
  });
  it("goes by the chest of a chart without a bust, also for a body that has one and with a threshold", () => {
    const chests = chartOf("body", "in", ["S", "M", "L"], { chest: [34, 38, 42] });
    const body = bodyOf({ bust: 42, highBust: 36, chest: 38 });
    expect(frame(body, "shirt", {}, chests)).toBe("M by chest");
    expect(frame(body, "shirt", rules(["Threshold", "", "", 2, "in"]), chests)).toBe("M by chest");
    expect(frame(body, "shirt", rules(["Frame", "", "high bust", "", ""]), chests)).toBe("M by chest");
  });
  it("takes a threshold and a row of the high bust for the person and the garment that they name", () => {
    const ada = bodyOf({ highBust: 36, bust: 40 }, "Ada");
    expect(frame(ada, "top", rules(["Threshold", "", "", 2, "in", "Ada"]))).toBe("16 by highBust");
    expect(frame(ada, "top", rules(["Threshold", "", "", 2, "in", "Ben"]))).toBe("18 by bust");
    expect(frame(ada, "top", rules(["Threshold", "shirt", "", 2, "in", ""]))).toBe("18 by bust");
    // Bust row: 36 + 3 drafted = 39, between 16 (38) and 18 (40): the larger. High bust row: 36 is 16.
    const drafted = ["Drafted difference", "", "", 3, "in", "Ada"];
    const high = ["Frame", "", "high bust", "", ""];
    expect(frame(ada, "top", rules(high, drafted))).toBe("16 by highBust");
    expect(frame(ada, "top", rules(high, drafted, ["High bust row", "", "", "bust", "", "Ada"]))).toBe(
      "18 by highBust",
    );
    expect(frame(ada, "top", rules(high, drafted, ["High bust row", "", "", "bust", "", "Ben"]))).toBe(
      "16 by highBust",
    );
    expect(frame(ada, "top", rules(high, ["High bust row", "", "", "high bust", "", ""]))).toBe("16 by highBust");
  });
  it("reads the bust row of a chart without a high bust, where no row says which", () => {
    // 36 + 2 in = 38: size 16.
    const chart = { ...missesChart, rows: missesChart.rows.filter(({ place }) => place !== "highBust") };
    expect(frame(full, "top", rules(["Frame", "", "high bust", "", ""]), chart)).toBe("16 by highBust");
  });
  it("goes by her rule between sizes at the high bust too, and only by that of the bust", () => {
    const high = ["Frame", "", "high bust", "", ""];
    const body = bodyOf({ highBust: 36.5, bust: 40 });
    expect(frame(body, "top", rules(high))).toBe("16 by highBust");
    expect(frame(body, "top", rules(high, ["Between sizes", "", "bust", "larger", ""]))).toBe("18 by highBust");
    expect(frame(body, "top", rules(high, ["Between sizes", "", "hip", "larger", ""]))).toBe("16 by highBust");
  });
  it("takes no unit for the wrong one that is written beside the measures", () => {
    const high = rules(["Frame", "", "high bust", "", ""]);
    const off = (body: Body, options?: FitOptions) => frame(body, "top", options);
    expect(off(bodyOf({ highBust: 91, bust: 97 }), high)).toMatch(/cm against inches/);
    expect(off(bodyOf({ highBust: 91, bust: 97 }, null, "in"), high)).toMatch(/^91 in at the high bust is 47 in above/);
    expect(off(bodyOf({ bust: 97 }))).toMatch(/cm against inches/);
    expect(off(bodyOf({ bust: 97 }, null, "in"))).toMatch(/^97 in at the bust is 51 in above/);
    // 97 cm are 38.19 in: size 16.
    expect(off(bodyOf({ bust: 97 }, null, "cm"))).toBe("16 by bust");
  });
  it("refuses a cell that holds no measure, and takes no other place instead", () => {
    const child = chartOf("body", "cm", ["104", "110"], { chest: [57, 59], height: [104, 110] });
    const fault = { fault: { code: "unreadableFigure", details: { text: "5g" } } } as const;
    expect(frame(withFault(bodyOf({ height: 108 }), "chest", fault), "child's top", {}, child)).toMatch(/^"5g"/);
    expect(frame(bodyOf({ height: 108 }), "child's top", {}, child)).toBe("110 by height");
    expect(frame(withFault(bodyOf({ highBust: 36 }), "bust", fault), "top", rules(["Frame", "", "high bust", "", ""]))).toMatch(/^"5g"/); // prettier-ignore
  });
});
