import { isMissing, type Cells } from "../chart/cell";
import type { FabricUnit } from "../chart/model";
import { answer, type Result } from "../problem";
import { sentence } from "../words";
import { shopNotes } from "../words/project";
import { serveProjects } from "./serve-projects";
import { readShopProjects, readStash, settledUnit } from "./shop-rows";
import type { FaultyRow, ShopCell, ShopPiece, ShopProject } from "./shop-rows";

/** One line of the shopping list. Needed and to buy are in the project's own unit, which the note names. */
export interface ShopRow {
  readonly fabric: ShopCell;
  readonly width: ShopCell;
  readonly needed: ShopCell;
  /** The stash piece it is cut from; "" when it is bought. */
  readonly from: string;
  /** 0 when a stash piece serves it; "" when the row could not be counted. */
  readonly toBuy: number | "";
  /** In whole cents, written as money; "" without a price. */
  readonly cost: number | "";
  readonly note: string;
}

/**
 * What to buy for which project, in the order of the projects; rows that can't be counted stand last with the reason,
 * those of the stash behind those of the projects. A project is cut from one stash piece of its fabric (the same words)
 * that is long and wide enough, or bought; a piece serves several projects only if it is long enough for all of them
 * together, and pieces are never added together. The pieces are given so that least is left to buy (`shareStash`).
 *
 * Both ranges come with their headings. Projects: Fabric and Needed, and where she has them Project, Pattern, Person,
 * Width, Unit, To buy, Price, Status. Stash: Fabric and Length, and Piece, Width, Unit, Status. Projects whose cloth is
 * bought, cut or given up by their status, and pieces that are used up, are left out.
 *
 * @example shopList([["Fabric", "Needed"], ["linen", 2]]).value[0].toBuy //=> 2
 */
export function shopList(projects: Cells, stash?: Cells): Result<readonly ShopRow[]> {
  const readProjects = readShopProjects(projects);
  if (!readProjects.ok) return readProjects;
  const readPieces = stash && holdsSomething(stash) ? readStash(stash) : answer([]);
  if (!readPieces.ok) return readPieces;
  const named = namedUnits([...readProjects.value, ...readPieces.value]);
  const wants = readProjects.value.map((row) => (row.kind === "project" ? withUnit(row, named) : row));
  const pieces = readPieces.value.map((row) => (row.kind === "piece" ? pieceWithUnit(row, named) : row));
  const good = wants.filter((row) => row.kind === "project");
  const rows = serveProjects(
    good,
    pieces.filter((row) => row.kind === "piece"),
  );
  const faulty = [...wants, ...pieces].filter((row) => row.kind === "faulty");
  const list = [...rows, ...faulty.map(faultyRow)];
  return answer(list.length > 0 ? list : [nothingRow]);
}

/** The list as cells, seven a row: fabric, width, needed, stash piece, to buy, cost, note. */
export function shopListCells(rows: readonly ShopRow[]): ShopCell[][] {
  return rows.map(({ fabric, width, needed, from, toBuy, cost, note }) => [
    fabric, width, needed, from, toBuy, cost, note,
  ]); // prettier-ignore
}

const holdsSomething = (cells: Cells): boolean => cells.some((row) => row.some((cell) => !isMissing(cell)));

const nothingRow: ShopRow = {
  fabric: "", width: "", needed: "", from: "", toBuy: "", cost: "", note: shopNotes.nothing,
}; // prettier-ignore

const faultyRow = ({ fabric, width, needed, from, note }: FaultyRow): ShopRow => ({
  fabric, width, needed, from, toBuy: "", cost: "", note,
}); // prettier-ignore

function namedUnits(rows: readonly (ShopProject | ShopPiece | FaultyRow)[]): ReadonlySet<FabricUnit> {
  const units = rows.map((row) =>
    row.kind === "faulty" ? null : (row.kind === "piece" ? row.length : row.needed).unit,
  );
  return new Set(units.filter((unit) => unit !== null));
}

function withUnit(project: ShopProject, named: ReadonlySet<FabricUnit>): ShopProject | FaultyRow {
  const { fabric, widthCell: width, label, needed } = project;
  const unit = settledUnit(needed, project.width, named);
  if (unit !== undefined) return { ...project, needed: { value: needed.value, unit } };
  return { kind: "faulty", fabric, width, needed: needed.value, from: "", note: unitNote(label, needed.value) };
}

function pieceWithUnit(piece: ShopPiece, named: ReadonlySet<FabricUnit>): ShopPiece | FaultyRow {
  const { fabric, label, length } = piece;
  const unit = settledUnit(length, piece.width, named);
  if (unit !== undefined) return { ...piece, length: { value: length.value, unit } };
  const note = unitNote(shopNotes.stashPiece(label), length.value);
  return { kind: "faulty", fabric, width: piece.width?.value ?? "", needed: "", from: label, note };
}

const unitNote = (what: string, value: number): string =>
  shopNotes.notCounted(what, sentence({ code: "unitNotSaid", details: { text: String(value) } }));
