/** What a custom function answers, as Univer's values, and the sentences that go with its errors. */
import type { BaseValueObject } from "@univerjs/engine-formula";
import { type ErrorCell, plainError } from "./arguments";
import { ERROR_CODES } from "./bundle";
import type { FormulaEngine } from "./engine";

/** A formula's own cell. */
export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** By formula cell: the messages of its result, by "row,column" counted from that cell. */
export type Messages = Map<string, ReadonlyMap<string, string>>;

const key = ({ sheet, row, column }: Place) => `${sheet}!${row},${column}`;

/** The sentence of one cell of a formula's result, or of the formula cell itself. */
export function messageAt(messages: Messages, formula: Place, row = formula.row, column = formula.column) {
  return messages.get(key(formula))?.get(`${row - formula.row},${column - formula.column}`);
}

/** Turns an answer into Univer's value and remembers the sentences of its errors. */
export function reply(engine: FormulaEngine, answer: unknown, place: Place, messages: Messages): BaseValueObject {
  const said = new Map<string, string>();
  const cell = (value: unknown, row: number, column: number) => {
    const error = errorOf(value);
    if (error?.message) said.set(`${row},${column}`, error.message);
    return error ? engine.ErrorValueObject.create(error.basicValue as never, error.message) : cellValue(engine, value);
  };
  const result = Array.isArray(answer) ? grid(engine, answer as unknown[][], cell) : cell(answer, 0, 0);
  if (said.size > 0) messages.set(key(place), said);
  else messages.delete(key(place));
  return result;
}

function grid(
  engine: FormulaEngine,
  rows: readonly (readonly unknown[])[],
  cell: (value: unknown, row: number, column: number) => BaseValueObject,
): BaseValueObject {
  const columnCount = rows[0]?.length ?? 0;
  if (columnCount === 0 || rows.some((row) => !Array.isArray(row) || row.length !== columnCount)) {
    return engine.ErrorValueObject.create(ERROR_CODES.invalidValue as never);
  }
  return engine.ArrayValueObject.create({
    calculateValueList: rows.map((row, r) => row.map((value, c) => cell(value, r, c))),
    rowCount: rows.length,
    columnCount,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

/** The runtime fails a NaN, calls Infinity #NUM! and an ordinary Error #VALUE!. */
function errorOf(value: unknown): ErrorCell | undefined {
  if (value instanceof Error || typeof value === "object") {
    return value === null ? undefined : (plainError(value) ?? { type: "Error", basicValue: ERROR_CODES.invalidValue });
  }
  if (typeof value !== "number" || Number.isFinite(value)) return undefined;
  return { type: "Error", basicValue: Number.isNaN(value) ? ERROR_CODES.invalidValue : ERROR_CODES.invalidNumber };
}

/** null and undefined show as 0 in Excel; "" stays "". */
function cellValue(engine: FormulaEngine, value: unknown): BaseValueObject {
  if (value === null || value === undefined) return engine.NumberValueObject.create(0);
  if (typeof value === "boolean") return engine.BooleanValueObject.create(value);
  if (typeof value === "number") return engine.NumberValueObject.create(value);
  return engine.StringValueObject.create(String(value)); // not the factory: it would make numbers of "14" and "6-12"
}
