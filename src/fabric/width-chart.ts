import { convert, inUnit, TOLERANCE, type Length } from "../length";

/**
 * The lengths that one pattern needs on cloth of different widths, in eighths of a yard: each row is one pattern, each
 * column one width.
 *
 * Source: the printed chart of yardage by fabric width, as reprinted on two public pages that agree on 95 of its 96
 * cells (the 96th is a plain misprint on one of them). That it comes from a US land-grant extension service is from memory.
 */
const ROWS: readonly (readonly number[])[] = [
  [14, 12, 12, 11, 10, 9, 8, 7],
  [16, 14, 14, 13, 12, 11, 10, 9],
  [18, 16, 16, 14, 13, 12, 11, 10],
  [20, 18, 18, 17, 14, 14, 13, 12],
  [23, 20, 20, 18, 16, 15, 14, 13],
  [25, 22, 22, 20, 18, 16, 15, 14],
  [27, 24, 23, 22, 19, 18, 16, 15],
  [30, 26, 25, 23, 21, 19, 18, 17],
  [34, 28, 27, 25, 22, 21, 19, 18],
  [36, 30, 29, 27, 24, 22, 21, 20],
  [38, 32, 31, 29, 26, 23, 22, 21],
  [40, 34, 33, 31, 27, 25, 23, 22],
];

/**
 * The widths that share a column, in inches and as they are sold in centimetres. The inch figures are the chart's own;
 * 90, 115, 140 and 150 cm for 36, 45, 54 and 60 in are common practice, the other centimetres are from memory.
 */
const COLUMNS: readonly { readonly inches: readonly [number, number]; readonly cm: readonly [number, number] }[] = [
  { inches: [35, 36], cm: [89, 92] },
  { inches: [39, 39], cm: [99, 100] },
  { inches: [41, 41], cm: [104, 105] },
  { inches: [44, 45], cm: [112, 115] },
  { inches: [50, 50], cm: [127, 128] },
  { inches: [52, 54], cm: [132, 140] },
  { inches: [58, 60], cm: [147, 152] },
  { inches: [66, 66], cm: [167, 168] },
];

/**
 * The chart's column for a width, counted from 0; undefined where the chart has none. 44 and 45 in are one column, and
 * so are 112 and 115 cm.
 *
 * @example widthColumn(inches(45)) //=> 3
 */
export function widthColumn(width: Length): number | undefined {
  const metric = width.unit === "cm" || width.unit === "m";
  const value = inUnit(width, metric ? "cm" : "in");
  const column = COLUMNS.findIndex(({ inches, cm }) => {
    const [low, high] = metric ? cm : inches;
    return value >= low - TOLERANCE && value <= high + TOLERANCE;
  });
  return column < 0 ? undefined : column;
}

/** What the chart says: the figure of the row, or the figure of the nearest row below, in yards. */
export interface WidthChartFigure {
  readonly yards: number;
  readonly exact: boolean;
}

/**
 * The chart's figure in column `to` for a pattern that needs `yards` in column `from`: its own row, else the nearest row
 * below it, which the true amount cannot undercut. Undefined below the first row.
 *
 * @example widthChartFigure(2, 6, 3) //=> { yards: 2.75, exact: true }
 */
export function widthChartFigure(yards: number, from: number, to: number): WidthChartFigure | undefined {
  const eighths = yards * 8;
  const row = ROWS.filter((cells) => cells[from]! <= eighths + TOLERANCE).at(-1);
  return row && { yards: row[to]! / 8, exact: Math.abs(row[from]! - eighths) <= TOLERANCE };
}

/** Yards as a number of `unit`. */
export const fromYards = (yards: number, unit: "yd" | "m"): number => convert(yards, "yd", unit);
