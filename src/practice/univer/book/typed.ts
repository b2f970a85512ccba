/**
 * What Excel makes of something typed into a cell, or handed to `range.values` (American settings, the ones the
 * practice workbook has): numbers, fractions, dates, truth values, formulas, and text for everything else.
 * Excel's reading of 6-12 and 7/8 as dates is here because sewing charts are full of both.
 */
export type CellValue = string | number | boolean;

export type Typed =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "value"; readonly value: CellValue; readonly format?: string }
  | { readonly kind: "formula"; readonly formula: string };

const PLAIN_NUMBER = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/i;
const GROUPED_NUMBER = /^[+-]?\d{1,3}(?:,\d{3})+(?:\.\d*)?$/;
const FRACTION = /^([+-]?)(\d+) (\d{1,3})\/(\d{1,3})$/;
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const DAY = 86_400_000;
/** Day 0 of Excel's calendar, as it counts after February 1900. */
const EPOCH = Date.UTC(1899, 11, 30);

/** `year` is the one that a date without a year falls into. */
export function readTyped(input: string, year = new Date().getFullYear()): Typed {
  if (input.startsWith("'")) return { kind: "text", text: input.slice(1) };
  if (input.startsWith("=") && input.length > 1) return { kind: "formula", formula: input };
  const text = input.trim();
  const known = readNumber(text) ?? readDate(text, year);
  if (known) return { kind: "value", ...known };
  if (/^(?:true|false)$/i.test(text)) return { kind: "value", value: /^true$/i.test(text) };
  // A leading sign starts a formula too, and so does the @ of older spreadsheets before a function.
  if (/^[+-][^\s+-]/.test(text)) return { kind: "formula", formula: `=${text}` };
  if (/^@[A-Z][\w.]*\(/i.test(text)) return { kind: "formula", formula: `=${text.slice(1)}` };
  return { kind: "text", text: input };
}

interface Read {
  readonly value: number;
  readonly format?: string;
}

function readNumber(text: string): Read | undefined {
  if (PLAIN_NUMBER.test(text)) return { value: Number(text) };
  if (GROUPED_NUMBER.test(text)) return { value: Number(text.replaceAll(",", "")), format: "#,##0" };
  const fraction = FRACTION.exec(text);
  if (fraction) {
    const [, sign, whole, above, below = "1"] = fraction;
    if (Number(below) === 0) return undefined;
    const size = Number(whole) + Number(above) / Number(below);
    return { value: sign === "-" ? -size : size, format: below.length > 1 ? "# ??/??" : "# ?/?" };
  }
  if (text.endsWith("%")) {
    const share = readNumber(text.slice(0, -1).trim());
    return share && { value: share.value / 100, format: text.includes(".") ? "0.00%" : "0%" };
  }
  if (text.startsWith("$")) {
    const money = readNumber(text.slice(1).trim());
    return money && { value: money.value, format: "$#,##0.00" };
  }
  return undefined;
}

function readDate(text: string, year: number): Read | undefined {
  const numbers = /^(\d{1,2})[-/](\d{1,4})(?:[-/](\d{2}|\d{4}))?$/.exec(text);
  if (numbers) {
    const [, month, second, third] = numbers;
    if (third !== undefined) return date(fullYear(third), Number(month), Number(second), "m/d/yyyy");
    // 6-12 is the twelfth of June; 6-45 cannot be a day, so it is June 1945.
    return (
      date(year, Number(month), Number(second), "d-mmm") ??
      (Number(second) > 31 ? date(fullYear(second ?? ""), Number(month), 1, "mmm-yy") : undefined)
    );
  }
  const words = /^(?:(\d{1,2})[- ]([a-z]{3,9})|([a-z]{3,9})[- ](\d{1,2}))$/i.exec(text);
  if (!words) return undefined;
  const [, dayFirst, monthLast, monthFirst, dayLast] = words;
  const name = (monthLast ?? monthFirst ?? "").toLowerCase();
  const month = MONTHS.findIndex((short) => name.startsWith(short)) + 1;
  return month > 0 ? date(year, month, Number(dayFirst ?? dayLast), "d-mmm") : undefined;
}

function date(year: number, month: number, day: number, format: string): Read | undefined {
  const time = Date.UTC(year, month - 1, day);
  const found = new Date(time);
  if (month < 1 || month > 12 || day < 1 || found.getUTCMonth() !== month - 1 || year < 1900) return undefined;
  return { value: (time - EPOCH) / DAY, format };
}

/** Two digits below 30 are this century. */
function fullYear(digits: string): number {
  const number = Number(digits);
  if (digits.length > 2) return number;
  return number < 30 ? 2000 + number : 1900 + number;
}
