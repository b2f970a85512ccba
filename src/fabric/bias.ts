import type { CutPiece, Point } from "./layout/types";

/**
 * A piece laid askew, its own grain at 45 degrees to the cloth's: the box around it, with the piece as its outline. It
 * may be turned by a quarter, which leaves it on the bias.
 *
 * Geometry: a strip of width w and length l takes a square of (w + l) / √2.
 *
 * @example onTheBias({ name: "Binding", width: 4, length: 60, count: 1 }).width //=> 45.2548…
 */
export function onTheBias(piece: CutPiece): CutPiece {
  const { width, length, outline, allowance } = piece;
  const corners: readonly Point[] = outline ?? [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: length },
    { x: 0, y: length },
  ];
  const most = allowance ? Math.max(allowance.left, allowance.right, allowance.bottom, allowance.top) : 0;
  const beyond = most * Math.SQRT2;
  const askew = corners.map(({ x, y }) => ({ x: (x - y) * Math.SQRT1_2, y: (x + y) * Math.SQRT1_2 }));
  const left = Math.min(...askew.map(({ x }) => x)) - beyond;
  const low = Math.min(...askew.map(({ y }) => y)) - beyond;
  const moved = askew.map(({ x, y }) => ({ x: x - left, y: y - low }));
  return {
    ...piece,
    width: Math.max(...moved.map(({ x }) => x)) + beyond,
    length: Math.max(...moved.map(({ y }) => y)) + beyond,
    mayTurn: true,
    outline: moved,
    ...(beyond > 0 && { allowance: { left: beyond, right: beyond, bottom: beyond, top: beyond } }),
  };
}
