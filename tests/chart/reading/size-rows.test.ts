import { describe, expect, it } from "vitest";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

const cm = "Body measurements (cm)";
const inches = "Body measurements (in)";
const nothing = { tables: [], issues: [`1 error ${doubts.noChart()}`] };

// All figures are invented, in steps of four centimetres or one inch as is common practice.
describe("readSizes on a second row of sizes", () => {
  it("never lets figures that lost their label take the place of the sizes", () => {
    const short = paste(sheet(cm, "Size|36|38|40", "Waist|66|70", "|84|88|92", "Hip|90|94|98"));
    expect(short.tables).toEqual([["body cm | 36 38 40", "hip: Hip | 90 94 98"]]);
    expect(short.issues).toEqual([`3 error (waist) ${doubts.count("Waist", 2, 3)}`, `4 error ${doubts.noLabel()}`]);
    const apart = paste(page(cm, "Size 34 36 38", "", "80 84 88", "Hip 86 90 94"));
    expect(apart.tables).toEqual([["body cm | 34 36 38", "hip: Hip | 86 90 94"]]);
    expect(apart.issues).toEqual([`4 error ${doubts.noLabel()}`]);
    const before = paste(
      sheet("Size chart (cm)|34|36", "Waist|62", "|80|84", "Hip|86|90", "Finished measurements (cm)", "Hip|96|100"),
    );
    expect(before.tables).toEqual([
      ["body cm | 34 36", "hip: Hip | 86 90"],
      ["finished cm | 34 36", "hip: Hip | 96 100"],
    ]);
    expect(before.issues).toEqual([`2 error (waist) ${doubts.count("Waist", 1, 2)}`, `3 error ${doubts.noLabel()}`]);
    const fewer = paste(page(cm, "Size 34 36 38", "80 84", "Hip 86 90"));
    expect(fewer.tables).toEqual([]);
    expect(fewer.issues).toEqual([`3 error ${doubts.noLabel()}`, `4 error (hip) ${doubts.count("Hip", 2, 3)}`]);
    const fractions = paste(page(inches, "Size 8 10 12", "Bust 31 32 33", "", "15½ 15¾ 16", "Hip 34 35 36"));
    expect(fractions.tables).toEqual([["body in | 8 10 12", "bust: Bust | 31 32 33", "hip: Hip | 34 35 36"]]);
    expect(fractions.issues).toEqual([`5 error ${doubts.noLabel()}`]);
  });
  it("keeps a third row without a label below two systems", () => {
    expect(paste(sheet(inches, "US|4|6", "UK|8|10", "|36|38", "Bust|32|33"))).toEqual({
      tables: [["body in | 4 6", "also UK: 8 10", "also : 36 38", "bust: Bust | 32 33"]],
      issues: [`4 warning ${doubts.namelessSizes()}`],
    });
  });
  it("begins a table at some of those sizes, or below a heading", () => {
    expect(paste(page(cm, "Sizes 34 36 38 40", "", "38 42", "Bust 88 96"))).toEqual({
      tables: [["body cm | 38 42", "bust: Bust | 88 96"]],
      issues: [],
    });
    const tail = Array.from({ length: 12 }, () => "Wash the fabric first.");
    expect(paste(sheet("Size|8|10|12|14", "Fabric (yd)", "|8-10|12-14", '45"|2 1/4|2 1/2', ...tail))).toEqual({
      tables: [["fabric yd | 8-10 12-14", "no view, main, 45 in, nap? | 2.25 2.5"]],
      issues: [],
    });
  });
  it("says so when figures without a label behind a blank line are taken for sizes", () => {
    const tables = [
      ["body cm | 34 36", "bust: Bust | 80 84"],
      ["body cm | 38 40", "bust: Bust | 88 92"],
    ];
    expect(paste(page(cm, "Size 34 36", "Bust 80 84", "", "38 40", "Bust 88 92"))).toEqual({
      tables,
      issues: [`5 warning ${doubts.sizesWithoutLabel()}`],
    });
    expect(paste(page(cm, "Size 34 36", "Bust 80 84", "", cm, "38 40", "Bust 88 92"))).toEqual({ tables, issues: [] });
    const other = paste(page(cm, "Size 34 36", "Bust 80 84", "", "38 40 42", "Bust 88 92 96"));
    expect(other.issues).toEqual([]);
    const nothingNew = paste(page(cm, "Size 8 10 12", "8 12 14", "Bust 80 84 88"));
    expect(nothingNew.tables).toEqual([["body cm | 8 10 12", "also : 8 12 14", "bust: Bust | 80 84 88"]]);
    expect(nothingNew.issues).toEqual([`3 warning ${doubts.namelessSizes()}`]);
  });
  it("says nothing of sizes that stand there again, or of letters", () => {
    expect(paste(page(cm, "Sizes 34 36 38", "", "34 36 38", "Bust 80 84 88"))).toEqual({
      tables: [["body cm | 34 36 38", "bust: Bust | 80 84 88"]],
      issues: [],
    });
    for (const letters of ["XS S M", "L XL 2XL", "XS·(4) S·(6) M·(8)"])
      expect(
        paste(sheet(inches, "Size|8|10|12", `|${letters.replaceAll(" ", "|").replaceAll("·", " ")}`, "Bust|31|32|33"))
          .issues,
      ).toEqual([]);
    expect(paste(page(inches, "Size 8 10 12", "L XL 2XL", "Bust 31 32 33")).tables).toEqual([
      ["body in | 8 10 12", "also : L XL 2XL", "bust: Bust | 31 32 33"],
    ]);
  });
  it("keeps a second system below a row as another name of the sizes", () => {
    expect(paste(sheet(inches, "Size|8|10", "Bust|31|32", "EU|36|38", "Hip|34|35"))).toEqual({
      tables: [["body in | 8 10", "also EU: 36 38", "bust: Bust | 31 32", "hip: Hip | 34 35"]],
      issues: [],
    });
  });
  it("keeps every system of sizes", () => {
    const { tables, issues } = paste(
      sheet(cm, "Size|XS|S", "US|2|4", "UK|6|8", "EU|34|36", "DE|32|34", "FR|36|38", "IT|38|40", "AU|7|9", "JP|5|7", "Bust|80|84"),
    ); // prettier-ignore
    expect(tables).toEqual([
      [
        "body cm | XS S",
        "also US: 2 4",
        "also UK: 6 8",
        "also EU: 34 36",
        "also DE: 32 34",
        "also FR: 36 38",
        "also IT: 38 40",
        "also AU: 7 9",
        "also JP: 5 7",
        "bust: Bust | 80 84",
      ],
    ]);
    expect(issues).toEqual([]);
  });
  it("reads one name for two columns of one size", () => {
    const { tables, issues } = paste(
      sheet("Body measurements", "Size|8|8|10|10", "EU|36|38", "|in|cm|in|cm", "Bust|31|79|32|81"),
    );
    expect(tables).toEqual([
      ["body in | 8 10", "also EU: 36 38", "bust: Bust | 31 32"],
      ["body cm | 8 10", "also EU: 36 38", "bust: Bust | 79 81"],
    ]);
    expect(issues).toEqual([]);
  });
  it("keeps the heading of letters that repeat, or calls them sizes", () => {
    const chart = (label: string) => sheet(inches, `${label}|XS|S|S|M`, "US size|2|4|6|8", "Bust|31|32|33|34");
    for (const [label, name] of [["", "Size"], ["Letter size", "Letter size"]] as const)
      expect(paste(chart(label))).toEqual({
        tables: [["body in | 2 4 6 8", `also ${name}: XS S S M`, "bust: Bust | 31 32 33 34"]],
        issues: [],
      }); // prettier-ignore
  });
  it("names one with too many right below the sizes and below a row, and passes over a remark", () => {
    const chart = [["body cm | 34 36", "bust: Bust | 80 84", "hip: Hip | 86 90"]];
    const above = paste(sheet(cm, "Size|34|36", "EU|36|38|40", "Bust|80|84", "Hip|86|90"));
    expect(above).toEqual({ tables: chart, issues: [`3 error ${doubts.sizeRowCount(3, 2)}`] });
    const between = paste(sheet(cm, "Size|34|36", "Bust|80|84", "EU|36|38|40", "Hip|86|90"));
    expect(between).toEqual({ tables: chart, issues: [`4 error ${doubts.count("EU", 3, 2)}`] });
    const remark = paste(page(cm, "Sizes 34 36", "EU 36-40", "Bust 80 84", "Hip 86 90"));
    expect(remark).toEqual({ tables: chart, issues: [] });
  });
  it("places a doubt of equal sizes at the column, where each size has two", () => {
    const { issues } = paste(sheet(inches, "Size|8|2 XL|2xl", "Bust|31|32|33"));
    expect(issues).toEqual([`2:4 warning (2xl) ${doubts.equalSizes("2xl")}`]);
  });
});

describe("readSizes on a row that may be one", () => {
  it.each([
    ["letters", "34|36", "S|M", "80|84", "86|90"],
    ["numbers and letters", "8|10|12|14", "14|16|1X|2X", "80|84|88|92", "98|104|110|116"],
  ])("begins a table at nameless %s below a row of figures", (_, sizes, others, bust, hip) => {
    const said = (text: string): string => text.replaceAll("|", " ");
    expect(paste(sheet(cm, `Size|${sizes}`, `Bust|${bust}`, `|${others}`, `Hip|${hip}`))).toEqual({
      tables: [
        [`body cm | ${said(sizes)}`, `bust: Bust | ${said(bust)}`],
        [`body cm | ${said(others)}`, `hip: Hip | ${said(hip)}`],
      ],
      issues: [],
    });
  });
  it("takes no page number for a size, and no lone size for a row's", () => {
    expect(paste(page(cm, "12", "Bust 84", "Hip 90"))).toEqual(nothing);
    expect(paste(page(cm, "Size 12", "84"))).toEqual(nothing);
    expect(paste(page(cm, "Size 12", "Bust 80 84 88"))).toEqual({
      tables: [],
      issues: [`3 error (bust) ${doubts.noSizes("Bust")}`],
    });
    expect(paste(page(cm, "Size 12", "Bust 84", "Hip 90"))).toEqual({
      tables: [["body cm | 12", "bust: Bust | 84", "hip: Hip | 90"]],
      issues: [],
    });
  });
  it("looks past prose and at six rows with figures for one that fits", () => {
    const birds = ["Robin 1", "Wren 2", "Owl 3", "Crow 4", "Kite 5", "Lark 6"];
    const tables = [["body cm | S M L", "bust: Bust | 80 84 88"]];
    const prose = ["To fit the body.", "Wear", "what", "you", "will", "wear", "under", "it."];
    expect(paste(page(cm, "S M L", ...prose, "Bust 80 84 88"))).toEqual({ tables, issues: [] });
    expect(paste(page(cm, "S M L", ...birds.slice(0, 5), "Bust 80 84 88")).tables).toEqual(tables);
    expect(paste(page(cm, "S M L", ...birds, "Bust 80 84 88"))).toEqual({
      tables: [],
      issues: [`9 error (bust) ${doubts.noSizes("Bust")}`],
    });
  });
  it("leaves a list of some sizes inside a table out", () => {
    expect(paste(sheet(cm, "Size|34|36|38", "Bust|80|84|88", "Sizes 34 36", "Hip|86|90|94"))).toEqual({
      tables: [["body cm | 34 36 38", "bust: Bust | 80 84 88", "hip: Hip | 86 90 94"]],
      issues: [`4 error ${doubts.count("Sizes", 2, 3)}`],
    });
  });
  it("takes no girth for a width, and letters above nameless figures for sizes", () => {
    expect(paste(page(inches, "S M", "Hip 60 16 17")).issues).toEqual([`3 error (hip) ${doubts.noSizes("Hip")}`]);
    expect(paste(page(cm, "S M L", "80 84 88")).issues).toEqual([
      `1 error ${doubts.noChart()}`,
      `3 warning ${doubts.namelessSizes()}`,
    ]);
  });
  it("is content with a first row that a page broke", () => {
    expect(paste(page(cm, "34 36 38 40", "Bust 80 84", "88 92"))).toEqual({
      tables: [["body cm | 34 36 38 40", "bust: Bust | 80 84 88 92"]],
      issues: [],
    });
  });
  it.each([
    ["14½ 15 15½", "38 39 40"],
    ["13 13½ 14", "34 35 36"],
    ["13½ 14 14½", "34 35 36"],
  ])("takes the collars %s for sizes", (collars, chest) => {
    expect(paste(page("Men's body measurements (in)", collars, `Chest ${chest}`))).toEqual({
      tables: [[`body in | ${collars}`, `chest: Chest | ${chest}`]],
      issues: [],
    });
  });
  it.each([
    ["2½ 2¾"], ["2 2¾"], ["12½ 13"], ["14,5 15"], ["2 1/2 3"],
    ['45" 2 3'], ["with nap 2 3"], ["View A 2 3"], ["Lining 2 3"], ["Contrast 2 3"],
  ])("takes the amounts %j for none", (amounts) => {
    expect(paste(page("Fabric required (yd)", amounts, "Interfacing 1 1"))).toEqual(nothing);
  }); // prettier-ignore
  it("takes one figure for all sizes for no proof, and reads it under sizes that have one", () => {
    expect(paste(page("Fabric required (yd)", "8 10 12", '45" wide 2 1/4'))).toEqual(nothing);
    expect(paste(page("Fabric required (yd)", "8 10 12", '45" 2 1/4', '60" 1 1/2 1 5/8 1 3/4')).tables).toEqual([
      [
        "fabric yd | 8 10 12",
        "no view, main, 45 in, nap? | 2.25 2.25 2.25",
        "no view, main, 60 in, nap? | 1.5 1.625 1.75",
      ],
    ]);
  });
  it("takes heights for sizes when there are two or more", () => {
    expect(paste(page(cm, "Height 86 92", "Chest 53 54"))).toEqual({
      tables: [["body cm | 86 92", "height: Height | 86 92", "chest: Chest | 53 54"]],
      issues: [`2 warning (height) ${doubts.sizesFromHeights()}`],
    });
    expect(paste(page(cm, "Height 86", "Chest 53"))).toEqual(nothing);
  });
});

describe("readSizes on words that are a place too", () => {
  it("keeps a waist behind a blank line where the sizes have another word", () => {
    expect(paste(sheet("Körpermaße (cm)", "Size|34|36", "Bust|80|84", "", "Taille|62|66", "Hüfte|86|90"))).toEqual({
      tables: [["body cm | 34 36", "bust: Bust | 80 84", "waist: Taille | 62 66", "hip: Hüfte | 86 90"]],
      issues: [],
    });
  });
  it("begins a table with all other sizes behind a blank line", () => {
    expect(
      paste(sheet("Mensurations (cm)", "Taille|34|36", "Poitrine|80|84", "", "Taille|38|40", "Poitrine|88|92")).tables,
    ).toEqual([
      ["body cm | 34 36", "bust: Poitrine | 80 84"],
      ["body cm | 38 40", "bust: Poitrine | 88 92"],
    ]);
  });
  it("keeps a waist that begins as the sizes do", () => {
    expect(
      paste(sheet("Körpermaße (cm)", "Größe|60|64|68", "Brustumfang|80|84|88", "Taille|60|65|70", "Hüfte|86|90|94")),
    ).toEqual({
      tables: [["body cm | 60 64 68", "bust: Brustumfang | 80 84 88", "waist: Taille | 60 65 70", "hip: Hüfte | 86 90 94"]],
      issues: [],
    }); // prettier-ignore
  });
  it("begins a table with other sizes behind a blank line, though one is the same", () => {
    expect(
      paste(sheet("Mensurations (cm)", "Taille|36|38", "Poitrine|84|88", "", "Taille|38|40", "Poitrine|88|92")),
    ).toEqual({
      tables: [
        ["body cm | 36 38", "bust: Poitrine | 84 88"],
        ["body cm | 38 40", "bust: Poitrine | 88 92"],
      ],
      issues: [],
    });
  });
  it.each(["Hüfte", "Hüftweite", "Oberweite", "Brustumfang", "Heup", "Heupwijdte", "Bovenwijdte"])(
    "takes Taille for the waist where %s stands near it",
    (near) => {
      for (const lines of [
        ["Taille 66 70 74", `${near} 90 94 98`],
        [`${near} 90 94 98`, "Taille 66 70 74"],
      ])
        expect(paste(page("cm", ...lines)).tables).toEqual([]);
    },
  );
  it("takes Taille for the sizes where those words are far away", () => {
    const french = ["Mensurations (cm)", "Taille 36 38 40", "Poitrine 84 88 92"];
    const tables = [["body cm | 36 38 40", "bust: Poitrine | 84 88 92"]];
    const lines = (count: number): string[] => Array.from({ length: count }, () => "à suivre");
    expect(paste(page(...french)).tables).toEqual(tables);
    expect(paste(page(...french, ...lines(10), "Oberweite")).tables).toEqual(tables);
    expect(paste(page(...french, ...lines(9), "Oberweite")).tables).toEqual([]);
    expect(paste(page("Oberweite", ...lines(2), ...french)).tables).toEqual(tables);
    expect(paste(page("Oberweite", ...lines(1), ...french)).tables).toEqual([]);
  });
});

describe("readSizes on a corner that says more than sizes", () => {
  it("keeps a unit in the corner to its own table", () => {
    expect(paste(sheet("Size (cm)|34|36", "Bust|80|84", "", "Size|8|10", "Bust|31|32"))).toEqual({
      tables: [
        ["body cm | 34 36", "bust: Bust | 80 84"],
        ["body in | 8 10", "bust: Bust | 31 32"],
      ],
      issues: [`1 warning ${doubts.noHeading()}`, `5 warning ${doubts.unitFromNumbers("inches")}`],
    });
  });
  it("takes the word for measurements as their heading where none stands above", () => {
    expect(paste(sheet("Measurements|34|36", "Bust|80|84"))).toEqual({
      tables: [["body cm | 34 36", "bust: Bust | 80 84"]],
      issues: [`2 warning ${doubts.unitFromNumbers("centimetres")}`],
    });
  });
  it("begins body measurements below cloth", () => {
    expect(paste(sheet("Fabric (yd)", "Size|8|10", '45"|2|2 1/8', "Size chart (in)|12|14", "Waist|24|25", "Yoke|12|13"))).toEqual({
      tables: [
        ["fabric yd | 8 10", "no view, main, 45 in, nap? | 2 2.125"],
        ["body in | 12 14", "waist: Waist | 24 25", "Yoke: Yoke | 12 13"],
      ],
      issues: [`6 warning (Yoke) ${doubts.unknownPlace("Yoke")}`],
    }); // prettier-ignore
  });
  it("gives the view of finished measurements to their rows", () => {
    expect(
      paste(
        sheet("Finished measurements View A (cm)|34|36", "Bust|90|94", "", "Finished measurements View B (cm)|34|36", "Bust|96|100"),
      ),
    ).toEqual({ tables: [["finished cm | 34 36", "bust A: Bust | 90 94", "bust B: Bust | 96 100"]], issues: [] });
  }); // prettier-ignore
  it("says nothing new with the word for measurements", () => {
    expect(
      paste(sheet(cm, "Measurement|34|36", "Bust|80|84", "", "Finished measurements (cm)", "Measurement|34|36", "Bust|90|94")),
    ).toEqual({
      tables: [
        ["body cm | 34 36", "bust: Bust | 80 84"],
        ["finished cm | 34 36", "bust: Bust | 90 94"],
      ],
      issues: [],
    });
  }); // prettier-ignore
  it("knows the heading of a column for the nap", () => {
    expect(paste(sheet("Fabric required (yd)", "Nap|8|10", 'A 45"|2|2 1/8'))).toEqual({
      tables: [["fabric yd | 8 10", "A, main, 45 in, nap? | 2 2.125"]],
      issues: [],
    });
  });
  it("is about cloth with a column of widths, and keeps what the lines above said", () => {
    expect(paste(sheet("Fabric required (yd)", "View A", "Width|8|10", '45"|2|2 1/8'))).toEqual({
      tables: [["fabric yd | 8 10", "A, main, 45 in, nap? | 2 2.125"]],
      issues: [],
    });
    expect(paste(sheet(cm, "Measurement|Width|34|36", "Bust|flat|80|84")).tables).toEqual([
      ["body cm | 34 36", "bust: Bust flat | 80 84"],
    ]);
  });
});

describe("readSizes on a width that could be a height", () => {
  it.each(["115 cm|2|2|2", "115 cm|2|2|3", "115 cm|1|2|3"])("reads it with its whole metres: %s", (row) => {
    const lines = sheet("Fabric required (m)", "Size|8|10|12", row);
    const amounts = row.split("|").slice(1).join(" ");
    const tables = [["fabric m | 8 10 12", `no view, main, 115 cm, nap? | ${amounts}`]];
    expect(paste(lines)).toEqual({ tables, issues: [] });
  });
});
