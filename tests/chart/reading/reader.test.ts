import { describe, expect, it } from "vitest";
import { readCharts } from "../../../src/index";

/** An invented chart with even steps; its figures have one, two or three signs before the point. */
const GOOD = [
  ["Size", "8", "10", "12", "14", "16", "18", "20"],
  ["Bust", "31.5", "33", "34.5", "36", "37.5", "39", "40.5"],
  ["Back waist length", "15.75", "16", "16.25", "16.5", "16.75", "17", "17.25"],
  ["Height", "165", "166 1/2", "168", "169.5", "171", "172 1/2", "174"],
];
const LAYOUTS: Readonly<Record<string, (grid: readonly (readonly string[])[]) => string>> = {
  tabs: (grid) => grid.map((row) => row.join("\t")).join("\n"),
  commas: (grid) => grid.map((row) => row.join(",")).join("\n"),
  aligned: (grid) =>
    grid.map((row) => row.map((cell, at) => (at ? cell.padStart(9) : cell.padEnd(20))).join("")).join("\n"),
  "one space": (grid) => grid.map((row) => row.join(" ")).join("\n"),
};
const spoiltCells = GOOD.flatMap((row, line) =>
  line === 0 ? [] : row.flatMap((cell, column) => (column === 0 ? [] : [{ line, column, cell }])),
);

describe("a letter in place of a digit", () => {
  describe.each(Object.entries(LAYOUTS))("in a chart with %s", (_name, layout) => {
    it.each(["O", "l", "S", "?"])("is never passed over in silence: %s", (letter) => {
      for (const { line, column, cell } of spoiltCells) {
        const grid = GOOD.map((row, at) =>
          at === line ? row.map((old, index) => (index === column ? cell.replace(/\d/, letter) : old)) : row,
        );
        const { issues } = readCharts(layout(grid));
        expect(
          issues.filter((issue) => issue.line === line + 1 && /[“"]|figure|read|number/.test(issue.message)),
          `${layout(grid)} of line ${line}, column ${column}`,
        ).not.toEqual([]);
      }
    });
  });
  it("is told by the row's own name and how many figures it has", () => {
    const { issues } = readCharts("Size 8 10 12 14\nBust 31.5 33 34.5 36\nBack waist length 15.75 16 O6 16.5");
    expect(issues).toContainEqual(
      expect.objectContaining({ line: 3, severity: "error", place: "backWaistLength" }) as unknown,
    );
    expect(issues.map(({ message }) => message).join(" ")).toMatch(/"Back waist length" has 3 /);
  });
});
