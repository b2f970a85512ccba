/** Calls of a cell function through the real runtime, and the charts that the tests ask. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { startFunctions, type Answer } from "../practice/custom-functions";

export { BLANK, errorCell, formattedCell } from "../practice/custom-functions";

export type Caller = (args: readonly unknown[], blanks?: null | 0) => Promise<Answer>;

/** A function as Excel calls it; what is left out at the end arrives as null. */
export function caller(id: string, implementation: (...args: never[]) => unknown, parameters: number): Caller {
  const runtime = startFunctions();
  runtime.associate(id, implementation);
  return (args, blanks = null) =>
    runtime.call(
      id,
      args.map((arg) => (Array.isArray(arg) || arg === undefined ? arg : [[arg]])),
      { blanks, parameters },
    );
}

export const column = (...cells: readonly unknown[]): unknown[][] => cells.map((cell) => [cell]);
export const value = (message: string) => ({ error: "#VALUE!", message });
export const notAvailable = (message: string) => ({ error: "#N/A", message });

const figures = (file: string): Record<string, number[]> & { sizes: string[] } =>
  JSON.parse(readFileSync(join(import.meta.dirname, "../figures", file), "utf8"));

/** Body measurements common to home-sewing patterns, misses (tests/figures/misses-body-in.json), as a table with headings. */
export function misses(): unknown[][] {
  const { sizes, highBust, bust, waist, hip, backWaistLength } = figures("misses-body-in.json");
  return [
    ["Measurement", "Unit", ...sizes],
    ["High bust", "in", ...highBust!],
    ["Bust", "in", ...bust!],
    ["Waist", "in", ...waist!],
    ["Hip", "in", ...hip!],
    ["Back waist length", "in", ...backWaistLength!],
  ];
}

/** The classes of EN 13402-3 as printed ranges: sizes are the class marks (tests/figures/en13402-3-women-cm.json). */
export function classes(): unknown[][] {
  const { bust, bust_class_bounds: bounds } = figures("en13402-3-women-cm.json");
  return [
    ["Measurement", "Unit", ...bust!.map(String)],
    ["Bust", "cm", ...bust!.map((_, index) => `${bounds![index]}-${bounds![index + 1]}`)],
  ];
}

/** A fabric table of the camp shirt; figures invented. */
export const campShirtFabric: unknown[][] = [
  ["View", "Part", "Width", "Width unit", "Nap", "Unit", "10", "12", "14", "16"],
  ["A", "main", 45, "in", "with", "yd", 2.125, 2.125, 2.25, 2.375],
  ["A", "main", 45, "in", "without", "yd", 2, 2, 2.125, 2.25],
  ["A", "main", 60, "in", null, "yd", 1.5, 1.5, 1.625, 1.625],
  ["A", "interfacing", 20, "in", "either", "yd", 0.875, 0.875, 0.875, 1],
  ["B", "main", 45, "in", "with", "yd", 2.625, 2.75, 2.75, 2.875],
];

/** The columns of the pattern index. */
export const indexHeadings = [
  "Pattern", "Kind", "Unit", "View", "Part", "Width", "Width unit", "Nap", "Measurement", "Size", "Low", "High",
]; // prettier-ignore
