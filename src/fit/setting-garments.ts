import { answer, refuse, type Result } from "../problem";
import type { Place } from "../chart/model";
import { garmentKey, garments, garmentsByKey, type Garment } from "./garments";
import { FRAME_PLACES } from "./body-order";
import { readPlaceWord } from "./read-place-word";
import type { SettingText } from "./setting-rows";

const NOT_GIRTHS: readonly Place[] = [...FRAME_PLACES, "height"];

/**
 * The garments that settings add or change: "Like" first, then "Governs", whatever their order in the table. A garment that is governed anew keeps its frame place while that is among the new ones, else the first of them.
 */
export function garmentsOfRows(rows: readonly SettingText[]): Result<ReadonlyMap<string, Garment>> {
  const made = new Map<string, Garment>();
  const find = (word: string) => {
    const known = garmentsByKey.get(garmentKey(word));
    return made.get(known?.key ?? garmentKey(word)) ?? known;
  };
  for (const [name, change] of [
    ["like", like],
    ["governs", governs],
  ] as const) {
    for (const row of rows.filter(({ setting }) => setting === name)) {
      if (row.person !== "") return badRow(row, row.person, "no person: this setting holds for everybody");
      const problem = change(row, find, made);
      if (problem) return problem;
    }
  }
  return answer(made);
}

type Change = (
  row: SettingText,
  find: (word: string) => Garment | undefined,
  made: Map<string, Garment>,
) => ReturnType<typeof refuse> | undefined;

const badRow = (row: SettingText, text: string, wanted: string) =>
  refuse("badSetting", { row: row.at, setting: row.setting, text, wanted });

const like: Change = (row, find, made) => {
  if (row.garment === "") return badRow(row, row.garment, "a garment beside it");
  const model = find(row.value);
  if (!model) return refuse("unknownGarment", { text: row.value, known: garments.map(({ name }) => name).join(", ") });
  const own = find(row.garment) ?? { name: row.garment, key: garmentKey(row.garment) };
  made.set(own.key, { ...model, name: own.name, key: own.key });
  return undefined;
};

const governs: Change = (row, find, made) => {
  if (row.garment === "") return badRow(row, row.garment, "a garment beside it");
  const groups: Place[][] = [];
  for (const part of (row.place || row.value).split(/[,;]/).filter((one) => one.trim() !== "")) {
    const group: Place[] = [];
    for (const word of part.split(/\sor\s|\|/)) {
      const place = readPlaceWord(word, row.at);
      if (!place.ok) return place;
      group.push(place.value);
    }
    groups.push(group);
  }
  const first = groups[0];
  if (first?.[0] === undefined) return badRow(row, "", "the places that govern it, such as waist, hip");
  const own = find(row.garment) ?? newGarment(row.garment, first);
  const places = groups.flat();
  const girths = places.filter((place) => !own.girths.includes(place) && !NOT_GIRTHS.includes(place));
  const frameStays = own.frame.some((place) => places.includes(place));
  made.set(own.key, {
    ...own,
    governs: groups,
    girths: [...own.girths, ...girths],
    ...(frameStays ? {} : { frame: first, frameTakes: "first" as const }),
  });
  return undefined;
};

function newGarment(name: string, frame: readonly Place[]): Garment {
  return {
    name,
    key: garmentKey(name),
    frame,
    frameTakes: "first",
    governs: [frame],
    girths: [],
    edges: 4,
    bands: null,
    cloth: "woven",
    ownEase: true,
  };
}
