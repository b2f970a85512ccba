import { fail, HostCollection, HostObject } from "../../host/objects";
import type { Range } from "./range";
import type { Table } from "./table";
import type { CellValue } from "./typed";

/** `table.columns` */
export class TableColumnCollection extends HostCollection<TableColumn> {
  constructor(private readonly table: Table) {
    super();
  }
  all() {
    return this.table.columnNames.map((_, index) => new TableColumn(this.table, index));
  }
  /** Columns are also found by their Excel number, which counts from 1. */
  Add(index?: number | null, values?: unknown[][] | string | number | null, name?: string | null) {
    const at = index === undefined || index === null || index < 0 ? this.Count : index;
    if (at > this.Count) fail("InvalidArgument");
    this.table.addColumn(at, values ?? undefined, name ?? undefined);
    return new TableColumn(this.table, at);
  }
}

export class TableColumn extends HostObject {
  readonly scalars = ["Name", "Index", "Values"];
  constructor(
    private readonly table: Table,
    readonly Index: number,
  ) {
    super();
    this.Id = Index + 1;
  }
  get Name() {
    return this.table.columnNames[this.Index] ?? fail("ItemNotFound");
  }
  set Name(name: string) {
    this.GetHeaderRowRange().Values = name;
  }
  get Values(): CellValue[][] {
    return this.GetRange().Values;
  }
  set Values(values: unknown) {
    this.GetRange().Values = values;
  }
  GetRange(): Range {
    return this.table.whole.GetColumn(this.Index);
  }
  GetDataBodyRange(): Range {
    return this.table.GetDataBodyRange().GetColumn(this.Index);
  }
  GetHeaderRowRange(): Range {
    return this.table.core.GetCell(0, this.Index);
  }
  GetTotalRowRange(): Range {
    return this.table.GetTotalRowRange().GetCell(0, this.Index);
  }
  Delete() {
    this.table.deleteColumn(this.Index);
  }
}

/** `table.rows`: the data rows, without headings and totals. */
export class TableRowCollection extends HostCollection<TableRow> {
  constructor(private readonly table: Table) {
    super();
  }
  all() {
    return Array.from({ length: this.table.core.rows - 1 }, (_, index) => new TableRow(this.table, index));
  }
  Add(index?: number | null, values?: unknown[][] | string | number | null) {
    const at = index === undefined || index === null || index < 0 ? this.Count : index;
    if (at > this.Count) fail("InvalidArgument");
    const rows = Array.isArray(values) ? values : [Array(this.table.core.columns).fill(values ?? null)];
    this.table.addRows(at, rows);
    return new TableRow(this.table, at);
  }
  DeleteRowsAt(index: number, count = 1) {
    this.table.deleteRows(index, count);
  }
}

export class TableRow extends HostObject {
  readonly scalars = ["Index", "Values"];
  constructor(
    private readonly table: Table,
    readonly Index: number,
  ) {
    super();
  }
  get Values(): CellValue[][] {
    return this.GetRange().Values;
  }
  set Values(values: unknown) {
    this.GetRange().Values = values;
  }
  GetRange(): Range {
    return this.table.core.GetRow(this.Index + 1);
  }
  Delete() {
    this.table.deleteRows(this.Index, 1);
  }
}
