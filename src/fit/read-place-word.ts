import { readPlace } from "../chart/places";
import { answer, refuse, type Result } from "../problem";
import type { Place } from "../chart/model";

/** The place that a word of the settings names. A slip of the pen is refused: such a row would hold nowhere, unseen. */
export function readPlaceWord(word: string, row: number): Result<Place> {
  const place = readPlace(word, "body");
  return place === null
    ? refuse("badSetting", {
        row,
        setting: "place",
        text: word.trim(),
        wanted: "a place such as bust, high bust, waist or hip",
      })
    : answer(place);
}
