import type { ChartTable } from "../chart/model";
import { readCharts } from "../chart/read-charts";
import { indexPlan } from "./chart-index";
import { chartSheet } from "./chart-sheet";
import type { CellBlock, SheetPlan, WorkbookPlan } from "./plan";
import { starterPatterns } from "./starter-charts";
import {
  starterGarments,
  starterNotes,
  starterPeople,
  starterProjects,
  starterStash,
  starterTape,
  starterWishes,
} from "./starter-rows";
import { titleBlocks, trackerSheet } from "./tracker";
import { cautionsSheet } from "./trackers/cautions";
import { fitNotes } from "./trackers/fit-notes";
import { INDEX, MEASURES, SETTINGS } from "./trackers/formulas";
import { garments } from "./trackers/garments";
import { measurementsSheet } from "./trackers/measurements";
import { projects } from "./trackers/projects";
import { settingsSheet } from "./trackers/settings";
import { shoppingListSheet } from "./trackers/shopping-list";
import { stash } from "./trackers/stash";
import { findSheet, wishList } from "./trackers/wish-list";

/** The sheet that is shown first. */
export const START_SHEET = "Start here";

/** Live answers on the first sheet: what it says, and its formula. */
const NOW: readonly (readonly [label: string, formula: string])[] = [
  [
    "Ada cuts the camp shirt in size",
    `=SEW.CUTSIZE(${INDEX},${MEASURES},"shirt",${INDEX},"Ada","Camp shirt",${SETTINGS})`,
  ],
  ["What is still to buy costs", "='Shopping list'!B3"],
  ["How sure that is", "='Shopping list'!B4"],
];

const TRY: readonly string[] = [
  "Measurements: change Ada's hip from 41 to 39. The skirt's size, its yards, the shopping list and its cost follow.",
  "Projects: change a width from 45 to 60, or type a blend over a size: 14+18.",
  "Stash: make the batiste 2 metres long, and see on the shopping list what has to be bought now.",
  "Wish list: type 40% under Percent off beside the evening coat.",
  "Find by detail: write collar, or: patch pockets, yoke.",
  "In the pane: paste the back of an envelope, look at what it understood, and insert it. The pattern index takes it in.",
  "A cell that shows an error says why: rest the pointer on it.",
];

const FIRST_LINE = 4;

function startSheet(): SheetPlan {
  const tries = FIRST_LINE + NOW.length + 1;
  const lines = (row: number, cells: readonly string[], style?: "heading" | "total"): CellBlock => ({
    row,
    column: 0,
    cells: cells.map((line) => [line]),
    format: "text",
    ...(style ? { style } : {}),
  });
  return {
    sheet: START_SHEET,
    blocks: [
      ...titleBlocks("The choir's wardrobe: a workbook to try things in", [
        "A small choir's concert clothes and the sewing of its keeper's family. Everything is invented; change what you like.",
      ]),
      lines(FIRST_LINE - 1, ["As things stand"], "heading"),
      lines(
        FIRST_LINE,
        NOW.map(([label]) => label),
      ),
      lines(tries, ["What to try"], "heading"),
      lines(
        tries + 1,
        TRY.map((line, index) => `${index + 1}. ${line}`),
      ),
    ],
    tables: [],
    widths: [34, 60],
    print: "upright",
  };
}

/** A pattern of the starter with its tables as they were read. */
export interface StarterChart {
  readonly name: string;
  readonly tables: readonly ChartTable[];
}

/** The starter's charts, read from what somebody would paste. @throws RangeError when one of them has an error in it */
export function starterCharts(): StarterChart[] {
  return starterPatterns.map(({ name, pasted }) => {
    const { tables, issues } = readCharts(pasted);
    const wrong = issues.find(({ severity }) => severity === "error");
    if (wrong) throw new RangeError(`the chart of ${name} can't be read: ${wrong.message}`);
    return { name, tables };
  });
}

/**
 * The starter workbook, to be carried out step by step: each step's formulas look only at what is there already. Three
 * people, six patterns in inches and centimetres, twelve projects, eight stash pieces; every figure that follows from
 * another is a formula.
 *
 * @example starterWorkbook().flatMap(({ sheets = [] }) => sheets).map(({ sheet }) => sheet)[0] //=> "Start here"
 */
export function starterWorkbook(): WorkbookPlan[] {
  const charts = starterCharts();
  const taken: string[] = [];
  const sheets = charts.map(({ name, tables }) => {
    const made = chartSheet(name, tables, taken);
    taken.push(...made.tableNames);
    return { name, ...made };
  });
  const entries = sheets.flatMap(({ name, tableNames }) => tableNames.map((table) => ({ pattern: name, table })));
  const figures = charts
    .flatMap(({ tables }) => tables)
    .reduce((sum, { rows, sizes }) => sum + rows.length * sizes.length, 0);
  const index = indexPlan(entries, figures, false);
  const people = measurementsSheet("in", starterPeople, "in", starterTape);
  return [
    {
      ...index,
      sheets: [
        startSheet(),
        people,
        settingsSheet("both"),
        trackerSheet(garments, "in", starterGarments),
        ...sheets.map(({ plan }) => plan),
        ...(index.sheets ?? []),
      ],
    },
    {
      sheets: [
        trackerSheet(wishList, "both", starterWishes),
        findSheet(),
        trackerSheet(projects, "both", starterProjects),
        trackerSheet(stash, "both", starterStash),
        shoppingListSheet("both", starterProjects.length),
        trackerSheet(fitNotes, "both", starterNotes),
        cautionsSheet(),
      ],
    },
    {
      cells: [
        {
          sheet: START_SHEET,
          blocks: [{ row: FIRST_LINE, column: 1, cells: NOW.map(([, formula]) => [{ formula }]), style: "total" }],
        },
      ],
      show: START_SHEET,
    },
  ];
}

/** Every sheet of the starter workbook, in the order of its tabs. */
export const starterSheets = (): SheetPlan[] => starterWorkbook().flatMap(({ sheets = [] }) => sheets);
