/** The list of paper pieces as the layout wants it: allowances added, in one unit, by fabric. */
import {
  answer,
  cellText,
  convert,
  isMissing,
  readLengthCell,
  readNumberCell,
  readUnit,
  refuse,
  type Cell,
  type Cells,
  type CutPiece,
  type Result,
} from "../../src/index";

/** The pieces of one cloth; "" where the list names none. */
export interface FabricPieces {
  readonly name: string;
  readonly pieces: readonly CutPiece[];
}

type Column =
  | "piece" | "length" | "width" | "unit" | "count" | "on fold" | "may turn" | "fabric" | "seam allowance" | "hem"; // prettier-ignore

/** Reads the list with its headings; rows without a name, a length and a width are blank and left out. */
export function piecesByFabric(cells: Cells, unit: "in" | "cm"): Result<readonly FabricPieces[]> {
  const at = cells.findIndex((line) => line.some((cell) => key(cell) === "length"));
  const headings = (cells[at] ?? cells[0] ?? []).map(key);
  for (const heading of ["Piece", "Length", "Width"])
    if (!headings.includes(heading.toLowerCase()))
      return refuse("piecesHeading", { heading, found: headings.filter(Boolean).join(", ") || "nothing" });
  const byFabric = new Map<string, CutPiece[]>();
  for (const line of cells.slice(at + 1)) {
    const cell = (column: Column): Cell => line[headings.indexOf(column)] ?? null;
    if (["piece", "length", "width"].every((column) => isMissing(cell(column as Column)))) continue;
    const piece = readPiece(cell, unit);
    if (!piece.ok) return piece;
    const fabric = cellText(cell("fabric"));
    byFabric.set(fabric, [...(byFabric.get(fabric) ?? []), piece.value]);
  }
  if (byFabric.size === 0) return refuse("noPieces", {});
  return answer([...byFabric].map(([name, pieces]) => ({ name, pieces })));
}

const key = (cell: Cell): string => cellText(cell).toLowerCase().replace(/\s+/g, " ");

function readPiece(cell: (column: Column) => Cell, unit: "in" | "cm"): Result<CutPiece> {
  const name = cellText(cell("piece")) || "a piece without a name";
  const named = readUnit(cellText(cell("unit")))?.unit ?? unit;
  const length = (column: Column, otherwise?: number): Result<number> => {
    const given = cell(column);
    if (otherwise !== undefined && isMissing(given)) return answer(otherwise);
    const read = readLengthCell(given, `the ${column} of ${name}`);
    return read.ok ? answer(convert(read.value.value, read.value.unit ?? named, unit)) : read;
  };
  const flag = (column: "on fold" | "may turn"): Result<boolean> => {
    const text = key(cell(column));
    if (["yes", "true", "y", "1", "x"].includes(text)) return answer(true);
    if (["", "no", "false", "n", "0"].includes(text)) return answer(false);
    return refuse("unknownFlag", { piece: name, column, text });
  };
  const [long, wide, allowance] = [length("length"), length("width"), length("seam allowance", 0)];
  if (!long.ok) return long;
  if (!wide.ok) return wide;
  if (!allowance.ok) return allowance;
  const hem = length("hem", allowance.value);
  const count = isMissing(cell("count")) ? answer(1) : readNumberCell(cell("count"), `how often ${name} is cut`);
  const [onFold, mayTurn] = [flag("on fold"), flag("may turn")];
  if (!hem.ok) return hem;
  if (!count.ok) return count;
  if (!onFold.ok) return onFold;
  if (!mayTurn.ok) return mayTurn;
  return answer({
    name,
    // The fold gets no allowance.
    width: wide.value + allowance.value * (onFold.value ? 1 : 2),
    length: long.value + allowance.value + hem.value,
    count: count.value,
    onFold: onFold.value,
    mayTurn: mayTurn.value,
  });
}
