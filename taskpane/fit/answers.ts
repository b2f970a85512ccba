/** One person and one pattern: what the engine says of them, and the formulas that say it in the sheet. */
import {
  blend,
  cutNote,
  easePlan,
  fitFormulas,
  fitPicture,
  nearestCharts,
  readBodyCells,
  readChartCells,
  readSettings,
  refusalSentence,
  sentence,
  type Body,
  type CellsPlan,
  type Chart,
  type FitOptions,
  type FitPicture,
  type PlaceMeasure,
  type Problem,
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

/** Reads the tables and asks the engine. A pattern with several body tables is read from the one the body suits best. */
export async function fitAnswer({ people, settings }: Inventory, choice: FitChoice): Promise<FitAnswered> {
  if (!people) return no("");
  const measures = await tableCells(people.table);
  if (!measures.ok) return no(refusalSentence(measures.refusal));
  const bodies = readBodyCells(measures.value, choice.person);
  if (!bodies.ok) return because(bodies.problem);
  const body = bodies.value[0]!;
  const near = measuresOf(body);
  const bodyChart = await nearest(choice.pattern.tables.body, "body", near);
  if (!bodyChart.ok) return bodyChart;
  const finished = choice.pattern.tables.finished.length
    ? await nearest(choice.pattern.tables.finished, "finished", near)
    : undefined;
  if (finished && !finished.ok) return finished;
  const hers = settings === undefined ? undefined : await tableCells(settings);
  if (hers && !hers.ok) return no(refusalSentence(hers.refusal));
  const read = hers && readSettings(hers.value);
  if (read && !read.ok) return because(read.problem);
  const options: FitOptions = { finished: finished?.chart, settings: read?.value };
  const { chart } = bodyChart;
  const picture = fitPicture(chart, body, choice.garment, options);
  if (!picture.ok) return because(picture.problem);
  const note = cutNote(chart, body, choice.garment, options);
  const rows = blend(chart, body, choice.garment, options);
  const ease = options.finished && easePlan(chart, body, choice.garment, options.finished, { settings: read?.value });
  return {
    ok: true,
    value: {
      picture: picture.value,
      note: note.ok ? note.value : sentence(note.problem),
      bodyTable: bodyChart.table,
      finishedTable: finished?.table,
      highBust: body.measures.has("highBust") && body.measures.has("bust"),
      blendRows: rows.ok ? rows.value.length : 1,
      easeRows: ease?.ok ? ease.value.length : 1,
    },
  };
}

type Nearest =
  { readonly ok: true; readonly chart: Chart; readonly table: string } | { readonly ok: false; readonly said: string };

async function nearest(
  tables: readonly TableFacts[],
  role: "body" | "finished",
  near: readonly PlaceMeasure[],
): Promise<Nearest> {
  const charts: { chart: Chart; table: string }[] = [];
  let said = "";
  for (const { name } of tables) {
    const cells = await tableCells(name);
    if (!cells.ok) return no(refusalSentence(cells.refusal));
    const chart = readChartCells(cells.value, { role, near });
    if (chart.ok) charts.push({ chart: chart.value, table: name });
    else said = sentence(chart.problem);
  }
  const [best] = nearestCharts(
    charts.map(({ chart }) => chart),
    near,
  );
  const found = charts.find(({ chart }) => chart === best);
  return found ? { ok: true, ...found } : no(said);
}

function measuresOf({ measures }: Body): PlaceMeasure[] {
  return [...measures].flatMap(([place, measure]) => ("value" in measure ? [{ place, ...measure }] : []));
}

/** The formulas, in the first free columns to the right of everything on the chart's sheet. */
export async function fitPlan(
  { people, settings }: Inventory,
  { pattern, person, garment }: FitChoice,
  answer: FitAnswer,
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
      bodyTable: answer.bodyTable,
      finishedTable: answer.finishedTable,
      measuresTable: people?.table ?? "",
      settingsTable: settings,
      person,
      garment,
      highBust: answer.highBust,
      blendRows: answer.blendRows,
      easeRows: answer.easeRows,
      inches: answer.picture.unit === "in",
    }),
  };
}
