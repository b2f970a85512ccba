import { describe, expect, test } from "vitest";
import {
  BLANK,
  call,
  callWithZeros,
  errorCell,
  expectError,
  expectRefusal,
  type Grid,
  numbers,
  rows,
} from "./functions";

const near = (answer: unknown, expected: number) => expect(answer).toBeCloseTo(expected, 6);
/** Inches as yards. */
const yd = (inches: number) => inches / 36;
const SHORT = ["Piece", "Length", "Width", "Unit", "Count"];
const pieces = (...list: unknown[][]): Grid => [SHORT, ...list];
const length = (list: Grid, width: unknown, layout?: string, unit = "yd", ...rest: unknown[]) =>
  call("LAYOUTLENGTH", list, width, unit, layout, ...rest);

describe("LAYOUTLENGTH on a single layer", () => {
  test("lays two 10 x 20 pieces side by side on 45 in cloth", async () => {
    near(await length(pieces(["Cuff", 20, 10, "in", 2]), 45, "single"), yd(20));
  });
  test("fills the width exactly", async () => {
    near(await length(pieces(["Panel", 20, 15, "in", 3]), 45, "single"), yd(20)); // 3 x 15 = 45
    near(await length(pieces(["Panel", 20, 15.01, "in", 3]), 45, "single"), yd(40));
    near(await length(pieces(["Panel", 20, 22.5, "in", 4]), 45, "single"), yd(40));
  });
  test("starts another row where the width is full", async () => {
    near(await length(pieces(["Panel", 30, 20, "in", 3]), 45, "single"), yd(60)); // two of 20 fit across
    near(await length(pieces(["Panel", 30, 20, "in", 5]), 45, "single"), yd(90));
  });
  test("stacks short pieces beside a long one", async () => {
    // 20 + 20 of length beside one of 40, 25 + 20 = 45 across.
    near(await length(pieces(["Back", 40, 25, "in", 1], ["Yoke", 20, 20, "in", 2]), 45, "single"), yd(40));
  });
  test("turns a piece only where it may turn", async () => {
    const headed = [...SHORT, "May turn"];
    near(await length([headed, ["Tie", 60, 10, "in", 1, "no"]], 65, "single"), yd(60));
    near(await length([headed, ["Tie", 60, 10, "in", 1, "yes"]], 65, "single"), yd(10));
    near(await length([headed, ["Tie", 60, 10, "in", 1, true]], 65, "single"), yd(10));
    near(await length([headed, ["Tie", 60, 10, "in", 1, false]], 65, "single"), yd(60));
  });
  test("answers in metres, and reads pieces in centimetres", async () => {
    near(await length(pieces(["Panel", 60, 40, "cm", 2]), 112, "single", "m"), 0.6);
    near(await length(pieces(["Panel", 60, 40, "cm", 3]), 112, "single", "m"), 1.2);
    near(await length(pieces(["Cuff", 50.8, 25.4, "cm", 2]), 45, "single"), yd(20)); // 20 x 10 in
    near(await length(pieces(["Cuff", 20, 10, "in", 2]), "114,3 cm", "single"), yd(20));
    near(await length(pieces(["Cuff", 20, 10, "in", 2]), "45 in", "single", "m"), 0.508); // 20 x 2.54 cm
  });
  test("reads sizes as text", async () => {
    near(await length(pieces(["Cuff", "20 1/2", '10"', "in", 2]), 45, "single"), yd(20.5));
    near(await length(pieces(["Cuff", "20½", "25,4 cm", "in", "2"]), 45, "single"), yd(20.5));
  });
  test("keeps a gap between pieces", async () => {
    // 10 + 10 + 1 = 21 is wider than 20 1/2, so they lie one above the other.
    const answer = Number(await length(pieces(["Cuff", 20, 10, "in", 2]), 20.5, "single", "yd", undefined, 1));
    expect(answer).toBeGreaterThanOrEqual(yd(41) - 1e-9);
    expect(answer).toBeLessThanOrEqual(yd(43) + 1e-9);
    near(await length(pieces(["Cuff", 20, 10, "in", 2]), 20.5, "single"), yd(20));
  });
  test("never needs less cloth with a repeat than without", async () => {
    const list = pieces(["Front", 30, 20, "in", 2], ["Back", 28, 22, "in", 1], ["Sleeve", 23, 17, "in", 2]);
    const plain = Number(await length(list, 45, "single"));
    const plaid = Number(await length(list, 45, "single", "yd", 4.25));
    expect(plaid).toBeGreaterThanOrEqual(plain - 1e-9);
    expect(plain).toBeGreaterThan(0);
  });
});

describe("LAYOUTLENGTH on folded cloth", () => {
  const headed = [...SHORT, "On fold"];
  test("cuts a pair at once", async () => {
    near(await length(pieces(["Front", 30, 20, "in", 2]), 45, "folded"), yd(30)); // half of 45 is 22 1/2
    near(await length(pieces(["Front", 30, 12, "in", 4]), 45, "folded"), yd(60)); // two pairs, 12 + 12 > 22 1/2
    near(await length(pieces(["Front", 30, 11, "in", 4]), 45, "folded"), yd(30)); // 11 + 11 = 22
  });
  test("lays a half piece on the fold and a pair beside it", async () => {
    near(
      await length([headed, ["Back", 40, 11, "in", 1, "yes"], ["Front", 40, 11, "in", 2, "no"]], 45, "folded"),
      yd(40),
    );
    near(
      await length([headed, ["Back", 40, 12, "in", 1, "yes"], ["Front", 40, 11, "in", 2, "no"]], 45, "folded"),
      yd(80),
    );
  });
  test("stacks fold pieces, because there is one fold", async () => {
    near(
      await length([headed, ["Back", 40, 5, "in", 1, "yes"], ["Front", 40, 5, "in", 1, "yes"]], 45, "folded"),
      yd(80),
    );
    near(await length([headed, ["Back", 40, 5, "in", 2, "yes"]], 45, "folded"), yd(80));
  });
  test("opens the cloth for what only fits opened out", async () => {
    near(await length(pieces(["Cape", 20, 30, "in", 1]), 45, "folded"), yd(20));
    // 30 in of pair on the fold, then 20 in opened.
    near(await length(pieces(["Front", 30, 20, "in", 2], ["Cape", 20, 30, "in", 1]), 45, "folded"), yd(50));
  });
  test("needs two lengths for child's trousers whose front and back don't fit side by side", async () => {
    // Half of 112 cm is 56; 27 + 32 = 59: 60 + 62 = 122 cm.
    const trousers = pieces(["Front", 60, 27, "cm", 2], ["Back", 62, 32, "cm", 2]);
    near(await length(trousers, 112, "folded", "m"), 1.22);
    // A little narrower and they do: 25 + 31 = 56.
    near(await length(pieces(["Front", 60, 25, "cm", 2], ["Back", 62, 31, "cm", 2]), 112, "folded", "m"), 0.62);
    // Opened out three lie side by side (27 + 27 + 32 = 86) and the fronts can lie one above the other (27 + 32 + 32 = 91).
    near(await length(trousers, 112, "single", "m"), 1.2);
  });
});

describe("LAYOUTLENGTH with allowances", () => {
  const headed = [...SHORT, "On fold", "Seam allowance", "Hem"];
  test("adds the seam allowance on every edge", async () => {
    near(await length([headed, ["Panel", 20, 10, "in", 4, "no", 0.5, BLANK]], 45, "single"), yd(21)); // 4 x 11 = 44
    near(await length([headed, ["Panel", 20, 10.5, "in", 4, "no", 0.5, BLANK]], 45, "single"), yd(42)); // 4 x 11 1/2 = 46
  });
  test("adds none at the fold", async () => {
    // 22 + 1/2 = 22 1/2 is half of 45; with 1/2 on both edges it wouldn't fit.
    near(await length([headed, ["Back", 20, 22, "in", 1, "yes", 0.5, BLANK]], 45, "folded"), yd(21));
    expectRefusal(await length([headed, ["Back", 20, 22.1, "in", 1, "yes", 0.5, BLANK]], 45, "folded"), /Back/);
  });
  test("adds the hem to the length", async () => {
    near(await length([headed, ["Panel", 20, 10, "in", 2, "no", BLANK, 2]], 45, "single"), yd(22));
  });
  test("takes blank allowances as none, also where they arrive as 0", async () => {
    const list = [headed, ["Panel", 20, 10, "in", 2, BLANK, BLANK, BLANK]];
    near(await length(list, 45, "single"), yd(20));
    near(await callWithZeros("LAYOUTLENGTH", list, 45, "yd", "single"), yd(20));
  });
});

describe("LAYOUTLENGTH", () => {
  test("gives a row for each fabric", async () => {
    const list = [
      [...SHORT, "Fabric"],
      ["Front", 30, 20, "in", 2, "linen"],
      ["Yoke", 10, 20, "in", 1, "print"],
      ["Cuff", 12, 20, "in", 1, "print"],
    ];
    const answer = rows(await length(list, 45, "single"));
    const of = (name: string) => numbers(answer.find((cells) => cells.includes(name))!);
    expect(of("linen").some((n) => Math.abs(n - yd(30)) < 1e-6)).toBe(true);
    expect(of("print").some((n) => Math.abs(n - yd(12)) < 1e-6)).toBe(true); // side by side: 20 + 20
    expect(answer).toHaveLength(2);
  });
  test("knows its columns in any order, and skips blank rows", async () => {
    const list = [
      ["Count", "Unit", "Piece", "Width", "Length"],
      [2, "in", "Cuff", 10, 20],
      [BLANK, BLANK, BLANK, BLANK, BLANK],
      [1, "in", "Yoke", 20, 12],
    ];
    near(await length(list, 45, "single"), yd(20)); // 10 + 10 + 20 = 40
    near(await callWithZeros("LAYOUTLENGTH", list, 45, "yd", "single"), yd(20));
  });
  test("is the same however the pieces are listed", async () => {
    const list = [
      ["Front", 30, 13, "in", 2],
      ["Back", 31, 22, "in", 1],
      ["Sleeve", 23, 17, "in", 2],
      ["Collar", 4, 18, "in", 2],
      ["Cuff", 5, 11, "in", 2],
    ];
    const first = await length(pieces(...list), 45, "single");
    expect(first).toBeTypeOf("number");
    expect(await length(pieces(...[...list].reverse()), 45, "single")).toBe(first);
    expect(await length(pieces(...list.slice(2), ...list.slice(0, 2)), 45, "single")).toBe(first);
  });
  test("is never less than the area divided by the width, nor than the longest piece", async () => {
    const list = pieces(["Front", 30, 13, "in", 2], ["Back", 31, 22, "in", 1], ["Sleeve", 23, 17, "in", 2]);
    const answer = Number(await length(list, 45, "single"));
    expect(answer).toBeGreaterThanOrEqual(yd((30 * 13 * 2 + 31 * 22 + 23 * 17 * 2) / 45) - 1e-9);
    expect(answer).toBeGreaterThanOrEqual(yd(31) - 1e-9);
  });
  test("names a piece that is wider than the cloth, and by how much", async () => {
    expectError(
      await length(pieces(["Cuff", 20, 10, "in", 2], ["Cape", 30, 50, "in", 1]), 45, "single"),
      "#VALUE!",
      /Cape/,
      /\b5\b/,
    );
    expectError(await length(pieces(["Cape", 30, 50, "in", 1]), 45, "folded"), "#VALUE!", /Cape/, /\b5\b/);
  });
  test("names a piece on the fold that is wider than half the cloth", async () => {
    const headed = [...SHORT, "On fold"];
    // Half of 45 is 22 1/2: 25 is 2 1/2 too wide.
    expectError(await length([headed, ["Cape", 30, 25, "in", 1, "yes"]], 45, "folded"), "#VALUE!", /Cape/);
  });
  test("refuses impossible pieces, naming them", async () => {
    expectError(await length(pieces(["Cuff", 20, 0, "in", 2]), 45), "#VALUE!", /Cuff/);
    expectError(await length(pieces(["Cuff", 20, -10, "in", 2]), 45), "#VALUE!", /Cuff/);
    expectError(await length(pieces(["Cuff", 20, 10, "in", 1.5]), 45), "#VALUE!", /Cuff/, /1\.5|1 1\/2/);
    expectError(await length(pieces(["Cuff", 20, 10, "in", -1]), 45), "#VALUE!", /Cuff/);
    expectError(await length(pieces(["Cuff", "long", 10, "in", 2]), 45), "#VALUE!", /Cuff|long/);
    expectError(await length(pieces(["Cuff", 46182, 10, "in", 2]), 45), "#VALUE!", /date/i);
    expectRefusal(
      await length(pieces(["Cuff", errorCell("#DIV/0!"), 10, "in", 2]), 45).then((answer) => ({
        message: "an error cell",
        ...(answer as object),
      })),
    );
  });
  test("refuses flags, layouts and units that it doesn't know", async () => {
    expectError(
      await length(
        [
          [...SHORT, "On fold"],
          ["Cuff", 20, 10, "in", 2, "perhaps"],
        ],
        45,
      ),
      "#VALUE!",
      /perhaps/,
    );
    expectError(
      await length(
        [
          [...SHORT, "May turn"],
          ["Cuff", 20, 10, "in", 2, "perhaps"],
        ],
        45,
      ),
      "#VALUE!",
      /perhaps/,
    );
    expectError(await length(pieces(["Cuff", 20, 10, "in", 2]), 45, "crumpled"), "#VALUE!", /crumpled/);
    expectError(await length(pieces(["Cuff", 20, 10, "in", 2]), 45, "single", "ells"), "#VALUE!", /ells/);
    expectError(await length(pieces(["Cuff", 20, 10, "ells", 2]), 45, "single"), "#VALUE!", /ells/);
  });
  test("refuses a width that is missing, negative or unreadable", async () => {
    const list = pieces(["Cuff", 20, 10, "in", 2]);
    expectError(await length(list, BLANK), "#VALUE!");
    expectError(await length(list, 0), "#VALUE!");
    expectError(await length(list, -45), "#VALUE!");
    expectError(await length(list, "wide"), "#VALUE!", /wide/);
  });
  test("refuses a list without pieces or without headings", async () => {
    expectRefusal(await length([SHORT], 45));
    expectRefusal(await length([["Cuff", 20, 10, "in", 2]], 45));
    expectRefusal(await length([[BLANK, BLANK]], 45));
  });
  test("refuses an outline that crosses itself, naming the piece", async () => {
    const headed = [...SHORT, "Outline"];
    expectError(
      await length([headed, ["Gusset", 20, 10, "in", 1, "0 0; 10 20; 10 0; 0 20"]], 45, "single"),
      "#VALUE!",
      /Gusset/,
    );
  });
  test("is never longer with an outline than by the box", async () => {
    const headed = [...SHORT, "Outline"];
    const box = Number(await length(pieces(["Gore", 30, 20, "in", 4]), 45, "single"));
    const shaped = Number(await length([headed, ["Gore", 30, 20, "in", 4, "5 0; 15 0; 20 30; 0 30"]], 45, "single"));
    expect(shaped).toBeLessThanOrEqual(box + 1e-9);
    expect(shaped).toBeGreaterThanOrEqual(yd((15 * 30 * 4) / 45) - 1e-9); // a gore's area is (10 + 20) / 2 x 30
  });
  test("answers with many pieces", async () => {
    const many = Array.from({ length: 500 }, (_, n) => [`Piece ${n}`, 5 + (n % 7), 4 + (n % 5), "in", 1]);
    const answer = await length(pieces(...many), 45, "single");
    expect(answer).toBeTypeOf("number");
    const area = many.reduce((sum, [, high, across]) => sum + (high as number) * (across as number), 0);
    expect(Number(answer)).toBeGreaterThanOrEqual(yd(area / 45) - 1e-9);
    expect(Number(answer)).toBeLessThanOrEqual(yd((area / 45) * 1.15));
  });
});

describe("LAYOUTPLAN", () => {
  test("places every piece that is cut, by name", async () => {
    const answer = rows(
      await call("LAYOUTPLAN", pieces(["Cuff", 20, 10, "in", 2], ["Yoke", 12, 20, "in", 1]), 45, "yd", "single"),
    );
    const names = answer.map((cells) => cells.join(" "));
    expect(names.filter((text) => text.includes("Cuff"))).toHaveLength(2);
    expect(names.filter((text) => text.includes("Yoke"))).toHaveLength(1);
  });
  test("places a pair once on folded cloth, and a fold piece at the fold", async () => {
    const list = [
      [...SHORT, "On fold"],
      ["Back", 40, 11, "in", 1, "yes"],
      ["Front", 40, 11, "in", 2, "no"],
    ];
    const answer = rows(await call("LAYOUTPLAN", list, 45, "yd", "folded"));
    expect(answer.filter((cells) => cells.includes("Back"))).toHaveLength(1);
    expect(answer.filter((cells) => cells.includes("Front"))).toHaveLength(1);
    expect(numbers(answer.find((cells) => cells.includes("Back"))!)).toContain(0);
  });
  test("ends in a note that says it is by boxes", async () => {
    const answer = rows(await call("LAYOUTPLAN", pieces(["Cuff", 20, 10, "in", 2]), 45, "yd", "single"));
    expect(answer.map((cells) => String(cells.at(-1))).join(" ")).toMatch(/box/i);
  });
  /** Piece, layer, across, along, width, length, turned, note. */
  const placed = async (list: Grid, width: number, layout: string, ...rest: unknown[]) =>
    rows(await call("LAYOUTPLAN", list, width, "yd", layout, ...rest)).map((cells) => {
      const [name, layer, x, y, w, l] = cells;
      const turned = /^(?:true|yes|turned)/i.test(String(cells[6]));
      const [across, along] = turned ? [l, w] : [w, l];
      return { name, layer: String(layer), x: Number(x), y: Number(y), across: Number(across), along: Number(along) };
    });
  test.each([
    ["single", 45],
    ["folded", 45],
    ["single", 60],
    ["folded", 60],
  ])("lays nothing over anything else nor over the edge: %s on %d in", async (layout, width) => {
    const list = pieces(
      ["Front", 30, 13, "in", 2],
      ["Back", 31, 21, "in", 2],
      ["Sleeve", 23, 17, "in", 2],
      ["Collar", 4, 18, "in", 2],
      ["Cuff", 5, 11, "in", 4],
    );
    const found = await placed(list, width, layout);
    const needed = Number(await length(list, width, layout)) * 36;
    for (const one of found) {
      expect(one.x).toBeGreaterThanOrEqual(-1e-9);
      expect(one.y).toBeGreaterThanOrEqual(-1e-9);
      expect(one.x + one.across).toBeLessThanOrEqual((one.layer === "folded" ? width / 2 : width) + 1e-6);
      expect(one.y + one.along).toBeLessThanOrEqual(needed + 1e-6);
      for (const two of found) {
        if (one === two) continue;
        const apartAcross = one.x + one.across <= two.x + 1e-6 || two.x + two.across <= one.x + 1e-6;
        const apartAlong = one.y + one.along <= two.y + 1e-6 || two.y + two.along <= one.y + 1e-6;
        expect(apartAcross || apartAlong).toBe(true);
      }
    }
    // 2 fronts, 2 backs, 2 sleeves, 2 collars, 4 cuffs: a pair on folded cloth is one placement.
    const cut = found.reduce((sum, one) => sum + (one.layer === "folded" ? 2 : 1), 0);
    expect(cut).toBe(12);
    expect(Math.max(...found.map((one) => one.y + one.along))).toBeCloseTo(needed, 6);
  });
  test("starts every piece on a repeat of the print", async () => {
    const list = pieces(["Panel", 30, 20, "in", 3]);
    const found = await placed(list, 45, "single", 4);
    for (const { y } of found) expect(y / 4).toBeCloseTo(Math.round(y / 4), 6);
    // Two side by side at 0, the third at 32, the first repeat after 30: 32 + 30 = 62 in at least.
    expect(Math.max(...found.map(({ y }) => y))).toBe(32);
    expect(Number(await length(list, 45, "single", "yd", 4))).toBeGreaterThanOrEqual(yd(62) - 1e-9);
  });
  test("refuses what LAYOUTLENGTH refuses", async () => {
    expectError(await call("LAYOUTPLAN", pieces(["Cape", 30, 50, "in", 1]), 45, "yd", "single"), "#VALUE!", /Cape/);
  });
});
