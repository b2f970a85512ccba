import { describe, expect, test } from "vitest";
import { cutSize } from "../../functions/fit";
import { BLANK, caller, column, errorCell, indexHeadings, misses, notAvailable, value } from "./call";

const CUTSIZE = caller("CUTSIZE", cutSize, 7);

const body = [["Bust", 34], ["Waist", 28], ["Hip", 40]]; // prettier-ignore
/** The misses chart with so much more at bust, waist and hip. */
const finished = (bust: number, waist: number, hip: number): unknown[][] => {
  const [headings, , ...rows] = misses();
  const more = [bust, waist, hip];
  return [
    headings!,
    ...rows.slice(0, 3).map((row, at) => row.map((cell) => (typeof cell === "number" ? cell + more[at]! : cell))),
  ];
};
const people = [
  ["Name", "Bust", "Waist", "Hip"],
  ["Ada", 34, 28, 40],
  ["Berta", 36, 28, 38],
  ["Clara", 30.5, 23, 32.5],
];

describe("CUTSIZE", () => {
  // Common practice: 34-28-40 is 12 at the bust, 14 at the waist, 16 at the hip of the misses chart.
  test("gives the one size to cut, as a number where that loses nothing", async () => {
    expect(await CUTSIZE([misses(), body, "shirt"])).toBe(12);
    expect(await CUTSIZE([misses(), body, "Fitted dress"])).toBe(16);
    expect(await CUTSIZE([misses(), body, "dress", finished(3, 2, 4)])).toBe(14);
    expect(await CUTSIZE([misses(), [["Bust", 36], ["Waist", 28], ["Hip", 38]], "dress", finished(8, 8, 8)])).toBe(14); // prettier-ignore
  });

  test("answers a column for many bodies, each in its row", async () => {
    expect(await CUTSIZE([misses(), people, "dress"])).toEqual([[16], [14], [6]]);
    expect(await CUTSIZE([misses(), people, "dress", finished(3, 2, 4)])).toEqual([[14], [14], [6]]);
  });

  test("keeps a blank row blank and an error or a problem in its own row", async () => {
    const rows = [
      ...people,
      [BLANK, BLANK, BLANK, BLANK],
      ["Dora", 34, errorCell("#DIV/0!"), 40],
      ["Elsa", 34, "thin", 40],
      ["Fanny", 34, BLANK, 40],
      ["Greta", 80, 70, 90],
      ["Hanna", 38, 30, 40],
    ];
    for (const blanks of [null, 0] as const)
      expect(await CUTSIZE([misses(), rows, "dress"], blanks)).toEqual([
        [16], [14], [6], [""],
        [{ error: "#DIV/0!" }],
        [value(`"thin" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`)],
        [value("The waist of Fanny isn't measured, and this garment is cut by it: fill it in.")],
        [expect.objectContaining({ error: "#VALUE!" })],
        [16],
      ]); // prettier-ignore
  });

  test("picks a person by heading, one or a column of them", async () => {
    const sheet = [["Measurement", "Unit", "Ada", "Berta"], ["Bust", "in", 34, 36], ["Waist", "in", 28, 28], ["Hip", "in", 40, 38]]; // prettier-ignore
    expect(await CUTSIZE([misses(), sheet, "shirt", BLANK, "Berta"])).toBe(14);
    expect(await CUTSIZE([misses(), sheet, "shirt", BLANK, column("berta", BLANK, "Ada")])).toEqual([[14], [""], [12]]);
    expect(await CUTSIZE([misses(), sheet, "shirt"])).toEqual([[12], [14]]);
    expect(await CUTSIZE([misses(), sheet, "shirt", BLANK, "Cora"])).toMatchObject({ error: "#N/A" });
  });

  test("takes a garment for each body, or many garments for one", async () => {
    expect(await CUTSIZE([misses(), people, column("shirt", "skirt", "dress")])).toEqual([[12], [14], [6]]);
    expect(await CUTSIZE([misses(), body, column("shirt", "full skirt", BLANK, "tent")])).toEqual([
      [12],
      [14],
      [""],
      [expect.objectContaining({ error: "#VALUE!" })],
    ]);
    expect(await CUTSIZE([misses(), people, column("shirt", "skirt")])).toMatchObject({ error: "#VALUE!" });
  });

  test("reads measures with their own unit, and as text", async () => {
    expect(await CUTSIZE([misses(), [["Bust", "86,36 cm"]], "shirt"])).toBe(12);
    expect(await CUTSIZE([misses(), [["Bust", "34 in"], ["Waist", `28"`], ["Hip", "101.6 cm"]], "dress"])).toBe(16); // prettier-ignore
    expect(await CUTSIZE([misses(), [["Bust", "cm", 86.36]], "shirt"])).toBe(12);
    expect(await CUTSIZE([misses(), [["Bust", 86.36]], "shirt"])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringContaining("cm against inches?"),
    });
  });

  test("looks patterns up in the pattern index, one row each", async () => {
    const rows = (pattern: string, kind: string, place: string, sizes: readonly string[], figures: readonly number[]) =>
      sizes.map((size, at) => [pattern, kind, "in", "", "", "", "", "", place, size, figures[at]!, figures[at]!]);
    const index = [
      indexHeadings,
      ...rows("Camp shirt", "body", "bust", ["S", "M", "L"], [33, 36, 40]),
      ...rows("Camp shirt", "finished", "bust", ["S", "M", "L"], [34, 40, 44]),
      ...rows("Wrap skirt", "body", "hip", ["10", "12", "14"], [36, 38, 40]),
    ];
    expect(
      await CUTSIZE([index, body, column("shirt", "skirt"), BLANK, BLANK, column("Camp shirt", "Wrap skirt")]),
    ).toEqual([["S"], [14]]);
    // A pattern without finished measurements is answered as without them.
    expect(
      await CUTSIZE([index, body, column("shirt", "skirt"), index, BLANK, column("camp shirt", "Wrap skirt")]),
    ).toEqual([["M"], [14]]);
    expect(await CUTSIZE([index, body, "shirt", BLANK, BLANK, "Pinafore"])).toMatchObject({ error: "#N/A" });
    expect(await CUTSIZE([index, body, "shirt"])).toMatchObject({ error: "#VALUE!" });
  });

  test("goes by her own settings", async () => {
    const settings = [
      ["Setting", "Garment", "Place", "Value", "Unit"],
      ["Governs", "trousers", "waist", BLANK, BLANK],
    ];
    expect(await CUTSIZE([misses(), body, "trousers"])).toBe(16);
    expect(await CUTSIZE([misses(), body, "trousers", BLANK, BLANK, BLANK, settings])).toBe(14);
    const fits = [
      ["Garment", "Place", "Measurement", "Unit"],
      ["shirt", "bust", 39, "in"],
    ];
    expect(await CUTSIZE([misses(), body, "shirt", finished(3, 2, 4), BLANK, BLANK, fits])).toBe(14);
    const wrong = [
      ["Setting", "Garment", "Place", "Value", "Unit"],
      ["Leest ease", "", "bust", 3, "in"],
    ];
    expect(await CUTSIZE([misses(), body, "shirt", BLANK, BLANK, BLANK, wrong])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/"leest ease" in row 1 of the settings/),
    });
    const broken = [
      ["Setting", "Garment", "Place", "Value", "Unit"],
      ["Least ease", "", "bust", errorCell("#REF!"), "in"],
    ];
    expect(await CUTSIZE([misses(), body, "shirt", BLANK, BLANK, BLANK, broken])).toEqual({ error: "#REF!" });
  });

  test("says by how much a body is off the chart", async () => {
    expect(await CUTSIZE([misses(), [["Hip", 52]], "skirt"])).toEqual(
      notAvailable("52 in at the hip is 4 in above this chart, which ends at size 24 (48 in)."),
    );
  });

  test("names what is blank", async () => {
    expect(await CUTSIZE([misses(), body, BLANK])).toEqual(
      value("This is blank: a garment, such as shirt, is needed here."),
    );
    expect(await CUTSIZE([misses(), [[BLANK]], "shirt"])).toMatchObject({ error: "#VALUE!" });
    expect(await CUTSIZE([[[BLANK]], body, "shirt"])).toMatchObject({ error: "#VALUE!" });
  });

  test("asks for a table's headings", async () => {
    expect(await CUTSIZE([misses().slice(1), body, "shirt"])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringContaining("[#All]"),
    });
  });

  test("doesn't cross two body tables of one pattern in silence", async () => {
    const table = (sizes: readonly string[], bust: readonly number[]) =>
      ["bust", "hip"].flatMap((place) =>
        sizes.map((size, at) => ["Camp shirt", "body", "in", "", "", "", "", "", place, size, bust[at]!, bust[at]!]),
      );
    const misses = table(["10", "12", "14"], [32.5, 34, 36]);
    // The measure lies within both tables, so nothing says which of the two is meant.
    const petite = [indexHeadings, ...misses, ...table(["10P", "12P", "14P"], [32.5, 34, 36])];
    expect(await CUTSIZE([petite, [["Bust", 34]], "shirt", BLANK, BLANK, "Camp shirt"])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/10, 12, 14.*10P, 12P, 14P/),
    });
    // One table a back waist 1 in shorter, as miss petite has it (Choosing the Correct Pattern, sewing.org, read).
    const long = (sizes: readonly string[], figure: number) =>
      sizes.map((size) => ["Camp shirt", "body", "in", "", "", "", "", "", "back waist length", size, figure, figure]);
    const [regular, small] = [["10", "12", "14"], ["10P", "12P", "14P"]] as const; // prettier-ignore
    const told = [
      indexHeadings,
      ...misses,
      ...long(regular, 16.25),
      ...table(small, [32.5, 34, 36]),
      ...long(small, 15.25),
    ];
    const short = [["Bust", 34], ["Back waist length", 15.5]]; // prettier-ignore
    expect(await CUTSIZE([told, short, "shirt", BLANK, BLANK, "Camp shirt"])).toBe("12P");
    expect(await CUTSIZE([told, [["Bust", 34]], "shirt", BLANK, BLANK, "Camp shirt"])).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/size 12 by .* and size 12P by .*Measure the back waist length/),
    });
    const womens = [indexHeadings, ...misses, ...table(["18W", "20W", "22W"], [40, 42, 44])];
    expect(await CUTSIZE([womens, [["Bust", 42]], "shirt", BLANK, BLANK, "Camp shirt"])).toBe("20W");
    expect(await CUTSIZE([womens, [["Bust", 38]], "shirt", BLANK, BLANK, "Camp shirt"])).toMatchObject({
      error: "#N/A",
    });
  });
});
