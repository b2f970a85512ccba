import type { ISheetNote } from "@univerjs/sheets-note";
import type {} from "@univerjs/sheets-note/facade";
import { fail, HostCollection, HostObject, type MaybeNull, NULL_OBJECT } from "../../host/objects";
import { formatArea } from "../address";
import type { Range } from "./range";
import type { UniverBook } from "./workbook";
import type { Worksheet } from "./worksheet";

const PIXELS = { width: 220, height: 90 };

/** A comment on a cell. Univer shows it as a note: a comment here has no replies and no author. */
export class Comment extends HostObject {
  readonly scalars = ["AuthorName", "Content", "ContentType", "Resolved"];
  readonly AuthorName = "";
  readonly ContentType = "Plain";
  readonly Resolved = false;

  constructor(private readonly cell: Range) {
    super();
    this.Id = `${String(cell.sheet.Id)}!${formatArea(cell)}`;
  }
  private get note(): ISheetNote {
    return this.cell.facade().getNote() ?? fail("ItemNotFound");
  }
  get Content() {
    return this.note.note;
  }
  set Content(text: string) {
    this.cell.writable().createOrUpdateNote({ ...this.note, note: text });
  }
  GetLocation() {
    return this.cell;
  }
  Delete() {
    this.cell.writable().deleteNote();
  }
}

/** `workbook.comments`, or those of one sheet. */
export class CommentCollection extends HostCollection<Comment> {
  constructor(
    private readonly book: UniverBook,
    private readonly sheet?: Worksheet,
  ) {
    super();
  }
  all() {
    const sheets = this.sheet ? [this.sheet] : this.book.Worksheets.all();
    return sheets.flatMap((sheet) =>
      sheet.fsheet.getNotes().map(({ row, col }) => new Comment(sheet.GetCell(row, col))),
    );
  }
  Add(place: Range | string, content: string) {
    const cell = this.cell(place);
    if (cell.CellCount !== 1) fail("InvalidArgument", " (a comment belongs to one cell)");
    if (cell.facade().getNote()) fail("InvalidOperation", " (the cell has a comment)");
    cell.writable().createOrUpdateNote({ note: content, show: false, ...PIXELS } as ISheetNote);
    return new Comment(cell);
  }
  GetItemByCell(place: Range | string) {
    const cell = this.cell(place);
    return cell.facade().getNote() ? new Comment(cell) : fail("ItemNotFound");
  }
  GetItemByCellOrNullObject(place: Range | string): MaybeNull<Comment> {
    const cell = this.cell(place);
    return cell.facade().getNote() ? new Comment(cell) : NULL_OBJECT;
  }
  private cell(place: Range | string): Range {
    if (typeof place !== "string") return place;
    return (this.sheet ?? this.book.Worksheets.GetActiveWorksheet()).GetRange(place);
  }
}
