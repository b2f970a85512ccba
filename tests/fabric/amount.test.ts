import { describe, expect, test } from "vitest";
import { amountFault } from "../../src/fabric/amount";

describe("amountFault", () => {
  test("finds nothing wrong with an amount from nought up to 20,000", () => {
    expect([0, 2.5, 20_000].map((value) => amountFault(value, "A repeat"))).toEqual([undefined, undefined, undefined]);
  });
  test("says what is wrong with any other", () => {
    expect([NaN, Infinity, -1, 45_000].map((value) => amountFault(value, "A repeat")?.problem)).toEqual([
      { code: "notANumber", details: { text: "NaN", wanted: "a number" } },
      { code: "notANumber", details: { text: "Infinity", wanted: "a number" } },
      { code: "negative", details: { text: "-1", what: "A repeat" } },
      { code: "excelDate", details: { text: "45000" } },
    ]);
  });
});
