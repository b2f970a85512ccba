import { describe, expect, test } from "vitest";
import { bodyOf, FIGURES, finishedBy, INDEX_HEADINGS, indexRows, MISSES, ROSA, wide } from "./charts";
import { BLANK, call, expectError, expectRefusal, numbers, rowOf, rows, texts } from "./functions";

const blend = (body: unknown, garment = "fitted dress", finished?: unknown) =>
  call("BLEND", MISSES, body, garment, finished);

describe("BLEND", () => {
  test("lists place, size, change in girth, change at each seam edge, lengthening and a note", async () => {
    const answer = rows(await blend(ROSA));
    expect(answer[0]).toHaveLength(6);
    // Frame 12. Waist 14: 28 - 26 1/2 = 1 1/2, a quarter at each of four edges; hip 16: 40 - 36 = 4.
    expect(rowOf(answer, "bust").slice(1, 4)).toEqual([12, 0, 0]);
    expect(rowOf(answer, "waist").slice(1, 4)).toEqual([14, 1.5, 0.375]);
    expect(rowOf(answer, "hip").slice(1, 4)).toEqual([16, 4, 1]);
  });
  test("is negative where a place is smaller than the frame", async () => {
    // Frame 16 at the bust 38; waist 26 1/2 is 12: 26 1/2 - 30 = -3 1/2; hip 36 is 12: 36 - 40 = -4.
    const answer = await blend(bodyOf({ Bust: 38, Waist: 26.5, Hip: 36 }));
    expect(rowOf(answer, "waist").slice(1, 4)).toEqual([12, -3.5, -0.875]);
    expect(rowOf(answer, "hip").slice(1, 4)).toEqual([12, -4, -1]);
  });
  test("of a size with itself changes nothing", async () => {
    const answer = await blend(bodyOf({ Bust: 36, Waist: 28, Hip: 38 }));
    for (const place of ["bust", "waist", "hip"]) expect(rowOf(answer, place).slice(1, 4)).toEqual([14, 0, 0]);
  });
  test("has no limit between printed lines", async () => {
    // Bust 30 1/2 is 6, hip 48 is 24: 48 - 32 1/2 = 15 1/2.
    const answer = await blend(bodyOf({ Bust: 30.5, Waist: 23, Hip: 48 }));
    expect(rowOf(answer, "hip").slice(1, 4)).toEqual([24, 15.5, 3.875]);
  });
  test("never blends a frame place", async () => {
    // High bust 36 would be 16, the frame is 12.
    const answer = rows(await blend(bodyOf({ "High bust": 36, Bust: 34, Waist: 28, Hip: 40 })));
    const cells = answer.find(([label]) => /high/i.test(String(label)));
    if (cells) {
      expect(cells[1]).not.toBe(16);
      expect(numbers(cells.slice(2, 4)).filter((change) => change !== 0)).toEqual([]);
    }
    expect(rowOf(answer, "hip").slice(1, 4)).toEqual([16, 4, 1]);
  });
  test("lengthens and shortens at every length that body and chart have", async () => {
    // Size 12 has a back waist of 16 1/4.
    const longer = rowOf(await blend([...ROSA, ["Back waist length", 16.75]]), "back waist length");
    const shorter = rowOf(await blend([...ROSA, ["Back waist length", 15.75]]), "back waist length");
    expect(numbers(longer.slice(4, 5))).toEqual([0.5]);
    expect(numbers(shorter.slice(4, 5))).toEqual([-0.5]);
    expect(rows(await blend(ROSA)).some(([label]) => /length/i.test(String(label)))).toBe(false);
  });
  test("says so where a place is more than half an inch at an edge beyond the outermost size", async () => {
    // Hip 52 is 4 beyond 48: 1 in at each of four edges.
    const answer = await blend(bodyOf({ Bust: 44, Waist: 37, Hip: 52 }));
    expect(JSON.stringify(rowOf(answer, "hip"))).toMatch(/beyond|largest|outermost|off|too|more than/i);
  });
  test("of a shirt blends to the hip though only the bust sets the size", async () => {
    expect(rowOf(await blend(ROSA, "shirt"), "bust")[1]).toBe(12);
  });
  test("works in centimetres where the chart is", async () => {
    const cm = wide(
      Object.fromEntries(Object.entries(FIGURES).map(([label, values]) => [label, values.map((v) => v * 2.54)])),
      "cm",
    );
    const body = bodyOf({ Bust: 86.36, Waist: 71.12, Hip: 101.6 });
    const cells = rowOf(await call("BLEND", cm, body, "fitted dress"), "hip");
    expect(cells[1]).toBe(16);
    expect(cells[2]).toBeCloseTo(10.16, 6); // 4 in
    expect(cells[3]).toBeCloseTo(2.54, 6); // 1 in
  });
  test("finds a pattern in the index", async () => {
    const index = [INDEX_HEADINGS, ...indexRows("Sunday dress", "body", { Bust: 0, Waist: 0, Hip: 0 })];
    const answer = await call("BLEND", index, ROSA, "fitted dress", undefined, undefined, "Sunday dress");
    expect(rowOf(answer, "hip").slice(1, 4)).toEqual([16, 4, 1]);
  });
  test("wants one body, and takes one of several by name", async () => {
    const people = [
      ["Measurement", "Rosa", "Mina"],
      ["Bust", 34, 38],
      ["Waist", 28, 30],
      ["Hip", 40, 40],
    ];
    expectError(await blend(people), "#VALUE!");
    expect(rowOf(await call("BLEND", MISSES, people, "fitted dress", undefined, "Mina"), "bust")[1]).toBe(16);
  });
  test("ends each row in a note or a blank, and names its rule somewhere", async () => {
    const answer = rows(await blend(ROSA));
    for (const cells of answer) expect(cells[5]).toBeTypeOf("string");
    expect(answer.map((cells) => texts(cells)).join(" ")).toMatch(/edge|seam|four|frame/i);
  });
  test("with finished measurements stays between the smallest and the largest size of its places", async () => {
    const answer = rows(await blend(ROSA, "fitted dress", finishedBy({ Bust: 3, Waist: 2, Hip: 4 })));
    for (const place of ["bust", "waist", "hip"]) expect([12, 14, 16]).toContain(rowOf(answer, place)[1]);
    expect(rowOf(answer, "bust")[1]).toBe(12);
  });
  test("refuses what CUTSIZE refuses", async () => {
    expectError(await blend(ROSA, "spacesuit"), "#VALUE!", /spacesuit/);
    expectRefusal(await blend(bodyOf({ Bust: BLANK, Waist: 28 }), "shirt"), /bust/i);
  });
});
