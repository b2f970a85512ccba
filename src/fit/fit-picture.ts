import { clean, TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import { answer, type Problem, type Result } from "../problem";
import type { Body, BodyUnit, Chart, Place } from "../chart/model";
import { blendGirths, type BlendGirth } from "./blend-girths";
import { termOf } from "./fit-term";
import { fitting, type Fitting, type FitOptions } from "./fitting";
import { judge } from "./judge";
import { easeOf, spoken } from "./lengths";
import { isPrinted, rowsOf } from "./measures";
import { isSpan } from "../chart/model";
import * as say from "../words/picture-notes";

/** A size's column at one place: from low to high it is the nearest size, in the chart's unit. */
export interface PictureBand {
  readonly size: string;
  readonly low: number;
  readonly high: number;
  /** The printed figure; of a range its middle. */
  readonly at: number;
}

export interface PicturePlace {
  readonly place: Place;
  readonly name: string;
  /** The size columns side by side; a size without a figure here is left out. */
  readonly bands: readonly PictureBand[];
  /** The body's measure, in the chart's unit. */
  readonly body: number;
  /** The size of the blend. */
  readonly size: string;
  /** Where the blend line goes: the figure of that size, and what it wants beyond it. */
  readonly blendAt: number;
  /** The size of the frame at this place. */
  readonly frameAt: number | null;
  /** The ease in the size to cut; null without finished measurements. */
  readonly ease: number | null;
  /** "enough", "tight", or the fit word; "" where nothing is known. */
  readonly word: string;
  /** Whether it is less than the least ease: for a colour beside the words, never instead of them. */
  readonly tight: boolean;
  /** The row as a screen reader says it. */
  readonly words: string;
}

/** The numbers of the drawing: one row a place, all in the chart's unit, between `low` and `high`. */
export interface FitPicture {
  readonly unit: BodyUnit | null;
  readonly sizes: readonly string[];
  readonly low: number;
  readonly high: number;
  readonly frame: string;
  /** The size to cut in one piece; null where none will do, and then why. */
  readonly cut: string | null;
  readonly whyNot: Problem | null;
  readonly places: readonly PicturePlace[];
  /** The whole picture in words. */
  readonly description: string;
}

/**
 * The numbers of the picture of one body on one chart: at each place the sizes as bands, the body's measure, the frame
 * size and the blend line, the ease and its word. Refuses what `blend` refuses.
 *
 * A band goes from half way to the size below to half way to the size above; the first and the last are as wide outside
 * as inside. Printed ranges are bands as printed.
 */
export function fitPicture(printed: Chart, body: Body, garment: string, options: FitOptions = {}): Result<FitPicture> {
  const ready = fitting(printed, garment, options);
  if (!ready.ok) return ready;
  const { chart } = ready.value;
  const judged = judge(ready.value, body);
  if (!judged.ok) return judged;
  const girths = blendGirths(ready.value, body, judged.value);
  if (!girths.ok) return girths;
  const { frame } = judged.value;
  const cut = judged.value.cut.ok ? judged.value.cut.value : null;
  const places: PicturePlace[] = [];
  for (const girth of girths.value) {
    if (girth.index === null) continue;
    const place = picturePlace(ready.value, body, girth, { cut, frame: frame.index });
    if (place) places.push(place);
  }
  const figures = places.flatMap(({ bands, body: measure, blendAt }) => [
    ...bands.flatMap(({ low, high }) => [low, high]),
    measure,
    blendAt,
  ]);
  const frameSize = chart.sizes[frame.index]!;
  const cutSize = cut === null ? null : chart.sizes[cut]!;
  return answer({
    unit: chart.unit,
    sizes: chart.sizes,
    low: Math.min(...figures),
    high: Math.max(...figures),
    frame: frameSize,
    cut: cutSize,
    whyNot: judged.value.cut.ok ? null : judged.value.cut.problem,
    places,
    description: say.fitDescription(
      frameSize,
      cutSize,
      places.map(({ words }) => words),
    ),
  });
}

function picturePlace(
  fitting: Fitting,
  body: Body,
  girth: BlendGirth,
  { cut, frame }: { readonly cut: number | null; readonly frame: number },
): PicturePlace | undefined {
  const { chart, garment, settings, finished, unit } = fitting;
  const bands = bandsAt(chart, girth.place);
  const bandOf = (index: number) => bands.find(({ size }) => size === chart.sizes[index]);
  const at = bandOf(girth.index!);
  if (!at) return undefined;
  const adjusted = girth.reason === "bust adjustment";
  const figure = cut !== null && finished?.has(girth.place) ? finished.at(girth.place, cut) : undefined;
  // After the adjustment the bust has the ease of the pattern's own bust, which isn't known where it isn't printed.
  const measure = adjusted && cut !== null ? bandOf(cut)?.at : girth.measure!;
  const ease = figure?.ok && measure !== undefined ? clean(figure.value - measure) : null;
  const term =
    ease === null ? undefined : termOf(ease, garment, girth.place, { unit: unit ?? "in", settings, person: body.name });
  const tight = ease !== null && girth.least !== undefined && ease < girth.least.value - TOLERANCE;
  // Of enough or tight the least ease decides that is hers: the word alone knows neither her nor what she wears.
  const judged = girth.least && term?.ok && (term.value === "enough" || term.value === "tight");
  const word = judged ? (tight ? "tight" : "enough") : term?.ok ? term.value : "";
  const name = placeName(girth.place);
  return {
    place: girth.place,
    name,
    bands,
    body: girth.measure!,
    size: chart.sizes[girth.index!]!,
    blendAt: clean(at.at + girth.beyond),
    frameAt: bandOf(frame)?.at ?? null,
    ease,
    word: tight && word !== "tight" && ease >= 0 ? `${word === "" ? "" : `${word}, `}tight` : word,
    tight,
    words: placeWords(),
  };

  function placeWords(): string {
    const size = (index: number) => chart.sizes[index]!;
    const known = ease === null ? null : { size: size(cut!), ease: easeOf(ease, unit), word };
    return say.placeInSize(name, spoken(girth.measure!, unit), size(girth.index!), known);
  }
}

function bandsAt(chart: Chart, place: Place): readonly PictureBand[] {
  const row = rowsOf(chart, place)[0];
  const printed = chart.sizes.flatMap((size, index) => {
    const figure = row?.values[index];
    if (!isPrinted(figure)) return [];
    return [
      isSpan(figure)
        ? { size, at: (figure.low + figure.high) / 2, span: figure }
        : { size, at: figure, span: undefined },
    ];
  });
  return printed.map(({ size, at, span }, index) => {
    if (span) return { size, at, low: span.low, high: span.high };
    const [before, after] = [printed[index - 1], printed[index + 1]];
    const below = before ? (at - before.at) / 2 : after ? (after.at - at) / 2 : 0;
    const above = after ? (after.at - at) / 2 : below;
    return { size, at, low: clean(at - below), high: clean(at + above) };
  });
}
