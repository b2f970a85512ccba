import type { ChartTable, FabricTable, Figure, MeasureTable } from "../chart/model";
import { isSpan, type MeasureRow } from "../chart/model";
import { isBustOrChest, placeName, readPlace } from "../chart/places";
import { formatFraction } from "../length/format";
import { distinctHeadings, sheetName, tableName } from "./names";
import type { CellBlock, CellFormat, PlannedCell, PlannedColumn, SheetPlan, TablePlan } from "./plan";

/** A pattern's sheet and the tables on it, in the order of the chart's own tables. */
export interface ChartSheet {
  readonly plan: SheetPlan;
  readonly tableNames: readonly string[];
}

const CAPTIONS = {
  body: "Body measurements",
  finished: "Finished garment measurements",
  fabric: "Fabric required",
} as const;

/**
 * The sheet of one pattern: its name on top, then a table for each chart table under a caption that says what it is and
 * in which unit. Sizes are headings, and headings and labels are text, so that 6-12 and 05 stay what they are.
 * Inches and yards are shown as fractions; centimetres and metres as they stand. Printed ranges are text: 30 to 31.
 *
 * @param taken names of tables and ranges that the workbook has already
 * @example chartSheet("Camp shirt", tables).tableNames //=> ["CampShirt_body", "CampShirt_fabric"]
 */
export function chartSheet(pattern: string, tables: readonly ChartTable[], taken: Iterable<string> = []): ChartSheet {
  const names = [...taken];
  const blocks: CellBlock[] = [{ row: 0, column: 0, cells: [[pattern.trim()]], format: "text", style: "title" }];
  const plans: TablePlan[] = [];
  let row = 2;
  for (const table of tables) {
    const name = tableName(pattern, table.kind, names);
    names.push(name);
    const above = [[`${CAPTIONS[table.kind]} (${table.unit})`], ...aliasLines(table)];
    blocks.push({ row, column: 0, cells: above, format: "text", style: "note" });
    const plan = tablePlan(table, name, row + above.length);
    plans.push(plan);
    row = plan.row + plan.rows.length + 3;
  }
  return {
    plan: { sheet: sheetName(pattern), blocks, tables: plans, print: "lying" },
    tableNames: plans.map((plan) => plan.name),
  };
}

/** Other systems' sizes, a line each: "EU: 36, 38, 40". */
function aliasLines(table: ChartTable): string[][] {
  if (table.kind === "fabric") return [];
  return (table.aliases ?? []).map(({ label, sizes }) => [`${label}: ${sizes.join(", ")}`]);
}

/**
 * One chart table as an Excel table whose heading row is `row`.
 *
 * @throws RangeError when a row has not one figure for each size
 */
export function tablePlan(table: ChartTable, name: string, row: number): TablePlan {
  const layout = table.kind === "fabric" ? fabricLayout(table) : measureLayout(table);
  const sizeFormat: CellFormat = table.unit === "in" || table.unit === "yd" ? "fraction" : "general";
  const headings = distinctHeadings([...layout.labels.map(({ heading }) => heading), ...table.sizes]);
  const columns = headings.map((heading, index): PlannedColumn => ({
    ...(layout.labels[index] ?? { format: sizeFormat }),
    heading,
  }));
  for (const { length } of layout.rows) {
    if (length !== columns.length) throw new RangeError("a chart row has not one figure for each size");
  }
  return { name, row, column: 0, columns, rows: layout.rows };
}

interface Layout {
  readonly labels: readonly PlannedColumn[];
  readonly rows: readonly (readonly PlannedCell[])[];
}

const text = (heading: string): PlannedColumn => ({ heading, format: "text" });

function measureLayout(table: MeasureTable): Layout {
  const finished = table.kind === "finished";
  return {
    labels: [text("Measurement"), ...(finished ? [text("View")] : []), text("Unit")],
    rows: table.rows.map((row) => [
      rowLabel(row, table.kind),
      ...(finished ? [row.view ?? null] : []),
      table.unit,
      ...row.values.map((figure) => figureCell(figure, table.unit)),
    ]),
  };
}

function fabricLayout(table: FabricTable): Layout {
  const fractions = table.rows.every((row) => row.widthUnit === "in");
  const width: PlannedColumn = { heading: "Width", format: fractions ? "fraction" : "general" };
  return {
    labels: [text("View"), text("Part"), width, text("Width unit"), text("Nap"), text("Unit")],
    rows: table.rows.map((row) => [
      row.view === "" ? null : row.view,
      row.part,
      row.width,
      row.widthUnit,
      row.nap,
      table.unit,
      ...row.values,
    ]),
  };
}

/** Longer labels are sentences; the place's name says it shorter. */
const LONGEST_LABEL = 40;

/**
 * What stands in a row's first cell: her pattern's own words where they read back as the same place by themselves, else
 * the place's name. Words with a unit, with two meanings or with a view in them need their old neighbours, so they go.
 *
 * @example rowLabel({ place: "backWaistLength", label: "Back", values: [] }, "body") //=> "Back waist length"
 */
export function rowLabel(row: MeasureRow, kind: "body" | "finished"): string {
  const { place, label, view } = row;
  const readAlone = [kind, null].every((known) => readPlace(label, known) === place);
  const alone = readAlone && !isBustOrChest(label) && !view;
  if (alone && label.length <= LONGEST_LABEL && !/[()[\]/|*]|\b(?:in|ins|inches|cm|mm)\b/i.test(label)) return label;
  const name = placeName(place);
  return name[0]!.toUpperCase() + name.slice(1);
}

function figureCell(figure: Figure, unit: string): PlannedCell {
  if (figure === null || !isSpan(figure)) return figure;
  return `${figureText(figure.low, unit)} to ${figureText(figure.high, unit)}`;
}

function figureText(value: number, unit: string): string {
  const fraction = unit === "in" && Number.isInteger(value * 16) ? formatFraction(value, 16) : undefined;
  return fraction?.ok ? fraction.value : String(value);
}
