import { garmentNames } from "../../fit/read-garment";
import type { Tracker } from "../tracker";
import { SETTINGS, unlessBlank } from "./formulas";

/** The row of a place, and of it the person's cell. */
const BODY = "XLOOKUP([@Person],Measurements[#Headers],XLOOKUP([@Place],Measurements[Measurement],Measurements))";
const BODY_UNIT = "XLOOKUP([@Place],Measurements[Measurement],Measurements[Unit])";

/** What she owns and likes to wear: its measurements less her own are the ease she likes. */
export const garments: Tracker = {
  key: "garments",
  sheet: "My garments",
  table: "MyGarments",
  intro: [
    "Things that fit. Measure them lying flat, twice across for a round measure. What they have more than the body is the ease you like.",
    'To go by one, put a row "my garment" into the settings, or give this whole table to a function as its settings.',
  ],
  totals: [],
  columns: [
    { heading: "What it is", format: "text", width: 24 },
    { heading: "Garment", format: "text", validation: { list: garmentNames(), open: true }, width: 16 },
    { heading: "Person", format: "text", width: 12 },
    { heading: "Place", format: "text", note: "A place of the Measurements sheet: Bust, Waist, Hip …", width: 14 },
    { heading: "Measurement", format: "length", note: "All the way round, or the whole length.", width: 14 },
    { heading: "Unit", format: "text", validation: { list: ["in", "cm"] }, width: 7 },
    {
      heading: "Ease",
      format: "length",
      note: "The garment less the body: her total ease there.",
      formula: unlessBlank(
        ["Measurement", "Place", "Person"],
        `IF([@Unit]=${BODY_UNIT},SEW.EASE([@Measurement],${BODY}),"other unit")`,
      ),
      width: 12,
    },
    {
      heading: "Fit",
      format: "general",
      note: "The word for that much ease, by the bands of the settings.",
      formula: `=IF(ISNUMBER([@Ease]),SEW.FITTERM([@Ease],[@Garment],[@Place],[@Unit],${SETTINGS}),"")`,
      width: 18,
    },
    { heading: "Note", format: "text", width: 28 },
  ],
  needs: ["measurements", "settings"],
  print: "lying",
};
