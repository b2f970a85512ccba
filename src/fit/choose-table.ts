import { bodyMeasures, chooseChart, nearestCharts } from "../chart/cells-choose";
import type { Body, Chart, Place } from "../chart/model";
import { placeName } from "../chart/places";
import { labelKey, sizeIndex } from "../chart/size-label";
import { answer, refuse, type Result } from "../problem";
import { blend } from "./blend";
import { cutSize } from "./cut-size";
import { figureType, namedTables, tablesApart, TELLING } from "./figure-type";
import type { FitOptions } from "./fitting";
import { sizeByTable } from "../words/figure-notes";
import { capital, listed } from "../words/sentences";
import { hasPlace } from "./measures";

/** What the table is chosen for. */
export interface TableQuestion {
  readonly garment: string;
  /** As a sentence names the pattern: "Camp shirt", "This pattern". */
  readonly pattern: string;
  /** Which answer the tables must share to be as good as one: the size to cut, or the whole blend. */
  readonly answers: "size" | "blend";
  /** The settings, and the finished measurements that go with a table. */
  readonly optionsFor: (chart: Chart) => Result<FitOptions>;
}

/**
 * The body table of a pattern that a body goes by, where there are several (misses and women's, petite). The unit that
 * the measures name and the table they lie in choose first; then back waist length, then height. Tables that are as near
 * after that and give the same answer are as good as one, and the first is taken; a table that has none for this body
 * gives way. Tables that answer differently are refused: they are never crossed in silence.
 *
 * Source: figure type by height and back waist length, see `figureType`; the same answer from either: common practice,
 * no source.
 *
 * @throws RangeError without any chart
 * @example chooseTable([misses, petite], body, { garment: "shirt", pattern: "Camp shirt", answers: "size", optionsFor })
 */
export function chooseTable(charts: readonly Chart[], body: Body, question: TableQuestion): Result<Chart> {
  const { garment, optionsFor } = question;
  const printed = bodyMeasures(body).filter(({ place }) => charts.some((chart) => hasPlace(chart, place)));
  const near = nearestCharts(charts, printed);
  const first = near[0];
  if (!first) throw new RangeError("no chart");
  const rivals = namedTables(tablesApart(near, first));
  if (rivals.length === 1) return answer(first);
  const ready = optionsFor(first);
  if (!ready.ok) return ready;
  const types = figureType(rivals, body, garment, { settings: ready.value.settings });
  if (!types.ok) return types;
  const best = rivals.find(({ name }) => name === types.value.best);
  if (best) return answer(best.chart);
  const answered: { readonly chart: Chart; readonly key: string; readonly words: string }[] = [];
  let refused: Result<never> | undefined;
  for (const { name, chart } of rivals) {
    const options = optionsFor(chart);
    if (!options.ok) return options;
    const cut = cutSize(chart, body, garment, options.value);
    const key = cut.ok ? keyOf(chart, body, cut.value.size, question, options.value) : cut;
    if (!key.ok) refused ??= key;
    else answered.push({ chart, key: key.value, words: sizeByTable(cut.ok ? cut.value.size : "", name) });
  }
  const [one] = answered;
  if (!one) return refused!;
  if (answered.every(({ key }) => key === one.key)) return answer(one.chart);
  return refuse("tablesDiffer", {
    pattern: capital(question.pattern),
    answers: listed(answered.map(({ words }) => words)),
    wanted: wantedOf(
      rivals.map(({ chart }) => chart),
      body,
    ),
  });
}

/** What two tables must have in common to answer alike. */
function keyOf(
  chart: Chart,
  body: Body,
  size: string,
  { garment, answers }: TableQuestion,
  options: FitOptions,
): Result<string> {
  if (answers === "size") return answer(labelKey(size));
  const rows = blend(chart, body, garment, options);
  if (!rows.ok) return rows;
  const changes = rows.value.map((row) => [row.place, row.size, row.girthChange, row.edgeChange, row.lengthChange]);
  return answer(JSON.stringify([size, changes]));
}

/** The measures that would tell: what all the tables print and the body lacks. "" where nothing would. */
function wantedOf(charts: readonly Chart[], body: Body): string {
  const lacking = (place: Place) => !body.measures.has(place) && charts.every((chart) => hasPlace(chart, place));
  return listed(TELLING.filter(lacking).map(placeName), "or");
}

/**
 * The finished measurements that go with a body table: of several tables the one with this table's sizes, and of those
 * the one in its unit. Undefined without any; refused where two could be meant.
 *
 * @example finishedFor(petite, [missesFinished, petiteFinished], "Camp shirt") //=> { ok: true, value: petiteFinished }
 */
export function finishedFor(chart: Chart, finished: readonly Chart[], pattern: string): Result<Chart | undefined> {
  const shared = finished.filter(({ sizes }) => sizes.some((size) => sizeIndex(chart.sizes, size) >= 0));
  const sameUnit = shared.filter(({ unit }) => unit === chart.unit);
  const [one, ...others] = sameUnit.length > 0 ? sameUnit : shared;
  return others.length === 0 ? answer(one ?? finished[0]) : chooseChart([one!, ...others], [], pattern);
}
