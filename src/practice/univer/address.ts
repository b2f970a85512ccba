/** A1 notation. Rows and columns are counted from 0. */
export interface Area {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export const MAX_ROWS = 1_048_576;
export const MAX_COLUMNS = 16_384;

export function columnLetters(index: number): string {
  let text = "";
  for (let n = index + 1; n > 0; n = Math.floor((n - 1) / 26)) text = String.fromCharCode(65 + ((n - 1) % 26)) + text;
  return text;
}

const columnIndex = (letters: string) => [...letters].reduce((sum, c) => sum * 26 + c.charCodeAt(0) - 64, 0) - 1;

/** "A1:B2", "A:C", "1:3"; `mark` is "$" for an address that does not move. */
export function formatArea(area: Area, mark = ""): string {
  const { row, column, rows, columns } = area;
  const lastColumn = column + columns - 1;
  if (rows === MAX_ROWS) return `${mark}${columnLetters(column)}:${mark}${columnLetters(lastColumn)}`;
  if (columns === MAX_COLUMNS) return `${mark}${row + 1}:${mark}${row + rows}`;
  const first = `${mark}${columnLetters(column)}${mark}${row + 1}`;
  const last = `${mark}${columnLetters(lastColumn)}${mark}${row + rows}`;
  return first === last ? first : `${first}:${last}`;
}

/** A sheet's name as it stands in a reference. */
export function quoteSheet(name: string): string {
  return /^[A-Z_]\w*$/i.test(name) && !isAddress(name) ? name : `'${name.replaceAll("'", "''")}'`;
}

const isAddress = (text: string) => /^[A-Z]{1,3}\d+$/i.test(text);

/** Splits "'My sheet'!A1" into its two parts. */
export function splitSheet(reference: string): { readonly sheet?: string; readonly local: string } {
  const at = reference.lastIndexOf("!");
  if (at <= 0) return { local: reference };
  const name = reference.slice(0, at);
  const quoted = name.length > 1 && name.startsWith("'") && name.endsWith("'");
  return { sheet: quoted ? name.slice(1, -1).replaceAll("''", "'") : name, local: reference.slice(at + 1) };
}

/** The cells of "A1:B2", "$A$1", "A:C" or "1:3"; undefined for anything else, such as a name. */
export function parseArea(local: string): Area | undefined {
  const [first = "", last = first, more] = local.replaceAll("$", "").toUpperCase().split(":");
  const a = parseCorner(first);
  const b = parseCorner(last);
  if (!a || !b || more !== undefined) return undefined;
  const alone = a.row === undefined || a.column === undefined;
  if (alone !== (b.row === undefined || b.column === undefined) || (alone && !local.includes(":"))) return undefined;
  if ((a.row === undefined) !== (b.row === undefined)) return undefined;
  const [row, rows] = between(a.row, b.row, MAX_ROWS);
  const [column, columns] = between(a.column, b.column, MAX_COLUMNS);
  return { row, rows, column, columns };
}

interface Corner {
  readonly row: number | undefined;
  readonly column: number | undefined;
}

function parseCorner(text: string): Corner | undefined {
  const match = /^([A-Z]{0,3})(\d{0,7})$/.exec(text);
  if (!match || text === "") return undefined;
  const [, letters = "", digits = ""] = match;
  return { column: letters ? columnIndex(letters) : undefined, row: digits ? Number(digits) - 1 : undefined };
}

function between(a: number | undefined, b: number | undefined, all: number): [number, number] {
  return a === undefined || b === undefined ? [0, all] : [Math.min(a, b), Math.abs(a - b) + 1];
}

/** The cells that both areas have. */
export function intersect(a: Area, b: Area): Area | undefined {
  const row = Math.max(a.row, b.row);
  const column = Math.max(a.column, b.column);
  const rows = Math.min(a.row + a.rows, b.row + b.rows) - row;
  const columns = Math.min(a.column + a.columns, b.column + b.columns) - column;
  return rows > 0 && columns > 0 ? { row, column, rows, columns } : undefined;
}

/** The smallest rectangle that holds both. */
export function union(a: Area, b: Area): Area {
  const row = Math.min(a.row, b.row);
  const column = Math.min(a.column, b.column);
  const rows = Math.max(a.row + a.rows, b.row + b.rows) - row;
  const columns = Math.max(a.column + a.columns, b.column + b.columns) - column;
  return { row, column, rows, columns };
}

/** Univer's own way of writing an area. */
export interface UniverArea {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}
export function fromUniver({ startRow, startColumn, endRow, endColumn }: UniverArea): Area {
  return { row: startRow, column: startColumn, rows: endRow - startRow + 1, columns: endColumn - startColumn + 1 };
}
export function toUniver({ row, column, rows, columns }: Area): UniverArea {
  return { startRow: row, startColumn: column, endRow: row + rows - 1, endColumn: column + columns - 1 };
}
