import { measuringGuide } from "../../fit/measuring-guide";
import type { BodyUnit } from "../../chart/model";
import type { CellBlock, PlannedCell, SheetPlan } from "../plan";
import { headingRow, trackerSheet, type Tracker, type TrackerColumn, type TrackerRow, type Units } from "../tracker";

/** The words over the columns that are not a person's. */
export const MEASUREMENTS_TABLE = "Measurements";
export const GUIDE_HEADING = "Where the tape goes";
export const TAPE_HEADING = "Where it went";
/** The row that says when a person was measured. */
export const DATE_LABEL = "Measured on";

const labels: readonly TrackerColumn[] = [
  { heading: "Measurement", format: "text", note: "The places of the measuring guide; add your own below." },
  {
    heading: "Unit",
    format: "text",
    note: "in or cm, one for the whole row.",
    validation: { list: ["in", "cm"] },
    width: 7,
  },
  {
    heading: GUIDE_HEADING,
    format: "text",
    note: "After ISO 8559-1 and EN 13402-1 where they describe the place, in our own words.",
    width: 54,
    wraps: true,
  },
  {
    heading: TAPE_HEADING,
    format: "text",
    note: "Where your tape really went, if it was elsewhere. Three waists are in use: between rib and hip bone, where a belt settles, and at the navel.",
    width: 20,
    wraps: true,
  },
];

/**
 * A person's column, for a new sheet and for the one that is there: it goes to the right end of the table. Nothing is
 * asked of what is typed, because 30 1/2, 77,5 and 30½ are all fine.
 */
export const personColumn = (name: string): TrackerColumn => ({
  heading: name.replace(/\s+/g, " ").trim(),
  format: "length",
  note: "Measured over what the garment will be worn over, the tape level and not tight.",
  width: 12,
});

/** A person's cells, one for each row of a fresh sheet; places that are not given stay empty. */
export type PersonMeasures = Readonly<Record<string, PlannedCell>>;

export const measurements: Tracker = {
  key: "measurements",
  sheet: "Measurements",
  table: MEASUREMENTS_TABLE,
  intro: [
    "One column for each person: type a name in the next heading. The functions find a row by its words, a person by the heading.",
  ],
  totals: [],
  columns: labels,
  needs: [],
  print: "lying",
};

/**
 * The sheet with a column for each person; the places are those of the measuring guide, with its words beside them.
 *
 * @param people names in the order of their columns, with their measures by place ("Back waist length") and, under
 *   "Measured on", the day as text
 * @example measurementsSheet("in", [{ name: "Ada", measures: { Bust: 38, "Measured on": "12 March 2026" } }])
 */
export function measurementsSheet(
  units: Units,
  people: readonly { readonly name: string; readonly measures: PersonMeasures; readonly unit?: BodyUnit }[] = [],
  rowUnit: BodyUnit = units === "cm" ? "cm" : "in",
  tapeNotes: Readonly<Record<string, string>> = {},
): SheetPlan {
  const persons = people.length > 0 ? people : [{ name: "Me", measures: {} }];
  const columns = [...labels, ...persons.map(({ name }) => personColumn(name))];
  const row = (label: string, guide: string | null, unit: string | null): TrackerRow => ({
    Measurement: label,
    Unit: unit,
    [GUIDE_HEADING]: guide,
    [TAPE_HEADING]: tapeNotes[label] ?? null,
    ...Object.fromEntries(persons.map(({ name, measures }) => [personColumn(name).heading, measures[label] ?? null])),
  });
  const places = measuringGuide.map(({ name, where }) => row(capital(name), where, rowUnit));
  const rows = [...places, row(DATE_LABEL, "The day she was measured; bodies change.", null)];
  const plan = trackerSheet({ ...measurements, columns }, units, rows);
  const dates = dateCells(headingRow(measurements) + rows.length, labels.length, persons.length);
  return { ...plan, blocks: [...plan.blocks, dates] };
}

/**
 * Cells for the day of measuring, in the text format and otherwise as they are: a date that is typed among fractions of
 * inches would show as 46093.
 */
export const dateCells = (row: number, column: number, people = 1): CellBlock => ({
  row,
  column,
  cells: [Array<null>(people).fill(null)],
  format: "text",
});

const capital = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);
