/** Charts from the text of a PDF, which comes as pieces with their places on the page. */
import { doubts } from "../words/reading";
import type { ChartReading } from "./model";
import { readCharts } from "./read-charts";

/** A piece of text on a page; `y` grows upward, as in PDF. All in the page's own units. */
export interface PdfPiece {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

interface Line {
  readonly y: number;
  readonly pieces: PdfPiece[];
}

/** Pieces whose feet differ by less than this part of a letter's height stand in one line: fractions are set higher. */
const SAME_LINE = 0.6;
/** A gap narrower than this part of a letter is none, wider than `CELL_GAP` letters parts two cells. */
const WORD_GAP = 0.2;
const CELL_GAP = 1.3;

/**
 * The charts of a PDF. Pages without a chart are passed over; a PDF without any text (a scan) is an issue. Lines of
 * issues count in the text that `pdfText` gives.
 *
 * @param pages for each page its pieces of text, in any order
 * @example readPdfText([[{ text: "Size 8 10", x: 0, y: 20, width: 50 }, { text: "Bust 31 32", x: 0, y: 8, width: 55 }]]).tables.length //=> 1
 */
export function readPdfText(pages: readonly (readonly PdfPiece[])[]): ChartReading {
  const hasText = pages.some((page) => page.some((piece) => piece.text.trim() !== ""));
  if (!hasText) return { tables: [], issues: [{ line: 1, severity: "error", message: doubts.scanned() }] };
  return readCharts(pdfText(pages));
}

/**
 * The pages that may hold a chart as text with true columns, a blank line between pages; all pages when none does.
 *
 * @example pdfText([[{ text: "Bust", x: 0, y: 0, width: 20 }, { text: "34", x: 50, y: 0, width: 10 }]]) //=> "Bust      34"
 */
export function pdfText(pages: readonly (readonly PdfPiece[])[]): string {
  const texts = pages.map(pageText);
  const charts = texts.filter(mayHoldChart);
  return (charts.length > 0 ? charts : texts).join("\n\n");
}

/**
 * The pages that may hold a chart, counted from 1.
 *
 * @example pagesWithCharts([[{ text: "Instructions", x: 0, y: 0, width: 60 }]]) //=> []
 */
export function pagesWithCharts(pages: readonly (readonly PdfPiece[])[]): number[] {
  return pages.flatMap((page, index) => (mayHoldChart(pageText(page)) ? [index + 1] : []));
}

/** At least two lines with several figures. */
function mayHoldChart(text: string): boolean {
  const rows = text.split("\n").filter((line) => (line.match(/[\d½¼¾⅛⅜⅝⅞]+/g)?.length ?? 0) >= 2);
  return rows.length >= 2;
}

function pageText(pieces: readonly PdfPiece[]): string {
  const seen = pieces.filter(
    (piece) => piece.text.trim() !== "" && [piece.x, piece.y, piece.width].every(Number.isFinite),
  );
  if (seen.length === 0) return "";
  const letter = letterWidth(seen);
  const left = seen.reduce((least, { x }) => Math.min(least, x), Number.POSITIVE_INFINITY);
  return linesOf(seen, letter * 2 * SAME_LINE)
    .map((line) => lineText(line, letter, left))
    .join("\n");
}

/** The usual width of a letter: half its height, near enough. */
function letterWidth(pieces: readonly PdfPiece[]): number {
  const widths = pieces
    .filter((piece) => piece.width > 0)
    .map((piece) => piece.width / piece.text.length)
    .sort((a, b) => a - b);
  return widths[Math.floor(widths.length / 2)] ?? 5;
}

/** Pieces gathered into lines, top line first, in each from left to right. */
function linesOf(pieces: readonly PdfPiece[], tolerance: number): Line[] {
  const lines: Line[] = [];
  for (const piece of [...pieces].sort((a, b) => b.y - a.y)) {
    const last = lines.at(-1);
    if (last && last.y - piece.y <= tolerance) last.pieces.push(piece);
    else lines.push({ y: piece.y, pieces: [piece] });
  }
  for (const line of lines) line.pieces.sort((a, b) => a.x - b.x);
  return lines;
}

/** A line with its pieces near their columns: words one space apart, cells two or more. */
function lineText(line: Line, letter: number, left: number): string {
  let text = "";
  let end = left;
  for (const piece of line.pieces) {
    const gap = (piece.x - end) / letter;
    const column = Math.min(400, Math.round((piece.x - left) / letter));
    const words = piece.text.replace(/\s+/g, " ");
    if (text === "") text = " ".repeat(Math.max(0, column));
    else if (gap > CELL_GAP) text += " ".repeat(Math.max(2, column - text.length));
    else if (gap > WORD_GAP && !text.endsWith(" ") && !words.startsWith(" ")) text += " ";
    text += words;
    end = Math.max(end, piece.x + piece.width);
  }
  return text.trimEnd();
}
