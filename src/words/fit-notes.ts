/** What the notes of a fitting plan say. Figures come as text with their unit, places and sizes by their plain names. */
import { capital } from "./sentences";

const UNITS = { in: ["inch", "inches"], cm: ["centimetre", "centimetres"] } as const;

/** A number and its unit: "1 inch", "2 1/2 inches". */
export const withUnit = (number: string, unit: keyof typeof UNITS, single: boolean): string =>
  `${number} ${UNITS[unit][single ? 0 : 1]}`;

/** Ease as one says it: "2 inches of ease", "no ease", "1 inch less than the body". */
export const ease = (amount: string): string => `${amount} of ease`;
export const noEase = "no ease";
export const lessThanBody = (amount: string): string => `${amount} less than the body`;

/** What an adjustment of the bust is called: a small one takes out. */
export const adjustmentKind = (full: boolean): string => `${full ? "full" : "small"}-bust adjustment`;

/**
 * A size as one says it after "is": "a 12", "an 18", "an XL"; a letter is said by its name.
 *
 * @example aSize("8") //=> "an 8"
 */
export const aSize = (label: string): string => `${/^(?:8|1[18](?!\d)|x*[sml]$)/i.test(label) ? "an" : "a"} ${label}`;

/** Between which two places the line of a blend is drawn. */
export const straightOn = (sizeHere: string, upper: string): string =>
  `Straight on in size ${sizeHere} from the ${upper}.`;
export const drawLine = (sizeAbove: string, upper: string, sizeHere: string, here: string): string =>
  `Draw the line from ${sizeAbove} at the ${upper} to ${sizeHere} at the ${here}.`;

const CHOSEN = {
  closest: "the closest size",
  larger: "the larger of two sizes, as your settings say",
  smaller: "the smaller of two sizes, as your settings say",
} as const;
const EASE_OF = {
  default: "our least ease",
  settings: "your own least ease",
  "my garment": "the ease of a garment that fits",
} as const;
/** A place's size by itself; undefined where it has none. */
const itself = (ownSize: string | undefined): string =>
  `by itself it is ${ownSize === undefined ? "off the chart" : aSize(ownSize)}`;

/** By which rule a place has its size in a blend. */
export const notBlended = (here: string): string => `The ${here} isn't measured: it is not blended.`;
export const staysInFrame = (ownSize: string | undefined): string => `Stays in the frame size; ${itself(ownSize)}.`;
export const setsFrame = (chosen: keyof typeof CHOSEN): string => `Sets the frame size: ${CHOSEN[chosen]}.`;
export const framePlace = "Frame place, never blended.";
export const framePlaceBeside = (ownSize: string | undefined): string =>
  `Frame place, never blended; ${itself(ownSize)}: alter it in the frame size.`;
export const staysByHighBust = "Stays in the frame size by the high bust; the bust needs no adjustment.";
export const adjustedByHighBust = (full: boolean, amount: string): string =>
  `Stays in the frame size by the high bust; ${adjustmentKind(full)} of ${amount}, half of it on the half front piece.`;
export const wanted = (amount: string, whose: keyof typeof EASE_OF): string => `${amount} wanted, ${EASE_OF[whose]}`;
export const enoughInFrame = (held: string, want: string): string => `The frame size has ${held} (${want}).`;
export const neverEnough = (want: string): string => `No size has the ease wanted (${want}).`;
export const firstWithEnough = (held: string, want: string): string => `First size with enough: ${held} (${want}).`;
/** With a garment: it isn't judged by this place. */
export const byBodyChart = (chosen: keyof typeof CHOSEN, unlike: string | null): string =>
  `${capital(CHOSEN[chosen])} by the body chart${unlike === null ? "" : `: this garment (${unlike}) isn't judged by it, blend only where it is close or reaches so far`}.`;

/** What lies beyond the outermost size. */
export const beyondSize = (by: string, isAbove: boolean, outermost: string, each: string): string =>
  `${by} ${isAbove ? "beyond" : "inside"} size ${outermost}, the ${isAbove ? "largest" : "smallest"}: ${each} an edge.`;
export const mostAnEdge = "About 1/2 inch an edge is the most (from memory).";
export const edgeNotCompared = "The chart names no unit: your own edge limit can't be compared.";
export const tooMuchAnEdge = (most: string, isAbove: boolean): string =>
  `That is more than about ${most} an edge (from memory): slash and ${isAbove ? "spread" : "overlap"}, or take a pattern in other sizes.`;

/** What to do to a length along the body. */
export const asPrinted = (frameSize: string): string => `As printed for size ${frameSize}.`;
export const changeLength = (longer: boolean, frameSize: string, by: string): string =>
  `${longer ? "Lengthen" : "Shorten"} size ${frameSize} by ${by}, where the pattern has this length.`;
export const toGrow = (amount: string): string => `${amount} of it to grow.`;
export const nothingToGrow = "Nothing to grow: a row Growth in the settings adds it.";
export const heightAlone = "Height alone doesn't say where: go by the lengths along the body.";

/** Where a size stands to the frame size, and what its ease is made of. */
export function sizeFromFrame(steps: number): string {
  if (steps === 0) return "Frame size.";
  const count = Math.abs(steps);
  return `${count} size${count > 1 ? "s" : ""} ${steps > 0 ? "above the frame" : "below the frame: neck and shoulders are smaller too"}.`;
}
export const afterAdjustment = "After the bust adjustment.";
export const noWordForEase = "No fit word covers this ease.";
export const shortOfRoom = (text: string): string => `${text} short of room to move`;
export const roomToMove = (text: string): string => `${text} to move`;
export const lessByDesign = (text: string): string => `${text} less by design`;
export const byDesign = (text: string): string => `${text} by design`;
const LEAST_OF = { default: "ours", settings: "your own", "my garment": "of a garment that fits" } as const;
export const easeMadeOf = (toMove: string, designed: string, atLeast: string, whose: keyof typeof LEAST_OF): string =>
  `${toMove}, ${designed}; least ease ${atLeast}, ${LEAST_OF[whose]}.`;
