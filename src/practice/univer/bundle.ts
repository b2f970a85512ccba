/** The add-in's built functions.js, run as it is: it needs nothing but a global `CustomFunctions`. */

export type Implementation = (...args: unknown[]) => unknown;
/** Implementations by their id in capitals. */
export type Bundle = ReadonlyMap<string, Implementation>;

/** The codes that cells show, by the names that Excel's runtime gives them. */
export const ERROR_CODES = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
} as const;

/** The runtime's own error, thrown or returned in a cell of an array. */
export class CustomFunctionError extends Error {
  readonly type = "Error";
  constructor(
    readonly code: string = ERROR_CODES.invalidValue,
    message = "",
  ) {
    super(message);
  }
  get basicValue(): string {
    return this.code;
  }
}

/** The global that the bundle expects, and what it has associated with it so far. */
export function customFunctionsGlobal() {
  const found = new Map<string, Implementation>();
  const associate = (id: string, implementation: Implementation) => void found.set(id.toUpperCase(), implementation);
  return { found: found as Bundle, CustomFunctions: { associate, Error: CustomFunctionError, ErrorCode: ERROR_CODES } };
}
