import { describe, test } from "vitest";
import { bodyOf, MISSES } from "./charts";
import { call, expectError } from "./functions";

describe("a body", () => {
  test("of one measure that Excel made a date of is named as a date", async () => {
    expectError(await call("CUTSIZE", MISSES, bodyOf({ Bust: 46182 }), "shirt"), "#VALUE!", /date/i);
  });
});
