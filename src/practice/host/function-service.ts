/** Where the functions runtime inside the client reports to. */
import { HostObject } from "./objects";

/** One answer as the client sends it: [number of the call, worked, value or message, code]. */
export type FunctionResult = readonly [number, boolean, unknown, number?];

interface ResultRecord {
  readonly id: number;
  readonly failed?: boolean;
  readonly value: unknown;
  readonly errorCode?: number;
}

/** Names under which the client asks for this service. */
export const FUNCTION_SERVICES =
  /^Microsoft\.(?:ExcelServices\.CustomFunctions|InternalService\.AddinInternalService)$/;

/** In the workbook nothing arrives here: the spreadsheet calls the functions itself. Tests pass a listener. */
export class FunctionService extends HostObject {
  readonly scalars = [];
  /** Tells hosts from ordinary objects in the client's log. */
  readonly isHost = true;

  constructor(private readonly heard: (results: readonly FunctionResult[]) => void = () => undefined) {
    super();
  }
  SetInvocationResults(results: readonly (ResultRecord | FunctionResult)[]) {
    this.heard(results.map((result) => ("id" in result ? asTuple(result) : result)));
  }
  SetInvocationArrayResults(results: readonly FunctionResult[]) {
    this.heard(results);
  }
  _SetInvocationResult(id: number, value: unknown) {
    this.heard([[id, true, value]]);
  }
  _SetInvocationError(id: number, message: string) {
    this.heard([[id, false, message, 7]]);
  }
  _GetEnabledFeatures() {
    return [];
  }
  _SetOsfControlContainerReadyForCustomFunctions() {
    return null;
  }
  NotifyActionHandlerReady() {
    return null;
  }
}

function asTuple({ id, failed, value, errorCode }: ResultRecord): FunctionResult {
  return [id, !failed, value, errorCode ?? 7];
}
