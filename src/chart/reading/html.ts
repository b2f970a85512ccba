/** Pasted HTML as rows of cells. Only its text is used; nothing of it is ever run or shown as markup. */
import { Parser } from "htmlparser2";
import { cellOf, type Cell, type Row } from "./cell";

interface OpenCell {
  text: string;
  readonly rowSpan: number;
  readonly columnSpan: number;
}
/** A cell that spans further rows: it stands in each of them. */
interface Hanging {
  readonly text: string;
  rows: number;
}
interface OpenTable {
  row: OpenCell[] | null;
  cell: OpenCell | null;
  hanging: Map<number, Hanging>;
}

const UNSEEN = new Set(["script", "style", "template", "noscript", "head", "title", "select", "svg"]);
const LINE_ENDS = new Set(
  "br p div li h1 h2 h3 h4 h5 h6 tr table ul ol dt dd section article header footer caption pre figcaption hr".split(
    " ",
  ),
);
/** More columns than any chart; a hostile colspan must not fill the memory. */
const MOST_COLUMNS = 100;
const MOST_ROWS = 4000;
const MOST_CELLS = 60_000;
const LONGEST_CELL = 2000;
/** Deeper than any page: the parser keeps the open elements in a list, and a hostile paste must not make it long. */
const DEEPEST = 1000;
const CHUNK = 1 << 15;

interface RowPiece {
  readonly kind: "row";
  readonly cells: readonly string[];
  readonly repeated: readonly boolean[];
}
type HtmlPiece = RowPiece | { readonly kind: "text"; readonly text: string } | { readonly kind: "gap" };

/** Rows of tables and the lines between them, in reading order. */
function htmlPieces(html: string): { readonly pieces: HtmlPiece[]; readonly isCut: boolean } {
  const pieces: HtmlPiece[] = [];
  const tables: OpenTable[] = [];
  let loose = "";
  let unseen = 0;
  let preformatted = 0;
  let rows = 0;
  let depth = 0;
  let cells = 0;

  const endLoose = (): void => {
    for (const line of withoutRaised(loose).split("\n")) pieces.push({ kind: "text", text: line });
    loose = "";
  };
  const write = (text: string): void => {
    const cell = tables.at(-1)?.cell;
    if (cell) cell.text += text;
    else if (!tables.length) loose += text;
  };
  const endCell = (table: OpenTable): void => {
    if (table.cell && table.row) table.row.push(table.cell);
    table.cell = null;
  };
  const endRow = (table: OpenTable): void => {
    endCell(table);
    if (table.row && rows++ < MOST_ROWS && cells < MOST_CELLS) {
      const row = laidOut(table);
      cells += row.cells.length;
      pieces.push(row);
    }
    table.row = null;
  };

  const parser = new Parser(
    {
      onopentag(name, attributes) {
        depth++;
        if (UNSEEN.has(name)) unseen++;
        if (unseen) return;
        const table = tables.at(-1);
        if (name === "pre") preformatted++;
        if (name === "table") {
          // A table within a cell is read as a table of its own, after what stands before it in that cell.
          if (!tables.length) endLoose();
          else if (table?.cell) {
            pieces.push({ kind: "text", text: table.cell.text });
            table.cell.text = "";
          }
          pieces.push({ kind: "gap" });
          tables.push({ row: null, cell: null, hanging: new Map() });
        } else if (name === "tr" && table) {
          endRow(table);
          table.row = [];
        } else if ((name === "td" || name === "th") && table) {
          table.row ??= [];
          endCell(table);
          table.cell = { text: "", rowSpan: span(attributes["rowspan"]), columnSpan: span(attributes["colspan"]) };
        } else if (name === "caption" && table && !table.row) {
          table.row = [];
          table.cell = { text: "", rowSpan: 1, columnSpan: 1 };
        } else if (name === "sup") write(RAISED);
        else if (LINE_ENDS.has(name)) write("\n");
      },
      ontext(text) {
        if (!unseen) write(preformatted ? text : text.replace(/\s+/g, (gap) => (gap.includes("\u00A0") ? gap : " ")));
      },
      onclosetag(name) {
        depth--;
        if (UNSEEN.has(name)) {
          unseen = Math.max(0, unseen - 1);
          return;
        }
        if (unseen) return;
        const table = tables.at(-1);
        if (name === "pre") preformatted = Math.max(0, preformatted - 1);
        if (name === "table" && table) {
          endRow(table);
          tables.pop();
          pieces.push({ kind: "gap" });
        } else if ((name === "tr" || name === "caption") && table) endRow(table);
        else if ((name === "td" || name === "th") && table) endCell(table);
        else if (name === "sup") write(LOWERED);
        else if (name !== "br" && LINE_ENDS.has(name)) write("\n");
      },
    },
    { decodeEntities: true },
  );
  for (let at = 0; at < html.length; at += CHUNK) {
    if (depth > DEEPEST || rows > MOST_ROWS || cells >= MOST_CELLS) return { pieces, isCut: true };
    parser.write(html.slice(at, at + CHUNK));
  }
  if (depth > DEEPEST) return { pieces, isCut: true };
  parser.end();
  while (tables.length) endRow(tables.pop()!);
  endLoose();
  return { pieces, isCut: rows > MOST_ROWS || cells >= MOST_CELLS };
}

const span = (text: string | undefined): number =>
  Math.min(MOST_COLUMNS, Math.max(1, Number.parseInt(text ?? "1", 10) || 1));

/** A row with the cells that hang into it from above, and spanning cells in each column they cover. */
function laidOut(table: OpenTable): RowPiece {
  const cells: string[] = [];
  const repeated: boolean[] = [];
  const takeHanging = (): void => {
    for (let above = table.hanging.get(cells.length); above; above = table.hanging.get(cells.length)) {
      if (--above.rows === 0) table.hanging.delete(cells.length);
      cells.push(above.text);
      repeated.push(true);
    }
  };
  for (const cell of table.row ?? []) {
    takeHanging();
    const text = tidy(cell.text);
    for (let column = 0; column < cell.columnSpan && cells.length < MOST_COLUMNS; column++) {
      if (cell.rowSpan > 1) table.hanging.set(cells.length, { text, rows: cell.rowSpan - 1 });
      cells.push(text);
      repeated.push(column > 0);
    }
  }
  takeHanging();
  return { kind: "row", cells, repeated };
}

/** Around raised text: a fraction's numerator stands apart from its whole number, a footnote's number goes. */
const [RAISED, LOWERED] = ["\uE000", "\uE001"];

const withoutRaised = (text: string): string =>
  text
    .replace(/\uE000\s?\d{1,2}\s?\uE001(?!\s?[⁄/])/g, "")
    .replace(/\uE000/g, " ")
    .replace(/\uE001/g, "");

const tidy = (text: string): string =>
  withoutRaised(text.slice(0, LONGEST_CELL))
    .split("\n")
    .map((line) => line.replace(/\s+/g, " ").trim())
    .filter((line) => line !== "")
    .join("\n");

export interface HtmlRows {
  readonly rows: Row[];
  readonly hasTable: boolean;
  /** More rows than any chart: the rest was not read. */
  readonly isCut: boolean;
  /** The text alone, one line for each block, for HTML that holds no table. */
  readonly text: string;
}

/** Rows of HTML; a row's line is its number counted over the rows of all tables, text between them has the next row's. */
export function htmlRows(html: string): HtmlRows {
  const { pieces, isCut } = htmlPieces(html);
  const rows: Row[] = [];
  let line = 0;
  for (const piece of pieces) {
    if (piece.kind === "row") rows.push(...tableRows(piece.cells, piece.repeated, ++line));
    else {
      const text = piece.kind === "text" ? piece.text.replace(/\s+/g, " ").trim() : "";
      if (text || rows.at(-1)?.text !== "")
        rows.push({ line: line + 1, text, layout: "grid", cells: text ? [cellOf(text, line + 1, 1)] : [] });
    }
  }
  const text = pieces.map((piece) => (piece.kind === "text" ? piece.text : "")).join("\n");
  return { rows, hasTable: line > 0, isCut, text };
}

/** One row; or several, when every cell holds the same number of lines: a list set with line breaks. */
function tableRows(texts: readonly string[], repeated: readonly boolean[], line: number): Row[] {
  const counts = texts.filter((text) => text !== "").map((text) => text.split("\n").length);
  const [lines = 1] = counts;
  const isList = lines > 1 && counts.length > 1 && counts.every((count) => count === lines);
  const make = (cells: readonly string[]): Row => ({
    line,
    text: cells.join(" ").trim(),
    layout: "grid",
    cells: cells.map((text, index): Cell => ({
      ...cellOf(text, line, index + 1),
      ...(repeated[index] ? { repeated: true } : {}),
    })),
  });
  if (!isList) return [make(texts)];
  return Array.from({ length: lines }, (_, index) => make(texts.map((text) => text.split("\n")[index] ?? "")));
}
