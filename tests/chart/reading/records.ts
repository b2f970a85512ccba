/** Readings made by hand, as the rows of a chart give them. */
import type { LengthUnit } from "../../../src/length";
import type { Figure } from "../../../src/chart/model";
import { cellOf } from "../../../src/chart/reading/cell";
import type { Header } from "../../../src/chart/reading/header";
import type { FabricRecord, MeasureRecord } from "../../../src/chart/reading/record";

export const headerOf = (sizes: readonly string[], more: Partial<Header> = {}): Header => ({
  line: 1,
  label: "Size",
  layout: "grid",
  sizes,
  columns: sizes.map((size, index) => ({
    size: index,
    block: 0,
    unit: null,
    cell: cellOf(size, 1, index + 2),
    index: index + 1,
  })),
  roles: new Map(),
  unit: null,
  aliases: [],
  used: true,
  ...more,
});

/** Sizes 6, 8, 10 … as many as there are figures. */
export const sizesFor = (count: number): string[] => Array.from({ length: count }, (_, index) => String(6 + 2 * index));

const cellsFor = (figures: readonly Figure[], line: number) =>
  figures.map((_, index) => cellOf("figure", line, index + 2));

export const measureOf = (
  place: string,
  figures: readonly Figure[],
  unit: LengthUnit | null,
  more: Partial<MeasureRecord> = {},
): MeasureRecord => ({
  sort: "measure",
  kind: "body",
  header: headerOf(sizesFor(figures.length)),
  label: `The ${place}`,
  line: 2,
  figures,
  cells: cellsFor(figures, more.line ?? 2),
  place,
  known: true,
  view: null,
  ...more,
  unit,
});

export const clothOf = (
  figures: readonly Figure[],
  unit: LengthUnit | null,
  more: Partial<FabricRecord> = {},
): FabricRecord => ({
  sort: "fabric",
  header: headerOf(sizesFor(figures.length)),
  label: "Cloth",
  line: 5,
  figures,
  cells: cellsFor(figures, more.line ?? 5),
  views: [""],
  part: "main",
  widths: { in: 45, cm: null },
  nap: null,
  ...more,
  unit,
});
