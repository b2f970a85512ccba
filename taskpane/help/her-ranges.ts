/** What of hers the examples look at. */
import { isBlank, readUnitCell, type BodyUnit, type HerRanges } from "../../src/index";
import { readTable, type TableFacts } from "../excel";
import { garmentsFor } from "../fit/answers";
import { readInventory, tableCells, type Pattern, type People } from "../patterns";
import { usualUnits } from "../units";

type Row = readonly (string | number | boolean)[];

/**
 * A pattern whose body chart has the bust, if there is one, and is in her unit, if there is one; its garment, a place of
 * it with a figure that is on it; her first person.
 *
 * @param chosen the unit that she has chosen; else the one she measures in
 */
export async function herRanges(chosen?: BodyUnit): Promise<HerRanges & { readonly unit: BodyUnit }> {
  const read = await readInventory();
  if (!read.ok) return { unit: chosen ?? usualUnits() };
  const { patterns, people, facts } = read.value;
  const unit = chosen ?? (await measuredIn(people)) ?? usualUnits();
  const found = await suitable(patterns, unit);
  const { pattern } = found;
  const named = (name: string) => whole(facts.tables.find((table) => table.name === name));
  const fabric = pattern?.tables.fabric[0] ?? patterns.flatMap(({ tables }) => tables.fabric)[0];
  const [line] = fabric ? await rowsOf(fabric) : [];
  const cell = (heading: string) => {
    const value = fabric && line?.[fabric.headings.indexOf(heading)];
    return value === undefined || value === "" ? undefined : String(value);
  };
  return {
    unit,
    pattern: pattern?.name,
    body: whole(pattern?.tables.body[0]),
    finished: whole(pattern?.tables.finished[0]),
    fabric: whole(fabric),
    measures: people && `${people.table}[#All]`,
    person: people?.names[0],
    garment: pattern && (await garmentsFor(read.value, pattern)).suggested,
    ...found.figure,
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

/** What most of her measurements are in; of those that are filled in, or of all the rows while none is. */
async function measuredIn(people: People | undefined): Promise<BodyUnit | undefined> {
  const read = people && (await tableCells(people.table));
  if (!read?.ok) return undefined;
  const [headings = [], ...rows] = read.value;
  const at = headings.findIndex((heading) => /^\s*unit\s*$/i.test(String(heading)));
  const persons = people!.names.map((name) => headings.indexOf(name));
  const filled = rows.filter((row) => persons.some((person) => !isBlank(row[person] ?? null)));
  const counts = { in: 0, cm: 0 };
  for (const row of filled.length > 0 ? filled : rows) {
    const unit = readUnitCell(row[at] ?? null);
    if (unit.ok && (unit.value?.unit === "in" || unit.value?.unit === "cm")) counts[unit.value.unit]++;
  }
  return counts.in === counts.cm ? undefined : counts.in > counts.cm ? "in" : "cm";
}

interface Suitable {
  readonly pattern?: Pattern;
  readonly figure?: Pick<HerRanges, "place" | "measure">;
}
/** A table is read for each pattern that is looked at: once there is something to show, a long list is not gone through. */
const LOOKED_AT = 20;

async function suitable(patterns: readonly Pattern[], unit: BodyUnit): Promise<Suitable> {
  let best: Suitable = patterns[0] ? { pattern: patterns[0] } : {};
  let points = 0;
  for (const [index, pattern] of patterns.entries()) {
    if (points >= BUST && index >= LOOKED_AT) break;
    const [body] = pattern.tables.body;
    if (!body) continue;
    const rows = await rowsOf(body);
    const bust = rows.find(([label]) => /^\s*bust\s*$/i.test(String(label)));
    const row = bust ?? rows[0];
    const written = String(row?.[body.headings.indexOf("Unit")] ?? "");
    const now = 1 + (bust ? BUST : 0) + (written === unit ? 1 : 0);
    if (now <= points) continue;
    points = now;
    best = { pattern, ...(row && { figure: { place: String(row[0]), measure: `${row.at(-1)} ${written}`.trim() } }) };
    if (bust && written === unit) break;
  }
  return best;
}
/** Of the two a bust counts for more: most functions about fit are shown on it. */
const BUST = 2;
