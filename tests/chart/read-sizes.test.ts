import { describe, expect, it } from "vitest";
import { doubts } from "../../src/words/reading";
import { page, paste, sheet } from "./paste";

// All figures are invented or common practice.
describe("readCharts on rows of sizes", () => {
  it("names a second row of sizes with too few, and leaves it out", () => {
    const { tables, issues } = paste(sheet("Body measurements (in)", "Size|8|10|12", "EU size|36|38", "Bust|31|32|33"));
    expect(tables).toEqual([["body in | 8 10 12", "bust: Bust | 31 32 33"]]);
    expect(issues).toEqual([`3 error ${doubts.sizeRowCount(2, 3)}`]);
  });
  it("takes the numbers for the pattern's sizes when the letters above them repeat", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (in)", "Size|XS|S|S|M", "US size|2|4|6|8", "Bust|31|32|33|34"),
    );
    expect(tables).toEqual([["body in | 2 4 6 8", "also Size: XS S S M", "bust: Bust | 31 32 33 34"]]);
    expect(issues).toEqual([]);
  });
  it("warns of two columns of one name, whatever its case", () => {
    const { tables, issues } = paste(sheet("Body measurements (in)", "Size|8|XL|xl", "Bust|31|32|33"));
    expect(tables).toEqual([["body in | 8 XL xl", "bust: Bust | 31 32 33"]]);
    expect(issues).toEqual([`2:4 warning (xl) ${doubts.equalSizes("xl")}`]);
  });
  it("reads two columns for each size, or two blocks of sizes, as two units", () => {
    const side = paste(sheet("Body measurements", "Size|8|8|10|10", "|in|cm|in|cm", "Bust|31|79|32|81"));
    expect(side.tables).toEqual([
      ["body in | 8 10", "bust: Bust | 31 32"],
      ["body cm | 8 10", "bust: Bust | 79 81"],
    ]);
    const alias = paste(sheet("Body measurements", "Size|8|10|8|10", "EU|36|38|36|38", "Bust|31|32|79|81"));
    expect(alias.tables).toEqual([
      ["body in | 8 10", "also EU: 36 38", "bust: Bust | 31 32"],
      ["body cm | 8 10", "also EU: 36 38", "bust: Bust | 79 81"],
    ]);
    expect([...side.issues, ...alias.issues]).toEqual([]);
  });
  it("takes heights for sizes where no sizes stand, once", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Height|86|92|98", "Chest|53|54|55", "Waist|51|52|53"),
    );
    expect(tables).toEqual([
      ["body cm | 86 92 98", "height: Height | 86 92 98", "chest: Chest | 53 54 55", "waist: Waist | 51 52 53"],
    ]);
    expect(issues).toEqual([`2 warning (height) ${doubts.sizesFromHeights()}`]);
  });
  it("takes nameless figures right below the sizes for a second row of sizes, and says so", () => {
    const { tables, issues } = paste(page("Body measurements (in)", "Size 8 10 12", "34 36 38", "Bust 31 32 33"));
    expect(tables).toEqual([["body in | 8 10 12", "also : 34 36 38", "bust: Bust | 31 32 33"]]);
    expect(issues).toEqual([`3 warning ${doubts.namelessSizes()}`]);
  });
  it("begins a new table where sizes of another system follow a blank line", () => {
    const { tables } = paste(sheet("Body measurements (in)", "Size|8|10", "Bust|31|32", "", "EU|36|38", "Hip|34|35"));
    expect(tables).toEqual([
      ["body in | 8 10", "bust: Bust | 31 32"],
      ["body in | 36 38", "hip: Hip | 34 35"],
    ]);
  });
  it("keeps a second system that follows right below a row as another name of the sizes", () => {
    const { tables } = paste(sheet("Body measurements (in)", "Size|8|10", "Bust|31|32", "EU|36|38", "Hip|34|35"));
    expect(tables).toEqual([["body in | 8 10", "also EU: 36 38", "bust: Bust | 31 32", "hip: Hip | 34 35"]]);
  });
  it("lets anything head a column whose corner says size", () => {
    const { tables, issues } = paste(
      page("Body measurements (cm)", "Size    Robin   Swallow   Heron", "Bust    80      84        88", "Hip     86      90        94"),
    ); // prettier-ignore
    expect(tables).toEqual([["body cm | Robin Swallow Heron", "bust: Bust | 80 84 88", "hip: Hip | 86 90 94"]]);
    expect(issues).toEqual([]);
  });
  it("reads a list of sizes in one cell beside its word", () => {
    const { tables, issues } = paste(sheet("Body measurements (cm)", "Size|34 36 38", "Bust|80 84 88", "Hip|86 90 94"));
    expect(tables).toEqual([["body cm | 34 36 38", "bust: Bust | 80 84 88", "hip: Hip | 86 90 94"]]);
    expect(issues).toEqual([]);
  });
  it("leaves out a unit column and a how-to column between the label and the sizes", () => {
    const { tables, issues } = paste(
      sheet("Body measurements", "Measurement|How to measure|Unit|34|36", "Bust|around the fullest part|cm|80|84", "Hip|around the widest part|cm|86|90"),
    ); // prettier-ignore
    expect(tables.map((table) => table[0])).toEqual(["body cm | 34 36"]);
    expect(tables[0]?.slice(1).map((row) => row.split(":")[0])).toEqual(["bust", "hip"]);
    expect(tables[0]?.slice(1).map((row) => row.split(" | ")[1])).toEqual(["80 84", "86 90"]);
    expect(issues).toEqual([]);
  });
  it("refuses figures of places without any sizes", () => {
    const { tables, issues } = paste(sheet("Bust|31|32|33", "Hip|34|35|36"));
    expect(tables).toEqual([]);
    expect(issues).toEqual([`1 error (bust) ${doubts.noSizes("Bust")}`, `2 error (hip) ${doubts.noSizes("Hip")}`]);
  });
});

describe("readCharts on rows that a page broke", () => {
  it("joins figures that run on in a second line of a grid", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|34|36|38|40", "Bust|80|84", "|88|92", "Hip|86|90", "|94|98"),
    );
    expect(tables).toEqual([["body cm | 34 36 38 40", "bust: Bust | 80 84 88 92", "hip: Hip | 86 90 94 98"]]);
    expect(issues).toEqual([]);
  });
  it("joins a label in two cells, one above the other", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|34|36", "Back waist|", "length|40|41", "Hip|86|90"),
    );
    expect(tables).toEqual([["body cm | 34 36", "backWaistLength: Back waist length | 40 41", "hip: Hip | 86 90"]]);
    expect(issues).toEqual([]);
  });
  it("never joins two rows that are both short", () => {
    const { tables, issues } = paste(
      page("Body measurements (cm)", "Size 34 36 38 40", "Bust 80 84 88", "Waist 62", "Hip 86 90 94 98"),
    );
    expect(tables).toEqual([["body cm | 34 36 38 40", "hip: Hip | 86 90 94 98"]]);
    expect(issues).toEqual([
      `3 error (bust) ${doubts.count("Bust", 3, 4)}`,
      `4 error (waist) ${doubts.count("Waist", 1, 4)}`,
    ]);
  });
  it("reads a page cell by cell, with a label over two lines", () => {
    const { tables, issues } = paste(
      page("Body measurements (cm)", "", "Size", "34", "36", "Bust", "80", "84", "Back waist", "length", "40", "41", "Hip", "86", "90"),
    ); // prettier-ignore
    expect(tables).toEqual([
      ["body cm | 34 36", "bust: Bust | 80 84", "backWaistLength: Back waist length | 40 41", "hip: Hip | 86 90"],
    ]);
    expect(issues).toEqual([]);
  });
});

describe("readCharts on turned charts", () => {
  it("names a size whose row is short, and leaves it out", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|Bust|Waist|Hip", "34|80|62|86", "36|84|66", "38|88|70|94"),
    );
    expect(tables).toEqual([["body cm | 34 38", "bust: Bust | 80 88", "waist: Waist | 62 70", "hip: Hip | 86 94"]]);
    expect(issues).toEqual([`4 error (36) ${doubts.shortSize("36", 2, 3)}`]);
  });
  it("reads nothing of one in which every row is short", () => {
    const { tables, issues } = paste(sheet("Body measurements (cm)", "Size|Bust|Waist|Hip", "34|80|62", "36|84|66"));
    expect(tables).toEqual([]);
    expect(issues.slice(0, 2)).toEqual([
      `3 error (34) ${doubts.shortSize("34", 2, 3)}`,
      `4 error (36) ${doubts.shortSize("36", 2, 3)}`,
    ]);
  });
  it("takes a blank corner for the sizes, and leaves out a column without a heading or figures", () => {
    const { tables, issues } = paste(sheet("Body measurements (cm)", "|Bust||Hip", "34|80||86", "36|84||90"));
    expect(tables).toEqual([["body cm | 34 36", "bust: Bust | 80 84", "hip: Hip | 86 90"]]);
    expect(issues).toEqual([]);
  });
});
