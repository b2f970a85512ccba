import { nearestCharts, severalTables } from "../chart/cells-choose";
import { cellText, type Cell, readWordCell } from "../chart/cell";
import type { Chart, Measure, Place } from "../chart/model";
import { placeName, readPlace } from "../chart/places";
import { labelKey } from "../chart/size-label";
import { answer, refuse, type Result } from "../problem";
import { placesText, sizeMatch, type MatchRule, type SizeMatch } from "./size-match";

/** A size, and the table of the pattern in which it was found. */
export interface TableMatch extends SizeMatch {
  readonly chart: Chart;
}

/** What makes a measure one of another table; a figure that is missing or wrong may hide a second answer. */
const PASSED_OVER: readonly string[] = ["aboveChart", "belowChart", "cmAgainstInches"];

/**
 * The size for a measure where a pattern has several tables (inches and centimetres; misses and women's). The measure's
 * unit chooses, else the table in which it is plausible. Where two tables answer differently the question is refused:
 * tables are never crossed in silence.
 */
export function sizeMatchAmong(
  charts: readonly Chart[],
  place: Place,
  measure: Measure,
  rule: MatchRule,
  pattern: string,
): Result<TableMatch> {
  const having = charts.filter(({ rows }) => rows.some((row) => row.place === place));
  if (having.length === 0) return refuse("placeNotOnChart", { place: placeName(place), known: placesText(charts) });
  const near = nearestCharts(having, [{ ...measure, place }]);
  const found = near.map((chart) => ({ chart, match: sizeMatch(chart, place, measure, rule) }));
  const hanging = found.find(({ match }) => !match.ok && !PASSED_OVER.includes(match.problem.code));
  if (hanging) return hanging.match as Result<never>;
  const answered = found.flatMap(({ chart, match }) => (match.ok ? [{ ...match.value, chart }] : []));
  const [first] = answered;
  if (!first) return found[0]!.match as Result<never>;
  const same = answered.every(({ size }) => labelKey(size) === labelKey(first.size));
  return same
    ? answer(first)
    : severalTables(
        answered.map(({ chart }) => chart),
        pattern,
      );
}

/**
 * The place that a cell names: a known place in any of its words, or one of the chart's own labels.
 *
 * @example readPlaceCell("Hips", [chart]) //=> { ok: true, value: "hip" }
 */
export function readPlaceCell(cell: Cell, charts: readonly Chart[]): Result<Place> {
  const known = placesRead.get(charts) ?? new Map<Cell, Result<Place>>();
  placesRead.set(charts, known);
  const before = known.get(cell);
  if (before) return before;
  const place = findPlace(cell, charts);
  if (known.size < 100) known.set(cell, place);
  return place;
}

/** Words read already for these charts: a column of measures asks for the same place thousands of times. */
const placesRead = new WeakMap<readonly Chart[], Map<Cell, Result<Place>>>();

function findPlace(cell: Cell, charts: readonly Chart[]): Result<Place> {
  const word = readWordCell(cell, "a place, such as bust");
  if (!word.ok) return word;
  const rows = charts.flatMap(({ rows }) => rows);
  const place = readPlace(word.value, charts[0]?.kind ?? "body");
  if (place !== null && rows.some((row) => row.place === place)) return answer(place);
  const key = labelKey(word.value);
  const own = rows.find((row) => labelKey(row.label) === key || labelKey(row.place) === key);
  if (own) return answer(own.place);
  if (place !== null) return refuse("placeNotOnChart", { place: placeName(place), known: placesText(charts) });
  return refuse("unknownPlace", { text: cellText(cell), known: placesText(charts) });
}
