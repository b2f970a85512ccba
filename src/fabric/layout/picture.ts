import { clean } from "../../length";
import { outlineArea } from "./outline-area";
import type { Cloth, Layout, Point } from "./types";

/** One piece of the drawing, in the cloth's unit from its lower left corner. */
export interface PicturePiece {
  readonly name: string;
  readonly layer: "single" | "folded";
  readonly onFold: boolean;
  /** The closed line to draw, its outline or its box. */
  readonly line: readonly Point[];
  /** Where the name stands, and the grain arrow runs through; `across` when the piece lies turned. */
  readonly middle: Point;
  readonly grain: "along" | "across";
}
/** A stretch of cloth to draw: the folded one first, then the opened one. */
export interface PictureZone {
  readonly layer: "single" | "folded";
  readonly from: number;
  readonly to: number;
  /** Half the cloth where it is folded; the fold is at x = 0, the selvedges at `width`. */
  readonly width: number;
}
/** The numbers of a layout's picture. */
export interface LayoutPicture {
  readonly width: number;
  readonly length: number;
  readonly zones: readonly PictureZone[];
  readonly pieces: readonly PicturePiece[];
  /** The share of the cloth that no piece covers, 0 to 1. */
  readonly waste: number;
  /** How much longer the layout is than anything could be, 0 when it is known to be the shortest. */
  readonly overBound: number;
}

/**
 * A layout drawn to scale, as numbers: pieces with their lines, the folded and the opened stretch, what is wasted and how
 * near the length is to what no layout can be shorter than. Null where there is no layout.
 *
 * @example layoutPicture(cuttingLayout(pieces, cloth, { tries: 100 }), cloth)?.waste
 */
export function layoutPicture(layout: Layout, cloth: Cloth): LayoutPicture | null {
  const { length, lowerBound, placements, proved } = layout;
  if (length === null) return null;
  const pieces = placements.map(({ piece, layer, onFold, x, y, width, length: long, turned, outline }) => ({
    name: piece,
    layer,
    onFold,
    line: outline ?? [{ x, y }, { x: x + width, y }, { x: x + width, y: y + long }, { x, y: y + long }], // prettier-ignore
    middle: { x: x + width / 2, y: y + long / 2 },
    grain: turned ? ("across" as const) : ("along" as const),
  }));
  const folded = placements.filter(({ layer }) => layer === "folded");
  const foldedEnd = Math.max(0, ...folded.map((one) => one.y + one.length));
  const zones: PictureZone[] = [];
  if (folded.length > 0) zones.push({ layer: "folded", from: 0, to: foldedEnd, width: cloth.width / 2 });
  if (folded.length < placements.length)
    zones.push({ layer: "single", from: foldedEnd, to: length, width: cloth.width });
  const covered = pieces.reduce((sum, { line, layer }) => sum + outlineArea(line) * (layer === "folded" ? 2 : 1), 0);
  return {
    width: cloth.width,
    length,
    zones,
    pieces,
    waste: Math.max(0, clean(1 - covered / (cloth.width * length))),
    overBound: proved || lowerBound === 0 ? 0 : clean(length / lowerBound - 1),
  };
}
