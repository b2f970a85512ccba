/** The places where a tape goes, read from a chart's labels in eight languages. */
import type { Place } from "./model";
import { BACK_LENGTHS, BUST_OR_CHEST, ENDINGS, PLACES } from "./vocabulary/places";
import { plainWords, remembered, spelledOut, wordSet } from "./vocabulary/words";

/** Words that say nothing about where the tape goes. */
const NOISE = wordSet(`
  measurement measurements measure circumference circ girth around body finished garment approx approximate approximately
  ca about full fullest part actual the your of round total standard inches inch ins in cm cms mm centimeters centimetres
  tour circonférence mesure mesures de du des la le les l d au à contorno circunferencia perímetro medida medidas del el
  los las en circonferenza giro misura misure di della dei delle da do dos das na no obwód wymiar umfang gesamt maß maße
  fertig fertige fertiger omvang wijdte maat van over per um zoll pouces pulgadas pollici duim cali polegadas koerper
  fini finie finito finita terminado terminada acabado acabada pronto pronta gotowy gotowa afgewerkt afgewerkte`);

/** French words that stand with "dos", the back. */
const FRENCH_BACK = wordSet("longueur long largeur hauteur taille fourche carrure milieu encolure nuque");
/** Words after which a label only says how or where the tape is held. */
const HOW = wordSet(`below under above at sous unter unterhalb bajo debajo sotto onder pod abaixo measured taken
  gemessen mesuré medido misurato gemeten zmierzony wide`);
/** The same, but only after a length: "bust from shoulder" is not the bust. */
const WHENCE = wordSet("from to ab von bis depuis desde hasta dal vanaf od");

const LENGTHS = /Length$|Leg$|^height$|^waistTo/;

interface KnownPlace {
  readonly id: Place;
  readonly span: readonly [number, number];
}

/** Built when the first label is read: a pane that only opens should not wait for it. */
let known: Map<string, KnownPlace> | undefined;
let backLengths: ReadonlySet<string> | undefined;
let bustOrChest: ReadonlySet<string> | undefined;

const withoutNoise = (words: string): string => {
  const all = words.split(" ");
  const french = all.some((word) => FRENCH_BACK.has(word));
  // Portuguese "dos" stands between two words and says nothing ("contorno dos quadris"); the French back says where.
  const isBack = (word: string, at: number) => word === "dos" && (french || at === 0 || at === all.length - 1);
  return all.filter((word, at) => !NOISE.has(word) || isBack(word, at)).join(" ");
};

/** The labels of a list as they are looked up; a sign after a label stands for its endings. */
const labelSet = (labels: string): ReadonlySet<string> =>
  new Set(
    labels.split(",").flatMap((label) => {
      const endings = ENDINGS[label.slice(-1)];
      const forms = endings?.map((ending) => label.slice(0, -1) + ending) ?? [label];
      return forms.map((form) => withoutNoise(plainWords(form)));
    }),
  );

function vocabulary(): Map<string, KnownPlace> {
  if (known) return known;
  known = new Map();
  for (const line of PLACES.trim().split("\n")) {
    const [head = "", span = ""] = line.split(" ", 2);
    const id = head.replace("+", "");
    const [low = 0, high = 0] = span.split("-").map(Number);
    const place: KnownPlace = { id, span: [low, high] };
    const labels = `${head.replace(id, placeName(id))},${line.slice(head.length + span.length + 2)}`;
    for (const words of labelSet(labels)) if (words && !known.has(words)) known.set(words, place);
    known.set(id, place);
  }
  return known;
}

/**
 * The place that a label names, whatever its case, accents or punctuation, in English, French, German, Spanish, Italian,
 * Dutch, Polish or Portuguese; a place's own id too. Two languages in one label ("Bust/Poitrine") must agree; words about
 * how the tape is held ("9\" below waist") don't count. Null when the label isn't known: then it keeps its own words.
 *
 * "Back length" and its translations (Rückenlänge) end at the waist in a body chart and at the hem in a finished one;
 * with null they end at the waist, but for the English words.
 *
 * Common practice, no source.
 *
 * @example readPlace("Hüftweite (cm)", "body") //=> "hip"
 */
export function readPlace(label: string, kind: "body" | "finished" | null): Place | null {
  const text = label
    .slice(0, 200)
    .trim()
    .replace(/^(?:to )?fits? /i, "");
  const read = kind === "body" ? readBody : kind === "finished" ? readFinished : readEither;
  return read(text).place;
}

const readBody = remembered((text) => ({ place: placeIn(text, "body") }));
const readFinished = remembered((text) => ({ place: placeIn(text, "finished") }));
const readEither = remembered((text) => ({ place: placeIn(text, null) }));

function placeIn(text: string, kind: "body" | "finished" | null): Place | null {
  if (vocabulary().has(text) && /^[a-z]{2,}[A-Z]?/.test(text) && known?.get(text)?.id === text) return text;
  const whole = placeOf(text, kind);
  if (whole) return whole;
  const plain = text.replace(/\([^()]*\)|\[[^[\]]*\]/g, " ");
  const parts = [...plain.split(/[/|,;:=·•\n]| [-–—] /), ...bracketed(text)];
  const found = parts.map((part) => (part.trim().length > 1 ? placeOf(part, kind) : null));
  const [first, second] = [...new Set(found.filter((place) => place !== null))];
  if (first === undefined) return null;
  if (second === undefined) return first;
  // "Bust/Chest" is printed for unisex garments; any other two places in one label leave the row to a person.
  return [first, second].sort().join() === "bust,chest" ? first : null;
}

const bracketed = (text: string): string[] =>
  [...text.matchAll(/\(([^()]*)\)/g)].map((match) => match[1] ?? "").filter((part) => !/\d/.test(part));

function placeOf(text: string, kind: "body" | "finished" | null): Place | null {
  const words = withoutNoise(plainWords(text));
  // "B" is the bust in a body chart; in a finished one it is a view.
  if (!words || (words.length === 1 && (kind === "finished" || text.trim().length > 2))) return null;
  return exact(words, kind) ?? exact(spelledOut(words), kind) ?? beforeHow(words, kind) ?? twice(words, kind);
}

function exact(words: string, kind: "body" | "finished" | null): Place | null {
  backLengths ??= labelSet(BACK_LENGTHS);
  if (backLengths.has(words)) {
    if (words === "back" && kind === null) return null;
    return kind === "finished" || (kind === null && words === "back length") ? "backLength" : "backWaistLength";
  }
  return vocabulary().get(words)?.id ?? null;
}

/** One place in two languages with nothing between: "oberweite bust". */
function twice(words: string, kind: "body" | "finished" | null): Place | null {
  const list = words.split(" ");
  for (let count = 1; count < Math.min(list.length, 8); count++) {
    const place = exact(list.slice(0, count).join(" "), kind);
    if (place && place === exact(list.slice(count).join(" "), kind)) return place;
  }
  return null;
}

function beforeHow(words: string, kind: "body" | "finished" | null): Place | null {
  const list = words.split(" ");
  for (let count = Math.min(list.length - 1, 6); count > 0; count--) {
    const next = list[count] ?? "";
    const isHow = HOW.has(next) || /^\d/.test(next);
    if (!isHow && !WHENCE.has(next)) continue;
    const place = exact(list.slice(0, count).join(" "), kind);
    if (place) return isHow || LENGTHS.test(place) ? place : null;
  }
  return null;
}

/**
 * Whether a label that reads as the bust means the chest on a man's or a child's chart (Brustumfang, poitrine, pecho).
 *
 * Common practice, no source.
 *
 * @example isBustOrChest("Brustumfang") //=> true
 */
export function isBustOrChest(label: string): boolean {
  bustOrChest ??= labelSet(BUST_OR_CHEST);
  return label.split(/[/|,;(]/).some((part) => bustOrChest?.has(withoutNoise(plainWords(part))));
}

/**
 * A place as a sentence names it; a label outside the vocabulary stays as it is.
 *
 * @example placeName("backWaistLength") //=> "back waist length"
 */
export function placeName(place: Place): string {
  return /^[a-z]+(?:[A-Z][a-z]+)+$/.test(place)
    ? place.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    : place;
}

/**
 * Between which figures a place can lie, babies and the largest printed sizes, body and finished. It serves only to tell
 * inches from centimetres. Null for a place outside the vocabulary.
 *
 * From memory.
 *
 * @example placeSpan("waist") //=> { in: [14, 62], cm: [35, 158] }
 */
export function placeSpan(
  place: Place,
): { readonly in: readonly [number, number]; readonly cm: readonly [number, number] } | null {
  const found = vocabulary().get(place);
  if (!found || found.id !== place) return null;
  const [low, high] = found.span;
  return { in: [low, high], cm: [Math.floor(low * 2.54), Math.ceil(high * 2.54)] };
}

/** The ids of all known places, in the order of the vocabulary. */
export function knownPlaces(): readonly Place[] {
  return [...new Set([...vocabulary().values()].map((place) => place.id))];
}
