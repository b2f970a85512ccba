/** Names that a workbook accepts, made from what a person calls her pattern. */

/** Longest name Excel gives a sheet. */
const SHEET_NAME = 31;
/** Excel allows 255; a formula with several of them should still be readable. */
const TABLE_NAME = 60;

/**
 * The start of a pattern's table names: each word with a capital, letters, digits and _ only. What would start with a
 * digit, or is nothing at all, gets something to stand on.
 *
 * @example nameStem("Camp shirt, view B") //=> "CampShirtViewB"
 */
export function nameStem(pattern: string): string {
  const words = pattern.normalize("NFC").match(/[\p{L}\p{N}_]+/gu) ?? [];
  const stem = words
    .map((word) => word[0]!.toUpperCase() + word.slice(1))
    .join("")
    .replace(/[^\p{L}\p{Nd}_]/gu, "")
    .slice(0, TABLE_NAME);
  return /^[\p{L}_]/u.test(stem) ? stem : `Pattern${stem}`;
}

/**
 * A table's name that is free: `CampShirt_body`, then `CampShirt_body_2`. Names are compared without case, as Excel does.
 * A name that Excel would take for a cell (AB12, R1C1) can't come out of it, because `part` stands behind a _.
 *
 * @param taken every table's and every defined name of the workbook
 * @example tableName("Camp shirt", "body", ["campshirt_BODY"]) //=> "CampShirt_body_2"
 */
export function tableName(pattern: string, part: string, taken: Iterable<string>): string {
  return freeName(`${nameStem(pattern)}_${part}`, taken, (name, count) => `${name}_${count}`);
}

/**
 * A sheet's name for a pattern: without the signs that Excel refuses, at most 31 characters.
 *
 * @example sheetName("Skirt [wrap] 1/2") //=> "Skirt (wrap) 1-2"
 */
export function sheetName(pattern: string): string {
  const plain = pattern
    .replace(/\[/g, "(")
    .replace(/\]/g, ")")
    .replace(/[\\/:]/g, "-")
    .replace(/[?*]/g, "")
    // eslint-disable-next-line no-control-regex
    .replace(/[\u0000-\u001f\s]+/g, " ");
  const name = withoutQuotes(withoutQuotes(plain).slice(0, SHEET_NAME));
  // Excel keeps this one for itself.
  return name === "" ? "Pattern" : /^history$/i.test(name) ? "History chart" : name;
}

/** Neither spaces nor an apostrophe may stand at the ends. Loops instead of a pattern, so that "''''…" costs nothing. */
function withoutQuotes(text: string): string {
  let start = 0;
  let end = text.length;
  while (start < end && (text[start] === "'" || text[start] === " ")) start++;
  while (end > start && (text[end - 1] === "'" || text[end - 1] === " ")) end--;
  return text.slice(start, end);
}

/**
 * The pattern's name, or the first of "name 2", "name 3" … whose sheet is free.
 *
 * @example freePatternName("Camp shirt", ["Camp Shirt"]) //=> "Camp shirt 2"
 */
export function freePatternName(pattern: string, takenSheets: Iterable<string>): string {
  const taken = new Set([...takenSheets].map(plain));
  for (let count = 1; ; count++) {
    const suffix = count === 1 ? "" : ` ${count}`;
    const name = sheetName(sheetName(pattern).slice(0, SHEET_NAME - suffix.length) + suffix);
    if (!taken.has(plain(name))) return count === 1 ? pattern.trim() : name;
  }
}

/** Whether one of these is called so; Excel's names don't differ by case. */
export function isNamed(name: string, names: Iterable<string>): boolean {
  return [...names].some((other) => plain(other) === plain(name));
}

const plain = (name: string): string => name.toLowerCase();

function freeName(name: string, takenNames: Iterable<string>, next: (name: string, count: number) => string): string {
  const taken = new Set([...takenNames].map(plain));
  let free = name;
  for (let count = 2; taken.has(plain(free)); count++) free = next(name, count);
  return free;
}

/**
 * Headings that a table can carry: none empty, no two alike without case. Excel would make "122" of a second "12" in
 * silence, and 122 is a size.
 *
 * @example distinctHeadings(["12", "12", ""]) //=> ["12", "12 (2)", "?"]
 */
export function distinctHeadings(headings: readonly string[]): string[] {
  const taken: string[] = [];
  for (const heading of headings) {
    const wanted = heading.trim() === "" ? "?" : heading;
    taken.push(freeName(wanted, taken, (name, count) => `${name} (${count})`));
  }
  return taken;
}

/**
 * A sheet's name as a formula writes it.
 *
 * @example quotedSheet("Camp shirt") //=> "'Camp shirt'"
 */
export function quotedSheet(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}

/** A text as a formula writes it: in quotes, inner ones doubled. */
export function quotedText(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}
