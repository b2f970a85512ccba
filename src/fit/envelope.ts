import { cellText, isBlank, isErrorCell, LARGEST, errorCellProblem, type Cell } from "../chart/cell";
import { namesText } from "../chart/cells-names";
import { labelKey, readSizeCell } from "../chart/size-label";
import { plainText } from "../length/read";
import { answer, refuse, type Result } from "../problem";

/** A size group as a pattern is sold: "6-12", "6 to 12", "XS-M", "8-10-12", "16W-24W". */
export interface SizeGroup {
  /** Its own words. */
  readonly text: string;
  readonly holds: (size: string) => boolean;
}

/** A size on its scale: 18W is no 18, and XS no number. */
interface Rank {
  readonly scale: string;
  readonly rank: number;
}

const LETTERS = ["xxxxs", "xxxs", "xxs", "xs", "s", "m", "l", "xl", "xxl", "xxxl", "xxxxl", "xxxxxl"];
const [XS, XL] = [LETTERS.indexOf("xs"), LETTERS.indexOf("xl")];
/** A child's size between 6 and 7. */
const SIX_X: Rank = { scale: "", rank: 6.5 };

/**
 * Where a size stands among its like. 00 comes before 0, 00P before 0P; 6X, a child's size, after 6; 1X is XL; 2X, 2XL and
 * XXL are one size; a number with letters (18W, 3T) is on a scale of its own. Common practice, no source.
 */
function rankOf(size: string): Rank | undefined {
  const key = labelKey(size);
  if (key === "6x") return SIX_X;
  const number = /^(0{4}|\d{1,3})([a-z]{0,3})$/.exec(key);
  const many = number && /^(x[ls]?)$/.exec(number[2]!) ? Number(number[1]) : 0;
  if (many > 0) return { scale: "letters", rank: number![2] === "xs" ? XS + 1 - many : XL - 1 + many };
  if (number)
    return { scale: number[2]!, rank: /^0{2,}$/.test(number[1]!) ? 1 - number[1]!.length : Number(number[1]) };
  return letterRank(key === "x" ? "xl" : key);
}

function letterRank(key: string): Rank | undefined {
  const rank = LETTERS.indexOf(key);
  return rank < 0 ? undefined : { scale: "letters", rank };
}

/**
 * A size group from a cell: its first and last size with a hyphen, a dash or "to" between them, a list of sizes, or one
 * size. 16-24W means 16W-24W. A date that Excel made of 6-12 is refused.
 *
 * @example readSizeGroup("6 to 12") //=> { ok: true, value: { text: "6 to 12", holds: … } }
 */
export function readSizeGroup(cell: Cell): Result<SizeGroup> {
  if (isErrorCell(cell)) return errorCellProblem(cell);
  if (typeof cell === "number" && cell > LARGEST) return refuse("excelDate", { text: cellText(cell) });
  const text = cellText(cell);
  const words = sizesIn(text);
  const ranks = words.map(rankOf);
  const [first, last] = [ranks[0], ranks.at(-1)];
  if (typeof cell === "boolean") return refuse("unreadableGroup", { text });
  const listed = new Set(words.map(labelKey));
  if (words.length === 1) return answer({ text, holds: (size) => listed.has(labelKey(size)) });
  if (!first || !last) return refuse("unreadableGroup", { text });
  const low = first.scale === "" && last.scale !== "letters" ? { ...first, scale: last.scale } : first;
  if (low.scale !== last.scale || low.rank > last.rank) return refuse("unreadableGroup", { text });
  const holds = (size: string): boolean => {
    const rank = rankOf(size);
    return rank?.scale === last.scale && rank.rank >= low.rank && rank.rank <= last.rank;
  };
  return answer({ text, holds });
}

/** The sizes that a text names, in its order: "6-12", "(6, 8, 10)", "S to M", "12+16". */
export function sizesIn(text: string): string[] {
  return plainText(text)
    .slice(0, 200)
    .replace(/[()[\]]/g, " ")
    .split(/ to | bis | à | and | & |[-–—,;+/]/i)
    .map((word) => word.trim().replace(/^sizes? /i, ""))
    .filter((word) => word !== "");
}

const RANGE = / to | bis | à |[-–—]/i;

/**
 * The groups that one cell names: "6-12, 14-20" are two, because commas, semicolons and line ends divide ranges; "6, 8, 10"
 * is one, a list of sizes.
 *
 * @example groupsInCell("6-12; 14-20") //=> ["6-12", "14-20"]
 */
export function groupsInCell(cell: Cell): readonly Cell[] {
  if (typeof cell !== "string") return [cell];
  const parts = cell.split(/[,;\n]/).map((part) => part.trim());
  const several = parts.filter((part) => part !== "");
  return several.length > 1 && several.filter((part) => RANGE.test(part)).length * 2 >= several.length
    ? several
    : [cell];
}

/** More groups than a pattern is ever sold in. */
const MOST_GROUPS = 60;
const MOST_SIZES = 60;
/** Ways tried before giving up; a pattern's few groups need a handful. */
const MOST_WAYS = 100_000;

/**
 * The fewest size groups that hold all the sizes, so the envelopes to buy. Of several ways the one that is listed first.
 *
 * @param groups as cells, one group or several in each; blank ones are skipped
 * @param sizes as cells; blank ones are skipped, a blend ("12-16", "12+16") needs both of its ends
 * @returns the groups in their order and their own words
 * @example envelopes(["6-12", "14-20"], [12, 16]) //=> { ok: true, value: ["6-12", "14-20"] }
 */
export function envelopes(groups: readonly Cell[], sizes: readonly Cell[]): Result<readonly string[]> {
  const read: SizeGroup[] = [];
  for (const cell of groups.flatMap(groupsInCell)) {
    if (isBlank(cell)) continue;
    const group = readSizeGroup(cell);
    if (!group.ok) return group;
    read.push(group.value);
  }
  // A nought is size 0 where a group has one, else a blank cell.
  const listed = read.filter(({ text }) => text !== "0");
  if (listed.length === 0) return refuse("blank", { wanted: "one of the pattern's size groups, such as 6-12" });
  const wanted = wantedSizes(sizes, listed);
  if (!wanted.ok) return wanted;
  if (wanted.value.length === 0) return refuse("blank", { wanted: "a size" });
  if (listed.length > MOST_GROUPS || wanted.value.length > MOST_SIZES)
    return refuse("tooManyGroups", { found: `${listed.length} groups and ${wanted.value.length} sizes` });
  const lost = wanted.value.find((size) => !listed.some(({ holds }) => holds(size)));
  if (lost !== undefined)
    return refuse("sizeInNoGroup", { size: lost, known: namesText(listed.map(({ text }) => text)) });
  return fewest(listed, wanted.value);
}

function wantedSizes(cells: readonly Cell[], groups: readonly SizeGroup[]): Result<string[]> {
  const labels = groups.some(({ holds }) => holds("0")) ? ["0"] : [];
  const wanted = new Map<string, string>();
  for (const cell of cells) {
    const size = readSizeCell(cell, labels);
    if (!size.ok && size.problem.code === "blank") continue;
    if (!size.ok) return size;
    for (const one of sizesIn(size.value)) wanted.set(labelKey(one), one);
  }
  return answer([...wanted.values()]);
}

/** Tries one group, then two …, each time in the listed order: the first that holds everything is the answer. */
function fewest(groups: readonly SizeGroup[], sizes: readonly string[]): Result<readonly string[]> {
  const holders = sizes.map((size) => groups.map(({ holds }) => holds(size)));
  const lastHolder = holders.map((row) => row.lastIndexOf(true));
  let ways = 0;
  const search = (from: number, left: number, chosen: readonly number[]): readonly number[] | undefined => {
    const open = holders.flatMap((row, size) => (chosen.some((group) => row[group]) ? [] : [size]));
    if (open.length === 0) return chosen;
    // No group behind the last one that holds an open size can help.
    const end = Math.min(...open.map((size) => lastHolder[size]!));
    if (left === 0) return undefined;
    for (let group = from; group <= end && ways++ < MOST_WAYS; group++) {
      if (!open.some((size) => holders[size]![group])) continue;
      const found = search(group + 1, left - 1, [...chosen, group]);
      if (found) return found;
    }
    return undefined;
  };
  for (let most = 1; most <= groups.length; most++) {
    const found = search(0, most, []);
    if (found) return answer(found.map((group) => groups[group]!.text));
    if (ways >= MOST_WAYS) break;
  }
  return refuse("tooManyGroups", { found: `${groups.length} groups and ${sizes.length} sizes` });
}
