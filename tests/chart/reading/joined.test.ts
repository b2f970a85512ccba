import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

// All figures are invented, in common-practice steps.
const INCHES = "Body measurements (in)";
const back = "backWaistLength: Back waist length | 15 15.25 15.5";

describe("joinedRows", () => {
  it.each([
    ["over two lines", page("Back waist", "length 15 15 1/4 15 1/2")],
    ["over three lines", page("Back", "waist", "length 15 15 1/4 15 1/2")],
    ["over three lines with tabs", sheet("Back", "waist", "length|15|15 1/4|15 1/2")],
    ["above a row whose first cell is blank", sheet("Back waist length", "|15|15 1/4|15 1/2")],
  ])("reads a label broken %s", (_, lines) => {
    expect(paste(page(INCHES, "Size 8 10 12", "Bust 31 32 34", lines, "Hip 33 34 36"))).toEqual({
      tables: [["body in | 8 10 12", "bust: Bust | 31 32 34", back, "hip: Hip | 33 34 36"]],
      issues: [],
    });
  });
  it.each([
    ["with the figures behind its end", page("natural waist 15 15 1/4 15 1/2")],
    ["with the figures on a fourth line", page("natural waist", "15 15 1/4 15 1/2")],
  ])("never takes the last words of a long label for a place of their own, %s", (_, end) => {
    const lines = page(INCHES, "Size 8 10 12", "Back waist", "length, neck to", end);
    expect(paste(lines)).toEqual({
      tables: [["body in | 8 10 12", "backWaistLength: Back waist length, neck to natural waist | 15 15.25 15.5"]],
      issues: [],
    });
  });
  it("joins no prose to a label that is known without it", () => {
    const lines = page(INCHES, "Size 8 10 12", "Bust 31 32 34", "Hold the tape level", "Waist", "24 25 26");
    expect(paste(lines)).toEqual({
      tables: [["body in | 8 10 12", "bust: Bust | 31 32 34", "waist: Waist | 24 25 26"]],
      issues: [],
    });
  });
  it("says that figures under a row of blanks have no label", () => {
    const lines = sheet(INCHES, "Size|8|10|12", "Bust|31|32|34", "Waist|||", "|24|25|26");
    expect(paste(lines)).toEqual({
      tables: [["body in | 8 10 12", "bust: Bust | 31 32 34"]],
      issues: [`5 error ${doubts.noLabel()}`],
    });
  });
});

describe("joinedRows on rows whose figures can't be read", () => {
  it("doesn't give one row's figures to the label above it", () => {
    const lines = page(INCHES, "Size 8 10 12", "Height tall tall tall", "Sleeve 22 22 1/2 23");
    expect(paste(lines).tables).toEqual([["body in | 8 10 12", "sleeveLength: Sleeve | 22 22.5 23"]]);
  });
});

describe("looseRow", () => {
  it("reads feet and inches", () => {
    const lines = page(INCHES, "Size 8 10 12", `Height 5'4" 5'5" 5'6"`, "Sleeve 22 22 1/2 23");
    expect(paste(lines)).toEqual({
      tables: [["body in | 8 10 12", "height: Height | 64 65 66", "sleeveLength: Sleeve | 22 22.5 23"]],
      issues: [],
    });
  });
});

describe("joinedRows on a label that a page broke", () => {
  const around = (...lines: string[]) =>
    paste(page(INCHES, "Size 8 10 12", "Bust 31 32 34", ...lines, "Sleeve 22 23 24"));
  const inCells = (...lines: string[]) =>
    paste(sheet(INCHES, "Size|8|10|12", "Bust|31|32|34", ...lines, "Sleeve|22|23|24"));
  const wanted = (row: string) => ({
    tables: [["body in | 8 10 12", "bust: Bust | 31 32 34", row, "sleeveLength: Sleeve | 22 23 24"]],
    issues: [],
  });
  it.each([
    [`High hip 4" below`, "waist 33 34 36", `highHip: High hip 4" below waist | 33 34 36`],
    ["Hip 18 cm below", "waist 33 34 36", "hip: Hip 18 cm below waist | 33 34 36"],
    [`Hip (7" below`, "waist) 33 34 36", `hip: Hip (7" below waist) | 33 34 36`],
    ["Hip (fullest part below", "the waist) 33 34 36", "hip: Hip (fullest part below the waist) | 33 34 36"],
  ])("gives no hip's figures to the waist it is measured from: %s", (first, second, row) => {
    expect(around(first, second)).toEqual(wanted(row));
  });
  it.each([
    ["Back waist length 15", "15 1/4 15 1/2"],
    ["Back waist length 15 15 1/4", "15 1/2"],
    ["Back waist length", "15", "15 1/4 15 1/2"],
  ])("reads figures that go on in the next line: %s", (...lines) => {
    expect(around(...lines)).toEqual(wanted(back));
  });
  it.each([
    ["a figure and blanks", "Back waist length|15|", "15 1/4|15 1/2"],
    ["a figure behind a blank", "Back waist length||15", "|15 1/4|15 1/2"],
    ["all but its label", "Back waist length|", "15|15 1/4|15 1/2"],
    ["a note behind the figures", "Back waist", "length|15|15 1/4|15 1/2|full"],
  ])("reads cells that go on in the next row: %s", (_, ...lines) => {
    expect(inCells(...lines)).toEqual(wanted(back));
  });
  it("keeps a dash in its place where cells go on in the next row", () => {
    expect(inCells("Back waist length|15", "-|15 1/2")).toEqual(
      wanted("backWaistLength: Back waist length | 15 - 15.5"),
    );
  });
  it("reads cells that go on in a line without any", () => {
    const lines = sheet(INCHES, "Size|8|10|12", "Bust|31|32|34", "Back waist length|15", "15 1/4  15 1/2");
    expect(paste(lines)).toEqual({ tables: [["body in | 8 10 12", "bust: Bust | 31 32 34", back]], issues: [] });
  });
  it("names both halves of a label whose depth ends its first line", () => {
    expect(around('Hip 7"', "below waist 33 34 36").issues).toEqual([
      `4 error (hip) ${doubts.count("Hip", 1, 3)}`,
      `5 warning (below waist) ${doubts.unknownPlace("below waist")}`,
    ]);
  });
  it("warns of a place it doesn't know below a label in four lines", () => {
    const { issues } = around("Back", "waist", "length", "15 15 1/4 15 1/2");
    expect(issues).toEqual([`6 warning (length) ${doubts.unknownPlace("length")}`]);
  });
  it("takes no row with its figures for the first half of the next", () => {
    expect(around("Hip 33 34 36 at the back 7", "Waist 24 25 26").tables[0]!.slice(1)).toEqual([
      "bust: Bust | 31 32 34",
      "waist: Waist | 24 25 26",
      "sleeveLength: Sleeve | 22 23 24",
    ]);
  });
});

describe("onePerLine", () => {
  const cells = (text: string) => text.split("|").join("\n");
  const chart = (text: string) => paste(page(INCHES, cells(`Size|8|10|12|Bust|31|32|34|${text}|Sleeve|22|23|24`)));
  const wanted = (...rows: string[]) => [
    "body in | 8 10 12",
    "bust: Bust | 31 32 34",
    ...rows,
    "sleeveLength: Sleeve | 22 23 24",
  ];
  it.each([
    ["a plain label", "Waist|24|25|26", "waist: Waist | 24 25 26"],
    ["a dash", "Waist|-|25|26", "waist: Waist | - 25 26"],
    ["words above the label", "Natural|Waist|24|25|26", "waist: Waist | 24 25 26"],
    ["a label in two lines", "Back waist|length|15|15 1/4|15 1/2", back],
    ["two figures in one line", "Waist 24 25|26", "waist: Waist | 24 25 26"],
    ["a label with two figures", "Hip, 7 to 9 inches down|33|34|36", "hip: Hip, 7 to 9 inches down | 33 34 36"],
    ["a label with a fraction", "Hip 7 1/2 below waist|33|34|36", "hip: Hip 7 1/2 below waist | 33 34 36"],
    ["blank lines", "|Waist||24||25||26|", "waist: Waist | 24 25 26"],
  ])("reads a chart with one cell in each line: %s", (_, text, row) => {
    expect(chart(text)).toEqual({ tables: [wanted(row)], issues: [] });
  });
  it.each([
    ["Back waist|length|15|15 1/4", 10, "backWaistLength", "Back waist length"],
    ["Natural|Waist|24|25", 11, "waist", "Waist"],
    ["Waist|24|25", 10, "waist", "Waist"],
  ])("names the label of a row that lost a figure: %s", (text, line, place, label) => {
    expect(chart(text)).toEqual({
      tables: [wanted()],
      issues: [`${line} error (${place}) ${doubts.count(label, 2, 3)}`],
    });
  });
  it.each([
    ["letters", "Size|S|M|L|Bust|31|32|34|Sleeve|22|23|24", ["body in | S M L", "bust: Bust | 31 32 34"]],
    ["two units", "Size|8|10|Bust|31 (79)|32 (81)|Sleeve|22 (56)|23 (58)", ["body in | 8 10", "bust: Bust | 31 32"]],
    ["sizes of two systems", "Size|8 (EU 34)|10 (EU 36)|Bust|31|32", ["body in | 8 (EU 34) 10 (EU 36)", "bust: Bust | 31 32"]],
    ["six cells", "Size|8|10|Bust|31|32", ["body in | 8 10", "bust: Bust | 31 32"]],
  ])("reads sizes too with one cell in each line: %s", (_, text, rows) => {
    expect(paste(page(INCHES, cells(text))).tables[0]!.slice(0, 2)).toEqual(rows);
  }); // prettier-ignore
  it("reads a single size too, with as many labels as figures", () => {
    expect(paste(cells("Size|8|Bust|31|Waist|24")).tables).toEqual([
      ["body in | 8", "bust: Bust | 31", "waist: Waist | 24"],
    ]);
  });
  it("reads amounts of cloth with one cell in each line", () => {
    const text = cells('Size|8|10|12|A 45"|2|2 1/8|2 1/4|B 45"|3|3 1/8|3 1/4');
    expect(paste(page("Fabric required (yd)", text)).tables).toEqual([
      ["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2 2.125 2.25", "B, main, 45 in, nap? | 3 3.125 3.25"],
    ]);
  });
  it("leaves the lines behind such a chart as they stand", () => {
    const text = cells("Size|8|10|12|Bust|31|32|34|Waist|24|25|26");
    expect(paste(page(INCHES, text, "Sleeve  22  23  24")).tables).toEqual([
      ["body in | 8 10 12", "bust: Bust | 31 32 34", "waist: Waist | 24 25 26", "sleeveLength: Sleeve | 22 23 24"],
    ]);
  });
});
