import { formatNotion, type NotionTotals } from "../../fabric/notions";
import type { CellBlock, PlannedCell, SheetPlan } from "../plan";
import { titleBlocks } from "../tracker";

/** A box to tick with a pen, or to type over. */
export const TICK = "☐";

/**
 * Notions to buy, a line each with the projects they are for; below them the lines that nobody can add up, as they
 * stand. Nothing at all where there are none.
 *
 * @param row the first row, counted from 0
 * @param projects the column in which the projects stand
 */
export function notionsBlocks({ totals, unread }: NotionTotals, row: number, projects: number): CellBlock[] {
  const blocks: CellBlock[] = [];
  let at = row;
  const part = (title: string, heading: string, lines: readonly (readonly [what: string, who: string])[]): void => {
    if (lines.length === 0) return;
    const cells = (read: (line: readonly [string, string]) => PlannedCell): PlannedCell[][] =>
      lines.map((line) => [read(line)]);
    blocks.push(
      { row: at, column: 0, cells: [[title]], format: "text", style: "total" },
      { row: at + 1, column: 0, cells: [["", heading]], format: "text", style: "heading" },
      { row: at + 1, column: projects, cells: [["For"]], format: "text", style: "heading" },
      { row: at + 2, column: 0, cells: cells(() => TICK), format: "text" },
      { row: at + 2, column: 1, cells: cells(([what]) => what), format: "text" },
      { row: at + 2, column: projects, cells: cells(([, who]) => who), format: "text" },
    );
    at += lines.length + 3;
  };
  part(
    "Notions",
    "What",
    totals.map((total) => [formatNotion(total), total.projects.join(", ")]),
  );
  part(
    "Notions not added up",
    "As they stand",
    unread.map(({ project, text }) => [text, project]),
  );
  return blocks;
}

/**
 * The notions on a sheet of their own, plain values of one day, to print or take along; one page wide.
 *
 * @param date the day, as it is to be read: "14 March 2026"
 * @example notionsSheet(totals, "14 March 2026").sheet //=> "Notions 14 March 2026"
 */
export function notionsSheet(totals: NotionTotals, date: string): SheetPlan {
  const title = `Notions, ${date}`;
  const intro = [`As things stood on ${date}: plain values that no longer change.`];
  return {
    sheet: `Notions ${date}`.slice(0, 31).trim(),
    blocks: [...titleBlocks(title, intro), ...notionsBlocks(totals, 3, 2)],
    tables: [],
    widths: [9, 34, 50],
    print: "upright",
  };
}
