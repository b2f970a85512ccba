/** What is said about a cell or row of a pasted chart: what was found, and what was wanted. */
import { listed } from "./sentences";

export const doubts = {
  noChart: () =>
    "No chart was found: nothing here has a row of sizes with figures under it. Copy the table with its sizes and try again.",
  tooLong: (limit: string) =>
    `This is too much for one paste (more than ${limit}). Copy only the part with the charts and paste that.`,
  scanned: () =>
    "This PDF holds pictures of its pages and no text, so there is nothing to read. Type the chart into a sheet, or copy it from a page with text.",
  noSizes: (label: string) =>
    `"${label}" has figures, but no row of sizes stands above it. Copy the sizes too, or type them above.`,
  count: (label: string, found: number, wanted: number) =>
    `"${label}" has ${found} ${found === 1 ? "figure" : "figures"} for ${wanted} ${wanted === 1 ? "size" : "sizes"}, so it was left out. Compare it with the pattern and add the row.`,
  formulaLabel: (label: string) =>
    `A label that starts with ${label.trim()[0]} can't go into a sheet, so this row was left out.`,
  formulaFigure: (text: string) =>
    `"${text}" is not a figure, so this cell was left empty. Type what the pattern prints.`,
  unreadable: (text: string) =>
    `"${text}" can't be read as a figure, so this cell was left empty. Type what the pattern prints.`,
  dateFigure: (text: string) =>
    `A spreadsheet has made a date of this (${text}), so this cell was left empty. Type what the pattern prints.`,
  dateSize: (size: string) =>
    `"${size}" is a date, which a spreadsheet makes of sizes such as 6-12. Type the size as the pattern prints it.`,
  negative: (text: string) => `A length can't be below zero, and this is ${text}.`,
  zero: (text: string) => `A measurement can't be ${text}. Type what the pattern prints, or leave the cell empty.`,
  noHeading: () =>
    "No heading says whether these are body or finished measurements: they were taken as body measurements.",
  unitFromNumbers: (unit: string) => `No unit is printed. From the size of the numbers these are ${unit}.`,
  unitUnsure: (unit: string) =>
    `No unit is printed, and the numbers would do as inches or centimetres. They were taken as ${unit}: please check.`,
  unitDisagrees: (label: string, unit: string, other: string) =>
    `"${label}" is headed ${unit}, but its numbers look like ${other}.`,
  unknownPlace: (label: string) => `"${label}" is not a place known here. It keeps its own name and fits nothing else.`,
  noLabel: () => "Figures without a label: it isn't known what they measure, so they were left out.",
  namelessPair: () =>
    "Figures without a label: they were taken as the row above in the other unit. If they measure something else, type their label in front of them and paste again.",
  outOfOrder: (figure: string, label: string) =>
    `${figure} breaks the order of the sizes in "${label}". Compare it with the pattern.`,
  offGrade: (figure: string, label: string) =>
    `${figure} is off the steps of its neighbours in "${label}". Compare it with the pattern.`,
  unitsApart: (figure: string, other: string) =>
    `${figure} and ${other} are not the same length. Compare them with the pattern.`,
  bodyLarger: (place: string, body: string, finished: string) =>
    `The body's ${place} (${body}) is larger than the finished garment's (${finished}). That is right only for stretch fabric.`,
  repeatedPlace: (place: string) => `${place} stands here twice in one table. Keep the right one.`,
  repeatedCloth: (label: string) =>
    `"${label}" is for the same view, part and width as a row above it. Say in the sheet what tells them apart.`,
  equalSizes: (size: string) => `Two columns are called ${size}. Rename one, or the wrong column may answer.`,
  placed: (label: string, sizes: readonly string[]) =>
    `"${label}" has no figure under ${listed(sizes)}: seen from where the others stand.`,
  sizesUnread: () =>
    "These look like sizes, but they can't all be read, so the rows below were left out. Put each size in a cell of its own and paste again.",
  sizeRowCount: (found: number, wanted: number) =>
    `This second row of sizes has ${found} for ${wanted} sizes, so it was left out.`,
  namelessSizes: () =>
    "These figures without a label were taken as a second row of sizes. If they measure something, add the row.",
  sizesWithoutLabel: () =>
    "These figures without a label were taken as the sizes of the rows below. If they measure something, type their label in front of them and paste again.",
  sizesFromHeights: () => "No row of sizes was found: the heights were taken as the sizes.",
  notALength: (label: string) => `"${label}" is not a length, so this row was left out.`,
  unknownPart: (part: string) => `"${part}" was taken as the name of this part of the garment.`,
  partCarried: (part: string) =>
    `This row names no part. It follows a row for ${part} and was taken as main fabric: please check.`,
  starUnknown: (stars: string) => `No note says what ${stars} means, so the nap isn't known.`,
  single: (size: string) => `One figure for both sizes: taken for ${size} too.`,
  dittoUnsure: () => "It isn't sure which figure these ditto marks repeat. Compare the cell with the pattern.",
  kindGuessed: (kind: string) => `No heading says that measurements begin here: taken as ${kind} measurements.`,
  shortSize: (size: string, found: number, wanted: number) =>
    found === 0
      ? `Size ${size} has no figures for the measurements of the other sizes, so it was left out. Compare it with the pattern.`
      : `Size ${size} has ${found} ${found === 1 ? "figure" : "figures"} for ${wanted} ${wanted === 1 ? "column" : "columns"}, so it was left out. Compare it with the pattern.`,
  twoWidths: (widths: readonly string[]) =>
    `One row for widths of ${listed(widths)}: its amounts were taken for each of them.`,
  converted: (from: string, to: string) => `These amounts are printed in ${from} and were turned into ${to}.`,
  more: (count: number) => `${count} more doubts were found from here on. Paste a smaller part to see them.`,
} as const;
