/**
 * Everything the pane says but the engine's own sentences. For another language this file is translated and nothing
 * else; functions put names and numbers where that language wants them.
 */
const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`;

export const paneWords = {
  frame: {
    title: "Sewing",
    sections: { chart: "Chart", fit: "Fit", fabric: "Fabric", sheets: "Sheets", help: "Help" },
    sectionsLabel: "Sections",
    takeBack: (what: string) => `Take back: ${what}`,
    takenBack: (what: string) => `Taken back: ${what}. Everything is as it was before.`,
    evenIfChanged: (reason: string) => `${reason} Take it back all the same, with your changes?`,
    takeBackAnyway: "Take it back",
    keep: "Leave it",
    close: "Close",
    cancel: "Cancel",
    working: "Working …",
    noExcel:
      "This pane works inside Excel. Open a workbook, choose Add-ins on the Home tab and open the sewing pane there.",
    noOffice: "Excel's part of this pane has not loaded. Check the internet connection, then open the pane again.",
    tooOld: "This Excel is too old for the pane. It needs Excel for Microsoft 365, Excel 2024 or Excel on the web.",
    failure: (message: string) => `Something went wrong here: ${message} Your workbook has not been changed by it.`,
  },
  chart: {
    heading: "Read a pattern's chart",
    intro:
      "Copy the size chart from a web page, a PDF or your notes and paste it here: body and finished measurements, fabric required, all at once if you like.",
    pasteLabel: "Paste the chart here",
    read: "Read it",
    open: "Open a file",
    openHint: "Text, CSV, web page or PDF. You can drop a file here too.",
    startAgain: "Start again",
    reading: "Reading …",
    nothingPasted: "The clipboard holds no text. Copy the chart's cells or lines first, then paste.",
    imagePasted:
      "That is a picture, and a picture holds no figures that can be read. Copy the text of the chart, or type it in.",
    noPicture: (name: string) =>
      `"${name}" is a picture, and a picture holds no figures that can be read. Type the chart in, or open its PDF.`,
    workbookFile: (name: string) =>
      `"${name}" is a workbook. Open it in Excel, copy the cells of the chart and paste them here.`,
    unknownFile: (name: string) => `"${name}" is not a text, CSV, web page or PDF file.`,
    emptyFile: (name: string) => `There is nothing in "${name}".`,
    tooLargeFile: (name: string) => `"${name}" is larger than 20 MB. Open it, and paste only the chart's own pages.`,
    unreadableFile: (name: string) => `"${name}" could not be opened. Is it still there, and a whole file?`,
    scannedPdf: (name: string) =>
      `"${name}" holds pictures of pages, and no text. Type the chart in, or run the file through text recognition first.`,
    lockedPdf: (name: string) => `"${name}" is locked with a password. Save a copy without one, then open that.`,
    brokenPdf: (name: string) => `"${name}" could not be read as a PDF.`,
    noChartInPdf: (name: string, pages: number) =>
      `No chart was found on the ${count(pages, "page", "pages")} of "${name}".`,
    pdfPages: (pages: string) => `The chart stands on page ${pages}.`,
    understood: (tables: number, flags: number) =>
      tables === 0
        ? "No chart was found."
        : `${count(tables, "table", "tables")} understood, ${
            flags === 0 ? "nothing looks doubtful" : `${count(flags, "place", "places")} to look at`
          }.`,
    toLookAt: "To look at first",
    leftOutLine: (line: number) => `Line ${line} as it was pasted`,
    readAgain: "Read again",
    next: "Next place to look at",
    noneLeft: "Nothing is left to look at.",
    gridHelp: "Tab goes to the next place to look at, the arrow keys to any cell. Type over what is wrong.",
    kind: "What it is",
    kinds: { body: "Body measurements", finished: "Finished measurements", fabric: "Fabric required" },
    unit: "Unit",
    columns: { place: "Measurement", view: "View", part: "Part", width: "Width", nap: "Nap" },
    shape: "Shape",
    rowShape: (label: string, count_: number) =>
      `${label}: ${count(count_, "figure", "figures")} as a line, smallest size to largest`,
    size: (size: string) => `Size ${size}`,
    sizeHeading: (position: number) => `Label of size column ${position}`,
    cell: (row: string, column: string) => `${row}, ${column}`,
    rowNumber: (row: number) => `Row ${row}`,
    wrong: (message: string) => `Not taken: ${message}`,
    removeRow: (label: string) => `Leave out ${label}`,
    removed: (label: string) => `${label} is left out.`,
    correctedCell: (cell: string) => `${cell} corrected.`,
    moreRows: (rows: number) => `${count(rows, "more row", "more rows")}: they go into the sheet as they were read.`,
    showTable: (name: string, rows: number) => `${name}, ${count(rows, "row", "rows")}`,
    name: "Name of the pattern",
    nameHint: "The sheet and its tables get this name.",
    nameMissing: "Type a name for the pattern first.",
    insert: "Insert the sheet",
    insertDoubtful: (flags: number) =>
      `${count(flags, "place still looks", "places still look")} doubtful. Insert the sheet all the same?`,
    insertAnyway: "Insert it",
    lookAgain: "Look again",
    sheetTaken: (name: string, free: string) =>
      `There is a sheet called "${name}" already, and it stays as it is. Insert this one as "${free}"?`,
    insertAs: (free: string) => `Insert as "${free}"`,
    otherName: "Choose another name",
    inserted: (sheet: string, tables: readonly string[]) =>
      `Inserted: sheet "${sheet}" with ${tables.join(", ")}. Formulas find it as ${tables[0]}[#All], or by its name in PatternIndex.`,
    indexNotOurs: (cell: string) =>
      ` The formula in ${cell} of "Pattern index" has been changed by hand, so this pattern was not added there.`,
    indexFull: " The pattern index is as long as Excel allows, so this pattern was not added there.",
    whatInserted: (sheet: string) => `sheet "${sheet}"`,
    negative: (text: string) => `a measurement can't be below zero, and this is ${text}.`,
    sizeBlank: "a size needs a label.",
    sizeTwice: (size: string) => `there is a size "${size}" already.`,
    labelBlank: "a row needs a label.",
    napUnknown: (text: string) => `"${text}" is not with, without or either.`,
  },
  fit: {
    heading: "Which size, and how it fits",
    pattern: "Pattern",
    person: "Person",
    garment: "Garment",
    noPattern: "There is no body chart in this workbook yet: insert one in the Chart section.",
    noPeople: "There are no measurements yet: set up the Measurements sheet in the Sheets section and type them in.",
    headline: (cut: string | null, frame: string) =>
      cut === null
        ? `No size will do in one piece: blend from frame size ${frame}`
        : cut === frame
          ? `Size to cut in one piece: ${cut}`
          : `Size to cut in one piece: ${cut} (frame size ${frame})`,
    legend: {
      body: "your measurements",
      blend: "the blend: a size for each place",
      frame: "the frame size",
      tight: "less than the least ease",
    },
    easeShort: (ease: string, word: string) => (word ? `ease ${ease}, ${word}` : `ease ${ease}`),
    tableCaption: (cut: string) => `Each place by itself, and the ease of size ${cut}`,
    tableHeadings: ["Place", "You", "Size", "Ease"],
    insert: "Write the formulas",
    insertHint: "They go beside the pattern's chart and follow your measurements.",
    whatInserted: (person: string) => `formulas for ${person}`,
    inserted: (sheet: string) => `The formulas stand on "${sheet}", to the right of the chart.`,
    cautions: "For a child",
    guide: "Where the tape goes",
    guideHint: "Write down where yours went if it went elsewhere.",
  },
  sheets: {
    heading: "Sheets for the whole hobby",
    intro: "Each is set up once, in your own workbook, and never over anything that is there.",
    unitsLabel: "Lengths are shown in",
    units: { in: "inches and yards", cm: "centimetres and metres", both: "both, as they come" },
    about: {
      measurements: "A column for each person; where each tape goes.",
      garments: "Garments that fit, measured flat: they tell your own ease.",
      wishList: "Patterns to buy: price, size to cut, envelope to buy.",
      projects: "Size, cloth and cost of each project, with totals.",
      stash: "The cloth you own, a piece a row.",
      shoppingList: "What to buy for which project, after the stash.",
      fitNotes: "What you changed, and how it turned out.",
      settings: "Your own rules: least ease, between sizes, what the shop cuts by.",
    },
    isThere: "There already.",
    brings: (sheets: readonly string[]) => `With it: ${sheets.join(", ")}, which its formulas look at.`,
    setUpButton: "Set up the chosen sheets",
    chooseFirst: "Choose a sheet first.",
    setUp: (sheets: readonly string[]) => `Set up: ${sheets.join(", ")}.`,
    whatSetUp: (sheets: number) => count(sheets, "new sheet", "new sheets"),
    personHeading: "Add a person",
    personAbout: "A new column on the Measurements sheet.",
    personName: "Name",
    personButton: "Add the column",
    personMissing: "Type a name first.",
    noMeasurements: "There is no Measurements table yet: set up the Measurements sheet first.",
    personThere: (name: string) => `There is a column "${name}" already.`,
    personAdded: (name: string, sheet: string) => `"${name}" has a column on "${sheet}". Type the measurements there.`,
    whatPerson: (name: string) => `column for ${name}`,
    copyHeading: "Shop copy",
    copyAbout: "The shopping list as plain values, with room to tick and for a swatch, to print or take along.",
    copyButton: "Make a shop copy",
    noProjects: "There is no Projects table in this workbook: set up the Projects sheet first.",
    copied: (sheet: string) => `The copy is on "${sheet}", one page wide.`,
    whatCopy: "shop copy",
    keepHeading: "Send the workbook to someone",
    keepAbout:
      "Without this add-in our formulas show nothing. Keep their values before you send it; bring the formulas back afterwards.",
    keepButton: "Keep values",
    backButton: "Bring back formulas",
    nothingToKeep: "There is no formula of ours in this workbook.",
    kept: (formulas: number) =>
      `${count(formulas, "formula is a value now", "formulas are values now")}. The workbook remembers them.`,
    whatKept: "kept values",
    nothingKept: "No values are kept in this workbook: there is nothing to bring back.",
    broughtBack: (left: number) =>
      left === 0
        ? "The formulas are back."
        : `The formulas are back, but for ${count(left, "place", "places")} that somebody has changed: they stay as they are, see the list.`,
    whatBroughtBack: "formulas brought back",
    leftAlone: (sheet: string, address: string, formula: string) => `${sheet}, ${address}: ${formula}`,
    columnsHeading: "Add our columns to your own table",
    columnsAbout: "Columns you have under the same heading stay as they are; the missing ones go to its right end.",
    columnsTable: "Your table",
    columnsKind: "Make it like",
    columnsButton: "Add the missing columns",
    noTable: "There is no table of your own in this workbook.",
    nothingMissing: (table: string) => `"${table}" has all the columns already.`,
    columnsAdded: (table: string, headings: readonly string[]) => `Added to "${table}": ${headings.join(", ")}.`,
    whatColumns: (table: string) => `columns of ${table}`,
  },
} as const;
