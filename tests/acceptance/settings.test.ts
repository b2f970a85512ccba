import { describe, expect, test } from "vitest";
import { bodyOf, finishedBy, MISSES, ROSA } from "./charts";
import { BLANK, call, callWithZeros, expectError, rowOf } from "./functions";

const HEADINGS = ["Setting", "Garment", "Place", "Value", "Unit"];
const ROOMY = finishedBy({ Bust: 3, Waist: 2, Hip: 4 });
const cut = (body: unknown, garment: string, finished: unknown, ...settings: unknown[][]) =>
  call("CUTSIZE", MISSES, body, garment, finished, undefined, undefined, [HEADINGS, ...settings]);

describe("settings", () => {
  test("without rows change nothing", async () => {
    expect(await cut(ROSA, "fitted dress", ROOMY)).toBe(14);
    const blank = [BLANK, BLANK, BLANK, BLANK, BLANK];
    expect(await cut(ROSA, "fitted dress", ROOMY, blank, blank)).toBe(14);
    const arrived = [HEADINGS, blank];
    expect(await callWithZeros("CUTSIZE", MISSES, ROSA, "shirt", BLANK, BLANK, BLANK, arrived)).toBe(12);
  });
  test("may come with headings in another order and case", async () => {
    const turned = [
      ["unit", "VALUE", "place", "garment", "setting"],
      ["in", 4, "hip", "fitted dress", "least ease"],
    ];
    expect(await call("CUTSIZE", MISSES, ROSA, "fitted dress", ROOMY, undefined, undefined, turned)).toBe(16);
  });
  test("replace the least ease at a place", async () => {
    // In 14 the hip has 38 + 4 - 40 = 2, in 16 it has 4.
    expect(await cut(ROSA, "fitted dress", ROOMY, ["least ease", "fitted dress", "hip", 4, "in"])).toBe(16);
    expect(await cut(ROSA, "fitted dress", ROOMY, ["least ease", "fitted dress", "hip", "10.16 cm", BLANK])).toBe(16);
    // In 12 the waist has 1/2 and the hip 36 + 4 - 40 = 0.
    const none = ["waist", "hip"].map((place) => ["least ease", "fitted dress", place, 0, "in"]);
    expect(await cut(ROSA, "fitted dress", ROOMY, ...none)).toBe(12);
    expect(await cut(ROSA, "fitted dress", ROOMY, ["least ease", "jacket", "hip", 4, "in"])).toBe(14);
  });
  test("replace the rule between sizes", async () => {
    const body = (bust: number) => bodyOf({ Bust: bust });
    expect(await cut(body(34.25), "shirt", undefined, ["between sizes", BLANK, BLANK, "larger", BLANK])).toBe(14);
    expect(await cut(body(34), "shirt", undefined, ["between sizes", BLANK, BLANK, "larger", BLANK])).toBe(12);
    expect(await cut(body(35.75), "shirt", undefined, ["between sizes", BLANK, BLANK, "smaller", BLANK])).toBe(12);
    expect(await cut(body(35.75), "shirt", undefined, ["between sizes", BLANK, BLANK, "closest", BLANK])).toBe(14);
  });
  test("replace the governing places", async () => {
    // Trousers by the waist alone: 28 is 14, where the hip would be 16.
    const byWaist = [
      ["governs", "trousers", BLANK, "waist", BLANK],
      ["frame", "trousers", BLANK, "waist", BLANK],
    ];
    expect(await cut(ROSA, "trousers", undefined, ...byWaist)).toBe(14);
    expect(await cut(ROSA, "straight skirt", undefined, ...byWaist)).toBe(16);
    // A shirt that must go over the hip: bust 12, hip 16.
    expect(await cut(ROSA, "shirt", undefined, ["governs", "shirt", BLANK, "bust, hip", BLANK])).toBe(16);
  });
  test("frame by the high bust when they say so, and judge bust ease after the adjustment", async () => {
    const body = bodyOf({ Bust: 40, "High bust": 36, Waist: 30, Hip: 40 });
    const frame = ["frame", "fitted dress", BLANK, "high bust", BLANK];
    // Frame 16; the adjustment is 40 - 38 = 2, so the bust has 38 + 3 + 2 - 40 = 3; waist 2, hip 4.
    expect(await cut(body, "fitted dress", ROOMY, frame)).toBe(16);
    // By the bust it would be 18.
    expect(await cut(body, "fitted dress", ROOMY)).toBe(18);
    expectError(await cut(ROSA, "fitted dress", ROOMY, frame), "#VALUE!", /high ?bust/i);
  });
  test("let the high bust decide from a threshold on, which counts itself", async () => {
    const body = (bust: number) => bodyOf({ Bust: bust, "High bust": 36, Waist: 30, Hip: 40 });
    const threshold = (value: number) => ["threshold", BLANK, BLANK, value, "in"];
    expect(await cut(body(40), "fitted dress", ROOMY, threshold(4))).toBe(16);
    expect(await cut(body(40), "fitted dress", ROOMY, threshold(4.5))).toBe(18);
  });
  test("replace a band", async () => {
    const settings = [
      HEADINGS,
      ["fitted", "dress", "bust", "2 to 3", "in"],
      ["close-fitting", "dress", "bust", "0 to 1 7/8", "in"],
    ];
    expect(await call("FITTERM", 2.5, "dress", "bust", undefined, settings)).toBe("fitted");
    expect(await call("FITTERM", 2.5, "jacket", "bust", undefined, settings)).toMatchObject({ error: "#N/A" });
  });
  test("are used by BLEND and EASEPLAN too", async () => {
    const settings = [HEADINGS, ["edges", "fitted dress", BLANK, 6, BLANK]];
    const plan = await call("BLEND", MISSES, ROSA, "fitted dress", undefined, undefined, undefined, settings);
    // Hip 4 in over six seam edges: two thirds of an inch.
    expect(rowOf(plan, "hip")[3]).toBeCloseTo(2 / 3, 9);
    const eased = [HEADINGS, ["least ease", "fitted dress", "waist", 0.25, "in"]];
    const rows = (await call(
      "EASEPLAN",
      MISSES,
      ROSA,
      "fitted dress",
      ROOMY,
      undefined,
      undefined,
      eased,
    )) as unknown[][];
    const waist = rows.find((cells) => cells[0] === 12 && /waist/i.test(String(cells[1])))!;
    expect(waist.join(" ")).toMatch(/enough/); // 1/2 in
  });
  test("of every kind may stand in one table", async () => {
    const settings = [
      ["units", BLANK, BLANK, "in", BLANK],
      ["step", BLANK, BLANK, 0.125, BLANK],
      ["between sizes", BLANK, BLANK, "closest", BLANK],
      ["least ease", "fitted dress", "hip", 2, "in"],
      ["fitted", "dress", "bust", "3 to 4", "in"],
    ];
    expect(await cut(ROSA, "fitted dress", ROOMY, ...settings)).toBe(14);
    expect(await cut(ROSA, "fitted dress", ROOMY, ["step", BLANK, BLANK, 0.125, "yd"])).toBe(14);
    expect(await cut(ROSA, "fitted dress", ROOMY, ["step", BLANK, BLANK, 0.1, "m"])).toBe(14);
  });
  test("that can't be read say which row and what is wanted", async () => {
    expectError(await cut(ROSA, "shirt", undefined, ["colour", BLANK, BLANK, "red", BLANK]), "#VALUE!", /colour/);
    expectError(
      await cut(ROSA, "shirt", undefined, ["between sizes", BLANK, BLANK, "bigger", BLANK]),
      "#VALUE!",
      /bigger/,
      /closest/,
      /smaller/,
    );
    expectError(
      await cut(ROSA, "fitted dress", ROOMY, ["least ease", "dress", "hip", "lots", "in"]),
      "#VALUE!",
      /lots/,
    );
    expectError(await cut(ROSA, "fitted dress", ROOMY, ["least ease", "spacesuit", "hip", 2, "fathom"]), "#VALUE!");
    expectError(
      await call("CUTSIZE", MISSES, ROSA, "shirt", undefined, undefined, undefined, [["between sizes", "larger"]]),
      "#VALUE!",
      /heading/i,
    );
  });
});
