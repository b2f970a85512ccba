/**
 * The chart reader: how long it takes, whether that grows with the text, and how many slips in a good chart it would let
 * through without a word. The charts are invented: even steps, so that every slip is known.
 */
import { readCharts, type ChartReading } from "../../src/index";
import type { BenchRow } from "./row";

type Grid = readonly (readonly string[])[];
interface Slip {
  readonly grid: Grid;
  readonly row: number;
  readonly column: number;
}

const SIZES = ["8", "10", "12", "14", "16", "18", "20"];
const PLACES: readonly (readonly [string, number, number])[] = [
  ["Bust", 31.5, 1.5],
  ["Waist", 24, 1.5],
  ["Hip", 33.5, 1.5],
  ["Back waist length", 15.75, 0.25],
];
const good: Grid = [
  ["Size", ...SIZES],
  ...PLACES.map(([label, first, step]) => [label, ...SIZES.map((_, index) => String(first + index * step))]),
];

const layouts: Readonly<Record<string, (grid: Grid) => string>> = {
  tabs: (grid) => grid.map((row) => row.join("\t")).join("\n"),
  commas: (grid) => grid.map((row) => row.join(",")).join("\n"),
  aligned: (grid) =>
    grid.map((row) => row.map((cell, column) => (column ? cell.padStart(8) : cell.padEnd(20))).join("")).join("\n"),
  "one space": (grid) => grid.map((row) => row.join(" ")).join("\n"),
  html: (grid) =>
    `<table>${grid.map((row) => `<tr>${row.map((cell) => `<td>${cell}</td>`).join("")}</tr>`).join("")}</table>`,
};

const replaced = (row: number, change: (cells: readonly string[]) => readonly string[]): Grid =>
  good.map((cells, at) => (at === row ? change(cells) : cells));

/** Every slip of one kind, in every measurement row and column. */
const slips: Readonly<Record<string, (row: number, column: number) => Grid | undefined>> = {
  "a dropped cell": (row, column) => replaced(row, (cells) => cells.filter((_, at) => at !== column)),
  "a doubled cell": (row, column) =>
    replaced(row, (cells) => cells.flatMap((cell, at) => (at === column ? [cell, cell] : [cell]))),
  "two cells swapped": (row, column) =>
    column + 1 < good[0]!.length
      ? replaced(row, (cells) =>
          cells.map((cell, at) => (at === column ? cells[at + 1]! : at === column + 1 ? cells[at - 1]! : cell)),
        )
      : undefined,
  "a wrong first digit": (row, column) =>
    replaced(row, (cells) =>
      cells.map((cell, at) => (at === column ? `${(Number(cell[0]) % 9) + 1}${cell.slice(1)}` : cell)),
    ),
  "the digits turned round": (row, column) =>
    replaced(row, (cells) =>
      cells.map((cell, at) => (at === column && cell[0] !== cell[1] ? `${cell[1]}${cell[0]}${cell.slice(2)}` : cell)),
    ),
  "a letter for a digit": (row, column) =>
    replaced(row, (cells) => cells.map((cell, at) => (at === column ? cell.replace(/\d/, "O") : cell))),
};

/** The rows of the table, in all five layouts: which slips each counts, and how many may pass. */
const SILENT: readonly (readonly [string, readonly string[], string])[] = [
  ["readCharts: dropped or doubled cells that pass in silence", ["a dropped cell", "a doubled cell"], "0"],
  [
    "readCharts: swapped, wrong digit, digits turned round, in silence",
    ["two cells swapped", "a wrong first digit", "the digits turned round"],
    "as near 0 as can be",
  ],
  ["readCharts: a letter for a digit, in silence", ["a letter for a digit"], ""],
];

/** Whether the reading has a figure that is not the good chart's, in a row about which nothing is said. */
function isSilent(reading: ChartReading, { row }: Slip): boolean {
  const [label, first, step] = PLACES[row - 1]!;
  const wrong = reading.tables.some((table) =>
    table.rows.some((found) => {
      if (found.label !== label) return false;
      return found.values.some((value, at) => {
        const size = SIZES.indexOf(table.sizes[at]!);
        return value !== null && (typeof value !== "number" || Math.abs(value - (first + size * step)) > 1e-9);
      });
    }),
  );
  const missing = !reading.tables.some((table) => table.rows.some((found) => found.label === label));
  const said = reading.issues.some((issue) => issue.line === row + 1);
  return (wrong || missing) && !said;
}

function silentShare(slip: string, layout: string): { silent: number; all: number } {
  let [silent, all] = [0, 0];
  for (let row = 1; row < good.length; row++)
    for (let column = 1; column < good[row]!.length; column++) {
      const grid = slips[slip]!(row, column);
      if (!grid || grid[row]!.join() === good[row]!.join()) continue;
      all++;
      if (isSilent(readCharts(layouts[layout]!(grid)), { grid, row, column })) silent++;
    }
  return { silent, all };
}

function milliseconds(text: string, times = 9): number {
  const taken = Array.from({ length: times }, () => {
    const began = performance.now();
    readCharts(text);
    return performance.now() - began;
  });
  return taken.sort((a, b) => a - b)[Math.floor(times / 2)]!;
}

const block = layouts.tabs!(good);
const hundredRows = [
  good[0]!,
  ...Array.from({ length: 100 }, (_, at) =>
    good[1 + (at % 4)]!.map((cell, column) => (column ? cell : `${cell} ${at}`)),
  ),
]
  .map((row) => row.join("\t"))
  .join("\n");
const kilobytes = (size: number) => {
  const part = `Pattern notes\n${block}\n\n`;
  return part.repeat(Math.ceil((size * 1024) / part.length)).slice(0, size * 1024);
};

export async function bench(): Promise<BenchRow[]> {
  for (let warm = 0; warm < 30; warm++) readCharts(block);
  const [ten, forty] = [milliseconds(kilobytes(10)), milliseconds(kilobytes(40))];
  const heap = () => process.memoryUsage().rss / 1024 / 1024;
  const before = heap();
  const huge = milliseconds(kilobytes(5 * 1024), 1);
  const rows: BenchRow[] = [
    { name: "readCharts, 100 rows", value: milliseconds(hundredRows), unit: "ms", wanted: "≤ 20" },
    { name: "readCharts, 10 KB", value: ten, unit: "ms", wanted: "≤ 50" },
    { name: "readCharts, 40 KB against 10 KB", value: forty / ten, unit: "×", wanted: "about 4" },
    { name: "readCharts, 5 MB answered", value: huge, unit: "ms", wanted: "≤ 2000" },
    { name: "memory that the 5 MB took", value: Math.max(0, heap() - before), unit: "MB", wanted: "< 200" },
  ];
  for (const [name, kinds, wanted] of SILENT) {
    const found = kinds.flatMap((slip) => Object.keys(layouts).map((layout) => silentShare(slip, layout)));
    const [silent, all] = [
      found.reduce((sum, { silent }) => sum + silent, 0),
      found.reduce((sum, { all }) => sum + all, 0),
    ];
    rows.push({ name, value: `${silent} of ${all}`, wanted });
  }
  return rows;
}
