/**
 * Text that begins like a formula stays text, whichever way it comes into the workbook: every path by which the pane
 * writes, times every beginning. Each path is also taken back, and the workbook is then what it was.
 */
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import {
  emptyIndexPlan,
  INDEX_HEADINGS,
  fabricFormulas,
  fitFormulas,
  measurementsSheet,
  readCharts,
  trackers,
  trackerSheet,
  type CellFormat,
  type ChartTable,
  type WorkbookPlan,
} from "../../src/index";
import { Range } from "../../src/practice/univer/book/range";
import { customFunctionsGlobal } from "../../src/practice/univer/bundle";
import { carryOut, takeBack, type Carried, type Receipt } from "../../taskpane/excel";
import { insertChart } from "../../taskpane/insert-chart";
import { comeBack, keep } from "../../taskpane/sheets/keep";
import { readNotionsOf, totalsOf } from "../../taskpane/sheets/notions";
import { addColumns, addPerson, setUp, shopCopy } from "../../taskpane/sheets/set-up";
import { loadClient, openBook, type OpenBook } from "../practice/office";
import { sourceFunctions } from "../sheet/tracker-book";
import { facts, listeningApp } from "./listening-app";

// The signs by which a spreadsheet tells a formula, bare and behind what is not seen.
// Source: "CSV injection", OWASP: = + - @, a tab, a carriage return; the apostrophe is Excel's own sign for text.
const BEGINNINGS = ["=1+1", "+1", "-1+cmd", "@SUM(1)", "\t=1", "\n=1", "\r=1", "'=1", '=HYPERLINK("x")'];
const DAY = new Date(2026, 2, 14);
const FORMATS: readonly CellFormat[] = [
  "general", "text", "fraction", "tenths", "thousandths", "whole", "money", "percent", "date",
]; // prettier-ignore

/** A cell that must hold this text; rows and columns are counted from 0. */
type Place = readonly [sheet: string, row: number, column: number, wanted: string];
interface Written {
  readonly places: readonly Place[];
  readonly receipt: Receipt | undefined;
}
interface Path {
  readonly name: string;
  /** Each beginning in a workbook of its own: cleaned, some of them would be the same name. */
  readonly alone?: true;
  /** What is there already. */
  readonly before?: (texts: readonly string[]) => Promise<unknown>;
  readonly write: (texts: readonly string[]) => Promise<Written>;
}

const { app, said, written } = listeningApp();
const books: OpenBook[] = [];
let functions: Awaited<ReturnType<typeof sourceFunctions>>;
beforeAll(async () => {
  loadClient();
  Object.assign(globalThis, { CustomFunctions: customFunctionsGlobal().CustomFunctions });
  functions = await sourceFunctions();
});
const open = () => books.push(openBook({ functions }));
afterAll(() => Promise.all(books.map((book) => book.dispose())));

/** What the product hands to the host that would be a formula there if it came into a cell that is not for text. */
const unguarded: unknown[] = [];
const setters = new Map<string, PropertyDescriptor>();
let isOurs = false;
beforeEach(() => {
  unguarded.length = said.length = written.length = 0;
  for (const name of ["Values", "Formulas", "FormulasLocal"]) {
    const setter = Object.getOwnPropertyDescriptor(Range.prototype, name)!;
    setters.set(name, setter);
    const set = function (this: Range, input: unknown) {
      if (isOurs) unguarded.push(...[input].flat(2).filter(looksLikeOne));
      setter.set!.call(this, input);
    };
    Object.defineProperty(Range.prototype, name, { ...setter, set });
  }
});
afterEach(() => {
  for (const [name, setter] of setters) Object.defineProperty(Range.prototype, name, setter);
});
/** No formula of ours begins with a number or makes a link, and none with anything but "=". */
const looksLikeOne = (given: unknown) => typeof given === "string" && /^\s*[+\-@]|^\s+=|^=(?:\d|HYPERLINK)/.test(given);

/** The product at work: what it hands over is looked at. */
async function ours<T>(work: () => Promise<T>): Promise<T> {
  isOurs = true;
  try {
    return await work();
  } finally {
    isOurs = false;
  }
}

async function receiptOf(work: Promise<Carried>): Promise<Receipt> {
  const carried = await work;
  if (!carried.ok) throw new Error(JSON.stringify(carried.refusal));
  return carried.receipt;
}
const carry = (plan: WorkbookPlan) => receiptOf(carryOut(plan));

/** Her own cells: nobody looks at how she typed them. A text is given with the apostrophe that makes it one. */
const hers = (sheet: string, address: string, cells: unknown[][], format?: string) =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(address);
    if (format !== undefined) range.numberFormat = cells.map((line) => line.map(() => format));
    range.formulas = cells;
    await context.sync();
  });
const herTable = async (name: string, address: string, cells: unknown[][]) => {
  await hers("Sheet1", address, cells);
  await Excel.run(async (context) => {
    context.workbook.worksheets.getItem("Sheet1").tables.add(address, true).name = name;
    await context.sync();
  });
};
const formatted = (sheet: string, address: string, format: string) =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(address);
    range.numberFormat = format as unknown as string[][];
    await context.sync();
  });
const typed = (text: string) => `'${text}`;
const column = <Cell>(cells: readonly Cell[]) => cells.map((cell) => [cell]);

/** The first cells of a sheet, more than any path fills. */
const cellsOf = (sheet: string) =>
  Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange("A1:AF70");
    range.load("values,formulas,valueTypes,numberFormat");
    await context.sync();
    const { values, formulas, valueTypes, numberFormat } = range;
    return { values, formulas, valueTypes, numberFormat } as Record<
      "values" | "formulas" | "valueTypes" | "numberFormat",
      unknown[][]
    >;
  });
async function whole() {
  const { sheets, names, tables } = await facts();
  const cells = [];
  for (const sheet of sheets) cells.push(await cellsOf(sheet));
  return { sheets, names, tables, cells };
}
/** Each place with what is found there; as it should be, all three of a place are the same. */
async function found(places: readonly Place[]) {
  const sheets = new Map<string, Awaited<ReturnType<typeof cellsOf>>>();
  for (const [sheet] of places) if (!sheets.has(sheet)) sheets.set(sheet, await cellsOf(sheet));
  return places.map(([sheet, row, at]) => {
    const { values, formulas, valueTypes } = sheets.get(sheet)!;
    return [sheet, row, at, values[row]?.[at], formulas[row]?.[at], valueTypes[row]?.[at]];
  });
}
/** Where a text stands on a sheet; for sheets whose layout is not the matter here. */
async function placed(sheet: string, wanted: readonly string[], within = 0): Promise<Place[]> {
  const { values } = await cellsOf(sheet);
  return wanted.map((text): Place => {
    for (const [row, line] of values.entries())
      for (const [at, value] of line.entries()) if (value === text && at >= within) return [sheet, row, at, text];
    return [sheet, -1, -1, text];
  });
}
/** Every cell of a sheet that holds a text, which must not be a formula's answer. */
async function allTexts(sheet: string): Promise<Place[]> {
  const { values } = await cellsOf(sheet);
  return values.flatMap((line, row) =>
    line.flatMap((value, at): Place[] => (typeof value === "string" && value !== "" ? [[sheet, row, at, value]] : [])),
  );
}
const last = (places: readonly Place[]): Written => ({ places, receipt: written.at(-1) });

/** Invented figures. */
const body = (texts: readonly string[]): ChartTable => ({
  kind: "body",
  unit: "in",
  sizes: texts,
  aliases: texts.map((label) => ({ label, sizes: texts })),
  rows: texts.map((label) => ({ place: label, label, values: texts.map((_, size) => 30 + size) })),
});
const finished = (texts: readonly string[]): ChartTable => ({
  kind: "finished",
  unit: "cm",
  sizes: texts,
  rows: texts.map((label) => ({ place: label, label, view: label, values: texts.map((_, size) => 80 + size) })),
});
const fabric = (texts: readonly string[]): ChartTable => ({
  kind: "fabric",
  unit: "yd",
  sizes: texts,
  rows: texts.map((text) => ({
    view: text,
    part: text,
    label: text,
    width: 45,
    widthUnit: "in",
    nap: null,
    values: texts.map(() => 2.5),
  })),
});
/** With a size that is one: a formula that reads a chart refuses any other, and nothing of it is shown. */
const sized = <Chart extends ChartTable>(chart: Chart): Chart => ({
  ...chart,
  aliases: undefined,
  sizes: ["12"],
  rows: chart.rows.map((row) => ({ ...row, values: row.values.slice(0, 1) })),
});
const plain = body(["12", "14"]);

async function inserted(pattern: string, tables: readonly ChartTable[]): Promise<Receipt> {
  const answer = await insertChart(pattern, tables);
  if (!answer.ok) throw new Error(answer.said);
  return answer.receipt;
}
/** A table of a chart's sheet: its heading row under the caption and the lines above it. */
const tableAt = async (name: string) => (await facts()).tables.find((table) => table.name === name)!;
const down = (sheet: string, row: number, at: number, texts: readonly string[]) =>
  texts.map((text, index): Place => [sheet, row + index, at, text]);
const across = (sheet: string, row: number, at: number, texts: readonly string[]) =>
  texts.map((text, index): Place => [sheet, row, at + index, text]);

/** Functions read the words of a table without blanks at their ends, which nobody sees. */
const asRead = (texts: readonly string[]) => texts.map((text) => text.trim());
/** A formula of ours that answers with the text at this place. */
const labelOf = (index: number) => `=INDEX(SEW.CHARTINDEX("Shirt",Shirt_body[#All]),${1 + index},9)`;
/** Formulas of ours that answer with the texts, some of them in cells that were made text cells later; and cells of hers. */
async function withFormulas(texts: readonly string[]): Promise<void> {
  await inserted("Shirt", [sized(body(texts))]);
  await hers("Sheet1", "A2:A10", column(texts.map((_, index) => labelOf(index))));
  await hers("Sheet1", "B2:B10", column(texts.map((_, index) => labelOf(index))));
  await hers("Sheet1", "C2:C10", column(texts.map(typed)));
  await hers("Sheet1", "D2:D3", [["=2+2"], ["=SEW.EASE(38,34)"]]);
  await formatted("Sheet1", "B2:B10", "@");
  await formatted("Sheet1", "D3", "@");
}

/** Projects and a stash of her own, with the texts for the words of everything. */
async function withProjects(texts: readonly string[]): Promise<void> {
  const projects = [
    ["Project", "Fabric", "Width", "Needed", "Unit", "Notions"],
    ...texts.map((text) => [typed(text), typed(text), 45, 2, "yd", typed(text)]),
    ...texts.map((text) => [typed(text), typed(`${text} b`), 45, "some", "yd", ""]),
    ...texts.map((text) => [typed(text), "Linen", 45, 1, "yd", ""]),
  ];
  await herTable("Projects", `A1:F${projects.length}`, projects);
  const stash = [
    ["Piece", "Fabric", "Width", "Length", "Unit"],
    ...texts.map((text, index) => [typed(`${text} p${index}`), "Linen", 45, 1, "yd"]),
  ];
  await herTable("Stash", `H1:L${stash.length}`, stash);
}

const PATHS: readonly Path[] = [
  {
    name: "a pattern's name, as its sheet's title and in the index",
    alone: true,
    // A name is trimmed: blanks at its ends can't be seen, and two patterns would look alike. The sheet's own name
    // has no apostrophes at its ends either, because Excel refuses them.
    async write([text = ""]) {
      const receipt = await inserted(text, [plain]);
      const name = text.trim();
      const sheet = name.replace(/^'/, "");
      return {
        receipt,
        places: [
          [sheet, 0, 0, name],
          // The first row is the formula itself; its answer goes on below.
          ["Pattern index", 4, 0, name],
        ],
      };
    },
  },
  {
    name: "a body chart's labels, sizes and other sizes",
    async write(texts) {
      const receipt = await inserted("Shirt", [body(texts)]);
      const { row } = await tableAt("Shirt_body");
      return {
        receipt,
        places: [
          ...down("Shirt", row + 1, 0, texts),
          ...across("Shirt", row, 2, texts),
          ...down(
            "Shirt",
            row - texts.length,
            0,
            texts.map((label) => `${label}: ${texts.join(", ")}`),
          ),
        ],
      };
    },
  },
  {
    name: "a finished chart's labels, views and sizes",
    async write(texts) {
      const receipt = await inserted("Shirt", [finished(texts)]);
      const { row } = await tableAt("Shirt_finished");
      return {
        receipt,
        places: [
          ...down("Shirt", row + 1, 0, texts),
          ...down("Shirt", row + 1, 1, texts),
          ...across("Shirt", row, 3, texts),
        ],
      };
    },
  },
  {
    name: "a fabric chart's views, parts and sizes",
    async write(texts) {
      const receipt = await inserted("Shirt", [fabric(texts)]);
      const { row } = await tableAt("Shirt_fabric");
      return {
        receipt,
        places: [
          ...down("Shirt", row + 1, 0, texts),
          ...down("Shirt", row + 1, 1, texts),
          ...across("Shirt", row, 6, texts),
        ],
      };
    },
  },
  {
    name: "the pattern index",
    async write(texts) {
      const receipt = await inserted("Shirt", [sized(body(texts)), sized(finished(texts)), sized(fabric(texts))]);
      const measurements = await placed("Pattern index", asRead(texts), INDEX_HEADINGS.indexOf("Measurement"));
      // Views and parts are read as words of their own; whatever stands there of them is text.
      const others = (await allTexts("Pattern index")).filter(([, row, at]) => row !== 3 || at !== 0);
      expect(others.filter(([, row, at, text]) => row > 3 && at < 5 && text.includes("HYPERLINK"))).not.toEqual([]);
      return { receipt, places: [...measurements, ...others] };
    },
  },
  {
    name: "a chart that was pasted",
    async write(texts) {
      const lines = texts.map((text) => `View ${text}\n45"\t2 1/2\t2 5/8\n${text}\t60"\t2\t2 1/8`);
      const { tables } = readCharts(
        `Body measurements (in)\nSize\t12\t14\nBust\t34\t36\n${texts.map((text) => `${text} hip\t36\t38\n${text}\t40\t42`).join("\n")}\n\nFabric, yards\nSize\t12\t14\n${lines.join("\n")}`,
      );
      const receipt = await inserted("Shirt", tables);
      const all = await allTexts("Shirt");
      // The reader leaves out what is no measurement, and signs before a word; what comes of it is text.
      return { receipt, places: all };
    },
  },
  ...Object.values(trackers).map((tracker): Path => {
    const typedIn = tracker.columns.filter(({ formula }) => formula === undefined);
    return {
      name: `what she types under every heading of ${tracker.sheet}`,
      async before() {
        await carry(emptyIndexPlan());
        if (tracker.needs.length > 0) await setUp(app, tracker.needs, await facts(), "in");
      },
      async write(texts) {
        const rows = texts.map((text) => Object.fromEntries(typedIn.map(({ heading }) => [heading, text])));
        const receipt = await carry({ sheets: [trackerSheet(tracker, "in", rows)] });
        const { row } = await tableAt(tracker.table);
        const places = typedIn.flatMap(({ heading }) => {
          const at = tracker.columns.findIndex((one) => one.heading === heading);
          return down(tracker.sheet, row + 1, at, texts);
        });
        return { receipt, places };
      },
    };
  }),
  {
    name: "a person's name, as a heading that is added",
    alone: true,
    before: async () => setUp(app, ["measurements"], await facts(), "in"),
    // Blanks in a name become single spaces: a formula has to name the column.
    async write([text = ""]) {
      expect(await addPerson(app, text, await facts(), "in")).toBe(true);
      const { row, headings } = await tableAt("Measurements");
      const name = text.replace(/\s+/g, " ").trim();
      return last([["Measurements", row, headings.length - 1, name]]);
    },
  },
  {
    name: "a person's name, measures and notes, on a new sheet",
    alone: true,
    async write([text = ""]) {
      const name = text.replace(/\s+/g, " ").trim();
      const people = [{ name: text, measures: { Bust: text, "Measured on": text } }];
      const receipt = await carry({ sheets: [measurementsSheet("in", people, "in", { Bust: text })] });
      const { row } = await tableAt("Measurements");
      const { values } = await cellsOf("Measurements");
      const of = (label: string) => values.findIndex((line) => line[0] === label);
      return {
        receipt,
        places: [
          ["Measurements", row, 4, name],
          ["Measurements", of("Bust"), 3, text],
          ["Measurements", of("Bust"), 4, text],
          ["Measurements", of("Measured on"), 4, text],
        ],
      };
    },
  },
  {
    name: "a block of cells, in every format",
    async write(texts) {
      const blocks = FORMATS.map((format, at) => ({ row: 1, column: at, cells: column(texts), format }));
      const receipt = await carry({ cells: [{ sheet: "Sheet1", blocks }] });
      return { receipt, places: FORMATS.flatMap((_, at) => down("Sheet1", 1, at, texts)) };
    },
  },
  {
    name: "cells that are written over",
    async before(texts) {
      await hers("Sheet1", "A2:A10", column(texts.map((_, row) => 7 + row)), "0.00");
      await hers("Sheet1", "B2:B10", column(texts.map((_, row) => `=SUM(${row},2)`)));
      await hers("Sheet1", "C2:C10", column(texts.map(typed)), "@");
      await hers("Sheet1", "D2:D10", column(texts.map(typed)));
      await hers("Sheet1", "E2:E10", column(texts.map(typed)), "# ?/??");
      await hers("Sheet1", "F2:F10", column(texts.map(() => "6-12")));
      await hers("Sheet1", "G2:G10", column(texts.map(() => true)));
      // A formula that was there before its cell was made one for text still calculates.
      await hers("Sheet1", "H2:H10", column(texts.map((_, row) => `=SUM(${row},4)`)));
      await formatted("Sheet1", "H2:H10", "@");
    },
    async write(texts) {
      const blocks = Array.from({ length: 8 }, (_, at) => ({ row: 1, column: at, cells: column(texts) }));
      const plan = { cells: [{ sheet: "Sheet1", blocks }] };
      expect(await carryOut(plan)).toMatchObject({ ok: false, refusal: { code: "cellsFilled" } });
      const receipt = await receiptOf(carryOut(plan, { overFilled: true }));
      return { receipt, places: blocks.flatMap((_, at) => down("Sheet1", 1, at, texts)) };
    },
  },
  {
    name: "columns that are added to a table, their headings and their cells",
    before: () => herTable("Hers", "A1:A3", [["Pattern"], ["Shirt"], ["Skirt"]]),
    async write(texts) {
      const columns = texts.map((text, index) => ({ heading: text, format: FORMATS[index]!, cell: text }));
      const receipt = await carry({ columns: [{ table: "Hers", columns }] });
      return { receipt, places: [0, 1, 2].flatMap((row) => across("Sheet1", row, 1, texts)) };
    },
  },
  {
    name: "a table of hers that gets columns of ours",
    before: (texts) => herTable("Hers", "A1:I3", [texts.map(typed), texts.map(typed), texts.map(typed)]),
    async write(texts) {
      await addColumns(app, "Hers", "wishList", await facts(), "in");
      return last([0, 1, 2].flatMap((row) => across("Sheet1", row, 0, texts)));
    },
  },
  {
    name: "the formulas of one person and one pattern",
    alone: true,
    async before([text = ""]) {
      await inserted("Shirt", [plain]);
      await setUp(app, ["measurements", "settings"], await facts(), "in");
      await addPerson(app, text, await facts(), "in");
    },
    async write([text = ""]) {
      const person = (await tableAt("Measurements")).headings.at(-1)!;
      const receipt = await carry({
        cells: [
          fitFormulas({
            sheet: "Sheet1",
            row: 0,
            column: 0,
            bodyTable: "Shirt_body",
            measuresTable: "Measurements",
            settingsTable: "Settings",
            person,
            garment: text,
            highBust: true,
            blendRows: 1,
            easeRows: 1,
            inches: true,
          }),
        ],
      });
      return { receipt, places: [["Sheet1", 0, 0, `${text} for ${person}`]] };
    },
  },
  {
    name: "the formulas of an amount of fabric, with what was chosen beside them",
    alone: true,
    before: ([text = ""]) => inserted("Shirt", [fabric([text])]),
    async write([text = ""]) {
      const receipt = await carry({
        cells: [
          fabricFormulas({
            sheet: "Shirt",
            row: 0,
            column: 9,
            table: "Shirt_fabric",
            unit: "yd",
            view: text,
            part: text,
            width: text,
            size: text,
            nap: text,
            estimate: false,
            shrinkage: 0,
            repeat: 0,
            repeatUnit: "in",
            lengths: 0,
            step: 0.125,
          }),
        ],
      });
      return { receipt, places: down("Shirt", 1, 10, [text, text, text, text, text]) };
    },
  },
  {
    name: "values that are kept",
    before: withFormulas,
    async write(texts) {
      await keep(app);
      expect(said.at(-1)).toContain(`${2 * texts.length + 2} formulas`);
      const answers = [0, 1].flatMap((at) => down("Sheet1", 1, at, asRead(texts)));
      answers.push(...down("Sheet1", 1, 2, texts));
      expect((await cellsOf("Sheet1")).values.slice(1, 3).map((line) => line[3])).toEqual([4, 4]);
      return last([...answers, ...(await placed("Pattern index", asRead(texts), 8))]);
    },
  },
  {
    name: "cells of hers beside formulas that come back",
    async before(texts) {
      await withFormulas(texts);
      await keep(app);
    },
    async write(texts) {
      expect(await comeBack(app)).toEqual([]);
      const { formulas, values } = await cellsOf("Sheet1");
      for (const [index, text] of texts.entries()) {
        const cells = [0, 1].map((at) => [formulas[index + 1]![at], values[index + 1]![at]]);
        expect(cells).toEqual(Array(2).fill([labelOf(index), text.trim()]));
      }
      return last([...down("Sheet1", 1, 2, texts), ...(await placed("Pattern index", asRead(texts), 8))]);
    },
  },
  {
    name: "the shop copy: what is bought, what is cut from the stash, what can't be counted, and notions",
    before: withProjects,
    async write(texts) {
      const now = await facts();
      const notions = await readNotionsOf(now);
      if ("said" in notions) throw new Error(notions.said);
      await shopCopy(app, now, "in", DAY, totalsOf(notions));
      const sheet = "Shop copy 14 March 2026";
      const { values } = await cellsOf(sheet);
      const clean = asRead(texts);
      const list = (title: string) => values.findIndex((line) => line[0] === title) + 2;
      return last([
        ...down(sheet, list("To buy"), 1, clean),
        ...down(
          sheet,
          list("Not counted"),
          1,
          clean.map((text) => `${text} b`),
        ),
        ...down(
          sheet,
          list("From the stash"),
          5,
          clean.map(
            (text, index) => `${text} p${index}: ${text}: cut 1 yd from this one piece; nothing of it is left.`,
          ),
        ),
        ...(await placed(sheet, clean, 1)),
      ]);
    },
  },
];

describe("text that begins like a formula", () => {
  describe.each(PATHS)("in $name", ({ alone, before, write }) => {
    const sets = alone ? BEGINNINGS.map((text) => [text]) : [BEGINNINGS];
    it.each(sets.map((set) => [set]))(
      "stays text: %j",
      async (set) => {
        open();
        await before?.(set);
        const was = await whole();
        const { places, receipt } = await ours(() => write(set));
        expect(places.length).toBeGreaterThanOrEqual(set.length);
        expect(await found(places)).toEqual(
          places.map(([sheet, row, at, text]) => [sheet, row, at, text, text, "String"]),
        );
        expect(unguarded).toEqual([]);
        expect(receipt).toBeDefined();
        expect(await ours(() => takeBack(receipt!))).toEqual({ ok: true });
        expect(await whole()).toEqual(was);
        expect(unguarded).toEqual([]);
      },
      60_000,
    );
  });
});
