/** A row of figures as a small line, so that a slip is seen at a glance. */
import { isSpan, type Figure } from "../../src/index";
import { drawn } from "../dom";

export interface SparkPoint {
  readonly x: number;
  readonly y: number;
  /** Which figure of the row it is. */
  readonly index: number;
}

const WIDTH = 56;
const HEIGHT = 20;
/** Room for the mark of a doubtful figure. */
const MARGIN = 4;

/**
 * The points of a row, from the smallest figure at the bottom to the largest at the top; a missing figure leaves a gap.
 * A row whose figures are all the same is a line through the middle. A printed range counts as its middle.
 *
 * @example sparkPoints([1, 2]) //=> [{ x: 4, y: 16, index: 0 }, { x: 52, y: 4, index: 1 }]
 */
export function sparkPoints(values: readonly Figure[]): SparkPoint[] {
  const figures = values.map((figure) => (figure !== null && isSpan(figure) ? (figure.low + figure.high) / 2 : figure));
  const known = figures.filter((figure) => figure !== null);
  const low = Math.min(...known);
  const span = Math.max(...known) - low;
  const step = figures.length > 1 ? (WIDTH - 2 * MARGIN) / (figures.length - 1) : 0;
  return figures.flatMap((figure, index) => {
    if (figure === null) return [];
    const up = span === 0 ? 0.5 : (figure - low) / span;
    return [{ x: MARGIN + step * index, y: HEIGHT - MARGIN - up * (HEIGHT - 2 * MARGIN), index }];
  });
}

/** The drawing; doubtful figures get a ring, so that they show without colour too. */
export function sparkline(values: readonly Figure[], doubtful: ReadonlySet<number>, name: string): SVGSVGElement {
  const points = sparkPoints(values);
  const runs: SparkPoint[][] = [];
  for (const point of points) {
    const last = runs.at(-1);
    if (last?.at(-1)?.index === point.index - 1) last.push(point);
    else runs.push([point]);
  }
  return drawn(
    "svg",
    {
      class: "spark",
      viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
      width: WIDTH,
      height: HEIGHT,
      role: "img",
      "aria-label": name,
    },
    ...runs.map((run) => drawn("polyline", { points: run.map(({ x, y }) => `${x},${y}`).join(" ") })),
    ...runs.filter((run) => run.length === 1).map(([point]) => drawn("circle", { cx: point!.x, cy: point!.y, r: 1 })),
    ...points
      .filter(({ index }) => doubtful.has(index))
      .map(({ x, y }) => drawn("circle", { class: "doubt", cx: x, cy: y, r: 3 })),
  );
}
