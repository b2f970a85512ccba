/** A layout drawn to scale: selvedges, fold, grain, names, and the waste between the pieces. */
import {
  formatLength,
  paneWords,
  type LayoutPicture,
  type LengthUnit,
  type PicturePiece,
  type PictureZone,
} from "../../src/index";
import { drawn, element, freshId } from "../dom";

const words = paneWords.fabric;
const WIDTH = 320;
const SIDE = 16;
const TOP = 22;
/** Room between the folded and the opened stretch, for the words over the second. */
const BETWEEN = 20;
/** Taller than this on the screen it is drawn smaller. */
const TALLEST = 900;

/** How many units of the drawing a unit of cloth is, and where things go in a zone. */
interface Scale {
  readonly by: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

/** @param unit that of the picture's numbers */
export function layoutDrawing(picture: LayoutPicture, unit: LengthUnit, name: string): HTMLElement {
  const { length, zones, pieces, waste } = picture;
  const across = Math.max(...zones.map((zone) => zone.width));
  const by = Math.min((WIDTH - 2 * SIDE) / across, TALLEST / Math.max(length, 1e-9));
  const [titleId, hatchId] = [freshId("layout"), freshId("hatch")];
  const hatch = drawn(
    "pattern",
    { id: hatchId, width: 7, height: 7, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" },
    drawn("line", { class: "waste-line", x1: 0, y1: 0, x2: 0, y2: 7 }),
  );
  const height = TOP + length * by + BETWEEN * (zones.length - 1) + 6;
  const title = words.layoutTitle(name, pieces.length, formatLength(length, unit));
  const svg = drawn(
    "svg",
    { class: "layout-picture", viewBox: `0 0 ${WIDTH} ${height}`, role: "img", "aria-labelledby": titleId },
    drawn("title", { id: titleId }, title),
    drawn("defs", {}, hatch),
    ...zones.flatMap((zone, i) => {
      const scale: Scale = {
        by,
        x: (value) => SIDE + value * by,
        y: (value) => TOP + value * by + i * BETWEEN,
      };
      const inside = pieces.filter(({ layer }) => layer === zone.layer);
      return [...ground(zone, scale, hatchId, zones.length > 1), ...inside.map((piece) => pieceDrawing(piece, scale))];
    }),
  );
  const legend = words.layoutLegend((waste * 100).toFixed(0));
  return element("figure", { class: "layout" }, svg, element("figcaption", { class: "hint" }, legend));
}

/** The cloth of a zone with its edges: folded, the fold is on the left. */
function ground({ layer, from, to, width }: PictureZone, scale: Scale, hatchId: string, named: boolean): SVGElement[] {
  const { by, x, y } = scale;
  const folded = layer === "folded";
  const edge = (at: number, kind: "fold" | "selvedge") =>
    drawn("line", { class: `edge ${kind}`, x1: x(at), y1: y(from), x2: x(at), y2: y(to) });
  const over = y(from) - 8;
  const zone = folded ? words.foldedZone : words.openedZone;
  return [
    drawn("rect", {
      fill: `url(#${hatchId})`,
      ...{ x: x(0), y: y(from), width: width * by, height: (to - from) * by },
    }),
    edge(0, folded ? "fold" : "selvedge"),
    edge(width, "selvedge"),
    drawn("text", { class: "edge-name", x: x(0), y: over }, folded ? words.fold : words.selvedge),
    drawn("text", { class: "edge-name end", x: x(width), y: over }, words.selvedge),
    ...(named ? [drawn("text", { class: "edge-name middle", x: x(width / 2), y: over }, zone)] : []),
  ];
}

function pieceDrawing({ name, line, middle, grain }: PicturePiece, { by, x, y }: Scale): SVGElement {
  const size = (of: "x" | "y"): number => {
    const along = line.map((point) => point[of]);
    return (Math.max(...along) - Math.min(...along)) * by;
  };
  const [width, height] = [size("x"), size("y")];
  const [centreX, centreY] = [x(middle.x), y(middle.y)];
  const label = fitted(name, Math.max(width, height));
  const level = width >= 5.6 * label.length || width >= height;
  return drawn(
    "g",
    {},
    drawn("polygon", { class: "piece", points: line.map((point) => `${x(point.x)},${y(point.y)}`).join(" ") }),
    grainArrow(grain, centreX, centreY, grain === "across" ? width : height),
    label && Math.min(width, height) > 11
      ? drawn(
          "text",
          {
            class: "piece-name",
            x: centreX,
            y: centreY + 4,
            transform: level ? null : `rotate(-90 ${centreX} ${centreY})`,
          },
          label,
        )
      : null,
  );
}

/** The arrow lies along the grain of the piece: across the cloth when it is turned. */
function grainArrow(grain: PicturePiece["grain"], x: number, y: number, room: number): SVGElement | null {
  const long = room * 0.8;
  if (long < 24) return null;
  const [dx, dy] = grain === "across" ? [long / 2, 0] : [0, long / 2];
  const head = grain === "across" ? `M${x + dx - 4} ${y - 3}l4 3l-4 3` : `M${x - 3} ${y - dy + 4}l3 -4l3 4`;
  return drawn("path", { class: "grain", d: `M${x - dx} ${y + dy}L${x + dx} ${y - dy}${head}` });
}

function fitted(name: string, room: number): string {
  const most = Math.floor(room / 5.6);
  return name.length <= most ? name : most < 3 ? "" : `${name.slice(0, most - 1)}…`;
}
