import { describe, expect, test } from "vitest";
import type { Cell, Cells } from "../../src/chart/cell";
import {
  bodyMeasure,
  readBodyCells,
  readBodyLines,
  readMeasureArgument,
  readOneBody,
} from "../../src/chart/cells-body";

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
  test("takes the unit from a row of its own, and keeps a unit that it doesn't know beside its measure", () => {
    expect(
      read([
        ["Measurement", "Ada", "Ben"],
        ["Unit", "in", "cm"],
        ["Bust", 34, 86],
      ]),
    ).toEqual([
      ["Ada", { bust: inches(34) }],
      ["Ben", { bust: { value: 86, unit: "cm" } }],
    ]);
    expect(
      read([
        ["Measurement", "Unit", "Ada"],
        ["Bust", "ells", 34],
        ["Hip", "in", 40],
        ["My own", "in", 7],
      ]),
    ).toMatchObject([
      [
        "Ada",
        { bust: { fault: { code: "unknownUnit", details: { text: "ells" } } }, hip: inches(40), "My own": inches(7) },
      ],
    ]);
  });
  test("takes a dash for nothing measured", () => {
    expect(read([["Bust", 34], ["Waist", "-"], ["Hip", "–"], ["Knee", "N/A"]])).toEqual([[null, { bust: bare(34) }]]);
  }); // prettier-ignore
  test("keeps two units of one place apart", () => {
    expect(read([["Bust", "34 in"], ["Bust", "34 cm"]])).toMatchObject([
      [null, { bust: { fault: { code: "placeTwice", details: { place: "bust" } } } }],
    ]);
  }); // prettier-ignore
  test("says when the only number is a date that Excel made", () => {
    expect(readBodyCells([["Shoes", 46_000]])).toEqual({
      ok: false,
      problem: { code: "excelDate", details: { text: "46000" } },
    });
    expect(readBodyCells([["Shoes", 20_000]])).toEqual({
      ok: false,
      problem: { code: "noBody", details: { found: "Shoes" } },
    });
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
    expect(readOneBody([["Bust", 34, 36]])).toEqual({
      ok: false,
      problem: { code: "severalPeople", details: { known: "person 1, person 2" } },
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

describe("readBodyLines", () => {
  const lines = (cells: Cells) => {
    const bodies = readBodyLines(cells);
    return bodies.ok
      ? bodies.value.map((body) => body && [body.name, Object.fromEntries(body.measures)])
      : bodies.problem.code;
  };
  test("keeps each body in its row, a blank one as nobody, and leaves out blank rows at the end", () => {
    expect(
      lines([
        ["Names and measurements", null, null],
        ["Name", "Bust", "Hip"],
        ["Ada", 34, 38],
        [null, null, null],
        ["Ben", null, 40],
        ["Cleo", null, null],
        [null, null, null],
      ]),
    ).toEqual([["Ada", { bust: bare(34), hip: bare(38) }], null, ["Ben", { hip: bare(40) }], null]);
  });
  test("reads any other range as it lies", () => {
    expect(lines([["Bust", 34], ["Hip", 40]])).toEqual([[null, { bust: bare(34), hip: bare(40) }]]);
    expect(lines([["Shoes", 39]])).toBe("noBody");
    expect(lines([])).toBe("emptyChart");
  }); // prettier-ignore
});

describe("bodyMeasure", () => {
  // 1 ft = 12 in and 1 yd = 36 in exactly.
  test("measures in inches or centimetres", () => {
    expect(bodyMeasure(5, { unit: "in", factor: 12 })).toEqual({ value: 60, unit: "in" });
    expect(bodyMeasure(2, { unit: "yd" })).toEqual({ value: 72, unit: "in" });
    expect(bodyMeasure(1.68, { unit: "m" })).toEqual({ value: 168, unit: "cm" });
    expect(bodyMeasure(34, undefined)).toEqual({ value: 34, unit: null });
  });
});

describe("readMeasureArgument", () => {
  test("reads a length with its unit, a bare number with none", () => {
    expect(readMeasureArgument("1.68 m")).toEqual({ ok: true, value: { value: 168, unit: "cm" } });
    expect(readMeasureArgument(34)).toEqual({ ok: true, value: { value: 34, unit: null } });
    expect(readMeasureArgument("")).toEqual({
      ok: false,
      problem: { code: "blank", details: { wanted: "a measurement" } },
    });
    expect(readMeasureArgument(null, "a bust")).toEqual({
      ok: false,
      problem: { code: "blank", details: { wanted: "a bust" } },
    });
  });
});

describe("readBodyCells where more stands in the range", () => {
  const refusal = (code: string, details: object) => ({ ok: false, problem: { code, details } });
  const error = { error: "#N/A" };
  test.each<[string, Cells, unknown]>([
    ["units before the labels", [["in", "Bust", 34], ["cm", "Hip", 100]], [[null, { bust: inches(34), hip: { value: 100, unit: "cm" } }]]],
    ["a heading for them", [["Unit", "Measurement", "Ada"], ["in", "Bust", 34], ["in", "Hip", 40]], [["Ada", { bust: inches(34), hip: inches(40) }]]],
    ["a row without its unit", [["Bust", "in", 34], ["Hip", null, 40], ["Knee", "in", 14]], [[null, { bust: inches(34), hip: bare(40), knee: inches(14) }]]],
    ["a note under the names", [["Measurement", "Ada"], ["Taken in spring", null], ["Bust", 34], ["Hip", 40]], [["Ada", { bust: bare(34), hip: bare(40) }]]],
    ["a figure without a label", [["Bust", 34], [null, 99], ["Hip", 40]], [[null, { bust: bare(34), hip: bare(40) }]]],
    ["a dash with spaces", [["Bust", 34], ["Waist", " – "], ["Hip", 40]], [[null, { bust: bare(34), hip: bare(40) }]]],
    ["labels alone", [["Bust"]], []],
  ])("reads %s", (_, cells, people) => expect(read(cells)).toEqual(people)); // prettier-ignore
  test("doesn't take a figure and a word for one place twice as the figure", () => {
    const twice = { fault: { code: "placeTwice", details: { place: "bust" } } };
    expect(read([["Bust", 34], ["Bust", "wide"], ["Hip", 40]])).toEqual([[null, { bust: twice, hip: bare(40) }]]);
    expect(read([["Bust", "wide"], ["Bust", "loose"], ["Hip", 40]])).toEqual([[null, { bust: twice, hip: bare(40) }]]);
  }); // prettier-ignore
  test.each<[string, Cells, string, object]>([
    ["nothing", [], "emptyChart", { wanted: "measurements" }],
    ["an error alone", [[error]], "errorCell", { error: "#N/A" }],
    ["a word alone", [["Shoes"]], "noBody", { found: "Shoes" }],
    ["an error above a word", [[error], ["Shoes"]], "noBody", { found: "#N/A" }],
    ["an error beside a word", [[error, "Shoes"]], "noBody", { found: "#N/A" }],
    ["a large number that is text", [["Shoes", "46000"]], "noBody", { found: "Shoes" }],
  ])("refuses %s", (_, cells, code, details) => expect(readBodyCells(cells)).toEqual(refusal(code, details)));
  test("names the people there are, those with a name and a measure", () => {
    const cells: Cells = [["Measurement", "Ada", null, "Where", "Ben"], ["Bust", 34, 36, "full", 40], ["Hip", 40, 42, null, 44]]; // prettier-ignore
    expect(readBodyCells(cells, "Cleo")).toEqual(refusal("unknownPerson", { text: "Cleo", known: "Ada, Ben" }));
    expect(readOneBody([["Shoes", 39]])).toEqual(refusal("noBody", { found: "Shoes" }));
  });
});
