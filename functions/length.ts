import {
  answer,
  convert,
  formatFraction,
  isMissing,
  readLengthCell,
  readNumberCell,
  readSignedLengthCell,
  readUnitCell,
  refuse,
  roundUp,
  type Cell,
  type FabricUnit,
  type Result,
} from "../src/index";
import { lookUp } from "./cells";

/**
 * Reads a length as patterns print it, such as 30 1/2, 77,5 cm or 2 3/8 yd, and gives it as a number.
 * @customfunction LENGTH LENGTH
 * @param text The length, as text or as a number.
 * @param [unit] The unit of the answer: in, cm, yd or m; left out, the unit that the text names.
 * @param [unitIfNone] The unit of a length that names none; left out, it is taken to be in the unit of the answer already.
 * @returns The length as a number.
 */
export function length(text: any[][], unit?: any[][], unitIfNone?: any[][]): any[][] {
  return lookUp([text, unit, unitIfNone], (text, unit, unitIfNone) => {
    const read = readLengthCell(text, "a length");
    const to = readUnitCell(unit);
    const ifNone = readUnitCell(unitIfNone);
    if (!read.ok) return read;
    if (!to.ok) return to;
    if (!ifNone.ok) return ifNone;
    const { value } = read.value;
    const from = read.value.unit ? { unit: read.value.unit } : ifNone.value;
    if (!from || !to.value) return answer(value * (to.value ? 1 : (from?.factor ?? 1)));
    const { unit: target, factor = 1 } = to.value;
    return answer(convert(value * (from.factor ?? 1), from.unit, target) / factor);
  });
}

/**
 * Turns metres into yards, exactly or rounded up to what the shop cuts by.
 * @customfunction TOYARDS TOYARDS
 * @param metres The length in metres.
 * @param [step] What the shop cuts by, in yards, such as 0.125; left out, the answer is exact.
 * @returns The length in yards.
 */
export function toYards(metres: any[][], step?: any[][]): any[][] {
  return lookUp([metres, step], (metres, step) => converted(metres, "m", "yd", step));
}

/**
 * Turns yards into metres, exactly or rounded up to what the shop cuts by.
 * @customfunction TOMETRES TOMETRES
 * @param yards The length in yards.
 * @param [step] What the shop cuts by, in metres, such as 0.1; left out, the answer is exact.
 * @returns The length in metres.
 */
export function toMetres(yards: any[][], step?: any[][]): any[][] {
  return lookUp([yards, step], (yards, step) => converted(yards, "yd", "m", step));
}

function converted(cell: Cell, from: FabricUnit, to: FabricUnit, stepCell: Cell): Result<number> {
  const read = readLengthCell(cell, from === "m" ? "a length in metres" : "a length in yards");
  if (!read.ok) return read;
  const length = convert(read.value.value, read.value.unit ?? from, to);
  if (isMissing(stepCell)) return answer(length);
  const step = readLengthCell(stepCell, "a step");
  if (!step.ok) return step;
  return roundUp(length, convert(step.value.value, step.value.unit ?? to, to));
}

/**
 * Writes a number as a tape is read, such as 2 3/8, to the nearest fraction.
 * @customfunction FRACTION FRACTION
 * @param number The number, in whatever unit it is.
 * @param [denominator] The smallest part: 8 for eighths, which is also what is used when it is left out, or 16.
 * @returns The number as text.
 */
export function fraction(number: any[][], denominator?: any[][]): any[][] {
  return lookUp([number, denominator], (number, denominator) => {
    const read = readSignedLengthCell(number, "a number");
    if (!read.ok) return read;
    const parts: Result<number> = isMissing(denominator) ? answer(8) : readNumberCell(denominator, "a denominator");
    return parts.ok ? formatFraction(read.value.value, parts.value) : parts;
  });
}

/**
 * Rounds a length up to what the shop cuts by, never a step too many.
 * @customfunction BUYLENGTH BUYLENGTH
 * @param length The length that is needed.
 * @param step What the shop cuts by, such as 0.125 yd or 0.1 m.
 * @returns The length to buy, in the unit of the step if that names one, else in the unit of the length.
 */
export function buyLength(length: any[][], step: any[][]): any[][] {
  return lookUp([length, step], (length, step) => {
    const read = readLengthCell(length, "a length");
    if (!read.ok) return read;
    if (isMissing(step)) return refuse("blank", { wanted: "a step, such as 0.125" });
    const by = readLengthCell(step, "a step");
    if (!by.ok) return by;
    const { value, unit } = read.value;
    return roundUp(unit && by.value.unit ? convert(value, unit, by.value.unit) : value, by.value.value);
  });
}
