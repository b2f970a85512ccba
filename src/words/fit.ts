import type { FitProblems } from "../problem";
import type { Sentences } from "./sentences";

export const fitSentences: Sentences<FitProblems> = {
  tablesDiffer: ({ pattern, answers, wanted }) =>
    `${pattern} has body tables that suit equally well and answer differently: ${answers}. ${
      wanted === "" ? "Choose" : `Measure the ${wanted}, which tells the figure type, or choose`
    } the range of one table as the chart.`,
  unknownGarment: ({ text, known }) =>
    `"${text}" is not a garment known here. Known are ${known}; your settings may add one.`,
  noSettingHeadings: () =>
    "These settings have no headings. The first row must say Setting, Garment, Place, Value, Unit (for a table, choose it with its headings: [#All]).",
  unknownSetting: ({ row, text, known }) =>
    text === ""
      ? `Row ${row} of the settings doesn't say which setting it is. Known are ${known}.`
      : `"${text}" in row ${row} of the settings is not a setting known here. Known are ${known}.`,
  badSetting: ({ row, setting, text, wanted }) =>
    text === ""
      ? `Row ${row} of the settings (${setting}) lacks ${wanted}.`
      : `"${text}" in row ${row} of the settings (${setting}) can't be used: it wants ${wanted}.`,
  unreadableBand: ({ text }) => `"${text}" is not a band of ease. Write it like 3 to 4, or over 8.`,
  noLeastEase: ({ place, garment }) =>
    `No least ease is known for the ${place} of this garment (${garment}). A row "Least ease" in your settings says it.`,
  noBand: ({ ease, garment, place }) =>
    `No fit word covers ${ease} of ease at the ${place} of this garment (${garment}). Your settings may add a band.`,
  unknownTerm: ({ text, known }) => `"${text}" is not a fit word known here. Known are ${known}.`,
  noBandForTerm: ({ term, garment, place }) =>
    `There is no band "${term}" for the ${place} of this garment (${garment}). Your settings may add one.`,
  notAboveZero: ({ text, what }) => `${what} must be above zero, and this is ${text}.`,
  stretchedShorter: ({ rest, stretched }) =>
    `The stretched length (${stretched}) is shorter than the length at rest (${rest}). Give the length at rest first.`,
  notMeasured: ({ place, person }) =>
    person === ""
      ? `The ${place} isn't measured, and this garment is cut by it: fill it in.`
      : `The ${place} of ${person} isn't measured, and this garment is cut by it: fill it in.`,
  nothingToCompare: () =>
    "The finished measurements have no place in common with the chart and the body, so there is no ease to show.",
  unknownRow: ({ text }) => `"${text}" is not a row for the high bust. Write highbust or bust.`,
  tightEverywhere: ({ size, place, ease, wanted, lacking }) =>
    `Even the largest size, ${size}, has only ${ease} of ease at the ${place}: ${lacking} less than the ${wanted} wanted.`,
  badStretch: ({ text }) => `"${text}" can't be a stretch. Write a percentage such as 25%, or 0.25.`,
};
