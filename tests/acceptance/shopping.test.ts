import { describe, expect, test } from "vitest";
import { BLANK, call, callWithZeros, column, errorCell, expectError, rows } from "./functions";

describe("SALEPRICE", () => {
  test.each([
    [[10, 0.25], 7.5],
    [[10], 10],
    [[10, 0.4, 5.5], 5.5], // 6.00 against 5.50
    [[10, 0.5, 5.5], 5], // 5.00 against 5.50
    [[10, undefined, 4.99], 4.99],
    [[10, undefined, 12], 10],
    [[10, 0], 10],
    [[19.95, 0.35], 12.97], // 12.9675
    [[9.99, 0.333], 6.66], // 6.66333
    [[14.95, 0.1], 13.46], // 13.455 and up
    [[10, 1], 0],
    [["12.50", 0.2], 10],
  ])("of %j is %d", async (args, price) => {
    const answer = await call("SALEPRICE", ...args);
    if (args[0] === 14.95)
      expect([13.45, 13.46]).toContain(answer); // the contract leaves the half cent open
    else expect(answer).toBe(price);
  });
  test("is in whole cents, exactly", async () => {
    for (let cents = 101; cents < 140; cents += 1) {
      const answer = Number(await call("SALEPRICE", cents / 100, 0.15));
      expect(answer).toBe(Math.round(answer * 100) / 100);
      expect(Math.abs(answer - (cents / 100) * 0.85)).toBeLessThanOrEqual(0.005 + 1e-9);
    }
  });
  test("never takes a blank sale price as a gift", async () => {
    expect(await call("SALEPRICE", 10, BLANK, BLANK)).toBe(10);
    expect(await callWithZeros("SALEPRICE", 10, BLANK, BLANK)).toBe(10);
    expect(await call("SALEPRICE", 10, "", "")).toBe(10);
    expect(await callWithZeros("SALEPRICE", column(10, 20), column(0.5, BLANK), column(BLANK, 15))).toEqual([
      [5],
      [15],
    ]);
  });
  test("says how to write a percentage", async () => {
    expectError(await call("SALEPRICE", 10, 40), "#VALUE!", /40 ?%/);
    expectError(await call("SALEPRICE", 10, 1.01), "#VALUE!");
    expectError(await call("SALEPRICE", 10, -0.1), "#VALUE!");
  });
  test("answers a column", async () => {
    const answer = (await call("SALEPRICE", column(10, BLANK, "dear", errorCell("#N/A"), -5), 0.5)) as unknown[][];
    expect(answer[0]![0]).toBe(5);
    expect(answer[1]![0]).toBe("");
    expectError(answer[2]![0], "#VALUE!", /dear/);
    expect(answer[3]![0]).toMatchObject({ error: "#N/A" });
    expectError(answer[4]![0], "#VALUE!");
  });
  test("refuses a missing price", async () => {
    expectError(await call("SALEPRICE", BLANK, 0.5), "#VALUE!");
  });
});

describe("HASDETAILS", () => {
  const has = (details: unknown, wanted: unknown, all?: unknown) => call("HASDETAILS", details, wanted, all);
  test("finds a detail in a list", async () => {
    expect(await has("fitted, pockets, collar", "pockets")).toBe(true);
    expect(await has("fitted; pockets; collar", "collar")).toBe(true);
    expect(await has("fitted\npockets\r\ncollar", "pockets")).toBe(true);
    expect(await has("fitted, pockets", "collar")).toBe(false);
  });
  test("goes by whole words inside a listed detail", async () => {
    expect(await has("patch pockets, shirt collar", "pockets")).toBe(true);
    expect(await has("patch pockets, shirt collar", "patch pockets")).toBe(true);
    expect(await has("two large patch pockets", "patch pockets")).toBe(true);
    expect(await has("collarless, long sleeves", "collar")).toBe(false);
    expect(await has("unfitted", "fitted")).toBe(false);
    expect(await has("patch pockets, shirt collar", "pockets collar")).toBe(false); // not in one detail
    expect(await has("patch pockets, shirt collar", "pockets, shirt")).toBe(true);
  });
  test("ignores case and spaces at the ends", async () => {
    expect(await has(" Fitted ,POCKETS", "pockets")).toBe(true);
    expect(await has("fitted, pockets", "  Pockets ")).toBe(true);
  });
  test("wants any of several, or all", async () => {
    expect(await has("fitted, pockets", "collar, pockets")).toBe(true);
    expect(await has("fitted, pockets", "collar, pockets", false)).toBe(true);
    expect(await has("fitted, pockets", "collar, pockets", true)).toBe(false);
    expect(await has("fitted, pockets", "pockets; fitted", true)).toBe(true);
    expect(await has("fitted, pockets", "collar, zip")).toBe(false);
  });
  test("never finds signs that stand for anything", async () => {
    for (const wanted of [".*", "(", "pocket*", "p.ckets", "[a-z]+"])
      expect(await has("fitted, pockets", wanted)).not.toBe(true);
  });
  test("answers a column", async () => {
    const answer = await has(column("fitted, pockets", "loose", "pockets"), "pockets");
    expect(answer).toEqual([[true], [false], [true]]);
  });
  test("refuses nothing wanted", async () => {
    expectError(await has("fitted", BLANK), "#VALUE!");
  });
});

describe("TAGS", () => {
  test("are search words for a pattern's finished garments", async () => {
    expect(await call("TAGS", "maker", 4821)).toBe("#maker4821 #m4821");
    expect(await call("TAGS", "maker", "4821")).toBe("#maker4821 #m4821");
  });
  test("answer a column", async () => {
    const answer = (await call("TAGS", "maker", column(4821, BLANK, 17))) as unknown[][];
    expect(answer).toEqual([["#maker4821 #m4821"], [""], ["#maker17 #m17"]]);
  });
  test("refuse a missing maker or number", async () => {
    expectError(await call("TAGS", BLANK, 4821), "#VALUE!");
    expectError(await call("TAGS", "maker", BLANK), "#VALUE!");
  });
});

describe("SHOPLIST", () => {
  const PROJECTS = ["Project", "Fabric", "Width", "Needed", "Unit", "Price"];
  const STASH = ["Piece", "Fabric", "Width", "Length", "Unit"];
  const list = async (projects: unknown[][], stash?: unknown[][]) =>
    rows(await call("SHOPLIST", [PROJECTS, ...projects], stash && [STASH, ...stash]));
  /** fabric, width, needed, from which stash piece, to buy, cost */
  const of = (answer: unknown[][], fabric: string) => answer.filter((cells) => cells.includes(fabric));

  test("buys everything where there is no stash", async () => {
    const answer = await list([
      ["Shirt", "linen", 54, 2, "yd", 12.5],
      ["Skirt", "wool", 60, 1.5, "yd", 30],
    ]);
    const [linen] = of(answer, "linen");
    expect(linen!.slice(0, 3)).toEqual(["linen", 54, 2]);
    expect(linen!.slice(4, 6)).toEqual([2, 25]); // 2 x 12.50
    expect(of(answer, "wool")[0]!.slice(4, 6)).toEqual([1.5, 45]);
  });
  test("takes a stash piece that is long enough, and buys nothing then", async () => {
    const answer = await list([["Shirt", "linen", 54, 2, "yd", 12.5]], [["L1", "linen", 54, 2.5, "yd"]]);
    const [linen] = of(answer, "linen");
    expect(JSON.stringify(linen)).toMatch(/L1/);
    expect([0, ""]).toContain(linen![4]);
    expect([0, ""]).toContain(linen![5]);
  });
  test("never adds pieces together", async () => {
    const answer = await list(
      [["Shirt", "linen", 54, 2, "yd", 12.5]],
      [
        ["L1", "linen", 54, 1.5, "yd"],
        ["L2", "linen", 54, 1.5, "yd"],
      ],
    );
    expect(of(answer, "linen")[0]!.slice(4, 6)).toEqual([2, 25]);
  });
  test("gives a piece to several projects only if it is long enough for all of them", async () => {
    const two = [
      ["Shirt", "linen", 54, 2, "yd", 10],
      ["Skirt", "linen", 54, 1.5, "yd", 10],
    ];
    const bought = (answer: unknown[][]) => answer.reduce((sum, cells) => sum + (Number(cells[4]) || 0), 0);
    expect(bought(await list(two, [["L1", "linen", 54, 3.5, "yd"]]))).toBe(0); // 2 + 1 1/2 = 3 1/2
    const short = bought(await list(two, [["L1", "linen", 54, 3.4, "yd"]]));
    expect([1.5, 2]).toContain(short);
    expect(bought(await list(two))).toBe(3.5);
  });
  test("doesn't use another fabric, nor a narrower piece", async () => {
    const project = [["Shirt", "linen", 54, 2, "yd", 10]];
    expect(of(await list(project, [["W1", "wool", 54, 5, "yd"]]), "linen")[0]![4]).toBe(2);
    expect(of(await list(project, [["L1", "linen", 45, 5, "yd"]]), "linen")[0]![4]).toBe(2);
  });
  test("finds the pieces that leave nothing to buy, whichever project is listed first", async () => {
    const two = [
      ["Skirt", "linen", 54, 1.5, "yd", 10],
      ["Shirt", "linen", 54, 2, "yd", 10],
    ];
    const stash = [
      ["L1", "linen", 54, 2, "yd"],
      ["L2", "linen", 54, 1.75, "yd"],
    ];
    for (const projects of [two, [...two].reverse()])
      for (const pieces of [stash, [...stash].reverse()])
        for (const cells of await list(projects, pieces)) expect([0, ""]).toContain(cells[4]);
  });
  test("compares yards with metres, and takes a wider piece", async () => {
    const project = [["Shirt", "Linen", 54, 2, "yd", 10]]; // 2 yd = 1.8288 m
    expect([0, ""]).toContain((await list(project, [["L1", "linen", "150 cm", 1.83, "m"]]))[0]![4]);
    expect((await list(project, [["L1", "linen", "150 cm", 1.82, "m"]]))[0]![4]).toBe(2);
  });
  test("costs what is to buy, in whole cents", async () => {
    const [cells] = await list([["Shirt", "linen", 54, 2.375, "yd", 9.99]]);
    expect(cells![5]).toBe(23.73); // 2.375 x 9.99 = 23.72625
  });
  test("puts faulty rows last, with what is wrong", async () => {
    const answer = await list([
      ["Coat", "tweed", 60, "lots", "yd", 30],
      ["Shirt", "linen", 54, 2, "yd", 10],
    ]);
    expect(answer[0]).toContain("linen");
    expect(JSON.stringify(answer.at(-1))).toMatch(/lots/);
  });
  test("skips blank rows", async () => {
    const answer = await list([
      [BLANK, BLANK, BLANK, BLANK, BLANK, BLANK],
      ["Shirt", "linen", 54, 2, "yd", 10],
    ]);
    expect(answer).toHaveLength(1);
  });
});
