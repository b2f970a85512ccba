import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bringBack, keepAgain, type FoundFormula, type ShownNow, type ShownValue } from "../../src/sheet/keep-values";
import { keptPlaces } from "../../src/sheet/kept-rows";
import { hasAddress } from "../../src/sheet/references";

/** Rows of a table whose columns B and D were formulas; A is typed. Row 4 is the first. */
const TOP = 4;
type Row = readonly [typed: string, size: ShownValue, cost: ShownValue, note: ShownValue];
const table =
  (rows: readonly Row[]): ShownNow =>
  (sheet, row, column) =>
    sheet === "Projects" ? (rows[row - TOP]?.[column] ?? "") : undefined;
const formulas = ["", "=SEW.CUTSIZE([@Chart])", "=SEW.SALEPRICE([@Price])", "=SEW.CUTNOTE([@Chart])"] as const;
const found = (rows: readonly Row[], from = 0): FoundFormula[] =>
  rows.flatMap((row, r) =>
    [1, 2, 3].map((column) => ({
      sheet: "Projects",
      row: TOP + from + r,
      column,
      formula: formulas[column]!,
      values: [[row[column]!]],
    })),
  );
const kept = (rows: readonly Row[]) => keepAgain([], found(rows), table(rows)).kept;
/** The addresses that got their formula back, with it. */
const back = (...given: Parameters<typeof bringBack>): string[] =>
  bringBack(...given)
    .cells.flatMap(({ blocks }) => blocks)
    .flatMap(({ row, column, cells }) => cells.map((_, r) => `${row + r},${column}`))
    .sort();
const everyCell = (rows: readonly number[]): string[] =>
  rows.flatMap((row) => [1, 2, 3].map((column) => `${TOP + row},${column}`)).sort();

const rows: readonly Row[] = [
  ["Skirt", "14", 24.5, "The hip decides."],
  ["Shirt", "14", 12, "The bust decides."],
  ["Apron", "", 8, ""],
  ["Dress", "16", 40, "The hip decides."],
];
const extra: Row = ["Cape", "12", 99, "typed"];

describe("keptPlaces", () => {
  it("follows rows below one that was put in between or taken away", () => {
    const more = [...rows.slice(0, 2), extra, ...rows.slice(2)];
    expect(back(kept(rows), table(more))).toEqual(everyCell([0, 1, 3, 4]));
    const fewer = [rows[0]!, ...rows.slice(2)];
    const { left } = bringBack(kept(rows), table(fewer));
    expect(back(kept(rows), table(fewer))).toEqual(everyCell([0, 1, 2]));
    expect(left).toHaveLength(3);
  });

  it("follows rows that were sorted", () => {
    const told = rows.map((row, at): Row => [row[0], row[1], row[2], `This is cut as written under ${at}.`]);
    const sorted = [told[3]!, told[1]!, told[0]!, told[2]!];
    expect(bringBack(kept(told), table(sorted)).left).toEqual([]);
    expect(back(kept(told), table(sorted))).toEqual(everyCell([0, 1, 2, 3]));
  });

  it("names what it can't tell apart rather than guess", () => {
    // The skirt and the dress share their sentence: what stands in the skirt's place may be the skirt, changed.
    const sorted = [rows[3]!, rows[1]!, rows[0]!, rows[2]!];
    const { left } = bringBack(kept(rows), table(sorted));
    expect(left.length + back(kept(rows), table(sorted)).length).toBe(12);
    expect(left.length).toBeGreaterThan(0);
  });

  it("takes no cell of hers for a moved one because it shows the same number", () => {
    const one: FoundFormula = { sheet: "S", row: 0, column: 0, formula: "=SEW.EASE(38,34)", values: [[4]] };
    const now: ShownNow = (_, row) => (row === 0 ? 99 : row === 6 ? 4 : "");
    const { cells, left } = bringBack(keepAgain([], [one], () => "").kept, now);
    expect(cells).toEqual([]);
    expect(left.map(({ address }) => address)).toEqual(["A1"]);
  });

  it("takes no cell that has a formula by now", () => {
    const now: ShownNow = (sheet, row, column) => (row === TOP ? null : table(rows)(sheet, row, column));
    expect(back(kept(rows), now)).toEqual(everyCell([1, 2, 3]));
  });

  it("gives no place to two rows", () => {
    const cell = fc.constantFrom<ShownValue>("14", "16", "", 3);
    const row = fc.tuple(fc.constant("x"), cell, cell, fc.constantFrom("", "The hip decides here.", "Bust."));
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 8 }), fc.array(row, { maxLength: 10 }), (before, after) => {
        const places = keptPlaces(kept(before), table(after)).filter(({ stands }) => stands);
        const at = places.map(({ run, row }) => `${row},${run.column}`);
        expect(new Set(at).size).toBe(at.length);
        for (const { run, row, values } of places)
          expect(table(after)("Projects", row, run.column)).toBe(values[0]![0]);
      }),
    );
  });

  it("brings all back when nothing was changed but rows put in and taken away before and behind", () => {
    const texts = fc.uniqueArray(fc.integer({ min: 1, max: 900 }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(texts, fc.nat(12), fc.nat(12), (numbers, at, count) => {
        const before = numbers.map((n): Row => ["x", `${n}`, n, `Cut ${n}, because the hip decides.`]);
        const place = Math.min(at, before.length);
        const more = [...before.slice(0, place), ...Array<Row>(count).fill(extra), ...before.slice(place)];
        expect(bringBack(kept(before), table(more)).left).toEqual([]);
        expect(back(kept(before), table(more))).toEqual(
          everyCell(before.map((_, row) => (row < place ? row : row + count))),
        );
      }),
    );
  });
});

describe("keepAgain", () => {
  const more = [...rows.slice(0, 2), extra, ...rows.slice(2)];
  /** The new row has formulas, which are no kept values. */
  const before: ShownNow = (sheet, row, column) =>
    row === TOP + 2 && column > 0 ? null : table(more)(sheet, row, column);

  it("remembers each cell once, wherever a row has come in between", () => {
    const twice = keepAgain(kept(rows), found([extra], 2), before).kept;
    const cells = twice.flatMap(({ row, column, values }) => values.map((_, r) => `${row + r},${column}`));
    expect(cells.sort()).toEqual(everyCell([0, 1, 2, 3, 4]));
    expect(back(twice, table(more))).toEqual(everyCell([0, 1, 2, 3, 4]));
    expect(bringBack(twice, table(more)).left).toEqual([]);
  });

  it("gives a cell the formula that was typed into it last", () => {
    const first: FoundFormula = { sheet: "S", row: 0, column: 0, formula: "=SEW.EASE(38,34)", values: [[4]] };
    const last: FoundFormula = { ...first, formula: "=SEW.EASE(40,36)" };
    const once = keepAgain([], [first], () => 4).kept;
    const { kept: twice } = keepAgain(once, [last], () => null);
    expect(twice.map(({ formula }) => formula)).toEqual(["=SEW.EASE(40,36)"]);
  });

  it("writes only the formulas that are there now", () => {
    const { cells } = keepAgain(kept(rows), found([extra], 2), before);
    expect(cells.flatMap(({ blocks }) => blocks.map(({ row }) => row))).toEqual([TOP + 2, TOP + 2, TOP + 2]);
  });

  it("keeps naming what somebody had changed before", () => {
    const changed: readonly Row[] = [["Skirt", "99", 24.5, "The hip decides."], ...rows.slice(1)];
    const twice = keepAgain(kept(rows), [], table(changed)).kept;
    expect(bringBack(twice, table(changed)).left.map(({ address }) => address)).toEqual(["B5"]);
  });
});

describe("bringBack, of a formula with addresses", () => {
  it("leaves it alone where rows have moved, because the addresses have not", () => {
    const at = (row: number): FoundFormula => ({
      sheet: "S",
      row,
      column: 0,
      formula: `=SEW.EASE(B${row + 1},C${row + 1})`,
      values: [[`a sentence that is long enough ${row}`]],
    });
    const once = keepAgain([], [at(0), at(1)], () => "").kept;
    const now: ShownNow = (_, row) => (row === 0 || row === 2 ? at(row === 0 ? 0 : 1).values[0]![0]! : "");
    const { left } = bringBack(once, now);
    expect(back(once, now)).toEqual(["0,0"]);
    expect(left).toEqual([{ sheet: "S", address: "A3", formula: "=SEW.EASE(B2,C2)" }]);
    // Kept a second time, it is still known where it stood.
    expect(bringBack(keepAgain(once, [], now).kept, now).left).toEqual(left);
  });
});

describe("hasAddress", () => {
  it("knows cells by their address, and no text, column, sheet or function", () => {
    for (const formula of ["=SEW.EASE(A1,2)", "=SEW.EASE($B$12)", "='Camp shirt'!AB3", "=SEW.BLEND(Sheet1!A1:C9)"])
      expect(hasAddress(formula), formula).toBe(true);
    for (const formula of [
      '=SEW.TAGS("A1",[@B2])',
      "=SEW.CUTSIZE(Shirt_body[#All],Measurements[[Hip]:[B12]])",
      "='A1'!Name",
      "=LOG10(2)",
      "=SEW.EASE(38,34)",
    ])
      expect(hasAddress(formula), formula).toBe(false);
  });
});
