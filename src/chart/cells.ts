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

/** What a range holds for each kind of chart: as it stands on the sheet, and as charts, one for each unit. */
interface Sheets {
  readonly body: SheetChart;
  readonly finished: SheetChart;
  readonly fabric: SheetFabric;
}
interface Charts {
  readonly body: Chart;
  readonly finished: Chart;
  readonly fabric: FabricChart;
}

/** A range that holds a chart, or the pattern index: read once, asked for each pattern. */
export interface ChartSource {
  /** The tables of a kind for a pattern, at least one; the pattern counts only in the index. */
  sheets<Role extends ChartRole>(role: Role, pattern: Cell): Result<readonly Sheets[Role][]>;
  /** The same as charts, a chart for each unit; the same objects each time they are asked for. */
  charts<Role extends ChartRole>(role: Role, pattern: Cell): Result<readonly Charts[Role][]>;
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

type SheetSource = Omit<ChartSource, "charts">;

/** Charts are made once for each pattern, so that what is known about their rows is known the next time too. */
function withCharts(source: SheetSource): ChartSource {
  const charts = new Map<string, Result<readonly (Chart | FabricChart)[]>>();
  return {
    ...source,
    charts: <Role extends ChartRole>(role: Role, pattern: Cell) =>
      once(charts, `${role} ${String(pattern)}`, () => {
        const sheets: Result<readonly (SheetChart | SheetFabric)[]> = source.sheets(role, pattern);
        if (!sheets.ok) return sheets;
        return answer(
          sheets.value.flatMap((sheet): readonly (Chart | FabricChart)[] =>
            "kind" in sheet ? chartsOf(sheet) : fabricChartsOf(sheet),
          ),
        );
      }) as Result<readonly Charts[Role][]>,
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
  const read = new Map<ChartRole, Result<readonly (SheetChart | SheetFabric)[]>>();
  return {
    kind,
    sheets: <Role extends ChartRole>(role: Role) =>
      once(read, role, () => {
        if ((kind === "fabric") !== (role === "fabric"))
          return refuse("wrongTable", { found: NAMES[kind], wanted: NAMES[role] });
        const sheet = role === "fabric" ? fabricSheet(grid) : measureSheet(grid, role);
        return sheet.ok ? answer([sheet.value]) : sheet;
      }) as Result<readonly Sheets[Role][]>,
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
  return {
    kind: undefined,
    sheets<Role extends ChartRole>(role: Role, pattern: Cell) {
      const found = find(pattern);
      if (!found.ok) return found;
      const { name, error } = found.value;
      const byRole: { readonly [Each in ChartRole]: readonly Sheets[Each][] } = found.value;
      const tables = byRole[role];
      if (tables.length > 0) return answer(tables);
      return error === undefined
        ? refuse("noTable", { pattern: name, kind: NAMES[role] })
        : refuse("errorCell", { error });
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
    const tables = source.value.charts("fabric", pattern);
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
