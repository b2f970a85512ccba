/** What the label of a fabric row says: views, part, widths, nap. */
import type { Nap } from "../model";
import { ALL_WORDS, FABRIC_NOISE, NAP_WORDS, NOTION_WORDS, PARTS, VIEW_WORDS } from "../vocabulary/fabric";
import { plainWords, trimMarks, wordSet } from "../vocabulary/words";
import { unitAlone } from "./headings";
import { readWidths, type PrintedWidths } from "./widths";

export interface FabricLabel {
  /** null: the label names none. */
  readonly views: readonly string[] | "all" | null;
  readonly part: string | null;
  /** Whether `part` is in the vocabulary; else it is the label's own words. */
  readonly partKnown: boolean;
  readonly widths: PrintedWidths | null;
  readonly nap: Nap | null;
  /** Stars that a footnote explains. */
  readonly stars: string;
}

interface Words {
  readonly parts: ReadonlyMap<string, string>;
  readonly noise: ReadonlySet<string>;
  readonly view: ReadonlySet<string>;
  readonly all: ReadonlySet<string>;
  readonly notions: ReadonlySet<string>;
}
let loaded: Words | undefined;

function words(): Words {
  loaded ??= {
    parts: new Map(
      PARTS.trim()
        .split("\n")
        .flatMap((line) => {
          const [id = "", list = ""] = line.split(": ");
          return list.split(",").map((label) => [plainWords(label), id] as const);
        }),
    ),
    noise: wordSet(FABRIC_NOISE),
    view: wordSet(VIEW_WORDS),
    all: wordSet(ALL_WORDS),
    notions: wordSet(NOTION_WORDS),
  };
  return loaded;
}

const LETTER = /^[A-L]$/;
const JOIN = /^(?:[,/&+]|and|und|et|[yeio]|en|or|oder|ou|of|lub)$/;

/**
 * View letters in a label, and the label without them: "A, B", "View A", "Dress A & B", "A-C", "All views", "View 1".
 * A single capital counts wherever it stands alone; a number only behind a word for a view.
 *
 * @example readViews("Dress A, B 45\"") //=> { views: ["A", "B"], rest: "Dress 45\"" }
 */
export function readViews(label: string): { readonly views: readonly string[] | "all" | null; readonly rest: string } {
  const tokens = label.slice(0, 200).match(/\p{L}[\p{L}'’]*|\d+(?:[.,/]\d+)*|\S/gu) ?? [];
  const known = words();
  const views: string[] = [];
  const rest: string[] = [];
  let all = false;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    const plain = plainWords(token);
    const next = tokens[at + 1] ?? "";
    if (known.view.has(plain)) {
      const number = isViewNumber(next, tokens[at + 2] ?? "") ? next : null;
      const lower = /^[a-l]$/.test(next) ? next.toUpperCase() : null;
      const named = number ?? lower;
      if (named) {
        views.push(named);
        at++;
        for (; JOIN.test(tokens[at + 1] ?? ""); at += 2) {
          const more = tokens[at + 2] ?? "";
          if (!/^[a-l]$/i.test(more) && !isViewNumber(more, tokens[at + 3] ?? "")) break;
          views.push(more.toUpperCase());
        }
      }
      continue;
    }
    const behind = wordBehind(tokens, at, known.all);
    // "the view B" is one.
    const isOne = /^[A-L1-9]$/.test(tokens[behind + 1] ?? "");
    const isAll = !isOne && known.all.has(plain) && known.view.has(plainWords(tokens[behind] ?? ""));
    if (isAll) all = true;
    else if (LETTER.test(token) && !/^['’]/.test(next) && !isCode(next, tokens[at + 2] ?? "")) {
      const last = tokens[at + 2] ?? "";
      if (/^[-–]$/.test(next) && LETTER.test(last) && last > token) {
        for (let code = token.charCodeAt(0); code <= last.charCodeAt(0); code++) views.push(String.fromCharCode(code));
        at += 2;
      } else views.push(token);
    } else if (!(JOIN.test(token) && views.length > 0 && LETTER.test(next))) rest.push(token);
  }
  return { views: all ? "all" : views.length ? [...new Set(views)] : null, rest: rest.join(" ") };
}

/** "View 1" is a view; `View 45"` and "View 60" are widths behind a view's word: no pattern has so many views. */
const isViewNumber = (text: string, behind: string): boolean =>
  /^(?:\d|[12]\d|3[0-4])$/.test(text) && !/^(?:["″”'m]|ins?|inch|inches|cms?)$/i.test(behind);

/** "G 785" is an interfacing's name, "A 115 cm" a view. */
const isCode = (next: string, unit: string): boolean =>
  /^(?!1[0-6])\d{3}$/.test(next) && !/^(?:cm|to|["″”/x-])$/i.test(unit);

/** Where the first word behind stands that isn't one of "all the". */
function wordBehind(tokens: readonly string[], at: number, skip: ReadonlySet<string>): number {
  let next = at + 1;
  while (next < tokens.length && skip.has(plainWords(tokens[next]!))) next++;
  return next;
}

/** The nap that words name; null when they don't speak of it. */
export function readNap(text: string): { readonly nap: Nap | null; readonly rest: string } {
  const plain = ` ${plainWords(text)} `;
  for (const nap of ["either", "without", "with"] as const)
    for (const phrase of NAP_WORDS[nap])
      if (plain.includes(` ${phrase} `)) return { nap, rest: plain.replace(` ${phrase} `, " ").trim() };
  return { nap: null, rest: plain.trim() };
}

/**
 * The label of a fabric row. Words that name neither a view, a width, the nap nor a known part are the part's own name
 * ("yoke"): better a part nobody asked for than another part's figures under "main".
 *
 * @example readFabricLabel('A, B Lining 45" without nap').part //=> "lining"
 */
export function readFabricLabel(label: string): FabricLabel {
  const stars = (/[*†‡]+(?:\/[*†‡]+)?/.exec(label)?.[0] ?? "").slice(0, 8);
  const plain = label.replace(/[*†‡]+(?:\/[*†‡]+)?/g, " ");
  // "with or without nap" holds "or", which joins view letters: the nap is taken out by its words later.
  const { views, rest } = readViews(plain);
  const widths = readWidths(rest);
  const { nap, rest: named } = readNap(widths?.rest ?? rest);
  const { part, isKnown } = readPart(named);
  return { views, part, partKnown: isKnown, widths, nap, stars };
}

/** The views that the words behind a row's figures name, when they name nothing else but a unit: "yd View A". */
export function viewsBehind(trailing: string): readonly string[] | "all" | null {
  const { views, rest } = readViews(trailing);
  const words = trimMarks(rest, ':,.-()"″”');
  return words === "" || unitAlone(words) !== null ? views : null;
}

/** What a fabric label leaves open and a few words behind the figures say: "2 2 1/4 yd without nap". */
export function withBehind(said: FabricLabel, trailing: string): FabricLabel {
  if (trailing.split(/\s+/).length > 4) return said;
  const behind = readFabricLabel(trailing);
  const isPart = said.part === null && behind.part !== null && behind.partKnown && behind.part !== "main";
  return {
    ...said,
    ...(isPart ? { part: behind.part, partKnown: true } : {}),
    views: said.views ?? viewsBehind(trailing),
    nap: said.nap ?? behind.nap,
  };
}

function readPart(text: string): { readonly part: string | null; readonly isKnown: boolean } {
  const known = words();
  const list = text.split(" ").filter(Boolean);
  for (let length = Math.min(3, list.length); length > 0; length--) {
    for (let at = 0; at + length <= list.length; at++) {
      const found = known.parts.get(list.slice(at, at + length).join(" "));
      if (found === undefined || (found === "main" && length === 1 && list.length > 1)) continue;
      const number =
        /^[1-9]$/.test(list[at + length] ?? "") && !/^\d/.test(list[at + length + 1] ?? "")
          ? ` ${list[at + length]}`
          : "";
      return { part: found + number, isKnown: true };
    }
  }
  const own = list.filter((word) => !known.noise.has(word) && !known.parts.has(word) && !/^\d|^\p{L}$/u.test(word));
  const isMain = list.some((word) => known.parts.get(word) === "main");
  if (own.length === 0) return { part: isMain ? "main" : null, isKnown: true };
  return { part: own.slice(0, 5).join(" "), isKnown: false };
}

/** Whether a line speaks of buttons, thread and the like. */
export function isNotion(label: string): boolean {
  const known = words();
  return plainWords(label)
    .split(" ")
    .slice(0, 6)
    .some((word) => known.notions.has(word));
}

/** A footnote that explains stars: "* with nap", "**without nap". */
export function starNotes(lines: readonly string[]): ReadonlyMap<string, Nap> {
  const notes = new Map<string, Nap>();
  for (const line of lines) {
    if (line.length > 600 || !/[*†‡]/.test(line)) continue;
    for (const match of line.matchAll(/([*†‡]{1,4}(?:\/[*†‡]{1,4})?)([^*†‡]{3,80})/g)) {
      const { nap } = readNap(match[2]!);
      if (nap && !/\d["″”]|\d cm/.test(match[2]!) && !notes.has(match[1]!)) notes.set(match[1]!, nap);
    }
  }
  return notes;
}
