/** Charts in sentences, a size in each: "Size S: bust 84 cm, waist 66 cm". */
import { readPlace } from "../places";
import { cellOf, type Cell, type Row } from "./cell";
import { readFigure } from "./figures";
import { sizeOf } from "./header";
import { isSizeLabel } from "./sizes";

export interface SizeSentences {
  /** A row of places, then a row for each size. */
  readonly head: readonly Cell[];
  readonly body: readonly Cell[][];
  readonly next: number;
}

interface Sentence {
  readonly size: Cell;
  readonly places: readonly Cell[];
  readonly figures: readonly Cell[];
}

/** The sentences that begin at a row: at least two, with the same places in the same order. */
export function sizeSentences(rows: readonly Row[], at: number): SizeSentences | null {
  const sentences: Sentence[] = [];
  let next = at;
  for (; next < rows.length; next++) {
    const sentence = sentenceOf(rows[next]!);
    if (!sentence) break;
    // Another number of places, or others: the size is named and left out, like any short row.
    const isSame = !sentences[0] || sameWords(sentence.places, sentences[0].places);
    sentences.push(isSame ? sentence : { ...sentence, figures: [] });
  }
  const [first] = sentences;
  if (!first || sentences.length < 2) return null;
  const corner = cellOf("Size", rows[at]!.line, 1);
  return { head: [corner, ...first.places], body: sentences.map(({ size, figures }) => [size, ...figures]), next };
}

const sameWords = (a: readonly Cell[], b: readonly Cell[]): boolean =>
  a.length === b.length && a.every((cell, index) => cell.text.toLowerCase() === b[index]!.text.toLowerCase());

function sentenceOf(row: Row): Sentence | null {
  const text = row.cells.map((cell) => cell.text).join(row.layout === "grid" ? ", " : " ");
  if (text.length > 300) return null;
  const colon = /^([^:=]{1,24}?) ?(?::|=| [-–]) /.exec(text);
  const label = colon ? sizeOf(colon[1]!).label : "";
  if (!colon || !isSizeLabel(label)) return null;
  const pieces = text.slice(colon[0].length).split(/[,;/|] | and /);
  const places: Cell[] = [];
  const figures: Cell[] = [];
  for (const piece of pieces) {
    const match = /^\s*(\p{L}[\p{L}\s-]{1,40}?)[\s:=]*(?=[\d½¼¾])/u.exec(piece.slice(0, 80));
    const figure = match ? piece.slice(match[0].length).replace(/\.$/, "").trim() : "";
    if (!match || readPlace(match[1]!, null) === null || readFigure(figure).kind !== "figure") return null;
    places.push(cellOf(match[1]!.trim(), row.line, 1));
    figures.push(cellOf(figure, row.line, row.cells[0]!.column + text.indexOf(figure)));
  }
  return places.length > 0 ? { size: cellOf(label, row.line, row.cells[0]!.column), places, figures } : null;
}
