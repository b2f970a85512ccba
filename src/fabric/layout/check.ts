import { formatLength, type LengthUnit } from "../../length";
import { refuse, type Problem, type ProblemCode, type ProblemDetails } from "../../problem";
import { outlineProblem } from "./outline-check";
import { stepsDown, stepsUp } from "./steps";
import type { Cloth, CutPiece } from "./types";

/** More pieces than this belong to no wardrobe, let alone one cloth. */
export const MOST_PIECES = 2000;
/** A length above this is a date that Excel made. */
const DATE = 20000;

/** What is wrong with a cloth; nothing when it can be laid on. */
export function clothProblems(cloth: Cloth): Problem[] {
  const problems: Problem[] = [];
  if (!(cloth.width > 0) || !Number.isFinite(cloth.width))
    problems.push(problem("badClothWidth", { text: String(cloth.width) }));
  else if (cloth.width > DATE) problems.push(problem("excelDate", { text: String(cloth.width) }));
  for (const [value, what] of [
    [cloth.repeat, "A repeat"],
    [cloth.gap, "The room between pieces"],
  ] as const) {
    if (value === undefined) continue;
    if (!Number.isFinite(value)) problems.push(problem("notANumber", { text: String(value), wanted: "a number" }));
    else if (value < 0) problems.push(problem("negative", { text: String(value), what }));
    else if (value > DATE) problems.push(problem("excelDate", { text: String(value) }));
  }
  if (cloth.layout !== undefined && cloth.layout !== "single" && cloth.layout !== "folded")
    problems.push(problem("unknownLayout", { text: String(cloth.layout) }));
  return problems;
}

/** What is wrong with each piece, whatever the cloth. */
export function pieceProblems(pieces: readonly CutPiece[]): Problem[] {
  if (pieces.length === 0) return [problem("noPieces", {})];
  const problems = pieces.flatMap((piece) => onePieceProblem(piece) ?? []);
  if (problems.length > 0) return problems;
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
  return count > MOST_PIECES ? [problem("tooManyPieces", { count: String(count), most: String(MOST_PIECES) })] : [];
}

function onePieceProblem(piece: CutPiece): Problem | undefined {
  for (const what of ["width", "length"] as const) {
    const value = piece[what];
    if (!Number.isFinite(value) || value <= 0)
      return problem("pieceSize", { piece: piece.name, what, text: String(value) });
    if (value > DATE) return problem("pieceSize", { piece: piece.name, what, text: String(value) });
  }
  if (!Number.isInteger(piece.count) || piece.count < 1)
    return problem("pieceCount", { piece: piece.name, text: String(piece.count) });
  return piece.outline && outlineProblem(piece);
}

/**
 * The pieces that don't fit on the cloth even opened out, and by how much. A repeat that is longer than all pieces one
 * above another is a repeat in another unit.
 */
export function fitProblems(pieces: readonly CutPiece[], cloth: Cloth, unit: LengthUnit | null = null): Problem[] {
  const width = stepsDown(cloth.width);
  const problems: Problem[] = [];
  for (const piece of pieces) {
    const mayTurn = piece.mayTurn && !(piece.onFold && cloth.layout === "folded");
    const opened = piece.onFold ? 2 * piece.width : piece.width;
    const across = mayTurn ? Math.min(opened, piece.length) : opened;
    const steps = piece.onFold ? 2 * stepsUp(piece.width) : stepsUp(piece.width);
    if (Math.min(steps, mayTurn ? stepsUp(piece.length) : steps) <= width) continue;
    const text = (value: number): string => formatLength(value, unit);
    problems.push(
      problem("pieceTooWide", {
        piece: piece.name,
        width: text(across),
        cloth: text(cloth.width),
        over: text(across - cloth.width),
        opened: piece.onFold ? "yes" : "",
      }),
    );
  }
  const stacked = pieces.reduce((sum, piece) => sum + Math.max(piece.length, piece.width) * piece.count, 0);
  if (cloth.repeat !== undefined && cloth.repeat > stacked)
    problems.push(
      problem("repeatTooLong", { repeat: formatLength(cloth.repeat, unit), length: formatLength(stacked, unit) }),
    );
  return problems;
}

export function problem<Code extends ProblemCode>(code: Code, details: ProblemDetails[Code]): Problem {
  return refuse(code, details).problem;
}
