/** What is looked at between two requests: that the workbook has taken a text, and that a cell is still as it was. */
import type { CellsPlan, WorkbookPlan } from "../../src/index";
import { refusalOf, refused } from "./refusal";
import { keepText } from "./take-back";

/** Has the workbook keep texts. @throws Refused when it does not: what they are to bring back later must not be written over */
export async function remember(context: Excel.RequestContext, texts: NonNullable<WorkbookPlan["kept"]>): Promise<void> {
  if (texts.length === 0) return;
  const { settings } = context.workbook;
  try {
    for (const { key, text } of texts) keepText(context, key, text);
    await context.sync();
    // Excel has been seen to take a text and not to give it back.
    const items = texts.map(({ key }) => settings.getItemOrNullObject(key).load("value"));
    await context.sync();
    if (items.some((item, index) => item.isNullObject || item.value !== texts[index]!.text))
      throw refused("notRemembered", { message: "" });
  } catch (error) {
    const refusal = refusalOf(error);
    if (refusal.code === "failed") throw refused("notRemembered", { message: refusal.details.message });
    if (refusal.code === "tooLarge") throw refused("notRemembered", { message: "" });
    throw error;
  }
}

/** @throws Refused when somebody else has written into the first cell since the plan was made */
export async function stillHolds(
  context: Excel.RequestContext,
  { sheet, blocks }: CellsPlan,
  expected: string,
): Promise<void> {
  const { row, column } = blocks[0]!;
  const cell = context.workbook.worksheets.getItem(sheet).getRangeByIndexes(row, column, 1, 1).load("formulas");
  await context.sync();
  if (cell.formulas[0]![0] !== expected) throw refused("changedMeanwhile", { sheet });
}
