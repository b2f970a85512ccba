/**
 * Excel's side of custom functions: sends the same messages to the real runtime inside the real client, and reads what
 * comes back. Nothing of the runtime is replaced, so a test sees what Excel would see: nulls for what was left out,
 * blank cells as null or 0, error cells inside ranges, and which messages arrive.
 */
import { readFileSync } from "node:fs";
import vm from "node:vm";
import { Executor } from "../../src/practice/host/executor";
import { type FunctionResult, FUNCTION_SERVICES, FunctionService } from "../../src/practice/host/function-service";
import { loadNodeClient } from "../../src/practice/host/node-client";
import { HostObject } from "../../src/practice/host/objects";
import { sendCalls } from "../../src/practice/host/office-client";

/** An error as a cell shows it, with the sentence behind it if Excel would show one. */
export interface CellError {
  readonly error: string;
  readonly message?: string;
}
export type CellAnswer = string | number | boolean | CellError;
/** One cell, or the rectangle that a function spills. */
export type Answer = CellAnswer | CellAnswer[][];

/** A blank cell: arrives as null, or as 0 when the caller says so (Excel does either, by platform). */
export const BLANK: unique symbol = Symbol("blank cell");

/** A cell that holds an error, as an argument or inside a range. */
export function errorCell(code: string): object {
  return { [CELL]: { type: "Error", basicType: "Error", basicValue: code } };
}
/** A cell with a number and a format of its own, which Excel may hand over as an object. */
export function formattedCell(value: number, numberFormat: string): object {
  return { [CELL]: { type: "FormattedNumber", basicType: "Double", basicValue: value, numberFormat } };
}
const CELL = Symbol("special cell");

export interface CallOptions {
  /** What blank cells arrive as; null unless said otherwise. */
  readonly blanks?: null | 0;
  /** How many parameters the function has: what is left out at the end arrives as null. */
  readonly parameters?: number;
}
export interface Call extends CallOptions {
  readonly id: string;
  readonly args: readonly unknown[];
}

export interface FunctionsRuntime {
  /** Makes a function known to the runtime, as the built bundle does for itself. */
  associate(id: string, implementation: (...args: never[]) => unknown): void;
  /** Runs a bundle such as dist/functions.js, which associates its functions itself. */
  run(file: string): void;
  /** One call. Rejects when the function gives Excel something that no cell can hold. */
  call(id: string, args: readonly unknown[], options?: CallOptions): Promise<Answer>;
  /** All in one message, as Excel does when a sheet is calculated. */
  callMany(calls: readonly Call[]): Promise<Answer[]>;
}

let waiting = new Map<number, (result: FunctionResult) => void>();

class FunctionHost extends HostObject {
  readonly scalars = [];
  readonly CustomFunctions = new FunctionService((results) => {
    for (const result of results) {
      waiting.get(result[0])?.(result);
      waiting.delete(result[0]);
    }
  });
  NewObject(name: string) {
    return FUNCTION_SERVICES.test(name) ? this.CustomFunctions : undefined;
  }
}

/** Loads the client if this process has none yet, and answers with its functions runtime. */
export function startFunctions(): FunctionsRuntime {
  const executor = new Executor(new FunctionHost());
  const { bridge } = loadNodeClient(import.meta.url, executor, SETS);
  waiting = new Map();
  const callMany: FunctionsRuntime["callMany"] = async (calls) => {
    const sent = calls.map((call) => message(call));
    const answers = sent.map((entry) => new Promise<FunctionResult>((resolve) => waiting.set(entry[0], resolve)));
    sendCalls(bridge, sent);
    return (await Promise.all(answers)).map((answer, at) => read(answer, calls[at]!.id));
  };
  return {
    associate: (id, implementation) => CustomFunctions.associate(id, implementation as () => unknown),
    run: (file) => void vm.runInThisContext(readFileSync(file, "utf8"), { filename: file }),
    call: async (id, args, options) => (await callMany([{ id, args, ...options }]))[0]!,
    callMany,
  };
}

/** What a shared runtime on a current Excel claims; "CustomFunctions" is the client's own name for the messages. */
const SETS = { ExcelApi: "1.12", CustomFunctionsRuntime: "1.3", CustomFunctions: "1.9", SharedRuntime: "1.1" };

let nextCall = 1;
const ERRORS_AS_OBJECTS = 4;
const RICH_VALUES = 8;

function message({ id, args, blanks = null, parameters = args.length }: Call) {
  if (!(id.toUpperCase() in associated())) throw new RangeError(`No function has the id ${id}`);
  const rich = holdsRich(args);
  const cell = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(cell);
    if (value === BLANK || value === undefined) return blanks;
    if (typeof value !== "object" || value === null) return value;
    const special = specialOf(value);
    if (!special) throw new RangeError("Not something that a cell can hold");
    if (rich) return { value: JSON.stringify(special) };
    return { type: "CustomFunctionError", code: special.basicValue };
  };
  const values = args.map((value) => (value === undefined ? null : cell(value)));
  while (values.length < parameters) values.push(null);
  return [nextCall++, id, values, "Sheet1!A1", rich ? RICH_VALUES : ERRORS_AS_OBJECTS, null] as const;
}

const holdsRich = (value: unknown): boolean =>
  Array.isArray(value) ? value.some(holdsRich) : specialOf(value)?.type === "FormattedNumber";
const specialOf = (value: unknown) =>
  (value as { [CELL]?: { type: string; basicValue: unknown } } | null | undefined)?.[CELL];
const associated = () =>
  (CustomFunctions as unknown as { _association: { mappings: Record<string, unknown> } })._association.mappings;

/** The numbers by which the runtime names errors. */
const CODES: Readonly<Record<number, string>> = {
  1: "#N/A",
  5: "#DIV/0!",
  6: "#NUM!",
  8: "#NULL!",
  9: "#NAME?",
  10: "#NAME?",
};

function read([, worked, value, code = 7]: FunctionResult, id: string): Answer {
  if (!worked) return withMessage(CODES[code] ?? "#VALUE!", value);
  if (!Array.isArray(value)) return readCell(value, id);
  const width: unknown = value[0]?.length;
  if (!width || value.some((row) => !Array.isArray(row) || row.length !== width)) {
    throw new Error(`${id} answers with something that is not a rectangle: ${JSON.stringify(value)}`);
  }
  return value.map((row: unknown[]) => row.map((cell) => readCell(cell, id)));
}

function readCell(value: unknown, id: string): CellAnswer {
  if (typeof value === "string" || typeof value === "number" || typeof value === "boolean") return value;
  const { type, basicValue, message: text } = (value ?? {}) as Record<string, unknown>;
  if (type === "Error") return withMessage(String(basicValue), text);
  if (type === "FormattedNumber") return Number(basicValue);
  // null stands for NaN, Infinity and undefined too once it has been JSON; Excel would show 0.
  throw new Error(`${id} answers with ${JSON.stringify(value)} in a cell`);
}

function withMessage(error: string, text: unknown): CellError {
  return typeof text === "string" && text !== "" ? { error, message: text } : { error };
}
