import { describe, expect, it } from "vitest";
import { doubts } from "../../src/words/reading";
import { page, paste, sheet } from "./paste";

// All figures are invented or common practice.
describe("readCharts on rows of measurements", () => {
  it("takes the words behind the figures for the label when none stand before them", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|34|36|38", "|80|84|88|Bust", "|86|90|94|Hip"),
    );
    expect(tables).toEqual([["body cm | 34 36 38", "bust: Bust | 80 84 88", "hip: Hip | 86 90 94"]]);
    expect(issues).toEqual([]);
  });
  it("takes a place from a translation behind the figures", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|34|36", "Brystmål|80|84|Bust", "Yoke|30|31|cm", "Kneebone|30|31|as worn"),
    );
    expect(tables).toEqual([
      ["body cm | 34 36", "bust: Brystmål | 80 84", "Yoke: Yoke | 30 31", "Kneebone: Kneebone | 30 31"],
    ]);
    expect(issues).toEqual([
      `4 warning (Yoke) ${doubts.unknownPlace("Yoke")}`,
      `5 warning (Kneebone) ${doubts.unknownPlace("Kneebone")}`,
    ]);
  });
  it("says when the last figure of a row may be an inch mark", () => {
    const { tables, issues } = paste(
      page("Body measurements (in)", "Size 8 10 12 14", 'Bust 31 32 33 "', "Hip 33 34 36 38"),
    );
    expect(tables).toEqual([["body in | 8 10 12 14", "bust: Bust | 31 32 33 33", "hip: Hip | 33 34 36 38"]]);
    expect(issues).toEqual([`3 warning (bust) ${doubts.dittoUnsure()}`]);
  });
  it("reads a view from its column: one, several, all, or a name", () => {
    const { tables, issues } = paste(
      sheet(
        "Finished measurements (in)",
        "Measurement|View|8|10",
        "Bust|A|36|37",
        "Bust|B, C|38|39",
        "Hip|all views|40|41",
        "Back length|Short|20|21",
        "Hem width||50|51",
      ),
    );
    expect(tables).toEqual([
      [
        "finished in | 8 10",
        "bust A: Bust A | 36 37",
        "bust B: Bust B, C | 38 39",
        "bust C: Bust B, C | 38 39",
        "hip: Hip all views | 40 41",
        "backLength Short: Back length Short | 20 21",
        "hemWidth: Hem width | 50 51",
      ],
    ]);
    expect(issues).toEqual([]);
  });
  it("names the sizes under which a row in columns has nothing", () => {
    const { tables, issues } = paste(
      page("Body measurements (in)", "Size    8     10    12    14", "Bust    31          34    36", "Hip     33    34    36    38"),
    ); // prettier-ignore
    expect(tables).toEqual([["body in | 8 10 12 14", "bust: Bust | 31 - 34 36", "hip: Hip | 33 34 36 38"]]);
    expect(issues).toEqual([`3 warning (bust, 10) ${doubts.placed("Bust", ["10"])}`]);
  });
  it("takes a row that calls itself finished for one, with and without a heading", () => {
    const bare = paste(sheet("Size|8|10", "Bust|31 1/2|32 1/2", "Finished bust|36|37"));
    expect(bare.tables).toEqual([
      ["body in | 8 10", "bust: Bust | 31.5 32.5"],
      ["finished in | 8 10", "bust: Finished bust | 36 37"],
    ]);
    const headed = paste(sheet("Body measurements (in)", "Size|8|10", "Hip|33 1/2|34 1/2", "Finished hip|38|39"));
    expect(headed.tables).toEqual([
      ["body in | 8 10", "hip: Hip | 33.5 34.5"],
      ["finished in | 8 10", "hip: Finished hip | 38 39"],
    ]);
    expect(headed.issues).toEqual([]);
  });
  it("takes measurements below fabric for finished ones where only a garment has the place, and says so", () => {
    const { tables, issues } = paste(
      sheet("Fabric", "Size|8|10", 'View A 45"|2|2 1/8', "Back length|24|24 1/4", "Hem width|40|41"),
    );
    expect(tables).toEqual([
      ["fabric yd | 8 10", "A, main, 45 in, nap? | 2 2.125"],
      ["finished in | 8 10", "backLength: Back length | 24 24.25", "hemWidth: Hem width | 40 41"],
    ]);
    expect(issues).toEqual([
      `4 warning ${doubts.kindGuessed("finished")}`,
      `4 warning ${doubts.unitFromNumbers("inches")}`,
    ]);
  });
  it("takes them for body measurements where a body has the place", () => {
    const { tables, issues } = paste(sheet("Fabric", "Size|8|10", 'View A 45"|2|2 1/8', "Bust|31 1/2|32 1/2"));
    expect(tables).toEqual([
      ["fabric yd | 8 10", "A, main, 45 in, nap? | 2 2.125"],
      ["body in | 8 10", "bust: Bust | 31.5 32.5"],
    ]);
    expect(issues).toEqual([
      `4 warning ${doubts.kindGuessed("body")}`,
      `4 warning ${doubts.unitFromNumbers("inches")}`,
    ]);
  });
  it("gives rows the view of their heading", () => {
    const { tables, issues } = paste(
      sheet("Finished measurements View A (in)", "Size|8|10", "Bust|36|37", "View B, C", "Bust|38|39", "All views", "Hip|40|41"),
    ); // prettier-ignore
    expect(tables).toEqual([
      [
        "finished in | 8 10",
        "bust A: Bust | 36 37",
        "bust B: Bust | 38 39",
        "bust C: Bust | 38 39",
        "hip: Hip | 40 41",
      ],
    ]);
    expect(issues).toEqual([]);
  });
  it("gives a view in a label, and all of them", () => {
    const { tables } = paste(
      sheet("Finished measurements (in)", "Size|8|10", "Bust, view A|36|37", "View B|38|39", "Hip all views|40|41", "Yoke depth, view A|5|6"),
    ); // prettier-ignore
    expect(tables).toEqual([
      [
        "finished in | 8 10",
        "bust A: Bust, view A | 36 37",
        "bust B: View B | 38 39",
        "hip: Hip all views | 40 41",
        "Yoke depth A: Yoke depth, view A | 5 6",
      ],
    ]);
  });
  it("turns metres of height and yards of hem into the units of a body", () => {
    const { tables, issues } = paste(
      sheet("Finished measurements", "Size|34|36|38", "Length (m)|1.20|-|1.24", "Hip (cm)|96|100|104"),
    );
    expect(tables[0]?.[0]).toBe("finished cm | 34 36 38");
    expect(tables[0]?.slice(1).map((row) => row.split(" | ")[1])).toEqual(["120 - 124", "96 100 104"]);
    expect(issues.filter((issue) => issue.includes("error"))).toEqual([]);
    const yards = paste(sheet("Finished measurements (in)", "Size|8|10", "Hem width (yds)|2|2 1/4", "Hip|38|39"));
    expect(yards.tables).toEqual([["finished in | 8 10", "hemWidth: Hem width (yds) | 72 81", "hip: Hip | 38 39"]]);
    expect(yards.issues).toEqual([]);
  });
  it("leaves out weights, and rows with no figure at all", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|34|36", "Weight|50|55", "Waist|=A1|=B1", "Bust|80|84"),
    );
    expect(tables).toEqual([["body cm | 34 36", "bust: Bust | 80 84"]]);
    expect(issues).toEqual([
      `3 warning ${doubts.notALength("Weight")}`,
      `4:2 error (waist, 34) ${doubts.formulaFigure("=A1")}`,
      `4:3 error (waist, 36) ${doubts.formulaFigure("=B1")}`,
    ]);
  });
  it("leaves out a row whose label a sheet could run", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)", "Size|34|36", "=SUM(A1)|50|55", "@waist|62|66", "- Hip|86|90", "Bust|80|84"),
    );
    expect(tables).toEqual([["body cm | 34 36", "bust: Bust | 80 84"]]);
    expect(issues).toEqual([
      `3 error ${doubts.formulaLabel("=SUM(A1)")}`,
      `4 error ${doubts.formulaLabel("@waist")}`,
      `5 error ${doubts.formulaLabel("- Hip")}`,
    ]);
  });
  it("gives a row that says no unit the one of the others, or says that it can't know", () => {
    const others = paste(sheet("Body measurements", "Size|8|10", "Bust (cm)|80|84", "Yoke|30|31"));
    expect(others.tables).toEqual([["body cm | 8 10", "bust: Bust (cm) | 80 84", "Yoke: Yoke | 30 31"]]);
    expect(others.issues).toEqual([
      `4 warning (Yoke) ${doubts.unknownPlace("Yoke")}`,
      `4 warning ${doubts.unitFromNumbers("centimetres")}`,
    ]);
    const none = paste(sheet("Body measurements", "Size|8|10", "Yoke|30|31"));
    expect(none.tables).toEqual([["body in | 8 10", "Yoke: Yoke | 30 31"]]);
    expect(none.issues).toEqual([
      `3 warning (Yoke) ${doubts.unknownPlace("Yoke")}`,
      `3 warning ${doubts.unitUnsure("inches")}`,
    ]);
    const heights = paste(sheet("Body measurements", "Size|86|92", "Yoke|30|31"));
    expect(heights.tables[0]?.[0]).toBe("body cm | 86 92");
    expect(heights.issues[1]).toBe(`3 warning ${doubts.unitUnsure("centimetres")}`);
  });
  it("names a place that stands twice, with its view", () => {
    const { issues } = paste(
      sheet("Finished measurements (in)", "Size|8|10", "Bust, view A|36|37", "Bust, view A|40|41", "Waist|30|31", "Waist|34|35"),
    ); // prettier-ignore
    expect(issues).toEqual([
      `4 warning (bust, A) ${doubts.repeatedPlace("bust")}`,
      `6 warning (waist) ${doubts.repeatedPlace("waist")}`,
    ]);
  });
  it("names a garment smaller than the body, only at sizes and places that both tables have", () => {
    const { issues } = paste(
      sheet("Body measurements (in)", "Size|8|10", "Bust|31|33", "Waist|24|25", "Finished measurements (in)", "Size|10|12", "Bust|32|38", "Hip|30|31", "Waist|25|25"),
    ); // prettier-ignore
    expect(issues).toEqual([`7:2 warning (bust, 10) ${doubts.bodyLarger("bust", "33 in", "32 in")}`]);
  });
});
