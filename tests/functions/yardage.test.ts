import { describe, expect, test } from "vitest";
import fc from "fast-check";
import { yardage } from "../../functions/fabric";
import { BLANK, caller, campShirtFabric, column, errorCell, indexHeadings, notAvailable, value } from "./call";

const YARDAGE = caller("YARDAGE", yardage, 8);

// The table and its figures are invented; widths that count as one are common practice, no source.
describe("YARDAGE", () => {
  test("gives the printed amount", async () => {
    expect(await YARDAGE([campShirtFabric, "B", 45, 14])).toBe(2.75);
    expect(await YARDAGE([campShirtFabric, "a", 60, "16"])).toBe(1.625);
    expect(await YARDAGE([campShirtFabric, "View A", "60 in", 16])).toBe(1.625);
    expect(await YARDAGE([campShirtFabric, "A", "20", 16, "Interfacing"])).toBe(1);
  });
  test("counts equal widths as one", async () => {
    for (const width of [44, 45, "44/45", '44/45"', 115, "115 cm", "115"])
      expect(await YARDAGE([campShirtFabric, "B", width, 14]), String(width)).toBe(2.75);
    for (const width of [58, "58/60 in", 150]) expect(await YARDAGE([campShirtFabric, "A", width, 16])).toBe(1.625);
  });
  test("takes the larger amount where the nap isn't said", async () => {
    expect(await YARDAGE([campShirtFabric, "A", 45, 10])).toBe(2.125);
    expect(await YARDAGE([campShirtFabric, "A", 45, 10, undefined, "without"])).toBe(2);
    expect(await YARDAGE([campShirtFabric, "A", 45, 10, undefined, "With nap"])).toBe(2.125);
    expect(await YARDAGE([campShirtFabric, "A", 45, 10, undefined, "either"])).toBe(2.125);
  });
  test("takes an amount with nap for cloth without, never the other way", async () => {
    expect(await YARDAGE([campShirtFabric, "B", 45, 10, undefined, "without"])).toBe(2.625);
    const without = [
      ["View", "Width", "Nap", "10"],
      ["A", 45, "without", 2],
    ];
    expect(await YARDAGE([without, "A", 45, 10, undefined, "with"])).toEqual(
      notAvailable(
        "Only an amount without nap is printed for view A on 45 in: with nap it needs more, and how much isn't said.",
      ),
    );
  });
  test("takes the largest amount of a blend", async () => {
    expect(await YARDAGE([campShirtFabric, "A", 45, "12-16"])).toBe(2.375);
    expect(await YARDAGE([campShirtFabric, "A", 45, "10+12"])).toBe(2.125);
    expect(await YARDAGE([campShirtFabric, "A", 45, "16 to 10"])).toBe(2.375);
    const ranges = [
      ["View", "Width", "8-10", "12-14"],
      ["A", 45, 2, 2.25],
    ];
    expect(await YARDAGE([ranges, "A", 45, "8-10"])).toBe(2);
    expect(await YARDAGE([campShirtFabric, "A", 45, "12-18"])).toEqual(
      notAvailable('"18" is not a size on this chart (10 to 16).'),
    );
  });
  test("names the narrower width whose amount is always enough", async () => {
    expect(await YARDAGE([campShirtFabric, "A", 54, 16])).toEqual(
      notAvailable(
        "54 in is not printed here (45 in, 60 in). The 2 3/8 yd printed for 45 in is always enough; for an estimate write TRUE as the estimate.",
      ),
    );
    expect(await YARDAGE([campShirtFabric, "A", 36, 16])).toEqual(
      notAvailable(
        "36 in is not printed here (45 in, 60 in). No narrower width is printed whose amount would be enough; TRUE as the estimate works one out from the 2 3/8 yd printed for 45 in.",
      ),
    );
  });
  // The printed conversion chart (tests/figures/fabric-width-eighths.csv): 1 3/8 yd of 52-54 in are 2 yd of 35-36 in
  // (worked example, read); 2 yd of 60 in are 2 3/4 yd of 45 in (worked example, read).
  test("estimates only when asked", async () => {
    const linen = [
      ["View", "Width", "Unit", "10", "12"],
      ["A", 54, "yd", 1.375, 1.5],
      ["B", 60, "yd", 2, 2.25],
    ];
    expect(await YARDAGE([linen, "A", 36, 10, undefined, undefined, true])).toBe(2);
    expect(await YARDAGE([linen, "B", 45, 10, undefined, undefined, "yes"])).toBe(2.75);
    expect(await YARDAGE([linen, "B", 45, 10, undefined, undefined, false])).toMatchObject({ error: "#N/A" });
    expect(await YARDAGE([linen, "B", 45, 10, undefined, undefined, "perhaps"])).toEqual(
      value('"perhaps" is neither TRUE nor FALSE: write one of them.'),
    );
  });
  test("reads metres, a turned table, views and parts left out", async () => {
    const metric = [
      ["Camp shirt, fabric", BLANK, BLANK],
      ["Breite", "S", "M"],
      ["115 cm", "1,9", "2,1"],
      ["150", 1.4, 1.5],
    ];
    expect(await YARDAGE([metric, BLANK, 115, "M"])).toBe(2.1);
    expect(await YARDAGE([metric, "", "58/60 in", "S"])).toBe(1.4);
    const turned = [
      ["View", "A", "B"],
      ["Width", 45, 60],
      ["10", "2 1/8", 1.5],
      ["12", 2.25, "1 3/4"],
    ];
    expect(await YARDAGE([turned, "B", 60, 12])).toBe(1.75);
    const shared = [
      ["View", "Width", "10"],
      ["A, B", 45, 2],
      ["C", 45, 3],
      ["All views", 60, 1.5],
    ];
    expect(await YARDAGE([shared, "B", 45, 10])).toBe(2);
    expect(await YARDAGE([shared, "C", 60, 10])).toBe(1.5);
    expect(await YARDAGE([shared, "D", 60, 10])).toEqual(notAvailable('"D" is not a view of this table (A, B, C).'));
  });
  test("says what this table doesn't have", async () => {
    expect(await YARDAGE([campShirtFabric, "C", 45, 14])).toEqual(
      notAvailable('"C" is not a view of this table (A, B).'),
    );
    expect(await YARDAGE([campShirtFabric, "A", 45, 14, "lining"])).toEqual(
      notAvailable("This table has no lining for view A. It has main, interfacing."),
    );
    expect(await YARDAGE([campShirtFabric, "A", 45, 8])).toEqual(
      notAvailable('"8" is not a size on this chart (10 to 16).'),
    );
    const hole = [
      ["View", "Width", "10", "12"],
      ["A", 45, 2, BLANK],
    ];
    for (const blanks of [null, 0] as const)
      expect(await YARDAGE([hole, "A", 45, 12], blanks)).toEqual(
        notAvailable("No amount is printed for view A on 45 in in size 12: choose another width or size."),
      );
  });
  test("refuses what it can't read", async () => {
    expect(await YARDAGE([campShirtFabric, "A", "wide", 14])).toEqual(
      value(`"wide" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`),
    );
    expect(await YARDAGE([campShirtFabric, "A", -45, 14])).toMatchObject({ error: "#VALUE!" });
    expect(await YARDAGE([campShirtFabric, "A", 45, 46174])).toEqual(
      value("Excel has made a date of this (46174): type 0 7/8, or 6 to 12."),
    );
    expect(await YARDAGE([campShirtFabric, "A", 45, 14, undefined, "sideways"])).toEqual(
      value(`"sideways" doesn't say which nap. Write with, without or either.`),
    );
    expect(await YARDAGE([campShirtFabric.slice(1), "A", 45, 14])).toMatchObject({ error: "#VALUE!" });
    const body = [
      ["Size", "10"],
      ["Bust", 32.5],
    ];
    expect(await YARDAGE([body, "A", 45, 10])).toEqual(
      value("This range holds body measurements, and fabric amounts are needed here: choose that table."),
    );
    for (const blanks of [null, 0] as const) {
      expect(await YARDAGE([campShirtFabric, BLANK, 45, 14], blanks)).toEqual(
        value("This is blank: a view (A, B) is needed here."),
      );
      expect(await YARDAGE([campShirtFabric, "A", BLANK, 14], blanks)).toEqual(
        value("This is blank: a fabric width is needed here."),
      );
      expect(await YARDAGE([campShirtFabric, "A", 45, BLANK], blanks)).toEqual(
        value("This is blank: a size is needed here."),
      );
    }
  });
  test("hands on the error that its amount is, and no other", async () => {
    const faulty = [
      ["View", "Width", "10", "12"],
      ["A", 45, errorCell("#DIV/0!"), 2],
    ];
    expect(await YARDAGE([faulty, "A", 45, 10])).toEqual({ error: "#DIV/0!" });
    expect(await YARDAGE([faulty, "A", 45, 12])).toBe(2);
  });
  test("answers a tracker's columns, each row for itself, from the pattern index", async () => {
    const row = (pattern: string, unit: string, width: number, widthUnit: string, size: string, amount: number) => [
      pattern, "fabric", unit, "A", "main", width, widthUnit, "", "", size, amount, amount,
    ]; // prettier-ignore
    const index = [
      indexHeadings,
      row("Camp shirt", "yd", 45, "in", "12", 2.125),
      row("Camp shirt", "yd", 45, "in", "14", 2.25),
      row("Camp shirt", "m", 115, "cm", "12", 2),
      row("Camp shirt", "m", 115, "cm", "14", 2.1),
      row("Pinafore", "yd", 60, "in", "4", 0.875),
    ];
    const views = column("A", BLANK, "A", "A", "Z");
    const widths = column(45, 45, "115 cm", 60, 45);
    const sizes = column(12, 12, 14, 4, 12);
    const patterns = column("Camp shirt", "Camp shirt", "camp shirt", "Pinafore", "Camp shirt");
    const none = column(BLANK, BLANK, BLANK, BLANK, BLANK);
    expect(await YARDAGE([index, views, widths, sizes, none, none, none, patterns])).toEqual([
      [2.125],
      [2.125],
      [2.1],
      [0.875],
      [notAvailable('"Z" is not a view of this table (A).')],
    ]);
    expect(
      await YARDAGE([index, "A", 45, column(12, BLANK, 14), undefined, undefined, undefined, "Camp shirt"]),
    ).toEqual(column(2.125, "", 2.25));
  });
  test("never gives a blend less than any of its sizes", () => {
    const sizes = ["10", "12", "14", "16"];
    fc.assert(
      fc.property(fc.nat(3), fc.nat(3), fc.constantFrom("A", "B"), (one, other, view) => {
        const amount = (size: string) =>
          Number(
            yardage(campShirtFabric as any[][], [[view]], [[45]], [[size]], [[null]], [[null]], [[null]], [[null]]),
          );
        const blend = amount(`${sizes[one]}-${sizes[other]}`);
        expect(blend).toBeGreaterThanOrEqual(Math.max(amount(sizes[one]!), amount(sizes[other]!)));
      }),
    );
  });
});
