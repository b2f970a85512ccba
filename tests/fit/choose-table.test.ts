import { describe, expect, it } from "vitest";
import type { Chart } from "../../src/chart/model";
import { chooseTable, finishedFor, type TableQuestion } from "../../src/fit/choose-table";
import { answer, refuse } from "../../src/problem";
import { bodyOf, finishedFrom, got, missesChart, said, settingsOf, withFault } from "./bodies";

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

  it("lets a measure speak for the table that prints it, and one that none prints for no table", () => {
    const bustOnly: Chart = { ...petite, rows: petite.rows.filter(({ place }) => place !== "hip") };
    expect(got(chooseTable([bustOnly, missesChart], bodyOf({ bust: 34, hip: 40 }), question()))).toBe(missesChart);
    const cm: Chart = { ...missesChart, unit: "cm", rows: missesChart.rows.map((row) => ({ ...row, values: row.values.map((value) => (value as number) * 2.54) })) }; // prettier-ignore
    const hat = bodyOf({ bust: 34 });
    const measures = new Map([...hat.measures, ["head", { value: 56, unit: "cm" }] as const]);
    expect(got(chooseTable([cm, missesChart], { ...hat, measures }, question()))).toBe(missesChart);
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

  it("takes the only table whatever the body lacks, and wants at least one", () => {
    expect(got(chooseTable([missesChart], bodyOf({ waist: 28 }), question()))).toBe(missesChart);
    expect(() => chooseTable([], bodyOf({ bust: 34 }), question())).toThrow(RangeError);
  });

  const withRow = (chart: Chart, place: string, value: number): Chart => ({
    ...chart,
    rows: [...chart.rows, { place, label: place, values: chart.sizes.map(() => value) }],
  });
  const girths = (chart: Chart): Chart => ({
    ...chart,
    rows: chart.rows.filter(({ place }) => place !== "backWaistLength"),
  });

  it("asks for every measure that would tell, and for none that only one of the tables prints", () => {
    const body = bodyOf({ bust: 34 });
    const both = [withRow(missesChart, "height", 66), withRow(petite, "height", 62)];
    expect(said(chooseTable(both, body, question()))).toMatch(
      / Measure the back waist length or height, which tells the figure type, or choose the range of one table as the chart\.$/,
    );
    expect(said(chooseTable([girths(missesChart), petite], body, question()))).toMatch(
      / by the table 6P to 24P\. Choose the range of one table as the chart\.$/,
    );
  });

  it("goes by the settings for a garment of her own, and refuses one that it doesn't know", () => {
    const settings = settingsOf(["Like", "choir gown", "", "shirt", ""]);
    const own = question({ garment: "choir gown", optionsFor: () => answer({ settings }) });
    const body = bodyOf({ bust: 34, backWaistLength: 15.5 });
    expect(got(chooseTable([missesChart, petite], body, own))).toBe(petite);
    expect(said(chooseTable([missesChart, petite], body, question({ garment: "choir gown" })))).toMatch(
      /^"choir gown" is not a garment known here\./,
    );
  });

  it("hands on what its settings or finished measurements are refused for, and what a blend is", () => {
    const no = refuse("blank", { wanted: "a Unit column" });
    const body = bodyOf({ bust: 34, waist: 28 });
    const sentence = "This is blank: a Unit column is needed here.";
    expect(said(chooseTable([missesChart, petite], body, question({ optionsFor: () => no })))).toBe(sentence);
    const second = (chart: Chart) => (chart === petite ? no : answer({}));
    expect(said(chooseTable([missesChart, petite], body, question({ optionsFor: second })))).toBe(sentence);
    const fault = { fault: { code: "unreadableLength", details: { text: "28?" } } } as const;
    const unread = withFault(body, "waist", fault);
    expect(said(chooseTable([missesChart, petite], unread, question({ answers: "blend" })))).toBe(
      `"28?" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`,
    );
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
  it("knows the table by any size that both have, and takes the only one as it is", () => {
    const misses = finishedFrom(missesChart, { bust: 4 });
    const short = finishedFrom(petite, { bust: 4 });
    const some: Chart = { ...missesChart, sizes: ["6", "8"], rows: missesChart.rows.map((row) => ({ ...row, values: row.values.slice(0, 2) })) }; // prettier-ignore
    expect(got(finishedFor(some, [short, misses], "Choir blouse"))).toBe(misses);
    const first: Chart = { ...misses, sizes: ["6"] };
    expect(got(finishedFor(some, [short, first], "Choir blouse"))).toBe(first);
    const metric: Chart = { ...misses, unit: "cm" };
    expect(got(finishedFor(missesChart, [short, metric], "Choir blouse"))).toBe(metric);
    // With other sizes only, the answer says later which size isn't there.
    expect(got(finishedFor(missesChart, [short], "Choir blouse"))).toBe(short);
  });
  it("refuses two tables of which either could be meant", () => {
    const misses = finishedFrom(missesChart, { bust: 4 });
    expect(said(finishedFor(missesChart, [misses, finishedFrom(missesChart, { bust: 5 })], "Choir blouse"))).toMatch(
      /^Choir blouse has more than one table/,
    );
  });
});
