import { describe, expect, it } from "vitest";
import { readCharts } from "../../../src/index";

const rows = "Bust\t30 1/2\t34\nHip\t32 1/2\t36";
const across = (first: string, second: string) => `Body measurements (in)\nSize\t${first}\t${second}\n${rows}`;
const down = (first: string, second: string) =>
  `Body measurements (in)\nSize\tBust\tHip\n${first}\t30 1/2\t32 1/2\n${second}\t34\t36`;
const errorsOf = (text: string) => readCharts(text).issues.filter(({ severity }) => severity === "error");

describe("sizes that a spreadsheet has made dates of", () => {
  // 6-12 and 12-18 as a spreadsheet shows them by region, and as it stores them: 6 December 2026 is day 46362.
  it.each([
    ["6-Dec", "12-Jun"],
    ["06-Dec", "12-Jun-26"],
    ["Dec-12", "Jun-18"],
    ["06.12.2026", "12.06.2026"],
    ["6/12/2026", "12/6/2026"],
    ["2026-12-06", "2026-06-12"],
    ["6. Dez", "12. Jun"],
    ["46362", "46185"],
  ])("are named, each by itself: %s and %s", (first, second) => {
    for (const text of [across(first, second), down(first, second)]) {
      const errors = errorsOf(text);
      const isSaid = (size: string) => errors.some(({ message }) => message.includes(`"${size}" is a date`));
      const isGone = readCharts(text).tables.every(({ sizes }) => !sizes.includes(first));
      expect(
        (isSaid(first) && isSaid(second)) || (isGone && errors.length > 0),
        `${text}\n${JSON.stringify(readCharts(text))}`,
      ).toBe(true);
    }
  });
  it.each([
    ["6-12", "14-20"],
    ["Dec", "Jun"],
    ["12 months", "18 months"],
    ["6/12", "12/18"],
    ["3-6M", "6-9M"],
    ["Mar", "May"],
  ])("are not seen where there are none: %s and %s", (first, second) =>
    expect(
      readCharts(across(first, second))
        .issues.map(({ message }) => message)
        .join(),
    ).not.toMatch(/is a date/),
  );
});

describe("a figure that a spreadsheet has made a date of", () => {
  it("is left empty and named", () => {
    const { tables, issues } = readCharts(
      "Body measurements (in)\nSize\t8\t10\t12\nBust\t31\t32\t45123\nHip\t33\t34\t35",
    );
    expect(tables[0]?.rows[0]?.values).toEqual([31, 32, null]);
    expect(issues).toContainEqual(
      expect.objectContaining({
        severity: "error",
        line: 3,
        size: "12",
        message: expect.stringMatching(/date of this \(45123\)/) as unknown,
      }) as unknown,
    );
    expect(issues.map(({ message }) => message).join()).not.toMatch(/breaks the order/);
  });
  it("is no figure of 20,000, where it begins: no length is as long", () => {
    const { tables } = readCharts("Body measurements (cm)\nSize\t8\t10\nBust\t20000\t20001");
    expect(tables[0]?.rows[0]?.values[1] ?? null).toBeNull();
  });
});
