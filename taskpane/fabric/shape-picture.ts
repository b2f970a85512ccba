/** A piece with the edge that its widths draw, the top of the paper at the top. */
import { paneWords, type PaperPiece, type Point } from "../../src/index";
import { drawn, freshId } from "../dom";

const words = paneWords.fabric.shape;
const [WIDTH, TALLEST, SIDE] = [320, 200, 8];

/** The piece's box, and its edge where there is one. */
export function shapeDrawing({ name, width, length }: PaperPiece, outline: readonly Point[] | undefined): SVGElement {
  const by = Math.min((WIDTH - 2 * SIDE) / width, TALLEST / length);
  const left = (WIDTH - width * by) / 2;
  const at = ({ x, y }: Point) => `${left + x * by},${SIDE + (length - y) * by}`;
  const titleId = freshId("shape");
  return drawn(
    "svg",
    {
      class: "shape-picture",
      viewBox: `0 0 ${WIDTH} ${length * by + 2 * SIDE}`,
      role: "img",
      "aria-labelledby": titleId,
    },
    drawn("title", { id: titleId }, words.drawing(name, outline?.length ?? 4)),
    drawn("rect", { class: "box", x: left, y: SIDE, width: width * by, height: length * by }),
    outline ? drawn("polygon", { class: "piece", points: outline.map(at).join(" ") }) : null,
  );
}
