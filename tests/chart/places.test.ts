import { describe, expect, it } from "vitest";
import { isBustOrChest, knownPlaces, placeName, placeSpan, readPlace } from "../../src/chart/places";

describe("readPlace", () => {
  it.each(knownPlaces())("reads the id %s as itself", (place) => {
    expect(readPlace(place, "body")).toBe(place);
    expect(readPlace(place, "finished")).toBe(place);
  });

  // Labels as envelopes and magazines print them. Common practice, no source.
  it.each([
    ["Bust/Poitrine", "bust"],
    ["BUST:", "bust"],
    ["Bust (cm)", "bust"],
    ['Hip 9" below waist', "hip"],
    ["Hips (fullest part)", "hip"],
    ["Back-neck to waist", "backWaistLength"],
    ["Waist to hip", "waistToHip"],
    ["Oberweite", "bust"],
    ["Hueftweite", "hip"],
    ["HÜFTUMFANG", "hip"],
    ["Tour de taille", "waist"],
    ["Largeur du dos", "crossBack"],
    ["Contorno de cadera", "hip"],
    ["Circonferenza fianchi", "hip"],
    ["Girovita", "waist"],
    ["Bovenwijdte", "bust"],
    ["Heupomvang", "hip"],
    ["Obwód bioder", "hip"],
    ["Długość pleców do talii", "backWaistLength"],
    ["Contorno do quadril", "hip"],
    ["Width, lower edge", "hemWidth"],
    ["Upper chest", "upperChest"],
  ])("reads %s as %s", (label, place) => {
    expect(readPlace(label, "body")).toBe(place);
  });

  it("ends a back length at the waist on a body and at the hem on a garment", () => {
    for (const label of ["Rückenlänge", "Longueur dos", "Largo de espalda", "Back length"]) {
      expect(readPlace(label, "body")).toBe("backWaistLength");
      expect(readPlace(label, "finished")).toBe("backLength");
    }
  });

  it("gives null for a label that it doesn't know, and for two places in one", () => {
    for (const label of ["", "Bust from shoulder", "Waist/Hip", "Zipper", "12", "=SUM(A1)"])
      expect(readPlace(label, "body")).toBeNull();
  });
});

describe("placeName", () => {
  it("is read back as its place", () => {
    for (const place of knownPlaces()) expect(readPlace(placeName(place), "finished")).toBe(place);
  });
  it("leaves words outside the vocabulary as they are", () => {
    expect(placeName("backWaistLength")).toBe("back waist length");
    expect(placeName("Zipper Length")).toBe("Zipper Length");
  });
});

describe("placeSpan", () => {
  it("holds the misses chart in inches and the women's sizes in centimetres", () => {
    // EN 13402-3:2004, women, bust 76 to 128 cm, hip 84 to 132 cm; the misses chart 6 to 24: bust 30 1/2 to 46 in.
    expect(placeSpan("bust")!.in[0]).toBeLessThanOrEqual(30.5);
    expect(placeSpan("bust")!.in[1]).toBeGreaterThanOrEqual(46);
    expect(placeSpan("hip")!.cm[0]).toBeLessThanOrEqual(84);
    expect(placeSpan("hip")!.cm[1]).toBeGreaterThanOrEqual(132);
  });
  it("knows nothing of a place outside the vocabulary", () => {
    expect(placeSpan("Zipper")).toBeNull();
  });
});

describe("isBustOrChest", () => {
  it("tells labels that serve men and women from those that don't", () => {
    expect(isBustOrChest("Brustumfang")).toBe(true);
    expect(isBustOrChest("Oberweite")).toBe(false);
    expect(isBustOrChest("Bust")).toBe(false);
  });
});

// Labels as French and Portuguese patterns print them; common practice, no source.
describe("readPlace at a word that two languages share", () => {
  it.each([
    ["dos taille", "backWaistLength"],
    ["Taille dos", "backWaistLength"],
    ["fourche dos", "backRise"],
    ["Carrure dos", "crossBack"],
    ["Tour de taille", "waist"],
    ["Contorno dos quadris", "hip"],
    ["Largura dos ombros", "shoulder"],
  ])("reads %s as %s", (label, place) => expect(readPlace(label, "body")).toBe(place));
});

// Labels as envelopes and magazines print them. Common practice, no source.
describe("readPlace on a body", () => {
  it.each([
    // The first label of a line of the vocabulary, and single letters.
    ["Breast", "bust"], ["B", "bust"], ["B:", "bust"], ["W", "waist"],
    // What the garment fits.
    ["To fit bust", "bust"], ["  to fit chest", "chest"], ["Fits waist", "waist"], ["Fit hip", "hip"],
    // Two languages, or one place twice.
    ["Yoke (Hip)", "hip"], ["Oberweite (bust)", "bust"], ["Yoke – Hip", "hip"], ["Yoke - Hip", "hip"],
    ["oberweite bust", "bust"], ["upper bust haut poitrine", "highBust"], ["Bust [see note]", "bust"],
    ["Back(CB)length", "backWaistLength"],
    // Unisex garments: the first of the two.
    ["Bust/Chest", "bust"], ["Chest/Bust", "chest"],
    // How and whence the tape is held.
    ["Waist measured at navel", "waist"], ["Upper bust under arms", "highBust"], ["Hip 20 cm below", "hip"],
    ["Sleeve from shoulder", "sleeveLength"], ["Back waist length from neck", "backWaistLength"],
    ["Back", "backWaistLength"],
  ])("of %j is %s", (label, place) => expect(readPlace(label, "body")).toBe(place)); // prettier-ignore

  it.each([
    "Waist (hip)", "Yoke (hip 9)", "Hip v2", "Sleeve pocket", "Hip pocket", "Bust fit line", "(B)", "-B-", "Hip/Bust",
    "()", "[]", "/", "-", " ", "of the", `${"x".repeat(199)} / Bust`,
  ])("is null for %j", (label) => expect(readPlace(label, "body")).toBeNull()); // prettier-ignore

  it("tells back lengths and letters apart by the kind of chart", () => {
    const kinds = ["body", "finished", null] as const;
    const places = (label: string) => kinds.map((kind) => readPlace(label, kind));
    expect(places("Back")).toEqual(["backWaistLength", "backLength", null]);
    expect(places("Back length")).toEqual(["backWaistLength", "backLength", "backLength"]);
    expect(places("Rückenlänge")).toEqual(["backWaistLength", "backLength", "backWaistLength"]);
    expect(places("B")).toEqual(["bust", null, "bust"]);
    expect(places("Bust")).toEqual(["bust", "bust", "bust"]);
  });
});

describe("a word outside the vocabulary", () => {
  it("is no place of its own, and keeps its capitals", () => {
    for (const label of ["waistline", "Waist", "hips"]) expect(placeSpan(label)).toBeNull();
    for (const label of ["My backWaist", "backWaist 2", "Bust", "upper chest"]) expect(placeName(label)).toBe(label);
    expect(placeName("waistToHip")).toBe("waist to hip");
  });
  it("doesn't hide a word for bust or chest beside it", () => {
    for (const label of ["Oberweite / Brust", "Yoke (Brust)", "Poitrine, tour de", "pecho"])
      expect(isBustOrChest(label)).toBe(true);
    for (const label of ["Hüfte / Taille", "Brust tief", ""]) expect(isBustOrChest(label)).toBe(false);
  });
});

describe("placeSpan in centimetres", () => {
  // 1 in = 2.54 cm exactly; 14 in = 35.56 cm, 62 in = 157.48 cm: outward to whole centimetres.
  it("is the span in inches, outward to whole centimetres", () => {
    expect(placeSpan("waist")).toEqual({ in: [14, 62], cm: [35, 158] });
  });
});
