/** A piece of text on a page: its left edge and its height above the bottom, in points. */
export interface PdfText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/**
 * The lines of a document's pages as text: pieces at the same height are one line, a gap wider than a space a tab.
 * Pages without a figure hold no chart.
 */
export function readPdfText(pages: readonly (readonly PdfText[])[]): {
  readonly text: string;
  readonly pages: readonly number[];
} {
  const texts = pages.map(pageText);
  const numbered = texts.flatMap((text, index) => (/\d/.test(text) ? [{ text, page: index + 1 }] : []));
  return { text: numbered.map(({ text }) => text).join("\n\n"), pages: numbered.map(({ page }) => page) };
}

const SAME_LINE = 3;
const GAP = 6;

function pageText(pieces: readonly PdfText[]): string {
  const sorted = [...pieces].sort((a, b) => b.y - a.y || a.x - b.x);
  const lines: PdfText[][] = [];
  for (const piece of sorted) {
    const line = lines.at(-1);
    if (line && Math.abs(line[0]!.y - piece.y) <= SAME_LINE) line.push(piece);
    else lines.push([piece]);
  }
  return lines.map(lineText).join("\n");
}

function lineText(line: PdfText[]): string {
  let text = "";
  let end: number | undefined;
  for (const piece of line.sort((a, b) => a.x - b.x)) {
    const gap = end === undefined ? 0 : piece.x - end;
    text += (gap > GAP ? "\t" : gap > 1 ? " " : "") + piece.text.trim();
    end = piece.x + piece.width;
  }
  return text;
}
