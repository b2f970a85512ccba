import { garmentNames } from "../../fit/read-garment";
import type { PlannedCell, SheetPlan } from "../plan";
import { titleBlocks, type Tracker } from "../tracker";
import { decided, NO_CHART, sizeFormula, sumOf, uncounted, unlessBlank } from "./formulas";

const OWNED = "yes";
const NOT_OWNED = `(WishList[Owned]<>"${OWNED}")`;
const KNOWN = decided("WishList[Owned]");

/** Patterns to collect for later, and what each would cost today. */
export const wishList: Tracker = {
  key: "wishList",
  sheet: "Wish list",
  table: "WishList",
  intro: ["Patterns to keep an eye on. Type what you know; price today, size, envelope and search words follow."],
  totals: [
    {
      label: "Not owned yet, at today's prices",
      formula: sumOf("WishList[Price today]", `${NOT_OWNED}*${KNOWN}`),
      format: "money",
      remark: uncounted(
        ["WishList[Pattern]", "WishList[Price]"],
        `ISNUMBER(WishList[Price today])*${KNOWN}`,
        NOT_OWNED,
      ),
    },
  ],
  columns: [
    {
      heading: "Pattern",
      format: "text",
      note: "As you call it; its charts go into the index under the same name.",
      width: 26,
    },
    { heading: "Maker", format: "text", width: 16 },
    { heading: "Number", format: "text", width: 10 },
    {
      heading: "Details",
      format: "text",
      note: "Design details with commas between them: fitted, patch pockets, collar.",
      width: 34,
    },
    { heading: "Garment", format: "text", validation: { list: garmentNames(), open: true }, width: 16 },
    { heading: "Person", format: "text", note: "A heading of the Measurements sheet.", width: 12 },
    { heading: "Price", format: "money", width: 10 },
    {
      heading: "Percent off",
      format: "percent",
      note: "What is taken off: 40%.",
      validation: { from: 0, to: 1 },
      width: 12,
    },
    { heading: "Sale price", format: "money", note: "A price on offer; the lower of the two counts.", width: 12 },
    {
      heading: "Price today",
      format: "money",
      formula: unlessBlank(["Price"], "SEW.SALEPRICE([@Price],[@[Percent off]],[@[Sale price]])"),
      width: 13,
    },
    {
      heading: "Size groups",
      format: "text",
      note: "The envelopes it is sold in, with commas between them: 6-12, 14-20.",
      width: 16,
    },
    {
      heading: "Size to cut",
      format: "text",
      note: "A size or a blend (12+16) typed over it stays.",
      formula: sizeFormula,
      width: 13,
    },
    {
      heading: "Envelope",
      format: "text",
      note: "The envelope or envelopes to buy for that size.",
      formula: `=IF(OR([@[Size groups]]="",[@[Size to cut]]="",[@[Size to cut]]="${NO_CHART}"),"",SEW.ENVELOPE([@[Size groups]],[@[Size to cut]]))`,
      width: 14,
    },
    {
      heading: "Search words",
      format: "text",
      note: "To look for finished garments of this pattern.",
      formula: unlessBlank(["Number"], "SEW.TAGS([@Maker],[@Number])"),
      width: 20,
    },
    {
      heading: "Owned",
      format: "text",
      validation: { list: [OWNED, "no"] },
      emphasis: { when: `=[@Owned]="${OWNED}"`, tone: "quiet" },
      width: 9,
    },
  ],
  needs: ["measurements", "settings"],
  needsIndex: true,
  print: "lying",
};

/** The sheet that finds patterns of the wish list by their details. */
export const FIND_SHEET = "Find by detail";
const WANTED = { row: 3, column: 1 } as const;
const FOUND_ROW = 7;

/**
 * Two cells to type in and one FILTER below them. An empty details cell gives nothing to compare, so that the test asks
 * for =TRUE.
 *
 * @param wanted what stands in the first cell to begin with
 */
export function findSheet(wanted: PlannedCell = "pockets", expected = 6): SheetPlan {
  const label = (row: number, text: string) =>
    ({ row, column: 0, cells: [[text]], format: "text", style: "total" }) as const;
  const input = (row: number, cell: PlannedCell) =>
    ({ row, column: WANTED.column, cells: [[cell]], format: "text", style: "input" }) as const;
  const has = 'SEW.HASDETAILS(WishList[Details],$B$4,$B$5="yes")';
  const none = '"Nothing on the wish list has that."';
  const empty = 'IF(SUMPRODUCT(1-ISBLANK(WishList[Details]))=0,"No pattern on the wish list has details yet."';
  const formula = `=IF($B$4="","Write a detail above.",${empty},FILTER(WishList[[Pattern]:[Details]],IFERROR(${has}=TRUE,FALSE),${none})))`;
  return {
    sheet: FIND_SHEET,
    blocks: [
      ...titleBlocks(FIND_SHEET, [
        "Patterns of the wish list by what they look like, not by what the catalogue calls them.",
      ]),
      label(WANTED.row, "Details wanted"),
      input(WANTED.row, wanted),
      label(WANTED.row + 1, "All of them?"),
      input(WANTED.row + 1, "no"),
      {
        row: FOUND_ROW - 1,
        column: 0,
        cells: [["Pattern", "Maker", "Number", "Details"]],
        format: "text",
        style: "heading",
      },
      { row: FOUND_ROW, column: 0, cells: [[{ formula, spill: [expected, 4] }]] },
    ],
    tables: [],
    widths: [28, 18, 12, 42],
    frozenRows: FOUND_ROW,
    print: "upright",
  };
}
