import {
  bustAdjust as adjustBust,
  chartFrom,
  isMissing,
  lengthInto,
  readLengthCell,
  readMeasureArgument,
  readWordCell,
  refuse,
  sizeCell,
  type Cell,
  type Chart,
  type HighBustRow,
  type Measure,
} from "../src/index";
import { cellsOf, oneCell, plan } from "./cells";
import { need } from "./errors";
import { chartIn } from "./remember";

/**
 * Plans a bust adjustment: size by the high bust, the pattern's bust, whole adjustment, half of it for the half front piece, pattern cup, note.
 * @customfunction BUSTADJUST BUSTADJUST
 * @param chart The body chart of the pattern with its headings, or the pattern index.
 * @param bust The full bust.
 * @param highbust The high bust, above the bust and under the arms.
 * @param [draftedDifference] How much more than the high bust the pattern is drafted for; left out, 2 in.
 * @param [chartRow] Which row of the chart the high bust is read in: highbust or bust; left out, highbust if the chart has it.
 * @param [threshold] From this difference upward the high bust decides; left out, it always does.
 * @param [pattern] The pattern's name, where the chart is the pattern index.
 * @returns One row; a minus sign means a small-bust adjustment.
 */
export function bustAdjust(
  chart: any[][],
  bust: any[][],
  highbust: any[][],
  draftedDifference?: any[][],
  chartRow?: any[][],
  threshold?: any[][],
  pattern?: any[][],
): any[][] {
  return plan(() => {
    const own = need(readMeasureArgument(oneCell(bust, "The bust"), "the bust"));
    const high = need(readMeasureArgument(oneCell(highbust, "The high bust"), "the high bust"));
    const source = need(chartIn(cellsOf(chart)));
    const near = [{ place: "bust", ...own }];
    const measures = need(chartFrom(source, "body", oneCell(pattern, "The pattern"), near));
    const found = adjustBust(measures, inChart(measures, own), inChart(measures, high), {
      draftedDifference: lengthOf(measures, oneCell(draftedDifference, "The drafted difference"), "a difference"),
      chartRow: readRow(oneCell(chartRow, "The chart row")),
      threshold: lengthOf(measures, oneCell(threshold, "The threshold"), "a threshold"),
      bare: own.unit === null || high.unit === null,
    });
    const { size, patternBust, adjustment, half, patternCup, note } = need(found);
    return [[sizeCell(size), patternBust, adjustment, half, patternCup, note]];
  });
}

function inChart(chart: Chart, { value, unit }: Measure): number {
  if (unit !== null && chart.unit === null) need(refuse("chartUnitUnknown", { text: `${value} ${unit}` }));
  return lengthInto({ value, unit }, chart.unit);
}

/** A length in the chart's unit; undefined where the cell is blank. A nought is a difference too, unless it is a blank. */
const lengthOf = (chart: Chart, cell: Cell, wanted: string): number | undefined =>
  cell === null || cell === "" ? undefined : lengthInto(need(readLengthCell(cell, wanted)), chart.unit);

function readRow(cell: Cell): HighBustRow | undefined {
  if (isMissing(cell)) return undefined;
  const word = need(readWordCell(cell, "a row"));
  const row = word.toLowerCase().replace(/\s/g, "");
  return row === "bust" || row === "highbust" ? row : need(refuse("unknownRow", { text: word }));
}
