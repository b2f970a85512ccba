import type { Chart, Place } from "../chart/model";
import { garmentKey, type Garment } from "./garments";
import { readGarment } from "./read-garment";
import { noSettings, type Settings } from "./settings";

type Row = readonly [word: string, grown: string, child: string, man: string];

/** What the last word of a pattern's name says of a grown-up's, a child's and a man's. Common practice, no source. */
const WORDS: readonly Row[] = [
  ["shirt", "shirt", "child's top", "men's shirt"],
  ["blouse", "blouse", "child's top", "men's shirt"],
  ["top", "top", "child's top", "top"],
  ["tunic", "top", "child's top", "top"],
  ["dress", "fitted dress", "child's dress", "fitted dress"],
  ["pinafore", "loose dress", "child's dress", "loose dress"],
  ["gown", "loose dress", "child's dress", "loose dress"],
  ["smock", "loose dress", "child's dress", "loose dress"],
  ["trousers", "trousers", "child's trousers", "men's trousers"],
  ["pants", "trousers", "child's trousers", "men's trousers"],
  ["jeans", "trousers", "child's trousers", "men's trousers"],
  ["slacks", "trousers", "child's trousers", "men's trousers"],
  ["shorts", "shorts", "child's trousers", "shorts"],
  ["leggings", "leggings", "child's trousers", "leggings"],
  ["blazer", "jacket", "jacket", "jacket"],
  ["nightgown", "nightwear", "nightwear", "nightwear"],
  ["nightdress", "nightwear", "nightwear", "nightwear"],
  ["nightshirt", "nightwear", "nightwear", "nightwear"],
  ["pyjamas", "nightwear", "nightwear", "nightwear"],
  ["pajamas", "nightwear", "nightwear", "nightwear"],
  ["circle skirt", "full skirt", "full skirt", "full skirt"],
  ["gathered skirt", "full skirt", "full skirt", "full skirt"],
];
const byWord = new Map(WORDS.map((row) => [garmentKey(row[0]), row]));

const CHILD = new Set(["child", "children", "kid", "girl", "boy", "toddler", "baby", "infant"]);
const MAN = new Set(["man", "men", "gent"]);
/** A chart with one of these and no bust or chest is for legs. */
const LEGS: readonly Place[] = ["insideLeg", "outsideLeg", "crotchDepth", "crotchLength", "thigh", "knee", "calf"];
/** More words than that are no name. */
const MOST_WORDS = 12;

/**
 * The garment to begin with for a pattern: the one that its name names ("Wrap skirt", "Camp shirt with two pockets"; of
 * several the last), a child's or a man's where the name or the chart says so; where the name names none, or one that
 * this chart has no frame place for, what the places of its body charts are good for. Undefined where nothing tells. It
 * is a first guess for a list in which she chooses.
 *
 * @example suggestedGarment("Wrap skirt", [skirtChart]) //=> "straight skirt"
 */
export function suggestedGarment(
  name: string,
  charts: readonly Chart[],
  settings: Settings = noSettings,
): string | undefined {
  const places = new Set(charts.flatMap(({ rows }) => rows.map(({ place }) => place)));
  const named = namedGarment(name, places, settings);
  const suits = named && (places.size === 0 || named.frame.some((place) => places.has(place)));
  return suits ? named.name : garmentOfPlaces(places);
}

function namedGarment(name: string, places: ReadonlySet<Place>, settings: Settings): Garment | undefined {
  const words = name
    .split(/[\s,;:/()_–-]+/)
    .filter(Boolean)
    .slice(0, MOST_WORDS);
  const plain = words.map((word) => word.toLowerCase().replace(/['’‘`]?s?['’‘`]?$/, ""));
  const isChild = plain.some((word) => CHILD.has(word)) || isChildChart(places);
  const isMan = plain.some((word) => MAN.has(word)) || isManChart(places);
  for (let end = words.length; end > 0; end--) {
    for (let start = 0; start < end; start++) {
      const phrase = words.slice(start, end).join(" ");
      const row = byWord.get(garmentKey(phrase));
      const meant = row ? (isChild ? row[2] : isMan ? row[3] : row[1]) : phrase;
      const garment = readGarment(meant, settings);
      if (garment.ok) return garment.value;
    }
  }
  return undefined;
}

const isChildChart = (places: ReadonlySet<Place>): boolean =>
  places.has("chest") && places.has("height") && !places.has("bust") && !places.has("neck");
const isManChart = (places: ReadonlySet<Place>): boolean =>
  places.has("chest") && places.has("neck") && !places.has("bust");

function garmentOfPlaces(places: ReadonlySet<Place>): string | undefined {
  if (places.has("bust")) return "top";
  if (isManChart(places)) return "men's shirt";
  if (isChildChart(places)) return "child's top";
  if (places.has("chest")) return "top";
  if (places.has("hip")) return LEGS.some((place) => places.has(place)) ? "trousers" : "straight skirt";
  return places.has("waist") ? "full skirt" : undefined;
}
