/** What is said of the body tables of a pattern, and of the groups of sizes that it is sold in. */
import { capital, listed } from "./sentences";

/** Which table suits a figure type. */
export const typesNotTold =
  "Nothing tells the figure types apart: back waist length or height is missing in the body or in the charts.";
export const noSizeForBody = (table: string): string => `${table} has no size for this body`;
export const tableIs = (table: string, label: string, offAtPlaces: readonly string[]): string =>
  `${table}, size ${label}, is ${listed(offAtPlaces)}`;
export const rightAt = (name: string): string => `right at the ${name}`;
export const offAt = (by: string, isShort: boolean, name: string): string =>
  `${by} too ${isShort ? "short" : "long"} at the ${name}`;
export const suitsBetter = (tables: readonly string[], why: readonly string[]): string =>
  `${capital(listed(tables))} ${tables.length === 1 ? "suits better" : "suit equally well"}: ${listed(why)}.`;
export const sizeByTable = (label: string, table: string): string => `size ${label} by ${table}`;
export const backWaistOff = (by: string, isLonger: boolean): string =>
  `The back waist length is ${by} ${isLonger ? "longer" : "shorter"} than the chart's: if the pattern has a ${isLonger ? "tall" : "petite"} table, look there.`;

const ORDINALS = ["first", "second", "third", "fourth"];
export const tableAlone = (labels: string): string => `the table ${labels}`;
/** Counted from 0. */
export const tableInOrder = (at: number, labels: string): string =>
  `the ${ORDINALS[at] ?? `${at + 1}th`} table (${labels})`;
export const oneOfTables = (count: number, table: string): string =>
  `This pattern has ${count} body tables; this is from ${table}.`;

/** Which groups of sizes to buy. */
export const inGroup = (cut: string, group: string): string => `Size ${cut} is in ${group}.`;
export const blendInGroup = (sizes: readonly string[], group: string, cut: string, single: string): string =>
  `The blend of ${listed(sizes)} is all in ${group}; size ${cut} alone is in ${single}.`;
export const blendInGroups = (
  sizes: readonly string[],
  groups: readonly string[],
  cut: string,
  single: string,
): string => `The blend of ${listed(sizes)} needs ${listed(groups)}; size ${cut} alone needs ${single}.`;
