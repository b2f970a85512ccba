/** A sentence for each code of a room. */
export type Sentences<Codes> = { readonly [Code in keyof Codes]: (details: Codes[Code]) => string };
