/** A paste as rows of cells, each with its place in the paste. */

export interface Cell {
  readonly text: string;
  /** Counted from 1, of the paste; in HTML the row, counted over the rows of all tables in reading order. */
  readonly line: number;
  /** Counted from 1: the cell of its row, or the first character where only spaces part the cells. */
  readonly column: number;
  /** An HTML cell that another row or column began: its text stands here too, but is not this row's own. */
  readonly repeated?: boolean;
}

/**
 * "grid": the cells are certain (tabs, pipes, CSV, HTML), blank ones too. "spaced": cells stand two or more spaces apart,
 * and what a single space parts may be one cell or two.
 */
export interface Row {
  readonly line: number;
  readonly text: string;
  readonly layout: "grid" | "spaced";
  readonly cells: readonly Cell[];
}

export const cellOf = (text: string, line: number, column: number): Cell => ({ text, line, column });

export const isBlankRow = (row: Row): boolean => row.cells.every((cell) => cell.text === "");

/** Whether a spreadsheet could take a text for a formula. */
export const isFormulaLike = (text: string): boolean => /^[\s"']*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20\u2212]/.test(text);

/** The end of a cell's text in its line. */
export const endOf = (cell: Cell): number => cell.column + cell.text.length;
