/** Lines that say what follows them: units, kinds, views, parts, widths. */
import type { LengthUnit } from "../../length";
import { readPlace } from "../places";
import { isFormulaLike, type Row } from "./cell";
import { isNotion, readFabricLabel, readViews } from "./fabric-label";
import { isChestChart, kindOf, readHeading, unitAlone, unitsIn, type Heading, type Kind } from "./headings";
import { looseCount } from "./loose";
import { joinLabel } from "./rows";
import type { State } from "./state";
import { readWidths } from "./widths";

/** A row of units: under the sizes ("in cm in cm"), or above them, spanning columns. */
export function readUnits(row: Row, state: State): boolean {
  const filled = row.cells
    .map((cell, index) => ({ unit: unitAlone(cell.text), cell, index }))
    .filter(({ cell }) => cell.text !== "");
  const units = filled.filter(({ unit }) => unit !== null);
  if (units.length < 2 || units.length < filled.length - 1) return false;
  const { header } = state;
  if (header && !header.used && units.length === header.columns.length) {
    header.columns.forEach((column, index) => (column.unit = units[index]!.unit));
    return true;
  }
  const byColumn = new Map<number, LengthUnit>();
  let unit: LengthUnit | null = null;
  for (let index = units[0]!.index; index < Math.max(row.cells.length, 60); index++) {
    unit = unitAlone(row.cells[index]?.text ?? "") ?? unit;
    if (unit) byColumn.set(index, unit);
  }
  state.columnUnits = byColumn;
  return true;
}

/** A line that names the kind, the unit, a view or a part of what follows. */
export function readLineHeading(row: Row, state: State): boolean {
  const text = joinLabel(row.cells);
  if (isChestChart(text) && text.length < 100) state.chest = true;
  const heading = readHeading(text);
  if (heading && looseCount(row).count <= 2 && !(heading.kind === null && isShortRow(text, state))) {
    if (heading.kind === null && unitAlone(text) === null && state.kind === "fabric" && readFabricLabel(text).widths)
      return readViewHeading(text, state);
    readTableHeading(heading, text, state);
    return true;
  }
  const global = /\b(?:all|these)? ?(?:measurements|sizes|figures|dimensions) (?:are |given )*(?:in|as) /i.test(text)
    ? unitsIn(text)
    : null;
  if (global?.unit && state.unit === null) {
    state.unit = global.unit;
    return true;
  }
  return readViewHeading(text, state);
}

/** "Waist 24 25 cm" below three sizes: a row that lost a figure, and no heading that names a unit. */
const isShortRow = (text: string, { header, kind, measureKind }: State): boolean =>
  header !== null && kind !== "fabric" && readPlace(/^(\D{2,60}?) \d/.exec(text)?.[1] ?? "", measureKind) !== null;

/** A heading of a table, which may name its views too. */
export function readTableHeading(heading: Heading, text: string, state: State): void {
  startKind(heading.kind, heading.unit, state);
  if (heading.kind === "fabric") readViewHeading(text, state);
  else if (heading.kind === "finished") {
    const { views } = readViews(text);
    state.view = views && views !== "all" && views.length === 1 ? views[0]! : null;
  }
}

export function startKind(kind: Kind | null, unit: LengthUnit | null, state: State): void {
  if (kind !== null) {
    state.kind = kind;
    if (kind !== "fabric") state.measureKind = kind;
    state.view = null;
    state.views = null;
    state.part = null;
    state.nap = null;
    state.widths = null;
    state.unit = unit;
    state.previous = null;
  } else if (unit !== null) state.unit = unit;
}

/** "View A", "Dress A, B", "Lining", "60\" wide": what the next rows are for. */
export function readViewHeading(text: string, state: State): boolean {
  const words = text.split(/\s+/).length;
  if (/\d\D+\d|[½¼¾⅛⅜⅝⅞]|(?:^|[^A-Za-zé] )\d/.test(readWidths(text)?.rest ?? text)) return false;
  if (words > 9 || text.length > 90 || /[.;]$/.test(text) || isFormulaLike(text)) return false;
  const label = readFabricLabel(text);
  if (state.kind !== "fabric") {
    const { views, rest } = readViews(text);
    if (!views || rest.split(/\s+/).length > 4 || /\d/.test(rest)) return false;
    state.views = views;
    if (views !== "all") views.forEach((view) => state.viewsNamed.add(view));
    state.view = views !== "all" && views.length === 1 ? views[0]! : null;
    state.part = null;
    return true;
  }
  if (isNotion(text)) return false;
  const isOnlyPart = label.partKnown && label.part !== null;
  if (!label.views && !isOnlyPart && !label.widths && !label.nap) return false;
  if (label.views) {
    state.views = label.views;
    if (label.views !== "all") label.views.forEach((view) => state.viewsNamed.add(view));
    state.part = null;
    state.nap = null;
    state.widths = null;
  }
  if (isOnlyPart && label.part !== "main") state.part = label.part;
  else if (isOnlyPart && !label.widths && kindOf(text) === null) state.part = "main";
  if (label.widths) state.widths = label.widths;
  if (label.nap) state.nap = label.nap;
  state.previous = null;
  return true;
}
