import type { CellBlock, CellFormat, ColumnsPlan, Emphasis, PlannedCell, PlannedColumn, SheetPlan } from "./plan";
import { changeReferences, columnLetters, ownColumns, thisRow } from "./references";

/** What her lengths are shown in: fractions of inches and yards, decimals, or both side by side. */
export type Units = "in" | "cm" | "both";

/** A column of one of our tables. */
export interface TrackerColumn extends Omit<PlannedColumn, "format" | "emphasis"> {
  /** `length` is a body's or a garment's, `cloth` one of fabric: shown as her units want it. */
  readonly format: CellFormat | "length" | "cloth";
  /** One formula for every row, with [@…] for the row's own cells; absent: she types here. */
  readonly formula?: string;
  /** When a cell is coloured, said with [@…]. */
  readonly emphasis?: { readonly when: string; readonly tone: Emphasis["tone"] };
}

/** A line above the table that adds up over all its rows. */
export interface TrackerTotal {
  readonly label: string;
  readonly formula: string;
  readonly format: CellFormat | "cloth";
  /** Says how many rows could not be counted. */
  readonly remark?: string;
}

export type TrackerKey =
  "measurements" | "garments" | "wishList" | "projects" | "stash" | "shoppingList" | "fitNotes" | "settings";

/** One of the sheets that the pane can set up: a title, a few words, totals, and a table. */
export interface Tracker {
  readonly key: TrackerKey;
  readonly sheet: string;
  readonly table: string;
  readonly intro: readonly string[];
  readonly totals: readonly TrackerTotal[];
  readonly columns: readonly TrackerColumn[];
  /** The sheets that its formulas look at, which must be there first. */
  readonly needs: readonly TrackerKey[];
  /** Its formulas look patterns up in the pattern index. */
  readonly needsIndex?: true;
  readonly print: "upright" | "lying";
}

/** A row as she has filled it in: what stands under each heading. What she leaves out is a formula, or empty. */
export type TrackerRow = Readonly<Record<string, PlannedCell>>;

const FORMATS: Readonly<Record<Units, Readonly<Record<"length" | "cloth", CellFormat>>>> = {
  in: { length: "fraction", cloth: "fraction" },
  cm: { length: "general", cloth: "thousandths" },
  both: { length: "general", cloth: "thousandths" },
};
const formatFor = (format: TrackerColumn["format"], units: Units): CellFormat =>
  format === "length" || format === "cloth" ? FORMATS[units][format] : format;

/**
 * The row under the totals in which the table's headings stand, counted from 0.
 *
 * @example headingRow(stash) // title, intro, totals and a blank row come first
 */
export const headingRow = (tracker: Pick<Tracker, "intro" | "totals">): number =>
  1 + tracker.intro.length + tracker.totals.length + 1;

/**
 * A row's cells in the order of the columns: what she typed, else the column's formula, else nothing.
 *
 * @throws RangeError when the row has a cell under a heading that the table doesn't have
 * @example trackerRow(stash, { Piece: "Blue linen", Length: 3 })
 */
export function trackerRow(tracker: Pick<Tracker, "columns">, row: TrackerRow = {}): PlannedCell[] {
  const unknown = Object.keys(row).find((heading) => !tracker.columns.some((column) => column.heading === heading));
  if (unknown !== undefined) throw new RangeError(`there is no column ${unknown}`);
  return tracker.columns.map(({ heading, formula }) => {
    const typed = row[heading];
    if (typed !== undefined) return typed;
    return formula === undefined ? null : { formula };
  });
}

/** The whole sheet. Without rows it gets one, with its formulas ready, because a table has at least one. */
export function trackerSheet(tracker: Tracker, units: Units, rows: readonly TrackerRow[] = []): SheetPlan {
  const { sheet, table: name, intro, totals, columns, print } = tracker;
  const row = headingRow(tracker);
  const place = { row, column: 0, headings: columns.map(({ heading }) => heading) };
  const planned = columns.map((column) => plannedColumn(column, units, place));
  const filled = (rows.length === 0 ? [{}] : rows).map((one) => trackerRow(tracker, one));
  return {
    sheet,
    blocks: [...titleBlocks(sheet, intro), ...totalBlocks(totals, 1 + intro.length, units)],
    tables: [{ name, row, column: 0, columns: planned, rows: filled }],
    frozenRows: row + 1,
    print,
  };
}

/** The title and the words under it. */
export function titleBlocks(title: string, intro: readonly string[]): CellBlock[] {
  const words: CellBlock = { row: 1, column: 0, cells: intro.map((line) => [line]), format: "text", style: "note" };
  const top: CellBlock = { row: 0, column: 0, cells: [[title]], format: "text", style: "title" };
  return intro.length > 0 ? [top, words] : [top];
}

function totalBlocks(totals: readonly TrackerTotal[], from: number, units: Units): CellBlock[] {
  return totals.flatMap(({ label, formula, format, remark }, index): CellBlock[] => {
    const row = from + index;
    const blocks: CellBlock[] = [
      { row, column: 0, cells: [[label]], format: "text", style: "total" },
      { row, column: 1, cells: [[{ formula }]], format: formatFor(format, units), style: "total" },
    ];
    if (remark) blocks.push({ row, column: 2, cells: [[{ formula: remark }]], format: "general", style: "note" });
    return blocks;
  });
}

/** Where a table's headings stand: what conditional colours need, which can't say [@…]. */
interface TablePlace {
  readonly row: number;
  readonly column: number;
  readonly headings: readonly string[];
}

function plannedColumn(column: TrackerColumn, units: Units, place: TablePlace): PlannedColumn {
  const { heading, format, note, validation, width, wraps, emphasis } = column;
  const plain: PlannedColumn = {
    heading,
    format: formatFor(format, units),
    ...(note === undefined ? {} : { note }),
    ...(validation === undefined ? {} : { validation }),
    ...(width === undefined ? {} : { width }),
    ...(wraps === undefined ? {} : { wraps }),
  };
  if (!emphasis) return plain;
  const known = (heading: string): number => place.headings.findIndex((one) => sameHeading(one, heading));
  if (ownColumns(emphasis.when).some((heading) => known(heading) < 0)) return plain;
  const formula = changeReferences(
    emphasis.when,
    (heading) => `$${columnLetters(place.column + known(heading))}${place.row + 2}`,
  );
  return { ...plain, emphasis: { formula, tone: emphasis.tone } };
}

const sameHeading = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

/** A table that she has already. */
export interface HerTable {
  readonly name: string;
  /** Where its heading row begins, counted from 0. */
  readonly row: number;
  readonly column: number;
  readonly headings: readonly string[];
}

/**
 * Just the columns that her own table lacks, put at its right end. Columns that she has under our heading are left
 * alone; `sameAs` says which of hers stands for one of ours ("Fabric width" for Width), and the formulas then say hers.
 * An empty list of columns: nothing is missing.
 *
 * @param wanted only these of our columns; columns that their formulas need come with them
 * @example trackerColumns(wishList, her, "in", { wanted: ["Price today"] }).columns.map(({ heading }) => heading)
 *   //=> ["Price", "Percent off", "Sale price", "Price today"]
 */
export function trackerColumns(
  tracker: Tracker,
  her: HerTable,
  units: Units,
  {
    wanted,
    sameAs = {},
  }: { readonly wanted?: readonly string[]; readonly sameAs?: Readonly<Record<string, string>> } = {},
): ColumnsPlan {
  const hers = (heading: string): string | undefined => {
    const named = sameAs[heading] ?? heading;
    return her.headings.find((one) => sameHeading(one, named));
  };
  const needed = withNeeded(tracker, wanted ?? tracker.columns.map(({ heading }) => heading));
  const missing = tracker.columns.filter(({ heading }) => needed.has(heading) && hers(heading) === undefined);
  const headings = [...her.headings, ...missing.map(({ heading }) => heading)];
  const place = { row: her.row, column: her.column, headings };
  const columns = missing.map((column) => {
    const { formula, emphasis } = column;
    const say = (text: string): string => changeReferences(text, (heading) => thisRow(hers(heading) ?? heading));
    const cell: PlannedCell = formula === undefined ? null : { formula: say(formula) };
    const said = emphasis ? { ...column, emphasis: { ...emphasis, when: say(emphasis.when) } } : column;
    return { ...plannedColumn(said, units, place), cell };
  });
  return { table: her.name, columns };
}

/** The columns with all that their formulas look at. */
function withNeeded(tracker: Tracker, wanted: readonly string[]): Set<string> {
  const all = new Set<string>();
  const add = (heading: string): void => {
    if (all.has(heading)) return;
    all.add(heading);
    const formula = tracker.columns.find((column) => column.heading === heading)?.formula;
    if (formula) ownColumns(formula).forEach(add);
  };
  wanted.forEach(add);
  return all;
}
