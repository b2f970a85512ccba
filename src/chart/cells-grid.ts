import { answer, refuse, type Result } from "../problem";
import { cellText, isErrorCell, isMissing, LARGEST, type Cell, type Cells } from "./cell";
import { columnRole, isUnitWord, type ColumnRole } from "./cells-words";
import { readFigureCell } from "./cells-figure";
import { isFault } from "./model";
import { readPlace } from "./places";
import { labelKey } from "./size-label";

/** A wide chart with its headings found: labels down, sizes across, whichever way it lay on the sheet. */
export interface Grid {
  /** The words above the headings. */
  readonly title: string;
  /** The column of each known heading, counted from 0. */
  readonly columns: { readonly [Role in ColumnRole]?: number };
  readonly sizes: readonly { readonly label: string; readonly column: number }[];
  readonly rows: Cells;
}

/** A range without its blank rows and columns. A range that reaches below the chart brings noughts on some computers. */
export function withoutBlanks(cells: Cells): Cells {
  const rows = cells.filter((row) => !row.every(isMissing));
  const width = rows[0]?.length ?? 0;
  const kept = Array.from({ length: width }, (_, column) => column).filter(
    (column) => !rows.every((row) => isMissing(row[column] ?? null)),
  );
  return kept.length === width ? rows : rows.map((row) => kept.map((column) => row[column] ?? null));
}

/** Whether a cell's text is a place that the vocabulary knows; "Width" is a heading, a letter or two a view or a size. */
export function isPlaceCell(cell: Cell | undefined): boolean {
  if (typeof cell !== "string" || !/^\D*\p{L}{3}/u.test(cell.slice(0, 100)) || columnRole(cell)) return false;
  return readPlace(cell, null) !== null;
}

/** How many cells of a line pass, at most of its first hundred: enough to tell which way a chart lies. */
const count = (line: readonly Cell[], passes: (cell: Cell) => boolean): number =>
  line.slice(0, 100).reduce<number>((sum, cell) => sum + Number(passes(cell)), 0);
const isHeadingCell = (cell: Cell): boolean => typeof cell === "string" && columnRole(cell) !== undefined;
export const columnOf = (cells: Cells, column: number): readonly Cell[] => cells.map((row) => row[column] ?? null);

export const turned = (cells: Cells): Cells => (cells[0] ?? []).map((_, column) => columnOf(cells, column));

/** The label column may stand anywhere; a chart has no more columns than this before it. */
const MOST_COLUMNS = 60;

/** The most of anything in one of the first lines, where labels stand. */
const most = (lines: Cells, passes: (cell: Cell) => boolean): number =>
  Math.max(0, ...lines.map((line) => count(line, passes)));

/**
 * Whether sizes run down and places across: the direction with more known places, or, where neither has any, with more
 * known headings.
 */
export function liesTurned(cells: Cells): boolean {
  const down = turned(cells).slice(0, MOST_COLUMNS);
  const across = cells.slice(0, 8);
  const places = most(across, isPlaceCell) - most(down, isPlaceCell);
  return places === 0 ? most(across, isPlaceCell) === 0 && headingsRunDown(down, across) : places > 0;
}

function headingsRunDown(down: Cells, across: Cells): boolean {
  return most(down, isHeadingCell) > most(across, isHeadingCell);
}

/**
 * Finds the headings of a chart: known ones in any order, any other is a size. Blank rows and a title above are skipped,
 * a turned chart is turned back.
 *
 * Refuses a range without headings (a table's bare name), two charts in one range, two columns of one name, and a column
 * of figures without a heading: each could answer wrongly in silence.
 */
export function readGrid(cells: Cells): Result<Grid> {
  const filled = withoutBlanks(cells);
  if (filled.length === 0) return refuse("emptyChart", { wanted: "a chart" });
  const begin = Math.max(
    0,
    filled.findIndex((row) => filledCells(row) > 1),
  );
  const body = withoutBlanks(filled.slice(begin));
  const grid = liesTurned(body) ? turned(body) : body;
  const head = headingRow(grid);
  const first = filled[0]!.find((cell) => !isMissing(cell)) ?? null;
  if (head < 0) return refuse("chartHeadings", { found: cellText(first) });
  return withColumns(grid, head, filled.slice(0, begin));
}

const filledCells = (row: readonly Cell[]): number => count(row, (cell) => !isMissing(cell));

/** The row of the headings; -1 when there is none. */
function headingRow(grid: Cells): number {
  const labelColumn = labelColumnOf(grid);
  const firstPlace = grid.findIndex((row) => isPlaceCell(row[labelColumn]));
  const end = firstPlace < 0 ? grid.length : firstPlace;
  const above = grid.slice(0, Math.min(end, 20));
  let head = above.findIndex((row) => filledCells(row) > 1 && row.some(isHeadingCell));
  if (head < 0 && firstPlace > 0) head = above.findIndex((row) => filledCells(row) > 1);
  if (head < 0 && firstPlace < 0 && isMissing(grid[0]![0]!) && filledCells(grid[0]!) > 1) head = 0;
  const isData = head >= 0 && grid[head]!.some((cell) => typeof cell === "string" && isUnitWord(cell));
  return isData ? -1 : head;
}

/** The column with the most known places; the first where none has any. */
function labelColumnOf(grid: Cells): number {
  const counts = turned(grid)
    .slice(0, MOST_COLUMNS)
    .map((column) => count(column, isPlaceCell));
  return Math.max(0, counts.indexOf(Math.max(...counts)));
}

function withColumns(grid: Cells, head: number, titles: Cells): Result<Grid> {
  const headings = grid[head]!;
  const rows = grid.slice(head + 1);
  const columns: { [Role in ColumnRole]?: number } = {};
  headings.forEach((cell, column) => {
    const role = typeof cell === "string" ? columnRole(cell) : undefined;
    if (role) columns[role] ??= column;
  });
  const known = new Set(Object.values(columns));
  if (columns.label === undefined && columns.width === undefined) {
    columns.label = rows.some((row) => row.some(isPlaceCell)) ? labelColumnOf(rows) : firstFree(headings, known);
    known.add(columns.label);
  }
  const again = rows.find(
    (row) => isHeadingCell(row[columns.label ?? 0] ?? null) && row.filter(isHeadingCell).length > 1,
  );
  const second =
    again ?? rows.find((row) => ["size", "sizes"].includes(labelKey(cellText(row[columns.label ?? 0] ?? null))));
  if (second) return refuse("twoCharts", { found: cellText(second[columns.label ?? 0] ?? null) });
  const sizes: { label: string; column: number }[] = [];
  const seen = new Set<string>();
  for (const [column, cell] of headings.entries()) {
    if (known.has(column)) continue;
    const figure = rows.map((row) => row[column] ?? null).find(isFigure);
    if (isMissing(cell) && figure === undefined) continue;
    if (isMissing(cell) && cell !== 0)
      return refuse("columnWithoutHeading", { column: String(column + 1), figure: cellText(figure ?? null) });
    if (isErrorCell(cell)) return refuse("errorCell", { error: cell.error });
    if (typeof cell === "number" && cell > LARGEST) return refuse("excelDate", { text: cellText(cell) });
    const label = cellText(cell);
    if (seen.has(labelKey(label))) return refuse("sizeTwice", { size: label });
    seen.add(labelKey(label));
    sizes.push({ label, column });
  }
  const [corner] = headings.filter((cell) => !isMissing(cell));
  if (sizes.length === 0) return refuse("chartHeadings", { found: cellText(corner ?? null) });
  const above = [...titles, ...grid.slice(0, head)].flat().filter((cell) => !isMissing(cell) && !isErrorCell(cell));
  return answer({ title: above.map(cellText).join(" "), columns, sizes, rows });
}

function firstFree(headings: readonly Cell[], taken: ReadonlySet<number>): number {
  const free = headings.findIndex((_, column) => !taken.has(column));
  return Math.max(0, free);
}

function isFigure(cell: Cell): boolean {
  if (isMissing(cell)) return false;
  const { figure } = readFigureCell(cell);
  return figure !== null && !isFault(figure);
}
