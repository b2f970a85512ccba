import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatNotion, readNotions, totalNotions } from "../../src/fabric/notions";

describe("readNotions", () => {
  const half = { value: 0.5, unit: "in" };
  it("reads counts, sizes, lengths and bare names", () => {
    expect(readNotions("seven 1/2 in buttons, 20 cm zip, thread")).toEqual({
      notions: [
        { name: "buttons", count: 7, size: half },
        { name: "zip", count: 1, size: { value: 20, unit: "cm" } },
        { name: "thread", count: null },
      ],
      unread: [],
    });
  });
  it("reads a count with × or without a size", () => {
    expect(readNotions("7 x 1/2 in buttons; 3× snaps\n2 D-rings").notions).toEqual([
      { name: "buttons", count: 7, size: half },
      { name: "snaps", count: 3 },
      { name: "D-rings", count: 2 },
    ]);
  });
  it("reads what is sold by length as a length", () => {
    expect(readNotions("2 m elastic, 60 cm of 1 cm elastic, 1,5 m lace, 2 1/2 yd bias binding").notions).toEqual([
      { name: "elastic", count: null, length: { value: 2, unit: "m" } },
      { name: "elastic", count: null, length: { value: 60, unit: "cm" }, size: { value: 1, unit: "cm" } },
      { name: "lace", count: null, length: { value: 1.5, unit: "m" } },
      { name: "bias binding", count: null, length: { value: 2.5, unit: "yd" } },
    ]);
  });
  it("leaves what could mean two things as it stands", () => {
    for (const line of ["7 1/2 in buttons", "1 cm elastic", "buttons (7) 1/2 in", "zip 20 cm", "3 x", "12"])
      expect(readNotions(line)).toEqual({ notions: [], unread: [line] });
  });
  // ½ is one sign: seven of half an inch, or one of seven and a half?
  it("leaves a fraction that is one sign after a number as it stands, and takes it where a count stands before", () => {
    for (const line of ["7 ½ in buttons", "10 1/2 in buttons", "10 ⅝ in buttons"])
      expect(readNotions(line)).toEqual({ notions: [], unread: [line] });
    expect(readNotions("7 x ½ in buttons").notions).toEqual([{ name: "buttons", count: 7, size: half }]);
    expect(readNotions("2 ½ yd ribbon").notions).toEqual([
      { name: "ribbon", count: null, length: { value: 2.5, unit: "yd" } },
    ]);
  });
  it("is nothing for an empty cell", () => {
    expect(readNotions(" , ;\n")).toEqual({ notions: [], unread: [] });
  });
  it("never throws, and keeps every line", () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const { notions, unread } = readNotions(text);
        expect(notions.length + unread.length).toBeLessThanOrEqual(text.split(/[,;\n]/).length);
      }),
    );
  });
});

describe("readNotions, line by line", () => {
  const read = (line: string) => {
    const { notions, unread } = readNotions(line);
    return unread.length > 0 ? unread : notions;
  };
  const inch = (value: number) => ({ value, unit: "in" });
  it("counts by a word, a times sign or a plain number", () => {
    expect(read("Twelve snaps")).toEqual([{ name: "snaps", count: 12 }]);
    expect(read("one zip")).toEqual([{ name: "zip", count: 1 }]);
    expect(read("thirteen snaps")).toEqual([{ name: "thirteen snaps", count: null }]);
    expect(read("4×buttons")).toEqual([{ name: "buttons", count: 4 }]);
    expect(read("4 x 3 x buttons")).toEqual(["4 x 3 x buttons"]);
    expect(read("2 hooks and eyes")).toEqual([{ name: "hooks and eyes", count: 2 }]);
    expect(read("1000 beads")).toEqual(["1000 beads"]);
    expect(read("12 snaps")).toEqual([{ name: "snaps", count: 12 }]);
    expect(read("12 x snaps")).toEqual([{ name: "snaps", count: 12 }]);
    expect(read("4 x 12 x buttons")).toEqual(["4 x 12 x buttons"]);
    expect(read("4 x 3x buttons")).toEqual(["4 x 3x buttons"]);
    expect(read("hooks 3 x large")).toEqual(["hooks 3 x large"]);
    expect(read("7  wooden   buttons")).toEqual([{ name: "wooden buttons", count: 7 }]);
    expect(read("seven")).toEqual([{ name: "seven", count: null }]);
    expect(read("7")).toEqual(["7"]);
    expect(read("7 x")).toEqual(["7 x"]);
  });
  it("takes a size with its unit, of one thing unless a count stands before it", () => {
    expect(read("9 in zip")).toEqual([{ name: "zip", count: 1, size: inch(9) }]);
    expect(read("2 x 7 1/2 in zips")).toEqual([{ name: "zips", count: 2, size: inch(7.5) }]);
    expect(read("1/2 in button")).toEqual([{ name: "button", count: 1, size: inch(0.5) }]);
    expect(read("0 in zip")).toEqual(["0 in zip"]);
    expect(read("9 in")).toEqual(["9 in"]);
    expect(read("2 x 9 in")).toEqual(["2 x 9 in"]);
    expect(read("9 in zip 4")).toEqual(["9 in zip 4"]);
  });
  it("takes yards and metres of what is sold by length, and lengths of anything with of", () => {
    expect(read("3 yd Ribbon")).toEqual([{ name: "Ribbon", count: null, length: { value: 3, unit: "yd" } }]);
    expect(read("30 cm of Velvet")).toEqual([{ name: "Velvet", count: null, length: { value: 30, unit: "cm" } }]);
    // Two of 3 m could be 3 m in all; centimetres of elastic could be its width.
    expect(read("2 x 3 m elastic")).toEqual(["2 x 3 m elastic"]);
    expect(read("30 cm elastic")).toEqual(["30 cm elastic"]);
    expect(read("2 x 60 cm of elastic")).toEqual(["2 x 60 cm of elastic"]);
    expect(read("60 cm of 1 cm bias binding")).toEqual([
      { name: "bias binding", count: null, length: { value: 60, unit: "cm" }, size: { value: 1, unit: "cm" } },
    ]);
    expect(read("60 cm of")).toEqual(["60 cm of"]);
    expect(read("60 cm of 5")).toEqual(["60 cm of 5"]);
  });
  it("needs a name of two letters without figures", () => {
    expect(read("x")).toEqual(["x"]);
    expect(read("zip no. 5")).toEqual(["zip no. 5"]);
    expect(read("fermeture éclair")).toEqual([{ name: "fermeture éclair", count: null }]);
  });
});

describe("formatNotion", () => {
  it("says a count, a size, a length or only the name", () => {
    const half = { value: 0.5, unit: "in" } as const;
    expect(formatNotion({ name: "buttons", count: 12, size: half, projects: [] })).toBe("12 × 1/2 in buttons");
    expect(formatNotion({ name: "buttons", count: null, projects: [] })).toBe("buttons");
    expect(formatNotion({ name: "snaps", count: 3, projects: [] })).toBe("3 × snaps");
    expect(formatNotion({ name: "elastic", count: null, length: { value: 2, unit: "yd" }, projects: [] })).toBe("2 yd of elastic"); // prettier-ignore
    expect(formatNotion({ name: "elastic", count: null, size: half, length: { value: 2, unit: "m" }, projects: [] })).toBe("2 m of 1/2 in elastic"); // prettier-ignore
  });
});

describe("totalNotions", () => {
  it("knows one and several of a thing for the same, also of patches and of words that end in ss", () => {
    const { totals } = totalNotions([
      { project: "A", text: "1 patch, 1 box, 1 button, cross" },
      { project: "B", text: "2 patches, 2 boxes, 2 buttons, 1 press, 2 presses" },
    ]);
    expect(totals).toEqual([
      { name: "patch", count: 3, projects: ["A", "B"] },
      { name: "box", count: 3, projects: ["A", "B"] },
      { name: "button", count: 3, projects: ["A", "B"] },
      { name: "cross", count: null, projects: ["A"] },
      { name: "press", count: 3, projects: ["B"] },
    ]);
  });
  it("adds lengths in the unit of the first, and keeps widths of elastic apart", () => {
    const { totals } = totalNotions([
      { project: "A", text: "1 yd of elastic; 18 in of elastic" },
      { project: "B", text: "1 m of 1 cm elastic; 50 cm of 10 mm elastic" },
    ]);
    expect(totals).toEqual([
      { name: "elastic", count: null, length: { value: 1.5, unit: "yd" }, projects: ["A"] },
      { name: "elastic", count: null, length: { value: 1.5, unit: "m" }, size: { value: 1, unit: "cm" }, projects: ["B"] },
    ]); // prettier-ignore
  });
  // By hand: 7 + 5 buttons of 1/2 in; 2 m + 50 cm of elastic; two zips of different length stay apart.
  it("adds up the same thing in the same size over projects", () => {
    const { totals, unread } = totalNotions([
      { project: "Camp shirt", text: "seven 1/2 in buttons, thread, 2 m elastic" },
      { project: "Pinafore", text: "5 x 1/2 in button, 20 cm zip, Thread" },
      { project: "Wrap skirt", text: "22 cm zip, 50 cm of elastic, hooks & eyes as needed 3" },
    ]);
    expect(totals.map(formatNotion)).toEqual([
      "12 × 1/2 in buttons",
      "thread",
      "2.5 m of elastic",
      "1 × 20 cm zip",
      "1 × 22 cm zip",
    ]);
    expect(totals[0]!.projects).toEqual(["Camp shirt", "Pinafore"]);
    expect(totals[1]!.projects).toEqual(["Camp shirt", "Pinafore"]);
    expect(unread).toEqual([{ project: "Wrap skirt", text: "hooks & eyes as needed 3" }]);
  });
  it("counts 12 mm and 1.2 cm as one size, a count and a bare name as two lines", () => {
    const { totals } = totalNotions([{ project: "A", text: "2 x 12 mm buttons, 3 x 1.2 cm buttons, buttons" }]);
    expect(totals.map(({ count }) => count)).toEqual([5, null]);
  });
  // What is counted, what is measured off and what is only named can't be added to one another.
  it("keeps a count, a length and a bare name of one thing apart", () => {
    const { totals } = totalNotions([
      { project: "A", text: "2 laces; 1 m of lace; lace" },
      { project: "B", text: "lace; 3 laces; 50 cm of lace" },
    ]);
    expect(totals).toEqual([
      { name: "laces", count: 5, projects: ["A", "B"] },
      { name: "lace", count: null, length: { value: 1.5, unit: "m" }, projects: ["A", "B"] },
      { name: "lace", count: null, projects: ["A", "B"] },
    ]);
  });
  it("is nothing for nothing", () => {
    expect(totalNotions([])).toEqual({ totals: [], unread: [] });
  });
});
