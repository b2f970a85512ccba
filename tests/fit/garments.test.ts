import { describe, expect, it } from "vitest";
import { garmentKey, garments } from "../../src/fit/garments";
import { garmentNames, readGarment } from "../../src/fit/read-garment";
import { readSettings } from "../../src/fit/read-settings";
import { sentence } from "../../src/words";

const name = (text: string) => {
  const found = readGarment(text);
  return found.ok ? found.value.name : sentence(found.problem);
};

describe("garments", () => {
  it("are the nineteen of the vocabulary", () => {
    expect(garments.map((garment) => garment.name)).toEqual([
      ...["top", "blouse", "shirt", "fitted dress", "loose dress", "vest", "jacket", "coat", "straight skirt"],
      ...["full skirt", "trousers", "shorts", "leggings", "nightwear", "men's shirt", "men's trousers"],
      ...["child's top", "child's dress", "child's trousers"],
    ]);
  });

  // "Choosing the Correct Pattern", sewing.org (read): bust for tops, dresses, jackets, vests; waist or hip below.
  it("are governed by the bust above and by waist or hip below", () => {
    const governs = Object.fromEntries(garments.map((garment) => [garment.name, garment.governs.map(([one]) => one)]));
    expect(governs).toMatchObject({
      shirt: ["bust"],
      "fitted dress": ["bust", "waist", "hip"],
      "loose dress": ["bust"],
      vest: ["bust"],
      jacket: ["bust"],
      "straight skirt": ["hip"],
      "full skirt": ["waist"],
      trousers: ["hip"],
      nightwear: ["bust", "hip"],
      "men's shirt": ["chest", "neck"],
      "men's trousers": ["waist", "hip"],
      "child's dress": ["chest", "height"],
      "child's trousers": ["hip", "height"],
    });
  });
});

describe("readGarment", () => {
  it.each([
    ["dress", "fitted dress"],
    ["Dresses", "fitted dress"],
    ["FITTED  DRESS", "fitted dress"],
    ["Loose dresses", "loose dress"],
    ["skirt", "straight skirt"],
    ["Skirts", "straight skirt"],
    ["blouses", "blouse"],
    ["trouser", "trousers"],
    ["short", "shorts"],
    ["Leggings", "leggings"],
    ["night wear", "nightwear"],
    ["Men’s shirts", "men's shirt"],
    ["mens shirt", "men's shirt"],
    ["men shirt", "men's shirt"],
    ["man's trousers", "men's trousers"],
    ["children's tops", "child's top"],
    ["childs dress", "child's dress"],
    ["child trousers", "child's trousers"],
    ["women's jackets", "jacket"],
    [" Woman’s blouse ", "blouse"],
    ["women shirts", "shirt"],
    ["Ladies coats", "coat"],
    ["Misses' dresses", "fitted dress"],
  ])("reads %j as %j", (text, wanted) => {
    expect(name(text)).toBe(wanted);
  });

  it("refuses an unknown word and says what is known", () => {
    expect(name("ballgown")).toMatch(/^"ballgown" is not a garment known here\. Known are top, blouse, .*trousers; /);
  });

  it("refuses a blank", () => {
    expect(name("  ")).toMatch(/blank/);
  });

  it("finds what the settings add or change first", () => {
    const settings = readSettings([
      ["Setting", "Garment", "Place", "Value", "Unit"],
      ["Like", "Tunic", "", "loose dress", ""],
      ["Governs", "trousers", "waist", "", ""],
      ["Governs", "romper", "bust or chest, hip", "", ""],
    ]);
    if (!settings.ok) throw new Error(sentence(settings.problem));
    const of = (text: string) => {
      const found = readGarment(text, settings.value);
      if (!found.ok) throw new Error(sentence(found.problem));
      return found.value;
    };
    expect(of("tunics")).toMatchObject({ name: "Tunic", governs: [["bust", "chest"]], bands: "dress" });
    expect(of("pants")).toMatchObject({ name: "trousers", governs: [["waist"]], frame: ["waist"] });
    expect(of("romper")).toMatchObject({ governs: [["bust", "chest"], ["hip"]], frame: ["bust", "chest"] });
    expect(garmentNames(settings.value)).toContain("romper");
  });
});

describe("garmentKey", () => {
  it("is its own key", () => {
    for (const garment of garments) expect(garmentKey(garment.key)).toBe(garment.key);
  });
});
