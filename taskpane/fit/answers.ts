/** One person and one pattern: what the engine says of them, and the formulas that say it in the sheet. */
import {
  answer,
  blend,
  bodyMeasures,
  chooseTable,
  cutNote,
  easePlan,
  finishedFor,
  fitFormulas,
  fitPicture,
  garmentNames,
  readBodyCells,
  readChartCells,
  readSettings,
  refusalSentence,
  sentence,
  suggestedGarment,
  type CellsPlan,
  type Chart,
  type FitOptions,
  type FitPicture,
  type PlaceMeasure,
  type Problem,
  type Result,
} from "../../src/index";
import { readUsed, type TableFacts } from "../excel";
import { tableCells, type Inventory, type Pattern } from "../patterns";

export interface FitChoice {
  readonly pattern: Pattern;
  readonly person: string;
  readonly garment: string;
}
export interface FitAnswer {
  readonly picture: FitPicture;
  readonly note: string;
  /** The tables that were looked at, for the formulas. */
  readonly bodyTable: string;
  readonly finishedTable: string | undefined;
  readonly highBust: boolean;
  readonly blendRows: number;
  readonly easeRows: number;
}
export type FitAnswered =
  { readonly ok: true; readonly value: FitAnswer } | { readonly ok: false; readonly said: string };

const no = (said: string) => ({ ok: false, said }) as const;
const because = (problem: Problem) => no(sentence(problem));

/** Reads the tables and asks the engine. Of several body tables it takes the one that the formulas take. */
export async function fitAnswer({ people, settings }: Inventory, choice: FitChoice): Promise<FitAnswered> {
  if (!people) return no("");
  const { garment, pattern } = choice;
  const measures = await tableCells(people.table);
  if (!measures.ok) return no(refusalSentence(measures.refusal));
  const bodies = readBodyCells(measures.value, choice.person);
  if (!bodies.ok) return because(bodies.problem);
  const body = bodies.value[0]!;
  const near = bodyMeasures(body);
  const bodyCharts = await chartsIn(pattern.tables.body, "body", near);
  if (!bodyCharts.ok) return bodyCharts;
  const finishedCharts = await chartsIn(pattern.tables.finished, "finished", near);
  if (!finishedCharts.ok) return finishedCharts;
  const hers = settings === undefined ? undefined : await tableCells(settings);
  if (hers && !hers.ok) return no(refusalSentence(hers.refusal));
  const read = hers && readSettings(hers.value);
  if (read && !read.ok) return because(read.problem);
  const tables = [...bodyCharts.charts.keys()];
  const optionsFor = (chart: Chart): Result<FitOptions> => {
    const finished = finishedFor(chart, [...finishedCharts.charts.keys()], pattern.name);
    return finished.ok ? answer({ finished: finished.value, settings: read?.value, tables }) : finished;
  };
  const chosen = chooseTable(tables, body, { garment, pattern: pattern.name, answers: "blend", optionsFor });
  if (!chosen.ok) return because(chosen.problem);
  const chart = chosen.value;
  const ready = optionsFor(chart);
  if (!ready.ok) return because(ready.problem);
  const options = ready.value;
  const picture = fitPicture(chart, body, garment, options);
  if (!picture.ok) return because(picture.problem);
  const note = cutNote(chart, body, garment, options);
  const rows = blend(chart, body, garment, options);
  const ease = options.finished && easePlan(chart, body, garment, options.finished, { settings: read?.value });
  return {
    ok: true,
    value: {
      picture: picture.value,
      note: note.ok ? note.value : sentence(note.problem),
      bodyTable: bodyCharts.charts.get(chart)!,
      finishedTable: options.finished && finishedCharts.charts.get(options.finished),
      highBust: body.measures.has("highBust") && body.measures.has("bust"),
      blendRows: rows.ok ? rows.value.length : 1,
      easeRows: ease?.ok ? ease.value.length : 1,
    },
  };
}

/** What the garment list begins with: its names, her own among them, and the one that the pattern seems to be. */
export async function garmentsFor(
  { settings }: Inventory,
  pattern: Pattern | undefined,
): Promise<{ readonly names: readonly string[]; readonly suggested: string | undefined }> {
  // What can't be read here is said by the answer itself.
  const cells = settings === undefined ? undefined : await tableCells(settings);
  const read = cells?.ok ? readSettings(cells.value) : undefined;
  const hers = read?.ok ? read.value : undefined;
  const charts = pattern && (await chartsIn(pattern.tables.body, "body", []));
  return {
    names: garmentNames(hers),
    suggested: pattern && suggestedGarment(pattern.name, charts?.ok ? [...charts.charts.keys()] : [], hers),
  };
}

type ChartsRead =
  { readonly ok: true; readonly charts: ReadonlyMap<Chart, string> } | { readonly ok: false; readonly said: string };

/** The charts of these tables with the tables' names. One that can't be read is never passed over: it might be hers. */
async function chartsIn(
  tables: readonly TableFacts[],
  role: "body" | "finished",
  near: readonly PlaceMeasure[],
): Promise<ChartsRead> {
  const charts = new Map<Chart, string>();
  for (const { name } of tables) {
    const cells = await tableCells(name);
    if (!cells.ok) return no(refusalSentence(cells.refusal));
    const chart = readChartCells(cells.value, { role, near });
    if (!chart.ok) return because(chart.problem);
    charts.set(chart.value, name);
  }
  return { ok: true, charts };
}

/** The formulas, in the first free columns to the right of everything on the chart's sheet. */
export async function fitPlan(
  { people, settings }: Inventory,
  { pattern, person, garment }: FitChoice,
  fit: FitAnswer,
): Promise<{ readonly ok: true; readonly plan: CellsPlan } | { readonly ok: false; readonly said: string }> {
  const used = await readUsed(pattern.sheet);
  if (!used.ok) return no(refusalSentence(used.refusal));
  const column = used.value ? used.value.column + used.value.columns + 1 : 0;
  return {
    ok: true,
    plan: fitFormulas({
      sheet: pattern.sheet,
      row: 2,
      column,
      bodyTable: fit.bodyTable,
      finishedTable: fit.finishedTable,
      measuresTable: people?.table ?? "",
      settingsTable: settings,
      person,
      garment,
      highBust: fit.highBust,
      blendRows: fit.blendRows,
      easeRows: fit.easeRows,
      inches: fit.picture.unit === "in",
    }),
  };
}
