import { describe, expect, test } from "vitest";
import { plainText, readLength, readUnit } from "../../src/length";

/** Typed as they are written on tapes, envelopes and in notes; values worked by hand. */
const readings: [string, number, string | null][] = [
  ["30 1/2", 30.5, null],
  ["30½", 30.5, null],
  ["30 ½", 30.5, null],
  ['30-1/2"', 30.5, "in"],
  ["30–1/2 in", 30.5, "in"],
  ["1⁄2", 0.5, null],
  ["³⁄₈ yd", 0.375, "yd"],
  ["2³⁄₈ yd", 2.375, "yd"],
  ["77,5 cm", 77.5, "cm"],
  ["77.5cm", 77.5, "cm"],
  ["2 3/8 yd", 2.375, "yd"],
  ["2 3/8 yds.", 2.375, "yd"],
  ["1,20 m", 1.2, "m"],
  [".5", 0.5, null],
  ["30.5″", 30.5, "in"],
  ["30\u00a01/2\u00a0in.", 30.5, "in"],
  ["30\u202f1/2", 30.5, null],
  ["\u200f30 1/2\u200e", 30.5, null],
  ["3 0".replace(" ", ""), 30, null],
  ["３０", 30, null],
  ["875 mm", 87.5, "cm"],
  ["5 ft 4 in", 64, "in"],
  ["5'4\"", 64, "in"],
  ["5′ 4½″", 64.5, "in"],
  ["1 m 20 cm", 1.2, "m"],
  ["2 yd 9 in", 2.25, "yd"],
  ["-1/2", -0.5, null],
  ["−0.5 in", -0.5, "in"],
  ["7 Zoll", 7, "in"],
  ["30 inches", 30, "in"],
  ["30 & 1/2", 30.5, null],
  ["30&1/2 in", 30.5, "in"],
  ["+ 3/4 yd", 0.75, "yd"],
  ["-5 ft 4 in", -64, "in"],
  ["-1 m 20 cm", -1.2, "m"],
  ["-2 yd 9 in", -2.25, "yd"],
  ["5 ft 11 7/8 in", 71.875, "in"],
  ["5' 4''", 64, "in"],
  ["5′ 4′′", 64, "in"],
  ["5‘ 4“", 64, "in"],
  ["6 ft", 72, "in"],
  ["1 m 99,5 cm", 1.995, "m"],
  ["2 yd 35 1/2 in", 2 + 35.5 / 36, "yd"],
  ["30 7 / 8 in", 30.875, "in"],
  ["0", 0, null],
];

describe("readLength", () => {
  test.each(readings)("reads %j", (text, value, unit) => {
    const reading = readLength(text);
    expect(reading).toMatchObject({ ok: true, value: { unit } });
    if (reading.ok) expect(reading.value.value).toBeCloseTo(value, 12);
  });

  test.each([
    "bust",
    "30 9/8",
    "1/0",
    "1,2,3",
    "1.234,5",
    "30 in 4",
    "30 1/2 1/4",
    "=30",
    "12..5",
    "1e5",
    "30 cm 2 in",
    "5 ft 12 in",
    "2 yd 36 in",
    "1 m 100 cm",
    "2 yd 1 ft",
    "1 m 20 mm",
    "1 in 2 ft",
    "1 m 2 in",
    "1 yd 20 cm",
    "1 ft 6 cm",
    "1 cm 20 cm",
    "5 ft 4 in 2 cm",
    "5 ft 4",
    "5 4 in",
    "30 8/8",
    "--30",
    "30 ells",
    "9".repeat(61),
    "3-4",
    "x".repeat(90),
    "9".repeat(70),
  ])("refuses %j", (text) =>
    expect(readLength(text)).toMatchObject({ ok: false, problem: { code: "unreadableLength" } }),
  );

  test.each(["", "  ", "\u00a0", "\u200f"])("says that %j is blank", (text) =>
    expect(readLength(text)).toMatchObject({ ok: false, problem: { code: "blank" } }),
  );

  test("shows what it couldn't read, trimmed and not longer than 60 signs", () => {
    expect(readLength("  about 30 ")).toEqual({ ok: false, problem: { code: "unreadableLength", details: { text: "about 30" } } }); // prettier-ignore
    expect(readLength("x".repeat(90))).toEqual({ ok: false, problem: { code: "unreadableLength", details: { text: "x".repeat(60) } } }); // prettier-ignore
    expect(readLength("")).toEqual({ ok: false, problem: { code: "blank", details: { wanted: "a length" } } });
    expect(readLength("9".repeat(15).padStart(60, "0"))).toMatchObject({ ok: true });
  });

  // Unicode's fractions of one sign, U+00BC to U+00BE and U+2150 to U+215E, by their names.
  test.each([
    ["¼", 1 / 4], ["½", 1 / 2], ["¾", 3 / 4], ["⅐", 1 / 7], ["⅑", 1 / 9], ["⅒", 1 / 10], ["⅓", 1 / 3], ["⅔", 2 / 3],
    ["⅕", 1 / 5], ["⅖", 2 / 5], ["⅗", 3 / 5], ["⅘", 4 / 5], ["⅙", 1 / 6], ["⅚", 5 / 6], ["⅛", 1 / 8], ["⅜", 3 / 8],
    ["⅝", 5 / 8], ["⅞", 7 / 8],
  ] as const)("reads the sign %s, alone and after a whole number", (sign, value) => {
    expect(readLength(`${sign} in`)).toEqual({ ok: true, value: { value, unit: "in" } });
    expect(readLength(`2${sign}`)).toEqual({ ok: true, value: { value: 2 + value, unit: null } });
  }); // prettier-ignore
});

describe("plainText", () => {
  test("has one form for spaces, dashes, slashes and quotes, and nothing that nobody sees", () => {
    expect(plainText(" a\u00a0\u2009 b\u200b\u00ad ")).toBe("a b");
    expect(plainText("6–12 — 14−20 ‐ x")).toBe("6-12 - 14-20 - x");
    expect(plainText("1⁄2 1∕2")).toBe("1/2 1/2");
    expect(plainText("″“”„‟ '' ′′ ’’")).toBe(`""""" " " "`);
    expect(plainText("′ ‘ ’ ‛")).toBe("' ' ' '");
    expect(plainText("2³/₈")).toBe("2 3/8");
    expect(plainText("５½")).toBe("5 1/2");
  });
});

describe("readUnit", () => {
  // Words of measuring tapes in the languages of the places' vocabulary; 1 ft = 12 in, 1 mm = 0.1 cm.
  test.each([
    ['in inch Inches IN. " Zoll pouces po pulgada pulg. pollici cali duim polegadas', { unit: "in" }],
    ["cm cm. centimetres centimeters Zentimeter centimètres centímetros centimetri centymetrów", { unit: "cm" }],
    ["yd yds. yard yards", { unit: "yd" }],
    ["m mtr metres meters mètre metros metri metrów", { unit: "m" }],
    ["ft ft. foot feet '", { unit: "in", factor: 12 }],
    ["mm mm. millimetres millimeter", { unit: "cm", factor: 0.1 }],
  ] as const)("reads %j", (words, unit) => {
    for (const word of words.split(" ")) expect(readUnit(` ${word} `)).toEqual(unit);
  });
  test("knows no other word", () => {
    for (const word of ["", "ell", "in..", "i n", "mc"]) expect(readUnit(word)).toBeUndefined();
  });
});
