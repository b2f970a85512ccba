/**
 * Things in a row, as one says them.
 *
 * @example listed(["bust", "waist", "hip"]) //=> "bust, waist and hip"
 */
export function listed(words: readonly string[], last = "and"): string {
  if (words.length < 2) return words[0] ?? "";
  return `${words.slice(0, -1).join(", ")} ${last} ${words[words.length - 1]}`;
}
