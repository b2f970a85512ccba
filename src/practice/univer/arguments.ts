/** Univer's values as Excel would hand them to a custom function. */
import type { BaseValueObject } from "@univerjs/engine-formula";
import { CustomFunctionError, ERROR_CODES } from "./bundle";
import type { Parameter } from "./functions";

export type BlankCells = null | 0;
/** An error cell as Excel describes it, and as a function may return it. */
export interface ErrorCell {
  readonly type: "Error";
  readonly basicType?: "Error";
  readonly basicValue: string;
  readonly message?: string;
}
type Plain = string | number | boolean | null | ErrorCell;

interface Rules {
  readonly blanks: BlankCells;
  /** Hand error cells over; otherwise the first of them is the result, as in Excel. */
  readonly keepErrors: boolean;
}

/** null for what was left out, a grid for a range, one value for a cell. @throws CustomFunctionError */
export function argument(parameter: Parameter, value: BaseValueObject | undefined, rules: Rules): Plain | Plain[][] {
  if (value === undefined) return null;
  const keepErrors = rules.keepErrors && (parameter.type === undefined || parameter.type === "any");
  const cell = (item: Item) => plain(item, { ...rules, keepErrors });
  const checked = (item: Item) => ofType(parameter, cell(item));
  if (parameter.dimensionality !== "matrix") return checked(isArray(value) ? value.get(0, 0) : value);
  if (!isArray(value)) return [[checked(value)]];
  const rows: readonly (readonly Item[])[] = (value as ArrayValue).getArrayValue();
  if (parameter.type !== undefined && parameter.type !== "any") return rows.map((row) => Array.from(row, checked));
  return remembered(value, `${rules.blanks} ${keepErrors}`, () => rows.map((row) => Array.from(row, cell)));
}

/**
 * Univer hands the same array object to every formula that reads a range in one calculation: a column of formulas over
 * the pattern index would turn its thousands of cells over for each row.
 */
const grids = new WeakMap<object, Map<string, Plain[][]>>();
function remembered(array: object, rules: string, make: () => Plain[][]): Plain[][] {
  const known = grids.get(array) ?? new Map<string, Plain[][]>();
  grids.set(array, known);
  const grid = known.get(rules) ?? make();
  known.set(rules, grid);
  return grid;
}

type Item = BaseValueObject | null | undefined;
interface ArrayValue {
  getArrayValue(): Item[][];
  get(row: number, column: number): Item;
}
function isArray(value: BaseValueObject): value is BaseValueObject & ArrayValue {
  return value.isArray();
}

function plain(value: Item, { blanks, keepErrors }: Rules): Plain {
  if (!value || value.isNull()) return blanks;
  if (!value.isError()) return value.getValue() as Plain;
  const code = String((value as unknown as { getErrorType(): string }).getErrorType());
  if (!keepErrors) throw new CustomFunctionError(code);
  return { type: "Error", basicType: "Error", basicValue: code };
}

/** Excel converts what it can to the type that functions.json asks for, and answers #VALUE! where it cannot. */
function ofType({ type }: Parameter, value: Plain): Plain {
  if (value === null || typeof value === "object" || type === undefined || type === "any") return value;
  if (type === "string") return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
  if (type === "number") {
    const number = Number(value);
    if (typeof value === "string" && (value.trim() === "" || Number.isNaN(number))) throw new CustomFunctionError();
    return number;
  }
  if (type !== "boolean") return value;
  if (typeof value !== "string") return Boolean(value);
  if (/^true$/i.test(value)) return true;
  if (/^false$/i.test(value)) return false;
  throw new CustomFunctionError();
}

const KNOWN_CODES: ReadonlySet<unknown> = new Set(Object.values(ERROR_CODES));

/**
 * The error cell behind something thrown or returned: the runtime's error, ours or the real client's. An ordinary
 * Error is none: Excel shows #VALUE! for it and keeps its text to itself.
 */
export function plainError(value: unknown): ErrorCell | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { type, code, basicValue, message } = value as Record<string, unknown>;
  const shown = basicValue ?? code;
  if (type !== "Error" || typeof shown !== "string") return undefined;
  if (!KNOWN_CODES.has(shown) && !/^#[A-Z/0?!]+$/.test(shown)) return undefined;
  // Excel has room for a message only beside these two.
  const speaks = shown === ERROR_CODES.invalidValue || shown === ERROR_CODES.notAvailable;
  return speaks && typeof message === "string" && message !== ""
    ? { type: "Error", basicValue: shown, message }
    : { type: "Error", basicValue: shown };
}
