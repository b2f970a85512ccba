import { clothUnitOf, convert, smallUnitOf } from "../length/length";
import { plainText, readLength } from "../length/read";
import { answer, refuse, type Result } from "../problem";
import { cellText, errorCellProblem, isErrorCell, isMissing, LARGEST, readUnitCell, type Cell } from "./cell";
import { figureIn, readFigureCell } from "./cells-figure";
import type { Grid } from "./cells-grid";
import { isSpan, isFault } from "./model";
import type { BodyUnit, FabricChart, FabricChartRow, FabricUnit, Fault, Nap } from "./model";

/** A fabric row as it stands on the sheet, in its own unit. */
export interface SheetFabricRow extends FabricChartRow {
  readonly unit: FabricUnit | null;
}
export interface SheetFabric {
  readonly sizes: readonly string[];
  readonly rows: readonly SheetFabricRow[];
}

/** A fabric width: a number and its unit, null when it says none. */
export interface ClothWidth {
  readonly value: number;
  readonly unit: BodyUnit | null;
}

/** A width above this can't be inches: printed inch widths end at 72, widths in centimetres begin at 90. */
const WIDEST_INCHES = 80;

/** The unit of a width that names none. */
export const widthUnitOf = (width: number): BodyUnit => (width <= WIDEST_INCHES ? "in" : "cm");

/**
 * A fabric width as people write it: 45, "45 in", "115 cm", and "44/45" or "58/60", which are read as the second figure.
 * A pair that falls ("60/58") is refused.
 *
 * @example readWidthCell('44/45"') //=> { ok: true, value: { value: 45, unit: "in" } }
 */
export function readWidthCell(cell: Cell): Result<ClothWidth> {
  if (isMissing(cell)) return refuse("blank", { wanted: "a fabric width" });
  if (isErrorCell(cell)) return errorCellProblem(cell);
  if (typeof cell === "number") {
    if (cell > LARGEST) return refuse("excelDate", { text: cellText(cell) });
    return cell > 0 ? answer({ value: cell, unit: null }) : refuse("badClothWidth", { text: cellText(cell) });
  }
  const pair = /^(\d{2,3})(?: in| cm|"| ")? ?[/-] ?(\d{2,3})(?![\d/])(.*)$/.exec(plainText(cellText(cell)));
  // "60/58" is no fraction of an inch, and which of the two the cloth has is for a person to say.
  if (pair && Number(pair[1]) > Number(pair[2])) return refuse("badClothWidth", { text: cellText(cell) });
  const text = pair ? `${pair[2]}${pair[3]}` : cellText(cell);
  const read = readLength(text);
  if (!read.ok || read.value.value <= 0) return refuse("badClothWidth", { text: cellText(cell) });
  const { value, unit } = read.value;
  if (value > LARGEST) return refuse("excelDate", { text: cellText(cell) });
  if (unit === null) return answer({ value, unit });
  return answer({ value: convert(value, unit, smallUnitOf(unit)), unit: smallUnitOf(unit) });
}

/**
 * The word for a nap; a blank is null, any nap.
 *
 * @example readNapCell("with nap") //=> { ok: true, value: "with" }
 */
export function readNapCell(cell: Cell): Result<Nap | null> {
  if (isMissing(cell)) return answer(null);
  if (isErrorCell(cell)) return errorCellProblem(cell);
  const word = plainText(cellText(cell))
    .toLowerCase()
    .replace(/ ?nap$/, "");
  if (["with", "w/", "yes", "true", "one-way", "one way"].includes(word)) return answer("with");
  if (["without", "w/o", "no", "false"].includes(word)) return answer("without");
  const either = ["either", "with or without", "with/without", "both", "any", "with and without"].includes(word);
  return either ? answer("either") : refuse("unknownNap", { text: cellText(cell) });
}

/**
 * A fabric table from its grid. A missing part is main, a missing nap unknown, a missing view "". A width up to 80 is in
 * inches and its amounts in yards, above that centimetres and metres, where no column says so.
 */
export function fabricSheet(grid: Grid): Result<SheetFabric> {
  const rows: SheetFabricRow[] = [];
  for (const row of grid.rows) {
    const read = fabricRow(row, grid);
    if (!read.ok) return read;
    if (read.value) rows.push(read.value);
  }
  const [only, other] = [...new Set(rows.map(({ unit }) => unit).filter((unit) => unit !== null))];
  const completed = other === undefined ? rows.map((row) => ({ ...row, unit: row.unit ?? only ?? null })) : rows;
  return answer({ sizes: grid.sizes.map(({ label }) => label), rows: completed });
}

function fabricRow(row: readonly Cell[], grid: Grid): Result<SheetFabricRow | undefined> {
  const { columns } = grid;
  const at = (column: number | undefined): Cell => (column === undefined ? null : (row[column] ?? null));
  const text = (column: number | undefined): string => (isMissing(at(column)) ? "" : cellText(at(column)));
  const figures = grid.sizes.map(({ column }) => readFigureCell(at(column)));
  const widthCell = at(columns.width);
  const empty = figures.every(({ figure }) => figure === null || isFault(figure));
  if (empty && isMissing(widthCell)) return answer(undefined);
  const width = isMissing(widthCell) ? answer(null) : readWidthCell(widthCell);
  if (!width.ok) return width;
  const widthUnit = readUnitCell(at(columns.widthUnit));
  const unit = readUnitCell(at(columns.unit));
  const nap = readNapCell(at(columns.nap));
  if (!widthUnit.ok) return widthUnit;
  if (!unit.ok) return unit;
  if (!nap.ok) return nap;
  const said = widthUnit.value && smallUnitOf(widthUnit.value.unit);
  const inUnit = width.value?.unit ?? said ?? (width.value ? widthUnitOf(width.value.value) : null);
  const inText = figures.find((figure) => figure.unit !== null)?.unit;
  const measured = unit.value?.unit ?? inText ?? inUnit;
  const amounts = measured && clothUnitOf(measured);
  return answer({
    view: text(columns.view),
    part: text(columns.part) || "main",
    label: text(columns.label) || text(columns.width),
    width: width.value?.value ?? null,
    widthUnit: inUnit ?? (amounts === "m" ? "cm" : "in"),
    nap: nap.value,
    unit: amounts,
    values: figures.map(({ figure, unit: own }) => amount(figureIn(figure, own ?? unit.value?.unit ?? null, amounts))),
  });
}

/** A range of amounts is not a printed form: the larger is what to buy. */
function amount(figure: FabricChartRow["values"][number] | { low: number; high: number }): number | null | Fault {
  return isSpan(figure) ? figure.high : figure;
}

/** The tables that a sheet's rows make, one for each unit. */
export function fabricChartsOf({ sizes, rows }: SheetFabric): readonly FabricChart[] {
  const units = [...new Set(rows.map(({ unit }) => unit))];
  if (units.length === 0) return [{ kind: "fabric", unit: null, sizes, rows: [] }];
  return units.map((unit) => ({ kind: "fabric", unit, sizes, rows: rows.filter((row) => row.unit === unit) }));
}
