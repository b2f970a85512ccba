import { describe, expect, it } from "vitest";
import { groupsNote } from "../../src/fit/groups-note";
import { got, said } from "./bodies";

describe("groupsNote", () => {
  // Common practice: 34-28-40 is 12, 14 and 16 on the misses chart; a shirt is cut in 12.
  it("says that a blend needs both groups and which one the single size needs", () => {
    expect(got(groupsNote(["6-12", "14-20"], ["12", "14", "16"], "12"))).toEqual({
      blend: ["6-12", "14-20"],
      single: "6-12",
      note: "The blend of 12, 14 and 16 needs 6-12 and 14-20; size 12 alone needs 6-12.",
    });
  });

  it("says when one group will do", () => {
    expect(got(groupsNote(["6-14", "14-22"], ["14", "16", "14"], "14")).note).toBe(
      "The blend of 14 and 16 is all in 14-22; size 14 alone is in 6-14.",
    );
    expect(got(groupsNote(["6-12", "14-20"], ["12"], "12")).note).toBe("Size 12 is in 6-12.");
    expect(got(groupsNote(["6-12", "14-20"], [], "12")).blend).toEqual(["6-12"]);
  });

  it("refuses a size in no group", () => {
    expect(said(groupsNote(["6-12"], ["12", "14"], "12"))).toBe("Size 14 is in none of these groups (6-12).");
    expect(said(groupsNote(["6-12"], ["8"], "14"))).toBe("Size 14 is in none of these groups (6-12).");
  });
});
