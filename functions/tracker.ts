import {
  hasDetails as includesDetails,
  isErrorCell,
  isMissing,
  readFlagCell,
  readWordCell,
  refuse,
  salePrice as priceToday,
  shopList as listToBuy,
  shopListCells,
  type Cell,
  type ShopCell,
} from "../src/index";
import { cellsOf, isGiven, lookUp, plan, type AnswerCell } from "./cells";
import { need } from "./errors";

/**
 * What a pattern or a fabric costs today: the price less its percentage, or the sale price, whichever is lower, in whole cents.
 * @customfunction SALEPRICE SALEPRICE
 * @param price The full price.
 * @param [percentOff] What is taken off, as a percentage such as 40%.
 * @param [salePrice] The price on offer.
 * @returns The price to pay.
 */
export function salePrice(price: any[][], percentOff?: any[][], salePrice?: any[][]): any[][] {
  return lookUp([price, percentOff, salePrice], (price, percentOff, sale) =>
    need(priceToday(plain(price), plain(percentOff), plain(sale))),
  );
}

/** Error cells never get here: `lookUp` hands them on. */
const plain = (cell: Cell): string | number | boolean | null => (isErrorCell(cell) ? null : cell);

/**
 * Says whether a pattern's design details include those wanted, for use in FILTER over a wish list.
 * @customfunction HASDETAILS HASDETAILS
 * @param details The pattern's details, with commas, semicolons or line ends between them.
 * @param wanted The details wanted, written the same way; each is found as whole words inside one of the pattern's details.
 * @param [all] TRUE when every wanted detail must be there; left out, one of them is enough.
 * @returns TRUE or FALSE.
 */
export function hasDetails(details: any[][], wanted: any[][], all?: any[][]): any[][] {
  return lookUp([details, wanted, all], (details, wanted, all) => {
    const listed = readWords(details, "a list of design details");
    const asked = readWords(wanted, "a detail to look for");
    return need(includesDetails(listed, asked, need(readFlagCell(all, false))));
  });
}

/** Text with its line ends, which divide details. */
const readWords = (cell: Cell, wanted: string): string =>
  typeof cell === "string" && !isMissing(cell) ? cell : need(readWordCell(cell, wanted));

/**
 * Lists what to buy for which project: fabric, width, needed, the stash piece it is cut from, to buy, cost and a note.
 * @customfunction SHOPLIST SHOPLIST
 * @param projects The projects with their headings: Fabric, Needed and, where there are any, Project, Person, Width, Unit, To buy, Price and Status.
 * @param [stash] The fabric at home with its headings, a piece a row: Piece, Fabric, Width, Length, Unit.
 * @returns A row for each project; rows that can't be counted stand last with the reason.
 */
export function shopList(projects: any[][], stash?: any[][]): any[][] {
  return plan(() => {
    const list = need(listToBuy(cellsOf(projects), isGiven(stash) ? cellsOf(stash) : undefined));
    return shopListCells(list).map((row) => row.map(answerCell));
  });
}

const answerCell = (cell: ShopCell): AnswerCell =>
  typeof cell === "object" ? { fault: refuse("errorCell", cell).problem, error: cell.error } : cell;
