import { answer, type Result } from "../problem";
import type { Cell } from "./cell";
import type { ChartSource } from "./cells";
import type { SheetFabric } from "./cells-fabric";
import { spanText } from "./cells-figure";
import type { SheetChart } from "./cells-measure";
import { isSpan, type Fault, type Figure, type FabricUnit, type BodyUnit } from "./model";
import { columnOfSize, readSizeCell, sizeIndex } from "./size-label";

/** A figure as a column shows it: a printed range is text. */
export type ColumnCell = number | string | null | Fault;

/**
 * A size's whole column: one cell for each chart row in the chart's order, each in its row's own unit. A size that isn't
 * made at a place is null there. Of several body tables of a pattern in the index, the first that has the size.
 *
 * @example sizeColumn(source, 12, null) //=> { ok: true, value: [34, 26.5, 36, 16.25] }
 */
export function sizeColumn(source: ChartSource, sizeCell: Cell, pattern: Cell): Result<readonly ColumnCell[]> {
  const tables: Result<readonly (SheetChart | SheetFabric)[]> = source.sheets(source.kind ?? "body", pattern);
  if (!tables.ok) return tables;
  const all = tables.value.flatMap(({ sizes }) => sizes);
  const size = readSizeCell(sizeCell, all);
  if (!size.ok) return size;
  const table = tables.value.find(({ sizes }) => sizeIndex(sizes, size.value) >= 0);
  const column = columnOfSize(table?.sizes ?? all, size.value);
  if (!table || !column.ok) return column as Result<never>;
  return answer(table.rows.map(({ values, unit }) => shown(values[column.value] ?? null, unit)));
}

const shown = (figure: Figure | Fault, unit: BodyUnit | FabricUnit | null): ColumnCell =>
  figure !== null && isSpan(figure) ? spanText(figure, unit) : figure;
