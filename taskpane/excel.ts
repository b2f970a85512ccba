/**
 * The one door to Excel: carries out plans, takes them back, and reads what the pane needs. Everything in the folder
 * beside it serves only this file. It needs the globals `Excel` and `Office`, no page, so that a program without a
 * screen can use the same bundle (`SewExcel` on the window).
 */
export { carryOut, carryOutAll, type Carried, type CarryOptions } from "./excel/carry-out";
export { takeBack, type Receipt, type Taken } from "./excel/take-back";
export { readUnfinished, settleUnfinished, type Unfinished } from "./excel/unfinished";
export {
  readDecimalPoint,
  readFacts,
  readFormulas,
  readRange,
  readSelection,
  readShown,
  readTable,
  readUsed,
  recall,
  watch,
  type Facts,
  type RangeCells,
  type Reading,
  type TableFacts,
} from "./excel/read";
