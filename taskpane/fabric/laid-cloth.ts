/** What one cloth shows: how much to buy, how good that is, what is left of her own, the drawing. */
import {
  formatLength,
  layoutPicture,
  paneWords,
  roundUp,
  sentence,
  widthUnitOf,
  type Cloth,
  type LayoutSearch,
  type LengthUnit,
  type PiecesOfFabric,
} from "../../src/index";
import { element } from "../dom";
import { layoutDrawing } from "./layout-picture";

const words = paneWords.fabric;
/** What the shop cuts by. */
const STEPS = { yd: 0.125, m: 0.1 } as const;

/** One cloth of the list with its search. */
export interface Lay {
  readonly fabric: PiecesOfFabric;
  readonly search: LayoutSearch;
}
export interface LaidParts {
  readonly ok: boolean;
  readonly said: string;
  readonly parts: readonly HTMLElement[];
}

/** @param own what she has of it, in `unit`; 0 for nothing */
export function laidCloth({ fabric, search }: Lay, cloth: Cloth, unit: "in" | "cm", own: number): LaidParts {
  const layout = search.layout();
  const picture = layoutPicture(layout, cloth);
  const named = (said: string): string => (fabric.name === "" ? said : `${fabric.name}: ${said}`);
  if (layout.length === null || !picture) {
    const said = named(layout.problems.map(sentence).join(" "));
    return { ok: false, said, parts: [element("p", { class: "warning-box" }, said)] };
  }
  const inUnit = (value: number, shown: LengthUnit = unit) => formatLength(value, shown);
  const [buyUnit, by] = unit === "in" ? (["yd", 36] as const) : (["m", 100] as const);
  const buy = roundUp(layout.length / by, STEPS[buyUnit]);
  const said = named(words.layoutBuy(buy.ok ? inUnit(buy.value, buyUnit) : inUnit(layout.length)));
  // "At most" is rounded up.
  const over = Math.ceil(picture.overBound * 1000) / 10;
  const other = unit === "in" ? "cm" : "in";
  const sentences = [
    words.layoutExact(inUnit(layout.length)),
    layout.proved ? words.proved : over > 0 ? words.bound(over.toFixed(1)) : words.shortest,
    ...(search.finished && !layout.proved ? [words.nothingShorter] : []),
    layout.by === "boxes" ? words.byBoxes : words.byOutlines,
    words.tries(layout.tries),
    ...(own > 0
      ? [
          own >= layout.length
            ? words.ownLeft(inUnit(own - layout.length))
            : words.ownShort(inUnit(layout.length - own)),
        ]
      : []),
    ...layout.problems.map(sentence),
  ];
  const parts = [
    element("p", { class: "headline" }, said),
    widthUnitOf(cloth.width) === unit
      ? null
      : element("p", { class: "warning-box" }, words.oddWidth(inUnit(cloth.width), other)),
    element("p", {}, sentences.join(" ")),
    layoutDrawing(picture, unit, fabric.name || words.piecesTable),
  ];
  return { ok: true, said, parts: [element("div", { class: "printed" }, ...parts)] };
}
