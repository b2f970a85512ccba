import { formatLength } from "../length/format";
import { convert } from "../length/length";
import { sameFigure, TOLERANCE } from "../length/round-up";
import { answer, refuse, type Result } from "../problem";
import type { Chart } from "../chart/model";
import { spoken } from "./lengths";
import { bodyFigure, hasPlace } from "./measures";
import { sizeAt } from "./size-at";
import { upward } from "./upward";
import type { BetweenSizes } from "./settings";
import * as say from "../words/cut-notes";
import { inARow } from "../words/sentences";

/** The row that the high bust is read in; in the bust's own the drafted difference is added to it first. */
export type HighBustRow = "highbust" | "bust";

export interface BustOptions {
  /** How much larger than her high bust the pattern's bust is drafted; 2 in unless given. In the chart's unit. */
  readonly draftedDifference?: number | undefined;
  /** The high bust's own row where the chart prints one, unless given. */
  readonly chartRow?: HighBustRow | undefined;
  /** From this difference upward the high bust decides; without it, always. In the chart's unit. */
  readonly threshold?: number | undefined;
  readonly between?: BetweenSizes;
  /** Whether the measures came without a unit, so that centimetres may stand against inches; so unless said. */
  readonly bare?: boolean;
}

export interface BustAdjustment {
  readonly size: string;
  /** Where the size stands among the chart's sizes from small to large, from 0. */
  readonly index: number;
  /** The pattern's own bust in that size. */
  readonly patternBust: number;
  /** The whole adjustment; below zero a small-bust adjustment. 0 where the bust itself decided. */
  readonly adjustment: number;
  /** What one front piece gets: half the front is half the adjustment. */
  readonly half: number;
  /** A to DDD on the pattern's scale; bra cups are another. "" where the chart's unit isn't known. */
  readonly patternCup: string;
  readonly decidedBy: "highBust" | "bust";
  readonly note: string;
}

/**
 * The size by the high bust, and what the bust then wants: own bust less the pattern's bust in that size. Patterns fit
 * neck, shoulders and armholes by the frame, and the bust is what is altered.
 *
 * With a threshold the bust itself decides below it (exactly at it, the high bust); then there is no adjustment. The size
 * is the closest one, a tie upward. Refuses a high bust off the chart, and a chart without a bust row.
 *
 * Source: own full bust less chart full bust of the size by high bust: a worked example (read). From 2 in difference by
 * the high bust: E-372 Principles of Pattern Alteration, a US Cooperative Extension service, 2006 (read). Both ways of
 * reading the high bust are in print. Pattern cup by the difference in inches, 2 (B) as drafted: a cup-size reference
 * (read); the ends of its scale, below A and above DDD, common practice.
 *
 * @example
 * bustAdjust(misses, 40, 36)
 * //=> { ok: true, value: { size: "16", patternBust: 38, adjustment: 2, half: 1, patternCup: "D", … } }
 */
export function bustAdjust(
  printed: Chart,
  bust: number,
  highBust: number,
  options: BustOptions = {},
): Result<BustAdjustment> {
  const chart = upward(printed);
  const { unit } = chart;
  const difference = bust - highBust;
  const row = options.chartRow ?? (hasPlace(chart, "highBust") ? "highbust" : "bust");
  const drafted = options.draftedDifference ?? convert(2, "in", unit ?? "in");
  if (unit === null && row === "bust" && options.draftedDifference === undefined)
    return refuse("chartUnitUnknown", { text: "2 in" });
  const byHighBust = options.threshold === undefined || difference >= options.threshold - TOLERANCE;
  const index = !byHighBust
    ? sizeAt(chart, "bust", bust, options)
    : row === "highbust"
      ? sizeAt(chart, "highBust", highBust, options)
      : sizeAt(chart, "bust", highBust + drafted, options);
  if (!index.ok) return index;
  const patternBust = bodyFigure(chart, "bust", index.value);
  if (!patternBust.ok) return patternBust;
  const raw = byHighBust ? bust - patternBust.value : 0;
  const adjustment = sameFigure(raw, 0) ? 0 : raw;
  const size = chart.sizes[index.value]!;
  return answer({
    size,
    index: index.value,
    patternBust: patternBust.value,
    adjustment,
    half: adjustment / 2,
    patternCup: unit === null ? "" : patternCup(convert(difference, unit, "in")),
    decidedBy: byHighBust ? "highBust" : "bust",
    note: bustNote({ chart, difference, row, drafted, byHighBust, adjustment, threshold: options.threshold }),
  });
}

const CUPS = ["A", "B", "C", "D", "DD", "DDD"];

/** Nearest whole inch, a half upward. */
function patternCup(inches: number): string {
  const step = Math.floor(inches + 0.5 + TOLERANCE);
  if (step < 1) return "below A";
  return CUPS[step - 1] ?? "above DDD";
}

interface NoteParts {
  readonly chart: Chart;
  readonly difference: number;
  readonly row: HighBustRow;
  readonly drafted: number;
  readonly byHighBust: boolean;
  readonly adjustment: number;
  readonly threshold: number | undefined;
}

function bustNote({ chart: { unit }, difference, row, drafted, byHighBust, adjustment, threshold }: NoteParts): string {
  const end = difference < -TOLERANCE ? say.swapped : "";
  if (!byHighBust) return inARow(say.byBust(formatLength(difference, unit), formatLength(threshold!, unit)), end);
  return inARow(
    threshold === undefined ? say.byHighBust : say.byHighBustFrom(formatLength(threshold, unit)),
    row === "highbust" ? say.readInHighBust : say.readInBust(formatLength(drafted, unit)),
    adjustment === 0 ? say.needsNothing : say.adjustHalfFront(adjustment > 0, spoken(Math.abs(adjustment) / 2, unit)),
    end,
  );
}
