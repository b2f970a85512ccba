import type { Part } from "./parts";
import { STEPS } from "./steps";
import type { Allowance, Point } from "./types";

/** How a piece's paper lies: turned by a quarter, turned over sideways, upside down. */
export interface Way {
  readonly turned: boolean;
  readonly flipX: boolean;
  readonly flipY: boolean;
}

const BOTH = [false, true] as const;

/**
 * The ways in which a part may lie. One layer: the paper is never turned over, or always for the second of a pair. Two
 * layers cut both of a pair, so the paper may be turned over. With nap everything points one way; a piece that may turn
 * ignores nap. What lies on the fold keeps its edge there.
 */
export function waysOf({ piece, layer, mirrored, box }: Part, upsideDown: boolean): Way[] {
  if (!piece.outline) {
    const turns = box.mayTurn && box.width !== box.length;
    return (turns ? BOTH : [false]).map((turned) => ({ turned, flipX: false, flipY: false }));
  }
  const ways: Way[] = [];
  for (const turned of box.mayTurn ? BOTH : [false])
    for (const flipY of upsideDown || box.mayTurn ? BOTH : [false])
      for (const flipX of box.onFold ? [false] : BOTH) {
        const over = flipX !== flipY;
        const opened = layer === "single" && piece.onFold === true;
        if (layer === "single" && !opened && over !== mirrored) continue;
        ways.push({ turned, flipX, flipY });
      }
  return ways;
}

/** The closed lines of a part as it lies with its box's corner at 0, in the caller's unit; a box without an outline. */
export function linesOf({ piece, layer }: Part, way: Way): Point[][] {
  const { width, length, outline } = piece;
  const opened = layer === "single" && piece.onFold === true;
  const wide = opened ? 2 * width : width;
  const corners = [
    { x: 0, y: 0 },
    { x: wide, y: 0 },
    { x: wide, y: length },
    { x: 0, y: length },
  ];
  const half = outline ?? corners;
  const lines =
    opened && outline
      ? [half.map(({ x, y }) => ({ x: width + x, y })), half.map(({ x, y }) => ({ x: width - x, y }))]
      : [half];
  return lines.map((line) =>
    line.map((point) => {
      const [x, y] = [Math.min(Math.max(point.x, 0), wide), Math.min(Math.max(point.y, 0), length)];
      // A quarter turn to the left, then over.
      const [across, along] = way.turned ? [length - y, x] : [x, y];
      const [w, l] = way.turned ? [length, wide] : [wide, length];
      return { x: way.flipX ? w - across : across, y: way.flipY ? l - along : along };
    }),
  );
}

/** What is cut beyond the outline of a part as it lies. */
export function beyondOf({ piece, layer }: Part, way: Way): Allowance {
  const { left = 0, right = 0, bottom = 0, top = 0 } = piece.allowance ?? {};
  const opened = layer === "single" && piece.onFold === true;
  const flat = { left: opened ? right : left, right, bottom, top };
  // The same quarter turn as above: what was on top lies left.
  const turned = way.turned ? { left: flat.top, right: flat.bottom, bottom: flat.left, top: flat.right } : flat;
  return {
    left: way.flipX ? turned.right : turned.left,
    right: way.flipX ? turned.left : turned.right,
    bottom: way.flipY ? turned.top : turned.bottom,
    top: way.flipY ? turned.bottom : turned.top,
  };
}

export const inSteps = (lines: readonly (readonly Point[])[]): Point[][] =>
  lines.map((line) => line.map(({ x, y }) => ({ x: x * STEPS, y: y * STEPS })));
