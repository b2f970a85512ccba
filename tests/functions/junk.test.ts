import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import * as bust from "../../functions/bust";
import * as easeWords from "../../functions/ease-words";
import * as fabric from "../../functions/fabric";
import * as fit from "../../functions/fit";
import * as length from "../../functions/length";
import * as project from "../../functions/project";
import * as size from "../../functions/size";
import * as tracker from "../../functions/tracker";
import { startFunctions } from "../practice/custom-functions";
import { campShirtFabric, classes, indexHeadings, misses } from "./call";

beforeAll(() => void startFunctions());

/** What a cell may hold: what people type by mistake, what Excel makes of it, and what it hands over as objects. */
const cell = fc.oneof(
  fc.constantFrom(null, "", 0, -0, true, false, -1, 14, 34, 92, 46577, 1e300, -1e300, 1e-12),
  fc.constantFrom(
    "bust",
    "Size",
    "Unit",
    "in",
    "cm",
    "A",
    "12-16",
    "30 1/2",
    "86-90",
    "6-12",
    "=1+1",
    "+",
    "-",
    "@x",
    "00",
    "18W",
  ),
  fc.double({ noDefaultInfinity: true, noNaN: true }),
  fc.string({ maxLength: 12 }),
  fc.string({ unit: "binary", maxLength: 6 }),
  fc
    .constantFrom("#DIV/0!", "#N/A", "#SPILL!")
    .map((error) => ({ type: "Error", basicType: "Error", basicValue: error })),
  fc.constantFrom(
    { type: "FormattedNumber", basicType: "Double", basicValue: 34 },
    { type: "Entity", basicType: "Error", basicValue: "#VALUE!", text: "Bust" },
    {},
    undefined,
    NaN,
    Infinity,
  ),
);
const range = fc.array(fc.array(cell, { minLength: 0, maxLength: 5 }), { maxLength: 5 });
const charts = fc.constantFrom<unknown[][]>(misses(), classes(), campShirtFabric, [indexHeadings]);
/** A good chart with some of its cells spoilt. */
const spoilt = fc
  .tuple(charts, fc.array(fc.tuple(fc.nat(9), fc.nat(11), cell), { maxLength: 6 }))
  .map(([chart, slips]) => {
    const copy = chart.map((row) => [...row]);
    for (const [row, column, slip] of slips) if (copy[row]) copy[row][column] = slip;
    return copy;
  });
const argument = fc.oneof(
  range,
  spoilt,
  cell,
  fc.constant(null),
  cell.map((one) => [[one]]),
);

function expectLegal(result: unknown): void {
  const rows = Array.isArray(result) ? (result as unknown[][]) : [[result]];
  expect(rows.length).toBeGreaterThan(0);
  for (const row of rows) {
    expect(row.length).toBe(rows[0]!.length);
    expect(row.length).toBeGreaterThan(0);
    for (const one of row) expectCell(one);
  }
}
function expectCell(one: unknown): void {
  if (one instanceof CustomFunctions.Error) return expect(one.message).toMatch(/\.$/);
  if (typeof one === "number") return expect(Number.isFinite(one)).toBe(true);
  if (typeof one === "object")
    return expect(one).toMatchObject({ type: "Error", basicValue: expect.stringMatching(/^#/) });
  expect(["string", "boolean"]).toContain(typeof one);
}

describe("every cell function", () => {
  const functions = Object.entries({
    ...length,
    ...size,
    ...fabric,
    ...project,
    ...bust,
    ...easeWords,
    ...fit,
    ...tracker,
  }) as [string, (...args: any[]) => unknown][];
  test.each(functions)("%s answers junk with cells or with an error that says why", (name, run) => {
    fc.assert(
      fc.property(fc.array(argument, { minLength: run.length, maxLength: run.length + 1 }), (args) => {
        const given = name === "chartIndex" ? [args[0], args.slice(1)] : args;
        let result: unknown;
        try {
          result = run(...given);
        } catch (thrown) {
          expect(thrown).toBeInstanceOf(CustomFunctions.Error);
          expect((thrown as Error).message).toMatch(/\.$/);
          expect((thrown as Error).message).not.toContain("Unexpected");
          return;
        }
        expectLegal(result);
        expect(JSON.stringify(result, (_, one) => (one instanceof Error ? one.message : one))).not.toContain(
          "Unexpected",
        );
      }),
      { numRuns: 300 },
    );
  });
});
