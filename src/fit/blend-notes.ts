import { convert } from "../length/length";
import { TOLERANCE } from "../length/round-up";
import { placeName } from "../chart/places";
import type { Body } from "../chart/model";
import type { BlendGirth } from "./blend-girths";
import { edgesAt } from "./edges";
import { betweenSizes, type Fitting } from "./fitting";
import type { Judgement } from "./judge";
import { adjustmentKind, aSize, easeOf, spoken } from "./lengths";
import { settingLength, type BetweenSizes } from "./settings";
import { capital, inARow } from "../words/sentences";

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
  const size = (index: number) => chart.sizes[index]!;
  if (above.index === girth.index)
    return `Straight on in size ${size(girth.index)} from the ${placeName(above.place)}.`;
  return `Draw the line from ${size(above.index!)} at the ${placeName(above.place)} to ${size(girth.index)} at the ${placeName(girth.place)}.`;
}

const BETWEEN: Readonly<Record<BetweenSizes, string>> = {
  closest: "the closest size",
  larger: "the larger of two sizes, as your settings say",
  smaller: "the smaller of two sizes, as your settings say",
};
const EASE_OF = {
  default: "our least ease",
  settings: "your own least ease",
  "my garment": "the ease of a garment that fits",
};

function rule(fitting: Fitting, body: Body, { frame }: Judgement, girth: BlendGirth): string {
  const between = betweenSizes(fitting, girth.place, body.name);
  const { chart, unit, garment } = fitting;
  const own = girth.byBody === undefined ? "off the chart" : aSize(chart.sizes[girth.byBody]!);
  const differs = girth.byBody !== girth.index;
  const wanted = girth.least && `${spoken(girth.least.value, unit)} wanted, ${EASE_OF[girth.least.from]}`;
  const has = girth.ease === undefined ? "" : easeOf(girth.ease, unit);
  switch (girth.reason) {
    case "not measured":
      return `The ${placeName(girth.place)} isn't measured: it is not blended.`;
    case "frame":
      return differs ? `Stays in the frame size; by itself it is ${own}.` : `Sets the frame size: ${BETWEEN[between]}.`;
    case "frame place":
      return differs
        ? `Frame place, never blended; by itself it is ${own}: alter it in the frame size.`
        : "Frame place, never blended.";
    case "bust adjustment":
      return bustNote(frame.bust!.adjustment, unit);
    case "enough in the frame size":
      return `The frame size has ${has} (${wanted}).`;
    case "enough ease":
      return girth.beyond > 0
        ? `No size has the ease wanted (${wanted}).`
        : `First size with enough: ${has} (${wanted}).`;
    case "closest":
      return `${capital(BETWEEN[between])} by the body chart${girth.close ? "" : `: this garment (${garment.name}) isn't judged by it, blend only where it is close or reaches so far`}.`;
  }
}

function bustNote(adjustment: number, unit: Fitting["unit"]): string {
  if (adjustment === 0) return "Stays in the frame size by the high bust; the bust needs no adjustment.";
  return `Stays in the frame size by the high bust; ${adjustmentKind(adjustment)} of ${spoken(Math.abs(adjustment), unit)}, half of it on the half front piece.`;
}

/** Common practice: about 1/2 in an edge; from memory. */
const EDGE_LIMIT = 0.5;

function beyondNote(fitting: Fitting, body: Body, { place, beyond, index }: BlendGirth): string {
  if (beyond === 0 || index === null) return "";
  const { chart, garment, settings, unit } = fitting;
  const edge = Math.abs(beyond) / edgesAt(fitting, place);
  const where = { garment: garment.key, place, person: body.name };
  const own = settingLength(settings, "edge limit", where, unit);
  const more = `${spoken(Math.abs(beyond), unit)} ${beyond > 0 ? "beyond" : "inside"} size ${chart.sizes[index]!}, the ${beyond > 0 ? "largest" : "smallest"}: ${spoken(edge, unit)} an edge.`;
  if (unit === null)
    return own === undefined
      ? `${more} About 1/2 inch an edge is the most (from memory).`
      : `${more} The chart names no unit: your own edge limit can't be compared.`;
  const limit = own ?? convert(EDGE_LIMIT, "in", unit);
  if (edge <= limit + TOLERANCE) return more;
  return `${more} That is more than about ${spoken(limit, unit)} an edge (from memory): slash and ${beyond > 0 ? "spread" : "overlap"}, or take a pattern in other sizes.`;
}
