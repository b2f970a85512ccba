import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCharts } from "../../src/chart/read-charts";
import { fabricTable, measureTable } from "./arbitrary-charts";
import { joins, written } from "./layouts";
import { isSilent, slip, slippedWhole } from "./mutations";

/** Pieces of charts and of mischief, thrown together. */
const piece = fc.oneof(
  fc.constantFrom(
    "Size", "Bust", "Waist", "Hip", "Taille", "Größe", "View A", "45\"", "115 cm", "with nap", "Fabric required", "Finished", "Body measurements (in)",
    "\t", "\n", "\n\n", ";", ",", "|", "  ", " ", "1/2", "½", "34", "36 1/2", "–", "-", "\"", "*", "**", "(87)", "30-31", "...", "=1+1", "+SUM(A1)", "@x",
    "-2+3", "=cmd|' /C calc'!A0", "<table>", "<tr>", "<td>", "<td rowspan=3 colspan=9>", "</table>", "StartFragment", "&nbsp;", "&lt;", "8", "10", "12", "S", "M",
    "XL", "2T", "months", "cm", "in", "yd", "Sizes 8 10 12\nBust 31 32 34\n", "\u00A0", "\u202E", "\u0000", "1 / 2", "1e9", "NaN", "9".repeat(40),
  ),
  fc.string({ maxLength: 12 }),
  fc.integer().map(String),
); // prettier-ignore
const paste = fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join(""));

const texts = (value: unknown): string[] =>
  typeof value === "string"
    ? [value]
    : value !== null && typeof value === "object"
      ? Object.values(value).flatMap(texts)
      : [];
const numbers = (value: unknown): number[] =>
  typeof value === "number"
    ? [value]
    : value !== null && typeof value === "object"
      ? Object.values(value).flatMap(numbers)
      : [];

/** 2,000 in the suite; `npm run test:long` asks for 100,000. */
const PASTES = Number(process.env.PASTES ?? 2000);

describe("readCharts on anything at all", () => {
  it("never throws, never gives a formula, and gives whole tables of finite numbers", () => {
    fc.assert(
      fc.property(
        fc.oneof(paste, fc.string({ maxLength: 300 }), fc.string({ unit: "binary", maxLength: 100 })),
        (text) => {
          const { tables, issues } = readCharts(text);
          expect(texts(tables).filter((words) => /^\s*[=+\-@]/.test(words))).toEqual([]);
          expect(numbers(tables).every(Number.isFinite)).toBe(true);
          for (const table of tables) for (const row of table.rows) expect(row.values).toHaveLength(table.sizes.length);
          expect(tables.length + issues.length).toBeGreaterThan(0);
          for (const issue of issues) expect(issue.line).toBeGreaterThanOrEqual(1);
        },
      ),
      { numRuns: PASTES },
    );
  }, 1_800_000);

  it("reads the same paste the same way twice", () => {
    fc.assert(
      fc.property(paste, (text) => {
        expect(readCharts(text)).toEqual(readCharts(text));
      }),
      { numRuns: 200 },
    );
  });

  it("refuses a paste that is too long in a sentence", () => {
    for (const text of [
      "Bust 34 36 38\n".repeat(360_000),
      "<table>" + "<tr><td>Bust</td><td>34</td></tr>".repeat(150_000),
    ]) {
      const { tables, issues } = readCharts(text);
      expect(tables).toEqual([]);
      expect(issues).toHaveLength(1);
      expect(issues[0]).toMatchObject({
        severity: "error",
        message: expect.stringMatching(/too much for one paste/) as unknown,
      });
    }
  });

  it.each(["", "   \n\t ", "Thank you for your order!", "<p>StartFragment</p>", "<table></table>", "0"])(
    "says that %j holds no chart",
    (text) => {
      const { tables, issues } = readCharts(text);
      expect(tables).toEqual([]);
      expect(issues.map((issue) => issue.severity)).toEqual(["error"]);
    },
  );
});

describe("readCharts on a chart with a slip", () => {
  const layouts = Object.keys(joins);
  it.each(["dropped", "doubled"] as const)("never misses a cell that was %s", (kind) => {
    fc.assert(
      fc.property(
        fc.oneof(measureTable, fabricTable), fc.constantFrom(...layouts), fc.nat(), fc.nat(), fc.boolean(),
        (table, layout, row, column, turned) => {
          const isOpen = table.kind === "fabric" ? ["onePerLine", "colons", "dots"] : [];
          fc.pre(!isOpen.includes(layout) && !(turned && (table.kind === "fabric" || !["tabs", "pipes", "left", "html", "spaces"].includes(layout))));
          const [rows, columns] = turned ? [table.sizes.length, table.rows.length] : [table.rows.length, table.sizes.length];
          const numbers = table.unit === "in" || table.unit === "yd" ? "spaced" : "decimal";
          const made = slip(table, joins[layout]!, numbers, kind, 1 + (row % rows), 1 + (column % columns), turned)!;
          expect(isSilent(made.reading, table), made.text).toBe(false);
        },
      ),
      { numRuns: 600 },
    );
  }); // prettier-ignore
});

describe("readCharts on a chart that lost more than a cell", () => {
  it.each(["label lost", "size lost", "size twice", "two rows in one line"] as const)("never misses it: %s", (kind) => {
    fc.assert(
      fc.property(
        fc.oneof(measureTable, fabricTable),
        fc.constantFrom(...Object.keys(joins)),
        fc.nat(),
        (table, layout, row) => {
          fc.pre(layout !== "onePerLine" && !(table.kind === "fabric" && ["colons", "dots"].includes(layout)));
          const numbers = table.unit === "in" || table.unit === "yd" ? "spaced" : "decimal";
          const text = slippedWhole(table, joins[layout]!, numbers, kind, 1 + (row % table.rows.length));
          fc.pre(text !== null);
          expect(isSilent(readCharts(text!), table), text!).toBe(false);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe("readCharts in time", () => {
  const table = (rows: number): string =>
    `Body measurements (cm)\nSize\t36\t38\t40\t42\n${"Bust\t84\t88\t92\t96\n".repeat(rows)}`;
  const least = (text: string): number =>
    Math.min(...Array.from({ length: 5 }, () => {
      const start = performance.now();
      readCharts(text);
      return performance.now() - start;
    })); // prettier-ignore

  it("grows no faster than the paste", () => {
    least(table(200));
    expect(least(table(4000)) / least(table(1000))).toBeLessThan(12);
  });

  it.each([
    ["nested tables", "<table><tr><td>".repeat(60_000)],
    ["wide spans", `<table>${"<tr><td colspan=999 rowspan=999>34</td></tr>".repeat(5000)}`],
    ["one long line", "34 1/2 ".repeat(25_000)],
    ["rows of sizes", "Size 8 10 12\n".repeat(14_000)],
    ["labels", "Back waist\n".repeat(15_000)],
    ["quotes", '"'.repeat(190_000)],
    ["dots", ". ".repeat(90_000)],
  ])("answers at once to %s", (_, text) => {
    const start = performance.now();
    readCharts(text);
    // Two seconds are the limit on an idle machine.
    expect(performance.now() - start).toBeLessThan(6000);
  });

  it("reads what it wrote in a long table", () => {
    const chart = fc.sample(measureTable, { numRuns: 1, seed: 3 })[0]!;
    expect(readCharts(written(chart, joins["tabs"]!, "decimal")).tables[0]?.sizes).toEqual(chart.sizes);
  });
});
