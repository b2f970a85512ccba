import {
  isMissing,
  printedYardage,
  readFlagCell,
  readNapCell,
  readSizeCell,
  readWidthCell,
  readWordCell,
  type Cell,
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
        const charts = need(source.charts("fabric", pattern));
        const sizes = charts.flatMap((chart) => chart.sizes);
        return need(
          printedYardage(charts, {
            width: need(readWidthCell(width)),
            size: need(readSizeCell(size, sizes)),
            view: word(view),
            part: word(part) || "main",
            nap: need(readNapCell(nap)),
            estimate: need(readFlagCell(estimate, false)),
          }),
        ).amount;
      },
    );
  }) as any[][];
}

const word = (cell: Cell): string => (isMissing(cell) ? "" : need(readWordCell(cell, "a word")));
