import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { garments } from "../../src/fit/garments";
import { suggestedGarment } from "../../src/fit/suggest-garment";
import { chartOf, settingsOf } from "./bodies";

const withPlaces = (...places: readonly string[]) => [
  chartOf("body", "in", ["8", "10"], Object.fromEntries(places.map((place) => [place, [30, 32]]))),
];
const dressChart = withPlaces("bust", "waist", "hip", "backWaistLength");
const skirtChart = withPlaces("waist", "hip");
const childChart = withPlaces("chest", "waist", "height");
const manChart = withPlaces("neck", "chest", "waist");

describe("suggestedGarment", () => {
  it.each([
    ["Wrap skirt", skirtChart, "straight skirt"],
    ["Full skirt", skirtChart, "full skirt"],
    ["Circle skirt", skirtChart, "full skirt"],
    ["Camp shirt", dressChart, "shirt"],
    ["Camp shirt with two pockets", dressChart, "shirt"],
    ["CAMP SHIRTS", dressChart, "shirt"],
    ["Choir gown", dressChart, "loose dress"],
    ["Shirt-dress", dressChart, "fitted dress"],
    ["Dress shirt", dressChart, "shirt"],
    ["Loose dress, two lengths", dressChart, "loose dress"],
    ["Evening coat", dressChart, "coat"],
    ["Choir trousers", skirtChart, "trousers"],
    ["Pyjamas", dressChart, "nightwear"],
  ])("goes by the name: %s", (name, charts, garment) => {
    expect(suggestedGarment(name, charts)).toBe(garment);
  });

  it.each([
    ["Child's pinafore", childChart, "child's dress"],
    ["Pinafore", childChart, "child's dress"],
    ["Pinafore", dressChart, "loose dress"],
    ["Girls' wrap dress", withPlaces("chest", "waist", "hip"), "child's dress"],
    ["Boy’s shorts", withPlaces("waist", "hip"), "child's trousers"],
    ["Men's camp shirt", withPlaces("chest"), "men's shirt"],
    ["Camp shirt", manChart, "men's shirt"],
    ["Men’s trousers", skirtChart, "men's trousers"],
    ["Women's shirt", dressChart, "shirt"],
  ])("takes a child's or a man's where name or chart say so: %s", (name, charts, garment) => {
    expect(suggestedGarment(name, charts)).toBe(garment);
  });

  it.each([
    ["waist and hip", skirtChart, "straight skirt"],
    ["waist, hip and inside leg", withPlaces("waist", "hip", "insideLeg"), "trousers"],
    ["the waist alone", withPlaces("waist"), "full skirt"],
    ["bust, waist and hip", dressChart, "top"],
    ["chest and height", childChart, "child's top"],
    ["neck and chest", manChart, "men's shirt"],
    ["the chest alone", withPlaces("chest"), "top"],
  ])("goes by the places of the chart where the name names nothing: %s", (_, charts, garment) => {
    expect(suggestedGarment("Number seven", charts)).toBe(garment);
  });

  it("goes by the places where the chart can't size what the name names", () => {
    expect(suggestedGarment("Shirt and skirt set", dressChart)).toBe("straight skirt");
    expect(suggestedGarment("The skirt to the camp shirt", skirtChart)).toBe("straight skirt");
  });

  it("knows her own garments, and says nothing where nothing tells", () => {
    const settings = settingsOf(["Like", "cape", "", "coat", "", ""]);
    expect(suggestedGarment("Hooded cape", dressChart, settings)).toBe("cape");
    expect(suggestedGarment("Hooded cape", [])).toBeUndefined();
    expect(suggestedGarment("", withPlaces("head"))).toBeUndefined();
  });

  it("names a known garment or none, whatever the pattern is called", () => {
    const names = garments.map(({ name }) => name);
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (name) => {
        const garment = suggestedGarment(name, dressChart);
        expect(names).toContain(garment);
      }),
    );
    for (const name of names) expect(suggestedGarment(`My ${name}`, [])).toBe(name);
  });
});
