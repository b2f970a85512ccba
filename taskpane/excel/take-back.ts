import type { WriteRefusal } from "../../src/index";
import {
  fingerprint,
  isFormulaCell,
  PLACE_SIZE,
  REQUEST_SIZE,
  restored,
  sizeOf,
  slices,
  type CellValue,
} from "./cells";
import { inTurn } from "./in-turn";
import { shareIndex, type IndexShare } from "./index-share";
import { refusalOf, refused } from "./refusal";

/** A sheet that a plan made. */
export interface SheetMade {
  readonly id: string;
  readonly name: string;
  /** Tells whether it has been changed since. */
  readonly print: string;
}
/** Cells of a sheet that was there: what they held before, and what they held afterwards. */
export interface CellsChanged {
  /** Its id, which stays when it is renamed. */
  readonly sheet: string;
  readonly name: string;
  readonly row: number;
  readonly column: number;
  readonly formulas: readonly (readonly CellValue[])[];
  readonly values: readonly (readonly CellValue[])[];
  readonly formats: readonly (readonly string[])[];
  readonly after: string;
}
export interface ColumnsAdded {
  readonly table: string;
  readonly headings: readonly string[];
  /** Tells whether she has typed into them since. */
  readonly print: string;
}
/** `before` is null for a name that was new. */
export interface NamePointed {
  readonly name: string;
  readonly before: string | null;
}
/** A text that the workbook keeps for the pane; `before` is null when there was none. */
export interface TextKept {
  readonly key: string;
  readonly before: string | null;
}
/** What a write did, as plain data: all that is needed to put things back exactly as they were. */
export interface Receipt {
  readonly sheets: readonly SheetMade[];
  readonly cells: readonly CellsChanged[];
  readonly columns: readonly ColumnsAdded[];
  readonly names: readonly NamePointed[];
  readonly kept: readonly TextKept[];
  /** The sheet that was shown before, by its id. */
  readonly shown: string | null;
}

export type Taken = { readonly ok: true } | { readonly ok: false; readonly refusal: WriteRefusal };

/**
 * Puts back exactly what was there before a write. A sheet that has been changed since is left alone unless
 * `evenIfChanged` says that a person wants it gone all the same; whatever she has deleted herself is no hindrance.
 */
export async function takeBack(receipt: Receipt, options: { readonly evenIfChanged?: boolean } = {}): Promise<Taken> {
  return inTurn(async () => {
    let share: IndexShare;
    try {
      await Excel.run((context) => checkOpen(context, receipt));
      share = await Excel.run((context) => shareIndex(context, receipt));
      const { ours } = share;
      if (!options.evenIfChanged) await Excel.run((context) => checkUnchanged(context, ours));
    } catch (error) {
      return { ok: false, refusal: refusalOf(error) };
    }
    const { errors, taken } = await undoSteps(share);
    if (errors.length === 0) return { ok: true };
    const refusal = refusalOf(errors[0]);
    // A cell being typed in, or a protected workbook, refuses a step before it has begun.
    if (!taken && (refusal.code === "cellBeingEdited" || refusal.code === "protected")) return { ok: false, refusal };
    return { ok: false, refusal: { code: "takenBackInPart", details: { message: messageOf(errors[0]) } } };
  });
}

/** @throws Refused when a sheet that was there has been protected since: else only part would be taken back */
async function checkOpen(context: Excel.RequestContext, receipt: Receipt): Promise<void> {
  const { workbook } = context;
  const tables = receipt.columns.map(({ table }) => workbook.tables.getItemOrNullObject(table).load("name"));
  const sheets = receipt.cells.map(({ sheet }) => existing(context, sheet));
  await context.sync();
  const there = [
    ...tables.filter((table) => !table.isNullObject).map(({ worksheet }) => worksheet),
    ...sheets.filter((sheet) => !sheet.isNullObject),
  ];
  for (const sheet of there) sheet.protection.load("protected");
  await context.sync();
  if (there.some(({ protection }) => protection.protected)) throw refused("protected", {});
}

/** @throws Refused when something that would be lost is not what was written */
async function checkUnchanged(context: Excel.RequestContext, receipt: Receipt): Promise<void> {
  const sheets = receipt.sheets.map((made) => ({ made, sheet: existing(context, made.id) }));
  const cells = receipt.cells.map((changed) => ({ changed, sheet: existing(context, changed.sheet) }));
  await context.sync();
  const left = [...sheets, ...cells].some(({ sheet }) => !sheet.isNullObject);
  if (!left && sheets.length + cells.length > 0 && receipt.columns.length === 0) throw refused("nothingToTakeBack", {});
  const used = sheets
    .filter(({ sheet }) => !sheet.isNullObject)
    .map(({ made, sheet }) => ({ made, range: sheet.getUsedRange(true).load("formulas"), sheet }));
  const now = cells
    .filter(({ sheet }) => !sheet.isNullObject)
    .map(({ changed, sheet }) => ({ changed, range: rangeOf(sheet, changed).load("formulas"), sheet }));
  const columns = receipt.columns.map(({ table, headings, print }) => ({
    table,
    print,
    bodies: columnBodies(context, table, headings),
  }));
  await context.sync();
  for (const { table, print, bodies } of columns)
    if (bodies.every(({ isNullObject }) => !isNullObject) && printOf(bodies) !== print)
      throw refused("changedSince", { sheet: table });
  for (const { made, range, sheet } of used)
    if (fingerprint(range.formulas as CellValue[][]) !== made.print)
      throw refused("changedSince", { sheet: sheet.name });
  for (const { changed, range, sheet } of now)
    if (fingerprint(range.formulas as CellValue[][]) !== changed.after)
      throw refused("changedSince", { sheet: sheet.name });
}

/** What stands under some headings of a table; null objects where she has taken the table or a column away herself. */
export function columnBodies(
  context: Excel.RequestContext,
  table: string,
  headings: readonly string[],
): readonly Excel.Range[] {
  const { columns } = context.workbook.tables.getItemOrNullObject(table);
  return headings.map((heading) => columns.getItemOrNullObject(heading).getDataBodyRange().load("formulas"));
}

export const printOf = (bodies: readonly Excel.Range[]): string =>
  fingerprint(bodies.flatMap(({ formulas }) => formulas as CellValue[][]));

/** The steps of a write in reverse. Also cleans up after a write that failed half-way. @throws the first error, after all has been tried */
export async function undo(receipt: Receipt): Promise<void> {
  const { errors } = await undoSteps(await Excel.run((context) => shareIndex(context, receipt)));
  if (errors.length > 0) throw errors[0];
}

/** Each by itself: what one of them can't put back does not keep the others from it. `taken`: one with work to do did it. */
async function undoSteps(share: IndexShare): Promise<{ readonly errors: readonly unknown[]; readonly taken: boolean }> {
  const { ours: receipt, unlist } = share;
  const errors: unknown[] = [];
  let taken = false;
  const attempt = async (work: number, step: (context: Excel.RequestContext) => Promise<void>): Promise<boolean> => {
    if (work === 0) return true;
    try {
      await Excel.run(step);
      taken = true;
      return true;
    } catch (error) {
      errors.push(error);
      return false;
    }
  };
  const { names, cells, kept, columns, sheets, shown } = receipt;
  if (unlist) await attempt(1, unlist);
  await attempt(names.length, (context) => undoNames(context, receipt));
  const areCellsBack = await attempt(cells.length, (context) => undoCells(context, receipt));
  // What the workbook remembers of cells that are not back is needed more than ever.
  await attempt(kept.length, (context) => undoKept(context, receipt, areCellsBack));
  await attempt(columns.length, (context) => undoColumns(context, receipt));
  await attempt(sheets.length + (shown === null ? 0 : 1), (context) => undoSheets(context, receipt));
  return { errors, taken };
}

export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

async function undoNames(context: Excel.RequestContext, { names }: Receipt): Promise<void> {
  const { workbook } = context;
  const items = names.map(({ name }) => workbook.names.getItemOrNullObject(name).load("name"));
  await context.sync();
  names.forEach(({ name, before }, index) => {
    if (!items[index]!.isNullObject) items[index]!.delete();
    if (before !== null) workbook.names.add(name, before);
  });
  await context.sync();
}

/** @param all whether what stands there now goes too */
async function undoKept(context: Excel.RequestContext, { kept }: Receipt, all: boolean): Promise<void> {
  const now = kept.map(({ key }) => context.workbook.settings.getItemOrNullObject(key).load("key"));
  await context.sync();
  kept.forEach(({ key, before }, index) => {
    if (all || (now[index]!.isNullObject && before !== null)) keepText(context, key, before);
  });
  await context.sync();
}

async function undoCells(context: Excel.RequestContext, receipt: Receipt): Promise<void> {
  const sheets = receipt.cells.map(({ sheet }) => existing(context, sheet));
  await context.sync();
  const there = receipt.cells.flatMap((changed, index) => {
    const sheet = sheets[index]!;
    return sheet.isNullObject ? [] : partsOf(changed).map((part) => ({ part, sheet }));
  });
  // The same requests as the write had, or what was written in many could not be taken back in one.
  for (const group of slices(there, REQUEST_SIZE, ({ part }) => PLACE_SIZE + sizeOf(part))) {
    const read = group.map(({ part, sheet }) => ({
      part,
      range: rangeOf(sheet, part).load("formulas,values,numberFormat"),
    }));
    await context.sync();
    for (const { part, range } of read) {
      const { formulas, values, formats } = part;
      // A write that never came so far has nothing to put back, and a protected sheet refuses even that.
      if (same([range.formulas, range.values, range.numberFormat], [formulas, values, formats])) continue;
      // A formula may stand in a cell that was made one for text later: written there it would become its own text.
      const isFormula = (r: number, c: number) => isFormulaCell(formulas[r]![c]!, values[r]![c]!);
      const open = formats.map((line, r) =>
        line.map((format, c) => (format === "@" && isFormula(r, c) ? "General" : format)),
      );
      range.numberFormat = open;
      range.formulas = formulas.map((line, r) =>
        line.map((formula, c) => restored(formula, values[r]![c]!, formats[r]![c]!)),
      );
      if (!same(open, formats)) range.numberFormat = formats;
    }
    await context.sync();
  }
}

/** Its rows in runs that are small enough for one request. */
function partsOf({ row, column, formulas, values, formats }: CellsChanged) {
  let next = row;
  return slices(
    formulas.map((line, r) => ({ formulas: [...line], values: values[r]!, formats: [...formats[r]!] })),
  ).map((lines) => {
    const at = next;
    next += lines.length;
    return {
      row: at,
      column,
      formulas: lines.map((line) => line.formulas),
      values: lines.map((line) => line.values),
      formats: lines.map((line) => line.formats),
    };
  });
}
const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

async function undoColumns(context: Excel.RequestContext, receipt: Receipt): Promise<void> {
  for (const added of receipt.columns) {
    const table = context.workbook.tables.getItemOrNullObject(added.table).load("name");
    await context.sync();
    if (table.isNullObject) continue;
    const there = added.headings.map((heading) => table.columns.getItemOrNullObject(heading).load("name"));
    await context.sync();
    for (const column of there.reverse()) if (!column.isNullObject) column.delete();
    await context.sync();
  }
}

async function undoSheets(context: Excel.RequestContext, receipt: Receipt): Promise<void> {
  const sheets = receipt.sheets.map(({ id }) => existing(context, id));
  const shown = receipt.shown === null ? undefined : existing(context, receipt.shown);
  await context.sync();
  if (shown && !shown.isNullObject) shown.activate();
  for (const sheet of sheets) if (!sheet.isNullObject) sheet.delete();
  await context.sync();
}

/** Removes a sheet that was asked for but never confirmed: only an empty one, because nothing was written into it yet. */
export async function removeUnconfirmed(name: string): Promise<void> {
  await Excel.run(async (context) => {
    const sheet = existing(context, name);
    await context.sync();
    if (sheet.isNullObject) return;
    const used = sheet.getUsedRangeOrNullObject(true).load("address");
    await context.sync();
    if (used.isNullObject) sheet.delete();
    await context.sync();
  });
}

function existing(context: Excel.RequestContext, sheet: string): Excel.Worksheet {
  return context.workbook.worksheets.getItemOrNullObject(sheet).load("name");
}

export function rangeOf(
  sheet: Excel.Worksheet,
  { row, column, formulas }: Pick<CellsChanged, "row" | "column" | "formulas">,
) {
  return sheet.getRangeByIndexes(row, column, formulas.length, formulas[0]!.length);
}

/** Keeps a text in the workbook, or forgets it; what is not there is forgotten already. */
export function keepText(context: Excel.RequestContext, key: string, text: string | null): void {
  const { settings } = context.workbook;
  if (text === null) settings.getItemOrNullObject(key).delete();
  else settings.add(key, text);
}
