import type { WriteRefusal } from "../../src/index";

/** Thrown inside a write to leave it; never leaves this folder. */
export class Refused extends Error {
  constructor(readonly refusal: WriteRefusal) {
    super(refusal.code);
  }
}

export function refused<Code extends WriteRefusal["code"]>(
  code: Code,
  details: Extract<WriteRefusal, { code: Code }>["details"],
): Refused {
  return new Refused({ code, details } as WriteRefusal);
}

/** What Excel's own error means for the person. Source: "Excel error codes", Office Add-ins documentation. */
export function refusalOf(error: unknown): WriteRefusal {
  if (error instanceof Refused) return error.refusal;
  const { code, message } = error as { code?: string; message?: string };
  switch (code) {
    case "AccessDenied":
      return { code: "protected", details: {} };
    case "InvalidOperationInCellEditMode":
      return { code: "cellBeingEdited", details: {} };
    case "RequestPayloadSizeLimitExceeded":
    case "ResponsePayloadSizeLimitExceeded":
      return { code: "tooLarge", details: {} };
    case "ItemAlreadyExists":
      return { code: "takenMeanwhile", details: {} };
    case "Conflict":
    case "RequestAborted":
      return { code: "shared", details: {} };
    case "UnsupportedFeature":
    case "UnsupportedOperation":
    case "UnsupportedSheet":
      return { code: "unsupported", details: { message: trimmed(message ?? code) } };
    case "ApiNotFound":
    case "ApiNotAvailable":
      return { code: "tooOld", details: { what: message ?? code } };
    default:
      return { code: "failed", details: { message: message ?? String(error) } };
  }
}

/** Excel's sentence as a part of ours. */
const trimmed = (message: string): string => message.trim().replace(/\.$/, "");
