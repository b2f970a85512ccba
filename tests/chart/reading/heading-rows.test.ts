import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

// All figures are invented, in common-practice steps.
const FABRIC = "Fabric required (yd)";
const amounts = '45"\t2\t2 1/8';

describe("readUnits", () => {
  it("gives each column the unit below its size", () => {
    expect(
      paste(sheet("Body measurements", "Size|8|8|10|10", "|in|cm|in|cm", "Bust|32|81|33|84", "Waist|25|63.5|26|66")),
    ).toEqual({
      tables: [
        ["body in | 8 10", "bust: Bust | 32 33", "waist: Waist | 25 26"],
        ["body cm | 8 10", "bust: Bust | 81 84", "waist: Waist | 63.5 66"],
      ],
      issues: [],
    });
  });
  it("gives the columns of a block the unit above its first size", () => {
    expect(paste(sheet("Body measurements", "|in||cm|", "Size|8|10|8|10", "Bust|32|33|81|84"))).toEqual({
      tables: [
        ["body in | 8 10", "bust: Bust | 32 33"],
        ["body cm | 8 10", "bust: Bust | 81 84"],
      ],
      issues: [],
    });
  });
  it("takes no lone unit between figures for a row of units", () => {
    expect(paste(sheet("Body measurements (cm)", "Size|34|36", "Bust|80|84|cm", "Waist|62|66|cm")).tables).toEqual([
      ["body cm | 34 36", "bust: Bust | 80 84", "waist: Waist | 62 66"],
    ]);
  });
});

describe("readLineHeading", () => {
  it("takes the unit from a sentence about all figures, unless a heading named one", () => {
    const rows = ["Size|98|104", "Wrist|13|13.5"];
    expect(paste(sheet("Body measurements", "All measurements are given in centimetres.", ...rows)).issues).toEqual([]);
    expect(
      paste(sheet("Body measurements", "All measurements are given in centimetres.", ...rows)).tables[0]![0],
    ).toContain("body cm");
    expect(
      paste(sheet("Body measurements (in)", "All sizes are in centimetres, too", "Size|8|10", "Bust|32|33"))
        .tables[0]![0],
    ).toBe("body in | 8 10");
  });
  it("gives a heading's own view to finished rows, and ends it at the next heading", () => {
    const rows = ["Size|8|10", "Back length|22|22 1/2"];
    expect(
      paste(sheet("Finished measurements View A (in)", ...rows, "Finished measurements (in)", "Hem|50|51")).tables,
    ).toEqual([["finished in | 8 10", "backLength A: Back length | 22 22.5", "hemWidth: Hem | 50 51"]]);
  });
  it("gives a view on a line of its own to the finished rows below it", () => {
    const rows = ["Size|8|10", "View A", "Back length|22|22 1/2", "View B, C", "Back length|32|32 1/2"];
    expect(paste(sheet("Finished measurements (in)", ...rows)).tables[0]!.slice(1)).toEqual([
      "backLength A: Back length | 22 22.5",
      "backLength B: Back length | 32 32.5",
      "backLength C: Back length | 32 32.5",
    ]);
  });
});

describe("readViewHeading on cloth", () => {
  const cloth = (...lines: string[]) => paste(sheet(FABRIC, "Size\t8\t10", ...lines));
  it("gives views, part, width and nap to the rows below, until another line says otherwise", () => {
    expect(cloth("View A", amounts, "Lining", '60"\t1\t1 1/8', "View B", amounts).tables[0]!.slice(1)).toEqual([
      "A, main, 45 in, nap? | 2 2.125",
      "A, lining, 60 in, nap? | 1 1.125",
      // A new view begins with its main fabric.
      "B, main, 45 in, nap? | 2 2.125",
    ]);
    expect(cloth("With nap", amounts, "Without nap", '60"\t1\t1 1/8').tables[0]!.slice(1)).toEqual([
      "no view, main, 45 in, with | 2 2.125",
      "no view, main, 60 in, without | 1 1.125",
    ]);
    expect(cloth('45" wide', "A\t2\t2 1/8", '60" wide', "A\t1\t1 1/8").tables[0]!.slice(1)).toEqual([
      "A, main, 45 in, nap? | 2 2.125",
      "A, main, 60 in, nap? | 1 1.125",
    ]);
    expect(cloth("Lining", amounts, "Main fabric", '60"\t1\t1 1/8').tables[0]!.slice(1)).toEqual([
      "no view, lining, 45 in, nap? | 2 2.125",
      "no view, main, 60 in, nap? | 1 1.125",
    ]);
  });
  it("gives all views to the rows below a line that says so", () => {
    expect(
      cloth("View A", amounts, "View B", '45"\t3\t3 1/8', "All views", 'Interfacing 20"\t1\t1').tables[0]!.slice(1),
    ).toEqual([
      "A, main, 45 in, nap? | 2 2.125",
      "B, main, 45 in, nap? | 3 3.125",
      "A, interfacing, 20 in, nap? | 1 1",
      "B, interfacing, 20 in, nap? | 1 1",
    ]);
  });
  it("takes no line of notions, of prose or of figures for what the rows below are for", () => {
    const wanted = ["A, main, 45 in, nap? | 2 2.125", "no view, main, 60 in, nap? | 1 1.125"];
    for (const line of [
      "Buttons for lining",
      "The lining is cut from the pieces of the front and back too",
      "Line the bodice with lining;",
    ])
      expect(cloth(line, `A ${amounts}`).tables[0]!.slice(1), line).toEqual(wanted.slice(0, 1));
  });
  it("lets no heading that a sheet could run name anything", () => {
    const { tables } = cloth("=View A", amounts);
    expect(JSON.stringify(tables)).not.toContain("=");
  });
  it("says so when two rows have nothing to tell them apart", () => {
    expect(cloth(amounts, amounts).issues).toEqual([`4 warning ${doubts.repeatedCloth('45"')}`]);
  });
  it("reads a second heading of cloth anew", () => {
    const lines = page(FABRIC, "Size\t8\t10", "View A", "Lining", amounts, "Fabric required (m)", "115 cm\t2\t2.1");
    expect(paste(lines).tables).toEqual([
      ["fabric yd | 8 10", "A, lining, 45 in, nap? | 2 2.125"],
      ["fabric m | 8 10", "no view, main, 115 cm, nap? | 2 2.1"],
    ]);
  });
});
