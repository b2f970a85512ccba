/** Which cells a formula fills besides its own. Univer keeps that apart from the cells. */
import { type Area, fromUniver, type UniverArea } from "../address";
import type { Range } from "./range";

type Spills = Record<number, Record<number, UniverArea | null>>;

function spillsOf(range: Range): Spills {
  const { book, Id } = range.sheet;
  const all = book.formulaData.getArrayFormulaRange() as Record<string, Record<string, Spills> | undefined>;
  return all[book.fbook.getId()]?.[String(Id)] ?? {};
}

/** The cells that the formula in this cell fills, its own included. */
export function spillArea(range: Range): Area | undefined {
  if (range.CellCount !== 1) return undefined;
  const found = spillsOf(range)[range.row]?.[range.column];
  return found && range.Values[0]?.[0] !== "#SPILL!" ? fromUniver(found) : undefined;
}

/** The cell of the formula that fills this cell. */
export function spillParent(range: Range): Area | undefined {
  if (range.CellCount !== 1) return undefined;
  for (const [row, line] of Object.entries(spillsOf(range))) {
    for (const [column, found] of Object.entries(line)) {
      if (!found || !covers(found, range)) continue;
      return { row: Number(row), column: Number(column), rows: 1, columns: 1 };
    }
  }
  return undefined;
}

const covers = ({ startRow, startColumn, endRow, endColumn }: UniverArea, { row, column }: Area) =>
  row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;
