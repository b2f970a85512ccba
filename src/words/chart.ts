import type { ChartProblems } from "../problem";
import type { Sentences } from "./sentences";

export const chartSentences: Sentences<ChartProblems> = {
  errorCell: ({ error }) => `A cell that is needed here holds ${error}: put that right first.`,
  notTrueOrFalse: ({ text }) => `"${text}" is neither TRUE nor FALSE: write one of them.`,
  shapesDiffer: ({ one, other }) =>
    `These ranges don't go together: one is ${one} cells and one is ${other}. Give ranges of the same shape, or single cells.`,
  oneCellWanted: ({ what }) => `${what} must be one cell here, and this is a range: choose one cell.`,
  unexpected: ({ text }) => `Unexpected trouble in this function, which is our fault and not yours (${text}).`,
  unreadableName: ({ text, what }) => `"${text}" holds no letters or digits: write ${what}.`,

  emptyChart: ({ wanted }) => `There is nothing in this range: choose ${wanted} together with the headings.`,
  chartHeadings: ({ found }) =>
    `No headings stand above "${found}", so the sizes aren't known: choose the chart with its headings, and if this is a table's name, add [#All] to it.`,
  wrongTable: ({ found, wanted }) => `This range holds ${found}, and ${wanted} are needed here: choose that table.`,
  columnWithoutHeading: ({ column, figure }) =>
    `Column ${column} of this chart has figures (${figure}) and no heading: write the size above it.`,
  sizeTwice: ({ size }) => `Two columns of this chart are called ${size}: rename one.`,
  twoCharts: ({ found }) => `This range holds two charts (headings again at "${found}"): choose one of them.`,
  placeTwice: ({ place }) => `This chart has two different rows for ${place}: take one out.`,
  sizeNotOnChart: ({ size, known }) => `"${size}" is not a size on this chart (${known}).`,
  placeNotOnChart: ({ place, known }) => `This chart has no row for ${place}. It has ${known}.`,
  unknownPlace: ({ text, known }) => `"${text}" is not a place that is measured. This chart has ${known}.`,
  unreadableFigure: ({ text }) => `"${text}" on this chart can't be read as a figure: correct it there.`,
  unknownPattern: ({ text, known }) => `"${text}" is not in the pattern index. It has ${known}.`,
  noTable: ({ pattern, kind }) => `The pattern index has no ${kind} for ${pattern}.`,
  severalTables: ({ pattern, tables }) =>
    `${pattern} has more than one table that could answer (${tables}): choose the range of one of them.`,
  chartUnitUnknown: ({ text }) =>
    `This chart doesn't say inches or centimetres, so ${text} can't be compared with it: add a Unit column.`,
  unknownPerson: ({ text, known }) => `"${text}" is not among the people measured here (${known}).`,
  severalPeople: ({ known }) => `This range holds more than one person (${known}): say which, as the person.`,
  noBody: ({ found }) =>
    `No place that is measured stands in this range (it begins with "${found}"): choose measurements with their labels, such as Bust, Waist, Hip.`,
};
