import { describe, expect, it } from "vitest";
import { outOfOrder } from "../../src/chart/reading/checks";
import { doubts } from "../../src/words/reading";
import { page, paste, sheet } from "./paste";

const body = "Body measurements (cm)";
const chart = [["body cm | 34 36", "bust: Bust | 80 84", "hip: Hip | 86 90"]];
const read = { tables: chart, issues: [] };

// All figures are invented or common practice.
describe("readCharts on HTML", () => {
  it("reads preformatted text as it stands", () => {
    expect(
      paste(
        `<!--StartFragment--><p>${body}</p><pre>Size    34   36\nBust    80   84\nHip     86   90</pre><!--EndFragment-->`,
      ),
    ).toEqual(read);
  });
  it("doesn't read what a page doesn't show", () => {
    expect(
      paste(
        `<p>${body}</p><style>.a{b:c}</style><table><tr><th>Size<th>34<th>36<tr><td>Bust<script>1 < 2</script><td>80<td>84<tr><td>Hip<template><b>9</b></template><td>86<td>90</table>`,
      ),
    ).toEqual(read);
  });
  it("reads a list set with line breaks in each cell as rows", () => {
    expect(
      paste(
        `<p>${body}</p><table><tr><td>Size</td><td>34</td><td>36</td></tr><tr><td>Bust<br>Hip</td><td>80<br>86</td><td>84<br>90</td></tr></table>`,
      ),
    ).toEqual(read);
  });
  it("reads a table that is never closed, and headings outside of cells", () => {
    expect(
      paste(
        `<h2>${body}</h2><table><tr><th>Size</th><th>34</th><th>36</th></tr><tr><td>Bust</td><td>80</td><td>84</td></tr><tr><td>Hip</td><td>86</td><td>90</td>`,
      ),
    ).toEqual(read);
  });
  it("refuses nesting deeper than any page", () => {
    const deep = paste(`<table><tr><td>${"<b>".repeat(1100)}`);
    expect(deep.tables).toEqual([]);
    expect(deep.issues).toEqual([`1 error ${doubts.tooLong("4,000 rows")}`]);
  });
  it("refuses text without a table longer than any chart", () => {
    expect(paste(`<!--StartFragment-->${"word ".repeat(40_001)}`).issues).toEqual([
      `1 error ${doubts.tooLong("200,000 characters")}`,
    ]);
  });
});

describe("readCharts on grids", () => {
  it("leaves a quoted cell's quotes out", () => {
    expect(paste(sheet("Fabric", "Size|8|10", '"45"" wide"|2|2 1/8')).tables).toEqual([
      ["fabric yd | 8 10", "no view, main, 45 in, nap? | 2 2.125"],
    ]);
  });
  it("reads a row of one cell with a list in it", () => {
    expect(paste(sheet(body, "Size|34|36", "Bust 80 84|", "Hip|86|90"))).toEqual(read);
  });
  it("names a row with one figure, or with more words than figures", () => {
    const { tables, issues } = paste(
      sheet(body, "Size|34|36|38|40", "Bust|80|84|88|92", "Waist|62", "Hip|86|see|page|two"),
    );
    expect(tables).toEqual([["body cm | 34 36 38 40", "bust: Bust | 80 84 88 92"]]);
    expect(issues).toEqual([
      `4 error (waist) ${doubts.count("Waist", 1, 4)}`,
      `5 error (hip) ${doubts.count("Hip", 1, 4)}`,
    ]);
  });
  it("takes a unit for all from a sentence, unless a heading said one", () => {
    const said = paste(sheet("Size|34|36", "All measurements are given in cm unless noted.", "Yoke|30|31"));
    expect(said.tables).toEqual([["body cm | 34 36", "Yoke: Yoke | 30 31"]]);
    const headed = paste(
      sheet("Body measurements (in)", "Size|8|10", "All measurements are given in cm unless noted.", "Yoke|30|31"),
    );
    expect(headed.tables).toEqual([["body in | 8 10", "Yoke: Yoke | 30 31"]]);
  });
  it("keeps figures below a unit line in that unit", () => {
    expect(paste(sheet("Body measurements", "cm", "Size|34|36", "Yoke|30|31", "inches", "Cuff|9|9 1/2")).tables).toEqual([
      ["body cm | 34 36", "Yoke: Yoke | 30 31"],
      ["body in | 34 36", "Cuff: Cuff | 9 9.5"],
    ]); // prettier-ignore
  });
  it("gives a main-fabric line its rows after those of another part", () => {
    const { tables, issues } = paste(
      sheet("Fabric", "Size|8|10", "View A", "Lining", '45"|1|1 1/8', "Main", '45"|2|2 1/8', "with nap", '60"|3|3 1/8'),
    );
    expect(tables).toEqual([
      [
        "fabric yd | 8 10",
        "A, lining, 45 in, nap? | 1 1.125",
        "A, main, 45 in, nap? | 2 2.125",
        "A, main, 60 in, with | 3 3.125",
      ],
    ]);
    expect(issues).toEqual([]);
  });
  it("gives the rows below a width that width", () => {
    expect(paste(sheet("Fabric", "Size|8|10", '45" wide', "View A|2|2 1/8", "150 cm wide", "View B|1.5|1.6")).tables).toEqual([
      ["fabric yd | 8 10", "A, main, 45 in, nap? | 2 2.125"],
      ["fabric m | 8 10", "B, main, 150 cm, nap? | 1.5 1.6"],
    ]); // prettier-ignore
  });
  it("reads a width in front of single-spaced amounts, with and without its unit", () => {
    const { tables, issues } = paste(
      page("Fabric", "Sizes 8 10 12", "A 45 2 2 1/8 2 1/4", "B 150 cm 1.6 m 1.7 m 1.8 m", "C 60 2 do. do."),
    );
    expect(tables).toEqual([
      ["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2 2.125 2.25", "C, main, 60 in, nap? | 2 2 2"],
      ["fabric m | 8 10 12", "B, main, 150 cm, nap? | 1.6 1.7 1.8"],
    ]);
    expect(issues).toEqual([]);
  });
  it("leaves out the dash between a label and its figures", () => {
    expect(paste(page(body, "Size 34 36", "Bust - 80 84", "Hip - 86 90"))).toEqual(read);
  });
  it("reads equal ends as one figure and refuses ends and pairs that can't be one length", () => {
    const { tables, issues } = paste(
      sheet(body, "Size|34|36|38|40", "Bust|80-80|84|88|92", "Hip|86 in-90 cm|90|94|98", "Waist|62 (63 cm)|66 cm (67 cm)|70|74"),
    ); // prettier-ignore
    expect(tables[0]?.slice(0, 3)).toEqual([
      "body cm | 34 36 38 40",
      "bust: Bust | 80 84 88 92",
      "hip: Hip | - 90 94 98",
    ]);
    expect(issues.filter((issue) => issue.includes("error"))).toEqual([
      `4:2 error (hip, 34) ${doubts.unreadable("86 in-90 cm")}`,
      `5:3 error (waist, 36) ${doubts.unreadable("66 cm (67 cm)")}`,
    ]);
  });
});

describe("outOfOrder", () => {
  it("names each fall in a row longer than any chart's", () => {
    const long = Array.from({ length: 201 }, (_, index) => index);
    expect(outOfOrder(long)).toEqual([]);
    expect(outOfOrder(long.map((value) => (value === 50 ? 500 : value === 120 ? 3 : value)))).toEqual([51, 120]);
  });
});
