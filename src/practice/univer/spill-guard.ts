/** In Excel nothing spills inside a table, and no spill may run into one: both are #SPILL!. Univer fills the table. */
import { fromUniver, intersect, type UniverArea } from "./address";
import type { UniverBook } from "./book/workbook";
import type { UniverHandles } from "./engine";

interface Runtime {
  _checkIfArrayFormulaRangeHasData(unit: string, sheet: string, row: number, column: number, area: UniverArea): boolean;
}

export function stopSpillsAtTables({ univer, engine }: UniverHandles, book: UniverBook): void {
  const runtime = univer.__getInjector().get(engine.IFormulaRuntimeService) as unknown as Runtime;
  const occupied = runtime._checkIfArrayFormulaRangeHasData.bind(runtime);
  runtime._checkIfArrayFormulaRangeHasData = (unit, sheet, row, column, area) => {
    const tables = book.Worksheets.find(sheet)?.Tables.all() ?? [];
    return tables.some(({ whole }) => intersect(whole, fromUniver(area))) || occupied(unit, sheet, row, column, area);
  };
}
