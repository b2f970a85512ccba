import { describe, expect, it } from "vitest";
import { readCharts } from "../../src/chart/read-charts";
import { doubts } from "../../src/words/reading";

const heading = "Body measurements (in)\nSize\t8\t10\t12\t14\t16\n";
const refused = (limit: string) => ({
  tables: [],
  issues: [{ line: 1, severity: "error", message: doubts.tooLong(limit) }],
});

describe("readCharts on very long pastes", () => {
  const chart = `${heading}Bust\t31\t32\t33\t34\t35`;
  it("reads 200,000 characters of text, and refuses more", () => {
    expect(readCharts(chart.padEnd(200_000, "\n")).tables).toHaveLength(1);
    expect(readCharts(chart.padEnd(200_001, "\n"))).toEqual(refused("200,000 characters"));
  });
  it("reads or refuses the longest column of single cells, and never throws", () => {
    expect(readCharts(heading + "\n9".repeat(99_000)).issues.length).toBeLessThanOrEqual(501);
  });
  it("refuses more than 3,000,000 characters of HTML", () => {
    expect(readCharts("<table>".padEnd(3_000_001))).toEqual(refused("3,000,000 characters"));
  });
});

describe("the issues of readCharts", () => {
  it("stand in the order of lines, and in a line of columns, whoever found them first", () => {
    // 34 to 30 falls, which is seen only when the whole table stands; both cells are named.
    const { issues } = readCharts(`${heading}Bust\t34\t30\twide\t36\t37\nHip\t34\tsoon\t36\t37\t38`);
    expect(issues.map(({ line, column, severity }) => [line, column, severity])).toEqual([
      [3, 2, "warning"],
      [3, 3, "warning"],
      [3, 4, "error"],
      [4, 3, "error"],
    ]);
  });
  it("say that there is no chart, beside what was only doubtful", () => {
    const { tables, issues } = readCharts("Size\t8\t10\nBust\t\t\n");
    expect(tables).toEqual([]);
    expect(issues.map(({ line, severity }) => [line, severity])).toEqual([
      [1, "warning"],
      [1, "error"],
      [2, "warning"],
    ]);
    expect(issues).toContainEqual({ line: 1, severity: "error", message: doubts.noChart() });
  });
  it("say only why there is no chart, where that is known", () => {
    const { issues } = readCharts("Bust\t31\t32\n");
    expect(issues).toHaveLength(1);
    expect(issues[0]?.message).not.toBe(doubts.noChart());
  });
  it("end after five hundred, with the number of the others", () => {
    const names = "abcdefghijklmnopqrst";
    const label = (at: number) => `Yoke ${names[at % 20]}${names[Math.floor(at / 20)]}q`;
    // Each row says four things: its place isn't known, and three of its cells can't be read.
    const rows = (count: number) =>
      "Body measurements (in)\nSize\t8\t10\t12\t14\t16\t18\t20\n" +
      Array.from({ length: count }, (_, at) => `${label(at)}\t31\t32\t33\t34\twide\tsoon\tlong`).join("\n");
    const places = (count: number) =>
      Array.from({ length: count }, (_, at) => [undefined, 6, 7, 8].map((column) => [at + 3, column])).flat();
    const found = (count: number) => readCharts(rows(count)).issues;
    expect(found(125).map(({ line, column }) => [line, column])).toEqual(places(125));
    const many = found(126);
    expect(many.slice(0, 500)).toEqual(found(125));
    // The 501st is in the 126th row, and rows begin in line 3.
    expect(many.slice(500)).toEqual([{ line: 128, severity: "error", message: doubts.more(4) }]);
  });
});
