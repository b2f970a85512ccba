/** Every example that the help can write, in the starter workbook: none may be an error on her own charts. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { example, type HerRanges } from "../../src/index";
import { starterWorkbook } from "../../src/sheet/starter";
import { herRanges } from "../../taskpane/help/her-ranges";
import type { OpenBook } from "../practice/office";
import { carryOutAll, shown, sourceFunctions, trackerBook } from "../sheet/tracker-book";

describe("an example of the help", () => {
  let book: OpenBook;
  let her: HerRanges;
  beforeAll(async () => {
    book = await trackerBook();
    await carryOutAll(starterWorkbook());
    her = await herRanges();
  }, 180_000);
  afterAll(() => book.dispose());

  it("looks at a pattern with a bust, its own garment, and figures that it has", () => {
    expect(her).toMatchObject({ pattern: "Camp shirt", garment: "shirt", person: "Ada" });
    expect(her.measure).toMatch(/^\d.* in$/);
  });
  it("answers on her own charts, whichever function it is of", async () => {
    const { metadata } = await sourceFunctions();
    const made = metadata.functions.map(({ id }) => ({ id, ...example(id, her)! }));
    const ready = made.filter(({ missing }) => missing.length === 0);
    expect(made.filter(({ missing }) => missing.length > 0).map(({ id }) => id)).toEqual([
      "LAYOUTLENGTH",
      "LAYOUTPLAN",
    ]);
    const room = 36; // rows; some answers fill many
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.add("Examples");
      ready.forEach(({ formula }, index) => {
        sheet.getRangeByIndexes(index * room, 0, 1, 1).formulas = [[formula]];
      });
      await context.sync();
    });
    const cells = await shown("Examples");
    const wrong = ready.flatMap(({ id, formula }, index) => {
      const cell = String(cells[index * room]?.[0] ?? "");
      return cell === "" || /^#[A-Z/0?!]+$/.test(cell) ? [`${id}: ${formula} -> ${cell}`] : [];
    });
    expect(wrong).toEqual([]);
  }, 120_000);
});
