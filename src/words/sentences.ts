/** Sentences in a row; "" is none. */
export const inARow = (...sentences: readonly string[]): string => sentences.filter(Boolean).join(" ");

/** A sentence for each code of a room. */
export type Sentences<Codes> = { readonly [Code in keyof Codes]: (details: Codes[Code]) => string };
