/** What is looked at before anything is written: names, missing things, filled cells, and what must come back later. */
import type { CellsPlan, ColumnsPlan, WorkbookPlan } from "../../src/index";
import { addressOf, areaOf, isFormulaCell, type Area, type CellValue } from "./cells";
import { refused } from "./refusal";
import type { CellsChanged, NamePointed, TextKept } from "./take-back";

/** @throws Refused when a name is taken, or something that should be there is not */
export async function checkNames(context: Excel.RequestContext, plan: WorkbookPlan): Promise<void> {
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

/** What stands in the places that are to be written. */
export interface Before {
  readonly cells: readonly CellsChanged[];
  readonly columns: readonly { readonly plan: ColumnsPlan; readonly area: Area; readonly sheet: string }[];
  readonly names: readonly NamePointed[];
  readonly kept: readonly TextKept[];
  readonly shown: string;
}

/** @throws Refused when a cell is filled and nobody has agreed to it */
export async function readBefore(context: Excel.RequestContext, plan: WorkbookPlan, over: boolean): Promise<Before> {
  const { workbook } = context;
  const shown = workbook.worksheets.getActiveWorksheet().load("id");
  const names = (plan.names ?? []).map((planned) => ({
    planned,
    item: workbook.names.getItemOrNullObject(planned.name).load("formula"),
  }));
  const kept = (plan.kept ?? []).map(({ key }) => ({
    key,
    item: workbook.settings.getItemOrNullObject(key).load("value"),
  }));
  const places = (plan.cells ?? [])
    // A plan may fill cells of a sheet that it makes itself: those are empty.
    .filter(({ sheet }) => !plan.sheets?.some((made) => made.sheet === sheet))
    .flatMap((cellsPlan) =>
      cellsPlan.blocks.map((block) => ({ cellsPlan, ...areaOf(block.cells, block.row, block.column) })),
    );
  for (const { cellsPlan, block, spills } of places) checkRoom(cellsPlan.sheet, [block, ...spills]);
  const read = places.map(({ cellsPlan, block, spills }) => {
    const sheet = workbook.worksheets.getItem(cellsPlan.sheet).load("id");
    sheet.protection.load("protected");
    const load = (area: Area) =>
      sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns).load("formulas,values,numberFormat");
    return { sheet, range: load(block), spills: spills.map((area) => ({ area, range: load(area) })) };
  });
  const columns = (plan.columns ?? []).map((columnsPlan) => {
    const table = workbook.tables.getItem(columnsPlan.table);
    const range = table.getRange().load("rowIndex,columnIndex,rowCount,columnCount");
    const headings = table.getHeaderRowRange().load("values");
    const sheet = table.worksheet.load("name");
    sheet.protection.load("protected");
    return { columnsPlan, range, headings, sheet };
  });
  await context.sync();
  if ([...read, ...columns].some(({ sheet }) => sheet.protection.protected)) throw refused("protected", {});
  if (!over) places.forEach((place, index) => checkEmpty(place.cellsPlan, place.block, read[index]!));
  const spilled = await spilledCells(context, read);
  for (const { columnsPlan, range, headings, sheet } of columns) {
    const there = new Set((headings.values[0] as CellValue[]).map((heading) => `${heading}`.toLowerCase()));
    const taken = columnsPlan.columns.find(({ heading }) => there.has(heading.toLowerCase()));
    if (taken) throw refused("columnTaken", { table: columnsPlan.table, column: taken.heading });
    await checkBeside(sheet, range, columnsPlan.columns.length);
  }
  return {
    shown: shown.id,
    kept: kept.map(({ key, item }) => ({ key, before: item.isNullObject ? null : String(item.value) })),
    names: names.map(({ planned, item }) => ({ name: planned.name, before: item.isNullObject ? null : item.formula })),
    cells: places.map(({ block, cellsPlan: { sheet: name } }, index) => {
      const { sheet, range } = read[index]!;
      const { values, numberFormat: formats } = range;
      const formulas = withoutSpilled(range.formulas, block, spilled[index]!);
      return { sheet: sheet.id, name, row: block.row, column: block.column, formulas, values, formats, after: "" };
    }),
    columns: columns.map(({ columnsPlan, range, sheet }) => ({
      plan: columnsPlan,
      sheet: sheet.name,
      area: { row: range.rowIndex, column: range.columnIndex, rows: range.rowCount, columns: range.columnCount },
    })),
  };
}

/** The areas that formulas of these cells fill; what stands there is theirs and comes back with them. */
async function spilledCells(context: Excel.RequestContext, places: readonly ReadPlace[]): Promise<Area[][]> {
  const loaded = places.map(({ range }) =>
    (range.formulas as CellValue[][]).flatMap((line, r) =>
      line.flatMap((formula, c) => {
        if (!isFormulaCell(formula, range.values[r]![c] as CellValue)) return [];
        const spill = range.getCell(r, c).getSpillingToRangeOrNullObject();
        return [spill.load("rowIndex,columnIndex,rowCount,columnCount")];
      }),
    ),
  );
  if (loaded.every((list) => list.length === 0)) return places.map(() => []);
  await context.sync();
  return loaded.map((list) =>
    list
      .filter((spill) => !spill.isNullObject)
      .map((spill) => ({
        row: spill.rowIndex,
        column: spill.columnIndex,
        rows: spill.rowCount,
        columns: spill.columnCount,
      })),
  );
}

function withoutSpilled(formulas: CellValue[][], block: Area, spills: readonly Area[]): CellValue[][] {
  const isSpilled = (row: number, column: number) =>
    spills.some((area) => {
      const [down, right] = [row - area.row, column - area.column];
      return down >= 0 && right >= 0 && down < area.rows && right < area.columns && down + right > 0;
    });
  return formulas.map((line, r) =>
    line.map((formula, c) => (isSpilled(block.row + r, block.column + c) ? "" : formula)),
  );
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

/** Rows and columns of a sheet. Source: "Excel specifications and limits", Microsoft Support. */
const [ROWS, COLUMNS] = [1_048_576, 16_384];

function checkRoom(sheet: string, areas: readonly Area[]): void {
  if (areas.some(({ row, rows, column, columns }) => row + rows > ROWS || column + columns > COLUMNS))
    throw refused("sheetFull", { sheet });
}

/** What stands to the right of a table would be pushed aside by new columns. */
async function checkBeside(sheet: Excel.Worksheet, table: Excel.Range, columns: number): Promise<void> {
  const area = {
    row: table.rowIndex,
    column: table.columnIndex + table.columnCount,
    rows: table.rowCount,
    columns,
  };
  checkRoom(sheet.name, [area]);
  const beside = sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns).load("formulas");
  await sheet.context.sync();
  const filled = (beside.formulas as CellValue[][]).some((line) => line.some((formula) => formula !== ""));
  if (filled) throw refused("cellsFilled", { sheet: sheet.name, address: addressOf(area) });
}
