import { describe, expect, test } from "vitest";
import fc from "fast-check";
import { envelope } from "../../functions/size";
import { BLANK, caller, column, errorCell, notAvailable, value } from "./call";

const ENVELOPE = caller("ENVELOPE", envelope, 2);
const groups = column("6-12", "14-20");

describe("ENVELOPE", () => {
  // Groups 6-12 and 14-20: the body 34-28-40 (sizes 12, 14, 16) needs both for a blend, the first for a shirt in 12.
  test("gives the fewest groups that hold the sizes", async () => {
    expect(await ENVELOPE([groups, column(12, 14, 16)])).toBe("6-12 + 14-20");
    expect(await ENVELOPE([groups, 12])).toBe("6-12");
    expect(await ENVELOPE([groups, "16"])).toBe("14-20");
  });
  test("takes the first listed of several ways", async () => {
    expect(await ENVELOPE([column("6-12", "10-16", "14-20"), column(10, 12)])).toBe("6-12");
    expect(await ENVELOPE([column("10-16", "6-12", "14-20"), column(10, 12)])).toBe("10-16");
    expect(await ENVELOPE([column("6-8", "10-12", "6-12"), column(8, 10)])).toBe("6-12");
  });
  test("reads several groups from one cell, divided as ranges are", async () => {
    expect(await ENVELOPE(["6-12, 14-20", column(12, 14)])).toBe("6-12 + 14-20");
    expect(await ENVELOPE(["6 to 12; 14 to 20", 16])).toBe("14 to 20");
    expect(await ENVELOPE(["6-12\n14-20", 6])).toBe("6-12");
    expect(await ENVELOPE(["6, 8, 10", 8])).toBe("6, 8, 10");
  });
  test("reads groups in words, in brackets, as lists, in letters", async () => {
    expect(await ENVELOPE([[["6 to 12", "14 to 20"]], column(12, 14)])).toBe("6 to 12 + 14 to 20");
    expect(await ENVELOPE([column("A (6-8-10)", "6-8-10", "12-14"), 8])).toEqual(
      value('"A (6-8-10)" can\'t be read as a group of sizes. Write it like 6-12, or 6 to 12.'),
    );
    expect(await ENVELOPE([column("(6-8-10)", "(12-14)"), 12])).toBe("(12-14)");
    expect(await ENVELOPE([column("XS-M", "L-2XL"), column("S", "xxl")])).toBe("XS-M + L-2XL");
    expect(await ENVELOPE([column("00-8", "10-18"), column("00", 10)])).toBe("00-8 + 10-18");
    expect(await ENVELOPE([column("2T-4T", "5-8"), "3T"])).toBe("2T-4T");
    expect(await ENVELOPE([column("8-16", "18-24W"), "20W"])).toBe("18-24W");
    expect(await ENVELOPE([column("8-16", 18), 18])).toBe("18");
  });
  test("doesn't take 18W for 18", async () => {
    expect(await ENVELOPE([column("14-20"), "18W"])).toEqual(
      notAvailable("Size 18W is in none of these groups (14-20)."),
    );
  });
  test("needs both ends of a blend", async () => {
    expect(await ENVELOPE([groups, "12-16"])).toBe("6-12 + 14-20");
    expect(await ENVELOPE([groups, "8+10"])).toBe("6-12");
  });
  test("skips blank cells, whatever they arrive as", async () => {
    for (const blanks of [null, 0] as const) {
      expect(await ENVELOPE([column("6-12", BLANK, "14-20"), column(BLANK, 14, "")], blanks)).toBe("14-20");
      expect(await ENVELOPE([groups, BLANK], blanks)).toEqual(value("This is blank: a size is needed here."));
      expect(await ENVELOPE([BLANK, 12], blanks)).toEqual(
        value("This is blank: one of the pattern's size groups, such as 6-12, is needed here."),
      );
    }
  });
  test("refuses dates that Excel made of groups, and other words", async () => {
    expect(await ENVELOPE([column(46174, "14-20"), 12])).toEqual(
      value("Excel has made a date of this (46174): type 0 7/8, or 6 to 12."),
    );
    expect(await ENVELOPE([column("12-6"), 12])).toEqual(
      value('"12-6" can\'t be read as a group of sizes. Write it like 6-12, or 6 to 12.'),
    );
    expect(await ENVELOPE([groups, column(12, 22)])).toEqual(
      notAvailable("Size 22 is in none of these groups (6-12, 14-20)."),
    );
    expect(await ENVELOPE([groups, errorCell("#REF!")])).toEqual({ error: "#REF!" });
  });
  test("holds every size asked, and never more groups than sizes", () => {
    const sizes = [6, 8, 10, 12, 14, 16, 18, 20, 22, 24];
    const list = ["6-10", "8-14", "12-16", "14-20", "18-24", "6-24"];
    fc.assert(
      fc.property(fc.subarray(sizes, { minLength: 1 }), fc.subarray(list, { minLength: 1 }), (asked, offered) => {
        const holds = (group: string, size: number) => {
          const [low, high] = group.split("-").map(Number);
          return size >= low! && size <= high!;
        };
        const possible = asked.every((size) => offered.some((group) => holds(group, size)));
        if (!possible) return;
        const found = String(envelope(column(...offered) as any[][], [asked])).split(" + ");
        expect(asked.every((size) => found.some((group) => holds(group, size)))).toBe(true);
        // Brute force: no smaller choice holds them all.
        const subsets = offered.reduce<string[][]>(
          (all, group) => [...all, ...all.map((set) => [...set, group])],
          [[]],
        );
        const enough = subsets.filter((set) => asked.every((size) => set.some((group) => holds(group, size))));
        expect(found.length).toBe(Math.min(...enough.map((set) => set.length)));
      }),
    );
  });
});
