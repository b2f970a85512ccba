import { describe, expect, test } from "vitest";
import { TOLERANCE } from "../../src/length/round-up";
import {
  cellText,
  isBlank,
  isMissing,
  readFlagCell,
  readLengthCell,
  readMeasureCell,
  readNumberCell,
  readShareCell,
  readSignedLengthCell,
  readUnitCell,
  readWordCell,
} from "../../src/chart/cell";
import {
  columnOfSize,
  labelKey,
  readSizeCell,
  sameLabel,
  sizeCell,
  sizeIndex,
  sizesText,
} from "../../src/chart/size-label";

const code = (result: { ok: boolean; problem?: { code: string } }) => (result.ok ? "read" : result.problem?.code);
const error = { error: "#DIV/0!" };

describe("isBlank and isMissing", () => {
  test("differ only in the nought", () => {
    for (const cell of [null, "", " \u00a0", "\u200b"]) expect([isBlank(cell), isMissing(cell)]).toEqual([true, true]);
    expect([isBlank(0), isMissing(0)]).toEqual([false, true]);
    for (const cell of ["0", 1, false, error, "–"]) expect([isBlank(cell), isMissing(cell)]).toEqual([false, false]);
  });
});

describe("readLengthCell", () => {
  test("reads numbers and text, with or without a unit", () => {
    expect(readLengthCell(30.5, "a length")).toEqual({ ok: true, value: { value: 30.5, unit: null } });
    expect(readLengthCell("77,5 cm", "a length")).toEqual({ ok: true, value: { value: 77.5, unit: "cm" } });
    expect(readLengthCell(0, "a length")).toEqual({ ok: true, value: { value: 0, unit: null } });
  });
  test("refuses what is no length", () => {
    expect(code(readLengthCell(null, "a length"))).toBe("blank");
    expect(code(readLengthCell(-1, "a length"))).toBe("negative");
    expect(code(readLengthCell("-1 cm", "a length"))).toBe("negative");
    expect(code(readLengthCell(true, "a length"))).toBe("notANumber");
    expect(code(readLengthCell("x", "a length"))).toBe("unreadableLength");
    expect(code(readLengthCell(error, "a length"))).toBe("errorCell");
    expect(code(readLengthCell(20000, "a length"))).toBe("read");
    expect(code(readLengthCell(20001, "a length"))).toBe("excelDate");
    expect(code(readLengthCell("45000", "a length"))).toBe("excelDate");
  });
});

describe("readSignedLengthCell", () => {
  test("keeps a sign", () => {
    expect(readSignedLengthCell("-1 1/2", "a number")).toMatchObject({ value: { value: -1.5 } });
    expect(code(readSignedLengthCell(-1e300, "a number"))).toBe("notANumber");
  });
});

describe("readMeasureCell", () => {
  test("takes a nought for a blank cell, and refuses one that is written", () => {
    expect(code(readMeasureCell(0, "a measurement"))).toBe("blank");
    expect(code(readMeasureCell("0 cm", "a measurement"))).toBe("notAboveZero");
    expect(code(readMeasureCell(5e-324, "a measurement"))).toBe("notAboveZero");
    expect(code(readMeasureCell(34, "a measurement"))).toBe("read");
  });
});

describe("readNumberCell", () => {
  test("wants a number without a unit", () => {
    expect(readNumberCell("0,125", "a number")).toEqual({ ok: true, value: 0.125 });
    expect(readNumberCell("1/8", "a number")).toEqual({ ok: true, value: 0.125 });
    expect(code(readNumberCell("8 in", "a number"))).toBe("notANumber");
    expect(code(readNumberCell("eight", "a number"))).toBe("notANumber");
  });
});

describe("readShareCell", () => {
  test("reads a percentage with its sign, and a plain number as it is", () => {
    expect(readShareCell(" 12,5 %", "a share")).toEqual({ ok: true, value: 0.125 });
    expect(readShareCell(0.05, "a share")).toEqual({ ok: true, value: 0.05 });
    expect(readShareCell("5", "a share")).toEqual({ ok: true, value: 5 });
  });
  test("refuses a sign alone, two of them, a unit and a blank", () => {
    expect(["%", "5%%", "5 in%", "5 in"].map((text) => code(readShareCell(text, "a share")))).toEqual(
      Array(4).fill("notANumber"),
    );
    expect(code(readShareCell("", "a share"))).toBe("blank");
  });
});

describe("readWordCell", () => {
  test("takes spaces off and numbers as they are written", () => {
    expect(readWordCell("  High   bust ", "a place")).toEqual({ ok: true, value: "High bust" });
    expect(readWordCell(4821, "a name")).toEqual({ ok: true, value: "4821" });
    expect(code(readWordCell(0, "a name"))).toBe("blank");
  });
});

describe("readFlagCell", () => {
  test("reads TRUE and FALSE however they are written", () => {
    for (const cell of [true, "TRUE", "yes", 1, "1"])
      expect(readFlagCell(cell, false)).toEqual({ ok: true, value: true });
    for (const cell of [false, "No", 0]) expect(readFlagCell(cell, true)).toEqual({ ok: true, value: false });
    expect(readFlagCell("", true)).toEqual({ ok: true, value: true });
    expect(code(readFlagCell("maybe", true))).toBe("notTrueOrFalse");
  });
});

describe("readUnitCell", () => {
  test("reads a unit; a blank is none", () => {
    expect(readUnitCell("Inches")).toMatchObject({ value: { unit: "in" } });
    expect(readUnitCell(0)).toEqual({ ok: true, value: undefined });
    expect(code(readUnitCell("ell"))).toBe("unknownUnit");
    expect(code(readUnitCell(3))).toBe("unknownUnit");
  });
});

describe("cellText", () => {
  test("is short and shows errors as they are", () => {
    expect(cellText("x".repeat(100))).toHaveLength(60);
    expect(cellText(error)).toBe("#DIV/0!");
    expect(cellText(null)).toBe("");
  });
});

describe("sameLabel", () => {
  test("overlooks case and spaces, and nothing else", () => {
    expect(sameLabel("18 w", "18W")).toBe(true);
    expect(sameLabel("0", "00")).toBe(false);
    expect(labelKey("X S")).toBe("xs");
  });
});

describe("readSizeCell", () => {
  test("is the same for 14 and its text", () => {
    expect(readSizeCell(14, [])).toEqual(readSizeCell("14 ", []));
  });
  test("takes 0 for a size only where the chart has one", () => {
    expect(readSizeCell(0, ["00", "0"])).toEqual({ ok: true, value: "0" });
    expect(code(readSizeCell(0, ["2"]))).toBe("blank");
    expect(code(readSizeCell(46174, ["2"]))).toBe("excelDate");
  });
});

describe("sizeCell", () => {
  test("is a number only where that loses nothing", () => {
    expect(["14", "00", "02", "18W", "0", "1e3", "3.5", "", "Infinity"].map(sizeCell)).toEqual([
      14, "00", "02", "18W", 0, "1e3", 3.5, "", "Infinity",
    ]); // prettier-ignore
  });
});

describe("sizeIndex", () => {
  test("finds a size as it is written before one that only reads the same", () => {
    expect(sizeIndex(["M", "m "], "m ")).toBe(1);
    expect(sizeIndex(["XS", "S"], " s")).toBe(1);
    expect(sizeIndex(["XS"], "S")).toBe(-1);
  });
});

describe("sizesText", () => {
  test("names a few, or the first and the last", () => {
    expect(sizesText(["S", "M"])).toBe("S, M");
    expect(sizesText(["8", "10", "12", "14"])).toBe("8 to 14");
  });
});

const refusal = (code: string, details: object) => ({ ok: false, problem: { code, details } });
const read = (value: unknown) => ({ ok: true, value });

// What each refusal names: the cell as it is shown, and what was wanted in the caller's own words.
describe("a refused cell", () => {
  const wanted = "a length";
  test.each([
    ["a blank", readSignedLengthCell("", wanted), "blank", { wanted }],
    ["TRUE", readSignedLengthCell(true, wanted), "notANumber", { text: "true", wanted }],
    ["a number far below zero", readSignedLengthCell(-20_001, wanted), "notANumber", { text: "-20001", wanted }],
    ["a date", readSignedLengthCell(46_174, wanted), "excelDate", { text: "46174" }],
    ["a length below zero", readLengthCell("-1 cm", wanted), "negative", { text: "-1 cm", what: "A length" }],
    ["a written nought", readMeasureCell("0 cm", wanted), "notAboveZero", { text: "0 cm", what: "A length" }],
    ["a number in words", readNumberCell("eight", wanted), "notANumber", { text: "eight", wanted }],
    ["a number with a unit", readNumberCell("8 in", wanted), "notANumber", { text: "8 in", wanted }],
    ["two percentages", readShareCell("5%5%", wanted), "notANumber", { text: "5%5%", wanted }],
    ["a blank word", readWordCell(null, "a name"), "blank", { wanted: "a name" }],
    ["an error for a word", readWordCell(error, "a name"), "errorCell", { error: "#DIV/0!" }],
    ["an error for TRUE", readFlagCell(error, false), "errorCell", { error: "#DIV/0!" }],
    ["a word that is neither", readFlagCell(" maybe", true), "notTrueOrFalse", { text: "maybe" }],
    ["an error for a unit", readUnitCell(error), "errorCell", { error: "#DIV/0!" }],
    ["a unit that isn't known", readUnitCell("ell"), "unknownUnit", { text: "ell", known: "in, cm, yd or m" }],
    ["a blank size", readSizeCell(null, ["8"]), "blank", { wanted: "a size" }],
    ["a size of spaces", readSizeCell(" ", ["8"]), "blank", { wanted: "a size" }],
    ["a nought that is no size", readSizeCell(0, ["8"]), "blank", { wanted: "a size" }],
    ["an error for a size", readSizeCell(error, ["8"]), "errorCell", { error: "#DIV/0!" }],
    ["a date for a size", readSizeCell(20_001, ["8"]), "excelDate", { text: "20001" }],
    ["a size that isn't there", columnOfSize(["8", "10"], "12"), "sizeNotOnChart", { size: "12", known: "8, 10" }],
  ])("is named: %s", (_, result, code, details) => expect(result).toEqual(refusal(code, details)));
});

describe("a cell at the edge", () => {
  test.each([
    ["the number furthest below zero", readSignedLengthCell(-20_000, "a length"), { value: -20_000, unit: null }],
    ["as little as the tolerance", readSignedLengthCell(TOLERANCE, "a length"), { value: 0, unit: null }],
    ["a percentage with spaces around", readShareCell(" 5% ", "a share"), 0.05],
    ["yes with spaces around", readFlagCell(" Yes ", false), true],
    ["y", readFlagCell("Y", false), true],
    ["the text true", readFlagCell("true", false), true],
    ["FALSE", readFlagCell(false, true), false],
    ["n", readFlagCell("n", true), false],
    ["no", readFlagCell("no", true), false],
    ["the text false", readFlagCell("FALSE", true), false],
    ["the text 0", readFlagCell("0", true), false],
    ["the largest number for a size", readSizeCell(20_000, []), "20000"],
    ["a size as text, however large", readSizeCell("46174", []), "46174"],
    ["the first size", columnOfSize(["8", "10"], "8"), 0],
    ["a size in another case", columnOfSize(["8", "18W"], "18 w"), 1],
  ])("is read: %s", (_, result, value) => expect(result).toEqual(read(value)));
});
