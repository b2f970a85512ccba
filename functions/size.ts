import {
  bodyMeasures,
  capital,
  cellText,
  chartFrom,
  envelopes,
  isMissing,
  readMatchRule,
  readMeasureArgument,
  readOneBody,
  readPlaceCell,
  sizeByPlace as sizesOf,
  sizeCell,
  sizeColumn as columnOf,
  sizeMatchAmong,
  totalEase,
} from "../src/index";
import { cellsOf, lookUp, lookUpColumns, oneCell, plan, single } from "./cells";
import { guarded, need } from "./errors";
import { chartIn } from "./remember";

/**
 * Gives the whole column of one size: a figure for each row of the chart, in the order of the chart.
 * @customfunction SIZECOLUMN SIZECOLUMN
 * @param chart The chart with its headings, or the pattern index.
 * @param size The size, as the chart calls it; a row of sizes gives a column for each.
 * @param [pattern] The pattern's name, when the chart is the pattern index.
 * @returns A column of figures.
 */
export function sizeColumn(chart: any[][], size: any[][], pattern?: any[][]): any[][] {
  return guarded(() => {
    const source = need(chartIn(cellsOf(chart)));
    return lookUpColumns([size, pattern], (size, pattern) => need(columnOf(source, size, pattern)));
  }) as any[][];
}

/**
 * Finds the size for one place, such as bust, waist or hip.
 * @customfunction SIZEMATCH SIZEMATCH
 * @param chart The chart with its headings, or the pattern index.
 * @param place Where the tape goes, such as bust, waist or hip.
 * @param measure The body's measure there, in the unit of the chart or with its own, such as 92 cm.
 * @param [rule] The word closest, which is also used when it is left out, atleast or atmost.
 * @param [pattern] The pattern's name, when the chart is the pattern index.
 * @returns The size as the chart calls it.
 */
export function sizeMatch(
  chart: any[][],
  place: any[][],
  measure: any[][],
  rule?: any[][],
  pattern?: any[][],
): any[][] {
  return guarded(() => {
    const source = need(chartIn(cellsOf(chart)));
    return lookUp([place, measure, rule, pattern], (place, measure, rule, pattern) => {
      const charts = need(source.charts("body", pattern));
      const where = need(readPlaceCell(place, charts));
      const found = need(readMeasureArgument(measure));
      const word = need(readMatchRule(isMissing(rule) ? "" : cellText(rule)));
      const name = isMissing(pattern) ? "This range" : cellText(pattern);
      return sizeCell(need(sizeMatchAmong(charts, where, found, word, name)).size);
    });
  }) as any[][];
}

/**
 * Compares one body with a chart, place by place: place, measure, size, the chart's figure, the difference and a note.
 * @customfunction SIZEBYPLACE SIZEBYPLACE
 * @param chart The chart with its headings, or the pattern index.
 * @param body The measurements: labels such as Bust, Waist and Hip beside their figures.
 * @param [person] The heading of one person's measurements, when there are several people.
 * @param [pattern] The pattern's name, when the chart is the pattern index.
 * @returns A row for each place.
 */
export function sizeByPlace(chart: any[][], body: any[][], person?: any[][], pattern?: any[][]): any[][] {
  return plan(() => {
    const source = need(chartIn(cellsOf(chart)));
    const measured = need(readOneBody(cellsOf(body), oneCell(person, "The person")));
    const chosen = need(chartFrom(source, "body", oneCell(pattern, "The pattern"), bodyMeasures(measured)));
    return sizesOf(chosen, measured).map(({ place, measure, size, figure, difference, note }) => [
      capital(place),
      measure,
      size === null ? null : sizeCell(size),
      figure,
      difference,
      note,
    ]);
  });
}

/**
 * Finds the envelopes to buy: the fewest size groups that hold all these sizes, such as 6-12 + 14-20.
 * @customfunction ENVELOPE ENVELOPE
 * @param groups The size groups that the pattern is sold in, such as 6-12 and 14-20.
 * @param sizes The sizes that are needed: one cell, or a range of them.
 * @returns The groups, joined by a plus sign.
 */
export function envelope(groups: any[][], sizes: any[][]): any {
  return single(() => need(envelopes(cellsOf(groups).flat(), cellsOf(sizes).flat())).join(" + "));
}

/**
 * Gives the total ease: the finished garment minus the body, below zero where the garment is smaller.
 * @customfunction EASE EASE
 * @param finished The finished garment's measure.
 * @param body The body's measure at the same place.
 * @returns The ease, in the unit of the garment.
 */
export function ease(finished: any[][], body: any[][]): any[][] {
  return lookUp([finished, body], (finished, body) => {
    const garment = need(readMeasureArgument(finished, "a finished measurement"));
    return need(totalEase(garment, need(readMeasureArgument(body, "a body measurement"))));
  });
}
