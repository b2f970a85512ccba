import { readUnit, type PrintedUnit } from "../length/units";
import { convert, smallUnitOf } from "../length/length";
import { answer, refuse, type Result } from "../problem";
import { cellText, errorCellProblem, isErrorCell, isMissing, LARGEST, readMeasureCell, readUnitCell } from "./cell";
import type { Cell, Cells } from "./cell";
import { columnOf, isPlaceCell, turned, withoutBlanks } from "./cells-grid";
import { columnRole, isUnitWord, unitInLabel } from "./cells-words";
import { namesText } from "./cells-names";
import type { Body, Fault, Measure, Place } from "./model";
import { placeName, readPlace } from "./places";
import { labelKey } from "./size-label";

/**
 * The people measured in a range: labels down the first column and a column of measures for each person, with or without
 * headings (Measurement, Unit, the names), or places in the first row and a row for each person, names first. The
 * direction with more known places wins. A column without a single measure (where the tape went) is nobody.
 *
 * @param person the one to take, by heading; a blank takes all
 * @example readBodyCells([["Bust", 34], ["Hip", 38]]) //=> { ok: true, value: [{ name: null, measures: Map { bust, hip } }] }
 */
export function readBodyCells(cells: Cells, person: Cell = null): Result<readonly Body[]> {
  const filled = withoutBlanks(cells);
  const [corner = null] = filled[0] ?? [];
  if (filled.length === 0) return refuse("emptyChart", { wanted: "measurements" });
  if (filled.length === 1 && filled[0]!.length === 1 && isErrorCell(corner)) return errorCellProblem(corner);
  const across = Math.max(...filled.slice(0, 8).map(places));
  const down = turned(filled).slice(0, 4).map(places);
  if (Math.max(across, ...down) === 0) return nobody(cells);
  const grid = across > Math.max(...down) ? turned(fromFirstPlaces(filled, across)) : filled;
  const labels = across > Math.max(...down) ? 0 : down.indexOf(Math.max(...down));
  return people(grid, labels, person);
}

/**
 * The same for a column of answers: a body a row stays in its row. A blank row is null instead of being left out, so that
 * an answer never stands beside another person's name; blank rows at the end are left out.
 *
 * @example readBodyLines([["Bust", "Hip"], [34, 38], [null, null], [36, 40]]) //=> { ok: true, value: [{ … }, null, { … }] }
 */
export function readBodyLines(cells: Cells): Result<readonly (Body | null)[]> {
  const filled = withoutBlanks(cells);
  const across = Math.max(0, ...filled.slice(0, 8).map(places));
  const down = turned(filled).slice(0, 4).map(places);
  if (filled.length < 2 || across <= Math.max(0, ...down)) return readBodyCells(cells);
  const below = turned(fromFirstPlaces(cells, across)).filter((line) => !line.every(isMissing));
  const last = below.reduce((most, line) => Math.max(most, lastFilled(line)), 0);
  const bodies = people(
    below.map((line) => line.slice(0, last + 1)),
    0,
    null,
    true,
  );
  return bodies.ok ? answer(bodies.value.map((body) => (body.measures.size === 0 ? null : body))) : bodies;
}

function lastFilled(line: readonly Cell[]): number {
  let last = line.length - 1;
  while (last > 0 && isMissing(line[last] ?? null)) last--;
  return last;
}

/** How many places a line names, among its first cells: enough to tell which way the measurements lie. */
const places = (line: readonly Cell[]): number => line.slice(0, 200).filter(isPlaceCell).length;

/** From the row of places on: what stands above is a title. */
const fromFirstPlaces = (filled: Cells, across: number): Cells =>
  filled.slice(filled.findIndex((row) => places(row) === across));

/** @param everyone whether a column without a single measure counts too */
function people(grid: Cells, labels: number, person: Cell, everyone = false): Result<readonly Body[]> {
  const first = grid.findIndex((row) => isPlaceCell(row[labels]));
  const isUnits = (row: readonly Cell[]): boolean => columnRole(cellText(row[labels] ?? null)) === "unit";
  const above = grid.slice(0, first);
  // A row of units may stand between the names and the measurements.
  const headings = headingsAbove(
    above.filter((row) => !isUnits(row)),
    labels,
  );
  const rows = grid.slice(first).filter((row) => !isMissing(row[labels] ?? null));
  const unitColumn = unitColumnOf(headings, rows, labels);
  const others = (grid[0] ?? [])
    .map((_, column) => column)
    .filter((column) => column !== labels && column !== unitColumn);
  const named = (column: number): string | null => {
    const cell = headings?.[column] ?? null;
    return isMissing(cell) ? null : cellText(cell);
  };
  if (isErrorCell(person)) return errorCellProblem(person);
  const measured = (column: number): boolean =>
    columnOf(rows, column).some((cell) => isErrorCell(cell) || readMeasureCell(cell, "a measurement").ok);
  const columns = isMissing(person)
    ? others.filter((column) => everyone || measured(column))
    : others.filter((column) => labelKey(named(column) ?? "") === labelKey(cellText(person)));
  if (!isMissing(person) && columns.length === 0) {
    const known = others.filter(measured).map(named);
    return refuse("unknownPerson", { text: cellText(person), known: namesText(known.filter((name) => name !== null)) });
  }
  const unitRow = [...above, ...rows].find(isUnits);
  const unitOf = (row: readonly Cell[], column: number): Cell =>
    unitColumn === undefined ? (unitRow?.[column] ?? null) : (row[unitColumn] ?? null);
  // Thousands of people may stand side by side: the labels are read once, not for each.
  const lines = rows.flatMap((row): Line[] => {
    const label = cellText(row[labels] ?? null);
    if (columnRole(label) === "unit") return [];
    return [{ row, place: readPlace(label, "body") ?? label, unit: unitInLabel(label) }];
  });
  return answer(
    columns.map((column) => ({
      name: named(column),
      measures: measuresOf(lines, column, (row) => unitOf(row, column)),
    })),
  );
}

/** A row of measures with its label read. */
interface Line {
  readonly row: readonly Cell[];
  readonly place: Place;
  /** The unit that the label names. */
  readonly unit: PrintedUnit | undefined;
}

/** The row of names: the last row above the places in which something stands beside the labels. */
function headingsAbove(above: Cells, labels: number): readonly Cell[] | undefined {
  return above.filter((row) => row.some((cell, column) => column !== labels && !isMissing(cell))).at(-1);
}

function unitColumnOf(headings: readonly Cell[] | undefined, rows: Cells, labels: number): number | undefined {
  const byName = headings?.findIndex((cell) => typeof cell === "string" && columnRole(cell) === "unit") ?? -1;
  if (byName >= 0) return byName;
  const width = rows[0]?.length ?? 0;
  const columns = Array.from({ length: width }, (_, column) => column).filter((column) => column !== labels);
  return columns.find((column) => {
    const cells = columnOf(rows, column).filter((cell) => !isMissing(cell));
    return cells.length > 0 && cells.every((cell) => typeof cell === "string" && isUnitWord(cell));
  });
}

function measuresOf(
  lines: readonly Line[],
  column: number,
  unitOf: (row: readonly Cell[]) => Cell,
): ReadonlyMap<Place, Measure | Fault> {
  const measures = new Map<Place, Measure | Fault>();
  for (const { row, place, unit: labelUnit } of lines) {
    const cell = row[column] ?? null;
    if (isMissing(cell) || (typeof cell === "string" && NOTHING.has(cell.trim().toLowerCase()))) continue;
    const unit = readUnitCell(unitOf(row));
    const measure = unit.ok ? readMeasure(cell, unit.value ?? labelUnit) : { fault: unit.problem };
    const before = measures.get(place);
    if (before && !same(before, measure)) measures.set(place, twice(place));
    else measures.set(place, measure);
  }
  return measures;
}

/** Why nobody was found: the only measure may be a date that Excel made, else there is no measure. */
function nobody(cells: Cells): Result<never> {
  const date = cells.flat().find((cell) => typeof cell === "number" && cell > LARGEST);
  if (date !== undefined) return refuse("excelDate", { text: cellText(date) });
  return refuse("noBody", { found: cellText(withoutBlanks(cells)[0]?.[0] ?? null) });
}

/** What people write where nothing was measured. */
const NOTHING: ReadonlySet<string> = new Set(["-", "–", "—", "n/a"]);

const twice = (place: Place): Fault => ({ fault: refuse("placeTwice", { place: placeName(place) }).problem });

function same(one: Measure | Fault, other: Measure | Fault): boolean {
  return "value" in one && "value" in other && one.value === other.value && one.unit === other.unit;
}

/** A measure in inches or centimetres; a unit in the text wins over the one of its row. */
function readMeasure(cell: Cell, rowUnit: PrintedUnit | undefined): Measure | Fault {
  const read = readMeasureCell(cell, "a measurement");
  if (!read.ok) {
    const { problem } = read;
    return problem.code === "errorCell" ? { fault: problem, error: problem.details.error } : { fault: problem };
  }
  const { value, unit } = read.value;
  return unit ? bodyMeasure(value, { unit }) : bodyMeasure(value, rowUnit);
}

/** A length as a body's measure: yards as inches, metres as centimetres. */
export function bodyMeasure(value: number, printed: PrintedUnit | undefined): Measure {
  if (!printed) return { value, unit: null };
  const to = smallUnitOf(printed.unit);
  return { value: convert(value * (printed.factor ?? 1), printed.unit, to), unit: to };
}

/** A measurement argument: a bare number has no unit of its own. */
export function readMeasureArgument(cell: Cell, wanted = "a measurement"): Result<Measure> {
  const read = readMeasureCell(cell, wanted);
  if (!read.ok) return read;
  const { value, unit } = read.value;
  return answer(bodyMeasure(value, unit ? readUnit(unit) : undefined));
}

/** The one body of a range, for answers that can be for one person only. */
export function readOneBody(cells: Cells, person: Cell = null): Result<Body> {
  const bodies = readBodyCells(cells, person);
  if (!bodies.ok) return bodies;
  const [first, second] = bodies.value;
  if (!first) return nobody(cells);
  if (!second) return answer(first);
  const names = bodies.value.map(({ name }, index) => name ?? `person ${index + 1}`);
  return refuse("severalPeople", { known: namesText(names) });
}
