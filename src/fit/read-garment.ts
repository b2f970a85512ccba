import { answer, refuse, type Result } from "../problem";
import { garmentKey, garments, garmentsByKey, type Garment } from "./garments";
import { noSettings, type Settings } from "./settings";

/**
 * The garment that a word names; what the settings say of it comes first.
 * Refuses a blank and an unknown word, naming the garments that are known.
 *
 * @example readGarment("Skirts") //=> { ok: true, value: { name: "straight skirt", … } }
 */
export function readGarment(text: string, settings: Settings = noSettings): Result<Garment> {
  if (text.trim() === "") return refuse("blank", { wanted: "a garment, such as shirt or trousers" });
  const key = garmentKey(text);
  const known = garmentsByKey.get(key);
  const garment = settings.garments.get(known?.key ?? key) ?? known;
  if (!garment) return refuse("unknownGarment", { text: text.trim(), known: garmentNames(settings).join(", ") });
  return answer(garment);
}

/** The garments that are known, those of the settings included, in the table's order. */
export function garmentNames(settings: Settings = noSettings): readonly string[] {
  const names = garments.map((garment) => garment.name);
  const added = [...settings.garments.values()].map((garment) => garment.name);
  return [...names, ...added.filter((name) => !names.includes(name))];
}
