import { describe, expect, it } from "vitest";
import type { Chart } from "../../src/chart/model";
import { blend } from "../../src/fit/blend";
import { cutNote } from "../../src/fit/cut-note";
import { figureType, namedTables, tablesApart } from "../../src/fit/figure-type";
import { bodyOf, got, missesChart, said, settingsOf, withFault } from "./bodies";

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

  const withHeight = (chart: typeof missesChart, height: number) => ({
    ...chart,
    rows: [...chart.rows, { place: "height", label: "Height", values: chart.sizes.map(() => height) }],
  });
  const heights = [
    { name: "Misses", chart: withHeight(missesChart, 66) },
    { name: "Petite", chart: withHeight(petite, 62) },
  ];

  // Guide C-205 (read): by height and back waist length; that the back waist comes first: common practice, no source.
  it("puts the back waist length before the height, and goes by the height alone where there is no other", () => {
    const best = (measures: Record<string, number>) =>
      got(figureType(heights, bodyOf({ bust: 34, ...measures }), "top")).best;
    expect(best({ backWaistLength: 16.25, height: 62 })).toBe("Misses");
    expect(best({ backWaistLength: 15.25, height: 66 })).toBe("Petite");
    expect(best({ height: 63 })).toBe("Petite");
    expect(best({ height: 65 })).toBe("Misses");
  });

  it("says that a length is right", () => {
    expect(got(figureType(charts, bodyOf({ bust: 34, backWaistLength: 16.25 }), "top")).note).toBe(
      "Misses suits better: Misses, size 12, is right at the back waist length and Petite, size 12P, is 1 inch too short at the back waist length.",
    );
  });

  // 15.6 in: 0.65 in off the misses' 16 1/4, 0.35 in (0.89 cm) off the petite's 15 1/4.
  it("compares inches with centimetres, and bare figures as they stand", () => {
    const metric = {
      ...petite,
      unit: "cm" as const,
      rows: petite.rows.map((row) => ({ ...row, values: row.values.map((value) => (value as number) * 2.54) })),
    };
    const both = [charts[0]!, { name: "Petite", chart: metric }];
    expect(got(figureType(both, bodyOf({ bust: 34, backWaistLength: 15.6 }, null, "in"), "top")).best).toBe("Petite");
    const bare = charts.map(({ name, chart }) => ({ name, chart: { ...chart, unit: null } }));
    expect(got(figureType(bare, bodyOf({ bust: 34, backWaistLength: 15.6 }), "top")).best).toBe("Petite");
    expect(got(cutNote(bare[0]!.chart, bodyOf({ bust: 34, backWaistLength: 14 }), "top"))).not.toMatch(/back waist/);
  });

  it("leaves a table out of the comparison where the figure isn't printed, and a body that is off it", () => {
    const gap = {
      ...petite,
      rows: petite.rows.map((row) =>
        row.place === "backWaistLength" ? { ...row, values: row.values.map(() => null) } : row,
      ),
    };
    const body = bodyOf({ bust: 34, backWaistLength: 15.5 });
    expect(got(figureType([charts[0]!, { name: "Petite", chart: gap }], body, "top"))).toMatchObject({
      best: null,
      types: [
        { name: "Misses", size: "12", differences: [{ place: "backWaistLength", difference: -0.75 }] },
        { name: "Petite", size: "12P", differences: [] },
      ],
    });
    expect(got(figureType(charts, bodyOf({ bust: 60 }), "top")).types).toEqual([
      { name: "Misses", size: null, differences: [] },
      { name: "Petite", size: null, differences: [] },
    ]);
  });

  it("refuses what it can't read, only where a table prints it, and a garment it doesn't know", () => {
    const fault = { fault: { code: "unreadableLength", details: { text: "5'2?" } } } as const;
    const body = bodyOf({ bust: 34, backWaistLength: 15.5 });
    const unread = `"5'2?" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`;
    expect(said(figureType(heights, withFault(body, "height", fault), "top"))).toBe(unread);
    expect(got(figureType(charts, withFault(body, "height", fault), "top")).best).toBe("Petite");
    expect(said(figureType(charts, body, "tent"))).toMatch(/^"tent" is not a garment known here\./);
    // The size stands without it: the note is silent about what it can't tell.
    const [misses, short] = [heights[0]!.chart, heights[1]!.chart];
    expect(got(cutNote(misses, withFault(body, "height", fault), "top", { tables: [misses, short] }))).toMatch(
      / This pattern has 2 body tables; this is from the table 6 to 24\.$/,
    );
  });

  it("is named for the table that answered, and for a garment of her own", () => {
    const settings = settingsOf(["Like", "choir gown", "", "top", ""]);
    const body = bodyOf({ bust: 34, backWaistLength: 15.5 });
    expect(got(cutNote(petite, body, "choir gown", { settings, tables: [missesChart, petite] }))).toMatch(
      / this is from the table 6P to 24P\. The table 6P to 24P suits better: /,
    );
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

describe("tablesApart", () => {
  it("keeps one of two tables that say the same in inches and centimetres, and every other one", () => {
    const metric = (chart: Chart): Chart => ({ ...chart, unit: "cm" });
    expect(tablesApart([metric(missesChart), missesChart], missesChart)).toEqual([missesChart]);
    expect(tablesApart([missesChart, metric(missesChart)], missesChart)).toEqual([missesChart]);
    expect(tablesApart([metric(petite), missesChart], missesChart)).toEqual([metric(petite), missesChart]);
    // A child's 68 cm is no 6 and 8.
    const [sixes, child] = [
      { ...missesChart, sizes: ["6", "8"] },
      { ...metric(missesChart), sizes: ["68"] },
    ];
    expect(tablesApart([sixes, child], sixes)).toEqual([sixes, child]);
  });
});

describe("namedTables", () => {
  it("counts the tables with the same sizes", () => {
    const names = namedTables(Array.from({ length: 5 }, () => ({ ...missesChart }))).map(({ name }) => name);
    expect(names).toEqual(
      ["first", "second", "third", "fourth", "5th"].map((ordinal) => `the ${ordinal} table (6 to 24)`),
    );
  });
});
