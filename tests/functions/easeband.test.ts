import { describe, expect, test } from "vitest";
import { easeBand } from "../../functions/ease-words";
import { BLANK, caller, column, errorCell } from "./call";

const EASEBAND = caller("EASEBAND", easeBand, 5);

describe("EASEBAND", () => {
  // Ease-allowance chart of US home-sewing catalogues: from memory.
  test("says the band in words", async () => {
    expect(await EASEBAND(["dress", "bust", "fitted"])).toBe("3 to 4 in");
    expect(await EASEBAND(["coat", "bust", "Very loose-fitting"])).toBe("over 12 in");
    expect(await EASEBAND(["dress", "bust", "fitted", "cm"])).toBe("7.6 to 10.2 cm");
  });

  test("answers a column of terms", async () => {
    const terms = column("close-fitting", BLANK, errorCell("#REF!"), "snug");
    for (const blanks of [null, 0] as const)
      expect(await EASEBAND(["jacket", "bust", terms], blanks)).toEqual([
        [expect.objectContaining({ error: "#N/A" })],
        [""],
        [{ error: "#REF!" }],
        [expect.objectContaining({ error: "#VALUE!", message: expect.stringMatching(/^"snug" is not a fit word/) })],
      ]);
  });

  test("goes by her own bands", async () => {
    const settings = [
      ["Setting", "Garment", "Place", "Value", "Unit"],
      ["Fitted", "", "waist", "1 to 3", "in"],
    ];
    expect(await EASEBAND(["skirt", "waist", "fitted", BLANK, settings])).toBe("1 to 3 in");
    expect(await EASEBAND(["skirt", "waist", "fitted"])).toMatchObject({ error: "#N/A" });
  });
});
