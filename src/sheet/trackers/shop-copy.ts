import type { NotionTotals } from "../../fabric/notions";
import type { ShopRow } from "../../project/shop-list";
import { cents } from "../../project/money";
import type { CellBlock, PlannedCell, SheetPlan } from "../plan";
import { titleBlocks, type Units } from "../tracker";
import { notionsBlocks, TICK } from "./notions-copy";
import { SHOP_HEADINGS } from "./shopping-list";

const SWATCH_HEIGHT = 54;

/**
 * The shopping list to take along: plain values with the day they were true, a column to tick and room for a swatch. One
 * page wide on A4 and on Letter. What is cut from the stash stands below what is to buy, what could not be counted
 * below that: nothing is left out.
 *
 * @param date the day, as it is to be read: "14 March 2026"
 * @param notions what else is to be bought, at the end of the page
 * @example shopCopySheet(rows, "14 March 2026", "in").sheet //=> "Shop copy 14 March 2026"
 */
export function shopCopySheet(
  rows: readonly ShopRow[],
  date: string,
  units: Units,
  notions: NotionTotals = { totals: [], unread: [] },
): SheetPlan {
  const cloth = units === "in" ? "fraction" : "thousandths";
  const buy = rows.filter(({ toBuy }) => typeof toBuy === "number" && toBuy > 0);
  const cut = rows.filter(({ toBuy }) => toBuy === 0);
  const open = rows.filter(({ toBuy, fabric, note }) => toBuy === "" && (fabric !== "" || !note.startsWith("Nothing")));
  const total = buy.reduce((sum, { cost }) => sum + (typeof cost === "number" ? cents(cost) : 0), 0) / 100;
  const unpriced = buy.filter(({ cost }) => cost === "").length;
  const said = unpriced === 0 ? "all of it" : `without ${unpriced} row(s) that have no price`;
  const blocks: CellBlock[] = [
    ...titleBlocks(`Shop copy, ${date}`, [`As things stood on ${date}: plain values that no longer change.`]),
    { row: 2, column: 0, cells: [["Cost"]], format: "text", style: "total" },
    { row: 2, column: 1, cells: [[total]], format: "money", style: "total" },
    { row: 2, column: 2, cells: [[said]], format: "text", style: "note" },
  ];
  let row = 4;
  const part = (title: string, headings: readonly string[], list: readonly ShopRow[], height?: number): void => {
    if (list.length === 0) return;
    blocks.push({ row, column: 0, cells: [[title]], format: "text", style: "total" });
    blocks.push({ row: row + 1, column: 0, cells: [[...headings]], format: "text", style: "heading" });
    const at = { row: row + 2, ...(height === undefined ? {} : { height }) };
    const cells = (read: (line: ShopRow) => PlannedCell[]): PlannedCell[][] => list.map(read);
    blocks.push({ ...at, column: 0, cells: cells(() => [TICK]), format: "text" });
    blocks.push({
      ...at,
      column: 1,
      cells: cells(({ fabric, width }) => [plain(fabric), asText(width)]),
      format: "text",
    });
    blocks.push({
      ...at,
      column: 3,
      cells: cells(({ needed, toBuy }) => [toBuy === 0 || toBuy === "" ? plain(needed) : toBuy]),
      format: cloth,
    });
    blocks.push({ ...at, column: 4, cells: cells(({ cost }) => [cost]), format: "money" });
    blocks.push({
      ...at,
      column: 5,
      cells: cells(({ from, note }) => [[from, note].filter(Boolean).join(": ")]),
      format: "text",
    });
    row += list.length + 3;
  };
  part("To buy", ["", SHOP_HEADINGS[0], SHOP_HEADINGS[1], "Buy", "Cost", "For", "Swatch"], buy, SWATCH_HEIGHT);
  part("From the stash", ["", SHOP_HEADINGS[0], SHOP_HEADINGS[1], "Cut", "", "From, and for"], cut);
  part("Not counted", ["", SHOP_HEADINGS[0], SHOP_HEADINGS[1], "Needed", "", "Why"], open);
  if (buy.length + cut.length + open.length === 0)
    blocks.push({ row, column: 0, cells: [["Nothing to buy."]], format: "text" });
  blocks.push(
    ...notionsBlocks(notions, blocks.reduce((end, block) => Math.max(end, block.row + block.cells.length), 0) + 1, 5),
  );
  return {
    sheet: `Shop copy ${date}`.slice(0, 31).trim(),
    blocks,
    tables: [],
    widths: [9, 20, 9, 9, 10, 40, 16],
    print: "upright",
  };
}

/**
 * The list as it stands on the sheet, for its copy: a line for each filled row. An error shows as its text.
 *
 * @param values what the seven columns below the headings show
 */
export function readShopList(values: readonly (readonly (string | number | boolean)[])[]): ShopRow[] {
  const amount = (cell: string | number | boolean | undefined): number | "" => (typeof cell === "number" ? cell : "");
  const shown = (cell: string | number | boolean | undefined): string | number =>
    typeof cell === "number" ? cell : String(cell ?? "");
  return values
    .filter((line) => line.some((cell) => cell !== ""))
    .map(([fabric, width, needed, from, toBuy, cost, note]) => ({
      fabric: shown(fabric),
      width: shown(width),
      needed: shown(needed),
      from: String(from ?? ""),
      toBuy: amount(toBuy),
      cost: amount(cost),
      note: String(note ?? ""),
    }));
}

const plain = (cell: ShopRow["needed"]): PlannedCell => (typeof cell === "object" ? cell.error : cell);
const asText = (cell: ShopRow["width"]): PlannedCell => (typeof cell === "object" ? cell.error : String(cell));
