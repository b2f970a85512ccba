/** Rows that a page broke: wrapped labels, wrapped figures, one cell on each line. */
import { readPlace } from "../places";
import { isBlankRow, type Row } from "./cell";
import { readFigure } from "./figures";
import type { Header } from "./header";
import { readHeading } from "./headings";
import { looseCount } from "./loose";
import type { Fit, Misfit } from "./rows";
import { isSizeLabel, isSizeWord } from "./sizes";

export interface Joined {
  readonly row: Row;
  readonly fit: Fit;
  readonly taken: number;
}

/**
 * A row that only fits its header together with the next one to three: figures that run on without a label, or a label
 * that goes on ("Back waist" / "length 15 3/4 16"). Null when the rows are better left apart.
 */
export function joinedRows(
  rows: readonly Row[],
  at: number,
  header: Header,
  fit: (row: Row) => Fit | Misfit,
): Joined | null {
  let row = rows[at]!;
  if (readHeading(row.text)?.kind) return null;
  const start = looseCount(row);
  if (start.count >= header.columns.length || row.text.length > 200 || start.label.split(/\s+/).length > 7) return null;
  for (let taken = 2; taken <= 4; taken++) {
    const next = rows[at + taken - 1];
    if (!next || isBlankRow(next) || next.text.length > 300) return null;
    const more = looseCount(next);
    const said = more.count === 0 ? next.text : more.label;
    if (more.count === 0 && (taken === 4 || readHeading(said)?.kind)) return null;
    const isFiguresOn = more.label === "" && more.count > 0;
    const isLabelOn =
      (start.count === 0 || (start.count === 1 && start.trailing !== "")) &&
      said !== "" &&
      isLongerLabel(row.text, said);
    const isBroken = taken === 2 && start.count === 0 && more.count === 0 && isBrokenTwice(row, next, rows[at + 2]);
    if (!isFiguresOn && !isLabelOn && !isBroken) return null;
    row = oneRow(row, next);
    const found = fit(row);
    if (found.ok && !found.single && found.label !== "" && found.doubt === null) return { row, fit: found, taken };
    if (looseCount(row).count >= header.columns.length) return null;
  }
  return null;
}

/** "Back" / "waist" / "length 15 3/4 16": three pieces that only together are a known place. */
function isBrokenTwice(first: Row, second: Row, third: Row | undefined): boolean {
  const last = third ? looseCount(third) : null;
  if (!last || last.count === 0 || last.label === "" || readHeading(second.text)?.kind) return false;
  const whole = readPlace(`${first.text} ${second.text} ${last.label}`, "body");
  const isLess = [`${second.text} ${last.label}`, last.label].every((part) => readPlace(part, "body") !== whole);
  return whole !== null && isLess && !isSizeWord(first.text);
}

/** What a label can't end with: "neck to", "Hip 7\" below", a bracket that stays open. */
const GOES_ON =
  /(?:\b(?:to|of|from|at|and|the|de|du|von|bis|zum|zur)|\d ?(?:["″”]|cm|ins?|inch|inches)? (?:below|above|under)|\([^()]{0,60}|[,/&-])$/i;

/** Whether a line breaks off inside a label. */
export const breaksOff = (text: string): boolean => GOES_ON.test(text);

/** Whether two pieces of a label are one: together a known place, and the second alone is none. */
function isLongerLabel(first: string, second: string): boolean {
  if (breaksOff(first) && !isSizeWord(first)) return true;
  const whole = readPlace(`${first} ${second}`, "body");
  const own = readPlace(second, "body");
  // "Height 5'4\"" above "Sleeve": the first is whole without the second.
  if (own !== null && readPlace(first, "body") === whole) return false;
  return whole !== null && own !== whole && !isSizeWord(first);
}

function oneRow(first: Row, second: Row): Row {
  const text = `${first.text} ${second.text}`;
  const filled = (row: Row) => row.cells.filter((cell) => cell.text !== "");
  if (second.layout === "spaced")
    return { line: first.line, text, layout: "spaced", cells: [...filled(first), ...filled(second)] };
  const [lead, ...rest] = second.cells;
  if (!lead) return first;
  const firstFilled = filled(first);
  if (firstFilled.length > 1)
    return {
      line: first.line,
      text,
      layout: "grid",
      cells: [...trimEnd(first), ...second.cells.filter((cell, index) => index > 0 || cell.text !== "")],
    };
  const label = [firstFilled[0]?.text, lead.text].filter(Boolean).join(" ");
  const isFigure = readFigure(lead.text).kind === "figure";
  const cells = isFigure ? [firstFilled[0]!, lead, ...rest] : [{ ...lead, text: label, line: first.line }, ...rest];
  return { line: first.line, text, layout: "grid", cells };
}

const trimEnd = (row: Row) => {
  let end = row.cells.length;
  while (end > 0 && row.cells[end - 1]!.text === "") end--;
  return row.cells.slice(0, end);
};

/** A page read cell by cell, each on a line of its own, as rows: a label and the figures below it. */
export function onePerLine(rows: readonly Row[]): readonly Row[] {
  const result: Row[] = [];
  for (let at = 0; at < rows.length;) {
    const end = runEnd(rows, at);
    const run = rows.slice(at, end).filter((row) => !isBlankRow(row));
    const figures = run.filter((row) => readFigure(row.text).kind === "figure" || isSizeLabel(row.text)).length;
    const next = Math.max(end, at + 1);
    const isColumn = run.length >= 6 && figures * 2 >= run.length;
    // One by one: a run may be as long as the longest paste, more than one call takes.
    for (const row of isColumn ? regrouped(run) : rows.slice(at, next)) result.push(row);
    at = next;
  }
  return result;
}

const isAlone = (row: Row): boolean =>
  row.cells.length <= 1 && row.text.length <= 60 && (row.cells[0] === undefined || looseIsOne(row.text));
const looseIsOne = (text: string): boolean => {
  const { kind } = readFigure(text);
  return kind !== "text" || isSizeLabel(text) || text.split(" ").filter((word) => /\d/.test(word)).length < 2;
};

function runEnd(rows: readonly Row[], at: number): number {
  let end = at;
  while (end < rows.length && isAlone(rows[end]!)) end++;
  return end;
}

function regrouped(run: readonly Row[]): Row[] {
  const groups: Row[][] = [];
  let inSizes = false;
  for (const row of run) {
    const isFigure = readFigure(row.text).kind !== "text";
    const last = groups.at(-1);
    if (last && (isFigure || (inSizes && isSizeLabel(row.text)))) last.push(row);
    else {
      const isMore =
        last?.length === 1 &&
        readPlace(`${last[0]!.text} ${row.text}`, "body") !== null &&
        readPlace(row.text, "body") === null;
      if (isMore) groups[groups.length - 1] = [oneRow(last[0]!, row)];
      else groups.push([row]);
      inSizes = isSizeWord(row.text);
    }
  }
  return groups.map((group) => {
    const cells = group.flatMap((row, index) => (index === 0 ? [{ ...row.cells[0]!, text: row.text }] : row.cells));
    return group.length === 1
      ? group[0]!
      : { line: group[0]!.line, text: cells.map((cell) => cell.text).join(" "), layout: "grid", cells };
  });
}
