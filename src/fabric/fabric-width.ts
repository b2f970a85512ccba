import { LARGEST } from "../chart/cell";
import { widthUnitOf } from "../chart/cells-fabric";
import type { FabricUnit } from "../chart/model";
import { clean, convert, formatLength, inUnit, lengthIn, roundUp, type Length } from "../length";
import { answer, refuse, type Result } from "../problem";
import { amountFault } from "./amount";
import { fromYards, widthChartFigure, widthColumn } from "./width-chart";

export interface FabricWidthOptions {
  /** What the shop cuts by, in `unit`: 1/8 yd or 0.1 m unless given. */
  readonly step?: number;
  /** The unit of the length. Unless given, yards when both widths are in inches, else metres. */
  readonly unit?: FabricUnit;
}

/** The amount on the other width, and the rule it comes from, so that a note can name it. */
export interface WidthChange {
  /** In `unit`, rounded up to the step. */
  readonly length: number;
  readonly unit: FabricUnit;
  /** "same": the widths count as one; "chart": a printed row; "chart below": the area gave less than the row below. */
  readonly rule: "same" | "chart" | "area" | "chart below";
}

/**
 * How much cloth the same pattern needs on another width: the printed conversion chart's figure where it has the row,
 * else the same area, never less than the chart's nearest row below. Always rounded up to what the shop cuts.
 *
 * A width is a bare number (inches up to 80, else centimetres) or a length with its unit. One-way cloth, sleeves cut in
 * one with the body or a large difference in width want 1/4 yd more: that is for the person to decide and is not in it.
 *
 * Source: the chart of width-chart.ts, and its note for the 1/4 yd. The area rule between rows: common practice, no source.
 *
 * @example fabricWidth(2, 60, 45, { step: 0.125 }) //=> { ok: true, value: 2.75 }
 */
export function fabricWidth(
  length: number,
  from: number | Length,
  to: number | Length,
  options: FabricWidthOptions = {},
): Result<number> {
  const change = widthChange(length, from, to, options);
  return change.ok ? answer(change.value.length) : change;
}

/**
 * The same with the rule that gave it.
 *
 * @example widthChange(1.375, 54, 36) //=> { ok: true, value: { length: 2, unit: "yd", rule: "chart" } }
 */
export function widthChange(
  length: number,
  from: number | Length,
  to: number | Length,
  options: FabricWidthOptions = {},
): Result<WidthChange> {
  const widths = [from, to].map((width) => (typeof width === "number" ? bareWidth(width) : width));
  for (const [index, width] of widths.entries()) {
    if (width.value > LARGEST) return refuse("excelDate", { text: String(width.value) });
    if (!(width.value > 0))
      return refuse("badClothWidth", {
        text: formatLength(width.value, typeof [from, to][index] === "number" ? null : width.unit),
      });
  }
  const fault = amountFault(length, "A length of fabric", "a length of fabric");
  if (fault) return fault;
  const [given, wanted] = widths as [Length, Length];
  const unit = options.unit ?? (given.unit === "in" && wanted.unit === "in" ? "yd" : "m");
  const step = options.step ?? (unit === "yd" ? 0.125 : 0.1);
  const { exact, rule } = change(length, given, wanted, unit);
  const bought = roundUp(exact, step);
  return bought.ok ? answer({ length: bought.value, unit, rule }) : bought;
}

function change(
  length: number,
  from: Length,
  to: Length,
  unit: FabricUnit,
): { exact: number; rule: WidthChange["rule"] } {
  const [column, wanted] = [widthColumn(from), widthColumn(to)];
  if (column !== undefined && column === wanted) return { exact: length, rule: "same" };
  const area = clean((length * inUnit(from, "cm")) / inUnit(to, "cm"));
  if (column === undefined || wanted === undefined) return { exact: area, rule: "area" };
  const printed = widthChartFigure(convert(length, unit, "yd"), column, wanted);
  if (printed === undefined) return { exact: area, rule: "area" };
  const figure = fromYards(printed.yards, unit);
  if (printed.exact) return { exact: figure, rule: "chart" };
  return area < figure ? { exact: figure, rule: "chart below" } : { exact: area, rule: "area" };
}

/** No cloth is sold under 80 cm or over 80 in. */
const bareWidth = (width: number): Length => lengthIn(width, widthUnitOf(width));
