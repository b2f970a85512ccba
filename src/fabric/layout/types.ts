import type { Problem } from "../../problem";
import type { Nap } from "../../chart/model";
import type { LengthUnit } from "../../length";

/** x across the cloth from the fold or the left selvedge, y along the grain. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A pattern piece as it is laid: its box, with everything that is added around it. */
export interface CutPiece {
  readonly name: string;
  /** Across the grain; half the piece when it lies on the fold. */
  readonly width: number;
  /** Along the grain. */
  readonly length: number;
  /** How many are cut, as a pattern says it ("cut 2"); a piece on the fold counts opened out. */
  readonly count: number;
  /** The left edge of the paper lies on the fold. */
  readonly onFold?: boolean;
  /** The grain doesn't matter: it may be turned by a quarter. Never applies while it lies on the fold. */
  readonly mayTurn?: boolean;
  /** The piece's edge, a closed line without its last point, inside the box from 0 to width and 0 to length. */
  readonly outline?: readonly Point[];
  /** What is cut beyond the outline on each side; it is part of the box already. None unless given. */
  readonly allowance?: Allowance;
}

/** Room beyond an outline. */
export interface Allowance {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** A piece that may say which cloths it can be cut from. */
export interface FabricPiece extends CutPiece {
  /** One cloth by name, or several of which one is chosen; absent: any. */
  readonly fabric?: string | readonly string[];
}

export interface Cloth {
  /** The usable width, selvedge to selvedge. */
  readonly width: number;
  /** "folded": lengthwise, selvedges together. "single" unless given. */
  readonly layout?: "single" | "folded";
  /** One repeat along the cloth, which every piece starts on; none unless given. */
  readonly repeat?: number;
  /** Room kept between pieces; none unless given. */
  readonly gap?: number;
  /** The unit that sentences name; sizes are in one unit throughout whatever it is. */
  readonly unit?: LengthUnit;
  /** "without": pieces may also lie upside down, which only outlines make use of. Unless given, all lie one way. */
  readonly nap?: Nap;
}

/** A cloth of several: hers, with a length, or one to be bought. */
export interface NamedCloth extends Cloth {
  readonly name: string;
  /** What there is of it; absent for cloth that is still to be bought. */
  readonly length?: number;
}

export interface Effort {
  /** How many whole layouts are tried at most; at least 1. */
  readonly tries: number;
  /** The same seed gives the same layout on every machine; 1 unless given. */
  readonly seed?: number;
}

/** Where one piece lies, in the caller's unit. */
export interface Placement {
  readonly piece: string;
  /** "folded": through both layers. "single": on the opened cloth, where x runs over its whole width. */
  readonly layer: "single" | "folded";
  readonly x: number;
  readonly y: number;
  /** Across the cloth as it lies: turned, or opened out to twice its paper where a fold piece lies single. */
  readonly width: number;
  readonly length: number;
  readonly turned: boolean;
  /** The piece lies on the fold. */
  readonly onFold: boolean;
  /** The edge as it lies on the cloth, where the piece has one. */
  readonly outline?: readonly Point[];
}

export interface Layout {
  /** Along the grain; null when a piece can't be placed: the problems name it. */
  readonly length: number | null;
  /** No layout of these pieces on this cloth is shorter. */
  readonly lowerBound: number;
  /** This very length is known to be the shortest that boxes allow. */
  readonly proved: boolean;
  /** "outlines" when at least one piece lies by its edge. */
  readonly by: "boxes" | "outlines";
  /** From the beginning of the cloth, left to right. */
  readonly placements: readonly Placement[];
  /** How many layouts were tried. */
  readonly tries: number;
  /** With a length: what a person should know about it. Without: why there is none. */
  readonly problems: readonly Problem[];
}
