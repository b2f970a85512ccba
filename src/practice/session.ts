/** A workbook behind the real client: what the client sends is carried out, what happens in the workbook is told to it. */
import { type Batch, Executor, type Reply } from "./host/executor";
import { HostError } from "./host/objects";
import { type BatchRunner, type Bridge, sendEvents } from "./host/office-client";
import { watchBook } from "./univer/book/events";
import type { UniverBook } from "./univer/book/workbook";

export interface SessionOptions {
  /** True while a cell is being edited: Excel carries out nothing then. */
  readonly editing?: () => boolean;
  /** Largest batch in bytes; Excel for the web takes 5 MB. */
  readonly limit?: number;
  /** Characters that the workbook's settings may hold together, when it is to be fewer than Excel's 2 MB. */
  readonly storage?: number;
  /** Called before each batch; when it throws, the batch is refused whole. */
  readonly before?: (batch: Batch) => void;
}

export interface Session extends BatchRunner {
  readonly executor: Executor;
  /** Ends the batch that comes next after so many of its actions, with this error. */
  interrupt(afterActions: number, code: string): void;
}

const FIVE_MEGABYTES = 5 * 1024 * 1024;

export function openSession(book: UniverBook, bridge: Bridge, options: SessionOptions = {}): Session {
  const { editing = () => false, limit = FIVE_MEGABYTES } = options;
  if (options.storage !== undefined) book.storage = options.storage;
  let cut: { readonly after: number; readonly code: string } | undefined;
  const refuse = (batch: Batch) => {
    if (editing()) return new HostError("InvalidOperationInCellEditMode", EDITING);
    if (limit < JSON.stringify(batch).length) return new HostError("RequestPayloadSizeLimitExceeded", TOO_LARGE);
    return undefined;
  };
  const executor = new Executor(book, {
    settle: () => book.calculation.settled(),
    around: (work) => book.asOneStep(work),
    refuse,
  });
  watchBook(book, (events) => sendEvents(bridge, events));
  const run = async (batch: Batch): Promise<Reply> => {
    try {
      options.before?.(batch);
    } catch {
      cut = { after: 0, code: "GeneralException" };
    }
    if (!cut) return executor.run(batch);
    const { after, code } = cut;
    cut = undefined;
    const reply = await executor.run({ ...batch, Actions: batch.Actions.slice(0, after) });
    const Error = { Code: code, Message: code, ActionIndex: after, HttpStatusCode: 400 };
    return reply.Error ? reply : { ...reply, Error };
  };
  return { executor, run, interrupt: (after, code) => (cut = { after, code }) };
}

const EDITING = "Excel is in cell-editing mode. Please exit the edit mode and try again.";
const TOO_LARGE = "The request payload size has exceeded the limit.";
