import { describe, expect, it } from "vitest";
import { isFormula, type SheetPlan } from "../../src/sheet/plan";
import { ownColumns } from "../../src/sheet/references";
import {
  newTrackerSheet,
  trackerKeys,
  trackers,
  trackerSheetName,
  trackersPlan,
  trackersToMake,
} from "../../src/sheet/trackers/all";
import { cautionsSheet } from "../../src/sheet/trackers/cautions";
import { measurementsSheet, personColumn } from "../../src/sheet/trackers/measurements";
import { settingRows, settingsSheet } from "../../src/sheet/trackers/settings";
import { readShopList, shopCopySheet } from "../../src/sheet/trackers/shop-copy";
import { findSheet } from "../../src/sheet/trackers/wish-list";
import { shopList, shopListCells } from "../../src/project/shop-list";
import { readSettings } from "../../src/fit/read-settings";
import { readBodyCells } from "../../src/chart/cells-body";
import type { Cell } from "../../src/chart/cell";
import { calls, tableReferences } from "./tracker-formulas";

/** Fewest and most arguments of the published functions that the sheets call. */
const PUBLISHED: Readonly<Record<string, readonly [number, number]>> = {
  "SEW.CUTSIZE": [3, 7],
  "SEW.ENVELOPE": [2, 2],
  "SEW.EASE": [2, 2],
  "SEW.FITTERM": [3, 5],
  "SEW.YARDAGE": [4, 8],
  "SEW.EXTRAYARDAGE": [2, 7],
  "SEW.BUYLENGTH": [2, 2],
  "SEW.SALEPRICE": [1, 3],
  "SEW.HASDETAILS": [2, 3],
  "SEW.TAGS": [2, 2],
  "SEW.SHOPLIST": [1, 2],
};
/** Native functions that Excel and the stand-in calculate alike. */
const NATIVE = [
  "AND", "COUNTIFS", "FILTER", "IF", "IFERROR", "INDEX", "ISBLANK", "ISERROR", "ISNUMBER", "LEFT", "MATCH", "OR", "ROUND",
  "SEARCH", "SUM", "SUMPRODUCT", "XLOOKUP",
]; // prettier-ignore

const sheets: readonly SheetPlan[] = [
  ...trackerKeys.map((key) => newTrackerSheet(key, "in")),
  findSheet(),
  cautionsSheet(),
];
const formulasOf = (sheet: SheetPlan): string[] =>
  [...sheet.blocks.flatMap(({ cells }) => cells), ...sheet.tables.flatMap(({ rows }) => rows)]
    .flat()
    .filter(isFormula)
    .map(({ formula }) => formula);
const headingsOf = new Map(
  sheets.flatMap(({ tables }) => tables).map(({ name, columns }) => [name, columns.map(({ heading }) => heading)]),
);

describe("the sheets' formulas", () => {
  it("call published functions with as many arguments as they take, and only native ones that are everywhere", () => {
    const called = new Set<string>();
    for (const formula of sheets.flatMap(formulasOf))
      for (const { name, arguments: count } of calls(formula)) {
        called.add(name);
        const range = PUBLISHED[name];
        if (!name.startsWith("SEW.")) expect(NATIVE, formula).toContain(name);
        else {
          expect(range, name).toBeDefined();
          expect(count, formula).toBeGreaterThanOrEqual(range![0]);
          expect(count, formula).toBeLessThanOrEqual(range![1]);
        }
      }
    expect([...called].filter((name) => name.startsWith("SEW.")).sort()).toEqual(Object.keys(PUBLISHED).sort());
  });

  it("name only tables and columns that are there", () => {
    for (const sheet of sheets) {
      for (const formula of formulasOf(sheet))
        for (const { table, column } of tableReferences(formula)) {
          expect(headingsOf.has(table), `${table} in ${formula}`).toBe(true);
          if (!column.startsWith("#") && column !== "") expect(headingsOf.get(table), formula).toContain(column);
        }
      for (const table of sheet.tables)
        for (const { formula } of table.rows.flat().filter(isFormula))
          for (const column of ownColumns(formula)) expect(headingsOf.get(table.name), formula).toContain(column);
    }
  });

  it("look only at tables of sheets that they need", () => {
    for (const key of trackerKeys) {
      const known = new Set(
        trackersToMake([key], []).flatMap((one) => newTrackerSheet(one, "in").tables.map(({ name }) => name)),
      );
      for (const formula of formulasOf(newTrackerSheet(key, "in")))
        for (const { table } of tableReferences(formula)) expect(known, formula).toContain(table);
    }
  });

  it("fit into Excel: no text in them longer than 255 characters, none longer than 8,192", () => {
    for (const formula of sheets.flatMap(formulasOf)) {
      expect(formula.length).toBeLessThan(8192);
      for (const [text] of formula.matchAll(/"(?:[^"]|"")*"/g)) expect(text.length).toBeLessThan(257);
    }
  });

  it("stand in tables without an answer that would spill", () => {
    for (const { tables } of sheets)
      for (const { formula } of tables.flatMap(({ rows }) => rows.flat()).filter(isFormula))
        expect(formula).not.toMatch(/SHOPLIST|FILTER\(|SEW\.BLEND/);
  });
});

describe("the sheets", () => {
  it("have names, headings and lists that Excel takes", () => {
    for (const { sheet, tables, blocks } of sheets) {
      expect(sheet).toMatch(/^[^\\/?*[\]:]{1,31}$/);
      for (const { name, columns, rows, row } of tables) {
        expect(name).toMatch(/^[A-Z_]\w*$/i);
        const headings = columns.map(({ heading }) => heading.toLowerCase());
        expect(new Set(headings).size).toBe(headings.length);
        for (const one of rows) expect(one).toHaveLength(columns.length);
        for (const { validation } of columns)
          if (validation && "list" in validation) {
            expect(validation.list.join(",").length).toBeLessThanOrEqual(255);
            for (const word of validation.list) expect(word).not.toContain(",");
          }
        // Nothing may stand in the way of a table that grows; within it only looks may be changed.
        for (const block of blocks) {
          const end = block.row + block.cells.length;
          if (block.cells.flat().some((cell) => cell !== null)) expect(end).toBeLessThanOrEqual(row);
          else expect(end).toBeLessThanOrEqual(row + 1 + rows.length);
        }
      }
    }
  });

  it("write labels in the text format, so that 6-12 stays what it is", () => {
    for (const key of ["wishList", "projects", "stash"] as const)
      for (const { heading, format } of trackers[key].columns)
        if (["Pattern", "Size", "Size groups", "Number", "View", "Size to cut"].includes(heading))
          expect(format).toBe("text");
  });
});

describe("trackersToMake", () => {
  it("puts what is needed first and leaves out what is there, whatever its case", () => {
    expect(trackersToMake(["shoppingList"], [])).toEqual([
      "measurements",
      "settings",
      "projects",
      "stash",
      "shoppingList",
    ]);
    expect(trackersToMake(["projects"], ["MEASUREMENTS", "Settings"])).toEqual(["projects"]);
    expect(trackersToMake(["stash"], ["Stash"])).toEqual([]);
    for (const key of trackerKeys) expect(new Set(trackersToMake(trackerKeys, []))).toContain(key);
  });
});

describe("trackersToMake, told the tables", () => {
  it("knows a tracker by its table: on a sheet she has renamed, and not on a sheet that only has the name", () => {
    expect(trackersToMake(["projects"], ["Sizes", "Settings"], ["measurements", "Settings"])).toEqual(["projects"]);
    expect(trackersToMake(["projects"], ["Measurements"], [])).toEqual(["measurements", "settings", "projects"]);
  });
});

describe("trackersPlan", () => {
  it("makes the index before formulas look into it, each sheet once", () => {
    const steps = trackersPlan(["projects", "wishList"], [], "in");
    expect(steps[0]!.names!.map(({ name }) => name)).toEqual(["PatternIndex"]);
    const made = steps.flatMap((step) => step.sheets ?? []).map(({ sheet }) => sheet);
    expect(made).toEqual([
      "Pattern index", "Measurements", "Settings", "Projects", "Wish list", "Find by detail", "Cautions",
    ]); // prettier-ignore
    expect(steps[1]!.show).toBe("Projects");
    expect(trackersPlan(["projects"], made, "in")).toEqual([]);
  });
  it("leaves the cell of the index formula empty", () => {
    const [index] = trackersPlan(["projects"], [], "in")[0]!.sheets!;
    expect(formulasOf(index!)).toEqual([]);
  });
  it("names a sheet for every key", () => {
    expect(new Set(trackerKeys.map(trackerSheetName)).size).toBe(trackerKeys.length);
  });
});

/** A plan's table as the functions are handed it: headings and rows, formulas as blanks. */
const cellsOf = (sheet: SheetPlan, table = 0): Cell[][] => {
  const { columns, rows } = sheet.tables[table]!;
  return [
    columns.map(({ heading }) => heading),
    ...rows.map((row) => row.map((cell) => (cell === null || isFormula(cell) ? null : cell))),
  ];
};

describe("measurementsSheet", () => {
  it("is read as a column for each person, the words beside them being nobody", () => {
    const people = [
      { name: "Ada", measures: { Bust: 38, Waist: 30.5, "Measured on": "12 January 2026" } },
      { name: "Mia", measures: { Chest: 23.5, Height: "42 1/2" } },
    ];
    const bodies = readBodyCells(cellsOf(measurementsSheet("in", people, "in", { Waist: "at the navel" })));
    if (!bodies.ok) throw new Error("not read");
    expect(bodies.value.map(({ name }) => name)).toEqual(["Ada", "Mia"]);
    expect(bodies.value[0]!.measures.get("bust")).toEqual({ value: 38, unit: "in" });
    expect(bodies.value[1]!.measures.get("height")).toEqual({ value: 42.5, unit: "in" });
  });
  it("keeps the day of measuring a text for each person, so that a date is none of the fractions", () => {
    const people = ["Ada", "Mia"].map((name) => ({ name, measures: { "Measured on": "12 January 2026" } }));
    const { blocks, tables } = measurementsSheet("in", people);
    const [{ row, column, columns, rows }] = tables as [(typeof tables)[0]];
    const day = rows.findIndex(([label]) => label === "Measured on");
    expect(blocks.at(-1)).toEqual({ row: row + 1 + day, column: 4, cells: [[null, null]], format: "text" });
    expect([column, columns[4]!.heading]).toEqual([0, "Ada"]);
  });
  it("takes another person at its right end", () => {
    expect(personColumn("  Tom  Bass ").heading).toBe("Tom Bass");
    expect(newTrackerSheet("measurements", "in").tables[0]!.columns.at(-1)!.heading).toBe("Me");
  });
});

describe("settingsSheet", () => {
  it("changes none of our defaults until she writes a value", () => {
    for (const units of ["in", "cm", "both"] as const) {
      const read = readSettings(cellsOf(settingsSheet(units)));
      if (!read.ok) throw new Error(JSON.stringify(read.problem));
      expect([read.value.lengths, read.value.words, read.value.bands]).toEqual([[], [], []]);
      expect(read.value.garments.size).toBe(0);
    }
  });
  it("lists rows that are all known, with a value as without", () => {
    const values: Record<string, string> = {
      "between sizes": "larger", frame: "high bust", "semi-fitted": "4 to 5", units: "cm",
    }; // prettier-ignore
    const filled = settingRows("in").map((row) => ({ ...row, Value: values[String(row["Setting"])] ?? "2" }));
    const read = readSettings(cellsOf(settingsSheet("in", filled)));
    expect(read.ok ? "read" : read.problem).toBe("read");
  });
});

describe("measurementsSheet, its units", () => {
  it("asks for centimetres or inches row by row", () => {
    const units = (sheet: SheetPlan) => new Set(sheet.tables[0]!.rows.map((row) => row[1]));
    expect(units(measurementsSheet("cm"))).toEqual(new Set(["cm", null]));
    expect(units(measurementsSheet("in"))).toEqual(new Set(["in", null]));
    expect(units(measurementsSheet("both"))).toEqual(new Set(["in", null]));
    expect(units(measurementsSheet("both", [], "cm"))).toEqual(new Set(["cm", null]));
  });
});

describe("trackersPlan, of what is there", () => {
  it("is nothing when all of it is there, and shows the first of the new sheets", () => {
    expect(trackersPlan(["stash"], ["Stash"], "in")).toEqual([]);
    expect(trackersPlan([], [], "in")).toEqual([]);
    const plan = trackersPlan(["stash", "fitNotes"], ["stash"], "in");
    expect(plan.map(({ sheets, show }) => [sheets?.map(({ sheet }) => sheet), show])).toEqual([
      [[trackerSheetName("fitNotes")], trackerSheetName("fitNotes")],
    ]);
  });
});

describe("shopCopySheet", () => {
  const list = shopList(
    [
      ["Project", "Fabric", "Width", "Needed", "Unit", "Price"],
      ["Skirt", "Navy twill", 60, 2.25, "yd", 11.4],
      ["Shirt", "Linen", 45, 2.5, "yd", 16.9],
      ["Cape", "Wool", 60, "", "yd", 20],
      ["Bag", "Canvas", 45, 1, "yd", ""],
    ],
    [
      ["Piece", "Fabric", "Width", "Length", "Unit"],
      ["Navy piece", "Navy twill", 60, 3, "yd"],
    ],
  );
  if (!list.ok) throw new Error("no list");
  const plan = shopCopySheet(list.value, "14 March 2026", "in");
  const said = JSON.stringify(plan.blocks);

  it("holds plain values and the day, and leaves no project out", () => {
    expect(plan.sheet).toBe("Shop copy 14 March 2026");
    expect(formulasOf(plan)).toEqual([]);
    for (const words of ["14 March 2026", "Skirt", "Shirt", "Cape", "Bag", "Navy piece", "Not counted"])
      expect(said).toContain(words);
  });
  it("adds up what is to buy in whole cents and says what has no price", () => {
    // By hand: 2.5 × 16.90 = 42.25; the canvas has no price.
    expect(plan.blocks.find(({ row, column }) => row === 2 && column === 1)!.cells).toEqual([[42.25]]);
    expect(said).toContain("without 1 row(s) that have no price");
  });
  it("is the same when the list is read back from the sheet", () => {
    const shown = shopListCells(list.value).map((row) =>
      row.map((cell) => (typeof cell === "object" ? cell.error : cell)),
    );
    expect(shopCopySheet(readShopList([...shown, ["", "", "", "", "", "", ""]]), "14 March 2026", "in")).toEqual(plan);
  });
  it("reads lines that are short, and shows an error as its text", () => {
    expect(readShopList([["Linen"], ["", "", ""], [1, true]])).toEqual([
      { fabric: "Linen", width: "", needed: "", from: "", toBuy: "", cost: "", note: "" },
      { fabric: 1, width: "true", needed: "", from: "", toBuy: "", cost: "", note: "" },
    ]);
    const faulty = { fabric: { error: "#REF!" }, width: { error: "#N/A" }, needed: { error: "#VALUE!" }, from: "", toBuy: "", cost: "", note: "Why" } as const; // prettier-ignore
    const copy = shopCopySheet([faulty], "14 March 2026", "in").blocks.map(({ cells }) => cells);
    expect(copy).toContainEqual([["#REF!", "#N/A"]]);
    expect(copy).toContainEqual([["#VALUE!"]]);
  });
  it("has a box to tick and room for a swatch for everything to buy", () => {
    const boxes = plan.blocks.filter(({ cells }) => cells.every((line) => line[0] === "☐"));
    expect(boxes.map(({ cells, height }) => [cells.length, height !== undefined])).toEqual([
      [2, true],
      [1, false],
      [1, false],
    ]);
    expect(said).toContain("Swatch");
  });
  it("writes no cell twice and lies one page wide", () => {
    const cells = plan.blocks.flatMap(({ row, column, cells }) =>
      cells.flatMap((line, r) => line.map((_, c) => `${row + r},${column + c}`)),
    );
    expect(new Set(cells).size).toBe(cells.length);
    expect(plan.print).toBe("upright");
  });
  it("says so when there is nothing to buy", () => {
    const nothing = shopList([["Project", "Fabric", "Needed"]]);
    if (!nothing.ok) throw new Error("no list");
    expect(JSON.stringify(shopCopySheet(nothing.value, "1 May 2026", "cm").blocks)).toContain("Nothing to buy.");
  });
});
