/** Where a list of pieces stands: a table, or the selected cells. */
import { quotedSheet, refusalSentence } from "../../src/index";
import { readSelection, readTable, type RangeCells } from "../excel";
import { engineCells } from "../patterns";

export const SELECTION = "(selection)";

export interface Source {
  /** As a formula says it. */
  readonly reference: string;
  readonly sheet: string;
  /** Of its first cell, counted from 0. */
  readonly row: number;
  readonly column: number;
  /** How many columns it has. */
  readonly columns: number;
  /** Its name where it is a table. */
  readonly table: string | undefined;
}
export type PiecesCells =
  | { readonly ok: true; readonly cells: ReturnType<typeof engineCells>; readonly source: Source }
  | { readonly ok: false; readonly said: string };

/** The cells of a table with its headings, or those that are selected. */
export async function piecesCells(table: string): Promise<PiecesCells> {
  const selected = table === SELECTION;
  const read = selected ? await readSelection() : await readTable(table);
  if (!read.ok) return { ok: false, said: refusalSentence(read.refusal) };
  const { sheet, row, column, values } = read.value;
  const source: Source = {
    reference: selected ? referenceTo(read.value) : `${table}[#All]`,
    table: selected ? undefined : table,
    columns: values[0]?.length ?? 0,
    ...{ sheet, row, column },
  };
  return { ok: true, cells: engineCells(values), source };
}

const referenceTo = ({ sheet, address }: RangeCells): string => `${quotedSheet(sheet)}!${fixed(address)}`;

/** "A1:B2" with its rows and columns fixed. */
const fixed = (address: string): string =>
  address
    .split(":")
    .map((cell) => {
      const letters = /^[A-Z]+/.exec(cell)?.[0] ?? "";
      return `$${letters}$${cell.slice(letters.length)}`;
    })
    .join(":");
