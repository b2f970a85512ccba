import { chartIndex as indexOf, readWordCell, tags as tagsOf, type NamedTable } from "../src/index";
import { cellsOf, lookUp, plan } from "./cells";
import { need } from "./errors";

/**
 * Makes search words to look up what others have sewn from a pattern, such as #maker4821 #m4821.
 * @customfunction TAGS TAGS
 * @param maker The pattern's maker.
 * @param number The pattern's number.
 * @returns The search words.
 */
export function tags(maker: any[][], number: any[][]): any[][] {
  return lookUp([maker, number], (maker, number) => {
    const name = need(readWordCell(maker, "the maker's name"));
    return need(tagsOf(name, need(readWordCell(number, "the pattern's number"))));
  });
}

/**
 * Lists all charts as the rows of the pattern index; the pane writes and keeps this formula.
 * @customfunction CHARTINDEX CHARTINDEX
 * @param name A pattern's name.
 * @param table One of its tables with headings, such as CampShirt_body[#All]; more names and tables may follow in turn.
 * @returns A row for each figure: pattern, kind, unit, view, part, width, width unit, nap, measurement, size, low and high.
 */
export function chartIndex(name: any[][], table: any[][][]): any[][] {
  return plan(() => indexOf(pairs([name, ...(Array.isArray(table) ? table : [])])));
}

/** Names and tables in turn; a table that is missing at the end is a blank one. */
function pairs(given: readonly unknown[]): NamedTable[] {
  const named: NamedTable[] = [];
  for (let at = 0; at < given.length; at += 2) named.push({ name: cellsOf(given[at]), table: cellsOf(given[at + 1]) });
  return named;
}
