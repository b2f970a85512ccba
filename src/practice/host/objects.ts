/** What the executor works on: objects whose members have the names that Excel's own object model gives them. */

/** An answer of the workbook that the client turns into a rejected `context.sync()` with this code. */
export class HostError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

const MESSAGES: Readonly<Record<string, string>> = {
  AccessDenied: "You cannot perform the requested operation: the sheet is protected.",
  ItemNotFound: "The requested resource doesn't exist.",
  InvalidArgument: "The argument is invalid or missing or has an incorrect format.",
  ItemAlreadyExists: "The resource being created already exists.",
  InvalidReference: "This reference is not valid for the current operation.",
  InvalidOperation: "This operation is not permitted for the current object.",
  InvalidOperationInCellEditMode: "Excel is in cell-editing mode. Please exit the edit mode and try again.",
  RequestPayloadSizeLimitExceeded: "The request payload size has exceeded the limit.",
  ApiNotFound: "The practice workbook does not offer ",
};

/** Answers with one of Excel's error codes. @throws HostError always */
export function fail(code: string, detail = ""): never {
  throw new HostError(code, (MESSAGES[code] ?? code) + detail);
}

/** What a `…OrNullObject` member returns when there is nothing. */
export const NULL_OBJECT: unique symbol = Symbol("null object");
export type MaybeNull<T> = T | typeof NULL_OBJECT;

/** Base of everything that the client may hold a reference to. */
export abstract class HostObject {
  /** Identifier that the client keeps for later batches (sheets, tables …). */
  Id?: string | number;
  /** Ranges have no Id; the client asks the host to remember them instead. */
  readonly tracked: boolean = false;
  /** Given by the executor when the client first asks it to remember this object. */
  referenceId?: string;
  /** Properties that a bare `load()` brings. */
  abstract readonly scalars: readonly string[];
}

/** A collection whose items are found by their Id, or by their name without regard to case. */
export abstract class HostCollection<T extends HostObject & { Name?: string }> extends HostObject {
  readonly scalars: readonly string[] = [];
  abstract all(): T[];

  find(key: string | number): T | undefined {
    const wanted = String(key).toLowerCase();
    return this.all().find((item) => item.Id === key || item.Name?.toLowerCase() === wanted);
  }
  get Count(): number {
    return this.all().length;
  }
  GetCount(): number {
    return this.all().length;
  }
  GetItem(key: string | number): T {
    return this.find(key) ?? fail("ItemNotFound");
  }
  GetItemOrNullObject(key: string | number): MaybeNull<T> {
    return this.find(key) ?? NULL_OBJECT;
  }
  GetItemAt(index: number): T {
    return this.all()[index] ?? fail("InvalidArgument");
  }
}
