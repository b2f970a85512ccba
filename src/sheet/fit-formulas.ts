import { quotedText } from "./names";
import { columnName } from "./references";
import type { CellBlock, CellsPlan, PlannedCell } from "./plan";

/** What the formulas of one person and one pattern look at: tables by name, the rest as she chose it. */
export interface FitFormulas {
  /** The sheet to write into, and the first free cell there. */
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly bodyTable: string;
  readonly finishedTable?: string | undefined;
  readonly measuresTable: string;
  readonly settingsTable?: string | undefined;
  readonly person: string;
  readonly garment: string;
  /** Whether her high bust is known and the pattern is cut by it. */
  readonly highBust: boolean;
  /** How many rows the plans will fill today. */
  readonly blendRows: number;
  readonly easeRows: number;
  /** Inches are shown as fractions. */
  readonly inches: boolean;
}

export const BLEND_HEADINGS = ["Place", "Size", "Girth change", "Each edge", "Lengthen", "Note"] as const;
export const EASE_HEADINGS = ["Size", "Place", "Ease", "Fit", "Enough", "Note"] as const;

/** A table with its headings, as the functions want it. */
const whole = (table: string): string => `${table}[#All]`;

/**
 * A call with its arguments; those left out at the end are not written, those in between stay empty.
 *
 * @example call("SEW.EASE", ["A1", undefined, "B1", undefined]) //=> "=SEW.EASE(A1,,B1)"
 */
export function call(id: string, given: readonly (string | undefined)[]): string {
  let last = given.length;
  while (last > 0 && given[last - 1] === undefined) last--;
  return `=${id}(${given
    .slice(0, last)
    .map((argument) => argument ?? "")
    .join(",")})`;
}

/**
 * The answers for one person, as formulas beside the chart: the size to cut with the sentence that belongs to it, the
 * blend, and the ease of each size where finished measurements are known. They look at her tables by name, so that a
 * changed measurement changes them.
 */
export function fitFormulas(options: FitFormulas): CellsPlan {
  const { sheet, row, column, person, garment, inches } = options;
  const settings = options.settingsTable && whole(options.settingsTable);
  const finished = options.finishedTable && whole(options.finishedTable);
  const chart = whole(options.bodyTable);
  const measures = whole(options.measuresTable);
  const who = quotedText(person);
  const what = quotedText(garment);
  const asked = [chart, measures, what, finished, who, undefined, settings];
  const blocks: CellBlock[] = [
    { row, column, cells: [[`${garment} for ${person}`]], format: "text", style: "heading" },
    { row: row + 1, column, cells: [["Size to cut"], ["What was checked"]], format: "text" },
    {
      row: row + 1,
      column: column + 1,
      cells: [[{ formula: call("SEW.CUTSIZE", asked) }], [{ formula: call("SEW.CUTNOTE", asked) }]],
    },
  ];
  let next = row + 4;
  const part = (
    title: string,
    headings: readonly string[],
    formula: string,
    rows: number,
    lengths: readonly number[],
  ) => {
    blocks.push({ row: next, column, cells: [[title]], format: "text", style: "heading" });
    blocks.push({ row: next + 1, column, cells: [[...headings]], format: "text", style: "heading" });
    const at = { row: next + 2, column };
    if (inches)
      for (const index of lengths)
        blocks.push({ ...at, column: column + index, cells: empty(rows), format: "fraction" });
    blocks.push({ ...at, cells: [[{ formula, spill: [rows, headings.length] }]] });
    next += rows + 4;
  };
  part("Where to change from size to size", BLEND_HEADINGS, call("SEW.BLEND", asked), options.blendRows, [2, 3, 4]);
  if (options.highBust) {
    const headings = ["Size by high bust", "Pattern's bust", "Whole adjustment", "Half of it", "Pattern cup", "Note"];
    const [bust, high] = ["bust", "high bust"].map((place) => lookUp(options.measuresTable, person, place));
    part("Bust adjustment", headings, call("SEW.BUSTADJUST", [chart, bust, high]), 1, [1, 2, 3]);
  }
  if (finished) {
    const formula = call("SEW.EASEPLAN", [chart, measures, what, finished, who, undefined, settings]);
    part("How loose each size is", EASE_HEADINGS, formula, options.easeRows, [2]);
  }
  return { sheet, blocks };
}

/** A measure of a person out of the measurements table. */
function lookUp(table: string, person: string, place: string): string {
  return `INDEX(${table}[${columnName(person)}],MATCH(${quotedText(place)},${table}[Measurement],0))`;
}

const empty = (rows: number): PlannedCell[][] => Array.from({ length: rows }, () => [null]);
