import {
  answer,
  convert,
  easeBand as bandOf,
  fitTerm as termOf,
  isMissing,
  knitCheck as stretchesEnough,
  noSettings,
  readLengthCell,
  readNumberCell,
  readPlace,
  readSettings,
  readSignedLengthCell,
  readUnitCell,
  readWordCell,
  refuse,
  stretch as stretchOf,
  type BodyUnit,
  type Cell,
  type Result,
  type Settings,
} from "../src/index";
import { cellsOf, lookUp } from "./cells";
import { guarded, need } from "./errors";
import { isFilled } from "./fit-arguments";

/**
 * Says in the catalogue's word how loose a garment is, such as fitted or loose-fitting.
 * @customfunction FITTERM FITTERM
 * @param ease The ease: finished garment less body.
 * @param garment The garment, such as shirt, fitted dress, skirt or trousers.
 * @param place The place: bust or hip, or another, which is enough or tight.
 * @param [unit] What the ease is in, in or cm; left out, inches.
 * @param [settings] Your own table with the headings Setting, Garment, Place, Value and Unit.
 * @returns The fit word.
 */
export function fitTerm(ease: any[][], garment: any[][], place: any[][], unit?: any[][], settings?: any[][]): any[][] {
  return guarded(() => {
    const own = settingsOf(settings);
    return lookUp([ease, garment, place, unit], (ease, garment, place, unit) => {
      const read = readSignedLengthCell(ease, "an ease");
      if (!read.ok) return read;
      const where = whereOf(garment, place, unit);
      if (!where.ok) return where;
      const to = where.value.unit;
      const value = read.value.unit === null ? read.value.value : convert(read.value.value, read.value.unit, to);
      return termOf(value, where.value.garment, where.value.place, { unit: to, settings: own });
    });
  });
}

/**
 * Says how much ease a fit word stands for, such as 3 to 4 in for a fitted dress at the bust.
 * @customfunction EASEBAND EASEBAND
 * @param garment The garment, such as shirt, fitted dress, skirt or trousers.
 * @param place The place: bust or hip.
 * @param term The fit word: close-fitting, fitted, semi-fitted, loose-fitting or very loose-fitting.
 * @param [unit] The unit of the answer, in or cm; left out, inches.
 * @param [settings] Your own table with the headings Setting, Garment, Place, Value and Unit.
 * @returns The band of ease in words.
 */
export function easeBand(garment: any[][], place: any[][], term: any[][], unit?: any[][], settings?: any[][]): any[][] {
  return guarded(() => {
    const own = settingsOf(settings);
    return lookUp([garment, place, term, unit], (garment, place, term, unit) => {
      const where = whereOf(garment, place, unit);
      if (!where.ok) return where;
      const word = readWordCell(term, "a fit word, such as fitted");
      if (!word.ok) return word;
      return bandOf(where.value.garment, where.value.place, word.value, { unit: where.value.unit, settings: own });
    });
  });
}

/**
 * Gives how far a knit stretches, as a fraction of its length at rest: 4 stretched to 5 is 0.25, or 25%.
 * @customfunction STRETCH STRETCH
 * @param rest The length of the cloth at rest.
 * @param stretched The length it stretches to.
 * @returns The stretch as a fraction; show it as a percentage.
 */
export function stretch(rest: any[][], stretched: any[][]): any[][] {
  return lookUp([rest, stretched], (rest, stretched) => {
    if (isMissing(rest)) return refuse("blank", { wanted: "the length at rest" });
    if (isMissing(stretched)) return refuse("blank", { wanted: "the stretched length" });
    const from = readLengthCell(rest, "the length at rest");
    if (!from.ok) return from;
    const to = readLengthCell(stretched, "the stretched length");
    if (!to.ok) return to;
    const units = [from.value.unit, to.value.unit] as const;
    const both = units[0] !== null && units[1] !== null ? convert(to.value.value, units[1], units[0]) : to.value.value;
    return stretchOf(from.value.value, both);
  });
}

/**
 * Says whether a knit stretches enough for what the pattern asks.
 * @customfunction KNITCHECK KNITCHECK
 * @param stretch How far the cloth stretches, as a fraction or a percentage, such as the answer of STRETCH.
 * @param required What the pattern asks, as a fraction or a percentage.
 * @returns TRUE when it is enough; the size stays the pattern's own.
 */
export function knitCheck(stretch: any[][], required: any[][]): any[][] {
  return lookUp([stretch, required], (stretch, required) => {
    const own = readShare(stretch, "the stretch of the cloth");
    if (!own.ok) return own;
    const asked = readShare(required, "the stretch that the pattern asks");
    return asked.ok ? stretchesEnough(own.value, asked.value) : asked;
  });
}

/** A fraction, or a percentage with its sign. */
function readShare(cell: Cell, wanted: string): Result<number> {
  const percent = typeof cell === "string" && cell.trim().endsWith("%");
  const read = readNumberCell(percent ? cell.trim().slice(0, -1) : cell, wanted);
  return read.ok && percent ? answer(read.value / 100) : read;
}

const settingsOf = (settings: unknown): Settings =>
  isFilled(settings) ? need(readSettings(cellsOf(settings))) : noSettings;

function whereOf(
  garment: Cell,
  place: Cell,
  unit: Cell,
): Result<{ readonly garment: string; readonly place: string; readonly unit: BodyUnit }> {
  const word = readWordCell(garment, "a garment, such as shirt");
  if (!word.ok) return word;
  const label = readWordCell(place, "a place, such as bust");
  if (!label.ok) return label;
  const known = readPlace(label.value, "body");
  if (known === null) return refuse("unknownPlace", { text: label.value, known: "bust, waist, hip and the like" });
  const named = readUnitCell(unit);
  if (!named.ok) return named;
  const { unit: to, factor } = named.value ?? { unit: "in" as const, factor: undefined };
  if (factor !== undefined || (to !== "in" && to !== "cm"))
    return refuse("unknownUnit", { text: String(unit), known: "in or cm" });
  return answer({ garment: word.value, place: known, unit: to });
}
