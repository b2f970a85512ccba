/** The arguments that the functions of size and fit have in common, and how they answer for many bodies. */
import {
  answer,
  chooseTable,
  finishedFor,
  isMissing,
  noSettings,
  once,
  readBodyLines,
  readOneBody,
  readSettings,
  readWordCell,
  refuse,
  type Body,
  type Cell,
  type Chart,
  type ChartSource,
  type FitOptions,
  type Result,
  type Settings,
  type TableQuestion,
} from "../src/index";
import { cellsOf, lookUp, oneCell, type AnswerCell } from "./cells";
import { guarded, need } from "./errors";
import { chartIn } from "./remember";

/** The arguments of CUTSIZE, and of the functions that have the same. */
export interface FitArguments {
  readonly chart: unknown;
  readonly body: unknown;
  readonly garment: unknown;
  readonly finished: unknown;
  readonly person: unknown;
  readonly pattern: unknown;
  readonly settings: unknown;
}

/** An answer made ready for one chart, one garment and their finished measurements: asked once for each body. */
export type Make = (chart: Chart, garment: string, options: FitOptions) => Result<(body: Body) => Result<AnswerCell>>;

/**
 * One answer for each body: for many of them a column, each in its row. Charts and settings are read once. Garment,
 * person and pattern are look-ups: a range of them answers for one body, or goes row by row with as many bodies.
 */
export function forBodies(args: FitArguments, make: Make): any {
  return guarded(() => {
    const fits = fittings(args, make);
    const cells = cellsOf(args.body);
    const named = isFilled(args.person);
    const lines = named ? [] : need(readBodyLines(cells));
    if (lines.length > 1) {
      const rows = lines.map((_, row) => [row + 1]);
      return lookUp([rows, args.garment, args.pattern], (row, garment, pattern) => {
        const body = lines[Number(row) - 1] ?? null;
        return body === null ? "" : fits(body, garment, pattern);
      });
    }
    return lookUp([args.garment, args.person, args.pattern], (garment, person, pattern) => {
      if (named && isMissing(person)) need(refuse("blank", { wanted: "a person" }));
      return fits(need(readOneBody(cells, person)), garment, pattern);
    });
  });
}

/** Whether a range was given with something in it; a blank cell may arrive as a nought, which no such range holds. */
export function isFilled(argument: unknown): boolean {
  return cellsOf(argument).some((row) => row.some((cell) => !isMissing(cell)));
}

/** The answer for a body, with whatever was made for its chart and garment before. */
function fittings(args: FitArguments, make: Make) {
  const charts = chartReader(args, "size");
  const made = new Map<Chart, Map<string, ReturnType<Make>>>();
  return (body: Body, garment: Cell, pattern: Cell): AnswerCell => {
    const word = need(readWordCell(garment, "a garment, such as shirt"));
    const { chart, options } = charts(body, pattern, word);
    const known = once(made, chart, () => new Map<string, ReturnType<Make>>());
    return need(need(once(known, word, () => make(chart, word, options)))(body));
  };
}

interface FittingCharts {
  readonly chart: Chart;
  readonly options: FitOptions;
}

/**
 * The body chart that suits a body, and the finished measurements that go with it; each pattern is read once.
 *
 * @param answers what several tables must agree on where nothing tells which is hers
 */
function chartReader(args: Pick<FitArguments, "chart" | "finished" | "settings">, answers: TableQuestion["answers"]) {
  const source = need(chartIn(cellsOf(args.chart)));
  const finishedSource = isFilled(args.finished) ? need(chartIn(cellsOf(args.finished))) : undefined;
  const settings: Settings = isFilled(args.settings) ? need(readSettings(cellsOf(args.settings))) : noSettings;
  const patterns = new Map<Cell, Result<PatternTables>>();
  const options = new Map<Chart, Result<FitOptions>>();
  const optionsOf = (chart: Chart, tables: readonly Chart[], name: string): Result<FitOptions> => {
    const finished = finishedFor(chart, tables, name);
    return finished.ok ? answer({ settings, finished: finished.value }) : finished;
  };
  return (body: Body, pattern: Cell, garment: string): FittingCharts => {
    const tables = need(once(patterns, pattern, () => tablesOf(source, finishedSource, pattern)));
    const name = isMissing(pattern) ? "This pattern" : String(pattern);
    const { charts, finished } = tables;
    const optionsFor = (chart: Chart) => once(options, chart, () => optionsOf(chart, finished, name));
    const chart =
      charts.length === 1
        ? charts[0]!
        : need(chooseTable(charts, body, { garment, pattern: name, answers, optionsFor }));
    return { chart, options: { ...need(optionsFor(chart)), tables: charts } };
  };
}

interface PatternTables {
  readonly charts: readonly Chart[];
  readonly finished: readonly Chart[];
}

/** A pattern of the index that has no finished measurements is answered without them. */
function tablesOf(source: ChartSource, finishedSource: ChartSource | undefined, pattern: Cell): Result<PatternTables> {
  const charts = source.charts("body", pattern);
  if (!charts.ok) return charts;
  const finished = finishedSource?.charts("finished", pattern);
  if (finished && !finished.ok && finished.problem.code !== "noTable") return finished;
  return answer({ charts: charts.value, finished: finished?.ok ? finished.value : [] });
}

/** The same for a plan, which is for one body. */
export function oneFitting(args: FitArguments): FittingCharts & { readonly body: Body; readonly garment: string } {
  const garment = need(readWordCell(oneCell(args.garment, "The garment"), "a garment, such as shirt"));
  const body = need(readOneBody(cellsOf(args.body), oneCell(args.person, "The person")));
  const charts = chartReader(args, "blend")(body, oneCell(args.pattern, "The pattern"), garment);
  return { ...charts, body, garment };
}
