/** Rows that are about cloth, and the widths in front of them. */
import { plainText } from "../../length";
import { readPlace } from "../places";
import type { Row } from "./cell";
import { middle, readFigure } from "./figures";
import { kindOf, type Kind } from "./headings";
import type { IsWidth } from "./rows";
import { readWidths } from "./widths";

/** Whether a figure in front of others is a fabric width: it has a unit that they lack, or is a width cloth is sold in. */
export const isWidthFigure =
  (isFabric: boolean): IsWidth =>
  (text, next) => {
    const plain = plainText(text).replace(/[*†‡]/g, "").trim();
    const widths = isFabric ? readWidths(plain) : null;
    if (!widths || /[^()[\]/\s:,;-]/.test(widths.rest)) return false;
    const isWide = (widths.in ?? 18) >= 18 && (widths.cm ?? 45) >= 45;
    const mark = /"|in\b|inch|cm/i;
    if (mark.test(plain)) return isWide && (!mark.test(plainText(next)) || /m\b|yd/i.test(next));
    if (/m\b/.test(plain) && /m\b/.test(next)) return false;
    const figure = readFigure(next);
    return isWide && (figure.kind === "same" || (figure.kind === "figure" && middle(figure.value) <= 20));
  };

/** A row that is about cloth although no heading says so: it begins with a width, or with a part of cloth and a width. */
export function isFabricRow(row: Row, kind: Kind | null): boolean {
  if (kind === "fabric") return true;
  const text = plainText(row.text.slice(0, 80));
  if (kindOf(text) === "fabric" && readWidths(text) !== null) return true;
  const width = WIDTH_FIRST.exec(text);
  // "80cm 83cm 87cm" is a row of girths without its label.
  if (!width || /^\W*\d[\d./]*(?: \d\/\d)? ?(?:"|cm|in\b)/i.test(text.slice(width[0].length))) return false;
  return readPlace(text.replace(/\d.*/, ""), null) === null;
}

/** A width, after a view or a part of cloth. */
const WIDTH_FIRST =
  /^(?:[A-L](?:, ?[A-L])*[ :]+)?(?:(?:view|dress|main|lining|contrast|interfacing|fabric)\b\D{1,20})?\d{2,3}(?: ?[/-] ?\d{2,3})? ?(?:"|cm|in\b)/i;
