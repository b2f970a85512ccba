/** The patterns and people that the workbook has, found by the pattern index and by the tables' own headings. */
import {
  GUIDE_HEADING,
  INDEX_CELL,
  INDEX_SHEET,
  MEASUREMENTS_TABLE,
  TAPE_HEADING,
  isNamed,
  readIndexFormula,
  type Cells,
} from "../src/index";
import { readFacts, readRange, readTable, type Facts, type Reading, type TableFacts } from "./excel";

export type ChartKind = "body" | "finished" | "fabric";
export interface Pattern {
  readonly name: string;
  readonly sheet: string;
  readonly tables: Readonly<Record<ChartKind, readonly TableFacts[]>>;
}
export interface People {
  readonly table: string;
  readonly names: readonly string[];
}
export interface Inventory {
  readonly facts: Facts;
  readonly patterns: readonly Pattern[];
  readonly people: People | undefined;
  /** The name of the settings table, where there is one. */
  readonly settings: string | undefined;
}

export async function readInventory(): Promise<Reading<Inventory>> {
  const facts = await readFacts();
  if (!facts.ok) return facts;
  const names = await indexedNames(facts.value);
  return {
    ok: true,
    value: {
      facts: facts.value,
      patterns: patternsOf(facts.value.tables, names),
      people: peopleOf(facts.value.tables),
      settings: facts.value.tables.find(({ headings }) => has(headings, "Setting") && has(headings, "Value"))?.name,
    },
  };
}

/** Which pattern a table belongs to, by the formula of the index; compared without case. */
async function indexedNames({ sheets }: Facts): Promise<ReadonlyMap<string, string>> {
  if (!isNamed(INDEX_SHEET, sheets)) return new Map();
  const cell = await readRange(INDEX_SHEET, INDEX_CELL.address);
  const entries = cell.ok ? (readIndexFormula(String(cell.value.formulas[0]![0])) ?? []) : [];
  return new Map(entries.map(({ pattern, table }) => [table.toLowerCase(), pattern]));
}

/** A table that is in the index, or that is called like one of ours, is a chart; its headings tell which kind. */
export function patternsOf(tables: readonly TableFacts[], indexed: ReadonlyMap<string, string>): Pattern[] {
  const patterns = new Map<string, Pattern>();
  for (const table of tables) {
    const stem = /^(.+?)_(?:body|finished|fabric)(?:_\d+)?$/.exec(table.name)?.[1];
    const name = indexed.get(table.name.toLowerCase()) ?? stem;
    if (name === undefined) continue;
    const known = patterns.get(name.toLowerCase()) ?? {
      name,
      sheet: table.sheet,
      tables: { body: [], finished: [], fabric: [] },
    };
    const kind = kindOf(table.headings);
    const tablesNow = { ...known.tables, [kind]: [...known.tables[kind], table] };
    patterns.set(name.toLowerCase(), { ...known, tables: tablesNow });
  }
  return [...patterns.values()];
}

function kindOf(headings: readonly string[]): ChartKind {
  if (has(headings, "Width unit") || (has(headings, "Part") && has(headings, "Width"))) return "fabric";
  return has(headings, "View") ? "finished" : "body";
}

const NOT_PEOPLE = ["Measurement", "Unit", GUIDE_HEADING, TAPE_HEADING];

/** The measurements table: ours by its name, or any that says where the tape goes. */
export function peopleOf(tables: readonly TableFacts[]): People | undefined {
  const table =
    tables.find(({ name }) => name === MEASUREMENTS_TABLE) ??
    tables.find(({ headings }) => has(headings, GUIDE_HEADING) && has(headings, "Measurement"));
  if (!table) return undefined;
  return { table: table.name, names: table.headings.filter((heading) => !has(NOT_PEOPLE, heading)) };
}

const has = (headings: readonly string[], wanted: string): boolean =>
  headings.some((heading) => heading.trim().toLowerCase() === wanted.toLowerCase());

/**
 * The pattern to begin with: the one whose sheet is on the screen; else the one that was chosen before, else the first.
 * After the first time a choice of hers stays.
 */
export function patternToShow(patterns: readonly Pattern[], { shown }: Facts, chosen: string): string | undefined {
  const named = patterns.find(({ name }) => name === chosen) ?? patterns[0];
  return (patterns.find(({ sheet }) => sheet === shown) ?? named)?.name;
}

/** A table's cells as the engine reads them; Excel's error texts become errors. */
export async function tableCells(name: string): Promise<Reading<Cells>> {
  const read = await readTable(name);
  return read.ok ? { ok: true, value: engineCells(read.value.values) } : read;
}

const ERROR = /^#(?:N\/A|VALUE!|REF!|DIV\/0!|NUM!|NAME\?|NULL!|SPILL!|CALC!|BUSY!|GETTING_DATA)$/;

export function engineCells(values: readonly (readonly (string | number | boolean)[])[]): Cells {
  return values.map((line) =>
    line.map((value) => (typeof value === "string" && ERROR.test(value) ? { error: value } : value)),
  );
}
