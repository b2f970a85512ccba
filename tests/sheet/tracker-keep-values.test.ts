import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bringBack, isOurFormula, keepValues, keptText, readKept } from "../../src/sheet/keep-values";
import type { FoundFormula, KeptFormulas, ShownValue } from "../../src/sheet/keep-values";
import { isFormula, type CellsPlan } from "../../src/sheet/plan";

/** A sheet as a model: what each cell holds. A formula's answer is looked up by the formula itself. */
interface Cell {
  readonly formula?: string;
  readonly value: ShownValue;
}
type Sheet = Map<string, Cell>;
const at = (row: number, column: number): string => `${row},${column}`;

/** As a spreadsheet does it: everything is written first, then formulas fill their answers in. */
function write(sheet: Sheet, plans: readonly CellsPlan[], answers: ReadonlyMap<string, ShownValue[][]>): Sheet {
  const next = new Map(sheet);
  const formulas: (() => void)[] = [];
  for (const { row, column, cells } of plans.flatMap(({ blocks }) => blocks))
    cells.forEach((line, r) =>
      line.forEach((cell, c) => {
        const key = at(row + r, column + c);
        if (cell === null || !isFormula(cell)) next.set(key, { value: cell ?? "" });
        else if (cell.formula === "") next.delete(key);
        else formulas.push(() => spill(next, row + r, column + c, cell.formula, answers.get(cell.formula)!));
      }),
    );
  formulas.forEach((fill) => fill());
  return next;
}
function spill(sheet: Sheet, row: number, column: number, formula: string, values: ShownValue[][]): void {
  values.forEach((line, r) =>
    line.forEach((value, c) => {
      sheet.set(at(row + r, column + c), r + c === 0 ? { formula, value } : { value });
    }),
  );
}
const shown =
  (sheet: Sheet) =>
  (_sheet: string, row: number, column: number): ShownValue =>
    sheet.get(at(row, column))?.value ?? "";

const found = (row: number, column: number, formula: string, values: ShownValue[][] = [[1]]): FoundFormula => ({
  sheet: "Projects",
  row,
  column,
  formula,
  values,
});

describe("isOurFormula", () => {
  it("knows our functions by their name space, also as Excel saves them", () => {
    for (const formula of ["=SEW.EASE(A1,B1)", '=IF(A1="","",sew.cutsize(A1))', "=_xldudf_SEW_EASE(A1,B1)"])
      expect(isOurFormula(formula), formula).toBe(true);
    for (const formula of ["=SUM(A1)", '="SEW.EASE("', "=XSEW.EASE(1)", "SEW.EASE(1)", "=SEWING(1)", ""])
      expect(isOurFormula(formula), formula).toBe(false);
  });
});

describe("keepValues, over several sheets", () => {
  it("goes sheet by sheet, column by column, downward, and never joins cells of two sheets", () => {
    const on = (sheet: string, row: number, column: number) => ({
      ...found(row, column, "=SEW.EASE(1,2)", [[row]]),
      sheet,
    });
    const cells = [
      on("Stash", 5, 1),
      on("Projects", 4, 2),
      on("Stash", 4, 1),
      on("Projects", 3, 2),
      on("Projects", 5, 1),
    ];
    const { kept, cells: plans } = keepValues(cells);
    expect(kept.map(({ sheet, row, column, values }) => [sheet, row, column, values.length])).toEqual([
      ["Projects", 5, 1, 1],
      ["Projects", 3, 2, 2],
      ["Stash", 4, 1, 2],
    ]);
    expect(plans.map(({ sheet, blocks }) => [sheet, blocks.length])).toEqual([["Projects", 2], ["Stash", 1]]); // prettier-ignore
    expect(keepValues([on("Stash", 5, 1), on("Projects", 4, 1)]).kept.map(({ sheet }) => sheet)).toEqual(["Projects", "Stash"]); // prettier-ignore
  });
});

describe("readKept, of what is not ours", () => {
  const kept = { sheet: "Projects", row: 3, column: 2, formula: "=SEW.EASE(1,2)", spilled: false, values: [[1]] };
  const read = (...one: unknown[]) => readKept(JSON.stringify({ version: 1, kept: one }));
  it("takes only what is whole", () => {
    expect(read(kept)).toEqual([kept]);
    expect(read()).toEqual([]);
    for (const wrong of [
      null,
      5,
      "kept",
      { ...kept, sheet: 1 },
      { ...kept, row: -1 },
      { ...kept, row: 1.5 },
      { ...kept, column: "2" },
      { ...kept, formula: "=SUM(A1)" },
      { ...kept, formula: null },
      { ...kept, spilled: "no" },
      { ...kept, values: [] },
      { ...kept, values: [[]] },
      { ...kept, values: [1] },
      { ...kept, values: "1" },
    ])
      // prettier-ignore
      expect(read(kept, wrong), JSON.stringify(wrong)).toBeUndefined();
    for (const text of ["", "{", "null", "5", '{"version":2,"kept":[]}', '{"version":1,"kept":{}}'])
      expect(readKept(text), text).toBeUndefined();
  });
});

describe("keepValues", () => {
  it("remembers the same formula in cells below one another once", () => {
    const cells = [3, 4, 5, 7].map((row) => found(row, 2, "=SEW.EASE([@A],[@B])", [[row]]));
    const { kept, cells: plans } = keepValues([...cells].reverse());
    expect(kept.map(({ row, values, spilled }) => [row, values, spilled])).toEqual([
      [3, [[3], [4], [5]], false],
      [7, [[7]], false],
    ]);
    expect(plans).toEqual([
      {
        sheet: "Projects",
        blocks: [
          { row: 3, column: 2, cells: [[3], [4], [5]] },
          { row: 7, column: 2, cells: [[7]] },
        ],
      },
    ]);
  });
  it("leaves every other formula alone", () => {
    expect(keepValues([found(0, 0, "=SUM(A1)")])).toEqual({ kept: [], cells: [] });
  });
  it("writes texts as texts: a size 6-12 is never a date", () => {
    expect(keepValues([found(0, 0, "=SEW.ENVELOPE(A1,B1)", [["6-12"]])]).cells[0]!.blocks[0]!.cells).toEqual([
      ["6-12"],
    ]);
  });
});

describe("readKept", () => {
  it("reads back what was written, and nothing else", () => {
    const { kept } = keepValues([
      found(1, 1, "=SEW.EASE(1,2)"),
      found(2, 1, "=SEW.SHOPLIST(A,B)", [
        ["a", 1],
        ["b", true],
      ]),
    ]);
    expect(readKept(keptText(kept))).toEqual(kept);
    const good = keptText(kept);
    for (const text of ["", "[]", "{}", good.slice(0, -5), good.replace("1", "2"), good.replace("=SEW", "=SUM(")])
      expect(readKept(text), text).toBeUndefined();
  });
  it("never throws", () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (text) => void readKept(text)));
  });
});

/** A column of a table, a spill beside it and a native formula, with any answers. */
const scene = fc.record({
  top: fc.integer({ min: 0, max: 5 }),
  column: fc.array(fc.oneof(fc.integer(), fc.constantFrom("14", "6-12", "", "#N/A", "=1+1")), {
    minLength: 1,
    maxLength: 8,
  }),
  spilled: fc.array(fc.tuple(fc.string(), fc.integer()), { minLength: 1, maxLength: 5 }),
});
const ROW_FORMULA = (row: number): string => `=SEW.EASE($A${row},[@Body])`;
const SPILL = "=SEW.SHOPLIST(Projects[#All])";

function build(drawn: { top: number; column: readonly ShownValue[]; spilled: readonly (readonly [string, number])[] }) {
  const sheet: Sheet = new Map([[at(0, 9), { formula: "=SUM(A1)", value: 3 }]]);
  const answers = new Map<string, ShownValue[][]>();
  const cells: FoundFormula[] = [];
  const add = (row: number, column: number, formula: string, values: ShownValue[][]): void => {
    answers.set(formula, values);
    spill(sheet, row, column, formula, values);
    cells.push(found(row, column, formula, values));
  };
  drawn.column.forEach((value, index) => add(drawn.top + index, 2, ROW_FORMULA(index), [[value]]));
  add(
    drawn.top,
    4,
    SPILL,
    drawn.spilled.map((line) => [...line]),
  );
  return { sheet, answers, cells };
}

describe("bringBack", () => {
  it("gives back every formula, in a sheet that is otherwise as it was", () => {
    fc.assert(
      fc.property(scene, (drawn) => {
        const { sheet, answers, cells } = build(drawn);
        const { kept, cells: plans } = keepValues(cells);
        const plain = write(sheet, plans, answers);
        for (const { row, column } of cells) expect(plain.get(at(row, column))!.formula).toBeUndefined();
        for (const [key, { value }] of sheet) expect(plain.get(key)!.value).toEqual(value);
        const { cells: back, left } = bringBack(readKept(keptText(kept))!, shown(plain));
        expect(left).toEqual([]);
        expect(write(plain, back, answers)).toEqual(sheet);
      }),
    );
  });

  it("leaves a cell alone that somebody has changed, and names it", () => {
    const { sheet, answers, cells } = build({
      top: 1,
      column: [5, 6, 7],
      spilled: [
        ["a", 1],
        ["b", 2],
      ],
    });
    const { kept, cells: plans } = keepValues(cells);
    const plain = write(sheet, plans, answers);
    plain.set(at(2, 2), { value: 99 });
    plain.set(at(2, 5), { value: "x" });
    const { cells: back, left } = bringBack(kept, shown(plain));
    expect(left.map(({ address }) => address)).toEqual(["C3", "E2:F3"]);
    const after = write(plain, back, answers);
    expect(after.get(at(2, 2))).toEqual({ value: 99 });
    expect(after.get(at(1, 4))).toEqual({ value: "a" });
    expect(after.get(at(1, 2))!.formula).toBe(ROW_FORMULA(0));
  });

  it("follows rows that were moved down or up together", () => {
    const kept: KeptFormulas[] = [
      { sheet: "S", row: 4, column: 0, formula: "=SEW.EASE([@A],[@B])", spilled: false, values: [[7], [8], [9]] },
    ];
    for (const by of [-3, 1, 12]) {
      const now: Sheet = new Map([7, 8, 9].map((value, r) => [at(4 + by + r, 0), { value }]));
      const { cells, left } = bringBack(kept, shown(now));
      expect(left).toEqual([]);
      expect(cells[0]!.blocks.map(({ row, cells }) => [row, cells.length])).toEqual([[4 + by, 3]]);
    }
  });

  it("names everything when the sheet is gone", () => {
    const { kept } = keepValues([found(3, 1, "=SEW.EASE(1,2)", [[5]])]);
    expect(bringBack(kept, () => undefined)).toEqual({
      cells: [],
      left: [{ sheet: "Projects", address: "B4", formula: "=SEW.EASE(1,2)" }],
    });
  });

  it("never writes over a value that differs from the one that was left", () => {
    const edit = fc.record({
      row: fc.integer({ min: 0, max: 14 }),
      column: fc.constantFrom(2, 4, 5),
      value: fc.integer(),
    });
    fc.assert(
      fc.property(scene, fc.array(edit, { maxLength: 4 }), (drawn, edits) => {
        const { sheet, answers, cells } = build(drawn);
        const { kept, cells: plans } = keepValues(cells);
        const changed = write(sheet, plans, answers);
        for (const { row, column, value } of edits) changed.set(at(row, column), { value });
        const values = new Map(kept.flatMap((run) => run.values.flat()).map((value) => [value, true]));
        const { cells: back } = bringBack(kept, shown(changed));
        for (const { row, column, cells: grid } of back.flatMap(({ blocks }) => blocks))
          grid.forEach((line, r) =>
            line.forEach((_, c) => expect(values.has(shown(changed)("", row + r, column + c))).toBe(true)),
          );
      }),
    );
  });
});
