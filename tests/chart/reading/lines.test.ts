import { describe, expect, it } from "vitest";
import { textRows } from "../../../src/chart/reading/lines";
import { page, paste } from "../paste";

// All figures are invented. A row as its cells, each with the column it starts in.
const cells = (text: string): string[][] =>
  textRows(text).map(({ cells: row }) => row.map((cell) => `${cell.text}@${cell.column}`));
const texts = (text: string): string[][] => textRows(text).map(({ cells: row }) => row.map((cell) => cell.text));

describe("textRows", () => {
  it("counts lines whatever ends them, and keeps blank ones", () => {
    const rows = textRows("a\r\nb\rc\n\nd\u2028e\vf\fg");
    expect(rows.map(({ line, text }) => `${line}${text}`)).toEqual(["1a", "2b", "3c", "4", "5d", "6e", "7f", "8g"]);
  });
  it("parts cells at tabs, blank ones too", () => {
    expect(cells("Bust\t31\t\t33")).toEqual([["Bust@1", "31@2", "@3", "33@4"]]);
    expect(textRows("Bust\t31")[0]!.layout).toBe("grid");
  });
  it("parts cells that stand two spaces apart, and says where", () => {
    expect(cells("Back waist  31   33 1/2")).toEqual([["Back waist@1", "31@13", "33 1/2@18"]]);
    expect(textRows("Bust  31")[0]!.layout).toBe("spaced");
  });
  it("parts cells at pipes, with a frame or without, and leaves out the lines that only draw", () => {
    const table = page("+------+----+", "| Size | 8 |", "|------|:--:|", "│ Bust │ 31 │", "Hip | 33 | 34", "=====");
    expect(cells(table)).toEqual([
      ["Size@1", "8@2"],
      ["Bust@1", "31@2"],
      ["Hip@1", "33@2", "34@3"],
    ]);
    expect(texts("| | 31 |")).toEqual([["", "31"]]);
    expect(texts("a | b |  ")).toEqual([["a", "b", ""]]);
  });
  it("keeps a line of dashes that stand for nothing printed", () => {
    expect(texts("- - -")).toEqual([["- - -"]]);
    expect(texts("-")).toEqual([["-"]]);
  });
  it("takes the marks of lists away where they are marks", () => {
    expect(texts("• Bust 31")).toEqual([["Bust 31"]]);
    expect(texts("•Bust 31")).toEqual([["Bust 31"]]);
    expect(texts("- Bust 31")).toEqual([["- Bust 31"]]);
    expect(texts("- Bust 31\n- Hip 33")).toEqual([["Bust 31"], ["Hip 33"]]);
    expect(texts("- 31\n- 33")).toEqual([["- 31"], ["- 33"]]);
  });
  it("takes leader dots away, and no decimal point", () => {
    expect(texts("Bust ..... 31.5 ... 32")).toEqual([["Bust", "31.5", "32"]]);
    expect(texts("Bust . . . . 31")).toEqual([["Bust", "31"]]);
    expect(texts("Bust ____ 31 … 32")).toEqual([["Bust", "31", "32"]]);
  });
  it("has one space for every kind of space and none for signs that can't be seen", () => {
    expect(texts("Bust\u00A0\u00A031\u2009\u200332\u200B\u00AD")).toEqual([["Bust", "31", "32"]]);
  });
  it("closes fractions that stand apart, and leaves slashes between figures", () => {
    expect(texts("Bust 31 1 / 2")).toEqual([["Bust 31 1/2"]]);
    expect(texts("Bust 31 1 / 16")).toEqual([["Bust 31 1/16"]]);
    expect(texts("Bust: 84 / 88 / 92")).toEqual([["Bust: 84", "88", "92"]]);
    expect(texts("Sizes 8 / 10 / 12")).toEqual([["Sizes 8", "10", "12"]]);
    expect(texts("Bust 34 in / 87 cm")).toEqual([["Bust 34 in / 87 cm"]]);
    expect(texts("front / back / side 3")).toEqual([["front / back / side 3"]]);
  });
  it("takes a list of figures joined by dashes apart, and no range or two lists", () => {
    expect(texts("Bust: 31½-32½-34-36")).toEqual([["Bust: 31½ 32½ 34 36"]]);
    expect(texts("Bust 30-31")).toEqual([["Bust 30-31"]]);
    expect(texts("Sizes 6-8-10 and 12-14-16")).toEqual([["Sizes 6-8-10 and 12-14-16"]]);
  });
  it.each([
    // Where a mark of a list stood, the columns stay.
    ["- Bust  31\n- Hip  33", "Bust@3 31@9, Hip@3 33@8"],
    ["size_8  31", "size_8@1 31@9"],
    ["Tape  11 / 16", "Tape@1 11/16@7"],
    ["Bust  1/ 2  1 /2", "Bust@1 1/2@7 1/2@12"],
    ["Sizes  2/ 4/ 6", "Sizes@1 2/ 4/ 6@8"],
    // Lists joined by dashes: with decimals at either end, at the line's start and end, and before a comma.
    ["30.5-31.5-32", "30.5 31.5 32@1"],
    ["Bust: 31,5-32-33½", "Bust: 31,5 32 33½@1"],
    ["Bust: 31-32-33, all views", "Bust: 31 32 33, all views@1"],
    ["Printed 12-04-2026", "Printed 12-04-2026@1"],
    ["Model 31-32-33x", "Model 31-32-33x@1"],
    // A cell between tabs is one cell.
    ["Sizes\t6-8-10", "Sizes@1 6-8-10@2"],
    // Slashes that part no figures of one row.
    ["Bust / 31 / 32", "Bust / 31 / 32@1"],
    ["Bust 31 / hip 33 / waist 25", "Bust 31 / hip 33 / waist 25@1"],
    ["Bust 34 / 87", "Bust 34 / 87@1"],
    // Pipes part cells whatever stands in them; one alone parts nothing.
    [`"Bust | full" | 31`, `"Bust@1 full"@2 31@3`],
    ["Bust 31 | 32", "Bust 31 | 32@1"],
    ["**Bust** | 31 | 32", "Bust@1 31@2 32@3"],
    // Quotes that a spreadsheet put, and inch marks.
    [`Cloth\t "45"" wide" `, `Cloth@1 45" wide@2`],
    [`4'6""\t45"" wide\t"45"" wide`, `4'6""@1 45"" wide@2 "45"" wide@3`],
  ])("reads %j", (text, expected) => {
    expect(
      cells(text)
        .map((row) => row.join(" "))
        .join(", "),
    ).toBe(expected);
  });
});

describe("textRows on CSV", () => {
  it("parts neighbours that fall into as many cells, at commas or semicolons", () => {
    expect(cells("Size,8,10\nBust,31,32")).toEqual([["Size@1", "8@2", "10@3"], ["Bust@1", "31@2", "32@3"]]); // prettier-ignore
    expect(texts("Größe;34;36\nBrust;80,5;84")).toEqual([["Größe", "34", "36"], ["Brust", "80,5", "84"]]); // prettier-ignore
  });
  it("parts one line alone from four cells on", () => {
    expect(texts("Size,8,10,12")).toEqual([["Size", "8", "10", "12"]]);
    expect(texts("Size,8,10")).toEqual([["Size,8,10"]]);
  });
  it("parts two cells only beside a line with three", () => {
    expect(texts("Size,8\nBust,31")).toEqual([["Size,8"], ["Bust,31"]]);
    expect(texts("Note,one\nSize,8,10\nBust,31,32")[0]).toEqual(["Note", "one"]);
  });
  it("keeps separators and doubled quotes within quotes", () => {
    expect(texts('"Bust, full","31,5",32\nHip,33,34')).toEqual([["Bust, full", "31,5", "32"], ["Hip", "33", "34"]]); // prettier-ignore
    expect(texts('"45"" wide", "2" ,3\nHip,33,34')[0]).toEqual(['45" wide', "2", "3"]);
    // A quote that is an inch mark is no quote.
    expect(texts('45" wide,2,3\nHip,33,34')[0]).toEqual(['45" wide', "2", "3"]);
    expect(texts('"a" b,2,3\nHip,33,34')[0]).toEqual(['"a" b', "2", "3"]);
  });
  it("takes off the quotes that a spreadsheet puts around a cell with a quote", () => {
    expect(texts('"45"" wide"\t2')).toEqual([['45" wide', "2"]]);
    expect(texts('"main"\t2')).toEqual([['"main"', "2"]]);
  });
  it("reads lists in sentences word by word", () => {
    expect(texts("Bust: 84, 90, 98\nHip: 88, 94, 102")).toEqual([["Bust: 84, 90, 98"], ["Hip: 88, 94, 102"]]);
    expect(texts("Bust 84, 90, 98\nHip 88, 94, 102")).toEqual([["Bust 84, 90, 98"], ["Hip 88, 94, 102"]]);
    expect(texts("Bust 70,5 74,5\nHip 88,5 92,5")).toEqual([["Bust 70,5 74,5"], ["Hip 88,5 92,5"]]);
  });
  it("keeps prose with commas whole", () => {
    const prose = "Cut two of the front, then sew the sleeves, and finish with the collar band";
    expect(texts(`${prose}, all four layers of it\n${prose}`)).toEqual([[`${prose}, all four layers of it`], [prose]]);
  });
  it("reads an odd line between sure ones as CSV too", () => {
    const odd = "Waist,61 64,66,this is a long remark about the waist and nothing more";
    expect(texts(`Size,8,10,12\n${odd}\nBust,80,84,88`)[1]).toHaveLength(4);
  });
  const remark = "a long remark about the waist and nothing more";
  it.each([
    // Two cells, last in the table.
    ["Size,8,10\nBust,31,32\nNote,one", "Size|8|10 Bust|31|32 Note|one"],
    // A quote that nothing closes.
    ['Size,8,10\n"Bust,31,32', 'Size|8|10 "Bust|31|32'],
    // Odd lines first and last, as long as they hold two commas.
    [`Waist,61 64,${remark}\nSize,8,10,12`, `Waist|61 64|${remark} Size|8|10|12`],
    [`Size,8,10,12\nWaist,61 64,${remark}`, `Size|8|10|12 Waist|61 64|${remark}`],
    [`Size,8,10,12\nWaist, ${remark}`, `Size|8|10|12 Waist, ${remark}`],
    // Commas between tabs or pipes say nothing about the line above.
    ["Hip, back\nViews\tA,B\tC,D", "Hip, back Views|A,B|C,D"],
    ["Hip, back\nViews | A,B | C,D", "Hip, back Views|A,B|C,D"],
    // Lists in a sentence, however the figures are printed.
    ["Bust:84,90,98,104", "Bust:84,90,98,104"],
    ["Wrist 6, 7, 8, 9", "Wrist 6, 7, 8, 9"],
    ["Bust 84.5, 90.5, 98.5, 102.5", "Bust 84.5, 90.5, 98.5, 102.5"],
    ["Waist 24.25, 25.25, 26.25, 27.25", "Waist 24.25, 25.25, 26.25, 27.25"],
    // A number behind a name isn't the row's first figure.
    ["Table 1, Size 8, Size 10, Size 12", "Table 1|Size 8|Size 10|Size 12"],
    ["Table 1,8,10,12", "Table 1|8|10|12"],
    // A figure of two words, and a sentence that holds figures.
    ["Bust,31 11/16,32 3/16,33", "Bust|31 11/16|32 3/16|33"],
    [`Cut 2, fold, press, then topstitch 6 mm from the edge of the front band`, `Cut 2, fold, press, then topstitch 6 mm from the edge of the front band`],
  ])("reads %j", (text, expected) => {
    expect(
      texts(text)
        .map((row) => row.join("|"))
        .join(" "),
    ).toBe(expected);
  }); // prettier-ignore
  it("reads figures with decimal commas under CSV sizes by their quotes", () => {
    expect(paste(page("Body measurements (cm)", "Size,34,36", 'Bust,"80,5","84,5"', "Waist,61,64"))).toEqual({
      tables: [["body cm | 34 36", "bust: Bust | 80.5 84.5", "waist: Waist | 61 64"]],
      issues: [],
    });
  });
});
