import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/chart/cell";
import { envelopes, groupsInCell, readSizeGroup, sizesIn } from "../../src/fit/envelope";
import { got, said } from "./bodies";

const buy = (groups: readonly Cell[], ...sizes: readonly Cell[]) => said(envelopes(groups, sizes));

describe("envelopes", () => {
  // The body 34-28-40 takes 12, 14 and 16 (common practice).
  it("gives the fewest groups that hold every size, in their own words and order", () => {
    expect(buy(["6-12", "14-20"], 12, 14, 16)).toEqual(["6-12", "14-20"]);
    expect(buy(["14-20", "6-12"], "12", 16)).toEqual(["14-20", "6-12"]);
    expect(buy(["6-12", "14-20"], 12)).toEqual(["6-12"]);
    // One group holds all three, though the first two would too.
    expect(buy(["6-12", "14-20", "12-16"], 12, 14, 16)).toEqual(["12-16"]);
    // Three are wanted, the fourth is never needed.
    expect(buy(["4-6", "8-10", "12-14", "14-16"], 6, 8, 14)).toEqual(["4-6", "8-10", "12-14"]);
  });

  it("needs both ends of a blend", () => {
    expect(buy(["6-12", "14-20"], "12-16")).toEqual(["6-12", "14-20"]);
    expect(buy(["6-12", "14-20"], "8+10")).toEqual(["6-12"]);
  });

  it("takes a nought for size 0 only where a group has it", () => {
    expect(buy(["0-8", "10-18"], 0)).toEqual(["0-8"]);
    expect(buy(["6-12", 0], 0)).toBe("This is blank: a size is needed here.");
    expect(buy([0, ""], 8)).toBe("This is blank: one of the pattern's size groups, such as 6-12, is needed here.");
  });

  it("counts 2X, 2XL and XXL as one size, XS to 3XS downward", () => {
    for (const size of ["1X", "XL", "x", "2X", "2XL", "XXL", "3xl"]) expect(buy(["XL-3X"], size)).toEqual(["XL-3X"]);
    expect(buy(["XL-3X"], "L")).toBe("Size L is in none of these groups (XL-3X).");
    expect(buy(["XL-3X"], "4X")).toBe("Size 4X is in none of these groups (XL-3X).");
    expect(buy(["3XS-S"], "2XS")).toEqual(["3XS-S"]);
    expect(buy(["3XS-S"], "XS")).toEqual(["3XS-S"]);
    expect(buy(["3XS-S"], "4XS")).toBe("Size 4XS is in none of these groups (3XS-S).");
    // A 6X is a child's size after 6, no letter size.
    expect(buy(["4X-6X"], "XL")).toBe(`"4X-6X" can't be read as a group of sizes. Write it like 6-12, or 6 to 12.`);
  });

  // Children's patterns are sold as 2-6X or 4-6X and 7-14, plus sizes as 1X-5X: common practice, no source.
  it("puts a child's 6X after 6, and leaves other letters beside a number a scale of their own", () => {
    for (const size of [4, "5", 6, "6X"]) expect(buy(["4-6X", "7-14"], size)).toEqual(["4-6X"]);
    expect(buy(["4-6X", "7-14"], "6x", 8)).toEqual(["4-6X", "7-14"]);
    expect(buy(["4, 5, 6, 6X"], 5)).toEqual(["4, 5, 6, 6X"]);
    expect(buy(["2-6"], "6X")).toBe("Size 6X is in none of these groups (2-6).");
    expect(buy(["7-14"], "6X")).toBe("Size 6X is in none of these groups (7-14).");
    expect(buy(["XL-3X"], "2XT")).toBe("Size 2XT is in none of these groups (XL-3X).");
    expect(buy(["XL-2X"], "XXXL")).toBe("Size XXXL is in none of these groups (XL-2X).");
    expect(buy(["6-12"], "small")).toBe("Size small is in none of these groups (6-12).");
    expect(buy(["3XL-7XL"], "6XL")).toEqual(["3XL-7XL"]);
    expect(buy(["XXXXS-S"], "3XS")).toEqual(["XXXXS-S"]);
    expect(buy(["4XS-S"], "XXXS")).toEqual(["4XS-S"]);
  });

  it("reads a list by its ends, and skips blank sizes", () => {
    expect(buy(["8-10-12"], 12)).toEqual(["8-10-12"]);
    expect(buy(["8-10-12"], 14)).toBe("Size 14 is in none of these groups (8-10-12).");
    expect(buy(["6-12", "14-20"], 12, "", null, 8)).toEqual(["6-12"]);
  });

  it("puts 00 and 000 before 0", () => {
    expect(buy(["00-8"], "00")).toEqual(["00-8"]);
    expect(buy(["00-8"], 8)).toEqual(["00-8"]);
    expect(buy(["00-8"], "000")).toBe("Size 000 is in none of these groups (00-8).");
    expect(buy(["000-0"], "00")).toEqual(["000-0"]);
    expect(buy(["0000-2"], "0000")).toEqual(["0000-2"]);
    expect(buy(["000-2"], "0000")).toBe("Size 0000 is in none of these groups (000-2).");
    // A petite 00 is smaller than a petite 0, and a child's 100 cm no nought.
    expect(buy(["0P-8P"], "00P")).toBe("Size 00P is in none of these groups (0P-8P).");
    expect(buy(["00P-8P"], "0P")).toEqual(["00P-8P"]);
    expect(buy(["92-110"], 100)).toEqual(["92-110"]);
  });

  it("refuses a group that it can't read, and a spreadsheet error", () => {
    const unreadable = (text: string) => `"${text}" can't be read as a group of sizes. Write it like 6-12, or 6 to 12.`;
    for (const text of [
      "12-6",
      "6-M",
      "2-M",
      "18W-20",
      "small-large",
      "small-8",
      "8-large",
      "Misses 6-12",
      "6 tall-12 tall",
      "-",
    ])
      expect(buy([text], 8)).toBe(unreadable(text));
    expect(buy([true], 8)).toBe(unreadable("true"));
    expect(buy([46174], 8)).toBe("Excel has made a date of this (46174): type 0 7/8, or 6 to 12.");
    expect(envelopes([{ error: "#REF!" }], [8])).toMatchObject({ problem: { code: "errorCell", details: { error: "#REF!" } } }); // prettier-ignore
    expect(envelopes(["6-12"], [{ error: "#N/A" }])).toMatchObject({ problem: { code: "errorCell" } });
  });

  it("gives up on what is no pattern: too many groups or sizes, too many ways", () => {
    const many = (count: number) => Array.from({ length: count }, (_, at) => String(at + 1));
    const refusal = (groups: number, sizes: number) =>
      `${groups} groups and ${sizes} sizes are too many groups or sizes to choose among: give the groups of one pattern.`;
    expect(buy(many(61), "1")).toBe(refusal(61, 1));
    expect(buy(["1-99"], ...many(61))).toBe(refusal(1, 61));
    expect(buy(many(60), "60")).toEqual(["60"]);
    expect(buy(["1-99"], ...many(60))).toEqual(["1-99"]);
    // Each of 20 sizes twice: a million ways to choose twenty.
    expect(buy([...many(20), ...many(20)].sort(), ...many(20))).toBe(refusal(40, 20));
  });
});

describe("readSizeGroup", () => {
  it("keeps its own words, and holds a single word only as that label", () => {
    const group = got(readSizeGroup(" One Size "));
    expect(group.text).toBe("One Size");
    expect([group.holds("onesize"), group.holds("one size"), group.holds("12")]).toEqual([true, true, false]);
  });

  it("takes 16-24W for 16W to 24W", () => {
    const { holds } = got(readSizeGroup("16-24W"));
    expect(["14W", "16W", "24w", "26W", "20"].map(holds)).toEqual([false, true, true, false, false]);
  });
});

describe("groupsInCell", () => {
  it("divides ranges at commas, semicolons and line ends, and leaves a list of sizes whole", () => {
    expect(groupsInCell("6-12; 14-20")).toEqual(["6-12", "14-20"]);
    expect(groupsInCell("6 to 12,14 to 20\n,22-24")).toEqual(["6 to 12", "14 to 20", "22-24"]);
    expect(groupsInCell("6, 8, 10")).toEqual(["6, 8, 10"]);
    expect(groupsInCell("6-12,")).toEqual(["6-12,"]);
    // Half of the parts are ranges: groups; fewer: a list.
    expect(groupsInCell("6-12, 14")).toEqual(["6-12", "14"]);
    expect(groupsInCell("6-8, 10, 12")).toEqual(["6-8, 10, 12"]);
    expect(groupsInCell(12)).toEqual([12]);
  });
});

describe("sizesIn", () => {
  it("takes a text apart into its sizes", () => {
    expect(sizesIn("Sizes 6 to 12")).toEqual(["6", "12"]);
    expect(sizesIn("(6, 8, 10)")).toEqual(["6", "8", "10"]);
    expect(sizesIn("[S] bis [M]")).toEqual(["S", "M"]);
    expect(sizesIn("12+16; size 18 and 20 & 22/24")).toEqual(["12", "16", "18", "20", "22", "24"]);
    expect(sizesIn(" - ")).toEqual([]);
  });
});
