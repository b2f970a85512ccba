/** What happens in the workbook, told to the client: cells changed, another selection. */
import type { ICommandInfo } from "@univerjs/core";
import type { HostEvent } from "../../host/office-client";
import { type Area, formatArea, fromUniver, type UniverArea, union } from "../address";
import type { UniverBook } from "./workbook";

/** The client's numbers for the events, and its name for "any sheet". */
const EVENT = { changed: 10, selectionChanged: 14 } as const;
const ANY_SHEET = "Workbook";

/** All events are sent; the client passes on those that somebody listens to. */
export const listening = (): null => null;

interface Params {
  readonly unitId?: string;
  readonly subUnitId?: string;
  readonly cellValue?: Record<string, Record<string, { v?: unknown; f?: unknown } | null>>;
  readonly range?: UniverArea;
  readonly selections?: readonly { readonly range: UniverArea }[];
}

const CHANGES: Readonly<Record<string, string>> = {
  "sheet.mutation.set-range-values": "RangeEdited",
  "sheet.mutation.insert-row": "RowInserted",
  "sheet.mutation.remove-rows": "RowDeleted",
  "sheet.mutation.insert-col": "ColumnInserted",
  "sheet.mutation.remove-col": "ColumnDeleted",
};
const SELECTION = "sheet.operation.set-selections";

/** Calls `heard` with the events of one turn, several edits of one sheet taken together. */
export function watchBook(book: UniverBook, heard: (events: readonly HostEvent[]) => void): void {
  let waiting = new Map<string, { readonly sheet: string; readonly changeType: string; readonly area: Area }>();
  let selected: { readonly sheet: string; readonly area: Area } | undefined;

  const send = () => {
    const events = [...waiting.values()].flatMap(({ sheet, changeType, area }) =>
      event(EVENT.changed, sheet, { changeType, ...place(book, sheet, area), source: "Local" }),
    );
    if (selected)
      events.push(...event(EVENT.selectionChanged, selected.sheet, place(book, selected.sheet, selected.area)));
    waiting = new Map();
    selected = undefined;
    heard(events);
  };

  book.api.onCommandExecuted((command: Readonly<ICommandInfo>, options?: { onlyLocal?: boolean }) => {
    const params = (command.params ?? {}) as Params;
    if (params.unitId !== book.fbook.getId() || params.subUnitId === undefined) return;
    const sheet = params.subUnitId;
    const idle = waiting.size === 0 && !selected;
    const range = params.selections?.at(-1)?.range;
    const changeType = CHANGES[command.id];
    if (command.id === SELECTION && range) selected = { sheet, area: fromUniver(range) };
    else if (changeType && options?.onlyLocal !== true) {
      const area = params.range ? fromUniver(params.range) : written(params);
      const before = waiting.get(sheet + changeType)?.area;
      if (area) waiting.set(sheet + changeType, { sheet, changeType, area: before ? union(before, area) : area });
    }
    if (idle && (waiting.size > 0 || selected)) queueMicrotask(send);
  });
}

/** The cells whose content was written; mere formats are no change. */
function written({ cellValue = {} }: Params): Area | undefined {
  let found: Area | undefined;
  for (const [row, line] of Object.entries(cellValue)) {
    for (const [column, cell] of Object.entries(line)) {
      if (cell && !("v" in cell) && !("f" in cell)) continue;
      const area = { row: Number(row), column: Number(column), rows: 1, columns: 1 };
      found = found ? union(found, area) : area;
    }
  }
  return found;
}

function place(book: UniverBook, sheet: string, area: Area) {
  const owner = book.Worksheets.find(sheet);
  return { worksheetId: sheet, address: formatArea(area), referenceId: `${owner?.Name ?? ""}!${formatArea(area)}` };
}

const event = (messageType: number, sheet: string, data: object): HostEvent[] =>
  [sheet, ANY_SHEET].map((targetId) => ({ messageType, targetId, data }));
