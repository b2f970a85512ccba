import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

// All figures are invented, in common-practice steps; 1 in is 2.54 cm.
const sizes = "Size|8|10|12";

describe("measureReadings in two units", () => {
  it("says so when the two units of one cell are not the same length", () => {
    const row = "Bust|32 in (81 cm)|34 in (96 cm)|36 in (91 cm)";
    const { tables, issues } = paste(sheet("Body measurements", sizes, row));
    expect(tables).toEqual([
      ["body in | 8 10 12", "bust: Bust | 32 34 36"],
      ["body cm | 8 10 12", "bust: Bust | 81 96 91"],
    ]);
    // 34 in is 86.4 cm: two digits were turned round.
    expect(issues).toContain(`3:3 warning (bust, 10) ${doubts.unitsApart("34 in", "96 cm")}`);
    expect(issues.filter((issue) => issue.includes("same length"))).toHaveLength(1);
  });
  it("says so when a row of centimetres below one of inches is not the same length", () => {
    const rows = ["Waist (in)|24|25|26", "Waist (cm)|61|63.5|76"];
    const { tables, issues } = paste(sheet("Body measurements", sizes, ...rows));
    expect(tables).toEqual([
      ["body in | 8 10 12", "waist: Waist (in) | 24 25 26"],
      ["body cm | 8 10 12", "waist: Waist (cm) | 61 63.5 76"],
    ]);
    // 26 in is 66 cm.
    expect(issues).toEqual([`4:4 warning (waist, 12) ${doubts.unitsApart("26 in", "76 cm")}`]);
  });
  it.each([
    ["|61|64|66", []],
    // The row above named no unit of its own.
    ["cm|61|64|66", [`3 warning ${doubts.unitFromNumbers("inches")}`]],
  ])("takes figures below a row for its other unit: %s", (below, issues) => {
    expect(paste(sheet("Body measurements", sizes, "Waist|24|25|26", below))).toEqual({
      tables: [
        ["body in | 8 10 12", "waist: Waist | 24 25 26"],
        ["body cm | 8 10 12", "waist: Waist | 61 64 66"],
      ],
      issues,
    });
  });
  it("knows inches below centimetres too", () => {
    expect(paste(sheet("Body measurements", sizes, "Waist|61|64|66", "|24|25|26"))).toEqual({
      tables: [
        ["body cm | 8 10 12", "waist: Waist | 61 64 66"],
        ["body in | 8 10 12", "waist: Waist | 24 25 26"],
      ],
      issues: [],
    });
  });
  it("believes the numbers when both rows are headed by one unit", () => {
    const rows = ["Waist|61|64|66", "Waist|24|25|26"];
    expect(paste(sheet("Body measurements (in)", sizes, ...rows)).tables).toEqual([
      ["body cm | 8 10 12", "waist: Waist | 61 64 66"],
      ["body in | 8 10 12", "waist: Waist | 24 25 26"],
    ]);
  });
  it("takes nothing below a row for its other unit that isn't in that proportion", () => {
    expect(paste(sheet("Body measurements (in)", sizes, "Waist|24|25|26", "|33|34|35"))).toEqual({
      tables: [["body in | 8 10 12", "waist: Waist | 24 25 26"]],
      issues: [`4 error ${doubts.noLabel()}`],
    });
  });
});

describe("measureReadings on a second figure in brackets", () => {
  it("never takes girths for yards and metres, whatever stands beside them", () => {
    const { tables, issues } = paste(sheet("Body measurements (in)", sizes, "Hip|33|34|36 (37)"));
    expect(tables).toEqual([["body in | 8 10 12", "hip: Hip | 33 34 36", "hip: Hip | - - 37"]]);
    expect(issues).toEqual([`3 warning (hip) ${doubts.repeatedPlace("hip")}`]);
  });
});

describe("measureReadings on units of other lengths", () => {
  it("turns metres of height into centimetres and yards of hem into inches", () => {
    expect(paste(sheet("Body measurements (cm)", sizes, "Height (m)|1.60|1.64|1.68", "Bust|80|84|88"))).toEqual({
      tables: [["body cm | 8 10 12", "height: Height (m) | 160 164 168", "bust: Bust | 80 84 88"]],
      issues: [],
    });
    expect(paste(sheet("Finished measurements (in)", sizes, "Hem width (yd)|2|2 1/4|2 1/2")).tables).toEqual([
      ["finished in | 8 10 12", "hemWidth: Hem width (yd) | 72 81 90"],
    ]);
  });
  it("doesn't take the inches that say where the tape goes for the row's unit", () => {
    expect(paste(sheet("Body measurements (cm)", sizes, `Hip 9" below waist|86|90|94`))).toEqual({
      tables: [["body cm | 8 10 12", `hip: Hip 9" below waist | 86 90 94`]],
      issues: [],
    });
  });
  it("believes a row's own unit before the heading's", () => {
    expect(paste(sheet("Body measurements (cm)", sizes, "Bust (in)|32|34|36", "Waist|61|64|66")).tables).toEqual([
      ["body in | 8 10 12", "bust: Bust (in) | 32 34 36"],
      ["body cm | 8 10 12", "waist: Waist | 61 64 66"],
    ]);
    expect(
      paste(sheet("Body measurements (cm)", "Measurement|Unit|8|10", "Bust|in|32|34", "Waist|cm|61|64")).tables,
    ).toEqual([
      ["body in | 8 10", "bust: Bust | 32 34"],
      ["body cm | 8 10", "waist: Waist | 61 64"],
    ]);
    expect(
      paste(page("Body measurements (cm)", "Size 8 10 12", "Bust 32 34 36 ins", "Waist 61 64 66 cm")).tables,
    ).toEqual([
      ["body in | 8 10 12", "bust: Bust | 32 34 36"],
      ["body cm | 8 10 12", "waist: Waist | 61 64 66"],
    ]);
  });
  it.each(["Weight", "Weight (kg)", "Cup", "Gewicht", "Poids"])("leaves out %s, which is no length", (label) => {
    expect(paste(sheet("Body measurements (cm)", sizes, "Bust|80|84|88", `${label}|50|55|60`))).toEqual({
      tables: [["body cm | 8 10 12", "bust: Bust | 80 84 88"]],
      issues: [`4 warning ${doubts.notALength(label)}`],
    });
  });
});

describe("measureReadings on kinds and views", () => {
  it("says once that no heading names the kind", () => {
    expect(paste(sheet(sizes, "Bust (cm)|80|84|88", "Waist (cm)|61|64|66")).issues).toEqual([
      `1 warning ${doubts.noHeading()}`,
    ]);
  });
  it("finds finished rows under no heading by their own words", () => {
    expect(paste(sheet(sizes, "Bust (cm)|80|84|88", "Finished bust (cm)|90|94|98")).tables).toEqual([
      ["body cm | 8 10 12", "bust: Bust (cm) | 80 84 88"],
      ["finished cm | 8 10 12", "bust: Finished bust (cm) | 90 94 98"],
    ]);
  });
  it("begins finished measurements below cloth with a place that only a garment has", () => {
    const cloth = ["Fabric required (m)", sizes, "115 cm|2|2.1|2.2"];
    expect(paste(sheet(...cloth, "Back length (cm)|60|61|62"))).toEqual({
      tables: [
        ["fabric m | 8 10 12", "no view, main, 115 cm, nap? | 2 2.1 2.2"],
        ["finished cm | 8 10 12", "backLength: Back length (cm) | 60 61 62"],
      ],
      issues: [`4 warning ${doubts.kindGuessed("finished")}`],
    });
  });
  it("gives a view letter alone in its row the place above", () => {
    expect(paste(sheet("Finished measurements (cm)", sizes, "Back length A|60|61|62", "B|70|71|72")).tables).toEqual([
      ["finished cm | 8 10 12", "backLength A: Back length A | 60 61 62", "backLength B: B | 70 71 72"],
    ]);
  });
  it("takes the views of a headed column", () => {
    expect(
      paste(
        sheet("Finished measurements (cm)", "Measurement|View|8|10", "Bust|A, B|90|94", "Hip|C|95|99", "Hem||50|51"),
      ).tables,
    ).toEqual([
      [
        "finished cm | 8 10",
        "bust A: Bust A, B | 90 94",
        "bust B: Bust A, B | 90 94",
        "hip C: Hip C | 95 99",
        "hemWidth: Hem | 50 51",
      ],
    ]);
  });
  it("keeps the words of an unknown place and says so", () => {
    expect(paste(sheet("Body measurements (cm)", sizes, "Gusset|10|11|12", "Gusset|20|21|22")).issues).toEqual([
      `3 warning (Gusset) ${doubts.unknownPlace("Gusset")}`,
      `4 warning (Gusset) ${doubts.unknownPlace("Gusset")}`,
      `4 warning (Gusset) ${doubts.repeatedPlace("Gusset")}`,
    ]);
  });
  it("calls the bust of a men's or child's chart the chest, but not a high bust", () => {
    expect(
      paste(sheet("Men's body measurements (cm)", sizes, "Brustumfang|90|94|98", "Bust|90|94|98")).tables[0]!.slice(1),
    ).toEqual(["chest: Brustumfang | 90 94 98", "bust: Bust | 90 94 98"]);
    expect(
      paste(sheet("Body measurements (cm)", "Size|98|104|110", "Brustumfang|55|56|58")).tables[0]!.slice(1),
    ).toEqual(["chest: Brustumfang | 55 56 58"]);
  });
});

describe("measureReadings on figures that lost their label", () => {
  it("says so when they could be the row above in a unit that the heading doesn't name", () => {
    const lines = ["Body measurements (cm)", "Size|3-6M|6-9M|9-12M", "High bust|69.5|70.5|71.5", "|27.5|28|28.5"];
    expect(paste(sheet(...lines)).issues).toEqual([`4 warning ${doubts.namelessPair()}`]);
  });
  it("takes a waist in French with a figure too few for no row of sizes", () => {
    const lines = ["Mesures (cm)", "Taille|34|36|38", "Poitrine|80|84|88", "Taille|60|64", "Hanches|86|90|94"];
    expect(paste(sheet(...lines))).toEqual({
      tables: [["body cm | 34 36 38", "bust: Poitrine | 80 84 88", "hip: Hanches | 86 90 94"]],
      issues: [`4 error (waist) ${doubts.count("Taille", 2, 3)}`],
    });
  });
});
