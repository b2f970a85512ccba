/** Size labels: what a pattern calls its columns. */
import { plainWords, wordSet, remembered } from "../vocabulary/words";
import { isFormulaLike } from "./cell";

/** Words that head a row or column of sizes. "Taille" and "Größe" are also places: see `isAlsoPlace`. */
const SIZE_WORDS = wordSet(
  `size sizes sz grosse grossen groesse groessen gr konfektionsgrosse konfektionsgrossen taille tailles talla tallas
  taglia taglie maat maten rozmiar rozmiary tamanho tamanhos tam doppelgrosse size(s)`,
);
/** Words that say whose sizes they are: systems, ages, kinds of figures. */
const SYSTEM_WORDS = wordSet(
  `us usa uk gb eu eur europe european europa euro de d ger german germany deutsch fr f french france francais it italian
  italy italia es spain spanish au aus australia australian nz jp japan japanese int intl international american
  british english nl be pl br age ages alter edad eta leeftijd wiek idade age(s) years year months monate jahre ans mois
  anos meses anni mesi numeric alpha letter pattern misses miss womens women ladies mens men boys girls kids children
  childrens child toddler toddlers baby babies damen herren kinder femme homme enfant mujer hombre donna uomo dames heren
  junior juniors petite plus teen equivalent ca normal kurz francaise allemande italienne anglaise americaine espagnole europeenne britannique
  deutsche franzosische italienische englische amerikanische europaische francesa alemana italiana inglesa americana europea
  francese tedesca inglese duitse franse engelse niemiecki francuski wloski angielski`,
);
const GLUE = wordSet(
  "and or the in no numbers number by pattern your or und des s in cm inches inch chart table code codes",
);

const AGE_UNITS =
  wordSet(`month months mos mo mths mth year years yrs yr yo y monate monat mon mt jahre jahr j ans an mois
  año años mes meses anni anno mesi mese jaar maanden mnd lat lata mies miesięcy miesiące ano anos m t`);
/** What one label may be; the longest that fits counts. */
const ONE = [
  /(?:(?:x{1,3}|extra|extra[ -]extra|\d ?x)[ -]?)?(?:small|large|medium)/iy,
  /newborn|preemie|one ?size|einheitsgröße|taille unique|talla única|taglia unica|petit|moyen|grande?|klein|mittel|groß|pequeño|mediano|piccolo|medio/iy,
  /(?:\d{1,2} ?X{1,2}[SL]?|X{0,5}[SL]|X{1,2}|[MPTU]|PP|G{1,3}|X{1,2}G|T{1,2}G|TP|EG|P[SML]|X?LT|NB|OS)(?![A-Z\d])/y,
  /\d{1,3}(?:[.,]\d)?(?:[½¼¾]| 1\/2| [13]\/4)?(?:[A-Z]{1,3}(?![A-Za-z]))?/y,
  /(?:\d{1,3}[A-Z]{0,3}|X{0,5}[SL]|M)(?: ?[-–] ?|\/| to | bis )(?:\d{1,3}[A-Z]{0,3}|X{0,5}[SL]|M)(?![A-Za-z\d])/y,
];
const AGE = /\d{1,2}(?: ?[-–/] ?\d{1,2}| to \d{1,2}| bis \d{1,2})?( ?\p{L}{1,9})(?!\p{L})\.?/uy;
const ATTACHED = / ?\([^()]{1,20}\)/y;

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** Where the label that starts here ends; `at` itself when none does. */
function labelEnd(text: string, at: number, areAges: boolean): number {
  const age = matchAt(AGE, text, at);
  // "8 M" may be two sizes, "6M" and "6 m" are an age.
  const isAge = age && AGE_UNITS.has(plainWords(age[1]!)) && (areAges || !/ [A-Z]$/.test(age[1]!));
  const ends = ONE.map((pattern) => at + (matchAt(pattern, text, at)?.[0].length ?? 0));
  const end = Math.max(isAge ? at + age[0].length : at, ...ends);
  return end === at ? at : end + (matchAt(ATTACHED, text, end)?.[0].length ?? 0);
}

export interface SizeToken {
  readonly text: string;
  /** Where it starts in the text that was read, counted from 0. */
  readonly start: number;
}

/**
 * Every size in a text, when it holds nothing else but separators; null otherwise. Numbers joined by dashes are a list
 * only when there are three or more ("8-10-12"): "8-10" is one size.
 *
 * @example scanSizes("XS (6-8)  S (10-12)")?.map((size) => size.text) //=> ["XS (6-8)", "S (10-12)"]
 */
export function scanSizes(text: string, areAges = false): SizeToken[] | null {
  if (text.length > 600) return null;
  if (/^\s*\(?\d{1,3}(?: ?[-–] ?\d{1,3}){2,}\)?\s*$/.test(text))
    return [...text.matchAll(/\d{1,3}/g)].map((match) => ({ text: match[0], start: match.index }));
  const sizes: SizeToken[] = [];
  let at = 0;
  while (at < text.length) {
    if (/[\s,;|:·]/.test(text[at]!) || (/[-–/]/.test(text[at]!) && /\s/.test(text[at + 1] ?? " "))) {
      at++;
      continue;
    }
    const and = sizes.length > 0 ? matchAt(/(?:and|und|et|[yeio&]|en) /y, text, at) : null;
    if (and) {
      at += and[0].length;
      continue;
    }
    const end = labelEnd(text, at, areAges);
    if (end === at || !/^[\s,;:|/·–-]?$/.test(text[end] ?? "")) return null;
    sizes.push({ text: text.slice(at, end), start: at });
    at = end;
  }
  return sizes;
}

/** Whether a label heads ages: then "12 M" is one age and not two sizes. */
export function isAgeWord(label: string): boolean {
  return /\b(?:ages?|alter|edad|eta|idade|leeftijd|wiek|years?|months?|monate|jahre|mois|ans)\b/.test(
    plainWords(label),
  );
}

/** Sizes by body height, six centimetres apart: a child's. */
export function areHeights(sizes: readonly string[]): boolean {
  const numbers = sizes.map(Number);
  return (
    numbers.length > 1 &&
    numbers.every((size, index) => size >= 44 && size <= 188 && (index === 0 || size - numbers[index - 1]! === 6))
  );
}

/** Whether a whole text is one size label. */
export const isSizeLabel: (text: string) => boolean = remembered((text) => {
  return scanSizes(text)?.length === 1;
});

/** A size cell without a size word in it: "Size 8" is headed "8". Only where every column says it: see `withoutWord`. */
const LEADING_WORD =
  /^(?:sizes?|sz\.?|größe|gr\.|taille|t\.|talla|taglia|maat|rozmiar|rozm\.|r\.|tamanho|tam\.)\s*(?=\S)/iu;

export function withoutWord(labels: readonly string[]): readonly string[] {
  const all = labels.every((label) => LEADING_WORD.test(label));
  return all ? labels.map((label) => label.replace(LEADING_WORD, "")) : labels;
}

/** "Group 2", "Gruppe B": a heading of some of the sizes. */
const GROUP = /^(?:size |sizes )?(?:group|gruppe|groupe|grupo|gruppo|groep|grupa) [\da-z]{1,2}$/;

/** A label that heads sizes: "Size", "Größe (EU)", "US size", "Sizes:", "Group 2"; blank ones are not. */
export const isSizeWord: (text: string) => boolean = remembered((label) => {
  const plain = plainWords(label);
  if (GROUP.test(plain)) return true;
  const words = plain.split(" ");
  return words.some((word) => SIZE_WORDS.has(word)) && words.every((word) => isSizeOrSystem(word) || GLUE.has(word));
});

const isSizeOrSystem = (word: string): boolean => SIZE_WORDS.has(word) || SYSTEM_WORDS.has(word);

/** A label that names a system of sizes or ages ("EU", "Age", "UK size"), of a second row of sizes. */
export const isSystemWord: (text: string) => boolean = remembered((label) => {
  const words = plainWords(label).split(" ");
  return words.some(isSizeOrSystem) && words.every((word) => isSizeOrSystem(word) || GLUE.has(word));
});

/** "Taille" is French for size and for waist, German for waist; "Größe" is size and height. */
export function isAlsoPlace(label: string): boolean {
  return /^(?:taille|grosse|groesse)$/.test(plainWords(label));
}

/** Whether a cell can head a column of a chart whose corner says "Size": anything short that a sheet won't run. */
export function isAnyLabel(text: string): boolean {
  return text.length > 0 && text.length <= 30 && !isFormulaLike(text);
}
