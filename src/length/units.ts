import type { LengthUnit } from "./length";

/** A printed unit: the unit it is read in, and how many of those it is worth when it is not one itself. */
export interface PrintedUnit {
  readonly unit: LengthUnit;
  readonly factor?: number;
}

/** Words for units as patterns print them, in the languages of the places' vocabulary. Lower case, no full stop. */
const WORDS: readonly (readonly [PrintedUnit, string])[] = [
  [
    { unit: "in" },
    `in ins inch inches " zoll pouce pouces po pulgada pulgadas pulg pollice pollici cal cale cali duim inch. polegada polegadas pol`,
  ],
  [
    { unit: "cm" },
    "cm cms centimetre centimetres centimeter centimeters zentimeter centimètre centimètres centímetro centímetros centimetro centimetri centymetr centymetry centymetrów",
  ],
  [{ unit: "yd" }, "yd yds yard yards"],
  [{ unit: "m" }, "m mtr mtrs metre metres meter meters mètre mètres metro metros metri metr metry metrów"],
  [{ unit: "in", factor: 12 }, "ft foot feet '"],
  [{ unit: "cm", factor: 0.1 }, "mm millimetre millimetres millimeter millimeters"],
];

const KNOWN = new Map(WORDS.flatMap(([unit, words]) => words.split(" ").map((word) => [word, unit] as const)));

/** The unit that a word names, whatever its case, with or without a full stop; undefined when it names none. */
export function readUnit(word: string): PrintedUnit | undefined {
  const plain = word.trim().toLowerCase();
  return KNOWN.get(plain) ?? KNOWN.get(plain.replace(/\.$/, ""));
}
