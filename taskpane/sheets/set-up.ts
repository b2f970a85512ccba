/** The sheets of the hobby: which are there, setting the others up, and adding to them. */
import {
  columnsPlan,
  dateCells,
  DATE_LABEL,
  isNamed,
  MEASUREMENTS_TABLE,
  paneWords,
  personColumn,
  refusalSentence,
  sentence,
  shopCopySheet,
  shopList,
  trackerColumns,
  trackers,
  trackersPlan,
  type NotionTotals,
  type TrackerKey,
  type Units,
} from "../../src/index";
import type { App } from "../app";
import { carryOut, carryOutAll, type Facts } from "../excel";
import { tableCells } from "../patterns";
import { freeSheet, today } from "./free-sheet";

const words = paneWords.sheets;

export async function setUp(app: App, wanted: readonly TrackerKey[], facts: Facts, units: Units): Promise<void> {
  if (wanted.length === 0) return app.say(words.chooseFirst, "warning");
  const plans = trackersPlan(
    wanted,
    facts.sheets,
    units,
    facts.tables.map(({ name }) => name),
  );
  if (plans.length === 0) return app.say(words.allThere);
  const carried = await carryOutAll(plans);
  if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
  const made = plans.flatMap(({ sheets = [] }) => sheets.map(({ sheet }) => sheet));
  app.wrote(carried.receipt, words.whatSetUp(made.length));
  app.say(words.setUp(made));
}

/** A column for a person, at the right end of the measurements. */
export async function addPerson(app: App, name: string, facts: Facts, units: Units): Promise<boolean> {
  const table = facts.tables.find((one) => one.name === MEASUREMENTS_TABLE);
  const column = personColumn(name);
  if (column.heading === "") app.say(words.personMissing, "warning");
  else if (!table) app.say(words.noMeasurements, "warning");
  else if (isNamed(column.heading, table.headings)) app.say(words.personThere(column.heading), "warning");
  else {
    const plan = trackerColumns({ ...trackers.measurements, columns: [column] }, table, units);
    const dated = await dateRow(table);
    const at = table.column + table.headings.length;
    const dates = dated === undefined ? [] : [{ sheet: table.sheet, blocks: [dateCells(dated, at)] }];
    const carried = await carryOutAll([{ columns: [plan], show: table.sheet }, { cells: dates }]);
    if (!carried.ok) app.say(refusalSentence(carried.refusal), "warning");
    else {
      app.wrote(carried.receipt, words.whatPerson(column.heading));
      app.say(words.personAdded(column.heading, table.sheet));
      return true;
    }
  }
  return false;
}

/** The row of the sheet that says when people were measured, counted from 0; undefined where she has taken it out. */
async function dateRow({ name, row }: Facts["tables"][number]): Promise<number | undefined> {
  const cells = await tableCells(name);
  const at = cells.ok ? cells.value.findIndex((line) => line.includes(DATE_LABEL)) : -1;
  return at < 1 ? undefined : row + at;
}

/** The columns that her own table lacks to be one of ours. */
export async function addColumns(
  app: App,
  tableName: string,
  key: Exclude<TrackerKey, "shoppingList">,
  facts: Facts,
  units: Units,
): Promise<void> {
  const table = facts.tables.find(({ name }) => name === tableName);
  if (!table) return app.say(words.noTable, "warning");
  const tables = facts.tables.map(({ name }) => name);
  const plans = columnsPlan(key, table, units, { sheets: facts.sheets, tables });
  if (plans.length === 0) return app.say(words.nothingMissing(tableName));
  const carried = await carryOutAll(plans);
  if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
  const headings = plans.flatMap(({ columns = [] }) => columns.flatMap((plan) => plan.columns));
  const made = plans.flatMap(({ sheets = [] }) => sheets.map(({ sheet }) => sheet));
  app.wrote(carried.receipt, words.whatColumns(tableName));
  const added = words.columnsAdded(
    tableName,
    headings.map(({ heading }) => heading),
  );
  app.say(made.length > 0 ? `${added} ${words.setUp(made)}` : added);
}

/** Today's shopping list as plain values on a sheet of its own, what else is to be bought at its end. */
export async function shopCopy(app: App, facts: Facts, units: Units, day: Date, notions?: NotionTotals): Promise<void> {
  const has = (name: string) => facts.tables.some((table) => table.name === name);
  if (!has("Projects")) return app.say(words.noProjects, "warning");
  const projects = await tableCells("Projects");
  if (!projects.ok) return app.say(refusalSentence(projects.refusal), "warning");
  const stash = has("Stash") ? await tableCells("Stash") : undefined;
  if (stash && !stash.ok) return app.say(refusalSentence(stash.refusal), "warning");
  const rows = shopList(projects.value, stash?.value);
  if (!rows.ok) return app.say(sentence(rows.problem), "warning");
  const planned = shopCopySheet(rows.value, today(day), units, notions);
  const sheet = freeSheet(planned.sheet, facts.sheets);
  const carried = await carryOut({ sheets: [{ ...planned, sheet }], show: sheet });
  if (!carried.ok) return app.say(refusalSentence(carried.refusal), "warning");
  app.wrote(carried.receipt, words.whatCopy);
  app.say(words.copied(sheet));
}
