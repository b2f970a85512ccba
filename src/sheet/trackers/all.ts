import { PROJECT_HEADINGS, STASH_HEADINGS } from "../../project/shop-rows";
import { indexPlan, INDEX_CELL, INDEX_SHEET } from "../chart-index";
import { isNamed } from "../names";
import { isFormula, type SheetPlan, type WorkbookPlan } from "../plan";
import { trackerColumns, trackerSheet, type HerTable, type Tracker, type TrackerKey, type Units } from "../tracker";
import { CAUTIONS_SHEET, cautionsSheet } from "./cautions";
import { fitNotes } from "./fit-notes";
import { garments } from "./garments";
import { measurements, measurementsSheet } from "./measurements";
import { projects } from "./projects";
import { settings, settingsSheet } from "./settings";
import { shoppingList, shoppingListSheet } from "./shopping-list";
import { stash } from "./stash";
import { FIND_SHEET, findSheet, wishList } from "./wish-list";

/** The trackers that are tables, by key; the shopping list is one formula. */
export const trackers: Readonly<Record<Exclude<TrackerKey, "shoppingList">, Tracker>> = {
  measurements,
  garments,
  wishList,
  projects,
  stash,
  fitNotes,
  settings,
};

/** Every sheet that can be set up, in the order in which the pane offers them. */
export const trackerKeys: readonly TrackerKey[] = [
  "measurements", "garments", "wishList", "projects", "stash", "shoppingList", "fitNotes", "settings",
]; // prettier-ignore

/** The name of a tracker's sheet. */
export const trackerSheetName = (key: TrackerKey): string =>
  (key === "shoppingList" ? shoppingList : trackers[key]).sheet;

const needsOf = (key: TrackerKey): readonly TrackerKey[] =>
  (key === "shoppingList" ? shoppingList : trackers[key]).needs;
const needsIndex = (key: TrackerKey): boolean => key !== "shoppingList" && trackers[key].needsIndex === true;

/**
 * The sheets that a choice comes to: what its formulas look at comes first, and what is there already is left out. A
 * tracker is there when its table is, whatever she calls the sheet; a sheet of its name without the table is not one, so
 * that writing it is refused with the sheet's name. Without `tables` the sheets' names decide.
 *
 * @param sheets the names of the workbook's sheets
 * @param tables the names of its tables
 * @example trackersToMake(["shoppingList"], []) //=> ["measurements", "settings", "projects", "stash", "shoppingList"]
 */
export function trackersToMake(
  wanted: readonly TrackerKey[],
  sheets: readonly string[],
  tables?: readonly string[],
): TrackerKey[] {
  const list: TrackerKey[] = [];
  const add = (key: TrackerKey): void => {
    if (list.includes(key) || isTrackerThere(key, sheets, tables)) return;
    needsOf(key).forEach(add);
    list.push(key);
  };
  wanted.forEach(add);
  return list;
}

/** Whether a tracker is there, as `trackersToMake` has it. */
export const isTrackerThere = (key: TrackerKey, sheets: readonly string[], tables?: readonly string[]): boolean =>
  tables && key !== "shoppingList" ? isNamed(trackers[key].table, tables) : isNamed(trackerSheetName(key), sheets);

/**
 * What must be written to set up the chosen sheets, each once: in two steps, because formulas that look into the pattern
 * index want its name to be there. Empty when all of them are there already. A wish list brings the sheet that finds by
 * detail with it, projects the cautions.
 */
export function trackersPlan(
  wanted: readonly TrackerKey[],
  there: readonly string[],
  units: Units,
  tables?: readonly string[],
): WorkbookPlan[] {
  const keys = trackersToMake(wanted, there, tables);
  const index = keys.some(needsIndex) && !isNamed(INDEX_SHEET, there) ? [emptyIndexPlan()] : [];
  const sheets = keys.map((key) => newTrackerSheet(key, units));
  if (keys.includes("wishList") && !isNamed(FIND_SHEET, there)) sheets.push(findSheet());
  if (keys.includes("projects") && !isNamed(CAUTIONS_SHEET, there)) sheets.push(cautionsSheet());
  const [first] = wanted.filter((key) => keys.includes(key));
  return first === undefined ? [] : [...index, { sheets, show: trackerSheetName(first) }];
}

/**
 * The columns that her own table lacks to be one of ours, and before them the sheets that their formulas look at, as far
 * as they are missing. Empty when no column is missing.
 *
 * @param there the workbook's sheets and tables
 */
export function columnsPlan(
  key: Exclude<TrackerKey, "shoppingList">,
  her: HerTable & { readonly sheet: string },
  units: Units,
  there: { readonly sheets: readonly string[]; readonly tables: readonly string[] },
): WorkbookPlan[] {
  const plan = trackerColumns(trackers[key], her, units, { sameAs: otherNames(key, her.headings) });
  if (plan.columns.length === 0) return [];
  const last = { columns: [plan], show: her.sheet };
  if (!plan.columns.some(({ cell }) => cell !== null && isFormula(cell))) return [last];
  const needed = trackersPlan(trackers[key].needs, there.sheets, units, there.tables);
  const hasIndex = [...needed.flatMap(({ sheets = [] }) => sheets.map(({ sheet }) => sheet)), ...there.sheets];
  const index = needsIndex(key) && !isNamed(INDEX_SHEET, hasIndex) ? [emptyIndexPlan()] : [];
  return [...index, ...needed, last];
}

/** Columns of hers that stand for ours, by our headings: "Cloth" for Fabric. Those with a formula are added all the same. */
function otherNames(key: TrackerKey, headings: readonly string[]): Record<string, string> {
  const words = key === "projects" ? PROJECT_HEADINGS : key === "stash" ? STASH_HEADINGS : {};
  const ours = key === "shoppingList" ? [] : trackers[key].columns;
  const pairs = Object.values<readonly string[]>(words).flatMap(([first, ...others]) => {
    const plain = ours.some(({ heading, formula }) => heading === first && formula === undefined);
    const own = others.find((other) => isNamed(other, headings) && !ours.some(({ heading }) => heading === other));
    return plain && first !== undefined && own !== undefined && !isNamed(first, headings)
      ? [[first, own] as const]
      : [];
  });
  return Object.fromEntries(pairs);
}

/** A tracker's sheet as it is set up, without any rows of hers. */
export function newTrackerSheet(key: TrackerKey, units: Units): SheetPlan {
  if (key === "shoppingList") return shoppingListSheet(units);
  if (key === "measurements") return measurementsSheet(units);
  if (key === "settings") return settingsSheet(units);
  return trackerSheet(trackers[key], units);
}

/** The pattern index before there is a pattern: its headings and its name, so that formulas have something to look at. */
export function emptyIndexPlan(): WorkbookPlan {
  const { sheets = [], ...rest } = indexPlan([], 0, false);
  return {
    ...rest,
    sheets: sheets.map((sheet) => ({
      ...sheet,
      blocks: sheet.blocks.filter(({ row }) => row !== INDEX_CELL.row),
    })),
  };
}
