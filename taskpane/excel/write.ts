import {
  isFormula,
  type CellBlock,
  type CellStyle,
  type Emphasis,
  type PlannedCell,
  type PlannedColumn,
  type SheetPlan,
  type TablePlan,
  type Validation,
} from "../../src/index";
import { columnWidths, holds, numberFormat, points, slices, tableCells, written, type CellValue } from "./cells";
import { refused } from "./refusal";

/** Cells that were written and can be compared with what was planned. */
export interface Check {
  readonly range: Excel.Range;
  readonly cells: readonly (readonly PlannedCell[])[];
}

const GREY = "#595959";
const STYLES: Readonly<Record<CellStyle, (format: Excel.RangeFormat) => void>> = {
  title: ({ font }) => Object.assign(font, { bold: true, size: 14 }),
  heading: ({ font }) => Object.assign(font, { bold: true }),
  input: ({ fill }) => (fill.color = "#FFF8DC"),
  note: ({ font }) => Object.assign(font, { italic: true, color: GREY }),
  total: ({ font }) => Object.assign(font, { bold: true }),
  caution: ({ font, fill }) => {
    font.bold = true;
    fill.color = "#FCE4D6";
  },
};
/** Fills under black text: each at least 12 to 1. */
const TONES: Readonly<Record<Emphasis["tone"], string>> = { attention: "#FCE4D6", quiet: "#EDEDED", good: "#E2EFDA" };

/**
 * Writes a rectangle: formats first, because Excel reads a text when it is written, then the cells, in requests that are
 * small enough. `format` gives the format of a cell.
 */
export async function writeCells(
  sheet: Excel.Worksheet,
  row: number,
  column: number,
  cells: readonly (readonly PlannedCell[])[],
  format: (row: number, column: number) => CellBlock["format"] & string,
): Promise<Check> {
  const width = Math.max(...cells.map((line) => line.length));
  const whole = cells.map((line) => [...line, ...Array<null>(width - line.length).fill(null)]);
  let done = 0;
  for (const part of slices(whole)) {
    const range = sheet.getRangeByIndexes(row + done, column, part.length, width);
    const formats = part.map((line, r) => line.map((cell, c) => numberFormat(format(done + r, c), cell)));
    setFormats(range, formats);
    const from = done;
    range.formulas = part.map((line, r) => line.map((cell, c) => written(cell, format(from + r, c))));
    done += part.length;
    if (done < whole.length) await sheet.context.sync();
  }
  return { range: sheet.getRangeByIndexes(row, column, whole.length, width), cells: whole };
}

/** One call for a rectangle or a column of one format, a grid only where it is needed. */
function setFormats(range: Excel.Range, formats: string[][]): void {
  const first = formats[0]!;
  const uniform = first.map((format, c) => formats.every((line) => line[c] === format));
  if (!uniform.every(Boolean)) range.numberFormat = formats;
  else if (first.every((format) => format === first[0])) setAll(range, first[0]!);
  else first.forEach((format, c) => setAll(range.getColumn(c), format));
}
function setAll(range: Excel.Range, format: string): void {
  // The declarations want a grid; Excel takes one value for all cells.
  if (format !== "General") range.numberFormat = format as unknown as string[][];
}

/** Makes a sheet that is not there yet. */
export async function writeSheet(sheet: Excel.Worksheet, plan: SheetPlan): Promise<Check[]> {
  const checks: Check[] = [];
  // Tables first: totals above them name their columns, which Excel wants to know by then.
  for (const table of plan.tables) checks.push(await writeTable(sheet, table));
  for (const block of plan.blocks) checks.push(await writeBlock(sheet, block, true));
  const widths = columnWidths(plan.tables);
  plan.widths?.forEach((width, column) => width !== null && widths.set(column, width));
  for (const [column, width] of widths) {
    sheet.getRangeByIndexes(0, column, 1, 1).getEntireColumn().format.columnWidth = points(width);
  }
  for (const table of plan.tables) wrapText(sheet, table);
  if (plan.frozenRows) sheet.freezePanes.freezeRows(plan.frozenRows);
  if (plan.print) {
    sheet.pageLayout.orientation = plan.print === "lying" ? "Landscape" : "Portrait";
    sheet.pageLayout.zoom = { horizontalFitToPages: 1 };
  }
  return checks;
}

/** Its rows grow to the text, so the widths come first. */
function wrapText(sheet: Excel.Worksheet, { row, column, columns, rows }: TablePlan): void {
  if (rows.length === 0 || !columns.some(({ wraps }) => wraps)) return;
  columns.forEach(({ wraps }, index) => {
    if (wraps) sheet.getRangeByIndexes(row + 1, column + index, rows.length, 1).format.wrapText = true;
  });
  const { format } = sheet.getRangeByIndexes(row + 1, column, rows.length, columns.length);
  format.verticalAlignment = "Center";
  format.autofitRows();
}

/**
 * In a cell of the text format a number or a formula would become its own text: where the plan says nothing of formats,
 * such a cell gets the usual one. `formats`: those of the cells as they are.
 */
export function leaveTextFormat(
  sheet: Excel.Worksheet,
  block: CellBlock,
  formats: readonly (readonly string[])[],
): void {
  block.cells.forEach((line, r) =>
    line.forEach((cell, c) => {
      if (cell === null || typeof cell === "string" || formats[r]?.[c] !== "@") return;
      if (numberFormat(block.format ?? "general", cell) !== "General") return;
      sheet.getCell(block.row + r, block.column + c).numberFormat = [["General"]];
    }),
  );
}

/** `ours`: the sheet is new, so that its looks are ours to set. */
export async function writeBlock(sheet: Excel.Worksheet, block: CellBlock, ours: boolean): Promise<Check> {
  const check = await writeCells(sheet, block.row, block.column, block.cells, () => block.format ?? "general");
  if (ours && block.style) STYLES[block.style](check.range.format);
  if (ours && block.height) check.range.format.rowHeight = block.height;
  return check;
}

/** Formulas come last: [@…] means nothing to Excel before the cells are a table's. */
async function writeTable(sheet: Excel.Worksheet, plan: TablePlan): Promise<Check> {
  const cells = tableCells(plan);
  const plain = cells.map((line) => line.map((cell) => (isFormula(cell) ? null : cell)));
  const { range } = await writeCells(sheet, plan.row, plan.column, plain, (r, c) => {
    if (r === 0) return "text";
    const { format } = plan.columns[c]!;
    // A formula written into a cell of the text format would stay its own text.
    return format === "text" && isFormula(cells[r]![c]!) ? "general" : format;
  });
  const table = sheet.tables.add(range, true);
  table.name = plan.name;
  table.style = "TableStyleLight15";
  for (const [index, column] of plan.columns.entries()) {
    const at = plan.column + index;
    const body = plan.rows.map((line) => [line[index] ?? null]);
    if (body.some(([cell]) => isFormula(cell!))) await writeCells(sheet, plan.row + 1, at, body, () => column.format);
    dressColumn(sheet, column, plan.row, at, Math.max(1, plan.rows.length));
  }
  return { range, cells };
}

/** What a column has besides its cells: a note on its heading, what may be typed, its conditional colour. */
export function dressColumn(
  sheet: Excel.Worksheet,
  column: PlannedColumn,
  headingRow: number,
  at: number,
  rows: number,
): void {
  const heading = sheet.getRangeByIndexes(headingRow, at, 1, 1);
  const body = sheet.getRangeByIndexes(headingRow + 1, at, rows, 1);
  if (column.note) sheet.context.workbook.comments.add(heading, column.note);
  if (column.validation) {
    body.dataValidation.rule = validationRule(column.validation);
    if ("list" in column.validation && column.validation.open)
      body.dataValidation.errorAlert = { showAlert: false, message: "", style: "Information", title: "" };
  }
  if (column.emphasis) {
    const colour = body.conditionalFormats.add("Custom").custom;
    colour.rule.formula = column.emphasis.formula;
    colour.format.fill.color = TONES[column.emphasis.tone];
  }
}

function validationRule(validation: Validation): Excel.DataValidationRule {
  if ("list" in validation) return { list: { inCellDropDown: true, source: validation.list.join(",") } };
  if ("listFrom" in validation) return { list: { inCellDropDown: true, source: validation.listFrom } };
  const { from, to } = validation;
  return {
    decimal:
      to === undefined
        ? { formula1: from, operator: "GreaterThanOrEqualTo" }
        : { formula1: from, formula2: to, operator: "Between" },
  };
}

/** Reads back what was written. Excel that made something else of a cell is not trusted with the rest. */
export async function verify(context: Excel.RequestContext, sheet: string, checks: readonly Check[]): Promise<void> {
  const read = checks.map(({ range }) => range.load("values,address"));
  await context.sync();
  checks.forEach(({ cells }, index) => {
    const values = read[index]!.values as CellValue[][];
    cells.forEach((line, r) =>
      line.forEach((cell, c) => {
        const found = values[r]![c]!;
        const address = read[index]!.address.replace(/^.*!/, "");
        if (!holds(cell, found) && cell !== null) throw refused("writtenWrong", { sheet, address, found: `${found}` });
      }),
    );
  });
}
