/** `range.clear()` */
import { fail } from "../../host/objects";
import type { Range } from "./range";

export type ClearWhat = "All" | "Contents" | "Formats" | "Hyperlinks" | "RemoveHyperlinks";

export function clear(range: Range, what: ClearWhat): void {
  if (what === "Hyperlinks" || what === "RemoveHyperlinks") fail("ApiNotFound", `clear(${what})`);
  range.sheet.Protection.check(range);
  const cells = range.onSheet();
  if (!cells) return;
  if (what !== "Formats") cells.clearContent();
  if (what === "Contents") return;
  cells.clearFormat();
  if (what === "All") range.DataValidation.Clear();
  range.ConditionalFormats.ClearAll();
}
