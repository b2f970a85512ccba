/**
 * How every cell function reads its arguments and gives its answer.
 *
 * To add a function: an exported function declaration with `@customfunction ID ID`, a plain sentence ending in a period
 * for itself and for each argument (Excel shows them), every argument `any[][]` (one cell arrives as [[value]], a missing
 * one as null), and one of three bodies:
 * - `lookUp([place, measure], (place, measure) => …)`: one answer for each element of the look-up arguments;
 * - `plan(() => …)`: rows that spill, the last column a note;
 * - `single(() => …)`: one cell from whole ranges.
 * Whole ranges are read with `cellsOf(chart)`; `need(result)` takes the value, or ends the function, or the one element
 * of a look-up, with its error.
 * A problem of the engine becomes the error with its sentence by itself; its code goes into the table of errors.ts.
 */
import { isBlank, isErrorCell, isMissing, refuse, type Cell, type Cells, type Fault } from "../src/index";
import { errorValue, guarded, need, problemIn, problemValue, thrownOr } from "./errors";

/** What an answer may put into a cell; null and "" are an empty cell, a fault is an error in its own place. */
export type AnswerCell = string | number | boolean | null | Fault;

/** What Excel gets: never null, undefined, NaN or Infinity, which it would show as 0 or refuse. */
type Given = any;

/**
 * One cell as Excel hands it over: a plain value, an error value, or a rich value whose `basicValue` counts. What is no
 * cell value at all is read as #VALUE!.
 */
export function readCell(value: unknown): Cell {
  if (value === null || value === undefined) return null;
  if (typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value === "number") return Number.isFinite(value) ? value : { error: "#NUM!" };
  if (typeof value !== "object") return { error: "#VALUE!" };
  const { type, basicType, basicValue, text } = value as Record<string, unknown>;
  if (type === "Empty") return null;
  if (type === "Error") return { error: typeof basicValue === "string" ? basicValue : "#VALUE!" };
  if (basicType === "Error" && typeof text === "string") return text;
  if (basicValue === undefined || typeof basicValue === "object") return { error: "#VALUE!" };
  return basicType === "Error" ? { error: String(basicValue) } : readCell(basicValue);
}

/** An argument as rows of cells, whatever it arrives as: a range, one cell, nothing. Ragged rows are filled with blanks. */
export function cellsOf(argument: unknown): Cells {
  const rows = rowsOf(argument);
  const width = widest(rows);
  if (rows.every((row) => row.length === width && isPlain(row))) return rows as Cells;
  return rows.map((row) => Array.from({ length: width }, (_, column) => readCell(row[column])));
}

/** Whether every cell is what `readCell` would make of it: most are, and a long index comes with every formula. */
function isPlain(row: readonly unknown[]): boolean {
  for (const value of row) {
    if (typeof value === "number" ? Number.isFinite(value) : typeof value === "string") continue;
    if (value !== null && typeof value !== "boolean") return false;
  }
  return true;
}

function rowsOf(argument: unknown): readonly (readonly unknown[])[] {
  if (!Array.isArray(argument)) return [[argument]];
  const rows = argument.every(Array.isArray)
    ? (argument as unknown[][])
    : argument.map((row: unknown) => (Array.isArray(row) ? (row as unknown[]) : [row]));
  return widest(rows) === 0 ? [[null]] : rows;
}

function widest(rows: readonly (readonly unknown[])[]): number {
  return rows.reduce((most, row) => Math.max(most, row.length), 0);
}

/** The one cell of an argument that can't be a range here. */
export function oneCell(argument: unknown, what: string): Cell {
  const cells = cellsOf(argument);
  return isRange(cells) ? need(refuse("oneCellWanted", { what })) : cells[0]![0]!;
}

/**
 * One answer for each element: the arguments are single cells, which repeat, or ranges of one shape, which the answer
 * takes. An error cell comes back as itself in its place; a blank element of a range gives an empty cell; a problem is
 * an error in its own cell. With single cells only, the answer is one cell.
 */
export function lookUp(args: readonly unknown[], answer: (...cells: Cell[]) => AnswerCell): Given {
  return guarded(() => {
    const whole = args.map((argument) => ({ raw: rowsOf(argument), cells: cellsOf(argument) }));
    const ranges = whole.filter(({ cells }) => isRange(cells));
    const shape = ranges[0]?.cells ?? ONE;
    const other = ranges.find(({ cells }) => size(cells) !== size(shape));
    if (other) need(refuse("shapesDiffer", { one: size(shape), other: size(other.cells) }));
    const element = (row: number, column: number): Given => {
      const at = whole.map(({ cells }) => (isRange(cells) ? cells[row]![column]! : cells[0]![0]!));
      const wrong = at.findIndex(isErrorCell);
      if (wrong >= 0) {
        const { raw, cells } = whole[wrong]!;
        return itself(isRange(cells) ? raw[row]![column] : raw[0]![0], at[wrong]!);
      }
      // A fault of ours in one element must not take the others with it.
      try {
        return given(answer(...at));
      } catch (thrown) {
        const problem = problemIn(thrown);
        const blank = problem.code === "blank" && ranges.some(({ cells }) => isMissing(cells[row]![column]!));
        return blank ? "" : problemValue(problem);
      }
    };
    if (ranges.length > 0) return shape.map((cells, row) => cells.map((_, column) => element(row, column)));
    return thrownOr(element(0, 0));
  });
}

/**
 * Answers that are columns: a column for one size, and for a row of sizes (or a column of them, laid beside each other) a
 * column for each, filled up with empty cells. A blank element is an empty column, a bad one an error on top of its column.
 */
export function lookUpColumns(args: readonly unknown[], answer: (...cells: Cell[]) => readonly AnswerCell[]): Given {
  return guarded(() => {
    const found: (readonly AnswerCell[])[] = [];
    const marks = lookUp(args, (...cells) => found.push(answer(...cells)));
    if (!Array.isArray(marks) && typeof marks !== "number") return marks;
    const columns = (Array.isArray(marks) ? marks.flat() : [marks]).map((mark: Given): Given[] =>
      typeof mark === "number" ? found[mark - 1]!.map(given) : [mark],
    );
    const height = Math.max(1, ...columns.map((column) => column.length));
    return Array.from({ length: height }, (_, row) => columns.map((column) => column[row] ?? ""));
  });
}

const ONE: Cells = [[null]];
const isRange = (cells: Cells): boolean => cells.length > 1 || cells[0]!.length > 1;

const size = (cells: Cells): string => `${cells.length} × ${cells[0]!.length}`;

/** The error value that Excel handed over, untouched; a number that isn't finite as the error it stands for. */
function itself(raw: unknown, cell: Cell): Given {
  const { type } = (raw ?? {}) as { readonly type?: unknown };
  return type === "Error" ? raw : errorValue(isErrorCell(cell) ? cell.error : "#VALUE!");
}

/** Rows that spill. No rows at all are one empty cell. */
export function plan(work: () => readonly (readonly AnswerCell[])[]): Given {
  return guarded(() => {
    const rows = work();
    if (rows.length === 0) return [[""]];
    if (rows.some((row) => row.length !== rows[0]!.length)) throw new RangeError("a plan's rows differ in length");
    return rows.map((row) => row.map(given));
  });
}

/** One cell from whole ranges. */
export function single(work: () => AnswerCell): Given {
  return guarded(() => thrownOr(given(work())));
}

function given(cell: AnswerCell): Given {
  if (cell === null) return "";
  if (typeof cell === "number") {
    return Number.isFinite(cell) ? cell + 0 : problemValue(problemIn(new RangeError("a figure that is no number")));
  }
  if (typeof cell !== "object") return cell;
  return cell.error === undefined ? problemValue(cell.fault) : errorValue(cell.error);
}

/** Whether an argument was left out, or is one blank cell. */
export function isGiven(argument: unknown): boolean {
  return cellsOf(argument).some((row) => row.some((cell) => !isBlank(cell)));
}
