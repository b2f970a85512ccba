import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { blend, type BlendRow } from "../../src/fit/blend";
import { cutSize } from "../../src/fit/cut-size";
import { bodyOf, chartOf, finishedFrom, got, missesChart, said, settingsOf, withFault } from "./bodies";

const at = (rows: readonly BlendRow[], place: string) => {
  const row = rows.find((one) => one.place === place);
  if (!row) throw new Error(`no row for ${place}`);
  return row;
};

describe("blend", () => {
  const body = bodyOf({ bust: 34, waist: 28, hip: 40 });

  // Common practice: 12 at the bust, 14 at the waist, 16 at the hip; two side seams are four edges (from memory).
  it("gives each place its closest size and shares the change among four edges", () => {
    expect(got(blend(missesChart, body, "dress"))).toMatchObject([
      { place: "bust", size: "12", girthChange: 0, edgeChange: 0, lengthChange: null },
      { place: "waist", size: "14", girthChange: 1.5, edgeChange: 0.375 },
      { place: "hip", size: "16", girthChange: 4, edgeChange: 1 },
    ]);
  });

  it("gives the first size with enough ease by finished measurements", () => {
    const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
    expect(got(blend(missesChart, body, "dress", { finished })).map(({ size }) => size)).toEqual(["12", "14", "14"]);
  });

  it("says between which two places the line is drawn, and by which rule", () => {
    const rows = got(blend(missesChart, body, "dress"));
    expect(at(rows, "bust").note).toBe("Sets the frame size: the closest size.");
    expect(at(rows, "waist").note).toBe(
      "Draw the line from 12 at the bust to 14 at the waist. The closest size by the body chart.",
    );
    const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
    expect(at(got(blend(missesChart, body, "dress", { finished })), "hip").note).toBe(
      "Straight on in size 14 from the waist. First size with enough: 2 inches of ease (2 inches wanted, our least ease).",
    );
  });

  it("goes in at a waist that is smaller than the frame, where the garment has to fit", () => {
    const slim = bodyOf({ bust: 38, waist: 28, hip: 40 });
    const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
    expect(at(got(blend(missesChart, slim, "dress", { finished })), "waist")).toMatchObject({
      size: "14",
      girthChange: -2,
      edgeChange: -0.5,
    });
    expect(at(got(blend(missesChart, slim, "loose dress", { finished })), "waist")).toMatchObject({
      size: "16",
      girthChange: 0,
    });
    expect(at(got(blend(missesChart, bodyOf({ waist: 28, hip: 40 }), "skirt", { finished })), "waist").size).toBe("14");
  });

  it("keeps neck, shoulders, cross back and high bust in the frame size, and says what they are by themselves", () => {
    const chart = chartOf("body", "in", ["S", "M", "L"], {
      neck: [13, 14, 15], shoulder: [4.5, 4.75, 5], crossBack: [13, 14, 15], highBust: [32, 34, 36], bust: [34, 36, 38],
    }); // prettier-ignore
    const rows = got(
      blend(chart, bodyOf({ neck: 15, shoulder: 4.75, crossBack: 14, highBust: 36, bust: 36 }), "shirt"),
    );
    expect(rows.map(({ place, size, girthChange }) => [place, size, girthChange])).toEqual([
      ["neck", "M", 0], ["shoulder", "M", 0], ["crossBack", "M", 0], ["highBust", "M", 0], ["bust", "M", 0],
    ]); // prettier-ignore
    expect(at(rows, "neck").note).toBe("Frame place, never blended; by itself it is an L: alter it in the frame size.");
    expect(at(rows, "shoulder").note).toBe("Frame place, never blended.");
  });

  it("goes out at a bust that has too little ease in its frame size, and leaves the frame as it is", () => {
    const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
    const rows = got(
      blend(missesChart, bodyOf({ highBust: 34, bust: 36.75, waist: 28, hip: 38 }), "dress", { finished }),
    );
    // Size 14 finished 39: 2 1/4 in on 36 3/4. Size 16 finished 41: 4 1/4.
    expect(rows.map(({ place, size }) => [place, size])).toEqual([["highBust", "14"], ["bust", "16"], ["waist", "14"], ["hip", "14"]]); // prettier-ignore
    expect(at(rows, "bust").note).toMatch(/First size with enough: 4 1\/4 inches of ease/);
  });

  it("keeps the bust in the frame size with a bust adjustment", () => {
    const settings = settingsOf(["Frame", "", "high bust", "", ""]);
    const rows = got(blend(missesChart, bodyOf({ highBust: 36, bust: 40, waist: 30, hip: 40 }), "dress", { settings }));
    expect(rows.map(({ size }) => size)).toEqual(["16", "16", "16", "16"]);
    expect(at(rows, "bust").note).toMatch(/full-bust adjustment of 2 inches, half of it on the half front piece/);
  });

  // About 1/2 in an edge beyond the outermost size: general extension practice, from memory.
  it("goes beyond the outermost size by about 1/2 in an edge, then says so", () => {
    const near = at(got(blend(missesChart, bodyOf({ bust: 46, waist: 39, hip: 50 }), "dress")), "hip");
    expect(near).toMatchObject({ size: "24", girthChange: 2, edgeChange: 0.5 });
    expect(near.note).toMatch(/2 inches beyond size 24, the largest: 1\/2 inch an edge\.$/);
    const far = at(got(blend(missesChart, bodyOf({ bust: 46, waist: 39, hip: 51 }), "dress")), "hip");
    expect(far).toMatchObject({ size: "24", girthChange: 3, edgeChange: 0.75 });
    expect(far.note).toMatch(
      /more than about 1\/2 inch an edge \(from memory\): slash and spread, or take a pattern in other sizes\.$/,
    );
    const small = at(got(blend(missesChart, bodyOf({ bust: 30.5, waist: 21, hip: 32.5 }), "dress")), "waist");
    expect(small).toMatchObject({ size: "6", girthChange: -2 });
    expect(small.note).toMatch(/2 inches inside size 6, the smallest: 1\/2 inch an edge\.$/);
  });

  it("goes beyond the outermost size by what the ease lacks there", () => {
    const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
    const row = at(got(blend(missesChart, bodyOf({ bust: 46, waist: 39, hip: 51 }), "dress", { finished })), "hip");
    // Size 24 finished 52: 1 in of ease on 51, 2 wanted, so 1 in more: 1/4 in an edge.
    expect(row).toMatchObject({ size: "24", girthChange: 1, edgeChange: 0.25 });
  });

  it("says where a shirt isn't judged", () => {
    expect(at(got(blend(missesChart, body, "shirt")), "hip").note).toMatch(
      /: this garment \(shirt\) isn't judged by it, blend only where it is close or reaches so far\.$/,
    );
  });

  it("leaves out a girth that isn't measured, and says so", () => {
    const row = at(got(blend(missesChart, bodyOf({ bust: 34, hip: 36 }), "shirt")), "waist");
    expect(row).toMatchObject({ size: null, girthChange: null, edgeChange: null });
    expect(row.note).toBe("The waist isn't measured: it is not blended.");
  });

  it("lengthens and shortens at every length that both have", () => {
    const chart = chartOf("body", "in", ["S", "M"], {
      hip: [36, 38],
      crotchDepth: [10, 10.25],
      insideLeg: [30, 30.5],
      height: [64, 65],
    });
    const rows = got(blend(chart, bodyOf({ hip: 36, crotchDepth: 10.5, insideLeg: 29, height: 64 }), "trousers"));
    expect(at(rows, "crotchDepth")).toMatchObject({ lengthChange: 0.5, size: null });
    expect(at(rows, "crotchDepth").note).toMatch(/^Lengthen size S by 1\/2 inch/);
    expect(at(rows, "insideLeg")).toMatchObject({ lengthChange: -1 });
    expect(at(rows, "height").note).toMatch(/^As printed for size S\. Height alone/);
  });

  it("says that a child's growth may be added", () => {
    const chart = chartOf("body", "cm", ["104", "110"], { chest: [57, 59], height: [104, 110] });
    const mina = bodyOf({ chest: 57, height: 105 });
    expect(at(got(blend(chart, mina, "child's top")), "height").note).toMatch(/a row Growth in the settings adds it/);
    const settings = settingsOf(["Growth", "", "height", 3, "cm"]);
    expect(at(got(blend(chart, mina, "child's top", { settings })), "height")).toMatchObject({ lengthChange: 4 });
  });

  it("adds growth to the height alone unless the row names a length, and to a grown-up's garment only by name", () => {
    const chart = chartOf("body", "in", ["S", "M"], { hip: [36, 38], insideLeg: [30, 30.5], height: [64, 65] });
    const body = bodyOf({ hip: 36, insideLeg: 30, height: 64 });
    const lengths = (garment: string, ...rows: (string | number)[][]) => {
      const plan = got(blend(chart, body, garment, { settings: settingsOf(...rows) }));
      return ["insideLeg", "height"].map((place) => at(plan, place).lengthChange);
    };
    const everywhere = ["Growth", "", "", 2, "in"];
    expect(lengths("child's trousers", everywhere)).toEqual([0, 2]);
    expect(lengths("trousers", everywhere)).toEqual([0, 0]);
    expect(lengths("child's trousers", everywhere, ["Growth", "", "inside leg", 1, "in"])).toEqual([1, 2]);
    expect(lengths("trousers", ["Growth", "trousers", "inside leg", 1, "in"])).toEqual([1, 0]);
  });

  it("shares the change among her own count of edges, and rounds to her own step", () => {
    const edges = settingsOf(["Edges", "dress", "", 8, ""], ["Edges", "dress", "hip", 2, ""]);
    const rows = got(blend(missesChart, body, "dress", { settings: edges }));
    expect([at(rows, "waist").edgeChange, at(rows, "hip").edgeChange]).toEqual([0.1875, 2]);
    const step = settingsOf(["Edges", "dress", "", 8, ""], ["Step", "", "", "1/8", "in"]);
    expect(at(got(blend(missesChart, body, "dress", { settings: step })), "waist").edgeChange).toBe(0.25);
  });

  it("refuses centimetres against inches in a length", () => {
    expect(said(blend(missesChart, bodyOf({ bust: 34, backWaistLength: 41 }), "shirt"))).toMatch(/cm against inches/);
  });

  it("takes bust and chest for one another where both are printed", () => {
    const chart = chartOf("body", "in", ["S", "M"], { bust: [34, 36], chest: [33, 35] });
    const places = (measures: Record<string, number>) =>
      got(blend(chart, bodyOf(measures), "shirt")).map(({ place, size }) => [place, size]);
    expect(places({ bust: 36 })).toEqual([["bust", "M"]]);
    expect(places({ chest: 33 })).toEqual([["chest", "S"]]);
    expect(places({ bust: 36, chest: 33 })).toEqual([["bust", "M"], ["chest", "S"]]); // prettier-ignore
  });

  it("says that the bust needs no adjustment, and which way the smallest size is overlapped", () => {
    const settings = settingsOf(["Frame", "", "high bust", "", ""]);
    expect(at(got(blend(missesChart, bodyOf({ highBust: 34, bust: 36 }), "top", { settings })), "bust")).toEqual({
      place: "bust",
      size: "14",
      girthChange: 0,
      edgeChange: 0,
      lengthChange: null,
      note: "Straight on in size 14 from the high bust. Stays in the frame size by the high bust; the bust needs no adjustment.",
    });
    expect(at(got(blend(missesChart, bodyOf({ bust: 30.5, waist: 18, hip: 32.5 }), "dress")), "waist")).toEqual({
      place: "waist",
      size: "6",
      girthChange: -5,
      edgeChange: -1.25,
      lengthChange: null,
      note: "Straight on in size 6 from the bust. The closest size by the body chart. 5 inches inside size 6, the smallest: 1 1/4 inches an edge. That is more than about 1/2 inch an edge (from memory): slash and overlap, or take a pattern in other sizes.",
    });
  });

  it("goes by her own limit at an edge", () => {
    const limit = settingsOf(["Edge limit", "", "", 2, "cm"]);
    const hip = (size: number) =>
      at(got(blend(missesChart, bodyOf({ bust: 46, waist: 39, hip: size }), "dress", { settings: limit })), "hip").note;
    // 3 in on four edges are 3/4 in, 1.9 cm; 3.2 in are 0.8 in, 2.03 cm.
    expect(hip(51)).toMatch(/3 inches beyond size 24, the largest: 3\/4 inch an edge\.$/);
    expect(hip(51.2)).toMatch(/0\.8 inches an edge\. That is more than about 0\.79 inches an edge/);
  });

  describe("refuses what it can't know of a place that it would blend:", () => {
    const sizes = ["S", "M", "L"];
    const chart = chartOf("body", "in", sizes, { bust: [34, 36, 38], waist: [26, 28, 30], hip: [36, 38, 40] });
    const body = bodyOf({ bust: 36, waist: 28, hip: 38 });
    const fault = { fault: { code: "unreadableLength", details: { text: "28?" } } } as const;

    it("a cell that holds no measure, in a girth or a length", () => {
      const unread = `"28?" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`;
      expect(said(blend(chart, withFault(body, "waist", fault), "shirt"))).toBe(unread);
      const long = chartOf("body", "in", sizes, { bust: [34, 36, 38], backWaistLength: [16, 16.25, 16.5] });
      expect(said(blend(long, withFault(bodyOf({ bust: 36 }), "backWaistLength", fault), "shirt"))).toBe(unread);
    });

    it("centimetres against inches at the waist of a shirt", () => {
      expect(said(blend(chart, bodyOf({ bust: 36, waist: 71 }), "shirt"))).toBe(
        "71 against 26 to 30 in on the chart: cm against inches? Write the unit beside the figure.",
      );
    });

    it("a figure that isn't printed in the frame size, in the outermost one or along the body", () => {
      const missing = (place: string, size: string) =>
        `The chart has no figure for ${place} in size ${size}, and the answer hangs on it: fill it in.`;
      const without = (waist: readonly (number | null)[]) =>
        chartOf("body", "in", sizes, { bust: [34, 36, 38], waist });
      expect(said(blend(without([26, 28, null]), bodyOf({ bust: 36, waist: 33 }), "shirt"))).toBe(
        missing("waist", "L"),
      );
      expect(said(blend(without([null, 28, 30]), bodyOf({ bust: 34, waist: 28 }), "shirt"))).toBe(
        missing("waist", "S"),
      );
      const long = chartOf("body", "in", sizes, { bust: [34, 36, 38], backWaistLength: [16, null, 16.5] });
      expect(said(blend(long, bodyOf({ bust: 36, backWaistLength: 16 }), "shirt"))).toBe(
        missing("back waist length", "M"),
      );
    });

    it("finished measurements that fall, lack the size, or don't say their unit", () => {
      const falling = chartOf("finished", "in", sizes, { hip: [44, 40, 46] });
      expect(said(blend(chart, body, "shirt", { finished: falling }))).toBe(
        "The row for hip goes out of order at size M (44 in, then 40 in): correct the chart.",
      );
      const thighs = chartOf("body", "in", sizes, { hip: [36, 38, 40], thigh: [20, 21, 22] });
      const short = chartOf("finished", "in", ["S", "M"], { thigh: [23, 24] });
      expect(said(blend(thighs, bodyOf({ hip: 36, thigh: 22 }), "trousers", { finished: short }))).toBe(
        `"L" is not a size on this chart (S, M).`,
      );
      expect(said(blend(thighs, bodyOf({ hip: 40, thigh: 20 }), "trousers", { finished: short }))).toBe(
        `"L" is not a size on this chart (S, M).`,
      );
      const bare = { ...chart, unit: null };
      const own = chartOf("finished", null, sizes, { hip: [40, 42, 44] });
      expect(said(blend(bare, body, "shirt", { finished: own }))).toBe(
        "This chart doesn't say inches or centimetres, so 2 in can't be compared with it: add a Unit column.",
      );
    });

    it("finished centimetres against body inches where the tables don't say", () => {
      const own = chartOf("finished", null, sizes, { bust: [96, 101, 106] });
      expect(said(blend(chart, body, "shirt", { finished: own }))).toBe(
        "101 finished against 36 in in the body chart: cm against inches? Write the unit beside the figure.",
      );
    });
  });

  // 28.4 lies nearest 14, 39.5 nearest 16: the lines that are cut are the printed ones.
  it("changes by the printed lines for a body that lies between two of them", () => {
    const rows = got(blend(missesChart, bodyOf({ bust: 34.3, waist: 28.4, hip: 39.5 }), "dress"));
    expect(rows.map(({ size, girthChange }) => [size, girthChange])).toEqual([["12", 0], ["14", 1.5], ["16", 4]]); // prettier-ignore
  });

  it("says of a shirt by chest and neck what sets its frame, and draws no line to a frame place", () => {
    const chart = chartOf("body", "in", ["S", "M", "L"], {
      neck: [14, 15, 16], shoulder: [17, 18, 19], chest: [36, 40, 44], waist: [30, 34, 38],
    }); // prettier-ignore
    const notes = (body: Record<string, number>) =>
      got(blend(chart, bodyOf(body), "men's shirt")).map(({ place, size, note }) => [place, size, note]);
    const upper = [
      ["neck", "L", "Sets the frame size: the closest size."],
      ["shoulder", "L", "Frame place, never blended; by itself it is an S: alter it in the frame size."],
      ["chest", "L", "Straight on in size L from the neck. Stays in the frame size; by itself it is an M."],
    ];
    expect(notes({ neck: 16, shoulder: 17, chest: 40 })).toEqual([
      ...upper,
      ["waist", null, "The waist isn't measured: it is not blended."],
    ]);
    expect(notes({ neck: 16, shoulder: 17, chest: 40, waist: 34 })).toEqual([
      ...upper,
      [
        "waist",
        "M",
        "Draw the line from L at the chest to M at the waist. The closest size by the body chart: this garment (men's shirt) isn't judged by it, blend only where it is close or reaches so far.",
      ],
    ]);
  });

  it("says that a frame place is off the chart by itself", () => {
    const chart = chartOf("body", "in", ["S", "M", "L"], { neck: [13, 14, 15], bust: [34, 36, 38] });
    expect(got(blend(chart, bodyOf({ neck: 17, bust: 36 }), "shirt"))[0]).toMatchObject({
      place: "neck",
      size: "M",
      note: "Frame place, never blended; by itself it is off the chart: alter it in the frame size.",
    });
  });

  it("fits trousers at the waist, and leaves the thigh to the wearer", () => {
    const chart = chartOf("body", "in", ["S", "M", "L"], { waist: [26, 28, 30], hip: [36, 38, 40], thigh: [20, 21, 22] }); // prettier-ignore
    expect(got(blend(chart, bodyOf({ waist: 26, hip: 38, thigh: 20 }), "trousers")).map(({ note }) => note)).toEqual([
      "The closest size by the body chart.",
      "Draw the line from S at the waist to M at the hip. Sets the frame size: the closest size.",
      "Draw the line from M at the hip to S at the thigh. The closest size by the body chart: this garment (trousers) isn't judged by it, blend only where it is close or reaches so far.",
    ]);
  });

  it("draws the line past a girth that isn't measured, and none from the high bust", () => {
    const rows = got(blend(missesChart, bodyOf({ highBust: 32, bust: 34, hip: 38 }), "nightwear"));
    expect(at(rows, "highBust").note).toBe("Frame place, never blended.");
    expect(at(rows, "bust").note).toBe("Sets the frame size: the closest size.");
    expect(at(rows, "hip").note).toBe(
      "Draw the line from 12 at the bust to 14 at the hip. The closest size by the body chart.",
    );
  });

  // By hand: finished is the chart's figure and so much more; least ease bust 2 1/2, waist 1, hip 2 in.
  it("says why a place has its size by the finished measurements", () => {
    const note = (measures: Record<string, number>, more: Record<string, number>, place: string) =>
      at(got(blend(missesChart, bodyOf(measures), "dress", { finished: finishedFrom(missesChart, more) })), place).note;
    const slim = { bust: 38, waist: 28, hip: 40 };
    const roomy = { bust: 3, waist: 2, hip: 4 };
    expect(note(slim, roomy, "bust")).toBe("Sets the frame size: the closest size.");
    expect(note(slim, roomy, "waist")).toBe(
      "Draw the line from 16 at the bust to 14 at the waist. The closest size by the body chart.",
    );
    expect(note(slim, roomy, "hip")).toBe(
      "Draw the line from 14 at the waist to 16 at the hip. The frame size has 4 inches of ease (2 inches wanted, our least ease).",
    );
    // Waist 28: 28 1/2 finished in 14 is 1/2 in, 30 1/2 in 16 is 2 1/2.
    expect(note({ bust: 40, waist: 28, hip: 42 }, { bust: 3, waist: 0.5, hip: 2 }, "waist")).toBe(
      "Draw the line from 18 at the bust to 16 at the waist. First size with enough: 2 1/2 inches of ease (1 inch wanted, our least ease).",
    );
    expect(note({ bust: 34, waist: 26.5, hip: 40 }, { bust: 3, waist: 2, hip: 2 }, "hip")).toBe(
      "Draw the line from 12 at the waist to 16 at the hip. First size with enough: 2 inches of ease (2 inches wanted, our least ease).",
    );
    expect(note({ bust: 46, waist: 39, hip: 51 }, roomy, "hip")).toBe(
      "Straight on in size 24 from the waist. No size has the ease wanted (2 inches wanted, our least ease). 1 inch beyond size 24, the largest: 1/4 inch an edge.",
    );
  });

  // 1/2 in is 1.27 cm.
  it("has its limit at an edge in the chart's unit, her own where she says, and none in no unit", () => {
    const chart = chartOf("body", "cm", ["38", "40"], { bust: [88, 92], hip: [96, 100] });
    const hip = (measure: number, unit: "cm" | null = "cm") =>
      at(got(blend({ ...chart, unit }, bodyOf({ bust: 92, hip: measure }), "nightwear")), "hip").note;
    expect(hip(104)).toMatch(/ 4 centimetres beyond size 40, the largest: 1 centimetre an edge\.$/);
    expect(hip(106)).toMatch(
      / 1\.5 centimetres an edge\. That is more than about 1\.27 centimetres an edge \(from memory\): slash and spread/,
    );
    expect(hip(106, null)).toMatch(
      / 6 beyond size 40, the largest: 1\.5 an edge\. About 1\/2 inch an edge is the most \(from memory\)\.$/,
    );
    const hers = { settings: settingsOf(["Edge limit", "", "", 2, "cm"]) };
    const unknown = blend({ ...chart, unit: null }, bodyOf({ bust: 92, hip: 106 }), "nightwear", hers);
    expect(at(got(unknown), "hip").note).toMatch(
      / 1\.5 an edge\. The chart names no unit: your own edge limit can't be compared\.$/,
    );
    const settings = settingsOf(["Edge limit", "dress", "hip", 1, "in"]);
    const rows = got(blend(missesChart, bodyOf({ bust: 46, waist: 42, hip: 51 }), "dress", { settings }));
    expect(at(rows, "hip").note).toMatch(/3 inches beyond size 24, the largest: 3\/4 inch an edge\.$/);
    expect(at(rows, "waist").note).toMatch(/3\/4 inch an edge\. That is more than about 1\/2 inch an edge/);
  });

  it("rounds by the step of the garment and the person that the row names", () => {
    const settings = settingsOf(["Step", "dress", "", "1/4", "in"], ["Step", "shirt", "", "1/2", "in", "Ada"]);
    const waist = (garment: string, name: string) =>
      at(got(blend(missesChart, { ...body, name }, garment, { settings })), "waist").edgeChange;
    // 3/8 in: half way between two quarters, then nearest a half.
    expect([waist("dress", "Mina"), waist("shirt", "Ada"), waist("shirt", "Mina")]).toEqual([0.5, 0.5, 0.375]);
    const short = bodyOf({ bust: 34, waist: 26.5, hip: 36, backWaistLength: 16.2 });
    expect(at(got(blend(missesChart, short, "dress", { settings })), "backWaistLength").lengthChange).toBe(0);
  });

  it("asks only for the lengths that the chart prints, and believes a unit that is written", () => {
    const legs = bodyOf({ waist: 30, hip: 40, insideLeg: 30 });
    expect(got(blend(missesChart, legs, "trousers")).map(({ place }) => place)).toEqual(["waist", "hip"]);
    const chart = chartOf("body", "cm", ["S", "M"], { hip: [90, 94], insideLeg: [76, 77] });
    // A child's 30 cm of leg on a grown-up's chart: odd, but no inches.
    expect(
      at(got(blend(chart, bodyOf({ hip: 90, insideLeg: 30 }, null, "cm"), "trousers")), "insideLeg"),
    ).toMatchObject({
      lengthChange: -46,
      note: "Shorten size S by 46 centimetres, where the pattern has this length.",
    });
    expect(said(blend(chart, bodyOf({ hip: 90, insideLeg: 30 }), "trousers"))).toMatch(/cm against inches/);
  });

  it("speaks of growth only at a child's height, or where a row names the person", () => {
    const chart = chartOf("body", "cm", ["104", "110"], { hip: [60, 63], insideLeg: [45, 48], height: [104, 110] });
    const mina = bodyOf({ hip: 60, insideLeg: 45, height: 105 }, "Mina");
    const notes = (garment: string, ...rows: (string | number)[][]) =>
      got(blend(chart, mina, garment, { settings: settingsOf(...rows) }))
        .filter(({ lengthChange }) => lengthChange !== null)
        .map(({ note }) => note);
    const longer = (more: string) => `Lengthen size 104 by ${more}, where the pattern has this length.`;
    expect(notes("child's trousers")).toEqual([
      "As printed for size 104.",
      `${longer("1 centimetre")} Nothing to grow: a row Growth in the settings adds it.`,
    ]);
    expect(notes("trousers", ["Growth", "", "", 3, "cm", "Mina"])).toEqual([
      "As printed for size 104.",
      `${longer("4 centimetres")} 3 centimetres of it to grow. Height alone doesn't say where: go by the lengths along the body.`,
    ]);
    const settings = settingsOf(["Growth", "", "height", 3, "cm"]);
    expect(said(blend({ ...chart, unit: null }, mina, "child's trousers", { settings }))).toBe(
      "This chart doesn't say inches or centimetres, so 3 cm can't be compared with it: add a Unit column.",
    );
  });

  it("refuses a garment it doesn't know, and a thigh beyond the chart where the chart has no figure to go beyond", () => {
    expect(said(blend(missesChart, body, "tent"))).toMatch(/^"tent" is not a garment known here\./);
    const chart = chartOf("body", "in", ["S", "M", "L"], { hip: [36, 38, 40], thigh: [20, 21, null] });
    const finished = chartOf("finished", "in", ["S", "M", "L"], { thigh: [24, 25, 26] });
    expect(said(blend(chart, bodyOf({ hip: 38, thigh: 23 }), "trousers", { finished }))).toBe(
      "The chart has no figure for thigh in size L, and the answer hangs on it: fill it in.",
    );
  });

  it("refuses a frame place off the chart", () => {
    expect(said(blend(missesChart, bodyOf({ bust: 60, waist: 28, hip: 40 }), "dress"))).toMatch(/above this chart/);
  });

  const figure = (place: string, index: number) =>
    missesChart.rows.find((row) => row.place === place)!.values[index] as number;
  const inside = fc.record({
    bust: fc.double({ min: 30.5, max: 46, noNaN: true }),
    waist: fc.double({ min: 23, max: 39, noNaN: true }),
    hip: fc.double({ min: 32.5, max: 48, noNaN: true }),
  });

  it("changes nothing for a body that is one size", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9 }), fc.double({ min: 2.5, max: 10, noNaN: true }), (index, ease) => {
        const one = bodyOf(
          Object.fromEntries(["bust", "waist", "hip", "backWaistLength"].map((place) => [place, figure(place, index)])),
        );
        for (const options of [{}, { finished: finishedFrom(missesChart, { bust: ease, waist: ease, hip: ease }) }])
          for (const row of got(blend(missesChart, one, "dress", options))) {
            expect([row.girthChange ?? 0, row.edgeChange ?? 0, row.lengthChange ?? 0]).toEqual([0, 0, 0]);
            expect(row.size ?? missesChart.sizes[index]).toBe(missesChart.sizes[index]);
          }
      }),
    );
  });

  it("stays between its ends: each place between the frame size and its own size, the change that of the printed lines", () => {
    const index = (size: string | null) => missesChart.sizes.indexOf(size!);
    fc.assert(
      fc.property(inside, fc.double({ min: 3, max: 8, noNaN: true }), (measures, ease) => {
        const finished = finishedFrom(missesChart, { bust: ease, waist: ease, hip: ease });
        const alone = got(blend(missesChart, bodyOf(measures), "dress"));
        const judged = got(blend(missesChart, bodyOf(measures), "dress", { finished }));
        const frame = index(at(alone, "bust").size);
        for (const place of ["waist", "hip"]) {
          const [own, size] = [index(at(alone, place).size), index(at(judged, place).size)];
          expect(size).toBeGreaterThanOrEqual(Math.min(frame, own));
          expect(size).toBeLessThanOrEqual(Math.max(frame, own));
          expect(at(judged, place).girthChange).toBeCloseTo(figure(place, size) - figure(place, frame), 9);
          expect(at(judged, place).edgeChange! * 4).toBeCloseTo(at(judged, place).girthChange!, 9);
        }
      }),
    );
  });

  it("has the size to cut in one piece as its largest", () => {
    const finished = finishedFrom(missesChart, { bust: 3, waist: 2, hip: 4 });
    fc.assert(
      fc.property(inside, fc.boolean(), (measures, judged) => {
        const options = judged ? { finished } : {};
        const cut = cutSize(missesChart, bodyOf(measures), "dress", options);
        const sizes = got(blend(missesChart, bodyOf(measures), "dress", options)).map(({ size }) =>
          missesChart.sizes.indexOf(size!),
        );
        if (cut.ok) expect(Math.max(...sizes)).toBe(missesChart.sizes.indexOf(cut.value.size));
      }),
    );
  });
});
