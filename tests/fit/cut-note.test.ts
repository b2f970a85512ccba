import { describe, expect, it } from "vitest";
import { cutNote, noteCutter } from "../../src/fit/cut-note";
import type { Chart, Fault } from "../../src/chart/model";
import { bodyOf, chartOf, finishedFrom, got, missesChart, said, settingsOf, withFault } from "./bodies";

const BETWEEN = "Between two sizes the closest is taken, and of two as close the larger.";

describe("cutNote", () => {
  // Common practice: 34-28-40 is 12, 14 and 16 on the misses chart.
  const body = bodyOf({ bust: 34, waist: 28, hip: 40 });
  const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
  const note = (...args: Parameters<typeof cutNote>) => said(cutNote(...args));

  it("says what a shirt is cut by and what isn't known of it", () => {
    expect(note(missesChart, body, "shirt")).toBe(
      `Cut size 12, by the bust. Without finished measurements the ease isn't checked. The waist and the hip are not checked. ${BETWEEN}`,
    );
  });

  it("puts the blend first where the places differ", () => {
    expect(note(missesChart, body, "dress")).toBe(
      `A blend fits better: 12 at the bust, 14 at the waist and 16 at the hip. In one piece cut size 16: by the body chart the bust is a 12, the waist is a 14 and the hip is a 16, and the largest decides. Without finished measurements the ease isn't checked. ${BETWEEN}`,
    );
  });

  it("says where the ease made it step up, and whose least ease that is", () => {
    expect(note(missesChart, body, "dress", { finished })).toBe(
      `A blend fits better: 12 at the bust and 14 at the waist and the hip. In one piece cut size 14. The frame size by the bust is 12; 14 is the first with enough ease: 5 inches at the bust, 2 inches at the waist and 2 inches at the hip. The least ease at the bust is ours, 2 1/2 inches; published ones run from 1 1/2 to 4 inches. ${BETWEEN}`,
    );
    const settings = settingsOf(["Least ease", "", "bust", 3, "in"]);
    expect(note(missesChart, body, "dress", { finished, settings })).not.toMatch(/published/);
  });

  it("gives the ease of a shirt's hip where the finished measurements reach it", () => {
    expect(note(missesChart, bodyOf({ bust: 34, waist: 26, hip: 37 }), "shirt", { finished })).toMatch(
      /^Cut size 12, the frame size by the bust\. It has enough ease: 3 inches at the bust\. The waist has 2 1\/2 inches of ease\. The hip has 3 inches of ease\./,
    );
    expect(note(missesChart, body, "shirt", { finished })).toMatch(
      /^A blend fits better: 12 at the bust and 14 at the waist and the hip\. .*The hip has no ease, and the least is 2 inches: blend there\./,
    );
    expect(note(missesChart, body, "shirt", { finished: finishedFrom(missesChart, { bust: 3 }) })).toMatch(
      /The waist and the hip are not checked\./,
    );
  });

  it("says what the finished measurements don't print, and what the body chart says of it", () => {
    expect(note(missesChart, body, "dress", { finished: finishedFrom(missesChart, { bust: 3, waist: 2 }) })).toMatch(
      /The hip is not checked: the finished measurements don't print it; by the body chart it is a 16\./,
    );
    expect(note(missesChart, body, "dress", { finished: finishedFrom(missesChart, { backWaistLength: 0 }) })).toMatch(
      /print none of the places that decide, so the ease isn't checked\./,
    );
  });

  it("says what the chart doesn't print", () => {
    const chart: Chart = { ...missesChart, rows: missesChart.rows.filter(({ place }) => place !== "hip") };
    expect(note(chart, body, "dress")).toMatch(/The hip is not checked: the chart doesn't print it\./);
  });

  it("says that a jacket has no least ease of its own", () => {
    expect(note(missesChart, body, "jacket", { finished })).toMatch(
      /A jacket has no least ease of its own in print; that of a dress is used\./,
    );
    expect(note(missesChart, body, "blouse", { finished })).not.toMatch(/of its own/);
  });

  it("says that nothing is asked of a knit", () => {
    expect(
      note(missesChart, bodyOf({ hip: 38 }), "leggings", { finished: finishedFrom(missesChart, { hip: -2 }) }),
    ).toMatch(
      /^Cut size 14, the frame size by the hip\. Nothing is asked of a knit: the size is the pattern's own, so measure how far the cloth stretches\./,
    );
  });

  // sewing.org (read): hip; a tips page, 2008 (read): waist.
  it("names the default where print disagrees", () => {
    expect(note(missesChart, body, "trousers")).toMatch(/By the hip, as most books say; some go by the waist\./);
    const settings = settingsOf(["Governs", "trousers", "waist", "", ""], ["Between sizes", "", "", "larger", ""]);
    expect(note(missesChart, body, "trousers", { settings })).toMatch(
      /Between two sizes the larger is taken, as your settings say\.$/,
    );
    expect(note(missesChart, body, "trousers", { settings })).not.toMatch(/most books/);
  });

  it("proposes a blend for a waist that is smaller than the hip's size", () => {
    expect(note(missesChart, body, "skirt", { finished })).toMatch(
      /^A blend fits better: 14 at the waist and 16 at the hip\. In one piece cut size 16, the frame size by the hip\./,
    );
  });

  it("says which of several views counts", () => {
    const row = (view: string, more: number) => ({
      place: "bust",
      view,
      label: "Bust",
      values: missesChart.rows[1]!.values.map((value) => (value as number) + more),
    });
    expect(
      note(missesChart, body, "shirt", {
        finished: { ...missesChart, kind: "finished", rows: [row("A", 5), row("B", 3)] },
      }),
    ).toMatch(/The closest of views A and B counts\./);
  });

  it("says what a threshold decided", () => {
    const settings = settingsOf(["Threshold", "", "", 2, "in"]);
    expect(note(missesChart, bodyOf({ highBust: 34, bust: 35 }), "top", { settings })).toMatch(
      /By the bust: 1 in over the high bust is below the threshold of 2 in\./,
    );
  });

  it("says how much larger the adjustment must be where the pattern itself is close", () => {
    const settings = settingsOf(["Frame", "", "high bust", "", ""]);
    expect(
      note(missesChart, bodyOf({ highBust: 36, bust: 40 }), "top", {
        settings,
        finished: finishedFrom(missesChart, { bust: 2 }),
      }),
    ).toMatch(
      /In size 16 it wants a full-bust adjustment of 2 inches, 1 inch on the half front piece\. So the bust has the pattern's own 2 inches of ease, 1\/2 inch below the least: make the adjustment so much larger\./,
    );
  });

  // Choosing the Correct Pattern, sewing.org (read): petite tables have the back waist 1 in shorter.
  it("points to a petite or tall table where the back waist is an inch or more off", () => {
    const of = (backWaistLength: number) => note(missesChart, bodyOf({ bust: 34, backWaistLength }), "top");
    expect(of(15.25)).toMatch(
      /The back waist length is 1 inch shorter than the chart's: if the pattern has a petite table, look there\.$/,
    );
    expect(of(17.5)).toMatch(/1 1\/4 inches longer than the chart's: if the pattern has a tall table/);
    expect(of(15.5)).not.toMatch(/petite/);
    expect(note(missesChart, bodyOf({ hip: 40, waist: 30, backWaistLength: 14 }), "skirt")).not.toMatch(/petite/);
  });

  it("speaks in centimetres on a metric chart", () => {
    const chart = chartOf("body", "cm", ["38", "40"], { bust: [88, 92] });
    const own = chartOf("finished", "cm", ["38", "40"], { bust: [96, 100] });
    expect(got(cutNote(chart, bodyOf({ bust: 88 }), "shirt", { finished: own }))).toBe(
      `Cut size 38, the frame size by the bust. It has enough ease: 8 centimetres at the bust. The least ease at the bust is ours, 6.35 centimetres; published ones run from 3.81 to 10.16 centimetres. ${BETWEEN}`,
    );
  });

  it("says what is wanted beyond the largest or the smallest size", () => {
    const byHip = "By the hip, as most books say; some go by the waist.";
    const rest = `Without finished measurements the ease isn't checked. The waist is not checked. ${byHip} ${BETWEEN}`;
    expect(note(missesChart, bodyOf({ waist: 41, hip: 48 }), "skirt")).toBe(
      `A blend fits better: 24 and a little more at the waist and 24 at the hip. In one piece cut size 24, by the hip. ${rest}`,
    );
    expect(note(missesChart, bodyOf({ waist: 21, hip: 32.5 }), "skirt")).toBe(
      `A blend fits better: 6 and a little less at the waist and 6 at the hip. In one piece cut size 6, by the hip. ${rest}`,
    );
  });

  it("names the frame's place where the garment isn't judged by it", () => {
    const settings = settingsOf(["Frame", "shirt", "hip", "", ""]);
    expect(note(missesChart, bodyOf({ bust: 34, hip: 40 }), "shirt", { settings })).toBe(
      `Cut size 16: by the body chart the hip is a 16 and the bust is a 12, and the largest decides. Without finished measurements the ease isn't checked. The waist is not checked. ${BETWEEN}`,
    );
  });

  // By the high bust 34 it is a 14, whose bust is 36: 2 in for a bust of 38. The waist of 32 is an 18, whose bust is 40.
  it("gives the bust adjustment in the size to cut, too, also where the bust doesn't govern", () => {
    const settings = settingsOf(["Governs", "dress", "waist", "", ""], ["Frame", "dress", "high bust", "", ""]);
    const wants = (size: string, kind: string) =>
      `In size ${size} it wants a ${kind}-bust adjustment of 2 inches, 1 inch on the half front piece.`;
    const curvy = bodyOf({ highBust: 34, bust: 38, waist: 32 });
    const start = "Cut size 18: by the body chart the high bust is a 14 and the waist is an 18, and the largest decides."; // prettier-ignore
    expect(note(missesChart, curvy, "dress", { settings })).toBe(
      `${start} ${wants("14", "full")} ${wants("18", "small")} Without finished measurements the ease isn't checked. The hip is not checked. ${BETWEEN}`,
    );
    // Size 18 finished 43 at the bust, 3 in more than its own 40; the waist 34 in, 2 in on 32, in size 18 too.
    const own = finishedFrom(missesChart, { bust: 3, waist: 2 });
    expect(note(missesChart, curvy, "dress", { settings, finished: own })).toBe(
      `Cut size 18. The frame size by the high bust is 14; 18 is the first with enough ease: 2 inches at the waist. ${wants("14", "full")} ${wants("18", "small")} So the bust has the pattern's own 3 inches of ease. The hip is not checked. ${BETWEEN}`,
    );
  });

  it("says of the adjustment only what the chart and the finished measurements print", () => {
    const chart = chartOf("body", "in", ["12", "14", "16"], {
      highBust: [32, 34, 36],
      bust: [34, 36, null],
      waist: [26.5, 28, 30],
    });
    const settings = settingsOf(["Frame", "dress", "high bust", "", ""]);
    const curvy = bodyOf({ highBust: 34, bust: 37, waist: 30 });
    const wants = "In size 14 it wants a full-bust adjustment of 1 inch, 1/2 inch on the half front piece.";
    // What size 16 has at the bust isn't printed, so its adjustment can't be said.
    expect(note(chart, curvy, "dress", { settings })).toContain(
      `and the largest decides. ${wants} The hip is not checked: the chart doesn't print it. Without finished`,
    );
    const whole = { ...chart, rows: [chart.rows[0]!, { ...chart.rows[1]!, values: [34, 36, 38] }, chart.rows[2]!] };
    const own = chartOf("finished", "in", ["12", "14", "16"], { bust: [37, 39, null], waist: [28.5, 30, 32] });
    expect(note(whole, curvy, "dress", { settings, finished: own })).toContain(
      `${wants} In size 16 it wants a small-bust adjustment of 1 inch, 1/2 inch on the half front piece. The hip is not checked`,
    );
  });

  it("asks nothing of a knit with a bust adjustment", () => {
    const settings = settingsOf(
      ["Like", "my tee", "", "leggings", ""],
      ["Governs", "my tee", "bust", "", ""],
      ["Frame", "my tee", "high bust", "", ""],
    );
    expect(
      note(missesChart, bodyOf({ highBust: 34, bust: 36 }), "my tee", {
        settings,
        finished: finishedFrom(missesChart, { bust: -2 }),
      }),
    ).toBe(
      `Cut size 14, the frame size by the high bust. In size 14 the bust needs no adjustment. So the bust has the pattern's own 2 inches less than the body. The waist and the hip are not checked. ${BETWEEN}`,
    );
  });

  it("says what is off the body chart and not in the finished measurements either", () => {
    const own = finishedFrom(missesChart, { bust: 3, waist: 2 });
    expect(note(missesChart, bodyOf({ bust: 34, waist: 26, hip: 60 }), "dress", { finished: own })).toMatch(
      / The hip is not checked: the finished measurements don't print it; it is off the body chart\. /,
    );
    const chart: Chart = { ...missesChart, rows: missesChart.rows.filter(({ place }) => place === "bust") };
    expect(note(chart, bodyOf({ bust: 34 }), "dress")).toBe(
      `Cut size 12, by the bust. The waist and the hip are not checked: the chart doesn't print them. Without finished measurements the ease isn't checked. ${BETWEEN}`,
    );
  });

  it("says where no least ease is known", () => {
    const sizes = ["S", "M", "L"];
    const chart = chartOf("body", "in", sizes, { chest: [36, 40, 44], neck: [14, 15, 16] });
    const own = chartOf("finished", "in", sizes, { chest: [42, 46, 50], neck: [14.5, 15.5, 16.5] });
    expect(note(chart, bodyOf({ chest: 40, neck: 15 }), "men's shirt", { finished: own })).toBe(
      `Cut size M, the frame size by the chest. It has enough ease: 6 inches at the chest. No least ease is known at the neck, so it isn't checked. ${BETWEEN}`,
    );
  });

  // 34 in bust: 2 in of ease in size 12, 4 in 14. 37 in hip: 3 in of ease in size 12; of 14 nothing is printed.
  it("calls a place not checked where the size to cut has no figure there", () => {
    const sizes = ["12", "14", "16"];
    const chart = chartOf("body", "in", sizes, { bust: [34, 36, 38], hip: [36, 38, 40] });
    const own = chartOf("finished", "in", sizes, { bust: [36, 38, 40], hip: [40, null, 44] });
    expect(note(chart, bodyOf({ bust: 34, hip: 37 }), "shirt", { finished: own })).toBe(
      `A blend fits better: 14 at the bust and 12 at the hip. In one piece cut size 14. The frame size by the bust is 12; 14 is the first with enough ease: 4 inches at the bust. The hip is not checked. The least ease at the bust is ours, 2 1/2 inches; published ones run from 1 1/2 to 4 inches. ${BETWEEN}`,
    );
  });

  it("names her rule for the smaller of two sizes", () => {
    const settings = settingsOf(["Between sizes", "shirt", "", "smaller", ""]);
    expect(note(missesChart, bodyOf({ bust: 35 }), "shirt", { settings })).toBe(
      "Cut size 12, by the bust. Without finished measurements the ease isn't checked. The waist and the hip are not checked. Between two sizes the smaller is taken, as your settings say.",
    );
  });

  it("names together the places of one size", () => {
    expect(note(missesChart, bodyOf({ bust: 38, waist: 28, hip: 40 }), "dress")).toMatch(
      /^A blend fits better: 16 at the bust and the hip and 14 at the waist\. In one piece cut size 16: by the body chart the bust is a 16, the waist is a 14 and the hip is a 16, and the largest decides\. /,
    );
  });

  it("doesn't judge a bust by the chart that gets its adjustment", () => {
    const settings = settingsOf(["Frame", "", "high bust", "", ""]);
    expect(note(missesChart, bodyOf({ highBust: 36, bust: 40, waist: 30, hip: 40 }), "dress", { settings })).toMatch(
      /^Cut size 16, by the high bust, waist and hip\. In size 16 it wants a full-bust adjustment of 2 inches/,
    );
  });

  it("calls a place that isn't measured not checked, and one with just the least ease all right", () => {
    expect(note(missesChart, bodyOf({ bust: 34, hip: 36 }), "shirt", { finished })).toMatch(
      / The waist is not checked\. The hip has 4 inches of ease\. /,
    );
    // Waist 28 1/2 finished in size 12.
    expect(note(missesChart, bodyOf({ bust: 34, waist: 27.5, hip: 36 }), "shirt", { finished })).toMatch(
      / The waist has 1 inch of ease\. The hip has/,
    );
  });

  it("says that the least ease is ours, too, where the bust itself decides below a threshold", () => {
    const settings = settingsOf(["Threshold", "", "", 2, "in"]);
    expect(note(missesChart, bodyOf({ highBust: 34, bust: 35 }), "top", { settings, finished })).toMatch(
      / The least ease at the bust is ours, 2 1\/2 inches; published ones run from 1 1\/2 to 4 inches\./,
    );
  });

  it("says that a jacket has no least ease of its own as long as one place goes by ours", () => {
    const jacket = (...rows: (string | number)[][]) =>
      note(missesChart, bodyOf({ bust: 34, hip: 36 }), "jacket", { finished, settings: settingsOf(...rows) });
    const own = ["Least ease", "jacket", "bust", 3, "in"];
    expect(jacket(own)).not.toMatch(/of its own/);
    expect(jacket(own, ["Governs", "jacket", "", "bust, hip", ""])).toMatch(/A jacket has no least ease of its own/);
  });

  it("speaks of the books only where the default by the hip stands", () => {
    const hips = bodyOf({ waist: 30, hip: 40 });
    const of = (garment: string, ...rows: string[][]) =>
      note(missesChart, hips, garment, { settings: settingsOf(...rows) });
    expect(of("leggings")).not.toMatch(/most books/);
    expect(of("trousers")).toMatch(/most books/);
    expect(of("trousers", ["Frame", "trousers", "waist", "", ""])).not.toMatch(/most books/);
    expect(of("full skirt", ["Frame", "full skirt", "hip", "", ""])).not.toMatch(/most books/);
  });

  it("keeps the least ease of one person from the next", () => {
    const settings = settingsOf(["Least ease", "shirt", "bust", 4, "in", "Ada"]);
    const cutter = got(noteCutter(missesChart, "shirt", { finished, settings }));
    // Size 12 finished 37: 3 in on 34; size 14 has 5.
    expect(said(cutter(bodyOf({ bust: 34 }, "Ada")))).toMatch(/^Cut size 14\. The frame size by the bust is 12;/);
    expect(said(cutter(bodyOf({ bust: 34 }, "Mina")))).toMatch(/^Cut size 12, the frame size by the bust\./);
  });

  it("refuses where no size has the ease, and what it can't read of a place that it would blend", () => {
    expect(note(missesChart, bodyOf({ bust: 46 }), "shirt", { finished: finishedFrom(missesChart, { bust: 1 }) })).toBe(
      "Even the largest size, 24, has only 1 in of ease at the bust: 1 1/2 in less than the 2 1/2 in wanted.",
    );
    const fault: Fault = { fault: { code: "unreadableLength", details: { text: "28?" } } };
    expect(note(missesChart, withFault(bodyOf({ bust: 34 }), "waist", fault), "shirt")).toBe(
      `"28?" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`,
    );
  });

  it("refuses what cutSize refuses", () => {
    expect(note(missesChart, bodyOf({ hip: 52 }), "skirt")).toMatch(/4 in above this chart/);
    expect(note(missesChart, body, "tent")).toMatch(/not a garment/);
  });

  it("is made of whole sentences without signs that can't be read aloud", () => {
    for (const garment of ["shirt", "dress", "skirt", "jacket", "leggings", "nightwear"])
      for (const options of [{}, { finished }]) {
        const text = String(note(missesChart, bodyOf({ bust: 34, waist: 28, hip: 40 }), garment, options));
        expect(text).toMatch(/^[A-Z][^()→≥<>=*]*\.$/);
        expect(text).not.toMatch(/undefined|null|NaN| {2}|\.\./);
      }
  });
});
