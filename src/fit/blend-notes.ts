import { convert } from "../length/length";
import { TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import type { Body } from "../chart/model";
import type { BlendGirth } from "./blend-girths";
import { edgesAt } from "./edges";
import { betweenSizes, type Fitting } from "./fitting";
import type { Judgement } from "./judge";
import { easeOf, spoken } from "./lengths";
import { settingLength } from "./settings";
import * as say from "../words/fit-notes";
import { inARow } from "../words/sentences";

/** A note for each girth: the line to draw, the rule, and what lies beyond the outermost size. */
export function girthNotes(
  fitting: Fitting,
  body: Body,
  judgement: Judgement,
  girths: readonly BlendGirth[],
): readonly string[] {
  return girths.map((girth, at) => {
    const above = girths
      .filter(({ index, reason }, other) => other < at && index !== null && reason !== "frame place")
      .at(-1);
    return inARow(line(fitting, above, girth), rule(fitting, body, judgement, girth), beyondNote(fitting, body, girth));
  });
}

/** Between which two places the line is drawn. */
function line({ chart }: Fitting, above: BlendGirth | undefined, girth: BlendGirth): string {
  if (!above || girth.index === null || girth.reason === "frame place") return "";
  const [from, to] = [chart.sizes[above.index!]!, chart.sizes[girth.index]!];
  const start = placeName(above.place);
  return above.index === girth.index
    ? say.straightOn(to, start)
    : say.drawLine(from, start, to, placeName(girth.place));
}

function rule(fitting: Fitting, body: Body, { frame }: Judgement, girth: BlendGirth): string {
  const between = betweenSizes(fitting, girth.place, body.name);
  const { chart, unit, garment } = fitting;
  const own = girth.byBody === undefined ? undefined : chart.sizes[girth.byBody]!;
  const differs = girth.byBody !== girth.index;
  const wanted = girth.least ? say.wanted(spoken(girth.least.value, unit), girth.least.from) : "";
  const has = girth.ease === undefined ? "" : easeOf(girth.ease, unit);
  switch (girth.reason) {
    case "not measured":
      return say.notBlended(placeName(girth.place));
    case "frame":
      return differs ? say.staysInFrame(own) : say.setsFrame(between);
    case "frame place":
      return differs ? say.framePlaceBeside(own) : say.framePlace;
    case "bust adjustment":
      return bustNote(frame.bust!.adjustment, unit);
    case "enough in the frame size":
      return say.enoughInFrame(has, wanted);
    case "enough ease":
      return girth.beyond > 0 ? say.neverEnough(wanted) : say.firstWithEnough(has, wanted);
    case "closest":
      return say.byBodyChart(between, girth.close ? null : garment.name);
  }
}

function bustNote(adjustment: number, unit: Fitting["unit"]): string {
  return adjustment === 0
    ? say.staysByHighBust
    : say.adjustedByHighBust(adjustment > 0, spoken(Math.abs(adjustment), unit));
}

/** Common practice: about 1/2 in an edge; from memory. */
const EDGE_LIMIT = 0.5;

function beyondNote(fitting: Fitting, body: Body, { place, beyond, index }: BlendGirth): string {
  if (beyond === 0 || index === null) return "";
  const { chart, garment, settings, unit } = fitting;
  const edge = Math.abs(beyond) / edgesAt(fitting, place);
  const where = { garment: garment.key, place, person: body.name };
  const own = settingLength(settings, "edge limit", where, unit);
  const above = beyond > 0;
  const more = say.beyondSize(spoken(Math.abs(beyond), unit), above, chart.sizes[index]!, spoken(edge, unit));
  if (unit === null) return inARow(more, own === undefined ? say.mostAnEdge : say.edgeNotCompared);
  const limit = own ?? convert(EDGE_LIMIT, "in", unit);
  return edge <= limit + TOLERANCE ? more : inARow(more, say.tooMuchAnEdge(spoken(limit, unit), above));
}
