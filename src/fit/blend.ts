import { formatLength } from "../length/format";
import { convert } from "../length/length";
import { clean } from "../length/round-up";
import { answer, refuse, type Result } from "../problem";
import type { Body, Chart, Place } from "../chart/model";
import { blendGirths, type BlendGirth } from "./blend-girths";
import { girthNotes } from "./blend-notes";
import { LENGTHS } from "./body-order";
import { edgesAt } from "./edges";
import { tablesNote } from "./figure-type";
import type { Garment } from "./garments";
import { fitting, type Fitting, type FitOptions } from "./fitting";
import { judge, type Judgement } from "./judge";
import { spoken } from "./lengths";
import { bodyFigure, hasPlace, measureOf } from "./measures";
import { chartLength, ruleFor, settingLength, type For } from "./settings";
import { isBare, sizeAt } from "./size-at";
import * as say from "../words/fit-notes";
import { inARow } from "../words/sentences";

/** A row of the plan, in the chart's unit; null where a column says nothing for this place. */
export interface BlendRow {
  readonly place: Place;
  readonly size: string | null;
  /** Change in girth from the frame size. */
  readonly girthChange: number | null;
  /** The same for each seam edge that shares it. */
  readonly edgeChange: number | null;
  /** Lengthen by this; below zero, shorten. */
  readonly lengthChange: number | null;
  readonly note: string;
}

/**
 * How to blend from size to size (also called grading between sizes): the size at each girth from the top of the body
 * down, the change in girth from the frame size and for each seam edge, and what to lengthen or shorten at every length
 * that both the chart and the body have. The note says between which two places the line is drawn, and by which rule.
 *
 * Frame places (neck, shoulder, cross back, high bust) stay in the frame size, and what sets the frame is never made
 * smaller. By finished measurements a place gets the first size with its least ease; without them its closest size. With a bust adjustment the
 * bust stays in the frame size. Between printed lines there is no limit; beyond the outermost size about 1/2 in an edge,
 * then the note says so. Changes are exact unless the settings have a step; then to the nearest step, a half away from 0.
 *
 * Source: divide by the seams and add at the outside edges: Costume construction text, chapter 17, Central Washington
 * University (read). Two side seams are four edges, and about 1/2 in an edge: general extension practice, from memory.
 *
 * @example
 * blend(misses, body34_28_40, "fitted dress")
 * //=> { ok: true, value: [{ place: "bust", size: "12", … }, { place: "waist", size: "14", girthChange: 1.5, … }, …] }
 */
export function blend(
  chart: Chart,
  body: Body,
  garment: string,
  options: FitOptions = {},
): Result<readonly BlendRow[]> {
  const ready = fitting(chart, garment, options);
  if (!ready.ok) return ready;
  const judged = judge(ready.value, body);
  if (!judged.ok) return judged;
  const { settings, unit } = ready.value;
  const step = chartLength(settings, "step", { garment: ready.value.garment.key, person: body.name }, unit);
  if (!step.ok) return step;
  const girths = blendGirths(ready.value, body, judged.value);
  if (!girths.ok) return girths;
  const lengths = lengthRows(ready.value, body, judged.value);
  if (!lengths.ok) return lengths;
  const [first, ...rest] = [...girthRows(ready.value, body, judged.value, girths.value), ...lengths.value];
  if (!first) return answer([]);
  return answer([{ ...first, note: inARow(first.note, tablesNote(chart, body, garment, options)) }, ...rest]);
}

function girthRows(
  fitting: Fitting,
  body: Body,
  judgement: Judgement,
  girths: readonly BlendGirth[],
): readonly BlendRow[] {
  const { chart } = fitting;
  const notes = girthNotes(fitting, body, judgement, girths);
  return girths.map((girth, at) => ({
    place: girth.place,
    size: girth.index === null ? null : chart.sizes[girth.index]!,
    girthChange: girth.change === null ? null : stepped(fitting, body, girth.change),
    edgeChange: girth.change === null ? null : stepped(fitting, body, girth.change / edgesAt(fitting, girth.place)),
    lengthChange: null,
    note: notes[at]!,
  }));
}

/** Rounded to her step, if she has one; binary dust off. */
function stepped({ settings, garment, unit }: Fitting, body: Body, change: number): number {
  const step = settingLength(settings, "step", { garment: garment.key, person: body.name }, unit);
  const plain = clean(change);
  return step === undefined ? plain : clean(Math.sign(plain) * Math.floor(Math.abs(plain) / step + 0.5 + 1e-9) * step);
}

function lengthRows(fitting: Fitting, body: Body, { frame }: Judgement): Result<readonly BlendRow[]> {
  const { chart, garment } = fitting;
  const size = chart.sizes[frame.index]!;
  const rows: BlendRow[] = [];
  for (const place of LENGTHS) {
    if (!hasPlace(chart, place)) continue;
    const measure = measureOf(body, place, chart.unit);
    if (!measure.ok) return measure;
    if (measure.value === undefined) continue;
    const inUnits = sizeAt(chart, place, measure.value, { bare: isBare(body, place) });
    if (!inUnits.ok && inUnits.problem.code === "cmAgainstInches") return inUnits;
    const figure = bodyFigure(chart, place, frame.index);
    if (!figure.ok) return figure;
    const where = { garment: garment.key, place, person: body.name };
    const grows = growthAt(fitting, where);
    if (!grows.ok) return grows;
    const growth = grows.value;
    const change = stepped(fitting, body, measure.value + growth - figure.value);
    rows.push({
      place,
      size: null,
      girthChange: null,
      edgeChange: null,
      lengthChange: change,
      note: lengthNote(fitting, place, { size, change, growth }),
    });
  }
  return answer(rows);
}

/** What a growing child is to get: on the height, or on the length that the row names; a grown-up's only by name. */
function growthAt({ garment, settings, unit }: Fitting, where: For): Result<number> {
  const rule = ruleFor(settings.lengths, "growth", where);
  if (!rule || (rule.place === null && where.place !== "height")) return answer(0);
  if (rule.garment === null && rule.person === null && !isForChild(garment)) return answer(0);
  if (unit === null) return refuse("chartUnitUnknown", { text: formatLength(rule.value, rule.unit) });
  return answer(convert(rule.value, rule.unit, unit));
}

const isForChild = (garment: Garment): boolean => garment.governs.flat().includes("height");

function lengthNote(
  { garment, unit }: Fitting,
  place: Place,
  { size, change, growth }: { readonly size: string; readonly change: number; readonly growth: number },
): string {
  const forChild = isForChild(garment);
  return inARow(
    change === 0 ? say.asPrinted(size) : say.changeLength(change > 0, size, spoken(Math.abs(change), unit)),
    growth > 0 ? say.toGrow(spoken(growth, unit)) : place === "height" && forChild ? say.nothingToGrow : "",
    place === "height" && !forChild ? say.heightAlone : "",
  );
}
