/** How short our layouts are: against published optima, against ready-made packers, against our own longer search. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { packer as Packer } from "guillotine-packer";
import type { MaxRectsPacker as MaxRects } from "maxrects-packer";
import potpack from "potpack";
import { cellTries, cuttingLayout } from "../../src/fabric/layout/cutting-layout";
import { layoutSearch } from "../../src/fabric/layout/layout-search";
import { seededRandom } from "../../src/fabric/layout/random";
import type { Cloth, CutPiece } from "../../src/fabric/layout/types";
import { boxCases, garmentCases, sewingCases, type BoxCase } from "../fabric/instances";
import { checkLayout } from "../fabric/layout-checker";
import type { BenchRow } from "./row";

// Two of the packers are old modules; one has no types.
const require = createRequire(join(import.meta.dirname, "layout.bench.ts"));
const { packer } = require("guillotine-packer") as { packer: typeof Packer };
// Its main entry can't be loaded by Node.
const maxRectsModule: string = "maxrects-packer/dist/maxrects-packer.mjs";
const { MaxRectsPacker } = (await import(maxRectsModule)) as { MaxRectsPacker: typeof MaxRects };
const ShelfPack = require("@mapbox/shelf-pack") as new (
  width: number,
  height: number,
) => { pack(bins: readonly { w: number; h: number }[]): readonly { y: number; h: number }[] };

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;
const over = (length: number, optimum: number): number => (length / optimum - 1) * 100;

/** A checked layout's length. */
function laid(pieces: readonly CutPiece[], cloth: Cloth, tries: number, seed = 1): number {
  const layout = cuttingLayout(pieces, cloth, { tries, seed });
  checkLayout(layout, pieces, cloth);
  return layout.length!;
}

/** The mean over cases and seeds of how far a layout is over its optimum, in percent; and the mean time of one in ms. */
function overOptimum(cases: readonly BoxCase[], tries: number, seeds: readonly number[]) {
  const from = process.cpuUsage().user;
  const each = cases.map(({ pieces, width, optimum }) =>
    mean(seeds.map((seed) => over(laid(pieces, { width }, tries, seed), optimum))),
  );
  return { each, percent: mean(each), time: (process.cpuUsage().user - from) / 1000 / (cases.length * seeds.length) };
}

export async function bench(): Promise<BenchRow[]> {
  const c = boxCases("ht-c1-c7.json");
  const quick = overOptimum(c, 2000, [1, 2, 3, 4, 5]);
  const long = overOptimum(c, 30_000, [1, 2, 3]);
  const rows: BenchRow[] = [
    percent("Hopper-Turton C1-C7 over the optimum, 2,000 tries, seeds 1-5", quick.percent, "≤ 1.4 (1.0)"),
    { name: "the same, time for one of them", value: quick.time, unit: "ms", wanted: "≤ 400" },
    percent("Hopper-Turton C1-C7 over the optimum, 30,000 tries, seeds 1-3", long.percent, "≤ 0.95 (0.6)"),
    percent("of these C1-C3", mean(long.each.slice(0, 9)), "(0)"),
    percent(
      "Burke N1-N12 over the optimum, 30,000 tries",
      overOptimum(boxCases("bkw-n1-n12.json"), 30_000, [1]).percent,
      "≤ 0.3 (0.1)",
    ),
    percent(
      "Hopper T and N (70) over the optimum, 30,000 tries",
      overOptimum(boxCases("hopper-t-n.json"), 30_000, [1]).percent,
      "≤ 2.7 (1.8)",
    ),
    percent(
      "C1-C7 with turning over the optimum, 30,000 tries",
      overOptimum(boxCases("ht-c1-c7.json", true), 30_000, [1]).percent,
      "≤ 0.3 (0.1)",
    ),
    percent("40 sewing-like sets, folded and single, 2,000 tries over 200,000", sewing(), "≤ 1 (0.3)"),
    { name: "a cell with 40 pieces, median", value: fortyPieces(), unit: "ms", wanted: "≤ 60" },
    ...outlines(),
    ...surprises(),
    ...areaRule(),
    ...readyMade(c),
  ];
  return rows;
}

const percent = (name: string, value: number, wanted: string): BenchRow => ({ name, value, unit: "%", wanted });

function sewing(): number {
  const all = sewingCases().flatMap(({ pieces, width }) =>
    (["folded", "single"] as const).map((layout) => {
      const cloth = { width, layout };
      return over(laid(pieces, cloth, 2000), laid(pieces, cloth, 200_000));
    }),
  );
  return mean(all);
}

/** Lists of 40 pieces made from the sewing-like sets, several together. */
function fortyPieces(): number {
  const lists = Array.from({ length: 15 }, (_, i) => {
    const pieces = sewingCases()
      .slice(i * 2, i * 2 + 8)
      .flatMap((set) =>
        set.pieces.map((piece) => ({ ...piece, name: `${set.name} ${piece.name}`, onFold: false, count: 1 })),
      );
    return pieces.slice(0, 40);
  });
  for (const list of lists) cuttingLayout(list, { width: 150 }, { tries: 200 });
  return median(
    lists.map((list) => {
      const from = process.cpuUsage().user;
      cuttingLayout(list, { width: 150 }, { tries: 2000 });
      return (process.cpuUsage().user - from) / 1000;
    }),
  );
}

/** Two seconds of this process's time each; the only rows that depend on the machine's speed. */
function outlines(): BenchRow[] {
  const each = garmentCases().map(({ name, pieces, width, bestLength }) => {
    const cloth = { width, nap: "without" as const };
    const search = layoutSearch(pieces, cloth);
    for (const from = performance.now(); performance.now() - from < 2000 && !search.finished;) search.run(5);
    const layout = search.layout();
    checkLayout(layout, pieces, cloth);
    return percent(`outlines: ${name} over the best known, 2 s`, over(layout.length!, bestLength), "");
  });
  return [
    ...each,
    percent(
      "outlines, four garment sets, over the best known length, 2 s",
      mean(each.map(({ value }) => Number(value))),
      "≤ 16 (10)",
    ),
  ];
}

/** How often a wider cloth takes more, or one more piece less: no law forbids it to a search, and it should be rare. */
function surprises(): BenchRow[] {
  const random = seededRandom(7);
  const cases = 300;
  let wider = 0;
  let fewer = 0;
  for (let i = 0; i < cases; i++) {
    const pieces = Array.from({ length: 6 + random.next(12) }, (_, at) => ({
      name: `p${at}`,
      width: 5 + random.next(90) / 2,
      length: 5 + random.next(140) / 2,
      count: 1 + random.next(2),
      onFold: random.next(5) === 0,
    }));
    const cloth = { width: 140, layout: random.next(2) === 0 ? ("single" as const) : ("folded" as const) };
    const tries = cellTries(pieces);
    const length = laid(pieces, cloth, tries);
    if (laid(pieces, { ...cloth, width: 141 + random.next(20) }, tries) > length + 1e-9) wider++;
    if (laid(pieces.slice(1), cloth, cellTries(pieces.slice(1))) > length + 1e-9) fewer++;
  }
  return [
    percent("random cases in which wider cloth takes more", (wider / cases) * 100, "≤ 2"),
    percent("random cases in which one piece less takes more", (fewer / cases) * 100, "≤ 2"),
  ];
}

/** The area rule, rounded up to 1/8 yd, against every pair of figures in the printed conversion chart. */
function areaRule(): BenchRow[] {
  const widths = [36, 39, 41, 45, 50, 54, 60, 66];
  const chart = readFileSync(join(import.meta.dirname, "../figures/fabric-width-eighths.csv"), "utf8")
    .split("\n")
    .filter((line) => /^\d/.test(line))
    .map((line) => line.split(",").map(Number));
  const off = chart.flatMap((row) =>
    widths.flatMap((from, i) =>
      widths.flatMap((to, j) => (i === j ? [] : [Math.ceil((row[i]! * from) / to - 1e-9) - row[j]!])),
    ),
  );
  const within = off.filter((eighths) => Math.abs(eighths) <= 1).length / off.length;
  return [
    percent("area rule within 1/8 yd of the printed width chart", within * 100, ""),
    { name: "area rule, most below the chart", value: Math.min(...off) / 8, unit: "yd" },
    { name: "area rule, most above the chart", value: Math.max(...off) / 8, unit: "yd" },
  ];
}

/** What ready-made packers make of C1-C7 without turning, one call each; the smallest height in which they find room. */
function readyMade(cases: readonly BoxCase[]): BenchRow[] {
  const boxes = ({ pieces }: BoxCase) =>
    pieces.flatMap(({ width, length, count }) => Array.from({ length: count }, () => ({ width, height: length })));
  const fits = (one: BoxCase, holds: (height: number) => boolean): number => {
    let height = one.optimum;
    while (!holds(height)) height++;
    return over(height, one.optimum);
  };
  const maxRects = cases.map((one) =>
    fits(one, (height) => {
      const bins = new MaxRectsPacker(one.width, height, 0, {
        smart: false,
        pot: false,
        square: false,
        allowRotation: false,
      });
      bins.addArray(boxes(one).map(({ width, height }) => ({ width, height, x: 0, y: 0 })) as never);
      return bins.bins.length === 1;
    }),
  );
  const guillotine = cases.map((one) =>
    fits(one, (height) => {
      const found = packer({ binWidth: one.width, binHeight: height, items: boxes(one) }, { allowRotation: false });
      return (found?.length ?? 2) === 1;
    }),
  );
  const shelves = cases.map((one) => {
    const shelf = new ShelfPack(one.width, 10 * one.optimum);
    const bins = shelf.pack(
      boxes(one)
        .sort((a, b) => b.height - a.height)
        .map(({ width, height }) => ({ w: width, h: height })),
    );
    return over(Math.max(...bins.map(({ y, h }) => y + h)), one.optimum);
  });
  // It chooses a width of its own, so its area counts.
  const pots = cases.map((one) => {
    const { w, h } = potpack(boxes(one).map(({ width, height }) => ({ w: width, h: height })));
    return over((w * h) / one.width, one.optimum);
  });
  return [
    percent("ready-made: maxrects-packer, C1-C7", mean(maxRects), ""),
    percent("ready-made: guillotine-packer, C1-C7", mean(guillotine), ""),
    percent("ready-made: @mapbox/shelf-pack, C1-C7", mean(shelves), ""),
    percent("ready-made: potpack, C1-C7 (by area, its own width)", mean(pots), ""),
  ];
}
