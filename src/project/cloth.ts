import { readLengthCell, type Cell } from "../chart/cell";
import { readWidthCell, widthUnitOf } from "../chart/cells-fabric";
import type { BodyUnit, FabricUnit } from "../chart/model";
import { clothUnitOf, convert, readUnit, type LengthUnit } from "../length";
import { answer, refuse, type Result } from "../problem";
import { cellWords } from "./headed-rows";

/** A width from selvedge to selvedge. */
export interface ClothWidth {
  readonly value: number;
  readonly unit: BodyUnit;
}
/** A length of cloth; `unit` null where nothing says which. */
export interface ClothLength {
  readonly value: number;
  readonly unit: FabricUnit | null;
}

/**
 * A width as it is written: 45, "115 cm", "44/45" (the larger). A bare number up to 80 is inches, a larger one
 * centimetres, unless `unit` says otherwise. Blank is undefined.
 */
export function readClothWidth(cell: Cell, unit: Cell): Result<ClothWidth | undefined> {
  if (cellWords(cell) === "") return answer(undefined);
  const read = readWidthCell(cell);
  if (!read.ok) return read;
  const { value } = read.value;
  const said = read.value.unit ?? readUnit(cellWords(unit))?.unit;
  return answer({ value, unit: said === "in" || said === "cm" ? said : widthUnitOf(value) });
}

/**
 * A length of cloth as it is written: 2.375, "2 3/8 yd", "90 cm" (0.9 m), "27 in" (0.75 yd). A bare number is in `unit`.
 * Blank and 0 are undefined.
 */
export function readClothLength(cell: Cell, unit: Cell): Result<ClothLength | undefined> {
  if (cellWords(cell) === "") return answer(undefined);
  const read = readLengthCell(cell, "a length of fabric");
  if (!read.ok) return read;
  const { value, unit: said } = read.value;
  if (value === 0) return answer(undefined);
  if (said !== null) return answer(inClothUnit(value, said));
  const word = cellWords(unit);
  if (word === "") return answer({ value, unit: null });
  const named = readUnit(word);
  if (!named) return refuse("unknownUnit", { text: word, known: "yd or m" });
  return answer(inClothUnit(value * (named.factor ?? 1), named.unit));
}

function inClothUnit(value: number, from: LengthUnit): ClothLength {
  const unit = clothUnitOf(from);
  return { value: convert(value, from, unit), unit };
}
