import { describe, expect, test } from "vitest";
import { bodyOf, FIGURES, finishedBy, MISSES, ROSA, SIZES } from "./charts";
import { BLANK, call, column, errorCell, expectError, expectRefusal, numbers, rows, texts } from "./functions";

describe("EASE", () => {
  test("is finished minus body, with its sign", async () => {
    expect(await call("EASE", 40, 36)).toBe(4);
    expect(await call("EASE", 34, 36)).toBe(-2);
    expect(await call("EASE", "39 1/2", 36)).toBe(3.5);
    expect(await call("EASE", '40"', '36½"')).toBe(3.5);
  });
  test("answers a column, one body for many finished figures", async () => {
    const answer = (await call("EASE", column(40, "x", BLANK, errorCell("#N/A"), 35), 36)) as unknown[][];
    expect(answer[0]![0]).toBe(4);
    expectError(answer[1]![0], "#VALUE!", /x/);
    expect(answer[2]![0]).toBe("");
    expect(answer[3]![0]).toMatchObject({ error: "#N/A" });
    expect(answer[4]![0]).toBe(-1);
  });
  test("refuses a blank, a negative and a date", async () => {
    expectError(await call("EASE", 40, BLANK), "#VALUE!");
    expectError(await call("EASE", BLANK, 36), "#VALUE!");
    expectError(await call("EASE", -40, 36), "#VALUE!");
    expectError(await call("EASE", 46182, 36), "#VALUE!", /date/i);
  });
});

// Bands in inches: ease-allowance chart used across home-sewing catalogues and reprinted in extension leaflets (from memory).
describe("FITTERM", () => {
  const bust: [number, string][] = [
    [0, "close-fitting"],
    [2.875, "close-fitting"],
    [2.9, "close-fitting"], // 23.2 eighths
    [2.95, "fitted"], // 23.6 eighths
    [3, "fitted"],
    [4, "fitted"],
    [4.06, "fitted"], // 32.48 eighths
    [4.07, "semi-fitted"], // 32.56 eighths
    [4.125, "semi-fitted"],
    [5, "semi-fitted"],
    [5.125, "loose-fitting"],
    [8, "loose-fitting"],
    [8.05, "loose-fitting"], // 64.4 eighths
    [8.125, "very loose-fitting"],
    [20, "very loose-fitting"],
  ];
  test.each(bust)("calls %d in at the bust of a dress, blouse, top or vest %s", async (ease, term) => {
    for (const garment of ["fitted dress", "dress", "blouse", "top", "vest", "Blouses"])
      expect(await call("FITTERM", ease, garment, "bust")).toBe(term);
  });
  test.each([
    [3.75, "fitted"],
    [4.25, "fitted"],
    [4.375, "semi-fitted"],
    [5.75, "semi-fitted"],
    [5.875, "loose-fitting"],
    [6.25, "loose-fitting"], // a jacket described as loose-fitting in print
    [10, "loose-fitting"],
    [10.125, "very loose-fitting"],
  ])("calls %d in at the bust of a jacket %s", async (ease, term) =>
    expect(await call("FITTERM", ease, "jacket", "bust")).toBe(term),
  );
  test.each([
    [5.25, "fitted"],
    [6.75, "fitted"],
    [6.875, "semi-fitted"],
    [8, "semi-fitted"],
    [8.125, "loose-fitting"],
    [12, "loose-fitting"],
    [12.125, "very loose-fitting"],
  ])("calls %d in at the bust of a coat %s", async (ease, term) =>
    expect(await call("FITTERM", ease, "coat", "bust")).toBe(term),
  );
  test.each([
    [0, "close-fitting"],
    [1.875, "close-fitting"],
    [2, "fitted"],
    [3, "fitted"],
    [3.125, "semi-fitted"],
    [4, "semi-fitted"],
    [4.125, "loose-fitting"],
    [6, "loose-fitting"],
    [6.125, "very loose-fitting"],
  ])("calls %d in at the hip of a skirt, trousers or shorts %s", async (ease, term) => {
    for (const garment of ["straight skirt", "skirt", "trousers", "shorts"])
      expect(await call("FITTERM", ease, garment, "hip")).toBe(term);
  });
  test("has no word where no band is", async () => {
    expectError(await call("FITTERM", 2, "jacket", "bust"), "#N/A");
    expectError(await call("FITTERM", 5, "coat", "bust"), "#N/A");
  });
  test("says only enough or tight at other places", async () => {
    expect(await call("FITTERM", 1, "fitted dress", "waist")).toBe("enough"); // least ease 1 in
    expect(await call("FITTERM", 0.75, "fitted dress", "waist")).toBe("tight");
  });
  test("says that less than nothing is for stretch knits only", async () => {
    expect(await call("FITTERM", -1, "top", "bust")).toMatch(/smaller than the body/i);
    expect(await call("FITTERM", -1, "top", "bust")).toMatch(/stretch|knit/i);
    expect(await call("FITTERM", -0.5, "skirt", "waist")).toMatch(/smaller than the body/i);
  });
  test("reads centimetres when it is told, or when the text says so", async () => {
    expect(await call("FITTERM", 7.62, "dress", "bust", "cm")).toBe("fitted"); // 3 in
    expect(await call("FITTERM", 10, "dress", "bust", "cm")).toBe("fitted"); // 31.496 eighths: 3 7/8
    expect(await call("FITTERM", 7, "dress", "bust", "cm")).toBe("close-fitting"); // 22.05 eighths
    expect(await call("FITTERM", 20.32, "dress", "bust", "cm")).toBe("loose-fitting"); // 8 in
    expect(await call("FITTERM", 21, "dress", "bust", "cm")).toBe("very loose-fitting"); // 66.1 eighths
    expect(await call("FITTERM", "7,62 cm", "dress", "bust")).toBe("fitted");
    expect(await call("FITTERM", "3 1/2", "dress", "bust")).toBe("fitted");
  });
  test("answers a column", async () => {
    const answer = (await call("FITTERM", column(3, 5, BLANK, "x"), "dress", "bust")) as unknown[][];
    expect(answer.slice(0, 3)).toEqual([["fitted"], ["semi-fitted"], [""]]);
    expectError(answer[3]![0], "#VALUE!", /x/);
  });
  test("refuses an unknown garment and unit", async () => {
    expectError(await call("FITTERM", 3, "spacesuit", "bust"), "#VALUE!", /spacesuit/);
    expectError(await call("FITTERM", 3, "dress", "bust", "ells"), "#VALUE!", /ells/);
    expectError(await call("FITTERM", BLANK, "dress", "bust"), "#VALUE!");
  });
});

describe("EASEBAND", () => {
  const band = async (...args: unknown[]) => String(await call("EASEBAND", ...args));
  test("gives the band's two ends", async () => {
    expect(await band("dress", "bust", "fitted")).toMatch(/^3\b.+\b4\b/);
    expect(await band("blouse", "bust", "close-fitting")).toMatch(/^0\b.+\b2(?: 7\/8|\.875)/);
    expect(await band("jacket", "bust", "loose-fitting")).toMatch(/^5(?: 7\/8|\.875)\D.+\b10\b/);
    expect(await band("coat", "bust", "semi-fitted")).toMatch(/^6(?: 7\/8|\.875)\D.+\b8\b/);
    expect(await band("trousers", "hip", "semi-fitted")).toMatch(/^3(?: 1\/8|\.125)\D.+\b4\b/);
  });
  test("gives them in centimetres, to the millimetre at least", async () => {
    expect(await band("dress", "bust", "fitted", "cm")).toMatch(/^7[.,]6.+\b10[.,][12]/); // 7.62 and 10.16
  });
  test("has no upper end for the loosest band", async () => {
    expect((await band("dress", "bust", "very loose-fitting")).match(/\d+/g)).toEqual(["8"]);
  });
  test("has none for a close-fitting jacket", async () => {
    expectError(await call("EASEBAND", "jacket", "bust", "close-fitting"), "#N/A");
    expectError(await call("EASEBAND", "coat", "bust", "close-fitting"), "#N/A");
  });
  test("refuses unknown words", async () => {
    expectError(await call("EASEBAND", "dress", "bust", "baggy"), "#VALUE!", /baggy/);
    expectError(await call("EASEBAND", "spacesuit", "bust", "fitted"), "#VALUE!", /spacesuit/);
  });
});

describe("EASEPLAN", () => {
  const finished = finishedBy({ Bust: 3, Waist: 2, Hip: 4 });
  const plan = async (body: unknown, garment = "fitted dress") =>
    rows(await call("EASEPLAN", MISSES, body, garment, finished));
  const sizesOf = (found: unknown[][]) => [...new Set(found.map(([size]) => size))];
  test("goes from two sizes below the frame to two above", async () => {
    expect(sizesOf(await plan(ROSA))).toEqual([8, 10, 12, 14, 16]);
  });
  test("stops at the chart's ends", async () => {
    expect(sizesOf(await plan(bodyOf({ Bust: 30.5, Waist: 23, Hip: 32.5 })))).toEqual([6, 8, 10]);
    expect(sizesOf(await plan(bodyOf({ Bust: 46, Waist: 39, Hip: 48 })))).toEqual([20, 22, 24]);
  });
  test("shows each size's ease at each place and its word", async () => {
    const found = await plan(ROSA);
    for (const size of [8, 10, 12, 14, 16]) {
      const at = SIZES.indexOf(size);
      const cells = found.filter(([first]) => first === size).flat();
      const eases = [FIGURES["Bust"]![at]! + 3 - 34, FIGURES["Waist"]![at]! + 2 - 28, FIGURES["Hip"]![at]! + 4 - 40];
      for (const ease of eases) expect(numbers(cells)).toContain(ease);
    }
    const said = (size: number) => texts(found.filter(([first]) => first === size).flat());
    expect(said(12)).toMatch(/(?<!semi-)\bfitted\b/); // 3 in at the bust
    expect(said(14)).toMatch(/semi-fitted/); // 5 in
    expect(said(12)).toMatch(/tight/); // 1/2 in at the waist
    expect(said(16)).toMatch(/enough/);
    expect(said(8)).toMatch(/smaller than the body|tight/); // hip 33 1/2 + 4 - 40 = -2 1/2
  });
  test("refuses what it can't compare", async () => {
    expectRefusal(await call("EASEPLAN", MISSES, ROSA, "fitted dress", BLANK));
    expectError(await call("EASEPLAN", MISSES, ROSA, "spacesuit", finished), "#VALUE!", /spacesuit/);
  });
});

describe("STRETCH", () => {
  // Stretch of a length at rest. Source: worked examples of two sewing-education pages.
  test.each([
    [4, 5, 0.25],
    [4, 10, 1.5],
    [10, 15, 0.5],
    [10, 13, 0.3],
  ])("of %d pulled to %d is %d", async (rest, stretched, part) =>
    expect(await call("STRETCH", rest, stretched)).toBeCloseTo(part, 12),
  );
  test("reads text and units", async () => {
    expect(await call("STRETCH", "4 in", "5 in")).toBeCloseTo(0.25, 12);
    expect(await call("STRETCH", "10 cm", "13 cm")).toBeCloseTo(0.3, 12);
  });
  test("answers a column", async () => {
    const answer = (await call("STRETCH", 4, column(5, BLANK, "x"))) as unknown[][];
    expect(answer[0]![0]).toBe(0.25);
    expect(answer[1]![0]).toBe("");
    expectError(answer[2]![0], "#VALUE!", /x/);
  });
  test("refuses nothing at rest, and negatives", async () => {
    expectError(await call("STRETCH", 0, 5), "#VALUE!");
    expectError(await call("STRETCH", BLANK, 5), "#VALUE!");
    expectError(await call("STRETCH", -4, 5), "#VALUE!");
  });
});

describe("KNITCHECK", () => {
  test("is TRUE when the stretch is enough, exactly enough too", async () => {
    expect(await call("KNITCHECK", 0.25, 0.25)).toBe(true);
    expect(await call("KNITCHECK", 0.3, 0.1 + 0.2)).toBe(true); // 0.1 + 0.2 is a hair more than 0.3 in binary
    expect(await call("KNITCHECK", 0.5, 0.25)).toBe(true);
    expect(await call("KNITCHECK", 0.2, 0.25)).toBe(false);
  });
  test("answers a column", async () => {
    expect(await call("KNITCHECK", column(0.2, 0.25), 0.25)).toEqual([[false], [true]]);
  });
  test("refuses text and a missing requirement", async () => {
    expectError(await call("KNITCHECK", "very", 0.25), "#VALUE!");
    expectError(await call("KNITCHECK", 0.3, BLANK), "#VALUE!");
  });
});
