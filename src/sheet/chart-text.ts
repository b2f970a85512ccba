import type { ChartTable } from "../chart/model";
import { formatFraction } from "../length/format";
import { chartSheet } from "./chart-sheet";
import type { PlannedCell } from "./plan";

/**
 * Charts as tab-separated text, laid out as their sheet is: what a person gets who copies the sheet, and what
 * `readCharts` reads back unchanged. Lengths in inches and yards are fractions.
 *
 * @example chartText([table]).split("\n")[1] //=> "Measurement\tUnit\t12\t14"
 */
export function chartText(tables: readonly ChartTable[]): string {
  const { blocks, tables: plans } = chartSheet("Chart", tables).plan;
  return plans
    .flatMap((plan, index) => {
      const caption = blocks[index + 1]!.cells.map((line) => line.map(cellText).join("\t"));
      const headings = plan.columns.map(({ heading }) => heading).join("\t");
      const rows = plan.rows.map((line) =>
        line.map((cell, column) => cellText(cell, plan.columns[column]!.format)).join("\t"),
      );
      return [...caption, headings, ...rows, ""];
    })
    .join("\n");
}

function cellText(cell: PlannedCell, format: unknown): string {
  if (typeof cell !== "number") return cell === null ? "" : String(cell);
  const fraction = format === "fraction" && Number.isInteger(cell * 16) ? formatFraction(cell, 16) : undefined;
  return fraction?.ok ? fraction.value : String(cell);
}
