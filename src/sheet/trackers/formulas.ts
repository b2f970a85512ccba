/** Pieces of the trackers' formulas: native functions only where Excel and the stand-in calculate them alike. */
import { INDEX_NAME } from "../chart-index";
import { thisRow } from "../references";

/** What the functions of the trackers are given. */
export const MEASURES = "Measurements[#All]";
export const SETTINGS = "Settings[#All]";
export const INDEX = INDEX_NAME;

/** Stands in place of a size while the pattern's chart has not been put in. */
export const NO_CHART = "no chart yet";

/** One of the index's columns: 1 is Pattern, 2 Kind, 3 Unit. */
export const indexColumn = (column: number): string => `INDEX(${INDEX},0,${column})`;

export const isBlankRow = (...headings: readonly string[]): string =>
  headings.length === 1
    ? `${thisRow(headings[0]!)}=""`
    : `OR(${headings.map((one) => `${thisRow(one)}=""`).join(",")})`;

/** Nothing while a cell that is needed is empty; an error in one of them comes through. */
export const unlessBlank = (headings: readonly string[], formula: string): string =>
  `=IF(${isBlankRow(...headings)},"",${formula})`;

/** The size to cut of the row's pattern for its person; words while the pattern has no chart. */
export const sizeFormula = unlessBlank(
  ["Pattern", "Person", "Garment"],
  `IF(COUNTIFS(${indexColumn(1)},[@Pattern])=0,"${NO_CHART}",` +
    `SEW.CUTSIZE(${INDEX},${MEASURES},[@Garment],${INDEX},[@Person],[@Pattern],${SETTINGS}))`,
);

/** The sum of a column's numbers, whatever else stands in it; `times` is a condition on the same rows. */
export const sumOf = (column: string, times = "1"): string => `=SUM(IFERROR(ISNUMBER(${column})*${column}*${times},0))`;

/** Nought where a column that decides about a row holds an error: then nothing is decided. */
export const decided = (column: string): string => `(1-ISERROR(${column}))`;

/**
 * How many rows are in use but are not in a total, in words. A row whose condition is an error is one that is wanted.
 *
 * @param used columns of which one at least is filled in a row that is in use
 * @param counted what is true of a row that the total has
 * @param wanted what is true of a row that the total wants; absent: all of them
 */
export function uncounted(used: readonly string[], counted: string, wanted?: string): string {
  const inUse = `(1-${used.map((column) => `ISBLANK(${column})`).join("*")})`;
  const asked = wanted === undefined ? "" : `*IFERROR(${wanted},1)`;
  const count = `SUMPRODUCT(${inUse}${asked}*(1-IFERROR(${counted},0)))`;
  return `=IF(${count}=0,"Every row is counted.",${count}&" row(s) could not be counted: see where the column is empty or an error.")`;
}
