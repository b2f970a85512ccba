/** One printed figure: a number, a range, a value in two units, or why it is none. */
import { convert, readLength, plainText, type LengthUnit } from "../../length";
import type { Figure, Span } from "../model";
import { remembered } from "../vocabulary/words";

export interface PrintedFigure {
  readonly kind: "figure";
  readonly value: number | Span;
  readonly unit: LengthUnit | null;
  /** The same value in a second unit, as in "34 (87)". */
  readonly other: { readonly value: number | Span; readonly unit: LengthUnit | null } | null;
}
/** "blank": nothing is printed (a dash, n/a); "same": ditto marks; "formula": text that a sheet could run. */
export type CellReading =
  | PrintedFigure
  | { readonly kind: "blank" }
  | { readonly kind: "same" }
  | { readonly kind: "formula" }
  | { readonly kind: "text" };

const SAME = /^(?:["″”“„〃]|''|’’|,,|do\.?|dto\.?|ditto|dito|idem|id\.)$/i;
const BLANK =
  /^(?:[-\u2010-\u2015\u2212]{1,4}|[-\u2010-\u2015\u2212] [-\u2010-\u2015\u2212]|n\.? ?\/? ?a\.?|nil|none|\.{1,3}|[…/x]|keine?|k\. ?a\.)$/i;
/** Longer than any figure: two mixed numbers in two units. Keeps hostile text cheap. */
const LONGEST = 60;

/** The parts of an inch or yard that patterns print. */
const TAPE = new Set(["2", "3", "4", "5", "6", "8", "10", "12", "16", "32", "64"]);

type Simple = { readonly value: number | Span; readonly unit: LengthUnit | null };

/**
 * Reads one cell. Understands what `readLength` does, and ranges ("30-31", "30½ to 31"), two units in one cell
 * ("34 (87)", "34 in / 87 cm"), stars behind the number, "1m90". A signed plain number is a number; anything else that
 * starts with = + - @ is "formula".
 *
 * @example readFigure("30½–31") //=> { kind: "figure", value: { low: 30.5, high: 31 }, unit: null, other: null }
 */
export const readFigure: (text: string) => CellReading = remembered((text) => {
  const trimmed = text.trim();
  if (trimmed === "" || BLANK.test(trimmed)) return { kind: "blank" };
  if (SAME.test(trimmed)) return { kind: "same" };
  if (trimmed.length > LONGEST) return { kind: /^[=+\-@]/.test(trimmed) ? "formula" : "text" };
  if (/^\d{1,4}(?:\.\d{1,4})?$/.test(trimmed)) return figure({ value: Number(trimmed), unit: null });
  const plain = plainText(trimmed.replace(/\n/g, " / ")).replace(/[*†‡]/g, "").trim();
  if (/^[=@]/.test(plain)) return { kind: "formula" };
  const simple = readSimple(plain);
  if (simple) return figure(simple);
  return readPair(plain) ?? { kind: /^[+-]/.test(plain) ? "formula" : "text" };
});

function figure(simple: Simple, other: Simple | null = null): PrintedFigure {
  return { kind: "figure", ...simple, other };
}

/** One number or one range. */
function readSimple(text: string): Simple | undefined {
  const about = text.replace(/^(?:approx\.?|about|ca\.?|circa|env\.?|[~≈]) ?/i, "");
  const one = readOne(about);
  if (one) return one;
  const ends = rangeEnds(about);
  if (!ends) return undefined;
  const [low, high] = ends;
  const unit = high.unit ?? low.unit;
  if (low.unit !== null && low.unit !== unit) return undefined;
  if (low.value > high.value || low.value < 0) return undefined;
  return { value: low.value === high.value ? low.value : { low: low.value, high: high.value }, unit };
}

function readOne(text: string): { value: number; unit: LengthUnit | null } | undefined {
  const metres = /^(\d) ?m ?(\d\d)$/i.exec(text);
  if (metres) return { value: Number(`${metres[1]}.${metres[2]}`), unit: "m" };
  // "34/87" is 34 in and 87 cm: a tape has no 87ths.
  const bottom = /\/ ?(\d+)/.exec(text)?.[1];
  if (bottom !== undefined && !TAPE.has(bottom)) return undefined;
  const length = readLength(text);
  return length.ok ? length.value : undefined;
}

type One = { value: number; unit: LengthUnit | null };

function rangeEnds(text: string): readonly [One, One] | undefined {
  for (const match of text.matchAll(/ ?(?:-|\bto\b|\bbis\b|\bà\b|\btot\b|\bdo\b) ?/gi)) {
    const low = readOne(text.slice(0, match.index));
    const high = low && readOne(text.slice(match.index + match[0].length));
    if (low && high) return [low, high];
  }
  return undefined;
}

/** "34 (87)", "34 in / 87 cm", "34/87". "76/80" is a range: nearer than any two units of one value. */
function readPair(text: string): PrintedFigure | undefined {
  const bracket = /^([^()[\]]+?) ?[([]([^()[\]]+)[)\]]$/.exec(text);
  const halves = bracket ? [bracket[1]!, bracket[2]!] : slashed(text);
  if (!halves) return undefined;
  const first = readSimple(halves[0]!.trim());
  const second = readSimple(halves[1]!.trim());
  if (!first || !second) return undefined;
  if (first.unit !== null && first.unit === second.unit) return undefined;
  const [a, b] = [middle(first.value), middle(second.value)];
  if (a <= 0 || b <= 0) return undefined;
  const isRange = first.unit === null && second.unit === null && !bracket && b > a && b < a * 1.5;
  if (isRange) return figure({ value: { low: a, high: b }, unit: null });
  const sameKind = (first.unit === "in" || first.unit === "cm") === (second.unit === "in" || second.unit === "cm");
  if (first.unit !== null && second.unit !== null && !sameKind) return undefined;
  return figure(first, second);
}

function slashed(text: string): [string, string] | undefined {
  for (const match of text.matchAll(/ ?[/|;] ?/g)) {
    const halves: [string, string] = [text.slice(0, match.index), text.slice(match.index + match[0].length)];
    if (readSimple(halves[0].trim()) && readSimple(halves[1].trim())) return halves;
  }
  return undefined;
}

/** The middle of a range, or the number itself. */
export const middle = (value: number | Span): number =>
  typeof value === "number" ? value : (value.low + value.high) / 2;

/** A figure, number or range, in another unit. */
export function convertFigure(value: number | Span, from: LengthUnit, to: LengthUnit): number | Span {
  if (typeof value === "number") return convert(value, from, to);
  return { low: convert(value.low, from, to), high: convert(value.high, from, to) };
}

export const lowOf = (figure: Figure): number | null =>
  figure === null ? null : typeof figure === "number" ? figure : figure.low;
export const highOf = (figure: Figure): number | null =>
  figure === null ? null : typeof figure === "number" ? figure : figure.high;
