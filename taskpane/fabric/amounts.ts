/** How much to buy for a view, a width and a size, with everything extra. */
import {
  extraYardage,
  formatLength,
  paneWords,
  printedYardage,
  readChartCells,
  readLength,
  readWidthCell,
  refusalSentence,
  roundUp,
  sentence,
  type FabricChart,
  type FabricUnit,
  type Nap,
  type Problem,
} from "../../src/index";
import { tableCells, type Pattern } from "../patterns";

const words = paneWords.fabric;

/** What she chose, as she typed it. */
export interface AmountQuestion {
  readonly view: string;
  readonly part: string;
  readonly width: string;
  readonly size: string;
  readonly nap: Nap | null;
  readonly estimate: boolean;
  /** In per cent. */
  readonly shrinkage: string;
  readonly repeat: string;
  readonly lengths: string;
  readonly step: string;
}
export interface Amount {
  readonly table: string;
  readonly sheet: string;
  readonly unit: FabricUnit;
  readonly buy: number;
  readonly shrinkage: number;
  readonly repeat: number;
  readonly lengths: number;
  readonly step: number;
  /** How it came about, a sentence a step. */
  readonly how: readonly string[];
}
type Answer<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly said: string };

const no = (said: string) => ({ ok: false, said }) as const;
const because = (problem: Problem) => no(sentence(problem));

/** A fabric table and the chart that it holds. */
export interface FabricSource {
  readonly table: string;
  readonly sheet: string;
  readonly chart: FabricChart;
}

/** All fabric tables of a pattern, those in the unit that she buys by first. */
export async function fabricSources({ tables }: Pattern, unit: FabricUnit): Promise<Answer<readonly FabricSource[]>> {
  const sources: FabricSource[] = [];
  for (const { name, sheet } of tables.fabric) {
    const cells = await tableCells(name);
    if (!cells.ok) return no(refusalSentence(cells.refusal));
    const read = readChartCells(cells.value, { role: "fabric" });
    if (!read.ok) return because(read.problem);
    sources.push({ table: name, sheet, chart: read.value });
  }
  const hers = (source: FabricSource) => Number(source.chart.unit === unit);
  return { ok: true, value: sources.sort((one, other) => hers(other) - hers(one)) };
}

/** What the lists offer: each once, in the order of the print. */
export function offered(sources: readonly FabricSource[]): {
  readonly views: readonly string[];
  readonly parts: readonly string[];
  readonly widths: readonly string[];
  readonly sizes: readonly string[];
} {
  const rows = sources.flatMap(({ chart }) => chart.rows);
  const once = (list: readonly string[]) => [...new Set(list)];
  return {
    views: once(rows.map(({ view }) => view)),
    parts: once(rows.map(({ part }) => part)),
    widths: once(rows.flatMap(({ width, widthUnit }) => (width === null ? [] : [formatLength(width, widthUnit)]))),
    sizes: once(sources.flatMap(({ chart }) => chart.sizes)),
  };
}

/** The first table that answers; the first refusal when none does. */
export function amount(sources: readonly FabricSource[], question: AmountQuestion): Answer<Amount> {
  const answers = sources.map((source) => amountFrom(source, question));
  return answers.find(({ ok }) => ok) ?? answers[0] ?? no(words.noFabric);
}

function amountFrom({ chart, table, sheet }: FabricSource, question: AmountQuestion): Answer<Amount> {
  const width = readWidthCell(question.width);
  if (!width.ok) return because(width.problem);
  const { view, size, part, nap, estimate } = question;
  const printed = printedYardage([chart], { view, width: width.value, size, part, nap, estimate });
  if (!printed.ok) return because(printed.problem);
  const unit = printed.value.unit ?? "yd";
  const numbers = readNumbers(question, unit);
  if (!numbers.ok) return numbers;
  const { shrinkage, repeat, lengths, step } = numbers.value;
  const whole = extraYardage(printed.value.amount, unit, { shrinkage, repeat, lengths });
  if (!whole.ok) return because(whole.problem);
  const buy = roundUp(whole.value, step);
  if (!buy.ok) return because(buy.problem);
  const from = formatLength(printed.value.width.value, printed.value.width.unit);
  const length = (value: number) => formatLength(value, unit);
  const how = [
    (printed.value.estimated ? words.estimated : words.printed)(length(printed.value.amount), from),
    ...(whole.value > printed.value.amount ? [words.withExtra(length(whole.value))] : []),
    ...(buy.value > whole.value ? [words.rounded(length(step))] : []),
    ...(repeat > 0 ? [words.repeatRule] : []),
  ];
  return { ok: true, value: { table, sheet, unit, buy: buy.value, shrinkage, repeat, lengths, step, how } };
}

type Numbers = Pick<Amount, "shrinkage" | "repeat" | "lengths" | "step">;

function readNumbers({ shrinkage, repeat, lengths, step }: AmountQuestion, unit: FabricUnit): Answer<Numbers> {
  const read: number[] = [];
  for (const [text, otherwise] of [
    [shrinkage.replace("%", ""), 0],
    [repeat, 0],
    [lengths, 1],
    [step, unit === "yd" ? 0.125 : 0.1],
  ] as const) {
    if (text.trim() === "") {
      read.push(otherwise);
      continue;
    }
    const number = readLength(text);
    if (!number.ok) return because(number.problem);
    if (number.value.unit !== null) return no(words.plainNumber(text));
    read.push(number.value.value);
  }
  const [percent, repeatNumber, count, by] = read as [number, number, number, number];
  return { ok: true, value: { shrinkage: percent / 100, repeat: repeatNumber, lengths: count, step: by } };
}
