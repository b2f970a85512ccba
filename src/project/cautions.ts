import { cautionSentences } from "../words/project";

/** One thing to mind on a child's garment. */
export interface Caution {
  readonly topic: "sleepwear" | "cords" | "smallParts" | "sizes" | "binding";
  readonly sentence: string;
  /** Where the rule itself stands. */
  readonly rules: readonly string[];
}

/**
 * The cautions, in the order they are shown.
 *
 * Source: 16 CFR 1615.1 and 1616.2 (places at which tight-fitting is measured: US CPSC, FAQ on infant garments and
 * tight-fitting sleepwear); 16 CFR 1120 and 76 FR 42502 of 2011 with the CPSC's FAQ on drawstrings (sizes, 3 in, no
 * attachments, tacked string); 16 CFR 1501.2 and 1501.4 (36 months, cylinder). That ASTM F1816 and EN 14682 treat cords
 * is from memory, so that none of their figures is given. The largest measures of tight-fitting sleepwear are left to
 * the rule on purpose: a figure recalled wrongly would be worse than none.
 */
const CAUTIONS: readonly Caution[] = [
  { topic: "sleepwear", sentence: cautionSentences.sleepwear, rules: ["16 CFR 1615", "16 CFR 1616"] },
  { topic: "cords", sentence: cautionSentences.cords, rules: ["16 CFR 1120", "ASTM F1816", "EN 14682"] },
  { topic: "smallParts", sentence: cautionSentences.smallParts, rules: ["16 CFR 1501"] },
  { topic: "sizes", sentence: cautionSentences.sizes, rules: [] },
  { topic: "binding", sentence: cautionSentences.binding, rules: [] },
];

const CHILD = /\b(?:child|children|childs|kid|kids|baby|babies|infant|toddler|girl|girls|boy|boys)\b/;
const SLEEPWEAR =
  /\b(?:nightwear|sleepwear|nightgowns?|nightdress|nightdresses|nightshirts?|pyjamas?|pajamas?|robes?|dressing gowns?)\b/;

const plain = (text: string): string => text.normalize("NFKC").toLowerCase().replace(/[‘’]/g, "'");

/** Whether a garment's name says by itself that it is a child's: "child's dress", "Baby trousers". */
export const isChildsGarment = (garment: string): boolean => CHILD.test(plain(garment).replace(/'s?\b/g, ""));
/** Whether a garment is worn in bed. */
export const isSleepwear = (garment: string): boolean => SLEEPWEAR.test(plain(garment));

/**
 * What to mind on a garment: every caution for a child's, nightwear first where it is nightwear. All topics are always
 * there, because a dress may be slept in and a shirt may get a cord. For other garments nothing is looked up: an empty
 * list, which the caller must not show as "safe" (`cautionLine` has the words).
 *
 * @param forChild what she says; where she says nothing, the garment's own name decides
 * @example childCautions("child's dress").map(({ topic }) => topic)
 *   //=> ["cords", "smallParts", "sleepwear", "sizes", "binding"]
 */
export function childCautions(garment: string, forChild?: boolean): readonly Caution[] {
  if (!(forChild ?? isChildsGarment(garment))) return [];
  if (isSleepwear(garment)) return CAUTIONS;
  const [sleepwear, cords, smallParts, ...rest] = CAUTIONS;
  return [cords!, smallParts!, sleepwear!, ...rest];
}

/**
 * The one line that stands on a project. There is always one, so that silence never reads as "safe".
 *
 * @param forChild undefined when nothing is said
 * @example cautionLine("shirt") //=> "Is this for a child? Write yes or no: cautions may apply."
 */
export function cautionLine(garment: string, forChild?: boolean): string {
  const child = forChild ?? (isChildsGarment(garment) ? true : undefined);
  if (child === undefined) return cautionSentences.lineAsk;
  if (!child) return cautionSentences.lineAdult;
  return isSleepwear(garment) ? cautionSentences.lineSleepwear : cautionSentences.lineChild;
}

/** Every caution, for the sheet that lists them. */
export const allCautions = (): readonly Caution[] => CAUTIONS;
