import { describe, expect, test } from "vitest";
import { readCharts } from "../../../src/chart/read-charts";
import { textRows } from "../../../src/chart/reading/lines";
import { looseCount, looseRow } from "../../../src/chart/reading/loose";

const values = (row: string) => readCharts(`Body measurements (in)\nSize 8 10\n${row}`).tables[0]?.rows[0]?.values;

// By hand: a whole number and the fraction behind it are one figure, however the fraction is printed.
describe("a row whose columns only a space parts", () => {
  test.each(["Waist 24 1/3 25 2/3", "Waist 24 ⅓ 25 ⅔"])("joins a number and its fraction: %s", (row) => {
    expect(values(row)).toEqual([expect.closeTo(24 + 1 / 3, 9), expect.closeTo(25 + 2 / 3, 9)]);
  });
  test("never takes a fraction for the next size's figure", () => {
    const { tables } = readCharts("Body measurements (in)\nSize 8 10 12 14\nWaist 1 ⅓ 1 ⅔\nHip 34 35 36 38");
    expect(tables.map(({ rows }) => rows.map(({ label }) => label))).toEqual([["Hip"]]);
  });
});

const rowOf = (line: string) => textRows(line)[0]!;
const isWidth = (text: string, next: string) => /^(?:45|115|150)["”]?:?$/.test(text) && next.trim() !== "";
const rowText = (line: string, count: number): string | null => {
  const found = looseRow(rowOf(line), count, isWidth);
  if (!found) return null;
  const { label, values, trailing, isUnsure } = found;
  return [label, values.map(({ text }) => text).join("; "), trailing].join("|") + (isUnsure ? "?" : "");
};
const countText = (line: string): string => {
  const { label, count, trailing } = looseCount(rowOf(line), isWidth);
  return [label, count, trailing].join("|");
};
const remark = "measured at the full part with the arms hanging down";

// Each line as it would be printed, and what stands in it: label, figures, words behind.
describe("looseRow", () => {
  test.each([
    // Words between two figures and words elsewhere.
    ["Bust 84, 88 and 92", 3, "Bust|84; 88; 92|"],
    ["Waist ½ and ¾", 2, "Waist|½; ¾|"],
    ["and 84 88", 2, "and|84; 88|"],
    ["Hip and 84 88", 2, "Hip and|84; 88|"],
    ["Bust 84 and", 1, "Bust|84|and"],
    // Dashes: for nothing printed, before the first figure, in a range, and as a sign.
    ["Bust -- 32", 2, "Bust|--; 32|"],
    ["Bust - 34 36", 2, "Bust|34; 36|"],
    ["Bust - 34 36", 3, "Bust|-; 34; 36|"],
    ["Bust 30 -", 2, "Bust|30; -|"],
    ["Bust 30 - 31 32 - 33", 2, "Bust|30 - 31; 32 - 33|"],
    ["Bust 30 - 31", 3, "Bust|30; -; 31|"],
    // Fractions: each with the whole number before it, at both ends of a range, of sixteenths, with inch marks and commas.
    ['Waist 24 1/2" 25 3/4"', 2, 'Waist|24 1/2"; 25 3/4"|'],
    ["Waist 24 1/2, 25 3/4,", 2, "Waist|24 1/2; 25 3/4|"],
    ["Waist 24 11/16 25 3/16", 2, "Waist|24 11/16; 25 3/16|"],
    ["Waist 24-24 1/2 25-25 1/2", 2, "Waist|24-24 1/2; 25-25 1/2|"],
    ['Cuff 8-8 1/2" 9-9 3/16"', 2, 'Cuff|8-8 1/2"; 9-9 3/16"|'],
    ["Cuff 8-8 1/2, 9-9 11/16,", 2, "Cuff|8-8 1/2; 9-9 11/16|"],
    ["Waist 24 - 24 1/2 25 - 25 1/2", 2, "Waist|24 - 24 1/2; 25 - 25 1/2|"],
    ["Waist 24-25 25½", 2, "Waist|24-25; 25½|"],
    // Units behind a figure, behind the label, and before the words behind.
    ["Bust 30 cm - 32 cm 33 cm", 2, "Bust|30 cm - 32 cm; 33 cm|"],
    ["Hip in 33 34", 2, "Hip in|33; 34|"],
    ["Hip (in) 33 34", 2, "Hip (in)|33; 34|"],
    ["Hip 33 (84) 34 (86)", 2, "Hip|33 (84); 34 (86)|"],
    ["Hip 33 34 (87 cm) on the hip line", 2, "Hip|33; 34 (87 cm)|on the hip line"],
    ["Hip 33 34 on the line (3) below the waist", 2, "Hip|33; 34|on the line (3) below the waist"],
    ["34 36 38 measured in full", 3, "|34; 36; 38|measured in full"],
    // What a spreadsheet could take for a formula is a figure that can't be read; a word that holds a sign is a word.
    ["Bust =B2 @C2", 2, "Bust|=B2; @C2|"],
    ["size=B2 31 32", 2, "size=B2|31; 32|"],
    // Inch marks and ditto marks at the end.
    ['Bust 34 36 "', 2, 'Bust|34; 36|"'],
    ["Bust 34 36 ” A", 2, "Bust|34; 36|” A"],
    ['Bust 34 36 "', 3, 'Bust|34; 36; "|?'],
    // Widths in front are the label's, but a mixed number is a figure.
    ['45" 2 3', 2, '45"|2; 3|'],
    ['Main 45" 2 3', 2, 'Main 45"|2; 3|'],
    ['Lining A - 45": 1 1/2 2', 2, 'Lining A - 45":|1 1/2; 2|'],
    ['- 45": 1 2', 2, '- 45":|1; 2|'],
    ["Hip 45 1/2 46 47", 3, "Hip|45 1/2; 46; 47|"],
    ['Main 2 45" 3', 3, 'Main|2; 45"; 3|'],
    ['Lining - 45"', 2, 'Lining|-; 45"|'],
    // A note behind three figures, and a sentence that holds two.
    [`Bust 31 32 33 ${remark}`, 3, `Bust|31; 32; 33|${remark}`],
    [`Bust 31½ 32" 33.5 ${remark}`, 3, `Bust|31½; 32"; 33.5|${remark}`],
    [`Hem ½ ¾ ⅞ ${remark}`, 3, `Hem|½; ¾; ⅞|${remark}`],
    [`Bust 31 1/2 32 1/2 ${remark}`, 2, null],
    [`Bust 31 - 32 ${remark}`, 1, null],
    [`Bust 31 (79) 32 cm ${remark}`, 2, null],
  ])("takes %j for %i figures", (line, count, expected) => {
    expect(rowText(line, count)).toBe(expected);
  });
});

describe("looseCount", () => {
  test.each([
    ["Bust 30 - 31 32 - 33", "Bust|2|"],
    ["Hem ½ - ¾ 1 - 1½", "Hem|2|"],
    ['Bust 30" - 31" 32 - 33 34', "Bust|3|"],
    ['Bust " - 32', "Bust|3|"],
    ["Bust 31 -32 33", "Bust|3|"],
    ["Bust - 34 36", "Bust|2|"],
    ["Bust 31 11/16 32 3/16", "Bust|2|"],
    ['45" 2 3', '45"|2|'],
    ['Main 45" 2 3', 'Main 45"|2|'],
    ["Hip in full", "Hip in|0|full"],
  ])("counts %j", (line, expected) => {
    expect(countText(line)).toBe(expected);
  });
});
