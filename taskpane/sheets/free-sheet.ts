/** What a sheet of one day is called. */
import { isNamed } from "../../src/index";

/** A second sheet on one day stands beside the first. */
export function freeSheet(wanted: string, sheets: readonly string[]): string {
  let name = wanted;
  for (let count = 2; isNamed(name, sheets); count++) name = `${wanted.slice(0, 28)} ${count}`;
  return name;
}

/** "14 March 2026" */
export const today = (day: Date): string =>
  day.toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" });
