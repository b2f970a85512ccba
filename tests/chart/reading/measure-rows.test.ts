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

const BODY = "Body measurements (cm)";
const FINISHED = "Finished measurements (cm)";
const tablesOf = (...lines: string[]) => paste(sheet(...lines)).tables;
const issuesOf = (...lines: string[]) => paste(sheet(...lines)).issues;

describe("measureReadings on rows of one place in two units", () => {
  const inBoth = [
    ["body in | 8 10 12", "24 25 26"],
    ["body cm | 8 10 12", "61 64 66"],
  ];
  const cmFirst = [inBoth[1]!, inBoth[0]!];
  // 24, 25 and 26 in are 61, 63.5 and 66 cm: the numbers say which unit is which, whatever is printed above both.
  it.each([
    ["Body measurements (in)", "Waist|24|25|26", "Waist|61|64|66", inBoth],
    ["Body measurements (in)", "Waist|61|64|66", "Waist|24|25|26", cmFirst],
    [BODY, "Waist|24|25|26", "Waist (cm)|61|64|66", inBoth],
    [BODY, "Waist|24|25|26", "Waist|61|64|66", inBoth],
    [BODY, "Waist (cm)|61|64|66", "Waist (cm)|24|25|26", cmFirst],
    [BODY, "Waist (in)|61|64|66", "Waist|24|25|26", cmFirst],
    ["Body measurements", "Waist|24|25|26", "Waist (cm)|61|64|66", inBoth],
    ["Body measurements", "Waist|24|25|26", "Waist|61 cm|64 cm|66 cm", inBoth],
    [BODY, "Waist|61|64|66", "in:|24|25|26", cmFirst],
    [BODY, "Waist|61|64|66", "|24 in|25 in|26 in", cmFirst],
  ])("%s: %s, %s", (heading, first, second, expected) => {
    const tables = tablesOf(heading, sizes, first, second);
    expect(tables.map(([head, row]) => [head, row!.split(" | ")[1]])).toEqual(expected);
    expect(issuesOf(heading, sizes, first, second).filter((issue) => issue.includes("same length"))).toEqual([]);
  });
  it.each([
    ["Waist (in)|61|64|66", "Waist (cm)|24|25|26", ["61 in", "24 cm"]],
    ["Waist (in)|61|64|66", "Waist|24 cm|25 cm|26 cm", ["61 in", "24 cm"]],
    ["Waist (cm)|61|64|66", "Waist (in)|30|32|34", ["61 cm", "30 in"]],
    ["Waist (cm)|61|64|66", "in:|30|32|34", ["61 cm", "30 in"]],
  ])("keeps the units that both rows print and says that they aren't the same length: %s, %s", (first, second, at) => {
    expect(issuesOf("Body measurements", sizes, first, second)).toContain(
      `4:2 warning (waist, 8) ${doubts.unitsApart(at[0]!, at[1]!)}`,
    );
  });
  it("says nothing of a size that has one of the two only", () => {
    expect(issuesOf(BODY, sizes, "Waist|61|-|66", "Waist (in)|24|25|26")).toEqual([]);
    expect(issuesOf(BODY, sizes, "Waist|61|64|66", "Waist (in)|24|-|26")).toEqual([]);
  });
  // One in 2.54: 60 and 152, though not of one view; 61 cm and 26 in, though not of one kind; three times is no unit.
  it.each([
    [FINISHED, ["Bust A|60|61|62", "Bust B|152|155|157"], [["finished cm | 8 10 12", "bust A: Bust A | 60 61 62", "bust B: Bust B | 152 155 157"]]],
    ["Finished measurements", ["Bust A|90|94|98", "Bust A|35.5|37|38.5"], [["finished cm | 8 10 12", "bust A: Bust A | 90 94 98"], ["finished in | 8 10 12", "bust A: Bust A | 35.5 37 38.5"]]],
    [BODY, ["Hip|30|31|32", "Hip|90|93|96"], [["body cm | 8 10 12", "hip: Hip | 30 31 32", "hip: Hip | 90 93 96"]]],
    [BODY, ["Hip|90|93|96", "Hip|30|31|32"], [["body cm | 8 10 12", "hip: Hip | 90 93 96", "hip: Hip | 30 31 32"]]],
  ])("pairs rows of one view in that proportion only, below %s: %j", (heading, lines, expected) => {
    expect(tablesOf(heading, sizes, ...lines)).toEqual(expected);
  }); // prettier-ignore
  it("compares no finished measurement with the body's", () => {
    expect(issuesOf(sizes, "Waist (cm)|61|64|66", "Finished waist (in)|26|27|28")).toEqual([
      `1 warning ${doubts.noHeading()}`,
    ]);
  });
});

describe("measureReadings on figures without a label", () => {
  it.each([
    // In another proportion than 2.54, or with nothing right above.
    ["Body measurements", ["Waist|24|25|26", "|80|83|86"]],
    ["Body measurements", ["Waist|80|83|86", "|24|25|26"]],
    [BODY, ["*** |33|34|35"]],
    [BODY, ["cm|61|62|63"]],
    // Heights below a waist stand nearly in that proportion, but the heading's centimetres are no inches.
    [BODY, ["Waist|61|64|66", "|150|160|165"]],
    // A view alone, first in its table, and first below other sizes.
    [FINISHED, ["A:|91|95|99"]],
  ])("leaves them out below %s: %j", (heading, lines) => {
    const { tables, issues } = paste(sheet(heading, sizes, "Hip|90|94|98", "", ...lines.slice(0, -1), lines.at(-1)!));
    expect(issues).toContain(`${4 + lines.length} error ${doubts.noLabel()}`);
    expect(tables).toHaveLength(1);
    expect(tables[0]).toHaveLength(1 + lines.length);
  });
  it.each([
    ["in:|24|25|26", false],
    ["|24 in|25 in|26 in", false],
    ["|24|25|26", true],
  ])("doubts the other unit below a heading of one when no unit is printed: %s", (line, isDoubted) => {
    const issues = issuesOf(BODY, sizes, "Waist|61|64|66", line);
    expect(issues).toEqual(isDoubted ? [`4 warning ${doubts.namelessPair()}`] : []);
  });
});

describe("measureReadings on words of a row", () => {
  it.each([
    // Finished measurements say so in front, behind, or in brackets, below a heading of the body too.
    [BODY, "Finished bust", "finished bust"],
    [BODY, "(Finished) bust", "finished bust"],
    [BODY, "Bust, finished", "finished bust"],
    [BODY, "Bust (garment)", "finished bust"],
    [BODY, "Brustumfang fertig", "finished bust"],
    [BODY, "Tour de poitrine fini", "finished bust"],
    [BODY, "Semi-finished bust", "body Semi-finished bust"],
    [BODY, "Bust to finishing line", "body Bust to finishing line"],
    // Views are those of garments.
    [BODY, "Bust A", "body bust"],
    [FINISHED, "Bust A", "finished bust A"],
    [FINISHED, "A: Bust", "finished bust A"],
    [FINISHED, "A - Hip", "finished hip A"],
    [FINISHED, "*Bust†", "finished bust"],
    // A depth below the waist is no unit of the row, however its inches are printed.
    [BODY, 'Hip 9½" below waist', "body hip"],
    [BODY, "Hip 9'' below waist", "body hip"],
    [BODY, "Hip 9 inch below waist", "body hip"],
    ["Men's body measurements (cm)", "High bust", "body highBust"],
    ["Men's body measurements (cm)", "Hip", "body hip"],
  ])("%s, %s: %s", (heading, label, expected) => {
    const [table, ...more] = tablesOf(heading, sizes, `${label}|90|94|98`);
    expect(more).toEqual([]);
    const [head, row] = table!;
    expect(head).toMatch(/ cm \| 8 10 12$/);
    expect(`${head!.split(" ")[0]!} ${row!.split(": ")[0]!}`).toBe(expected);
    expect(row).toMatch(/ \| 90 94 98$/);
  });
  it("knows garments by other words where no heading names the body", () => {
    expect(tablesOf(sizes, "Bust (cm)|80|84|88", "Kleidungsstück Brust (cm)|90|94|98").map(([head]) => head)).toEqual([
      "body cm | 8 10 12",
      "finished cm | 8 10 12",
    ]);
  });
  it("takes the label where the column of measurements is blank", () => {
    expect(tablesOf(BODY, "Name|Measurement|8|10", "Bust||80|84", "x|Waist|61|64")[0]!.slice(1)).toEqual([
      "bust: Bust | 80 84",
      "waist: x Waist | 61 64",
    ]);
  });
  it("takes a column of views that says all for no view", () => {
    expect(tablesOf(FINISHED, "Measurement|View|8|10", "Bust|A|90|94", "Hip|all|95|99")[0]!.slice(1)).toEqual([
      "bust A: Bust A | 90 94",
      "hip: Hip all | 95 99",
    ]);
  });
  it("reads a place or a view behind the figures", () => {
    const text = page(FINISHED, "Size  8  10  12", "Tour x 90 94 98 Bust", "Hip 95 99 103 A, B", "Gusset 9 9.5 10 cm");
    expect(paste(text).tables[0]!.slice(1)).toEqual([
      "bust: Tour x | 90 94 98",
      "hip A: Hip | 95 99 103",
      "hip B: Hip | 95 99 103",
      "Gusset: Gusset | 9 9.5 10",
    ]);
    expect(paste(page(BODY, "Size  8  10  12", "Hip 95 99 103 A")).tables[0]!.slice(1)).toEqual([
      "hip: Hip | 95 99 103",
    ]);
  });
  it("gives no body measurement the view above it, nor a view below other sizes the place above those", () => {
    expect(tablesOf(BODY, "View A", sizes, "Bust|80|84|88")).toEqual([["body cm | 8 10 12", "bust: Bust | 80 84 88"]]);
    const { tables, issues } = paste(
      sheet(FINISHED, sizes, "Back length A|60|61|62", "", "Size|14|16|18", "B|70|71|72", "Bust|90|91|92"),
    );
    expect(tables.map(([head]) => head)).toEqual(["finished cm | 8 10 12", "finished cm | 14 16 18"]);
    expect(issues).toEqual([`6 error ${doubts.noLabel()}`]);
  });
  it("reads metres where the heading of measurements names them, and none of cloth above", () => {
    expect(tablesOf("Body measurements (m)", sizes, "Height|1.60|1.64|1.68")).toEqual([
      ["body cm | 8 10 12", "height: Height | 160 164 168"],
    ]);
    const cloth = ["Fabric required (m)", sizes, "115 cm|2|2.1|2.2"];
    expect(tablesOf(...cloth, "Finished back length|160|161|162")[1]).toEqual([
      "finished cm | 8 10 12", "backLength: Finished back length | 160 161 162",
    ]); // prettier-ignore
  });
});
