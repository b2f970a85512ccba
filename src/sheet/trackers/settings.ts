import { garmentNames } from "../../fit/read-garment";
import type { CellBlock, SheetPlan, TablePlan } from "../plan";
import { headingRow, trackerSheet, type Tracker, type TrackerRow, type Units } from "../tracker";

/** What the shop cuts by, a row for each unit. */
export const STEPS_TABLE = "ShopSteps";

/** What the functions are told instead of our defaults. */
export const settings: Tracker = {
  key: "settings",
  sheet: "Settings",
  table: "Settings",
  intro: [
    "A row with a value replaces our default; a row without one says nothing. Blank garment or place: all of them. The lower of two equal rows holds.",
  ],
  totals: [],
  columns: [
    { heading: "Setting", format: "text", width: 20 },
    { heading: "Garment", format: "text", validation: { list: garmentNames(), open: true }, width: 16 },
    { heading: "Place", format: "text", width: 12 },
    {
      heading: "Value",
      format: "general",
      note: "A length, a word or a band such as 3 to 4, as the row wants it.",
      width: 12,
    },
    { heading: "Unit", format: "text", validation: { list: ["in", "cm"] }, width: 7 },
    { heading: "Person", format: "text", note: "Blank: everybody.", width: 12 },
    { heading: "What it does", format: "text", width: 60 },
  ],
  needs: [],
  print: "lying",
};

/** Our defaults as rows without a value, so that she sees what can be set. */
export function settingRows(units: Units): TrackerRow[] {
  const row = (Setting: string, where: string, note: string, value: string | null = null): TrackerRow => {
    const [garment = "", place = ""] = where.split("/");
    return { Setting, Garment: garment || null, Place: place || null, Value: value, "What it does": note };
  };
  return [
    row("units", "", "What bare numbers in this table are in.", units === "cm" ? "cm" : "in"),
    row("between sizes", "", "closest, larger or smaller; without a value closest, and a tie goes to the larger."),
    row(
      "frame",
      "",
      "Write high bust: tops, dresses, jackets and coats then get their frame size by it, not by the bust.",
    ),
    row(
      "threshold",
      "",
      "The difference of bust and high bust from which the high bust decides; without a value it always does.",
    ),
    row("drafted difference", "", "Bust less high bust that patterns are drafted for; without a value 2 in."),
    row("least ease", "/bust", "Least total ease; without a value 2 1/2 in for wovens, in print between 1 1/2 and 4."),
    row("least ease", "/waist", "Without a value 1 in."),
    row("least ease", "/hip", "Without a value 2 in."),
    row("growth", "", "What a child is to grow until it wears the garment, added to the height."),
    row("edges", "", "Seam edges that share a change of girth; without a value 4, two side seams."),
    row("edge limit", "", "Most that one seam edge is moved beyond the outermost size; without a value 1/2 in."),
    row(
      "semi-fitted",
      "fitted dress/bust",
      "The ease that this word means, such as 4 to 5; without a value the printed bands.",
    ),
    row(
      "my garment",
      "shirt/bust",
      "A garment of yours that fits, all the way round: your ease replaces the least ease.",
    ),
  ];
}

/** The sheet: the settings, and beside them what the shop cuts by. */
export function settingsSheet(units: Units, rows: readonly TrackerRow[] = settingRows(units)): SheetPlan {
  const plan = trackerSheet(settings, units, rows);
  const row = headingRow(settings);
  const column = settings.columns.length + 1;
  const caption: CellBlock = {
    row: row - 1,
    column,
    cells: [["What the shop cuts by"]],
    format: "text",
    style: "note",
  };
  const steps: TablePlan = {
    name: STEPS_TABLE,
    row,
    column,
    columns: [
      { heading: "Unit", format: "text", width: 8 },
      { heading: "Cuts by", format: "thousandths", note: "The smallest step: 0.125 is 1/8 yd.", width: 10 },
    ],
    rows: [
      ["yd", 0.125],
      ["m", 0.1],
    ],
  };
  return { ...plan, blocks: [...plan.blocks, caption], tables: [...plan.tables, steps] };
}
