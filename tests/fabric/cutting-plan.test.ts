import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cuttingPlan } from "../../src/fabric/layout/cutting-plan";
import type { FabricPiece, NamedCloth } from "../../src/fabric/layout/types";
import { sentence } from "../../src/words";
import { checkLayout } from "./layout-checker";

const piece = (name: string, width: number, length: number, count = 1, more: Partial<FabricPiece> = {}): FabricPiece => ({ name, width, length, count, ...more }); // prettier-ignore

/** The plan, each of its layouts checked, every piece cut once or left over. */
function plan(pieces: readonly FabricPiece[], cloths: readonly NamedCloth[], tries = 600) {
  const found = cuttingPlan(pieces, cloths, { tries });
  const cut: string[] = found.leftOver.map(({ name }) => name);
  found.cloths.forEach(({ layout, left }, i) => {
    if (!layout) return;
    const names = new Set(layout.placements.map((one) => one.piece));
    const mine = pieces.filter(({ name }) => names.has(name));
    checkLayout(layout, mine, cloths[i]!);
    for (const { fabric } of mine) if (fabric) expect([fabric].flat()).toContain(cloths[i]!.name);
    const length = cloths[i]!.length;
    if (length !== undefined) expect(left).toBeCloseTo(length - layout.length!, 9);
    if (length !== undefined) expect(layout.length).toBeLessThanOrEqual(length);
    cut.push(...names);
  });
  expect(cut.sort()).toEqual(pieces.map(({ name }) => name).sort());
  return found;
}
const on = ({ cloths }: ReturnType<typeof cuttingPlan>) =>
  Object.fromEntries(
    cloths.map(({ name, layout }) => [name, [...new Set(layout?.placements.map((one) => one.piece))].sort()]),
  );

describe("cuttingPlan", () => {
  // Worked by hand, in cm. Back 60 × 75 and two fronts 35 × 75 stand beside each other (130 of 140) and take 75; two
  // sleeves 45 × 55 take 55; the collar 45 × 8 twice lies beside the sleeves (45 + 45 + 45 = 135), so 55 is all.
  const shirt = [
    piece("Back", 60, 75),
    piece("Front", 35, 75, 2),
    piece("Sleeve", 45, 55, 2),
    piece("Collar", 45, 8, 2),
  ];

  it("cuts a shirt from two stash pieces", () => {
    const found = plan(shirt, [{ name: "long", width: 140, length: 80 }, { name: "short", width: 140, length: 64 }]); // prettier-ignore
    expect(found.leftOver).toEqual([]);
    expect(on(found).long).toEqual(["Back", "Front"]);
    expect(on(found).short).toEqual(["Collar", "Sleeve"]);
    expect(found.cloths.map(({ left }) => left)).toEqual([5, 9]);
  });

  it("never adds two stash pieces together", () => {
    // 70 + 70 are 140 of length, more than the 138 that all of it takes, and yet the back of 75 has room on neither.
    const found = plan(shirt, [{ name: "one", width: 140, length: 70 }, { name: "other", width: 140, length: 70 }]); // prettier-ignore
    expect(found.leftOver.map(({ name }) => name)).toEqual(["Back", "Front"]);
    expect(found.problems.map(sentence)).toContain(
      `"Back" (1 of it) has no room left on "one" or "other". Pieces of fabric are never added together.`,
    );
  });

  it("cuts each piece from the fabric it names", () => {
    const pieces = [piece("Front", 40, 60, 2, { fabric: "linen" }), piece("Yoke", 40, 20, 1, { fabric: "Print" })];
    const found = cuttingPlan(pieces, [{ name: "linen", width: 90 }, { name: "print", width: 90 }], { tries: 50 }); // prettier-ignore
    expect(found.cloths.map(({ layout }) => layout?.length)).toEqual([60, 20]);
  });

  it("puts a piece whose fabric is free where it saves cloth", () => {
    // The yoke fits beside the fronts of the linen (30 of the 50 left) and costs nothing there.
    const pieces = [
      piece("Front", 40, 60, 1, { fabric: "linen" }),
      piece("Back", 90, 70, 1, { fabric: "print" }),
      piece("Yoke", 30, 20),
    ];
    const found = plan(pieces, [{ name: "print", width: 90 }, { name: "linen", width: 90 }]); // prettier-ignore
    expect(on(found).linen).toEqual(["Front", "Yoke"]);
    expect(found.cloths.map(({ layout }) => layout!.length)).toEqual([70, 60]);
  });

  it("uses her own cloth before any is bought", () => {
    const found = plan([piece("Front", 40, 60, 2)], [{ name: "new", width: 150 }, { name: "stash", width: 90, length: 65 }]); // prettier-ignore
    expect(on(found)).toEqual({ new: [], stash: ["Front"] });
    const bought = plan([piece("Front", 40, 70, 2)], [{ name: "new", width: 150 }, { name: "stash", width: 90, length: 65 }]); // prettier-ignore
    expect(on(bought)).toEqual({ new: ["Front"], stash: [] });
  });

  it("skips a cloth that is too narrow, and names the piece when all are", () => {
    const cloths = [{ name: "narrow", width: 50 }, { name: "wide", width: 90 }]; // prettier-ignore
    expect(on(plan([piece("Skirt", 80, 60)], cloths))).toEqual({ narrow: [], wide: ["Skirt"] });
    const found = cuttingPlan([piece("Skirt", 100, 60)], cloths, { tries: 20 });
    expect(found.problems.map(sentence)[0]).toMatch(/^"Skirt" is 100 wide/);
    expect(found.leftOver).toHaveLength(1);
  });

  it("is the same whatever the order of the pieces", () => {
    const cloths = [{ name: "long", width: 140, length: 90 }, { name: "new", width: 120, layout: "folded" as const }]; // prettier-ignore
    expect(cuttingPlan([...shirt].reverse(), cloths, { tries: 300 })).toEqual(
      cuttingPlan(shirt, cloths, { tries: 300 }),
    );
  });

  it("refuses a fabric that isn't there, a repeat longer than the cloth, and lengths that are none", () => {
    const say = (pieces: readonly FabricPiece[], cloths: readonly NamedCloth[]) =>
      cuttingPlan(pieces, cloths, { tries: 5 }).problems.map(sentence)[0];
    const cuff = piece("Cuff", 5, 5);
    expect(say([{ ...cuff, fabric: "silk" }], [{ name: "linen", width: 90 }])).toBe(
      `"Cuff" is to be cut from "silk", which isn't among the fabrics here ("linen").`,
    );
    expect(say([cuff], [])).toMatch(/isn't among the fabrics here \(none\)/);
    expect(say([cuff], [{ name: "linen", width: 90, length: 30, repeat: 64 }])).toBe(
      "A repeat of 64 is longer than the fabric (30). Is it in another unit?",
    );
    expect(say([cuff], [{ name: "linen", width: 90, length: -1 }])).toBe(
      "A length of fabric can't be below zero, and this is -1.",
    );
    expect(say([piece("Cuff", 0, 5)], [{ name: "linen", width: 90 }])).toMatch(/^The width of "Cuff" is 0/);
    expect(() => cuttingPlan([cuff], [{ name: "linen", width: 90 }], { tries: 0 })).toThrow(RangeError);
  });

  it("never lays a piece twice or beyond a cloth's end, whatever is asked", () => {
    const size = fc.integer({ min: 2, max: 60 });
    const list = fc.array(fc.tuple(size, size, fc.integer({ min: 1, max: 3 })), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(list, size, size, (list, one, other) => {
        const pieces = list.map(([width, length, count], i) => piece(`p${i}`, width, length, count));
        plan(pieces, [{ name: "a", width: 60, length: one }, { name: "b", width: 80, length: other, layout: "folded" }], 60); // prettier-ignore
        expect(plan(pieces, [{ name: "a", width: 60, length: one }, { name: "new", width: 70 }], 60).leftOver).toEqual([]); // prettier-ignore
      }),
      { numRuns: 40 },
    );
  });
});
