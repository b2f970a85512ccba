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
  it("takes no single figure for all sizes", () => {
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

describe("fitRow on cells that stand elsewhere", () => {
  const rows = (...lines: string[]) => paste(sheet(CM, "Size|34|36|38|40", "Bust|80|84|88|92", ...lines));
  it.each(["Waist 62 66 70 74||||", "Waist|62 66 70 74", "Waist|62 66 70 74||||"])(
    "reads a list in one cell, with blank ones behind it or not: %s",
    (line) => {
      expect(rows(line)).toEqual(wanted("bust: Bust | 80 84 88 92", "waist: Waist | 62 66 70 74"));
    },
  );
  it.each(["Waist 62 66 70||||", "Waist|62 66 70", "Waist|62 66 70|||"])("names a list that is too short: %s", (line) => {
    expect(rows(line)).toEqual({ ...wanted("bust: Bust | 80 84 88 92"), issues: [`4 error (waist) ${doubts.count("Waist", 3, 4)}`] });
  }); // prettier-ignore
  it.each([
    ["one figure under a size", "Waist|||70|", 1],
    ["one figure and a note", "Waist|62|all sizes", 1],
  ])("names a row with %s", (_, line, count) => {
    expect(rows(line)).toEqual({ ...wanted("bust: Bust | 80 84 88 92"), issues: [`4 error (waist) ${doubts.count("Waist", count, 4)}`] });
  }); // prettier-ignore
  it("finds the place in the words behind the figures", () => {
    expect(rows("Girth|62|66|70|74|natural|waist").tables[0]![2]).toBe("waist: Girth | 62 66 70 74");
    const lines = page(CM, "Size    34   36   38   40", "Girth   62   66   70   74   natural waist");
    expect(paste(lines).tables[0]![1]).toBe("waist: Girth | 62 66 70 74");
  });
  it("reads ditto marks in a chart without a corner", () => {
    expect(paste(sheet(CM, "34|36|38|40", "Bust|80|84|88|92", 'Height|168|"|"|"'))).toEqual(
      wanted("bust: Bust | 80 84 88 92", "height: Height | 168 168 168 168"),
    );
  });
  it("reads the row above in the other unit where its label and cell are missing", () => {
    expect(paste(sheet("Body measurements", "Size|8|10", "Bust|31|32", "79|81")).tables).toEqual([
      ["body in | 8 10", "bust: Bust | 31 32"],
      ["body cm | 8 10", "bust: Bust | 79 81"],
    ]);
  });
  it("keeps a label that two rows share", () => {
    const row = (...cells: string[]) => `<tr>${cells.map((cell) => `<td>${cell}</td>`).join("")}</tr>`;
    const first = row("Bust", "in", "31", "32").replace("<td>", "<td rowspan=2>");
    const html = `<p>Body measurements</p><table>${row("Size", "", "8", "10")}${first}${row("cm", "79", "81")}</table>`;
    expect(paste(html).tables.map((table) => table[1]!.replace(/: .*\|/, " |"))).toEqual([
      "bust | 31 32",
      "bust | 79 81",
    ]);
  });
  it.each([
    ["a column of units between the sizes", ["Measurement|8|Unit|10", "Bust|31|in|32"], "bust: Bust | 31 32"],
    ["a blank column between the sizes", ["Size|8||10", "Bust|31||32", "Waist|24|x|25"], "bust: Bust | 31 32"],
  ])("reads %s", (_, lines, row) => {
    expect(paste(sheet("Body measurements (in)", ...lines)).tables[0]!.slice(0, 2)).toEqual(["body in | 8 10", row]);
  });
  it("names a figure where no size stands", () => {
    const { tables, issues } = paste(sheet(CM, "Size|34||36||38", "Bust|80||84||88", "Hip|86|87|90||94"));
    expect(tables).toEqual([["body cm | 34 36 38", "bust: Bust | 80 84 88"]]);
    expect(issues).toEqual([`4 error (hip) ${doubts.count("Hip", 4, 3)}`]);
  });
});

describe("fitRow on cloth below headed columns", () => {
  const A = "A, main, 45 in, nap? | 2 2.125";
  const rows = (...lines: string[]) => paste(sheet("Fabric required (yd)", "View|Width|8|10", ...lines));
  it("reads amounts that stand one column too far to the right", () => {
    expect(rows("A|45||2|2 1/8")).toEqual({ tables: [["fabric yd | 8 10", A]], issues: [] });
  });
  it.each([
    ["60|1 1/2", doubts.count("60", 1, 2)],
    ["Lining|1/2", doubts.count("Lining", 1, 2)],
    ["B|2|2 1/8", doubts.count("B", 2, 2)],
  ])("takes no figure among the headed columns for all sizes: %s", (line, issue) => {
    const { tables, issues } = rows("A|45|2|2 1/8", line);
    expect(tables).toEqual([["fabric yd | 8 10", A]]);
    expect(issues).toEqual([expect.stringContaining(issue)]);
  });
  it("takes a single amount under the first size for both, and says so", () => {
    expect(rows("A|45|2|2 1/8", "B|60|1 1/2")).toEqual({
      tables: [["fabric yd | 8 10", A, "B, main, 60 in, nap? | 1.5 1.5"]],
      issues: [`4 warning ${doubts.single("10")}`],
    });
  });
});

describe("fitRow in columns of cloth that spaces part", () => {
  const rows = (...lines: string[]) => paste(page("Fabric required (yd)", "Size        8    10    12", ...lines));
  it("puts amounts behind a width under their sizes", () => {
    expect(rows("A   45      2         2 1/8")).toEqual({
      tables: [["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2 - 2.125"]],
      issues: [`3 warning ${doubts.placed("A 45", ["10"])}`],
    });
  });
  it.each([
    ["A   3   2   2 1/8   2 1/4", "A", 4],
    ["A   45   2   2 1/8", "A 45", 2],
  ])("names a row with too many or too few: %s", (line, label, count) => {
    expect(rows(line)).toEqual({ tables: [], issues: [`3 error ${doubts.count(label, count, 3)}`] });
  });
  it("sees by their middles too where figures stand, but places no single one", () => {
    const head = page(CM, "Size       34    36    38    40");
    expect(paste(page(head, "Bust       98   102.5       110.5")).tables[0]![1]).toBe("bust: Bust | 98 102.5 - 110.5");
    expect(paste(page(head, "Bust                         92")).issues).toEqual([
      `3 error (bust) ${doubts.count("Bust", 1, 4)}`,
    ]);
  });
});
