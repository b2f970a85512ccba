import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Cells } from "../../src/chart/cell";
import { chartSource, readChartCells } from "../../src/chart/cells";
import type { Chart, ChartTable, FabricChart } from "../../src/chart/model";
import { sentence } from "../../src/words";
import { tablePlan } from "../../src/sheet/chart-sheet";

const cases = join(import.meta.dirname, "../cases");
const tables = readdirSync(cases).flatMap((name) => {
  const file = join(cases, name, "expected.json");
  if (!existsSync(file)) return [];
  const { tables } = JSON.parse(readFileSync(file, "utf8")) as { tables: ChartTable[] };
  return tables.map((table, at) => [`${name} ${at + 1}`, table] as const);
});

/** A chart table as it stands on the sheet after insertion. */
function inserted(table: ChartTable): Cells {
  const { columns, rows } = tablePlan(table, "Chart", 0);
  return [
    columns.map(({ heading }) => heading),
    ...rows.map((row) => row.map((cell) => cell as string | number | null)),
  ];
}

const body = (cells: Cells): Chart => {
  const read = readChartCells(cells, { role: "body" });
  if (!read.ok) throw new Error(sentence(read.problem));
  return read.value;
};
const fabric = (cells: Cells): FabricChart => {
  const read = readChartCells(cells, { role: "fabric" });
  if (!read.ok) throw new Error(sentence(read.problem));
  return read.value;
};
const refusal = (cells: Cells, role: "body" | "fabric" = "body"): string => {
  const read = role === "body" ? readChartCells(cells, { role }) : readChartCells(cells, { role });
  return read.ok ? "read" : read.problem.code;
};

describe("readChartCells", () => {
  const printed = tables.filter(
    ([, { sizes }]) => new Set(sizes.map((size) => size.toLowerCase())).size === sizes.length,
  );
  test("finds inserted charts to read", () => expect(printed.length).toBeGreaterThan(20));
  test.each(printed)("reads back what insertion writes: %s", (_, table) => {
    if (table.kind === "fabric") {
      const chart = fabric(inserted(table));
      expect(chart.sizes).toEqual(table.sizes);
      expect(chart.unit).toBe(table.unit);
      const fields = ({ view, part, width, widthUnit, nap, values }: FabricChart["rows"][number]) => ({
        view,
        part,
        width,
        ...(width === null ? {} : { widthUnit }),
        nap,
        values,
      });
      expect(chart.rows.map(fields)).toEqual(table.rows.filter(isPrinted).map(fields));
      return;
    }
    const read = readChartCells(inserted(table), { role: table.kind });
    if (!read.ok) throw new Error(sentence(read.problem));
    expect(read.value.sizes).toEqual(table.sizes);
    expect(read.value.unit).toBe(table.unit);
    expect(read.value.rows.map(({ place, view, values }) => ({ place, view: view ?? null, values }))).toEqual(
      table.rows.map(({ place, view, values }) => ({ place, view: view ?? null, values })),
    );
  });
  const isPrinted = ({ width, values }: FabricChart["rows"][number]) =>
    width !== null || values.some((one) => one !== null);

  test("takes the unit from the numbers where nothing says it", () => {
    expect(
      body([
        ["Size", 8],
        ["Bust", 31.5],
        ["Waist", 24],
      ]).unit,
    ).toBe("in");
    expect(
      body([
        ["Size", 36],
        ["Bust", 84],
        ["Waist", 66],
        ["Hip", 90],
      ]).unit,
    ).toBe("cm");
    // A yoke of one's own could be either.
    expect(
      body([
        ["Size", 8],
        ["Yoke", 30],
      ]).unit,
    ).toBe(null);
    expect(
      fabric([
        ["View", "Width", 8],
        ["A", 45, 2],
      ]),
    ).toMatchObject({ unit: "yd" });
    expect(
      fabric([
        ["View", "Width", 8],
        ["A", 150, 2],
      ]),
    ).toMatchObject({ unit: "m" });
  });
  test("takes it from a column, a label, a figure or the title before that", () => {
    expect(
      body([
        ["Size", "Unit", 8],
        ["Bust", "cm", 31.5],
      ]).unit,
    ).toBe("cm");
    expect(
      body([
        ["Size", 8],
        ["Bust (cm)", 31.5],
      ]).unit,
    ).toBe("cm");
    expect(
      body([
        ["Size", 8, 10],
        ["Bust", "31.5 cm", 33],
      ]).unit,
    ).toBe("cm");
    expect(
      body([
        ["Body measurements in cm", null],
        ["Size", 8],
        ["Bust", 31.5],
      ]).unit,
    ).toBe("cm");
  });
  test("converts a row that is alone in its unit, and makes two charts of rows in both", () => {
    const chart = body([
      ["Size", "Unit", "8", "10"],
      ["Bust", "in", 31.5, 32.5],
      ["Waist", "in", 24, 25],
      ["Hip", "cm", 85.09, "34 1/2 in"],
    ]);
    expect(chart.unit).toBe("in");
    expect(chart.rows[2]!.values).toEqual([33.5, 34.5]);
    const source = chartSource([
      ["Size", "Unit", "8"],
      ["Bust", "in", 31.5],
      ["Bust", "cm", 80],
      ["Hip", "in", 33.5],
      ["Hip", "cm", 85],
    ]);
    const charts = source.ok ? source.value.charts("body", null) : source;
    expect(charts.ok && charts.value.map(({ unit, rows }) => [unit, rows.map(({ values }) => values[0])])).toEqual([
      ["in", [31.5, 33.5]],
      ["cm", [80, 85]],
    ]);
  });
  test("reads figures as people type them", () => {
    const row = (...cells: (string | number)[]) =>
      body([["Size", ...cells.map((_, at) => `s${at}`)], ["Bust", "in", ...cells].filter((cell) => cell !== "in")])
        .rows[0]!.values;
    expect(row("30 1/2", "31½", "32,5", 33, "34-36", "36 1/2 to 38", "–", "n/a")).toEqual([
      30.5, 31.5, 32.5, 33, { low: 34, high: 36 }, { low: 36.5, high: 38 }, null, null,
    ]); // prettier-ignore
    expect(row("=1+1", -3, 45000, "soon")).toMatchObject([
      { fault: { code: "unreadableFigure" } },
      { fault: { code: "unreadableFigure" } },
      { fault: { code: "excelDate" } },
      { fault: { code: "unreadableFigure" } },
    ]);
  });
  test("wants headings", () => {
    expect(
      refusal([
        ["Bust", 31.5, 32.5],
        ["Waist", 24, 25],
      ]),
    ).toBe("chartHeadings");
    expect(
      refusal([
        ["Yoke", "A", "in", 31.5],
        ["Bust", "", "in", 38],
      ]),
    ).toBe("chartHeadings");
    expect(refusal([["A", "main", 45, "in", "with", "yd", 2.1]], "fabric")).toBe("chartHeadings");
    expect(refusal([["", "main", 45, "in", "with", "yd", 2.1]], "fabric")).toBe("chartHeadings");
    expect(
      refusal([
        ["S", 84, 66],
        ["M", 90, 72],
      ]),
    ).toBe("chartHeadings");
    expect(refusal([["A paste of prose that is no chart."]])).toBe("chartHeadings");
    expect(
      refusal(
        [
          ["Size", "8"],
          ["Bust", 31.5],
        ],
        "fabric",
      ),
    ).toBe("wrongTable");
  });
  test("says whether a place is read for a body or for a garment", () => {
    const cells: Cells = [
      ["Size", "8"],
      ["Rückenlänge", 40],
    ];
    expect(body(cells).rows[0]!.place).toBe("backWaistLength");
    const finished = readChartCells(cells, { role: "finished" });
    expect(finished.ok && finished.value.rows[0]!.place).toBe("backLength");
  });
  test("chooses the table of the index by the body's measures", () => {
    const head = ["Pattern", "Kind", "Unit", "Measurement", "Size", "Low", "High"];
    const rows = (unit: string, size: string, bust: number, hip: number) => [
      ["P", "body", unit, "Bust", size, bust, bust],
      ["P", "body", unit, "Hip", size, hip, hip],
    ];
    const index = [head, ...rows("in", "12", 34, 36), ...rows("cm", "12", 87, 92)];
    const near = (value: number, unit: "in" | "cm" | null) => {
      const read = readChartCells(index, { role: "body", pattern: "p", near: [{ place: "bust", value, unit }] });
      return read.ok && read.value.unit;
    };
    expect(near(88, null)).toBe("cm");
    expect(near(35, null)).toBe("in");
    expect(near(35, "cm")).toBe("cm");
    expect(near(88, "in")).toBe("in");
  });
  test("reads a chart the same with its columns shuffled, its rows turned, blanks and a title put in", () => {
    const figure = fc.integer({ min: 120, max: 200 }).map((quarters) => quarters / 4);
    const chart = fc.record({
      bust: fc.array(figure, { minLength: 3, maxLength: 3 }),
      hip: fc.array(figure, { minLength: 3, maxLength: 3 }),
    });
    const plain = ({ bust, hip }: { bust: number[]; hip: number[] }): Cells => [
      ["Size", "Unit", "8", "10", "12"],
      ["Bust", "in", ...bust],
      ["Hip", "in", ...hip],
    ];
    const facts = (cells: Cells) => {
      const { sizes, unit, rows } = body(cells);
      return {
        unit,
        rows: rows.map(({ place, values }) => [place, Object.fromEntries(sizes.map((size, at) => [size, values[at]]))]),
      };
    };
    fc.assert(
      fc.property(
        chart,
        fc.shuffledSubarray([0, 1, 2, 3, 4], { minLength: 5 }),
        fc.constantFrom(null, "", 0),
        (figures, order, blank) => {
          const cells = plain(figures);
          const shuffled = cells.map((row) => order.map((column) => row[column]!));
          expect(facts(shuffled)).toEqual(facts(cells));
          const spaced: Cells = [
            ["Camp shirt", blank, blank, blank, blank],
            cells[0]!.map(() => blank),
            ...cells.flatMap((row) => [row, row.map(() => blank)]),
          ];
          expect(facts(spaced)).toEqual(facts(cells));
          const withoutUnit = cells.map((row) => row.filter((_, column) => column !== 1));
          const turned = withoutUnit[0]!.map((_, column) => withoutUnit.map((row) => row[column]!));
          expect(facts(turned)).toEqual(facts(withoutUnit));
        },
      ),
    );
  });
});
