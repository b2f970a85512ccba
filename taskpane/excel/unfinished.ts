/** Sheets that are being written are marked in the workbook, so that a pane that was closed over one can tell the next. */
import type { SheetPlan, WriteRefusal } from "../../src/index";
import { inTurn } from "./in-turn";
import type { Reading } from "./read";
import { refusalOf } from "./refusal";
import { keepText, type SheetMade } from "./take-back";

const PREFIX = "sewing.unfinished.";

/** A mark that is still there. */
export interface Unfinished {
  readonly key: string;
  /** When it was set, in milliseconds. */
  readonly since: number;
  /** Those of its sheets that are still in the workbook, as they are called now. */
  readonly sheets: readonly { readonly id: string; readonly name: string }[];
}
interface Marked {
  readonly since: number;
  readonly sheets: readonly { readonly name: string; readonly id: string | null }[];
}

/** Two panes that write at once have a mark each. */
export const newMark = (): string => `${PREFIX}${Date.now().toString(36)}${Math.random().toString(36).slice(2)}`;

/** Before a sheet's first cell. Her sheet is worth more than the mark: a workbook that doesn't take it goes without. */
export async function markSheets(
  key: string,
  planned: readonly SheetPlan[],
  made: readonly SheetMade[],
): Promise<void> {
  const sheets = planned.map(({ sheet: name }, index) => ({ name, id: made[index]?.id ?? null }));
  const marked: Marked = { since: Date.now(), sheets };
  try {
    await Excel.run(async (context) => {
      keepText(context, key, JSON.stringify(marked));
      await context.sync();
    });
  } catch {
    // What is wrong with the workbook stops the write itself, which says so.
  }
}

/** Goes with the last request of a write. */
export function endMark(context: Excel.RequestContext, key: string): void {
  keepText(context, key, null);
}

export async function forgetMark(key: string): Promise<void> {
  await Excel.run(async (context) => {
    endMark(context, key);
    await context.sync();
  });
}

/** What was never finished, or is being written by another window at this moment. */
export async function readUnfinished(): Promise<Reading<readonly Unfinished[]>> {
  return inTurn(async () => {
    try {
      return { ok: true, value: await Excel.run(unfinished) } as const;
    } catch (error) {
      return { ok: false, refusal: refusalOf(error) } as const;
    }
  });
}

async function unfinished(context: Excel.RequestContext): Promise<Unfinished[]> {
  const { settings, worksheets } = context.workbook;
  const all = settings.load("items/key,items/value");
  await context.sync();
  const marks = all.items.flatMap(({ key, value }) => {
    const marked = key.startsWith(PREFIX) ? readMark(value) : undefined;
    return marked ? [{ key, since: marked.since, sheets: marked.sheets }] : [];
  });
  const found = marks.map(({ sheets }) =>
    sheets.map(({ id, name }) => {
      const sheet = worksheets.getItemOrNullObject(id ?? name).load("id,name");
      return { id, sheet, used: sheet.getUsedRangeOrNullObject(true).load("address") };
    }),
  );
  await context.sync();
  return marks.map(({ key, since }, index) => ({
    key,
    since,
    sheets: found[index]! // A sheet whose id was not yet known had no cell of ours in it: with something in it, it is hers.
      .filter(({ id, sheet, used }) => !sheet.isNullObject && (id !== null || used.isNullObject))
      .map(({ sheet }) => ({ id: sheet.id, name: sheet.name })),
  }));
}

function readMark(value: unknown): Marked | undefined {
  try {
    const { since, sheets } = JSON.parse(String(value)) as Marked;
    const isSheet = ({ name, id }: Marked["sheets"][number]) =>
      typeof name === "string" && (id === null || typeof id === "string");
    return typeof since === "number" && Array.isArray(sheets) && sheets.every(isSheet) ? { since, sheets } : undefined;
  } catch {
    return undefined;
  }
}

export type Settled = { readonly ok: true } | { readonly ok: false; readonly refusal: WriteRefusal };

/** Removes the sheets of a mark, whatever stands on them by now, or lets them stay; either way the mark goes. */
export async function settleUnfinished({ key, sheets }: Unfinished, remove: boolean): Promise<Settled> {
  return inTurn(async () => {
    try {
      await Excel.run(async (context) => {
        const there = sheets.map(({ id }) => context.workbook.worksheets.getItemOrNullObject(id).load("name"));
        await context.sync();
        for (const sheet of there) if (remove && !sheet.isNullObject) sheet.delete();
        endMark(context, key);
        await context.sync();
      });
      return { ok: true };
    } catch (error) {
      return { ok: false, refusal: refusalOf(error) };
    }
  });
}
