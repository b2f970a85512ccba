/**
 * Words as the vocabularies compare them: without case, accents, punctuation or writing tricks.
 * "Rückenlänge", "RUECKENLAENGE" (see `spelledOut`) and "rücken-länge" meet here.
 */
const LETTERS: Readonly<Record<string, string>> = { ß: "ss", ł: "l", ø: "o", æ: "ae", œ: "oe", ı: "i", đ: "d" };

/**
 * A text as plain words with single spaces between them; digits stay, a camelCase id falls into its words.
 *
 * @example plainWords("Back-waist LENGTH:") //=> "back waist length"
 */
export const plainWords: (text: string) => string = remembered((text) =>
  text
    .normalize("NFKD")
    .replace(/[\u0300-\u036F\u00AD\u200B-\u200F\u2060\uFEFF]/g, "")
    .replace(/([a-z])([A-Z][a-z])/g, "$1 $2")
    .toLowerCase()
    .replace(/[ßłøæœıđ]/g, (letter) => LETTERS[letter] ?? letter)
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim(),
);

/** German letters written out: "hueftweite" as "huftweite". */
export function spelledOut(words: string): string {
  return words.replace(/([aou])e/g, "$1");
}

/** A pure function of a text that remembers its last answers: one chart asks the same cell many times. */
export function remembered<T>(read: (text: string) => T): (text: string) => T {
  const answers = new Map<string, T>();
  return (text) => {
    const known = answers.get(text);
    if (known !== undefined) return known;
    if (answers.size >= 1000) answers.clear();
    const answer = read(text);
    if (text.length <= 200) answers.set(text, answer);
    return answer;
  };
}

/** A lower-case set from a text of words parted by spaces. */
export const wordSet = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/).map(plainWords));

/** A text without these characters and spaces at its ends. */
export function trimMarks(text: string, marks: string): string {
  let [start, end] = [0, text.length];
  const isMark = (at: number): boolean => marks.includes(text[at]!) || text[at]!.trim() === "";
  while (start < end && isMark(start)) start++;
  while (end > start && isMark(end - 1)) end--;
  return text.slice(start, end);
}
