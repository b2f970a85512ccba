import type { Place } from "../chart/model";
import type { Fitting } from "./fitting";
import { ruleFor } from "./settings";

/** How many seam edges share a change in girth at a place: the settings' or the garment's. */
export function edgesAt({ garment, settings }: Fitting, place: Place): number {
  const rule = ruleFor(settings.words, "edges", { garment: garment.key, place });
  return rule ? Number(rule.value) : garment.edges;
}
