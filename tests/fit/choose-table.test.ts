import { describe, expect, it } from "vitest";
import type { Chart } from "../../src/chart/model";
import { chooseTable, finishedFor, type TableQuestion } from "../../src/fit/choose-table";
import { answer } from "../../src/problem";
import { bodyOf, finishedFrom, got, missesChart, said } from "./bodies";

/** The misses chart with other size labels, and each place so much more. */
function like(ending: string, more: Readonly<Record<string, number>>): Chart {
  return {
    ...missesChart,
    sizes: missesChart.sizes.map((size) => `${size}${ending}`),
    rows: missesChart.rows.map((row) => ({
      ...row,
      values: row.values.map((value) => (value as number) + (more[row.place] ?? 0)),
    })),
  };
}
// Miss petite has a 1 in shorter back waist: Choosing the Correct Pattern, sewing.org (read).
const petite = like("P", { backWaistLength: -1 });
/** The same sizes, the back waist 1 in shorter. */
const regularPetite = like("", { backWaistLength: -1 });
/** The same labels, one size larger at the bust: of our own making. */
const vain = like("", { bust: 2 });

const question = (change: Partial<TableQuestion> = {}): TableQuestion => ({
  garment: "shirt",
  pattern: "Choir blouse",
  answers: "size",
  optionsFor: () => answer({}),
  ...change,
});

describe("chooseTable", () => {
  it("takes the only table, and of two units the one that the body names", () => {
    expect(got(chooseTable([missesChart], bodyOf({ bust: 34 }), question()))).toBe(missesChart);
    const cm: Chart = { ...missesChart, unit: "cm", rows: missesChart.rows.map((row) => ({ ...row, values: row.values.map((value) => (value as number) * 2.54) })) }; // prettier-ignore
    expect(got(chooseTable([missesChart, cm], bodyOf({ bust: 88 }, null, "cm"), question()))).toBe(cm);
  });

  it("goes by the back waist length where the girths suit both", () => {
    const body = (backWaistLength: number) => bodyOf({ bust: 34, backWaistLength });
    expect(got(chooseTable([missesChart, petite], body(15.5), question()))).toBe(petite);
    expect(got(chooseTable([missesChart, petite], body(16.25), question()))).toBe(missesChart);
    expect(got(chooseTable([petite, missesChart], body(15.5), question()))).toBe(petite);
  });

  it("takes the first of two tables that give the same size", () => {
    expect(got(chooseTable([missesChart, regularPetite], bodyOf({ bust: 34 }), question()))).toBe(missesChart);
    expect(got(chooseTable([regularPetite, missesChart], bodyOf({ bust: 34 }), question()))).toBe(regularPetite);
  });

  it("refuses two tables that answer differently, names both, and says what would tell", () => {
    expect(said(chooseTable([missesChart, petite], bodyOf({ bust: 34 }), question()))).toBe(
      "Choir blouse has body tables that suit equally well and answer differently: size 12 by the table 6 to 24 and size 12P by the table 6P to 24P. Measure the back waist length, which tells the figure type, or choose the range of one table as the chart.",
    );
    // Back waist 15 3/4 lies half way between the two; nothing else is printed that would tell.
    expect(said(chooseTable([missesChart, petite], bodyOf({ bust: 34, backWaistLength: 15.75 }), question()))).toMatch(
      /size 12P by the table 6P to 24P\. Choose the range of one table as the chart\.$/,
    );
    expect(said(chooseTable([missesChart, vain], bodyOf({ bust: 38 }), question({ pattern: "this pattern" })))).toMatch(
      /^This pattern has .*: size 16 by the first table \(6 to 24\) and size 14 by the second table \(6 to 24\)\./,
    );
  });

  it("wants the whole blend to agree where a blend is asked for", () => {
    const wide = like("", { hip: 1 });
    const body = bodyOf({ bust: 34, hip: 36 });
    expect(got(chooseTable([missesChart, wide], body, question()))).toBe(missesChart);
    expect(chooseTable([missesChart, wide], body, question({ answers: "blend" })).ok).toBe(false);
    const alone = bodyOf({ bust: 34 });
    expect(got(chooseTable([missesChart, wide], alone, question({ answers: "blend" })))).toBe(missesChart);
  });

  it("lets a table give way that has no size for the body, and refuses as the first does where none has", () => {
    const noHip: Chart = { ...missesChart, rows: missesChart.rows.filter(({ place }) => place !== "hip") };
    const body = bodyOf({ waist: 26.5 });
    expect(said(chooseTable([missesChart, noHip], body, question()))).toMatch(/bust isn't measured/);
    const tight = finishedFrom(petite, { bust: 0 });
    const optionsFor = (chart: Chart) => answer(chart === petite ? { finished: tight } : {});
    const large = bodyOf({ bust: 46 });
    expect(got(chooseTable([petite, missesChart], large, question({ optionsFor })))).toBe(missesChart);
  });
});

describe("finishedFor", () => {
  it("takes the table with the chart's sizes, in its unit, and none where there is none", () => {
    const misses = finishedFrom(missesChart, { bust: 4 });
    const short = finishedFrom(petite, { bust: 4 });
    expect(got(finishedFor(petite, [misses, short], "Choir blouse"))).toBe(short);
    expect(got(finishedFor(missesChart, [{ ...misses, unit: "cm" }, misses], "Choir blouse"))).toBe(misses);
    expect(got(finishedFor(missesChart, [], "Choir blouse"))).toBeUndefined();
  });
  it("refuses two tables of which either could be meant", () => {
    const misses = finishedFrom(missesChart, { bust: 4 });
    expect(said(finishedFor(missesChart, [misses, finishedFrom(missesChart, { bust: 5 })], "Choir blouse"))).toMatch(
      /^Choir blouse has more than one table/,
    );
  });
});
