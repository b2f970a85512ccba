import type { Result } from "../problem";
import { isMissing, readWordCell, type Cells } from "./cell";
import { chartSource } from "./cells";
import { INDEX_COLUMNS } from "./cells-index";
import { isFault, isSpan } from "./model";
import type { Chart, ChartRow, FabricChart, FabricChartRow, Fault, Figure } from "./model";
import { sizeCell } from "./size-label";

/** A cell of the index: a fault stands where a table or a figure could not be read. */
export type IndexCell = string | number | null | Fault;

/** A pattern's name and one of its tables, with headings. */
export interface NamedTable {
  readonly name: Cells;
  readonly table: Cells;
}

/**
 * All charts as rows, a row for each figure: Pattern, Kind, Unit, View, Part, Width, Width unit, Nap, Measurement, Size,
 * Low, High. A single figure is both low and high; a size that isn't made has neither. A table with widths is a fabric
 * table, one with views a finished one, any other a body table. A table that can't be read is one row with the reason in
 * its kind, so that the other charts go on answering. A pair that is blank is skipped.
 */
export function chartIndex(tables: readonly NamedTable[]): readonly (readonly IndexCell[])[] {
  return tables.flatMap(({ name, table }) => tableRows(name[0]?.[0] ?? null, table));
}

function tableRows(nameCell: Cells[number][number], table: Cells): IndexCell[][] {
  if (isMissing(nameCell) && table.every((row) => row.every(isMissing))) return [];
  const name = readWordCell(nameCell, "a pattern's name");
  const source = chartSource(table);
  const pattern = name.ok ? name.value : "";
  if (!name.ok) return [failed(pattern, { fault: name.problem })];
  if (!source.ok) return [failed(pattern, faultOf(source.problem))];
  const charts: Result<readonly (Chart | FabricChart)[]> = source.value.charts(source.value.kind ?? "body", null);
  return charts.ok
    ? charts.value.flatMap((chart) => chart.rows.flatMap((row) => figureRows(pattern, chart, row)))
    : [failed(pattern, faultOf(charts.problem))];
}

const faultOf = (problem: Fault["fault"]): Fault =>
  problem.code === "errorCell" ? { fault: problem, error: problem.details.error } : { fault: problem };

/** The row of a table that can't be read. */
function failed(pattern: string, fault: Fault): IndexCell[] {
  return INDEX_COLUMNS.map((column): IndexCell => (column === "Pattern" ? pattern : column === "Kind" ? fault : null));
}

/** A row for each size. */
function figureRows(pattern: string, chart: Chart | FabricChart, row: ChartRow | FabricChartRow): IndexCell[][] {
  const about =
    "part" in row
      ? [row.view, row.part, row.width, row.widthUnit, row.nap, null]
      : [row.view ?? null, null, null, null, null, row.label];
  return chart.sizes.map((size, index): IndexCell[] => [
    ...[pattern, chart.kind, chart.unit, ...about, sizeCell(size)],
    ...ends(row.values[index] ?? null),
  ]);
}

function ends(figure: Figure | Fault): [IndexCell, IndexCell] {
  if (figure === null || isFault(figure)) return [figure, figure];
  return isSpan(figure) ? [figure.low, figure.high] : [figure, figure];
}
