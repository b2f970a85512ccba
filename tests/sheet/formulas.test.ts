import { beforeAll, describe, expect, it } from "vitest";
import { example } from "../../src/sheet/examples";
import { fabricFormulas } from "../../src/sheet/fabric-formulas";
import { call, fitFormulas, type FitFormulas } from "../../src/sheet/fit-formulas";
import { indexPlan } from "../../src/sheet/chart-index";
import { layoutFormulas, piecesSheet } from "../../src/sheet/pieces-sheet";
import type { CellBlock } from "../../src/sheet/plan";
import { sourceFunctions } from "./tracker-book";
import { calls } from "./tracker-formulas";

interface Known {
  readonly least: number;
  readonly most: number;
}
const known = new Map<string, Known>();
beforeAll(async () => {
  const { metadata } = await sourceFunctions();
  for (const { id, parameters } of metadata.functions) {
    const repeats = parameters.some((parameter) => (parameter as { repeating?: boolean }).repeating);
    const least = parameters.filter((parameter) => !(parameter as { optional?: boolean }).optional).length;
    known.set(`SEW.${id}`, { least, most: repeats ? 255 : parameters.length });
  }
});

/** Whether Excel would know every function of ours in the formula, with as many arguments. */
function isRight(formula: string): void {
  const ours = calls(formula).filter(({ name }) => name.startsWith("SEW."));
  expect(ours.length).toBeGreaterThan(0);
  for (const { name, arguments: count } of ours) {
    const entry = known.get(name);
    expect(entry, `${name} in ${formula}`).toBeDefined();
    expect(count, formula).toBeGreaterThanOrEqual(entry!.least);
    expect(count, formula).toBeLessThanOrEqual(entry!.most);
  }
}
const formulasOf = (blocks: readonly CellBlock[]): string[] =>
  blocks.flatMap(({ cells }) =>
    cells.flat().flatMap((cell) => (cell !== null && typeof cell === "object" ? [cell.formula] : [])),
  );

const fit: FitFormulas = {
  sheet: "Camp shirt",
  row: 2,
  column: 6,
  bodyTable: "CampShirt_body",
  finishedTable: "CampShirt_finished",
  measuresTable: "Measurements",
  settingsTable: "Settings",
  person: "Ada",
  garment: "shirt",
  highBust: true,
  blendRows: 3,
  easeRows: 10,
  inches: true,
};

describe("fitFormulas", () => {
  it("writes only functions that exist, with as many arguments as they take", () => {
    const formulas = formulasOf(fitFormulas(fit).blocks);
    expect(formulas).toHaveLength(5);
    formulas.forEach(isRight);
  });
  it("leaves out what is not known", () => {
    const formulas = formulasOf(
      fitFormulas({ ...fit, finishedTable: undefined, settingsTable: undefined, highBust: false }).blocks,
    );
    formulas.forEach(isRight);
    expect(formulas[0]).toBe('=SEW.CUTSIZE(CampShirt_body[#All],Measurements[#All],"shirt",,"Ada")');
    expect(formulas.join()).not.toContain("EASEPLAN");
  });
  it("keeps its parts apart: no block stands in another's spill", () => {
    const { blocks } = fitFormulas(fit);
    const taken = blocks.flatMap(({ row, column, cells }) =>
      cells.flatMap((line, r) =>
        line.flatMap((cell, c) => {
          const [rows, columns] = cell !== null && typeof cell === "object" ? (cell.spill ?? [1, 1]) : [1, 1];
          if (cell === null) return [];
          return Array.from({ length: rows * columns }, (_, i) =>
            [row + r + Math.floor(i / columns), column + c + (i % columns)].join(),
          );
        }),
      ),
    );
    expect(new Set(taken).size).toBe(taken.length);
  });
  it("shows a length as a fraction only beside inches", () => {
    const fractions = (inches: boolean) =>
      fitFormulas({ ...fit, inches }).blocks.filter(({ format }) => format === "fraction").length;
    expect(fractions(false)).toBe(0);
    // Three columns of the blend, three of the bust adjustment, one of the ease.
    expect(fractions(true)).toBe(7);
  });
  it("names a column with odd signs as Excel wants it", () => {
    const formulas = formulasOf(fitFormulas({ ...fit, person: "Ada's [old]" }).blocks);
    // Source: "Using structured references with Excel tables", Microsoft: a name with such signs stands in brackets of its own.
    expect(formulas.join()).toContain("Measurements[[Ada''s '[old']]]");
  });
});

describe("fabricFormulas", () => {
  it("writes only functions that exist, with as many arguments as they take", () => {
    const { blocks } = fabricFormulas({
      sheet: "Camp shirt", row: 2, column: 9, table: "CampShirt_fabric", unit: "yd", view: "A", part: "main", width: "45 in",
      size: "12", nap: null, estimate: false, shrinkage: 0.05, repeat: 4.25, repeatUnit: "in", lengths: 3, step: 0.125,
    }); // prettier-ignore
    const formulas = formulasOf(blocks);
    expect(formulas).toHaveLength(3);
    formulas.forEach(isRight);
  });
});

describe("fabricFormulas, in yards and metres", () => {
  const of = (unit: "yd" | "m") =>
    fabricFormulas({
      sheet: "Camp shirt", row: 2, column: 9, table: "CampShirt_fabric", unit, view: "A", part: "main", width: "115 cm",
      size: "12", nap: "with", estimate: true, shrinkage: 0, repeat: 0, repeatUnit: "cm", lengths: 1, step: 0.1,
    }).blocks; // prettier-ignore
  it("shows what the shop cuts as fractions of a yard, as thousandths of a metre", () => {
    const formats = (unit: "yd" | "m") => of(unit).map(({ format }) => format);
    expect(formats("yd")).not.toContain("thousandths");
    expect(formats("yd")).toContain("fraction");
    expect(formats("m")).not.toContain("fraction");
    expect(formats("m")).toContain("thousandths");
    expect(formulasOf(of("m")).join()).toContain('"m"');
  });
});

describe("piecesSheet", () => {
  it("is an empty list in her unit: fractions in inches, plain numbers in centimetres", () => {
    for (const [unit, format] of [
      ["in", "fraction"],
      ["cm", "general"],
    ] as const) {
      const [table] = piecesSheet(unit).tables;
      expect(table!.columns.map(({ heading }) => heading)).toEqual([
        "Piece", "Length", "Width", "Unit", "Count", "On fold", "May turn", "Fabric", "Seam allowance", "Hem", "Outline",
      ]); // prettier-ignore
      expect(table!.rows).toEqual([[null, null, null, unit, null, null, null, null, null, null, null]]);
      expect(["Length", "Width", "Seam allowance", "Hem"].map((name) => table!.columns.find(({ heading }) => heading === name)!.format)).toEqual([format, format, format, format]); // prettier-ignore
    }
  });
});

describe("layoutFormulas", () => {
  const asked = {
    sheet: "Pieces", row: 0, column: 12, pieces: "Pieces[#All]", width: 45, unit: "in", layout: "folded", repeat: 0, gap: 0.5,
    fabrics: 1, placements: 9, plan: true,
  } as const; // prettier-ignore
  it("writes only functions that exist, with as many arguments as they take", () => {
    const formulas = formulasOf(layoutFormulas(asked).blocks);
    expect(formulas).toHaveLength(3);
    formulas.forEach(isRight);
    expect(formulas[0]).toBe('=SEW.LAYOUTLENGTH(Pieces[#All],45,"yd","folded",0,0.5)');
  });
  it("asks in metres beside centimetres, and buys by 10 cm", () => {
    const { blocks } = layoutFormulas({ ...asked, unit: "cm", width: 140, repeat: 30, gap: 0, plan: false });
    expect(formulasOf(blocks)).toEqual([
      '=SEW.LAYOUTLENGTH(Pieces[#All],140,"m","folded",30)',
      "=SEW.BUYLENGTH($N$1,0.1)",
    ]);
    expect(blocks.map(({ cells, format }) => [cells[0]![0], format])).toEqual([
      ["Length needed (m)", "text"],
      [{ formula: '=SEW.LAYOUTLENGTH(Pieces[#All],140,"m","folded",30)', spill: [1, 1] }, "thousandths"],
      ["To buy", "text"],
      [{ formula: "=SEW.BUYLENGTH($N$1,0.1)" }, "thousandths"],
    ]);
    expect(formulasOf(layoutFormulas({ ...asked, plan: false }).blocks)[1]).toBe("=SEW.BUYLENGTH($N$1,0.125)");
  });
  it("leaves the shop's step out for several fabrics, which spill", () => {
    expect(formulasOf(layoutFormulas({ ...asked, fabrics: 2, plan: false, gap: 0 }).blocks)).toEqual([
      '=SEW.LAYOUTLENGTH(Pieces[#All],45,"yd","folded")',
    ]);
  });
});

describe("indexPlan", () => {
  it("writes only functions that exist", () => {
    const { sheets } = indexPlan([{ pattern: "Camp shirt", table: "CampShirt_body" }], 10, false);
    formulasOf(sheets![0]!.blocks).forEach(isRight);
  });
});

describe("example", () => {
  it("has one for every function that is published, and each is right", () => {
    for (const name of known.keys()) {
      const made = example(name.slice("SEW.".length), {});
      expect(made, name).toBeDefined();
      isRight(made!.formula);
    }
  });
  it("puts her own ranges in, and names what she lacks", () => {
    expect(example("SIZEMATCH", { body: "Skirt_body[#All]" })).toEqual({
      formula: '=SEW.SIZEMATCH(Skirt_body[#All],"bust","34 in")',
      missing: [],
    });
    expect(example("SHOPLIST", { stash: "Stash[#All]" })?.missing).toEqual(["projects"]);
  });
  it("knows nothing of other functions", () => expect(example("SUM", {})).toBeUndefined());
});

describe("call", () => {
  it("leaves out arguments at the end, and keeps a place for those between", () => {
    expect(call("SEW.EASE", ["A1", undefined, "B1", undefined])).toBe("=SEW.EASE(A1,,B1)");
    expect(call("SEW.EASE", [])).toBe("=SEW.EASE()");
  });
});
