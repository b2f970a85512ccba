import { outlineArea } from "./outline-area";
import type { Part } from "./parts";
import { profileOf, type Profile } from "./profile";
import { STEPS } from "./steps";
import { commonStep, type StripCloth } from "./strip";
import { beyondOf, inSteps, linesOf, waysOf, type Way } from "./ways";

/** About how many columns the cloth is divided into. */
const COLUMNS = 256;
/** What is laid: a part's profiles in each way it may lie. */
export interface Shape {
  readonly ways: readonly Way[];
  readonly profiles: readonly Profile[];
  /** The height of its middle above its lowest point, for each way. */
  readonly middles: readonly number[];
  readonly area: number;
  readonly kind: string;
  readonly onFold: boolean;
}

/** A common step of the widths where one is coarse enough, so that pieces aren't rounded up needlessly. */
export function columnWidth(parts: readonly Part[], { width, gap }: StripCloth): number {
  let step = commonStep(width, gap);
  for (const { box } of parts) step = commonStep(step, box.width);
  return step * Math.max(1, Math.ceil((width + gap) / step / COLUMNS));
}

export function makeShapes(parts: readonly Part[], cloth: StripCloth, column: number, upsideDown: boolean): Shape[] {
  const known = new Map<string, Shape>();
  const { gap, width } = cloth;
  const count = Math.floor((width + gap) / column);
  return parts.map((part) => {
    const { piece, layer, box, mirrored } = part;
    const { outline } = piece;
    const kind = JSON.stringify([piece.width, piece.length, outline ?? null, layer, box.onFold, box.mayTurn, mirrored]);
    const found = known.get(kind);
    if (found) return found;
    const ways = waysOf(part, upsideDown);
    const lying = ways.map((way) => {
      const beyond = beyondOf(part, way);
      const size = way.turned ? { width: box.length, length: box.width } : box;
      const profile = profileOf(inSteps(linesOf(part, way)), column, size, {
        left: beyond.left * STEPS,
        right: beyond.right * STEPS + gap,
        bottom: beyond.bottom * STEPS,
        top: beyond.top * STEPS + gap,
      });
      return { way, profile };
    });
    const fits = lying.filter(({ profile }) => profile.columns <= count);
    const shape: Shape = {
      ways: fits.map(({ way }) => way),
      profiles: fits.map(({ profile }) => profile),
      middles: fits.map(({ profile }) => middleOf(profile)),
      area: outline ? outlineArea(outline) : piece.width * piece.length,
      kind,
      onFold: box.onFold,
    };
    known.set(kind, shape);
    return shape;
  });
}

/** The parts by falling length, width, area and box. */
export function startOrders(shapes: readonly Shape[]): number[][] {
  const sizes: ((shape: Shape) => number)[] = [
    ({ profiles }) => profiles[0]?.length ?? 0,
    ({ profiles }) => profiles[0]?.columns ?? 0,
    ({ area }) => area,
    ({ profiles }) => (profiles[0] ? profiles[0].length * profiles[0].columns : 0),
  ];
  return sizes.map((size) => shapes.map((_, i) => i).sort((a, b) => size(shapes[b]!) - size(shapes[a]!) || a - b));
}

/** How high the middle of what a profile covers is. */
function middleOf({ columns, low, high }: Profile): number {
  let [covered, moment] = [0, 0];
  for (let i = 0; i < columns; i++) {
    const here = high[i]! - low[i]!;
    covered += here;
    moment += (here * (high[i]! + low[i]!)) / 2;
  }
  return covered === 0 ? 0 : moment / covered;
}
