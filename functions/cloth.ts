import {
  clothUnitOf,
  extraYardage as withExtra,
  fabricWidth as onWidth,
  isMissing,
  lengthIn,
  lengthInto,
  readLengthCell,
  readShareCell,
  readSignedLengthCell,
  readUnitCell,
  readWidthCell,
  refuse,
  smallUnitOf,
  type BodyUnit,
  type Cell,
  type FabricUnit,
  type Length,
} from "../src/index";
import { lookUp } from "./cells";
import { need } from "./errors";

/**
 * Gives the length that the same pattern needs on cloth of another width, by the printed conversion chart or by area.
 * @customfunction FABRICWIDTH FABRICWIDTH
 * @param length The length that is needed on the width it is printed for.
 * @param from The width it is printed for, such as 60 or 150 cm.
 * @param to The width of your cloth, such as 45 or 115 cm.
 * @param [step] What the shop cuts by; left out, 0.125 yd or 0.1 m.
 * @param [unit] The unit of the length, yd or m; left out, yards when both widths are in inches.
 * @returns The length to buy, rounded up to the step.
 */
export function fabricWidth(length: any[][], from: any[][], to: any[][], step?: any[][], unit?: any[][]): any[][] {
  return lookUp([length, from, to, step, unit], (length, from, to, step, unit) => {
    const needed = need(readLengthCell(length, "a length of fabric"));
    const [printed, own] = [clothWidth(from), clothWidth(to)];
    const into = fabricUnit(unit) ?? (needed.unit === null ? undefined : clothUnitOf(needed.unit));
    const steps = isMissing(step) ? undefined : need(readLengthCell(step, "a step"));
    const options = { ...(into && { unit: into }), ...(steps && { step: steps.value }) };
    return need(onWidth(lengthInto(needed, into), printed, own, options));
  });
}

/**
 * Adds what the envelope leaves out: a repeat to match, lengthened pieces, and what the wash takes.
 * @customfunction EXTRAYARDAGE EXTRAYARDAGE
 * @param length The length that is printed.
 * @param unit The unit of the length and of the answer: yd or m.
 * @param [shrinkage] What the cloth loses in the wash, such as 5%; left out, nothing.
 * @param [repeat] One repeat of the print or plaid; left out, none.
 * @param [repeatUnit] The unit of the repeat and of what is added, in or cm; left out, in with yards and cm with metres.
 * @param [lengths] How many lengths of the cloth are matched or lengthened, pieces that lie one above another; left out, 1.
 * @param [added] What each of these lengths is made longer by; left out, nothing.
 * @returns The length that is needed, not yet rounded to what the shop cuts by.
 */
export function extraYardage(
  length: any[][],
  unit: any[][],
  shrinkage?: any[][],
  repeat?: any[][],
  repeatUnit?: any[][],
  lengths?: any[][],
  added?: any[][],
): any[][] {
  return lookUp(
    [length, unit, shrinkage, repeat, repeatUnit, lengths, added],
    (length, unit, shrinkage, repeat, repeatUnit, lengths, added) => {
      const needed = need(readLengthCell(length, "a length of fabric"));
      const into = fabricUnit(unit) ?? need(refuse("blank", { wanted: "the unit of the length, yd or m" }));
      const small = smallUnit(repeatUnit, into);
      const numbers = {
        shrinkage: number(shrinkage, "a shrinkage, such as 5%", 0),
        lengths: number(lengths, "a number of lengths", 1),
      };
      const sizes = {
        repeat: smallLength(repeat, "a repeat", small),
        added: smallLength(added, "a length to add", small),
      };
      return need(withExtra(lengthInto(needed, into), into, { ...numbers, ...sizes, repeatUnit: small }));
    },
  );
}

/** A width as cloth is sold: a bare number, whose unit its size tells, or one with its unit; 58/60 is the wider. */
function clothWidth(cell: Cell): number | Length {
  const { value, unit } = need(readWidthCell(cell));
  return unit ? lengthIn(value, unit) : value;
}

function fabricUnit(cell: Cell): FabricUnit | undefined {
  const unit = need(readUnitCell(cell))?.unit;
  if (unit === "in" || unit === "cm") return need(refuse("unknownUnit", { text: String(cell), known: "yd or m" }));
  return unit;
}

function smallUnit(cell: Cell, cloth: FabricUnit): BodyUnit {
  const unit = need(readUnitCell(cell))?.unit ?? smallUnitOf(cloth);
  if (unit === "yd" || unit === "m") return need(refuse("unknownUnit", { text: String(cell), known: "in or cm" }));
  return unit;
}

const smallLength = (cell: Cell, wanted: string, unit: BodyUnit): number =>
  isMissing(cell) ? 0 : lengthInto(need(readSignedLengthCell(cell, wanted)), unit);

/** A plain number, or a percentage; a blank is the number that goes without saying. */
const number = (cell: Cell, wanted: string, ifBlank: number): number =>
  isMissing(cell) ? ifBlank : need(readShareCell(cell, wanted));
