/** The engine's numbers of a fit as a drawing: sizes as bands at each place, the body's line and the blend's through them. */
import { formatLength, paneWords, type FitPicture, type PicturePlace } from "../../src/index";
import { drawn, element, freshId } from "../dom";

const words = paneWords.fit;
const WIDTH = 320;
const SIDE = 10;
const TOP = 8;
const LABEL = 16;
const BAND = 32;
/** Lines and marks run above the sizes' labels. */
const MARKS = 10;
/** About as wide as a letter of the words. */
const LETTER = 6.4;
const GAP = 6;
const ROW = LABEL + BAND + 16;

/** A figure's place across the drawing. */
export function across(picture: Pick<FitPicture, "low" | "high">, value: number): number {
  const span = picture.high - picture.low || 1;
  return SIDE + ((value - picture.low) / span) * (WIDTH - 2 * SIDE);
}

export function fitDrawing(picture: FitPicture): HTMLElement {
  const height = TOP + picture.places.length * ROW;
  const titleId = freshId("picture");
  const middle = (index: number) => TOP + index * ROW + LABEL + MARKS;
  const line = (at: (place: PicturePlace) => number) =>
    picture.places.map((place, index) => `${across(picture, at(place))},${middle(index)}`).join(" ");
  const svg = drawn(
    "svg",
    { class: "fit-picture", viewBox: `0 0 ${WIDTH} ${height}`, role: "img", "aria-labelledby": titleId },
    drawn("title", { id: titleId }, picture.description),
    hatching(),
    ...picture.places.map((place, index) => placeBands(picture, place, TOP + index * ROW)),
    drawn("polyline", { class: "blend-line", points: line(({ blendAt }) => blendAt) }),
    drawn("polyline", { class: "body-line", points: line(({ body }) => body) }),
    ...picture.places.map((place, index) => diamond(across(picture, place.blendAt), middle(index))),
    ...picture.places.map((place, index) =>
      drawn("circle", { class: "body-mark", cx: across(picture, place.body), cy: middle(index), r: 3.5 }),
    ),
  );
  svg.append(...picture.places.flatMap((_, index) => placeWords(picture, index)));
  return element("figure", { class: "fit" }, svg, legend());
}

/** Too tight is hatched, so that it shows without colour. */
function hatching(): SVGElement {
  return drawn(
    "defs",
    {},
    drawn(
      "pattern",
      { id: "tight-hatch", width: 6, height: 6, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" },
      drawn("line", { class: "hatch", x1: 0, y1: 0, x2: 0, y2: 6 }),
    ),
  );
}

function placeBands(picture: FitPicture, place: PicturePlace, top: number): SVGElement {
  const y = top + LABEL;
  const bands = place.bands.map(({ size, low, high }) => {
    const x = across(picture, low);
    const width = Math.max(0, across(picture, high) - x);
    const isFrame = size === picture.frame;
    return drawn("rect", { class: isFrame ? "band frame" : "band", x, y, width, height: BAND });
  });
  const first = place.bands[0];
  const last = place.bands.at(-1);
  const tight =
    place.tight && first && last
      ? drawn("rect", {
          class: "tight",
          x: across(picture, first.low),
          y: y + BAND,
          width: across(picture, last.high) - across(picture, first.low),
          height: 5,
        })
      : null;
  return drawn("g", {}, ...bands, tight);
}

/**
 * Where a row's ease is written so that the lines from the row above don't run through it: at the right end, or behind
 * the place's name when they come down there. At the right end too where neither is free.
 */
export function easeStart(picture: FitPicture, index: number): number | null {
  const [above, place] = [picture.places[index - 1], picture.places[index]!];
  if (!above) return null;
  const behind = SIDE + place.name.length * LETTER + GAP;
  const length = easeOf(picture, place).length * LETTER;
  // From the row above to this one, the height of the words is this much of the way.
  const way = [ROW - MARKS - LABEL, ROW - MARKS - 2];
  const crossings = (["body", "blendAt"] as const).flatMap((line) =>
    way.map((y) => {
      const [from, to] = [across(picture, above[line]), across(picture, place[line])];
      return from + ((to - from) * y) / ROW;
    }),
  );
  const isFree = (left: number, right: number) =>
    Math.max(...crossings) < left - GAP || Math.min(...crossings) > right + GAP;
  return !isFree(WIDTH - SIDE - length, WIDTH) && isFree(SIDE, behind + length) ? behind : null;
}

const easeOf = (picture: FitPicture, place: PicturePlace): string =>
  place.ease === null ? "" : words.easeShort(formatLength(place.ease, picture.unit), place.word);

/** Drawn last, over the lines. */
function placeWords(picture: FitPicture, index: number): SVGElement[] {
  const place = picture.places[index]!;
  const top = TOP + index * ROW;
  const start = easeStart(picture, index);
  const ease = easeOf(picture, place);
  const kind = `place-ease${start === null ? "" : " behind"}${place.tight ? " is-tight" : ""}`;
  const sizes = place.bands.flatMap(({ size, low, high }) => {
    const [left, right] = [across(picture, low), across(picture, high)];
    const isRoom = right - left >= 6 * size.length + 2;
    return isRoom
      ? [drawn("text", { class: "band-label", x: (left + right) / 2, y: top + LABEL + BAND - 5 }, size)]
      : [];
  });
  return [
    ...sizes,
    drawn("text", { class: "place-name", x: SIDE, y: top + 11 }, place.name),
    drawn("text", { class: kind, x: start ?? WIDTH - SIDE, y: top + 11 }, ease),
  ];
}

function diamond(x: number, y: number): SVGElement {
  return drawn("path", { class: "blend-mark", d: `M${x} ${y - 8}L${x + 8} ${y}L${x} ${y + 8}L${x - 8} ${y}Z` });
}

function legend(): HTMLElement {
  const item = (mark: SVGElement, text: string) =>
    element("li", {}, drawn("svg", { viewBox: "0 0 28 16", width: 28, height: 16, "aria-hidden": "true" }, mark), text);
  return element(
    "ul",
    { class: "legend" },
    item(
      drawn(
        "g",
        {},
        drawn("line", { class: "body-line", x1: 0, y1: 8, x2: 28, y2: 8 }),
        drawn("circle", { class: "body-mark", cx: 14, cy: 8, r: 3.5 }),
      ),
      words.legend.body,
    ),
    item(
      drawn("g", {}, drawn("line", { class: "blend-line", x1: 0, y1: 8, x2: 28, y2: 8 }), diamond(14, 8)),
      words.legend.blend,
    ),
    item(drawn("rect", { class: "band frame", x: 2, y: 2, width: 24, height: 10 }), words.legend.frame),
    item(drawn("rect", { class: "tight", x: 2, y: 5, width: 24, height: 5 }), words.legend.tight),
  );
}

/** The same in words and figures: what a screen reader reads, and what prints. */
export function fitTable(picture: FitPicture): HTMLElement {
  const length = (value: number) => formatLength(value, picture.unit);
  const row = (place: PicturePlace) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, place.name),
      element("td", {}, length(place.body)),
      element("td", {}, place.size),
      element("td", {}, place.ease === null ? "" : words.easeShort(length(place.ease), place.word)),
    );
  return element(
    "table",
    { class: "plain" },
    element("caption", {}, words.tableCaption(picture.cut ?? picture.frame)),
    element(
      "thead",
      {},
      element("tr", {}, ...words.tableHeadings.map((heading) => element("th", { scope: "col" }, heading))),
    ),
    element("tbody", {}, ...picture.places.map(row)),
  );
}
