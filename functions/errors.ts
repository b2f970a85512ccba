import { refuse, sentence, type Problem, type ProblemCode, type Result } from "../src/index";

/**
 * Which error each problem becomes. "notAvailable" (#N/A): something that this range doesn't have, or off the chart;
 * "value" (#VALUE!): something that can't be read or used. Both carry the problem's sentence. Codes are in the order of
 * src/problem.ts; a new one does not compile until it stands here.
 */
const ERRORS: Readonly<Record<ProblemCode, "value" | "notAvailable">> = {
  blank: "value",
  unreadableLength: "value",
  unknownUnit: "value",
  negative: "value",
  badStep: "value",
  badDenominator: "value",
  excelDate: "value",
  notANumber: "value",

  errorCell: "value",
  notTrueOrFalse: "value",
  shapesDiffer: "value",
  oneCellWanted: "value",
  unexpected: "value",
  unreadableName: "value",
  emptyChart: "value",
  chartHeadings: "value",
  wrongTable: "value",
  columnWithoutHeading: "value",
  sizeTwice: "value",
  twoCharts: "value",
  placeTwice: "value",
  sizeNotOnChart: "notAvailable",
  placeNotOnChart: "notAvailable",
  unknownPlace: "value",
  unreadableFigure: "value",
  unknownPattern: "notAvailable",
  noTable: "notAvailable",
  severalTables: "value",
  chartUnitUnknown: "value",
  unknownPerson: "notAvailable",
  severalPeople: "value",
  noBody: "value",

  unknownRule: "value",
  cmAgainstInches: "value",
  aboveChart: "notAvailable",
  belowChart: "notAvailable",
  fallingRow: "value",
  missingFigure: "notAvailable",
  unreadableGroup: "value",
  sizeInNoGroup: "notAvailable",
  tooManyGroups: "value",

  unknownView: "notAvailable",
  unknownPart: "notAvailable",
  unknownNap: "value",
  napNotPrinted: "notAvailable",
  noAmount: "notAvailable",
  widthNotPrinted: "notAvailable",

  unknownGarment: "value",
  noSettingHeadings: "value",
  unknownSetting: "value",
  badSetting: "value",
  unreadableBand: "value",
  noLeastEase: "notAvailable",
  noBand: "notAvailable",
  unknownTerm: "value",
  noBandForTerm: "notAvailable",
  notAboveZero: "value",
  stretchedShorter: "value",
  notMeasured: "value",
  nothingToCompare: "notAvailable",
  unknownRow: "value",
  tightEverywhere: "notAvailable",
  badStretch: "value",

  badClothWidth: "value",
  shrinkage: "value",
  noPieces: "value",
  pieceSize: "value",
  pieceCount: "value",
  tooManyPieces: "value",
  pieceTooWide: "value",
  unknownLayout: "value",
  repeatTooLong: "value",
  badOutline: "value",
  fewerTries: "value",
  unknownCloth: "notAvailable",
  pieceLeftOver: "value",
  unknownFlag: "value",
  piecesHeading: "value",

  unreadableMoney: "value",
  percentAboveOne: "value",
  noHeadings: "value",
  headingMissing: "value",
  unitNotSaid: "value",
};

/** A spreadsheet error as a cell value, the way Excel hands them over. */
export interface ErrorValue {
  readonly type: "Error";
  readonly basicType: "Error";
  readonly basicValue: string;
  readonly errorType: string;
}

const ERROR_TYPES: Readonly<Record<string, string>> = {
  "#DIV/0!": "Div0", "#N/A": "NotAvailable", "#NAME?": "Name", "#NULL!": "Null", "#NUM!": "Num", "#REF!": "Ref",
  "#VALUE!": "Value", "#SPILL!": "Spill", "#CALC!": "Calc", "#FIELD!": "Field", "#BUSY!": "Busy",
  "#GETTING_DATA": "GettingData", "#CONNECT!": "Connect", "#BLOCKED!": "Blocked", "#EXTERNAL!": "External",
}; // prettier-ignore

/** A spreadsheet error that a cell of hers holds, handed on as it is. */
export function errorValue(error: string): ErrorValue {
  return { type: "Error", basicType: "Error", basicValue: error, errorType: ERROR_TYPES[error] ?? "Value" };
}

/** What stands in a cell in place of an answer: our error with its sentence, or the error that her own cell holds. */
export function problemValue(problem: Problem): CustomFunctions.Error | ErrorValue {
  if (problem.code === "errorCell") return errorValue(problem.details.error);
  const code =
    ERRORS[problem.code] === "notAvailable"
      ? CustomFunctions.ErrorCode.notAvailable
      : CustomFunctions.ErrorCode.invalidValue;
  return new CustomFunctions.Error(code, sentence(problem));
}

/** Leaves a function with a problem; only `guarded` catches it. */
class Refusal {
  constructor(readonly problem: Problem) {}
}

/** The value of a result; a problem ends the whole function with its error. */
export function need<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Refusal(result.problem);
}

/**
 * Runs a cell function so that nothing but its answer or a `CustomFunctions.Error` with a sentence leaves it: Excel shows
 * any other exception as a #VALUE! without a word.
 */
export function guarded<T>(work: () => T): T | ErrorValue {
  try {
    return work();
  } catch (thrown) {
    if (thrown instanceof CustomFunctions.Error) throw thrown;
    const problem = thrown instanceof Refusal ? thrown.problem : unexpected(thrown);
    const value = problemValue(problem);
    if (value instanceof CustomFunctions.Error) throw value;
    return value;
  }
}

/** A fault of ours, as a problem. */
export function unexpected(thrown: unknown): Problem {
  const text = thrown instanceof Error ? thrown.message : "";
  return refuse("unexpected", { text: text === "" ? "no more is known" : text }).problem;
}
