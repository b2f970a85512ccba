import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

// All figures are invented, in common-practice steps.
const CM = "Body measurements (cm)";

describe("turnedChart", () => {
  it("reads places across and sizes down, with two kinds side by side under blank cells of a heading", () => {
    const { tables, issues } = paste(
      sheet("|Body (in)||Finished (in)|", "Size|Bust|Hip|Bust|Hip", "8|32|34|35|37", "10|33|35|36|38", "12|34 1/2|36 1/2|37 1/2|39 1/2"),
    ); // prettier-ignore
    expect(tables).toEqual([
      ["body in | 8 10 12", "bust: Bust | 32 33 34.5", "hip: Hip | 34 35 36.5"],
      ["finished in | 8 10 12", "bust: Bust | 35 36 37.5", "hip: Hip | 37 38 39.5"],
    ]);
    expect(issues).toEqual([]);
  });
  it("reads a heading that stands alone in the cells of a row as the heading of all columns", () => {
    const { tables, issues } = paste(sheet("Finished measurements (in)||", "Size|Bust|Waist", "8|34|27", "10|35|28"));
    expect(tables).toEqual([["finished in | 8 10", "bust: Bust | 34 35", "waist: Waist | 27 28"]]);
    expect(issues).toEqual([]);
  });
  it("spreads a place over the two units under it, and no further", () => {
    const { tables, issues } = paste(
      sheet("Body measurements", "Size|Bust||Waist||Hip", "|in|cm|in|cm|in", "8|32|81|25|63.5|34", "10|33|84|26|66|35"),
    );
    expect(tables).toEqual([
      ["body in | 8 10", "bust: Bust | 32 33", "waist: Waist | 25 26", "hip: Hip | 34 35"],
      ["body cm | 8 10", "bust: Bust | 81 84", "waist: Waist | 63.5 66"],
    ]);
    expect(issues).toEqual([]);
  });
  it("reads headings, places and a row of units together", () => {
    const { tables, issues } = paste(
      sheet("|Body measurements|||Finished measurements|", "Size|Bust|Waist|Hip|Bust|Hip", "|cm|cm|cm|in|in", "34|80|62|86|35|37", "36|84|66|90|36 1/2|38 1/2"),
    ); // prettier-ignore
    expect(tables).toEqual([
      ["body cm | 34 36", "bust: Bust | 80 84", "waist: Waist | 62 66", "hip: Hip | 86 90"],
      ["finished in | 34 36", "bust: Bust | 35 36.5", "hip: Hip | 37 38.5"],
    ]);
    expect(issues).toEqual([]);
  });
  it("reads cloth by views over widths", () => {
    const { tables, issues } = paste(
      sheet("Fabric (yd)", "|View A||View B|", 'Size|45"|60"|45"|60"', "8|2|1 1/2|3|2", "10|2 1/8|1 5/8|3 1/8|2 1/8"),
    );
    expect(tables).toEqual([
      [
        "fabric yd | 8 10",
        "A, main, 45 in, nap? | 2 2.125",
        "A, main, 60 in, nap? | 1.5 1.625",
        "B, main, 45 in, nap? | 3 3.125",
        "B, main, 60 in, nap? | 2 2.125",
      ],
    ]);
    expect(issues).toEqual([]);
  });
  it("reads cloth by widths under views", () => {
    const { tables, issues } = paste(
      sheet("Fabric (yd)", "Size|View A|View B", '|45"|60"', "8|2|1 1/2", "10|2 1/8|1 5/8"),
    );
    expect(tables).toEqual([
      ["fabric yd | 8 10", "A, main, 45 in, nap? | 2 2.125", "B, main, 60 in, nap? | 1.5 1.625"],
    ]);
    expect(issues).toEqual([]);
  });
  it("reads cloth by views alone", () => {
    const { tables, issues } = paste(sheet("Fabric (yd)", "Size|View A|View B", "8|2|1 1/2", "10|2 1/8|1 5/8"));
    expect(tables).toEqual([
      ["fabric yd | 8 10", "A, main, no width in, nap? | 2 2.125", "B, main, no width in, nap? | 1.5 1.625"],
    ]);
    expect(issues).toEqual([]);
  });
  it("keeps a second name of each size, and leaves out a column of remarks without figures", () => {
    const { tables } = paste(sheet(CM, "Size|EU|Bust|Waist", "S|36|84|66", "M|40|92|74"));
    expect(tables).toEqual([["body cm | S M", "also EU: 36 40", "bust: Bust | 84 92", "waist: Waist | 66 74"]]);
    expect(paste(sheet(CM, "Size|Bust|Notes|Waist", "34|80|slim|62", "36|84||66")).tables).toEqual([
      ["body cm | 34 36", "bust: Bust | 80 84", "waist: Waist | 62 66"],
    ]);
  });
  it("names each cell that it can't read", () => {
    const { tables, issues } = paste(
      sheet(CM, "Size|Bust|Waist|Hip", "34|80|62|86", "36|84|-|see below", "38|88|n/a|94", "40|=A1|74|98"),
    );
    expect(tables).toEqual([
      ["body cm | 34 36 38 40", "bust: Bust | 80 84 88 -", "waist: Waist | 62 - - 74", "hip: Hip | 86 - 94 98"],
    ]);
    expect(issues).toEqual([
      `4:4 error (hip, 36) ${doubts.unreadable("see below")}`,
      `6:2 error (bust, 40) ${doubts.formulaFigure("=A1")}`,
    ]);
  });
  it("names a size with a figure too many or too few, whatever blank cells stand behind it", () => {
    const { tables, issues } = paste(
      sheet("Body measurements (cm)||||", "Size|Bust|Waist||", "34|80|62||", "36|84|66|90|", "38|88", "40|92|74||"),
    );
    expect(tables).toEqual([["body cm | 34 40", "bust: Bust | 80 92", "waist: Waist | 62 74"]]);
    expect(issues).toEqual([
      `4 error (36) ${doubts.shortSize("36", 3, 2)}`,
      `5 error (38) ${doubts.shortSize("38", 1, 2)}`,
    ]);
  });
  it("takes any short name for a size, but not a place or a row of sizes below", () => {
    const { tables, issues } = paste(
      sheet(CM, "Size|Bust|Waist", "petite fit|80|62", "a long name of one size|84|66", "Hip|86|90"),
    );
    expect(tables).toEqual([
      ["body cm | petite fit a long name of one size", "bust: Bust | 80 84", "waist: Waist | 62 66", "hip: Hip | 86 90"],
    ]); // prettier-ignore
    expect(issues).toEqual([]);
    expect(paste(sheet(CM, "Size|Bust|Waist", "34|80|62", "36|84|66", "Size|38|40", "Hip|94|98")).tables).toEqual([
      ["body cm | 34 36", "bust: Bust | 80 84", "waist: Waist | 62 66"],
      ["body cm | 38 40", "hip: Hip | 94 98"],
    ]);
  });
  it("goes on behind a blank line or a heading over some of the sizes", () => {
    const head = ["Size|Bust|Waist", "34|80|62", "36|84|66"];
    const whole = [["body cm | 34 36 38 40", "bust: Bust | 80 84 88 92", "waist: Waist | 62 66 70 74"]];
    const more = ["38|88|70", "40|92|74"];
    for (const between of [[""], ["", ""], ["||"], ["Plus sizes"], ["Plus sizes||"], ["", "Plus sizes", ""]]) {
      const lines = [CM, ...head, ...between, ...more];
      expect(paste(sheet(...lines))).toEqual({ tables: whole, issues: [] });
      if (between[0]?.includes("|")) continue;
      expect(paste(page(...lines.map((line) => line.replaceAll("|", " "))))).toEqual({ tables: whole, issues: [] });
      expect(paste(page(...lines.map((line) => line.replaceAll("|", "   "))))).toEqual({ tables: whole, issues: [] });
    }
  });
  it("ends at a heading of another kind, and at a size that it has already", () => {
    const { tables } = paste(sheet(CM, "Size|Bust|Waist", "34|80|62", "36|84|66", "Finished measurements (cm)", "Size|Bust|Waist", "34|88|70", "36|92|74")); // prettier-ignore
    expect(tables).toEqual([
      ["body cm | 34 36", "bust: Bust | 80 84", "waist: Waist | 62 66"],
      ["finished cm | 34 36", "bust: Bust | 88 92", "waist: Waist | 70 74"],
    ]);
    const again = paste(sheet(CM, "Size|Bust|Waist", "34|80|62", "36|84|66", "", "34|88|70"));
    expect(again.tables[0]?.[0]).toBe("body cm | 34 36");
    expect(again.issues).not.toEqual([]);
  });
  it("names a spoilt row between the sizes, and goes on", () => {
    const { tables, issues } = paste(
      sheet(CM, "Size|Bust|Waist", "34|80|62", "|84|66", "38|88|70", "=1+1|92|74", "42|96|78", "44|see|below", "46|106|88"),
    ); // prettier-ignore
    expect(tables).toEqual([
      ["body cm | 34 38 42 44 46", "bust: Bust | 80 88 96 - 106", "waist: Waist | 62 70 78 - 88"],
    ]);
    expect(issues).toEqual([
      `4 error ${doubts.noLabel()}`,
      `6 error ${doubts.formulaLabel("=1+1")}`,
      `8:2 error (bust, 44) ${doubts.unreadable("see")}`,
      `8:3 error (waist, 44) ${doubts.unreadable("below")}`,
    ]);
  });
  it("reads rows that only spaces part, and names a size with the wrong number of figures", () => {
    const inches = "Body measurements (in)";
    const names = ["body in | 8 14", "bust: Bust | 31.5 36", "backWaistLength: Back waist length | 15.5 17", "hip: Hip | 33.5 38"]; // prettier-ignore
    const wrong = [`4 error (10) ${doubts.shortSize("10", 2, 3)}`, `5 error (12) ${doubts.shortSize("12", 4, 3)}`];
    expect(
      paste(page(inches, "Size Bust Back waist length Hip", "8 31 1/2 15 1/2 33 1/2", "10 32 1/2 16", "12 34 16 1/2 36 37", "14 36 17 38")),
    ).toEqual({ tables: [names], issues: wrong }); // prettier-ignore
    expect(
      paste(
        page(
          inches,
          "Size   Bust    Back waist length   Hip",
          "8      31 1/2  15 1/2              33 1/2",
          "10     32 1/2  16",
          "12     34      16 1/2              36     37",
          "14     36      17                  38",
        ),
      ),
    ).toEqual({ tables: [names], issues: wrong });
  });
  it("reads sizes with letters and words in rows that only spaces part", () => {
    const { tables, issues } = paste(
      page("Body measurements in cm", "Size Bust Waist Hip", "XS 80 62 86", "S (36-38) 84-88 66-70 90-94", "size M 92 74 98", "1X n/a 80 104"),
    ); // prettier-ignore
    expect(tables).toEqual([
      ["body cm | XS S (36-38) M 1X", "bust: Bust | 80 84-88 92 -", "waist: Waist | 62 66-70 74 80", "hip: Hip | 86 90-94 98 104"],
    ]); // prettier-ignore
    expect(issues).toEqual([]);
  });
  it("reads nothing of a chart in which every size is short", () => {
    const { tables, issues } = paste(sheet(CM, "Size|Bust|Waist|Hip", "34|80|62", "36|84|66"));
    expect(tables).toEqual([]);
    expect(issues).toEqual([
      `3 error (34) ${doubts.shortSize("34", 2, 3)}`,
      `4 error (36) ${doubts.shortSize("36", 2, 3)}`,
    ]);
  });
  it("takes the heading in the corner for all columns", () => {
    const { tables, issues } = paste(sheet("Finished measurements (cm)|Bust|Waist", "34|88|70", "36|92|74"));
    expect(tables).toEqual([["finished cm | 34 36", "bust: Bust | 88 92", "waist: Waist | 70 74"]]);
    expect(issues).toEqual([]);
  });
  it("lets one heading stand over a place in two units", () => {
    const { tables, issues } = paste(
      sheet("|Body|Body|Body|Body", "Size|Bust||Waist|", "|in|cm|in|cm", "8|32|81|25|63.5", "10|33|84|26|66"),
    );
    expect(tables).toEqual([
      ["body in | 8 10", "bust: Bust | 32 33", "waist: Waist | 25 26"],
      ["body cm | 8 10", "bust: Bust | 81 84", "waist: Waist | 63.5 66"],
    ]);
    expect(issues).toEqual([]);
  });
  it("reads a place that itself says finished as a place", () => {
    const { tables } = paste(sheet("Size|Finished back length|Finished bust", "8|60 cm|80 cm", "10|61 cm|84 cm"));
    expect(tables).toEqual([
      ["finished cm | 8 10", "backLength: Finished back length | 60 61", "bust: Finished bust | 80 84"],
    ]);
  });
  it("writes the words of a cell over two rows once", () => {
    const { tables } = paste(
      "<table><tr><th rowspan=2>Size</th><th rowspan=2>Stride</th><th colspan=2>Bust</th></tr><tr><th>in</th><th>cm</th></tr>" +
        "<tr><td>8<td>40 in<td>32<td>81</tr><tr><td>10<td>41 in<td>33<td>84</tr></table>",
    );
    expect(tables).toEqual([
      ["body in | 8 10", "Stride: Stride | 40 41", "bust: Bust | 32 33"],
      ["body cm | 8 10", "bust: Bust | 81 84"],
    ]);
  });
  it("names figures under no heading, and two columns of one cloth", () => {
    const body = paste(sheet(CM, "Size|Bust||Hip", "34|80|5|86", "36|84|6|90"));
    expect(body.tables).toEqual([["body cm | 34 36", "bust: Bust | 80 84", "hip: Hip | 86 90"]]);
    expect(body.issues).toEqual([`2 error ${doubts.noLabel()}`]);
    const cloth = paste(sheet("Fabric (yd)", "Size|View A|View A", '|45"|45"', "8|2|2", "10|3|3"));
    expect(cloth.issues).toEqual([`3 warning (A) ${doubts.repeatedCloth('45" View A')}`]);
  });
  it("reads inch marks in the cells, and units beside the size word", () => {
    const inches = paste(sheet("Body measurements", "Size|Bust|Waist", '8|32"|25"', '10|33"|26"'));
    expect(inches).toEqual({ tables: [["body in | 8 10", "bust: Bust | 32 33", "waist: Waist | 25 26"]], issues: [] });
    const below = paste(sheet("Body measurements", "|Bust|Waist", "Size|cm|cm", "34|80|62", "36|84|66"));
    expect(below).toEqual({ tables: [["body cm | 34 36", "bust: Bust | 80 84", "waist: Waist | 62 66"]], issues: [] });
  });
  it("names a spoilt row before the first size", () => {
    const { tables, issues } = paste(sheet(CM, "Size|Bust|Waist", "|80|72", "36|84|76", "38|88|80"));
    expect(tables).toEqual([["body cm | 36 38", "bust: Bust | 84 88", "waist: Waist | 76 80"]]);
    expect(issues).toEqual([`3 error ${doubts.noLabel()}`]);
  });
  it("leaves a line of other words above the places alone", () => {
    const { tables } = paste(sheet("Our|spring|dresses", "Size|Bust (cm)|Waist (cm)", "34|80|62", "36|84|66"));
    expect(tables).toEqual([["body cm | 34 36", "bust: Bust (cm) | 80 84", "waist: Waist (cm) | 62 66"]]);
  });
  it.each([
    ["Size", "the word for sizes"],
    ["Misses", "whose sizes they are"],
    ["Maat", "a word that also means a measurement"],
    ["Label", "any other word"],
  ])("takes a column headed %s for the sizes: %s", (corner) => {
    expect(paste(sheet(CM, `${corner}|Bust|Waist`, "34|80|62", "36|84|66"))).toEqual({
      tables: [["body cm | 34 36", "bust: Bust | 80 84", "waist: Waist | 62 66"]],
      issues: [],
    });
  });
  it.each([
    ["views in front", "View|Bust|Hip", "A|90|98", "C|94|102"],
    ["a place in front", "Bust|Waist|Hip", "80|62|86", "84|66|90"],
    ["a bare number among the places", "Size|Bust|44|Waist", "34|80|1|62", "36|84|2|66"],
    ["more unknown words than places", "Size|Bust|Stride|Bounce", "34|80|40|50", "36|84|41|51"],
    ["more remarks than places", "Size|Bust|Remark|Colour", "34|80|a|b", "36|84|c|d"],
  ])("takes no chart with %s for one with sizes down, and says so", (_, ...lines) => {
    const { tables, issues } = paste(sheet(CM, ...lines));
    expect(tables).toEqual([]);
    expect(issues[0]).toBe(`1 error ${doubts.noChart()}`);
  });
  it("needs no more than half of the headed columns to be places or names of sizes", () => {
    const rows = ["34|80||thin", "36|84||wide"];
    expect(paste(sheet(CM, "Size|Bust||Remark", ...rows)).tables).toEqual([["body cm | 34 36", "bust: Bust | 80 84"]]);
    const systems = paste(sheet(CM, "Size|EU|US|UK|Bust", "S|36|4|8|84", "M|40|8|12|92"));
    expect(systems.tables).toEqual([
      ["body cm | S M", "also EU: 36 40", "also US: 4 8", "also UK: 8 12", "bust: Bust | 84 92"],
    ]);
  });
  it("reads cloth by widths in words", () => {
    const words = paste(sheet("Fabric (m)", "Size|Width 140|Width 115", "34|1.5|2", "36|1.6|2.1"));
    const whole = ["fabric m | 34 36", "no view, main, 140 cm, nap? | 1.5 1.6", "no view, main, 115 cm, nap? | 2 2.1"];
    expect(words).toEqual({ tables: [whole], issues: [] });
    expect(paste(sheet("Fabric (m)", "Size|140 cm|115cm", "34|1.5|2", "36|1.6|2.1"))).toEqual(words);
    expect(paste(page("Fabric", "Size  140 cm wide  115 cm wide", "34  1.5 m  2 m", "36  1.6 m  2.1 m"))).toEqual(
      words,
    );
  });
  it("reads a view alone above the places", () => {
    const { tables, issues } = paste(
      sheet("Finished measurements (cm)", "View A||", "Size|Bust|Waist", "34|88|70", "36|92|74"),
    );
    expect(tables).toEqual([["finished cm | 34 36", "bust A: Bust | 88 92", "waist A: Waist | 70 74"]]);
    expect(issues).toEqual([]);
  });
  it("keeps the size of the last row when most of its cells are no figures", () => {
    const { tables, issues } = paste(sheet(CM, "Size|Bust|Waist|Hip", "34|80|62|86", "36|84|see|note"));
    expect(tables).toEqual([["body cm | 34 36", "bust: Bust | 80 84", "waist: Waist | 62 -", "hip: Hip | 86 -"]]);
    expect(issues).toEqual([
      `4:3 error (waist, 36) ${doubts.unreadable("see")}`,
      `4:4 error (hip, 36) ${doubts.unreadable("note")}`,
    ]);
  });
  it("names a size of letters with the wrong number of figures, where only spaces part them", () => {
    const { tables, issues } = paste(
      page(CM, "Maat borst taille heup", "S 84 66 90", "M 92 74", "L 100 82 106", "XL 108 90 114 120"),
    );
    expect(tables).toEqual([["body cm | S L", "bust: borst | 84 100", "waist: taille | 66 82", "hip: heup | 90 106"]]);
    expect(issues).toEqual([
      `4 error (M) ${doubts.shortSize("M", 2, 3)}`,
      `6 error (XL) ${doubts.shortSize("XL", 4, 3)}`,
    ]);
  });
  it("reads cells that stand apart as they are, whatever spaces and words they hold", () => {
    const { tables, issues } = paste(
      page("Body (cm)", "Size   Bust   Height", "34   ca. 80   1 m 68", "36   80 - 88   1m70", "38   -   172"),
    );
    expect(tables).toEqual([["body cm | 34 36 38", "bust: Bust | 80 80-88 -", "height: Height | 168 170 172"]]);
    expect(issues).toEqual([]);
  });
  it("takes no line of words for a row of places because one of them is a place", () => {
    const { tables, issues } = paste(page("Body measurements (in)", "Sizes by waist", "8 10 12", "Hip 33 34 35"));
    expect(tables).toEqual([["body in | 8 10 12", "hip: Hip | 33 34 35"]]);
    expect(issues).toEqual([]);
  });
});

describe("turnedChart with a heading in its middle", () => {
  const both = [
    ["body cm | 36 38", "bust: Bust | 84 88", "waist: Waist | 66 70"],
    ["finished cm | 36 38", "bust: Bust | 94 98", "waist: Waist | 76 80"],
  ];
  const rows = [CM, "Size|Bust|Waist", "36|84|66", "38|88|70", "Finished garment measurements (cm)"];
  it("gives both kinds the places above them", () => {
    expect(paste(sheet(...rows, "36|94|76", "38|98|80"))).toEqual({ tables: both, issues: [] });
    expect(paste(sheet(...rows, "", "36|94|76", "38|98|80"))).toEqual({ tables: both, issues: [] });
    const spaced = [...rows, "36|94|76", "38|98|80"].map((row) => row.replaceAll("|", " "));
    expect(paste(page(...spaced))).toEqual({ tables: both, issues: [] });
  });
  it("names a size of the second kind with too few figures", () => {
    expect(paste(sheet(...rows, "36|94|76", "38|98|80|1", "40|102|84")).issues).toEqual([
      `7 error (38) ${doubts.shortSize("38", 3, 2)}`,
    ]);
  });
  it("gives two parts of cloth the widths above them", () => {
    const lines = [
      "Fabric required (yd)",
      `Size|45"|60"`,
      "8|2|1 1/2",
      "10|2 1/4|1 5/8",
      "Lining",
      "8|1|3/4",
      "10|1 1/8|7/8",
    ];
    expect(paste(sheet(...lines))).toEqual({
      tables: [
        [
          "fabric yd | 8 10",
          "no view, main, 45 in, nap? | 2 2.25",
          "no view, main, 60 in, nap? | 1.5 1.625",
          "no view, lining, 45 in, nap? | 1 1.125",
          "no view, lining, 60 in, nap? | 0.75 0.875",
        ],
      ],
      issues: [],
    });
  });
});

describe("turnedChart with a size that has no figures", () => {
  it("keeps its column and what stands below it", () => {
    expect(paste(sheet(CM, "Size|Bust|Waist", "36|84|66", "38||", "40|92|74"))).toEqual({
      tables: [["body cm | 36 38 40", "bust: Bust | 84 - 92", "waist: Waist | 66 - 74"]],
      issues: [],
    });
  });
});

describe("turnedChart with bare widths across", () => {
  it.each(["|", " "])("reads the widths of cloth as widths, and not as sizes (%j)", (gap) => {
    const lines = (rows: readonly string[]): string => sheet(...rows.map((row) => row.replaceAll("|", gap)));
    expect(paste(lines(["Fabric (m)", "Size|140|115", "36|1.8|2.2", "38|1.9|2.3", "40|2.0|2.4"]))).toEqual({
      tables: [
        ["fabric m | 36 38 40", "no view, main, 140 cm, nap? | 1.8 1.9 2", "no view, main, 115 cm, nap? | 2.2 2.3 2.4"],
      ],
      issues: [],
    });
    expect(paste(lines(["Fabric (yd)", "Size|45|60", "8|2|1 1/2", "10|2 1/4|1 5/8"])).tables).toEqual([
      ["fabric yd | 8 10", "no view, main, 45 in, nap? | 2 2.25", "no view, main, 60 in, nap? | 1.5 1.625"],
    ]);
  });
  it("keeps a child's sizes by height, and sizes over widths in front", () => {
    expect(paste(sheet("Fabric (m)", "Size|116|122|128", "115|1.1|1.2|1.3", "140|0.9|1|1.1")).tables).toEqual([
      [
        "fabric m | 116 122 128",
        "no view, main, 115 cm, nap? | 1.1 1.2 1.3",
        "no view, main, 140 cm, nap? | 0.9 1 1.1",
      ],
    ]);
    expect(paste(sheet("Fabric (m)", "Size|36|38", "140|1.8|1.9", "115|2.2|2.3")).tables).toEqual([
      ["fabric m | 36 38", "no view, main, 140 cm, nap? | 1.8 1.9", "no view, main, 115 cm, nap? | 2.2 2.3"],
    ]);
  });
});

describe("turnedChart with a heading right below the places", () => {
  it.each(["|", " "])("reads the sizes below a group's name (%j)", (gap) => {
    const lines = ["Size|Bust|Waist", "Misses", "36|84|66", "38|88|70", "Women's", "40|92|74", "42|96|78"];
    expect(paste(page(CM, ...lines.map((line) => line.replaceAll("|", gap === " " ? " " : "\t"))))).toEqual({
      tables: [["body cm | 36 38 40 42", "bust: Bust | 84 88 92 96", "waist: Waist | 66 70 74 78"]],
      issues: [],
    });
  });
  it("gives each kind its rows", () => {
    const rows = ["Size|Bust|Waist", "Body (cm)", "36|84|66", "38|88|70", "Finished (cm)", "36|90|70", "38|94|74"];
    expect(paste(sheet(...rows))).toEqual({
      tables: [
        ["body cm | 36 38", "bust: Bust | 84 88", "waist: Waist | 66 70"],
        ["finished cm | 36 38", "bust: Bust | 90 94", "waist: Waist | 70 74"],
      ],
      issues: [],
    });
  });
  it("gives each view its rows", () => {
    const rows = [
      "Finished measurements (cm)",
      "Size|Bust|Hem",
      "View A",
      "36|84|66",
      "38|88|70",
      "View B",
      "36|84|96",
      "38|88|97",
    ];
    expect(paste(sheet(...rows))).toEqual({
      tables: [
        [
          "finished cm | 36 38",
          "bust A: Bust | 84 88",
          "hemWidth A: Hem | 66 70",
          "bust B: Bust | 84 88",
          "hemWidth B: Hem | 96 97",
        ],
      ],
      issues: [],
    });
  });
});
