import { PDFDocument, StandardFonts } from "pdf-lib";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, it } from "vitest";
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
