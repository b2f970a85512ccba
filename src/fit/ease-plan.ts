import { clean, TOLERANCE } from "../length/round-up";
import { answer, type Result } from "../problem";
import type { Body, Chart, Place } from "../chart/model";
import { downward, LENGTHS } from "./body-order";
import { easeParts } from "./ease-parts";
import { SMALLER_THAN_BODY, termOf } from "./fit-term";
import { fitting, leastAt, type Fitting, type FitOptions } from "./fitting";
import { frameOf, type Frame } from "./frame";
import type { LeastEase } from "./least-ease";
import { spoken } from "./lengths";
import { bodyFigure, hasPlace, measureOf } from "./measures";
import * as say from "../words/fit-notes";
import { inARow } from "../words/sentences";

/** How many sizes are shown on each side of the frame size. */
const AROUND = 2;

/** One place in one size; ease in the chart's unit, signed. */
export interface EaseRow {
  readonly size: string;
  readonly place: Place;
  /** Finished less body, after the bust adjustment where there is one. */
  readonly ease: number;
  /** The fit word; "" where none fits. */
  readonly term: string;
  /** "" where no least ease is known. */
  readonly enough: "enough" | "tight" | "";
  readonly note: string;
}

/**
 * How loose each size from two below to two above the frame size would be, at every girth that the finished
 * measurements, the body and the chart have: the ease, its fit word, and whether it is the least ease or more. The note
 * tells wearing ease from design ease. Sizes below the frame are for those who want to know: shoulders and neck shrink
 * with them. Places from the top down within a size, sizes upward.
 *
 * Source: total ease is finished less body; wearing and design ease, see `easeParts`; words, see `fitTerm`.
 *
 * @example easePlan(misses, body, "dress", finished)
 * //=> { ok: true, value: [{ size: "8", place: "bust", ease: 0.5, term: "close-fitting", enough: "tight", … }, …] }
 */
export function easePlan(
  printed: Chart,
  body: Body,
  garment: string,
  finished: Chart,
  options: Omit<FitOptions, "finished"> = {},
): Result<readonly EaseRow[]> {
  const ready = fitting(printed, garment, { ...options, finished });
  if (!ready.ok) return ready;
  const { chart } = ready.value;
  const frame = frameOf(ready.value, body);
  if (!frame.ok) return frame;
  const places = downward(
    [...new Set(finished.rows.map(({ place }) => place))].filter((place) => !LENGTHS.includes(place)),
  );
  const rows: EaseRow[] = [];
  const from = Math.max(0, frame.value.index - AROUND);
  const to = Math.min(chart.sizes.length - 1, frame.value.index + AROUND);
  for (let index = from; index <= to; index++) {
    for (const place of places) {
      const row = easeRow(ready.value, body, frame.value, place, index);
      if (!row.ok) return row;
      if (row.value) rows.push(row.value);
    }
  }
  return answer(rows);
}

/** Undefined where the chart or the body says nothing of the place. */
function easeRow(fitting: Fitting, body: Body, frame: Frame, place: Place, index: number): Result<EaseRow | undefined> {
  const { chart, garment, settings, unit } = fitting;
  if (!hasPlace(chart, place)) return answer(undefined);
  const own = measureOf(body, place, chart.unit);
  if (!own.ok) return own;
  if (own.value === undefined) return answer(undefined);
  const figure = fitting.finished!.at(place, index);
  if (!figure.ok) return figure.problem.code === "sizeNotOnChart" ? answer(undefined) : figure;
  const patternBody = bodyFigure(chart, place, index);
  if (!patternBody.ok) return patternBody;
  const adjusted = place === "bust" && frame.bust?.decidedBy === "highBust";
  const measure = adjusted ? patternBody.value : own.value;
  const least = leastAt(fitting, place, own.value, body.name);
  if (!least.ok) return least;
  const ease = clean(figure.value - measure);
  const term = termOf(ease, garment, place, { unit: unit ?? "in", settings, person: body.name });
  const word = term.ok ? term.value : "";
  const enough = least.value === undefined ? "" : ease >= least.value.value - TOLERANCE ? "enough" : "tight";
  const parts =
    least.value &&
    easeParts({ finished: figure.value, body: measure, patternBody: patternBody.value, least: least.value.value });
  return answer({
    size: chart.sizes[index]!,
    place,
    ease,
    term: word === "enough" || word === "tight" ? "" : word,
    enough,
    note: inARow(
      say.sizeFromFrame(index - frame.index),
      adjusted ? say.afterAdjustment : "",
      parts && word !== SMALLER_THAN_BODY ? partsWords(parts, least.value!, unit) : "",
      term.ok || least.value === undefined ? "" : say.noWordForEase,
    ),
  });
}

function partsWords(
  { wearing, design }: { readonly wearing: number; readonly design: number },
  least: LeastEase,
  unit: Fitting["unit"],
): string {
  return say.easeMadeOf(
    wearing < -TOLERANCE ? say.shortOfRoom(spoken(-wearing, unit)) : say.roomToMove(spoken(wearing, unit)),
    design < -TOLERANCE ? say.lessByDesign(spoken(-design, unit)) : say.byDesign(spoken(design, unit)),
    spoken(least.value, unit),
    least.from,
  );
}
