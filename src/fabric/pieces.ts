import {
  cellText,
  errorCellProblem,
  isBlank,
  isErrorCell,
  isMissing,
  LARGEST,
  readLengthCell,
  readUnitCell,
} from "../chart/cell";
import type { Cell, Cells } from "../chart/cell";
import type { BodyUnit } from "../chart/model";
import { convert, type LengthUnit } from "../length";
import { answer, refuse, type Result } from "../problem";
import { onTheBias } from "./bias";
import type { CutPiece } from "./layout/types";
import { readOutline } from "./outline-text";

/** The pieces that are cut from one fabric; the name is "" where the list names none. */
export interface PiecesOfFabric {
  readonly name: string;
  readonly pieces: readonly CutPiece[];
}

const HEADINGS = [
  "piece", "length", "width", "unit", "count", "on fold", "may turn", "fabric", "seam allowance", "hem", "outline",
] as const; // prettier-ignore
type Heading = (typeof HEADINGS)[number];
export type PieceRow = (heading: Heading) => Cell;

/**
 * Reads a list of paper pieces with its headings, in any order: Piece, Length, Width, Count, and if wanted Unit, On fold,
 * May turn, Fabric, Seam allowance, Hem and Outline. Allowances are added here: the seam allowance on every edge but the
 * fold, the hem at the bottom instead of it. A unit in a cell wins, then the row's own, then `unit`, in which the pieces
 * are given. "bias" under May turn lays a piece askew. Blank rows are left out; fabrics come in the list's order.
 *
 * Refuses a row without a size or count that can be cut, by the piece's name.
 *
 * @example
 * readPieces([["Piece", "Length", "Width", "Count"], ["Cuff", 20, 10, 2]], "in")
 * //=> { ok: true, value: [{ name: "", pieces: [{ name: "Cuff", width: 10, length: 20, count: 2, … }] }] }
 */
export function readPieces(cells: Cells, unit: BodyUnit): Result<readonly PiecesOfFabric[]> {
  const lines = pieceLines(cells);
  if (!lines.ok) return lines;
  const byFabric = new Map<string, { name: string; pieces: CutPiece[] }>();
  for (const { row } of lines.value.lines) {
    const wrong = HEADINGS.map(row).find(isErrorCell);
    if (wrong !== undefined && isErrorCell(wrong)) return errorCellProblem(wrong);
    const piece = readPiece(row, unit);
    if (!piece.ok) return piece;
    const name = cellText(row("fabric"));
    const fabric = byFabric.get(name.toLowerCase()) ?? { name, pieces: [] };
    fabric.pieces.push(piece.value);
    byFabric.set(name.toLowerCase(), fabric);
  }
  return byFabric.size === 0 ? refuse("noPieces", {}) : answer([...byFabric.values()]);
}

/** The filled rows of a list with their place in it; `outline` is the column of that heading, -1 for none. */
export function pieceLines(
  cells: Cells,
): Result<{ readonly lines: readonly { readonly at: number; readonly row: PieceRow }[]; readonly outline: number }> {
  const top = cells.findIndex((line) => line.some((cell) => key(cell) === "length"));
  const headings = (cells[top] ?? cells[0] ?? []).map(key);
  for (const heading of ["Piece", "Length", "Width", "Count"])
    if (top < 0 || !headings.includes(heading.toLowerCase()))
      return refuse("piecesHeading", { heading, found: headings.filter(Boolean).join(", ") || "nothing" });
  const lines = cells.flatMap((line, at) => {
    const row: PieceRow = (heading) => line[headings.indexOf(heading)] ?? null;
    const blank = isMissing(row("piece")) && isMissing(row("length")) && isMissing(row("width"));
    return at <= top || blank ? [] : [{ at, row }];
  });
  return answer({ lines, outline: headings.indexOf("outline") });
}

const key = (cell: Cell): string => cellText(cell).toLowerCase().replace(/\s+/g, " ");

function readPiece(row: PieceRow, unit: BodyUnit): Result<CutPiece> {
  const piece = cellText(row("piece")) || "a piece without a name";
  const named = readUnitCell(row("unit"));
  if (!named.ok) return named;
  const own = (value: number, from: LengthUnit | null): number =>
    from ? convert(value, from, unit) : convert(value * (named.value?.factor ?? 1), named.value?.unit ?? unit, unit);
  const size = (what: "width" | "length"): Result<number> => {
    const cell = row(what);
    if (isBlank(cell)) return refuse("pieceSize", { piece, what, text: "blank" });
    const read = readLengthCell(cell, `the ${what} of "${piece}"`);
    if (!read.ok) return read;
    if (read.value.value === 0) return refuse("pieceSize", { piece, what, text: "0" });
    return answer(own(read.value.value, read.value.unit));
  };
  const extra = (heading: "seam allowance" | "hem", otherwise: number): Result<number> => {
    const cell = row(heading);
    if (isMissing(cell)) return answer(otherwise);
    const read = readLengthCell(cell, `the ${heading} of "${piece}"`);
    return read.ok ? answer(own(read.value.value, read.value.unit)) : read;
  };
  const [width, length, seam] = [size("width"), size("length"), extra("seam allowance", 0)];
  const [onFold, mayTurn] = [pieceFlag(row, piece, "on fold"), pieceFlag(row, piece, "may turn")];
  const count = readCount(row("count"), piece);
  const outline = readOutline(row("outline"), piece, (value) => own(value, null));
  if (!width.ok) return width;
  if (!length.ok) return length;
  if (!seam.ok) return seam;
  const hem = extra("hem", seam.value);
  if (!hem.ok) return hem;
  if (!onFold.ok) return onFold;
  if (!mayTurn.ok) return mayTurn;
  if (!count.ok) return count;
  if (!outline.ok) return outline;
  const folded = onFold.value === "yes";
  const allowance = { left: folded ? 0 : seam.value, right: seam.value, bottom: hem.value, top: seam.value };
  const { left, bottom } = allowance;
  const flat: CutPiece = {
    name: piece,
    width: left + width.value + allowance.right,
    length: bottom + length.value + allowance.top,
    count: count.value,
    onFold: folded,
    mayTurn: mayTurn.value === "yes",
    ...(outline.value && { outline: outline.value.map(({ x, y }) => ({ x: x + left, y: y + bottom })), allowance }),
  };
  if (mayTurn.value !== "bias") return answer(flat);
  if (folded) return refuse("unknownFlag", { piece, column: "May turn", text: "bias (on the fold)" });
  return answer(onTheBias(flat));
}

const YES: ReadonlySet<string> = new Set(["yes", "true", "y", "1", "x"]);
const NO: ReadonlySet<string> = new Set(["", "no", "false", "n", "0"]);

export function pieceFlag(
  row: PieceRow,
  piece: string,
  heading: "on fold" | "may turn",
): Result<"yes" | "no" | "bias"> {
  const text = key(row(heading));
  if (YES.has(text)) return answer("yes");
  if (NO.has(text)) return answer("no");
  if (heading === "may turn" && text === "bias") return answer("bias");
  return refuse("unknownFlag", {
    piece,
    column: heading === "on fold" ? "On fold" : "May turn",
    text: cellText(row(heading)),
  });
}

/** A blank is refused: a pair counted once is half the cloth. */
function readCount(cell: Cell, piece: string): Result<number> {
  const text = cellText(cell);
  const count = typeof cell === "number" ? cell : Number(text.replace(",", "."));
  if (isMissing(cell) || !Number.isInteger(count) || count < 1)
    return refuse("pieceCount", { piece, text: isBlank(cell) ? "" : text });
  return count > LARGEST ? refuse("excelDate", { text }) : answer(count);
}
