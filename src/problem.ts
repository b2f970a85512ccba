/**
 * Why there is no answer. A problem is data: a code and the details that its sentence needs; src/words.ts makes the
 * sentence. Details are strings in the reader's own writing ("30 1/2", "92 cm"), because a sentence shows them as they are.
 * A code is added in the section of the room that gives it; its sentence stands in src/words/ in the file of that room.
 */

/** Codes of src/length. */
export interface LengthProblems {
  /** Nothing was given where something is needed. `wanted` says what: "a measurement". */
  readonly blank: { readonly wanted: string };
  readonly unreadableLength: { readonly text: string };
  readonly unknownUnit: { readonly text: string; readonly known: string };
  readonly negative: { readonly text: string; readonly what: string };
  /** A step or a denominator that is zero, negative or not a number. */
  readonly badStep: { readonly text: string };
  readonly badDenominator: { readonly text: string };
  /** A number above 20,000 where a length, a size or a size group belongs: a date that Excel made of 7/8 or 6-12. */
  readonly excelDate: { readonly text: string };
  readonly notANumber: { readonly text: string; readonly wanted: string };
}

/** Codes of src/chart. */
// eslint-disable-next-line @typescript-eslint/no-empty-object-type
export interface ChartProblems {}

/** Codes of src/fit. */
// eslint-disable-next-line @typescript-eslint/no-empty-object-type
export interface FitProblems {}

/** Codes of src/fabric. */
export interface FabricProblems {
  readonly badClothWidth: { readonly text: string };
  /** A share above 0.3: a percentage typed without its sign. */
  readonly shrinkage: { readonly text: string };
}

/** Codes of src/project. */
// eslint-disable-next-line @typescript-eslint/no-empty-object-type
export interface ProjectProblems {}

export interface ProblemDetails extends LengthProblems, ChartProblems, FitProblems, FabricProblems, ProjectProblems {}
export type ProblemCode = keyof ProblemDetails;
export type Problem = {
  [Code in ProblemCode]: { readonly code: Code; readonly details: ProblemDetails[Code] };
}[ProblemCode];

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/** An answer. */
export function answer<T>(value: T): Result<T> {
  return { ok: true, value };
}

/** No answer, and why. */
export function refuse<Code extends ProblemCode>(
  code: Code,
  details: ProblemDetails[Code],
): { readonly ok: false; readonly problem: Problem } {
  return { ok: false, problem: { code, details } as Problem };
}
