import { clean, convert, formatLength, readLength, type LengthUnit } from "../length";

/** One line of a notions list: so many of a thing, a length of something, or only its name. */
export interface Notion {
  /** What it is, as it was written, without its number: "buttons", "zip". */
  readonly name: string;
  /** How many; null when only the thing is named. A length of tape is no count. */
  readonly count: number | null;
  /** The size of each: "1/2 in". */
  readonly size?: NotionLength;
  /** How much of it, for what is sold by length. */
  readonly length?: NotionLength;
}
export interface NotionLength {
  readonly value: number;
  readonly unit: LengthUnit;
}
/** What could be read, and the lines that could not, as they stand. */
export interface NotionsReading {
  readonly notions: readonly Notion[];
  readonly unread: readonly string[];
}

/** The notions of one project. */
export interface ProjectNotions {
  readonly project: string;
  readonly text: string;
}
/** One line of the shopping: 12 of a thing for these projects. */
export interface NotionTotal {
  readonly name: string;
  readonly count: number | null;
  readonly size?: NotionLength;
  readonly length?: NotionLength;
  readonly projects: readonly string[];
}
export interface NotionTotals {
  readonly totals: readonly NotionTotal[];
  /** Lines nobody can add up, with their project, for her own eyes. */
  readonly unread: readonly { readonly project: string; readonly text: string }[];
}

const NUMBER_WORDS = "one two three four five six seven eight nine ten eleven twelve".split(" ");
const BY_LENGTH =
  /\b(?:elastic|ribbon|tape|binding|piping|cord|lace|braid|trim|trimming|webbing|boning|interfacing|ribbing|fringe|rickrack)$/;

/**
 * Reads a notions cell: lines with commas, semicolons or line ends between them. "seven 1/2 in buttons" and "7 x 1/2 in
 * buttons" are seven of that size, "20 cm zip" is one, "2 m elastic" and "60 cm of 1 cm elastic" are lengths, "thread" is
 * only named. What could mean two things ("7 1/2 in buttons": seven, or of seven and a half inches?) is not read.
 *
 * Common practice, no source: the words for what is sold by length.
 *
 * @example readNotions("seven 1/2 in buttons, thread").notions.map(({ count, name }) => [count, name])
 * //=> [[7, "buttons"], [null, "thread"]]
 */
export function readNotions(text: string): NotionsReading {
  const notions: Notion[] = [];
  const unread: string[] = [];
  for (const line of splitLines(text)) {
    const notion = readNotion(line);
    if (notion) notions.push(notion);
    else unread.push(line);
  }
  return { notions, unread };
}

/** A comma between two digits is a decimal comma. */
function splitLines(text: string): string[] {
  return text
    .split(/[;\n]|,(?!\d)|(?<!\d),/)
    .map((line) => line.replace(/\s+/g, " ").trim())
    .filter(Boolean);
}

function readNotion(line: string): Notion | undefined {
  const [counted, rest] = leadingCount(line);
  const words = rest.split(" ");
  const [length, used] = leadingLength(words);
  const after = words.slice(used);
  if (!length) return !isName(rest) ? undefined : { name: rest, count: counted };
  if (after[0] === "of" && counted === null) return lengthOf(length, after.slice(1));
  const name = after.join(" ");
  if (!isName(name)) return undefined;
  if (BY_LENGTH.test(name.toLowerCase())) {
    const bulk = counted === null && (length.unit === "m" || length.unit === "yd");
    return bulk ? { name, count: null, length } : undefined;
  }
  // "7 1/2 in buttons" is no size that anybody would bet on.
  const ambiguous = counted === null && /^\d+ [\d\p{No}]/u.test(rest);
  return ambiguous ? undefined : { name, count: counted ?? 1, size: length };
}

/** "60 cm of 1 cm elastic". */
function lengthOf(length: NotionLength, words: readonly string[]): Notion | undefined {
  const [size, used] = leadingLength(words);
  const name = words.slice(used).join(" ");
  return isName(name) ? { name, count: null, length, ...(size && { size }) } : undefined;
}

const isName = (text: string): boolean => /\p{L}{2}/u.test(text) && !/\d/.test(text);

/** A number word, a whole number with ×, or a whole number that no unit follows. */
function leadingCount(line: string): readonly [number | null, string] {
  const [first = "", ...others] = line.split(" ");
  const word = NUMBER_WORDS.indexOf(first.toLowerCase());
  if (word >= 0 && others.length > 0) return [word + 1, others.join(" ")];
  const times = /^(\d{1,3}) ?[x×] ?(?=\S)(?!\d+ ?[x×])/.exec(line);
  if (times) return [Number(times[1]), line.slice(times[0].length)];
  const plain = /^\d{1,3}$/.test(first) && others.length > 0 && !/^\d/.test(others[0]!);
  const unit = plain && readLength(`${first} ${others[0]!}`).ok;
  return plain && !unit ? [Number(first), others.join(" ")] : [null, line];
}

/** The longest beginning that reads as a length with its unit, at most four words. */
function leadingLength(words: readonly string[]): readonly [NotionLength | undefined, number] {
  for (let used = Math.min(4, words.length); used > 0; used--) {
    const read = readLength(words.slice(0, used).join(" "));
    if (read.ok && read.value.unit && read.value.value > 0)
      return [{ value: read.value.value, unit: read.value.unit }, used];
  }
  return [undefined, 0];
}

/**
 * The notions of several projects added up: the same thing in the same size is one line, counts and lengths are summed
 * (in the unit of the first), what is only named is listed once with its projects. Lines in the order they first come.
 *
 * @example totalNotions([{ project: "Shirt", text: "7 buttons" }, { project: "Skirt", text: "1 button" }]).totals[0].count
 * //=> 8
 */
export function totalNotions(projects: readonly ProjectNotions[]): NotionTotals {
  const totals = new Map<string, NotionTotal>();
  const unread: { project: string; text: string }[] = [];
  for (const { project, text } of projects) {
    const reading = readNotions(text);
    unread.push(...reading.unread.map((line) => ({ project, text: line })));
    for (const notion of reading.notions) {
      const kind = notion.length ? "length" : notion.count === null ? "named" : "count";
      const size = notion.size ? tenths(notion.size) : "";
      const key = `${singular(notion.name)}|${size}|${kind}`;
      const before = totals.get(key);
      totals.set(key, before ? added(before, notion, project) : { ...notion, projects: [project] });
    }
  }
  return { totals: [...totals.values()], unread };
}

function added(total: NotionTotal, notion: Notion, project: string): NotionTotal {
  const projects = total.projects.includes(project) ? total.projects : [...total.projects, project];
  const count = total.count === null || notion.count === null ? null : total.count + notion.count;
  if (!total.length || !notion.length) return { ...total, count, projects };
  const { value, unit } = total.length;
  const more = convert(notion.length.value, notion.length.unit, unit);
  return { ...total, count, projects, length: { value: clean(value + more), unit } };
}

/** The size in tenths of a millimetre: 1.2 cm and 12 mm are one size. */
const tenths = ({ value, unit }: NotionLength): string => String(Math.round(convert(value, unit, "cm") * 100));

/** "Buttons" and "button" are the same thing. */
function singular(name: string): string {
  const plain = name.toLowerCase();
  if (/(?:ches|shes|sses|xes)$/.test(plain)) return plain.slice(0, -2);
  return /[^s]s$/.test(plain) ? plain.slice(0, -1) : plain;
}

/**
 * A total as a shopping list says it.
 *
 * @example formatNotion({ name: "buttons", count: 12, size: { value: 0.5, unit: "in" }, projects: [] }) //=> "12 × 1/2 in buttons"
 */
export function formatNotion({ name, count, size, length }: NotionTotal): string {
  const sized = size ? `${formatLength(size.value, size.unit)} ${name}` : name;
  if (length) return `${formatLength(length.value, length.unit)} of ${sized}`;
  return count === null ? sized : `${count} × ${sized}`;
}
