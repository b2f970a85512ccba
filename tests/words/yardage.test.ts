import { describe, expect, it } from "vitest";
import { sentence } from "../../src/words";

describe("the sentences of printed yardage", () => {
  it("name the view only where there is one", () => {
    expect(sentence({ code: "noAmount", details: { view: "A", width: "45 in", size: "12" } })).toBe(
      "No amount is printed for view A on 45 in in size 12: choose another width or size.",
    );
    expect(sentence({ code: "noAmount", details: { view: "", width: "45 in", size: "12" } })).toBe(
      "No amount is printed on 45 in in size 12: choose another width or size.",
    );
    expect(sentence({ code: "unknownNap", details: { text: "up" } })).toBe(
      `"up" doesn't say which nap. Write with, without or either.`,
    );
  });
});
