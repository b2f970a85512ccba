import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { CutPiece, Point } from "../../src/fabric/layout/types";

/** Published cutting instances and our own seeded sets; each file names its source. */
interface BoxInstance {
  readonly name: string;
  readonly width: number;
  readonly optimum: number;
  readonly items: readonly (readonly [number, number, number])[];
}
interface SewingInstance {
  readonly name: string;
  readonly fabricWidth: number;
  readonly pieces: readonly { readonly w: number; readonly h: number; readonly fold: boolean; readonly cut: number }[];
}
interface GarmentInstance {
  readonly name: string;
  readonly stripWidth: number;
  readonly bestLength: number;
  readonly pieces: readonly { readonly qty: number; readonly pts: readonly (readonly [number, number])[] }[];
}

function read<Instance>(file: string): readonly Instance[] {
  const text = readFileSync(join(import.meta.dirname, "../figures/packing", file), "utf8");
  return (JSON.parse(text) as { instances: readonly Instance[] }).instances;
}

export interface BoxCase {
  readonly name: string;
  readonly width: number;
  readonly optimum: number;
  readonly pieces: readonly CutPiece[];
}

export function boxCases(file: "ht-c1-c7.json" | "bkw-n1-n12.json" | "hopper-t-n.json", mayTurn = false): BoxCase[] {
  return read<BoxInstance>(file).map(({ name, width, optimum, items }) => ({
    name,
    width,
    optimum,
    pieces: items.map(([across, length, count], i) => ({
      name: `${name}-${i}`,
      width: across,
      length,
      count,
      mayTurn,
    })),
  }));
}

export interface SewingCase {
  readonly name: string;
  readonly width: number;
  readonly pieces: readonly CutPiece[];
}

/** Lengths in centimetres; a piece on the fold is given by half its width. */
export function sewingCases(): SewingCase[] {
  return read<SewingInstance>("sewing-like-synthetic.json").map(({ name, fabricWidth, pieces }) => ({
    name,
    width: fabricWidth,
    pieces: pieces.map(({ w, h, fold, cut }, i) => ({
      name: `piece ${i + 1}`,
      width: w,
      length: h,
      count: cut,
      onFold: fold,
    })),
  }));
}

export interface GarmentCase {
  readonly name: string;
  readonly width: number;
  readonly bestLength: number;
  readonly pieces: readonly CutPiece[];
}

/**
 * The file's strips lie along x: its y is across the cloth here. Each of a count is a piece by itself, because the sets
 * know no mirror images.
 */
export function garmentCases(): GarmentCase[] {
  return read<GarmentInstance>("irregular-garments.json").map(({ name, stripWidth, bestLength, pieces }) => ({
    name,
    width: stripWidth,
    bestLength,
    pieces: pieces.flatMap(({ qty, pts }, i) => {
      const left = Math.min(...pts.map(([x]) => x));
      const low = Math.min(...pts.map(([, y]) => y));
      const outline: Point[] = pts.map(([x, y]) => ({ x: y - low, y: x - left }));
      const width = Math.max(...outline.map(({ x }) => x));
      const length = Math.max(...outline.map(({ y }) => y));
      return Array.from({ length: qty }, (_, copy) => ({
        name: `${name} ${i}-${copy}`,
        width,
        length,
        count: 1,
        outline,
      }));
    }),
  }));
}
