/**
 * Lengths and their units.
 *
 * A `Length` keeps the number and the unit it was given in and is converted only when it leaves through `inUnit`:
 * a figure that stays in its own unit is never touched, and inch -> cm -> inch happens nowhere.
 */

/** The units a length may have. Millimetres are read as centimetres, feet as inches. */
export type LengthUnit = "in" | "cm" | "yd" | "m";

declare const brand: unique symbol;
export interface Length {
  readonly value: number;
  readonly unit: LengthUnit;
  readonly [brand]: "Length";
}

/**
 * Each unit in millimetres: whole numbers of tenths, so that a quotient of two is as exact as a double can be.
 *
 * Source: Addendum (Jan 1960) to NBS Circular 572, US National Bureau of Standards: 1 yd = 0.9144 m, 1 in = 25.4 mm.
 */
const TENTHS_OF_MILLIMETRE: Readonly<Record<LengthUnit, number>> = { in: 254, cm: 100, yd: 9144, m: 10000 };

export function lengthIn(value: number, unit: LengthUnit): Length {
  return { value, unit } as Length;
}
export const inches = (value: number): Length => lengthIn(value, "in");
export const cm = (value: number): Length => lengthIn(value, "cm");
export const yards = (value: number): Length => lengthIn(value, "yd");
export const metres = (value: number): Length => lengthIn(value, "m");

/**
 * The number of `unit`s in a length; a length already in that unit is returned to the last bit.
 *
 * @example inUnit(yards(2.375), "m") //=> 2.1717
 */
export function inUnit(length: Length, unit: LengthUnit): number {
  return convert(length.value, length.unit, unit);
}

/** A plain number from one unit to another. */
export function convert(value: number, from: LengthUnit, to: LengthUnit): number {
  return from === to ? value : (value * TENTHS_OF_MILLIMETRE[from]) / TENTHS_OF_MILLIMETRE[to];
}

/**
 * The same for a length as it is written: a bare number stands in the unit that is wanted already, and where that isn't
 * known the number stays as it is.
 *
 * @example lengthInto({ value: 1, unit: null }, "cm") //=> 1
 */
export function lengthInto(
  { value, unit }: { readonly value: number; readonly unit: LengthUnit | null },
  to: LengthUnit | null | undefined,
): number {
  return unit && to ? convert(value, unit, to) : value;
}

/** The unit of measures that goes with a unit: inches with yards, centimetres with metres. */
export const smallUnitOf = (unit: LengthUnit): "in" | "cm" => (unit === "in" || unit === "yd" ? "in" : "cm");
/** The unit of cloth that goes with a unit: yards with inches, metres with centimetres. */
export const clothUnitOf = (unit: LengthUnit): "yd" | "m" => (smallUnitOf(unit) === "in" ? "yd" : "m");
