import { fail, HostCollection } from "../../host/objects";
import { intersect } from "../address";
import type { Range } from "./range";
import { insertCells } from "./shift";
import { Table } from "./table";
import type { UniverBook } from "./workbook";
import type { Worksheet } from "./worksheet";

/** `workbook.tables`, or those of one sheet or range. */
export class TableCollection extends HostCollection<Table> {
  constructor(
    private readonly book: UniverBook,
    private readonly wanted: (table: Table) => boolean,
    private readonly sheet?: Worksheet,
  ) {
    super();
  }
  all() {
    return this.book.fbook
      .getTableList()
      .map(({ id }) => new Table(this.book, id))
      .filter(this.wanted);
  }
  Add(place: Range | string, hasHeaders: boolean): Table {
    const home = this.sheet ?? this.book.Worksheets.GetActiveWorksheet();
    let range = typeof place === "string" ? home.GetRange(place) : place;
    const { sheet } = range;
    sheet.Protection.check();
    const others = sheet.Tables.all();
    if (others.some((table) => intersect(table.whole, range))) fail("InvalidArgument", " (tables overlap)");
    if (!hasHeaders) {
      insertCells(range.GetRow(0), "Down");
      range = range.GetResizedRange(1, 0);
    }
    if (range.rows === 1) range = range.GetResizedRange(1, 0);
    let number = 1;
    while (this.book.Tables.find(`Table${number}`)) number++;
    const id = `table-${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 6)}`;
    const params = { unitId: this.book.fbook.getId(), subUnitId: sheet.Id, id, name: `Table${number}` };
    this.book.run("sheet.command.add-table", { ...params, range: range.facade().getRange(), options: {} });
    const table = new Table(this.book, id);
    table.syncHeadings();
    return table;
  }
}
