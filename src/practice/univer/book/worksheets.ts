import { fail, HostCollection } from "../../host/objects";
import { listening } from "./events";
import type { UniverBook } from "./workbook";
import { Worksheet } from "./worksheet";

/** `workbook.worksheets` */
export class WorksheetCollection extends HostCollection<Worksheet> {
  constructor(private readonly book: UniverBook) {
    super();
  }
  all() {
    return this.book.fbook.getSheets().map((sheet) => new Worksheet(this.book, sheet));
  }
  checkName(name: string, except?: Worksheet): void {
    if (!name || name.length > 31 || /[\\/*?:[\]]/.test(name) || /^'|'$/.test(name)) fail("InvalidArgument");
    const taken = this.find(name); // Univer would quietly choose another name
    if (taken && taken.Id !== except?.Id) fail("ItemAlreadyExists");
  }
  Add(name?: string): Worksheet {
    let number = this.Count + 1;
    while (!name && this.find(`Sheet${number}`)) number++;
    const title = name || `Sheet${number}`;
    this.checkName(title);
    const before = this.book.fbook.getActiveSheet();
    const sheet = this.book.fbook.insertSheet(title);
    this.book.fbook.setActiveSheet(before); // Univer jumps to a new sheet, Excel does not
    return new Worksheet(this.book, sheet);
  }
  GetActiveWorksheet() {
    return new Worksheet(this.book, this.book.fbook.getActiveSheet());
  }
  GetFirst() {
    return this.GetItemAt(0);
  }
  GetLast() {
    return this.GetItemAt(this.Count - 1);
  }
  _RegisterDataChangedEvent() {
    return listening();
  }
  _UnregisterDataChangedEvent() {
    return listening();
  }
  _RegisterSelectionChangedEvent() {
    return listening();
  }
  _UnregisterSelectionChangedEvent() {
    return listening();
  }
}
