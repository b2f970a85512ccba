import type { CellFormat, SheetPlan } from "../plan";
import { titleBlocks, type Tracker, type Units } from "../tracker";

export const SHOPPING_SHEET = "Shopping list";
export const SHOP_HEADINGS = ["Fabric", "Width", "Needed", "From the stash", "To buy", "Cost", "For, and why"] as const;

/** Where the one formula stands, counted from 0, and the cells that may hold its answer. */
export const SHOP_CELL = { row: 6, column: 0 } as const;
const FIRST = SHOP_CELL.row + 1;
/** More projects than a person has; the totals look no further. */
const LAST = 1000;
const column = (letter: string): string => `${letter}${FIRST}:${letter}${LAST}`;
const isRow = `(${column("G")}<>"")*(LEFT(${column("G")},14)<>"Nothing to buy")`;

/** It has no table of its own: one formula fills it from Projects and Stash. */
export const shoppingList: Pick<Tracker, "key" | "sheet" | "needs"> = {
  key: "shoppingList",
  sheet: SHOPPING_SHEET,
  needs: ["projects", "stash"],
};

/**
 * The shopping list: one formula with a line for each project, its headings and totals above.
 *
 * @param rows how many lines are expected, for the room that must be empty
 */
export function shoppingListSheet(units: Units, rows = 12): SheetPlan {
  const cloth: CellFormat = units === "in" ? "fraction" : "thousandths";
  // Where the list itself is an error there is nothing to add up: no cost then, and not a cost of 0.
  const whole = `LEFT(A${FIRST},0)`;
  const money = `=IF(${whole}="",SUM(IFERROR(${column("F")}*1,0)))`;
  const uncounted = `SUMPRODUCT(${isRow}*(1-ISNUMBER(${column("E")})))`;
  const unpriced = `SUMPRODUCT(${isRow}*ISNUMBER(${column("E")})*(1-ISNUMBER(${column("F")})))`;
  const remark =
    `=IFERROR(${whole}&IF(${uncounted}=0,"Every row is counted",${uncounted}&" row(s) could not be counted: they stand last")` +
    `&IF(${unpriced}=0,".","; "&${unpriced}&" row(s) have no price."),"Nothing is counted: the list below has an error, point at it to see why.")`;
  const total = (row: number, label: string) =>
    ({ row, column: 0, cells: [[label]], format: "text", style: "total" }) as const;
  const formats: readonly CellFormat[] = ["general", "general", cloth, "general", cloth, "money", "general"];
  return {
    sheet: SHOPPING_SHEET,
    blocks: [
      ...titleBlocks(SHOPPING_SHEET, [
        "One formula reads Projects and Stash. Each project is cut from one stash piece that is long and wide enough, or bought; pieces are never added together. The note names the unit.",
      ]),
      total(2, "Cost of what is to buy"),
      { row: 2, column: 1, cells: [[{ formula: money }]], format: "money", style: "total" },
      total(3, "Counted"),
      { row: 3, column: 1, cells: [[{ formula: remark }]], style: "note" },
      { row: SHOP_CELL.row - 1, column: 0, cells: [[...SHOP_HEADINGS]], format: "text", style: "heading" },
      ...formats.map((format, at) => ({
        row: SHOP_CELL.row,
        column: at,
        cells: Array.from({ length: rows + 50 }, () => [null]),
        format,
      })),
      {
        ...SHOP_CELL,
        cells: [[{ formula: "=SEW.SHOPLIST(Projects[#All],Stash[#All])", spill: [rows, SHOP_HEADINGS.length] }]],
      },
    ],
    tables: [],
    widths: [24, 11, 10, 22, 10, 11, 70],
    frozenRows: SHOP_CELL.row,
    print: "lying",
  };
}
