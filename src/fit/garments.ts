/** The garments that are known, and what each is cut by. The table is meant to be read; the functions only look up. */
import type { Place } from "../chart/model";

/** Which fit bands describe a garment; null: none are printed for it. */
export type BandName = "dress" | "jacket" | "coat" | "skirt";

export interface Garment {
  readonly name: string;
  /** The letters that tell it: `garmentKey` of its name. */
  readonly key: string;
  /** The place that sets the frame size: the first one that the chart prints, or the larger size of all of them. */
  readonly frame: readonly Place[];
  readonly frameTakes: "first" | "larger";
  /** What the size is judged by; a place with others beside it gives way to them where it is missing. */
  readonly governs: readonly (readonly Place[])[];
  /** Girths that a blend looks at, from the top down. */
  readonly girths: readonly Place[];
  /** Seam edges that share a change in girth. */
  readonly edges: number;
  readonly bands: BandName | null;
  /** A knit is cut in the pattern's own size: no least ease is asked of it. */
  readonly cloth: "woven" | "knit";
  /** False where no least ease of its own is in print and that of a dress is used. */
  readonly ownEase: boolean;
}

type Row = readonly [
  name: string,
  frame: string,
  governs: string,
  girths: string,
  edges: number,
  bands: BandName | null,
  cloth: "woven" | "knit",
  ownEase: boolean,
];

/**
 * a|b: a, or b where a is missing; a+b: the larger of the two.
 *
 * Source: bust for tops, dresses, jackets and vests, waist or hip for skirts and trousers: "Choosing the Correct
 * Pattern", sewing.org (read). Hip for skirts and trousers but waist for a full skirt: a measuring page (read); the
 * opposite advice, trousers by the waist, is also in print (a tips page, 2008, read). Men's shirts by neck and chest,
 * children by chest and height: common practice, no source. Four edges, two side seams: from memory.
 */
const TABLE: readonly Row[] = [
  // garment          frame                governs                girths                 edges bands     cloth  own ease
  ["top",             "bust|chest",        "bust|chest",          "bust chest waist hip",   4, "dress",  "woven", true],
  ["blouse",          "bust|chest",        "bust|chest",          "bust chest waist hip",   4, "dress",  "woven", true],
  ["shirt",           "bust|chest",        "bust|chest",          "bust chest waist hip",   4, "dress",  "woven", true],
  ["fitted dress",    "bust|chest",        "bust|chest waist hip", "bust chest waist hip",  4, "dress",  "woven", true],
  ["loose dress",     "bust|chest",        "bust|chest",          "bust chest waist hip",   4, "dress",  "woven", true],
  ["vest",            "bust|chest",        "bust|chest",          "bust chest waist hip",   4, "dress",  "woven", true],
  ["jacket",          "bust|chest",        "bust|chest",          "bust chest waist hip",   4, "jacket", "woven", false],
  ["coat",            "bust|chest",        "bust|chest",          "bust chest waist hip",   4, "coat",   "woven", false],
  ["straight skirt",  "hip",               "hip",                 "waist hip",              4, "skirt",  "woven", true],
  ["full skirt",      "waist",             "waist",               "waist hip",              4, "skirt",  "woven", true],
  ["trousers",        "hip",               "hip",                 "waist hip thigh",        4, "skirt",  "woven", true],
  ["shorts",          "hip",               "hip",                 "waist hip thigh",        4, "skirt",  "woven", true],
  ["leggings",        "hip",               "hip",                 "waist hip thigh",        4, null,     "knit",  true],
  ["nightwear",       "bust|chest",        "bust|chest hip",      "bust chest waist hip",   4, "dress",  "woven", true],
  ["men's shirt",     "chest+neck",        "chest neck",          "chest waist hip",        4, null,     "woven", true],
  ["men's trousers",  "hip",               "waist hip",           "waist hip thigh",        4, null,     "woven", true],
  ["child's top",     "chest|bust|height", "chest|bust height",   "chest bust waist hip",   4, null,     "woven", true],
  ["child's dress",   "chest|bust|height", "chest|bust height",   "chest bust waist hip",   4, null,     "woven", true],
  ["child's trousers", "hip|waist|height", "hip|waist height",    "waist hip thigh",        4, null,     "woven", true],
]; // prettier-ignore

/** Other words for the same garment. */
const ALSO: readonly (readonly [word: string, garment: string])[] = [
  ["dress", "fitted dress"],
  ["skirt", "straight skirt"],
  ["pants", "trousers"],
  ["men's pants", "men's trousers"],
  ["child's pants", "child's trousers"],
  ["child's shirt", "child's top"],
  ["waistcoat", "vest"],
];

const OF_MEN = /^(?:mens|mans|men|man)(?=shirt|trouser|pant)/;
const OF_CHILDREN = /^(?:childrens|children|childs|child)(?=top|dress|trouser|pant|shirt)/;

/**
 * The letters that tell a garment: "Men's shirts", "mens shirt" and "Man's Shirt" are one garment. Case, spaces,
 * apostrophes, plurals and the "women's" in front say nothing.
 *
 * @example garmentKey("Fitted dresses") //=> "fitteddress"
 */
export function garmentKey(text: string): string {
  const plain = text
    .normalize("NFKC")
    .trim()
    .toLowerCase()
    .replace(/['’‘`]/g, "");
  const key = plain
    .replace(/^(?:wom[ae]ns?|ladies|misses)\s/, "")
    .replace(/[\s-]/g, "")
    .replace(OF_MEN, "men")
    .replace(OF_CHILDREN, "child");
  if (key.endsWith("sses")) return key.slice(0, -2);
  return key.endsWith("s") && !key.endsWith("ss") ? key.slice(0, -1) : key;
}

/** The garments known without any settings, in the table's order. */
export const garments: readonly Garment[] = TABLE.map(
  ([name, frame, governs, girths, edges, bands, cloth, ownEase]): Garment => ({
    name,
    key: garmentKey(name),
    frame: frame.split(/[|+]/),
    frameTakes: frame.includes("+") ? "larger" : "first",
    governs: governs.split(" ").map((places) => places.split("|")),
    girths: girths.split(" "),
    edges,
    bands,
    cloth,
    ownEase,
  }),
);

/** Every garment by its key, the other words included. */
export const garmentsByKey: ReadonlyMap<string, Garment> = new Map([
  ...garments.map((garment) => [garment.key, garment] as const),
  ...ALSO.map(([word, name]) => [garmentKey(word), garments.find((garment) => garment.name === name)!] as const),
]);
