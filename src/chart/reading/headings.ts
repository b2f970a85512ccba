/** Lines that say what follows: body, finished or fabric, in which unit, for which views. */
import type { LengthUnit } from "../../length";
import { readUnit } from "../../length";
import { plainWords, trimMarks, remembered } from "../vocabulary/words";

export type Kind = "body" | "finished" | "fabric";

const FINISHED =
  /\b(?:finished|garment measure\w*|garment dimension\w*|garment size\w*|garment|final measure\w*|fertig\w*|kleidungsstuck\w*|vetement\w*|finie?s?|terminad[ao]s?|acabad[ao]s?|prenda|medidas finales|finit[oaie]|capo|afgewerkte?|kledingstuk|gotow\w+|peca|prontas?|pronto|medidas finais)\b/;
const FABRIC =
  /\b(?:fabrics?|yardages?|metrages?|metreage|meterage|stoff\w*|material\w*|tissus?|telas?|tejidos?|tessuto|tessuti|stof|stofverbruik|tkanin\w*|tecidos?|requirements|quantities|benotigt\w*)\b/;
const BODY =
  /\b(?:body|bodies|korper\w*|corps|corporal\w*|corporais|cuerpo|corpo|lichaam\w*|ciala|sylwetki|measurements?|measures|size charts?|size table|size guide|sizing|masse|masstabelle\w*|mesures|mensurations|medidas|misure|maten|maattabel|wymiary|tabella taglie|tabella|tabla|tableau|tabela|grossentabelle|guide des tailles)\b/;
const ADVICE =
  /\b(?:suggested|recommended|suggestions?|recommendations?|empfohlen\w*|empfehlung\w*|conseille\w*|recommande\w*|aconsejad\w*|recomendad\w*|consigliat\w*|aanbevolen|zalecan\w*|polecan\w*|sugerid\w*|suitable|geeignet\w*|types?)\b/;

export interface Heading {
  readonly kind: Kind | null;
  readonly unit: LengthUnit | null;
  /** Both units stand in the heading: "in (cm)". */
  readonly bothUnits: boolean;
}

/** The kind that words name; a line that names two kinds names none. */
export const kindOf: (text: string) => Kind | null = remembered((text) => {
  const words = plainWords(text);
  if (ADVICE.test(words)) return null;
  const fabric = FABRIC.test(words);
  const finished = FINISHED.test(words);
  const body = /\b(?:body|korper\w*|corps|corporal\w*|corporais|cuerpo|corpo|lichaam\w*|ciala|sylwetki)\b/.test(words);
  if (finished && !body) return fabric && !/\bgarment\b|\bmeasure/.test(words) ? "fabric" : "finished";
  if (finished || (fabric && body)) return null;
  if (fabric) return "fabric";
  return BODY.test(words) ? "body" : null;
});

/**
 * A line as a heading: short, without a sentence's end, or beginning with words that only head a table. Null when it
 * says neither kind nor unit.
 */
export function readHeading(text: string): Heading | null {
  const plain = trimMarks(text, "#*=_~:<>- ");
  if (plain === "" || plain.length > 120) return null;
  const words = plainWords(plain).split(" ");
  const isSentence = /[a-z]{3}\.(?:\s|$)/i.test(plain) && !/\b(?:approx|ins|cms|yds|mtrs)\.$/i.test(plain);
  const isStrong =
    /^(?:finished|garment|body|fabric|yardage|material|stoff|metrage|korper|fertig)/.test(words[0] ?? "") &&
    !isSentence;
  if ((isSentence || words.length > 9) && !isStrong) return null;
  const kind = kindOf(plain);
  const { unit, both } = unitsIn(plain);
  if (kind === null && (unit === null || words.length > 5)) return null;
  return { kind, unit, bothUnits: both };
}

/**
 * The unit that a heading or label names: "(in)", "Inches:", "en cm". "in" is a unit only in brackets, after a comma
 * or slash, at the end, or alone, because it is a word too.
 */
export function unitsIn(printed: string): { readonly unit: LengthUnit | null; readonly both: boolean } {
  // Quotation marks around words are no inches.
  const text = printed.replace(/["“”]\p{L}[^"“”]{0,60}["“”]/gu, " ");
  const units = new Set<LengthUnit>();
  const words = [...text.matchAll(/["″”]|\p{L}+\.?/gu)];
  words.forEach((match, index) => {
    const word = match[0].toLowerCase();
    // A capital M is a size.
    const found = match[0] === "M" ? undefined : readUnit(word);
    if (!found || found.factor !== undefined) {
      if (/^(?:inchs?|zolls?|zentimetern?|metern?|yardage|metric)$/.test(word))
        units.add(SPELLED[word.slice(0, 4)] ?? "cm");
      return;
    }
    const before = text.slice(0, match.index).trimEnd();
    const isSure = word.length > 2 || found.unit === "cm" || /["″”]/.test(word);
    // "In centimetres": a word is first, and no unit.
    const isFirst = before === "" && !/^\s+\p{L}/u.test(text.slice(match.index + word.length));
    const isApart =
      isFirst ||
      /[([/,;:|–-]$/.test(before) ||
      (index === words.length - 1 && index > 0 && /^\W*$/.test(text.slice(match.index + word.length)));
    if (isSure || isApart) units.add(found.unit);
  });
  const [first = null, second] = units;
  return { unit: second === undefined ? first : null, both: second !== undefined };
}

const SPELLED: Readonly<Record<string, LengthUnit>> = {
  inch: "in",
  zoll: "in",
  zent: "cm",
  mete: "m",
  yard: "yd",
  metr: "cm",
};

/** Whether a text is nothing but a unit: "cm", "(inches)", "Ins." */
export const unitAlone: (text: string) => LengthUnit | null = remembered((text) => {
  const word = trimMarks(text, "()[].: ");
  const found = word && word !== "M" && !/\d/.test(word) ? readUnit(word) : undefined;
  return found && found.factor === undefined ? found.unit : null;
});

/** Words of a men's, boys' or children's chart, where "Brustumfang" is the chest. */
export function isChestChart(text: string): boolean {
  return /\b(?:men|mens|man|boys?|herren\w*|manner\w*|jungen\w*|knaben|hommes?|garcons?|hombres?|ninos?|uomo|ragazzi|bambin[oi]|heren|mannen|jongens|mezczyzn\w*|mesk\w*|chlopi\w*|homens?|meninos?|criancas?|child|childs|children|childrens|kids?|toddlers?|bab(?:y|ies)|infants?|kinder\w*|enfants?|bebes?|neonati|kind|dzieci\w*)\b/.test(
    plainWords(text.replace(/['’]/g, "")),
  );
}
