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

describe("totalNotions", () => {
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
  it("is nothing for nothing", () => {
    expect(totalNotions([])).toEqual({ totals: [], unread: [] });
  });
});
