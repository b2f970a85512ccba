import {
  answer,
  convert,
  extraYardage as withExtra,
  fabricWidth as onWidth,
  isMissing,
  lengthIn,
  readLengthCell,
  readNumberCell,
  readSignedLengthCell,
  readUnitCell,
  readWidthCell,
  refuse,
  type BodyUnit,
  type Cell,
  type FabricUnit,
  type Length,
  type Result,
} from "../src/index";
import { lookUp } from "./cells";

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
    const needed = readLengthCell(length, "a length of fabric");
    if (!needed.ok) return needed;
    const widths = [clothWidth(from), clothWidth(to)] as const;
    const wrong = widths.find((width) => !width.ok);
    if (wrong && !wrong.ok) return wrong;
    const given = fabricUnit(unit);
    if (!given.ok) return given;
    const steps = isMissing(step) ? undefined : readLengthCell(step, "a step");
    if (steps && !steps.ok) return steps;
    const [printed, own] = widths.map((width) => (width.ok ? width.value : 0)) as [number | Length, number | Length];
    const named = needed.value.unit === null ? undefined : fabricUnitOf(needed.value.unit);
    const into = given.value ?? named;
    const value = needed.value.unit && into ? convert(needed.value.value, needed.value.unit, into) : needed.value.value;
    return onWidth(value, printed, own, {
      ...(into && { unit: into }),
      ...(steps && { step: steps.value.value }),
    });
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
      const needed = readLengthCell(length, "a length of fabric");
      if (!needed.ok) return needed;
      const into = fabricUnit(unit);
      if (!into.ok) return into;
      if (!into.value) return refuse("blank", { wanted: "the unit of the length, yd or m" });
      const small = smallUnit(repeatUnit, into.value);
      if (!small.ok) return small;
      const numbers = [
        number(shrinkage, "a shrinkage, such as 5%", 0),
        number(lengths, "a number of lengths", 1),
      ] as const;
      const sizes = [
        smallLength(repeat, "a repeat", small.value),
        smallLength(added, "a length to add", small.value),
      ] as const;
      const wrong = [...numbers, ...sizes].find((result) => !result.ok);
      if (wrong && !wrong.ok) return wrong;
      const [lost, many, each, more] = [...numbers, ...sizes].map((result) => (result.ok ? result.value : 0));
      const { value, unit: from } = needed.value;
      return withExtra(from ? convert(value, from, into.value) : value, into.value, {
        shrinkage: lost!,
        repeat: each!,
        repeatUnit: small.value,
        lengths: many!,
        added: more!,
      });
    },
  );
}

/** A width as cloth is sold: a bare number, whose unit its size tells, or one with its unit; 58/60 is the wider. */
function clothWidth(cell: Cell): Result<number | Length> {
  const width = readWidthCell(cell);
  if (!width.ok) return width;
  const { value, unit } = width.value;
  return answer(unit ? lengthIn(value, unit) : value);
}

function fabricUnit(cell: Cell): Result<FabricUnit | undefined> {
  const unit = readUnitCell(cell);
  if (!unit.ok || !unit.value) return unit.ok ? answer(undefined) : unit;
  const { unit: known } = unit.value;
  return known === "yd" || known === "m"
    ? answer(known)
    : refuse("unknownUnit", { text: String(cell), known: "yd or m" });
}

const fabricUnitOf = (unit: FabricUnit | BodyUnit): FabricUnit => (unit === "yd" || unit === "in" ? "yd" : "m");

function smallUnit(cell: Cell, cloth: FabricUnit): Result<BodyUnit> {
  const unit = readUnitCell(cell);
  if (!unit.ok) return unit;
  const known = unit.value?.unit ?? (cloth === "yd" ? "in" : "cm");
  return known === "in" || known === "cm"
    ? answer(known)
    : refuse("unknownUnit", { text: String(cell), known: "in or cm" });
}

function smallLength(cell: Cell, wanted: string, unit: BodyUnit): Result<number> {
  if (isMissing(cell)) return answer(0);
  const read = readSignedLengthCell(cell, wanted);
  if (!read.ok) return read;
  return answer(read.value.unit ? convert(read.value.value, read.value.unit, unit) : read.value.value);
}

/** A plain number; text such as "5%" is a share of a hundred. */
function number(cell: Cell, wanted: string, ifBlank: number): Result<number> {
  if (isMissing(cell)) return answer(ifBlank);
  const share = typeof cell === "string" && /^([^%]{1,12})%$/.exec(cell.trim());
  if (!share) return readNumberCell(cell, wanted);
  const hundredth = readNumberCell(share[1]!, wanted);
  return hundredth.ok ? answer(hundredth.value / 100) : hundredth;
}
