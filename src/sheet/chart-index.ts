import { quotedText } from "./names";
import type { WorkbookPlan } from "./plan";

/** The sheet on which every pattern's charts stand as rows, and the name that formulas use for it. */
export const INDEX_SHEET = "Pattern index";
export const INDEX_NAME = "PatternIndex";
export const INDEX_HEADINGS = [
  "Pattern", "Kind", "Unit", "View", "Part", "Width", "Width unit", "Nap", "Measurement", "Size", "Low", "High",
] as const; // prettier-ignore

const FUNCTION = "SEW.CHARTINDEX";
/** Row of the headings; the one formula stands in the row below. */
const HEADING_ROW = 2;
export const INDEX_CELL = { row: HEADING_ROW + 1, column: 0, address: `A${HEADING_ROW + 2}` } as const;

/** A chart table in the index. */
export interface IndexEntry {
  readonly pattern: string;
  readonly table: string;
}

/** Excel's own limits on one formula. */
const LONGEST_FORMULA = 8192;
const MOST_ARGUMENTS = 254;

/** Whether one formula can hold these entries: Excel allows 255 arguments and 8,192 characters. */
export function fitsIndex(entries: readonly IndexEntry[]): boolean {
  return entries.length * 2 <= MOST_ARGUMENTS && indexFormula(entries).length <= LONGEST_FORMULA;
}

/**
 * The formula that lists every chart.
 *
 * @example indexFormula([{ pattern: "Camp shirt", table: "CampShirt_body" }])
 *   //=> '=SEW.CHARTINDEX("Camp shirt",CampShirt_body[#All])'
 */
export function indexFormula(entries: readonly IndexEntry[]): string {
  return `=${FUNCTION}(${entries.map(({ pattern, table }) => `${quotedText(pattern)},${table}[#All]`).join(",")})`;
}

/**
 * The entries of a formula that `indexFormula` made, whatever spaces Excel or a person has put in since; undefined for
 * any other formula, which is then not ours to change. An entry whose table is gone (#REF!) is left out.
 */
export function readIndexFormula(formula: string): IndexEntry[] | undefined {
  const inside = /^=\s*(?:_xldudf_SEW_CHARTINDEX|SEW\.CHARTINDEX)\s*\((.*)\)\s*$/is.exec(formula)?.[1];
  if (inside === undefined) return undefined;
  const entries: IndexEntry[] = [];
  let rest = inside.trim();
  while (rest !== "") {
    const entry = /^"((?:[^"]|"")*)"\s*,\s*([\p{L}_\\][\p{L}\p{N}_.\\]*\[#All\]|#REF!)\s*(?:,\s*|$)/iu.exec(rest);
    if (!entry) return undefined;
    const table = entry[2]!.replace(/\[#All\]$/i, "");
    if (table !== "#REF!") entries.push({ pattern: entry[1]!.replaceAll('""', '"'), table });
    rest = rest.slice(entry[0].length);
  }
  return entries;
}

/** The entries with those of one pattern added; entries whose table is no longer in the workbook are dropped. */
export function entriesWith(
  entries: readonly IndexEntry[],
  pattern: string,
  tables: readonly string[],
  known: Iterable<string>,
): IndexEntry[] {
  const there = new Set([...known].map((name) => name.toLowerCase()));
  const added = new Set(tables.map((name) => name.toLowerCase()));
  const kept = entries.filter(({ table }) => there.has(table.toLowerCase()) && !added.has(table.toLowerCase()));
  return [...kept, ...tables.map((table) => ({ pattern, table }))];
}

/**
 * How many rows formulas look through. Blank rows are skipped by every function, so that the name may reach beyond the
 * last row and a chart may grow; twice the rows of today and never fewer than 500.
 */
export function indexRows(rowsToday: number): number {
  return Math.max(500, Math.ceil((rowsToday * 2) / 500) * 500);
}

/** What the index must look like for these entries: a new sheet, or the new formula on the one that is there. */
export function indexPlan(entries: readonly IndexEntry[], rowsToday: number, sheetIsThere: boolean): WorkbookPlan {
  const formula = { formula: indexFormula(entries) };
  const last = HEADING_ROW + 1 + indexRows(rowsToday);
  const names = [
    {
      name: INDEX_NAME,
      formula: `='${INDEX_SHEET}'!$A$${HEADING_ROW + 1}:$L$${last}`,
      note: "Every pattern's charts, as the functions look through them",
    },
  ];
  if (sheetIsThere) {
    const block = { row: INDEX_CELL.row, column: 0, cells: [[formula]] };
    return { cells: [{ sheet: INDEX_SHEET, blocks: [block], kept: `=${FUNCTION}(` }], names };
  }
  const blocks = [
    { row: 0, column: 0, cells: [[INDEX_SHEET]], format: "text", style: "title" },
    {
      row: 1,
      column: 0,
      cells: [["One formula lists every chart. The pane keeps it; correct figures on the pattern's own sheet."]],
      format: "text",
      style: "note",
    },
    { row: HEADING_ROW, column: 0, cells: [[...INDEX_HEADINGS]], format: "text", style: "heading" },
    { row: INDEX_CELL.row, column: 0, cells: [[formula]] },
  ] as const;
  const widths = [18, 10, 6, 8, 12, 8, 10, 9, 20, 10, 10, 10];
  return { sheets: [{ sheet: INDEX_SHEET, blocks, tables: [], widths, frozenRows: HEADING_ROW + 1 }], names };
}
