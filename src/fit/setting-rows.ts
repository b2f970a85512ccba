import { cellText, errorCellProblem, isErrorCell, type Cells } from "../chart/cell";
import { answer, refuse, type Result } from "../problem";

/** One row of the settings as text, trimmed; "" where a cell is blank. The setting is in small letters. */
export interface SettingText {
  /** Counted from 1 below the headings. */
  readonly at: number;
  readonly setting: string;
  readonly garment: string;
  readonly place: string;
  readonly value: string;
  readonly unit: string;
  readonly person: string;
}

const HEADINGS: Readonly<Record<string, keyof SettingText>> = {
  setting: "setting",
  garment: "garment",
  place: "place",
  value: "value",
  measurement: "value",
  measure: "value",
  unit: "unit",
  person: "person",
};
/** Other ways to name a setting. */
const ALSO: Readonly<Record<string, string>> = {
  "high bust threshold": "threshold",
  "governing places": "governs",
  "governing place": "governs",
  "frame place": "frame",
  "between size": "between sizes",
  "seam edges": "edges",
  unit: "units",
  "my garments": "my garment",
};

/**
 * The rows of a settings table below its headings, blank ones left out. Rows above the headings are a title. Without a
 * Setting column, each row is a garment that fits. A spreadsheet error in a column that is read is the answer.
 */
export function settingRows(cells: Cells): Result<readonly SettingText[]> {
  const plain = cells.map((row) => row.map(cellText));
  const top = plain.findIndex((row) => isHeading(row));
  if (top < 0) return refuse("noSettingHeadings", {});
  const columns = new Map<keyof SettingText, number>();
  plain[top]!.forEach((heading, column) => {
    const name = HEADINGS[heading.toLowerCase()];
    if (name !== undefined && !columns.has(name)) columns.set(name, column);
  });
  const used = [...columns.values()];
  for (const cell of cells.slice(top + 1).flatMap((row) => used.map((column) => row[column] ?? null)))
    if (isErrorCell(cell)) return errorCellProblem(cell);
  const garmentsThatFit = !columns.has("setting");
  const rows = plain.slice(top + 1).map((row, index): SettingText => {
    const at = (name: keyof SettingText) => {
      const text = row[columns.get(name) ?? -1] ?? "";
      // A blank cell may arrive as 0, which no word is; a value of 0 counts where a setting stands beside it.
      return name !== "value" && text === "0" ? "" : text;
    };
    const setting = at("setting").toLowerCase().replace(/\s+/g, " ");
    return {
      at: index + 1,
      setting: garmentsThatFit ? "my garment" : (ALSO[setting] ?? setting),
      garment: at("garment"),
      place: at("place"),
      value: at("value"),
      unit: at("unit"),
      person: at("person"),
    };
  });
  return answer(
    rows.filter(
      ({ setting, garment, place, value }) =>
        (garmentsThatFit ? garment + place : setting + garment + place) !== "" || !["", "0"].includes(value),
    ),
  );
}

function isHeading(row: readonly string[]): boolean {
  const names = row.map((cell) => HEADINGS[cell.toLowerCase()]);
  return (
    names.includes("value") && (names.includes("setting") || (names.includes("garment") && names.includes("place")))
  );
}
