import { LARGEST, type Cell } from "../chart/cell";
import type { BodyUnit, FabricUnit } from "../chart/model";
import { convert, readLength, type LengthText } from "../length";
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

/** A bare width up to this is inches, above it centimetres: the range reader's rule for fabric charts. */
const WIDEST_IN_INCHES = 80;

/**
 * A width as it is written: 45, "115 cm", "44/45" (the larger). A bare number up to 80 is inches, a larger one
 * centimetres, unless `unit` says otherwise. Blank is undefined.
 */
export function readClothWidth(cell: Cell, unit: Cell): Result<ClothWidth | undefined> {
  const text = cellWords(cell);
  if (text === "") return answer(undefined);
  const pair = /^\d{2,3} ?[/-] ?(\d{2,3})(\D.*)?$/.exec(text);
  const read = readNumber(pair ? `${pair[1]}${pair[2] ?? ""}` : text, cell, "A width");
  if (!read.ok) return read;
  const named = read.value.unit ?? readLength(`1 ${cellWords(unit)}`);
  const said = typeof named === "string" ? named : named.ok ? named.value.unit : null;
  const value = read.value.value;
  if (said === "in" || said === "cm") return answer({ value, unit: said });
  if (said === "m" || said === "yd")
    return read.value.unit === null ? answer(bareWidth(value)) : answer(inSmallUnit(value, said));
  return answer(bareWidth(value));
}

const bareWidth = (value: number): ClothWidth => ({ value, unit: value <= WIDEST_IN_INCHES ? "in" : "cm" });
const inSmallUnit = (value: number, unit: "m" | "yd"): ClothWidth =>
  unit === "m" ? { value: convert(value, "m", "cm"), unit: "cm" } : { value: convert(value, "yd", "in"), unit: "in" };

/**
 * A length of cloth as it is written: 2.375, "2 3/8 yd", "90 cm" (0.9 m), "27 in" (0.75 yd). A bare number is in `unit`.
 * Blank and 0 are undefined.
 */
export function readClothLength(cell: Cell, unit: Cell): Result<ClothLength | undefined> {
  const text = cellWords(cell);
  if (text === "") return answer(undefined);
  const read = readNumber(text, cell, "A length of fabric");
  if (!read.ok) return read;
  const { value, unit: said } = read.value;
  if (said !== null) return answer(inLargeUnit(value, said));
  const word = cellWords(unit);
  if (word === "") return answer({ value, unit: null });
  const named = readLength(`1 ${word}`);
  if (!named.ok || named.value.unit === null) return refuse("unknownUnit", { text: word, known: "yd or m" });
  return answer(inLargeUnit(value * named.value.value, named.value.unit));
}

function inLargeUnit(value: number, unit: "in" | "cm" | "yd" | "m"): ClothLength {
  if (unit === "in") return { value: convert(value, "in", "yd"), unit: "yd" };
  return unit === "cm" ? { value: convert(value, "cm", "m"), unit: "m" } : { value, unit };
}

function readNumber(text: string, cell: Cell, what: string): Result<LengthText> {
  if (typeof cell === "boolean") return refuse("unreadableLength", { text });
  const read: Result<LengthText> = typeof cell === "number" ? answer({ value: cell, unit: null }) : readLength(text);
  if (!read.ok) return read;
  if (!Number.isFinite(read.value.value)) return refuse("unreadableLength", { text });
  if (read.value.value > LARGEST) return refuse("excelDate", { text });
  return read.value.value < 0 ? refuse("negative", { text, what }) : read;
}
