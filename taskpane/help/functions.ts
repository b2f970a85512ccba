/** What functions.json says, for reading: the same file that Excel reads. */

/** The version of package.json; the build puts it in. */
declare const ADDIN_VERSION: string;

export interface HelpParameter {
  readonly name: string;
  readonly description: string;
  readonly optional?: boolean;
}
export interface HelpFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly HelpParameter[];
}

/** All functions by name. @throws when the file is not there or is not what it should be */
export async function loadFunctions(): Promise<readonly HelpFunction[]> {
  const answer = await fetch(`functions.json?${ADDIN_VERSION}`);
  if (!answer.ok) throw new Error(`functions.json: ${answer.status}`);
  const { functions } = (await answer.json()) as { functions: HelpFunction[] };
  return functions.sort((a, b) => (a.id < b.id ? -1 : 1));
}

/**
 * The functions in which every word of the search stands somewhere; those whose name begins with it come first.
 */
export function found(functions: readonly HelpFunction[], search: string): HelpFunction[] {
  const words = search
    .toLowerCase()
    .replace(/^=?sew\./, "")
    .split(/\s+/)
    .filter(Boolean);
  const matching = functions.filter((entry) => {
    const text = textOf(entry);
    return words.every((word) => text.includes(word));
  });
  const begins = ({ id }: HelpFunction) => words.length > 0 && id.toLowerCase().startsWith(words[0]!);
  return [...matching.filter(begins), ...matching.filter((entry) => !begins(entry))];
}

const textOf = ({ id, description, parameters }: HelpFunction): string =>
  [id, description, ...parameters.flatMap(({ name, description: about }) => [name, about])].join(" ").toLowerCase();

/**
 * How a function is written: its arguments by name, those that may be left out in brackets.
 *
 * @example signature(ease, ",") //=> "SEW.EASE(finished, body)"
 */
export function signature({ id, parameters }: HelpFunction, separator: string): string {
  return `SEW.${id}(${parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(`${separator} `)})`;
}

/** A formula as a workbook with this separator wants it typed: separators are changed, but not in quoted texts and names. */
export function typed(formula: string, separator: string): string {
  if (separator === ",") return formula;
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((part, index) =>
      index % 2 === 1 ? part : part.replace(/,/g, ";").replace(/([(;])(\d+)\.(\d+)(?=[;)])/g, "$1$2,$3"),
    )
    .join("");
}
