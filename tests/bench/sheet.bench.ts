/**
 * The practice workbook recalculating 10,000 rows: our look-up a row, the same as one column, and the formula that people
 * write by hand for the closest size. Needs dist/: run `npm run build` first.
 */
import { DIST, loadClient, openBook } from "../practice/office";
import type { BenchRow } from "./row";
import { trackerRows } from "./tracker";

const ROWS = 10_000;
/** Ten places by twelve sizes, invented: sizes 1 to 12, each place in even steps. */
const sizes = Array.from({ length: 12 }, (_, index) => index + 1);
const places = ["Bust", "Waist", "Hip", "Neck", "Shoulder", "Upper arm", "Wrist", "Thigh", "Knee", "Back waist length"];
const chart = [["Size", ...sizes], ...places.map((place, row) => [place, ...sizes.map((size) => 30 - row * 2 + size)])];

const forms: Readonly<Record<"byHand" | "row" | "column", (row: number) => string>> = {
  byHand: (row) => `=INDEX($B$1:$M$1,MATCH(MIN(ABS($B$2:$M$2-O${row})),ABS($B$2:$M$2-O${row}),0))`,
  row: (row) => `=SEW.SIZEMATCH($A$1:$M$11,"bust",O${row})`,
  column: () => `=SEW.SIZEMATCH($A$1:$M$11,"bust",O1:O${ROWS})`,
};

/** Milliseconds from an edit of the chart to the last answer. */
async function recalculation(form: keyof typeof forms): Promise<number> {
  const book = openBook({ functions: DIST });
  const sheet = book.book.Worksheets.GetActiveWorksheet();
  sheet.GetRange("A1:M11").Values = chart;
  sheet.GetRange(`O1:O${ROWS}`).Values = Array.from({ length: ROWS }, (_, index) => [31 + (index % 120) / 10]);
  const rows = form === "column" ? 1 : ROWS;
  sheet.GetRange(`P1:P${rows}`).Formulas = Array.from({ length: rows }, (_, index) => [forms[form](index + 1)]);
  await book.book.calculation.settled();
  const began = performance.now();
  sheet.GetRange("B2").Values = [[30.5]];
  await book.book.calculation.settled();
  const passed = performance.now() - began;
  const last = (await book.values(`P${ROWS}`))[0]![0];
  if (typeof last !== "number") throw new Error(`${form}: the last row shows ${String(last)}`);
  await book.dispose();
  return passed;
}

export async function bench(): Promise<BenchRow[]> {
  loadClient();
  const byHand = await recalculation("byHand");
  const row = await recalculation("row");
  const column = await recalculation("column");
  return [
    { name: "10,000 closest sizes by hand, INDEX/MATCH/MIN/ABS", value: byHand / 1000, unit: "s" },
    {
      name: "10,000 rows of SIZEMATCH, times faster than the formula by hand",
      value: byHand / row,
      unit: "×",
      wanted: "≥ 2",
    },
    { name: "10,000 in one column call of SIZEMATCH, times faster", value: byHand / column, unit: "×", wanted: "≥ 10" },
    ...(await trackerRows()),
  ];
}
