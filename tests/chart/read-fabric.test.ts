import { describe, expect, it } from "vitest";
import { doubts } from "../../src/words/reading";
import { page, paste, sheet } from "./paste";

// All amounts are invented; 1 yd = 36 in = 0.9144 m, and 45 in is sold as 115 cm (common practice, no source).
describe("readCharts on rows of fabric", () => {
  it("takes figures without a label for the row above in the other unit, when they name it", () => {
    const { tables, issues } = paste(sheet("Fabric", "Size|8|10|12", '45"|2 1/8|2 1/4|2 3/8|yd', "|1.9|2.1|2.2|m"));
    expect(tables).toEqual([
      ["fabric yd | 8 10 12", "no view, main, 45 in, nap? | 2.125 2.25 2.375"],
      ["fabric m | 8 10 12", "no view, main, 45 in, nap? | 1.9 2.1 2.2"],
    ]);
    expect(issues).toEqual([]);
  });
  it("leaves out figures without a label that say no other unit", () => {
    const { tables, issues } = paste(sheet("Fabric", "Size|8|10|12", '45"|2 1/8|2 1/4|2 3/8|yd', "|1|1 1/8|1 1/4|yd"));
    expect(tables).toEqual([["fabric yd | 8 10 12", "no view, main, 45 in, nap? | 2.125 2.25 2.375"]]);
    expect(issues).toEqual([`4 error ${doubts.noLabel()}`]);
  });
  it("takes figures without a label for the row above when each cell names the other unit", () => {
    const { tables, issues } = paste(
      sheet("Fabric", "Size|8|10|12", '45"|2 1/8 yd|2 1/4 yd|2 3/8 yd', "|1.9 m|2.1 m|2.9 m"),
    );
    expect(tables).toEqual([
      ["fabric yd | 8 10 12", "no view, main, 45 in, nap? | 2.125 2.25 2.375"],
      ["fabric m | 8 10 12", "no view, main, 45 in, nap? | 1.9 2.1 2.9"],
    ]);
    expect(issues).toEqual([`4:4 warning (12) ${doubts.unitsApart("2.375 yd", "2.9 m")}`]);
  });
  it("pairs a metre row with the yard row under it, and compares what both print", () => {
    const { tables, issues } = paste(
      sheet("Fabric", "Size|8|10|12|14", "View A, lining 115 cm|1.95|2.10|-|2.50", '45"|2 1/8|2 1/4|2 3/8|3'),
    );
    expect(tables).toEqual([
      ["fabric m | 8 10 12 14", "A, lining, 115 cm, nap? | 1.95 2.1 - 2.5"],
      ["fabric yd | 8 10 12 14", "A, lining, 45 in, nap? | 2.125 2.25 2.375 3"],
    ]);
    // 3 yd is 2.74 m.
    expect(issues).toEqual([`4:5 warning (14) ${doubts.unitsApart("2.5 m", "3 yd")}`]);
  });
  it("keeps a second width in the same unit as a row of its own", () => {
    const { tables, issues } = paste(sheet("Fabric", "Size|8|10", '45"|2 1/8|2 1/4|yd', "115 cm|2 1/8|2 1/4|yd"));
    expect(tables).toEqual([
      ["fabric yd | 8 10", "no view, main, 45 in, nap? | 2.125 2.25", "no view, main, 115 cm, nap? | 2.125 2.25"],
    ]);
    expect(issues).toEqual([]);
  });

  it("reads our own headings, and a part or view in its own column", () => {
    const { tables, issues } = paste(
      sheet(
        "View|Part|Width|Width unit|Nap|Unit|8|10|12",
        "A|main|45|in|with|yd|2 1/8|2 1/4|2 3/8",
        "A|main|115|cm|without|m|1.9|2.1|2.2",
        "|lining|45|in|either|yd|1|1 1/8|1 1/4",
        "Long|main|60|in||yd|3|3 1/8|3 1/4",
        "All views|interfacing|22|in||yd|1/2|1/2|5/8",
      ),
    );
    expect(tables).toEqual([
      [
        "fabric yd | 8 10 12",
        "A, main, 45 in, with | 2.125 2.25 2.375",
        "A, lining, 45 in, either | 1 1.125 1.25",
        "Long, main, 60 in, nap? | 3 3.125 3.25",
        "A, interfacing, 22 in, nap? | 0.5 0.5 0.625",
        "Long, interfacing, 22 in, nap? | 0.5 0.5 0.625",
      ],
      ["fabric m | 8 10 12", "A, main, 115 cm, without | 1.9 2.1 2.2"],
    ]);
    expect(issues).toEqual([]);
  });
  it("reads a width headed Fabric width, with no column for its unit", () => {
    const { tables, issues } = paste(
      sheet("View|Fabric width|8|10|12", 'A|45"|2 1/8|2 1/4|2 3/8', "B|60|1 5/8|1 3/4|1 7/8"),
    );
    expect(tables).toEqual([
      ["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2.125 2.25 2.375", "B, main, 60 in, nap? | 1.625 1.75 1.875"],
    ]);
    expect(issues).toEqual([]);
  });
  it("reads a width and a nap in columns, and the view from a line above", () => {
    const { tables, issues } = paste(
      sheet("Fabric", "Width|Nap|8|10", "View B", "45|with|2 1/8|2 1/4", "60|without|1 5/8|1 3/4"),
    );
    expect(tables).toEqual([
      ["fabric yd | 8 10", "B, main, 45 in, with | 2.125 2.25", "B, main, 60 in, without | 1.625 1.75"],
    ]);
    expect(issues).toEqual([]);
  });

  it("says when no note explains a star, also beside one that is explained", () => {
    const none = paste(sheet("Fabric", "Size|8|10", '45"*|2 1/8|2 1/4', '60"*|1 5/8|1 3/4'));
    expect(none.tables).toEqual([
      ["fabric yd | 8 10", "no view, main, 45 in, nap? | 2.125 2.25", "no view, main, 60 in, nap? | 1.625 1.75"],
    ]);
    expect(none.issues).toEqual([`3 warning ${doubts.starUnknown("*")}`, `4 warning ${doubts.starUnknown("*")}`]);
    const one = paste(sheet("Fabric", "Size|8|10", '45"*|2 1/8|2 1/4', '60"**|1 5/8|1 3/4', "* with nap"));
    expect(one.tables).toEqual([
      ["fabric yd | 8 10", "no view, main, 45 in, with | 2.125 2.25", "no view, main, 60 in, nap? | 1.625 1.75"],
    ]);
    expect(one.issues).toEqual([`4 warning ${doubts.starUnknown("**")}`]);
  });

  it("takes a row without a part for main fabric and says so when it follows another part", () => {
    const { tables, issues } = paste(sheet("Fabric", "Size|8|10", 'View A, lining 45"|1|1 1/8', '60"|1 5/8|1 3/4'));
    expect(tables).toEqual([
      ["fabric yd | 8 10", "A, lining, 45 in, nap? | 1 1.125", "A, main, 60 in, nap? | 1.625 1.75"],
    ]);
    expect(issues).toEqual([`4 warning ${doubts.partCarried("lining")}`]);
  });
  it("takes it for the part above when main fabric has that width already", () => {
    const { tables, issues } = paste(
      sheet("Fabric", "Size|8|10", 'View A 45"|2 1/8|2 1/4', '60"|1 5/8|1 3/4', 'Lining 45"|1|1 1/8', '60"|7/8|1'),
    );
    expect(tables).toEqual([
      [
        "fabric yd | 8 10",
        "A, main, 45 in, nap? | 2.125 2.25",
        "A, main, 60 in, nap? | 1.625 1.75",
        "A, lining, 45 in, nap? | 1 1.125",
        "A, lining, 60 in, nap? | 0.875 1",
      ],
    ]);
    expect(issues).toEqual([]);
  });

  it("takes the unit from the row of sizes", () => {
    const { tables, issues } = paste(sheet("Fabric", "Size (metres)|8|10", "View A|2|2.2", "View B|1|1.2"));
    expect(tables).toEqual([
      ["fabric m | 8 10", "A, main, no width cm, nap? | 2 2.2", "B, main, no width cm, nap? | 1 1.2"],
    ]);
    expect(issues).toEqual([]);
  });
  it("turns amounts in centimetres and inches into metres and yards, and says so", () => {
    const heading = paste(sheet("Fabric (cm)", "Size|8|10", "View A|190|210"));
    expect(heading.tables).toEqual([["fabric m | 8 10", "A, main, no width cm, nap? | 1.9 2.1"]]);
    expect(heading.issues).toEqual([`3 warning ${doubts.converted("cm", "m")}`]);
    const width = paste(sheet("Fabric", "Size|8|10|12", "View A 150 cm|190|210|-", "View B 150 cm|1.5|1.6|1.7"));
    expect(width.tables).toEqual([
      ["fabric m | 8 10 12", "A, main, 150 cm, nap? | 1.9 2.1 -", "B, main, 150 cm, nap? | 1.5 1.6 1.7"],
    ]);
    expect(width.issues).toEqual([`3 warning ${doubts.converted("cm", "m")}`]);
    const inches = paste(sheet("Fabric", "Size|8|10|12", 'View A 45"|54"|63"|72"'));
    expect(inches.tables).toEqual([["fabric yd | 8 10 12", "A, main, 45 in, nap? | 1.5 1.75 2"]]);
    expect(inches.issues).toEqual([`3 warning ${doubts.converted("in", "yd")}`]);
  });
  it("tells yards from metres by eighths, by the measurements, or takes metres", () => {
    const eighths = paste(sheet("Fabric", "Size|8|10|12", "View A|2|-|2 1/8", "View B|1|1 1/2|2"));
    expect(eighths.tables).toEqual([
      // The first row is in eighths; the second has a row with a unit beside it.
      ["fabric yd | 8 10 12", "A, main, no width in, nap? | 2 - 2.125", "B, main, no width in, nap? | 1 1.5 2"],
    ]);
    expect(eighths.issues).toEqual([`3 warning ${doubts.unitFromNumbers("yards")}`]);
    const metres = paste(sheet("Fabric", "Size|8|10", "View A|2.1|2.3"));
    expect(metres.tables).toEqual([["fabric m | 8 10", "A, main, no width cm, nap? | 2.1 2.3"]]);
    expect(metres.issues).toEqual([`3 warning ${doubts.unitFromNumbers("metres")}`]);
    const body = paste(
      sheet("Body measurements (inches)", "Size|8|10", "Bust|31 1/2|32 1/2", "Fabric", "View A|2|2 1/2"),
    );
    expect(body.tables).toEqual([
      ["body in | 8 10", "bust: Bust | 31.5 32.5"],
      ["fabric yd | 8 10", "A, main, no width in, nap? | 2 2.5"],
    ]);
    expect(body.issues).toEqual([`5 warning ${doubts.unitFromNumbers("yards")}`]);
    const near = paste(sheet("Fabric", "Size|8|10", "View A|2|2.5", 'View B 60"|1.5|2'));
    expect(near.tables).toEqual([
      ["fabric yd | 8 10", "A, main, no width in, nap? | 2 2.5", "B, main, 60 in, nap? | 1.5 2"],
    ]);
    expect(near.issues).toEqual([]);
  });
  it("reads all views as one row when none is named", () => {
    expect(paste(sheet("Fabric", "Size|8|10", 'All views 45"|2|2 1/8')).tables).toEqual([
      ["fabric yd | 8 10", "no view, main, 45 in, nap? | 2 2.125"],
    ]);
  });
  it("names two rows that nothing tells apart", () => {
    const { issues } = paste(
      sheet("Fabric", "Size|8|10", 'View A 45"|2|2 1/8', 'View A 45"|1|1 1/8', 'All views lining 45"|1|1', 'All views lining 45"|1|2'),
    ); // prettier-ignore
    expect(issues).toEqual([
      `4 warning (A) ${doubts.repeatedCloth('View A 45"')}`,
      `6 warning (all) ${doubts.repeatedCloth('All views lining 45"')}`,
    ]);
    const unnamed = paste(sheet("Fabric", "Size|8|10", '45"|2|2 1/8', '45"|1|1 1/8'));
    expect(unnamed.issues).toEqual([`4 warning ${doubts.repeatedCloth('45"')}`]);
  });
  it("names an amount that falls for a larger size, with its view", () => {
    const { issues } = paste(sheet("Fabric", "Size|8|10|12|14", 'View A 45"|2|2 1/8|2|2 1/4'));
    expect(issues).toEqual([
      `3:3 warning (A, 10) ${doubts.outOfOrder("2.125 yd", 'View A 45"')}`,
      `3:4 warning (A, 12) ${doubts.outOfOrder("2 yd", 'View A 45"')}`,
    ]);
  });
});

describe("readCharts on sentences about fabric", () => {
  const under = (...lines: string[]) =>
    paste(page("Fabric requirements", "Sizes   8   10   12", 'View A 45"   2 1/8   2 1/4   2 3/8 yd', ...lines));
  const chart = ["fabric yd | 8 10 12", "A, main, 45 in, nap? | 2.125 2.25 2.375"];

  it("reads one amount for all sizes, in one unit or two", () => {
    const { tables, issues } = under(
      'Interfacing A, B: 7/8 yd of 20" to 25" fusible for all sizes',
      "Lining: 1 1/2 yds (1.4 m) of 45 inch fabric for the bodice",
    );
    expect(tables).toEqual([
      [
        ...chart,
        "A, interfacing, 25 in, nap? | 0.875 0.875 0.875",
        "B, interfacing, 25 in, nap? | 0.875 0.875 0.875",
        "A, lining, 45 in, nap? | 1.5 1.5 1.5",
        "B, lining, 45 in, nap? | 1.5 1.5 1.5",
      ],
      ["fabric m | 8 10 12", "A, lining, 45 in, nap? | 1.4 1.4 1.4", "B, lining, 45 in, nap? | 1.4 1.4 1.4"],
    ]);
    expect(issues).toEqual([]);
  });
  it("reads metres, and a width without a part", () => {
    const { tables } = under(
      "Contrast for view B, 0.8 metres of 115 cm cloth",
      "View C: 1 1/4 yards of 60 inch fabric",
    );
    expect(tables).toEqual([
      [...chart, "C, main, 60 in, nap? | 1.25 1.25 1.25"],
      ["fabric m | 8 10 12", "B, contrast, 115 cm, nap? | 0.8 0.8 0.8"],
    ]);
  });
  it("never takes an amount for some sizes, or for some of the cloth, as that of all", () => {
    const { tables, issues } = under(
      "Lining for sizes 8 to 10 needs 1 yd",
      "Lining needs 1 yd for the front and 2 yds for the back",
    );
    expect(tables).toEqual([chart]);
    expect(issues).toEqual([
      `4 error ${doubts.count("Lining for sizes 8 to 10 needs", 1, 3)}`,
      `5 error ${doubts.count("Lining needs 1 yd for the front and", 1, 3)}`,
    ]);
  });
  it("leaves notions and sentences without cloth alone", () => {
    const { tables, issues } = under("Notions: 3 yds of bias binding in a shade that goes with it");
    expect(tables).toEqual([chart]);
    expect(issues).toEqual([]);
  });
});
