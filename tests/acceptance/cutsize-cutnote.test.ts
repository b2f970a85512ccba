import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { bodyOf, FIGURES, finishedBy, INDEX_HEADINGS, indexRows, MISSES, ROSA, SIZES, wide } from "./charts";
import { BLANK, call, callWithZeros, column, errorCell, expectError, expectRefusal, isError } from "./functions";

const cut = (body: unknown, garment: unknown, finished?: unknown) => call("CUTSIZE", MISSES, body, garment, finished);
const ROOMY = finishedBy({ Bust: 3, Waist: 2, Hip: 4 });

describe("CUTSIZE without finished measurements", () => {
  // Rosa is 12 at the bust, 14 at the waist, 16 at the hip.
  test.each([
    ["shirt", 12],
    ["blouse", 12],
    ["top", 12],
    ["loose dress", 12],
    ["vest", 12],
    ["jacket", 12],
    ["coat", 12],
    ["fitted dress", 16], // bust, waist, hip
    ["dress", 16], // = fitted dress
    ["straight skirt", 16], // hip
    ["skirt", 16],
    ["trousers", 16],
    ["shorts", 16],
    ["leggings", 16],
    ["full skirt", 14], // waist
    ["nightwear", 16], // bust, hip
    ["men's trousers", 16], // waist, hip
  ])("cuts a %s in %d", async (garment, size) => expect(await cut(ROSA, garment)).toBe(size));
  test("ignores case, plural and spaces in the garment", async () => {
    expect(await cut(ROSA, "Shirts")).toBe(12);
    expect(await cut(ROSA, " FITTED  DRESSES ")).toBe(16);
    expect(await cut(ROSA, "FullSkirt")).toBe(14);
    expect(await cut(ROSA, "Full skirts")).toBe(14);
  });
  test("is the largest size among the garment's places", async () => {
    expect(await cut(bodyOf({ Bust: 38, Waist: 26.5, Hip: 36 }), "dress")).toBe(16);
    expect(await cut(bodyOf({ Bust: 34, Waist: 32, Hip: 36 }), "dress")).toBe(18);
    expect(await cut(bodyOf({ Bust: 36, Waist: 39, Hip: 33.5 }), "nightwear")).toBe(14); // the waist doesn't count
    expect(await cut(bodyOf({ Waist: 32, Hip: 36 }), "men's trousers")).toBe(18);
    expect(await cut(bodyOf({ Waist: 32, Hip: 36 }), "trousers")).toBe(12);
  });
  test("goes by the closest figure, ties to the larger", async () => {
    expect(await cut(bodyOf({ Bust: 35 }), "shirt")).toBe(14);
    expect(await cut(bodyOf({ Bust: 34.9 }), "shirt")).toBe(12);
  });
});

describe("CUTSIZE with finished measurements", () => {
  test("steps up from the frame only as far as the least ease asks", async () => {
    // Frame 12. In 12 the waist has 26 1/2 + 2 - 28 = 1/2; in 14 it has 2 and the hip 38 + 4 - 40 = 2: enough.
    expect(await cut(ROSA, "fitted dress", ROOMY)).toBe(14);
  });
  test("keeps the frame where the ease is enough", async () => {
    expect(await cut(ROSA, "shirt", ROOMY)).toBe(12); // 34 + 3 - 34 = 3
    expect(
      await cut(bodyOf({ Bust: 36, Waist: 28, Hip: 38 }), "fitted dress", finishedBy({ Bust: 8, Waist: 8, Hip: 8 })),
    ).toBe(14);
  });
  test("never goes below the frame, however roomy the design", async () => {
    const wideCut = finishedBy({ Bust: 20, Waist: 20, Hip: 20 });
    for (const [at, size] of SIZES.entries()) {
      const body = bodyOf({ Bust: FIGURES["Bust"]![at], Waist: 23, Hip: 32.5 });
      expect(await cut(body, "fitted dress", wideCut)).toBe(size);
    }
  });
  test("counts exactly the least ease as enough: 2 1/2, 1 and 2 in", async () => {
    const least = finishedBy({ Bust: 2.5, Waist: 1, Hip: 2 });
    for (const [at, size] of SIZES.entries()) {
      const body = bodyOf({ Bust: FIGURES["Bust"]![at], Waist: FIGURES["Waist"]![at], Hip: FIGURES["Hip"]![at] });
      expect(await cut(body, "fitted dress", least)).toBe(size);
    }
    // 1/8 in less at one place and the next size is cut.
    const body = bodyOf({ Bust: 36, Waist: 28, Hip: 38 });
    expect(await cut(body, "fitted dress", finishedBy({ Bust: 2.375, Waist: 1, Hip: 2 }))).toBe(16);
    expect(await cut(body, "fitted dress", finishedBy({ Bust: 2.5, Waist: 0.875, Hip: 2 }))).toBe(16);
    expect(await cut(body, "fitted dress", finishedBy({ Bust: 2.5, Waist: 1, Hip: 1.875 }))).toBe(16);
  });
  test("with finished = chart + least ease is the largest atleast size, never below the frame", async () => {
    const least = finishedBy({ Bust: 2.5, Waist: 1, Hip: 2 });
    // atleast: bust 34.5 is 14, waist 27 is 14, hip 38.5 is 16.
    expect(await cut(bodyOf({ Bust: 34.5, Waist: 27, Hip: 38.5 }), "fitted dress", least)).toBe(16);
    // atleast: bust 36.1 is 16, waist 25 is 10, hip 36 is 12.
    expect(await cut(bodyOf({ Bust: 36.1, Waist: 25, Hip: 36 }), "fitted dress", least)).toBe(16);
    // atleast: bust 33 is 12, waist 30.5 is 18, hip 40 is 16.
    expect(await cut(bodyOf({ Bust: 33, Waist: 30.5, Hip: 40 }), "fitted dress", least)).toBe(18);
  });
  test("looks only at governing places that both tables have", async () => {
    // Without a finished hip: in 12 the waist has 1/2, in 14 it has 2.
    expect(await cut(ROSA, "fitted dress", finishedBy({ Bust: 3, Waist: 2 }))).toBe(14);
    expect(await cut(ROSA, "fitted dress", finishedBy({ Bust: 3 }))).toBe(12);
  });
  test("frames skirts and trousers at the hip and full skirts at the waist", async () => {
    expect(await cut(ROSA, "straight skirt", finishedBy({ Waist: 2, Hip: 4 }))).toBe(16);
    expect(await cut(ROSA, "full skirt", finishedBy({ Waist: 2, Hip: 30 }))).toBe(14);
    // Hip 38 frames 14; 38 + 1 - 38 = 1 is less than 2, so 16: 40 + 1 - 38 = 3.
    expect(await cut(bodyOf({ Waist: 28, Hip: 38 }), "trousers", finishedBy({ Hip: 1 }))).toBe(16);
  });
  test("is refused where even the largest size has less than the least ease", async () => {
    // Frame 24 at the bust 46; hip 50 in finished 48 + 2 = 50: no ease, and there is no larger size.
    const answer = await cut(
      bodyOf({ Bust: 46, Waist: 39, Hip: 50 }),
      "fitted dress",
      finishedBy({ Bust: 3, Waist: 2, Hip: 2 }),
    );
    if (isError(answer)) expectError(answer, "#N/A", /hip/i);
    else
      expect(
        String(
          await call(
            "CUTNOTE",
            MISSES,
            bodyOf({ Bust: 46, Waist: 39, Hip: 50 }),
            "fitted dress",
            finishedBy({ Bust: 3, Waist: 2, Hip: 2 }),
          ),
        ),
      ).toMatch(/hip/i);
  });
});

describe("CUTSIZE for men and children", () => {
  const shirts = wide({ Chest: ["86-90", "92-96", "98-102", "104-108"], Neck: [37, 39, 41, 43] }, "cm", [
    "S",
    "M",
    "L",
    "XL",
  ]);
  test("frames a man's shirt at chest or neck, the larger", async () => {
    expect(await call("CUTSIZE", shirts, bodyOf({ Chest: 91, Neck: 41 }), "men's shirt")).toBe("L"); // gap: M; neck: L
    expect(await call("CUTSIZE", shirts, bodyOf({ Chest: 91, Neck: 37 }), "men's shirt")).toBe("M");
    expect(await call("CUTSIZE", shirts, bodyOf({ Chest: 100, Neck: 39 }), "men's shirts")).toBe("L");
  });
  const children = wide(
    {
      Chest: [21, 22, 23, 24, 25],
      Waist: [20, 20.5, 21, 21.5, 22],
      Hip: [22, 23, 24, 25, 26],
      Height: [35, 38, 41, 44, 47],
    },
    "in",
    [2, 3, 4, 5, 6],
  );
  test("looks at chest and height for a child's top or dress", async () => {
    expect(await call("CUTSIZE", children, bodyOf({ Chest: 22, Height: 44 }), "child's top")).toBe(5);
    expect(await call("CUTSIZE", children, bodyOf({ Chest: 24, Height: 38 }), "child's dress")).toBe(5);
    expect(await call("CUTSIZE", children, bodyOf({ Chest: 22, Height: 38 }), "child's top")).toBe(3);
  });
  test("looks at the girth and the height for a child's trousers", async () => {
    expect(await call("CUTSIZE", children, bodyOf({ Hip: 23, Height: 44 }), "child's trousers")).toBe(5);
    expect(await call("CUTSIZE", children, bodyOf({ Hip: 25, Height: 38 }), "child's trousers")).toBe(5);
  });
});

describe("CUTSIZE of bodies", () => {
  const people = [
    ["Measurement", "Unit", "Rosa", "Mina", "Ida"],
    ["Bust", "in", 34, 38, 36],
    ["Waist", "in", 28, 30, 28],
    ["Hip", "in", 40, 40, 38],
  ];
  test("answers a column for several people, and one for a named person", async () => {
    expect(await call("CUTSIZE", MISSES, people, "fitted dress")).toEqual([[16], [16], [14]]);
    expect(await call("CUTSIZE", MISSES, people, "shirt")).toEqual([[12], [16], [14]]);
    expect(await call("CUTSIZE", MISSES, people, "fitted dress", ROOMY)).toEqual([[14], [16], [14]]);
    expect(await call("CUTSIZE", MISSES, people, "shirt", undefined, "Mina")).toBe(16);
    expect(await call("CUTSIZE", MISSES, people, "shirt", undefined, " mina ")).toBe(16);
    expectRefusal(await call("CUTSIZE", MISSES, people, "shirt", undefined, "Nora"), /Nora/);
  });
  test("reads places in the first row and a body in each row, named or not", async () => {
    const named = [
      ["Name", "Bust", "Waist", "Hip"],
      ["Rosa", 34, 28, 40],
      ["Mina", 38, 30, 40],
    ];
    expect(await call("CUTSIZE", MISSES, named, "fitted dress")).toEqual([[16], [16]]);
    expect(await call("CUTSIZE", MISSES, named, "shirt", undefined, "Rosa")).toBe(12);
    const bare = [
      ["Bust", "Waist", "Hip"],
      [34, 28, 40],
      [36, 28, 38],
      [38, 30, 40],
    ];
    expect(await call("CUTSIZE", MISSES, bare, "shirt")).toEqual([[12], [14], [16]]);
  });
  test("keeps a bad body in its own cell", async () => {
    const bad = [
      ["Bust", "Waist", "Hip"],
      [34, 28, 40],
      ["x", 28, 38],
      [60, 28, 38],
      [errorCell("#DIV/0!"), 28, 38],
      [36, 28, 38],
    ];
    const answer = (await call("CUTSIZE", MISSES, bad, "shirt")) as unknown[][];
    expect(answer).toHaveLength(5);
    expect(answer[0]![0]).toBe(12);
    expectError(answer[1]![0], "#VALUE!", /x/);
    expectError(answer[2]![0], "#N/A", /bust/i, /14/); // 60 - 46
    expect(answer[3]![0]).toHaveProperty("error");
    expect(answer[4]![0]).toBe(14);
  });
  test("reads headings in any place, units in words and figures in text", async () => {
    const metric = [
      ["Unit", "Rosa", "Measurement"],
      ["cm", 86.36, "Bust"], // 34 in
      ["cm", 71.12, "Waist"], // 28 in
      ["cm", 101.6, "Hip"], // 40 in
    ];
    expect(await call("CUTSIZE", MISSES, metric, "shirt")).toBe(12);
    expect(await call("CUTSIZE", MISSES, metric, "fitted dress")).toBe(16);
    expect(await call("CUTSIZE", MISSES, bodyOf({ Bust: "86,36 cm", Waist: '28"', Hip: "40" }), "fitted dress")).toBe(
      16,
    );
  });
  test("may have a unit of its own for each row", async () => {
    const two = [
      ["Measurement", "Unit", "Rosa"],
      ["Bust", "in", 34],
      ["Waist", "cm", 71.12],
      ["Hip", "cm", 101.6],
    ];
    expect(await call("CUTSIZE", MISSES, two, "fitted dress")).toBe(16);
  });
  test("in centimetres without a unit are noticed on an inch chart", async () => {
    expectError(await cut(bodyOf({ Bust: 100, Waist: 80, Hip: 106 }), "shirt"), "#VALUE!", /cm|cent/i);
  });
  test("get the same sizes from an exactly converted chart", async () => {
    const cm = wide(
      Object.fromEntries(Object.entries(FIGURES).map(([label, values]) => [label, values.map((v) => v * 2.54)])),
      "cm",
    );
    const inInches = [["Measurement", "Unit", "Rosa"], ...ROSA.map(([label, value]) => [label, "in", value])];
    for (const garment of ["shirt", "fitted dress", "full skirt"])
      expect(await call("CUTSIZE", cm, inInches, garment)).toBe(await cut(ROSA, garment));
    expect(await call("CUTSIZE", cm, inInches, "fitted dress", ROOMY)).toBe(14);
  });
});

describe("CUTSIZE by the pattern index", () => {
  const index = [
    INDEX_HEADINGS,
    ...indexRows("Sunday dress", "body", { Bust: 0, Waist: 0, Hip: 0 }),
    ...indexRows("Sunday dress", "finished", { Bust: 3, Waist: 2, Hip: 4 }),
    ...indexRows("Tent dress", "body", { Bust: 0, Waist: 0, Hip: 0 }),
    ...indexRows("Tent dress", "finished", { Bust: 8, Waist: 8, Hip: 8 }),
  ];
  test("finds the pattern's tables", async () => {
    expect(await call("CUTSIZE", index, ROSA, "fitted dress", undefined, undefined, "Sunday dress")).toBe(16);
    expect(await call("CUTSIZE", index, ROSA, "fitted dress", index, undefined, "Sunday dress")).toBe(14);
    // In 12 the tent dress has 34 + 8 - 34 = 8, 26 1/2 + 8 - 28 = 6 1/2, 36 + 8 - 40 = 4.
    expect(await call("CUTSIZE", index, ROSA, "fitted dress", index, undefined, "Tent dress")).toBe(12);
  });
  test("answers a column of patterns", async () => {
    const patterns = column("Sunday dress", "Tent dress", "Parka");
    const answer = (await call("CUTSIZE", index, ROSA, "fitted dress", index, undefined, patterns)) as unknown[][];
    expect(answer[0]![0]).toBe(14);
    expect(answer[1]![0]).toBe(12);
    expectError(answer[2]![0], "#N/A", /Parka/);
  });
  test("refuses an unknown pattern", async () => {
    expectError(await call("CUTSIZE", index, ROSA, "shirt", undefined, undefined, "Parka"), "#N/A", /Parka/);
  });
});

describe("CUTSIZE", () => {
  test("refuses a garment that nobody knows, listing what is known", async () => {
    expectError(await cut(ROSA, "spacesuit"), "#VALUE!", /spacesuit/, /blouse/i, /trousers/i, /full skirt/i);
    expectError(await cut(ROSA, BLANK), "#VALUE!");
  });
  test("says by how much and which way a body is off the chart", async () => {
    expectError(await cut(bodyOf({ Bust: 34, Waist: 28, Hip: 53 }), "fitted dress"), "#N/A", /hip/i, /\b5\b/); // 53 - 48
    expectError(await cut(bodyOf({ Bust: 24 }), "shirt"), "#N/A", /bust/i, /6 1\/2|6\.5/); // 30 1/2 - 24
  });
  test("ignores an off-chart place that doesn't govern", async () => {
    expect(await cut(bodyOf({ Bust: 34, Waist: 28, Hip: 53 }), "shirt")).toBe(12);
  });
  test("refuses a body without the frame place, and a chart without it, naming it", async () => {
    expectRefusal(await cut(bodyOf({ Waist: 28, Hip: 40 }), "shirt"), /bust/i);
    expectRefusal(await cut(bodyOf({ Bust: BLANK, Waist: 28, Hip: 40 }), "shirt"), /bust/i);
    expectRefusal(
      await callWithZeros("CUTSIZE", MISSES, bodyOf({ Bust: BLANK, Waist: 28, Hip: 40 }), "shirt"),
      /bust/i,
    );
    const { Waist, Hip } = FIGURES;
    expectError(await call("CUTSIZE", wide({ Waist: Waist!, Hip: Hip! }, "in"), ROSA, "shirt"), "#N/A", /bust/i);
  });
  test("with another governing place missing says so in the note", async () => {
    const noHip = bodyOf({ Bust: 34, Waist: 28 });
    const answer = await cut(noHip, "fitted dress");
    if (isError(answer)) expectRefusal(answer, /hip/i);
    else expect(await call("CUTNOTE", MISSES, noHip, "fitted dress")).toMatch(/hip/i);
  });
  test("refuses negative and absurd measures", async () => {
    expectError(await cut(bodyOf({ Bust: -34 }), "shirt"), "#VALUE!");
    expectError(await cut(bodyOf({ Bust: 46182, Waist: 28, Hip: 40 }), "shirt"), "#VALUE!", /date/i);
    expectRefusal(await cut(bodyOf({ Bust: 3 }), "shirt"), /bust/i);
  });
  test("keeps sizes that look like numbers as they are printed", async () => {
    const odd = wide({ Bust: [34, 36, 38] }, "in", ["00", "02", "18W"]);
    expect(await call("CUTSIZE", odd, bodyOf({ Bust: 36 }), "shirt")).toBe("02");
    expect(await call("CUTSIZE", odd, bodyOf({ Bust: 38 }), "shirt")).toBe("18W");
  });
  test("never gives a bigger body a smaller size", async () => {
    const bodies = [
      ["Bust", "Waist", "Hip"],
      ...Array.from({ length: 60 }, (_, n) => [31 + n / 4, 24 + n / 4, 33 + n / 4]),
    ];
    for (const finished of [undefined, ROOMY]) {
      const answer = (await call("CUTSIZE", MISSES, bodies, "fitted dress", finished)) as unknown[][];
      const sizes = answer.map(([size]) => size).filter((size): size is number => typeof size === "number");
      expect(sizes.length).toBeGreaterThan(50);
      expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    }
  });
});

describe("CUTNOTE", () => {
  const note = async (body: unknown, garment: string, finished?: unknown) => {
    const answer = await call("CUTNOTE", MISSES, body, garment, finished);
    expect(answer).toBeTypeOf("string");
    return String(answer);
  };
  test("says that the hip of a top isn't known", async () => {
    expect(await note(ROSA, "shirt")).toMatch(/hip/i);
  });
  test("says when a blend is better", async () => {
    expect(await note(ROSA, "fitted dress")).toMatch(/blend/i);
    expect(await note(bodyOf({ Bust: 36, Waist: 28, Hip: 38 }), "fitted dress")).not.toMatch(/blend.*better/i);
  });
  test("names the ranges of published ease that the least ease was taken from", async () => {
    // Least ease at the bust: published values run 1 1/2 to 4 in.
    expect(await note(ROSA, "fitted dress", ROOMY)).toMatch(/1 1\/2.*4|1\.5.*4/);
  });
  test("says that jackets and coats have no least ease of their own", async () => {
    expect(await note(ROSA, "jacket", ROOMY)).toMatch(/jacket/i);
    expect(await note(ROSA, "coat", ROOMY)).toMatch(/coat/i);
  });
  test("answers a column for several people", async () => {
    const answer = (await call(
      "CUTNOTE",
      MISSES,
      [
        ["Bust", "Waist", "Hip"],
        [34, 28, 40],
        [36, 28, 38],
      ],
      "shirt",
    )) as unknown[][];
    expect(answer).toHaveLength(2);
    for (const [cell] of answer) expect(cell).toBeTypeOf("string");
  });
  test("is refused where there is no size", async () => {
    expectError(await call("CUTNOTE", MISSES, ROSA, "spacesuit"), "#VALUE!", /spacesuit/);
  });
});

describe("CUTSIZE of measured women", () => {
  // Sixty bodies of a public survey; at bust and hip every one inside the chart must have a size.
  // Source: 2012 Anthropometric Survey of US Army Personnel (ANSUR II), US Army Natick Soldier RD&E Center; the chest of
  // women is taken at the bust point, the buttock girth is the full hip.
  const lines = readFileSync(join(import.meta.dirname, "../figures/ansur2-test-bodies.csv"), "utf8")
    .trim()
    .split(/\r?\n/);
  const women = lines
    .map((line) => line.split(","))
    .filter(([sex]) => sex === "F")
    .map((cells) => ({ bust: Number(cells[6]), hip: Number(cells[8]) }));
  const inside = women.filter(({ bust, hip }) => bust >= 30.5 && bust <= 46 && hip >= 32.5 && hip <= 48);
  test("is a size for each, and never smaller for more bust and more hip", async () => {
    expect(inside.length).toBeGreaterThan(10);
    const bodies = [["Bust", "Hip"], ...inside.map(({ bust, hip }) => [bust, hip])];
    const answer = (await call("CUTSIZE", MISSES, bodies, "nightwear")) as unknown[][];
    const sizes = answer.map(([size]) => size as number);
    for (const size of sizes) expect(SIZES).toContain(size);
    inside.forEach((one, a) =>
      inside.forEach((two, b) => {
        if (one.bust >= two.bust && one.hip >= two.hip) expect(sizes[a]).toBeGreaterThanOrEqual(sizes[b]!);
      }),
    );
  });
});
