/**
 * Every example that the help can write, in inches and in centimetres, in the starter workbook: none may be an error on
 * her own charts. And what it takes from the workbook: her unit, a pattern in it, the sign between arguments.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { example, measurementsSheet, piecesSheet, type HerRanges } from "../../src/index";
import { starterWorkbook } from "../../src/sheet/starter";
import { readDecimalPoint } from "../../taskpane/excel";
import { signature, typed, type HelpFunction } from "../../taskpane/help/functions";
import { herRanges } from "../../taskpane/help/her-ranges";
import { openBook, type OpenBook } from "../practice/office";
import { carryOutAll, put, shown, sourceFunctions, trackerBook } from "../sheet/tracker-book";

const isError = (cell: unknown) => cell === undefined || cell === "" || /^#[A-Z/0?!]+$/.test(String(cell));
const ROOM = 36; // rows; some answers fill many

/** Writes formulas below each other on a sheet of their own, and reads the first cell of each answer. */
async function answers(sheet: string, formulas: readonly string[]): Promise<unknown[]> {
  await Excel.run(async (context) => {
    const made = context.workbook.worksheets.add(sheet);
    formulas.forEach((formula, index) => {
      made.getRangeByIndexes(index * ROOM, 0, 1, 1).formulas = [[formula]];
    });
    await context.sync();
  });
  const cells = await shown(sheet);
  return formulas.map((_, index) => cells[index * ROOM]?.[0]);
}

describe("an example of the help", () => {
  let book: OpenBook;
  let ids: readonly string[];
  let her: HerRanges;
  let hersInCm: HerRanges;
  beforeAll(async () => {
    book = await trackerBook();
    ids = (await sourceFunctions()).metadata.functions.map(({ id }) => id);
    await carryOutAll(starterWorkbook());
    her = await herRanges();
    hersInCm = await herRanges("cm");
  }, 180_000);
  afterAll(() => book.dispose());

  it("looks at a pattern with a bust, its own garment, and figures that it has", () => {
    expect(her).toMatchObject({ unit: "in", pattern: "Camp shirt", garment: "shirt", person: "Ada" });
    expect(her.measure).toMatch(/^\d.* in$/);
  });
  it("looks at one in centimetres for a person who has chosen them", () => {
    // The largest size of the gown's chart, as it is printed.
    const gown = { pattern: "Choir gown", size: "46", place: "Bust", measure: "104 cm", width: "140 cm" };
    expect(hersInCm).toMatchObject({ unit: "cm", person: "Ada", ...gown });
  });
  it("names what is missing", () => {
    const lacking = ids.filter((id) => example(id, her)!.missing.length > 0);
    expect(lacking).toEqual(["LAYOUTLENGTH", "LAYOUTPLAN"]);
  });
  it.each(["in", "cm"] as const)(
    "answers on her own charts, whichever function it is of, in %s",
    async (unit) => {
      const ready = ids
        .map((id) => ({ id, ...example(id, unit === "in" ? her : hersInCm)! }))
        .filter(({ missing }) => missing.length === 0);
      expect(ready).toHaveLength(ids.length - 2);
      const cells = await answers(`Examples ${unit}`, ready.map(({ formula }) => formula)); // prettier-ignore
      const wrong = ready.filter((_, index) => isError(cells[index])).map(({ id, formula }) => `${id}: ${formula}`);
      expect(wrong).toEqual([]);
    },
    120_000,
  );
  it("has no inches and no yards for a person with centimetres, but where yards are what is asked about", () => {
    const inches = ids.filter((id) => /\b(?:in|yd)"/.test(example(id, hersInCm)!.formula));
    expect(inches).toEqual(["LENGTH"]);
    const without = ids.filter((id) => /\b(?:in|yd)"/.test(example(id, { unit: "cm" })!.formula));
    expect(without).toEqual(["LENGTH"]);
  });
  it("gives centimetres what a sewist works out herself", async () => {
    const worked = {
      // 102 - 92 cm.
      EASE: 10,
      // 12.5 is a quarter more than 10.
      STRETCH: 0.25,
      // The next tenth of a metre above 2.34.
      BUYLENGTH: 2.4,
      // The same area: 2 m × 150 / 115 is 2.609 m, bought by 10 cm.
      FABRICWIDTH: 2.7,
      // 3.94 in, and the printed band of the word is 3 to 4 in.
      FITTERM: "fitted",
    };
    const cells = await answers("Worked in cm", Object.keys(worked).map((id) => example(id, hersInCm)!.formula)); // prettier-ignore
    expect(Object.fromEntries(Object.keys(worked).map((id, index) => [id, cells[index]]))).toEqual(worked);
  }, 60_000);
  it("lays her pieces on cloth of the usual width, in her unit", async () => {
    await carryOutAll([{ sheets: [piecesSheet("in")] }]);
    const pieces = (await shown("Pieces")).findIndex(([first]) => first === "Piece");
    // Two squares of 18 in lie side by side on 45 in or 140 cm: half a yard, which is 45.72 cm.
    for (const [letter, value] of [
      ["A", "Square"],
      ["B", 18],
      ["C", 18],
      ["D", "in"],
      ["E", 2],
    ] as const)
      // prettier-ignore
      await put("Pieces", `${letter}${pieces + 2}`, value);
    const read = async (unit: "in" | "cm") =>
      ["LAYOUTLENGTH", "LAYOUTPLAN"].map((id) => example(id, unit === "in" ? inches : centimetres)!.formula);
    const [inches, centimetres] = [await herRanges(), await herRanges("cm")];
    const [yards, first] = await answers("Laid in", await read("in"));
    expect([yards, first]).toEqual([0.5, "Square"]);
    const [metres, second] = await answers("Laid cm", await read("cm"));
    expect(metres).toBeCloseTo(0.4572, 10);
    expect(second).toBe("Square");
  }, 60_000);
});

describe("herRanges", () => {
  let book: OpenBook;
  beforeAll(() => {
    book = openBook();
  });
  afterAll(() => book.dispose());

  it("takes the unit of what she has measured, and until then that of the sheet's rows", async () => {
    await carryOutAll([{ sheets: [measurementsSheet("cm")] }]);
    expect(await herRanges()).toMatchObject({ unit: "cm", person: "Me" });
    const lines = await shown("Measurements");
    const row = (label: string) => lines.findIndex(([first]) => first === label) + 1;
    const unit = lines.find(([first]) => first === "Measurement")!.indexOf("Unit");
    const letter = (at: number) => String.fromCharCode("A".charCodeAt(0) + at);
    const me = letter(lines.find(([first]) => first === "Measurement")!.indexOf("Me"));
    await put("Measurements", `${me}${row("Bust")}`, 38);
    await put("Measurements", `${letter(unit)}${row("Bust")}`, "in");
    expect((await herRanges()).unit).toBe("in");
    await put("Measurements", `${me}${row("Hip")}`, 104);
    await put("Measurements", `${me}${row("Waist")}`, 77.5);
    expect((await herRanges()).unit).toBe("cm");
  });
  it("lets her choice go before", async () => {
    expect((await herRanges("in")).unit).toBe("in");
  });
});

describe("a workbook with decimal commas", () => {
  it("is shown semicolons between arguments and commas in numbers", async () => {
    const book = openBook();
    expect(await readDecimalPoint()).toBe(".");
    const { Application } = book.book;
    Object.assign(Application, { DecimalSeparator: ",", ThousandsSeparator: "." });
    Object.defineProperty(book.book, "Application", { value: Application });
    const separator = (await readDecimalPoint()) === "," ? ";" : ",";
    const ease = { id: "EASE", parameters: [{ name: "finished" }, { name: "body" }] } as unknown as HelpFunction;
    expect(signature(ease, separator)).toBe("SEW.EASE(finished; body)");
    expect(typed(example("BUYLENGTH", { unit: "cm" })!.formula, separator)).toBe("=SEW.BUYLENGTH(2,34;0,1)");
    book.dispose();
  });
  it("keeps a table's name that has a point in it", () => {
    const formula = example("SIZEMATCH", { body: "Draft1.2_body[#All]", place: "bust", measure: "33.5 in" })!.formula;
    expect(typed(formula, ";")).toBe('=SEW.SIZEMATCH(Draft1.2_body[#All];"bust";"33.5 in")');
  });
});
