import type { BodyUnit } from "../chart/model";
import { call } from "./fit-formulas";
import { quotedText } from "./names";

/** What of hers an example can look at; the references are ready for a formula: CampShirt_body[#All]. */
export interface HerRanges {
  /** What she measures in, and so the figures of examples that look at nothing of hers; inches unless given. */
  readonly unit?: BodyUnit | undefined;
  readonly body?: string | undefined;
  readonly finished?: string | undefined;
  readonly fabric?: string | undefined;
  readonly measures?: string | undefined;
  /** A person's name, as her column is headed. */
  readonly person?: string | undefined;
  /** The garment that her pattern is, a place of its chart, and a figure of that place with its unit. */
  readonly garment?: string | undefined;
  readonly place?: string | undefined;
  readonly measure?: string | undefined;
  /** A size of her body chart; a size, a view and a width of her fabric chart. */
  readonly size?: string | undefined;
  readonly fabricSize?: string | undefined;
  readonly view?: string | undefined;
  readonly width?: string | undefined;
  readonly pieces?: string | undefined;
  readonly projects?: string | undefined;
  readonly stash?: string | undefined;
  readonly pattern?: string | undefined;
}
export type HerRange = "body" | "finished" | "fabric" | "measures" | "pieces" | "projects" | "stash";

type HerWord = Exclude<keyof HerRanges, "unit">;

/** As it stands in a formula: the same for everybody, or one for each unit that a person measures in. */
type Written = string | Readonly<Record<BodyUnit, string | undefined>>;
/** A range of hers by its key, a word of hers, or what stands in the formula as it is. */
type Argument = Written | { readonly hers: HerRange } | { readonly text: HerWord; readonly else: Written };

const hers = (range: HerRange): Argument => ({ hers: range });
/** A word of hers, or an invented one. */
const word = (text: HerWord, otherwise: Written): Argument => ({ text, else: otherwise });
/** Each is round in its own unit, so the two are not the same length. */
const by = (inches: string | undefined, centimetres: string): Written => ({ in: inches, cm: centimetres });
const [body, finished, fabric, measures] = (["body", "finished", "fabric", "measures"] as const).map(hers) as [
  Argument,
  Argument,
  Argument,
  Argument,
];
const person = word("person", "Ada");
const garment = word("garment", "shirt");
/** For words about ease, which stand in no chart of hers. */
const shirt = '"shirt"';
/** Of a length of cloth; and of an ease, where inches go without saying. */
const unit = by('"yd"', '"m"');
const inCm = by(undefined, '"cm"');

/** An example for each function: short, and true of any chart where it can be. */
const EXAMPLES: Readonly<Record<string, readonly Argument[]>> = {
  LENGTH: ['"2 3/8 yd"', '"m"'],
  TOYARDS: ["2.1", "0.125"],
  TOMETRES: ["2.375", "0.1"],
  FRACTION: ["2.375"],
  BUYLENGTH: [by("2.3", "2.34"), by("0.125", "0.1")],
  SIZECOLUMN: [body, word("size", by("12", "40"))],
  SIZEMATCH: [body, word("place", "bust"), word("measure", by("34 in", "92 cm"))],
  SIZEBYPLACE: [body, measures, person],
  CUTSIZE: [body, measures, garment, "", person],
  CUTNOTE: [body, measures, garment, "", person],
  BLEND: [body, measures, garment, "", person],
  BUSTADJUST: [body, by('"40 in"', '"102 cm"'), by('"36 in"', '"92 cm"')],
  ENVELOPE: ['"6-12, 14-20"', '"12, 16"'],
  EASE: [by("38", "102"), by("34", "92")],
  FITTERM: [by("4", "10"), shirt, '"bust"', inCm],
  EASEBAND: [shirt, '"bust"', '"fitted"', inCm],
  EASEPLAN: [body, measures, garment, finished, person],
  STRETCH: [by("4", "10"), by("5", "12.5")],
  KNITCHECK: ["0.25", "0.2"],
  YARDAGE: [fabric, word("view", "A"), word("width", by("45 in", "150 cm")), word("fabricSize", by("12", "40"))],
  FABRICWIDTH: ["2", by("60", "150"), by("45", "115"), by("0.125", "0.1")],
  EXTRAYARDAGE: [by("2.875", "2.6"), unit, "0.05", by("4.25", "10"), by('"in"', '"cm"'), "3"],
  LAYOUTLENGTH: [hers("pieces"), by("45", "140"), unit],
  LAYOUTPLAN: [hers("pieces"), by("45", "140"), unit],
  SALEPRICE: ["20", "0.4"],
  HASDETAILS: ['"fitted, pockets, collar"', '"pockets"'],
  TAGS: ['"Maker"', "4821"],
  SHOPLIST: [hers("projects"), hers("stash")],
  CHARTINDEX: [word("pattern", "Camp shirt"), body],
};

export interface Example {
  /** With "=" in front. */
  readonly formula: string;
  /** What she has not got yet; the formula then has a name in its place that the workbook doesn't know. */
  readonly missing: readonly HerRange[];
}

const STANDINS: Readonly<Record<HerRange, string>> = {
  body: "CampShirt_body[#All]",
  finished: "CampShirt_finished[#All]",
  fabric: "CampShirt_fabric[#All]",
  measures: "Measurements[#All]",
  pieces: "Pieces[#All]",
  projects: "Projects[#All]",
  stash: "Stash[#All]",
};

/**
 * An example of a function with her own ranges in it and figures in her unit; undefined for an id that is not ours.
 *
 * @example example("SIZEMATCH", { body: "Skirt_body[#All]" })
 *   //=> { formula: '=SEW.SIZEMATCH(Skirt_body[#All],"bust","34 in")', missing: [] }
 * @example example("FITTERM", { unit: "cm" })?.formula //=> '=SEW.FITTERM(10,"shirt","bust","cm")'
 */
export function example(id: string, her: HerRanges): Example | undefined {
  const wanted = EXAMPLES[id];
  if (!wanted) return undefined;
  const missing: HerRange[] = [];
  const written = (either: Written) => (typeof either === "string" ? either : either[her.unit ?? "in"]);
  const given = wanted.map((argument) => {
    if (typeof argument === "string" || "cm" in argument) return written(argument);
    if ("text" in argument) return quotedText(her[argument.text] ?? written(argument.else) ?? "");
    const range = her[argument.hers];
    if (range === undefined) missing.push(argument.hers);
    return range ?? STANDINS[argument.hers];
  });
  return { formula: call(`SEW.${id}`, given), missing };
}
