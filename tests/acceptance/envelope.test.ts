import { describe, expect, test } from "vitest";
import { BLANK, call, callWithZeros, column, expectError, expectRefusal, row } from "./functions";

const TWO = column("6-12", "14-20");

describe("ENVELOPE", () => {
  test("is the group that holds the size", async () => {
    expect(await call("ENVELOPE", TWO, 12)).toBe("6-12");
    expect(await call("ENVELOPE", TWO, 6)).toBe("6-12");
    expect(await call("ENVELOPE", TWO, 14)).toBe("14-20");
    expect(await call("ENVELOPE", TWO, "20")).toBe("14-20");
  });
  test("is all that are needed, joined", async () => {
    // Bust 34, waist 28, hip 40: a blend of 12, 14 and 16 needs both, the shirt alone the first.
    expect(await call("ENVELOPE", TWO, column(12, 14, 16))).toBe("6-12 + 14-20");
    expect(await call("ENVELOPE", TWO, row(16, 12))).toBe("6-12 + 14-20");
    expect(await call("ENVELOPE", TWO, column(14, 16))).toBe("14-20");
  });
  test("is the fewest groups", async () => {
    expect(await call("ENVELOPE", column("4-8", "8-12", "10-16"), column(8, 12))).toBe("8-12");
    expect(await call("ENVELOPE", column("6-8", "10-12", "6-14"), column(6, 12))).toBe("6-14");
    // 8 and 10 lie in the middle group too, but with it three would be bought.
    expect(await call("ENVELOPE", column("8-12", "4-8", "10-16"), column(4, 8, 10, 16))).toBe("4-8 + 10-16");
  });
  test("is the first listed where several would do", async () => {
    expect(await call("ENVELOPE", column("6-14", "12-20"), column(12, 14))).toBe("6-14");
    expect(await call("ENVELOPE", column("12-20", "6-14"), column(12, 14))).toBe("12-20");
  });
  test("reads to and dashes as printed, and gives the group back as it is listed", async () => {
    expect(await call("ENVELOPE", column("6 to 12", "14 to 20"), 10)).toBe("6 to 12");
    expect(await call("ENVELOPE", column("6–12", "14 – 20"), 16)).toBe("14 – 20");
    expect(await call("ENVELOPE", column("6 to 12", "14 to 20"), column(12, 14))).toBe("6 to 12 + 14 to 20");
  });
  test("skips blank cells", async () => {
    expect(await call("ENVELOPE", column("6-12", BLANK, "14-20"), column(12, BLANK, 14))).toBe("6-12 + 14-20");
    expect(await callWithZeros("ENVELOPE", column("6-12", BLANK, "14-20"), column(12, 14))).toBe("6-12 + 14-20");
  });
  test("keeps women's sizes apart from plain numbers", async () => {
    expectError(await call("ENVELOPE", column("16W-24W"), 18), "#N/A", /18/);
  });
  test("refuses a size that no group holds, naming it", async () => {
    expectError(await call("ENVELOPE", TWO, 22), "#N/A", /22/);
    expectError(await call("ENVELOPE", TWO, column(12, 4)), "#N/A", /\b4\b/);
    expectError(await call("ENVELOPE", column("6-10", "14-20"), 12), "#N/A", /12/);
  });
  test("says that Excel has made a date of a group", async () => {
    expectError(await call("ENVELOPE", column(46182, "14-20"), 12), "#VALUE!", /date/i, /6 to 12/i);
  });
  test("refuses unreadable groups and no sizes at all", async () => {
    expectRefusal(await call("ENVELOPE", column("small ones"), 12));
    expectError(await call("ENVELOPE", TWO, BLANK), "#VALUE!");
  });
});
