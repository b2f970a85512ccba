/** One amount of cloth for all sizes, said in a sentence. */
import { plainText, type LengthUnit } from "../../length";
import type { Row } from "./cell";
import { isNotion, readFabricLabel, readViews } from "./fabric-label";
import type { FabricState } from "./fabric-rows";
import { highOf, readFigure } from "./figures";
import type { FabricRecord, Reading } from "./record";
import { readWidths } from "./widths";

const AMOUNT =
  /(?<![\d/.,])(\d{1,2} \d{1,2}\/\d{1,2}|\d{1,2}\/\d{1,2}|\d{1,2}(?:[.,]\d{1,3})?) ?(yds?\b|yards?\b|m\b|metres?\b|meters?\b|mtrs?\b|mètres?\b|metros?\b|metri\b|metrów\b)/gi;

const NAMED_SIZES = /\bsizes? ?\d|\bgr\. ?\d|taille ?\d/i;

/** Whether the words before an amount hold another, or name sizes: then it is not for all of the cloth or all sizes. */
export const isPartly = (label: string): boolean => {
  const plain = plainText(label);
  // "Gr. 36" is a size, although 36 is a width too.
  return NAMED_SIZES.test(plain) || (readWidths(label)?.rest ?? plain).search(AMOUNT) >= 0;
};

/** "Interfacing A, B - 7/8 yd of 20\" to 25\" fusible": one amount for all sizes, in a sentence. */
export function fabricSentence(row: Row, text: string, state: FabricState): Reading[] | null {
  if (text.length > 160 || (isNotion(text) && !/interfacing|lining|fabric|stoff/i.test(text))) return null;
  const plain = plainText(text);
  const amounts = [...plain.matchAll(AMOUNT)];
  const isPair = amounts.length === 2 && amounts[0]![2]!.toLowerCase()[0] !== amounts[1]![2]!.toLowerCase()[0];
  if (amounts.length !== 1 && !isPair) return null;
  const rest = amounts.reduce((left, match) => left.replace(match[0], " "), plain);
  // Figures beside the amount are those of other sizes.
  const { rest: unseen } = readViews(readWidths(rest)?.rest ?? rest);
  if (NAMED_SIZES.test(rest) || /(?<![\d/.,])\d[\d/.,]* +\d/.test(unseen)) return null;
  const said = readFabricLabel(rest);
  const isCloth = (said.part !== null && said.partKnown) || said.widths !== null;
  if (!isCloth || (state.kind !== "fabric" && !(said.part !== null && said.partKnown))) return null;
  const header = state.header!;
  const { views } = said.views ? said : readViews(rest);
  const from = state.previous?.sort === "fabric" ? state.previous : null;
  if (views) state.views = views;
  if (views && views !== "all") views.forEach((view) => state.viewsNamed.add(view));
  return amounts.map((match): FabricRecord => {
    const unit: LengthUnit = /^y/i.test(match[2]!) ? "yd" : "m";
    const reading = readFigure(match[1]!);
    const value = reading.kind === "figure" ? highOf(reading.value) : null;
    return {
      sort: "fabric", header, label: text.slice(0, 120), line: row.line, views: views ?? state.views ?? from?.views ?? [""],
      part: said.part ?? state.part ?? "main", widths: said.widths ?? state.widths, nap: said.nap, unit,
      figures: header.sizes.map(() => value), cells: header.sizes.map(() => row.cells[0]!),
    };
  }); // prettier-ignore
}
