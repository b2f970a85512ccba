import { describe, expect, it } from "vitest";
import { blend } from "../../src/fit/blend";
import { cutNote } from "../../src/fit/cut-note";
import { figureType } from "../../src/fit/figure-type";
import { bodyOf, got, missesChart } from "./bodies";

// Miss petite and women's petite: 1 in shorter back waist (Choosing the Correct Pattern, sewing.org, read).
const petite = {
  ...missesChart,
  sizes: missesChart.sizes.map((size) => `${size}P`),
  rows: missesChart.rows.map((row) =>
    row.place === "backWaistLength" ? { ...row, values: row.values.map((value) => (value as number) - 1) } : row,
  ),
};
const charts = [
  { name: "Misses", chart: missesChart },
  { name: "Petite", chart: petite },
];

describe("figureType", () => {
  it("goes by the back waist length and never crosses the tables", () => {
    const short = got(figureType(charts, bodyOf({ bust: 34, backWaistLength: 15.5 }), "top"));
    expect(short.best).toBe("Petite");
    expect(short.types.map(({ name, size }) => [name, size])).toEqual([
      ["Misses", "12"],
      ["Petite", "12P"],
    ]);
    expect(short.note).toBe(
      "Petite suits better: Misses, size 12, is 3/4 inch too long at the back waist length and Petite, size 12P, is 1/4 inch too short at the back waist length.",
    );
    expect(got(figureType(charts, bodyOf({ bust: 34, backWaistLength: 16.25 }), "top")).best).toBe("Misses");
  });

  it("gives a tie to none, and says so", () => {
    const tie = got(figureType(charts, bodyOf({ bust: 34, backWaistLength: 15.75 }), "top"));
    expect(tie.best).toBeNull();
    expect(tie.note).toMatch(/^Misses and Petite suit equally well: /);
  });

  it("goes by height where the back waist length leaves a tie, and never weighs one against the other", () => {
    const tall = (chart: typeof missesChart, height: number) => ({
      ...chart,
      rows: [...chart.rows, { place: "height", label: "Height", values: chart.sizes.map(() => height) }],
    });
    const [misses, short] = [
      { name: "Misses", chart: tall(missesChart, 66) },
      { name: "Petite", chart: tall(petite, 62) },
    ];
    const body = bodyOf({ bust: 34, backWaistLength: 15.75, height: 63 });
    expect(got(figureType([misses, short], body, "top")).best).toBe("Petite");
    // Only one of the two has a height: 1 in off there says nothing against 1/4 in off at the back waist.
    const heightOnly = {
      ...short,
      chart: { ...short.chart, rows: short.chart.rows.slice(0, -2).concat(short.chart.rows.slice(-1)) },
    };
    expect(heightOnly.chart.rows.some(({ place }) => place === "backWaistLength")).toBe(false);
    expect(got(figureType([charts[0]!, heightOnly], body, "top")).best).toBeNull();
  });

  it("says when nothing tells them apart", () => {
    const found = got(figureType(charts, bodyOf({ bust: 34 }), "top"));
    expect(found.best).toBeNull();
    expect(found.note).toMatch(/back waist length or height is missing/);
  });

  it("is named in the note where a pattern has several tables", () => {
    const body = bodyOf({ bust: 34, backWaistLength: 15.5 });
    const note = got(cutNote(missesChart, body, "top", { tables: [missesChart, petite] }));
    expect(note).toMatch(
      /This pattern has 2 body tables; this is from the table 6 to 24\. The table 6P to 24P suits better: the table 6 to 24, size 12, is 3\/4 inch too long at the back waist length and the table 6P to 24P, size 12P, is 1\/4 inch too short at the back waist length\.$/,
    );
    expect(got(cutNote(missesChart, body, "top", { tables: [missesChart] }))).not.toMatch(/body tables/);
    const rows = got(blend(missesChart, body, "top", { tables: [missesChart, petite] }));
    expect(rows[0]!.note).toMatch(/this is from the table 6 to 24\. The table 6P to 24P suits better/);
    expect(
      rows
        .slice(1)
        .map(({ note }) => note)
        .join(),
    ).not.toMatch(/body tables/);
  });

  it("is named too where both tables call their sizes the same, but not for one table in two units", () => {
    const same = { ...petite, sizes: missesChart.sizes };
    const body = bodyOf({ bust: 34, backWaistLength: 15.5 });
    expect(got(cutNote(missesChart, body, "top", { tables: [missesChart, same] }))).toMatch(
      /2 body tables; this is from the first table \(6 to 24\)\. The second table \(6 to 24\) suits better/,
    );
    const centimetres = { ...missesChart, unit: "cm" as const };
    expect(got(cutNote(missesChart, body, "top", { tables: [missesChart, centimetres] }))).not.toMatch(/body tables/);
  });

  it("says which table has no size for a body", () => {
    const small = {
      name: "Junior",
      chart: {
        ...missesChart,
        sizes: ["6"],
        rows: missesChart.rows.map((row) => ({ ...row, values: row.values.slice(0, 1) })),
      },
    };
    expect(got(figureType([...charts, small], bodyOf({ bust: 40, backWaistLength: 17 }), "top")).note).toMatch(
      /Junior has no size for this body/,
    );
  });
});
