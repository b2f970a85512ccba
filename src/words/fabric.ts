import type { FabricProblems } from "../problem";
import type { Sentences } from "./sentences";

export const fabricSentences: Sentences<FabricProblems> = {
  badClothWidth: ({ text }) => `"${text}" can't be the width of a fabric. Write it like 45, 60 or 140 cm.`,
  shrinkage: ({ text }) => `Shrinkage goes from 0 to 30%, and this is ${text}: write 5% for five percent.`,
  noPieces: () => "There are no pieces here. List at least one, with its length, width and count.",
  pieceSize: ({ piece, what, text }) =>
    `The ${what} of "${piece}" is ${text}: it must be above zero, such as 24 1/2 or 62 cm.`,
  pieceCount: ({ piece, text }) =>
    text === ""
      ? `"${piece}" has no count: write 1, or 2 for a pair.`
      : `"${piece}" is to be cut ${text} times: write a whole number from 1, such as 2 for a pair.`,
  tooManyPieces: ({ count, most }) => `${count} pieces are too many for one layout: ${most} at most.`,
  pieceTooWide: ({ piece, width, cloth, over, opened }) =>
    `"${piece}" is ${width} wide${opened ? " when it is opened out" : ""} and the fabric ${cloth}: ` +
    `${over} too wide. Use a wider fabric, or cut the piece in two with a seam.`,
  unknownLayout: ({ text }) => `"${text}" is not a layout known here. Write single or folded.`,
  repeatTooLong: ({ repeat, length }) =>
    `A repeat of ${repeat} is longer than the fabric (${length}). Is it in another unit?`,
  badOutline: ({ piece, what, text }) => `The outline of "${piece}" ${OUTLINE_FAULTS[what](text)}`,
  badWidths: ({ piece, what, figure, wanted }) => `"${piece}": ${WIDTHS_FAULTS[what](figure, wanted)}`,
  fewerTries: ({ pieces, tries }) =>
    `${pieces} pieces are a lot: only ${tries} layouts were tried, so a shorter one may well be found by hand.`,
  unknownCloth: ({ piece, cloth, known }) =>
    `"${piece}" is to be cut from "${cloth}", which isn't among the fabrics here (${known}).`,
  pieceLeftOver: ({ piece, count, cloths }) =>
    `"${piece}" (${count} of it) has no room left on ${cloths}. Pieces of fabric are never added together.`,
  unknownFlag: ({ piece, column, text }) => `"${text}" in the column ${column} of "${piece}" is neither yes nor no.`,
  piecesHeading: ({ heading, found }) =>
    `The pieces have no column "${heading}". Found: ${found}. Include the row of headings; for a table add [#All].`,
};

const OUTLINE_FAULTS: Readonly<Record<FabricProblems["badOutline"]["what"], (text: string) => string>> = {
  points: (text) => `has ${text} points: at least 3 are needed.`,
  many: (text) => `has ${text} points: 1000 at most.`,
  outside: (text) => `goes outside its length and width at ${text}.`,
  crosses: () => "crosses itself. List its points in order around the edge.",
  fold: () => "has no edge on the fold: two points next to each other must have x = 0.",
  text: (text) => `can't be read at "${text}". Write it like 0 0; 30 0; 24 60; 0 62.`,
};

type WidthsFault = FabricProblems["badWidths"]["what"];
const WIDTHS_FAULTS: Readonly<Record<WidthsFault, (figure: string, wanted: string) => string>> = {
  few: () => "give at least two heights with their widths, one at each end of the piece.",
  negative: (figure) => `${figure} is below zero, which no height and no width can be.`,
  order: (figure) => `the height ${figure} doesn't go on from the one before it. List them in order, each once.`,
  begins: (figure, wanted) =>
    `the heights begin at ${figure}. The first is 0 and the last ${wanted}, so that no end of the piece is left out.`,
  ends: (figure, wanted) =>
    `the heights end at ${figure} and the piece is ${wanted} long. Give the width at ${wanted} too, or correct the length.`,
  beyond: (figure, wanted) => `the height ${figure} is beyond the piece, which is ${wanted} long.`,
  pinched: (figure) => `the width at ${figure} is 0, which would cut the piece in two. Only an end can be a point.`,
  flat: () => "all the widths are 0.",
  wide: (figure, wanted) => `a width of ${figure} is more than the piece's own, ${wanted}. Correct one of them.`,
  narrow: (figure, wanted) =>
    `the widest is ${figure} and the piece is ${wanted} wide. Give the width at its widest place too, or correct the piece.`,
};

/** What the notes of a placement table say. */
export const layoutNotes = {
  whole: (by: "boxes" | "outlines", length: string, bound: string, tries: string): string =>
    `By ${by}: ${length} of fabric; no layout ${by === "boxes" ? "by boxes " : ""}takes less than ${bound} (${tries} tried).`,
  proved: (by: "boxes" | "outlines", length: string): string =>
    `By ${by}: ${length} of fabric, the least that is possible${by === "boxes" ? " by boxes" : ""}.`,
  onFold: "On the fold.",
  pair: "Through both layers.",
  odd: "Through both layers, one of which is left over.",
  opened: "On the opened fabric.",
  of: (fabric: string): string => (fabric === "" ? "" : `${fabric}: `),
};
