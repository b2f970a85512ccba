import { isMissing, readWordCell, type Cells } from "./cell";
import { chartSource } from "./cells";
import { INDEX_COLUMNS } from "./cells-index";
import { fabricChartsOf } from "./cells-fabric";
import { sizeCell } from "./size-label";
import { chartsOf } from "./cells-measure";
import { isFault, isSpan, type Chart, type FabricChart, type Fault, type Figure } from "./model";

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
  const { kind } = source.value;
  if (kind === "fabric") {
    const fabrics = source.value.fabrics(null);
    return fabrics.ok
      ? fabrics.value.flatMap(fabricChartsOf).flatMap((chart) => fabricRows(pattern, chart))
      : [failed(pattern, faultOf(fabrics.problem))];
  }
  const sheets = source.value.measures(kind ?? "body", null);
  if (!sheets.ok) return [failed(pattern, faultOf(sheets.problem))];
  return sheets.value.flatMap(chartsOf).flatMap((chart) => measureRows(pattern, chart));
}

const faultOf = (problem: Fault["fault"]): Fault =>
  problem.code === "errorCell" ? { fault: problem, error: problem.details.error } : { fault: problem };

/** The row of a table that can't be read. */
function failed(pattern: string, fault: Fault): IndexCell[] {
  return INDEX_COLUMNS.map((column): IndexCell => (column === "Pattern" ? pattern : column === "Kind" ? fault : null));
}

function measureRows(pattern: string, chart: Chart): IndexCell[][] {
  return chart.rows.flatMap((row) =>
    chart.sizes.map((size, index): IndexCell[] => {
      const [low, high] = ends(row.values[index] ?? null);
      return [
        pattern,
        chart.kind,
        chart.unit,
        row.view ?? null,
        null,
        null,
        null,
        null,
        row.label,
        sizeCell(size),
        low,
        high,
      ];
    }),
  );
}

function fabricRows(pattern: string, chart: FabricChart): IndexCell[][] {
  return chart.rows.flatMap(({ view, part, width, widthUnit, nap, values }) =>
    chart.sizes.map((size, index): IndexCell[] => {
      const [low, high] = ends(values[index] ?? null);
      return [pattern, "fabric", chart.unit, view, part, width, widthUnit, nap, null, sizeCell(size), low, high];
    }),
  );
}

function ends(figure: Figure | Fault): [IndexCell, IndexCell] {
  if (figure === null || isFault(figure)) return [figure, figure];
  return isSpan(figure) ? [figure.low, figure.high] : [figure, figure];
}
