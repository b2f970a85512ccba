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
export interface ChartProblems {
  /** A cell holds a spreadsheet error, which the answer hands on as it is. */
  readonly errorCell: { readonly error: string };
  readonly notTrueOrFalse: { readonly text: string };
  /** Look-up ranges that don't go together: "3 × 1" and "5 × 1". */
  readonly shapesDiffer: { readonly one: string; readonly other: string };
  /** A range where one cell belongs. `what` says which: "The person". */
  readonly oneCellWanted: { readonly what: string };
  /** A fault of ours. */
  readonly unexpected: { readonly text: string };
  readonly unreadableName: { readonly text: string; readonly what: string };

  readonly emptyChart: { readonly wanted: string };
  /** No headings, so no sizes: a table's bare name. */
  readonly chartHeadings: { readonly found: string };
  readonly wrongTable: { readonly found: string; readonly wanted: string };
  readonly columnWithoutHeading: { readonly column: string; readonly figure: string };
  readonly sizeTwice: { readonly size: string };
  readonly twoCharts: { readonly found: string };
  readonly placeTwice: { readonly place: string };
  readonly sizeNotOnChart: { readonly size: string; readonly known: string };
  readonly placeNotOnChart: { readonly place: string; readonly known: string };
  readonly unknownPlace: { readonly text: string; readonly known: string };
  readonly unreadableFigure: { readonly text: string };
  readonly unknownPattern: { readonly text: string; readonly known: string };
  readonly noTable: { readonly pattern: string; readonly kind: string };
  readonly severalTables: { readonly pattern: string; readonly tables: string };
  /** A unit in the text, and a chart that doesn't say its own. */
  readonly chartUnitUnknown: { readonly text: string };
  readonly unknownPerson: { readonly text: string; readonly known: string };
  readonly severalPeople: { readonly known: string };
  readonly noBody: { readonly found: string };
}

/** Codes of src/fit. */
export interface FitProblems {
  /** Body tables that suit a body equally well and answer differently; `wanted` would tell them apart, if anything. */
  readonly tablesDiffer: { readonly pattern: string; readonly answers: string; readonly wanted: string };
  readonly unknownGarment: { readonly text: string; readonly known: string };
  readonly noSettingHeadings: Readonly<Record<string, never>>;
  /** Rows of a settings table are counted from 1 below its headings. */
  readonly unknownSetting: { readonly row: number; readonly text: string; readonly known: string };
  readonly badSetting: {
    readonly row: number;
    readonly setting: string;
    readonly text: string;
    readonly wanted: string;
  };
  readonly unreadableBand: { readonly text: string };
  readonly noLeastEase: { readonly place: string; readonly garment: string };
  readonly noBand: { readonly ease: string; readonly garment: string; readonly place: string };
  readonly unknownTerm: { readonly text: string; readonly known: string };
  readonly noBandForTerm: { readonly term: string; readonly garment: string; readonly place: string };
  readonly notAboveZero: { readonly text: string; readonly what: string };
  readonly stretchedShorter: { readonly rest: string; readonly stretched: string };
  /** `person` is "" where nobody is named. */
  readonly notMeasured: { readonly place: string; readonly person: string };
  /** Finished measurements that share no place with the chart and the body. */
  readonly nothingToCompare: Readonly<Record<string, never>>;
  /** Not one of the two rows in which the high bust may be read. */
  readonly unknownRow: { readonly text: string };
  /** Even the largest size has too little ease. */
  readonly tightEverywhere: {
    readonly size: string;
    readonly place: string;
    readonly ease: string;
    readonly wanted: string;
    readonly lacking: string;
  };
  /** A share below zero or above 5: a percentage typed without its sign. */
  readonly badStretch: { readonly text: string };
}

/** Codes of the size look-ups of src/fit. */
export interface SizeProblems {
  readonly unknownRule: { readonly text: string; readonly known: string };
  /** Inches beside centimetres, by the size of the numbers. */
  readonly cmAgainstInches: { readonly found: string; readonly against: string };
  readonly aboveChart: { readonly measure: string; readonly place: string; readonly by: string; readonly end: string };
  readonly belowChart: { readonly measure: string; readonly place: string; readonly by: string; readonly end: string };
  readonly fallingRow: { readonly place: string; readonly size: string; readonly figures: string };
  readonly missingFigure: { readonly place: string; readonly size: string };
  readonly unreadableGroup: { readonly text: string };
  readonly sizeInNoGroup: { readonly size: string; readonly known: string };
  readonly tooManyGroups: { readonly found: string };
}

/** Codes of the printed-yardage look-up of src/fabric. */
export interface YardageProblems {
  readonly unknownView: { readonly text: string; readonly known: string };
  readonly unknownPart: { readonly text: string; readonly view: string; readonly known: string };
  readonly unknownNap: { readonly text: string };
  readonly napNotPrinted: { readonly view: string; readonly width: string };
  readonly noAmount: { readonly view: string; readonly width: string; readonly size: string };
  /** A width that isn't printed; `enough` names the narrower printed width and its amount. */
  /** `enough` is the amount of a narrower width; without one, `estimateFrom` is what an estimate is made from. */
  readonly widthNotPrinted: {
    readonly width: string;
    readonly known: string;
    readonly enough: string | null;
    readonly estimateFrom: string | null;
  };
}

/** Codes of src/fabric. */
export interface FabricProblems {
  readonly badClothWidth: { readonly text: string };
  /** A share above 0.3: a percentage typed without its sign. */
  readonly shrinkage: { readonly text: string };
  readonly noPieces: Readonly<Record<string, never>>;
  readonly pieceSize: { readonly piece: string; readonly what: "width" | "length"; readonly text: string };
  readonly pieceCount: { readonly piece: string; readonly text: string };
  readonly tooManyPieces: { readonly count: string; readonly most: string };
  /** Wider than the whole cloth; `opened` is "yes" for a piece on the fold, whose width is that of the opened piece. */
  readonly pieceTooWide: {
    readonly piece: string;
    readonly width: string;
    readonly cloth: string;
    readonly over: string;
    readonly opened: string;
  };
  readonly unknownLayout: { readonly text: string };
  readonly repeatTooLong: { readonly repeat: string; readonly length: string };
  readonly badOutline: {
    readonly piece: string;
    readonly what: "points" | "many" | "outside" | "crosses" | "fold" | "text";
    readonly text: string;
  };
  /** Widths at heights that make no edge; `wanted` is the piece's own length or width, for which `figure` is wrong. */
  readonly badWidths: {
    readonly piece: string;
    readonly what: "few" | "negative" | "order" | "begins" | "ends" | "beyond" | "pinched" | "flat" | "wide" | "narrow";
    readonly figure: string;
    readonly wanted: string;
  };
  /** Not a refusal: a layout of many pieces, of which fewer were tried. */
  readonly fewerTries: { readonly pieces: string; readonly tries: string };
  readonly unknownCloth: { readonly piece: string; readonly cloth: string; readonly known: string };
  /** What is left over when the cloths there are can't hold everything. */
  readonly pieceLeftOver: { readonly piece: string; readonly count: string; readonly cloths: string };
  /** A word in a flag column of the pieces that is neither yes nor no. */
  readonly unknownFlag: { readonly piece: string; readonly column: string; readonly text: string };
  readonly piecesHeading: { readonly heading: string; readonly found: string };
}

/** Codes of src/project. */
export interface ProjectProblems {
  readonly unreadableMoney: { readonly text: string };
  /** A share above 1: 40 typed for 40 %. */
  readonly percentAboveOne: { readonly text: string };
  /** A range of projects or stash without its headings, or without one that is needed. */
  readonly noHeadings: { readonly range: string; readonly wanted: string };
  readonly headingMissing: { readonly range: string; readonly wanted: string; readonly found: string };
  /** Amounts in yards and in metres in one workbook, and a row that doesn't say which it is in. */
  readonly unitNotSaid: { readonly text: string };
}

export interface ProblemDetails
  extends LengthProblems, ChartProblems, SizeProblems, YardageProblems, FitProblems, FabricProblems, ProjectProblems {}
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
