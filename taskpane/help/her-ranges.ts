/** What of hers the examples look at. */
import type { HerRanges } from "../../src/index";
import { readTable, type TableFacts } from "../excel";
import { garmentsFor } from "../fit/answers";
import { readInventory, type Pattern } from "../patterns";

type Row = readonly (string | number | boolean)[];

/**
 * A pattern whose body chart has the bust, else her first; its garment, a place of it with a figure that is on it; her
 * first person; a size, a view and a width that her charts have.
 */
export async function herRanges(): Promise<HerRanges> {
  const read = await readInventory();
  if (!read.ok) return {};
  const { patterns, people, facts } = read.value;
  const chosen = await withBust(patterns);
  const { pattern } = chosen;
  const named = (name: string) => whole(facts.tables.find((table) => table.name === name));
  const fabric = pattern?.tables.fabric[0] ?? patterns.flatMap(({ tables }) => tables.fabric)[0];
  const [line] = fabric ? await rowsOf(fabric) : [];
  const cell = (heading: string) => {
    const value = fabric && line?.[fabric.headings.indexOf(heading)];
    return value === undefined || value === "" ? undefined : String(value);
  };
  return {
    pattern: pattern?.name,
    body: whole(pattern?.tables.body[0]),
    finished: whole(pattern?.tables.finished[0]),
    fabric: whole(fabric),
    measures: people && `${people.table}[#All]`,
    person: people?.names[0],
    garment: pattern && (await garmentsFor(read.value, pattern)).suggested,
    ...chosen.figure,
    size: pattern?.tables.body[0]?.headings.at(-1),
    fabricSize: fabric?.headings.at(-1),
    view: cell("View"),
    width: cell("Width") && `${cell("Width")} ${cell("Width unit") ?? "in"}`,
    pieces: named("Pieces"),
    projects: named("Projects"),
    stash: named("Stash"),
  };
}

const whole = (table: { readonly name: string } | undefined) => table && `${table.name}[#All]`;

async function rowsOf(table: TableFacts): Promise<readonly Row[]> {
  const read = await readTable(table.name);
  return read.ok ? read.value.values.slice(1) : [];
}

interface Chosen {
  readonly pattern?: Pattern;
  readonly figure?: Pick<HerRanges, "place" | "measure">;
}

async function withBust(patterns: readonly Pattern[]): Promise<Chosen> {
  let first: Chosen | undefined;
  for (const pattern of patterns) {
    const [body] = pattern.tables.body;
    if (!body) continue;
    const rows = await rowsOf(body);
    const bust = rows.find(([label]) => /^\s*bust\s*$/i.test(String(label)));
    const row = bust ?? rows[0];
    const figure = row && {
      place: String(row[0]),
      measure: `${row.at(-1)} ${row[body.headings.indexOf("Unit")] ?? ""}`.trim(),
    };
    const found = { pattern, ...(figure && { figure }) };
    if (bust) return found;
    first ??= found;
  }
  return first ?? (patterns[0] ? { pattern: patterns[0] } : {});
}
