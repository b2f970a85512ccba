import { describe, expect, test } from "vitest";
import { tags } from "../../functions/project";
import { BLANK, caller, column, errorCell, value } from "./call";

const TAGS = caller("TAGS", tags, 2);

describe("TAGS", () => {
  test("gives the maker's name and initial with the number", async () => {
    expect(await TAGS(["Maker", 4821])).toBe("#maker4821 #m4821");
    expect(await TAGS(["Choir House", "4821"])).toBe("#choirhouse4821 #ch4821");
  });
  test("leaves out marks and capitals, keeps letters of every language and leading noughts", async () => {
    expect(await TAGS(["Grüne & Söhne", " 0482-A "])).toBe("#grünesöhne0482a #gs0482a");
    expect(await TAGS(["Maker", "M4821"])).toBe("#maker4821 #m4821");
    expect(await TAGS(["M", 4821])).toBe("#m4821");
    expect(await TAGS(["Maker", 123456])).toBe("#maker123456 #m123456");
  });
  test("refuses what holds no letters", async () => {
    expect(await TAGS(["?", 4821])).toEqual(value(`"?" holds no letters or digits: write the maker's name.`));
    expect(await TAGS(["Maker", "--"])).toEqual(value(`"--" holds no letters or digits: write the pattern's number.`));
  });
  test("needs both", async () => {
    for (const blanks of [null, 0] as const) {
      expect(await TAGS([BLANK, 4821], blanks)).toEqual(value("This is blank: the maker's name is needed here."));
      expect(await TAGS(["Maker", BLANK], blanks)).toEqual(
        value("This is blank: the pattern's number is needed here."),
      );
    }
  });
  test("answers columns", async () => {
    expect(await TAGS([column("Maker", BLANK, "House", errorCell("#N/A")), column(1, 2, BLANK, 4)])).toEqual([
      ["#maker1 #m1"],
      [""],
      [""],
      [{ error: "#N/A" }],
    ]);
  });
});
