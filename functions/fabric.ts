import {
  answer,
  isMissing,
  printedYardage,
  readFlagCell,
  readNapCell,
  readSizeCell,
  readWidthCell,
  readWordCell,
  type Cell,
  type Result,
} from "../src/index";
import { cellsOf, lookUp } from "./cells";
import { guarded, need } from "./errors";
import { chartIn } from "./remember";

/**
 * Looks up the printed amount of fabric for a view, a fabric width and a size.
 * @customfunction YARDAGE YARDAGE
 * @param table The fabric table with its headings, or the pattern index.
 * @param view The view, such as A; blank where the table names none.
 * @param width The fabric's width, such as 45, 60 or 115 cm.
 * @param size The size, or a blend such as 12-16, which takes the largest amount.
 * @param [part] The part, such as lining or contrast; left out, the main fabric.
 * @param [nap] The word with, without or either; left out, whichever needs more.
 * @param [estimate] TRUE to estimate the amount for a width that is not printed.
 * @param [pattern] The pattern's name, when the table is the pattern index.
 * @returns The amount, in the unit of the table.
 */
export function yardage(
  table: any[][],
  view: any[][],
  width: any[][],
  size: any[][],
  part?: any[][],
  nap?: any[][],
  estimate?: any[][],
  pattern?: any[][],
): any[][] {
  return guarded(() => {
    const source = need(chartIn(cellsOf(table)));
    return lookUp(
      [view, width, size, part, nap, estimate, pattern],
      (view, width, size, part, nap, estimate, pattern) => {
        const tables = source.fabricCharts(pattern);
        if (!tables.ok) return tables;
        const charts = tables.value;
        const asked = allOf([
          readWidthCell(width),
          readSizeCell(
            size,
            charts.flatMap(({ sizes }) => sizes),
          ),
          word(view),
          word(part),
          readNapCell(nap),
          readFlagCell(estimate, false),
        ] as const);
        if (!asked.ok) return asked;
        const [cloth, label, name, use, direction, guess] = asked.value;
        const found = printedYardage(charts, {
          width: cloth,
          size: label,
          view: name,
          part: use === "" ? "main" : use,
          nap: direction,
          estimate: guess,
        });
        return found.ok ? answer(found.value.amount) : found;
      },
    );
  }) as any[][];
}

const word = (cell: Cell): Result<string> => (isMissing(cell) ? answer("") : readWordCell(cell, "a word"));

type Values<Results extends readonly Result<unknown>[]> = {
  -readonly [Key in keyof Results]: Results[Key] extends Result<infer Value> ? Value : never;
};

/** All values, or the first problem. */
function allOf<const Results extends readonly Result<unknown>[]>(results: Results): Result<Values<Results>> {
  const wrong = results.find((result) => !result.ok);
  if (wrong && !wrong.ok) return wrong;
  return answer(results.map((result) => result.ok && result.value) as Values<Results>);
}
