import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

// All figures are invented, in common-practice steps.
const CM = "Body measurements (cm)";

describe("readRows", () => {
  it("names a line that a sheet could run, and lets nothing of it into a table", () => {
    const { tables, issues } = paste(
      sheet(CM, "Size|34|36", "Bust|80|84", '=HYPERLINK("x")||', "@all|||", "Hip|86|90"),
    );
    expect(tables).toEqual([["body cm | 34 36", "bust: Bust | 80 84", "hip: Hip | 86 90"]]);
    expect(issues).toEqual([`4 error ${doubts.formulaLabel("=")}`, `5 error ${doubts.formulaLabel("@")}`]);
  });
  it("names figures without a row of sizes, but not a single one", () => {
    expect(paste(page(CM, "Bust 80 84 88")).issues).toEqual([`2 error (bust) ${doubts.noSizes("Bust")}`]);
    expect(paste(page(CM, "Bust 80")).issues).toEqual([`1 error ${doubts.noChart()}`]);
  });
  it("finds the place of a row with a spoilt figure", () => {
    expect(paste(page(CM, "Size 34 36 38", "Bust 80 84 8B", "Hip 86 90 94")).issues).toEqual([
      expect.stringMatching(/^3 error \(bust\)/),
    ]);
  });
  it("takes no sentence inside a chart for a row of it", () => {
    const lines = [
      CM,
      "Size 34 36 38",
      "Bust 80 84 88",
      "Allow 4 cm ease, or 6 where you like it wide.",
      "Hip 86 90 94",
    ];
    expect(paste(page(...lines))).toEqual({
      tables: [["body cm | 34 36 38", "bust: Bust | 80 84 88", "hip: Hip | 86 90 94"]],
      issues: [],
    });
  });
});

describe("readRows on a sentence about some of the sizes", () => {
  it("names it, for its amounts are not for all of them", () => {
    const lines = ['A 45" 2 2 1/8 2 1/4', "Size 8 needs 1/2 yd, sizes 10 12 14 need 3/4 yd interfacing"];
    const { tables, issues } = paste(page("Fabric required (yd)", "Size 8 10 12", ...lines));
    expect(tables).toEqual([["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2 2.125 2.25"]]);
    expect(issues).toEqual([expect.stringMatching(/^4 error /)]);
  });
});

describe("readRows on a row with too few or too many figures", () => {
  const around = (...lines: string[]) =>
    paste(page("Body measurements (in)", "Size 8 10 12", "Bust 31 32 34", ...lines, "Hip 33 34 36"));
  const inCells = (line: string) => paste(sheet(CM, "Size|34|36|38", "Bust|80|84|88", line, "Hip|86|90|94"));
  const left = ["body in | 8 10 12", "bust: Bust | 31 32 34", "hip: Hip | 33 34 36"];
  it.each([
    ["Waist ........ 24 25", 2],
    ["Waist . . . 24 25", 2],
    ["Waist = 24 25", 2],
    ["Waist 24 25 full", 2],
    ["Waist 24 25 26 27", 4],
    // A unit behind the figures makes no heading of it: the hip below stays in inches.
    ["Waist 24 25 cm", 2],
    ['Waist 24" 25"', 2],
    ["Waist 24 cm", 1],
  ])("names it and changes nothing below it: %s", (line, count) => {
    expect(around(line)).toEqual({ tables: [left], issues: [`4 error (waist) ${doubts.count("Waist", count, 3)}`] });
  });
  it.each([
    ["Waist O1.5 25", 1],
    ["Waist 24 2S 26", 2],
    ["Waist 24.5 2S 26", 2],
    ["Waist 24½ 2S 26", 2],
    ['Waist 24" 2S" 26"', 2],
    ["Waist 24 1/2 2S 26", 2],
    ["Waist 2S 25 26", 2],
    ["Waist 24 25 2S", 2],
    ["Waist 2A 2B 26", 1],
    ["Waist 24 25 2S 26", 3],
    ["Waist 124 2S 26", 2],
  ])("counts the figures that no letter spoilt: %s", (line, count) => {
    expect(around(line)).toEqual({ tables: [left], issues: [`4 error (waist) ${doubts.count("Waist", count, 3)}`] });
  });
  it.each([
    ["a label not known", "Girth 24 2S 26", doubts.count("Girth", 2, 3)],
    ["no label", "24 2S 26", doubts.noLabel()],
  ])("takes no row with a spoilt figure for sizes, with %s", (_, line, issue) => {
    expect(around(line)).toEqual({ tables: [left], issues: [`4 error ${issue}`] });
  });
  it.each(["24 25", "24 25 26", "24 25 26 27"])("names figures without a label: %s", (line) => {
    expect(around(line)).toEqual({ tables: [left], issues: [`4 error ${doubts.noLabel()}`] });
  });
  it.each([
    ["24 25 26", true],
    ["24 25 26 27 28", true],
    ["15 1/2 16 16 1/2", true],
    // Two numbers of four may be pages.
    ["24 25", false],
    ["24", false],
  ])("names figures without a label for nearly all of four sizes: %s", (line, isNamed) => {
    const text = page("Body measurements (in)", "Size 8 10 12 14", "Bust 31 32 34 36", line, "Hip 33 34 36 38");
    expect(paste(text)).toEqual({
      tables: [["body in | 8 10 12 14", "bust: Bust | 31 32 34 36", "hip: Hip | 33 34 36 38"]],
      issues: isNamed ? [`4 error ${doubts.noLabel()}`] : [],
    });
  });
  it.each([
    ["15 1/2 16 16 1/2", true],
    ["15 1/2 16 16 1/2 17 17 1/2", true],
    ["15 1/2 16", false],
    ["15 1/2", false],
  ])("does so right below the sizes too: %s", (line, isNamed) => {
    expect(paste(page("Body measurements (in)", "Size 8 10 12 14", line, "Hip 33 34 36 38"))).toEqual({
      tables: [["body in | 8 10 12 14", "hip: Hip | 33 34 36 38"]],
      issues: isNamed ? [`3 error ${doubts.noLabel()}`] : [],
    });
  });
  it.each([
    ["Waist:|64|68", 2, "Waist"],
    ["Waist |64|68|72|76", 4, "Waist"],
    ["Girth over the fullest part of the upper arm with ease|30|31", 2, "Girth over the fullest part of the upper arm with ease"],
  ])("names a row of cells, however long its label is: %s", (line, count, label) => {
    const { tables, issues } = inCells(line);
    expect(tables).toEqual([["body cm | 34 36 38", "bust: Bust | 80 84 88", "hip: Hip | 86 90 94"]]);
    expect(issues).toEqual([expect.stringContaining(doubts.count(label, count, 3))]);
  }); // prettier-ignore
  it.each([
    "Sew the sleeves of the coat into the armholes 24 25",
    "Waist of the lined skirt 24 25.",
    "Page 24",
    "For size 8 you will need 1/2 yd and for sizes 10 12 3/4 yd interfacing",
  ])("takes prose for no row of body measurements: %s", (line) => {
    expect(around(line)).toEqual({ tables: [left], issues: [] });
  });
  it.each([
    ["Back length 24 24 1/4", "(backLength) ", "Back length"],
    ["Back length A 24 24 1/4", "(backLength) ", "Back length A"],
    ["Hem 24 24 1/4", "(hemWidth) ", "Hem"],
    ["A 24 24 1/4", "", "A"],
  ])("finds the place of a finished row beside its view: %s", (line, place, label) => {
    const lines = page("Finished garment measurements (in)", "Size 8 10 12", "Bust 35 36 38", line);
    expect(paste(lines)).toEqual({
      tables: [["finished in | 8 10 12", "bust: Bust | 35 36 38"]],
      issues: [`4 error ${place}${doubts.count(label, 2, 3)}`],
    });
  });
});

describe("readRows on rows of cloth with too few or too many amounts", () => {
  const HEAD = page("Fabric required (yd)", "Size 8 10 12");
  it.each([
    ['B 45" 2 2 1/8', 2, 'B 45"'],
    ['B 45" 2 2 1/8 3 4', 4, 'B 45"'],
    ['60" 2 2 1/8', 2, '60"'],
    ["B 2 2 1/8", 2, "B"],
    ["Lining 2 2 1/8", 2, "Lining"],
    ["Bust 31 32", 2, "Bust"],
  ])("names it, and takes neither a width for an amount nor view B for a bust: %s", (line, count, label) => {
    const place = label === "Bust" ? "(bust) " : "";
    expect(paste(page(HEAD, line)).issues).toEqual([`3 error ${place}${doubts.count(label, count, 3)}`]);
    expect(paste(page(HEAD, 'A 45" 2 2 1/8 2 1/4', line)).issues).toEqual([
      `4 error ${place}${doubts.count(label, count, 3)}`,
    ]);
  });
  it.each(["Yoke 2 2 1/8", "Buttons 2 3", "B buttons 2 3"])("takes other words for a note where no cloth stands above: %s", (line) => {
    expect(paste(page(HEAD, line)).issues).toEqual([`1 error ${doubts.noChart()}`]);
  }); // prettier-ignore
  it.each([
    ["A, B,", 'C 45" 2 2 1/8 2 1/4', ["A", "B", "C"]],
    ["Views A and", 'B 45" 2 2 1/8 2 1/4', ["A", "B"]],
    ["View A", '45" 2 2 1/8 2 1/4', ["A"]],
    ["View A,", '45" 2 2 1/8 2 1/4', ["A"]],
  ])("gives the amounts to each view that stands above them: %s", (first, second, views) => {
    expect(paste(page(HEAD, first, second))).toEqual({
      tables: [["fabric yd | 8 10 12", ...views.map((view) => `${view}, main, 45 in, nap? | 2 2.125 2.25`)]],
      issues: [],
    });
  });
  it.each([
    ["yd", "For size 8 you need 1/2 yd, and for sizes 10 12 you need 3/4 yd interfacing"],
    ["m", "For size 8 you need 0.5 m, and for sizes 10 12 you need 0.7m lining"],
    ["yards", "For size8 you need 2 1/2 yd, and for size 10 you need 3 yd contrast"],
  ])("names a sentence with amounts for some of the sizes, in %s", (_, line) => {
    const { tables, issues } = paste(page(HEAD, 'A 45" 2 2 1/8 2 1/4', line));
    expect(tables).toEqual([["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2 2.125 2.25"]]);
    expect(issues).toEqual([expect.stringMatching(/^4 error /)]);
  });
  it("reads one amount for all sizes said in a sentence, and calls the chart found", () => {
    expect(paste(page(HEAD, 'Interfacing A - 7/8 yd of 20" fusible'))).toEqual({
      tables: [["fabric yd | 8 10 12", "A, interfacing, 20 in, nap? | 0.875 0.875 0.875"]],
      issues: [],
    });
  });
});

describe("readRows on rows that look like sizes", () => {
  const MESURES = "Mesures du corps (cm)";
  it("takes a waist that lost a figure for no sizes, but does behind a blank line", () => {
    const lines = ["Taille 36 38 40", "Poitrine 84 88 92"];
    const near = paste(page(MESURES, ...lines, "Taille 66 70", "Hanches 90 94 98"));
    expect(near).toEqual({
      tables: [["body cm | 36 38 40", "bust: Poitrine | 84 88 92", "hip: Hanches | 90 94 98"]],
      issues: [`4 error (waist) ${doubts.count("Taille", 2, 3)}`],
    });
    const apart = paste(page(MESURES, ...lines, "", "Taille 66 70", "Hanches 90 94 98"));
    expect(apart.tables).toEqual([["body cm | 36 38 40", "bust: Poitrine | 84 88 92"]]);
    expect(apart.issues).toEqual([`5 error ${doubts.sizesUnread()}`, `6 error (hip) ${doubts.noSizes("Hanches")}`]);
  });
  it("gives no figures to sizes that it could not read", () => {
    const { tables, issues } = paste(page(CM, "Size 34 36 38", "Bust 80 84 88", "Sizes, 44, 46", "Hip 86 90 94"));
    expect(tables).toEqual([["body cm | 34 36 38", "bust: Bust | 80 84 88"]]);
    expect(issues).toEqual([`4 error ${doubts.sizesUnread()}`, `5 error (hip) ${doubts.noSizes("Hip")}`]);
  });
});

describe("readRows on rows that were turned", () => {
  const tables = (...lines: string[]) => paste(sheet(...lines)).tables;
  it.each([
    ["places side by side", [CM, "Size|Bust|Hip", "34|80|86", "36|84|90"], ["body cm | 34 36", "bust: Bust | 80 84", "hip: Hip | 86 90"]],
    ["a note between them", [CM, "Size|Bust|Note|Hip", "34|80|loose|86", "36|84|loose|90"], ["body cm | 34 36", "bust: Bust | 80 84", "hip: Hip | 86 90"]],
    ["a second system", [CM, "Size|Bust|US|Hip", "34|80|4|86", "36|84|6|90"], ["body cm | 34 36", "also US: 4 6", "bust: Bust | 80 84", "hip: Hip | 86 90"]],
    ["cloth", ["Fabric required (m)", "Size|A 115 cm|B 115 cm", "34|2|3", "36|2.1|3.1"], ["fabric m | 34 36", "A, main, 115 cm, nap? | 2 2.1", "B, main, 115 cm, nap? | 3 3.1"]],
  ])("reads %s", (_, lines, table) => {
    expect(tables(...lines)).toEqual([table]);
  }); // prettier-ignore
  it("reads body and garment side by side", () => {
    const lines = ["Size|Body|Body|Garment|Garment", "|Bust|Hip|Bust|Hip", "8|31|33|35|37", "10|32|34|36|38"];
    expect(tables(...lines)).toEqual([
      ["body in | 8 10", "bust: Bust | 31 32", "hip: Hip | 33 34"],
      ["finished in | 8 10", "bust: Bust | 35 36", "hip: Hip | 37 38"],
    ]);
  });
});
