/** Rows whose cells only a space parts: "BUST 32 1/2 34 36 38 INS". */
import { cellOf, type Cell, type Row } from "./cell";

export interface LooseRow {
  readonly label: string;
  readonly values: readonly Cell[];
  readonly trailing: string;
  /** The last figure is an inch mark, or a ditto mark. */
  readonly isUnsure: boolean;
}
export interface LooseCount {
  readonly label: string;
  readonly trailing: string;
  /** How many figures stand behind the label. */
  readonly count: number;
}

type Sort = "whole" | "fraction" | "number" | "bracket" | "dash" | "mark" | "unit" | "word";
interface Word {
  readonly text: string;
  readonly line: number;
  readonly column: number;
  readonly cell: number;
  readonly start: number;
  readonly sort: Sort;
}

const UNIT = String.raw`(?:["″”'′]{1,2}|ins?\.?|inch|inches|cms?\.?|yds?\.?|mm?\.?)`;
const NUMBER = String.raw`(?:\d['’′]\d{1,2}|\d{1,4}[.,]\d{1,3}|[.,]\d{1,3}|\d{1,3}-\d{1,2}[/⁄]\d{1,2}|\d{1,2}[/⁄]\d{1,2}|\d{1,4}[¼½¾\u2150-\u215E]|[¼½¾\u2150-\u215E]|\d{1,4})`;
const FIGURE = new RegExp(String.raw`^[+-]?${NUMBER}${UNIT}?(?:[-–—/]${NUMBER}${UNIT}?)?[*†‡]{0,3}[,;:|]?$`, "iu");
const MARK = /^(?:n\/a|n\.a\.|["″”〃]|''|do\.|ditto|dito|idem)$/i;
const UNIT_WORD = new RegExp(`^${UNIT}[,;|]?$|^(?:yards?|metres?|meters?|zoll|mètres?|metros?)[,;|]?$`, "i");

/** The words of a row; what stands in brackets is one word. */
function wordsOf(row: Row): Word[] {
  const words = allWords(row);
  return words.filter(
    (word, at) =>
      !(AND.test(word.text) && /[\d½¼¾]/.test(words[at - 1]?.text ?? "") && /^[\d½¼¾]/.test(words[at + 1]?.text ?? "")),
  );
}

/** "84, 88 and 92": the word between two figures is nothing. */
const AND = /^(?:&|and|und|et)$/i;

function allWords(row: Row): Word[] {
  return row.cells.flatMap((cell, index) =>
    [...cell.text.matchAll(/[([][^()[\]]{0,40}[)\]]|[^\s([]+|\S/g)].map((match) => ({
      text: match[0],
      line: cell.line,
      column: cell.column + match.index,
      cell: index,
      start: match.index,
      sort: sortOf(match[0]),
    })),
  );
}

function sortOf(text: string): Sort {
  if (/^[([]/.test(text)) return /\d/.test(text) ? "bracket" : "word";
  if (/^[-\u2010-\u2015\u2212]{1,3}$/.test(text)) return "dash";
  if (MARK.test(text)) return "mark";
  if (/^\d{1,4}$/.test(text)) return "whole";
  if (/^(?:\d{1,2}[/⁄]\d{1,2}|[¼½¾\u2150-\u215E])["″”]?[,;]?$/u.test(text)) return "fraction";
  if (FIGURE.test(text)) return "number";
  if (UNIT_WORD.test(text)) return "unit";
  if (/^[=@+][\w("']/.test(text)) return "number";
  return "word";
}

const isFigureSort = (sort: Sort): boolean => sort === "whole" || sort === "fraction" || sort === "number";

/** One or more words that make one cell. */
interface Group {
  text: string;
  readonly line: number;
  readonly column: number;
  sort: Sort;
}

interface Split {
  readonly label: string;
  readonly groups: readonly Group[];
  readonly trailing: string;
}

/** Label, figures, and words behind them: the last run of figures in the line. */
function split(row: Row, ranges: boolean): Split {
  const words = wordsOf(row);
  const final = runBefore(words, words.length);
  let [start, end] = final;
  // "34 36 38 measured in full": a unit among the words behind is no run of figures.
  while (start > 0 && isOnlyUnits(words.slice(start, end))) [start, end] = runBefore(words, start);
  if (isOnlyUnits(words.slice(start, end))) [start, end] = final;
  // A line of prose: too many words behind one figure or two to be a note.
  if (words.length - end > 8 && figuresIn(words.slice(start, end)) < 3) start = end;
  while (start < end && (words[start]!.sort === "bracket" || words[start]!.sort === "unit")) start++;
  const groups: Group[] = [];
  for (let at = start; at < end; at++) {
    const { text, line, column, sort } = words[at]!;
    const last = groups.at(-1);
    const next = words[at + 1];
    if (sort === "fraction" && last?.sort === "number" && /[-–—]\d{1,3}$/.test(last.text)) {
      // "14-14 1/2": the fraction belongs to the range's end.
      last.text += ` ${text}`;
    } else if ((sort === "unit" || sort === "bracket") && last && last.sort !== "mark" && last.sort !== "dash") {
      last.text += ` ${text}`;
      last.sort = "number";
    } else if (ranges && sort === "dash" && last && isFigureSort(last.sort) && next && isFigureSort(next.sort)) {
      last.text += ` - ${next.text}`;
      last.sort = "number";
      at++;
      const fraction = words[at + 1];
      if (next.sort === "whole" && fraction?.sort === "fraction") {
        last.text += ` ${fraction.text}`;
        at++;
      }
    } else groups.push({ text, line, column, sort });
  }
  return { label: textOf(row, words, 0, start), groups, trailing: textOf(row, words, end, words.length) };
}

/** The last run of words that are figures, marks or units before a word, as from..to. */
function runBefore(words: readonly Word[], before: number): [number, number] {
  let end = before;
  while (end > 0 && words[end - 1]!.sort === "word") end--;
  let start = end;
  while (start > 0 && words[start - 1]!.sort !== "word") start--;
  return [start, end];
}

const isOnlyUnits = (words: readonly Word[]): boolean =>
  words.every(({ sort }) => sort === "unit" || sort === "bracket");

const figuresIn = (words: readonly Word[]): number =>
  words.filter(
    ({ sort }, at) => sort === "whole" || sort === "number" || (sort === "fraction" && words[at - 1]?.sort !== "whole"),
  ).length;

/** Words from..to as they stand in the paste. */
function textOf(row: Row, words: readonly Word[], from: number, to: number): string {
  const cells = new Map<number, [Word, Word]>();
  for (const word of words.slice(from, to)) cells.set(word.cell, [cells.get(word.cell)?.[0] ?? word, word]);
  return [...cells.values()]
    .map(([first, last]) => row.cells[first.cell]!.text.slice(first.start, last.start + last.text.length))
    .join(" ");
}

/** Whole number and fraction beside it as one figure: "32 1/2". A fraction glued to a unit stays with its number. */
function joins(groups: readonly Group[]): number[] {
  const places: number[] = [];
  for (let at = 0; at + 1 < groups.length; at++)
    if (groups[at]!.sort === "whole" && isFractionGroup(groups[at + 1]!)) places.push(at);
  return places;
}

const isFractionGroup = (group: Group): boolean => /^(?:\d{1,2}[/⁄]\d|[¼½¾\u2150-\u215E])/u.test(group.text);

function joined(groups: readonly Group[], places: readonly number[]): Omit<Group, "sort">[] {
  const wanted = new Set(places);
  const result: Omit<Group, "sort">[] = [];
  for (let at = 0; at < groups.length; at++) {
    const { text, line, column } = groups[at]!;
    if (wanted.has(at)) result.push({ text: `${text} ${groups[++at]!.text}`, line, column });
    else result.push({ text, line, column });
  }
  return result;
}

/** How many figures a line holds when every fraction belongs to the number before it. */
export function looseCount(row: Row, isLabelFigure: (text: string, next: string) => boolean = () => false): LooseCount {
  const { label, groups, trailing } = split(row, true);
  const isDash = groups[0]?.sort === "dash";
  const isWidth = groups.length > 1 && isLabelFigure(groups[0]!.text, groups[1]!.text);
  const count = groups.length - joins(groups).length - (isDash || isWidth ? 1 : 0);
  return { label: isWidth ? `${label} ${groups[0]!.text}`.trim() : label, trailing, count };
}

/**
 * A line as a label and exactly `count` figures: each fraction belongs to the whole number before it, since no row falls
 * from 1 to 1/2. `isLabelFigure`: whether a figure in front belongs to the label, such as a fabric width.
 */
export function looseRow(
  row: Row,
  count: number,
  isLabelFigure: (text: string, next: string) => boolean,
): LooseRow | null {
  for (const ranges of [true, false]) {
    const found = split(row, ranges);
    let { label, groups, trailing } = found;
    const isMixed = (): boolean => groups[0]!.sort === "whole" && isFractionGroup(groups[1]!);
    // "Lining A - 45\": 1 1/2": the dash stands before the width.
    if (groups.length > 2 && groups[0]!.sort === "dash" && isLabelFigure(groups[1]!.text, groups[2]!.text)) {
      label = `${label} ${groups[0]!.text}`.trim();
      groups = groups.slice(1);
    }
    while (groups.length > 1 && isLabelFigure(groups[0]!.text, groups[1]!.text) && !isMixed()) {
      label = `${label} ${groups[0]!.text}`.trim();
      groups = groups.slice(1);
    }
    const size = (): number => groups.length - joins(groups).length;
    // "Bust - 34 36": the dash belongs to the label, unless it stands for the first figure.
    if (groups[0]?.sort === "dash" && size() > count) groups = groups.slice(1);
    // Inch marks behind the last figure look like ditto marks.
    const endsInMark = /^["″”]$/.test(groups.at(-1)?.text ?? "");
    const isExtra = endsInMark && size() === count + 1;
    if (isExtra) {
      // The words behind the mark stay: a view, a translation.
      trailing = `${groups.at(-1)!.text} ${trailing}`.trim();
      groups = groups.slice(0, -1);
    } else if (size() !== count) continue;
    const values = joined(groups, joins(groups)).map((group) =>
      cellOf(group.text.replace(/[,;:|]$/, ""), group.line, group.column),
    );
    return { label, values, trailing, isUnsure: endsInMark && !isExtra };
  }
  return null;
}
