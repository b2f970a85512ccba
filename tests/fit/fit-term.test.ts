import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { easeBand, fitTerm } from "../../src/fit/fit-term";
import { readSettings } from "../../src/fit/read-settings";
import type { Result } from "../../src/problem";
import { sentence } from "../../src/words";

const said = <T>(result: Result<T>) => (result.ok ? result.value : sentence(result.problem));
const settingsOf = (...rows: (string | number)[][]) => {
  const settings = readSettings([["Setting", "Garment", "Place", "Value", "Unit"], ...rows]);
  if (!settings.ok) throw new Error(sentence(settings.problem));
  return settings.value;
};

describe("fitTerm", () => {
  // Ease-allowance chart of US home-sewing catalogues: from memory (one cell confirmed: a loose-fitting jacket, 6 1/4 in).
  it.each([
    [0, "dress", "bust", "close-fitting"],
    [2.875, "dress", "bust", "close-fitting"],
    [3, "dress", "bust", "fitted"],
    [4, "blouse", "bust", "fitted"],
    [4.125, "top", "bust", "semi-fitted"],
    [5, "vest", "bust", "semi-fitted"],
    [5.125, "shirt", "bust", "loose-fitting"],
    [8, "loose dress", "bust", "loose-fitting"],
    [8.125, "nightwear", "bust", "very loose-fitting"],
    [3.75, "jacket", "bust", "fitted"],
    [6.25, "jacket", "bust", "loose-fitting"],
    [10.125, "jacket", "bust", "very loose-fitting"],
    [5.25, "coat", "bust", "fitted"],
    [12, "coat", "bust", "loose-fitting"],
    [1.875, "skirt", "hip", "close-fitting"],
    [2, "trousers", "hip", "fitted"],
    [4, "shorts", "hip", "semi-fitted"],
    [6, "full skirt", "hip", "loose-fitting"],
    [30, "skirt", "hip", "very loose-fitting"],
  ])("calls %d in of ease on a %s at the %s %s", (ease, garment, place, term) => {
    expect(said(fitTerm(ease, garment, place))).toBe(term);
  });

  it("rounds to 1/8 in first, ties upward, so that no ease falls into a gap between bands", () => {
    expect(said(fitTerm(2.93, "dress", "bust"))).toBe("close-fitting");
    expect(said(fitTerm(2.9375, "dress", "bust"))).toBe("fitted");
    expect(said(fitTerm(8.05, "dress", "bust"))).toBe("loose-fitting");
  });

  it("reads centimetres", () => {
    expect(said(fitTerm(7.62, "dress", "bust", { unit: "cm" }))).toBe("fitted");
    expect(said(fitTerm(7.2, "dress", "bust", { unit: "cm" }))).toBe("close-fitting");
  });

  it("says enough or tight where no bands are printed", () => {
    expect(said(fitTerm(1, "dress", "waist"))).toBe("enough");
    expect(said(fitTerm(0.9, "dress", "waist"))).toBe("tight");
    expect(said(fitTerm(2, "dress", "hip"))).toBe("enough");
    expect(said(fitTerm(2.4, "men's shirt", "chest"))).toBe("tight");
  });

  it("calls ease below zero smaller than the body, but not a sixteenth that rounds to nothing", () => {
    expect(said(fitTerm(-1, "leggings", "hip"))).toBe("smaller than the body: stretch knits only");
    expect(said(fitTerm(-0.125, "dress", "bust"))).toBe("smaller than the body: stretch knits only");
    expect(said(fitTerm(-0.0625, "dress", "bust"))).toBe("close-fitting");
  });

  it("refuses ease in no band, an unknown garment, and a place that nothing is known of", () => {
    expect(said(fitTerm(2, "jacket", "bust"))).toMatch(/No fit word covers 2 in of ease at the bust/);
    expect(said(fitTerm(2, "tent", "bust"))).toMatch(/not a garment/);
    expect(said(fitTerm(2, "dress", "neck"))).toMatch(/No least ease is known for the neck/);
    expect(said(fitTerm(NaN, "dress", "bust"))).toMatch(/NaN/);
  });

  it("goes by her own bands and least ease", () => {
    const settings = settingsOf(
      ["Close-fitting", "jacket", "bust", "0 to 3 1/2", "in"],
      ["Fitted", "", "waist", "2 to 6", "cm"],
      ["Least ease", "men's shirt", "neck", 0.5, "in"],
    );
    expect(said(fitTerm(2, "jacket", "bust", { settings }))).toBe("close-fitting");
    expect(said(fitTerm(6, "skirt", "waist", { settings, unit: "cm" }))).toBe("fitted");
    expect(said(fitTerm(0.5, "men's shirt", "neck", { settings }))).toBe("enough");
  });

  it("goes by the least ease at a child's bust, where no bands are printed", () => {
    expect(said(fitTerm(2.5, "child's top", "bust"))).toBe("enough");
    expect(said(fitTerm(2.25, "child's top", "bust"))).toBe("tight");
  });

  it("gives the bound of a band without an end to the lower band, also where she has no lower one", () => {
    const settings = settingsOf(["Very loose-fitting", "men's shirt", "chest", "over 8", "in"]);
    expect(said(fitTerm(8.125, "men's shirt", "chest", { settings }))).toBe("very loose-fitting");
    expect(said(fitTerm(8, "men's shirt", "chest", { settings }))).toMatch(/^No fit word covers 8 in of ease/);
  });

  it("refuses what is no number as such", () => {
    expect(said(fitTerm(NaN, "dress", "bust"))).toBe('"NaN" is not an ease.');
  });

  it("never says a closer word for more ease", () => {
    const order = ["close-fitting", "fitted", "semi-fitted", "loose-fitting", "very loose-fitting"];
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (ease, more) => {
          const words = [fitTerm(ease, "dress", "bust"), fitTerm(ease + more, "dress", "bust")].map((word) =>
            order.indexOf(String(said(word))),
          );
          expect(words[0]).toBeGreaterThanOrEqual(0);
          expect(words[1]).toBeGreaterThanOrEqual(words[0]!);
        },
      ),
    );
  });
});

describe("easeBand", () => {
  it("says the band in words", () => {
    expect(said(easeBand("dress", "bust", "fitted"))).toBe("3 to 4 in");
    expect(said(easeBand("blouse", "bust", "Close-fitting"))).toBe("0 to 2 7/8 in");
    expect(said(easeBand("coat", "bust", "very loose fitting"))).toBe("over 12 in");
    expect(said(easeBand("skirt", "hip", "loose fit"))).toBe("4 1/8 to 6 in");
  });

  it("converts to centimetres, to the millimetre", () => {
    expect(said(easeBand("dress", "bust", "fitted", { unit: "cm" }))).toBe("7.6 to 10.2 cm");
  });

  it("refuses a word that is none, and one without a band", () => {
    expect(said(easeBand("dress", "bust", "snug"))).toMatch(/"snug" is not a fit word/);
    expect(said(easeBand("jacket", "bust", "close-fitting"))).toMatch(/There is no band "close-fitting"/);
    expect(said(easeBand("dress", "hip", "fitted"))).toMatch(/There is no band/);
    expect(said(easeBand("dress", "bust", " "))).toMatch(/blank/);
  });

  it("says her own band in her own figures", () => {
    const settings = settingsOf(["Fitted", "dress", "bust", "6 to 9", "cm"]);
    expect(said(easeBand("dress", "bust", "fitted", { settings, unit: "cm" }))).toBe("6 to 9 cm");
  });

  it("says her own band as she wrote it, and reads a fit word with or without its hyphen", () => {
    const settings = settingsOf(["Fitted", "dress", "bust", "3 1/16 to 4 3/16", "in"]);
    expect(said(easeBand("dress", "bust", "fitted", { settings }))).toBe("3 1/16 to 4 3/16 in");
    expect(said(easeBand("dress", "bust", "semifitted"))).toBe("4 1/8 to 5 in");
  });

  it("says what it doesn't know", () => {
    expect(said(easeBand("tent", "bust", "fitted"))).toMatch(/^"tent" is not a garment known here\./);
    expect(said(easeBand("dress", "bust", " "))).toBe("This is blank: a fit word, such as fitted, is needed here.");
    expect(said(easeBand("dress", "bust", " snug "))).toBe(
      '"snug" is not a fit word known here. Known are close-fitting, fitted, semi-fitted, loose-fitting, very loose-fitting.',
    );
  });
});
