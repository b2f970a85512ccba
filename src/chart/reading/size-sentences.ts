/** Charts in sentences, a size in each: "Size S: bust 84 cm, waist 66 cm". */
import { readPlace } from "../places";
import { trimMarks } from "../vocabulary/words";
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
    // Other places than the first size's: the size is named and left out, like one with too few or too many.
    const isOther = sentences[0] !== undefined && areOthers(sentence.places, sentences[0].places);
    sentences.push(isOther ? { ...sentence, figures: [] } : sentence);
  }
  const [first] = sentences;
  if (!first || sentences.length < 2) return null;
  const corner = cellOf("Size", rows[at]!.line, 1);
  return { head: [corner, ...first.places], body: sentences.map(({ size, figures }) => [size, ...figures]), next };
}

const areOthers = (a: readonly Cell[], b: readonly Cell[]): boolean =>
  a.length === b.length && a.some((cell, index) => cell.text.toLowerCase() !== b[index]!.text.toLowerCase());

function sentenceOf(row: Row): Sentence | null {
  const isGrid = row.layout === "grid";
  const text = isGrid ? row.cells.map((cell) => cell.text).join(", ") : row.text;
  const colon = text.length <= 300 ? /^([^:=]{1,24}?) ?(?::|=| [-–]) /.exec(text) : null;
  if (!colon) return null;
  const { label } = sizeOf(colon[1]!);
  if (!isSizeLabel(label)) return null;
  const { line, column } = row.cells[0]!;
  const places: Cell[] = [];
  const figures: Cell[] = [];
  let at = colon[0].length;
  for (const piece of text.slice(at).split(/[,;/|] | and /)) {
    const start = piece.search(/[\d½¼¾]/);
    const place = trimMarks(piece.slice(0, Math.max(0, start)), ":=");
    const figure = piece.slice(start).replace(/\.$/, "").trim();
    if (readPlace(place, null) === null || readFigure(figure).kind !== "figure") return null;
    at = text.indexOf(piece, at);
    places.push(cellOf(place, line, 1));
    figures.push(cellOf(figure, line, isGrid ? cellAt(row, at + start) : column + at + start));
  }
  return { size: cellOf(label, line, column), places, figures };
}

/** The column of the cell that an offset in the joined text falls in. */
function cellAt(row: Row, offset: number): number {
  let left = offset;
  return row.cells.find((cell) => (left -= cell.text.length + 2) < 0)!.column;
}
