/** A layout drawn to scale: selvedges, fold, grain, names, and the waste between the pieces. */
import { formatLength, paneWords, type Layout, type LengthUnit, type Placement } from "../../src/index";
import { drawn, element, freshId } from "../dom";

const words = paneWords.fabric;
const WIDTH = 320;
const SIDE = 16;
const TOP = 22;
/** Taller than this on the screen it is drawn smaller. */
const TALLEST = 900;

export interface LaidCloth {
  readonly width: number;
  readonly layout: "single" | "folded";
  readonly unit: LengthUnit;
}

/** How many millimetres of the drawing a unit of cloth is, and where things go. */
interface Scale {
  readonly by: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

export function layoutDrawing(layout: Layout, cloth: LaidCloth, name: string): HTMLElement {
  const length = layout.length ?? 0;
  const across =
    cloth.layout === "folded" && layout.placements.every(({ layer }) => layer === "folded")
      ? cloth.width / 2
      : cloth.width;
  const by = Math.min((WIDTH - 2 * SIDE) / across, TALLEST / Math.max(length, 1e-9));
  const scale: Scale = { by, x: (value) => SIDE + value * by, y: (value) => TOP + value * by };
  const height = TOP + length * by + 20;
  const titleId = freshId("layout");
  const folded = cloth.layout === "folded";
  const foldedEnd = Math.max(
    0,
    ...layout.placements.filter(({ layer }) => layer === "folded").map((one) => one.y + one.length),
  );
  const svg = drawn(
    "svg",
    { class: "layout-picture", viewBox: `0 0 ${WIDTH} ${height}`, role: "img", "aria-labelledby": titleId },
    drawn(
      "title",
      { id: titleId },
      words.layoutTitle(name, layout.placements.length, formatLength(length, cloth.unit)),
    ),
    drawn(
      "defs",
      {},
      drawn(
        "pattern",
        { id: "waste-hatch", width: 7, height: 7, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" },
        drawn("line", { class: "waste-line", x1: 0, y1: 0, x2: 0, y2: 7 }),
      ),
    ),
    drawn("rect", { class: "waste", x: scale.x(0), y: scale.y(0), width: across * by, height: length * by }),
    edge(scale, 0, folded ? "fold" : "selvedge", folded ? foldedEnd || length : length),
    edge(scale, across, "selvedge", length),
    ...layout.placements.map((placement) => piece(placement, scale)),
    drawn("text", { class: "edge-name", x: scale.x(0), y: TOP - 8 }, folded ? words.fold : words.selvedge),
    drawn("text", { class: "edge-name end", x: scale.x(across), y: TOP - 8 }, words.selvedge),
  );
  return element("figure", { class: "layout" }, svg, element("figcaption", { class: "hint" }, words.layoutLegend));
}

function edge({ x, y }: Scale, at: number, kind: "fold" | "selvedge", length: number): SVGElement {
  return drawn("line", { class: `edge ${kind}`, x1: x(at), y1: y(0), x2: x(at), y2: y(length) });
}

function piece(placement: Placement, { by, x, y }: Scale): SVGElement {
  const [left, top] = [x(placement.x), y(placement.y)];
  const [width, height] = [placement.width * by, placement.length * by];
  const shape = placement.outline
    ? drawn("polygon", {
        class: "piece",
        points: placement.outline.map((point) => `${x(point.x)},${y(point.y)}`).join(" "),
      })
    : drawn("rect", { class: "piece", x: left, y: top, width, height });
  const [middle, centre] = [left + width / 2, top + height / 2];
  const label = fitted(placement.piece, Math.max(width, height));
  const upright = width >= 5.6 * label.length || width >= height;
  return drawn(
    "g",
    {},
    shape,
    grain(placement, middle, centre, width, height),
    label && Math.min(width, height) > 11
      ? drawn(
          "text",
          {
            class: "piece-name",
            x: middle,
            y: centre + 4,
            transform: upright ? null : `rotate(-90 ${middle} ${centre})`,
          },
          label,
        )
      : null,
  );
}

/** The arrow lies along the grain of the piece: across the cloth when it is turned. */
function grain(
  { turned }: Placement,
  middle: number,
  centre: number,
  width: number,
  height: number,
): SVGElement | null {
  const long = (turned ? width : height) * 0.8;
  if (long < 24) return null;
  const [dx, dy] = turned ? [long / 2, 0] : [0, long / 2];
  const head = turned ? `M${middle + dx - 4} ${centre - 3}l4 3l-4 3` : `M${middle - 3} ${centre - dy + 4}l3 -4l3 4`;
  return drawn("path", { class: "grain", d: `M${middle - dx} ${centre + dy}L${middle + dx} ${centre - dy}${head}` });
}

function fitted(name: string, room: number): string {
  const most = Math.floor(room / 5.6);
  return name.length <= most ? name : most < 3 ? "" : `${name.slice(0, most - 1)}…`;
}
