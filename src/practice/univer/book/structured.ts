/**
 * References to tables, such as `Projects[Cost]`, `Projects[[#All],[Cost]]` and `[@Cost]`.
 *
 * Univer knows only the long form of the last, `Projects[[#This Row],[Cost]]`, tells names apart by case, and takes a
 * column that is not there for the one left of the table, without a word. So formulas are put right on their way in and
 * shown in Excel's way on their way out. An apostrophe before a sign of a column's name, as Excel wants it, goes.
 */

/** What the tables of a workbook are called, and their columns, as they are written. */
export interface KnownTable {
  readonly Name: string;
  readonly columnNames: readonly string[];
}
export type FindTable = (name: string) => KnownTable | undefined;

export interface Resolved {
  readonly formula: string;
  /** What it names that is not there; #REF! stands in its place. */
  readonly missing: readonly string[];
}

const same = (a: string, b: string) => a.toLowerCase() === b.toLowerCase();
const THIS_ROW = "[#This Row],";

/** The formula as Univer needs it; `own` is the table that the formula's cell is in. */
export function resolved(formula: string, find: FindTable, own: KnownTable | undefined): Resolved {
  const missing: string[] = [];
  const changed = references(formula, (name, body) => {
    const table = name === "" ? own : find(name);
    if (!table) {
      missing.push(`${name}[${body}]`);
      return "#REF!";
    }
    let unknown = false;
    const columns = mapColumns(long(body), (column) => {
      const plain = column.replace(/'(.)/g, "$1");
      const known = table.columnNames.find((heading) => same(heading, column) || same(heading, plain));
      unknown ||= known === undefined;
      return known ?? column;
    });
    if (unknown) missing.push(`${name}[${body}]`);
    return unknown ? "#REF!" : `${table.Name}[${columns}]`;
  });
  return { formula: changed, missing };
}

/** `@Cost` and `@[Sale price]` in the long form. */
function long(body: string): string {
  if (!body.startsWith("@")) return body;
  const rest = body.slice(1);
  if (rest === "") return "#This Row";
  return THIS_ROW + (rest.startsWith("[") ? rest : `[${rest}]`);
}

/** The formula as Excel shows it; the name of its own table goes without saying. */
export function shortened(formula: string, own: string | undefined): string {
  return references(formula, (name, body) => {
    const table = name === own ? "" : name;
    if (body === "#This Row") return `${table}[@]`;
    if (!body.startsWith(THIS_ROW)) return `${name}[${body}]`;
    const column = body.slice(THIS_ROW.length);
    const bare = column.slice(1, -1);
    return /^[\p{L}\p{N}_]+$/u.test(bare) ? `${table}[@${bare}]` : `${table}[@${column}]`;
  });
}

/** The formula with one column of a table under its new heading; without one the reference is #REF!. */
export function renamed(formula: string, table: string, before: string, after: string | undefined): string {
  return references(formula, (name, body) => {
    if (!same(name, table)) return `${name}[${body}]`;
    let gone = false;
    const columns = mapColumns(body, (column) => {
      if (!same(column, before)) return column;
      gone ||= after === undefined;
      return after ?? column;
    });
    return gone ? "#REF!" : `${name}[${columns}]`;
  });
}

/** Changes the names of columns in what stands between the outer brackets. */
function mapColumns(body: string, change: (column: string) => string): string {
  if (body.includes("[")) {
    return body.replace(/\[([^[\]]*)\]/g, (all, column: string) =>
      column.startsWith("#") ? all : `[${change(column)}]`,
    );
  }
  return body === "" || body.startsWith("#") ? body : change(body);
}

/** Calls `change` with the name before each bracket ("" if none) and what stands inside; texts are left alone. */
function references(formula: string, change: (name: string, body: string) => string): string {
  if (!formula.includes("[")) return formula;
  let text = "";
  for (let at = 0; at < formula.length;) {
    const char = formula[at]!;
    if (char === '"' || char === "'") {
      const end = endOfQuote(formula, at);
      text += formula.slice(at, end);
      at = end;
    } else if (char === "[") {
      const end = endOfBracket(formula, at);
      const name = /(?:^|[^\p{L}\p{N}_.\\])([\p{L}_\\][\p{L}\p{N}_.\\]*)$/u.exec(text)?.[1] ?? "";
      text = text.slice(0, text.length - name.length) + change(name, formula.slice(at + 1, end - 1));
      at = end;
    } else {
      text += char;
      at++;
    }
  }
  return text;
}

function endOfQuote(text: string, start: number): number {
  const end = text.indexOf(text[start]!, start + 1);
  return end < 0 ? text.length : end + 1;
}

/** Where the bracket that opens at `start` has been closed. */
function endOfBracket(text: string, start: number): number {
  let depth = 0;
  for (let at = start; at < text.length; at++) {
    if (text[at] === "[") depth++;
    else if (text[at] === "]" && --depth === 0) return at + 1;
  }
  return text.length;
}
