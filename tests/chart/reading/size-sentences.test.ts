import { describe, expect, it } from "vitest";
import { textRows } from "../../../src/chart/reading/lines";
import { sizeSentences } from "../../../src/chart/reading/size-sentences";
import { doubts } from "../../../src/words/reading";
import { page, paste, sheet } from "../paste";

const found = (...lines: string[]) => sizeSentences(textRows(page(...lines)), 0);
const texts = (...lines: string[]) => found(...lines)?.body.map((row) => row.map((cell) => cell.text));

// All figures are invented, in steps of four centimetres or one inch as is common practice.
describe("sizeSentences", () => {
  it("takes two sizes or more, each with its places, up to the first other line", () => {
    const spread = found(
      "Size S: bust 84 cm, waist 66.5 cm",
      "Size M: bust 88 cm, waist 70.5 cm",
      "Take your size by the bust.",
    );
    expect(spread?.head.map((cell) => cell.text).slice(1)).toEqual(["bust", "waist"]);
    expect(spread?.body.map((row) => row.map((cell) => cell.text))).toEqual([
      ["S", "84 cm", "66.5 cm"],
      ["M", "88 cm", "70.5 cm"],
    ]);
    expect(spread?.next).toBe(2);
  });
  it("knows where each figure stands, also one that stands there twice", () => {
    expect(found("  8: bust 84, hip 84", "10: bust 88, hip 88")?.body[0]?.map((cell) => cell.column)).toEqual([
      3, 11, 19,
    ]);
    const grid = textRows(sheet("Size S: bust 84 cm|waist 66 cm", "Size M: bust 88 cm|waist 70 cm"));
    expect(sizeSentences(grid, 0)?.body.map((row) => row.map((cell) => [cell.text, cell.line, cell.column]))).toEqual([
      [["S", 1, 1], ["84 cm", 1, 1], ["66 cm", 1, 2]],
      [["M", 2, 1], ["88 cm", 2, 1], ["70 cm", 2, 2]],
    ]); // prettier-ignore
  });
  it.each([
    ["S – bust 84 cm; waist 66 cm", "M – bust 88 cm; waist 70 cm"],
    ["S = bust: 84 cm / waist: 66 cm.", "M = bust: 88 cm / waist: 70 cm."],
    ["S: bust=84 cm and waist=66 cm", "M: bust=88 cm and waist=70 cm"],
    ["S :  bust  84 cm,   waist  66 cm", "M :  bust  88 cm,   waist  70 cm"],
    ["Size S: bust84 cm , waist66 cm .", "Size M: bust88 cm , waist70 cm ."],
  ])("reads %j", (first, second) => {
    expect(found(first, second)?.head.map((cell) => cell.text)).toEqual(["Size", "bust", "waist"]);
    expect(texts(first, second)).toEqual([
      ["S", "84 cm", "66 cm"],
      ["M", "88 cm", "70 cm"],
    ]);
  });
  it("reads inches with fractions", () => {
    expect(texts("8: bust 31 1/2 in, waist 24½ in", "10: bust 32 1/2 in, waist 25½ in")).toEqual([
      ["8", "31 1/2 in", "24½ in"],
      ["10", "32 1/2 in", "25½ in"],
    ]);
  });
  it.each([
    ["one size alone", "S: bust 84 cm", "Bust 88 cm"],
    ["lines without a size", "Robin: bust 84 cm", "Heron: bust 88 cm"],
    ["lines without a mark behind the size", "S bust 84 cm", "M bust 88 cm"],
    ["words without a figure", "S: bust 84 cm, waist", "M: bust 88 cm, waist"],
    ["figures without a place", "S: bust 84 cm, 66 cm", "M: bust 88 cm, 70 cm"],
    ["places that aren't known", "S: bust 84 cm, buttons 6", "M: bust 88 cm, buttons 6"],
    ["figures that are none", "S: bust 84 cm, waist 66 or so", "M: bust 88 cm, waist 70 or so"],
    ["nothing behind the size", "S: ", "M: "],
  ])("leaves %s to others", (_, first, second) => {
    expect(found(first, second)).toBeNull();
  });
  it("reads a sentence, not a page", () => {
    const line = (size: string, length: number): string => `${size}: bust${"84 cm".padStart(length - 7)}`;
    expect(texts(line("S", 300), line("M", 300))).toEqual([
      ["S", "84 cm"],
      ["M", "84 cm"],
    ]);
    expect(found(line("S", 301), line("M", 301))).toBeNull();
  });
});

describe("readCharts on a size in each sentence", () => {
  it("names each size with other places or another number of them, and leaves it out", () => {
    const { tables, issues } = paste(
      page(
        "Body measurements",
        "Size S: bust 84 cm, waist 66 cm",
        "Size M: bust 88 cm, waist 70 cm",
        "Size L: bust 92 cm, hip 98 cm",
        "Size XL: bust 96 cm",
        "Size 2XL: bust 100 cm, waist 82 cm, hip 106 cm",
        "Size 3XL: Bust 104 cm, Waist 86 cm",
      ),
    );
    expect(tables).toEqual([["body cm | S M 3XL", "bust: bust | 84 88 104", "waist: waist | 66 70 86"]]);
    expect(issues).toEqual([
      `4 error (L) ${doubts.shortSize("L", 0, 2)}`,
      `5 error (XL) ${doubts.shortSize("XL", 1, 2)}`,
      `6 error (2XL) ${doubts.shortSize("2XL", 3, 2)}`,
    ]);
  });
});
