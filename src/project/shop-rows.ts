import { isErrorCell, type Cell, type Cells, type ErrorCell } from "../chart/cell";
import type { FabricUnit } from "../chart/model";
import { clothUnitOf } from "../length";
import { answer, refuse, type Problem, type Result } from "../problem";
import { sentence } from "../words";
import { shopNotes } from "../words/project";
import { readClothLength, readClothWidth, type ClothLength, type ClothWidth } from "./cloth";
import { cellWords, headedRows, sameWords, type HeadedRow } from "./headed-rows";
import { readMoney } from "./money";

/** Under which headings SHOPLIST looks for each thing of a project; ours first. */
export const PROJECT_HEADINGS = {
  needed: ["Needed", "Fabric needed", "Length needed", "Amount needed", "Length", "Amount"],
  fabric: ["Fabric", "Cloth", "Material"],
  project: ["Project", "Name"],
  pattern: ["Pattern", "Garment"],
  person: ["Person", "For", "Who"],
  width: ["Width", "Fabric width"],
  widthUnit: ["Width unit"],
  unit: ["Unit", "Units"],
  toBuy: ["To buy", "Buy"],
  price: ["Price", "Price each", "Unit price"],
  status: ["Status"],
} as const;
type ProjectColumn = keyof typeof PROJECT_HEADINGS;

/** The same for a stash piece. */
export const STASH_HEADINGS = {
  length: ["Length", "Amount"],
  fabric: ["Fabric", "Cloth", "Material"],
  piece: ["Piece", "Stash piece", "Name", "Label"],
  width: ["Width", "Fabric width"],
  widthUnit: ["Width unit"],
  unit: ["Unit", "Units"],
  status: ["Status"],
} as const;
type StashColumn = keyof typeof STASH_HEADINGS;

/** Projects whose cloth is bought, cut or given up want none any more; any other word, and none, still does. */
export const SETTLED = ["fabric bought", "cut", "sewing", "finished", "dropped"] as const;
/** A stash piece with this status is gone. */
export const USED_UP = "used up";

export interface ShopProject {
  readonly kind: "project";
  readonly label: string;
  readonly fabric: string;
  readonly width: ClothWidth | undefined;
  /** What stands in the width's cell, for the list. */
  readonly widthCell: string | number;
  readonly needed: ClothLength;
  /** In the unit of `needed`. */
  readonly toBuy: number;
  /** For one of that unit; a problem where it can't be read, undefined where there is none. */
  readonly price: number | Problem | undefined;
}
export interface ShopPiece {
  readonly kind: "piece";
  readonly label: string;
  readonly fabric: string;
  readonly width: ClothWidth | undefined;
  readonly length: ClothLength;
}
/** A row that can't be counted; its cells as they stand, so that an error shows in its own place. */
export interface FaultyRow {
  readonly kind: "faulty";
  readonly fabric: ShopCell;
  readonly width: ShopCell;
  readonly needed: ShopCell;
  readonly from: string;
  readonly note: string;
}
export type ShopCell = string | number | ErrorCell;

/** The projects that want cloth, in their order. Blank rows and settled projects are skipped. */
export function readShopProjects(cells: Cells): Result<readonly (ShopProject | FaultyRow)[]> {
  const rows = headedRows<ProjectColumn>(cells, "the list of projects", PROJECT_HEADINGS, ["needed", "fabric"]);
  return rows.ok ? answer(rows.value.flatMap(readProject)) : rows;
}

function readProject({ number, cell }: HeadedRow<ProjectColumn>): readonly (ShopProject | FaultyRow)[] {
  const filled = (["project", "pattern", "fabric"] as const).some((column) => !isBlank(cell(column)));
  if (!filled && isBlank(cell("needed"))) return [];
  if (SETTLED.some((word) => word === sameWords(cellWords(cell("status"))))) return [];
  const name = cellWords(cell("project")) || cellWords(cell("pattern")) || `Row ${number}`;
  const person = cellWords(cell("person"));
  const label = person && !sameWords(name).includes(sameWords(person)) ? `${name} (${person})` : name;
  const faulty = (problem: string): [FaultyRow] => [
    {
      kind: "faulty",
      fabric: shown(cell("fabric")),
      width: shown(cell("width")),
      needed: shown(cell("needed")),
      from: "",
      note: shopNotes.notCounted(label, problem),
    },
  ];
  for (const column of ["fabric", "width", "needed", "toBuy", "unit", "widthUnit", "status"] as const) {
    const held = cell(column);
    if (isErrorCell(held)) return faulty(shopNotes.spreadsheetError(PROJECT_HEADINGS[column][0], held.error));
  }
  const width = readClothWidth(cell("width"), cell("widthUnit"));
  if (!width.ok) return faulty(sentence(width.problem));
  const needed = readClothLength(cell("needed"), cell("unit"));
  if (!needed.ok) return faulty(sentence(needed.problem));
  if (needed.value === undefined) return faulty(shopNotes.noAmount);
  // A bare amount to buy goes by the unit that the needed one names.
  const toBuy = readClothLength(cell("toBuy"), isBlank(cell("unit")) ? needed.value.unit : cell("unit"));
  if (!toBuy.ok) return faulty(sentence(toBuy.problem));
  if (toBuy.value && toBuy.value.unit !== needed.value.unit)
    return faulty(shopNotes.twoUnits(cellWords(cell("toBuy")), cellWords(cell("needed"))));
  const money = readPrice(cell("price"));
  return [
    {
      kind: "project",
      label,
      fabric: cellWords(cell("fabric")),
      width: width.value,
      widthCell: shownPlain(cell("width")),
      needed: needed.value,
      toBuy: (toBuy.value ?? needed.value).value,
      price: money === undefined || money.ok ? money?.value : money.problem,
    },
  ];
}

function readPrice(cell: Cell): Result<number> | undefined {
  if (isErrorCell(cell)) return refuse("unreadableMoney", { text: cell.error });
  return isBlank(cell) ? undefined : readMoney(cell as string | number | boolean);
}

/** The stash, a piece a row, in its order. Blank rows and pieces that are used up are skipped. */
export function readStash(cells: Cells): Result<readonly (ShopPiece | FaultyRow)[]> {
  const rows = headedRows<StashColumn>(cells, "the stash", STASH_HEADINGS, ["length", "fabric"]);
  return rows.ok ? answer(distinct(rows.value.flatMap(readPiece))) : rows;
}

function readPiece({ number, cell }: HeadedRow<StashColumn>): readonly (ShopPiece | FaultyRow)[] {
  const filled = (["piece", "fabric", "length"] as const).some(
    (column) => !isBlank(cell(column)) && cell(column) !== 0,
  );
  if (!filled || sameWords(cellWords(cell("status"))) === USED_UP) return [];
  const label = cellWords(cell("piece")) || `stash row ${number}`;
  const faulty = (problem: string): [FaultyRow] => [
    {
      kind: "faulty",
      fabric: shown(cell("fabric")),
      width: shown(cell("width")),
      needed: "",
      from: label,
      note: shopNotes.notCounted(shopNotes.stashPiece(label), problem),
    },
  ];
  for (const column of ["piece", "fabric", "width", "length", "unit", "widthUnit", "status"] as const) {
    const held = cell(column);
    if (isErrorCell(held)) return faulty(shopNotes.spreadsheetError(STASH_HEADINGS[column][0], held.error));
  }
  const width = readClothWidth(cell("width"), cell("widthUnit"));
  if (!width.ok) return faulty(sentence(width.problem));
  const length = readClothLength(cell("length"), cell("unit"));
  if (!length.ok) return faulty(sentence(length.problem));
  if (length.value === undefined) return faulty(shopNotes.noLength);
  return [{ kind: "piece", label, fabric: cellWords(cell("fabric")), width: width.value, length: length.value }];
}

/** Two pieces of one name are told apart by a number: "Blue linen", "Blue linen, 2nd". */
function distinct(rows: readonly (ShopPiece | FaultyRow)[]): (ShopPiece | FaultyRow)[] {
  const seen = new Map<string, number>();
  return rows.map((row) => {
    if (row.kind !== "piece") return row;
    const count = (seen.get(sameWords(row.label)) ?? 0) + 1;
    seen.set(sameWords(row.label), count);
    return count === 1 ? row : { ...row, label: `${row.label} no. ${count}` };
  });
}

/**
 * The unit that a bare amount is in: yards beside a width in inches, metres beside centimetres; without a width the
 * only unit that other rows name. Null when no row names any: then bare numbers are compared as they stand. Undefined
 * when rows name both.
 */
export function settledUnit(
  amount: ClothLength,
  width: ClothWidth | undefined,
  named: ReadonlySet<FabricUnit>,
): FabricUnit | null | undefined {
  if (amount.unit) return amount.unit;
  if (width) return clothUnitOf(width.unit);
  if (named.size === 0) return null;
  return named.size === 1 ? [...named][0] : undefined;
}

const isBlank = (cell: Cell): boolean => !isErrorCell(cell) && cellWords(cell) === "";
const shownPlain = (cell: Cell): string | number => (typeof cell === "number" ? cell || "" : cellWords(cell));
const shown = (cell: Cell): ShopCell => (isErrorCell(cell) ? cell : shownPlain(cell));
