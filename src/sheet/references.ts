/** References of a formula to columns of its own table: [@Width], [@[Sale price]]. */

/** A quoted text, whose content is nobody's reference, or a reference to this row's cell of a column. */
const PARTS = /"(?:[^"]|"")*"|\[@(?:\[([^[\]]*)\]|([^[\]]*))\]/g;

/**
 * This row's cell of a column, as a formula inside the table says it.
 *
 * @example thisRow("Sale price") //=> "[@[Sale price]]"
 */
export const thisRow = (heading: string): string =>
  /^[\p{L}\p{N}_]+$/u.test(heading) ? `[@${heading}]` : `[@[${escaped(heading)}]]`;

/**
 * A column's name as it stands in its table's brackets: some signs need an apostrophe before, and a name with any other
 * sign than letters, digits and spaces has brackets of its own.
 * Source: "Using structured references with Excel tables", Microsoft Support.
 *
 * @example columnName("Price (each)") //=> "[Price (each)]"
 */
export const columnName = (heading: string): string =>
  /^[\p{L}\p{N}_ ]+$/u.test(heading) ? heading : `[${escaped(heading)}]`;

const escaped = (heading: string): string => heading.replace(/['#[\]@]/g, "'$&");

/**
 * A formula with its references to this row's columns changed; texts stay as they are.
 *
 * @example changeReferences("=[@Width]*2", (heading) => `$C7`) //=> "=$C7*2"
 */
export function changeReferences(formula: string, change: (heading: string) => string): string {
  return formula.replace(PARTS, (part, boxed?: string, bare?: string) => {
    const heading = boxed ?? bare;
    return heading === undefined ? part : change(heading);
  });
}

/**
 * The columns that a formula takes from its own row, each once, in the order of their first appearance.
 *
 * @example ownColumns('=IF([@Price]="","",[@Price])') //=> ["Price"]
 */
export function ownColumns(formula: string): string[] {
  const found = new Set<string>();
  changeReferences(formula, (heading) => {
    found.add(heading);
    return "";
  });
  return [...found];
}

/**
 * A column's letters, counted from 0.
 *
 * @example columnLetters(27) //=> "AB"
 */
export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnLetters(Math.floor(column / 26) - 1) + letter;
}

/**
 * A cell's address in a formula, fixed: rows and columns counted from 0.
 *
 * @example addressOfCell(0, 27) //=> "$AB$1"
 */
export const addressOfCell = (row: number, column: number): string => `$${columnLetters(column)}$${row + 1}`;

/** A quoted text, or a table's name before its bracket. */
const TABLES = /"(?:[^"]|"")*"|(?<![\p{L}\p{N}_.\\\]'])([\p{L}_\\][\p{L}\p{N}_.\\]*)\[/gu;

/**
 * The tables that a formula names, each once.
 *
 * @example tablesOf('=SUM(Stash[Length])&"Old[x]"') //=> ["Stash"]
 */
export const tablesOf = (formula: string): string[] => [
  ...new Set([...formula.matchAll(TABLES)].flatMap(([, name]) => (name === undefined ? [] : [name]))),
];

/** A text, a sheet's name or a table's column, in which letters and digits are no address. */
const NAMED = /"(?:[^"]|"")*"|'[^']*'|\[[^[\]]*\]/g;
const ADDRESS = /(?<![\w.])\$?[A-Z]{1,3}\$?\d{1,7}(?![\w(.])/i;

/**
 * Whether a formula looks at cells by their address, so that it means something else when it stands elsewhere.
 *
 * @example hasAddress('=SEW.EASE([@Bust],$B$4)&"C5"') //=> true
 */
export const hasAddress = (formula: string): boolean => ADDRESS.test(formula.replace(NAMED, " "));
