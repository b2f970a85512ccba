import { inARow, type Sentences } from "./sentences";

/** Why the workbook was not written to, or not taken back. */
export interface WriteRefusals {
  readonly sheetTaken: { readonly sheet: string };
  readonly tableTaken: { readonly table: string };
  readonly nameTaken: { readonly name: string };
  readonly cellsFilled: { readonly sheet: string; readonly address: string };
  readonly sheetMissing: { readonly sheet: string };
  readonly tableMissing: { readonly table: string };
  readonly columnTaken: { readonly table: string; readonly column: string };
  readonly protected: Record<string, never>;
  /** There is no room to the right or below. */
  readonly sheetFull: { readonly sheet: string };
  readonly cellBeingEdited: Record<string, never>;
  readonly tooLarge: Record<string, never>;
  readonly tooOld: { readonly what: string };
  /** Excel made something else of a cell than was written. */
  readonly writtenWrong: { readonly sheet: string; readonly address: string; readonly found: string };
  /** The workbook did not take what it was to keep for later; `message` is Excel's own, or empty. */
  readonly notRemembered: { readonly message: string };
  /** Somebody else wrote there between our look and our write. */
  readonly changedMeanwhile: { readonly sheet: string };
  /** Somebody else has made a sheet or a table of a name between our look and our write. */
  readonly takenMeanwhile: Record<string, never>;
  /** Somebody else works in the workbook at the same time, and Excel lets only one of the two changes through. */
  readonly shared: Record<string, never>;
  /** The workbook or sheet is of a kind that lacks what was to be written; `message` is Excel's own. */
  readonly unsupported: { readonly message: string };
  readonly changedSince: { readonly sheet: string };
  readonly nothingToTakeBack: Record<string, never>;
  readonly failed: { readonly message: string };
  /** The write failed, and so did cleaning up after it. */
  readonly halfWritten: { readonly made: string; readonly cells: string; readonly message: string };
  /** Taking back failed after some of it was done. */
  readonly takenBackInPart: { readonly message: string };
}
export type WriteRefusalCode = keyof WriteRefusals;
export type WriteRefusal = {
  [Code in WriteRefusalCode]: { readonly code: Code; readonly details: WriteRefusals[Code] };
}[WriteRefusalCode];

const untouched = "Nothing was written.";

export const refusalSentences: Sentences<WriteRefusals> = {
  sheetTaken: ({ sheet }) => `There is a sheet called "${sheet}" already. ${untouched}`,
  tableTaken: ({ table }) => `There is a table called "${table}" already. ${untouched}`,
  nameTaken: ({ name }) => `The name "${name}" is in use for something else. ${untouched}`,
  cellsFilled: ({ sheet, address }) => `There is something in ${address} of "${sheet}" already. ${untouched}`,
  sheetMissing: ({ sheet }) => `The sheet "${sheet}" is no longer in this workbook. ${untouched}`,
  tableMissing: ({ table }) => `The table "${table}" is no longer in this workbook. ${untouched}`,
  columnTaken: ({ table, column }) => `The table "${table}" has a column "${column}" already. ${untouched}`,
  protected: () =>
    `The workbook or the sheet is protected. ${untouched} Take the protection off (Review, Unprotect), then press again.`,
  sheetFull: ({ sheet }) =>
    `"${sheet}" is full: it has no room for that to the right or below. ${untouched} Clear some of it, or use another sheet.`,
  cellBeingEdited: () =>
    `A cell is being typed in. ${untouched} Press Enter or Esc in the sheet first, then press again.`,
  tooLarge: () => `This is more than Excel takes at once. ${untouched} Try it with fewer sizes or rows.`,
  tooOld: ({ what }) => `This Excel is too old for it (${what}). ${untouched}`,
  writtenWrong: ({ sheet, address, found }) =>
    `Excel made "${found}" of what was to stand in ${address} of "${sheet}", so that the write was taken back. ${untouched}`,
  notRemembered: ({ message }) =>
    inARow(
      `The workbook can't remember the formulas${message === "" ? "" : ` (${message})`}: it may have no more room for that.`,
      `${untouched} Save a copy of the workbook and make values of the cells there (Copy, then Paste Special, Values); this one keeps its formulas.`,
    ),
  changedMeanwhile: ({ sheet }) =>
    `"${sheet}" was changed in another window while this was being written; what was put in there stays. ${untouched} Press again.`,
  takenMeanwhile: () =>
    `A sheet or table of that name was made in another window while this was being written; it stays as it is. ${untouched} Press again, or choose another name.`,
  shared: () =>
    `Somebody else is changing this workbook at the same moment. ${untouched} Wait until the other change shows, then press again.`,
  // That a shared workbook of the old kind takes no tables is from memory of Microsoft's page about it.
  unsupported: ({ message }) =>
    `This workbook or sheet can't hold that (${message}). ${untouched} A workbook shared the old way takes no tables: end that under Review, Unshare Workbook, then press again.`,
  changedSince: ({ sheet }) => `"${sheet}" has been changed since it was written.`,
  nothingToTakeBack: () => "It is gone already: there is nothing left to take back.",
  failed: ({ message }) => `Excel refused: ${message} ${untouched}`,
  halfWritten: ({ made, cells, message }) =>
    inARow(
      `Excel stopped half-way (${message}) and could not be cleaned up.`,
      made === "" ? "" : `What is new in ${made} can be deleted.`,
      cells === "" ? "" : `What stood in ${cells} may be written over: compare it with the workbook you saved last.`,
    ),
  takenBackInPart: ({ message }) =>
    `Excel stopped half-way (${message}): some of it is taken back, some is not. Press Take back again; what is gone already is passed over.`,
};

/** The sentence for a write that was refused. */
export function refusalSentence(refusal: WriteRefusal): string {
  return (refusalSentences[refusal.code] as (details: WriteRefusal["details"]) => string)(refusal.details);
}
