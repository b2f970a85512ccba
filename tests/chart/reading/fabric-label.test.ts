import { describe, expect, it } from "vitest";
import { isNotion, readFabricLabel, readNap, readViews, starNotes } from "../../../src/chart/reading/fabric-label";

describe("readViews", () => {
  it.each([
    ["View A", ["A"]],
    ["A, B", ["A", "B"]],
    ["Views A and B", ["A", "B"]],
    ["Dress A/B", ["A", "B"]],
    ["Views A-C", ["A", "B", "C"]],
    ["Modell B", ["B"]],
    ["View 1", ["1"]],
    ["view a", ["A"]],
    ["All views", "all"],
    ["Alle Modelle", "all"],
    ["Tous les modèles", "all"],
    ["Todas las vistas", "all"],
    ["Lining", null],
    ["Vlieseline G 785", null],
    ['45" with nap', null],
  ])("reads %s", (text, views) => {
    expect(readViews(text).views).toEqual(views);
  });
});

describe("readNap", () => {
  it.each([
    ["with nap", "with"],
    ["without nap", "without"],
    ["with or without nap", "either"],
    ["w/o nap", "without"],
    ["mit Strich", "with"],
    ["ohne Strichrichtung", "without"],
    ["avec ou sans sens", "either"],
    ["sin pelo", "without"],
    ["con verso", "with"],
    ["lining", null],
  ])("reads %s", (text, nap) => {
    expect(readNap(text).nap).toBe(nap);
  });
});

describe("readFabricLabel", () => {
  it.each([
    ['A, B Lining 45" without nap', { views: ["A", "B"], part: "lining", nap: "without", partKnown: true }],
    ['45"', { views: null, part: null, nap: null }],
    ["Contrast 2", { part: "contrast 2" }],
    ["Contrast B 115 cm", { views: ["B"], part: "contrast" }],
    ["Futterstoff 140 cm breit", { part: "lining" }],
    ["Oberstoff", { part: "main" }],
    ["Entoilage", { part: "interfacing" }],
    ['Yoke 45"', { part: "yoke", partKnown: false }],
    ['60"*/**', { stars: "*/**" }],
  ])("reads %s", (text, wanted) => {
    expect(readFabricLabel(text)).toMatchObject(wanted);
  });
});

describe("starNotes", () => {
  it("reads what each mark means, in any order", () => {
    expect([...starNotes(["**without nap *with nap ***with or without nap"])]).toEqual([["**", "without"], ["*", "with"], ["***", "either"]]);
    expect(starNotes(["* The hip is taken 20 cm below the waist."]).size).toBe(0);
  });
}); // prettier-ignore

describe("isNotion", () => {
  it("knows buttons from cloth", () => {
    expect(isNotion('Notions: five 1/2" buttons')).toBe(true);
    expect(isNotion('Lining 45"')).toBe(false);
  });
});
