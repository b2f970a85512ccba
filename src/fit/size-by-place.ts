import { spanText } from "../chart/cells-figure";
import { isSpan, type Body, type BodyUnit, type Chart, type Fault, type Measure } from "../chart/model";
import { placeName, placeSpan } from "../chart/places";
import { formatLength } from "../length/format";
import { convert } from "../length/length";
import { clean } from "../length/round-up";
import { sentence } from "../words";
import { sizeNotes } from "../words/size";
import { sizeMatch, type SizeMatch } from "./size-match";

/** One place of a body beside the chart. Nothing stands where there is no answer; the note says why. */
export interface PlaceSize {
  readonly place: string;
  /** In the chart's unit. */
  readonly measure: number | Fault | null;
  readonly size: string | null;
  /** A printed range as text. */
  readonly figure: number | string | null;
  /** measure − figure; nought inside a printed range. */
  readonly difference: number | null;
  readonly note: string;
}

/**
 * A body place by place: the closest size at each, in the chart's order, then the places that only the body has.
 *
 * @example sizeByPlace(misses, ada)[0]
 *   //=> { place: "bust", measure: 34, size: "12", figure: 34, difference: 0, note: "The closest size; …" }
 */
export function sizeByPlace(chart: Chart, body: Body): readonly PlaceSize[] {
  const printed = [...new Set(chart.rows.map(({ place }) => place))];
  const others = [...body.measures.keys()].filter((place) => !printed.includes(place) && placeSpan(place));
  return [
    ...printed.map((place) => placeSize(chart, body, place)),
    ...others.map((place) => unprinted(chart, body, place)),
  ];
}

function placeSize(chart: Chart, body: Body, place: string): PlaceSize {
  const measure = body.measures.get(place);
  if (!measure) return { ...nothing(place), note: sizeNotes.notMeasured };
  if ("fault" in measure) return { ...nothing(place), measure, note: sentence(measure.fault) };
  const match = sizeMatch(chart, place, measure);
  const value = inUnit(measure, chart.unit);
  if (!match.ok) return { ...nothing(place), measure: value, note: sentence(match.problem) };
  const { size, figure, difference } = match.value;
  const shown = isSpan(figure) ? spanText(figure, chart.unit) : figure;
  return {
    place: placeName(place),
    measure: value,
    size,
    figure: shown,
    difference,
    note: note(match.value, chart.unit),
  };
}

function unprinted(chart: Chart, body: Body, place: string): PlaceSize {
  const measure = body.measures.get(place)!;
  return {
    ...nothing(place),
    measure: "fault" in measure ? measure : inUnit(measure, chart.unit),
    note: sizeNotes.notOnChart,
  };
}

const nothing = (place: string): PlaceSize => ({
  place: placeName(place),
  measure: null,
  size: null,
  figure: null,
  difference: null,
  note: "",
});

/** Text such as 96 cm on an inch chart stands in the plan as inches. */
const inUnit = ({ value, unit }: Measure, to: BodyUnit | null): number =>
  unit === null || to === null ? value : unit === to ? value : clean(convert(value, unit, to));

function note({ figure, difference, beyond }: SizeMatch, unit: BodyUnit | null): string {
  if (beyond) return sizeNotes.beyond(formatLength(Math.abs(difference), unit), beyond);
  if (!isSpan(figure)) return sizeNotes.closest;
  return difference === 0 ? sizeNotes.inRange : sizeNotes.betweenRanges;
}
