import {
  convert,
  formatFraction,
  isMissing,
  lengthInto,
  readLengthCell,
  readNumberCell,
  readSignedLengthCell,
  readUnitCell,
  refuse,
  roundUp,
  type Cell,
  type FabricUnit,
} from "../src/index";
import { lookUp } from "./cells";
import { need } from "./errors";

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
    const read = need(readLengthCell(text, "a length"));
    const to = need(readUnitCell(unit));
    const ifNone = need(readUnitCell(unitIfNone));
    const from = read.unit ? { unit: read.unit } : ifNone;
    if (!from || !to) return read.value * (to ? 1 : (from?.factor ?? 1));
    return convert(read.value * (from.factor ?? 1), from.unit, to.unit) / (to.factor ?? 1);
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

function converted(cell: Cell, from: FabricUnit, to: FabricUnit, stepCell: Cell): number {
  const { value, unit } = need(readLengthCell(cell, from === "m" ? "a length in metres" : "a length in yards"));
  const length = convert(value, unit ?? from, to);
  return isMissing(stepCell) ? length : need(roundUp(length, lengthInto(need(readLengthCell(stepCell, "a step")), to)));
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
    const { value } = need(readSignedLengthCell(number, "a number"));
    return need(formatFraction(value, isMissing(denominator) ? 8 : need(readNumberCell(denominator, "a denominator"))));
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
    const read = need(readLengthCell(length, "a length"));
    if (isMissing(step)) need(refuse("blank", { wanted: "a step, such as 0.125" }));
    const by = need(readLengthCell(step, "a step"));
    return need(roundUp(lengthInto(read, by.unit), by.value));
  });
}
