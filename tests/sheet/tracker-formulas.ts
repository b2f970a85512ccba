/** Reads a formula far enough to know which functions it calls with how many arguments, and which columns it names. */

export interface Call {
  readonly name: string;
  readonly arguments: number;
}

/** Every call in a formula, the inner ones too. @throws Error when the brackets don't match */
export function calls(formula: string): Call[] {
  const found: Call[] = [];
  const open: { name: string; commas: number; empty: boolean }[] = [];
  let word = "";
  for (let at = 0; at < formula.length; at++) {
    const sign = formula[at]!;
    if (sign === '"' || sign === "'") {
      const end = formula.indexOf(sign, at + 1);
      if (end < 0) throw new Error(`a quote is open in ${formula}`);
      at = end;
      word = "";
      if (open.length > 0) open.at(-1)!.empty = false;
      continue;
    }
    if (sign === "[") {
      for (let depth = 0; at < formula.length; at++) {
        if (formula[at] === "[") depth++;
        if (formula[at] === "]" && --depth === 0) break;
      }
      if (open.length > 0) open.at(-1)!.empty = false;
      word = "";
      continue;
    }
    if (sign === "(") {
      if (open.length > 0) open.at(-1)!.empty = false;
      open.push({ name: word, commas: 0, empty: true });
      word = "";
    } else if (sign === ")") {
      const last = open.pop();
      if (!last) throw new Error(`a bracket too many in ${formula}`);
      found.push({ name: last.name, arguments: last.empty ? 0 : last.commas + 1 });
      word = "";
    } else if (/[\w.]/.test(sign)) {
      word += sign;
      if (open.length > 0) open.at(-1)!.empty = false;
    } else {
      if (sign === ",") open.at(-1)!.commas++;
      word = "";
    }
  }
  if (open.length > 0) throw new Error(`a bracket too few in ${formula}`);
  return found.filter(({ name }) => name !== "");
}

/** The tables that a formula names, with the column where one stands: "Projects[Cost]". */
export const tableReferences = (formula: string): { table: string; column: string }[] =>
  [...formula.replace(/"(?:[^"]|"")*"/g, "").matchAll(/\b(\w{1,60})\[([^\][]*)\]/g)].map(([, table, column]) => ({
    table: table!,
    column: column!,
  }));
