import { describe, expect, it } from "vitest";
import { cuttingLayout } from "../../src/fabric/layout/cutting-layout";
import { layoutPicture } from "../../src/fabric/layout/picture";

describe("layoutPicture", () => {
  // By hand: folded 70 wide, a pair of 60 × 50 through both layers covers 6000; the skirt 90 × 60 opened covers 5400;
  // the cloth is 140 × 110 = 15400: 4000 of it, 25.97 %, is left.
  it("gives zones, lines, waste and the way to the bound", () => {
    const cloth = { width: 140, layout: "folded" } as const;
    const pieces = [{ name: "Skirt", width: 90, length: 60, count: 1 }, { name: "Front", width: 60, length: 50, count: 2 }]; // prettier-ignore
    const picture = layoutPicture(cuttingLayout(pieces, cloth, { tries: 50 }), cloth)!;
    expect(picture.zones).toEqual([
      { layer: "folded", from: 0, to: 50, width: 70 },
      { layer: "single", from: 50, to: 110, width: 140 },
    ]);
    expect(picture.pieces.map(({ name, grain, middle }) => [name, grain, middle.x])).toEqual([
      ["Front", "along", 30],
      ["Skirt", "along", 45],
    ]);
    expect(picture.waste).toBeCloseTo(4000 / 15400, 9);
    // The bound: no front fits beside the skirt (60 + 90), so it counts with 140: (140 × 60 + 2 × 60 × 50) / 140.
    expect(picture.overBound).toBeCloseTo(110 / (14400 / 140) - 1, 4);
  });
  it("says where the grain of a turned piece runs, and that nothing is shorter", () => {
    const cloth = { width: 100 };
    const picture = layoutPicture(
      cuttingLayout([{ name: "Sash", width: 20, length: 100, count: 1, mayTurn: true }], cloth, { tries: 9 }),
      cloth,
    )!;
    expect(picture).toMatchObject({ waste: 0, overBound: 0, length: 20 });
    expect(picture.pieces[0]).toMatchObject({ grain: "across", middle: { x: 50, y: 10 } });
  });
  it("is null where there is no layout", () => {
    expect(layoutPicture(cuttingLayout([], { width: 100 }, { tries: 1 }), { width: 100 })).toBeNull();
  });
});
