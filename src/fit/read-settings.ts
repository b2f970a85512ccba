import type { Cells } from "../chart/cell";
import { convert } from "../length/length";
import { readLength } from "../length/read";
import { readUnit } from "../length/units";
import { answer, refuse, type Result } from "../problem";
import type { BodyUnit } from "../chart/model";
import { garmentKey, garmentsByKey } from "./garments";
import { readBand } from "./read-band";
import { readPlaceWord } from "./read-place-word";
import { garmentsOfRows } from "./setting-garments";
import { settingRows, type SettingText } from "./setting-rows";
import { TERMS, type BandRule, type LengthRule, type LengthSetting, type Settings, type WordRule } from "./settings";

const LENGTHS: readonly LengthSetting[] = [
  "least ease",
  "threshold",
  "drafted difference",
  "edge limit",
  "growth",
  "step",
  "my garment",
];
/** What may stand in the Setting column. */
const KNOWN = ["frame", "governs", "like", "between sizes", "high bust row", "edges", "units", ...LENGTHS, ...TERMS];
const WORDS = { "between sizes": ["closest", "larger", "smaller"], "high bust row": ["high bust", "bust"] } as const;
/** Lengths that may be below zero: a knit may be smaller than the body. */
const SIGNED: readonly LengthSetting[] = ["least ease"];

/**
 * Her own table over our defaults: `Setting | Garment | Place | Value | Unit`, headings in any order, with `Person` where
 * a row is for one person only; every other column is hers. A blank Garment or Place means every one, a row without a
 * value says nothing. A table `Garment | Place | Measurement | Unit` without a Setting column holds garments that fit.
 *
 * A bare number is in inches unless a row `Units` or the Unit column says otherwise. Refuses, naming the row (counted
 * from the heading's first row below as 1): a setting, garment or place that is not known, a value that cannot be read.
 *
 * @example
 * readSettings([["Setting", "Garment", "Place", "Value", "Unit"], ["Least ease", "shirt", "bust", 3, "in"]])
 * //=> { ok: true, value: { lengths: [{ setting: "least ease", garment: "shirt", place: "bust", value: 3, … }], … } }
 */
export function readSettings(cells: Cells): Result<Settings> {
  const rows = settingRows(cells);
  if (!rows.ok) return rows;
  const bare = unitOfTable(rows.value);
  if (!bare.ok) return bare;
  const made = garmentsOfRows(rows.value);
  if (!made.ok) return made;
  const lengths: LengthRule[] = [];
  const words: WordRule[] = [];
  const bands: BandRule[] = [];
  for (const row of rows.value) {
    if (!KNOWN.includes(row.setting))
      return refuse("unknownSetting", { row: row.at, text: row.setting, known: KNOWN.join(", ") });
    if (["governs", "like", "units"].includes(row.setting)) continue;
    if (row.value === "" && (row.setting !== "frame" || row.place === "")) continue;
    const where = whereOf(row, made.value);
    if (!where.ok) return where;
    // The shop's step is a length of cloth, so yards and metres belong beside it.
    const cloth = row.setting === "step" ? readUnit(row.unit)?.unit : undefined;
    const inCloth = cloth === "yd" || cloth === "m" ? cloth : undefined;
    const unit = row.unit === "" || inCloth ? answer(bare.value) : bodyUnit(row.unit, row);
    if (!unit.ok) return unit;
    if (isOneOf(row.setting, LENGTHS)) {
      const length = lengthOf(row, row.setting, unit.value, inCloth);
      if (!length.ok) return length;
      lengths.push({ setting: row.setting, ...where.value, ...length.value });
    } else if (isOneOf(row.setting, TERMS)) {
      const band = readBand(row.value);
      if (!band.ok) return badRow(row, "a band such as 3 to 4, or over 8");
      const { unit: own, ...value } = band.value;
      bands.push({ setting: row.setting, ...where.value, value, unit: own ?? unit.value });
    } else {
      const word = row.setting === "frame" ? frameOf(row) : wordOf(row);
      if (!word.ok) return word;
      const place = row.setting === "frame" ? null : where.value.place;
      words.push({ setting: row.setting as WordRule["setting"], ...where.value, place, value: word.value });
    }
  }
  return answer({ garments: made.value, lengths, words, bands });
}

function isOneOf<Word extends string>(word: string, words: readonly Word[]): word is Word {
  return (words as readonly string[]).includes(word);
}

function badRow(row: SettingText, wanted: string) {
  return refuse("badSetting", { row: row.at, setting: row.setting, text: row.value, wanted });
}

function unitOfTable(rows: readonly SettingText[]): Result<BodyUnit> {
  const row = rows.filter(({ setting }) => setting === "units").at(-1);
  const word = row?.value || row?.unit;
  return row && word ? bodyUnit(word, row) : answer("in");
}

function bodyUnit(word: string, row: SettingText): Result<BodyUnit> {
  const unit = readUnit(word);
  if (unit && !unit.factor && (unit.unit === "in" || unit.unit === "cm")) return answer(unit.unit);
  return refuse("badSetting", { row: row.at, setting: "unit", text: word, wanted: "in or cm" });
}

function whereOf(
  row: SettingText,
  made: Settings["garments"],
): Result<Pick<LengthRule, "garment" | "place" | "person">> {
  let garment: string | null = null;
  if (row.garment !== "") {
    const key = garmentKey(row.garment);
    const known = garmentsByKey.get(key)?.key ?? made.get(key)?.key;
    if (known === undefined)
      return refuse("unknownGarment", {
        text: row.garment,
        known: [...garmentsByKey.values()].map(({ name }) => name).join(", "),
      });
    garment = known;
  }
  if (garment === null && row.setting === "my garment") return badRow(row, "a garment beside it, such as shirt");
  const place = row.place === "" ? answer(null) : readPlaceWord(row.place, row.at);
  if (!place.ok) return place;
  if (
    place.value === null &&
    (row.setting === "my garment" || row.setting === "least ease" || isOneOf(row.setting, TERMS))
  )
    return badRow(row, "a place beside it, such as bust");
  return answer({ garment, place: place.value, person: row.person === "" ? null : row.person.toLowerCase() });
}

function lengthOf(
  row: SettingText,
  setting: LengthSetting,
  unit: BodyUnit,
  cloth?: "yd" | "m",
): Result<{ value: number; unit: BodyUnit }> {
  const read = readLength(row.value);
  if (!read.ok) return badRow(row, "a length such as 2 1/2 or 6 cm");
  const own = read.value.unit ?? cloth ?? null;
  const value = own === null || own === "in" || own === "cm" ? read.value.value : convert(read.value.value, own, "cm");
  if (Math.abs(value) > 20_000) return refuse("excelDate", { text: row.value });
  if (value < 0 && !SIGNED.includes(setting)) return badRow(row, "a length that is not below zero");
  if (value === 0 && setting === "step") return badRow(row, "a step above zero, such as 1/8");
  return answer({ value, unit: own === null ? unit : own === "in" ? "in" : "cm" });
}

function wordOf(row: SettingText): Result<string | number> {
  if (row.setting === "edges") {
    const edges = Number(row.value);
    return Number.isInteger(edges) && edges >= 1 && edges <= 24
      ? answer(edges)
      : badRow(row, "a count of seam edges, such as 4");
  }
  const known = WORDS[row.setting as keyof typeof WORDS] as readonly string[];
  const word = row.value.toLowerCase().replace(/\s+/g, " ");
  const found = known.find((one) => one === word || one.replace(" ", "") === word);
  return found === undefined ? badRow(row, known.join(" or ")) : answer(found);
}

/** For every garment the frame can only be the bust or the high bust: those of the others are their own. */
function frameOf(row: SettingText): Result<string> {
  const place = readPlaceWord(row.place || row.value, row.at);
  if (!place.ok || row.garment !== "" || place.value === "bust" || place.value === "highBust") return place;
  return refuse("badSetting", {
    row: row.at,
    setting: row.setting,
    text: row.place || row.value,
    wanted: "bust or high bust, or a garment beside it",
  });
}
