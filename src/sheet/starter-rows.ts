/** What the starter workbook's people, patterns, projects and cupboard hold. All invented. */
import type { TrackerRow } from "./tracker";
import type { PersonMeasures } from "./trackers/measurements";

/**
 * Ada keeps the choir's wardrobe and sews for her family; Ben sings bass; Mia is five. In inches, although half of the
 * patterns are in centimetres: the functions convert.
 */
export const starterPeople: readonly { readonly name: string; readonly measures: PersonMeasures }[] = [
  {
    name: "Ada",
    measures: {
      Bust: 38, "High bust": 36, Waist: 30.5, Hip: 41, "Back waist length": 16.5, "Waist to hip": 8.5,
      Neck: 14.25, "Sleeve length": 23.5, "Inside leg": 29.5, Height: 65.5, "Measured on": "12 January 2026",
    },
  },
  {
    name: "Ben",
    measures: {
      Chest: 40, Waist: 34.5, Hip: 39.5, Neck: 15.5, "Sleeve length": 25.5, "Inside leg": 32, "Outside leg": 42.5,
      Height: 71, "Measured on": "12 January 2026",
    },
  },
  {
    name: "Mia",
    measures: { Chest: 23.5, Waist: 21.25, Hip: 24.5, "Inside leg": 18.5, Height: 42.5, "Measured on": "1 March 2026" },
  },
]; // prettier-ignore

/** Where the tape went. */
export const starterTape: Readonly<Record<string, string>> = {
  Waist: "where a belt settles",
  Hip: "fullest part",
};

export const starterGarments: readonly TrackerRow[] = [
  garment("Blue camp shirt", "shirt", "Ada", "Bust", 42, "never pulls, room for a vest"),
  garment("Blue camp shirt", "shirt", "Ada", "Hip", 44, null),
  garment("Grey skirt", "straight skirt", "Ada", "Waist", 31.75, "sits well"),
  garment("Grey skirt", "straight skirt", "Ada", "Hip", 43.5, null),
];

function garment(
  what: string,
  kind: string,
  person: string,
  place: string,
  size: number,
  note: string | null,
): TrackerRow {
  return { "What it is": what, Garment: kind, Person: person, Place: place, Measurement: size, Unit: "in", Note: note };
}

export const starterWishes: readonly TrackerRow[] = [
  wish(
    "Wrap skirt",
    "own draft",
    "WS1",
    "wrap front, ties, patch pockets, below knee",
    "straight skirt",
    "Ada",
    [],
    "8-12, 14-18",
    "yes",
  ),
  wish(
    "Camp shirt",
    "own draft",
    "CS2",
    "loose, notched collar, patch pockets, back yoke",
    "shirt",
    "Ada",
    [],
    "8-12, 14-18",
    "yes",
  ),
  wish(
    "Child's pinafore",
    "own draft",
    "CP3",
    "bib, crossed straps, patch pockets, gathered skirt",
    "child's dress",
    "Mia",
    [],
    "3-4, 5-6",
    "yes",
  ),
  wish(
    "Choir gown",
    "choir wardrobe",
    "G10",
    "loose, raglan sleeve, stand collar, floor length",
    "loose dress",
    "Ada",
    [12.5, 0.4, null],
    "36-40, 42-46",
    "no",
  ),
  wish(
    "Choir blouse",
    "choir wardrobe",
    "B11",
    "semi-fitted, bow collar, long sleeve, cuffs",
    "blouse",
    "Ada",
    [9.95, null, 7.5],
    "38-42, 44-46",
    "no",
  ),
  wish(
    "Choir trousers",
    "choir wardrobe",
    "T12",
    "flat front, side pockets, fly",
    "men's trousers",
    "Ben",
    [11, 0.25, 8.95],
    "46-54",
    "no",
  ),
  wish(
    "Evening coat",
    "choir wardrobe",
    "C13",
    "lined, welt pockets, shawl collar",
    "coat",
    "Ada",
    [18, null, null],
    "36-40, 42-46",
    "no",
  ),
  wish(
    "Summer nightshirt",
    "own draft",
    "N14",
    "loose, round neck, side slits",
    "nightwear",
    "Mia",
    [6.4, 0.5, null],
    null,
    "no",
  ),
];

function wish(
  pattern: string, maker: string, number: string, details: string, kind: string, person: string,
  [price = null, off = null, sale = null]: readonly (number | null)[], groups: string | null, owned: string,
): TrackerRow {
  return {
    Pattern: pattern, Maker: maker, Number: number, Details: details, Garment: kind, Person: person,
    Price: price, "Percent off": off, "Sale price": sale, "Size groups": groups, Owned: owned,
  };
} // prettier-ignore

export const starterProjects: readonly TrackerRow[] = [
  project("Wrap skirt for the spring concert", "Wrap skirt", "Ada", "straight skirt", "A", "Navy twill", 60, { Price: 11.4, Status: "to buy", "For a child": "no" }),
  project("Camp shirt, blue stripe", "Camp shirt", "Ada", "shirt", "A", "Striped cotton", 45, { Price: 8.75, Status: "planned", "For a child": "no", Shrinkage: 0.05, Repeat: 1.5, Lengths: 2, Notions: "six 1/2 in buttons, thread" }),
  project("Camp shirt, holiday", "Camp shirt", "Ada", "shirt", "A", "White linen", 54, { Price: 16.9, Status: "planned", Estimate: "yes", Notions: "six 1/2 in buttons" }),
  project("Pinafore for the first school day", "Child's pinafore", "Mia", "child's dress", "A", "Red corduroy", 45, { Price: 9.2, Status: "to buy", "For a child": "yes", Notions: "two 7/8 in buttons" }),
  project("Pinafore, everyday", "Child's pinafore", "Mia", "child's dress", "A", "Navy twill", 60, { Price: 11.4, Status: "planned", "For a child": "yes" }),
  project("Gown, alto 1", "Choir gown", "Ada", "loose dress", "A", "Wine crepe", 150, { Price: 9.8, Status: "to buy", "For a child": "no" }),
  project("Gown, alto 2 (blend typed over)", "Choir gown", "Ada", "loose dress", "A", "Wine crepe", 150, { Size: "42+46", Price: 9.8, Status: "to buy", "For a child": "no" }),
  project("Blouse for rehearsals", "Choir blouse", "Ada", "blouse", "B", "Ivory batiste", 115, { Price: 7.6, Status: "planned", "For a child": "no", Shrinkage: 0.03, Notions: "ten 1 cm buttons" }),
  project("Blouse for the summer tour", "Choir blouse", "Ada", "blouse", "A", "Ivory batiste", 150, { Price: 8.1, Status: "planned", "For a child": "no" }),
  project("Trousers, bass 1", "Choir trousers", "Ben", "men's trousers", "A", "Black wool blend", 150, { Price: 14.5, Status: "to buy", "For a child": "no", Notions: "20 cm zip, one hook" }),
  project("Trousers, bass 1, pockets", "Choir trousers", "Ben", "men's trousers", "A", "Black lining", 140, { Part: "lining", Price: 3.2, Status: "to buy", "For a child": "no" }),
  project("Skirt, finished last month", "Wrap skirt", "Ada", "straight skirt", "B", "Green linen", 60, { Price: 15.5, Status: "finished", "For a child": "no" }),
]; // prettier-ignore

function project(
  name: string, pattern: string, person: string, kind: string, view: string, fabric: string, width: number,
  more: TrackerRow,
): TrackerRow {
  return {
    Project: name, Pattern: pattern, Person: person, Garment: kind, View: view, Fabric: fabric, Width: width, ...more,
  };
} // prettier-ignore

export const starterStash: readonly TrackerRow[] = [
  piece("Navy, long piece", "Navy twill", 60, 3.25, "yd", "yes", "shelf 1"),
  piece("Navy, short piece", "Navy twill", 60, 1.125, "yd", "yes", "shelf 1"),
  piece("Linen from the market", "White linen", 54, 1.5, "yd", "no", "shelf 2"),
  piece("Corduroy left over", "Red corduroy", 45, 1, "yd", "yes", "box"),
  piece("Crepe, first bolt", "Wine crepe", 150, 4, "m", "no", "choir room"),
  piece("Crepe, second bolt", "Wine crepe", 150, 3.2, "m", "no", "choir room"),
  piece("Batiste", "Ivory batiste", 115, 2.6, "m", "yes", "shelf 2"),
  piece("Old lining", "Black lining", 90, 5, "m", "no", "box"),
];

function piece(
  name: string, fabric: string, width: number, length: number, unit: string, washed: string, where: string,
): TrackerRow {
  return {
    Piece: name, Fabric: fabric, Width: width, Length: length, Unit: unit, Washed: washed, Status: "there",
    "Where it is": where,
  };
} // prettier-ignore

/** Excel counts days from the beginning of 1900: 46033 is 11 January 2026. */
const day = (serial: number): number => serial;

export const starterNotes: readonly TrackerRow[] = [
  {
    Date: day(46033), Pattern: "Camp shirt", Person: "Ada", "Size cut": "16",
    Changed: "sleeves 3/4 in shorter", "How it fits": "roomy, as drawn", "Next time": "try 14 at the shoulder",
  },
  {
    Date: day(46054), Pattern: "Wrap skirt", Person: "Ada", "Size cut": "16-18",
    Changed: "blended from 16 at the waist to 18 at the hip", "How it fits": "hangs straight", "Next time": "the same again",
  },
]; // prettier-ignore
