/** Charts that the acceptance tests share, as they stand in a sheet. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Grid } from "./functions";

/**
 * Body measurements common to home-sewing patterns, misses figure type, inches.
 * Source: common practice without a single publisher, reprinted on public teaching pages.
 */
export const SIZES = [6, 8, 10, 12, 14, 16, 18, 20, 22, 24];
export const FIGURES: Readonly<Record<string, readonly number[]>> = {
  Bust: [30.5, 31.5, 32.5, 34, 36, 38, 40, 42, 44, 46],
  Waist: [23, 24, 25, 26.5, 28, 30, 32, 34, 37, 39],
  Hip: [32.5, 33.5, 34.5, 36, 38, 40, 42, 44, 46, 48],
  "High bust": [28.5, 29.5, 30.5, 32, 34, 36, 38, 40, 42, 44],
  "Back waist length": [15.5, 15.75, 16, 16.25, 16.5, 16.75, 17, 17.25, 17.5, 17.75],
};

/** A wide table, headed Measurement | Unit | sizes. */
export const wide = (
  figures: Readonly<Record<string, readonly unknown[]>>,
  unit: string,
  sizes: readonly unknown[] = SIZES,
): Grid => [
  ["Measurement", "Unit", ...sizes],
  ...Object.entries(figures).map(([label, values]) => [label, unit, ...values]),
];

export const MISSES = wide(FIGURES, "in");

/** Finished measurements: each place's body figures and so much more. */
export const finishedBy = (more: Readonly<Record<string, number>>): Grid => [
  ["Measurement", "View", "Unit", ...SIZES],
  ...Object.entries(more).map(([label, add]) => [label, "A", "in", ...FIGURES[label]!.map((figure) => figure + add)]),
];

/** A body's measures, labels down, one value column. */
export const bodyOf = (measures: Readonly<Record<string, unknown>>): Grid => Object.entries(measures);

/** Rosa of the choir: 12 at the bust, 14 at the waist, 16 at the hip. */
export const ROSA = bodyOf({ Bust: 34, Waist: 28, Hip: 40 });

/** The headings of the pattern index, above what CHARTINDEX spills. */
export const INDEX_HEADINGS = [
  ...["Pattern", "Kind", "Unit", "View", "Part", "Width", "Width unit", "Nap", "Measurement", "Size", "Low", "High"],
];

/** Rows of the pattern index for one body or finished table. */
export const indexRows = (
  pattern: string,
  kind: "body" | "finished",
  more: Readonly<Record<string, number>>,
  only: readonly number[] = SIZES,
): unknown[][] =>
  Object.entries(more).flatMap(([label, add]) =>
    SIZES.map((size, at) => ({ size, figure: FIGURES[label]![at]! + add }))
      .filter(({ size }) => only.includes(size))
      .map(({ size, figure }) => {
        const before = [pattern, kind, "in", kind === "finished" ? "A" : "", "", "", "", "", label];
        return [...before, String(size), figure, figure];
      }),
  );

/**
 * Chart of the length needed at each fabric width, in eighths of a yard, as reprinted on two public pages; it is usually
 * credited to a US land-grant extension service (that credit is from memory).
 */
export const EIGHTHS: readonly (readonly number[])[] = readFileSync(
  join(import.meta.dirname, "../figures/fabric-width-eighths.csv"),
  "utf8",
)
  .split(/\r?\n/)
  .filter((line) => /^\d/.test(line))
  .map((line) => line.split(",").map(Number));
