import { describe, expect, test } from "vitest";
import type { Cell, Cells } from "../../src/chart/cell";
import { readBodyCells, readOneBody } from "../../src/chart/cells-body";

const read = (cells: Cells, person?: Cell) => {
  const bodies = readBodyCells(cells, person);
  return bodies.ok
    ? bodies.value.map(({ name, measures }) => [name, Object.fromEntries(measures)])
    : bodies.problem.code;
};
const inches = (value: number) => ({ value, unit: "in" });
const bare = (value: number) => ({ value, unit: null });

describe("readBodyCells", () => {
  test("reads labels down, with and without headings", () => {
    expect(
      read([
        ["Bust", 34],
        ["Hip", "40 in"],
      ]),
    ).toEqual([[null, { bust: bare(34), hip: inches(40) }]]);
    expect(
      read([
        ["Measurement", "Unit", "Ada", "Ben"],
        ["Bust", "in", 34, ""],
        ["Hip", "cm", 100, "41 in"],
      ]),
    ).toEqual([
      ["Ada", { bust: inches(34), hip: { value: 100, unit: "cm" } }],
      ["Ben", { hip: inches(41) }],
    ]);
    expect(
      read([
        ["Bust", "in", 34],
        ["Hip", "in", 40],
      ]),
    ).toEqual([[null, { bust: inches(34), hip: inches(40) }]]);
    expect(
      read([
        ["Ada's measurements", null],
        ["Bust (cm)", 88],
      ]),
    ).toEqual([[null, { bust: { value: 88, unit: "cm" } }]]);
  });
  test("reads places across and a person a row, with and without names", () => {
    expect(
      read([
        ["Bust", "Hip"],
        [34, 40],
        [36, 0],
      ]),
    ).toEqual([
      [null, { bust: bare(34), hip: bare(40) }],
      [null, { bust: bare(36) }],
    ]);
    expect(
      read([
        ["Name", "Bust", "Unit", "Hip"],
        ["Ada", 34, "in", 40],
      ]),
    ).toEqual([["Ada", { bust: inches(34), hip: inches(40) }]]);
  });
  test("picks a person by heading, whatever its case", () => {
    const cells = [
      ["Measurement", "Ada", "Ben"],
      ["Bust", 34, 40],
      ["Hip", 40, 42],
    ];
    expect(read(cells, " ben ")).toEqual([["Ben", { bust: bare(40), hip: bare(42) }]]);
    expect(read(cells, "Cleo")).toBe("unknownPerson");
    expect(read(cells, { error: "#REF!" })).toBe("errorCell");
  });
  test("takes a column without a single measure for nobody", () => {
    const cells = [
      ["Measurement", "Ada", "Where", "When"],
      ["Bust", 34, "full", 46000],
      ["Hip", 40, "", 46000],
    ];
    expect(read(cells)).toEqual([["Ada", { bust: bare(34), hip: bare(40) }]]);
  });
  test("keeps what it can't read, where it is", () => {
    expect(read([["Bust", "wide"], ["Waist", { error: "#N/A" }], ["Hip", 40], ["Thigh", -3]])).toMatchObject([
      [null, {
        bust: { fault: { code: "unreadableLength" } },
        waist: { fault: { code: "errorCell" }, error: "#N/A" },
        hip: bare(40),
        thigh: { fault: { code: "negative" } },
      }],
    ]); // prettier-ignore
  });
  test("doesn't choose between two rows for one place", () => {
    expect(
      read([
        ["Bust", 34],
        ["Bust", 35],
        ["Hip", 40],
      ]),
    ).toMatchObject([[null, { bust: { fault: { code: "placeTwice" } }, hip: bare(40) }]]);
    expect(
      read([
        ["Bust", 34],
        ["Bust", 34],
        ["Hip", 40],
      ]),
    ).toMatchObject([[null, { bust: bare(34) }]]);
  });
  test("refuses what holds no places", () => {
    expect(read([["Shoes", 39]])).toBe("noBody");
    expect(read([[null, ""]])).toBe("emptyChart");
    expect(read([[{ error: "#REF!" }]])).toBe("errorCell");
  });
});

describe("readOneBody", () => {
  test("wants one person", () => {
    const cells = [
      ["Measurement", "Ada", "Ben"],
      ["Bust", 34, 40],
      ["Hip", 40, 42],
    ];
    expect(readOneBody(cells)).toMatchObject({
      ok: false,
      problem: { code: "severalPeople", details: { known: "Ada, Ben" } },
    });
    expect(readOneBody(cells, "Ada")).toMatchObject({ ok: true, value: { name: "Ada" } });
    expect(
      readOneBody([
        ["Bust", ""],
        ["Hip", ""],
      ]),
    ).toMatchObject({ ok: false, problem: { code: "noBody" } });
  });
});
