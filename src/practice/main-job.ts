/**
 * `npm run demo`: the main job without a screen. The built add-in makes the starter workbook through the real client,
 * formulas are written beside it as a person would type them, one measurement is changed, and the cells are printed.
 */
import { INDEX_NAME, MEASUREMENTS_TABLE } from "../index";
import { aligned } from "./aligned";
import { buildAddin } from "./build-addin";
import { openStarter, type OpenStarter } from "./starter";
import { typeInto } from "./univer/book/typing";

const PERSON = "Ada";
const PATTERN = "Camp shirt";
const CHART = "CampShirt_body[#All]";
const BODY = `${MEASUREMENTS_TABLE}[#All]`;
const SHEET = "Ada's camp shirt";

const PLACES = `=SEW.SIZEBYPLACE(${CHART},${BODY},"${PERSON}")`;
const SIZE = `=SEW.CUTSIZE(${INDEX_NAME},${BODY},"shirt",${INDEX_NAME},"${PERSON}","${PATTERN}")`;
const COLUMN = `=SEW.SIZECOLUMN(${CHART},B2)`;
const PROJECT_COLUMNS = ["Project", "Person", "Fabric", "Width", "Size", "Needed", "To buy", "Unit", "Cost"];

export async function demo(): Promise<void> {
  if (await buildAddin()) console.log("The add-in has been built (dist/).");
  const opened = await openStarter();
  await writeFormulas();
  await printAll(opened);
  console.log(`\nNow her hip is 39 instead of 41.`);
  changeHip(opened, "39");
  await printAll(opened);
  await opened.dispose();
}

/** A sheet of its own for the formulas, with room for what they spill. */
async function writeFormulas(): Promise<void> {
  await Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.add(SHEET);
    sheet.getRange("A2:B2").formulas = [["Size to cut", SIZE]];
    sheet.getRange("A5:F5").values = [["Place", "Measure", "Size", "Chart", "Difference", "Note"]];
    sheet.getRange("A6").formulas = [[PLACES]];
    sheet.getRange("H5").values = [["Her column"]];
    sheet.getRange("H6").formulas = [[COLUMN]];
    await context.sync();
  });
}

async function printAll(opened: OpenStarter): Promise<void> {
  await opened.book.calculation.settled();
  const { book } = opened;
  const measured = columnsOf(opened, MEASUREMENTS_TABLE, ["Measurement", "Unit", PERSON]);
  print(
    `${PERSON}, as measured`,
    measured.filter((row) => row[2] !== ""),
  );
  const sheet = book.Worksheets.GetItem(SHEET);
  print(`Her size at each place of the ${PATTERN.toLowerCase()}: ${PLACES}`, filled(sheet.GetRange("A5:F20").Text));
  const labels = columnsOf(opened, "CampShirt_body", ["Measurement", "Unit"]);
  const figures = sheet.GetRange(`H5:H${labels.length + 4}`).Text;
  print(
    `Size to cut: ${SIZE}\nand that size's column: ${COLUMN}`,
    labels
      .map((row, at) => [...row, figures[at]?.[0] ?? ""])
      .map((row, at) => (at ? row : [...row.slice(0, 2), sheet.GetRange("B2").Text[0]?.[0] ?? ""])),
  );
  print("Cloth for the projects", columnsOf(opened, "Projects", PROJECT_COLUMNS));
  print("To buy", filled(book.Worksheets.GetItem("Shopping list").GetRange("A6:F30").Text));
}

function columnsOf({ book }: OpenStarter, table: string, headings: readonly string[]): string[][] {
  const found = book.Tables.GetItem(table);
  const at = headings.map((heading) => found.columnNames.indexOf(heading));
  return found.GetRange().Text.map((row) => at.map((column) => row[column]?.trim() ?? ""));
}

const filled = (rows: readonly (readonly string[])[]) => rows.filter((row) => row.some((text) => text !== ""));

function print(title: string, rows: readonly (readonly string[])[]): void {
  console.log(`\n${title}\n\n${aligned(rows.map((row) => row.map((text) => text.trim())))}`);
}

function changeHip({ book }: OpenStarter, inches: string): void {
  const table = book.Tables.GetItem(MEASUREMENTS_TABLE);
  const row = table.GetRange().Text.findIndex(([label]) => label === "Hip");
  typeInto(table.GetRange().GetCell(row, table.columnNames.indexOf(PERSON)), inches);
}
