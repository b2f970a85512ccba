/** Where each tape goes, as the numbers of a drawing: plain line figures of our own, and the tape lines on them. */
import { placeName } from "../chart/places";
import type { Place } from "../chart/model";
import { backBody, frontBody, seatedBody, type BodyOutline, type Point } from "./measuring-bodies";
import { tapeDescription, tapeLine, tapeViews } from "../words/picture-notes";

/** One tape on one figure. */
export interface TapeLine {
  readonly place: Place;
  /** Its number in the guide; the same on every figure that shows it. */
  readonly number: number;
  /** As it stands beside the line: "5", or "8a" where a word is used for several tapes. */
  readonly mark: string;
  /** Open curves through these points. */
  readonly strokes: readonly (readonly Point[])[];
  readonly label: Point;
  /** From the tape to its mark; none where the mark stands at the line. */
  readonly leader: readonly [Point, Point] | null;
}

export interface TapeFigure {
  readonly view: "front" | "back" | "seated";
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly body: BodyOutline;
  readonly tapes: readonly TapeLine[];
  /** The places whose words stand beside this figure; a place that two figures show stands beside the first. */
  readonly places: readonly Place[];
  /** The figure as a screen reader says it. */
  readonly description: string;
}

type Drawn = readonly [place: Place, label: Point, leader: readonly [Point, Point] | null, ...(readonly Point[])[]];

/** A tape round the body, seen from one side: it hangs a little in the middle. */
const round = (half: number, y: number, sag = 2.5, middle = 0): readonly Point[] => [
  [middle - half, y],
  [middle - half * 0.55, y + sag * 0.8],
  [middle, y + sag],
  [middle + half * 0.55, y + sag * 0.8],
  [middle + half, y],
];

/** A thin line out to the mark beside the figure, to the left (-1) or the right (1). */
const out = (side: -1 | 1, half: number, y: number, markY = y): readonly [Point, Point] => [
  [side * half, y],
  [side * 54, markY],
];
const at = (side: -1 | 1, y: number): Point => [side * 62, y];

// All points count from the middle of the figure across, from the top of the drawing down. Levels on the body are those
// of an average adult, as shares of the height: from memory.
const FRONT: readonly Drawn[] = [
  ["head", at(1, 27), out(1, 15, 27), round(15, 26, 3)],
  ["neck", at(1, 59), out(1, 8.5, 60), round(8.5, 60)],
  ["frontWaistLength", at(-1, 70), out(-1, 10, 72, 70), [[-9, 66], [-11, 84], [-13, 105], [-12, 120], [-11, 136]]],
  ["highBust", at(-1, 90), out(-1, 25.5, 91, 90), [[-25.5, 92], [-14, 90], [0, 89], [14, 90], [25.5, 92]]],
  ["bust", at(1, 105), out(1, 25.5, 105), round(25.5, 105)],
  ["underbust", at(1, 120), out(1, 22.5, 117, 120), round(22.5, 117)],
  ["upperArm", at(-1, 110), out(-1, 41.5, 108, 110), round(6.5, 108, 2, -35)],
  ["waist", at(-1, 130), out(-1, 20, 133, 130), round(20, 133)],
  ["waist", at(1, 139), out(1, 19.8, 140, 139), round(19.8, 140, 5)],
  ["waist", at(-1, 149), out(-1, 22, 150, 149), round(22, 150)],
  ["waistToHip", at(-1, 164), out(-1, 24, 163, 164), [[-19.5, 139], [-21, 150], [-24.5, 165], [-26, 177]]],
  ["hip", at(1, 177), out(1, 28.5, 178, 177), round(28.5, 178)],
  ["wrist", at(-1, 180), out(-1, 50, 177, 180), round(4, 177, 1.5, -46)],
  ["crotchLength", [9, 164], null, [[0, 142], [0, 165], [0, 191]]],
  ["thigh", at(1, 206), out(1, 27.5, 203, 206), round(12.5, 203, 2.5, 15)],
  ["insideLeg", at(-1, 226), out(-1, 0, 226), [[0, 192], [0, 270], [0, 350]]],
  ["knee", at(1, 256), out(1, 19.5, 256), round(7.5, 256, 2, 12)],
  ["calf", at(1, 281), out(1, 19.5, 281), round(7.5, 281, 2, 12)],
]; // prettier-ignore

const BACK: readonly Drawn[] = [
  ["shoulder", [44, 58], [[20, 69], [37, 60]], [[8.5, 65], [20, 70], [33, 76.5]]],
  ["crossBack", at(-1, 84), out(-1, 26, 86, 84), [[-26, 86], [0, 86], [26, 86]]],
  ["chest", at(-1, 99), out(-1, 25.5, 97, 99), round(25.5, 97, 1.5)],
  ["backWaistLength", [9, 121], null, [[0, 64], [0, 100], [0, 138]]],
  ["sleeveLength", at(-1, 136), [[-52, 124], [-58, 130]], [[-33, 77], [-44, 100], [-51, 121], [-40, 136], [-27, 148]]],
  ["crotchLength", [9, 164], null, [[0, 142], [0, 165], [0, 191]]],
  ["outsideLeg", [46, 252], [[29.5, 252], [39, 252]], [[20.5, 138], [25, 155], [29.5, 178], [29.5, 260], [29.5, 350]]],
  ["height", [62, 226], null, [[58, 10], [66, 10]], [[62, 10], [62, 350]], [[58, 350], [66, 350]]],
]; // prettier-ignore

const SEATED: readonly Drawn[] = [
  ["crotchDepth", [-27, 111], [[-11, 111], [-20, 111]], [[-11, 92], [-11, 111], [-11, 129]]],
]; // prettier-ignore

const MIDDLE = 70;
const LETTERS = "abc";

interface View {
  readonly view: TapeFigure["view"];
  readonly name: string;
  readonly height: number;
  readonly body: BodyOutline;
  readonly drawn: readonly Drawn[];
}
const VIEWS: readonly View[] = [
  { view: "front", name: tapeViews.front, height: 360, body: frontBody, drawn: FRONT },
  { view: "back", name: tapeViews.back, height: 360, body: backBody, drawn: BACK },
  { view: "seated", name: tapeViews.seated, height: 200, body: seatedBody, drawn: SEATED },
];

/** The places in the order of their numbers. */
const ORDER: readonly Place[] = [...new Set(VIEWS.flatMap(({ drawn }) => drawn.map(([place]) => place)))];

const shifted = ([x, y]: Point): Point => [x + MIDDLE, y];

function tapesOf(drawn: readonly Drawn[]): TapeLine[] {
  const seen = new Map<Place, number>();
  return drawn.map(([place, label, leader, ...strokes]) => {
    const number = ORDER.indexOf(place) + 1;
    const before = seen.get(place) ?? 0;
    seen.set(place, before + 1);
    const several = drawn.filter(([other]) => other === place).length > 1;
    return {
      place,
      number,
      mark: several ? `${number}${LETTERS.charAt(before)}` : String(number),
      strokes: strokes.map((points) => points.map(shifted)),
      label: shifted(label),
      leader: leader && [shifted(leader[0]), shifted(leader[1])],
    };
  });
}

/**
 * The figures of the measuring guide: a plain body from the front, from behind and sitting, each with the tapes that are
 * best seen there. Numbers run on from figure to figure, roughly from the top of the body down. Measures of the drawing
 * are its own units, about a pixel each.
 *
 * Source: our own drawing after the words of `measuringGuide`.
 *
 * @example tapeFigures.map(({ view }) => view) //=> ["front", "back", "seated"]
 */
export const tapeFigures: readonly TapeFigure[] = VIEWS.map(({ view, name, height, body, drawn }, index) => {
  const tapes = tapesOf(drawn);
  const earlier = new Set(VIEWS.slice(0, index).flatMap((other) => other.drawn.map(([place]) => place)));
  const lines = tapes.map(({ mark, place }) => tapeLine(mark, placeName(place)));
  return {
    view,
    name,
    width: 2 * MIDDLE,
    height,
    body: {
      outlines: body.outlines.map((points) => points.map(shifted)),
      ground: body.ground.map((points) => points.map(shifted)),
    },
    tapes,
    places: [...new Set(drawn.map(([place]) => place))].filter((place) => !earlier.has(place)),
    description: tapeDescription(name, lines),
  };
});
