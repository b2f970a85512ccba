import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/chart/cell";
import { readSettings } from "../../src/fit/read-settings";
import { ruleFor, settingLength } from "../../src/fit/settings";
import { sentence } from "../../src/words";

const HEADINGS = ["Setting", "Garment", "Place", "Value", "Unit"];
const settingsOf = (rows: (string | number | null)[][]) => {
  const settings = readSettings(rows);
  if (!settings.ok) throw new Error(sentence(settings.problem));
  return settings.value;
};
const refused = (...rows: (string | number | null)[][]) => {
  const settings = readSettings([HEADINGS, ...rows]);
  return settings.ok ? "read" : sentence(settings.problem);
};

describe("readSettings", () => {
  it("reads a table with a title above, headings in any order and blank rows", () => {
    const settings = settingsOf([
      ["My settings", null, null, null, null],
      ["Unit", "Value", "Place", "Garment", "Setting", "Why"] as string[],
      ["in", 3, "bust", "Shirts", "Least ease", "I like room"],
      [null, null, null, null, null, null],
      ["", "2 1/2 in", "High bust", "", "least  EASE", ""],
    ]);
    expect(settings.lengths).toEqual([
      { setting: "least ease", garment: "shirt", place: "bust", person: null, value: 3, unit: "in" },
      { setting: "least ease", garment: null, place: "highBust", person: null, value: 2.5, unit: "in" },
    ]);
  });

  it("takes a bare number in inches unless a row Units says otherwise", () => {
    const rows = [HEADINGS, ["Least ease", "", "hip", 5, ""], ["Units", "", "", "cm", ""]];
    expect(settingLength(settingsOf(rows.slice(0, 2)), "least ease", { place: "hip" }, "in")).toBe(5);
    expect(settingLength(settingsOf(rows), "least ease", { place: "hip" }, "cm")).toBe(5);
  });

  it("leaves a row without a value alone: our default stands", () => {
    expect(
      settingsOf([HEADINGS, ["Least ease", "", "bust", "", "in"], ["Threshold", "", "", null, ""]]).lengths,
    ).toEqual([]);
  });

  it("reads garments that fit from a table without a Setting column", () => {
    const settings = settingsOf([
      ["Name", "Garment", "Place", "Measurement", "Unit", "Person"],
      ["Blue linen", "shirt", "bust", 39.5, "in", "Ada"],
    ]);
    expect(settings.lengths).toEqual([
      { setting: "my garment", garment: "shirt", place: "bust", person: "ada", value: 39.5, unit: "in" },
    ]);
  });

  it("makes garments of Like and Governs, whatever their order", () => {
    const { garments } = settingsOf([
      HEADINGS,
      ["Governs", "tunic", "bust or chest; hip", "", ""],
      ["Like", "Tunic", "", "loose dress", ""],
      ["Governs", "romper", "", "hip, height", ""],
      ["Governs", "shirt", "waist", "", ""],
    ]);
    expect(garments.get("tunic")).toEqual({
      name: "Tunic",
      key: "tunic",
      frame: ["bust", "chest"],
      frameTakes: "first",
      governs: [["bust", "chest"], ["hip"]],
      girths: ["bust", "chest", "waist", "hip"],
      edges: 4,
      bands: "dress",
      cloth: "woven",
      ownEase: true,
    });
    expect(garments.get("romper")).toEqual({
      name: "romper",
      key: "romper",
      frame: ["hip"],
      frameTakes: "first",
      governs: [["hip"], ["height"]],
      girths: ["hip"],
      edges: 4,
      bands: null,
      cloth: "woven",
      ownEase: true,
    });
    expect(garments.get("shirt")).toMatchObject({ frame: ["waist"], frameTakes: "first", governs: [["waist"]] });
  });

  it("reads words, bands, counts and the frame", () => {
    const settings = settingsOf([
      HEADINGS,
      ["Between sizes", "trousers", "", "Smaller", ""],
      ["High bust row", "", "", "bust", ""],
      ["Edges", "leggings", "", 2, ""],
      ["Frame", "", "high bust", "", ""],
      ["Loose-fitting", "dress", "bust", "5 to 9", "in"],
      ["very loose-fitting", "dress", "bust", "over 9", "in"],
    ]);
    expect(settings.words.map(({ setting, value }) => [setting, value])).toEqual([
      ["between sizes", "smaller"],
      ["high bust row", "bust"],
      ["edges", 2],
      ["frame", "highBust"],
    ]);
    expect(settings.bands.map(({ value }) => value)).toEqual([
      { low: 5, high: 9 },
      { low: 9, high: null },
    ]);
  });

  // A unit beside a figure wins over the row's, as everywhere; 8 to 10 cm taken for inches would be 20 to 25 cm.
  it("takes a band in the unit that is written beside its ends", () => {
    const band = (value: string, unit = "in") => {
      const { value: ends, unit: own } = settingsOf([HEADINGS, ["Fitted", "shirt", "bust", value, unit]]).bands[0]!;
      return [ends.low, ends.high, own];
    };
    expect(band("8 to 10 cm")).toEqual([8, 10, "cm"]);
    expect(band("8 cm to 10")).toEqual([8, 10, "cm"]);
    expect(band("8 cm - 10 cm", "")).toEqual([8, 10, "cm"]);
    expect(band("Over 20 cm")).toEqual([20, null, "cm"]);
    expect(band("3–4 1/2 in", "cm")).toEqual([3, 4.5, "in"]);
    expect(band("3 to 4", "cm")).toEqual([3, 4, "cm"]);
    // One figure twice is a band too: exactly that much.
    expect(band("3 to 3")).toEqual([3, 3, "in"]);
    expect(band("-1 to 2")).toEqual([-1, 2, "in"]);
    for (const value of ["3 in to 10 cm", "1 to 2 yd", "over 1 m", "1/2-1-1/2", "3-4-5", "3 to over 4", "it is over 8"])
      expect(refused(["Fitted", "shirt", "bust", value, "in"])).toBe(
        `"${value}" in row 1 of the settings (fitted) can't be used: it wants a band such as 3 to 4, or over 8.`,
      );
  });

  it("refuses what it doesn't know and names the row", () => {
    expect(refused(["Leest ease", "", "bust", 3, "in"])).toMatch(
      /^"leest ease" in row 1 of the settings is not a setting/,
    );
    expect(refused(["Least ease", "", "bsut", 3, "in"])).toMatch(/^"bsut" in row 1 .* wants a place/);
    expect(refused(["Edges", "", "", 4, ""], ["Least ease", "tent", "bust", 3, "in"])).toMatch(
      /^"tent" is not a garment/,
    );
    expect(refused(["Least ease", "", "bust", "plenty", "in"])).toMatch(/^"plenty" in row 1 .* wants a length/);
    expect(refused(["Least ease", "", "bust", 3, "yd"])).toMatch(/in or cm/);
    expect(refused(["Least ease", "", "", 3, "in"])).toMatch(/a place beside it/);
    expect(refused(["Between sizes", "", "", "both", ""])).toMatch(/closest or larger or smaller/);
    expect(refused(["Edges", "", "", 0, ""])).toMatch(/a count of seam edges/);
    expect(refused(["Fitted", "", "bust", "3", ""])).toMatch(/a band such as 3 to 4/);
    expect(refused(["Threshold", "", "", -2, "in"])).toMatch(/not below zero/);
    expect(refused(["Step", "", "", 0, "in"])).toMatch(/a step above zero/);
    expect(refused(["Frame", "", "hip", "", ""])).toMatch(/bust or high bust/);
    expect(refused(["Governs", "", "hip", "", ""])).toMatch(/a garment beside it/);
    expect(refused(["Least ease", "", "bust", 45999, "in"])).toMatch(/Excel has made a date/);
    expect(refused(["", "shirt", "bust", 3, "in"])).toMatch(/Row 1 of the settings doesn't say which setting/);
  });

  it("takes for the headings the first row that can be them, and leaves what stands above alone", () => {
    const table = [HEADINGS, ["Threshold", "", "", 3, "in"]];
    const above: Cell[][] = [
      ["Unit", "Value"],
      ["Garment", "Value"],
      ["Place", "Measure"],
      ["Setting", "Garment", "Place"],
      ["Mine", "", "", { error: "#REF!" }, { error: "#REF!" }],
    ];
    for (const title of above)
      expect(readSettings([title, ...table])).toMatchObject({ value: { lengths: [{ value: 3 }] } });
    expect(readSettings([...above, ...table])).toMatchObject({ value: { lengths: [{ setting: "threshold" }] } });
    expect(
      readSettings([
        ["Setting", "Value"],
        ["Threshold", 3],
      ]),
    ).toMatchObject({ value: { lengths: [{ value: 3 }] } });
  });

  it("refuses a table without its headings", () => {
    const settings = readSettings([["Least ease", "shirt", "bust", 3, "in"]]);
    expect(settings.ok ? "" : sentence(settings.problem)).toMatch(/no headings.*\[#All\]/);
  });

  it("names row, word and what is wanted, in whole sentences", () => {
    const wants = (text: string, setting: string, wanted: string) =>
      `"${text}" in row 1 of the settings (${setting}) can't be used: it wants ${wanted}.`;
    expect(refused(["Units", "", "", "ells", ""])).toBe(wants("ells", "unit", "in or cm"));
    expect(refused(["Units", "", "", "", "mm"])).toBe(wants("mm", "unit", "in or cm"));
    expect(refused(["Least ease", "", "bust", 3, "ft"])).toBe(wants("ft", "unit", "in or cm"));
    expect(refused(["Least ease", "", "bust", 3, "ells"])).toBe(wants("ells", "unit", "in or cm"));
    expect(refused(["Fitted", "", "", "3 to 4", "in"])).toBe(
      wants("3 to 4", "fitted", "a place beside it, such as bust"),
    );
    expect(refused(["Fitted", "", "bust", "4 to 3", ""])).toBe(
      wants("4 to 3", "fitted", "a band such as 3 to 4, or over 8"),
    );
    expect(refused(["My garment", "", "bust", 38, "in"])).toBe(
      wants("38", "my garment", "a garment beside it, such as shirt"),
    );
    expect(refused(["My garment", "shirt", "", 38, "in"])).toBe(
      wants("38", "my garment", "a place beside it, such as bust"),
    );
    expect(refused(["Growth", "", "", "-1", "in"])).toBe(wants("-1", "growth", "a length that is not below zero"));
    expect(refused(["Edges", "", "", 2.5, ""])).toBe(wants("2.5", "edges", "a count of seam edges, such as 4"));
    expect(refused(["Edges", "", "", 25, ""])).toBe(wants("25", "edges", "a count of seam edges, such as 4"));
    expect(refused(["Frame", "", "", "hip", ""])).toBe(
      wants("hip", "frame", "bust or high bust, or a garment beside it"),
    );
    expect(refused(["Frame", "", "hip", "", ""])).toBe(
      wants("hip", "frame", "bust or high bust, or a garment beside it"),
    );
    expect(refused(["Like", "", "", "shirt", ""])).toBe("Row 1 of the settings (like) lacks a garment beside it.");
    expect(refused(["Governs", "", "hip", "", ""])).toBe("Row 1 of the settings (governs) lacks a garment beside it.");
    expect(refused(["Governs", "tunic", " , ", "", ""])).toBe(
      "Row 1 of the settings (governs) lacks the places that govern it, such as waist, hip.",
    );
    expect(refused(["Governs", "tunic", "bust, hpi", "", ""])).toMatch(/^"hpi" in row 1 of the settings/);
    expect(refused(["Like", "tunic", "", "tent", ""])).toMatch(
      /^"tent" is not a garment known here\. Known are top, blouse/,
    );
  });

  it("gives a garment to everybody: a person beside it is refused", () => {
    const settings = readSettings([
      [...HEADINGS, "Person"],
      ["Like", "tunic", "", "loose dress", "", "Ada"],
    ]);
    expect(settings.ok ? "read" : sentence(settings.problem)).toBe(
      `"Ada" in row 1 of the settings (like) can't be used: it wants no person: this setting holds for everybody.`,
    );
  });

  it("takes a shop's step in the cloth's unit, other lengths in the body's", () => {
    const of = (...row: (string | number)[]) => settingsOf([HEADINGS, row]).lengths[0]!;
    // 1/8 yd = 4 1/2 in = 11.43 cm; 0.1 m = 10 cm.
    expect(of("Step", "", "", "1/8", "yd")).toMatchObject({ value: 11.43, unit: "cm" });
    expect(of("Step", "", "", 0.1, "m")).toMatchObject({ value: 10, unit: "cm" });
    expect(of("Step", "", "", "1/4 yd", "in")).toMatchObject({ value: 22.86, unit: "cm" });
    expect(of("Step", "", "", 0.5, "")).toMatchObject({ value: 0.5, unit: "in" });
    expect(of("Step", "", "", 2, "cm")).toMatchObject({ value: 2, unit: "cm" });
    expect(of("Least ease", "", "bust", "6 cm", "in")).toMatchObject({ value: 6, unit: "cm" });
    expect(of("Least ease", "", "bust", "2 in", "cm")).toMatchObject({ value: 2, unit: "in" });
  });

  it("takes the noughts of blank cells for blanks, but a nought beside a setting for nought", () => {
    const settings = settingsOf([
      [...HEADINGS, "Person"],
      ["Least ease", 0, "bust", 0, 0, 0],
      [0, 0, 0, 0, 0, 0],
    ]);
    expect(settings.lengths).toEqual([
      { setting: "least ease", garment: null, place: "bust", person: null, value: 0, unit: "in" },
    ]);
  });

  it("knows other words for its settings, and hands on a spreadsheet error in a column it reads", () => {
    const settings = settingsOf([
      HEADINGS,
      ["High bust threshold", "", "", 2, ""],
      ["Frame place", "", "", "high bust", ""],
      ["Between size", "", "", "larger", ""],
      ["Seam edges", "", "", 6, ""],
      ["My garments", "shirt", "bust", 39, ""],
      ["Unit", "", "", "cm", ""],
      ["High bust row", "", "", "HighBust", ""],
    ]);
    expect(settings.lengths.map(({ setting, unit }) => [setting, unit])).toEqual([
      ["threshold", "cm"],
      ["my garment", "cm"],
    ]);
    expect(settings.words.map(({ setting, value }) => [setting, value])).toEqual([
      ["frame", "highBust"],
      ["between sizes", "larger"],
      ["edges", 6],
      ["high bust row", "high bust"],
    ]);
    const broken = (row: Cell[]) => readSettings([[...HEADINGS, "Why"], row]);
    expect(broken(["Least ease", "", "bust", { error: "#REF!" }, "in", ""])).toMatchObject({
      problem: { code: "errorCell", details: { error: "#REF!" } },
    });
    expect(broken(["Least ease", "", "bust", 3, "in", { error: "#REF!" }])).toMatchObject({ ok: true });
  });

  it("lets least ease be below zero: a knit may be smaller than the body", () => {
    expect(settingsOf([HEADINGS, ["Least ease", "leggings", "hip", -2, "in"]]).lengths[0]?.value).toBe(-2);
  });
});

describe("ruleFor", () => {
  it("prefers the row for the person, then the garment, then the place, then the lower one", () => {
    const settings = settingsOf([
      [...HEADINGS, "Person"],
      ["Least ease", "shirt", "bust", 3, "in", ""],
      ["Least ease", "", "bust", 2, "in", ""],
      ["Least ease", "", "bust", 2.25, "in", ""],
      ["Least ease", "", "bust", 4, "in", "Ada"],
    ]);
    const value = (garment: string, person: string | null) =>
      ruleFor(settings.lengths, "least ease", { garment, place: "bust", person })?.value;
    expect(value("shirt", null)).toBe(3);
    expect(value("coat", null)).toBe(2.25);
    expect(value("shirt", "ADA ")).toBe(4);
    expect(ruleFor(settings.lengths, "least ease", { place: "hip" })).toBeUndefined();
  });
});
