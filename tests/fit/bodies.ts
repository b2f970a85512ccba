/** Charts and bodies for the tests of this room. */
import misses from "../figures/misses-body-in.json";
import type { Body, BodyUnit, Chart, Fault, Figure, Place } from "../../src/chart/model";
import { readSettings } from "../../src/fit/read-settings";
import type { Settings } from "../../src/fit/settings";
import type { Result } from "../../src/problem";
import { sentence } from "../../src/words";

export function chartOf(
  kind: "body" | "finished",
  unit: BodyUnit | null,
  sizes: readonly string[],
  rows: Readonly<Record<Place, readonly (Figure | Fault)[]>>,
): Chart {
  return { kind, unit, sizes, rows: Object.entries(rows).map(([place, values]) => ({ place, label: place, values })) };
}

const { sizes, highBust, bust, waist, hip, backWaistLength } = misses;
/** The misses chart of US home-sewing patterns (tests/figures/misses-body-in.json says whence). */
export const missesChart = chartOf("body", "in", sizes, { highBust, bust, waist, hip, backWaistLength });

/** Finished measurements: the chart's own figures and so much more at each place. */
export function finishedFrom(chart: Chart, more: Readonly<Record<Place, number>>): Chart {
  const rows = Object.entries(more).map(([place, ease]) => [
    place,
    chart.rows.find((row) => row.place === place)!.values.map((value) => (value as number) + ease),
  ]);
  return chartOf("finished", chart.unit, chart.sizes, Object.fromEntries(rows));
}

/** Bare numbers, in the chart's unit. */
export function bodyOf(
  measures: Readonly<Record<Place, number>>,
  name: string | null = null,
  unit: BodyUnit | null = null,
): Body {
  return {
    name,
    measures: new Map(Object.entries(measures).map(([place, value]) => [place, { value, unit }] as const)),
  };
}

/** The body with a cell that holds no measure. */
export const withFault = (body: Body, place: Place, fault: Fault): Body => ({
  ...body,
  measures: new Map([...body.measures, [place, fault]]),
});

export function settingsOf(...rows: readonly (readonly (string | number)[])[]): Settings {
  const settings = readSettings([["Setting", "Garment", "Place", "Value", "Unit", "Person"], ...rows]);
  if (!settings.ok) throw new Error(sentence(settings.problem));
  return settings.value;
}

/** The answer, or the sentence in place of one. */
export const said = <T>(result: Result<T>): T | string => (result.ok ? result.value : sentence(result.problem));
/** The answer; a test fails with the sentence when there is none. */
export function got<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(sentence(result.problem));
}
