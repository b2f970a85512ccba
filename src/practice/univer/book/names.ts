import type { FWorkbook } from "@univerjs/sheets/facade";
import { fail, HostCollection, HostObject, type MaybeNull, NULL_OBJECT } from "../../host/objects";
import { formatArea, parseArea, quoteSheet, splitSheet } from "../address";
import { Range } from "./range";
import type { UniverBook } from "./workbook";
import type { Worksheet } from "./worksheet";

/** Names that would be read as cell addresses are refused, as Excel does. */
export function checkDefinedName(name: string): void {
  const wellFormed = /^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.test(name) && name.length <= 255;
  if (!wellFormed || /^[A-Z]{1,3}\d+$/i.test(name) || /^(?:R\d*)?(?:C\d*)?$/i.test(name)) fail("InvalidArgument");
}

const SET_NAME = "formula.mutation.set-defined-name";
const REMOVE_NAME = "formula.mutation.remove-defined-name";

type FDefinedName = ReturnType<FWorkbook["getDefinedNames"]>[number];

export class NamedItem extends HostObject {
  readonly scalars = ["Comment", "Formula", "Name", "Scope", "Type", "Value", "Visible"];
  readonly Visible = true;
  constructor(
    private readonly book: UniverBook,
    private readonly fname: FDefinedName,
  ) {
    super();
  }
  get Name() {
    return this.fname.getName();
  }
  get Comment() {
    return this.fname.getComment() ?? "";
  }
  set Comment(text: string) {
    this.fname.setComment(text);
  }
  get Scope() {
    return this.fname.isWorkbookScope() ? "Workbook" : "Worksheet";
  }
  get Formula() {
    return `=${this.reference}`;
  }
  set Formula(formula: string) {
    this.fname.setRef(formula.replace(/^=/, ""));
    this.reach();
  }
  get Type() {
    if (this.range()) return "Range";
    return Number.isNaN(Number(this.reference)) ? "String" : "Double";
  }
  get Value() {
    return this.range()?.Address ?? this.reference;
  }
  GetRange(): Range {
    return this.range() ?? fail("InvalidReference");
  }
  GetRangeOrNullObject(): MaybeNull<Range> {
    return this.range() ?? NULL_OBJECT;
  }
  Delete() {
    // Univer's own command would put #REF! into every formula that uses the name. Excel leaves them: #NAME? until
    // there is such a name again.
    const params = this.param;
    const { Name } = this;
    this.book.mutate({ id: REMOVE_NAME, params }, { id: SET_NAME, params });
    this.book.readAgain(Name);
  }
  /** A name may stand for cells beyond the edge of a sheet, which Univer would not know: the sheet is enlarged. */
  reach(): void {
    this.range()?.facade();
  }
  private get param() {
    const unitId = this.book.fbook.getId();
    const found = this.book.fbook.getDefinedNames().find((name) => name.getName() === this.Name);
    return { ...(found as unknown as { _definedNameParam: object })._definedNameParam, unitId };
  }
  get sheetId() {
    return this.fname.getLocalSheetId();
  }
  private get reference() {
    return this.fname.getFormulaOrRefString().replace(/^=/, "");
  }
  private range(): Range | undefined {
    return rangeOf(this.book, this.reference);
  }
}

/** The cells that a reference names, when it is nothing but a place on a sheet. */
function rangeOf(book: UniverBook, reference: string): Range | undefined {
  const { sheet, local } = splitSheet(reference);
  const area = parseArea(local);
  const owner = sheet === undefined ? undefined : book.Worksheets.find(sheet);
  return area && owner?.GetRangeByIndexes(area.row, area.column, area.rows, area.columns);
}

/** `workbook.names`, or those that belong to one sheet. */
export class NamedItemCollection extends HostCollection<NamedItem> {
  constructor(
    private readonly book: UniverBook,
    private readonly sheet?: Worksheet,
  ) {
    super();
  }
  all() {
    const items = this.book.fbook.getDefinedNames().map((name) => new NamedItem(this.book, name));
    return items.filter((item) => (this.sheet ? item.sheetId === this.sheet.Id : item.Scope === "Workbook"));
  }
  Add(name: string, target: Range | string | number, comment?: string) {
    checkDefinedName(name);
    if (this.find(name) || this.book.Tables.find(name)) fail("ItemAlreadyExists");
    const reference =
      target instanceof Range
        ? `${quoteSheet(target.sheet.Name)}!${formatArea(target, "$")}`
        : String(target).replace(/^=/, "");
    // A name that reaches beyond the edge of Univer's small sheets would be #NAME?: asking for the cells enlarges them.
    rangeOf(this.book, reference)?.facade();
    const builder = this.book.fbook.newDefinedNameBuilder().setName(name).setRef(reference);
    if (comment) builder.setComment(comment);
    if (this.sheet) builder.setScopeToWorksheet(this.sheet.fsheet);
    else builder.setScopeToWorkbook();
    this.book.fbook.insertDefinedNameBuilder(builder.build());
    const item = this.GetItem(name);
    item.reach();
    this.book.readAgain(name);
    return item;
  }
  AddFormulaLocal(name: string, formula: string, comment?: string) {
    return this.Add(name, formula, comment);
  }
}
