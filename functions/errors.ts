import { capital, refuse, sentence, type Problem, type ProblemCode, type Result } from "../src/index";

/**
 * Problems that become #VALUE!: something that can't be read or used. Any other is #N/A. Codes are in the order of
 * src/problem.ts; a new one does not compile until it stands here or below.
 */
type ValueCode = Known<
  | "blank"
  | "unreadableLength"
  | "unknownUnit"
  | "negative"
  | "badStep"
  | "badDenominator"
  | "excelDate"
  | "notANumber"
  | "errorCell"
  | "notTrueOrFalse"
  | "shapesDiffer"
  | "oneCellWanted"
  | "unexpected"
  | "unreadableName"
  | "emptyChart"
  | "chartHeadings"
  | "wrongTable"
  | "columnWithoutHeading"
  | "sizeTwice"
  | "twoCharts"
  | "placeTwice"
  | "unknownPlace"
  | "unreadableFigure"
  | "severalTables"
  | "tablesDiffer"
  | "chartUnitUnknown"
  | "severalPeople"
  | "noBody"
  | "unknownRule"
  | "cmAgainstInches"
  | "fallingRow"
  | "unreadableGroup"
  | "tooManyGroups"
  | "unknownNap"
  | "unknownGarment"
  | "noSettingHeadings"
  | "unknownSetting"
  | "badSetting"
  | "unreadableBand"
  | "unknownTerm"
  | "notAboveZero"
  | "stretchedShorter"
  | "notMeasured"
  | "unknownRow"
  | "badStretch"
  | "badClothWidth"
  | "shrinkage"
  | "noPieces"
  | "pieceSize"
  | "pieceCount"
  | "tooManyPieces"
  | "pieceTooWide"
  | "unknownLayout"
  | "repeatTooLong"
  | "badOutline"
  | "badWidths"
  | "fewerTries"
  | "pieceLeftOver"
  | "unknownFlag"
  | "piecesHeading"
  | "unreadableMoney"
  | "percentAboveOne"
  | "noHeadings"
  | "headingMissing"
  | "unitNotSaid"
>;
type Known<Code extends ProblemCode> = Code;

/** Problems that become #N/A: something that this range doesn't have, or off the chart. */
const NOT_AVAILABLE: Readonly<Record<Exclude<ProblemCode, ValueCode>, true>> = {
  sizeNotOnChart: true,
  placeNotOnChart: true,
  unknownPattern: true,
  noTable: true,
  unknownPerson: true,
  aboveChart: true,
  belowChart: true,
  missingFigure: true,
  sizeInNoGroup: true,
  unknownView: true,
  unknownPart: true,
  napNotPrinted: true,
  noAmount: true,
  widthNotPrinted: true,
  noLeastEase: true,
  noBand: true,
  noBandForTerm: true,
  nothingToCompare: true,
  tightEverywhere: true,
  unknownCloth: true,
};

/** A spreadsheet error as a cell value, the way Excel hands them over. */
export interface ErrorValue {
  readonly type: "Error";
  readonly basicType: "Error";
  readonly basicValue: string;
  readonly errorType: string;
}

/** The name that goes with an error: "#DIV/0!" is Div0, "#GETTING_DATA" GettingData. */
function errorType(error: string): string {
  const words = error.toLowerCase().split(/[^a-z\d]+/);
  return error === "#N/A" ? "NotAvailable" : words.map(capital).join("") || "Value";
}

/** A spreadsheet error that a cell of hers holds, handed on as it is. */
export function errorValue(error: string): ErrorValue {
  return { type: "Error", basicType: "Error", basicValue: error, errorType: errorType(error) };
}

/** What stands in a cell in place of an answer: our error with its sentence, or the error that her own cell holds. */
export function problemValue(problem: Problem): CustomFunctions.Error | ErrorValue {
  if (problem.code === "errorCell") return errorValue(problem.details.error);
  const { notAvailable, invalidValue } = CustomFunctions.ErrorCode;
  return new CustomFunctions.Error(problem.code in NOT_AVAILABLE ? notAvailable : invalidValue, sentence(problem));
}

/** Leaves a function, or one element of a look-up, with a problem. */
class Refusal {
  constructor(readonly problem: Problem) {}
}

/** The value of a result; a problem ends the function, or the element of a look-up, with its error. */
export function need(result: { readonly ok: false; readonly problem: Problem }): never;
export function need<T>(result: Result<T>): T;
export function need<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Refusal(result.problem);
}

/** The problem that was thrown, or a fault of ours as one; a finished error goes on its way. */
export function problemIn(thrown: unknown): Problem {
  if (thrown instanceof CustomFunctions.Error) throw thrown;
  if (thrown instanceof Refusal) return thrown.problem;
  const text = thrown instanceof Error ? thrown.message : "";
  return refuse("unexpected", { text: text === "" ? "no more is known" : text }).problem;
}

/**
 * Runs a cell function so that nothing but its answer or a `CustomFunctions.Error` with a sentence leaves it: Excel shows
 * any other exception as a #VALUE! without a word.
 */
export function guarded<T>(work: () => T): T | ErrorValue {
  try {
    return work();
  } catch (thrown) {
    return thrownOr(problemValue(problemIn(thrown)));
  }
}

/** A cell's answer; an error of ours must be thrown, where it is the only answer. */
export function thrownOr<T>(answer: T | CustomFunctions.Error): T {
  if (answer instanceof CustomFunctions.Error) throw answer;
  return answer;
}
