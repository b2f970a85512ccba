import type { ProjectProblems } from "../problem";
import { inARow, type Sentences } from "./sentences";

export const projectSentences: Sentences<ProjectProblems> = {
  unreadableMoney: ({ text }) => `"${text}" can't be read as a price. Write it like 12.95.`,
  percentAboveOne: ({ text }) => `${text} would be more than the whole price off: write ${text}%.`,
  noHeadings: ({ range, wanted }) =>
    `No headings such as ${wanted} stand above ${range}. If this is a table's name, add [#All] to it.`,
  headingMissing: ({ range, wanted, found }) =>
    `${range} has no column ${wanted}. Its headings are ${found}. Give the column that heading.`,
  unitNotSaid: ({ text }) => `"${text}" doesn't say yards or metres, and other rows use both: write yd or m.`,
};

/** What the last column of a shopping list says. Amounts come with their unit: "2 3/8 yd". */
export interface ShopNoteDetails {
  /** The project as she calls it, with the person: "Camp shirt (Ada)". */
  readonly project: string;
  readonly amount: string;
}

const NO_STASH = {
  none: "",
  noFabric: "No fabric is named, so no stash piece was matched.",
  noWidth: "No width is written, so no stash piece was matched.",
  noPieceWidth: "The stash of this fabric has no width written, so it was not matched.",
  narrow: "The stash of this fabric is too narrow.",
  narrowOrNoWidth: "The stash of this fabric is too narrow, or has no width written.",
  short: "No single stash piece of this fabric is long and wide enough, and pieces are not added together.",
  given: "The stash that fits is given to other projects, which leaves least to buy.",
} as const;
export type NoStash = keyof typeof NO_STASH;

export const shopNotes = {
  buy: ({ project, amount }: ShopNoteDetails, why: NoStash): string =>
    inARow(`${project}: buy ${amount}.`, NO_STASH[why]),
  fromStash: ({ project, amount }: ShopNoteDetails, others: readonly string[], left: string): string =>
    `${project}: cut ${amount} from this one piece${others.length ? `, which also serves ${others.join(", ")}` : ""}; ${left} of it is left.`,
  nothingLeft: "nothing",
  noPrice: "No price, so no cost.",
  tooDear: "Length times price is more than anything costs: look at both.",
  notCounted: (what: string, problem: string): string => `${what}: not counted. ${problem}`,
  stashPiece: (label: string): string => `Stash piece ${label}`,
  spreadsheetError: (column: string, error: string): string => `${column} is ${error}: put that right first.`,
  twoUnits: (toBuy: string, needed: string): string =>
    `To buy (${toBuy}) and Needed (${needed}) are not in one unit: write both in yards, or both in metres.`,
  noAmount: "No amount is needed yet: choose the view, the width and the size.",
  noLength: "Its length is missing: measure the piece.",
  nothing: "Nothing to buy: no project wants fabric yet.",
  notEveryWay: "There are too many ways to share this fabric to try them all: a better one may exist.",
};

/** The cautions for children's garments, in our own words. Which is shown when: src/project/cautions.ts. */
export const cautionSentences = {
  sleepwear:
    "Nightwear: in the United States children's sleepwear must be flame resistant or tight-fitting. Tight-fitting is " +
    "measured at chest, waist, seat, upper arm, thigh, wrist and ankle, and the most allowed for each size stands in " +
    "the rule itself: read it there. Loose cotton or flannel nightwear is what the rule is about.",
  cords:
    "Cords and drawstrings: on children's outerwear the United States rule has none at the hood or neck (sizes 2T to " +
    "12); at the waist and hem (sizes 2T to 16) at most 3 in may hang out when the garment is spread to its fullest, " +
    "without toggles or knots at the ends, and the string is tacked to the channel. Europe has its own standard.",
  smallParts:
    "Small parts: for a child under 36 months nothing may come off that a small child could choke on. Buttons, snaps, " +
    "beads and pompons are the usual ones; the rule has a test cylinder that says what is small.",
  sizes: "A home pattern's size number is not the size number of these rules: compare measurements, never labels.",
  binding:
    "These rules bind people who sell or give to the public. The law where you live comes first. This is a reminder and not " +
    "the whole list: what it doesn't mention has not been checked.",
  lineChild: "Child's garment: mind cords and small parts (see Cautions). Nothing here has been checked for safety.",
  lineSleepwear:
    "Child's nightwear: flame resistant or tight-fitting; mind cords and small parts (see Cautions). Nothing here has been checked for safety.",
  lineAsk: "Is this for a child? Write yes or no: cautions may apply.",
  lineAdult: "Not for a child, you say: no cautions looked up.",
} as const;
