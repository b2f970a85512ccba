import { TOLERANCE } from "../length/round-up";
import { answer, type Result } from "../problem";
import type { Body, Place } from "../chart/model";
import { FRAME_PLACES, LENGTHS, downward } from "./body-order";
import { leastAt, sizeOf, type Fitting } from "./fitting";
import { offChart, type Judgement } from "./judge";
import type { LeastEase } from "./least-ease";
import { bodyFigure, hasPlace, measureOf } from "./measures";

/** Why a place has its size in a blend. */
export type BlendReason =
  "frame" | "frame place" | "bust adjustment" | "enough in the frame size" | "enough ease" | "closest" | "not measured";

/** A girth of the blend: the size it is cut in, and what it wants beyond the outermost size. */
export interface BlendGirth {
  readonly place: Place;
  /** Where the size stands on the chart; null where the place isn't measured. */
  readonly index: number | null;
  readonly measure: number | null;
  readonly reason: BlendReason;
  /** Whether the garment is judged by this place. */
  readonly governs: boolean;
  /** Whether it has to fit there: a governing place, or the waist of what hangs from it. */
  readonly close: boolean;
  /** Girth still wanted beyond the printed line, signed; 0 between the lines. */
  readonly beyond: number;
  /** Change in girth of the printed lines from the frame size, beyond included; null where no figure is printed. */
  readonly change: number | null;
  readonly least?: LeastEase;
  /** The ease in the size of the blend, where the finished measurements say it. */
  readonly ease?: number;
  /** The size by the body chart alone, where it has one. */
  readonly byBody?: number;
}

/**
 * The size at each girth, from the top of the body down. Neck, shoulders, cross back and high bust keep the frame size;
 * the bust or hip that set it is only ever made larger, where the finished measurements have too little ease. By finished measurements a place larger than the frame gets the first size with
 * its least ease; a place smaller than the frame its own size by the body, but never less than the least ease, and only
 * where the garment has to fit: a roomy design keeps its look. Without them each place gets its closest size.
 */
export function blendGirths(fitting: Fitting, body: Body, judgement: Judgement): Result<readonly BlendGirth[]> {
  const { chart, garment } = fitting;
  const { frame, places } = judgement;
  const governed = places.map(({ place }) => place);
  const wanted = new Set([...garment.girths, ...governed, ...frame.asked, ...FRAME_PLACES]);
  const girths: BlendGirth[] = [];
  for (const place of downward([...wanted])) {
    if (!hasPlace(chart, place) || LENGTHS.includes(place)) continue;
    const measure = measureOf(body, place, chart.unit);
    if (!measure.ok) return measure;
    const governs = governed.includes(place);
    const close =
      governs || (place === "waist" && !garment.girths.includes("bust") && !garment.girths.includes("chest"));
    if (measure.value === undefined) {
      if (FRAME_PLACES.includes(place) || insteadOf(place, body)) continue;
      const unknown = { index: null, measure: null, beyond: 0, change: null };
      girths.push({ place, governs, close, ...unknown, reason: "not measured" });
      continue;
    }
    const girth = girthAt(fitting, body, judgement, { place, measure: measure.value, governs, close });
    if (!girth.ok) return girth;
    girths.push(girth.value);
  }
  return answer(girths);
}

/** Bust and chest stand for one another: the one that isn't measured is not missed. */
const insteadOf = (place: Place, body: Body): boolean =>
  (place === "chest" && body.measures.has("bust")) || (place === "bust" && body.measures.has("chest"));

interface At {
  readonly place: Place;
  readonly measure: number;
  readonly governs: boolean;
  readonly close: boolean;
}

function girthAt(fitting: Fitting, body: Body, { frame }: Judgement, at: At): Result<BlendGirth> {
  const { chart } = fitting;
  const { place, measure } = at;
  const found = sizeOf(fitting, body, place, measure);
  if (!found.ok && !offChart(found.problem)) return found;
  const common = { ...at, beyond: 0, ...(found.ok ? { byBody: found.value } : {}) };
  if (frame.bust?.decidedBy === "highBust" && place === "bust")
    return withEase(fitting, frame.index, { ...common, index: frame.index, change: 0, reason: "bust adjustment" });
  const setsFrame = frame.asked.includes(place);
  if (FRAME_PLACES.includes(place))
    return answer({ ...common, index: frame.index, change: 0, reason: setsFrame ? "frame" : "frame place" });
  const outermost = found.ok ? found.value : found.problem.code === "aboveChart" ? chart.sizes.length - 1 : 0;
  const least = fitting.finished?.has(place) ? leastAt(fitting, place, measure, body.name) : answer(undefined);
  if (!least.ok) return least;
  // What set the frame isn't made smaller, but it may want more ease than the frame size has.
  if (least.value !== undefined)
    return byEase(
      fitting,
      frame.index,
      setsFrame ? frame.index : outermost,
      { ...common, least: least.value },
      setsFrame,
    );
  if (setsFrame) return withEase(fitting, frame.index, { ...common, index: frame.index, change: 0, reason: "frame" });
  let beyond = 0;
  if (!found.ok) {
    const end = bodyFigure(chart, place, outermost);
    if (!end.ok) return end;
    beyond = measure - end.value;
  }
  return withEase(fitting, frame.index, { ...common, index: outermost, change: null, beyond, reason: "closest" });
}

function byEase(
  fitting: Fitting,
  frame: number,
  byBody: number,
  girth: At & { readonly least: LeastEase; readonly beyond: number },
  setsFrame: boolean,
): Result<BlendGirth> {
  const last = fitting.chart.sizes.length - 1;
  const start = byBody < frame && girth.close ? byBody : frame;
  for (let index = start; ; index++) {
    const figure = fitting.finished!.at(girth.place, index);
    if (!figure.ok) return figure;
    const lacking = girth.least.value - (figure.value - girth.measure);
    if (lacking > TOLERANCE && index < last) continue;
    const beyond = lacking > TOLERANCE ? lacking : 0;
    return withEase(fitting, frame, { ...girth, index, beyond, change: null, reason: reasonFor(index, beyond) });
  }

  function reasonFor(index: number, beyond: number): BlendReason {
    if (index === frame && beyond === 0) return setsFrame ? "frame" : "enough in the frame size";
    return index === byBody && byBody < frame ? "closest" : "enough ease";
  }
}

/** Adds the change between the printed lines, by the finished measurements where they have both, and the ease. */
function withEase(fitting: Fitting, frame: number, girth: BlendGirth): Result<BlendGirth> {
  const { chart } = fitting;
  const { place, measure, beyond } = girth;
  const finished = fitting.finished?.has(place) ? fitting.finished : undefined;
  const [here, there] = [girth.index!, frame].map(
    (index) => finished?.at(place, index) ?? bodyFigure(chart, place, index),
  );
  if (!here!.ok) return here!;
  if (!there!.ok) return there!;
  const change = here!.value - there!.value + beyond;
  return answer({ ...girth, change, ...(finished && { ease: here!.value + beyond - measure! }) });
}
