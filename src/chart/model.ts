/**
 * What a pattern prints, as data. Two tables measure a person or a garment (`MeasureTable`), one says how much cloth to
 * buy (`FabricTable`). Numbers stand in the unit named beside them; sizes are labels, never numbers to add to.
 */
import type { Problem } from "../problem";

/** Where a tape goes, e.g. "bust", "backWaistLength"; a label outside the vocabulary keeps its own words. */
export type Place = string;
export type BodyUnit = "in" | "cm";
export type FabricUnit = "yd" | "m";
export type Nap = "with" | "without" | "either";

/** A printed range such as 30-31; `low` is never above `high`. */
export interface Span {
  readonly low: number;
  readonly high: number;
}
/** One printed figure; null where nothing is printed. */
export type Figure = number | Span | null;
/** A cell that holds something which is not a figure: unreadable text, a spreadsheet error. */
export interface Fault {
  readonly fault: Problem;
  /** The spreadsheet error that the cell itself holds ("#DIV/0!"), which an answer hands on as it is. */
  readonly error?: string;
}

export const isSpan = (figure: Figure | Fault): figure is Span =>
  figure !== null && typeof figure === "object" && "low" in figure;
export const isFault = (figure: Figure | Fault): figure is Fault =>
  figure !== null && typeof figure === "object" && "fault" in figure;

export interface MeasureRow {
  readonly place: Place;
  /** The view the row is for; null or absent: every view. */
  readonly view?: string | null;
  /** The row's own words. */
  readonly label: string;
  readonly values: readonly Figure[];
}
export interface Alias {
  readonly label: string;
  readonly sizes: readonly string[];
}
export interface MeasureTable {
  readonly kind: "body" | "finished";
  readonly unit: BodyUnit;
  readonly sizes: readonly string[];
  readonly aliases?: readonly Alias[];
  readonly rows: readonly MeasureRow[];
}

export interface FabricRow {
  readonly view: string;
  readonly part: string;
  readonly label: string;
  readonly width: number | null;
  readonly widthUnit: BodyUnit;
  readonly nap: Nap | null;
  readonly values: readonly (number | null)[];
}
export interface FabricTable {
  readonly kind: "fabric";
  readonly unit: FabricUnit;
  readonly sizes: readonly string[];
  readonly rows: readonly FabricRow[];
}
export type ChartTable = MeasureTable | FabricTable;

/** Something in a paste that a person should look at. Line and column are counted from 1. */
export interface Issue {
  readonly line: number;
  readonly column?: number;
  readonly severity: "warning" | "error";
  readonly place?: string;
  readonly view?: string;
  readonly size?: string;
  readonly message: string;
}
export interface ChartReading {
  readonly tables: readonly ChartTable[];
  readonly issues: readonly Issue[];
}

/**
 * A measurement chart as the functions use it. Every `MeasureTable` is one; a chart read from cells may also hold faults
 * and may not know its unit (null: bare numbers are compared as they stand).
 */
export interface Chart {
  readonly kind: "body" | "finished";
  readonly unit: BodyUnit | null;
  readonly sizes: readonly string[];
  readonly rows: readonly ChartRow[];
}
export interface ChartRow {
  readonly place: Place;
  readonly view?: string | null;
  readonly label: string;
  readonly values: readonly (Figure | Fault)[];
}
/** A fabric chart as the functions use it; every `FabricTable` is one. */
export interface FabricChart {
  readonly kind: "fabric";
  readonly unit: FabricUnit | null;
  readonly sizes: readonly string[];
  readonly rows: readonly FabricChartRow[];
}
export interface FabricChartRow {
  readonly view: string;
  readonly part: string;
  readonly label: string;
  readonly width: number | null;
  readonly widthUnit: BodyUnit;
  readonly nap: Nap | null;
  readonly values: readonly (number | null | Fault)[];
}

/** One person's measures as the functions use them. A bare number (`unit` null) is in the chart's own unit. */
export interface Body {
  readonly name: string | null;
  readonly measures: ReadonlyMap<Place, Measure | Fault>;
}
export interface Measure {
  readonly value: number;
  readonly unit: "in" | "cm" | null;
}
