/**
 * The built functions as a cell calls them: dist/functions.js in the real runtime, with what Excel does to the
 * arguments (a single cell becomes a range of one, what is left out at the end arrives as null).
 */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import { type Answer, type CellAnswer, type CellError, startFunctions } from "../practice/custom-functions";

export { BLANK, errorCell, formattedCell } from "../practice/custom-functions";
export type Grid = readonly (readonly unknown[])[];

const dist = join(import.meta.dirname, "../../dist");
if (!existsSync(join(dist, "functions.js"))) throw new Error("Nothing is built yet: npm run build, then test again");

interface Parameter {
  readonly name: string;
  readonly dimensionality?: string;
  readonly repeating?: boolean;
}
interface Entry {
  readonly id: string;
  readonly parameters: readonly Parameter[];
}
const entries = (JSON.parse(readFileSync(join(dist, "functions.json"), "utf8")) as { functions: Entry[] }).functions;
const runtime = startFunctions();
runtime.run(join(dist, "functions.js"));

const asArgument = (value: unknown, parameter: Parameter | undefined) =>
  value !== undefined && !Array.isArray(value) && parameter?.dimensionality === "matrix" ? [[value]] : value;

function prepared(id: string, args: readonly unknown[]) {
  const entry = entries.find((item) => item.id === id);
  if (!entry) throw new RangeError(`functions.json has no ${id}`);
  const at = entry.parameters.findIndex((item) => item.repeating);
  if (at < 0 && args.length > entry.parameters.length) throw new RangeError(`${id} has fewer arguments`);
  const fixed = args.slice(0, at < 0 ? args.length : at).map((value, n) => asArgument(value, entry.parameters[n]));
  if (at >= 0) fixed.push(args.slice(at).map((value) => asArgument(value, entry.parameters[at])));
  return { id, args: fixed, parameters: entry.parameters.length };
}

/** What the runtime hands to the cell, as it stands. */
export function rawCall(id: string, ...args: readonly unknown[]): Promise<Answer> {
  const { args: sent, parameters } = prepared(id, args);
  return runtime.call(id, sent, { parameters });
}

/** What stands in the cell, or in the cells that it spills into. */
export async function call(id: string, ...args: readonly unknown[]): Promise<Answer> {
  return shown(await rawCall(id, ...args));
}

/** The same where blank cells arrive as 0, as desktop Excel sends them. */
export async function callWithZeros(id: string, ...args: readonly unknown[]): Promise<Answer> {
  const { args: sent, parameters } = prepared(id, args);
  return shown(await runtime.call(id, sent, { parameters, blanks: 0 }));
}

/** Calls that arrive in one message; their answers in the same order. */
export async function callTogether(calls: readonly (readonly [string, ...unknown[]])[]): Promise<Answer[]> {
  return (await runtime.callMany(calls.map(([id, ...args]) => prepared(id, args)))).map(shown);
}

/** A spill of one cell is one cell. */
const shown = (answer: Answer): Answer =>
  Array.isArray(answer) && answer.length === 1 && answer[0]!.length === 1 ? answer[0]![0]! : answer;

export const column = (...values: unknown[]): unknown[][] => values.map((value) => [value]);
export const row = (...values: unknown[]): unknown[][] => [values];

export const isError = (value: unknown): value is CellError =>
  typeof value === "object" && value !== null && "error" in value;

/** The cell shows this error, with a sentence in which each pattern is found. */
export function expectError(answer: unknown, code: "#N/A" | "#VALUE!", ...patterns: RegExp[]): void {
  expect(answer).toMatchObject({ error: code });
  const { message } = answer as CellError;
  expect(message, "an error has its sentence").toMatch(/\w.*\w/s);
  for (const pattern of patterns) expect(message).toMatch(pattern);
}

/** An error of either kind: the contract asks for a refusal here and leaves the kind open. */
export function expectRefusal(answer: unknown, ...patterns: RegExp[]): void {
  expect(answer).toHaveProperty("error");
  expectError(answer, (answer as CellError).error as "#N/A", ...patterns);
}

/** The rows of a spilled plan. */
export function rows(answer: Answer): CellAnswer[][] {
  if (!Array.isArray(answer)) throw new Error(`A plan was expected, not ${JSON.stringify(answer)}`);
  return answer;
}

const plain = (value: unknown) =>
  String(value)
    .toLowerCase()
    .replaceAll(/[^a-z0-9]/g, "");

/** The row of a plan whose first cell is this label, in any case and spacing. */
export function rowOf(answer: Answer, label: string | number): CellAnswer[] {
  const found = rows(answer).find((cells) => plain(cells[0]) === plain(label));
  if (!found) throw new Error(`No row "${label}" in ${JSON.stringify(answer)}`);
  return found;
}

/** The numbers of a plan's row. */
export const numbers = (cells: readonly CellAnswer[]): number[] =>
  cells.filter((cell): cell is number => typeof cell === "number");
/** The texts of a plan's row. */
export const texts = (cells: readonly CellAnswer[]): string =>
  cells.filter((cell): cell is string => typeof cell === "string").join(" | ");
