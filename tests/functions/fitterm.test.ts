import { describe, expect, test } from "vitest";
import { fitTerm } from "../../functions/ease-words";
import { BLANK, caller, column, errorCell, notAvailable, value } from "./call";

const FITTERM = caller("FITTERM", fitTerm, 5);

describe("FITTERM", () => {
  // Ease-allowance chart of US home-sewing catalogues: from memory.
  test("gives the fit word", async () => {
    expect(await FITTERM([3, "dress", "bust"])).toBe("fitted");
    expect(await FITTERM([6.25, "Jackets", "Bust"])).toBe("loose-fitting");
    expect(await FITTERM([2, "skirt", "full hip"])).toBe("fitted");
    expect(await FITTERM([0, "dress", "bust"])).toBe("close-fitting");
    expect(await FITTERM([-1, "leggings", "hip"])).toBe("smaller than the body: stretch knits only");
    expect(await FITTERM([1, "dress", "waist"])).toBe("enough");
  });

  test("answers a column, blanks blank and errors in their place", async () => {
    const ease = column(2, "", errorCell("#N/A"), "much", "10 cm", 5);
    expect(await FITTERM([ease, "dress", "bust"])).toEqual([
      ["close-fitting"],
      [""],
      [{ error: "#N/A" }],
      [value(`"much" can't be read as a length. Write it like 30 1/2, 77.5 cm or 2 3/8 yd.`)],
      ["fitted"],
      ["semi-fitted"],
    ]);
  });

  test("takes the ease in the unit that is given", async () => {
    expect(await FITTERM([8, "dress", "bust", "cm"])).toBe("fitted");
    expect(await FITTERM(["3 1/8 in", "dress", "bust", "cm"])).toBe("fitted");
    expect(await FITTERM([8, "dress", "bust", "yd"])).toMatchObject({ error: "#VALUE!" });
  });

  test("is #N/A where no word covers the ease, #VALUE! for a word that isn't known", async () => {
    expect(await FITTERM([2, "jacket", "bust"])).toEqual(
      notAvailable(
        "No fit word covers 2 in of ease at the bust of this garment (jacket). Your settings may add a band.",
      ),
    );
    expect(await FITTERM([2, "tent", "bust"])).toMatchObject({ error: "#VALUE!" });
    expect(await FITTERM([2, "dress", "elbow patch"])).toMatchObject({ error: "#VALUE!" });
    for (const blanks of [null, 0] as const)
      expect(await FITTERM([2, BLANK, "bust"], blanks)).toMatchObject({ error: "#VALUE!" });
  });

  test("goes by her own bands", async () => {
    const settings = [
      ["Setting", "Garment", "Place", "Value", "Unit"],
      ["Close-fitting", "jacket", "bust", "0 to 3 1/2", "in"],
    ];
    expect(await FITTERM([2, "jacket", "bust", BLANK, settings])).toBe("close-fitting");
  });
});
