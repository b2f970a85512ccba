import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ChartTable } from "../../src/chart/model";
import { readCharts } from "../../src/chart/read-charts";
import { fabricTable, measureTable } from "./arbitrary-charts";
import { joins, written, type Numbers } from "./layouts";

/** What must come back: everything but views that are absent or null. */
const plain = (table: ChartTable): unknown => ({
  ...table,
  rows: table.rows.map((row) => ({ ...row, view: row.view ?? null })),
});

const numbersFor = (layout: string, unit: string): fc.Arbitrary<Numbers> =>
  unit === "in" || unit === "yd"
    ? fc.constantFrom<Numbers>("spaced", "glyphs", "hyphen")
    : fc.constantFrom<Numbers>("decimal", ...(layout === "quoted" || layout !== "spaces" ? (["comma"] as const) : []));

describe("readCharts", () => {
  it.each(Object.keys(joins))("reads any measurement chart back from %s", (layout) => {
    fc.assert(
      fc.property(
        measureTable.chain((table) => fc.tuple(fc.constant(table), numbersFor(layout, table.unit))),
        ([table, numbers]) => {
          const text = written(table, joins[layout]!, numbers);
          expect(readCharts(text).tables.map(plain), text).toEqual([plain(table)]);
        },
      ),
      { numRuns: 60 },
    );
  });

  it.each(["tabs", "pipes", "left", "html", "spaces"])(
    "reads any measurement chart back from %s with a size in each row",
    (layout) => {
      fc.assert(
        fc.property(
          measureTable.chain((table) => fc.tuple(fc.constant(table), numbersFor(layout, table.unit))),
          ([table, numbers]) => {
            const text = written(table, joins[layout]!, numbers, true);
            expect(readCharts(text).tables.map(plain), text).toEqual([plain(table)]);
          },
        ),
        { numRuns: 60 },
      );
    },
  );

  it.each(Object.keys(joins).filter((layout) => layout !== "onePerLine" && layout !== "colons" && layout !== "dots"))(
    "reads any fabric chart back from %s",
    (layout) => {
      fc.assert(
        fc.property(
          fabricTable.chain((table) => fc.tuple(fc.constant(table), numbersFor(layout, table.unit))),
          ([table, numbers]) => {
            const text = written(table, joins[layout]!, numbers);
            expect(readCharts(text).tables.map(plain), text).toEqual([plain(table)]);
          },
        ),
        { numRuns: 60 },
      );
    },
  );
});
