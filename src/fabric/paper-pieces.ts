import { cellText, isErrorCell, isMissing, readLengthCell, readUnitCell, type Cell, type Cells } from "../chart/cell";
import type { BodyUnit } from "../chart/model";
import { clean, convert, type LengthUnit } from "../length";
import { answer, type Result } from "../problem";
import type { Point } from "./layout/types";
import { readOutline } from "./outline-text";
import { pieceFlag, pieceLines, type PieceRow } from "./pieces";
import type { PieceToShape } from "./widths-outline";

/** A paper piece of the list as it stands there: without allowances, in the unit of its own row. */
export interface PaperPiece extends PieceToShape {
  /** The row of the list, its first line being 0. */
  readonly at: number;
  readonly unit: LengthUnit;
  readonly onFold: boolean;
  /** Its edge, where the cell can be read. */
  readonly outline: readonly Point[] | undefined;
  /** Whether anything stands in that cell. */
  readonly outlined: boolean;
}
export interface PaperPieces {
  readonly pieces: readonly PaperPiece[];
  /** The column Outline, the list's first being 0; -1 where it has none. */
  readonly column: number;
}

/**
 * The pieces of a list whose edge can be entered, with the figures that she has typed: a bare number of an outline is in
 * the row's unit. A row whose length or width can't be read, or that is in millimetres or feet, is left out; laying the
 * pieces says what is wrong with it.
 *
 * @param unit what a row without a unit is in
 * @example paperPieces([["Piece", "Length", "Width", "Count"], ["Gore", 62, 30, 6]], "cm").value.pieces[0].length //=> 62
 */
export function paperPieces(cells: Cells, unit: BodyUnit): Result<PaperPieces> {
  const read = pieceLines(cells);
  if (!read.ok) return read;
  const { lines, outline: column } = read.value;
  return answer({ pieces: lines.flatMap(({ at, row }) => paperPiece(at, row, unit)), column });
}

function paperPiece(at: number, row: PieceRow, unit: BodyUnit): readonly PaperPiece[] {
  const name = cellText(row("piece")) || "a piece without a name";
  const named = readUnitCell(row("unit"));
  const folded = pieceFlag(row, name, "on fold");
  if (!named.ok || !folded.ok) return [];
  // Bare numbers of a row in millimetres or feet are no plain figures of a unit that a sentence could name.
  const { unit: mine, factor = 1 } = named.value ?? { unit };
  if (factor !== 1) return [];
  const figure = (cell: Cell): number | undefined => {
    const length = isMissing(cell) ? undefined : readLengthCell(cell, name);
    if (!length?.ok || length.value.value <= 0) return undefined;
    const { value, unit: own } = length.value;
    return own ? clean(convert(value, own, mine)) : value;
  };
  const [width, length, cell] = [figure(row("width")), figure(row("length")), row("outline")];
  if (width === undefined || length === undefined) return [];
  const outline = isErrorCell(cell) ? undefined : readOutline(cell, name, (value) => value);
  return [
    {
      at,
      name,
      width,
      length,
      unit: mine,
      onFold: folded.value === "yes",
      outline: outline?.ok ? outline.value : undefined,
      outlined: !isMissing(cell),
    },
  ];
}
