import { allCautions } from "../../project/cautions";
import { cautionSentences } from "../../words/project";
import type { SheetPlan } from "../plan";
import { titleBlocks } from "../tracker";

export const CAUTIONS_SHEET = "Cautions";

/** The cautions for children's garments with the rules they come from, to read and to print. */
export function cautionsSheet(): SheetPlan {
  const about = allCautions().filter(({ topic }) => topic !== "binding");
  return {
    sheet: CAUTIONS_SHEET,
    blocks: [
      ...titleBlocks("Cautions for children's garments", [cautionSentences.binding]),
      { row: 3, column: 0, cells: [["What to mind", "The rule itself"]], format: "text", style: "heading" },
      {
        row: 4,
        column: 0,
        cells: about.map(({ sentence, rules }) => [sentence, rules.join(", ") || "all of them"]),
        format: "text",
      },
    ],
    tables: [],
    widths: [110, 34],
    frozenRows: 4,
    print: "lying",
  };
}
