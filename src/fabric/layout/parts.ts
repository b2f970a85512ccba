import type { Box } from "./strip";
import { stepsUp } from "./steps";
import type { Cloth, CutPiece } from "./types";

/** One thing that is laid: a piece, or a pair of them through both layers. */
export interface Part {
  readonly piece: CutPiece;
  readonly layer: "single" | "folded";
  readonly box: Box;
  /** The second of a pair that is cut from one layer: its outline is the mirror image. */
  readonly mirrored: boolean;
}

/** What lies folded, and what lies on the opened cloth after it. */
export interface Zones {
  readonly folded: readonly Part[];
  readonly single: readonly Part[];
}

/**
 * The pieces in an order of their own, so that the order in which they are listed changes nothing: large ones first, those
 * of one size by name.
 */
export function sortPieces<Piece extends CutPiece>(pieces: readonly Piece[]): Piece[] {
  const key = ({ name, onFold, mayTurn, outline }: CutPiece): string =>
    JSON.stringify([onFold ?? false, mayTurn ?? false, outline ?? null, name]);
  return [...pieces].sort(
    (a, b) =>
      b.length - a.length || b.width - a.width || b.count - a.count || (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0),
  );
}

/**
 * The parts on this cloth. Single: every piece by itself, fold pieces opened out. Folded: a pair counts once, a piece on
 * the fold lies there, and what is wider than half the cloth lies opened after the fold. The odd one of a count of 3 lies
 * folded too (its second layer is left over), or opened with `oddOpened`.
 *
 * @param pieces in the order of `sortPieces`, all narrow enough for the cloth
 */
export function zonesOf(pieces: readonly CutPiece[], cloth: Cloth, halfWidth: number, oddOpened: boolean): Zones {
  const folded: Part[] = [];
  const single: Part[] = [];
  const repeat = (count: number, to: Part[], make: (copy: number) => Part): void => {
    for (let copy = 0; copy < count; copy++) to.push(make(copy));
  };
  for (const piece of pieces) {
    const { count } = piece;
    const opened = (copy: number): Part => singlePart(piece, copy % 2 === 1);
    if (cloth.layout !== "folded") repeat(count, single, opened);
    else if (piece.onFold) repeat(count, folded, () => foldedPart(piece));
    else if (fitsFolded(piece, halfWidth)) {
      const odd = oddOpened ? count % 2 : 0;
      repeat(Math.ceil((count - odd) / 2), folded, () => foldedPart(piece));
      repeat(odd, single, opened);
    } else repeat(count, single, opened);
  }
  return { folded, single };
}

/** Whether a piece that doesn't lie on the fold can be cut through both layers. */
export function fitsFolded(piece: CutPiece, halfWidth: number): boolean {
  return stepsUp(piece.width) <= halfWidth || (piece.mayTurn === true && stepsUp(piece.length) <= halfWidth);
}

export function foldedPart(piece: CutPiece): Part {
  const onFold = piece.onFold ?? false;
  const mayTurn = (piece.mayTurn ?? false) && !onFold;
  const box = { width: stepsUp(piece.width), length: stepsUp(piece.length), onFold, mayTurn };
  return { piece, layer: "folded", box, mirrored: false };
}

export function singlePart(piece: CutPiece, mirrored: boolean): Part {
  const width = stepsUp(piece.width) * (piece.onFold ? 2 : 1);
  const box = { width, length: stepsUp(piece.length), onFold: false, mayTurn: piece.mayTurn ?? false };
  return { piece, layer: "single", box, mirrored: mirrored && !piece.onFold };
}
