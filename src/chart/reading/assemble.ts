/** Readings gathered into tables: one for each kind, unit and list of sizes. */
import { doubts } from "../../words/reading";
import type { Alias, BodyUnit, ChartTable, FabricRow, FabricUnit, MeasureRow } from "../model";
import { middle } from "./figures";
import type { Doubts, FabricRecord, MeasureRecord, Reading } from "./record";
import type { Header } from "./header";
import { unitFromNumbers } from "./unit";

/** A table with the readings its rows came from, row for row. */
export type Assembled =
  | {
      readonly kind: "body" | "finished";
      readonly unit: BodyUnit;
      readonly sizes: readonly string[];
      readonly records: readonly MeasureRecord[];
    }
  | {
      readonly kind: "fabric";
      readonly unit: FabricUnit;
      readonly sizes: readonly string[];
      readonly records: readonly FabricRecord[];
      readonly views: readonly string[];
    };

export function assemble(readings: readonly Reading[], viewsNamed: ReadonlySet<string>, found: Doubts): Assembled[] {
  const measures = readings.filter((reading) => reading.sort === "measure");
  giveUnits(measures, found);
  giveClothUnits(readings, found);
  const groups = new Map<string, Reading[]>();
  for (const reading of readings) {
    if (reading.figures.every((figure) => figure === null)) continue;
    const kind = reading.sort === "measure" ? reading.kind : "fabric";
    const key = JSON.stringify([kind, reading.unit, reading.header.sizes]);
    const group = groups.get(key);
    if (group) group.push(reading);
    else groups.set(key, [reading]);
  }
  const views = [
    ...new Set([
      ...viewsNamed,
      ...readings.flatMap((reading) => (reading.sort === "fabric" && reading.views !== "all" ? reading.views : [])),
    ]),
  ].filter((view) => view !== "");
  return [...groups.values()].map((group): Assembled => {
    const first = group[0]!;
    const { sizes } = first.header;
    return first.sort === "measure"
      ? { kind: first.kind, unit: first.unit as BodyUnit, sizes, records: group as MeasureRecord[] }
      : { kind: "fabric", unit: first.unit as FabricUnit, sizes, records: group as FabricRecord[], views };
  });
}

/** The unit of rows that print none, table by table, from the numbers. */
function giveUnits(records: readonly MeasureRecord[], found: Doubts): void {
  const groups = new Map<string, MeasureRecord[]>();
  for (const record of records.filter((other) => other.unit === null)) {
    const key = JSON.stringify([record.kind, record.header.sizes]);
    const group = groups.get(key);
    if (group) group.push(record);
    else groups.set(key, [record]);
  }
  for (const group of groups.values()) {
    const { header } = group[0]!;
    const rows = group.map((record) => ({ place: record.place, label: record.label, values: record.figures }));
    let { unit, sure } = unitFromNumbers(rows, header.sizes, header.label);
    const others = new Set(records.map((record) => record.unit).filter((other) => other !== null));
    if (!sure && others.size === 1) [unit, sure] = [[...others][0] as BodyUnit, true];
    for (const record of group) record.unit = unit;
    const name = unit === "in" ? "inches" : "centimetres";
    found.warn(group[0]!.line, sure ? doubts.unitFromNumbers(name) : doubts.unitUnsure(name));
  }
}

/** Amounts without a unit: the other rows' unit, else the measurements', else from the size of the numbers. */
function giveClothUnits(readings: readonly Reading[], found: Doubts): void {
  const cloth = readings.filter((reading) => reading.sort === "fabric");
  let said = false;
  for (const record of cloth.filter((other) => other.unit === null)) {
    const near = cloth.find((other) => other.unit !== null && other.header === record.header);
    const body = readings.find((reading) => reading.sort === "measure");
    // Quarters and eighths: metres are printed in tenths.
    const isEighth = record.figures.some(
      (figure) => figure !== null && middle(figure) % 0.5 !== 0 && middle(figure) % 0.125 === 0,
    );
    record.unit = near?.unit ?? (isEighth || body?.unit === "in" ? "yd" : "m");
    if (!said && !near) found.warn(record.line, doubts.unitFromNumbers(record.unit === "yd" ? "yards" : "metres"));
    said ||= !near;
  }
}

export function tableOf(table: Assembled): ChartTable {
  const { kind, unit, sizes } = table;
  if (kind === "fabric")
    return { kind, unit, sizes, rows: table.records.flatMap((record) => clothRows(record, table)) };
  const aliases = aliasesOf(table.records.map((record) => record.header));
  const rows = table.records.map((record): MeasureRow => {
    const { place, view, label, figures } = record;
    return { place, ...(view === null ? {} : { view }), label, values: figures };
  });
  return { kind, unit, sizes, ...(aliases.length ? { aliases } : {}), rows };
}

function aliasesOf(headers: readonly Header[]): Alias[] {
  const seen = new Map<string, Alias>();
  for (const alias of headers.flatMap((header) => header.aliases))
    if (!seen.has(alias.label)) seen.set(alias.label, alias);
  return [...seen.values()];
}

function clothRows(record: FabricRecord, table: Extract<Assembled, { kind: "fabric" }>): FabricRow[] {
  const { part, label, nap, widths, figures } = record;
  const [own, other] = table.unit === "yd" ? (["in", "cm"] as const) : (["cm", "in"] as const);
  const widthUnit: BodyUnit = widths === null || widths[own] !== null ? own : other;
  const views = record.views === "all" ? (table.views.length ? table.views : [""]) : record.views;
  const values = figures.map((figure) => (figure === null ? null : middle(figure)));
  return views.map((view) => ({ view, part, label, width: widths?.[widthUnit] ?? null, widthUnit, nap, values }));
}
