/** Sentences in a row; "" is none. */
export const inARow = (...sentences: readonly string[]): string => sentences.filter(Boolean).join(" ");

/** Words with a capital, for the beginning of a sentence. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/**
 * Things in a row, as one says them.
 *
 * @example listed(["bust", "waist", "hip"]) //=> "bust, waist and hip"
 */
export function listed(words: readonly string[], last = "and"): string {
  if (words.length < 2) return words[0] ?? "";
  return `${words.slice(0, -1).join(", ")} ${last} ${words[words.length - 1]}`;
}

/** A sentence for each code of a room. */
export type Sentences<Codes> = { readonly [Code in keyof Codes]: (details: Codes[Code]) => string };
