/** What a paste was understood as, what a person should look at, and her corrections. */
import { chartText, type ChartReading, type ChartTable, type Issue } from "../../src/index";
import { corrected, withoutRow, type Corrected, type Place } from "./grid";
import { replaced, without } from "./lists";

const LINE_END = /\r\n|\r|\n/;

export type ReadCharts = (pasted: string) => ChartReading;

/** A cell of a draft: row -1 is the heading row, column -1 the row as a whole. */
export interface CellAt {
  readonly table: number;
  readonly row: number;
  readonly column: number;
}
export interface Flag {
  readonly at: CellAt;
  readonly issue: Issue;
}
export interface Draft {
  readonly pasted: string;
  readonly tables: readonly ChartTable[];
  readonly flags: readonly Flag[];
  /** Issues that belong to no cell: rows that were left out, what was assumed. */
  readonly loose: readonly Issue[];
}

/** Reads a paste. */
export function draftOf(pasted: string, read: ReadCharts): Draft {
  const { tables, issues } = read(pasted);
  return { pasted, tables, ...placed(issues, tables, pasted.split(LINE_END)) };
}

/** Sorts issues into those of a cell or row and the rest. Errors name rows that are not in a table. */
function placed(
  issues: readonly Issue[],
  tables: readonly ChartTable[],
  lines: readonly string[],
): Pick<Draft, "flags" | "loose"> {
  const flags: Flag[] = [];
  const loose: Issue[] = [];
  for (const issue of issues) {
    const cells = cellsOf(issue, tables, lines[issue.line - 1] ?? "");
    if (cells.length === 0) loose.push(issue);
    else flags.push(...cells.map((at) => ({ at, issue })));
  }
  return { flags: inOrder(flags), loose };
}

const inOrder = (flags: readonly Flag[]): Flag[] =>
  [...flags].sort(({ at: a }, { at: b }) => a.table - b.table || a.row - b.row || a.column - b.column);

/**
 * The cells that an issue names by place, view and size. Where several rows answer to the same names (the bust of the
 * body and of the garment) the one whose own words stand in the issue's line is meant; if that does not tell, all are.
 */
function cellsOf(issue: Issue, tables: readonly ChartTable[], line: string): CellAt[] {
  if (issue.place === undefined && issue.view === undefined && issue.size === undefined) return [];
  const found = tables.flatMap((table, t) =>
    table.rows.flatMap((row, r) => {
      const column = issue.size === undefined ? -1 : table.sizes.indexOf(issue.size);
      const rowIsMeant =
        (issue.place === undefined ? table.kind === "fabric" : "place" in row && row.place === issue.place) &&
        (issue.view === undefined || (row.view ?? "") === issue.view);
      if (!rowIsMeant || (issue.size !== undefined && column < 0)) return [];
      return [{ at: { table: t, row: r, column }, own: row.label !== "" && line.includes(row.label) }];
    }),
  );
  const own = found.filter((cell) => cell.own);
  // A row that was left out can have a namesake that was not: its line says so.
  if (issue.severity === "error" && issue.size === undefined && own.length !== 1) return [];
  return (own.length > 0 ? own : found).map(({ at }) => at);
}

/**
 * The draft with one cell corrected and looked at again. Flags of the corrected row, and those that come from comparing
 * rows, are found anew; what only the paste could tell (two units that disagree) stays with the rows that were not
 * touched.
 */
export function correct(draft: Draft, table: number, place: Place, text: string, read: ReadCharts): Corrected<Draft> {
  const result = corrected(draft.tables[table]!, place, text);
  if (!result.ok) return result;
  return { ok: true, value: changed(draft, table, result.value, place.row, read) };
}

/** The draft with a table's kind or unit set by a person. */
export function retitled(
  draft: Draft,
  table: number,
  change: Partial<Pick<ChartTable, "kind" | "unit">>,
  read: ReadCharts,
): Draft {
  const next = { ...draft.tables[table]!, ...change } as ChartTable;
  return changed(draft, table, next, null, read);
}

/** The draft without one row, or without the table when that was its last. */
export function leftOut(draft: Draft, table: number, row: number, read: ReadCharts): Draft {
  const next = withoutRow(draft.tables[table]!, row);
  const tables = next.rows.length === 0 ? without(draft.tables, table) : replaced(draft.tables, table, next);
  const moved = draft.flags.flatMap((flag): Flag[] => {
    const { at } = flag;
    if (at.table !== table) return at.table > table && next.rows.length === 0 ? [shifted(flag, -1, 0)] : [flag];
    return at.row === row ? [] : [at.row > row ? shifted(flag, 0, -1) : flag];
  });
  return again({ ...draft, tables, flags: moved }, { ...draft, tables, flags: moved }, null, read);
}

const shifted = ({ at, issue }: Flag, tables: number, rows: number): Flag => ({
  issue,
  at: { ...at, table: at.table + tables, row: at.row + rows },
});

function changed(draft: Draft, table: number, next: ChartTable, row: number | null, read: ReadCharts): Draft {
  const touched = row === null || row < 0 ? null : { table, row };
  return again(draft, { ...draft, tables: replaced(draft.tables, table, next) }, touched, read);
}

function again(
  before: Draft,
  after: Draft,
  touched: { readonly table: number; readonly row: number } | null,
  read: ReadCharts,
): Draft {
  const known = new Set(flagsOf(before.tables, read).map(key));
  const fresh = flagsOf(after.tables, read);
  const onlyThePaste = after.flags.filter(
    (flag) => !known.has(key(flag)) && !(touched && flag.at.table === touched.table && flag.at.row === touched.row),
  );
  const taken = new Set(onlyThePaste.map(key));
  return { ...after, flags: inOrder([...onlyThePaste, ...fresh.filter((flag) => !taken.has(key(flag)))]) };
}

const key = ({ at }: Flag): string => `${at.table}/${at.row}/${at.column}`;

/** What a reader says of the tables when they are printed cleanly. */
function flagsOf(tables: readonly ChartTable[], read: ReadCharts): readonly Flag[] {
  const text = chartText(tables);
  return placed(read(text).issues, tables, text.split("\n")).flags;
}

/** The flagged cell after this one, from the top again after the last. */
export function nextFlag({ flags }: Draft, after: CellAt | null): CellAt | undefined {
  const later = flags.find(
    ({ at }) =>
      after === null ||
      at.table > after.table ||
      (at.table === after.table && (at.row > after.row || (at.row === after.row && at.column > after.column))),
  );
  return (later ?? flags[0])?.at;
}

/** The line that an issue is about, when the paste still has it; a person can put it right there. */
export function lineOf({ pasted }: Draft, { line }: Issue): string | undefined {
  const text = pasted.split(LINE_END)[line - 1];
  return text === undefined || text.trim() === "" || looksLikeHtml(pasted) ? undefined : text;
}

export const looksLikeHtml = (text: string): boolean => /<table|StartFragment/i.test(text);

/** The paste with one line put right. */
export function withLine(pasted: string, line: number, text: string): string {
  return replaced(pasted.split(LINE_END), line - 1, text.replace(/[\r\n]+/g, " ")).join("\n");
}
