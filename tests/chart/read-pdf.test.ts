import { PDFDocument, StandardFonts } from "pdf-lib";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
import { doubts } from "../../src/words/reading";
import { pagesWithCharts, pdfText, readPdfText, type PdfPiece } from "../../src/chart/read-pdf";

type Place = readonly [text: string, x: number, y: number, size?: number];

/** Pages made with one library and read with another, as the pane reads a dropped file. */
async function pagesOf(pages: readonly (readonly Place[])[]): Promise<PdfPiece[][]> {
  const made = await PDFDocument.create();
  const font = await made.embedFont(StandardFonts.Helvetica);
  for (const places of pages) {
    const page = made.addPage([595, 842]);
    for (const [text, x, y, size = 10] of places) page.drawText(text, { x, y, size, font });
  }
  const pdf = await getDocument({ data: await made.save(), useSystemFonts: false, verbosity: 0 }).promise;
  const result: PdfPiece[][] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const { items } = await (await pdf.getPage(number)).getTextContent();
    result.push(
      items.flatMap((item) =>
        "str" in item
          ? [{ text: item.str, x: item.transform[4] as number, y: item.transform[5] as number, width: item.width }]
          : [],
      ),
    );
  }
  await pdf.destroy();
  return result;
}

const row = (y: number, label: string, cells: readonly string[], x = 150): Place[] => [
  [label, 50, y],
  ...cells.map((cell, index): Place => [cell, x + index * 50, y]),
];

describe("readPdfText", () => {
  it("reads a chart whose cells stand apart", async () => {
    const pages = await pagesOf([
      [["Camp shirt", 50, 800, 18], ["Print at 100 % and check the square: 10 cm", 50, 780]],
      [["Body measurements (inches)", 50, 800], ...row(780, "Size", ["8", "10", "12"]), ...row(765, "Bust", ["31 1/2", "32 1/2", "34"]), ...row(750, "Back waist length", ["15 3/4", "16", "16 1/4"])],
      [["Sew the side seams with an allowance of 1.5 cm.", 50, 800]],
    ]); // prettier-ignore
    expect(readPdfText(pages).tables).toEqual([
      { kind: "body", unit: "in", sizes: ["8", "10", "12"], rows: [
        { place: "bust", label: "Bust", values: [31.5, 32.5, 34] },
        { place: "backWaistLength", label: "Back waist length", values: [15.75, 16, 16.25] },
      ] },
    ]); // prettier-ignore
  });

  it("puts fractions together that are set small and raised", async () => {
    const small = (x: number, y: number, top: string, bottom: string): Place[] => [
      [top, x, y + 3, 6],
      ["/", x + 4, y, 8],
      [bottom, x + 7, y - 1, 6],
    ];
    const pages = await pagesOf([
      [["Body measurements (in)", 50, 800], ...row(780, "Size", ["8", "10"]), ["Bust", 50, 765], ["31", 150, 765], ...small(163, 765, "1", "2"), ["33", 200, 765], ...row(750, "Hip", ["34", "36"])],
    ]); // prettier-ignore
    expect(readPdfText(pages).tables.map((table) => table.rows.map((line) => line.values))).toEqual([
      [
        [31.5, 33],
        [34, 36],
      ],
    ]);
  });

  it("leaves a cell blank that the page leaves blank", async () => {
    const blank = row(765, "Bust", ["84", "", "92"]).filter(([text]) => text !== "");
    const pages = await pagesOf([
      [
        ["Body measurements (cm)", 50, 800],
        ...row(780, "Size", ["36", "38", "40"]),
        ...blank,
        ...row(750, "Hip", ["90", "94", "98"]),
      ],
    ]);
    const { tables, issues } = readPdfText(pages);
    expect(tables[0]?.rows[0]?.values).toEqual([84, null, 92]);
    expect(issues).toContainEqual(expect.objectContaining({ place: "bust", size: "38", severity: "warning" }));
  });

  it("says that a scan has no text, and that prose has no chart", async () => {
    expect(readPdfText([[], []]).issues[0]?.message).toMatch(/pictures of its pages/);
    expect(readPdfText(await pagesOf([[["Wash the cloth first.", 50, 800]]])).issues[0]?.message).toMatch(
      /No chart was found/,
    );
  });

  it("never throws on pieces without a place", () => {
    expect(() =>
      readPdfText([
        [
          { text: "34", x: Number.NaN, y: 0, width: 0 },
          { text: "Bust", x: 1e9, y: 1, width: -3 },
        ],
      ]),
    ).not.toThrow();
  });
});

describe("pdfText", () => {
  it("keeps columns and leaves out pages without figures", () => {
    const page = (text: string): PdfPiece[] => [{ text, x: 0, y: 0, width: text.length * 5 }];
    const chart: PdfPiece[] = [
      { text: "Size", x: 0, y: 20, width: 20 }, { text: "8", x: 50, y: 20, width: 5 }, { text: "10", x: 100, y: 20, width: 10 },
      { text: "Bust", x: 0, y: 0, width: 20 }, { text: "31", x: 50, y: 0, width: 10 }, { text: "32", x: 100, y: 0, width: 10 },
    ]; // prettier-ignore
    expect(pagesWithCharts([page("Sew."), chart])).toEqual([2]);
    expect(pagesWithCharts([page("Sew.")])).toEqual([]);
    expect(pdfText([page("Sew."), chart])).toBe("Size      8         10\nBust      31        32");
  });
});

/** A piece whose letters are 4 wide, unless it says otherwise. */
const piece = (text: string, x: number, y: number, width = text.length * 4): PdfPiece => ({ text, x, y, width });
const scan = { tables: [], issues: [{ line: 1, severity: "error", message: doubts.scanned() }] };

describe("readPdfText on pages with little text", () => {
  it("takes a page of spaces for a scan, and reads past a scanned page", () => {
    expect(readPdfText([])).toEqual(scan);
    expect(readPdfText([[piece(" ", 0, 0), piece("", 5, 0)]])).toEqual(scan);
    const chart = [piece("Size 8 10", 0, 20), piece("Bust 31 32", 0, 8)];
    expect(readPdfText([[], chart]).tables).toEqual([
      { kind: "body", unit: "in", sizes: ["8", "10"], rows: [{ place: "bust", label: "Bust", values: [31, 32] }] },
    ]);
  });
});

describe("pagesWithCharts", () => {
  const page = (...lines: readonly string[]) => lines.map((line, at) => piece(line, 0, 500 - at * 20));
  it.each([
    ["two lines of two figures", ["8 10", "31 32"], [1]],
    ["figures that are fractions", ["Gap ½ ¾", "Gap ⅛ ⅞"], [1]],
    ["two lines of one figure", ["Cut 2 pieces on the fold", "Cut 4 of lining"], []],
    ["long figures, one a line", ["Size 100", "Size 200"], []],
    ["one figure with its fraction", ["Bust 31½", "Hip 34½"], []],
    ["one line of figures", ["Cut 2 and sew 4", "Press."], []],
    ["no figure at all", ["Sew the seams", "Press the seams"], []],
    ["nothing", [], []],
  ])("is asked of %s", (_, lines, found) => expect(pagesWithCharts([page(...lines)])).toEqual(found));
});

describe("pdfText of pieces", () => {
  const text = (...pieces: readonly PdfPiece[]) => pdfText([pieces]);
  it("keeps all pages where none has a chart, with a blank line between", () => {
    expect(pdfText([[piece("Sew.", 0, 0)], [piece("Press.", 0, 0)]])).toBe("Sew.\n\nPress.");
    expect(pdfText([[], [piece("Press.", 0, 0)]])).toBe("\n\nPress.");
    const chart = [piece("8 10", 0, 20), piece("31 32", 0, 0)];
    expect(pdfText([chart, [piece("Sew.", 0, 0)], chart])).toBe("8 10\n31 32\n\n8 10\n31 32");
  });
  it("puts lines from top to bottom and pieces from left to right, in whatever order they come", () => {
    expect(
      text(piece("34", 40, 0), piece("8", 40, 40), piece("Bust", 0, 20), piece("Size", 0, 40), piece("31", 40, 21), piece("Hip", 0, 0)),
    ).toBe("Size      8\nBust      31\nHip       34"); // prettier-ignore
  });
  it("takes the usual letter's width, not that of a title, of small print or of a piece without a width", () => {
    expect(
      text(
        piece("a", 0, 0, 3),
        piece("Size", 0, 40),
        piece("Camp", 0, 80, 40),
        piece("8", 40, 40),
        piece("10", 60, 40),
        piece("b", 0, 20, 0),
        piece("c", 40, 20, 0),
        piece("d", 60, 20, 0),
      ),
    ).toBe("Camp\nSize      8    10\nb         c    d\na");
    // No piece has a width: a letter counts as 5.
    expect(text(piece("Bust", 0, 0, 0), piece("34", 50, 0, 0))).toBe("Bust      34");
  });
  it("counts columns from the leftmost piece, and indents a line that begins later", () => {
    expect(text(piece("Size", 100, 40), piece("8", 140, 40), piece("Bust", 120, 20))).toBe("Size      8\n     Bust");
    expect(text(piece("Size", 40, 20), piece("Bust", 45.6, 0))).toBe("Size\n Bust");
  });
  it.each([
    ["none where they touch", [piece("Bust", 0, 0), piece("line", 16, 0)], "Bustline"],
    ["one where they stand a little apart", [piece("Bust", 0, 0), piece("line", 18, 0)], "Bust line"],
    ["one up to a gap of 1.3 letters", [piece("Bust", 0, 0, 40), piece("line", 53, 0, 40)], "Bust line"],
    ["two or more in a wider gap", [piece("Bust", 0, 0, 40), piece("line", 53.5, 0, 40)], "Bust  line"],
    ["no second one after a piece that ends with one", [piece("Bust ", 0, 0), piece("line", 22, 0)], "Bust line"],
    ["no second one before a piece that begins with one", [piece("Bust", 0, 0), piece(" line", 18, 0)], "Bust line"],
    ["one before a piece that ends with one", [piece("Bust", 0, 0), piece("line ", 18, 0)], "Bust line"],
    ["one in a line that is indented", [piece("Size", 0, 20), piece("Bust", 8, 0), piece("line", 26, 0)], "Size\n  Bust line"],
    ["one for many in a piece", [piece("Bust \t\n line", 0, 0)], "Bust line"],
    ["none between pieces that overlap", [piece("Bust line", 0, 0), piece("s", 20, 0), piece("x", 36, 0)], "Bust linesx"],
  ])("sets spaces between pieces: %s", (_, pieces, line) => expect(text(...pieces)).toBe(line)); // prettier-ignore
  it("leaves out pieces without a place, and holds one that is far off in 400 columns", () => {
    const lost = [
      piece("31", Number.NaN, 0),
      piece("32", 40, Number.POSITIVE_INFINITY),
      piece("33", 60, 0, Number.NaN),
    ];
    expect(text(piece("Bust", 0, 0), ...lost, piece("34", 40, 0))).toBe("Bust      34");
    expect(text(piece("Bust", 0, 0), piece("34", 1e9, 0))).toBe(`Bust${" ".repeat(396)}34`);
  });
});
