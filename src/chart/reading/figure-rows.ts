/** Rows of figures: as measurements or as amounts of cloth, one or two in a line. */
import { doubts } from "../../words/reading";
import { readPlace } from "../places";
import { trimMarks } from "../vocabulary/words";
import { cellOf, isFormulaLike, type Row } from "./cell";
import { readFabricLabel, readViews } from "./fabric-label";
import { isFabricRow, isWidthFigure } from "./cloth-row";
import { fabricReadings } from "./fabric-rows";
import { isPartly } from "./fabric-sentence";
import { looseCount, looseRow } from "./loose";
import { measureReadings } from "./measure-rows";
import { fitRow, type Fit, type Misfit } from "./rows";
import type { State } from "./state";

/** A row against the sizes above it, as cloth or as measurements. */
export const fitHere = (row: Row, state: State): Fit | Misfit => {
  const isFabric = state.kind === "fabric" || isFabricRow(row, state.kind);
  return fitRow(row, state.header!, isFabric, isWidthFigure(isFabric));
};

/** A row that fits its header. False when it is no row of figures after all. */
export function readFit(row: Row, fit: Fit, state: State): boolean {
  const header = state.header!;
  const label = trimMarks(fit.label, ":.…·_=|,; ");
  const unsafe = [fit.label, label].find(isFormulaLike);
  if (unsafe !== undefined) {
    state.found.error(row.line, doubts.formulaLabel(unsafe));
    header.used = true;
    return true;
  }
  const isFabric = (state.kind === "fabric" || isFabricRow(row, state.kind)) && !isMeasureIn(label, state);
  if (!isFabric && fit.single) return false;
  const readings = isFabric ? fabricReadings(row, fit, label, state) : measureReadings(row, fit, label, state);
  if (readings === null) return false;
  header.used = true;
  state.readings.push(...readings);
  state.previous = readings[0] ?? state.previous;
  return true;
}

/**
 * "BUST 32 34 36 ins  POITRINE 81 86 91 cm": one line with two rows of figures. When the first has too many or too few,
 * it is named and the second is read.
 */
export function readTwoRuns(row: Row, fit: Fit, state: State): boolean {
  const count = state.header!.columns.length;
  if (row.layout !== "spaced" || count < 2 || !/\d\D+\d/.test(fit.label)) return false;
  // "Size 8: 1/2 yd, sizes 10 12 14: 3/4 yd": the figures in front are sizes.
  if (fit.single && isPartly(fit.label)) return false;
  const isWidth = isWidthFigure(state.kind === "fabric");
  const words = fit.label.split(" ").slice(0, 60);
  for (let cut = words.length; cut > 2; cut--) {
    if (!/[\d½¼¾⅛⅜⅝⅞"″”.]$|^(?:ins?|cm|yds?|m)$/i.test(words[cut - 1]!)) continue;
    const front = words.slice(0, cut).join(" ");
    const part: Row = { ...row, text: front, cells: [cellOf(front, row.line, row.cells[0]!.column)] };
    const first = looseRow(part, count, isWidth);
    const found = looseCount(part, isWidth);
    if (!first && (found.count < Math.max(2, count - 1) || readViews(front).rest.split(/\d/).length <= 2)) continue;
    const label = first?.label ?? found.label;
    if (trimMarks(label, " -:") === "") continue;
    const behind = `${first?.trailing ?? found.trailing} ${words.slice(cut).join(" ")}`;
    const second = trimMarks(behind, ":.…·_=|/ ").replace(
      /^(?:ins?|inch(?:es)?|cms?|yds?|[m"″”])(?!\p{L})[.\s/|]*/iu,
      "",
    );
    if (first) readFit(row, { ...fit, label, values: first.values, trailing: unitOfRun(behind.trim()) }, state);
    else state.found.error(row.line, doubts.count(label, found.count, count), placeOf(label, state));
    readFit(row, { ...fit, label: first ? second : second || label }, state);
    return true;
  }
  return false;
}

const unitOfRun = (trailing: string): string => trailing.split(/[\s/|]/, 1).join("");
const placeOf = (label: string, state: State): { place?: string } => {
  const place = readPlace(label, state.measureKind);
  return place ? { place } : {};
};

/** A row of measurements under a fabric heading: a known place, and no width, part or view word of cloth. */
function isMeasureIn(label: string, state: State): boolean {
  if (state.kind !== "fabric") return false;
  const place = readPlace(readViews(label).rest, "finished");
  const { widths, part } = readFabricLabel(label);
  return (
    place !== null &&
    widths === null &&
    (part === null || !/^(?:main|lining|contrast|interfacing|trim|elastic)/.test(part))
  );
}
