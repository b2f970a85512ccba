import { answer, refuse, type Result } from "../problem";
import { errorCellProblem, isErrorCell, isMissing, readWordCell, type Cell, type Cells } from "./cell";
import { chooseChart, type PlaceMeasure } from "./cells-choose";
import { fabricChartsOf, fabricSheet, type SheetFabric } from "./cells-fabric";
import { namesText } from "./cells-names";
import { isPlaceCell, readGrid, type Grid } from "./cells-grid";
import { readIndex, type PatternCharts, type PatternIndex } from "./cells-index";
import { chartsOf, measureSheet, type SheetChart } from "./cells-measure";
import type { Chart, FabricChart } from "./model";
import { labelKey } from "./size-label";

export type ChartRole = "body" | "finished" | "fabric";

/** A range that holds a chart, or the pattern index: read once, asked for each pattern. */
export interface ChartSource {
  /** The measurement tables for a pattern, at least one; the pattern counts only in the index. */
  measures(role: "body" | "finished", pattern: Cell): Result<readonly SheetChart[]>;
  fabrics(pattern: Cell): Result<readonly SheetFabric[]>;
  /** The same as charts, a chart for each unit; the same objects each time they are asked for. */
  charts(role: "body" | "finished", pattern: Cell): Result<readonly Chart[]>;
  fabricCharts(pattern: Cell): Result<readonly FabricChart[]>;
  /** What a wide range holds; undefined for the index. */
  readonly kind: ChartRole | undefined;
}

const NAMES = {
  body: "body measurements",
  finished: "finished measurements",
  fabric: "fabric amounts",
} as const;

/**
 * A chart from a worksheet range: a wide range with its headings, as inserted or typed by hand, or the pattern index.
 *
 * @throws nothing: a range that can't be read is a problem that says what to do
 */
export function chartSource(cells: Cells): Result<ChartSource> {
  const [only] = cells[0] ?? [];
  if (cells.length === 1 && cells[0]!.length === 1 && only !== undefined && isErrorCell(only))
    return errorCellProblem(only);
  const index = readIndex(cells);
  if (index) return index.ok ? answer(withCharts(indexSource(index.value))) : index;
  const grid = readGrid(cells);
  return grid.ok ? answer(withCharts(gridSource(grid.value))) : grid;
}

type SheetSource = Omit<ChartSource, "charts" | "fabricCharts">;

/** Charts are made once for each pattern, so that what is known about their rows is known the next time too. */
function withCharts(source: SheetSource): ChartSource {
  const charts = new Map<string, Result<readonly Chart[]>>();
  const fabrics = new Map<Cell, Result<readonly FabricChart[]>>();
  return {
    ...source,
    charts: (role, pattern) =>
      once(charts, `${role} ${String(pattern)}`, () => {
        const sheets = source.measures(role, pattern);
        return sheets.ok ? answer(sheets.value.flatMap(chartsOf)) : sheets;
      }),
    fabricCharts: (pattern) =>
      once(fabrics, pattern, () => {
        const sheets = source.fabrics(pattern);
        return sheets.ok ? answer(sheets.value.flatMap(fabricChartsOf)) : sheets;
      }),
  };
}

/** What was made for a key before, or made now: never twice. */
export function once<Key, Value>(known: Map<Key, Value>, key: Key, make: () => Value): Value {
  const before = known.get(key);
  if (before !== undefined) return before;
  const made = make();
  known.set(key, made);
  return made;
}

/** The chart of a grid that is read already. */
function gridSource(grid: Grid): SheetSource {
  const kind = kindOf(grid);
  const read: { body?: Result<SheetChart>; finished?: Result<SheetChart>; fabric?: Result<SheetFabric> } = {};
  return {
    kind,
    measures(role) {
      if (kind === "fabric") return refuse("wrongTable", { found: NAMES.fabric, wanted: NAMES[role] });
      const sheet = (read[role] ??= measureSheet(grid, role));
      return sheet.ok ? answer([sheet.value]) : sheet;
    },
    fabrics() {
      if (kind !== "fabric") return refuse("wrongTable", { found: NAMES[kind], wanted: NAMES.fabric });
      const sheet = (read.fabric ??= fabricSheet(grid));
      return sheet.ok ? answer([sheet.value]) : sheet;
    },
  };
}

/**
 * What a wide range holds: a fabric table has widths, a finished one views or a title that says so. Anything else with
 * places in it is a body table.
 */
export function kindOf({ columns, title, rows }: Grid): ChartRole {
  const places = rows.some((row) => isPlaceCell(row[columns.label ?? -1]));
  if (columns.width !== undefined && !places) return "fabric";
  if (!places && (columns.nap !== undefined || columns.part !== undefined)) return "fabric";
  return columns.view !== undefined || /\bfinished\b/i.test(title) ? "finished" : "body";
}

function indexSource(index: PatternIndex): SheetSource {
  const known = [...index.values()].map(({ name }) => name);
  const find = (pattern: Cell): Result<PatternCharts> => {
    const [only, other] = index.values();
    if (isMissing(pattern) && only && !other) return answer(only);
    if (isMissing(pattern)) return refuse("blank", { wanted: `the pattern's name (${namesText(known)})` });
    const name = readWordCell(pattern, "a pattern");
    if (!name.ok) return name;
    const found = index.get(labelKey(name.value));
    return found ? answer(found) : refuse("unknownPattern", { text: name.value, known: namesText(known) });
  };
  const missing = ({ name, error }: PatternCharts, role: ChartRole) =>
    error === undefined ? refuse("noTable", { pattern: name, kind: NAMES[role] }) : refuse("errorCell", { error });
  return {
    kind: undefined,
    measures(role, pattern) {
      const found = find(pattern);
      if (!found.ok) return found;
      return found.value[role].length > 0 ? answer(found.value[role]) : missing(found.value, role);
    },
    fabrics(pattern) {
      const found = find(pattern);
      if (!found.ok) return found;
      return found.value.fabric.length > 0 ? answer(found.value.fabric) : missing(found.value, "fabric");
    },
  };
}

export interface MeasureChartOptions {
  readonly role: "body" | "finished";
  /** The pattern's name, needed when the range is the pattern index. */
  readonly pattern?: Cell;
  /** The measures that the chart will be compared with: they choose among several tables of one pattern. */
  readonly near?: readonly PlaceMeasure[];
}
export interface FabricChartOptions {
  readonly role: "fabric";
  readonly pattern?: Cell;
}

/**
 * The chart in a worksheet range, or that of a pattern in the pattern index. Of several tables of one pattern (inches and
 * centimetres; misses and women's) the measures in `near` choose: by their unit, else by the table in which they are
 * plausible. Two tables that fit equally well are refused, unless they say the same in two units.
 *
 * @example readChartCells(cells, { role: "body", pattern: "Camp shirt" }) //=> { ok: true, value: { kind: "body", … } }
 */
export function readChartCells(cells: Cells, options: MeasureChartOptions): Result<Chart>;
export function readChartCells(cells: Cells, options: FabricChartOptions): Result<FabricChart>;
export function readChartCells(
  cells: Cells,
  options: MeasureChartOptions | FabricChartOptions,
): Result<Chart | FabricChart> {
  const source = chartSource(cells);
  if (!source.ok) return source;
  const { pattern = null } = options;
  if (options.role === "fabric") {
    const tables = source.value.fabricCharts(pattern);
    return tables.ok ? answer(tables.value[0]!) : tables;
  }
  return chartFrom(source.value, options.role, pattern, options.near ?? []);
}

/** The same from a range that is read already. */
export function chartFrom(
  source: ChartSource,
  role: "body" | "finished",
  pattern: Cell,
  near: readonly PlaceMeasure[],
): Result<Chart> {
  const charts = source.charts(role, pattern);
  if (!charts.ok) return charts;
  return chooseChart(charts.value, near, isMissing(pattern) ? "This range" : String(pattern));
}
