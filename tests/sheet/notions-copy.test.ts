import { describe, expect, it } from "vitest";
import { totalNotions } from "../../src/fabric/notions";
import { notionsBlocks, notionsSheet } from "../../src/sheet/trackers/notions-copy";
import { shopCopySheet } from "../../src/sheet/trackers/shop-copy";

const totals = totalNotions([
  { project: "Camp shirt", text: "six 1/2 in buttons, =1+1" },
  { project: "Gown", text: "1 x 1/2 in button" },
]);

describe("notionsBlocks", () => {
  it("lists each total with its projects, and below what could not be added up", () => {
    const rows = notionsBlocks(totals, 10, 5).map(({ row, column, cells }) => [row, column, ...cells.flat()]);
    expect(rows).toEqual([
      [10, 0, "Notions"],
      [11, 0, "", "What"],
      [11, 5, "For"],
      [12, 0, "☐"],
      [12, 1, "7 × 1/2 in buttons"],
      [12, 5, "Camp shirt, Gown"],
      [14, 0, "Notions not added up"],
      [15, 0, "", "As they stand"],
      [15, 5, "For"],
      [16, 0, "☐"],
      [16, 1, "=1+1"],
      [16, 5, "Camp shirt"],
    ]);
  });
  it("is nothing without notions", () => {
    expect(notionsBlocks({ totals: [], unread: [] }, 0, 2)).toEqual([]);
  });
});

describe("notionsSheet", () => {
  it("has a name that a sheet may have, whatever the day, and prints upright", () => {
    const plan = notionsSheet(totals, "30 September 2026");
    expect(plan.sheet).toBe("Notions 30 September 2026");
    expect(plan.print).toBe("upright");
  });
});

describe("shopCopySheet", () => {
  it("puts the notions below everything else", () => {
    const plain = shopCopySheet([], "14 March 2026", "in");
    const plan = shopCopySheet([], "14 March 2026", "in", totals);
    const end = Math.max(...plain.blocks.map(({ row, cells }) => row + cells.length));
    const added = plan.blocks.slice(plain.blocks.length);
    expect(plan.blocks.slice(0, plain.blocks.length)).toEqual(plain.blocks);
    expect(added).toEqual(notionsBlocks(totals, end + 1, 5));
  });
});
