import type { FoundFormula, ShownNow, WriteRefusal } from "../../src/index";
import { isFormulaCell, type Area, type CellValue } from "./cells";
import { refusalOf } from "./refusal";

export type Reading<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusal: WriteRefusal };

export interface TableFacts {
  readonly name: string;
  readonly sheet: string;
  /** Where it stands, headings included: "A4:F9". */
  readonly address: string;
  /** Of its first heading, counted from 0. */
  readonly row: number;
  readonly column: number;
  readonly headings: readonly string[];
  /** How many, without the headings. */
  readonly rows: number;
}
/** What the pane must know of the workbook before it plans anything. */
export interface Facts {
  readonly sheets: readonly string[];
  /** The sheet that is on the screen. */
  readonly shown: string;
  readonly names: readonly string[];
  readonly tables: readonly TableFacts[];
}
export interface RangeCells {
  readonly sheet: string;
  readonly address: string;
  readonly row: number;
  readonly column: number;
  readonly values: readonly (readonly CellValue[])[];
  readonly formulas: readonly (readonly CellValue[])[];
}

async function reading<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<Reading<T>> {
  try {
    return { ok: true, value: await Excel.run(work) };
  } catch (error) {
    return { ok: false, refusal: refusalOf(error) };
  }
}

export async function readFacts(): Promise<Reading<Facts>> {
  return reading(async (context) => {
    const { workbook } = context;
    const sheets = workbook.worksheets.load("items/name");
    const tables = workbook.tables.load("items/name");
    const names = workbook.names.load("items/name");
    const shown = workbook.worksheets.getActiveWorksheet().load("name");
    await context.sync();
    const details = tables.items.map((table) => ({
      name: table.name,
      sheet: table.worksheet.load("name"),
      range: table.getRange().load("address,rowIndex,columnIndex,rowCount"),
      headings: table.getHeaderRowRange().load("values"),
    }));
    await context.sync();
    return {
      sheets: sheets.items.map(({ name }) => name),
      shown: shown.name,
      names: names.items.map(({ name }) => name),
      tables: details.map(({ name, sheet, range, headings }) => ({
        name,
        sheet: sheet.name,
        address: range.address.replace(/^.*!/, ""),
        headings: (headings.values[0] as CellValue[]).map(String),
        row: range.rowIndex,
        column: range.columnIndex,
        rows: range.rowCount - 1,
      })),
    };
  });
}

/** Headings and rows of a table. */
export async function readTable(name: string): Promise<Reading<RangeCells>> {
  return reading((context) => load(context, context.workbook.tables.getItem(name).getRange()));
}

export async function readRange(sheet: string, address: string): Promise<Reading<RangeCells>> {
  return reading((context) => load(context, context.workbook.worksheets.getItem(sheet).getRange(address)));
}

/** What is selected; of whole columns or rows only the part that is in use. */
export async function readSelection(): Promise<Reading<RangeCells>> {
  return reading(async (context) => {
    const selected = context.workbook.getSelectedRange().load("rowCount,columnCount");
    await context.sync();
    const small = selected.rowCount * selected.columnCount <= 100_000;
    return load(context, small ? selected : selected.getUsedRange(true));
  });
}

async function load(context: Excel.RequestContext, range: Excel.Range): Promise<RangeCells> {
  const sheet = range.worksheet.load("name");
  range.load("address,rowIndex,columnIndex,values,formulas");
  await context.sync();
  const { address, rowIndex, columnIndex, values, formulas } = range;
  return {
    sheet: sheet.name,
    address: address.replace(/^.*!/, ""),
    row: rowIndex,
    column: columnIndex,
    values: values as CellValue[][],
    formulas: formulas as CellValue[][],
  };
}

/** The part of a sheet that is in use; undefined for an empty one. */
export async function readUsed(sheet: string): Promise<Reading<Area | undefined>> {
  return reading(async (context) => {
    const used = context.workbook.worksheets.getItem(sheet).getUsedRangeOrNullObject(true);
    used.load("rowIndex,columnIndex,rowCount,columnCount");
    await context.sync();
    if (used.isNullObject) return undefined;
    return { row: used.rowIndex, column: used.columnIndex, rows: used.rowCount, columns: used.columnCount };
  });
}

/** Every cell whose formula is wanted, with all that its answer fills. */
export async function readFormulas(wanted: (formula: string) => boolean): Promise<Reading<FoundFormula[]>> {
  return reading(async (context) => {
    const sheets = context.workbook.worksheets.load("items/name");
    await context.sync();
    const used = sheets.items.map((sheet) =>
      sheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,formulas,values"),
    );
    await context.sync();
    const cells = used.flatMap((range, index) => {
      if (range.isNullObject) return [];
      return (range.formulas as CellValue[][]).flatMap((line, r) =>
        line.flatMap((formula, c) => {
          const value = range.values[r]![c] as CellValue;
          if (!isFormulaCell(formula, value) || !wanted(String(formula))) return [];
          const spill = range.getCell(r, c).getSpillingToRangeOrNullObject().load("values");
          const at = { sheet: sheets.items[index]!.name, row: range.rowIndex + r, column: range.columnIndex + c };
          return [{ ...at, formula: String(formula), value, spill }];
        }),
      );
    });
    await context.sync();
    return cells.map(({ value, spill, ...cell }) => ({
      ...cell,
      values: spill.isNullObject ? [[value]] : (spill.values as CellValue[][]),
    }));
  });
}

/** What the sheets show: a question for each cell, undefined where there is no such sheet. */
export async function readShown(): Promise<Reading<ShownNow>> {
  return reading(async (context) => {
    const sheets = context.workbook.worksheets.load("items/name");
    await context.sync();
    const used = sheets.items.map((sheet) => sheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,values"));
    await context.sync();
    const byName = new Map(sheets.items.map(({ name }, index) => [name, used[index]!]));
    return (sheet, row, column) => {
      const range = byName.get(sheet);
      if (!range) return undefined;
      return range.isNullObject
        ? ""
        : ((range.values[row - range.rowIndex]?.[column - range.columnIndex] as CellValue) ?? "");
    };
  });
}

/** A text that the workbook keeps for the pane. */
export async function recall(key: string): Promise<Reading<string | null>> {
  return reading(async (context) => {
    const item = context.workbook.settings.getItemOrNullObject(key).load("value");
    await context.sync();
    return item.isNullObject ? null : String(item.value);
  });
}

/** The sign between whole numbers and decimals; where it is a comma, arguments are parted by semicolons. */
export async function readDecimalPoint(): Promise<string> {
  const sign = await reading(async (context) => {
    const { application } = context.workbook;
    application.load("decimalSeparator");
    await context.sync();
    return application.decimalSeparator;
  });
  return sign.ok ? sign.value : ".";
}

/**
 * Calls back when cells change, at most once for a burst of changes. Where Excel has no such event nothing happens: the
 * pane has a button for it too.
 */
export async function watch(changed: () => void): Promise<boolean> {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const soon = async () => {
    clearTimeout(waiting);
    waiting = setTimeout(changed, 300);
  };
  const watching = await reading(async (context) => {
    context.workbook.worksheets.onChanged.add(soon);
    await context.sync();
  });
  return watching.ok;
}
