import { answer, refuse, type Result } from "../problem";
import { convert, type LengthUnit } from "./length";
import { readUnit } from "./units";

/** What a text says: a number in the unit it names, or a bare number (`unit` null). */
export interface LengthText {
  readonly value: number;
  readonly unit: LengthUnit | null;
}

const VULGAR: Readonly<Record<string, string>> = {
  "¼": "1/4", "½": "1/2", "¾": "3/4", "⅐": "1/7", "⅑": "1/9", "⅒": "1/10", "⅓": "1/3", "⅔": "2/3", "⅕": "1/5",
  "⅖": "2/5", "⅗": "3/5", "⅘": "4/5", "⅙": "1/6", "⅚": "5/6", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
}; // prettier-ignore

/** A length longer than this is not one; the limit also keeps hostile text short. */
const LONGEST = 60;

/**
 * Reads a length as patterns and people write it: `30 1/2`, `30½`, `30-1/2"`, `1⁄2`, `77,5 cm`, `2 3/8 yd`, `5 ft 4 in`,
 * `1 m 20 cm`. One comma is a decimal comma. Spaces of every width, marks of writing direction and full-width digits
 * are understood. A leading sign is kept: whether a length may be below zero is for the caller to say.
 *
 * Refuses text with anything else in it, two commas, a fraction of 1 or more beside a whole number ("30 9/8").
 *
 * @example readLength("30½\"") //=> { ok: true, value: { value: 30.5, unit: "in" } }
 */
export function readLength(text: string): Result<LengthText> {
  const plain = plainText(text);
  if (plain === "") return refuse("blank", { wanted: "a length" });
  const unreadable = refuse("unreadableLength", { text: text.trim().slice(0, LONGEST) });
  if (plain.length > LONGEST) return unreadable;
  const sign = plain.startsWith("-") ? -1 : 1;
  const parts = splitParts(plain.replace(/^[-+] ?/, ""));
  if (!parts) return unreadable;
  const [first, second] = parts;
  if (!first) return unreadable;
  if (!second) return answer({ value: sign * first.value * (first.factor ?? 1), unit: first.unit });
  return readPair(first, second, sign) ?? unreadable;
}

/** Two parts make one length only from the larger unit to the smaller: feet and inches, yards and inches, metres and cm. */
function readPair(first: Part, second: Part, sign: number): Result<LengthText> | undefined {
  const feetAndInches = first.factor === 12 && second.unit === "in" && second.factor === undefined && second.value < 12;
  if (feetAndInches) return answer({ value: sign * (first.value * 12 + second.value), unit: "in" });
  const yardsAndInches =
    first.unit === "yd" && second.unit === "in" && second.factor === undefined && second.value < 36;
  const metresAndCm = first.unit === "m" && second.unit === "cm" && second.factor === undefined && second.value < 100;
  if (!yardsAndInches && !metresAndCm) return undefined;
  return answer({ value: sign * (first.value + convert(second.value, second.unit!, first.unit!)), unit: first.unit });
}

/** Spaces, dashes, slashes, quotes and digits in one form each; marks nobody sees taken out. */
export function plainText(text: string): string {
  return text
    .replace(/[\u200B-\u200F\u202A-\u202E\u2060-\u2069\uFEFF\u00AD\u061C]/g, "")
    .replace(/[¼½¾\u2150-\u215E]/g, (sign) => ` ${VULGAR[sign]!}`)
    .replace(/([\d)])([⁰¹²³\u2074-\u2079])/g, "$1 $2")
    .normalize("NFKC")
    .replace(/[⁄∕]/g, "/")
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/[″“”„‟]|''|′′|’’/g, '"')
    .replace(/[′‘’‛]/g, "'")
    .replace(/\s+/g, " ")
    .trim();
}

interface Part {
  readonly value: number;
  readonly unit: LengthUnit | null;
  /** What the printed unit is in `unit`s when it is not one itself: a foot is 12 in, a millimetre 0.1 cm. */
  readonly factor?: number;
}

const NUMBER = /^(?:(\d+)(?:[ -]| ?& ?)(\d+) ?\/ ?(\d+)|(\d+) ?\/ ?(\d+)|(\d+(?:[.,]\d+)?|[.,]\d+))/;

/** One number with its unit, or two. Anything left over makes the whole unreadable. */
function splitParts(text: string): Part[] | undefined {
  const parts: Part[] = [];
  let rest = text;
  while (rest && parts.length < 2) {
    const match = NUMBER.exec(rest);
    if (!match) return undefined;
    const value = readNumber(match);
    if (value === undefined) return undefined;
    rest = rest.slice(match[0].length).trimStart();
    const word = /^[^\d.,/-][^\d,/-]*/.exec(rest)?.[0] ?? "";
    const named = word.trim() === "" ? null : readUnit(word);
    if (named === undefined) return undefined;
    if (named === null && (rest !== "" || parts.length > 0)) return undefined;
    parts.push(named ? { value, ...named } : { value, unit: null });
    rest = rest.slice(word.length).trimStart();
  }
  return rest === "" ? parts : undefined;
}

function readNumber(match: RegExpExecArray): number | undefined {
  const [, whole, top, bottom, alone, under, decimal] = match;
  if (decimal !== undefined) return Number(decimal.replace(",", "."));
  const numerator = Number(top ?? alone);
  const denominator = Number(bottom ?? under);
  if (denominator === 0 || (whole !== undefined && numerator >= denominator)) return undefined;
  return Number(whole ?? 0) + numerator / denominator;
}
