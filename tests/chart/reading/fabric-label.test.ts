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

describe("readViews, whole", () => {
  it.each<[string, readonly string[] | "all" | null, string]>([
    ["Dress A, B lining", ["A", "B"], "Dress lining"],
    ["A - lining", ["A"], "- lining"],
    ["A, C", ["A", "C"], ""],
    ["A and lining", ["A"], "and lining"],
    ["Main & A", ["A"], "Main &"],
    ["B lining, B trim", ["B"], "lining trim"],
    ["View 12 lining", ["12"], "lining"],
    ["View 1 trim", ["1"], "trim"],
    ["View 1 main", ["1"], "main"],
    ["Modèle 2 d'été", ["2"], "d'été"],
    ["View A d'hiver", ["A"], "d'hiver"],
    ["View 115 cm", null, "115 cm"],
    ['View 45"', null, '45 "'],
    ["View 45 in", null, "45 in"],
    ["View 45 inches", null, "45 inches"],
    ["View lace", null, "lace"],
    ["Views a, b", ["A", "B"], ""],
    ["Versions 1 and 2", ["1", "2"], ""],
    ["View 1, 2, 12 lining", ["1", "2", "12"], "lining"],
    ["View 1, lining", ["1"], ", lining"],
    ["View a, lining", ["A"], ", lining"],
    ['View 1, 45" lining', ["1"], ', 45 " lining'],
    ["View 1 / 90 cm", ["1"], "/ 90 cm"],
    ["View 1 / 2", ["1", "2"], ""],
    ['View 44 / 45"', null, '44 / 45 "'],
    ["View 1 / 115 cm", ["1"], "/ 115 cm"],
    ["A 175 cm", ["A"], "175 cm"],
    ["A 140", ["A"], "140"],
    ["Vlieseline H 250", null, "Vlieseline H 250"],
    ["All the views, lining", "all", ", lining"],
    ["Lining for all of it", null, "Lining for all of it"],
    ["Lining for the view B", ["B"], "Lining for the"],
    ["The versions 1 and 2", ["1", "2"], "The"],
    ["Beide Modelle A und B", ["A", "B"], "Beide"],
    ["Les modèles", "all", ""],
    ['All views 60"', "all", '60 "'],
    ["All views 60", "all", "60"],
  ])("reads %s with what is left of it", (text, views, rest) => {
    expect(readViews(text)).toEqual({ views, rest });
  });
  it("takes a range only forwards, and reads no further than 200 characters", () => {
    expect(readViews("C-A").views).toEqual(["C", "A"]);
    expect(readViews(`${"lining ".repeat(30)}A`).views).toBeNull();
  });
});

describe("readNap, whole", () => {
  it.each([
    ["Lining, with nap, fusible", { nap: "with", rest: "lining fusible" }],
    ["Without nap", { nap: "without", rest: "" }],
    [" Lining ", { nap: null, rest: "lining" }],
  ])("reads %s with what is left of it", (text, wanted) => {
    expect(readNap(text)).toEqual(wanted);
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

describe("readFabricLabel, whole", () => {
  const nothing = { views: null, part: null, partKnown: true, widths: null, nap: null, stars: "" };
  it.each([
    ["", nothing],
    ["Stoff breit", { ...nothing, part: "main" }],
    ["Shell", { ...nothing, part: "main" }],
    ["Main lining", { ...nothing, part: "lining" }],
    ["Self fabric, doubled", { ...nothing, part: "main" }],
    ["Shell yoke", { ...nothing, part: "yoke", partKnown: false }],
    ["Contrast 12", { ...nothing, part: "contrast" }],
    ["Contrast 1 5/8", { ...nothing, part: "contrast" }],
    ["Contrast 2 doubled", { ...nothing, part: "contrast 2" }],
    ["Shoulder yoke x", { ...nothing, part: "shoulder yoke", partKnown: false }],
    ["Yoke 7", { ...nothing, part: "yoke", partKnown: false }],
    ["Tab loop yoke cuff godet gusset", { ...nothing, part: "tab loop yoke cuff godet", partKnown: false }],
    ["Contrast*A", { ...nothing, part: "contrast", views: ["A"], stars: "*" }],
    ["Lining†/‡ 150 cm", { ...nothing, part: "lining", stars: "†/‡", widths: { in: null, cm: 150, rest: "Lining" } }],
    [`Lining ${"*".repeat(9)}`, { ...nothing, part: "lining", stars: "*".repeat(8) }],
    ["Contrast\nA", { ...nothing, part: "contrast", views: ["A"] }],
  ])("reads %j", (text, wanted) => {
    expect(readFabricLabel(text)).toEqual(wanted);
  });
});

describe("starNotes, line by line", () => {
  it.each([
    ['* with nap, 45" wide', []],
    ["* with nap, 115 cm wide", []],
    ["* with nap. * without nap", [["*", "with"]]],
    ["* with nap".padEnd(600, "."), [["*", "with"]]],
    ["* with nap".padEnd(601, "."), []],
    ["with nap", []],
    ['* with nap, "fur"', [["*", "with"]]],
    ["* with nap, see cm chart", [["*", "with"]]],
  ])("reads %j", (line, wanted) => {
    expect([...starNotes([line])]).toEqual(wanted);
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
    expect(isNotion("Lining for the hem and front zipper")).toBe(false);
    expect(isNotion("For the hem, front and zipper")).toBe(true);
  });
});
