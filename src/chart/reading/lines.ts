/** Pasted text as rows of cells: tabs, pipes, CSV, or columns that stand apart. */
import { cellOf, type Cell, type Row } from "./cell";
import { readFigure } from "./figures";
import { isSizeLabel } from "./sizes";

const BOX_LINES = /[│┃║¦]/g;
/** Lines that only draw: "|---|:--:|", "+----+", "=====". */
const RULE = /^[\s|+:=_*~\u2500-\u257F-]{3,}$/;

/** Marks of a list; a dash only where several lines have one, and words behind it. */
const BULLET = /^\s{0,20}[-–*•·▪◦‣] (?=\p{L})/u;
const ROUND_BULLET = /^\s{0,20}[•·▪◦‣] ?(?=\p{L})/u;

/**
 * Each line of a text as a row; blank lines are rows without text, lines that only draw are left out.
 */
export function textRows(text: string): Row[] {
  const lines = text.replace(/\r\n?|[\u2028\u2029\v\f]/g, "\n").split("\n");
  const bullets = lines.filter((line) => BULLET.test(line)).length;
  const plain = lines.map((line) =>
    plainLine(line.replace(bullets > 1 ? BULLET : ROUND_BULLET, (mark) => " ".repeat(mark.length))),
  );
  const commas = csvLines(plain, ",");
  const semicolons = csvLines(plain, ";");
  const rows: Row[] = [];
  plain.forEach((line, index) => {
    const number = index + 1;
    if (RULE.test(line) && /[-=_+\u2500-\u257F]{2}/.test(line)) return;
    const separator = line.includes("\t")
      ? "\t"
      : pipes(line)
        ? "|"
        : semicolons[index]
          ? ";"
          : commas[index]
            ? ","
            : "";
    const cells = separator ? separated(line, separator, number) : spaced(line, number);
    rows.push({ line: number, text: line.trim(), layout: separator ? "grid" : "spaced", cells });
  });
  return rows;
}

/** One space for every kind of space, leader dots taken out; the length stays, so columns stay true. */
function plainLine(line: string): string {
  const plain = line
    .slice(0, 5000)
    .replace(/[\u00A0\u2000-\u200A\u202F\u205F\u3000]/g, " ")
    .replace(/[\u200B-\u200F\u202A-\u202E\u2060-\u2069\uFEFF\u00AD]/g, "")
    .replace(BOX_LINES, "|")
    .replace(/(?<!\.)\.{3,}(?!\.)|…+|(?<![ .])(?: \.){3,}|_{3,}/g, (dots) => " ".repeat(dots.length))
    .replace(/(?<!\/ )\b(\d{1,2}) ?\/ ?([2348]|16)\b(?! ?\/)/g, "$1/$2");
  if (/\t|\|/.test(plain)) return plain;
  const listed = [
    ...plain.matchAll(/(?<=^|[\s:])\d{1,3}(?:[.,]\d)?[½¼¾⅛⅜⅝⅞]?(?:[-–]\d{1,3}(?:[.,]\d)?[½¼¾⅛⅜⅝⅞]?){2,}(?=$|[\s,;])/g),
  ];
  // "31½-32½-34-36": figures of all sizes joined by dashes. Two such lists in a line are groups of sizes.
  if (listed.length === 1) return plain.replace(listed[0]![0], (list) => list.replace(/[-–]/g, " "));
  return isSlashed(plain) ? plain.replace(/ \/ /g, "   ") : plain;
}

/** "Bust: 84 / 88 / 92 cm": slashes between all figures, and so none between two units of one. */
function isSlashed(line: string): boolean {
  const parts = line.split(" / ");
  if (parts.length < 3) return false;
  const isOne = (part: string): boolean => readFigure(part).kind === "figure" || isSizeLabel(part);
  return parts.every((part, index) => isOne(part) || (index === 0 && isOne(part.slice(part.lastIndexOf(" ") + 1))));
}

const pipes = (line: string): boolean => countOf(line, "|") >= 3;

/** The cells between separators; quoted ones may hold the separator, and doubled quotes for one. */
function separated(line: string, separator: string, number: number): Cell[] {
  const cells: Cell[] = [];
  let at = 0;
  while (at <= line.length) {
    const quoted = separator === "\t" || separator === "|" ? null : quotedCell(line, at, separator);
    const end = quoted?.end ?? nextSeparator(line, at, separator);
    const raw = quoted?.text ?? line.slice(at, end);
    const text = separator === "\t" ? unquoted(raw.trim()) : raw.trim();
    cells.push(cellOf(text.replace(/\*\*(.+)\*\*/, "$1"), number, 0));
    at = end + 1;
  }
  // Pipes at both ends are a frame; at one end they part a blank cell from the rest.
  if (separator === "|" && cells[0]?.text === "" && cells.at(-1)?.text === "") {
    cells.shift();
    cells.pop();
  }
  return cells.map((cell, index) => ({ ...cell, column: index + 1 }));
}

function nextSeparator(line: string, from: number, separator: string): number {
  const at = line.indexOf(separator, from);
  return at < 0 ? line.length : at;
}

/** Spreadsheets quote a cell that holds a quote: `"45"" wide"`. */
const unquoted = (text: string): string =>
  text.length > 2 && text.startsWith('"') && text.endsWith('"') && text.includes('""')
    ? text.slice(1, -1).replace(/""/g, '"')
    : text;

function quotedCell(line: string, from: number, separator: string): { text: string; end: number } | null {
  let at = from;
  while (line[at] === " ") at++;
  if (line[at] !== '"') return null;
  let text = "";
  for (at++; at < line.length; at++) {
    if (line[at] !== '"') text += line[at];
    else if (line[at + 1] === '"') text += line[at++];
    else break;
  }
  let end = at + 1;
  while (line[end] === " ") end++;
  return line[at] === '"' && (end >= line.length || line[end] === separator) ? { text, end } : null;
}

/**
 * Which lines are CSV: neighbours that fall into about as many cells, whose cells after the first are short and hold no
 * two figures ("70,5 74,5" is one with decimal commas).
 */
function csvLines(lines: readonly string[], separator: string): boolean[] {
  const counts = lines.map((line) => csvCount(line, separator));
  const isSure = counts.map(
    (count, index) =>
      count >= 4 || (count >= 2 && [counts[index - 1], counts[index + 1]].some((near) => (near ?? 0) >= 3)),
  );
  // Beside sure lines everything with two separators is CSV, however odd.
  return isSure.map(
    (sure, index) =>
      sure || ((isSure[index - 1] || isSure[index + 1]) === true && countOf(lines[index]!, separator) >= 3),
  );
}

const countOf = (line: string, separator: string): number => line.split(separator).length;

function csvCount(line: string, separator: string): number {
  if (!line.includes(separator) || line.includes("\t") || line.includes("|")) return 0;
  const cells = separated(line, separator, 0).map((cell) => cell.text);
  // "Bust: 84, 90, 98" is read word by word.
  if (/:\s*\S/.test(cells[0] ?? "")) return 0;
  const rest = cells.slice(1);
  if (rest.some((cell) => cell.length > 40 || /\d\s+\d+(?![\d/])/.test(cell))) return 0;
  // So is a list with its first figure behind the label: "Bust 84, 90, 98".
  if (/\s\d+(?:[.,]\d+)?$/.test(cells[0] ?? "") && /^\d/.test(rest[0] ?? "") && line.includes(", ")) return 0;
  const figures = rest.filter((cell) => /\d/.test(cell) || cell.length <= 12).length;
  return figures === rest.length ? cells.length : 0;
}

/** Cells that two or more spaces part. */
function spaced(line: string, number: number): Cell[] {
  return [...line.matchAll(/\S+(?: \S+)*/g)].map((match) => cellOf(match[0], number, match.index + 1));
}
