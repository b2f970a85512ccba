import type { PlannedName, WorkbookPlan, WriteRefusal } from "../../src/index";
import { checkNames, readBefore, type Before } from "./before";
import { addressOf, asText, fingerprint, PLACE_SIZE, REQUEST_SIZE, sizeOf, type CellValue } from "./cells";
import { inTurn } from "./in-turn";
import { remember, stillHolds } from "./meanwhile";
import { refusalOf } from "./refusal";
import {
  columnBodies,
  keepText,
  messageOf,
  printOf,
  removeUnconfirmed,
  undo,
  type CellsChanged,
  type ColumnsAdded,
  type NamePointed,
  type Receipt,
  type SheetMade,
  type TextKept,
} from "./take-back";
import { endMark, forgetMark, markSheets, newMark } from "./unfinished";
import { dressColumn, leaveTextFormat, verify, writeBlock, writeCells, writeSheet } from "./write";

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
  readonly kept: TextKept[];
  shown: string | null;
  /** A sheet that was asked for and not yet confirmed. */
  pending?: string | undefined;
  /** Under which the workbook remembers that sheets are being written. */
  mark?: string | undefined;
}

/**
 * Writes a plan into the workbook, whole or not at all: names, sheets, tables and cells are checked first, and what
 * fails after that is cleaned up. What has been written is read back and compared.
 */
export async function carryOut(plan: WorkbookPlan, options: CarryOptions = {}): Promise<Carried> {
  return inTurn(async () => {
    const done: Done = { sheets: [], cells: [], columns: [], names: [], kept: [], shown: null };
    try {
      await Excel.run(async (context) => {
        await checkNames(context, plan);
        const before = await readBefore(context, plan, options.overFilled ?? false);
        await write(context, plan, before, done);
      });
      const { sheets, cells, columns, names, kept, shown } = done;
      return { ok: true, receipt: { sheets, cells, columns, names, kept, shown } };
    } catch (error) {
      // Excel says so when somebody else has made a sheet of that name meanwhile: that one is not ours to remove.
      if ((error as { code?: string }).code === "ItemAlreadyExists") done.pending = undefined;
      return { ok: false, refusal: await cleanedUp(done, refusalOf(error)) };
    }
  });
}

/** Several plans as one write: when a later one is refused, the earlier ones are taken back. */
export async function carryOutAll(plans: readonly WorkbookPlan[]): Promise<Carried> {
  const done: Done = { sheets: [], cells: [], columns: [], names: [], kept: [], shown: null };
  for (const plan of plans) {
    const carried = await carryOut(plan);
    if (!carried.ok) return { ok: false, refusal: await cleanedUp(done, carried.refusal) };
    const { sheets, cells, columns, names, kept, shown } = carried.receipt;
    done.sheets.push(...sheets);
    done.cells.unshift(...cells);
    done.columns.push(...columns);
    done.names.unshift(...names);
    done.kept.unshift(...kept);
    done.shown ??= shown;
  }
  return { ok: true, receipt: done };
}

async function cleanedUp(done: Done, refusal: WriteRefusal): Promise<WriteRefusal> {
  const { mark } = done;
  if (
    done.pending === undefined &&
    mark === undefined &&
    done.sheets.length + done.cells.length + done.columns.length + done.names.length + done.kept.length === 0
  )
    return refusal;
  try {
    const { pending } = done;
    if (pending !== undefined) await onceTyped(() => removeUnconfirmed(pending));
    await onceTyped(() => undo(done));
    if (mark !== undefined) await onceTyped(() => forgetMark(mark));
    return refusal;
  } catch (error) {
    const made = [...done.sheets.map(({ name }) => name), ...done.columns.map(({ table }) => table)];
    const cells = done.cells.map(({ name, row, column, formulas }) => {
      const address = addressOf({ row, column, rows: formulas.length, columns: formulas[0]!.length });
      return `${address} on "${name}"`;
    });
    return {
      code: "halfWritten",
      details: { made: made.join(", "), cells: cells.join(", "), message: messageOf(error) },
    };
  }
}

/** How long a cell may be typed in while a write is being cleaned up, and how often that is looked at, in milliseconds. */
const PATIENCE = 60_000;
const LOOK = 250;

/** Excel refuses everything while a cell is being typed in: cleaning up waits until she has pressed Enter. */
async function onceTyped(work: () => Promise<void>): Promise<void> {
  for (let waited = 0; ; waited += LOOK) {
    try {
      return await work();
    } catch (error) {
      if (refusalOf(error).code !== "cellBeingEdited" || waited >= PATIENCE) throw error;
      await new Promise((resolve) => setTimeout(resolve, LOOK));
    }
  }
}

async function write(context: Excel.RequestContext, plan: WorkbookPlan, before: Before, done: Done): Promise<void> {
  const { worksheets } = context.workbook;
  done.shown = before.shown;
  // What the workbook is to remember is there before the cells that it is remembered of are written over.
  const kept = plan.kept ?? [];
  const isFirst = ({ text, lessThanBefore }: (typeof kept)[number]) => text !== null && !lessThanBefore;
  done.kept.push(...before.kept);
  await remember(context, kept.filter(isFirst));
  const planned = plan.sheets ?? [];
  if (planned.length > 0) {
    done.mark = newMark();
    await markSheets(done.mark, planned, []);
  }
  for (const sheetPlan of planned) {
    done.pending = sheetPlan.sheet;
    const sheet = worksheets.add(sheetPlan.sheet).load("id,name");
    // Only what Excel has confirmed to be new may be deleted when a later step fails.
    await context.sync();
    done.sheets.push({ id: sheet.id, name: sheet.name, print: "" });
    done.pending = undefined;
    await markSheets(done.mark!, planned, done.sheets);
    const checks = await writeSheet(sheet, sheetPlan);
    await verify(context, sheetPlan.sheet, checks);
  }
  let next = 0;
  for (const cellsPlan of plan.cells ?? []) {
    const sheet = worksheets.getItem(cellsPlan.sheet);
    const made = plan.sheets?.some((sheetPlan) => sheetPlan.sheet === cellsPlan.sheet) ?? false;
    const checks = [];
    let size = 0;
    if (cellsPlan.expected !== undefined) await stillHolds(context, cellsPlan, cellsPlan.expected);
    for (const block of cellsPlan.blocks) {
      size += PLACE_SIZE + sizeOf(block.cells);
      if (size > REQUEST_SIZE) {
        await context.sync();
        size = PLACE_SIZE + sizeOf(block.cells);
      }
      if (!made) {
        const changed = before.cells[next++]!;
        done.cells.push(changed);
        leaveTextFormat(sheet, block, changed.formats);
      }
      checks.push(await writeBlock(sheet, block, made));
    }
    await verify(context, cellsPlan.sheet, checks);
  }
  for (const added of before.columns) await addColumns(context, added, done);
  for (const [index, planned] of (plan.names ?? []).entries()) point(context, planned, before.names[index]!, done);
  for (const one of kept) if (!isFirst(one)) keepText(context, one.key, one.text);
  if (done.mark !== undefined) endMark(context, done.mark);
  if (plan.show !== undefined) worksheets.getItem(plan.show).activate();
  await context.sync();
  done.mark = undefined;
  await takePrints(context, done);
}

async function addColumns(context: Excel.RequestContext, added: Before["columns"][number], done: Done): Promise<void> {
  const { plan, area } = added;
  const table = context.workbook.tables.getItem(plan.table);
  const sheet = context.workbook.worksheets.getItem(added.sheet);
  const rows = area.rows - 1;
  const headings: string[] = [];
  done.columns.push({ table: plan.table, headings, print: "" });
  for (const [index, column] of plan.columns.entries()) {
    const at = area.column + area.columns + index;
    const blank = Array.from({ length: rows }, () => [""]);
    // A heading such as =1 or 6-12 is text: it stands in the values, because Excel would read a name as it reads typing.
    const isWords = /^\p{L}\D*$/u.test(column.heading) && !/^(?:true|false)$/i.test(column.heading);
    const heading = isWords ? column.heading : asText(column.heading, "General");
    table.columns.add(undefined, [[heading], ...blank], isWords ? heading : undefined);
    headings.push(column.heading);
    const cells = Array.from({ length: rows }, () => [column.cell]);
    if (rows > 0) await writeCells(sheet, area.row + 1, at, cells, () => column.format);
    dressColumn(sheet, column, area.row, at, Math.max(1, rows));
  }
  const headed = sheet.getRangeByIndexes(area.row, area.column + area.columns, 1, headings.length);
  await verify(context, added.sheet, [{ range: headed, cells: [headings] }]);
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
  const columns = done.columns.map(({ table, headings }) => columnBodies(context, table, headings));
  await context.sync();
  done.columns.forEach((added, index) => {
    done.columns[index] = { ...added, print: printOf(columns[index]!) };
  });
  done.sheets.forEach((sheet, index) => {
    done.sheets[index] = { ...sheet, print: fingerprint(made[index]!.formulas as CellValue[][]) };
  });
  done.cells.forEach((cells, index) => {
    done.cells[index] = { ...cells, after: fingerprint(changed[index]!.formulas as CellValue[][]) };
  });
}
