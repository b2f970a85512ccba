import type { CellsPlan, ColumnsPlan, PlannedName, WorkbookPlan, WriteRefusal } from "../../src/index";
import { addressOf, areaOf, fingerprint, type Area, type CellValue } from "./cells";
import { inTurn } from "./in-turn";
import { refusalOf, refused } from "./refusal";
import {
  undo,
  type CellsChanged,
  type ColumnsAdded,
  type NamePointed,
  type Receipt,
  type SheetMade,
} from "./take-back";
import { dressColumn, verify, writeBlock, writeCells, writeSheet } from "./write";

export type Carried =
  { readonly ok: true; readonly receipt: Receipt } | { readonly ok: false; readonly refusal: WriteRefusal };

export interface CarryOptions {
  /** A person has seen which cells are filled and wants them written over. */
  readonly overFilled?: boolean;
}

/** What has been done so far, for the receipt and for cleaning up. */
interface Done {
  readonly sheets: SheetMade[];
  readonly cells: CellsChanged[];
  readonly columns: ColumnsAdded[];
  readonly names: NamePointed[];
  shown: string | null;
}

/**
 * Writes a plan into the workbook, whole or not at all: names, sheets, tables and cells are checked first, and what
 * fails after that is cleaned up. What has been written is read back and compared.
 */
export async function carryOut(plan: WorkbookPlan, options: CarryOptions = {}): Promise<Carried> {
  return inTurn(async () => {
    const done: Done = { sheets: [], cells: [], columns: [], names: [], shown: null };
    try {
      await Excel.run(async (context) => {
        await checkNames(context, plan);
        const before = await readBefore(context, plan, options.overFilled ?? false);
        await write(context, plan, before, done);
      });
      return { ok: true, receipt: done };
    } catch (error) {
      return { ok: false, refusal: await cleanedUp(done, refusalOf(error)) };
    }
  });
}

async function cleanedUp(done: Done, refusal: WriteRefusal): Promise<WriteRefusal> {
  if (done.sheets.length + done.cells.length + done.columns.length + done.names.length === 0) return refusal;
  try {
    await Excel.run((context) => undo(context, done));
    return refusal;
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const sheets = [...done.sheets.map(({ name }) => name), ...done.columns.map(({ table }) => table)].join(", ");
    return { code: "halfWritten", details: { sheets: sheets || "the cells last written", message } };
  }
}

/** @throws Refused when a name is taken, or something that should be there is not */
async function checkNames(context: Excel.RequestContext, plan: WorkbookPlan): Promise<void> {
  const { workbook } = context;
  const sheets = workbook.worksheets.load("items/name");
  const tables = workbook.tables.load("items/name");
  const names = workbook.names.load("items/name");
  await context.sync();
  const known = (items: readonly { readonly name: string }[]) => new Set(items.map(({ name }) => name.toLowerCase()));
  const [sheetNames, tableNames, rangeNames] = [known(sheets.items), known(tables.items), known(names.items)];
  const has = (all: Set<string>, name: string) => all.has(name.toLowerCase());
  for (const { sheet, tables: planned } of plan.sheets ?? []) {
    if (has(sheetNames, sheet)) throw refused("sheetTaken", { sheet });
    sheetNames.add(sheet.toLowerCase());
    for (const { name: table } of planned) {
      if (has(tableNames, table) || has(rangeNames, table)) throw refused("tableTaken", { table });
      tableNames.add(table.toLowerCase());
    }
  }
  for (const { sheet } of plan.cells ?? []) if (!has(sheetNames, sheet)) throw refused("sheetMissing", { sheet });
  for (const { table } of plan.columns ?? []) if (!has(tableNames, table)) throw refused("tableMissing", { table });
  for (const { name } of plan.names ?? []) if (has(tableNames, name)) throw refused("nameTaken", { name });
}

interface Before {
  readonly cells: readonly CellsChanged[];
  readonly columns: readonly { readonly plan: ColumnsPlan; readonly area: Area; readonly sheet: string }[];
  readonly names: readonly NamePointed[];
  readonly shown: string;
}

/** What stands in the places that are to be written. @throws Refused when a cell is filled and nobody has agreed to it */
async function readBefore(context: Excel.RequestContext, plan: WorkbookPlan, over: boolean): Promise<Before> {
  const { workbook } = context;
  const shown = workbook.worksheets.getActiveWorksheet().load("id");
  const names = (plan.names ?? []).map((planned) => ({
    planned,
    item: workbook.names.getItemOrNullObject(planned.name).load("formula"),
  }));
  const places = (plan.cells ?? [])
    // A plan may fill cells of a sheet that it makes itself: those are empty.
    .filter(({ sheet }) => !plan.sheets?.some((made) => made.sheet === sheet))
    .flatMap((cellsPlan) =>
      cellsPlan.blocks.map((block) => ({ cellsPlan, ...areaOf(block.cells, block.row, block.column) })),
    );
  const read = places.map(({ cellsPlan, block, spills }) => {
    const sheet = workbook.worksheets.getItem(cellsPlan.sheet).load("id");
    const load = (area: Area) =>
      sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns).load("formulas,values,numberFormat");
    return { sheet, range: load(block), spills: spills.map((area) => ({ area, range: load(area) })) };
  });
  const columns = (plan.columns ?? []).map((columnsPlan) => {
    const table = workbook.tables.getItem(columnsPlan.table);
    const range = table.getRange().load("rowIndex,columnIndex,rowCount,columnCount");
    const headings = table.getHeaderRowRange().load("values");
    const sheet = table.worksheet.load("name");
    return { columnsPlan, range, headings, sheet };
  });
  await context.sync();
  if (!over) places.forEach((place, index) => checkEmpty(place.cellsPlan, place.block, read[index]!));
  for (const { columnsPlan, range, headings, sheet } of columns) {
    const there = new Set((headings.values[0] as CellValue[]).map((heading) => `${heading}`.toLowerCase()));
    const taken = columnsPlan.columns.find(({ heading }) => there.has(heading.toLowerCase()));
    if (taken) throw refused("columnTaken", { table: columnsPlan.table, column: taken.heading });
    await checkBeside(sheet, range, columnsPlan.columns.length);
  }
  return {
    shown: shown.id,
    names: names.map(({ planned, item }) => ({ name: planned.name, before: item.isNullObject ? null : item.formula })),
    cells: places.map(({ block }, index) => {
      const { sheet, range } = read[index]!;
      const { formulas, values, numberFormat: formats } = range;
      return { sheet: sheet.id, row: block.row, column: block.column, formulas, values, formats, after: "" };
    }),
    columns: columns.map(({ columnsPlan, range, sheet }) => ({
      plan: columnsPlan,
      sheet: sheet.name,
      area: { row: range.rowIndex, column: range.columnIndex, rows: range.rowCount, columns: range.columnCount },
    })),
  };
}

interface ReadPlace {
  readonly range: Excel.Range;
  readonly spills: readonly { readonly area: Area; readonly range: Excel.Range }[];
}

function checkEmpty(plan: CellsPlan, block: Area, { range, spills }: ReadPlace): void {
  const ours = (formula: CellValue) => plan.kept !== undefined && `${formula}`.toUpperCase().startsWith(plan.kept);
  const filled = (
    from: Area,
    formulas: readonly (readonly CellValue[])[],
    ignore: (row: number, column: number) => boolean,
  ) => {
    formulas.forEach((line, r) =>
      line.forEach((formula, c) => {
        if (formula === "" || ours(formula) || ignore(from.row + r, from.column + c)) return;
        const address = addressOf({ row: from.row + r, column: from.column + c, rows: 1, columns: 1 });
        throw refused("cellsFilled", { sheet: plan.sheet, address });
      }),
    );
  };
  const nothing = () => false;
  filled(block, range.formulas, nothing);
  for (const { area, range: spill } of spills) filled(area, spill.formulas, nothing);
}

/** What stands to the right of a table would be pushed aside by new columns. */
async function checkBeside(sheet: Excel.Worksheet, table: Excel.Range, columns: number): Promise<void> {
  const area = {
    row: table.rowIndex,
    column: table.columnIndex + table.columnCount,
    rows: table.rowCount,
    columns,
  };
  const beside = sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns).load("formulas");
  await sheet.context.sync();
  const filled = (beside.formulas as CellValue[][]).some((line) => line.some((formula) => formula !== ""));
  if (filled) throw refused("cellsFilled", { sheet: sheet.name, address: addressOf(area) });
}

async function write(context: Excel.RequestContext, plan: WorkbookPlan, before: Before, done: Done): Promise<void> {
  const { worksheets } = context.workbook;
  done.shown = before.shown;
  for (const sheetPlan of plan.sheets ?? []) {
    const sheet = worksheets.add(sheetPlan.sheet).load("id,name");
    // Only what Excel has confirmed to be new may be deleted when a later step fails.
    await context.sync();
    done.sheets.push({ id: sheet.id, name: sheet.name, print: "" });
    const checks = await writeSheet(sheet, sheetPlan);
    await verify(context, sheetPlan.sheet, checks);
  }
  let next = 0;
  for (const cellsPlan of plan.cells ?? []) {
    const sheet = worksheets.getItem(cellsPlan.sheet);
    const made = plan.sheets?.some((sheetPlan) => sheetPlan.sheet === cellsPlan.sheet) ?? false;
    const checks = [];
    for (const block of cellsPlan.blocks) {
      if (!made) done.cells.push(before.cells[next++]!);
      checks.push(await writeBlock(sheet, block, made));
    }
    await verify(context, cellsPlan.sheet, checks);
  }
  for (const added of before.columns) await addColumns(context, added, done);
  for (const [index, planned] of (plan.names ?? []).entries()) point(context, planned, before.names[index]!, done);
  if (plan.show !== undefined) worksheets.getItem(plan.show).activate();
  await context.sync();
  await takePrints(context, done);
}

async function addColumns(context: Excel.RequestContext, added: Before["columns"][number], done: Done): Promise<void> {
  const { plan, area } = added;
  const table = context.workbook.tables.getItem(plan.table);
  const sheet = context.workbook.worksheets.getItem(added.sheet);
  const rows = area.rows - 1;
  const headings: string[] = [];
  done.columns.push({ table: plan.table, headings });
  for (const [index, column] of plan.columns.entries()) {
    const at = area.column + area.columns + index;
    const blank = Array.from({ length: rows }, () => [""]);
    table.columns.add(undefined, [[column.heading], ...blank], column.heading);
    headings.push(column.heading);
    const cells = Array.from({ length: rows }, () => [column.cell]);
    if (rows > 0) await writeCells(sheet, area.row + 1, at, cells, () => column.format);
    dressColumn(sheet, column, area.row, at, Math.max(1, rows));
  }
  await context.sync();
}

function point(context: Excel.RequestContext, planned: PlannedName, before: NamePointed, done: Done): void {
  const { names } = context.workbook;
  if (before.before !== null) names.getItem(planned.name).delete();
  names.add(planned.name, planned.formula, planned.note);
  done.names.push(before);
}

/** What the sheets hold now, so that taking back can tell whether a person has changed them since. */
async function takePrints(context: Excel.RequestContext, done: Done): Promise<void> {
  const { worksheets } = context.workbook;
  const made = done.sheets.map(({ id }) => worksheets.getItem(id).getUsedRange(true).load("formulas"));
  const changed = done.cells.map(({ sheet, row, column, formulas }) =>
    worksheets.getItem(sheet).getRangeByIndexes(row, column, formulas.length, formulas[0]!.length).load("formulas"),
  );
  await context.sync();
  done.sheets.forEach((sheet, index) => {
    done.sheets[index] = { ...sheet, print: fingerprint(made[index]!.formulas as CellValue[][]) };
  });
  done.cells.forEach((cells, index) => {
    done.cells[index] = { ...cells, after: fingerprint(changed[index]!.formulas as CellValue[][]) };
  });
}
