import { describe, expect, test } from "vitest";
import { readLength } from "../../src/length";

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
    "3-4",
    "x".repeat(90),
    "9".repeat(70),
  ])("refuses %j", (text) =>
    expect(readLength(text)).toMatchObject({ ok: false, problem: { code: "unreadableLength" } }),
  );

  test.each(["", "  ", "\u00a0", "\u200f"])("says that %j is blank", (text) =>
    expect(readLength(text)).toMatchObject({ ok: false, problem: { code: "blank" } }),
  );
});
