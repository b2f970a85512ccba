/** Charts with a size in each row, turned so that the sizes stand side by side. */
import { readPlace } from "../places";
import { cellOf, isFormulaLike, type Cell, type Row } from "./cell";
import { isSizeWord } from "./sizes";
import { kindOf, readHeading, unitAlone } from "./headings";
import { looseCount } from "./loose";
import { cutNames, isBareWidths, isFigure, isNamesRow, isWidthName, padded, trimmed, trimmedTo } from "./turned-names";
import { afterBlanks, isSizeRow, sizeAndFigures, sizeRun, type SizeRun } from "./turned-sizes";
import { readWidths } from "./widths";
import type { Doubts } from "./record";
import { sizeSentences } from "./size-sentences";
import { doubts } from "../../words/reading";

export interface Turned {
  readonly rows: Row[];
  /** The first row behind the chart. */
  readonly next: number;
}

/** The turned chart that begins at a row, or null. Rows of sizes with too few or too many cells are named and left out. */
export function turnedChart(rows: readonly Row[], at: number, found: Doubts, isFabric = false): Turned | null {
  const spread = spreadRows(rows, at, isFabric);
  if (!spread) return null;
  const { head } = spread;
  // A heading may stand between the places and the first size.
  const first = spread.body.length > 0 ? { ...spread, headings: [] } : partAgain(rows, spread.next, spread);
  if (!first) return null;
  const [corner, ...columns] = columnsOf(head, first.body, found);
  const turned = corner ? [corner, ...first.headings, ...columns] : [];
  let { next } = first;
  for (let more = partAgain(rows, next, spread); more; more = partAgain(rows, next, spread)) {
    const [sizes, ...others] = columnsOf(head, more.body, found);
    if (sizes) turned.push(...more.headings, withCorner(sizes), ...others);
    next = more.next;
  }
  return { rows: turned, next };
}

/** "Finished garment measurements" between two runs of the same sizes: the places above are those of both. */
function partAgain(
  rows: readonly Row[],
  from: number,
  { head, body: above, run }: Spread,
): (SizeRun & { readonly headings: readonly Row[] }) | null {
  const heading = rows[afterBlanks(rows, from)];
  if (!run || !heading || heading.text.length > 60 || looseCount(heading).count > 0) return null;
  const filled = heading.cells.filter((cell) => cell.text !== "" && !cell.repeated);
  if (filled.length !== 1 || isNamesRow(cutNames(heading))) return null;
  const start = afterBlanks(rows, afterBlanks(rows, from) + 1);
  const again = run(start);
  const size = again.body[0]?.[0]?.text;
  const isWhole = again.body.some((cells) => cells.length === head.at(-1)!.length);
  return (above.length === 0 && isWhole) || above.some((cells) => cells[0]!.text === size)
    ? { ...again, headings: [{ ...heading, cells: filled }] }
    : null;
}

const withCorner = (row: Row): Row => ({ ...row, cells: [{ ...row.cells[0]!, text: "Size" }, ...row.cells.slice(1)] });

/** The columns of the rows of sizes that are whole; the others are named. */
function columnsOf(head: Spread["head"], body: Spread["body"], found: Doubts): Row[] {
  const width = head.at(-1)!.length;
  const good: (readonly Cell[])[] = [];
  for (const row of body) {
    const { text: size, line } = row[0]!;
    if (size === "") found.error(line, doubts.noLabel());
    else if (isFormulaLike(size)) found.error(line, doubts.formulaLabel(size));
    else if (row.length !== width) found.error(line, doubts.shortSize(size, row.length - 1, width - 1), { size });
    else good.push(row);
  }
  return good.length === 0 ? [] : columnsAsRows(head, good);
}

function columnsAsRows(head: readonly (readonly Cell[])[], body: readonly (readonly Cell[])[]): Row[] {
  const names = head.at(-1)!;
  const { line } = names[0]!;
  const rows: Row[] = [];
  let heading = "";
  const make = (cells: Cell[]): Row => ({
    line: cells[0]!.line,
    text: cells.map((cell) => cell.text).join(" "),
    layout: "grid",
    cells,
  });
  for (let column = 0; column < names.length; column++) {
    const above = head
      .map((row) => row[column]!)
      .filter((cell, index, all) => cell.text !== "" && cell.text !== all[index - 1]?.text);
    const kind = above.find(
      (cell) => kindOf(cell.text) !== null && readPlace(cell.text, null) === null && !readWidths(cell.text),
    );
    const unit = above.find((cell) => cell !== kind && unitAlone(cell.text) !== null);
    const label = above.filter((cell) => cell !== kind && cell !== unit);
    const text = label.map((cell) => cell.text).join(" ");
    const first = cellOf(text, label[0]?.line ?? line, label[0]?.column ?? column + 1);
    const row = make([first, ...body.map((cells) => cells[column]!), ...(unit ? [unit] : [])]);
    const headings = kind && kind.text !== heading ? [make([cellOf(kind.text, kind.line, kind.column)])] : [];
    heading = kind?.text ?? heading;
    // A heading in the corner is for all columns; the sizes come first all the same.
    rows.push(...(column === 0 ? [row, ...headings] : [...headings, row]));
  }
  return rows;
}

interface Spread {
  readonly head: readonly (readonly Cell[])[];
  readonly body: readonly (readonly Cell[])[];
  readonly next: number;
  /** The rows of sizes from another row on, read in the same way. */
  readonly run?: (start: number) => SizeRun;
}

/** Head rows (at most four) and the rows of sizes below them, as cells of one width. */
function spreadRows(rows: readonly Row[], at: number, isFabric: boolean): Spread | null {
  const first = rows[at]!;
  const sentences = sizeSentences(rows, at);
  if (sentences) return { head: [sentences.head], body: sentences.body, next: sentences.next };
  if (first.layout === "spaced") return spacedSpread(rows, at, isFabric);
  let names = at;
  while (names < at + 3 && rows[names]?.layout === "grid" && isTopRow(rows[names]!) && !isNamesRow(rows[names]!.cells))
    names++;
  const row = rows[names];
  if (!row || row.layout !== "grid") return null;
  if (!isNamesRow(row.cells) && !(isFabric && isBareWidths(row.cells, rows.slice(names + 1)))) return null;
  let start = names + 1;
  while (start < names + 3 && rows[start] && isSubRow(rows[start]!)) start++;
  const width = Math.max(...rows.slice(names, start).map((head) => trimmed(head.cells).length));
  const head = rows.slice(at, start).map(({ cells }) => padded(cells, width));
  // The row of places must be last but for units; a row of units joins it.
  const order = [...head.slice(0, names - at), ...head.slice(names - at + 1), head[names - at]!];
  const read = (other: Row): readonly Cell[] | null => (isSizeRow(other) ? trimmedTo(other.cells, width) : null);
  const run = (from: number): SizeRun => sizeRun(rows, from, width, read);
  return { head: order, ...run(start), run };
}

/** A row above the places: headings that span columns. */
function isTopRow(row: Row): boolean {
  return (
    row.cells.length > 2 && row.cells.every((cell) => !isFigure(cell.text)) &&
    row.cells.some((cell) => cell.repeated || readHeading(cell.text) !== null || /^(?:view|version|modell|modèle|modelo)\b/i.test(cell.text)) &&
    row.cells.some((cell, index) => index > 0 && cell.text !== "")
  ); // prettier-ignore
}

/** A row of units under the places. */
function isSubRow(row: Row): boolean {
  const filled = row.cells.filter((cell) => cell.text !== "" && !cell.repeated);
  return (
    filled.length > 0 &&
    filled
      .slice(isSizeWord(filled[0]!.text) ? 1 : 0)
      .every((cell) => unitAlone(cell.text) !== null || isWidthName(cell.text))
  );
}

/** The same for text whose cells spaces part: its headings are cut into as many names as the rows have figures. */
function spacedSpread(rows: readonly Row[], at: number, isFabric: boolean): Spread | null {
  const row = rows[at]!;
  if (row.text.length > 200) return null;
  for (const names of [row.cells, cutNames(row)]) {
    const isNames = isNamesRow(names, names !== row.cells);
    if (!isNames && !(isFabric && isBareWidths(names, rows.slice(at + 1, at + 8)))) continue;
    const run = (from: number): SizeRun =>
      sizeRun(rows, from, names.length, (other) => sizeAndFigures(other, names.length - 1));
    const spread = { head: [names], ...run(at + 1), run };
    const part = spread.body.length > 0 ? spread : partAgain(rows, spread.next, spread);
    if (part?.body.some((cells) => cells.length === names.length)) return spread;
  }
  return null;
}
