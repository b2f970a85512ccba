/** The pattern index belongs to every pattern in the workbook: taking one back takes only its own charts out of it. */
import { indexFormula, INDEX_CELL, INDEX_NAME, INDEX_SHEET, readIndexFormula } from "../../src/index";
import type { Receipt } from "./take-back";

/** What of a write can be put back as it was, and what takes its charts out of an index that others have added to. */
export interface IndexShare {
  readonly ours: Receipt;
  readonly unlist?: (context: Excel.RequestContext) => Promise<void>;
}

/**
 * Looks whether charts have been put into the index since a write changed it. If so, the index as it was before would lose
 * them: then it stays, but for the charts of the sheets that go.
 */
export async function shareIndex(context: Excel.RequestContext, receipt: Receipt): Promise<IndexShare> {
  const isIndex = ({ name }: { readonly name: string }) => name === INDEX_SHEET;
  const made = receipt.sheets.find(isIndex);
  const changed = receipt.cells.find(isIndex);
  const id = made?.id ?? changed?.sheet;
  if (id === undefined) return { ours: receipt };
  const { workbook } = context;
  const sheet = workbook.worksheets.getItemOrNullObject(id);
  const cell = sheet.getRange(INDEX_CELL.address).load("formulas");
  const tables = workbook.tables.load("items/name,items/worksheet/id");
  await context.sync();
  const listed = sheet.isNullObject ? undefined : readIndexFormula(String(cell.formulas[0]![0]));
  if (!listed) return { ours: receipt };
  const going = new Set(receipt.sheets.map((one) => one.id));
  const gone = new Set(
    tables.items.filter(({ worksheet }) => going.has(worksheet.id)).map(({ name }) => name.toLowerCase()),
  );
  const others = listed.filter(({ table }) => !gone.has(table.toLowerCase()));
  const formulaBefore = String(changed?.formulas[0]![0] ?? "");
  // What came back over kept values, or over something of hers, added no chart: it goes back as it was.
  if (formulaBefore !== "" && !readIndexFormula(formulaBefore)) return { ours: receipt };
  const before = new Set((readIndexFormula(formulaBefore) ?? []).map(({ table }) => table.toLowerCase()));
  if (others.every(({ table }) => before.has(table.toLowerCase()))) return { ours: receipt };
  return {
    ours: {
      ...receipt,
      sheets: receipt.sheets.filter((one) => !isIndex(one)),
      cells: receipt.cells.filter((one) => !isIndex(one)),
      names: receipt.names.filter(({ name }) => name !== INDEX_NAME),
    },
    unlist: async (now) => {
      now.workbook.worksheets.getItem(id).getRange(INDEX_CELL.address).formulas = [[indexFormula(others)]];
      await now.sync();
    },
  };
}
