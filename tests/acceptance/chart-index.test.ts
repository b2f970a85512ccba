import { describe, expect, test } from "vitest";
import { finishedBy, INDEX_HEADINGS, MISSES, ROSA, wide } from "./charts";
import { BLANK, call, expectError, type Grid, isError, rows } from "./functions";

const FABRIC: Grid = [
  ["View", "Part", "Width", "Width unit", "Nap", "Unit", 12, 14],
  ["A", "main", 45, "in", "without", "yd", 2, 2.125],
  ["A", "main", 45, "in", "with", "yd", 2.25, 2.375],
  ["B", "lining", 60, "in", "either", "yd", 1, BLANK],
];
const SMALL = wide({ Bust: [34, 36], Waist: [26.5, 28] }, "in", [12, 14]);
const AT = Object.fromEntries(INDEX_HEADINGS.map((heading, at) => [heading, at]));

async function index(...pairs: unknown[]): Promise<unknown[][]> {
  const found = rows(await call("CHARTINDEX", ...pairs));
  return found[0]![0] === "Pattern" ? found.slice(1) : found;
}
const cell = (cells: readonly unknown[], heading: string) => cells[AT[heading]!];

describe("CHARTINDEX", () => {
  test("lists a row for every figure under twelve headings", async () => {
    const found = await index("Camp shirt", SMALL);
    expect(found).toHaveLength(4);
    for (const cells of found) {
      expect(cells).toHaveLength(12);
      expect(cell(cells, "Pattern")).toBe("Camp shirt");
      expect(cell(cells, "Kind")).toBe("body");
      expect(cell(cells, "Unit")).toBe("in");
    }
    const waist14 = found.find(
      (cells) => /waist/i.test(String(cell(cells, "Measurement"))) && String(cell(cells, "Size")) === "14",
    )!;
    expect(cell(waist14, "Low")).toBe(28);
  });
  test("lists body, finished and fabric tables", async () => {
    const found = await index("Camp shirt", SMALL, "Camp shirt", finishedBy({ Bust: 5 }), "Camp shirt", FABRIC);
    const kinds = found.map((cells) => cell(cells, "Kind"));
    expect(kinds.filter((kind) => kind === "body")).toHaveLength(4);
    expect(kinds.filter((kind) => kind === "finished")).toHaveLength(10);
    const fabric = found.filter((cells) => cell(cells, "Kind") === "fabric");
    const main = fabric.find((cells) => cell(cells, "Nap") === "with" && String(cell(cells, "Size")) === "14")!;
    expect(cell(main, "View")).toBe("A");
    expect(cell(main, "Part")).toBe("main");
    expect(cell(main, "Width")).toBe(45);
    expect(cell(main, "Width unit")).toBe("in");
    expect(cell(main, "Unit")).toBe("yd");
    expect(cell(main, "Low")).toBe(2.375);
  });
  test("keeps both ends of a printed range", async () => {
    const found = await index("Camp shirt", wide({ Chest: ["86-89", "92-95"] }, "cm", ["S", "M"]));
    expect(cell(found[0]!, "Low")).toBe(86);
    expect(cell(found[0]!, "High")).toBe(89);
    expect(cell(found[0]!, "Size")).toBe("S");
  });
  test("feeds the functions that name a pattern", async () => {
    const made = [
      INDEX_HEADINGS,
      ...(await index(
        "Sunday dress",
        MISSES,
        "Sunday dress",
        finishedBy({ Bust: 3, Waist: 2, Hip: 4 }),
        "Sunday dress",
        FABRIC,
        "Pinafore",
        SMALL,
      )),
    ];
    expect(await call("SIZEMATCH", made, "bust", 34, undefined, "Sunday dress")).toBe(12);
    expect(await call("SIZEMATCH", made, "bust", 36, undefined, "Pinafore")).toBe(14);
    expect(await call("CUTSIZE", made, ROSA, "fitted dress", made, undefined, "Sunday dress")).toBe(14);
    expect(await call("YARDAGE", made, "A", 45, 14, undefined, undefined, undefined, "Sunday dress")).toBe(2.375);
    expect(await call("SIZECOLUMN", made, 12, "Pinafore")).toEqual([[34], [26.5]]);
  });
  test("refuses a table's bare name, in that table's place, and a blank pattern name", async () => {
    const answer = await call("CHARTINDEX", "Camp shirt", SMALL, "Pinafore", SMALL.slice(1));
    const error = Array.isArray(answer) ? answer.flat().find((value) => isError(value)) : answer;
    expectError(error, "#VALUE!", /\[#All\]/i);
    const unnamed = await call("CHARTINDEX", BLANK, SMALL);
    expect(isError(Array.isArray(unnamed) ? unnamed.flat().find((value) => isError(value)) : unnamed)).toBe(true);
  });
});
