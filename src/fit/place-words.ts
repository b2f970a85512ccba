import type { Place } from "../chart/model";

/**
 * A place as it is spoken: "backWaistLength" is the back waist length. A label outside the vocabulary has its own words
 * already and keeps them.
 *
 * @example placeWords("highBust") //=> "high bust"
 */
export function placeWords(place: Place): string {
  return /^[a-z]+(?:[A-Z][a-z]+)+$/.test(place)
    ? place.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    : place;
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
