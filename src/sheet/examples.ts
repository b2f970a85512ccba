import { call } from "./fit-formulas";
import { quotedText } from "./names";

/** What of hers an example can look at; the references are ready for a formula: CampShirt_body[#All]. */
export interface HerRanges {
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

/** A range of hers, by its key in brackets; anything else stands in the formula as it is. */
type Argument = string | { readonly hers: HerRange } | { readonly text: keyof HerRanges; readonly else: string };

const hers = (range: HerRange): Argument => ({ hers: range });
/** A word of hers, or an invented one. */
const word = (text: keyof HerRanges, otherwise: string): Argument => ({ text, else: otherwise });
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

/** An example for each function: short, and true of any chart where it can be. */
const EXAMPLES: Readonly<Record<string, readonly Argument[]>> = {
  LENGTH: ['"2 3/8 yd"', '"m"'],
  TOYARDS: ["2.1", "0.125"],
  TOMETRES: ["2.375", "0.1"],
  FRACTION: ["2.375"],
  BUYLENGTH: ["2.3", "0.125"],
  SIZECOLUMN: [body, word("size", "12")],
  SIZEMATCH: [body, word("place", "bust"), word("measure", "34 in")],
  SIZEBYPLACE: [body, measures, person],
  CUTSIZE: [body, measures, garment, "", person],
  CUTNOTE: [body, measures, garment, "", person],
  BLEND: [body, measures, garment, "", person],
  BUSTADJUST: [body, '"40 in"', '"36 in"'],
  ENVELOPE: ['"6-12, 14-20"', '"12, 16"'],
  EASE: ["38", "34"],
  FITTERM: ["4", shirt, '"bust"'],
  EASEBAND: [shirt, '"bust"', '"fitted"'],
  EASEPLAN: [body, measures, garment, finished, person],
  STRETCH: ["4", "5"],
  KNITCHECK: ["0.25", "0.2"],
  YARDAGE: [fabric, word("view", "A"), word("width", "45 in"), word("fabricSize", "12")],
  FABRICWIDTH: ["2", "60", "45", "0.125"],
  EXTRAYARDAGE: ["2.875", '"yd"', "0.05", "4.25", '"in"', "3"],
  LAYOUTLENGTH: [hers("pieces"), "45", '"yd"'],
  LAYOUTPLAN: [hers("pieces"), "45", '"yd"'],
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
 * An example of a function with her own ranges in it; undefined for an id that is not ours.
 *
 * @example example("SIZEMATCH", { body: "Skirt_body[#All]" })
 *   //=> { formula: '=SEW.SIZEMATCH(Skirt_body[#All],"bust","34 in")', missing: [] }
 */
export function example(id: string, her: HerRanges): Example | undefined {
  const wanted = EXAMPLES[id];
  if (!wanted) return undefined;
  const missing: HerRange[] = [];
  const given = wanted.map((argument) => {
    if (typeof argument === "string") return argument;
    if ("text" in argument) return quotedText(her[argument.text] ?? argument.else);
    const range = her[argument.hers];
    if (range === undefined) missing.push(argument.hers);
    return range ?? STANDINS[argument.hers];
  });
  return { formula: call(`SEW.${id}`, given), missing };
}
