import {
  easeBand as bandOf,
  fitTerm as termOf,
  isMissing,
  knitCheck as stretchesEnough,
  lengthInto,
  noSettings,
  readLengthCell,
  readPlace,
  readSettings,
  readShareCell,
  readSignedLengthCell,
  readUnitCell,
  readWordCell,
  refuse,
  stretch as stretchOf,
  type BodyUnit,
  type Cell,
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
      const read = need(readSignedLengthCell(ease, "an ease"));
      const where = whereOf(garment, place, unit);
      const options = { unit: where.unit, settings: own };
      return need(termOf(lengthInto(read, where.unit), where.garment, where.place, options));
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
      const word = need(readWordCell(term, "a fit word, such as fitted"));
      return need(bandOf(where.garment, where.place, word, { unit: where.unit, settings: own }));
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
    if (isMissing(rest)) need(refuse("blank", { wanted: "the length at rest" }));
    if (isMissing(stretched)) need(refuse("blank", { wanted: "the stretched length" }));
    const from = need(readLengthCell(rest, "the length at rest"));
    const to = need(readLengthCell(stretched, "the stretched length"));
    return need(stretchOf(from.value, lengthInto(to, from.unit)));
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
    const own = need(readShareCell(stretch, "the stretch of the cloth"));
    return need(stretchesEnough(own, need(readShareCell(required, "the stretch that the pattern asks"))));
  });
}

const settingsOf = (settings: unknown): Settings =>
  isFilled(settings) ? need(readSettings(cellsOf(settings))) : noSettings;

interface Where {
  readonly garment: string;
  readonly place: string;
  readonly unit: BodyUnit;
}

function whereOf(garmentCell: Cell, placeCell: Cell, unitCell: Cell): Where {
  const garment = need(readWordCell(garmentCell, "a garment, such as shirt"));
  const label = need(readWordCell(placeCell, "a place, such as bust"));
  const place = readPlace(label, "body");
  if (place === null) return need(refuse("unknownPlace", { text: label, known: "bust, waist, hip and the like" }));
  const { unit, factor } = need(readUnitCell(unitCell)) ?? { unit: "in" };
  if (factor !== undefined || unit === "yd" || unit === "m")
    return need(refuse("unknownUnit", { text: String(unitCell), known: "in or cm" }));
  return { garment, place, unit };
}
