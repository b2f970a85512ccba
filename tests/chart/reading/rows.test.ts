import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

// All figures are invented, in common-practice steps.
const CM = "Body measurements (cm)";
const wanted = (...rows: string[]) => ({ tables: [["body cm | 34 36 38 40", ...rows]], issues: [] });

describe("fitRow in cells", () => {
  const rows = (...lines: string[]) => paste(sheet(CM, "Size|34|36|38|40", ...lines));
  it("puts each figure under its size, and nothing where nothing is printed", () => {
    expect(rows("Bust|80|84||92", "Waist||66|70|", "Hip|-|n/a|94|98")).toEqual(
      wanted("bust: Bust | 80 84 - 92", "waist: Waist | - 66 70 -", "hip: Hip | - - 94 98"),
    );
  });
  it("names a row with one figure too many or too few, and shifts none", () => {
    expect(rows("Bust|80|84|88|92|96", "Waist|62|66|70").issues).toEqual([
      `3 error (bust) ${doubts.count("Bust", 5, 4)}`,
      `4 error (waist) ${doubts.count("Waist", 3, 4)}`,
    ]);
  });
  it("keeps words behind the figures out of them", () => {
    expect(rows("Bust|80|84|88|92|full", "Waist|62|66|70|74||")).toEqual(
      wanted("bust: Bust | 80 84 88 92", "waist: Waist | 62 66 70 74"),
    );
  });
  it("names the cell of a row that can't be read, and keeps the others", () => {
    expect(rows("Bust|80|84|8B|92")).toEqual({
      tables: [["body cm | 34 36 38 40", "bust: Bust | 80 84 - 92"]],
      issues: [`3:4 error (bust, 38) ${doubts.unreadable("8B")}`],
    });
  });
  it("reads a label that takes two cells, and one without a cell of its own", () => {
    expect(paste(sheet(CM, "Size||34|36", "Bust|full|80|84", "Waist||62|66")).tables).toEqual([
      ["body cm | 34 36", "bust: Bust full | 80 84", "waist: Waist | 62 66"],
    ]);
    expect(paste(sheet(CM, "34|36", "Bust|80|84", "Waist|62|66")).tables).toEqual([
      ["body cm | 34 36", "bust: Bust | 80 84", "waist: Waist | 62 66"],
    ]);
  });
  it("reads a row of one cell with a list in it", () => {
    expect(rows("Bust 80 84 88 92", "Waist|62|66|70|74")).toEqual(
      wanted("bust: Bust | 80 84 88 92", "waist: Waist | 62 66 70 74"),
    );
  });
  it("takes a figure for all sizes only where the row says so", () => {
    expect(rows("Bust|80|84|88|92", "Height|168|all sizes").tables[0]!.slice(1)).toEqual(["bust: Bust | 80 84 88 92"]);
    expect(rows("Bust|80|84|88|92", "Height|168").issues).toEqual([`4 error (height) ${doubts.count("Height", 1, 4)}`]);
  });
});

describe("fitRow in columns that spaces part", () => {
  const head = page(CM, "Size       34   36   38   40");
  const rows = (...lines: string[]) => paste(page(head, ...lines));
  it("puts fewer figures than sizes under those they stand below, and says so", () => {
    expect(rows("Bust       80   84        92")).toEqual({
      tables: [["body cm | 34 36 38 40", "bust: Bust | 80 84 - 92"]],
      issues: [`3 warning (bust, 38) ${doubts.placed("Bust", ["38"])}`],
    });
    expect(rows("Bust            84        92").tables[0]![1]).toBe("bust: Bust | - 84 - 92");
  });
  it.each([
    ["the last size has none", "Bust       80   84   88"],
    ["a figure stands between two sizes", "Bust       80     84      92"],
    ["two figures would stand under one", "Bust       80 84          92"],
  ])("names the row when %s", (_, row) => {
    const { tables, issues } = rows(row, "Waist      62   66   70   74");
    expect(tables).toEqual([["body cm | 34 36 38 40", "waist: Waist | 62 66 70 74"]]);
    expect(issues).toEqual([expect.stringMatching(/^3 error \(bust\)/)]);
  });
  it("sees by their ends too where figures stand", () => {
    expect(paste(page(CM, "Size       34   36   38   40", "Height    168  168       168")).tables[0]![1]).toBe(
      "height: Height | 168 168 - 168",
    );
  });
  it("takes only the cell beside the figures for the label, where prose stands to its left", () => {
    expect(rows("Sew the collar   Bust       80   84   88   92")).toEqual(wanted("bust: Bust | 80 84 88 92"));
  });
});

describe("fitRow on cloth", () => {
  it("takes one figure for all sizes", () => {
    expect(
      paste(sheet("Fabric required (m)", "Size|34|36|38", "A 115 cm|2|2.1|2.2", "A Interfacing 90 cm|0.5")).tables,
    ).toEqual([
      ["fabric m | 34 36 38", "A, main, 115 cm, nap? | 2 2.1 2.2", "A, interfacing, 90 cm, nap? | 0.5 0.5 0.5"],
    ]);
  });
  it("takes a width in front of the amounts for no amount", () => {
    expect(
      paste(page("Fabric required (yd)", "Size 8 10 12", "A 45 2 2 1/8 2 1/4", "A 60 1 1/2 1 5/8 1 3/4")).tables,
    ).toEqual([
      ["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2 2.125 2.25", "A, main, 60 in, nap? | 1.5 1.625 1.75"],
    ]);
    expect(paste(sheet("Fabric required (yd)", "8|10|12", "A|45|2|2 1/8|2 1/4")).tables).toEqual([
      ["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2 2.125 2.25"],
    ]);
  });
  it("has no column of headings give a row its figures", () => {
    expect(paste(sheet("Fabric required (yd)", "View|Width|8|10", "A|45|2|2 1/8", "|60|1 1/2|1 5/8")).tables).toEqual([
      ["fabric yd | 8 10", "A, main, 45 in, nap? | 2 2.125", "A, main, 60 in, nap? | 1.5 1.625"],
    ]);
  });
});
