import { isErrorCell, type Cell, type Cells } from "../chart/cell";
import { refuse, answer, type Result } from "../problem";
import { capital } from "../words/sentences";

/** A cell's own words; "" for a blank one, which may arrive as 0, and for one that holds an error. */
export function cellWords(cell: Cell): string {
  return cell === null || cell === 0 || isErrorCell(cell) ? "" : String(cell).normalize("NFKC").trim();
}

/** The same word whatever its case and spaces: "Blue  Linen" and "blue linen" are one fabric. */
export const sameWords = (text: string): string => text.toLowerCase().replace(/\s+/g, " ");

/** A row whose cells are asked for by the name of their column. */
export interface HeadedRow<Column extends string> {
  /** Counted from 1 below the headings, blank rows included. */
  readonly number: number;
  readonly cell: (column: Column) => Cell;
}

/** The headings that may stand over each column, the first one being ours. */
export type Headings<Column extends string> = Readonly<Record<Column, readonly string[]>>;

/**
 * The rows under a range's headings, which may stand in any order below a title. The first row with at least two known
 * headings is the heading row. Unknown columns are left aside. Of two columns that could be the same one, that with our
 * own heading is taken, then the left one.
 *
 * Refuses a range without headings, and one without a column that is needed.
 *
 * @param range what the range is, as a sentence says it: "the stash"
 */
export function headedRows<Column extends string>(
  cells: Cells,
  range: string,
  headings: Headings<Column>,
  needed: readonly Column[],
): Result<HeadedRow<Column>[]> {
  const columns = Object.keys(headings) as Column[];
  const find = (row: readonly Cell[]): Map<Column, number> => {
    const words = row.map((cell) => sameWords(cellWords(cell)));
    const places = columns.map((column): [Column, number] => [
      column,
      headings[column].map((heading) => words.indexOf(heading.toLowerCase())).find((place) => place >= 0) ?? -1,
    ]);
    return new Map(places.filter(([, place]) => place >= 0));
  };
  const top = cells.findIndex((row) => find(row).size >= 2);
  const wanted = needed.map((column) => headings[column][0]).join(", ");
  if (top < 0) return refuse("noHeadings", { range, wanted });
  const places = find(cells[top]!);
  const absent = needed.find((column) => !places.has(column));
  if (absent !== undefined) {
    const found = cells[top]!.map(cellWords).filter(Boolean).slice(0, 30).join(", ");
    return refuse("headingMissing", { range: capital(range), wanted: headings[absent][0]!, found });
  }
  return answer(
    cells.slice(top + 1).map((row, index) => ({
      number: index + 1,
      cell: (column) => {
        const place = places.get(column);
        return place === undefined ? null : (row[place] ?? null);
      },
    })),
  );
}
