/** The measuring guide: plain bodies with the tape lines on them, and beside them the words. */
import {
  measuringGuide,
  paneWords,
  tapeFigures,
  type TapeFigure,
  type TapeGuide,
  type TapeLine,
} from "../../src/index";
import { drawn, element, freshId } from "../dom";
import { smoothPath } from "./smooth-path";

const words = paneWords.fit;
const byPlace = new Map(measuringGuide.map((tape) => [tape.place, tape]));

/** What lights up together: the lines of one place on all figures, and its words. */
interface Tapes {
  readonly parts: Map<string, Element[]>;
  readonly names: Map<string, HTMLButtonElement>;
}

export function guide(): HTMLElement {
  const tapes: Tapes = { parts: new Map(), names: new Map() };
  const figures = tapeFigures.map((figure) =>
    element("section", { class: "tape-guide" }, tapeDrawing(figure, tapes), entries(figure, tapes)),
  );
  for (const [place, parts] of tapes.parts) light(parts, tapes.names.get(place)!);
  return element(
    "details",
    {},
    element("summary", {}, words.guide),
    element("p", { class: "hint" }, words.guideHint),
    ...figures,
  );
}

/** Pointing at a line or its words lights both; so does going to the name by keyboard, and pressing it keeps it lit. */
function light(parts: readonly Element[], name: HTMLButtonElement): void {
  const reasons = new Set<"pointed" | "focused" | "pressed">();
  const when = (reason: "pointed" | "focused" | "pressed", on: boolean) => {
    reasons[on ? "add" : "delete"](reason);
    for (const part of parts) part.classList.toggle("is-lit", reasons.size > 0);
  };
  for (const part of parts) {
    part.addEventListener("pointerenter", () => when("pointed", true));
    part.addEventListener("pointerleave", () => when("pointed", false));
    if (part instanceof SVGElement) part.addEventListener("click", () => name.focus());
  }
  name.addEventListener("focus", () => when("focused", true));
  name.addEventListener("blur", () => when("focused", false));
  name.addEventListener("click", () => {
    const pressed = name.getAttribute("aria-pressed") !== "true";
    name.setAttribute("aria-pressed", String(pressed));
    when("pressed", pressed);
  });
}

function tapeDrawing(figure: TapeFigure, tapes: Tapes): HTMLElement {
  const titleId = freshId("tapes");
  const { width, height, body } = figure;
  return element(
    "figure",
    {},
    drawn(
      "svg",
      { class: "tape-picture", viewBox: `0 0 ${width} ${height}`, role: "img", "aria-labelledby": titleId },
      drawn("title", { id: titleId }, figure.description),
      ...body.ground.map((points) => drawn("polyline", { class: "ground", points: points.join(" ") })),
      ...body.outlines.map((points) => drawn("path", { class: "body-outline", d: smoothPath(points, true) })),
      ...figure.tapes.map((tape) => remembered(tapes, tape.place, tapeLine(tape))),
    ),
  );
}

function tapeLine({ mark, strokes, label: [x, y], leader }: TapeLine): SVGElement {
  const lines = strokes.map((points) => smoothPath(points, false));
  return drawn(
    "g",
    { class: "tape" },
    // A wider line that is not seen, so that a tape is easy to point at.
    ...lines.map((d) => drawn("path", { class: "tape-reach", d })),
    leader && drawn("polyline", { class: "tape-leader", points: leader.join(" ") }),
    ...lines.map((d) => drawn("path", { class: "tape-line", d })),
    drawn("text", { class: "tape-mark", x, y: y + 4 }, mark),
  );
}

function entries({ name, places, tapes: lines }: TapeFigure, tapes: Tapes): HTMLElement {
  const items = places.map((place) => {
    const { number } = lines.find((line) => line.place === place)!;
    return remembered(tapes, place, entry(byPlace.get(place)!, number, tapes));
  });
  return element("div", {}, element("h3", {}, name), element("ul", {}, ...items));
}

function entry({ place, name, where, otherWays, standard, status }: TapeGuide, number: number, tapes: Tapes) {
  const id = freshId("tape");
  const title = element(
    "button",
    { type: "button", class: "tape-name", "aria-pressed": "false", "aria-describedby": id },
    words.tapeName(number, name),
  );
  tapes.names.set(place, title);
  const source = standard === null ? status : status === "read" ? standard : `${standard}, ${status}`;
  return element(
    "li",
    { class: "tape-entry" },
    title,
    element("p", { id }, where),
    ...otherWays.map((way) => element("p", {}, way)),
    element("p", { class: "hint" }, source),
  );
}

function remembered<E extends Element>({ parts }: Tapes, place: string, part: E): E {
  parts.set(place, [...(parts.get(place) ?? []), part]);
  return part;
}
