import { describe, expect, it } from "vitest";
import type { Body, Chart } from "../../src/chart/model";
import { fitting, type FitOptions } from "../../src/fit/fitting";
import { judge } from "../../src/fit/judge";
import { bodyOf, chartOf, got, said, settingsOf, withFault } from "./bodies";

const sizes = ["104", "110", "116"];
const child = chartOf("body", "in", sizes, { hip: [22, 23, 24], waist: [20, 21, 22], height: [41, 43, 46] });
const judged = (body: Body, options: FitOptions = {}, garment = "child's trousers", chart: Chart = child) => {
  const found = said(judge(got(fitting(chart, garment, options)), body));
  if (typeof found === "string") return found;
  const cut = said(found.cut);
  return [
    typeof cut === "number" ? sizes[cut] : cut,
    found.places.map(({ place, by }) => `${place}: ${by}`).join(", "),
  ];
};

describe("judge", () => {
  const body = bodyOf({ hip: 22, waist: 21, height: 41 });
  const finished = (rows: Record<string, number[]>): FitOptions => ({
    finished: chartOf("finished", "in", sizes, rows),
  });

  // Common practice: 1 in of least ease at the waist, 2 in at the hip.
  it("judges by the first of the places that stand for one another, by another where only that one is finished", () => {
    expect(judged(body)).toEqual(["104", "hip: body, height: body"]);
    // Waist 21 in 21, 22 and 23: enough from 110 on.
    expect(judged(body, finished({ waist: [21, 22, 23] }))).toEqual(["110", "waist: finished, height: nothing"]);
    // Hip 22 in 24 is enough, also where the waist beside it wouldn't be.
    expect(judged(body, finished({ hip: [24, 25, 26] }))).toEqual(["104", "hip: finished, height: nothing"]);
    expect(judged(body, finished({ hip: [24, 25, 26], waist: [21, 22, 23] }))).toEqual(["104", "hip: finished, height: nothing"]); // prettier-ignore
    expect(judged(bodyOf({ waist: 21, height: 41 }), finished({ hip: [24, 25, 26] }))).toEqual(["110", "waist: body, height: body"]); // prettier-ignore
  });
  it("goes by just the least ease as enough", () => {
    expect(judged(bodyOf({ hip: 22, height: 41 }), finished({ hip: [24, 25, 26] }))[0]).toBe("104");
    expect(judged(bodyOf({ hip: 22.1, height: 41 }), finished({ hip: [24, 25, 26] }))[0]).toBe("110");
  });
  it("refuses a cell that holds no measure, also of a place that another could stand for", () => {
    const fault = { fault: { code: "unreadableFigure", details: { text: "2g" } } } as const;
    const settings = settingsOf(["Governs", "trousers", "waist or hip", "", ""]);
    expect(judged(withFault(bodyOf({ hip: 22 }), "waist", fault), { settings }, "trousers")).toMatch(/^"2g"/);
    expect(judged(bodyOf({ hip: 23 }), { settings }, "trousers")).toEqual(["110", "hip: body"]);
  });
  it("keeps the frame size under a place that is off the chart, and says of which", () => {
    expect(judged(bodyOf({ hip: 22, height: 50 }))).toEqual([
      "50 in at the height is 4 in above this chart, which ends at size 116 (46 in).",
      "hip: body, height: body",
    ]);
    // A smaller place after it changes nothing.
    const both = chartOf("body", "in", sizes, { waist: [20, 21, 22], hip: [22, 23, 24] });
    expect(judged(bodyOf({ hip: 22, waist: 27 }), {}, "men's trousers", both)[0]).toMatch(
      /^27 in at the waist is 5 in above/,
    );
  });
});
